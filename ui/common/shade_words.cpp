#include "ui/common/shade_words.h"

#include <QLocale>
#include <QObject>
#include <QStringList>

#include "ui/common/format.h"

namespace wg::ui {
namespace {

constexpr double worth_a_word_kwh_m2 = 0.5;

QString name_of(const site::ShadeCause& cause) {
    return cause.label.empty() ? QObject::tr("The house itself or the horizon") : qs(cause.label);
}

}  // namespace

QString shade_cause_words(const site::ShadeCause& cause) {
    const QString text =
        QObject::tr("%1: about %2 a year").arg(name_of(cause), quantity(cause.lost_kwh_m2, QStringLiteral("kWh/m²")));
    if (cause.worst_month < 1 || cause.worst_month > 12) return text;
    // The stretch that holds most of the worst month's loss; the single worst hour where none is known.
    const bool span = cause.worst_to_hour > cause.worst_from_hour;
    return QObject::tr("%1, most in %2 from %3:00 to %4:00")
        .arg(text, QLocale::c().monthName(cause.worst_month))
        .arg(span ? cause.worst_from_hour : cause.worst_hour)
        .arg(span ? cause.worst_to_hour : cause.worst_hour + 1);
}

QString shade_causes_words(const site::Shade& shade, std::size_t most) {
    QStringList words;
    for (const site::ShadeCause& cause : shade.causes) {
        if (static_cast<std::size_t>(words.size()) >= most || cause.lost_kwh_m2 < worth_a_word_kwh_m2) break;
        words += shade_cause_words(cause);
    }
    if (words.isEmpty()) return {};
    return QObject::tr("Worst shade, standard time: %1.").arg(words.join(QStringLiteral("; ")));
}

}  // namespace wg::ui
