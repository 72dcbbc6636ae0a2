// Moist air and the vapour term of the plate against IAPWS and PsychroLib (ASHRAE Handbook Fundamentals 2017).

#include <gtest/gtest.h>

#include <cmath>

#include "tests/core/heatpump/fixture.h"
#include "tests/reference/heat_values.h"

namespace {

using namespace wg;
using heatpump::humidity_ratio;
using heatpump::vapour_pressure_over_ice_pa;
using heatpump::vapour_pressure_over_water_pa;
using outside::heat_values;

// The plate's constants; plate.cpp keeps cp and the Lewis number to itself.
constexpr double air_heat_j_kgk = 1006.0;
constexpr double lewis_two_thirds = 0.9078;

double saturation_pa(double t) {
    return t >= 0.0 ? vapour_pressure_over_water_pa(t) : vapour_pressure_over_ice_pa(t);
}
double latent_j_kg(double t) {
    return heatpump::condensation_j_kg + (t < 0.0 ? heatpump::fusion_j_kg : 0.0);
}

TEST(OutsideAir, saturation_pressure_is_that_of_iapws_over_water_ice_and_supercooled_water) {
    constexpr double magnus = 0.005;  // what the Magnus form claims
    constexpr double over_ice = 0.001;
    const auto& rows = heat_values()["vapour_pressure"];
    for (const char* kind : {"over_water", "over_supercooled_water"})
        for (const auto& row : rows[kind]) {
            const double t = row[0];
            EXPECT_NEAR(vapour_pressure_over_water_pa(t) / row[1].get<double>(), 1.0, magnus) << kind << " " << t;
        }
    for (const auto& row : rows["over_ice"]) {
        const double t = row[0];
        EXPECT_NEAR(vapour_pressure_over_ice_pa(t) / row[1].get<double>(), 1.0, over_ice) << t;
    }
    EXPECT_GE(rows["over_supercooled_water"].size(), 5u);
}

TEST(OutsideAir, humidity_ratio_and_enthalpy_agree_from_minus_twenty_to_fifty_degrees) {
    constexpr double ratio_tolerance = 2e-4;         // 0.62198 against 0.621945
    constexpr double enthalpy_tolerance_j_kg = 100;  // latent heat 2.500 against 2.501 MJ/kg
    constexpr double vapour_heat_j_kgk = 1860.0;
    ASSERT_GE(heat_values()["moist_air"].size(), 90u);
    for (const auto& row : heat_values()["moist_air"]) {
        const double air = row[0];
        const double ratio = humidity_ratio(row[2].get<double>(), row[1].get<double>());
        EXPECT_NEAR(ratio / row[5].get<double>(), 1.0, ratio_tolerance) << row;
        const double enthalpy = air_heat_j_kgk * air + ratio * (heatpump::condensation_j_kg + vapour_heat_j_kgk * air);
        EXPECT_NEAR(enthalpy, row[6].get<double>(), enthalpy_tolerance_j_kg) << row;
    }
    for (const auto& row : heat_values()["saturated_air"]) {
        const double t = row[0];
        EXPECT_NEAR(humidity_ratio(saturation_pa(t), row[1].get<double>()) / row[2].get<double>(), 1.0, 0.005) << row;
    }
}

// The program has no use for a wet bulb; it is the one figure that needs pressure, ratio, heat capacity and latent heat
// at once: cp (Ta - T) = L (w_sat(T) - w). Lewis number 1 by definition.
TEST(OutsideAir, wet_bulb_that_follows_from_our_parts_is_that_of_the_table) {
    constexpr double tolerance_k = 0.2;  // in dry air at 50 deg C; 0.05 K below 20 deg C
    for (const auto& row : heat_values()["moist_air"]) {
        const double air = row[0];
        const double pressure = row[1];
        const double ratio = humidity_ratio(row[2].get<double>(), pressure);
        double low = -60.0;
        double high = air;
        for (int i = 0; i < 60; ++i) {
            const double t = 0.5 * (low + high);
            const double given = air_heat_j_kgk * (air - t);
            const double taken = latent_j_kg(t) * (humidity_ratio(saturation_pa(t), pressure) - ratio);
            (given > taken ? low : high) = t;
        }
        EXPECT_NEAR(low, row[4].get<double>(), air < 20.0 ? 0.05 : tolerance_k) << row;
    }
}

TEST(OutsideAir, latent_heat_is_held_within_five_percent_of_iapws) {
    for (const auto& row : heat_values()["latent"]) {
        const double t = row[0];
        // Constant at its value of 0 deg C. What settles settles on a plate below 25 deg C: 2.4 % there.
        EXPECT_NEAR(latent_j_kg(t) / row[1].get<double>(), 1.0, t <= 25.0 ? 0.025 : 0.05) << t;
    }
}

// Latent over sensible heat of a wet plate: L (w - w_sat) / (cp Le^(2/3) (Ta - Tp)) with all values from outside.
TEST(OutsideAir, vapour_term_of_the_plate_agrees_with_outside_tables) {
    constexpr double tolerance = 0.03;  // constant latent heat 2.4 %, Magnus form 0.5 % of the larger ratio
    int compared = 0;
    for (const auto& air_row : heat_values()["moist_air"])
        for (const auto& plate_row : heat_values()["saturated_air"]) {
            const double air = air_row[0];
            const double plate_c = plate_row[0];
            const double excess = air_row[5].get<double>() - plate_row[2].get<double>();
            if (air_row[1] != plate_row[1] || plate_c >= air || plate_c > 25.0 || plate_c == 0.0) continue;
            if (excess < 0.3 * air_row[5].get<double>()) continue;  // a small difference of two ratios
            double latent = 0.0;
            for (const auto& row : heat_values()["latent"])
                if (row[0] == plate_row[0]) latent = row[1];
            if (latent == 0.0) continue;
            const double vapour_pa = air_row[2];
            const double x = std::log(vapour_pa / 611.2);
            const double dew_c = 243.12 * x / (17.62 - x);
            heatpump::Plate plate;
            const heatpump::PlateBalance balance(plate, {0, 0, air, dew_c, 2, 280, air_row[1].get<double>()});
            const auto heat = balance.heat(plate_c);
            const double expected = latent * excess / (air_heat_j_kgk * lewis_two_thirds * (air - plate_c));
            EXPECT_NEAR(heat.latent_w / heat.air_w / expected, 1.0, tolerance) << air_row << plate_row;
            ++compared;
        }
    EXPECT_GT(compared, 200);
}

}  // namespace
