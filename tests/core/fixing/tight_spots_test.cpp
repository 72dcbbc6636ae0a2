#include "core/fixing/tight_spots.h"

#include <gtest/gtest.h>

#include <cmath>
#include <random>
#include <set>

#include "core/fixing/layout_rules.h"
#include "tests/core/fixing/fixture.h"
#include "tests/tools/sweep.h"

namespace wg::fixing {
namespace tight_spots_test {

/// The plain roof of 10 x 6 m, a window at its middle right and a collector of 2 x 0.8 m.
struct Tight : testing::Test {
    Site site;
    Choice choice;
    CollectorModel model = plain_collector();

    Tight() {
        site.location.latitude_deg = 50.0;
        site.surfaces = {plain_roof()};
        KeepOut window;
        window.id = "w";
        window.label = "bath window";
        window.clearance_m = 0.4;
        window.outline = {{6.2, 2.5}, {7.0, 2.5}, {7.0, 3.7}, {6.2, 3.7}};
        site.surfaces[0].keep_outs = {window};
        choice.placements = {plain_input().placement};
    }
    [[nodiscard]] Placement& only() { return choice.placements[0]; }
    [[nodiscard]] std::vector<TightSpot> spots() const {
        return tight_spots(site, choice, model, choice.placements[0]);
    }
};

TEST_F(Tight, AGapIsMeasuredWhereItIsLeast) {
    // Right side of the plate at 6.0: 0.2 m left of the window. Both reach over y from 2.6 to 3.4: middle 3.0.
    const auto all = spots();
    ASSERT_EQ(all.size(), 1u);
    const TightSpot& s = all[0];
    EXPECT_EQ(s.code, "collector.keep-out-clearance");
    EXPECT_EQ(s.severity, Severity::stop);
    EXPECT_EQ(s.thing_id, "w");
    EXPECT_EQ(s.placement_id, "p1");
    EXPECT_FALSE(s.over);
    EXPECT_NEAR(s.gap_m, 0.2, 1e-9);
    EXPECT_NEAR(s.asked_m, 0.4, 1e-9);
    EXPECT_NEAR(s.on_plate.x_m, 6.0, 1e-9);
    EXPECT_NEAR(s.on_plate.y_m, 3.0, 1e-9);
    EXPECT_NEAR(s.on_thing.x_m, 6.2, 1e-9);
    EXPECT_NEAR(s.on_thing.y_m, 3.0, 1e-9);
    EXPECT_EQ(s.text, "0.20 m to bath window; 0.40 m asked (survey)");
}

TEST_F(Tight, LyingOverAndReachingOutAreSaid) {
    only().x_m = 5.5;  // to 6.5: over the window by 0.3 m
    ASSERT_EQ(spots().size(), 1u);
    EXPECT_TRUE(spots()[0].over);
    EXPECT_EQ(spots()[0].text, "over bath window; nothing is fixed there (survey)");
    EXPECT_NEAR(spots()[0].on_plate.x_m, 6.35, 1e-9);
    only().x_m = 0.85;  // left end at -0.15
    ASSERT_EQ(spots().size(), 1u);
    EXPECT_EQ(spots()[0].code, "collector.outside-surface");
    EXPECT_NEAR(spots()[0].gap_m, 0.15, 1e-9);
    EXPECT_EQ(spots()[0].text, "0.15 m beyond the edge of South roof");
    only().x_m = 1.1;  // 0.10 m from the edge
    ASSERT_EQ(spots().size(), 1u);
    EXPECT_EQ(spots()[0].text, "0.10 m to edge of South roof; 0.30 m asked (maker)");
    EXPECT_TRUE(spots()[0].maker_asks);
    only().x_m = 3.0;
    EXPECT_TRUE(spots().empty());
}

TEST_F(Tight, GapsBetweenCollectorsAreTold) {
    Placement second = only();
    second.id = "p2";
    second.label = "Collector 2";
    only().x_m = second.x_m = 3.0;
    second.y_m = 4.0;  // 0.2 m apart
    choice.placements.push_back(second);
    ASSERT_EQ(spots().size(), 1u);
    EXPECT_EQ(spots()[0].against, TightSpot::Against::collector);
    EXPECT_EQ(spots()[0].thing_id, "p2");
    EXPECT_NEAR(spots()[0].on_plate.x_m, 3.0, 1e-9);
    EXPECT_EQ(spots()[0].text, "0.20 m to Collector 2; 0.30 m asked (maker)");
}

TEST_F(Tight, SpotsAndFindingsAreTheSameAnywhere) {
    std::mt19937 random(11);
    std::uniform_real_distribution<double> x(-0.5, 10.5), y(-0.5, 6.5), turn(0.0, 360.0);
    Placement second = only();
    second.id = "p2";
    second.label = "Collector 2";
    second.x_m = 3.0;
    second.y_m = 1.5;
    choice.placements.push_back(second);
    const std::set<std::string> of_place{
        "collector.outside-surface",    "collector.edge-clearance",    "collector.on-keep-out",
        "collector.keep-out-clearance", "collector.strip-at-keep-out", "collector.overlap",
        "collector.strip-at-collector", "collector.on-obstacle",       "collector.strip-at-obstacle"};
    Obstacle mast;  // through the roof at x 2 to 2.4, 1.2 m from the eaves in plan
    mast.id = "mast";
    mast.label = "mast";
    mast.base = {2.2, 3.2, 0.0};
    mast.width_m = mast.depth_m = 0.4;
    mast.height_m = 9.0;
    site.obstacles = {mast};
    std::set<std::string> met;
    for (int i = 0; i < sweep::cases(3000); ++i) {
        only().x_m = x(random);
        only().y_m = y(random);
        only().turn_deg = turn(random);
        std::multiset<std::string> drawn, found;
        for (const TightSpot& s : spots()) {
            drawn.insert(s.code);
            met.insert(s.code);
            if (!s.over) {
                EXPECT_NEAR(std::hypot(s.on_thing.x_m - s.on_plate.x_m, s.on_thing.y_m - s.on_plate.y_m), s.gap_m,
                            1e-6);
                EXPECT_LT(s.gap_m, s.asked_m);
            }
        }
        for (const Finding& f : check_layout(site, choice, model)) {
            if (f.place_id == "p1" && of_place.count(f.code) > 0) found.insert(f.code);
        }
        EXPECT_EQ(drawn, found) << only().x_m << ' ' << only().y_m << ' ' << only().turn_deg;
    }
    EXPECT_GE(met.size(), 8u) << "the sweep must meet nearly every rule";
}

TEST(LeastGap, SidesAlongsideMeetInTheMiddleOfWhatTheyShare) {
    const std::vector<Point2> a{{0, 0}, {2, 0}, {2, 1}, {0, 1}}, b{{1, 1.5}, {5, 1.5}, {5, 2}, {1, 2}};
    const Gap g = least_gap(a, b);
    EXPECT_NEAR(g.on_a.x_m, 1.5, 1e-9);  // shared from 1 to 2
    EXPECT_NEAR(g.on_a.y_m, 1.0, 1e-9);
    EXPECT_NEAR(g.on_b.y_m, 1.5, 1e-9);
    const std::vector<Point2> corner{{3, 2}, {4, 2}, {4, 3}, {3, 3}};  // over the corner of a
    EXPECT_NEAR(std::hypot(least_gap(a, corner).on_b.x_m - least_gap(a, corner).on_a.x_m,
                           least_gap(a, corner).on_b.y_m - least_gap(a, corner).on_a.y_m),
                std::sqrt(2.0), 1e-9);
    // Midway between two edges: one of the gaps, not a point between them.
    const std::vector<Point2> round{{-1, -1}, {3, -1}, {3, 2}, {-1, 2}};
    const Gap inside = least_gap(a, round);
    EXPECT_NEAR(std::hypot(inside.on_b.x_m - inside.on_a.x_m, inside.on_b.y_m - inside.on_a.y_m), 1.0, 1e-9);
}

}  // namespace tight_spots_test
}  // namespace wg::fixing
