#include "ui/fitting/reading_words.h"

#include <QCoreApplication>
#include <QDateTime>
#include <cmath>

#include "ui/common/format.h"

namespace wg::ui {
namespace {

QString words(const char* text) {
    return QCoreApplication::translate("ReadingWords", text);
}

ReadingWords figure(ReadingKind kind, const QString& name, const QString& unit, int decimals, double least, double most,
                    SiteQuantity quantity = SiteQuantity::none) {
    ReadingWords w;
    w.kind = kind;
    w.manner = EntryManner::figure;
    w.value_name = name;
    w.unit = unit;
    w.decimals = decimals;
    w.least = least;
    w.most = most;
    w.quantity = quantity;
    w.instrument = true;
    return w;
}

ReadingWords with_second(ReadingWords w, const QString& name, const QString& unit, double least, double most) {
    w.second_name = name;
    w.second_unit = unit;
    w.second_least = least;
    w.second_most = most;
    return w;
}

ReadingWords yes_no(ReadingKind kind, const QString& name, const QString& yes, const QString& no) {
    ReadingWords w;
    w.kind = kind;
    w.manner = EntryManner::yes_no;
    w.value_name = name;
    w.most = 1.0;
    w.yes = yes;
    w.no = no;
    return w;
}

ReadingWords in_words(ReadingKind kind, EntryManner manner, const QString& subject = {}, const QStringList& of = {}) {
    ReadingWords w;
    w.kind = kind;
    w.manner = manner;
    w.subject_name = subject;
    w.subjects = of;
    return w;
}

std::vector<ReadingWords> of_the_circuit() {
    using K = ReadingKind;
    using Q = SiteQuantity;
    const QString celsius = QStringLiteral("°C");
    const QString bar = QStringLiteral("bar");
    const QString t = words("Temperature");
    const QString p = words("Pressure, gauge");
    const auto hold = [&](K kind) {
        ReadingWords w = with_second(figure(kind, p, bar, 2, 0.0, 60.0, Q::gauge_pressure),
                                     words("Gas outdoors (plate, tube)"), celsius, -60.0, 120.0);
        w.subject_name = words("Gas");
        w.subjects = {words("dry nitrogen")};
        w.indoors = true;
        w.plate = true;
        return w;
    };
    const auto vacuum = [&](K kind) {
        return with_second(figure(kind, words("Pressure, absolute"), QStringLiteral("Pa"), 0, 0.0, 110000.0, Q::vacuum),
                           words("Coldest part"), celsius, -60.0, 120.0);
    };
    const auto mass = [&](K kind, const QString& name) {
        return figure(kind, name, QStringLiteral("kg"), 3, 0.0, 20.0, Q::mass);
    };
    const auto celsius_of = [&](K kind, double least, double most) {
        return figure(kind, t, celsius, 1, least, most, Q::temperature);
    };
    return {
        hold(K::pressure_hold_start),
        hold(K::pressure_hold_end),
        vacuum(K::vacuum_level),
        vacuum(K::vacuum_after_rise),
        mass(K::charge_added, words("Weighed in")),
        mass(K::refrigerant_recovered, words("Taken out")),
        mass(K::refrigerant_lost, words("Leaked, as far as known")),
        celsius_of(K::suction_temperature, -60.0, 80.0),
        celsius_of(K::discharge_temperature, -40.0, 180.0),
        figure(K::suction_pressure, p, bar, 2, -1.0, 60.0, Q::gauge_pressure),
        figure(K::discharge_pressure, p, bar, 2, -1.0, 60.0, Q::gauge_pressure),
        figure(K::superheat, words("Superheat"), QStringLiteral("K"), 1, -10.0, 60.0, Q::temperature_gap),
        celsius_of(K::water_temperature, 0.0, 99.0),
        celsius_of(K::outdoor_temperature, -50.0, 60.0),
        figure(K::irradiance, words("Light on the plate"), QStringLiteral("W/m²"), 0, 0.0, 1500.0),
        figure(K::wind_speed, words("Wind"), QStringLiteral("m/s"), 1, 0.0, 60.0),
        with_second(celsius_of(K::heating_start, 0.0, 99.0), words("Outdoor air"), celsius, -50.0, 60.0),
        with_second(celsius_of(K::heating_end, 0.0, 99.0), words("Outdoor air"), celsius, -50.0, 60.0),
        celsius_of(K::tap_temperature, 0.0, 99.0),
        celsius_of(K::set_point, 20.0, 90.0),
        with_second(celsius_of(K::hygiene_setting, 20.0, 90.0), words("From run to run"), words("days"), 0.5, 60.0),
        figure(K::cold_pressure, p, bar, 2, 0.0, 25.0, Q::gauge_pressure),
    };
}

std::vector<ReadingWords> make_table() {
    using K = ReadingKind;
    using M = EntryManner;
    const QString ohm = QStringLiteral("Ω");
    const QString r = words("Resistance");
    std::vector<ReadingWords> all = of_the_circuit();
    const auto meter = [](K kind, const QString& unit, int decimals) {
        ReadingWords w = figure(kind, words("Meter"), unit, decimals, 0.0, 1e8);
        w.instrument = false;
        return w;
    };
    const std::vector<ReadingWords> rest = {
        figure(K::supply_current, words("Current"), QStringLiteral("A"), 1, 0.0, 100.0),
        figure(K::supply_voltage, words("Voltage"), QStringLiteral("V"), 0, 0.0, 500.0),
        figure(K::insulation_resistance, r, QStringLiteral("MΩ"), 1, 0.0, 100000.0),
        figure(K::earth_resistance, r, ohm, 1, 0.0, 100000.0),
        figure(K::protective_conductor, r, ohm, 2, 0.0, 10000.0),
        figure(K::loop_impedance, words("Impedance"), ohm, 2, 0.0, 10000.0),
        figure(K::residual_current_trip, words("Trip time"), QStringLiteral("ms"), 0, 0.0, 10000.0),
        figure(K::wall_contact, r, QStringLiteral("kΩ"), 1, 0.0, 1e6),
        meter(K::electricity_meter, QStringLiteral("kWh"), 1),
        meter(K::heat_meter, QStringLiteral("kWh"), 1),
        meter(K::water_meter, QStringLiteral("m³"), 3),
        yes_no(K::water_vented, words("Water runs without air, nothing drips"), words("Yes, tight"), words("No")),
        yes_no(K::safety_valve_lift, words("Lifts by hand, runs off, closes"), words("Yes, closes"), words("No")),
        yes_no(K::hold_point, words("What must be true"), words("Release"), words("Hold")),
        in_words(K::remark, M::words),
        in_words(K::serial_number, M::words, words("Of"), {words("collector"), words("block"), words("cylinder")}),
        in_words(K::signature, M::signature, words("Signs as"),
                 {words("installer"), words("electrician"), words("client")}),
        in_words(K::photograph, M::photograph),
        in_words(K::service_done, M::words, words("Service")),
    };
    all.insert(all.end(), rest.begin(), rest.end());
    for (ReadingWords& w : all)
        if (w.kind == K::hold_point) w.subject_name = words("Hold point");
    return all;
}

}  // namespace

const ReadingWords& words_of(ReadingKind kind) {
    static const std::vector<ReadingWords> table = make_table();
    for (const ReadingWords& entry : table)
        if (entry.kind == kind) return entry;
    // A kind that is newer than this table: a note, until it is told of.
    static const ReadingWords unknown;
    return unknown;
}

QString value_words(const Reading& reading) {
    const ReadingWords& w = words_of(reading.kind);
    const QString subject = qs(reading.subject);
    switch (w.manner) {
        case EntryManner::figure: break;
        case EntryManner::yes_no: {
            const bool yes = reading.value > 0.5;
            if (reading.kind == ReadingKind::hold_point) return yes ? words("released") : words("held");
            return yes ? w.yes : w.no;
        }
        case EntryManner::words:
            if (subject.isEmpty()) return qs(reading.note);
            return reading.note.empty() ? subject : QStringLiteral("%1: %2").arg(subject, qs(reading.note));
        case EntryManner::signature: return subject.isEmpty() ? words("signed") : words("signed as %1").arg(subject);
        case EntryManner::photograph: return qs(reading.note);
    }
    QString text = quantity(reading.value, w.unit, w.decimals);
    if (reading.second_value && !w.second_name.isEmpty()) {
        const QString second = quantity(*reading.second_value, w.second_unit, 1);
        text +=
            reading.kind == ReadingKind::hygiene_setting ? words(" every %1").arg(second) : words(" at %1").arg(second);
    }
    return text;
}

QString entered_words(const Reading& reading, const QDate& today) {
    const QDateTime at = QDateTime::fromString(qs(reading.taken_at), Qt::ISODate).toLocalTime();
    QString value = reading.kind == ReadingKind::serial_number ? qs(reading.note) : value_words(reading);
    // The row names the role already.
    if (reading.kind == ReadingKind::signature && !reading.taken_by.empty())
        value = words("signed by %1").arg(qs(reading.taken_by));
    if (value.isEmpty()) value = words("entered");
    const QString form = at.date() == today ? QStringLiteral("HH:mm") : QStringLiteral("yyyy-MM-dd HH:mm");
    return QStringLiteral("%1, %2").arg(value, at.toString(form));
}

bool plausible(ReadingKind kind, double value) {
    const ReadingWords& w = words_of(kind);
    return w.value_name.isEmpty() || (std::isfinite(value) && value >= w.least && value <= w.most);
}

}  // namespace wg::ui
