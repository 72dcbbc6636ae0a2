#include "core/fixing/fixing.h"

#include <gtest/gtest.h>

#include <cmath>

#include "core/fixing/loads.h"
#include "core/quantity/constants.h"
#include "tests/core/fixing/fixture.h"

namespace wg::fixing {
namespace fixing_test {

constexpr double sum_tolerance = 1e-9;  // relative to the largest action

struct Case {
    Input input;
    Loads loads;
    Layout layout;
    Combined combined;
};

Case work(Input in) {
    in.placed = site::place(in.surface, in.site.sketch_up_azimuth_deg, in.placement, in.collector);
    const Layout layout = lay_points(in);
    Case w{in, loads_of(in, layout), layout, {}};
    w.combined = combine(in, w.loads, w.layout);
    return w;
}

TEST(Fix, AFourPointPlateWorkedByHand) {
    Input in = plain_input();
    in.site.basic_wind_m_s = 26.0;
    in.site.ground_snow_kn_m2 = 0.65;
    in.site.terrain = Terrain::farmland_ii;
    in.surface.ridge_height_m = 10.0;
    in.refrigerant_kg = 0.0;
    in.rules.snow_slides = false;
    const Outcome o = fixed_up(in);
    EXPECT_NEAR(o.wind.qp_pa, 993.8, 0.1);
    EXPECT_EQ(o.zone, "H");
    // Pitch 35: H along the ridge -0.8 to -0.9 and -1.2 for 1 m2, a third of the way from 30 to 45 deg; 1.6 m2.
    const double c10 = -0.8 - 0.1 / 3.0, cpe = -1.2 - (-1.2 - c10) * std::log10(1.6);
    EXPECT_NEAR(o.cpe_uplift, cpe, 1e-9);
    EXPECT_NEAR(o.snow_n_m2, 0.8 * 25.0 / 30.0 * 650.0, 1e-9);
    // Uplift: (1.5 W - 0.9 G cos) / 4, and the weight's couple about the surface: 0.1 m off, rows 0.6 m apart, two
    // points each. Each point's own part, 1.0 x 0.4 m, has the value for 1 m2, which is worse than the whole plate's.
    const double g = 10.0 * gravity_m_s2, wind = 993.8 * 1.2 * 1.6, c = std::cos(radians(35.0)),
                 s = std::sin(radians(35.0));
    const double top = (1.5 * wind - 0.9 * g * c) / 4.0 + 0.9 * g * s * 0.1 / 0.6 / 2.0;
    const double alternative = (1.5 * wind - 1.35 * g * c) / 4.0 + 1.35 * g * s * 0.1 / 0.6 / 2.0;
    ASSERT_EQ(o.points.size(), 4U);
    EXPECT_NEAR(o.points[2].pull_n, std::max(top, alternative), 0.1);
    EXPECT_LT(o.points[0].pull_n, o.points[2].pull_n);
    // Shear: 1.35 G + 1.5 S along the slope, a quarter each.
    const double snow = 0.8 * 25.0 / 30.0 * 650.0 * 1.6 * c;
    EXPECT_NEAR(o.points[0].shear_n, (1.35 * g + 1.5 * snow) * s / 4.0, 1e-6);
    EXPECT_NEAR(o.points[0].resistance_pull_n, 0.9 / 1.3 * std::pow(2.0, 0.9) * screw_withdrawal_n(6.0, 60.0, 350.0),
                1e-6);
}

void expect_sums(const Case& w) {
    ASSERT_FALSE(w.combined.combinations.empty());
    for (const Combination& c : w.combined.combinations) {
        double normal = 0.0, along = 0.0, size = 1.0;
        for (const PointForce& f : c.of_point) {
            normal += f.normal_n;
            along += f.along_n;
            size += std::abs(f.normal_n) + f.along_n;
        }
        EXPECT_NEAR(normal, c.action.normal_n, sum_tolerance * size) << c.name;
        EXPECT_NEAR(along, std::hypot(c.action.along_n.x_m, c.action.along_n.y_m), sum_tolerance * size) << c.name;
    }
}

TEST(Fix, CombinationsTakeTheFactorsOfTheRuleSet) {
    Input in = plain_input();
    in.rules.gamma_permanent_favourable = 0.8;
    in.rules.gamma_variable = 1.6;
    in.rules.psi_0_snow = 0.7;
    const Case w = work(in);
    const double g = w.loads.permanent.normal_n, s = w.loads.snow.normal_n;
    const double suction = w.loads.winds[0].action.normal_n, pressure = w.loads.winds[1].action.normal_n;
    EXPECT_LT(suction, 0.0);
    EXPECT_GT(pressure, 0.0);
    ASSERT_EQ(w.combined.combinations.size(), 13U);  // six for the plate, six by parts, snow alone
    const auto normal = [&](std::size_t i) { return w.combined.combinations[i].action.normal_n; };
    EXPECT_NEAR(normal(0), 0.8 * g + 1.6 * suction, 1e-9);
    EXPECT_NEAR(normal(1), 1.35 * g + 1.6 * suction, 1e-9);
    EXPECT_NEAR(normal(2), 0.8 * g + 1.6 * pressure, 1e-9);
    EXPECT_NEAR(normal(3), 1.35 * g + 1.6 * pressure, 1e-9);
    EXPECT_NEAR(normal(4), 1.35 * g + 1.6 * pressure + 1.6 * 0.7 * s, 1e-9);
    EXPECT_NEAR(normal(5), 1.35 * g + 1.6 * s + 1.6 * 0.6 * pressure, 1e-9);
    EXPECT_NEAR(normal(12), 1.35 * g + 1.6 * s, 1e-9);
    EXPECT_EQ(w.combined.combinations[0].name, "0.80 G + 1.60 wind suction");
}

TEST(Fix, WeightOnAWallPullsAtTheTopAndPushesBelow) {
    Input in = plain_input();
    in.surface.kind = SurfaceKind::wall;
    in.surface.tilt_deg = 90.0;
    const Case w = work(in);
    const Combination& dead = w.combined.combinations.back();  // 1.35 G + 1.5 snow; no snow on a wall
    const double couple = 1.35 * w.loads.weight_n * 0.1;       // weight 0.1 m off the wall, rows 0.6 m apart
    EXPECT_NEAR(dead.of_point[0].normal_n, couple / 0.6 / 2.0, 1e-9);
    EXPECT_NEAR(dead.of_point[2].normal_n, -couple / 0.6 / 2.0, 1e-9);
    EXPECT_NEAR(dead.of_point[0].along_n, 1.35 * w.loads.weight_n / 4.0, 1e-9);
}

TEST(Fix, ReactionsAddUpToTheActionInEveryCombination) {
    for (const double turn : {0.0, 90.0, 180.0}) {
        for (const double tilt : {5.0, 35.0, 60.0, 90.0}) {
            Input in = plain_input();
            in.surface.tilt_deg = tilt;
            in.surface.kind = tilt == 90.0 ? SurfaceKind::wall : SurfaceKind::roof;
            in.placement.turn_deg = turn;
            in.method.needs_rafters = true;
            in.surface.rafters = {true, 0.1, 0.6, 0.06, 0.16};
            in.collector.fixing_points.push_back({1.0, 0.1});
            in.collector.fixing_points.push_back({1.0, 0.7});
            expect_sums(work(in));
        }
    }
    // Parts in different zones, across and along, and points moved to rafters.
    for (const RoofForm form : {RoofForm::duo_pitch, RoofForm::mono_pitch, RoofForm::hip}) {
        for (const double x : {1.2, 1.45, 2.3, 8.6}) {
            Input in = plain_input();
            in.surface.roof_form = form;
            in.placement.x_m = x;
            in.placement.y_m = 1.0;
            in.method.needs_rafters = true;
            in.surface.rafters = {true, 0.1, 0.45, 0.06, 0.16};
            in.collector.fixing_points.push_back({1.1, 0.1});
            expect_sums(work(in));
        }
    }
    Input frame = plain_input();
    frame.surface.tilt_deg = 0.0;
    frame.surface.roof_form = RoofForm::flat;
    frame.placement.frame_tilt_deg = 55.0;
    frame.placement.frame_azimuth_deg = 180.0;
    expect_sums(work(frame));
}

TEST(Fix, MoreWindNeverHelps) {
    for (const bool frame : {false, true}) {
        double before = 0.0;
        for (double wind = 10.0; wind <= 45.0; wind += 1.0) {
            Input in = plain_input();
            in.site.basic_wind_m_s = wind;
            if (frame) {
                in.surface.tilt_deg = 0.0;
                in.placement.frame_tilt_deg = 45.0;
            }
            const double used = fixed_up(in).worst_utilisation;
            EXPECT_GE(used, before - 1e-12) << wind;
            before = used;
        }
        EXPECT_GT(before, 0.0);
    }
}

TEST(Fix, MoreSnowNeverHelps) {
    double before = 0.0;
    for (double snow = 0.0; snow <= 5.0; snow += 0.25) {
        Input in = plain_input();
        in.site.ground_snow_kn_m2 = snow;
        const double used = fixed_up(in).worst_utilisation;
        EXPECT_GE(used, before - 1e-12);
        before = used;
    }
}

TEST(Fix, MirroredPlacementsAreUsedAlike) {
    Input left = plain_input(), right = plain_input();
    left.collector.fixing_points[1].x_m = right.collector.fixing_points[1].x_m = 1.5;  // not symmetrical
    left.placement.x_m = 2.0;
    right.placement.x_m = 8.0;
    right.placement.hand = Hand::left;
    const Outcome l = fixed_up(left), r = fixed_up(right);
    EXPECT_NEAR(l.worst_utilisation, r.worst_utilisation, 1e-12);
    for (std::size_t i = 0; i < 4; ++i) {
        EXPECT_NEAR(l.points[i].pull_n, r.points[i].pull_n, 1e-9);
        EXPECT_NEAR(l.points[i].position.x_m, 10.0 - r.points[i].position.x_m, 1e-12);
    }
}

TEST(Fix, TurningSiteAndBearingsTogetherChangesNothing) {
    Input in = plain_input();
    const Outcome a = fixed_up(in);
    in.site.sketch_up_azimuth_deg += 50.0;
    in.surface.azimuth_deg += 50.0;
    const Outcome b = fixed_up(in);
    for (std::size_t i = 0; i < 4; ++i)
        EXPECT_NEAR(a.points[i].pull_n, b.points[i].pull_n, 1e-9);
}

TEST(Fix, PointsMoveToTheNearestRafterWithinReach) {
    Input in = plain_input();
    in.method.needs_rafters = true;
    in.surface.rafters = {true, 0.2, 0.6, 0.06, 0.16};  // ... 4.4, 5.0, 5.6: points at 4.3 and 5.7
    const Outcome o = fixed_up(in);
    EXPECT_TRUE(o.points[0].on_rafter);
    EXPECT_NEAR(o.points[0].position.x_m, 4.4, 1e-9);
    EXPECT_NEAR(o.points[0].rafter_offset_m, 0.1, 1e-9);
    EXPECT_NEAR(o.points[1].position.x_m, 5.6, 1e-9);
    EXPECT_NEAR(o.points[1].nominal.x_m, 5.7, 1e-9);
    EXPECT_EQ(find_code(o.findings, "fixing.off-rafter"), nullptr);
}

TEST(Fix, APointTooFarFromEveryRafterStops) {
    Input in = plain_input();
    in.method.needs_rafters = true;
    in.surface.rafters = {true, 1.0, 2.0, 0.06, 0.16};  // at 5.0 and 7.0: 0.7 m away
    const Outcome o = fixed_up(in);
    ASSERT_NE(find_code(o.findings, "fixing.off-rafter"), nullptr);
    EXPECT_EQ(find_code(o.findings, "fixing.off-rafter")->severity, Severity::stop);
    EXPECT_FALSE(o.points[0].on_rafter);
    EXPECT_EQ(o.points[0].position, o.points[0].nominal);
}

TEST(Fix, ARailEndsWithItsPlate) {
    Input in = plain_input();
    in.method.needs_rafters = true;
    in.collector.fixing_points = {{0.05, 0.1}, {1.5, 0.1}, {0.05, 0.7}, {1.5, 0.7}};  // at 4.05 and 5.5 on the roof
    in.surface.rafters = {true, 0.9, 1.5, 0.06, 0.16};  // 3.9 is within reach of 4.05 and outside the plate; 5.4 serves
    const Outcome o = fixed_up(in);
    EXPECT_FALSE(o.points[0].on_rafter);
    EXPECT_TRUE(o.points[1].on_rafter);
}

TEST(Fix, UnknownRaftersAreACautionForTheVisit) {
    Input in = plain_input();
    in.method.needs_rafters = true;
    const Outcome o = fixed_up(in);
    ASSERT_NE(find_code(o.findings, "fixing.rafters-unknown"), nullptr);
    EXPECT_EQ(find_code(o.findings, "fixing.rafters-unknown")->stage, Stage::visit);
}

TEST(Fix, TheMethodMustSuitTheCovering) {
    Input in = plain_input();
    EXPECT_EQ(find_code(fixed_up(in).findings, "fixing.covering"), nullptr);
    in.surface.covering = Covering::slate;
    ASSERT_NE(find_code(fixed_up(in).findings, "fixing.covering"), nullptr);
    EXPECT_EQ(find_code(fixed_up(in).findings, "fixing.covering")->severity, Severity::stop);
}

TEST(Fix, UtilisationStopsAboveOneAndCautionsAboveNinety) {
    Input in = plain_input();
    in.method.screw_diameter_mm = 0.0;
    in.method.pull_out_n = 1e6;
    in.method.shear_n = 1e6;
    const Outcome weak = fixed_up(in);
    EXPECT_EQ(find_code(weak.findings, "fixing.overloaded"), nullptr);
    EXPECT_EQ(find_code(weak.findings, "fixing.nearly-full"), nullptr);
    // Resistances in one proportion scale the utilisation: bring it to 0.95 and 1.05.
    const double k = weak.worst_utilisation;
    in.method.pull_out_n = in.method.shear_n = 1e6 * k / 0.95;
    Outcome o = fixed_up(in);
    EXPECT_NEAR(o.worst_utilisation, 0.95, 1e-9);
    ASSERT_NE(find_code(o.findings, "fixing.nearly-full"), nullptr);
    EXPECT_EQ(find_code(o.findings, "fixing.nearly-full")->severity, Severity::caution);
    in.method.pull_out_n = in.method.shear_n = 1e6 * k / 1.05;
    o = fixed_up(in);
    ASSERT_NE(find_code(o.findings, "fixing.overloaded"), nullptr);
    EXPECT_EQ(find_code(o.findings, "fixing.overloaded")->severity, Severity::stop);
    in.method.pull_out_n = 0.0;
    EXPECT_EQ(fixed_up(in).worst_utilisation, 0.0);
    ASSERT_NE(find_code(fixed_up(in).findings, "fixing.no-resistance"), nullptr);
    EXPECT_EQ(find_code(fixed_up(in).findings, "fixing.no-resistance")->severity, Severity::stop);
}

TEST(Fix, AHookWithItsOwnResistanceIsCheckedBesideItsScrews) {
    Input in = plain_input();
    const Outcome screws = fixed_up(in);
    ASSERT_NE(find_code(screws.findings, "fixing.bracket-not-checked"), nullptr);
    EXPECT_EQ(find_code(screws.findings, "fixing.bracket-not-checked")->severity, Severity::caution);
    in.method.pull_out_n = 0.25 * screws.points[0].resistance_pull_n;
    in.method.shear_n = 0.25 * screws.points[0].resistance_shear_n;
    const Outcome both = fixed_up(in);
    EXPECT_EQ(find_code(both.findings, "fixing.bracket-not-checked"), nullptr);
    EXPECT_NEAR(both.points[0].resistance_pull_n, in.method.pull_out_n, 1e-9);
    EXPECT_GT(both.worst_utilisation,
              4.0 * screws.worst_utilisation - 1e-9);  // a sum is never less than a root of squares
    in.method.pull_out_n = in.method.shear_n = 1e6;    // a strong hook leaves the screws to govern
    EXPECT_NEAR(fixed_up(in).worst_utilisation, screws.worst_utilisation, 1e-12);
}

TEST(Fix, NumbersRunOnAndEachPointIsSetOutFromTwoEdges) {
    Input in = plain_input();
    in.first_number = 5;
    const Outcome o = fixed_up(in);
    EXPECT_EQ(o.points.front().number, 5);
    EXPECT_EQ(o.points.back().number, 8);
    EXPECT_GE(o.worst_point, 5);
    EXPECT_NEAR(o.points[0].edge_a.distance_m, 2.7, 1e-12);  // up from the eave: 3.0 - 0.4 + 0.1
    EXPECT_NEAR(o.points[0].edge_b.distance_m, 4.3, 1e-12);
}

TEST(Fix, PointsNearAnEdgeAreCautionedAndOutsideStopped) {
    Input in = plain_input();
    in.placement.y_m = 0.5;  // lower points at 0.2 m
    Outcome o = fixed_up(in);
    ASSERT_NE(find_code(o.findings, "fixing.edge-distance"), nullptr);
    EXPECT_NE(find_code(o.findings, "fixing.edge-distance")->remedy.find("0.10 m"), std::string::npos);
    in.placement.y_m = 0.2;
    o = fixed_up(in);
    ASSERT_NE(find_code(o.findings, "fixing.point-outside"), nullptr);
    EXPECT_EQ(find_code(o.findings, "fixing.point-outside")->severity, Severity::stop);
}

TEST(Fix, AFrameOnALevelRoofTakesTheFreePlateForce) {
    Input in = plain_input();
    in.surface.tilt_deg = 0.0;
    in.surface.roof_form = RoofForm::flat;
    in.placement.frame_tilt_deg = 45.0;
    in.placement.frame_azimuth_deg = 180.0;
    const Case w = work(in);
    const double force = w.loads.wind.qp_pa * 1.8 * 1.6;
    ASSERT_EQ(w.loads.winds.size(), 4U);
    EXPECT_NEAR(w.loads.winds[0].action.normal_n, -force * std::cos(radians(45.0)), 1e-9);
    EXPECT_NEAR(w.loads.winds[0].action.along_n.y_m, -force * std::sin(radians(45.0)), 1e-9);  // from behind: southward
    const Outcome o = fixed_up(in);
    EXPECT_EQ(o.zone, "free");
    EXPECT_NE(find_code(o.findings, "fixing.free-plate"), nullptr);
    EXPECT_NE(find_code(o.findings, "fixing.ballast"), nullptr);
    Input loose = w.input;
    loose.method.kind = FixingKind::ballast;
    const BallastCheck b = check_ballast(loose, w.loads, w.layout);
    const double up = 1.5 * force * std::cos(radians(45.0)), own = 0.9 * w.loads.weight_n;
    EXPECT_NEAR(4.0 * b.lifts_kg, (up - own) / (0.9 * gravity_m_s2), 1e-9);
    EXPECT_GT(b.slides_kg, b.lifts_kg);
}

TEST(Fix, AFrameWithFeetInOneLineIsGivenADepthAndSaysSo) {
    Input in = plain_input();
    in.surface.tilt_deg = 0.0;
    in.placement.frame_tilt_deg = 90.0;
    in.placement.frame_azimuth_deg = 180.0;
    const Outcome o = fixed_up(in);
    ASSERT_NE(find_code(o.findings, "fixing.no-lever"), nullptr);
    for (const FixingPoint& p : o.points) {
        EXPECT_GT(p.pull_n, 0.0);
        EXPECT_GT(p.push_n, 0.0);
        EXPECT_TRUE(std::isfinite(p.utilisation));
    }
}

TEST(Fix, WhatIsAssumedIsSaid) {
    Input in = plain_input();
    in.rules.source = "assumed";
    const Outcome o = fixed_up(in);
    EXPECT_NE(find_code(o.findings, "fixing.net-pressure"), nullptr);
    EXPECT_NE(find_code(o.findings, "fixing.zones-simplified"), nullptr);
    const auto wind =
        std::find_if(o.workings.begin(), o.workings.end(), [](const Working& w) { return w.key == "fixing.wind"; });
    ASSERT_NE(wind, o.workings.end());
    EXPECT_TRUE(wind->assumed);
    in.surface.roof_form = RoofForm::hip;
    const Outcome hip = fixed_up(in);
    ASSERT_NE(find_code(hip.findings, "fixing.zones-simplified"), nullptr);
    EXPECT_NE(find_code(hip.findings, "fixing.zones-simplified")->message.find("hips"), std::string::npos);
    EXPECT_EQ(find_code(hip.findings, "fixing.hip-roof"), nullptr);  // worked out, no stand-in
}

TEST(Fix, AModelWithoutPointsStopsWithoutFigures) {
    Input in = plain_input();
    in.collector.fixing_points.clear();
    const Outcome o = fixed_up(in);
    EXPECT_TRUE(o.points.empty());
    ASSERT_NE(find_code(o.findings, "fixing.too-few-points"), nullptr);
    EXPECT_EQ(o.worst_utilisation, 0.0);
}

}  // namespace fixing_test
}  // namespace wg::fixing
