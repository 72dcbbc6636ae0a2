// What single parts of a fixing hold, and which of them governs.
#include <gtest/gtest.h>

#include <cmath>

#include "core/fixing/hold.h"
#include "core/fixing/screws.h"
#include "tests/core/fixing/fixture.h"

namespace wg::fixing {
namespace hold_parts_test {

constexpr double rounded = 0.005;

// ISO 898-1: stress areas of coarse threads, mm2.
TEST(Bolt, StressAreas) {
    EXPECT_NEAR(stress_area_mm2(6), 20.1, 0.05);
    EXPECT_NEAR(stress_area_mm2(8), 36.6, 0.05);
    EXPECT_NEAR(stress_area_mm2(10), 58.0, 0.05);
    EXPECT_NEAR(stress_area_mm2(12), 84.3, 0.05);
    EXPECT_NEAR(stress_area_mm2(16), 157.0, 0.5);
    EXPECT_EQ(stress_area_mm2(7), 0.0);
}

// EN 1993-1-8 table 3.4: A4-70 and 8.8, gamma_M2 1.25, kN.
TEST(Bolt, TensionAndShear) {
    EXPECT_NEAR(bolt_hold(6, 700, 1.25).tension_n / 10130.0, 1.0, rounded);
    EXPECT_NEAR(bolt_hold(8, 700, 1.25).tension_n / 18450.0, 1.0, rounded);
    EXPECT_NEAR(bolt_hold(10, 700, 1.25).tension_n / 29230.0, 1.0, rounded);
    EXPECT_NEAR(bolt_hold(6, 800, 1.25).tension_n / 11580.0, 1.0, rounded);
    EXPECT_NEAR(bolt_hold(6, 700, 1.25).shear_n / 5630.0, 1.0, rounded);
}

TEST(Bolt, TogetherByTheTablesLastRow) {
    // F_v/F_v,Rd + F_t/(1.4 F_t,Rd), and tension alone.
    const PartHold m8{HeldBy::bolt, Together::bolt, 18450.0, 10250.0};
    EXPECT_NEAR(use_of(m8, 7000.0, 4100.0).share, 0.4 + 0.27100, 1e-4);
    EXPECT_NEAR(use_of(m8, 18450.0, 0.0).share, 1.0, 1e-12);
    EXPECT_NEAR(use_of(m8, 20000.0, 1000.0).share, 20000.0 / 18450.0, 1e-12);
}

// EN 1995-1-1:2004+A1 (8.40b), formula from memory: f_head 9.4 N/mm2, head 13 mm, 350 kg/m3: 1589 N; 420 kg/m3: times
// 1.2^0.8 = 1.157.
TEST(Head, PullThrough) {
    EXPECT_NEAR(head_pull_through_n(13, 9.4, 350), 1588.6, 0.1);
    EXPECT_NEAR(head_pull_through_n(13, 9.4, 420), 1838.1, 1.0);
    EXPECT_EQ(head_pull_through_n(0, 9.4, 350), 0.0);
}

TEST(Head, GovernsWhereTheHeadIsSmallAndTheGripLong) {
    FixingMethod m = hooks();
    m.screw_diameter_mm = 8.0;
    m.screw_grip_mm = 80.0;
    const CollectorModel c = plain_collector();
    const ActionRules rules;
    EXPECT_EQ(resistance_of(m, c, rules).part(HeldBy::head), nullptr);
    m.head_diameter_mm = 15.0;
    m.head_strength_n_mm2 = 10.0;
    const Resistance r = resistance_of(m, c, rules);
    ASSERT_NE(r.part(HeldBy::head), nullptr);
    EXPECT_NEAR(r.part(HeldBy::head)->pull_n, 0.9 / 1.3 * screws_together(2) * 2250.0, 1e-6);
    EXPECT_EQ(r.pull_n, r.part(HeldBy::head)->pull_n);
    EXPECT_EQ(use_of(r, 2000.0, 10.0).by, HeldBy::head);
    EXPECT_EQ(use_of(r, 10.0, 2000.0).by, HeldBy::screws);
}

TEST(Parts, TheWeakestIsNamed) {
    Input in = plain_input();
    in.method.pull_out_n = in.method.shear_n = 1e6;
    EXPECT_EQ(fixed_up(in).held_by, HeldBy::screws);
    in.method.pull_out_n = in.method.shear_n = 800.0;
    EXPECT_EQ(fixed_up(in).held_by, HeldBy::bracket);
    in.method.pull_out_n = in.method.shear_n = 1e9;
    in.method.screw_diameter_mm = 12.0;
    in.method.screw_grip_mm = 200.0;
    in.method.screws_per_point = 12;
    in.method.bolt_mm = 4.0;
    in.method.bolt_n_mm2 = 300.0;
    EXPECT_EQ(fixed_up(in).held_by, HeldBy::bolt);
    in.method.bolt_mm = 0.0;
    in.collector.profile_bolt_mm = 4.0;
    in.collector.profile_bolt_n_mm2 = 300.0;
    const Outcome o = fixed_up(in);
    EXPECT_EQ(o.held_by, HeldBy::profile_bolt);
    for (const FixingPoint& p : o.points)
        EXPECT_EQ(p.held_by, HeldBy::profile_bolt);
}

TEST(Parts, BoltsAloneHoldNothing) {
    Input in = plain_input();
    in.method.screw_diameter_mm = 0.0;
    in.method.bolt_mm = 10.0;
    in.collector.profile_bolt_mm = 8.0;
    const Outcome o = fixed_up(in);
    EXPECT_EQ(o.worst_utilisation, 0.0);
    ASSERT_NE(find_code(o.findings, "fixing.no-resistance"), nullptr);
    EXPECT_NE(find_code(o.findings, "fixing.no-resistance")->message.find("pull_out_n"), std::string::npos);
}

TEST(Untold, FieldsAreNamed) {
    Input in = plain_input();
    const Outcome o = fixed_up(in);
    const Finding* f = find_code(o.findings, "fixing.not-worked-out");
    ASSERT_NE(f, nullptr);
    EXPECT_EQ(f->severity, Severity::note);
    for (const char* field : {"profile_moment_nm", "profile_stiffness_nm2", "profile_bolt_mm"})
        EXPECT_NE(f->message.find(field), std::string::npos) << field;
    EXPECT_EQ(f->message.find("(bolt_mm)"), std::string::npos);  // hooks have none
    in.method.kind = FixingKind::anchor;
    EXPECT_NE(find_code(fixed_up(in).findings, "fixing.not-worked-out")->message.find("(bolt_mm)"), std::string::npos);
    in.method.kind = FixingKind::hook;
    in.collector.profile_moment_nm = 300.0;
    in.collector.profile_stiffness_nm2 = 3000.0;
    in.collector.profile_bolt_mm = 8.0;
    EXPECT_EQ(find_code(fixed_up(in).findings, "fixing.not-worked-out"), nullptr);
    in.collector.profile_bolt_mm = 7.3;
    ASSERT_NE(find_code(fixed_up(in).findings, "fixing.not-worked-out"), nullptr);
    EXPECT_NE(find_code(fixed_up(in).findings, "fixing.not-worked-out")->message.find("7.3 mm"), std::string::npos);
}

TEST(Spacing, PointsTooNearAreCautioned) {
    Input in = plain_input();  // 0.6 m between the rows
    in.method.spacing_min_m = 0.5;
    EXPECT_EQ(find_code(fixed_up(in).findings, "fixing.spacing"), nullptr);
    in.method.spacing_min_m = 0.7;
    ASSERT_NE(find_code(fixed_up(in).findings, "fixing.spacing"), nullptr);
    EXPECT_NE(find_code(fixed_up(in).findings, "fixing.spacing")->message.find("0.60 m"), std::string::npos);
    in.method.joint_distance_m = 0.05;
    EXPECT_NE(find_code(fixed_up(in).findings, "fixing.joints"), nullptr);
}

}  // namespace hold_parts_test
}  // namespace wg::fixing
