// Single steps: control and frost.

#include "core/season/simulation.h"

#include <gtest/gtest.h>

#include "tests/core/season/fixture.h"

namespace {

using namespace wg;
using season_test::equipment;

struct Set {
    explicit Set(const season::Input& in)
        : input(in), pump(heatpump::HeatPump::make(in.block, *in.refrigerant).value()) {}
    season::Simulation start(double water_c) const { return season::Simulation(input, pump, {}, water_c); }
    season::Input input;
    heatpump::HeatPump pump;
};

const heatpump::Surroundings damp_night{0, 0, 1, 0.5, 1.5, kelvin(-8), 101325};
const heatpump::Surroundings mild_day{500, 0, 16, 8, 2, kelvin(6), 101325};

TEST(Thermostat, starts_below_the_band_and_stops_at_the_set_point) {
    const Set set(equipment(2, 18.0));
    auto warm = set.start(50.0);
    warm.set_weather(mild_day);
    EXPECT_EQ(warm.step(600.0, nullptr, 0, 10.0).running_s, 0.0);
    auto cool = set.start(48.0);
    cool.set_weather(mild_day);
    double running = 0.0;
    for (int i = 0; i < 30 && (i == 0 || cool.running()); ++i)
        running += cool.step(600.0, nullptr, 0, 10.0).running_s;
    EXPECT_FALSE(cool.running());
    EXPECT_GT(running, 1200.0);
    EXPECT_NEAR(cool.store().temperature_at(0.4), 55.0, 0.1);
}

TEST(Control, least_run_and_least_rest_are_kept) {
    season::Input input = equipment(2, 18.0);
    input.demand.hysteresis_k = 1.0;
    input.block.min_run_s = 1800.0;
    input.block.min_rest_s = 1800.0;
    input.cylinder.volume_l = 60.0;
    input.cylinder.standing_loss_kwh_24h = 20.0;
    const Set set(input);
    auto sim = set.start(55.0);
    sim.set_weather(mild_day);
    double run = 0.0;
    double rest = 1e9;
    int runs = 0;
    for (int i = 0; i < 2000; ++i) {
        const auto step = sim.step(60.0, nullptr, 0, 10.0);
        if (step.running_s > 0.0) {
            if (run == 0.0) {
                EXPECT_GE(rest, 1800.0 - 60.0);
                ++runs;
            }
            run += step.running_s;
            rest = 60.0 - step.running_s;
            if (!sim.running()) {
                EXPECT_GE(run, 1800.0 - 1e-6);
                run = 0.0;
            }
        } else {
            rest += 60.0;
        }
    }
    EXPECT_GT(runs, 3);
}

TEST(Frost, what_forms_has_melted_or_lies) {
    season::Input input = equipment(1, 16.0);
    input.collector.frost_limit_kg_m2 = 0.4;
    const Set set(input);
    auto sim = set.start(30.0);
    season::Ledger sum;
    const double draw_j = 3.6e6;
    for (int i = 0; i < 600; ++i) {
        sim.set_weather(i % 144 < 100 ? damp_night : mild_day);
        sum.add(sim.step(600.0, &draw_j, i % 6 == 0 ? 1 : 0, 8.0));
        const double lying = (sim.frost().front_kg_m2 + sim.frost().rear_kg_m2) * 1.6;
        ASSERT_NEAR(sum.frost_formed_kg, sum.frost_melted_kg + lying, 1e-6) << i;
    }
    EXPECT_GT(sum.frost_formed_kg, 3.0);
    EXPECT_GT(sum.frost_melted_kg, 3.0);
    EXPECT_GT(sum.rest_s, 0.0);
}

TEST(Frost, at_the_limit_the_pump_rests_at_most_the_longest_rest_and_then_reverses) {
    season::Input input = equipment(1, 16.0);
    input.collector.frost_limit_kg_m2 = 0.2;
    const Set set(input);
    auto sim = set.start(25.0);
    sim.set_weather({0, 0, -3, -3.2, 1.5, kelvin(-12), 101325});  // no thaw by itself
    double rest_s = 0.0;
    double defrost_j = 0.0;
    double given_back_j = 0.0;
    for (int i = 0; i < 200 && (defrost_j == 0.0 || sim.frost().lies()); ++i) {
        const auto step = sim.step(600.0, nullptr, 0, 10.0);
        rest_s += step.rest_s;
        defrost_j += step.defrost;
        if (step.defrost > 0.0) given_back_j -= step.condenser;
        EXPECT_LT(step.circuit_miss(), 1e-6 * step.circuit_throughput() + 1.0);
    }
    EXPECT_GT(defrost_j, 0.0);
    EXPECT_NEAR(given_back_j / defrost_j, 0.85 / 0.15, 1e-9);
    EXPECT_GT(rest_s, 4.0 * 3600.0);
    EXPECT_LT(rest_s, 5.5 * 3600.0);
}

}  // namespace
