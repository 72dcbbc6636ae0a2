// Plates in several planes over a year.

#include <gtest/gtest.h>

#include "tests/core/season/fixture.h"

namespace {

using namespace wg;

season::Input two_groups() {
    season::Input input = season_test::equipment(1);
    season_test::add_weather(input);
    input.groups.push_back(input.groups[0]);
    return input;
}

TEST(Groups, two_alike_groups_are_one_group_of_two) {
    season::Input together = two_groups();
    together.groups.pop_back();
    together.groups[0].count = 2;
    const season::Year one = season::run(together).value();
    const season::Year two = season::run(two_groups()).value();
    EXPECT_NEAR(two.total.electricity_kwh() / one.total.electricity_kwh(), 1.0, 1e-9);
    EXPECT_NEAR(two.total.condenser_kwh / one.total.condenser_kwh, 1.0, 1e-9);
    EXPECT_LT(two.worst_step_closure, 1e-6);
}

/// Light moved from one plate to the other by halves of the day: the mean of both stays what it was.
TEST(Groups, light_at_different_hours_on_each_changes_little_while_the_mean_stays) {
    season::Input split = two_groups();
    for (std::size_t h = 0; h < split.air_c.size(); ++h) {
        const double morning = h % 24 < 12 ? 1.6 : 0.4;
        split.groups[0].front_w_m2[h] *= morning;
        split.groups[1].front_w_m2[h] *= 2.0 - morning;
    }
    const season::Year even = season::run(two_groups()).value();
    const season::Year apart = season::run(split).value();
    EXPECT_LT(apart.worst_step_closure, 1e-6);
    EXPECT_NEAR(apart.total.light_on_plane_kwh_m2, even.total.light_on_plane_kwh_m2, 1e-6);
    EXPECT_NE(apart.total.electricity_kwh(), even.total.electricity_kwh());
    EXPECT_NEAR(apart.total.electricity_kwh() / even.total.electricity_kwh(), 1.0, 0.02);
}

TEST(Groups, standstill_is_that_of_the_hottest_plate) {
    season::Input input = two_groups();
    for (double& light : input.groups[0].front_w_m2)
        light *= 0.2;
    const auto worst = season::standstill(input).value();
    EXPECT_EQ(worst.group, 1u);
    input.groups.erase(input.groups.begin());
    EXPECT_EQ(season::standstill(input).value().plate_c, worst.plate_c);
}

TEST(Groups, none_and_bad_ones_are_named) {
    season::Input none = two_groups();
    none.groups.clear();
    EXPECT_FALSE(season::run(none).ok());
    season::Input bad = two_groups();
    bad.groups[1].rear_w_m2.pop_back();
    const auto result = season::run(bad);
    ASSERT_FALSE(result.ok());
    EXPECT_NE(result.problems()[0].where.find("rear_w_m2"), std::string::npos);
}

}  // namespace
