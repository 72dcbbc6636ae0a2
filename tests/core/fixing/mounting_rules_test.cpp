#include "core/fixing/mounting_rules.h"

#include <gtest/gtest.h>

#include <cmath>

#include "core/fixing/layout_rules.h"
#include "tests/core/fixing/fixture.h"

namespace wg::fixing {
namespace mounting_test {

struct Mounting : testing::Test {
    Site site;
    Choice choice;
    CollectorModel model = plain_collector();
    Mounting() {
        site.location.latitude_deg = 50.0;
        site.surfaces = {plain_roof()};
        choice.placements = {plain_input().placement};
        model.tilt_min_deg = 15.0;
        model.tilt_recommended_max_deg = 75.0;
    }
    [[nodiscard]] Placement& only() { return choice.placements[0]; }
    [[nodiscard]] MountingRule rule(const std::string& begins) const {
        for (const MountingRule& r : mounting_rules(site, choice, model, choice.placements[0])) {
            if (r.rule.rfind(begins, 0) == 0) return r;
        }
        ADD_FAILURE() << "no rule " << begins;
        return {};
    }
};

TEST_F(Mounting, AllKeptOnAGoodPlace) {
    const auto all = mounting_rules(site, choice, model, only());
    ASSERT_EQ(all.size(), 5u);
    for (const MountingRule& r : all)
        EXPECT_FALSE(r.broken) << r.rule;
    EXPECT_EQ(all[0].rule, "Long side level");
    EXPECT_EQ(rule("Tilt").rule, "Tilt 15 to 90 deg, best 30 to 75 deg");
    EXPECT_EQ(rule("Tilt").now, "35.0 deg");
    EXPECT_EQ(rule("0.30 m free").now, "2.60 m");  // lower side at 2.6 of 6 m
}

TEST_F(Mounting, EachSaysHowItIsBroken) {
    only().turn_deg = 90.0;
    EXPECT_EQ(rule("Long side").broken, Severity::stop);
    EXPECT_EQ(rule("Connections").broken, Severity::caution);
    EXPECT_EQ(rule("Connections").now, "sideways");
    only().turn_deg = 180.0;
    EXPECT_FALSE(rule("Long side").broken);
    EXPECT_EQ(rule("Connections").broken, Severity::stop);
    only().turn_deg = 0.0;
    model.left_hand = false;
    only().hand = Hand::left;
    EXPECT_EQ(rule("Made with connections right").broken, Severity::stop);
    site.surfaces[0].tilt_deg = 20.0;
    EXPECT_EQ(rule("Tilt").broken, Severity::caution);
    site.surfaces[0].tilt_deg = 10.0;
    EXPECT_EQ(rule("Tilt").broken, Severity::stop);
    only().y_m = 0.5;
    EXPECT_EQ(rule("0.30 m free").broken, Severity::caution);
    EXPECT_EQ(rule("0.30 m free").now, "0.10 m to edge of South roof");
    only().y_m = 0.2;
    EXPECT_EQ(rule("0.30 m free").broken, Severity::stop);
    only().surface_id = "elsewhere";
    EXPECT_TRUE(mounting_rules(site, choice, model, only()).empty());
}

TEST_F(Mounting, AllowedTurnsBreakNoRuleOfLevelOrConnections) {
    for (const LevelSide side : {LevelSide::long_side, LevelSide::short_side, LevelSide::either}) {
        model.level_side = side;
        for (const double turn : allowed_turns(model)) {
            only().turn_deg = turn;
            for (const Finding& f : check_attitude(site, choice, model, only()))
                EXPECT_NE(f.severity, Severity::stop) << f.message;
        }
    }
}

TEST(Turning, GoesOnToTheNextAllowedTurn) {
    CollectorModel m;
    m.level_side = LevelSide::either;
    EXPECT_EQ(next_turn_deg(m, 0.0, 1), 90.0);
    EXPECT_EQ(next_turn_deg(m, 90.0, 1), 270.0);  // past 180, where the connections look up
    EXPECT_EQ(next_turn_deg(m, 270.0, 1), 0.0);
    EXPECT_EQ(next_turn_deg(m, 0.0, -1), 270.0);
    EXPECT_EQ(next_turn_deg(m, 3.0, 1), 0.0);  // brought level first
    EXPECT_EQ(next_turn_deg(m, 357.0, 1), 0.0);
    m.level_side = LevelSide::long_side;
    EXPECT_EQ(next_turn_deg(m, 0.0, 1), 0.0);
    EXPECT_EQ(next_turn_deg(m, 90.0, 1), 0.0);
    m.level_side = LevelSide::short_side;
    EXPECT_EQ(next_turn_deg(m, 90.0, 1), 270.0);
    EXPECT_EQ(next_turn_deg(m, 270.0, 1), 90.0);
}

}  // namespace mounting_test
}  // namespace wg::fixing
