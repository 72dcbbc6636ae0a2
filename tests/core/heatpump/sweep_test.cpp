// First and second law and the envelope on every point of a wide sweep; monotony on pairs of points.

#include <gtest/gtest.h>

#include <array>
#include <cmath>
#include <map>

#include "tests/core/heatpump/wide_sweep.h"
#include "tests/tools/sweep.h"

namespace sweep_test {

using namespace wg;
using heatpump::CondenserZone;
using heatpump::HeatPump;
using heatpump::Line;
using heatpump::Off;
using heatpump::PlateBalance;
using heatpump::Point;
using heatpump_test::Pool;
using heatpump_test::WideSweep;

constexpr unsigned seed = 20240573;

/// What is wrong with a point; empty when nothing is. Text only when it fails: a hundred thousand points pass here.
struct Verdict {
    const char* what = nullptr;
    void holds(bool good, const char* claim) {
        if (!good && what == nullptr) what = claim;
    }
};

bool all_finite(const Point& p) {
    const auto& h = p.plate;
    for (const double x :
         {p.evaporating_c,   p.suction_c,    p.condensing_c, p.plate_c,      p.discharge_c, p.pressure_ratio,
          p.evaporator_w,    p.line_w,       p.work_w,       p.shell_loss_w, p.condenser_w, h.light_w,
          h.air_w,           h.long_wave_w,  h.latent_w,     h.melt_w,       h.slope_w_k,   h.frost_front_kg_s,
          h.frost_rear_kg_s, h.melt_front_w, h.melt_rear_w})
        if (!std::isfinite(x)) return false;
    return true;
}

void second_law(const Point& p, const CondenserZone& zone, Verdict& v) {
    const double cold_k = kelvin(p.suction_c);
    const double hot_k = kelvin(p.condensing_c);
    v.holds(p.work_w > 0.0, "work above zero");
    v.holds(hot_k > cold_k, "condensing above evaporating");
    v.holds(p.cop() < hot_k / (hot_k - cold_k), "COP below Carnot between evaporating and condensing");
    // Entropy: heat leaves at the condensing temperature, came in at the evaporating one; what a line gives to colder
    // air left before, and what the shell gives away would only add.
    v.holds(p.condenser_w / hot_k > (p.evaporator_w + std::min(0.0, p.line_w)) / cold_k,
            "entropy of the circuit grows");
    // And between plate and water: heat flows downhill on both sides.
    v.holds(p.plate_c > p.suction_c, "plate warmer than its refrigerant");
    for (std::size_t i = 0; i < zone.count; ++i)
        if (zone.share[i] > 0.999) v.holds(p.condensing_c > zone.water_c[i], "refrigerant warmer than the water");
}

void first_law(const Point& p, const PlateBalance& balance, Verdict& v) {
    const auto& h = p.plate;
    const double miss = h.light_w + h.air_w + h.long_wave_w + h.latent_w - h.melt_w + p.line_w + p.work_w -
                        p.shell_loss_w - p.condenser_w;
    v.holds(std::abs(miss) <= 1e-6 * (p.condenser_w + p.work_w) + heatpump::balance_tolerance_w,
            "first law, term by term");
    const double circuit = p.evaporator_w + p.line_w + p.work_w - p.shell_loss_w - p.condenser_w;
    v.holds(std::abs(circuit) <= 1e-9 * p.condenser_w, "first law of the circuit, to rounding");
    const double passed = (p.plate_c - p.evaporating_c) * balance.plate().refrigerant_w_k;
    if (p.pressure_limited)
        v.holds(passed >= p.evaporator_w - 0.05, "plate at least as warm as the heat needs");
    else
        v.holds(std::abs(passed - p.evaporator_w) <= 0.05, "plate as warm as the heat needs");
}

void envelope(const Point& p, const BlockModel& block, Verdict& v) {
    v.holds(p.suction_c >= block.evaporating_min_c && p.suction_c <= block.evaporating_max_c, "suction in envelope");
    v.holds(p.condensing_c <= block.condensing_max_c, "condensing in envelope");
    v.holds(p.pressure_ratio > 1.0 && p.pressure_ratio <= block.pressure_ratio_max, "pressure ratio in envelope");
    v.holds(p.discharge_c > p.suction_c && p.discharge_c <= block.discharge_max_c, "discharge in envelope");
    // A last short step in suction temperature (0.01 K) is taken along slopes that may cross the floor's crease.
    v.holds(p.condensing_c - p.suction_c >= block.least_lift_k - 0.01, "least lift");
    v.holds(p.evaluations <= 90, "search ends soon");
}

/// Condensing temperature such that the condenser passes the heat; a layer as warm as the refrigerant makes a crease
/// that the last short step may cross.
void condenser(const Point& p, const CondenserZone& zone, const BlockModel& block, Verdict& v) {
    constexpr double crease_k = 0.03;
    if (p.condensing_c - p.suction_c <= block.least_lift_k + 0.1) return;
    v.holds(zone.heat_w(p.condensing_c - crease_k) <= p.condenser_w &&
                zone.heat_w(p.condensing_c + crease_k) >= p.condenser_w,
            "condenser passes the heat");
}

TEST(WideSweep, both_laws_and_the_envelope_hold_on_every_point) {
    const int cases = sweep::cases(100000);
    WideSweep sweep(seed);
    const Pool pool(sweep, 240);
    int running = 0;
    int limited = 0;
    int frosted = 0;
    std::map<Off, int> off;
    double best_share_of_carnot = 0.0;
    for (int i = 0; i < cases; ++i) {
        const HeatPump& set = pool.at(i);
        const auto plate = sweep.plate();
        PlateBalance balance(plate, sweep.weather());
        const auto frost = sweep.frost();
        balance.set_frost(frost, 600.0);
        const CondenserZone zone = sweep.water(set.block().condenser_w_k);
        const Line line = sweep.line();
        const heatpump::Guess guess = sweep.guess();  // anything: a bad start must not show in the result
        const Point p = set.point(balance, zone, line, guess);
        Verdict v;
        v.holds(all_finite(p), "all figures finite");
        ++off[p.off];
        if (p.running()) {
            ++running;
            limited += p.pressure_limited ? 1 : 0;
            frosted += frost.lies() ? 1 : 0;
            second_law(p, zone, v);
            first_law(p, balance, v);
            envelope(p, set.block(), v);
            condenser(p, zone, set.block(), v);
            const double carnot = kelvin(p.condensing_c) / (p.condensing_c - p.suction_c);
            best_share_of_carnot = std::max(best_share_of_carnot, p.cop() / carnot);
        } else {
            v.holds(p.work_w == 0.0 && p.condenser_w == 0.0 && p.evaporator_w == 0.0, "off gives and takes nothing");
        }
        ASSERT_EQ(v.what, nullptr) << v.what << ": seed " << seed << " case " << i << " "
                                   << name_of(set.block().refrigerant);
    }
    // The sweep reaches every branch.
    EXPECT_GT(running, cases / 2);
    EXPECT_GT(limited, cases / 100);
    EXPECT_GT(frosted, cases / 20);
    for (const Off reason : {Off::too_cold, Off::condensing, Off::pressure_ratio, Off::discharge})
        EXPECT_GT(off[reason], cases / 1000) << heatpump::reason_text(reason);
    // Best overall efficiency 0.68, and the warmth of a suction line is no gain.
    EXPECT_LT(best_share_of_carnot, 0.70);
    EXPECT_GT(best_share_of_carnot, 0.50);
}

/// Heat and work of the same set in slightly other conditions.
struct Pair {
    const HeatPump& set;
    CondenserZone zone;
    heatpump::Plate plate;
    heatpump::Surroundings weather;
    heatpump::Frost frost;
    Point base;

    [[nodiscard]] Point at(const heatpump::Plate& p, const heatpump::Surroundings& s, const Line& line = {}) const {
        PlateBalance balance(p, s);
        balance.set_frost(frost, 600.0);
        return set.point(balance, zone, line, {base.suction_c, base.condensing_c});
    }
};

constexpr double noise_w = 0.02;  // tolerances of the searches, times a gain below ten

/// Claims of capacity; each names what was made better (or, for lines, worse).
void better_is_not_less(const Pair& pair, double amount, Verdict& v) {
    const auto not_less = [&](const heatpump::Surroundings& s, const char* claim) {
        const Point p = pair.at(pair.plate, s);
        if (p.running()) v.holds(p.condenser_w >= pair.base.condenser_w - noise_w, claim);
    };
    auto s = pair.weather;
    s.front_w_m2 += 200.0 * amount;
    not_less(s, "more light");
    s = pair.weather;
    s.rear_w_m2 += 100.0 * amount;
    not_less(s, "more light behind");
    s = pair.weather;  // equal absolute humidity: the dew point stays
    s.air_c += 5.0 * amount;
    if (!pair.frost.lies()) not_less(s, "warmer air at equal absolute humidity");
    s = pair.weather;
    s.sky_k += 10.0 * amount;
    not_less(s, "warmer sky");
    s = pair.weather;
    s.dew_point_c = std::min(s.air_c, s.dew_point_c + 4.0 * amount);
    not_less(s, "damper air");
    s = pair.weather;
    s.wind_m_s += 2.0 * amount;
    const bool dry = pair.base.plate.latent_w == 0.0;
    if (dry && !pair.frost.lies() && !pair.base.pressure_limited && pair.base.plate_c < s.air_c - 1.0)
        not_less(s, "more wind on a dry unfrosted plate colder than the air");
    auto larger = pair.plate;
    larger.refrigerant_w_k *= 1.0 + amount;
    const Point tighter = pair.at(larger, pair.weather);
    if (tighter.running()) v.holds(tighter.condenser_w >= pair.base.condenser_w - noise_w, "better joint to the plate");
    // Longer lines as pipework makes them: drop and gain grow together.
    double before = pair.base.condenser_w;
    for (const double metres : {5.0, 10.0, 20.0}) {
        const Point lined = pair.at(pair.plate, pair.weather, {0.25 * metres, 0.06 * metres});
        if (!lined.running()) break;
        v.holds(lined.condenser_w <= before + noise_w, "longer line");
        before = lined.condenser_w;
    }
}

TEST(WideSweep, better_conditions_never_give_less_with_any_refrigerant) {
    const int cases = sweep::cases(8000);
    WideSweep sweep(seed + 1);
    const Pool pool(sweep, 80);
    int compared = 0;
    for (int i = 0; i < cases; ++i) {
        const HeatPump& set = pool.at(i);
        // Braces evaluate from left to right: the same cases with any compiler.
        Pair pair{set, sweep.water(set.block().condenser_w_k), sweep.plate(), sweep.weather(), sweep.frost(), {}};
        pair.base = pair.at(pair.plate, pair.weather);
        const double amount = sweep.between(0.05, 1.0);
        if (!pair.base.running()) continue;
        ++compared;
        Verdict v;
        better_is_not_less(pair, amount, v);
        ASSERT_EQ(v.what, nullptr) << v.what << ": seed " << seed + 1 << " case " << i << " "
                                   << name_of(set.block().refrigerant);
    }
    EXPECT_GT(compared, cases / 2);
}

// A start far outside the envelope, where the circuit gives more heat the hotter it condenses: the search once stopped
// there, hundreds of watts off, and told that the set was running.
TEST(WideSweep, a_start_where_there_is_no_slope_to_follow_finds_the_same_point) {
    const auto fluid = heatpump_test::properties("R1234yf");
    BlockModel block;
    block.refrigerant = Refrigerant::r1234yf;
    block.displacement_cm3 = 21.8;
    block.speed_rpm = 3060.0;
    block.volumetric_at_unity = 0.967;
    block.volumetric_slope = 0.0322;
    block.overall_peak = 0.54;
    block.overall_peak_at = 3.52;
    block.overall_curvature = 0.366;
    block.superheat_k = 2.38;
    block.subcooling_k = 8.97;
    block.shell_loss = 0.0348;
    block.least_lift_k = 14.8;
    block.condenser_w_k = 104.0;
    const HeatPump set = heatpump_test::pump(block, *fluid);
    for (const double air_c : {-4.0, 4.0, 12.0})
        for (const double water_c : {10.0, 20.0, 30.0}) {
            const auto plate = heatpump::plate_of(CollectorModel{}, 1, 80.0, 0.8, false);
            const PlateBalance balance(plate, heatpump_test::surroundings(0, air_c, 0.8, 1.0, 8));
            const auto zone = CondenserZone::uniform(block.condenser_w_k, water_c);
            const Point good = set.point(balance, zone, {}, {-15.0, 35.0});
            for (double te = -25.0; te <= -15.0; te += 0.7)
                for (double tc = 60.0; tc < 80.0; tc += 0.9) {
                    const Point p = set.point(balance, zone, {}, {te, tc});
                    ASSERT_EQ(p.off, good.off) << te << " " << tc;
                    ASSERT_NEAR(p.condenser_w, good.condenser_w, 0.01) << te << " " << tc;
                }
        }
}

// Hotter water: less COP, at the same plate and weather.
TEST(WideSweep, warmer_water_never_raises_the_coefficient_of_performance) {
    const int cases = sweep::cases(8000);
    WideSweep sweep(seed + 2);
    const Pool pool(sweep, 80);
    constexpr double noise_share = 1e-4;  // at the least lift both are the same point but for the search's tolerance
    int compared = 0;
    for (int i = 0; i < cases; ++i) {
        const HeatPump& set = pool.at(i);
        const auto plate = sweep.plate();
        const PlateBalance balance(plate, sweep.weather());
        const double water_c = sweep.between(5, 60);
        const auto at = [&](double t) {
            return set.point(balance, CondenserZone::uniform(set.block().condenser_w_k, t), {}, {});
        };
        const Point cool = at(water_c);
        const Point warm = at(water_c + 5.0);
        if (!cool.running() || !warm.running()) continue;
        ++compared;
        ASSERT_LE(warm.cop(), cool.cop() * (1.0 + noise_share)) << "seed " << seed + 2 << " case " << i;
    }
    EXPECT_GT(compared, cases / 3);
}

}  // namespace sweep_test
