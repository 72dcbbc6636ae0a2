#include "core/site/shade_period.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

namespace wg::site {
namespace shade_period_test {

/// 2 kWh/m2 in January between 8 and 10, 5 in June between 17 and 19.
ShadeCause two_seasons() {
    ShadeCause cause;
    cause.label = "chimney";
    cause.lost_by_hour_kwh_m2[0][8] = 1.25;
    cause.lost_by_hour_kwh_m2[0][9] = 0.75;
    cause.lost_by_hour_kwh_m2[5][17] = 2.5;
    cause.lost_by_hour_kwh_m2[5][18] = 2.5;
    cause.lost_kwh_m2 = 7.0;
    find_worst(cause);
    return cause;
}

constexpr Months october_to_march = {true, true, true, false, false, false, false, false, false, true, true, true};

TEST(ShadePeriod, TheWorstHoursAreThoseOfThePeriod) {
    const ShadeCause year = two_seasons();
    EXPECT_EQ(year.worst_month, 6);
    EXPECT_EQ(year.worst_from_hour, 17);
    EXPECT_EQ(year.worst_to_hour, 19);
    const ShadeCause winter = cause_within(year, october_to_march);
    EXPECT_EQ(winter.worst_month, 1);
    EXPECT_EQ(winter.worst_from_hour, 8);
    EXPECT_EQ(winter.worst_to_hour, 10);
    EXPECT_EQ(winter.lost_kwh_m2, 2.0);
    EXPECT_EQ(cause_within(year, whole_year).lost_kwh_m2, 7.0);
}

TEST(ShadePeriod, CausesAreSortedAnewAndThoseOfOtherMonthsGo) {
    Shade shade;
    ShadeCause summer;
    summer.label = "tree";
    summer.lost_by_hour_kwh_m2[6][12] = 9.0;
    summer.lost_kwh_m2 = 9.0;
    ShadeCause late = two_seasons();
    late.label = "dormer";
    late.lost_by_hour_kwh_m2[11][15] = 4.0;
    shade.causes = {summer, two_seasons(), late};
    shade.lost_by_hour_kwh_m2[6][12] = 9.0;
    shade.lost_by_hour_kwh_m2[11][15] = 4.0;
    const Shade winter = shade_within(shade, october_to_march);
    ASSERT_EQ(winter.causes.size(), 2U);
    EXPECT_EQ(winter.causes[0].label, "dormer");
    EXPECT_EQ(winter.causes[0].lost_kwh_m2, 6.0);
    EXPECT_EQ(winter.causes[1].label, "chimney");
    EXPECT_EQ(winter.lost_kwh_m2, 4.0);
}

TEST(ShadePeriod, ACellIsFoundFromThePointUnderIt) {
    ShadeMap map;
    map.cell_m = 0.5;
    map.origin = {1.0, -1.0};
    map.columns = 2;
    map.rows = 2;
    map.share = {1.0F, 0.75F, -1.0F, 0.25F};
    map.beam_kwh_m2 = {400.0F, 300.0F, -1.0F, 100.0F};
    const auto right = cell_at(map, {1.6, -0.9});
    ASSERT_TRUE(right.has_value());
    EXPECT_EQ(right->lost_share, 0.25);
    EXPECT_EQ(right->beam_kwh_m2, 300.0);
    EXPECT_EQ(cell_at(map, {1.99, -0.01})->beam_kwh_m2, 100.0);
    EXPECT_FALSE(cell_at(map, {1.2, -0.2}).has_value());  // outside the outline
    EXPECT_FALSE(cell_at(map, {2.01, -0.9}).has_value());
    EXPECT_FALSE(cell_at(map, {0.99, -0.9}).has_value());
    EXPECT_FALSE(cell_at(map, {std::nan(""), 0.0}).has_value());
    EXPECT_FALSE(cell_at(ShadeMap{}, {0.0, 0.0}).has_value());
}

TEST(ShadePeriod, AMapOfMonthsCountsTheirSunAlone) {
    // One sun at noon all year: what reaches an open roof in six months is the share of their days.
    sky::PreparedYear year;
    year.sun_east.assign(8760, 0.0);
    year.sun_north.assign(8760, 0.0);
    year.sun_up.assign(8760, 1.0);
    year.beam_normal_w_m2.assign(8760, 100.0);
    Site site;
    Surface terrace;
    terrace.id = "terrace";
    terrace.kind = SurfaceKind::terrace;
    terrace.tilt_deg = 0.0;
    terrace.outline = {{0, 0}, {2, 0}, {2, 1}, {0, 1}};
    site.surfaces = {terrace};
    const ShadeMap whole = shade_map(site, terrace, year, map_options_for(whole_year));
    const ShadeMap winter = shade_map(site, terrace, year, map_options_for(october_to_march));
    constexpr double winter_days = 31 + 30 + 31 + 31 + 28 + 31;
    EXPECT_NEAR(whole.unshaded_kwh_m2, 876.0, 1e-3);
    EXPECT_NEAR(winter.unshaded_kwh_m2, winter_days * 24.0 * 0.1, 1e-3);
    EXPECT_NEAR(cell_at(winter, {1.0, 0.5})->beam_kwh_m2, winter.unshaded_kwh_m2, 1e-3);
}

TEST(ShadePeriod, ABareSurfaceLosesWhatItsMapLoses) {
    // Sun from the south at 45 deg, every hour of January; a wall-like box south of a terrace throws its shadow over
    // it.
    sky::PreparedYear year;
    const double r = std::sqrt(0.5);
    year.sun_east.assign(8760, 0.0);
    year.sun_north.assign(8760, -r);
    year.sun_up.assign(8760, r);
    year.beam_normal_w_m2.assign(8760, 0.0);
    std::fill_n(year.beam_normal_w_m2.begin(), 31 * 24, 1000.0);
    Site site;
    Surface terrace;
    terrace.id = "terrace";
    terrace.kind = SurfaceKind::terrace;
    terrace.tilt_deg = 0.0;
    terrace.azimuth_deg = 180.0;  // the frame's up is north
    terrace.outline = {{0, 0}, {4, 0}, {4, 4}, {0, 4}};
    Obstacle box;
    box.id = "box";
    box.label = "shed";
    box.base = {2.0, -0.5, 0.0};
    box.width_m = 20.0;
    box.depth_m = 1.0;
    box.height_m = 2.0;  // its shadow covers the first 2 m of 4 m
    site.surfaces = {terrace};
    site.obstacles = {box};
    const Shade shade = shade_on_surface(site, terrace, year);
    const ShadeMap map = shade_map(site, terrace, year, map_options_for(whole_year));
    double lost = 0.0;
    for (std::size_t i = 0; i < map.share.size(); ++i)
        lost += (1.0 - static_cast<double>(map.share[i])) * map.unshaded_kwh_m2 / static_cast<double>(map.share.size());
    // The map starts its rays 0.10 m over the plane and has cells of 0.25 m: half a cell of 4 m.
    EXPECT_NEAR(shade.lost_kwh_m2, lost, 0.04 * map.unshaded_kwh_m2);
    EXPECT_NEAR(shade.lost_kwh_m2, 0.475 * map.unshaded_kwh_m2, 0.03 * map.unshaded_kwh_m2);
    ASSERT_EQ(shade.causes.size(), 1U);
    EXPECT_EQ(shade.causes[0].label, "shed");
    EXPECT_EQ(shade.causes[0].worst_month, 1);
}

}  // namespace shade_period_test
}  // namespace wg::site
