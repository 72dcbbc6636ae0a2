#include "core/rating/rating.h"

#include <algorithm>
#include <cmath>

#include "core/cylinder/tapping.h"
#include "core/heatpump/moist_air.h"
#include "core/quantity/constants.h"
#include "core/quantity/text.h"
#include "core/rating/course.h"

namespace wg::rating {

double dew_point_c(const Air& air, double pressure_pa) noexcept {
    const double deficit_pa = 6.53e-4 * (1.0 + 0.000944 * air.wet_c) * pressure_pa * (air.dry_c - air.wet_c);
    const double vapour_pa = heatpump::vapour_pressure_over_water_pa(air.wet_c) - deficit_pa;
    if (!(vapour_pa > 1.0)) return -90.0;
    const double x = std::log(vapour_pa / 611.2);
    return 243.12 * x / (17.62 - x);
}

season::Input input_of(const Item& item, const Chamber& chamber, const Test& test) {
    season::Input input;
    input.collector = item.collector;
    input.groups[0].count = item.collectors;
    input.block = item.block;
    input.cylinder = item.cylinder;
    input.cylinder.immersion_w = 0.0;  // the pump is rated alone
    input.refrigerant = item.refrigerant;
    input.groups[0].tilt_deg = chamber.tilt_deg;
    input.groups[0].rear_free = true;  // both faces see the chamber's walls
    input.room_c = chamber.room_c;
    input.line_ua_w_k = item.line_ua_w_k;
    input.suction_drop_k = item.suction_drop_k;
    input.demand.cycle = test.cycle;
    input.demand.set_point_c = item.set_point_c;
    input.demand.hysteresis_k = item.hysteresis_k;
    input.demand.cold_mean_c = chamber.cold_c;
    input.demand.cold_swing_k = 0.0;
    return input;
}

heatpump::Surroundings surroundings_of(const Chamber& chamber) noexcept {
    return {0.0,
            0.0,
            chamber.air.dry_c,
            std::min(dew_point_c(chamber.air, chamber.pressure_pa), chamber.air.dry_c),
            chamber.air_speed_m_s,
            kelvin(chamber.air.dry_c),
            chamber.pressure_pa};
}

std::vector<Problem> problems_of(const Item& item, const Chamber& chamber, const Test& test) {
    season::Options options;
    options.step_s = test.step_s;
    options.nodes = test.nodes;
    auto problems = season::problems_of(input_of(item, chamber, test), options, false);
    const auto check = [&](const char* where, double value, double low, double high) {
        if (value >= low && value <= high) return;
        problems.push_back({std::string("rating test.") + where,
                            "the value " + fixed(value, 2) + " lies outside " + fixed(low, 2) + " to " + fixed(high, 2),
                            "Correct the test conditions"});
    };
    check("air.dry_c", chamber.air.dry_c, -20.0, 45.0);
    check("air.wet_c", chamber.air.wet_c, chamber.air.dry_c - 15.0, chamber.air.dry_c);
    check("air_speed_m_s", chamber.air_speed_m_s, 0.0, 5.0);
    check("cold_c", chamber.cold_c, 1.0, 25.0);
    check("pressure_pa", chamber.pressure_pa, 60000.0, 110000.0);
    check("settling_days", test.settling_days, 0, 30);
    check("counted_days", test.counted_days, 1, 30);
    check("standby_cycles", test.standby_cycles, 1, 10);
    return problems;
}

namespace {

constexpr double v40_c = 40.0;
constexpr double v40_portion_l = 0.5;

/// Water leaves by plug flow, the pump standing still, until the outlet falls below 40 deg C; never more than the
/// cylinder holds, which comes in cold meanwhile.
void draw_out(const cylinder::Store& full, const Chamber& chamber, Rating& rating) {
    cylinder::Store store = full;
    double drawn_l = 0.0;
    double heat_l_k = 0.0;
    while (drawn_l < store.geometry().volume_l) {
        const double hot_c = store.top_c();
        if (hot_c < v40_c) break;
        const double litres = std::min(v40_portion_l, store.layer_l(0));
        store.shift(litres, chamber.cold_c);
        drawn_l += litres;
        heat_l_k += litres * (hot_c - chamber.cold_c);
    }
    if (!(drawn_l > 0.0)) return;
    rating.v40_l = heat_l_k / (v40_c - chamber.cold_c);
    rating.hot_water_c = chamber.cold_c + heat_l_k / drawn_l;
}

void into(Day& day, const season::Ledger& sum, double days) {
    const auto kwh = [days](double joule) { return joule / joule_per_kwh / days; };
    day.useful_kwh = kwh(sum.drawn);
    day.shortfall_kwh = kwh(sum.shortfall);
    day.condenser_kwh = kwh(sum.condenser);
    day.standing_loss_kwh = kwh(sum.standing_loss);
    day.store_change_kwh = kwh(sum.store_change);
    day.compressor_kwh = kwh(sum.compressor);
    day.defrost_kwh = kwh(sum.defrost);
    day.standby_kwh = kwh(sum.standby);
    day.running_h = sum.running_s / 3600.0 / days;
    day.frost_h = sum.frost_s / 3600.0 / days;
    day.rest_h = sum.rest_s / 3600.0 / days;
    day.short_draws = sum.short_draws;
}

/// Electricity put to the heat that made the store warmer or colder over the counted days does not count.
double cop_of(const Day& day) noexcept {
    if (!(day.condenser_kwh > 0.0)) return 0.0;
    const double electricity_kwh = day.electricity_kwh() * (1.0 - day.store_change_kwh / day.condenser_kwh);
    return electricity_kwh > 0.0 ? day.useful_kwh / electricity_kwh : 0.0;
}

}  // namespace

Rating rate_with(const heatpump::HeatPump& pump, const Item& item, const Chamber& chamber, const Test& test) {
    Rating rating;
    const auto surroundings = surroundings_of(chamber);
    rating.relative_humidity = heatpump::vapour_pressure_over_water_pa(surroundings.dew_point_c) /
                               heatpump::vapour_pressure_over_water_pa(surroundings.air_c);
    Course course(item, chamber, test, pump);
    const auto give_up = [&rating](const char* stage, const std::string& why) {
        rating.why_not = std::string(stage) + ": " + why;
        return rating;
    };

    const Stretch heating = course.until_stop(test.curve ? &rating.curve : nullptr);
    rating.heat_up_h = heating.duration_s / 3600.0;
    rating.heat_up_heat_kwh = heating.sum.condenser / joule_per_kwh;
    rating.heat_up_electricity_kwh = heating.electricity_j / joule_per_kwh;
    if (!heating.stopped) return give_up("Heating up", heating.why_not);
    rating.closure = course.closure();
    if (test.heat_up_only) {
        rating.completed = true;
        return rating;
    }

    Stretch standby;
    for (int cycle = 0; cycle < test.standby_cycles; ++cycle) {
        const Stretch one = course.until_next_stop();
        if (!one.stopped) return give_up("Standing hot", one.why_not);
        standby.duration_s += one.duration_s;
        standby.electricity_j += one.electricity_j;
    }
    rating.standby_h = standby.duration_s / 3600.0;
    rating.standby_w = standby.electricity_j / standby.duration_s;

    for (int day = 0; day < test.settling_days; ++day)
        course.draw_off_day(nullptr);
    int missed = 0;
    season::Ledger sum;
    for (int day = 0; day < test.counted_days; ++day)
        sum.add(course.draw_off_day(&missed));
    into(rating.day, sum, test.counted_days);
    rating.day.peaks_missed = missed;
    rating.cop_dhw = cop_of(rating.day);
    if (!(rating.cop_dhw > 0.0)) return give_up("Draw-off", "the pump gave no heat");

    const Stretch last = course.until_stop();
    if (!last.stopped) return give_up("Heating before the last draw", last.why_not);
    draw_out(course.store(), chamber, rating);
    rating.closure = course.closure();
    rating.completed = true;
    return rating;
}

SteadyPoint steady_with(const heatpump::HeatPump& pump, const Item& item, const Chamber& chamber, double water_c) {
    const heatpump::PlateBalance balance(
        heatpump::plate_of(item.collector, item.collectors, chamber.tilt_deg, 1.0, true), surroundings_of(chamber));
    const auto zone = heatpump::CondenserZone::uniform(item.block.condenser_w_k, water_c, item.block.condenser_glide_k);
    const auto point = pump.point(balance, zone, {item.line_ua_w_k, item.suction_drop_k}, {});
    SteadyPoint out;
    out.running = point.running();
    if (!out.running) {
        out.why_not = heatpump::reason_text(point.off);
        return out;
    }
    out.heat_w = point.condenser_w;
    out.electric_w = point.work_w + item.block.standby_w;
    out.cop = out.heat_w / out.electric_w;
    return out;
}

Result<Rating> rate(const Item& item, const Chamber& chamber, const Test& test) {
    if (auto problems = problems_of(item, chamber, test); !problems.empty()) return problems;
    const auto made = heatpump::HeatPump::make(item.block, *item.refrigerant);
    if (!made) return made.problems();
    return rate_with(made.value(), item, chamber, test);
}

Result<SteadyPoint> steady_point(const Item& item, const Chamber& chamber, double water_c) {
    auto problems = problems_of(item, chamber, Test{});
    if (!(water_c >= 5.0 && water_c <= 70.0))
        problems.push_back({"steady point.water_c", "the value " + fixed(water_c, 1) + " lies outside 5 to 70",
                            "Correct the water temperature"});
    if (!problems.empty()) return problems;
    const auto made = heatpump::HeatPump::make(item.block, *item.refrigerant);
    if (!made) return made.problems();
    return steady_with(made.value(), item, chamber, water_c);
}

}  // namespace wg::rating
