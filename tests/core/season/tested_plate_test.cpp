// A year of operation with a plate by the coefficients of a test (ISO 9806:2017).

#include <gtest/gtest.h>

#include <cmath>

#include "core/season/season.h"
#include "tests/core/season/fixture.h"

namespace {

using namespace wg;
using season::Input;
using season::Options;
using season::Year;
using season_test::equipment;

constexpr double step_closure = 1e-6;

Input temperate(int plates, double displacement_cm3) {
    Input input = equipment(plates, displacement_cm3);
    season_test::add_weather(input);
    input.demand.cycle = TappingCycle::l;
    return input;
}

Year year_of(const Input& input, const Options& options = {}) {
    const auto result = season::run(input, options);
    EXPECT_TRUE(result.ok()) << (result.ok() ? "" : text_of(result.problems()));
    return result.ok() ? result.value() : Year{};
}

/// The fixture's plate as a test would state it (tests/core/heatpump/plate_coefficients_test.cpp).
Input as_tested(Input input) {
    Iso9806 c;
    c.zero_loss = 0.75;
    c.a1 = 24.0;
    c.a3 = 3.0;
    c.a4 = 0.79;
    c.a6 = 0.022;
    c.a7 = 0.025;
    input.collector.iso9806 = c;
    return input;
}

TEST(TestedPlateYear, by_the_coefficients_of_a_test_closes_and_agrees_with_the_same_plate_by_first_principles) {
    for (const int plates : {1, 2}) {
        Input input = temperate(plates, plates == 1 ? 16.0 : 18.0);
        input.line_ua_w_k = 2.0;
        input.suction_drop_k = 0.4;
        const Year physical = year_of(input);
        const Year tested = year_of(as_tested(input));
        EXPECT_LT(tested.worst_step_closure, step_closure);
        EXPECT_LT(tested.closure_circuit, step_closure);
        EXPECT_LT(tested.closure_water, step_closure);
        EXPECT_GT(tested.total.frost_h, 50.0);
        EXPECT_NEAR(tested.total.electricity_kwh() / physical.total.electricity_kwh(), 1.0, 0.02) << plates;
        EXPECT_NEAR(tested.seasonal_factor / physical.seasonal_factor, 1.0, 0.02) << plates;
        EXPECT_NE(tested.total.electricity_kwh(), physical.total.electricity_kwh());
        EXPECT_NE(tested.models.find("ISO 9806:2017"), std::string::npos);
        EXPECT_EQ(physical.models.find("9806"), std::string::npos);
    }
}

TEST(TestedPlateYear, incidence_acts_on_a_tested_plate_only) {
    Input input = temperate(1, 16.0);
    Input dimmed = input;
    dimmed.groups[0].incidence.assign(8760, 0.8);
    Options coarse;
    coarse.step_s = 900.0;
    EXPECT_EQ(year_of(dimmed, coarse).total.electricity_kwh(), year_of(input, coarse).total.electricity_kwh());
    EXPECT_LT(year_of(as_tested(dimmed), coarse).seasonal_factor,
              year_of(as_tested(input), coarse).seasonal_factor - 0.02);
    Input grey = as_tested(input);
    grey.collector.iso9806->diffuse = 0.8;  // no split given: 0.85 + 0.15 * 0.8
    Input told = grey;
    told.groups[0].incidence.assign(8760, 0.97);
    EXPECT_NEAR(year_of(grey, coarse).seasonal_factor, year_of(told, coarse).seasonal_factor, 1e-9);
}

TEST(TestedPlateYear, coefficients_that_contradict_themselves_are_refused_with_their_field) {
    Input input = as_tested(temperate(1, 16.0));
    input.collector.iso9806->a1 = 8.0;
    const auto result = season::run(input, Options{});
    ASSERT_FALSE(result.ok());
    EXPECT_NE(text_of(result.problems()).find("iso9806.a1"), std::string::npos) << text_of(result.problems());
}

TEST(TestedPlateYear, standstill_of_a_tested_plate_is_within_a_few_kelvin_of_the_same_plate_by_first_principles) {
    const Input input = temperate(1, 16.0);
    const auto physical = season::standstill(input);
    const auto tested = season::standstill(as_tested(input));
    ASSERT_TRUE(physical.ok() && tested.ok());
    EXPECT_GT(physical.value().plate_c, 50.0);
    EXPECT_NEAR(tested.value().plate_c, physical.value().plate_c, 4.0);
}

}  // namespace
