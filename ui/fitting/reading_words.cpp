#include "ui/fitting/reading_words.h"

#include <QCoreApplication>
#include <cmath>

#include "ui/common/format.h"

namespace wg::ui {
namespace {

QString words(const char* text) {
    return QCoreApplication::translate("ReadingWords", text);
}

std::vector<ReadingWords> make_table() {
    const QString celsius = QStringLiteral("°C");
    const QString pressure = words("Pressure, gauge");
    const QString gas = words("Gas temperature");
    const QString level = words("Pressure, absolute");
    const QString cold = words("Coldest part");
    const auto plain = [&](ReadingKind kind, const QString& name, const QString& unit, int decimals, double least,
                           double most) {
        return ReadingWords{kind, name, unit, decimals, least, most, QString(), QString()};
    };
    const QString t = words("Temperature");
    return {
        {ReadingKind::pressure_hold_start, pressure, QStringLiteral("bar"), 2, 0.0, 60.0, gas, celsius},
        {ReadingKind::pressure_hold_end, pressure, QStringLiteral("bar"), 2, 0.0, 60.0, gas, celsius},
        {ReadingKind::vacuum_level, level, QStringLiteral("Pa"), 0, 0.0, 110000.0, cold, celsius},
        {ReadingKind::vacuum_after_rise, level, QStringLiteral("Pa"), 0, 0.0, 110000.0, cold, celsius},
        plain(ReadingKind::charge_added, words("Weighed in"), QStringLiteral("kg"), 3, 0.0, 20.0),
        plain(ReadingKind::suction_temperature, t, celsius, 1, -60.0, 80.0),
        plain(ReadingKind::discharge_temperature, t, celsius, 1, -40.0, 180.0),
        plain(ReadingKind::supply_current, words("Current"), QStringLiteral("A"), 1, 0.0, 100.0),
        plain(ReadingKind::water_temperature, t, celsius, 1, 0.0, 99.0),
        plain(ReadingKind::outdoor_temperature, t, celsius, 1, -50.0, 60.0),
        plain(ReadingKind::insulation_resistance, words("Resistance"), QStringLiteral("MΩ"), 1, 0.0, 100000.0),
        plain(ReadingKind::earth_resistance, words("Resistance"), QStringLiteral("Ω"), 1, 0.0, 100000.0),
        plain(ReadingKind::residual_current_trip, words("Trip time"), QStringLiteral("ms"), 0, 0.0, 10000.0),
        {ReadingKind::remark, QString(), QString(), 0, 0.0, 0.0, QString(), QString()},
    };
}

}  // namespace

const ReadingWords& words_of(ReadingKind kind) {
    static const std::vector<ReadingWords> table = make_table();
    for (const ReadingWords& entry : table) {
        if (entry.kind == kind) return entry;
    }
    return table.back();
}

QString value_words(const Reading& reading) {
    const ReadingWords& w = words_of(reading.kind);
    if (w.value_name.isEmpty()) return qs(reading.note);
    QString text = quantity(reading.value, w.unit, w.decimals);
    if (reading.second_value && !w.second_name.isEmpty()) {
        text += words(" at %1").arg(quantity(*reading.second_value, w.second_unit, 1));
    }
    return text;
}

bool plausible(ReadingKind kind, double value) {
    const ReadingWords& w = words_of(kind);
    return w.value_name.isEmpty() || (std::isfinite(value) && value >= w.least && value <= w.most);
}

}  // namespace wg::ui
