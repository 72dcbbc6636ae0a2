#include "ui/documents/entry_words.h"

#include <QDateTime>

#include "core/job/words.h"
#include "ui/common/format.h"
#include "ui/documents/papers.h"

namespace wg::ui::paper {
namespace {

QString gauge_words(double value_bar, int decimals) {
    return quantity(value_bar, QStringLiteral("bar gauge"), decimals);
}

QString with_subject(const Reading& entry, const QString& text) {
    return entry.subject.empty() ? text : text + QStringLiteral(", ") + qs(entry.subject);
}

QString hold_words(const Reading& entry) {
    QString text = with_subject(entry, gauge_words(entry.value, 2));
    if (entry.second_value) text += QStringLiteral(", outdoors %1").arg(temperature(*entry.second_value, 1));
    if (entry.indoors_c) text += QStringLiteral(", indoors %1").arg(temperature(*entry.indoors_c, 1));
    return text;
}

QString vacuum_words(const Reading& entry) {
    const QString level = QStringLiteral("%1 absolute").arg(quantity(entry.value, QStringLiteral("Pa")));
    return entry.second_value ? level + QStringLiteral(", coldest part %1").arg(temperature(*entry.second_value, 1))
                              : level;
}

QString heating_words(const Reading& entry) {
    const QString water = QStringLiteral("water %1").arg(temperature(entry.value, 1));
    return entry.second_value ? water + QStringLiteral(", outdoor air %1").arg(temperature(*entry.second_value, 1))
                              : water;
}

QString hygiene_words(const Reading& entry) {
    const QString hot = temperature(entry.value);
    return entry.second_value
               ? hot + QStringLiteral(", every %1").arg(quantity(*entry.second_value, QStringLiteral("days")))
               : hot;
}

QString of_role(const Reading& entry, const QString& text) {
    return entry.subject.empty() ? text : text + QStringLiteral(" as %1").arg(qs(entry.subject));
}

}  // namespace

QString entry_value(const Reading& entry) {
    const double v = entry.value;
    const bool yes = v >= 0.5;
    switch (entry.kind) {
        case ReadingKind::pressure_hold_start:
        case ReadingKind::pressure_hold_end: return hold_words(entry);
        case ReadingKind::vacuum_level:
        case ReadingKind::vacuum_after_rise: return vacuum_words(entry);
        case ReadingKind::charge_added:
        case ReadingKind::refrigerant_recovered:
        case ReadingKind::refrigerant_lost: return quantity(v, QStringLiteral("kg"), 3);
        case ReadingKind::suction_temperature:
        case ReadingKind::discharge_temperature:
        case ReadingKind::water_temperature:
        case ReadingKind::outdoor_temperature:
        case ReadingKind::tap_temperature: return with_subject(entry, temperature(v, 1));
        case ReadingKind::set_point: return temperature(v, 1);
        case ReadingKind::supply_current: return quantity(v, QStringLiteral("A"), 1);
        case ReadingKind::supply_voltage: return quantity(v, QStringLiteral("V"));
        case ReadingKind::insulation_resistance: return quantity(v, QStringLiteral("MΩ"), 2);
        case ReadingKind::earth_resistance: return quantity(v, QStringLiteral("Ω"), 1);
        case ReadingKind::protective_conductor:
        case ReadingKind::loop_impedance: return quantity(v, QStringLiteral("Ω"), 2);
        case ReadingKind::wall_contact: return quantity(v, QStringLiteral("kΩ"), 1);
        case ReadingKind::residual_current_trip: return quantity(v, QStringLiteral("ms"));
        case ReadingKind::suction_pressure:
        case ReadingKind::discharge_pressure: return gauge_words(v, 2);
        case ReadingKind::cold_pressure: return gauge_words(v, 1);
        case ReadingKind::superheat: return quantity(v, QStringLiteral("K"), 1);
        case ReadingKind::irradiance: return quantity(v, QStringLiteral("W/m²"));
        case ReadingKind::wind_speed: return quantity(v, QStringLiteral("m/s"), 1);
        case ReadingKind::heating_start:
        case ReadingKind::heating_end: return heating_words(entry);
        case ReadingKind::water_vented:
            return yes ? QStringLiteral("water without air, nothing drips") : QStringLiteral("air or a drip");
        case ReadingKind::safety_valve_lift:
            return yes ? QStringLiteral("lifts, runs to the tundish and closes")
                       : QStringLiteral("does not lift, run off or close");
        case ReadingKind::hygiene_setting: return hygiene_words(entry);
        case ReadingKind::electricity_meter:
        case ReadingKind::heat_meter: return quantity(v, QStringLiteral("kWh"), 1);
        case ReadingKind::water_meter: return quantity(v, QStringLiteral("m³"), 2);
        case ReadingKind::serial_number: return entry.note.empty() ? QStringLiteral("not told") : qs(entry.note);
        case ReadingKind::signature: return of_role(entry, QStringLiteral("signed"));
        case ReadingKind::photograph: return entry.note.empty() ? QStringLiteral("without words") : qs(entry.note);
        case ReadingKind::hold_point: return yes ? QStringLiteral("released") : QStringLiteral("held");
        case ReadingKind::service_done: return QStringLiteral("done");
        case ReadingKind::remark: return entry.note.empty() ? QStringLiteral("without words") : qs(entry.note);
    }
    return QStringLiteral("not told");
}

QString entry_kind(const Reading& entry) {
    QString text = QString::fromUtf8(text_of(entry.kind));
    const bool names = entry.kind == ReadingKind::serial_number || entry.kind == ReadingKind::hold_point ||
                       entry.kind == ReadingKind::service_done;
    if (names && !entry.subject.empty()) text += QStringLiteral(": ") + qs(entry.subject);
    if (entry.plate != PlateState::not_told)
        text += QStringLiteral(" (plate %1)").arg(QString::fromUtf8(text_of(entry.plate)));
    return text;
}

QDate entry_day(const Reading& entry) {
    return QDateTime::fromString(qs(entry.taken_at), Qt::ISODate).date();
}

QString entry_time(const Reading& entry) {
    const QDateTime at = QDateTime::fromString(qs(entry.taken_at), Qt::ISODate);
    return at.isValid() ? at.time().toString(QStringLiteral("HH:mm")) : QString();
}

QString entry_when(const Reading& entry) {
    const QDate day = entry_day(entry);
    if (!day.isValid()) return entry.taken_at.empty() ? QStringLiteral("time not told") : qs(entry.taken_at);
    return date_words(day) + QStringLiteral(", ") + entry_time(entry);
}

QString entry_by(const Reading& entry) {
    QStringList parts;
    parts += entry.taken_by.empty() ? QStringLiteral("nobody named") : qs(entry.taken_by);
    if (!entry.instrument.empty()) {
        parts += qs(entry.instrument);
        const QDate calibrated = QDate::fromString(qs(entry.calibrated_on), Qt::ISODate);
        parts += calibrated.isValid() ? QStringLiteral("calibrated %1").arg(date_words(calibrated))
                                      : QStringLiteral("calibration not told");
    }
    return parts.join(QStringLiteral("; "));
}

CivilDate civil(const QDate& date) {
    return date.isValid() ? CivilDate{date.year(), date.month(), date.day()} : CivilDate{};
}

QDate qdate(const CivilDate& date) {
    return QDate(date.year, date.month, date.day);
}

}  // namespace wg::ui::paper
