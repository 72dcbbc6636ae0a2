// What would hold instead, and the way of a figure from wind to use.
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <string>

#include "core/fixing/loads.h"
#include "core/quantity/text.h"
#include "tests/core/fixing/fixture.h"

namespace wg::fixing {
namespace change_test {

FixingMethod of(const std::string& id, double newtons, Covering covering) {
    FixingMethod m = hooks();
    m.id = m.label = id;
    m.screw_diameter_mm = 0.0;
    m.pull_out_n = m.shear_n = newtons;
    m.coverings = {covering};
    return m;
}

Input weak_at_the_corner() {
    Input in = plain_input();
    in.method = of("weak hook", 1000.0, Covering::clay_tile);
    in.placement.x_m = 1.2;
    in.site.basic_wind_m_s = 28.0;
    in.site.terrain = Terrain::farmland_ii;
    in.rules.snow_slides = false;
    return in;
}

TEST(Change, NamesTheMethodsThatHoldWithTheirUse) {
    Input in = weak_at_the_corner();
    in.method.pull_out_n = in.method.shear_n = 300.0;
    FixingMethod strong = of("strong hook", 4000.0, Covering::clay_tile);
    in.alternatives = {in.method, of("feeble hook", 250.0, Covering::clay_tile), strong,
                       of("slate hook", 9000.0, Covering::slate)};
    const Outcome o = fixed_up(in);
    const Finding* f = find_code(o.findings, "fixing.overloaded");
    ASSERT_NE(f, nullptr);
    EXPECT_EQ(f->remedy.find("feeble"), std::string::npos);
    EXPECT_EQ(f->remedy.find("slate"), std::string::npos);
    EXPECT_EQ(f->remedy.find("weak"), std::string::npos);
    in.method = strong;
    const std::string use = fixed(100.0 * fixed_up(in).worst_utilisation, 0) + " %";
    EXPECT_NE(f->remedy.find("Choose \"strong hook\" (used to " + use), std::string::npos) << f->remedy << " / " << use;
}

/// Turns what the remedy says back into a move and tries it.
TEST(Change, TheMoveNamedHoldsAndNoShorterOneDoes) {
    Input in = weak_at_the_corner();
    const double corner = fixed_up(in).worst_utilisation;
    Input middle = in;
    middle.placement.x_m = 5.0;
    const double inside = fixed_up(middle).worst_utilisation;
    ASSERT_LT(inside, 0.9 * corner);
    // Resistances between the two: the corner fails, the middle holds.
    in.method.pull_out_n = in.method.shear_n = 1000.0 * std::sqrt(corner * inside);
    const Outcome o = fixed_up(in);
    const Finding* f = find_code(o.findings, "fixing.overloaded");
    ASSERT_NE(f, nullptr);
    const std::size_t at = f->remedy.find("ove it ");
    ASSERT_NE(at, std::string::npos) << f->remedy;
    const double distance = std::stod(f->remedy.substr(at + 7));
    const std::string way = f->remedy.substr(at, f->remedy.find("from zone") - at);
    EXPECT_NE(f->remedy.find("from zone G to"), std::string::npos) << f->remedy;
    const auto used_after = [&](double metres) {
        Input there = in;
        const bool level = way.find("right") != std::string::npos || way.find("left") != std::string::npos;
        const bool back = way.find("left") != std::string::npos || way.find("down") != std::string::npos;
        (level ? there.placement.x_m : there.placement.y_m) += back ? -metres : metres;
        return fixed_up(there).worst_utilisation;
    };
    EXPECT_LE(used_after(distance), 1.0);
    EXPECT_GT(used_after(distance - 0.1), 1.0);
}

TEST(Change, AMoveNeverEndsOnAKeepOut) {
    Input in = weak_at_the_corner();
    const double corner = fixed_up(in).worst_utilisation;
    in.method.pull_out_n = in.method.shear_n = 1000.0 * 0.9 * corner;
    KeepOut window;
    window.outline = {{2.25, 0.0}, {9.9, 0.0}, {9.9, 6.0}, {2.25, 6.0}};
    in.surface.keep_outs = {window};
    in.site.surfaces = {in.surface};
    const Finding* f = nullptr;
    const Outcome o = fixed_up(in);
    f = find_code(o.findings, "fixing.overloaded");
    ASSERT_NE(f, nullptr);
    EXPECT_EQ(f->remedy.find("to the right"), std::string::npos) << f->remedy;
}

TEST(Change, MorePointsAreCounted) {
    Input in = plain_input();
    in.method = of("hook", 1000.0, Covering::clay_tile);
    const double four = fixed_up(in).worst_utilisation;
    in.method.pull_out_n = in.method.shear_n = 1000.0 * four / 1.3;  // used to 130 % on four
    const Outcome o = fixed_up(in);
    const Finding* f = find_code(o.findings, "fixing.overloaded");
    ASSERT_NE(f, nullptr);
    EXPECT_NE(f->remedy.find("6 points instead of 4"), std::string::npos) << f->remedy;
    Input six = in;
    six.collector.fixing_points.clear();
    for (const double y : {0.1, 0.7}) {
        for (int i = 0; i < 3; ++i)
            six.collector.fixing_points.push_back({2.0 * (i + 0.5) / 3.0, y});
    }
    const std::string use = fixed(100.0 * fixed_up(six).worst_utilisation, 0) + " %";
    EXPECT_NE(f->remedy.find(use), std::string::npos) << f->remedy << " / " << use;
}

TEST(Change, NothingAtAllIsSaidToo) {
    Input in = plain_input();
    in.method = of("hook", 1.0, Covering::clay_tile);
    const Outcome o = fixed_up(in);
    EXPECT_NE(find_code(o.findings, "fixing.overloaded")->remedy.find("another surface"), std::string::npos);
}

std::string input_of(const Working& w, const std::string& name) {
    for (const auto& [key, value] : w.inputs) {
        if (key == name) return value;
    }
    return "";
}

TEST(Workings, LeadFromTheWindToTheUseWithFiguresAndLimits) {
    Input in = plain_input();
    in.method.pull_out_n = 1600.0;
    in.method.shear_n = 1100.0;
    in.method.bolt_mm = 10.0;
    in.method.head_diameter_mm = 14.0;
    in.method.head_strength_n_mm2 = 10.0;
    in.collector.profile_bolt_mm = 8.0;
    in.collector.profile_moment_nm = 300.0;
    in.collector.profile_stiffness_nm2 = 3000.0;
    in.site.hill.kind = HillKind::hill;
    const Outcome o = fixed_up(in);
    for (const char* key :
         {"fixing.hill", "fixing.wind", "fixing.pressure", "fixing.snow", "fixing.snow-slide", "fixing.weight",
          "fixing.shares", "fixing.combination", "fixing.point", "fixing.screws", "fixing.heads", "fixing.bolt",
          "fixing.profile-bolt", "fixing.maker", "fixing.bending", "fixing.sag", "fixing.worst"}) {
        const auto at =
            std::find_if(o.workings.begin(), o.workings.end(), [&](const Working& w) { return w.key == key; });
        ASSERT_NE(at, o.workings.end()) << key;
        EXPECT_FALSE(at->formula.empty()) << key;
        EXPECT_FALSE(at->result.empty()) << key;
        EXPECT_FALSE(at->source.empty()) << key;
        if (std::string(key) == "fixing.worst" || std::string(key) == "fixing.maker") continue;
        EXPECT_FALSE(input_of(*at, "in figures").empty()) << key;
        EXPECT_FALSE(input_of(*at, "holds for").empty()) << key;
    }
}

// The figures that the workings show lead to the use by hand: force on the worst point over its resistance.
TEST(Workings, TheShownForcesGiveTheShownUse) {
    Input in = plain_input();
    in.method = of("hook", 1500.0, Covering::clay_tile);
    const Outcome o = fixed_up(in);
    const auto point =
        std::find_if(o.workings.begin(), o.workings.end(), [](const Working& w) { return w.key == "fixing.point"; });
    ASSERT_NE(point, o.workings.end());
    const double pull = std::stod(point->result);
    const std::size_t comma = point->result.find("push, ");
    const double shear = std::stod(point->result.substr(comma + 6));
    EXPECT_NEAR((pull + shear) / 1500.0, o.worst_utilisation, 1e-3);
}

}  // namespace change_test
}  // namespace wg::fixing
