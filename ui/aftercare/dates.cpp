#include "ui/aftercare/dates.h"

#include <QLocale>

namespace wg::ui {

QDate qdate(CivilDate date) {
    return {date.year, date.month, date.day};
}

CivilDate civil(const QDate& date) {
    return {date.year(), date.month(), date.day()};
}

CivilDate today_civil() {
    return civil(QDate::currentDate());
}

QString date_words(const std::optional<CivilDate>& date) {
    if (!date) return QStringLiteral("\u2014");
    return QLocale(QLocale::English, QLocale::UnitedKingdom).toString(qdate(*date), QStringLiteral("d MMM yyyy"));
}

}  // namespace wg::ui
