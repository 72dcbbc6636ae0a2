// Houses made from footprints: what is made agrees with itself, seen from the sketch's space.

#include "core/roof/building.h"

#include <gtest/gtest.h>

#include <cmath>

#include "core/quantity/angle.h"
#include "core/quantity/constants.h"
#include "core/site/geometry.h"

namespace wg::roof {
namespace building_test {

const std::vector<Point2> rectangle{{0, 0}, {10, 0}, {10, 6}, {0, 6}};
const std::vector<Point2> l_shape{{0, 0}, {12, 0}, {12, 6}, {5, 6}, {5, 11}, {0, 11}};

HouseForm building(BuildingShape shape, const std::vector<Point2>& footprint) {
    HouseForm b;
    b.shape = shape;
    b.footprint = footprint;
    b.pitch_deg = 40.0;
    return b;
}

std::vector<Point3> in_space(const Surface& s, double up) {
    const site::Frame frame = site::frame_of(s, up);
    std::vector<Point3> out;
    for (const Point2& p : s.outline)
        out.push_back(site::to_space(frame, p));
    return out;
}

const Part& part(const House& house, PartKind kind, std::size_t edge) {
    for (const Part& p : house.parts)
        if (p.kind == kind && p.edge == edge) return p;
    ADD_FAILURE() << "no such part";
    return house.parts.front();
}

TEST(House, GableHouseSouthAndNorth) {
    const auto made = house_of(building(BuildingShape::gable, rectangle), 0.0);
    ASSERT_TRUE(made) << made.problems().front().text();
    const House& house = made.value();
    EXPECT_EQ(house.parts.size(), 2U + 4U);
    const Surface& south = part(house, PartKind::roof_plane, 0).surface;
    EXPECT_NEAR(south.azimuth_deg, 180.0, 1e-9);
    EXPECT_NEAR(south.tilt_deg, 40.0, 1e-12);
    EXPECT_NEAR(part(house, PartKind::roof_plane, 2).surface.azimuth_deg, 0.0, 1e-9);
    EXPECT_NEAR(part(house, PartKind::wall, 1).surface.azimuth_deg, 90.0, 1e-9);
    // 6 m wide, eaves 5 m at the wall: ridge at 5 + 3 tan 40.
    EXPECT_NEAR(house.ridge_m, 5.0 + 3.0 * std::tan(radians(40.0)), 1e-9);
    // Slope length from the overhang to the ridge, and verges on both sides.
    const site::Bounds bounds = site::bounds_of(south.outline);
    EXPECT_NEAR(bounds.height_m(), 3.4 / std::cos(radians(40.0)), 1e-9);
    EXPECT_NEAR(bounds.width_m(), 10.4, 1e-9);
    EXPECT_NEAR(bounds.min_x_m, 0.0, 1e-9);
    EXPECT_NEAR(bounds.min_y_m, 0.0, 1e-9);
    EXPECT_EQ(part(house, PartKind::wall, 1).surface.outline.size(), 5U);  // gable
    EXPECT_EQ(part(house, PartKind::wall, 0).surface.outline.size(), 4U);
}

TEST(House, SketchTurnTurnsBearingsOnly) {
    const auto a = house_of(building(BuildingShape::hip, l_shape), 0.0);
    const auto b = house_of(building(BuildingShape::hip, l_shape), 25.0);
    ASSERT_TRUE(a && b);
    for (std::size_t i = 0; i < a.value().parts.size(); ++i) {
        const Surface& s = a.value().parts[i].surface;
        const Surface& t = b.value().parts[i].surface;
        EXPECT_NEAR(wrap_180(t.azimuth_deg - s.azimuth_deg), 25.0, 1e-9);
        const auto p = in_space(s, 0.0);
        const auto q = in_space(t, 25.0);
        ASSERT_EQ(p.size(), q.size());
        for (std::size_t k = 0; k < p.size(); ++k) {
            EXPECT_NEAR(p[k].x_m, q[k].x_m, 1e-9);
            EXPECT_NEAR(p[k].y_m, q[k].y_m, 1e-9);
            EXPECT_NEAR(p[k].z_m, q[k].z_m, 1e-9);
        }
    }
}

TEST(House, EverySurfaceIsFlatSimpleAndLooksOut) {
    for (const BuildingShape shape : {BuildingShape::mono_pitch, BuildingShape::gable, BuildingShape::hip,
                                      BuildingShape::flat, BuildingShape::lean_to})
        for (const auto& footprint : {rectangle, l_shape}) {
            HouseForm b = building(shape, footprint);
            b.parapet_m = 0.4;
            const auto made = house_of(b, 10.0);
            ASSERT_TRUE(made) << static_cast<int>(shape) << ": " << made.problems().front().text();
            for (const Part& p : made.value().parts) {
                EXPECT_TRUE(site::is_simple(p.surface.outline)) << p.surface.label;
                EXPECT_GT(site::signed_area_m2(p.surface.outline), 0.0) << p.surface.label;
                EXPECT_GT(site::frame_of(p.surface, 10.0).normal.z_m, -1e-9);
            }
        }
}

/// A point of a roof plane's boundary over the wall line has the wall's height: the house is closed.
TEST(House, WallsEndAtTheRoof) {
    for (const BuildingShape shape : {BuildingShape::gable, BuildingShape::hip, BuildingShape::mono_pitch}) {
        const HouseForm b = building(shape, l_shape);
        const auto made = house_of(b, 0.0);
        ASSERT_TRUE(made);
        for (const Part& w : made.value().parts) {
            if (w.kind != PartKind::wall) continue;
            for (const Point3& p : in_space(w.surface, 0.0)) {
                if (p.z_m < 1e-6) continue;
                double lowest = 1e9;
                for (const Part& r : made.value().parts) {
                    if (r.kind != PartKind::roof_plane) continue;
                    const site::Frame f = site::frame_of(r.surface, 0.0);
                    // Height of the plane straight above.
                    const double z =
                        f.origin.z_m -
                        (f.normal.x_m * (p.x_m - f.origin.x_m) + f.normal.y_m * (p.y_m - f.origin.y_m)) / f.normal.z_m;
                    const Point2 in_plane = site::to_plane(f, {p.x_m, p.y_m, z});
                    if (site::contains(r.surface.outline, in_plane)) lowest = std::min(lowest, std::abs(z - p.z_m));
                }
                EXPECT_LT(lowest, 1e-6) << static_cast<int>(shape) << w.surface.label << " at " << p.x_m << ", "
                                        << p.y_m << ", " << p.z_m;
            }
        }
    }
}

TEST(House, MonoPitchRisesFromItsLowEdge) {
    HouseForm b = building(BuildingShape::mono_pitch, rectangle);
    b.low_edge = 1;  // east
    const auto made = house_of(b, 0.0);
    ASSERT_TRUE(made);
    const Surface& roof = made.value().parts.front().surface;
    EXPECT_NEAR(roof.azimuth_deg, 90.0, 1e-9);
    EXPECT_NEAR(made.value().ridge_m, 5.0 + 10.2 * std::tan(radians(40.0)), 1e-9);
}

TEST(House, GablesByHabitEndWings) {
    EXPECT_EQ(usual_gables(rectangle), (std::vector<std::size_t>{1, 3}));
    EXPECT_EQ(usual_gables(l_shape), (std::vector<std::size_t>{1, 4}));
}

TEST(House, ClockwiseFootprintMakesTheSameHouse) {
    std::vector<Point2> clockwise(l_shape.rbegin(), l_shape.rend());
    const Ordered ordered = counter_clockwise(clockwise);
    for (std::size_t i = 0; i < ordered.edges.size(); ++i) {
        const Point2& a = clockwise[ordered.edges[i]];
        const Point2& b = clockwise[(ordered.edges[i] + 1) % clockwise.size()];
        EXPECT_EQ(ordered.footprint[i], b);
        EXPECT_EQ(ordered.footprint[(i + 1) % clockwise.size()], a);
    }
    const auto made = house_of(building(BuildingShape::hip, clockwise), 0.0);
    ASSERT_TRUE(made);
    EXPECT_EQ(made.value().parts.size(), 12U);
}

TEST(House, FlatRoofWithParapet) {
    HouseForm b = building(BuildingShape::flat, rectangle);
    b.parapet_m = 0.5;
    const auto made = house_of(b, 0.0);
    ASSERT_TRUE(made);
    EXPECT_EQ(made.value().parapets.size(), 4U);
    const Surface& roof = made.value().parts.front().surface;
    EXPECT_EQ(roof.tilt_deg, 0.0);
    EXPECT_NEAR(site::signed_area_m2(roof.outline), 9.4 * 5.4, 1e-9);
    EXPECT_NEAR(made.value().ridge_m, 5.5, 1e-12);
}

TEST(House, PitchFromWhatATapeGives) {
    EXPECT_NEAR(pitch_from_rise(1.0, 1.0).value(), 45.0, 1e-12);
    EXPECT_NEAR(pitch_from_heights(2.4, 4.4, 4.0).value(), 26.565, 1e-3);
    EXPECT_FALSE(pitch_from_rise(0.0, 1.0));
    EXPECT_FALSE(pitch_from_heights(4.0, 3.0, 2.0));
    EXPECT_FALSE(pitch_from_rise(std::nan(""), 1.0));
}

TEST(House, RefusesWithAReason) {
    HouseForm b = building(BuildingShape::hip, rectangle);
    b.pitch_deg = 0.0;
    EXPECT_FALSE(house_of(b, 0.0));
    b = building(BuildingShape::mono_pitch, rectangle);
    b.low_edge = 9;
    EXPECT_FALSE(house_of(b, 0.0));
    b = building(BuildingShape::flat, rectangle);
    b.parapet_m = 0.5;
    b.parapet_width_m = 0.9;
    b.footprint = {{0, 0}, {1, 0}, {1, 1}, {0, 1}};
    EXPECT_FALSE(house_of(b, 0.0));
}

}  // namespace building_test
}  // namespace wg::roof
