#include "core/aftercare/drift.h"

#include <algorithm>
#include <cmath>
#include <memory>

#include "core/commissioning/commissioning.h"
#include "core/job/words.h"
#include "core/quantity/text.h"

namespace wg::aftercare {
namespace {

using K = ReadingKind;

// Assumed where the day's reading is missing.
constexpr double assumed_wind_m_s = 2.0;
constexpr double assumed_humidity_gap_k = 3.0;  // dew point below air
constexpr double sky_below_air_k = 10.0;
constexpr double brightest_w_m2 = 800.0;  // light unknown: anything between none and this

struct Day {
    CivilDate on;
    std::vector<const Reading*> readings;
};

std::vector<Day> days_of(const std::vector<Reading>& standing) {
    std::vector<Day> days;
    for (const Reading& reading : standing) {
        const std::optional<CivilDate> on = day_of(reading);
        if (!on) continue;
        auto day = std::find_if(days.begin(), days.end(), [&](const Day& d) { return d.on == *on; });
        if (day == days.end()) day = days.insert(days.end(), Day{*on, {}});
        day->readings.push_back(&reading);
    }
    std::stable_sort(days.begin(), days.end(), [](const Day& a, const Day& b) { return before(a.on, b.on); });
    return days;
}

const Reading* last_of(const Day& day, ReadingKind kind) {
    const auto found = std::find_if(day.readings.rbegin(), day.readings.rend(),
                                    [&](const Reading* r) { return r->kind == kind && std::isfinite(r->value); });
    return found == day.readings.rend() ? nullptr : *found;
}

DayConditions conditions_of(const Day& day) {
    const auto value = [&](ReadingKind kind) {
        const Reading* r = last_of(day, kind);
        return r != nullptr ? std::optional<double>(r->value) : std::nullopt;
    };
    return {value(K::water_temperature), value(K::outdoor_temperature), value(K::irradiance), value(K::wind_speed)};
}

double usual_change_of(const Measured& kind, double first) {
    return kind.by_share ? kind.usual_change * std::abs(first) : kind.usual_change;
}

void conclude(const Measured& kind, DriftRow& row) {
    if (kind.condition) {
        row.drift = Drift::condition;
        row.words = "a condition of the day, which the model takes out of the others";
    }
    if (row.points.size() < 2) {
        if (!kind.condition) row.words = "read once";
        return;
    }
    const DriftPoint& first = row.points.front();
    const DriftPoint& last = row.points.back();
    row.change = last.read - first.read;
    if (kind.condition) return;
    const auto figure = [&](double value) {
        return (value > 0.0 ? "+" : "") + fixed(value, kind.decimals) + " " + kind.unit;
    };
    if (first.model && last.model) {
        // What the same system would show on both days cancels the model's error that is the same on both.
        row.beyond_model = (last.read - last.model->mid) - (first.read - first.model->mid);
        const double room = std::max(0.5 * (last.model->high - last.model->low), usual_change_of(kind, first.read));
        row.drift = std::abs(*row.beyond_model) <= room ? Drift::steady : Drift::moved;
        row.words = figure(*row.beyond_model) + " beyond what the days' conditions explain; up to " +
                    fixed(room, kind.decimals) + " " + kind.unit + " is within the model's range";
        return;
    }
    if (kind.of_the_day || kind.usual_change <= 0.0) {
        row.drift = Drift::cannot_tell;
        row.words = figure(*row.change) +
                    "; it moves with weather and water: read the water at the sensor and the "
                    "outdoor air on the same day, and the model can compare";
        return;
    }
    const double room = usual_change_of(kind, first.read);
    row.drift = std::abs(*row.change) <= room ? Drift::steady : Drift::moved;
    row.words = figure(*row.change) + "; up to " + fixed(room, kind.decimals) + " " + kind.unit + " is usual";
}

}  // namespace

const std::vector<Measured>& measured_kinds() {
    static const std::vector<Measured> kinds = {
        {K::outdoor_temperature, "\u00b0C", 1, -50.0, 60.0, 0.0, false, true, true},
        {K::irradiance, "W/m\u00b2", 0, 0.0, 1500.0, 0.0, false, true, true},
        {K::wind_speed, "m/s", 1, 0.0, 60.0, 0.0, false, true, true},
        {K::water_temperature, "\u00b0C", 1, 0.0, 99.0, 0.0, false, true, true},
        {K::suction_temperature, "\u00b0C", 1, -60.0, 80.0, 0.0, false, true},
        {K::suction_pressure, "bar", 2, -1.0, 60.0, 0.0, false, true},
        {K::superheat, "K", 1, -10.0, 60.0, 4.0, false, false},
        {K::discharge_temperature, "\u00b0C", 1, -40.0, 180.0, 0.0, false, true},
        {K::discharge_pressure, "bar", 2, -1.0, 60.0, 0.0, false, true},
        {K::supply_current, "A", 1, 0.0, 100.0, 0.0, false, true},
        {K::supply_voltage, "V", 0, 0.0, 500.0, 0.06, true, false},
        {K::insulation_resistance, "M\u03a9", 1, 0.0, 100000.0, 0.5, true, false},
        {K::earth_resistance, "\u03a9", 1, 0.0, 100000.0, 0.5, true, false},
        {K::protective_conductor, "\u03a9", 2, 0.0, 10000.0, 0.1, false, false},
        {K::loop_impedance, "\u03a9", 2, 0.0, 10000.0, 0.3, true, false},
        {K::residual_current_trip, "ms", 0, 0.0, 10000.0, 0.5, true, false},
        {K::cold_pressure, "bar", 2, 0.0, 25.0, 0.5, false, false},
        {K::tap_temperature, "\u00b0C", 1, 0.0, 99.0, 4.0, false, false},
        {K::set_point, "\u00b0C", 1, 20.0, 90.0, 0.5, false, false},
    };
    return kinds;
}

const Measured* measured(ReadingKind kind) noexcept {
    for (const Measured& entry : measured_kinds()) {
        if (entry.kind == kind) return &entry;
    }
    return nullptr;
}

const ModelBand* DayBands::of(ReadingKind kind) const noexcept {
    for (const auto& [of, band] : bands) {
        if (of == kind) return &band;
    }
    return nullptr;
}

const char* text_of(Drift drift) noexcept {
    switch (drift) {
        case Drift::single: return "read once";
        case Drift::condition: return "of the day";
        case Drift::steady: return "steady";
        case Drift::moved: return "moved";
        case Drift::cannot_tell: return "cannot tell";
    }
    return "cannot tell";
}

ModelAtDay model_of(const plan::Plan& plan, const refrigerant::Properties& refrigerant) {
    if (plan.placements.empty()) return {};
    Result<heatpump::HeatPump> made = heatpump::HeatPump::make(plan.block, refrigerant);
    if (!made) return {};
    const auto pump = std::make_shared<const heatpump::HeatPump>(std::move(made).value());
    const plan::PlacementPlan& placed = plan.placements.front();
    commissioning::StartConditions base;
    base.plate = heatpump::plate_of(plan.collector, static_cast<int>(plan.placements.size()), placed.placed.tilt_deg,
                                    placed.shade.sky_view, placed.on_frame);
    base.line = {plan.run.line_ua_w_k, plan.run.suction_drop_k};
    base.air_pressure_bar = plan.expected.air_pressure_bar;
    return [pump, base](const DayConditions& day) {
        DayBands out;
        if (!day.enough()) return out;
        commissioning::StartConditions c = base;
        c.water_c = *day.water_c;
        c.light_known = day.light_w_m2.has_value();
        c.surroundings.front_w_m2 = day.light_w_m2.value_or(brightest_w_m2);
        c.surroundings.rear_w_m2 = 0.0;
        c.surroundings.air_c = *day.air_c;
        c.surroundings.dew_point_c = *day.air_c - assumed_humidity_gap_k;
        c.surroundings.wind_m_s = day.wind_m_s.value_or(assumed_wind_m_s);
        c.surroundings.sky_k = *day.air_c + 273.15 - sky_below_air_k;
        c.surroundings.pressure_pa = base.air_pressure_bar * 1e5;
        const commissioning::StartResult result = commissioning::judge(*pump, c, {});
        if (result.verdict == commissioning::StartVerdict::cannot_run) return out;
        const std::pair<ReadingKind, commissioning::StartQuantity> pairs[] = {
            {K::suction_temperature, commissioning::StartQuantity::suction_gas},
            {K::suction_pressure, commissioning::StartQuantity::suction_pressure},
            {K::discharge_temperature, commissioning::StartQuantity::discharge},
            {K::discharge_pressure, commissioning::StartQuantity::discharge_pressure},
            {K::supply_current, commissioning::StartQuantity::current}};
        for (const auto& [kind, quantity] : pairs) {
            const commissioning::StartBand& band = result.bands[static_cast<std::size_t>(quantity)];
            out.bands.push_back({kind, {band.low, band.mid, band.high}});
        }
        return out;
    };
}

std::vector<DriftRow> drift(const std::vector<Reading>& record, const ModelAtDay& model) {
    const std::vector<Reading> standing = commissioning::standing(record);
    const std::vector<Day> days = days_of(standing);
    std::vector<DayBands> bands;
    bands.reserve(days.size());
    for (const Day& day : days)
        bands.push_back(model ? model(conditions_of(day)) : DayBands());
    std::vector<DriftRow> rows;
    for (const Measured& kind : measured_kinds()) {
        DriftRow row;
        row.kind = kind.kind;
        row.unit = kind.unit;
        row.decimals = kind.decimals;
        for (std::size_t i = 0; i < days.size(); ++i) {
            const Reading* reading = last_of(days[i], kind.kind);
            if (reading == nullptr) continue;
            DriftPoint point{days[i].on, reading->occasion, reading->value, std::nullopt, reading->taken_by};
            if (const ModelBand* band = bands[i].of(kind.kind)) point.model = *band;
            row.points.push_back(std::move(point));
        }
        if (row.points.empty()) continue;
        conclude(kind, row);
        rows.push_back(std::move(row));
    }
    std::stable_partition(rows.begin(), rows.end(), [](const DriftRow& row) { return row.drift != Drift::condition; });
    return rows;
}

}  // namespace wg::aftercare
