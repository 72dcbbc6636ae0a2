// Shade over a year: maps under refinement, periods, dormers, neighbours, trees, causes.
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <limits>
#include <numeric>
#include <random>

#include "core/quantity/time.h"
#include "core/site/occluders.h"
#include "core/site/shade.h"
#include "core/site/suns.h"
#include "core/site/vec.h"
#include "tests/core/site/suns.h"

namespace wg::site {
namespace {

Obstacle thing(ObstacleKind kind, const char* id, Point3 foot, double width_m, double depth_m, double height_m) {
    Obstacle o;
    o.kind = kind;
    o.id = o.label = id;
    o.base = foot;
    o.width_m = width_m;
    o.depth_m = depth_m;
    o.height_m = height_m;
    o.radius_m = 0.5 * width_m;
    return o;
}

/// South roof of 10 m x 6 m, eaves at 3 m, with chimney, mast, neighbour house and tree.
Site house() {
    Site site;
    Surface roof;
    roof.id = "roof";
    roof.tilt_deg = 35.0;
    roof.azimuth_deg = 180.0;
    roof.origin = {0, 0, 3.0};
    roof.outline = {{0, 0}, {10, 0}, {10, 6}, {0, 6}};
    site.surfaces = {roof};
    site.obstacles = {thing(ObstacleKind::box, "chimney", {3.03, 3.6, 4.0}, 0.6, 0.6, 3.0),
                      thing(ObstacleKind::post, "mast", {7.0, 4.0, 4.0}, 0.1, 0.1, 4.0),
                      thing(ObstacleKind::box, "neighbour", {5.0, -14.0, 0.0}, 9.0, 8.0, 9.0),
                      thing(ObstacleKind::tree, "tree", {13.0, -4.0, 0.0}, 5.0, 0.0, 9.0)};
    return site;
}

PlacedCollector plate_at(const Surface& surface, Point2 middle, double length_m = 2.0, double width_m = 0.8) {
    PlacedCollector c;
    const Frame f = frame_of(surface, 0.0);
    const double l = 0.5 * length_m, w = 0.5 * width_m;
    for (const Point2 p : {Point2{-l, -w}, {l, -w}, {l, w}, {-l, w}})
        c.corners.push_back(to_space(f, middle + p, shade_map_off_m));
    return c;
}

double mean_share(const ShadeMap& map) {
    double sum = 0.0, cells = 0.0;
    for (const float s : map.share) {
        if (s < 0.0F) continue;
        sum += static_cast<double>(s);
        cells += 1.0;
    }
    return sum / cells;
}

TEST(ShadeMapYear, MovesLessThanOnePercentWhenCellsAreHalved) {
    const Site site = house();
    const sky::PreparedYear year = year_at(50.0);
    double coarse = mean_share(shade_map(site, site.surfaces[0], year, 0.4));
    EXPECT_LT(coarse, 0.97);
    for (const double cell : {0.2, 0.1, 0.05}) {
        const double fine = mean_share(shade_map(site, site.surfaces[0], year, cell));
        EXPECT_NEAR(fine, coarse, 0.01) << cell;
        coarse = fine;
    }
}

TEST(ShadeMapYear, AnotherObstacleNeverLightensACell) {
    Site site = house();
    const sky::PreparedYear year = year_at(50.0);
    std::mt19937 random(7);
    std::uniform_real_distribution<double> place(-2.0, 12.0), size(0.2, 2.0);
    ShadeMap before = shade_map(site, site.surfaces[0], year, 0.2);
    for (int i = 0; i < 8; ++i) {
        site.obstacles.push_back(thing(static_cast<ObstacleKind>(i % 4), "more", {place(random), place(random), 2.0},
                                       size(random), size(random), 3.0 * size(random)));
        if (i % 4 == 1) site.obstacles.back().outline = {{1, 1}, {2, 1}, {2, 2}, {1.5, 1.2}};
        const ShadeMap after = shade_map(site, site.surfaces[0], year, 0.2);
        for (std::size_t c = 0; c < after.share.size(); ++c) {
            ASSERT_LE(after.share[c], before.share[c]);
            ASSERT_GE(after.share[c], 0.0F);
            ASSERT_LE(after.share[c], 1.0F);
        }
        before = after;
    }
}

TEST(ShadeMapYear, PeriodsAddUpToTheYear) {
    const Site site = house();
    const sky::PreparedYear year = year_at(50.0);
    const ShadeMap whole = shade_map(site, site.surfaces[0], year, 0.5);
    ShadeMapOptions winter, summer, half;
    winter.cell_m = summer.cell_m = half.cell_m = 0.5;
    for (std::size_t m = 0; m < 12; ++m) {
        winter.month_weight[m] = m < 3 || m > 8 ? 1.0 : 0.0;
        summer.month_weight[m] = 1.0 - winter.month_weight[m];
    }
    half.hour_weight.assign(8760, 0.5F);
    const ShadeMap w = shade_map(site, site.surfaces[0], year, winter),
                   s = shade_map(site, site.surfaces[0], year, summer),
                   h = shade_map(site, site.surfaces[0], year, half);
    EXPECT_NEAR(w.unshaded_kwh_m2 + s.unshaded_kwh_m2, whole.unshaded_kwh_m2, 1e-6);
    EXPECT_NEAR(h.unshaded_kwh_m2, 0.5 * whole.unshaded_kwh_m2, 1e-6);
    double sum = 0.0;
    for (const Sun& sun : suns_before(year, frame_of(site.surfaces[0], 0.0).normal, 0.0, 1))
        sum += 1e-3 * sun.beam_w_m2;
    EXPECT_NEAR(whole.unshaded_kwh_m2, sum, 1e-6);
    for (std::size_t c = 0; c < whole.share.size(); ++c) {
        EXPECT_NEAR(w.beam_kwh_m2[c] + s.beam_kwh_m2[c], whole.beam_kwh_m2[c], 1e-3);
        EXPECT_NEAR(h.share[c], whole.share[c], 1e-6);
        EXPECT_NEAR(whole.beam_kwh_m2[c], whole.share[c] * whole.unshaded_kwh_m2, 1e-3);
    }
    EXPECT_LT(mean_share(w), mean_share(s));  // low suns, long shadows
    winter.hour_weight.assign(3, 1.0F);       // the rest of the year counts nothing
    EXPECT_EQ(shade_map(site, site.surfaces[0], year, winter).unshaded_kwh_m2, 0.0);
    winter.month_weight.fill(std::numeric_limits<double>::quiet_NaN());
    EXPECT_EQ(shade_map(site, site.surfaces[0], year, winter).share[0], 1.0F);
}

TEST(ShadeYear, ThePlatesShareIsWithinOnePercentOfDenseRays) {
    const Site site = house();
    const sky::PreparedYear year = year_at(50.0);
    for (const Point2 middle : {Point2{3.0, 5.0}, {7.0, 3.9}, {8.5, 1.0}}) {
        const PlacedCollector plate = plate_at(site.surfaces[0], middle);
        const Shade shade = shade_of(site, plate, "roof", year);
        const std::vector<Occluder> occluders = Occluder::of(site, "roof");
        const Point3 along = plate.corners[1] - plate.corners[0], across = plate.corners[3] - plate.corners[0];
        const Point3 centre = (plate.corners[0] + plate.corners[2]) * 0.5;
        constexpr int nx = 160, ny = 160;
        double sum = 0.0, dense_sum = 0.0;
        int shaded = 0;
        const std::vector<Sun> suns = suns_before(year, frame_of(site.surfaces[0], 0.0).normal, 0.0, 1);
        for (std::size_t s = 0; s < suns.size(); s += 13) {
            double lit = 0.0;
            for (int i = 0; i < nx * ny; ++i) {
                const Point3 from = plate.corners[0] + along * ((i % nx + 0.5) / nx) + across * ((i / nx + 0.5) / ny);
                double passed = 1.0;
                for (const Occluder& o : occluders) {
                    if (o.may_meet(centre, norm(along + across), suns[s].dir))
                        passed *= o.passes(from, suns[s].dir, o.crown_transmittance(suns[s].month));
                }
                lit += passed / (nx * ny);
            }
            const double share = static_cast<double>(shade.beam_share[suns[s].hour]);
            EXPECT_NEAR(share, lit, 0.01) << "hour " << suns[s].hour;
            shaded += lit < 1.0 ? 1 : 0;
            sum += share;
            dense_sum += lit;
        }
        EXPECT_GT(shaded, 5);
        EXPECT_NEAR(sum, dense_sum, 0.001 * dense_sum);
    }
}

TEST(ShadeYear, LossesByMonthAndHourAddUp) {
    const Site site = house();
    const sky::PreparedYear year = year_at(50.0);
    const Shade shade = shade_of(site, plate_at(site.surfaces[0], {3.0, 5.0}), "roof", year);
    const auto sum_of = [](const MonthHourTable& table) {
        double sum = 0.0;
        for (const auto& month : table)
            sum = std::accumulate(month.begin(), month.end(), sum);
        return sum;
    };
    ASSERT_GE(shade.causes.size(), 2U);
    double alone = 0.0;
    for (const ShadeCause& c : shade.causes) {
        EXPECT_NEAR(sum_of(c.lost_by_hour_kwh_m2), c.lost_kwh_m2, 1e-9);
        EXPECT_LE(c.lost_kwh_m2, shade.lost_kwh_m2 + 1e-6);
        alone += c.lost_kwh_m2;
    }
    EXPECT_GE(alone, shade.lost_kwh_m2 - 1e-6);  // what several take is counted for each
    EXPECT_NEAR(sum_of(shade.lost_by_hour_kwh_m2), shade.lost_kwh_m2, 1e-9);
    double lost = 0.0;
    for (const Sun& sun : suns_before(year, frame_of(site.surfaces[0], 0.0).normal, 0.0, 1))
        lost += 1e-3 * sun.beam_w_m2 * (1.0 - static_cast<double>(shade.beam_share[sun.hour]));
    EXPECT_NEAR(shade.lost_kwh_m2, lost, 1e-4);
}

TEST(ShadeYear, TheWorstSpanHoldsTheBulkOfTheWorstMonth) {
    // A wall east of a level plate takes the morning: its worst month's loss lies before noon.
    Site site;
    Surface terrace;
    terrace.id = "terrace";
    terrace.tilt_deg = 0.0;
    terrace.outline = {{-5, -5}, {5, -5}, {5, 5}, {-5, 5}};
    site.surfaces = {terrace};
    site.obstacles = {thing(ObstacleKind::box, "wall", {3.0, 0.0, 0.0}, 0.3, 30.0, 3.0)};
    const Shade shade = shade_of(site, plate_at(terrace, {1.0, 0.0}), "terrace", year_at(45.0));
    ASSERT_EQ(shade.causes.size(), 1U);
    const ShadeCause& wall = shade.causes[0];
    const auto& month = wall.lost_by_hour_kwh_m2[static_cast<std::size_t>(wall.worst_month - 1)];
    const double all = std::accumulate(month.begin(), month.end(), 0.0);
    const auto held = [&](int from, int to) { return std::accumulate(month.begin() + from, month.begin() + to, 0.0); };
    EXPECT_LT(wall.worst_from_hour, wall.worst_to_hour);
    EXPECT_LE(wall.worst_to_hour, 12);
    EXPECT_GE(held(wall.worst_from_hour, wall.worst_to_hour), worst_span_share * all - 1e-9);
    const int length = wall.worst_to_hour - wall.worst_from_hour;
    for (int from = 0; from + length - 1 <= 24; ++from)
        EXPECT_LT(held(from, from + length - 1), worst_span_share * all);  // no shorter one does
}

/// A dormer as a surveyor sketches it: a box for its cheeks and front, a prism for the ridge part over it.
TEST(ShadeYear, ADormerOfTwoPiecesShadesLikeTheWholeBody) {
    Site two, one;
    Surface roof;
    roof.id = "roof";
    roof.tilt_deg = 40.0;
    roof.origin = {0, 0, 3.0};
    roof.outline = {{0, 0}, {9, 0}, {9, 6}, {0, 6}};
    two.surfaces = one.surfaces = {roof};
    two.obstacles = {thing(ObstacleKind::box, "front", {4.0, 2.0, 3.0}, 1.8, 2.0, 1.4),
                     thing(ObstacleKind::prism, "top", {0, 0, 4.4}, 1.0, 1.0, 0.6)};
    two.obstacles[1].outline = {{3.4, 1.0}, {4.6, 1.0}, {4.6, 3.0}, {3.4, 3.0}};
    one.obstacles = two.obstacles;
    one.obstacles[0].height_m = 2.0;  // as high as both, over the narrow part only
    one.obstacles[0].width_m = 1.2;
    one.obstacles[1] = two.obstacles[0];
    const sky::PreparedYear year = year_at(48.0);
    for (const Point2 middle : {Point2{1.5, 3.0}, {6.5, 3.0}, {4.0, 5.3}}) {
        const PlacedCollector plate = plate_at(roof, middle);
        const Shade a = shade_of(two, plate, "roof", year), b = shade_of(one, plate, "roof", year);
        double difference = 0.0, shaded = 0.0;
        for (std::size_t h = 0; h < 8760; ++h) {
            difference = std::max(difference, static_cast<double>(std::abs(a.beam_share[h] - b.beam_share[h])));
            shaded += a.beam_share[h] < 1.0F && year.sun_up[h] > 0.0 ? 1.0 : 0.0;
        }
        EXPECT_LT(difference, 0.02);  // one by outlines, the other by cells
        EXPECT_GT(shaded, 50.0);
    }
}

TEST(ShadeYear, TheOtherWingOfAnLShapedRoofShades) {
    // South wing and a west wing whose roof rises east of it: the plate near the valley loses the morning.
    Site site;
    Surface south, wing;
    south.id = "south";
    south.tilt_deg = 40.0;
    south.origin = {0, 0, 3.0};
    south.outline = {{0, 0}, {8, 0}, {8, 5}, {0, 5}};
    wing.id = "wing";
    wing.label = "wing";
    wing.tilt_deg = 50.0;
    wing.azimuth_deg = 270.0;
    wing.origin = {8.0, 2.0, 3.0};  // right of a west face is south
    wing.outline = {{0, 0}, {9, 0}, {9, 5}, {0, 5}};
    site.surfaces = {south, wing};
    const sky::PreparedYear year = year_at(48.0);
    const PlacedCollector near = plate_at(south, {6.6, 1.5}), far = plate_at(south, {1.5, 1.5});
    const Shade n = shade_of(site, near, "south", year), f = shade_of(site, far, "south", year);
    ASSERT_FALSE(n.causes.empty());
    EXPECT_EQ(n.causes[0].label, building_label);
    EXPECT_LE(n.causes[0].worst_to_hour, 12);
    EXPECT_GT(n.lost_kwh_m2, 3.0 * f.lost_kwh_m2);
    EXPECT_LT(n.sky_view, f.sky_view);
    const ShadeMap map = shade_map(site, south, year, 0.25);
    EXPECT_LT(map.share[static_cast<std::size_t>(6 * map.columns + map.columns - 2)],
              map.share[static_cast<std::size_t>(6 * map.columns + 2)]);
}

TEST(ShadeYear, TreesInARowMultiply) {
    Site site;
    for (int i = 0; i < 3; ++i) {
        Obstacle tree = thing(ObstacleKind::tree, "tree", {0.0, -8.0 - 7.0 * i, 0.0}, 6.0, 0.0, 30.0);
        tree.crown_base_m = 1.0;
        tree.transmittance_leaf = 0.5 - 0.1 * i;
        site.obstacles.push_back(tree);
    }
    sky::PreparedYear year;
    year.sun_east.assign(8760, 0.0);
    year.sun_north.assign(8760, -std::cos(radians(25.0)));
    year.sun_up.assign(8760, std::sin(radians(25.0)));
    Surface level;
    level.tilt_deg = 0.0;
    const Shade s = shade_of(site, plate_at(level, {1.5, 0.0}, 0.1, 0.1), "", year);
    const auto july = static_cast<std::size_t>(first_hour_of_month(7)), january = static_cast<std::size_t>(0);
    EXPECT_NEAR(s.beam_share[july], 0.5 * 0.4 * 0.3, 1e-6);
    EXPECT_NEAR(s.beam_share[january], 0.65 * 0.65 * 0.65, 1e-6);
}

TEST(ShadeYear, AMirroredHemisphereGivesAMirroredYear) {
    // South of the equator the same house looks north, leaves come half a year later, and the sun goes the other way
    // round: each hour's share comes back half a year later.
    Site north = house(), south;
    south = north;
    south.surfaces[0].azimuth_deg = 0.0;
    south.surfaces[0].origin = {10.0, 0.0, 3.0};  // right of a north face is west
    for (Obstacle& o : south.obstacles) {
        o.base.y_m = -o.base.y_m;
        if (o.kind == ObstacleKind::tree) {
            o.leaf_from_month = 10;
            o.leaf_to_month = 4;
        }
    }
    sky::PreparedYear there = year_at(50.0), here = there;
    for (std::size_t h = 0; h < 8760; ++h) {  // the sun of the northern year half a year before, mirrored
        const std::size_t other = (h + 8760 - 4344) % 8760;  // 181 days: first of July to the first of January
        here.sun_east[h] = there.sun_east[other];
        here.sun_north[h] = -there.sun_north[other];
        here.sun_up[h] = there.sun_up[other];
        here.beam_normal_w_m2[h] = there.beam_normal_w_m2[other];
    }
    const Shade n = shade_of(north, plate_at(north.surfaces[0], {7.0, 2.5}), "roof", there),
                s = shade_of(south, plate_at(south.surfaces[0], {3.0, 2.5}), "roof", here);
    const auto month_sum = [](const Shade& shade, std::size_t month) {
        return std::accumulate(shade.lost_by_hour_kwh_m2[month].begin(), shade.lost_by_hour_kwh_m2[month].end(), 0.0);
    };
    EXPECT_GT(n.lost_kwh_m2, 5.0);
    EXPECT_NEAR(n.lost_kwh_m2, s.lost_kwh_m2, 0.03 * n.lost_kwh_m2);  // months are not of one length
    EXPECT_NEAR(month_sum(n, 11), month_sum(s, 5), 0.1 * month_sum(n, 11));
    EXPECT_NEAR(n.sky_view, s.sky_view, 0.005);
}

TEST(ShadeYear, AThousandObstaclesAndBrokenOnesAreBornWith) {
    Site site = house();
    std::mt19937 random(3);
    std::uniform_real_distribution<double> place(-40.0, 50.0), size(0.1, 2.0);
    for (int i = 0; i < 1000; ++i) {
        site.obstacles.push_back(thing(static_cast<ObstacleKind>(i % 4), "many", {place(random), place(random), 0.0},
                                       size(random), size(random), 4.0 * size(random)));
    }
    const double nan = std::numeric_limits<double>::quiet_NaN();
    site.obstacles.push_back(thing(ObstacleKind::box, "nan", {nan, 0, 0}, 1, 1, 1));
    site.surfaces.push_back(site.surfaces[0]);
    site.surfaces.back().id = "broken";
    site.surfaces.back().outline[2].x_m = nan;
    site.horizon = {{nan, 4.0}, {10.0, nan}, {200.0, 91.0}};
    sky::PreparedYear year = year_at(50.0);
    year.sun_up[4000] = nan;
    year.beam_normal_w_m2[4001] = nan;
    year.sun_east.resize(6000);
    const ShadeMap map = shade_map(site, site.surfaces[0], year, 0.5, 7);
    EXPECT_EQ(map.share.size(), 240U);
    for (const float s : map.share)
        EXPECT_TRUE(s >= 0.0F && s <= 1.0F);
    const Shade shade = shade_of(site, plate_at(site.surfaces[0], {5.0, 2.0}), "roof", year);
    for (const float s : shade.beam_share)
        EXPECT_TRUE(s >= 0.0F && s <= 1.0F);
}

}  // namespace
}  // namespace wg::site
