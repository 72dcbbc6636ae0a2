// The building round a plane, net pressure by rule, wind by parts, free plates.
#include <gtest/gtest.h>

#include <cmath>

#include "core/fixing/loads.h"
#include "core/fixing/zones.h"
#include "core/quantity/constants.h"
#include "tests/core/fixing/fixture.h"

namespace wg::fixing {
namespace net_pressure_test {

struct Laid {
    Input input;
    Layout layout;
    Loads loads;
};
Laid laid(Input in) {
    in.placed = site::place(in.surface, in.site.sketch_up_azimuth_deg, in.placement, in.collector);
    const Layout layout = lay_points(in);
    return {in, layout, loads_of(in, layout)};
}

/// A footprint of 10 m along the plain roof's eaves and `depth_m` back from it, linked to the roof.
void link(Input& in, double depth_m, double parapet_m = 0.0) {
    Building b;
    b.id = "b";
    for (const Point2 p : {Point2{0, 0}, {10, 0}, {10, depth_m}, {0, depth_m}})
        b.edges.push_back({"e" + std::to_string(b.edges.size()), p, false, {}});
    b.parapet_m = parapet_m;
    in.site.buildings = {b};
    in.surface.footprint_edge_id = "e0";
    in.site.sketch_up_azimuth_deg = 0.0;
}

TEST(Body, FollowsTheLinkedBuilding) {
    Input in = plain_input();
    EXPECT_EQ(body_of(in.site, in.surface).across_m, 0.0);
    link(in, 14.0, 0.7);
    const Body b = body_of(in.site, in.surface);
    EXPECT_NEAR(b.along_m, 10.0, 1e-9);
    EXPECT_NEAR(b.across_m, 14.0, 1e-9);
    EXPECT_EQ(b.parapet_m, 0.0);  // parapets are of flat roofs
    in.surface.tilt_deg = 0.0;
    in.surface.roof_form = RoofForm::flat;
    EXPECT_EQ(body_of(in.site, in.surface).parapet_m, 0.7);
    EXPECT_NEAR(body_of(in.site, in.surface).reference_height_m(), 7.7, 1e-12);
}

TEST(Body, ItsDepthSetsTheZonesAlongTheRidge) {
    Input in = plain_input();  // 6 m of slope at 35 deg: 4.915 m in plan, twice that without a building
    in.surface.ridge_height_m = 20.0;
    EXPECT_NEAR(zone_widths(in.surface, body_of(in.site, in.surface)).along_m, 9.8298, 1e-3);
    link(in, 14.0);
    EXPECT_NEAR(zone_widths(in.surface, body_of(in.site, in.surface)).along_m, 14.0, 1e-9);
}

// EN 1991-1-4 table 7.2, rows h_p/h 0.025, 0.05 and 0.10 as published; between them straight.
TEST(Tables, ParapetsCalmTheEdgeOfAFlatRoof) {
    EXPECT_EQ(tables::flat('F', 0.0).suction_10, -1.8);
    EXPECT_EQ(tables::flat('F', 0.025).suction_10, -1.6);
    EXPECT_EQ(tables::flat('F', 0.025).suction_1, -2.2);
    EXPECT_EQ(tables::flat('G', 0.05).suction_10, -0.9);
    EXPECT_EQ(tables::flat('G', 0.05).suction_1, -1.6);
    EXPECT_EQ(tables::flat('F', 0.10).suction_1, -1.8);
    EXPECT_EQ(tables::flat('F', 0.30).suction_1, -1.8);
    EXPECT_NEAR(tables::flat('F', 0.075).suction_10, -1.3, 1e-12);
    EXPECT_EQ(tables::flat('H', 0.10).suction_10, -0.7);
    double before = -9.0;
    for (double p = 0.0; p <= 0.12; p += 0.005) {
        EXPECT_GE(tables::flat('F', p).suction_10, before);
        before = tables::flat('F', p).suction_10;
    }
}

// Table 7.1 (from memory): D 0.7 and E -0.3 up to h/d 0.25, 0.8 and -0.5 at 1, E -0.7 at 5.
TEST(Tables, WallsByHeightOverDepth) {
    EXPECT_EQ(tables::wall('E', 0.1).suction_10, -0.3);
    EXPECT_NEAR(tables::wall('E', 0.625).suction_10, -0.4, 1e-12);
    EXPECT_EQ(tables::wall('E', 1.0).suction_10, -0.5);
    EXPECT_NEAR(tables::wall('E', 3.0).suction_10, -0.6, 1e-12);
    EXPECT_EQ(tables::wall('E', 9.0).suction_10, -0.7);
    EXPECT_NEAR(tables::wall('D', 0.25).pressure_10, 0.7, 1e-12);
    EXPECT_NEAR(tables::wall('D', 0.625).pressure_10, 0.75, 1e-12);
    EXPECT_EQ(tables::wall('D', 2.0).pressure_1, 1.0);
}

// Table 7.6: row 20 deg as published (0.8; open -1.3, blocked -1.4); rows 10 and 30 deg from memory.
TEST(Tables, CanopiesTakeTheWorseOfOpenAndBlocked) {
    EXPECT_NEAR(tables::canopy(20.0).down, 0.8, 1e-12);
    EXPECT_NEAR(tables::canopy(20.0).up, -1.4, 1e-12);
    EXPECT_NEAR(tables::canopy(10.0).down, 0.5, 1e-12);
    EXPECT_NEAR(tables::canopy(30.0).down, 1.2, 1e-12);
    EXPECT_NEAR(tables::canopy(30.0).up, -1.8, 1e-12);  // open
    EXPECT_NEAR(tables::canopy(0.0).up, -1.3, 1e-12);
}

// The rule set says how c_pe becomes a net force: plain figures for zone H at 35 deg, worked by hand.
TEST(Net, ByEachRule) {
    ActionRules r;
    ZoneForce zone;
    zone.uplift = -1.1;
    zone.pressure = 0.5;
    r.standing_off_net_factor = 1.2;
    EXPECT_NEAR(net_of(zone, r).uplift, -1.32, 1e-12);
    r.net_pressure = NetPressureRule::two_faces;
    r.hidden_face_share = 0.3;
    EXPECT_NEAR(net_of(zone, r).uplift, -1.43, 1e-12);
    EXPECT_NEAR(net_of(zone, r).pressure, 0.65, 1e-12);
    r.net_pressure = NetPressureRule::coefficients;
    EXPECT_EQ(net_of(zone, r).uplift, r.net_uplift_middle);
    zone.edge = true;
    EXPECT_EQ(net_of(zone, r).uplift, r.net_uplift_edge);
    EXPECT_EQ(net_of(zone, r).pressure, r.net_pressure_all);
}

TEST(Net, EdgeCoefficientsHoldInEdgeZonesOnly) {
    Input in = plain_input();
    in.rules.net_pressure = NetPressureRule::coefficients;
    in.rules.net_pressure_source = "a guide";
    EXPECT_NEAR(laid(in).loads.net_uplift, in.rules.net_uplift_middle, 1e-12);
    in.placement.x_m = 1.1;  // into the gable's strip
    EXPECT_NEAR(laid(in).loads.net_uplift, in.rules.net_uplift_edge, 1e-12);
    const Outcome o = fixed_up(in);
    ASSERT_NE(find_code(o.findings, "fixing.net-pressure"), nullptr);
    EXPECT_EQ(find_code(o.findings, "fixing.net-pressure")->source, "a guide");
}

// A plate that reaches 0.4 m into the gable's strip: its own points there take the strip's value, the others the
// middle's, and the whole plate the strip's by its own area.
TEST(Parts, EachPointMeetsTheZonesOfItsOwnPart) {
    Input in = plain_input();
    in.surface.ridge_height_m = 4.0;  // e = 8: strip of 0.8 m, H to 4.0 m
    in.placement.x_m = 1.4;           // plate from 0.4 to 2.4 m; parts meet at 1.4 m
    const Laid l = laid(in);
    ASSERT_EQ(l.loads.parts.size(), 4U);
    EXPECT_STREQ(l.loads.parts[0].zone.zone_uplift, "G");
    EXPECT_STREQ(l.loads.parts[1].zone.zone_uplift, "H");
    EXPECT_NEAR(l.loads.parts[0].area_m2, 0.4, 1e-12);
    EXPECT_NEAR(l.loads.parts[0].net_uplift, -2.0, 1e-12);  // G along the ridge for 1 m2
    EXPECT_NEAR(l.loads.parts[1].net_uplift, -1.2, 1e-12);
    // Statics by hand: plate 2 m long, points at 0.3 and 1.7 m; 2.0 on the first metre, 1.2 on the second: the left
    // point takes (2.0 x 1.2 + 1.2 x 0.2) / 1.4 of it, the right one the rest.
    const WindCase& w = l.loads.winds[2];
    ASSERT_TRUE(w.suction);
    const double unit = l.loads.wind.qp_pa * 0.4;
    EXPECT_NEAR(w.of_point[0], -unit * (2.0 * 1.2 + 1.2 * 0.2) / 1.4, 1e-6);
    EXPECT_NEAR(w.of_point[1], -unit * (2.0 * 0.2 + 1.2 * 1.2) / 1.4, 1e-6);
    double sum = 0.0;
    for (const double f : w.of_point)
        sum += f;
    EXPECT_NEAR(sum, w.action.normal_n, 1e-9 * std::abs(sum));
    EXPECT_NEAR(sum, -unit * 2.0 * 3.2, 1e-6);
}

TEST(Parts, MoreAreaNeverRaisesTheCoefficient) {
    for (const RoofForm form : {RoofForm::duo_pitch, RoofForm::mono_pitch, RoofForm::hip, RoofForm::flat}) {
        Surface s = plain_roof();
        s.roof_form = form;
        if (form == RoofForm::flat) s.tilt_deg = 0.0;
        for (double x = 0.0; x < 8.0; x += 0.8) {
            double up = -9.0, down = 9.0;
            for (double area = 0.2; area < 15.0; area *= 1.3) {
                const ZonePressure z =
                    zone_pressure(s, 6.0, {{x, 1.0}, {x + 1.0, 1.0}, {x + 1.0, 1.5}, {x, 1.5}}, area);
                EXPECT_GE(z.uplift, up - 1e-12);
                EXPECT_LE(z.pressure, down + 1e-12);
                up = z.uplift;
                down = z.pressure;
            }
        }
    }
}

Input on_frame(double tilt) {
    Input in = plain_input();
    in.surface.tilt_deg = 0.0;
    in.surface.roof_form = RoofForm::flat;
    in.placement.frame_tilt_deg = tilt;
    in.placement.frame_azimuth_deg = 180.0;
    return in;
}

// Canopy at 20 deg, plate 2 x 0.8 m: c_f -1.4 and 0.8; the force 0.25 x 0.8 m off the middle up or down the plate.
// Square to the roof: F cos 20; along it F sin 20 towards the back; couple about the level axis: F cos 20 x 0.2 cos 20
// for the place and F sin 20 times (height + 0.2 sin 20).
TEST(Free, ACanopyByHand) {
    const Laid l = laid(on_frame(20.0));
    ASSERT_TRUE(l.loads.canopy);
    ASSERT_EQ(l.loads.winds.size(), 4U);
    const double up = l.loads.wind.qp_pa * 1.4 * 1.6, c = std::cos(radians(20.0)), s = std::sin(radians(20.0));
    const Action& a = l.loads.winds[0].action;  // lifting near the upper edge
    EXPECT_NEAR(a.normal_n, -up * c, 1e-9);
    EXPECT_NEAR(std::abs(a.along_n.y_m), up * s, 1e-9);
    EXPECT_LT(a.along_n.y_m, 0.0);  // the normal leans to the front, where the plate looks
    EXPECT_NEAR(a.couple_nm.y_m, -up * c * 0.2 * c - up * s * (l.loads.middle_off_m + 0.2 * s), 1e-6);
    EXPECT_NEAR(l.loads.winds[2].action.normal_n, l.loads.wind.qp_pa * 0.8 * 1.6 * c, 1e-9);
    EXPECT_NE(find_code(fixed_up(on_frame(20.0)).findings, "fixing.free-plate")->message.find("canopy"),
              std::string::npos);
}

TEST(Free, SteeperThanACanopyItIsASignboard) {
    EXPECT_TRUE(laid(on_frame(30.0)).loads.canopy);
    const Laid l = laid(on_frame(31.0));
    EXPECT_FALSE(l.loads.canopy);
    EXPECT_EQ(l.loads.net_uplift, -1.8);
    EXPECT_NEAR(laid(on_frame(30.0)).loads.net_uplift, l.loads.net_uplift, 1e-12);  // no jump in what lifts
}

TEST(Free, DriftsBehindThePlateAreNoted) {
    Input in = on_frame(45.0);
    in.site.ground_snow_kn_m2 = 0.65;
    EXPECT_NE(find_code(fixed_up(in).findings, "fixing.snow-drift"), nullptr);
}

TEST(Wind, MoreOfItNeverLowersAUse) {
    for (int kind = 0; kind < 5; ++kind) {
        double before = 0.0, bending = 0.0;
        for (double wind = 12.0; wind <= 44.0; wind += 4.0) {
            Input in = kind == 1 ? on_frame(15.0) : kind == 2 ? on_frame(60.0) : plain_input();
            in.collector.profile_moment_nm = 300.0;
            if (kind == 3) in.surface.roof_form = RoofForm::hip;
            if (kind == 4) {
                in.rules.net_pressure = NetPressureRule::two_faces;
                in.placement.x_m = 1.2;
            }
            if (kind == 1 || kind == 2) {
                in.method.kind = FixingKind::ballast;
                in.method.screw_diameter_mm = 0.0;
                in.method.ballast_kg = 80.0;
                in.method.frame_depth_m = 1.0;
            }
            in.site.basic_wind_m_s = wind;
            const Outcome o = fixed_up(in);
            EXPECT_GE(o.worst_utilisation, before - 1e-12) << kind << ' ' << wind;
            EXPECT_GE(o.bending_use, bending - 1e-12);
            before = o.worst_utilisation;
            bending = o.bending_use;
        }
        EXPECT_GT(before, 0.0);
    }
}

}  // namespace net_pressure_test
}  // namespace wg::fixing
