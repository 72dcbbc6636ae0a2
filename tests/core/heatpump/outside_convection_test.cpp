// The plate's film coefficients against laboratory correlations for flat plates, evaluated by the library ht. Outdoors
// wind is gusty and comes from all sides: none of them is the truth for a roof. The figures tell how far apart they
// lie.

#include <gtest/gtest.h>

#include <cmath>

#include "core/heatpump/plate.h"
#include "tests/reference/heat_values.h"

namespace {

using namespace wg;
using outside::heat_values;

constexpr double still_w_m2k = 2.8;  // Watmuff at no wind
constexpr double air_c = 10.0;

enum class Side { front, rear };

/// Film coefficient of one face: the other one is buried in frost.
double coefficient(Side side, double tilt_deg, double wind_m_s, double plate_c) {
    heatpump::Plate plate;
    plate.tilt_deg = tilt_deg;
    plate.rear_exposure = 1.0;
    heatpump::PlateBalance balance(plate, {0, 0, air_c, -60, wind_m_s, 280, 101325});
    constexpr double buried_kg_m2 = 1e12;
    balance.set_frost(side == Side::front ? heatpump::Frost{0.0, buried_kg_m2} : heatpump::Frost{buried_kg_m2, 0.0},
                      600.0);
    return balance.heat(plate_c).air_w / (plate.area_m2 * (air_c - plate_c));
}

double natural(Side side, double tilt_deg, double over_air_k) {
    const double h = coefficient(side, tilt_deg, 0.0, air_c + over_air_k);
    return std::cbrt(h * h * h - still_w_m2k * still_w_m2k * still_w_m2k);
}

// ht: laminar by Baehr and Stephan, turbulent from the edge by Schlichting; plates 0.7 to 2.6 m along the wind.
TEST(OutsideConvection, wind_gives_more_than_a_laminar_and_about_as_much_as_a_turbulent_boundary_layer) {
    constexpr double tolerance = 0.25;  // measured here: 20 % below to 20 % above
    int compared = 0;
    for (const auto& row : heat_values()["forced"]) {
        const double wind = row[1];
        if (wind < 1.0) continue;  // below, the still-air part of Watmuff is the larger one
        const double h = coefficient(Side::front, 0.0, wind, air_c + 1e-6);
        EXPECT_GT(h, row[3].get<double>()) << row;
        EXPECT_NEAR(h / row[4].get<double>(), 1.0, tolerance) << row;
        ++compared;
    }
    EXPECT_EQ(compared, 24);
}

// ht: Churchill and Chu (vertical), McAdams (horizontal, side = area over perimeter).
TEST(OutsideConvection, natural_part_lies_within_a_fifth_of_vertical_and_horizontal_correlations) {
    constexpr double tolerance = 0.20;
    for (const auto& row : heat_values()["natural"]) {
        const double difference = row[0];
        if (difference < 5.0) continue;  // laminar: 2 W/(m2 K) beside 2.8 of still air
        for (const Side side : {Side::front, Side::rear})
            EXPECT_NEAR(natural(side, 90.0, difference) / row[1].get<double>(), 1.0, tolerance) << row;
        EXPECT_NEAR(natural(Side::front, 0.0, difference) / row[3].get<double>(), 1.0, tolerance) << row;
        EXPECT_NEAR(natural(Side::rear, 0.0, -difference) / row[3].get<double>(), 1.0, tolerance) << row;
        EXPECT_NEAR(natural(Side::rear, 0.0, difference) / row[4].get<double>(), 1.0, tolerance) << row;
        EXPECT_NEAR(natural(Side::front, 0.0, -difference) / row[4].get<double>(), 1.0, tolerance) << row;
    }
}

// The stable side at 45 deg (cold face up): Walton's form falls faster with tilt than g cos(angle from vertical) does.
TEST(OutsideConvection, stable_inclined_face_is_lower_by_two_fifths_and_still_air_makes_up_for_it) {
    for (const auto& row : heat_values()["natural"]) {
        const double difference = row[0];
        if (difference < 5.0) continue;
        EXPECT_NEAR(natural(Side::front, 45.0, -difference) / row[2].get<double>(), 0.64, 0.05) << row;
        const double blended = coefficient(Side::front, 45.0, 0.0, air_c - difference);
        EXPECT_NEAR(blended / row[2].get<double>(), 1.0, 0.25) << row;
    }
}

// Incropera, Fundamentals of Heat and Mass Transfer, chapter 7 (constants from memory), by hand: air nu 15.89e-6 m2/s,
// k 0.0263 W/(m K), Pr 0.707, 1 m at 2 m/s: Re 125,865, Nu 0.664 Re^0.5 Pr^(1/3) = 209.9, laminar h 5.52; turbulent
// from the edge 0.037 Re^0.8 Pr^(1/3) = 396.9, 10.4 W/(m2 K). Watmuff 2.8 + 3.0 x 2 = 8.8 lies between.
TEST(OutsideConvection, worked_example_of_a_flat_plate) {
    const double reynolds = 2.0 * 1.0 / 15.89e-6;
    const double prandtl = std::cbrt(0.707);
    EXPECT_NEAR(0.664 * std::sqrt(reynolds) * prandtl * 0.0263, 5.52, 0.01);
    EXPECT_NEAR(0.037 * std::pow(reynolds, 0.8) * prandtl * 0.0263, 10.4, 0.05);
    EXPECT_NEAR(coefficient(Side::front, 0.0, 2.0, air_c + 1e-6), 8.8, 1e-3);
}

}  // namespace
