// Warm-up and standstill.

#include <gtest/gtest.h>

#include <cmath>

#include "core/season/season.h"
#include "tests/core/season/fixture.h"

namespace {

using namespace wg;
using season::Input;
using season::WarmUpConditions;
using season_test::equipment;

// A: bright and mild, M: fair, B: dull and cool, C: cold night.
const WarmUpConditions bright{10, 800, 0, 20, 0.50, 2, 12};
const WarmUpConditions fair{10, 400, 0, 15, 0.65, 2, 10};
const WarmUpConditions dull{10, 100, 0, 7, 0.85, 2, 3};
const WarmUpConditions night{10, 0, 0, 2, 0.85, 2, 10};

season::WarmUp warmed(const Input& input, const WarmUpConditions& conditions, const season::Options& options = {}) {
    const auto result = season::warm_up(input, conditions, options);
    EXPECT_TRUE(result.ok()) << (result.ok() ? "" : text_of(result.problems()));
    return result.ok() ? result.value() : season::WarmUp{};
}

struct Row {
    int plates;
    const char* refrigerant;
    double displacement;
    const WarmUpConditions* conditions;
    double hours, cop, kwh;
};

// An independent calculation of the same equations, 250 l from 10 to 55 deg C, wind 2 m/s, frost counted.
TEST(WarmUp, hours_cop_and_electricity_agree_with_an_independent_calculation) {
    constexpr double tolerance = 0.10;  // natural convection by tilt, frost's albedo and saturation over ice differ
    const auto r290 = season_test::properties("R290");
    for (const Row& row : {Row{1, "R134a", 16, &bright, 6.9, 4.4, 3.0}, Row{1, "R134a", 16, &fair, 8.6, 3.9, 3.4},
                           Row{1, "R134a", 16, &dull, 11.4, 3.4, 3.9}, Row{2, "R134a", 18, &bright, 4.5, 5.1, 2.6},
                           Row{2, "R134a", 18, &fair, 6.0, 4.3, 3.0}, Row{2, "R134a", 18, &dull, 8.1, 3.7, 3.6},
                           Row{2, "R134a", 18, &night, 10.4, 3.3, 4.1}, Row{2, "R290", 12, &bright, 4.9, 5.3, 2.5},
                           Row{2, "R290", 12, &fair, 6.4, 4.3, 3.0}, Row{2, "R290", 12, &dull, 8.3, 3.7, 3.6},
                           Row{2, "R290", 12, &night, 10.3, 3.3, 4.1}}) {
        Input input = equipment(row.plates, row.displacement);
        if (std::string(row.refrigerant) == "R290") {
            input.block.refrigerant = Refrigerant::r290;
            input.refrigerant = r290.get();
        }
        const auto result = warmed(input, *row.conditions);
        ASSERT_TRUE(result.reached) << result.why_not;
        const auto context = ::testing::Message() << row.plates << " plates, light " << row.conditions->light_w_m2
                                                  << ", " << row.refrigerant;
        EXPECT_NEAR(result.hours / row.hours, 1.0, tolerance) << context;
        EXPECT_NEAR(result.mean_cop / row.cop, 1.0, tolerance) << context;
        EXPECT_NEAR(result.electricity_kwh / row.kwh, 1.0, tolerance) << context;
    }
}

// Common practice, no published source: a cylinder warms up in four to eight hours of good to average daylight.
TEST(WarmUp, well_matched_plates_take_four_to_eight_hours_in_good_to_average_daylight) {
    for (const auto* conditions : {&bright, &fair}) {
        const double hours = warmed(equipment(2, 18.0), *conditions).hours;
        EXPECT_GT(hours, 4.0);
        EXPECT_LT(hours, 8.0);
    }
}

TEST(WarmUp, a_small_plate_in_a_cold_night_ends_at_the_envelope_with_a_reason) {
    const auto result = warmed(equipment(1, 16.0), night);
    EXPECT_FALSE(result.reached);
    EXPECT_NE(result.why_not.find("envelope"), std::string::npos);
    EXPECT_GT(result.hours, 8.0);
    EXPECT_GT(result.heat_kwh, 10.0);
}

TEST(WarmUp, time_grows_with_volume_and_with_worse_weather) {
    Input input = equipment(2, 18.0);
    const double a = warmed(input, bright).hours;
    const double m = warmed(input, fair).hours;
    const double b = warmed(input, dull).hours;
    const double c = warmed(input, night).hours;
    EXPECT_LT(a, m);
    EXPECT_LT(m, b);
    EXPECT_LT(b, c);
    input.cylinder.volume_l = 300.0;
    EXPECT_NEAR(warmed(input, fair).hours / m, 1.20, 0.02);
    input.cylinder.volume_l = 200.0;
    EXPECT_NEAR(warmed(input, fair).hours / m, 0.80, 0.02);
}

TEST(WarmUp, does_not_depend_on_the_step) {
    season::Options fine;
    fine.step_s = 60.0;
    for (const auto* conditions : {&bright, &fair, &dull})
        EXPECT_NEAR(warmed(equipment(2, 18.0), *conditions).hours / warmed(equipment(2, 18.0), *conditions, fine).hours,
                    1.0, 0.01);
}

// 250 l x 4180 J/(l K) x 45 K = 13.06 kWh, and the standing loss meanwhile.
TEST(WarmUp, heat_is_that_of_the_water_and_its_loss) {
    const auto result = warmed(equipment(2, 18.0), bright);
    EXPECT_GT(result.heat_kwh, 13.06);
    EXPECT_LT(result.heat_kwh, 13.4);
    EXPECT_NEAR(result.mean_cop, result.heat_kwh / result.electricity_kwh, 1e-12);
}

TEST(WarmUp, bad_conditions_are_refused) {
    const auto refused = [](const WarmUpConditions& c) {
        const auto result = season::warm_up(equipment(2), c);
        return result.ok() ? std::string() : text_of(result.problems());
    };
    WarmUpConditions bad = fair;
    bad.relative_humidity = 0.0;
    EXPECT_NE(refused(bad).find("relative_humidity"), std::string::npos);
    bad = fair;
    bad.wind_m_s = std::nan("");
    EXPECT_NE(refused(bad).find("wind_m_s"), std::string::npos);
    bad = fair;
    bad.start_c = 56.0;
    EXPECT_NE(refused(bad).find("start_c"), std::string::npos);
    EXPECT_EQ(refused(fair), "");
}

TEST(Standstill, finds_the_hottest_hour_and_its_pressure) {
    Input input = equipment(2, 18.0);
    season_test::add_weather(input);
    const std::size_t hour = 24 * 200 + 13;
    input.groups[0].front_w_m2[hour] = 1000.0;
    input.air_c[hour] = 35.0;
    input.dew_point_c[hour] = 15.0;
    input.groups[0].wind_plate_m_s[hour] = 0.0;
    input.sky_k[hour] = kelvin(23.0);
    const auto result = season::standstill(input);
    ASSERT_TRUE(result.ok());
    EXPECT_EQ(result.value().hour, static_cast<int>(hour));
    // Independent calculation: 74 deg C, at which R134a is saturated at 23 bar absolute; R290 near 28.
    EXPECT_NEAR(result.value().plate_c, 74.0, 3.0);
    EXPECT_NEAR(result.value().pressure_bar_abs, 23.0, 1.6);
    EXPECT_FALSE(result.value().above_critical);
    EXPECT_EQ(result.value().air_c, 35.0);
    EXPECT_EQ(result.value().light_w_m2, 1000.0);
    const auto r290 = season_test::properties("R290");
    input.refrigerant = r290.get();
    input.block.refrigerant = Refrigerant::r290;
    EXPECT_NEAR(season::standstill(input).value().pressure_bar_abs, 28.0, 1.6);
}

TEST(Standstill, past_the_critical_point_says_so) {
    Input input = equipment(1, 18.0);
    season_test::add_weather(input);
    const std::size_t hour = 24 * 180 + 12;
    input.groups[0].front_w_m2[hour] = 1900.0;
    input.air_c[hour] = 48.0;
    input.groups[0].wind_plate_m_s[hour] = 0.0;
    input.sky_k[hour] = 320.0;
    const auto result = season::standstill(input);
    ASSERT_TRUE(result.ok());
    EXPECT_TRUE(result.value().above_critical);
    EXPECT_NEAR(result.value().pressure_bar_abs, 40.59, 0.01);
}

// The condenser's glide moves heat within the cylinder, never in or out: what the pump gives is in the water.
TEST(WarmUp, a_gliding_condenser_warms_the_same_water_with_a_closed_balance) {
    Input input = equipment(2);
    const auto plain = warmed(input, fair);
    input.block.condenser_glide_k = 0.0;
    const auto none = warmed(input, fair);
    EXPECT_EQ(plain.hours, none.hours);
    EXPECT_EQ(plain.electricity_kwh, none.electricity_kwh);
    input.block.condenser_glide_k = 8.0;
    const auto glide = warmed(input, fair);
    ASSERT_TRUE(glide.reached) << glide.why_not;
    // A colder bottom of the zone, a hotter top: the thermostat between them stops at nearly the same heat.
    EXPECT_NE(glide.electricity_kwh, plain.electricity_kwh);
    EXPECT_NEAR(glide.hours / plain.hours, 1.0, 0.10);
    EXPECT_NEAR(glide.heat_kwh / plain.heat_kwh, 1.0, 0.10);
    input.block.condenser_glide_k = 20.0;
    const auto refused = season::warm_up(input, fair);
    ASSERT_FALSE(refused.ok());
    EXPECT_NE(text_of(refused.problems()).find("condenser_glide_k"), std::string::npos);
}

}  // namespace
