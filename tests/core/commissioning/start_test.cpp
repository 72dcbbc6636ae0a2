#include "core/commissioning/start.h"

#include <gtest/gtest.h>

#include <cmath>

#include "tests/core/heatpump/fixture.h"

namespace wg::commissioning {
namespace {

using heatpump_test::properties;
using heatpump_test::pump;
using heatpump_test::surroundings;

StartConditions on_a_fair_day() {
    StartConditions c;
    c.surroundings = surroundings(600.0, 16.0, 0.6, 2.0, 12.0);
    c.light_known = true;
    c.water_c = 25.0;
    c.plate.area_m2 = 1.82;
    c.plate.refrigerant_w_k = 125.0 * 1.82;
    return c;
}

StartReadings mid_of(const StartResult& r) {
    return {r.bands[0].mid, r.bands[1].mid, r.bands[2].mid, r.bands[3].mid, r.bands[4].mid};
}

class Start : public ::testing::Test {
   protected:
    std::shared_ptr<const refrigerant::Properties> fluid = properties("R134a");
    heatpump::HeatPump block = pump(BlockModel{}, *fluid);
};

TEST_F(Start, what_the_model_says_is_as_expected) {
    const StartConditions c = on_a_fair_day();
    const StartResult bands = judge(block, c, {});
    EXPECT_EQ(bands.verdict, StartVerdict::nothing_read);
    const StartResult r = judge(block, c, mid_of(bands));
    EXPECT_EQ(r.verdict, StartVerdict::as_expected);
    EXPECT_TRUE(r.suspects.empty());
    EXPECT_NEAR(r.misfit, 0.0, 1e-9);
}

// The bands stand on the saturation curve: R134a at 0 deg C has 2.928 bar absolute, at 40 deg C 10.166 (Tillner-Roth
// and Baehr 1994).
TEST_F(Start, pressures_and_temperatures_of_a_band_belong_together) {
    const StartResult r = judge(block, on_a_fair_day(), {});
    const double suction_sat = r.bands[0].mid - block.block().superheat_k;
    EXPECT_NEAR(r.bands[1].mid + 1.01325, fluid->saturation_pressure_pa(suction_sat) * 1e-5, 1e-6);
    EXPECT_LT(r.bands[1].low, r.bands[1].mid);
    EXPECT_GT(r.bands[2].mid, r.bands[0].mid + 20.0) << "discharge is hot";
    EXPECT_GT(r.bands[4].mid, 0.5);
    EXPECT_LT(r.bands[4].mid, 6.0);
}

TEST_F(Start, unknown_light_widens_the_bands) {
    StartConditions c = on_a_fair_day();
    const StartResult known = judge(block, c, {});
    c.light_known = false;
    const StartResult open = judge(block, c, {});
    EXPECT_GT(open.bands[1].high - open.bands[1].low, known.bands[1].high - known.bands[1].low);
}

TEST_F(Start, a_pump_that_stands_is_said_to_stand) {
    StartReadings read;
    read.current_a = 0.1;
    EXPECT_EQ(judge(block, on_a_fair_day(), read).verdict, StartVerdict::not_running);
}

TEST_F(Start, conditions_outside_the_envelope_are_told) {
    StartConditions c = on_a_fair_day();
    c.surroundings = surroundings(0.0, -40.0, 0.8, 4.0, 15.0);
    StartReadings read;
    read.current_a = 3.0;
    const StartResult r = judge(block, c, read);
    EXPECT_EQ(r.verdict, StartVerdict::cannot_run);
    EXPECT_FALSE(r.why_not.empty());
}

// Readings by hand for each fault, not by the simulation: too little refrigerant gives low suction pressure with hot
// suction gas; air gives high head pressure; a valve half shut gives low suction pressure with usual superheat; liquid
// carried over gives suction gas at saturation and a cool discharge (common practice, no published source).
TEST_F(Start, usual_signs_point_to_the_usual_fault) {
    const StartConditions c = on_a_fair_day();
    const StartReadings sound = mid_of(judge(block, c, {}));
    const auto first = [&](const StartReadings& read) {
        const StartResult r = judge(block, c, read);
        EXPECT_EQ(r.verdict, StartVerdict::outside);
        EXPECT_FALSE(r.suspects.empty());
        return r.suspects.empty() ? Fault::plate_shaded : r.suspects.front().fault;
    };
    StartReadings low = sound;
    low.suction_bar = *sound.suction_bar - 0.8;
    low.suction_gas_c = *sound.suction_gas_c + 5.0;
    low.discharge_c = *sound.discharge_c + 16.0;
    low.discharge_bar = *sound.discharge_bar - 0.6;
    low.current_a = *sound.current_a * 0.85;
    EXPECT_EQ(first(low), Fault::low_charge);

    StartReadings air = sound;
    air.discharge_bar = *sound.discharge_bar + 4.0;
    air.discharge_c = *sound.discharge_c + 14.0;
    air.current_a = *sound.current_a * 1.3;
    const Fault suspected = first(air);
    EXPECT_TRUE(suspected == Fault::air_in_circuit || suspected == Fault::condenser_scaled)
        << "the two look alike at the gauges";

    StartReadings wet = sound;
    wet.suction_gas_c = *sound.suction_gas_c - 6.0;
    wet.discharge_c = *sound.discharge_c - 14.0;
    wet.suction_bar = *sound.suction_bar - 0.25;
    EXPECT_EQ(first(wet), Fault::wrong_hand);
}

TEST_F(Start, every_fault_has_words) {
    for (int f = 0; f <= static_cast<int>(Fault::wrong_hand); ++f) {
        EXPECT_STRNE(text_of(static_cast<Fault>(f)), "");
        EXPECT_STRNE(remedy_of(static_cast<Fault>(f)), "");
    }
}

}  // namespace
}  // namespace wg::commissioning
