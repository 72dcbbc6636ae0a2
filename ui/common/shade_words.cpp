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

QString shade_cause_words(const site::ShadeCause& cause, const QString& period) {
    const QString text = QObject::tr("%1: about %2 %3")
                             .arg(name_of(cause), quantity(cause.lost_kwh_m2, QStringLiteral("kWh/m²")),
                                  period.isEmpty() ? QObject::tr("a year") : period);
    if (cause.worst_month < 1 || cause.worst_month > 12) return text;
    // The stretch that holds most of the worst month's loss; the single worst hour where none is known.
    const bool span = cause.worst_to_hour > cause.worst_from_hour;
    return QObject::tr("%1, most in %2 from %3:00 to %4:00")
        .arg(text, QLocale::c().monthName(cause.worst_month))
        .arg(span ? cause.worst_from_hour : cause.worst_hour)
        .arg(span ? cause.worst_to_hour : cause.worst_hour + 1);
}

QString shade_causes_words(const site::Shade& shade, std::size_t most, const QString& period) {
    QStringList words;
    for (const site::ShadeCause& cause : shade.causes) {
        if (static_cast<std::size_t>(words.size()) >= most || cause.lost_kwh_m2 < worth_a_word_kwh_m2) break;
        words += shade_cause_words(cause, period);
    }
    if (words.isEmpty()) return {};
    return QObject::tr("Worst shade, standard time: %1.").arg(words.join(QStringLiteral("; ")));
}

QString months_words(const site::Months& months) {
    const auto is = [&months](std::size_t m) { return months[m % 12]; };
    QStringList stretches;
    // From a month that begins a stretch, so that one over the turn of the year stays in one piece.
    std::size_t first = 0;
    while (first < 12 && (!is(first) || is(first + 11)))
        ++first;
    if (first == 12) return is(0) ? QObject::tr("whole year") : QString();
    for (std::size_t m = first; m < first + 12; ++m) {
        if (!is(m)) continue;
        std::size_t last = m;
        while (is(last + 1))
            ++last;
        const auto name = [](std::size_t month) { return QLocale::c().monthName(static_cast<int>(month % 12) + 1); };
        stretches += last == m ? name(m) : QObject::tr("%1 to %2").arg(name(m), name(last));
        m = last;
    }
    if (stretches.size() == 1) return stretches.first();
    const QString last = stretches.takeLast();
    return QObject::tr("%1 and %2").arg(stretches.join(QStringLiteral(", ")), last);
}

}  // namespace wg::ui
