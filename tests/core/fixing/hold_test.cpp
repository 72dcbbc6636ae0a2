#include <gtest/gtest.h>

#include "tests/core/fixing/fixture.h"

namespace wg::fixing {
namespace {

// The short form must judge as the long one does, over places that break rules and places that do not.
TEST(Hold, JudgesAsTheFullCalculation) {
    int stopped = 0, free = 0;
    for (const bool rafters : {false, true}) {
        for (const double wind_m_s : {22.0, 40.0, 70.0}) {
            for (double x = 0.5; x < 10.0; x += 0.85) {
                for (const double y : {0.3, 2.0, 3.0, 5.8}) {
                    Input in = plain_input();
                    in.site.basic_wind_m_s = wind_m_s;
                    in.placement.x_m = x;
                    in.placement.y_m = y;
                    in.placement.hand = x > 5.0 ? Hand::left : Hand::right;
                    in.method.needs_rafters = rafters;
                    in.surface.rafters.present = rafters;
                    in.surface.rafters.spacing_m = 0.9;
                    in.placed = site::place(in.surface, 0.0, in.placement, in.collector);
                    const Outcome full = fix(in);
                    const Hold hold = hold_of(in);
                    ASSERT_EQ(hold.stopped, has_stop(full.findings)) << "x " << x << " y " << y << " wind " << wind_m_s;
                    if (hold.stopped) {
                        ++stopped;
                    } else {
                        ++free;
                        ASSERT_EQ(hold.worst_utilisation, full.worst_utilisation);
                    }
                }
            }
        }
    }
    EXPECT_GT(stopped, 20);
    EXPECT_GT(free, 20);
}

// The same over roof forms, rules of net pressure, neighbours above, profiles and turns.
TEST(Hold, JudgesAsTheFullCalculationInEveryManner) {
    int stopped = 0, free = 0;
    for (const RoofForm form : {RoofForm::duo_pitch, RoofForm::mono_pitch, RoofForm::hip, RoofForm::flat}) {
        for (const NetPressureRule rule :
             {NetPressureRule::surface_share, NetPressureRule::two_faces, NetPressureRule::coefficients}) {
            for (const double turn : {0.0, 90.0, 17.0}) {
                for (double x = 1.2; x < 9.0; x += 1.3) {
                    Input in = plain_input();
                    in.surface.roof_form = form;
                    if (form == RoofForm::flat) in.surface.tilt_deg = 2.0;
                    if (form == RoofForm::hip) in.surface.outline = {{0, 0}, {10, 0}, {7, 6}, {3, 6}};
                    in.rules.net_pressure = rule;
                    in.site.basic_wind_m_s = 27.0;
                    in.site.ground_snow_kn_m2 = 0.8;
                    in.site.hill.kind = HillKind::cliff;
                    in.placement.x_m = x;
                    in.placement.turn_deg = turn;
                    in.collector.profile_moment_nm = 250.0;
                    in.collector.profile_bolt_mm = 6.0;
                    in.method.pull_out_n = 2200.0;
                    in.method.shear_n = 1500.0;
                    in.others = {{{2.0, 4.9}, {5.0, 4.9}, {5.0, 5.6}, {2.0, 5.6}}};
                    in.placed = site::place(in.surface, 0.0, in.placement, in.collector);
                    const Outcome full = fix(in);
                    const Hold hold = hold_of(in);
                    ASSERT_EQ(hold.stopped, has_stop(full.findings)) << x << " turn " << turn;
                    ++(hold.stopped ? stopped : free);
                    if (!hold.stopped) ASSERT_EQ(hold.worst_utilisation, full.worst_utilisation);
                }
            }
        }
    }
    EXPECT_GT(stopped, 10);
    EXPECT_GT(free, 10);
}

TEST(Hold, AMethodForAnotherCoveringIsStopped) {
    Input in = plain_input();
    in.method.coverings = {Covering::slate};
    in.placed = site::place(in.surface, 0.0, in.placement, in.collector);
    EXPECT_TRUE(hold_of(in).stopped);
}

}  // namespace
}  // namespace wg::fixing
