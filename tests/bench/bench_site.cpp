// Shade of one collector over a year and the fixings of one collector.
#include <benchmark/benchmark.h>

#include <cmath>
#include <vector>

#include "core/fixing/fixing.h"
#include "core/fixing/layout_rules.h"
#include "core/fixing/tight_spots.h"
#include "core/quantity/constants.h"
#include "core/site/grid_shadow.h"
#include "core/site/shade.h"
#include "core/site/skyline.h"
#include "core/site/suns.h"
#include "core/site/view.h"

namespace {

using namespace wg;

/// Suns of a middle latitude: declination by Cooper, hour angle by the clock. About 4,400 hours are above the horizon.
sky::PreparedYear plain_year() {
    sky::PreparedYear year;
    constexpr double latitude_deg = 50.0;
    for (int hour = 0; hour < 8760; ++hour) {
        const double declination = radians(23.45 * std::sin(2.0 * pi * (284.0 + hour / 24 + 1) / 365.0));
        const double angle = radians(15.0 * (hour % 24 + 0.5 - 12.0)), latitude = radians(latitude_deg);
        year.sun_east.push_back(-std::cos(declination) * std::sin(angle));
        year.sun_north.push_back(std::sin(declination) * std::cos(latitude) -
                                 std::cos(declination) * std::cos(angle) * std::sin(latitude));
        year.sun_up.push_back(std::sin(declination) * std::sin(latitude) +
                              std::cos(declination) * std::cos(angle) * std::cos(latitude));
        year.beam_normal_w_m2.push_back(400.0);
    }
    return year;
}

Site site_with_six_obstacles() {
    Site site;
    site.location.latitude_deg = 50.0;
    Surface roof;
    roof.id = "roof";
    roof.origin = {0, 0, 3.0};
    roof.tilt_deg = 35.0;
    roof.azimuth_deg = 180.0;
    roof.outline = {{0, 0}, {10, 0}, {10, 6}, {0, 6}};
    site.surfaces = {roof};
    const Point2 feet[] = {{2, 3}, {8, 2.5}, {5, 1}, {3, -6}, {9, -9}, {-4, -3}};
    for (int i = 0; i < 6; ++i) {
        Obstacle o;
        o.kind = static_cast<ObstacleKind>(i % 4);
        o.base = {feet[i].x_m, feet[i].y_m, i < 3 ? 3.5 : 0.0};
        o.width_m = o.depth_m = 0.7;
        o.turn_deg = 20.0;
        o.height_m = i < 3 ? 2.0 : 9.0;
        o.radius_m = o.kind == ObstacleKind::tree ? 2.5 : 0.1;
        o.outline = {{4.5, 0.5}, {5.5, 0.5}, {5.5, 1.5}, {4.5, 1.5}};
        site.obstacles.push_back(o);
    }
    return site;
}

CollectorModel plate() {
    CollectorModel m;
    m.fixing_points = {{0.2, 0.1}, {1.0, 0.1}, {1.8, 0.1}, {0.2, 0.7}, {1.0, 0.7}, {1.8, 0.7}};
    return m;
}

Placement middle() {
    Placement p;
    p.surface_id = "roof";
    p.x_m = 5.0;
    p.y_m = 2.5;
    return p;
}

void shade_map_of_a_roof(benchmark::State& state) {
    const sky::PreparedYear year = plain_year();
    const Site site = site_with_six_obstacles();
    for (auto _ : state)
        benchmark::DoNotOptimize(site::shade_map(site, site.surfaces[0], year));
}
BENCHMARK(shade_map_of_a_roof)->Unit(benchmark::kMillisecond);

/// Chimney, two dormers, a mast and a neighbour's tree, as they stand on and round a house.
Site roof_with_five_obstacles() {
    Site site = site_with_six_obstacles();
    site.obstacles.clear();
    const auto add = [&](ObstacleKind kind, Point3 foot, double width_m, double depth_m, double height_m) {
        Obstacle o;
        o.kind = kind;
        o.base = foot;
        o.width_m = width_m;
        o.depth_m = depth_m;
        o.height_m = height_m;
        o.radius_m = 0.5 * width_m;
        site.obstacles.push_back(o);
    };
    add(ObstacleKind::box, {3.03, 3.64, 4.5}, 0.57, 0.61, 2.6);
    add(ObstacleKind::box, {6.47, 1.83, 3.0}, 1.63, 2.4, 2.4);
    add(ObstacleKind::box, {1.46, 1.83, 3.0}, 1.63, 2.4, 2.4);
    add(ObstacleKind::post, {8.8, 3.8, 4.5}, 0.1, 0.1, 3.5);
    add(ObstacleKind::tree, {11.0, -4.0, 0.0}, 5.0, 0.0, 9.0);
    return site;
}

/// A plate between the dormers.
void shade_collector_year(benchmark::State& state) {
    const sky::PreparedYear year = plain_year();
    const Site site = roof_with_five_obstacles();
    Placement between = middle();
    between.x_m = 4.0;
    between.y_m = 2.0;
    const site::PlacedCollector placed = site::place(site.surfaces[0], 0.0, between, plate());
    for (auto _ : state)
        benchmark::DoNotOptimize(site::shade_of(site, placed, "roof", year));
}
BENCHMARK(shade_collector_year)->Unit(benchmark::kMillisecond);

/// 10 m x 6 m at 0.1 m: 6,000 cells and every hour of the year with the sun before the roof.
void shade_map_roof(benchmark::State& state) {
    const sky::PreparedYear year = plain_year();
    const Site site = roof_with_five_obstacles();
    for (auto _ : state)
        benchmark::DoNotOptimize(site::shade_map(site, site.surfaces[0], year, 0.1, 1));
}
BENCHMARK(shade_map_roof)->Unit(benchmark::kMillisecond);

/// 2,000 cells, three boxes, about 4,000 suns: the masks alone (0) and with the year's beam by cell (1).
void shade_masks_2000_cells(benchmark::State& state) {
    const sky::PreparedYear year = plain_year();
    Site site = roof_with_five_obstacles();
    site.obstacles.resize(3);
    site.surfaces[0].outline = {{0, 0}, {10, 0}, {10, 8}, {0, 8}};
    if (state.range(0) == 1) {
        for (auto _ : state)
            benchmark::DoNotOptimize(site::shade_map(site, site.surfaces[0], year, 0.2, 1));
        return;
    }
    const site::CellGrid grid = site::CellGrid::over(site.surfaces[0], 0.0, 0.2, site::shade_map_off_m);
    const std::vector<site::Sun> suns = site::suns_before(year, grid.normal, 0.0, 1);
    site::GridShadow shadow(grid, site::Occluder::of(site, "roof"));
    for (auto _ : state) {
        for (const site::Sun& sun : suns)
            benchmark::DoNotOptimize(shadow.cast(sun.dir));
    }
    state.counters["suns"] = static_cast<double>(suns.size());
    state.counters["cells"] = static_cast<double>(grid.size());
}
BENCHMARK(shade_masks_2000_cells)->Arg(0)->Arg(1)->Unit(benchmark::kMillisecond);

/// Sky and ground seen from 240 cells of the roof.
void view_map_roof(benchmark::State& state) {
    const Site site = roof_with_five_obstacles();
    for (auto _ : state)
        benchmark::DoNotOptimize(site::view_map(site, site.surfaces[0], 0.5));
}
BENCHMARK(view_map_roof)->Unit(benchmark::kMillisecond);

void skyline_of_a_point(benchmark::State& state) {
    const Site site = roof_with_five_obstacles();
    for (auto _ : state)
        benchmark::DoNotOptimize(site::skyline(site, Point3{5.0, 2.0, 4.5}, "roof"));
}
BENCHMARK(skyline_of_a_point)->Unit(benchmark::kMillisecond);

void fixing_reactions(benchmark::State& state) {
    fixing::Input input;
    input.site = site_with_six_obstacles();
    input.surface = input.site.surfaces[0];
    input.surface.rafters = {true, 0.1, 0.6, 0.06, 0.16};
    input.placement = middle();
    input.collector = plate();
    input.placed = site::place(input.surface, 0.0, input.placement, input.collector);
    for (auto _ : state)
        benchmark::DoNotOptimize(fixing::fix(input));
}
BENCHMARK(fixing_reactions)->Unit(benchmark::kMicrosecond);

/// What the search for places asks of each: no words.
void fixing_hold_of_a_place(benchmark::State& state) {
    fixing::Input input;
    input.site = site_with_six_obstacles();
    input.surface = input.site.surfaces[0];
    input.surface.rafters = {true, 0.1, 0.6, 0.06, 0.16};
    input.placement = middle();
    input.collector = plate();
    input.method.coverings = {input.surface.covering};
    input.placed = site::place(input.surface, 0.0, input.placement, input.collector);
    for (auto _ : state)
        benchmark::DoNotOptimize(fixing::hold_of(input));
}
BENCHMARK(fixing_hold_of_a_place)->Unit(benchmark::kMicrosecond);

void layout_rules_with_a_move(benchmark::State& state) {
    const Site site = site_with_six_obstacles();
    Choice choice;
    choice.placements = {middle()};
    choice.placements[0].x_m = 0.8;  // beyond the edge: a remedy is looked for
    const CollectorModel model = plate();
    for (auto _ : state)
        benchmark::DoNotOptimize(fixing::check_layout(site, choice, model));
}
BENCHMARK(layout_rules_with_a_move)->Unit(benchmark::kMicrosecond);

/// What the face-on drawing asks at every step of a drag: a row of four plates beside a window.
void tight_spots_of_a_drag(benchmark::State& state) {
    Site site = site_with_six_obstacles();
    KeepOut window;
    window.outline = {{3.0, 2.0}, {3.8, 2.0}, {3.8, 3.2}, {3.0, 3.2}};
    window.clearance_m = 0.25;
    site.surfaces[0].keep_outs = {window};
    Choice choice;
    for (int i = 0; i < 4; ++i) {
        choice.placements.push_back(middle());
        choice.placements.back().x_m = 0.8 + 1.9 * i;
    }
    const CollectorModel model = plate();
    for (auto _ : state) {
        for (const Placement& one : choice.placements) {
            benchmark::DoNotOptimize(fixing::tight_spots(site, choice, model, one));
            benchmark::DoNotOptimize(fixing::check_attitude(site, choice, model, one));
        }
    }
}
BENCHMARK(tight_spots_of_a_drag)->Unit(benchmark::kMicrosecond);

}  // namespace
