#include <gtest/gtest.h>

#include <cmath>

#include "core/fixing/loads.h"
#include "core/quantity/constants.h"
#include "core/quantity/text.h"
#include "tests/core/fixing/fixture.h"

namespace wg::fixing {
namespace ballast_test {

Input ballasted(double tilt, double kg) {
    Input in = plain_input();
    in.surface.tilt_deg = 0.0;
    in.surface.roof_form = RoofForm::flat;
    in.surface.covering = Covering::membrane;
    in.surface.spare_load_kn_m2 = 5.0;
    in.placement.frame_tilt_deg = tilt;
    in.placement.frame_azimuth_deg = 180.0;
    in.method.kind = FixingKind::ballast;
    in.method.coverings = {Covering::membrane};
    in.method.screw_diameter_mm = 0.0;
    in.method.ballast_kg = kg;
    in.method.friction = 0.5;
    in.method.frame_depth_m = 1.2;
    in.method.frame_mass_kg = 20.0;
    in.refrigerant_kg = 0.0;
    return in;
}

struct Stood {
    Loads loads;
    BallastCheck check;
};
Stood stood(Input in) {
    in.placed = site::place(in.surface, in.site.sketch_up_azimuth_deg, in.placement, in.collector);
    const Layout layout = lay_points(in);
    const Loads l = loads_of(in, layout);
    return {l, check_ballast(in, l, layout)};
}

// Signboard at 60 deg, 1.6 m2: F = 1.8 q 1.6; from behind it lifts by F cos 60 and pushes by F sin 60 at the plate's
// middle. Mass 10 + 20 + 4 x 100 kg, feet 1.2 m apart, friction 0.5.
TEST(Ballast, ASteepFrameByHand) {
    const Stood s = stood(ballasted(60.0, 100.0));
    const double f = 1.5 * s.loads.wind.qp_pa * 1.8 * 1.6, up = 0.5 * f, level = f * std::sin(radians(60.0));
    const double weight = 0.9 * 430.0 * gravity_m_s2;
    EXPECT_NEAR(s.check.mass_kg, 430.0, 1e-9);
    EXPECT_NEAR(s.check.lifts, up / weight, 1e-9);
    EXPECT_NEAR(s.check.slides, level / (0.5 * (weight - up)), 1e-9);
    const double z = s.loads.middle_off_m;
    EXPECT_NEAR(s.check.tips, (up * 0.6 + level * z) / (weight * 0.6), 1e-9);
}

// Level plate as a canopy, c_f -1.3: lifts by F, a quarter of 0.8 m off the middle: couple F x 0.2 over feet 1.2 m
// apart and F x 0.5 over points 1.4 m apart side to side (a quarter of 2 m): tipping sideways is the worse of the two.
TEST(Ballast, ALevelPlateByHand) {
    Input in = ballasted(0.0, 50.0);
    const Stood s = stood(in);
    const double f = 1.5 * s.loads.wind.qp_pa * 1.3 * 1.6, weight = 0.9 * 230.0 * gravity_m_s2;
    EXPECT_NEAR(s.check.lifts, f / weight, 1e-9);
    EXPECT_NEAR(s.check.slides, 0.0, 1e-9);
    EXPECT_NEAR(s.check.tips, f * (1.0 + std::max(0.2 / 0.6, 0.5 / 0.7)) / weight, 1e-6);
}

TEST(Ballast, WhatIsNeededIsJustEnough) {
    for (const double tilt : {10.0, 25.0, 45.0, 70.0}) {
        const double needed = stood(ballasted(tilt, 10.0)).check.needed_kg();
        ASSERT_GT(needed, 0.0);
        EXPECT_NEAR(stood(ballasted(tilt, needed)).check.worst().share, 1.0, 1e-6) << tilt;
        EXPECT_LT(stood(ballasted(tilt, needed + 5.0)).check.worst().share, 1.0);
    }
}

TEST(Ballast, GovernsNamedAndAgreesWithHold) {
    for (const double tilt : {5.0, 20.0, 40.0, 80.0}) {
        for (const double kg : {5.0, 60.0, 200.0, 900.0}) {
            Input in = ballasted(tilt, kg);
            in.placed = site::place(in.surface, 0.0, in.placement, in.collector);
            const Outcome o = fix(in);
            const Hold h = hold_of(in);
            EXPECT_EQ(h.stopped, has_stop(o.findings)) << tilt << ' ' << kg;
            EXPECT_EQ(h.worst_utilisation, o.worst_utilisation);
            EXPECT_GE(o.held_by, HeldBy::ballast_slides);
            for (const FixingPoint& p : o.points)
                EXPECT_EQ(p.utilisation, o.worst_utilisation);
        }
    }
}

TEST(Ballast, TheRoofMustCarryIt) {
    Input in = ballasted(20.0, 150.0);
    const Stood s = stood(in);
    // 630 kg on 2.0 x 1.2 m: 2.57 kN/m2.
    EXPECT_NEAR(s.check.load_kn_m2, 630.0 * gravity_m_s2 / 2400.0, 1e-6);
    EXPECT_EQ(find_code(fixed_up(in).findings, "fixing.spare-load"), nullptr);
    in.surface.spare_load_kn_m2 = 2.5;
    ASSERT_NE(find_code(fixed_up(in).findings, "fixing.spare-load"), nullptr);
    EXPECT_EQ(find_code(fixed_up(in).findings, "fixing.spare-load")->severity, Severity::stop);
    in.surface.spare_load_kn_m2.reset();
    ASSERT_NE(find_code(fixed_up(in).findings, "fixing.spare-load-unknown"), nullptr);
    EXPECT_EQ(find_code(fixed_up(in).findings, "fixing.spare-load-unknown")->severity, Severity::caution);
}

TEST(Ballast, AMissingFigureOrASlopeStops) {
    Input in = ballasted(20.0, 0.0);
    ASSERT_NE(find_code(fixed_up(in).findings, "fixing.no-resistance"), nullptr);
    EXPECT_NE(find_code(fixed_up(in).findings, "fixing.no-resistance")->message.find("ballast_kg"), std::string::npos);
    in = ballasted(20.0, 500.0);
    in.surface.tilt_deg = 12.0;
    EXPECT_NE(find_code(fixed_up(in).findings, "fixing.ballast-slope"), nullptr);
}

// The figures that the working shows give the use it shows.
TEST(Ballast, ItsWorkingCanBeRecalculated) {
    const Outcome o = fixed_up(ballasted(60.0, 100.0));
    const auto w =
        std::find_if(o.workings.begin(), o.workings.end(), [](const Working& x) { return x.key == "fixing.ballast"; });
    ASSERT_NE(w, o.workings.end());
    double up = 0.0, level = 0.0, sliding = 0.0;
    for (const auto& [name, value] : w->inputs) {
        if (name.rfind("slides most", 0) == 0) {
            up = std::stod(value.substr(2));
            level = std::stod(value.substr(value.find(", H ") + 4));
        }
        if (name == "sliding") sliding = std::stod(value);
    }
    ASSERT_GT(level, 0.0);
    EXPECT_NEAR(100.0 * level / (0.5 * (0.9 * 430.0 * gravity_m_s2 - up)), sliding, 1.0);
}

TEST(Ballast, TooLittleOfItIsMendedByWeight) {
    Input in = ballasted(45.0, 20.0);
    const Outcome o = fixed_up(in);
    const Finding* f = find_code(o.findings, "fixing.overloaded");
    ASSERT_NE(f, nullptr);
    const std::string kg = fixed(std::ceil(stood(in).check.needed_kg()), 0) + " kg a point";
    EXPECT_NE(f->remedy.find("ay " + kg.substr(0, kg.find(' '))), std::string::npos) << f->remedy;
    // Not where the roof does not carry it.
    in.surface.spare_load_kn_m2 = 0.5;
    const Outcome weak_roof = fixed_up(in);
    EXPECT_EQ(find_code(weak_roof.findings, "fixing.overloaded")->remedy.find("kg a point"), std::string::npos);
}

}  // namespace ballast_test
}  // namespace wg::fixing
