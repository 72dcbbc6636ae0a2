#include "core/fixing/layout_rules.h"

#include <gtest/gtest.h>

#include <cmath>

#include "core/site/geometry.h"
#include "tests/core/fixing/fixture.h"

namespace wg::fixing {
namespace {

/// Plain roof of 10 x 6 m with one collector in its middle.
struct Layout : testing::Test {
    Site site;
    Choice choice;
    CollectorModel model = plain_collector();

    Layout() {
        site.location.latitude_deg = 50.0;
        site.surfaces = {plain_roof()};
        choice.placements.resize(1);
        choice.placements[0] = plain_input().placement;
    }
    [[nodiscard]] Placement& only() { return choice.placements[0]; }
    [[nodiscard]] std::vector<Finding> findings() const { return check_layout(site, choice, model); }
    void expect(const char* code, Severity severity, const std::string& in_rule, const std::string& in_remedy) const {
        const auto all = findings();
        const Finding* f = find_code(all, code);
        ASSERT_NE(f, nullptr) << code;
        EXPECT_EQ(f->severity, severity);
        EXPECT_NE(f->rule.find(in_rule), std::string::npos) << f->rule;
        EXPECT_NE(f->remedy.find(in_remedy), std::string::npos) << f->remedy;
        EXPECT_EQ(f->place_id, "p1");
    }
    void expect_none(const char* code) const { EXPECT_EQ(find_code(findings(), code), nullptr) << code; }
};

TEST_F(Layout, AGoodPlaceHasNothingAgainstIt) {
    EXPECT_TRUE(findings().empty());
}

TEST_F(Layout, BeyondTheOutlineStopsAndSaysHowFarToMove) {
    only().x_m = 0.9;  // left end at -0.1
    // Back inside by 0.10 m and the maker's 0.30 m free strip beyond.
    expect("collector.outside-surface", Severity::stop, "wholly on its surface",
           "Move the collector 0.40 m to the right");
}

TEST_F(Layout, TheFreeStripIsOnlyACaution) {
    only().x_m = 1.1;
    expect("collector.edge-clearance", Severity::caution, "Equipment data of Invented P: 0.30 m free",
           "0.20 m to the right");
    only().x_m = 1.3;
    expect_none("collector.edge-clearance");
    only() = plain_input().placement;
    only().y_m = 0.5;
    expect("collector.edge-clearance", Severity::caution, "0.30 m free", "0.20 m up");
}

TEST_F(Layout, ACollectorLargerThanItsSurfaceIsCalledThat) {
    site.surfaces[0].outline = {{0, 0}, {1.8, 0}, {1.8, 6}, {0, 6}};
    only().x_m = 0.9;
    expect("collector.too-big", Severity::stop, "wholly on its surface", "Choose another surface");
    expect_none("collector.outside-surface");
}

TEST_F(Layout, NothingLiesOverARoofWindowOrWithinItsClearance) {
    KeepOut window;
    window.label = "bath window";
    window.kind = KeepOutKind::roof_window;
    window.clearance_m = 0.4;
    window.outline = {{6.2, 2.5}, {7.0, 2.5}, {7.0, 3.7}, {6.2, 3.7}};  // 0.2 m right of the collector
    site.surfaces[0].keep_outs = {window};
    expect("collector.keep-out-clearance", Severity::stop, "0.40 m free round bath window", "0.20 m to the left");
    only().x_m = 5.5;
    expect("collector.on-keep-out", Severity::stop, "bath window", "0.70 m to the left");
    only().x_m = 4.8;
    EXPECT_TRUE(findings().empty());
    site.surfaces[0].keep_outs[0].clearance_m = 0.0;
    only().x_m = 5.0;  // 0.2 m: only the maker's strip is broken
    expect("collector.strip-at-keep-out", Severity::caution, "0.30 m free all round", "0.10 m to the left");
}

TEST_F(Layout, NothingLiesWhereAnObstacleGoesThroughTheRoof) {
    // 0.4 m wide, its left side 0.2 m right of the collector; a chimney on that roof from the ground up.
    const site::Frame frame = site::frame_of(site.surfaces[0], site.sketch_up_azimuth_deg);
    const Point3 foot = site::to_space(frame, {6.4, 3.0});
    Obstacle chimney;
    chimney.label = "kitchen chimney";
    chimney.base = {foot.x_m, foot.y_m, 0.0};
    chimney.width_m = chimney.depth_m = 0.4;
    chimney.height_m = 20.0;
    chimney.turn_deg = std::atan2(frame.right.y_m, frame.right.x_m) * 180.0 / std::acos(-1.0);
    site.obstacles = {chimney};
    expect("collector.strip-at-obstacle", Severity::caution, "0.30 m free all round", "0.10 m to the left");
    only().x_m = 5.5;
    expect("collector.on-obstacle", Severity::stop, "where an obstacle stands", "0.60 m to the left");
    KeepOut apron;
    apron.label = "chimney and its apron";
    apron.outline = {{6.0, 2.0}, {6.8, 2.0}, {6.8, 4.0}, {6.0, 4.0}};
    site.surfaces[0].keep_outs = {apron};
    expect_none("collector.on-obstacle");  // said once, by the zone that covers it
    expect("collector.on-keep-out", Severity::stop, "chimney and its apron", "to the left");
    site.surfaces[0].keep_outs.clear();
    site.obstacles[0].height_m = 0.5;
    EXPECT_TRUE(findings().empty()) << "it ends far below the roof";
}

TEST_F(Layout, CollectorsLieBesideEachOther) {
    Placement second = only();
    second.id = "p2";
    second.label = "Collector 2";
    second.y_m = 3.6;
    choice.placements.push_back(second);
    expect("collector.overlap", Severity::stop, "beside each other", "m down");
    choice.placements[1].y_m = 4.0;  // 0.2 m apart
    expect("collector.strip-at-collector", Severity::caution, "0.30 m free all round", "0.10 m down");
    choice.placements[1].y_m = 4.1;
    EXPECT_TRUE(findings().empty());
    choice.placements[1].y_m = 3.6;
    choice.placements[1].surface_id = "elsewhere";  // unknown surface: the plan refuses it, no finding here
    EXPECT_TRUE(findings().empty());
}

TEST_F(Layout, TiltIsHeldToTheMakersRange) {
    model.tilt_min_deg = 10.0;
    model.tilt_max_deg = 80.0;
    model.tilt_recommended_min_deg = 30.0;
    model.tilt_recommended_max_deg = 60.0;
    for (const auto& [tilt, code] : {std::pair{9.9, "collector.tilt-outside-range"},
                                     {80.1, "collector.tilt-outside-range"},
                                     {10.0, "collector.tilt-not-recommended"},
                                     {61.0, "collector.tilt-not-recommended"}}) {
        site.surfaces[0].tilt_deg = tilt;
        expect(code, std::string(code) == "collector.tilt-outside-range" ? Severity::stop : Severity::caution,
               "Equipment data of Invented P", "deg");
    }
    site.surfaces[0].tilt_deg = 30.0;
    EXPECT_TRUE(findings().empty());
    site.surfaces[0].tilt_deg = 0.0;
    only().frame_tilt_deg = 45.0;  // a frame mends a flat roof
    EXPECT_TRUE(findings().empty());
    only().frame_tilt_deg.reset();
    expect("collector.tilt-outside-range", Severity::stop, "tilt 10 to 80 deg", "frame that brings it to 10 to 80 deg");
}

TEST_F(Layout, TheLevelSideMayBeOffByOneDegree) {
    only().turn_deg = 1.0;
    expect_none("collector.not-level");
    only().turn_deg = 359.0;
    expect_none("collector.not-level");
    only().turn_deg = 1.1;
    expect("collector.not-level", Severity::stop, "long side level", "Turn it by 1.1 deg clockwise");
    only().turn_deg = 90.0;
    expect("collector.not-level", Severity::stop, "long side level", "Turn it by 90.0 deg");
    model.level_side = LevelSide::short_side;
    only().turn_deg = 90.0;
    expect_none("collector.not-level");
    only().turn_deg = 270.0;
    expect_none("collector.not-level");
    only().turn_deg = 80.0;
    expect("collector.not-level", Severity::stop, "short side level", "Turn it by 10.0 deg counter-clockwise");
    model.level_side = LevelSide::either;
    only().turn_deg = 90.0;
    expect_none("collector.not-level");
    only().turn_deg = 45.0;
    expect("collector.not-level", Severity::stop, "one side level", "Turn it by 45.0 deg");
}

TEST_F(Layout, ConnectionsFaceDown) {
    only().turn_deg = 180.0;
    expect("collector.connections-up", Severity::stop, "connections at the lower edge", "Turn it by 180.0 deg");
    model.level_side = LevelSide::either;
    only().turn_deg = 90.0;
    expect("collector.connections-sideways", Severity::caution, "connections at the lower edge", "90.0 deg clockwise");
    only().turn_deg = 270.0;
    expect("collector.connections-sideways", Severity::caution, "connections at the lower edge",
           "90.0 deg counter-clockwise");
    model.level_side = LevelSide::short_side;  // made to lie that way
    expect_none("collector.connections-sideways");
}

TEST_F(Layout, OnlyHandsThatAreMade) {
    model.left_hand = false;
    expect_none("collector.hand-not-made");
    only().hand = Hand::left;
    expect("collector.hand-not-made", Severity::stop, "right only", "right");
}

TEST_F(Layout, FacingThePoleIsNotedWhereAnotherSurfaceIsBetterOnBothHalvesOfTheEarth) {
    Surface north = plain_roof();
    north.id = "north";
    north.label = "North roof";
    north.azimuth_deg = 0.0;
    site.surfaces.push_back(north);
    expect_none("collector.faces-pole");
    only().surface_id = "north";
    expect("collector.faces-pole", Severity::note, "Towards the equator", "South roof");
    site.location.latitude_deg = -35.0;
    expect_none("collector.faces-pole");
    only().surface_id = "roof";
    expect("collector.faces-pole", Severity::note, "Towards the equator", "North roof");
    site.surfaces.pop_back();  // no better place on the site: nothing to say
    expect_none("collector.faces-pole");
    site.surfaces.push_back(north);
    site.location.latitude_deg = -5.0;  // in the tropics the sun stands on both sides
    expect_none("collector.faces-pole");
}

TEST_F(Layout, TheMoveThatIsSaidMendsEveryRuleOfPlace) {
    KeepOut vent;
    vent.label = "vent";
    vent.outline = {{4.5, 2.5}, {4.9, 2.5}, {4.9, 2.9}, {4.5, 2.9}};
    vent.clearance_m = 0.15;
    site.surfaces[0].keep_outs = {vent};
    site.surfaces[0].outline = {{0, 0}, {10, 0}, {8, 6}, {2, 6}};
    for (double x = 0.0; x <= 10.0; x += 0.7) {
        for (double y = 0.0; y <= 6.0; y += 0.5) {
            only().x_m = x;
            only().y_m = y;
            if (findings().empty()) continue;
            const auto move = shortest_mend(site, choice, model, only());
            if (!move) continue;
            only().x_m += move->right_m;
            only().y_m += move->up_m;
            EXPECT_TRUE(findings().empty() || std::hypot(move->right_m, move->up_m) > 0.0);
            for (const Finding& f : findings())
                EXPECT_NE(f.severity, Severity::stop) << f.message << " from " << x << ", " << y;
        }
    }
}

TEST(MoveText, SaysBothParts) {
    EXPECT_EQ(text_of(Move{0.4, 0.15}), "0.40 m to the right and 0.15 m up");
    EXPECT_EQ(text_of(Move{-0.4, 0.0}), "0.40 m to the left");
    EXPECT_EQ(text_of(Move{0.0, -1.0}), "1.00 m down");
}

}  // namespace
}  // namespace wg::fixing
