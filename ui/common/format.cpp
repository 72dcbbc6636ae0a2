#include "ui/common/format.h"

#include <QDateTime>
#include <QLocale>
#include <QRegularExpression>
#include <cmath>

#include "core/quantity/angle.h"
#include "ui/common/paper_words.h"

namespace wg::ui {
namespace {

constexpr QChar narrow_space(0x202F);
constexpr QChar minus_sign(0x2212);
constexpr QChar em_dash(0x2014);
constexpr QChar degree_sign(0x00B0);

QString grouped(QString digits) {
    for (qsizetype at = digits.size() - 3; at > 0; at -= 3)
        digits.insert(at, narrow_space);
    return digits;
}

/// Groups the whole part of plain decimal text such as "-1234.50".
QString dressed(const QString& plain) {
    const bool negative = plain.startsWith(u'-');
    const QString digits = negative ? plain.mid(1) : plain;
    const qsizetype point = digits.indexOf(u'.');
    const QString whole = grouped(point < 0 ? digits : digits.left(point));
    QString rest = point < 0 ? QString() : digits.mid(point);
    if (!rest.isEmpty() && PaperLanguage::now() != Language::english) rest[0] = u',';
    bool all_zero = true;
    for (const QChar c : digits) {
        if (c.isDigit() && c != u'0') all_zero = false;
    }
    // A value that rounds to nothing has no sign: "-0" puzzles readers.
    const QString sign = negative && !all_zero ? QString(minus_sign) : QString();
    return sign + whole + rest;
}

QString with_unit(const QString& text, const QString& unit) {
    return unit.isEmpty() || text == em_dash ? text : text + narrow_space + unit;
}

/// West is oeste in Spanish, east is Ost in German; the other letters are the same.
QString compass_words(double azimuth_deg) {
    QString point = QLatin1String(compass_point(azimuth_deg));
    if (PaperLanguage::now() == Language::spanish) point.replace(u'W', u'O');
    if (PaperLanguage::now() == Language::german) point.replace(u'E', u'O');
    return point;
}

/// "21 June 2027", "21 de junio de 2027", "21. Juni 2027".
QString date_text(const QDate& date) {
    switch (PaperLanguage::now()) {
        case Language::spanish:
            return QLocale(QLocale::Spanish, QLocale::Spain).toString(date, QStringLiteral("d 'de' MMMM 'de' yyyy"));
        case Language::german:
            return QLocale(QLocale::German, QLocale::Germany).toString(date, QStringLiteral("d. MMMM yyyy"));
        case Language::english: break;
    }
    return QLocale(QLocale::English, QLocale::UnitedKingdom).toString(date, QStringLiteral("d MMMM yyyy"));
}

QString plain_money(std::int64_t minor) {
    // Through unsigned: the most negative amount has no positive counterpart.
    const std::uint64_t size =
        minor < 0 ? std::uint64_t{0} - static_cast<std::uint64_t>(minor) : static_cast<std::uint64_t>(minor);
    return QStringLiteral("%1%2.%3")
        .arg(minor < 0 ? QStringLiteral("-") : QString())
        .arg(size / 100)
        .arg(size % 100, 2, 10, QLatin1Char('0'));
}

}  // namespace

QString number(double value, int decimals) {
    if (!std::isfinite(value)) return em_dash;
    return dressed(QString::number(value, 'f', decimals));
}

QString quantity(double value, const QString& unit, int decimals) {
    return with_unit(number(value, decimals), unit);
}

QString length_m(double value_m) {
    return quantity(value_m, QStringLiteral("m"), 2);
}

QString length_mm(double value_m) {
    return quantity(value_m * 1000.0, QStringLiteral("mm"), 0);
}

QString temperature(double value_c, int decimals) {
    return quantity(value_c, QString(degree_sign) + QLatin1Char('C'), decimals);
}

QString percent(double share, int decimals) {
    return quantity(share * 100.0, QStringLiteral("%"), decimals);
}

QString bearing(double azimuth_deg) {
    if (!std::isfinite(azimuth_deg)) return em_dash;
    const double wrapped = wrap_360(azimuth_deg);
    // 359.7 reads as 0, not as 360.
    const double whole = std::fmod(std::round(wrapped), 360.0);
    return number(whole) + degree_sign + narrow_space + compass_words(wrapped);
}

QString money(Money amount, const QString& currency) {
    return with_unit(dressed(plain_money(amount.minor)), currency);
}

QString with_signs(QString text) {
    static const QRegularExpression power(QStringLiteral("(?<![A-Za-z])(m|mm|cm)([23])(?![A-Za-z0-9])"));
    text.replace(power, QStringLiteral("\\1^\\2"));
    text.replace(QStringLiteral("m^2"), QStringLiteral("m\u00b2"))
        .replace(QStringLiteral("m^3"), QStringLiteral("m\u00b3"));
    text.replace(QStringLiteral(" deg C"), QStringLiteral("\u202f\u00b0C"));
    text.replace(QStringLiteral("deg C"), QStringLiteral("\u00b0C"));  // after a bracket or a line break
    text.replace(QStringLiteral("MOhm"), QStringLiteral("M\u03a9"));
    text.replace(QStringLiteral("kOhm"), QStringLiteral("k\u03a9"));
    text.replace(QStringLiteral(" ohm"), QStringLiteral(" \u03a9"));
    text.replace(QStringLiteral("+/- "), QStringLiteral("\u00b1\u202f"));
    return text;
}

QString difference(double value, const QString& unit, int decimals) {
    if (!std::isfinite(value)) return {};
    const QString text = number(value, decimals);
    if (text == number(0.0, decimals)) return {};
    return with_unit(text.startsWith(minus_sign) ? text : QLatin1Char('+') + text, unit);
}

QString money_difference(Money amount, const QString& currency) {
    if (amount.minor == 0) return {};
    const QString text = money(amount, currency);
    return amount.minor > 0 ? QLatin1Char('+') + text : text;
}

QString counted(int count, const QString& one, const QString& many) {
    return (count == 1 ? one : many).arg(number(count));
}

QString day(const std::string& iso8601_text) {
    const QString text = qs(iso8601_text);
    if (const QDate date = QDate::fromString(text, Qt::ISODate); date.isValid() && text.size() == 10) {
        return date_text(date);
    }
    const QDateTime stamp = QDateTime::fromString(text, Qt::ISODate);
    return stamp.isValid() ? date_text(stamp.toLocalTime().date()) : text;
}

QString ranged(const plan::Ranged& value, const QString& unit, int decimals) {
    if (!std::isfinite(value.mid)) return em_dash;
    const QString mid = say("about %1").arg(quantity(value.mid, unit, decimals));
    const QString low = number(value.low, decimals);
    const QString high = number(value.high, decimals);
    if (!std::isfinite(value.low) || !std::isfinite(value.high) || low == high) return mid;
    return say("%1 (%2 to %3)").arg(mid, low, high);
}

}  // namespace wg::ui
