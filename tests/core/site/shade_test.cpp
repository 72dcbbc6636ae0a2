#include "core/site/shade.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <random>

#include "core/quantity/constants.h"
#include "core/quantity/time.h"
#include "core/site/occluders.h"
#include "core/site/vec.h"

namespace wg::site {
namespace {

constexpr double share_tolerance = 1e-6;  // shares are kept as float

/// A year with the same sun in every hour.
sky::PreparedYear one_sun(double elevation_deg, double azimuth_deg, double beam_w_m2 = 500.0) {
    sky::PreparedYear y;
    const double level = std::cos(radians(elevation_deg));
    y.sun_east.assign(8760, level * std::sin(radians(azimuth_deg)));
    y.sun_north.assign(8760, level * std::cos(radians(azimuth_deg)));
    y.sun_up.assign(8760, std::sin(radians(elevation_deg)));
    y.beam_normal_w_m2.assign(8760, beam_w_m2);
    return y;
}

/// Suns that go round the sky: elevation and bearing differ from hour to hour.
sky::PreparedYear wandering_sun(double turn_deg = 0.0) {
    sky::PreparedYear y = one_sun(10.0, 180.0);
    for (std::size_t h = 0; h < 8760; ++h) {
        const double hour = static_cast<double>(h % 24) - 12.0,
                     season = std::cos(2.0 * pi * static_cast<double>(h) / 8760.0);
        const double elevation = 55.0 * std::cos(pi * hour / 13.0) - 20.0 * season,
                     azimuth = 180.0 + 15.0 * hour + turn_deg;
        const double level = std::cos(radians(elevation));
        y.sun_east[h] = level * std::sin(radians(azimuth));
        y.sun_north[h] = level * std::cos(radians(azimuth));
        y.sun_up[h] = std::sin(radians(elevation));
    }
    return y;
}

PlacedCollector level_plate(Point3 middle, double length_m = 2.0, double width_m = 0.8) {
    PlacedCollector c;
    const double l = 0.5 * length_m, w = 0.5 * width_m;
    c.corners = {middle + Point3{-l, -w, 0}, middle + Point3{l, -w, 0}, middle + Point3{l, w, 0},
                 middle + Point3{-l, w, 0}};
    return c;
}

Obstacle box(Point3 foot, double width, double depth, double height, double turn_deg = 0.0) {
    Obstacle o;
    o.id = "box";
    o.label = "dormer";
    o.kind = ObstacleKind::box;
    o.base = foot;
    o.width_m = width;
    o.depth_m = depth;
    o.height_m = height;
    o.turn_deg = turn_deg;
    return o;
}

/// First hour of a year with one sun; a short series counts as no sun after its end.
float share_of(const Site& site, const PlacedCollector& plate, sky::PreparedYear year) {
    for (auto* series : {&year.sun_east, &year.sun_north, &year.sun_up, &year.beam_normal_w_m2})
        series->resize(1);
    return shade_of(site, plate, "", year, 40, 40).beam_share[0];
}

TEST(Beam, AFreeSiteLetsEverythingThrough) {
    const Shade s = shade_of({}, level_plate({0, 0, 0}), "", one_sun(30.0, 180.0));
    EXPECT_EQ(s.beam_share.size(), 8760U);
    EXPECT_TRUE(std::all_of(s.beam_share.begin(), s.beam_share.end(), [](float v) { return v == 1.0F; }));
    EXPECT_DOUBLE_EQ(s.sky_view, 1.0);
    EXPECT_TRUE(s.causes.empty());
    EXPECT_EQ(s.rays_per_hour, shade_samples_x * shade_samples_y);
}

TEST(Beam, ThereIsNoneFromBehindOrBelow) {
    EXPECT_EQ(share_of({}, level_plate({0, 0, 0}), one_sun(-5.0, 180.0)), 0.0F);
    PlacedCollector wall;  // faces south
    wall.corners = {{-1, 0, 0}, {1, 0, 0}, {1, 0, 1}, {-1, 0, 1}};
    EXPECT_EQ(share_of({}, wall, one_sun(30.0, 10.0)), 0.0F);
    EXPECT_EQ(share_of({}, wall, one_sun(30.0, 170.0)), 1.0F);
}

TEST(Beam, ALongWallShadesHalfThePlateWhereItsShadowEnds) {
    // Wall of 2 m south of the plate, sun due south at 45 deg: the shadow is 2 m long and ends at the plate's middle.
    Site site;
    site.obstacles = {box({0, -3.0, 0}, 100.0, 2.0, 2.0)};  // north face at y = -2
    EXPECT_NEAR(share_of(site, level_plate({0, 0, 0}), one_sun(45.0, 180.0)), 0.5, share_tolerance);
    EXPECT_NEAR(share_of(site, level_plate({0, 0, 0}), one_sun(50.0, 180.0)),
                1.0 - (2.0 / std::tan(radians(50.0)) - 1.6) / 0.8,
                share_tolerance);  // ends at y = -0.32
    EXPECT_EQ(share_of(site, level_plate({0, 0, 0}), one_sun(60.0, 180.0)), 1.0F);
    EXPECT_EQ(share_of(site, level_plate({0, 0, 0}), one_sun(35.0, 180.0)), 0.0F);
    EXPECT_EQ(share_of(site, level_plate({0, 0, 0}), one_sun(35.0, 0.0)), 1.0F);
}

TEST(Beam, ABoxAndAPrismOfTheSameShapeShadeAlike) {
    Site boxed, prismed;
    boxed.obstacles = {box({1.0, -2.0, 0.5}, 1.4, 0.6, 2.5, 35.0)};
    Obstacle prism = boxed.obstacles[0];
    prism.kind = ObstacleKind::prism;
    const double c = std::cos(radians(35.0)), s = std::sin(radians(35.0));
    for (const Point2 p : {Point2{-0.7, -0.3}, {0.7, -0.3}, {0.7, 0.3}, {-0.7, 0.3}}) {
        prism.outline.push_back(turned(p, c, s) + Point2{1.0, -2.0});
    }
    prismed.obstacles = {prism};
    const sky::PreparedYear year = wandering_sun();
    const Shade a = shade_of(boxed, level_plate({0, 0, 0}), "", year),
                b = shade_of(prismed, level_plate({0, 0, 0}), "", year);
    for (std::size_t h = 0; h < 8760; ++h)
        ASSERT_NEAR(a.beam_share[h], b.beam_share[h], share_tolerance) << h;
    EXPECT_GT(a.causes.at(0).lost_kwh_m2, 1.0);
}

TEST(Beam, APostThrowsABandAsWideAsItself) {
    Site site;
    Obstacle post;
    post.kind = ObstacleKind::post;
    post.base = {0, -5, 0};
    post.radius_m = 0.2;
    post.height_m = 50.0;
    site.obstacles = {post};
    constexpr double many_sided = 5e-4;  // of the plate: the round post stands as one of many sides
    EXPECT_NEAR(share_of(site, level_plate({0, 0, 0}), one_sun(30.0, 180.0)), 1.0 - 0.4 / 2.0, many_sided);
}

TEST(Beam, ATreeLetsItsTransmittanceThroughBySeasonOnBothHalvesOfTheEarth) {
    Site site;
    Obstacle tree;
    tree.id = "tree";
    tree.kind = ObstacleKind::tree;
    tree.base = {0, -8, 0};
    tree.radius_m = 3.0;
    tree.crown_base_m = 2.0;
    tree.height_m = 10.0;
    tree.leaf_from_month = 4;
    tree.leaf_to_month = 10;
    tree.transmittance_leaf = 0.25;
    tree.transmittance_bare = 0.65;
    site.obstacles = {tree};
    const PlacedCollector small = level_plate({0, 0, 0}, 0.2, 0.2);
    const double towards_crown = degrees(std::atan2(6.0, 8.0));
    const auto at = [&](int month) { return static_cast<std::size_t>(first_hour_of_month(month)); };
    sky::PreparedYear year = one_sun(towards_crown, 180.0);
    Shade s = shade_of(site, small, "", year);
    EXPECT_FLOAT_EQ(s.beam_share[at(7)], 0.25F);
    EXPECT_FLOAT_EQ(s.beam_share[at(1)], 0.65F);
    EXPECT_FLOAT_EQ(s.beam_share[at(11)], 0.65F);
    site.obstacles[0].leaf_from_month = 10;  // southern half: in leaf over the turn of the year
    site.obstacles[0].leaf_to_month = 4;
    s = shade_of(site, small, "", year);
    EXPECT_FLOAT_EQ(s.beam_share[at(1)], 0.25F);
    EXPECT_FLOAT_EQ(s.beam_share[at(7)], 0.65F);
    year = one_sun(degrees(std::atan2(1.0, 8.0)), 180.0);  // at the trunk, 0.36 m across
    EXPECT_FLOAT_EQ(shade_of(site, small, "", year, 1, 1).beam_share[at(1)], 0.0F);
}

TEST(Beam, AnotherPlaneOfTheSiteShadesAndTheOwnOneDoesNot) {
    Site site;
    Surface wall;
    wall.id = "wall";
    wall.kind = SurfaceKind::wall;
    wall.tilt_deg = 90.0;
    wall.azimuth_deg = 0.0;           // faces north, stands south of the plate
    wall.origin = {50.0, -2.0, 0.0};  // right of a north face is west
    wall.outline = {{0, 0}, {100, 0}, {100, 2}, {0, 2}};
    Surface ground;
    ground.id = "ground";
    ground.kind = SurfaceKind::ground;
    ground.tilt_deg = 0.0;
    ground.origin = {-50, -50, 0};
    ground.outline = {{0, 0}, {100, 0}, {100, 100}, {0, 100}};
    site.surfaces = {wall, ground};
    const PlacedCollector plate = level_plate({0, 0, 0.0});
    const Shade s = shade_of(site, plate, "ground", one_sun(45.0, 180.0), 40, 40);
    EXPECT_NEAR(s.beam_share[100], 0.5, share_tolerance);
    ASSERT_EQ(s.causes.size(), 1U);
    EXPECT_EQ(s.causes[0].obstacle_id, "");
    EXPECT_EQ(s.causes[0].label, "the building itself");
}

TEST(Beam, TheHorizonIsInterpolatedRoundTheCompass) {
    const Horizon h({{350.0, 10.0}, {10.0, 20.0}, {180.0, 4.0}});
    EXPECT_NEAR(h.elevation_deg(350.0), 10.0, 1e-9);
    EXPECT_NEAR(h.elevation_deg(0.0), 15.0, 1e-9);
    EXPECT_NEAR(h.elevation_deg(5.0), 17.5, 1e-9);
    EXPECT_NEAR(h.elevation_deg(-5.0), 12.5, 1e-9);
    EXPECT_NEAR(h.elevation_deg(95.0), 12.0, 1e-9);
    EXPECT_NEAR(Horizon({{123.0, 7.0}}).elevation_deg(300.0), 7.0, 1e-9);
    EXPECT_EQ(Horizon({}).elevation_deg(300.0), 0.0);
    Site site;
    site.horizon = {{170.0, 29.0}, {190.0, 31.5}};
    EXPECT_EQ(share_of(site, level_plate({0, 0, 0}), one_sun(30.0, 180.0)), 0.0F);  // 30.25 deg there
    EXPECT_EQ(share_of(site, level_plate({0, 0, 0}), one_sun(30.5, 180.0)), 1.0F);
}

TEST(Beam, CausesAreCountedAloneWorstFirst) {
    Site site;
    site.obstacles = {box({0, -3.0, 0}, 100.0, 2.0, 2.0), box({0, -13.0, 0}, 1000.0, 2.0, 60.0)};
    site.obstacles[0].id = "near";
    site.obstacles[1].id = "far";
    const Shade s = shade_of(site, level_plate({0, 0, 0}), "", one_sun(45.0, 180.0), 4, 4);
    ASSERT_EQ(s.causes.size(), 2U);
    EXPECT_EQ(s.causes[0].obstacle_id, "far");
    const double whole_kwh = 8.760 * 500.0 * std::sin(radians(45.0));
    EXPECT_NEAR(s.causes[0].lost_kwh_m2, whole_kwh, 1e-6 * whole_kwh);
    EXPECT_NEAR(s.causes[1].lost_kwh_m2, 0.5 * whole_kwh, 1e-6 * whole_kwh);  // counted though the far one hides it all
    EXPECT_EQ(s.beam_share[0], 0.0F);
}

TEST(Beam, TheWorstMonthAndHourAreNamed) {
    Site site;
    site.obstacles = {box({0, -3.0, 0}, 100.0, 2.0, 2.0)};
    sky::PreparedYear year = one_sun(80.0, 180.0);
    const auto low = static_cast<std::size_t>(first_hour_of_month(2) + 9);  // one low sun in February at 09:00
    year.sun_up[low] = std::sin(radians(20.0));
    year.sun_north[low] = -std::cos(radians(20.0));
    const Shade s = shade_of(site, level_plate({0, 0, 0}), "", year);
    ASSERT_EQ(s.causes.size(), 1U);
    EXPECT_EQ(s.causes[0].worst_month, 2);
    EXPECT_EQ(s.causes[0].worst_hour, 9);
}

Site random_site(unsigned seed, int obstacles) {
    std::mt19937 random(seed);
    std::uniform_real_distribution<double> place(-8.0, 8.0), size(0.2, 3.0), turn(0.0, 360.0);
    Site site;
    for (int i = 0; i < obstacles; ++i) {
        Obstacle o =
            box({place(random), place(random), 0.0}, size(random), size(random), 2.0 * size(random), turn(random));
        o.kind = static_cast<ObstacleKind>(i % 4);
        o.radius_m = size(random);
        o.crown_base_m = 1.0;
        o.height_m += 1.5;
        if (o.kind == ObstacleKind::prism) {
            for (const Point2 p : {Point2{0, 0}, {1.5, 0.2}, {0.8, 1.4}}) {
                o.outline.push_back(p + Point2{o.base.x_m, o.base.y_m});
            }
        }
        o.id = std::to_string(i);
        site.obstacles.push_back(o);
    }
    site.horizon = {{90.0, 5.0}, {200.0, 12.0}, {300.0, 3.0}};
    return site;
}

TEST(Beam, AnotherObstacleNeverLetsMoreThrough) {
    const sky::PreparedYear year = wandering_sun();
    for (unsigned seed = 1; seed <= 4; ++seed) {
        SCOPED_TRACE(seed);
        Site site = random_site(seed, 6);
        const Shade more = shade_of(site, level_plate({0, 0, 1.0}), "", year);
        site.obstacles.pop_back();
        const Shade fewer = shade_of(site, level_plate({0, 0, 1.0}), "", year);
        for (std::size_t h = 0; h < 8760; ++h)
            ASSERT_LE(more.beam_share[h], fewer.beam_share[h] + 1e-7F) << h;
        EXPECT_LE(more.sky_view, fewer.sky_view + 1e-12);
    }
}

TEST(Beam, TurningSketchNorthAndSunTogetherChangesNothing) {
    constexpr double turn_deg = 73.0;
    Site site = random_site(5, 6);
    const Shade before = shade_of(site, level_plate({0, 0, 1.0}), "", wandering_sun());
    site.sketch_up_azimuth_deg = turn_deg;
    for (HorizonPoint& p : site.horizon)
        p.azimuth_deg += turn_deg;
    const Shade after = shade_of(site, level_plate({0, 0, 1.0}), "", wandering_sun(turn_deg));
    // A ray along an edge may fall on either side after the turn; no hour may move by more than a sample or two.
    double difference = 0.0;
    for (std::size_t h = 0; h < 8760; ++h)
        difference += std::abs(before.beam_share[h] - after.beam_share[h]);
    EXPECT_LT(difference, 1.0);  // of thousands of sun-up hours
}

TEST(Beam, MoreSamplesComeToTheSameYear) {
    const Site site = random_site(8, 6);
    const sky::PreparedYear year = wandering_sun();
    const Shade usual = shade_of(site, level_plate({0, 0, 1.0}), "", year),
                fine = shade_of(site, level_plate({0, 0, 1.0}), "", year, 25, 15);
    double a = 0.0, b = 0.0, up = 0.0;
    for (std::size_t h = 0; h < 8760; ++h) {
        a += usual.beam_share[h];
        b += fine.beam_share[h];
        up += year.sun_up[h] > 0.0 ? 1.0 : 0.0;
    }
    EXPECT_NEAR(a / up, b / up, 0.01);  // 1 % of the sun-up hours: the accuracy the shade is made for
}

TEST(SkyView, AnEvenHorizonLeavesTheSquareOfItsCosine) {
    // Level plate, horizon of elevation a all round: view factor of the open cap is cos^2 a (Siegel and Howell).
    for (const double elevation : {10.0, 30.0, 45.0}) {
        Site site;
        site.horizon = {{0.0, elevation}, {180.0, elevation}};
        const double c = std::cos(radians(elevation));
        EXPECT_NEAR(shade_of(site, level_plate({0, 0, 0}), "", one_sun(80.0, 180.0)).sky_view, c * c, 0.03);
    }
}

TEST(SkyView, ALongWallTakesHalfOfOneMinusTheCosine) {
    // Level strip beside an endless wall seen at elevation a: view factor to it (1 - cos a)/2 (Hottel's strings).
    Site site;
    site.obstacles = {box({0, -1001.0, 0}, 1e6, 2000.0, 1.0)};
    const double a = std::atan2(1.0, 1.0);
    EXPECT_NEAR(shade_of(site, level_plate({0, 0, 0}), "", one_sun(80.0, 180.0)).sky_view,
                1.0 - 0.5 * (1.0 - std::cos(a)), 0.01);
}

TEST(ShadeMap, CellsBehindTheChimneyAreDarkerAndOutsideTheyAreMarked) {
    Site site;
    Surface roof;
    roof.id = "roof";
    roof.tilt_deg = 0.0;
    roof.origin = {0, 0, 3.0};
    roof.outline = {{0, 0}, {4, 0}, {4, 4}, {0, 2}};
    site.surfaces = {roof};
    site.obstacles = {box({2.0, -0.5, 3.0}, 1.0, 1.0, 1.1)};  // north face at y = 0
    const ShadeMap map = shade_map(site, roof, one_sun(45.0, 180.0), 0.25);
    EXPECT_EQ(map.columns, 16);
    EXPECT_EQ(map.rows, 16);
    const auto cell = [&](double x, double y) {
        return map.share[static_cast<std::size_t>(y / 0.25) * 16U + static_cast<std::size_t>(x / 0.25)];
    };
    EXPECT_EQ(cell(2.1, 0.6), 0.0F);
    EXPECT_EQ(cell(2.1, 1.4), 1.0F);  // the shadow is 1 m long at 0.10 m over the plane
    EXPECT_EQ(cell(0.6, 0.6), 1.0F);
    EXPECT_EQ(cell(0.1, 3.9), -1.0F);
    EXPECT_EQ(shade_map(site, roof, one_sun(45.0, 180.0), 0.0).columns, 0);
    EXPECT_EQ(shade_map(site, roof, one_sun(45.0, 180.0), 1e-6).columns, 0);
}

TEST(ShadeMap, AgreesWithTheShadeOfAPlateInTheSamePlace) {
    Site site = random_site(11, 6);
    Surface roof;
    roof.id = "roof";
    roof.tilt_deg = 0.0;
    roof.origin = {-4, -4, 1.0};
    roof.outline = {{0, 0}, {8, 0}, {8, 8}, {0, 8}};
    site.surfaces = {roof};
    const sky::PreparedYear year = wandering_sun();
    const ShadeMap map = shade_map(site, roof, year, 1.0, 1);
    double darkest = 1.0;
    for (int row = 0; row < 8; ++row) {
        for (int column = row % 2; column < 8; column += 2) {
            const Point3 middle{column - 3.5, row - 3.5, 1.0 + shade_map_off_m};
            const Shade one = shade_of(site, level_plate(middle, 1e-3, 1e-3), "roof", year, 1, 1);
            double lit = 0.0, whole = 0.0;
            for (std::size_t h = 0; h < 8760; ++h) {
                if (year.sun_up[h] <= 0.0) continue;
                whole += year.sun_up[h];
                lit += year.sun_up[h] * static_cast<double>(one.beam_share[h]);
            }
            // One sun on the edge of a shadow may be counted either way: the cell's place is rounded differently.
            EXPECT_NEAR(map.share[static_cast<std::size_t>(row * 8 + column)], lit / whole, 1e-3);
            darkest = std::min(darkest, lit / whole);
        }
    }
    EXPECT_LT(darkest, 0.8);  // some cells are shaded, or nothing was compared
}

TEST(Shade, HostileObstaclesThrowNoShade) {
    Site site;
    site.obstacles.resize(4);
    site.obstacles[0].height_m = -1.0;
    site.obstacles[1].kind = ObstacleKind::prism;  // no outline
    site.obstacles[2].kind = ObstacleKind::post;
    site.obstacles[2].radius_m = 0.0;
    site.obstacles[3].kind = ObstacleKind::tree;
    site.obstacles[3].radius_m = std::nan("");
    EXPECT_EQ(share_of(site, level_plate({0, 0, 0.5}), one_sun(40.0, 180.0)), 1.0F);
    EXPECT_EQ(shade_of(site, {}, "", one_sun(40.0, 180.0)).beam_share.size(), 8760U);  // a collector not yet placed
    EXPECT_EQ(shade_of(site, level_plate({0, 0, 0}), "", {}).beam_share.size(), 8760U);
}

}  // namespace
}  // namespace wg::site
