// Roof planes against the tables that are stamped on a framing square (carpenter's steel square, as sold since the
// 1880s; first line "length common rafters per foot run", second "length hip or valley per foot run", third "difference
// in length of jacks 16 inches centers"; figures to the hundredth of an inch, from memory, each reckoned again beside
// it).

#include <gtest/gtest.h>

#include <cmath>
#include <random>

#include "core/job/job.h"
#include "core/quantity/angle.h"
#include "core/quantity/constants.h"
#include "core/roof/building.h"
#include "core/site/geometry.h"

namespace wg::roof {
namespace steel_square_test {
namespace {

struct Row {
    double rise_in, common_in, hip_in, jack_16_in;
};
constexpr Row rows[] = {
    {4.0, 12.65, 17.44, 16.87},  {6.0, 13.42, 18.00, 17.89},  {8.0, 14.42, 18.76, 19.23},
    {10.0, 15.62, 19.70, 20.83}, {12.0, 16.97, 20.78, 22.63}, {18.0, 21.63, 24.74, 28.84},
};

/// 12 m by 8 m without overhang: eaves and wall in one line, so that runs are whole metres.
HouseForm bare(BuildingShape shape, double pitch_deg,
               std::vector<Point2> footprint = {{0, 0}, {12, 0}, {12, 8}, {0, 8}}) {
    HouseForm form;
    form.shape = shape;
    form.footprint = std::move(footprint);
    form.pitch_deg = pitch_deg;
    form.overhang_m = form.verge_m = 0.0;
    return form;
}

std::vector<Surface> planes_of(const HouseForm& form, double up_deg = 0.0) {
    const auto made = house_of(form, up_deg);
    std::vector<Surface> planes;
    EXPECT_TRUE(made.ok());
    if (!made.ok()) return planes;
    for (const Part& part : made.value().parts)
        if (part.kind == PartKind::roof_plane) planes.push_back(part.surface);
    return planes;
}

double length_m(Point3 a, Point3 b) {
    return std::sqrt((a.x_m - b.x_m) * (a.x_m - b.x_m) + (a.y_m - b.y_m) * (a.y_m - b.y_m) +
                     (a.z_m - b.z_m) * (a.z_m - b.z_m));
}

TEST(SteelSquare, RaftersHipsAndJacksHaveTheLengthsOfItsTables) {
    for (const Row& row : rows) {
        const double pitch_deg = degrees(std::atan2(row.rise_in, 12.0));
        const std::vector<Surface> planes = planes_of(bare(BuildingShape::hip, pitch_deg));
        ASSERT_EQ(planes.size(), 4U);
        const Surface& south = planes[0];
        // Run of 4 m: half the width. The longest rafter is the plane's height.
        const double common = site::bounds_of(south.outline).height_m() / 4.0 * 12.0;
        EXPECT_NEAR(common, row.common_in, 0.006) << row.rise_in;
        EXPECT_NEAR(common, std::hypot(12.0, row.rise_in), 1e-9);
        // The hip from the corner (0, 0) to the ridge's end over (4, 4).
        const site::Frame frame = site::frame_of(south, 0.0);
        const Point3 foot = site::to_space(frame, south.outline.front());
        const Point3 top = site::to_space(frame, south.outline.back());
        EXPECT_NEAR(top.x_m - foot.x_m, 4.0, 1e-9);
        EXPECT_NEAR(top.y_m - foot.y_m, 4.0, 1e-9);
        const double hip = length_m(foot, top) / 4.0 * 12.0;
        EXPECT_NEAR(hip, row.hip_in, 0.006) << row.rise_in;
        EXPECT_NEAR(hip, std::sqrt(288.0 + row.rise_in * row.rise_in), 1e-9);
        // Jacks: how much higher the hip crosses the plane for each 16 inches along the eaves.
        const double rise_per_m = south.outline.back().y_m / south.outline.back().x_m;
        EXPECT_NEAR(rise_per_m * 16.0, row.jack_16_in, 0.006) << row.rise_in;
    }
}

TEST(SteelSquare, AValleyIsAsLongAsTheHipOfItsPitch) {
    const double pitch_deg = degrees(std::atan2(8.0, 12.0));
    const auto planes =
        planes_of(bare(BuildingShape::hip, pitch_deg, {{0, 0}, {12, 0}, {12, 6}, {5, 6}, {5, 11}, {0, 11}}));
    // From the inner corner (5, 6) to where the wing's ridge ends over (2.5, 3.5).
    const Surface& north = planes[2];
    const site::Frame frame = site::frame_of(north, 0.0);
    double valley = 0.0;
    for (std::size_t i = 0; i < north.outline.size(); ++i) {
        const Point3 a = site::to_space(frame, north.outline[i]);
        const Point3 b = site::to_space(frame, north.outline[(i + 1) % north.outline.size()]);
        if (std::hypot(a.x_m - 5.0, a.y_m - 6.0) < 1e-9 && std::hypot(b.x_m - 2.5, b.y_m - 3.5) < 1e-9)
            valley = length_m(a, b);
    }
    EXPECT_NEAR(valley / 2.5 * 12.0, 18.76, 0.006);
}

TEST(SteelSquare, TheRidgeStandsAtHalfTheWidthTimesThePitchAndRaftersAreCounted) {
    // Textbook: rise = run x tan(pitch); 6:12 over a run of 4 m is 2 m.
    HouseForm form = bare(BuildingShape::gable, degrees(std::atan(0.5)));
    form.eaves_m = 5.0;
    const auto made = house_of(form, 0.0);
    ASSERT_TRUE(made.ok());
    EXPECT_NEAR(made.value().ridge_m, 7.0, 1e-9);
    Surface south = planes_of(form)[0];
    EXPECT_NEAR(std::abs(site::signed_area_m2(south.outline)), 12.0 * 4.0 * 13.4164 / 12.0, 1e-4);
    // Centre lines at 0.03, 0.63, ... 11.97: twelve metres less one rafter's width, by 0.60 m, and the last.
    south.rafters.present = true;
    south.rafters.first_m = 0.03;
    south.rafters.spacing_m = 0.597;
    EXPECT_EQ(site::rafter_lines(south).size(), 21U);
}

TEST(SteelSquare, AHouseTurnedByAnyAngleHasItsPlanesTurned) {
    std::mt19937_64 random(20261128);
    const std::vector<Point2> l = {{0, 0}, {12, 0}, {12, 6}, {5, 6}, {5, 11}, {0, 11}};
    for (const BuildingShape shape : {BuildingShape::hip, BuildingShape::gable, BuildingShape::mono_pitch}) {
        const auto upright = planes_of(bare(shape, 35.0, l));
        for (int round = 0; round < 20; ++round) {
            const double turn_deg = std::uniform_real_distribution<double>(-180.0, 180.0)(random);
            const double c = std::cos(radians(turn_deg)), s = std::sin(radians(turn_deg));
            std::vector<Point2> turned = l;
            for (Point2& p : turned)
                p = {c * p.x_m - s * p.y_m, s * p.x_m + c * p.y_m};
            const auto planes = planes_of(bare(shape, 35.0, turned));
            ASSERT_EQ(planes.size(), upright.size());
            double level_m2 = 0.0;
            for (std::size_t i = 0; i < planes.size(); ++i) {
                // Counter-clockwise in the sketch is against the compass.
                EXPECT_NEAR(wrap_180(planes[i].azimuth_deg - upright[i].azimuth_deg + turn_deg), 0.0, 1e-7);
                EXPECT_NEAR(planes[i].tilt_deg, upright[i].tilt_deg, 1e-9);
                EXPECT_NEAR(site::signed_area_m2(planes[i].outline), site::signed_area_m2(upright[i].outline), 1e-7);
                level_m2 += std::abs(site::signed_area_m2(planes[i].outline)) * std::cos(radians(planes[i].tilt_deg));
            }
            EXPECT_NEAR(level_m2, 12.0 * 6.0 + 5.0 * 5.0, 1e-6) << "the planes cover the footprint";
        }
    }
}

TEST(SteelSquare, TheSameHouseFacesTheEquatorOnBothHalvesOfTheEarth) {
    // The plane that looks south in Bergen at noon in June sees the sun; in Cape Town it is the one that looks north.
    for (const auto& [latitude_deg, faces_deg] : {std::pair{60.0, 180.0}, std::pair{-34.0, 0.0}}) {
        const auto planes = planes_of(bare(BuildingShape::gable, 40.0));
        const double noon_sun_deg = latitude_deg > 0.0 ? 180.0 : 0.0;
        int towards = 0;
        for (const Surface& plane : planes) {
            const site::Frame frame = site::frame_of(plane, 0.0);
            // Equinox at noon: the sun stands 90 deg less the latitude high, over the equator.
            const double up = std::cos(radians(latitude_deg)), level = std::abs(std::sin(radians(latitude_deg)));
            const Point3 sun{0.0, noon_sun_deg == 180.0 ? -level : level, up};
            const double on_plane =
                frame.normal.x_m * sun.x_m + frame.normal.y_m * sun.y_m + frame.normal.z_m * sun.z_m;
            const bool best = std::abs(wrap_180(plane.azimuth_deg - faces_deg)) < 1e-6;
            if (best) EXPECT_NEAR(on_plane, std::cos(radians(std::abs(latitude_deg) - 40.0)), 1e-9);
            if (!best) EXPECT_LT(on_plane, std::cos(radians(std::abs(latitude_deg) - 40.0)) - 0.1);
            towards += best ? 1 : 0;
        }
        EXPECT_EQ(towards, 1);
    }
}

}  // namespace
}  // namespace steel_square_test
}  // namespace wg::roof
