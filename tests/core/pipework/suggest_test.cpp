#include "core/pipework/suggest.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <chrono>
#include <cmath>
#include <random>

#include "core/pipework/legs.h"
#include "core/site/geometry.h"
#include "tests/tools/sweep.h"

namespace wg::pipework {
namespace suggest_test {
namespace {

constexpr double east_deg = 90.0, south_deg = 180.0, west_deg = 270.0, north_deg = 0.0;

Surface plane(const std::string& id, SurfaceKind kind, double tilt, double azimuth, Point3 origin, double width,
              double height) {
    Surface s;
    s.id = s.label = id;
    s.kind = kind;
    s.tilt_deg = tilt;
    s.azimuth_deg = azimuth;
    s.origin = origin;
    s.outline = {{0, 0}, {width, 0}, {width, height}, {0, height}};
    return s;
}

/// A house of 10 x 8 m with eaves at 3 m, two roofs of 40 deg that reach 0.4 m over, and its four walls.
Site house() {
    Site site;
    Building b;
    b.id = "house";
    b.edges = {{"e0", {0, 0}}, {"e1", {10, 0}}, {"e2", {10, 8}}, {"e3", {0, 8}}};
    site.buildings = {b};
    const double up = 4.4 / std::cos(40.0 * 3.14159265358979 / 180.0);
    site.surfaces = {plane("south roof", SurfaceKind::roof, 40, south_deg, {-0.2, -0.4, 2.66}, 10.4, up),
                     plane("north roof", SurfaceKind::roof, 40, north_deg, {10.2, 8.4, 2.66}, 10.4, up),
                     plane("south wall", SurfaceKind::wall, 90, south_deg, {0, 0, 0}, 10, 3),
                     plane("east wall", SurfaceKind::wall, 90, east_deg, {10, 0, 0}, 8, 3),
                     plane("north wall", SurfaceKind::wall, 90, north_deg, {10, 8, 0}, 10, 3),
                     plane("west wall", SurfaceKind::wall, 90, west_deg, {0, 8, 0}, 8, 3)};
    return site;
}

Point3 on(const Site& site, const std::string& id, Point2 at, double off_m) {
    return site::to_space(site::frame_of(*find_surface(site, id), site.sketch_up_azimuth_deg), at, off_m);
}

/// A plate of 2 x 1 m on the south roof, connections at its lower edge.
SuggestInput from_roof(const Site& site, Point2 lower_left, Point3 to) {
    SuggestInput in;
    in.site = &site;
    in.from_surface = "south roof";
    in.from = on(site, "south roof", {lower_left.x_m + 1.0, lower_left.y_m}, 0.10);
    in.to = to;
    in.ceiling_m = 2.4;
    in.collectors = {{"south roof",
                      {lower_left,
                       {lower_left.x_m + 2.0, lower_left.y_m},
                       {lower_left.x_m + 2.0, lower_left.y_m + 1.0},
                       {lower_left.x_m, lower_left.y_m + 1.0}}}};
    return in;
}

Room room(double x0, double y0, double x1, double y1, double from_z, double to_z) {
    Room r;
    r.id = r.label = "room";
    r.outline = {{x0, y0}, {x1, y0}, {x1, y1}, {x0, y1}};
    r.from_z_m = from_z;
    r.to_z_m = to_z;
    return r;
}

double straight_m(const SuggestInput& in) {
    return std::hypot(in.from.x_m - in.to.x_m, std::hypot(in.from.y_m - in.to.y_m, in.from.z_m - in.to.z_m));
}

/// Least of a sum over points every 2 cm along the way.
template <class Look>
void along(const SuggestInput& in, const Suggestion& s, Look look) {
    for (const Leg& leg : legs_of(in.from, s.route, in.to)) {
        const int parts = static_cast<int>(leg.length_m / 0.02) + 1;
        for (int i = 0; i <= parts; ++i) {
            const double t = static_cast<double>(i) / parts;
            look(Point3{leg.from.x_m + t * (leg.to.x_m - leg.from.x_m), leg.from.y_m + t * (leg.to.y_m - leg.from.y_m),
                        leg.from.z_m + t * (leg.to.z_m - leg.from.z_m)});
        }
    }
}

TEST(Suggest, a_cylinder_under_the_roof_is_reached_through_one_passage) {
    const Site site = house();
    const SuggestInput in = from_roof(site, {4, 2}, {5.0, 3.0, 1.2});
    const Suggestion s = suggest_run(in);
    ASSERT_TRUE(s.found) << s.why;
    int in_or_out = 0;
    for (const RoutePoint& p : s.route)
        in_or_out += p.kind == RoutePointKind::roof_passage || p.kind == RoutePointKind::wall_passage ? 1 : 0;
    EXPECT_EQ(in_or_out, 1) << s.why;
    EXPECT_GE(s.length_m, straight_m(in) - 1e-6);
    EXPECT_LT(s.length_m, straight_m(in) + 5.0) << s.why;
    EXPECT_FALSE(legs_of(in.from, s.route, in.to).back().outdoors);
    EXPECT_FALSE(s.why.empty());
}

TEST(Suggest, cylinder_at_the_wall_is_reached_by_the_eaves_and_the_wall_when_the_loft_is_shut) {
    Site site = house();
    site.rooms = {room(-1, -1, 11, 9, 2.45, 9.0)};  // nothing may go through the loft
    const SuggestInput in = from_roof(site, {4, 1}, {5.0, 1.0, 1.2});
    const Suggestion s = suggest_run(in);
    ASSERT_TRUE(s.found) << s.why;
    const auto through = std::find_if(s.route.begin(), s.route.end(),
                                      [](const RoutePoint& p) { return p.kind != RoutePointKind::free; });
    ASSERT_NE(through, s.route.end());
    EXPECT_EQ(through->kind, RoutePointKind::wall_passage);
    EXPECT_NEAR(through->position.y_m, 0.0, 0.11) << "the south wall";
    along(in, s, [&](Point3 p) { EXPECT_FALSE(p.y_m > 0.4 && p.z_m > 2.46) << p.y_m << ' ' << p.z_m; });
    EXPECT_NE(s.why.find("1 room"), std::string::npos);
}

TEST(Suggest, same_input_same_way) {
    const Site site = house();
    const SuggestInput in = from_roof(site, {6, 2}, {2.0, 6.0, 1.2});
    const Suggestion a = suggest_run(in), b = suggest_run(in);
    EXPECT_EQ(a.route, b.route);
    EXPECT_EQ(a.why, b.why);
}

TEST(Suggest, goes_round_keep_outs_other_plates_and_chimneys) {
    Site site = house();
    site.rooms = {room(-1, -1, 11, 9, 2.45, 9.0)};
    SuggestInput in = from_roof(site, {4, 2.5}, {5.0, 1.0, 1.2});
    // Straight below the plate: a window, another plate beside it, and a chimney in the way on the left.
    KeepOut window;
    window.outline = {{4.2, 0.8}, {6.5, 0.8}, {6.5, 2.0}, {4.2, 2.0}};
    window.clearance_m = 0.1;
    site.surfaces[0].keep_outs = {window};
    in.collectors.push_back({"south roof", {{6.4, 2.4}, {8.4, 2.4}, {8.4, 3.4}, {6.4, 3.4}}});
    Obstacle chimney;
    chimney.kind = ObstacleKind::box;
    chimney.base = {3.2, 0.9, 2.0};
    chimney.width_m = chimney.depth_m = 0.6;
    chimney.height_m = 4.0;
    site.obstacles = {chimney};
    const Suggestion s = suggest_run(in);
    ASSERT_TRUE(s.found) << s.why;
    const site::Frame frame = site::frame_of(site.surfaces[0], 0.0);
    along(in, s, [&](Point3 p) {
        const Point2 at = site::to_plane(frame, p);
        const double over = (p.x_m - frame.origin.x_m) * frame.normal.x_m +
                            (p.y_m - frame.origin.y_m) * frame.normal.y_m +
                            (p.z_m - frame.origin.z_m) * frame.normal.z_m;
        if (over > -0.01) {
            EXPECT_FALSE(at.x_m > 4.2 && at.x_m < 6.5 && at.y_m > 0.8 && at.y_m < 2.0) << at.x_m << ' ' << at.y_m;
            EXPECT_FALSE(at.x_m > 6.4 && at.x_m < 8.4 && at.y_m > 2.4) << "the other plate";
        }
        EXPECT_FALSE(std::abs(p.x_m - 3.2) < 0.3 && std::abs(p.y_m - 0.9) < 0.3) << "the chimney";
    });
}

TEST(Suggest, a_cellar_is_reached_through_its_floor) {
    const Site site = house();
    SuggestInput in = from_roof(site, {4, 1}, {5.0, 4.0, -1.0});
    in.ceiling_m = 0.05;
    const Suggestion s = suggest_run(in);
    ASSERT_TRUE(s.found) << s.why;
    const auto floors = std::count_if(s.route.begin(), s.route.end(),
                                      [](const RoutePoint& p) { return p.kind == RoutePointKind::floor_passage; });
    EXPECT_GE(floors, 1) << s.why;
    EXPECT_TRUE(std::any_of(s.route.begin(), s.route.end(), [](const RoutePoint& p) {
        return p.kind == RoutePointKind::floor_passage && std::abs(p.position.z_m) < 1e-9;
    }));
}

TEST(Suggest, from_a_terrace_straight_to_the_wall_and_never_over_ground_under_the_house) {
    Site site = house();
    site.surfaces.push_back(plane("lawn", SurfaceKind::ground, 0, south_deg, {-5, -6, 0}, 20, 20));
    SuggestInput in;
    in.site = &site;
    in.from_surface = "lawn";
    in.from = {3.0, -3.0, 0.3};
    in.to = {5.0, 4.0, 1.2};
    in.ceiling_m = 2.4;
    const Suggestion s = suggest_run(in);
    ASSERT_TRUE(s.found) << s.why;
    bool outdoors = true;
    for (const Leg& leg : legs_of(in.from, s.route, in.to)) {
        if (outdoors && !leg.outdoors) {
            outdoors = false;
            EXPECT_TRUE(leg.from.y_m < 0.06 || leg.from.x_m < 0.06 || leg.from.x_m > 9.94) << "at a wall";
        }
        const Point3 middle{0.5 * (leg.from.x_m + leg.to.x_m), 0.5 * (leg.from.y_m + leg.to.y_m), 0.0};
        if (leg.outdoors) EXPECT_FALSE(middle.x_m > 0.1 && middle.x_m < 9.9 && middle.y_m > 0.1 && middle.y_m < 7.9);
    }
    EXPECT_FALSE(outdoors);
    // A terrace on top of the house is left downwards.
    site.surfaces = {plane("roof terrace", SurfaceKind::terrace, 0, south_deg, {1, 1, 3.2}, 8, 6)};
    in.from_surface = "roof terrace";
    in.from = {3.0, 3.0, 3.5};
    const Suggestion down = suggest_run(in);
    ASSERT_TRUE(down.found) << down.why;
    EXPECT_TRUE(std::any_of(down.route.begin(), down.route.end(),
                            [](const RoutePoint& p) { return p.kind == RoutePointKind::roof_passage; }));
}

TEST(Suggest, no_way_is_said_and_not_invented) {
    Site site = house();
    SuggestInput in = from_roof(site, {4, 1}, {5.0, 4.0, 1.2});
    site.rooms = {room(-1, -1, 11, 9, 1.6, 9.0), room(4, 3, 6, 3.5, -5, 9), room(4, 4.5, 6, 5, -5, 9),
                  room(3.5, 3, 4, 5, -5, 9), room(6, 3, 6.5, 5, -5, 9)};
    const Suggestion s = suggest_run(in);
    EXPECT_FALSE(s.found);
    EXPECT_TRUE(s.route.empty());
    EXPECT_NE(s.why.find("rooms without pipes"), std::string::npos) << s.why;
    in.from_surface = "elsewhere";
    EXPECT_FALSE(suggest_run(in).found);
    EXPECT_NE(suggest_run(in).why.find("No way over the planes"), std::string::npos);
}

// Random plates, cylinders and closed rooms: whatever is found keeps out of the rooms, ends indoors, and is no shorter
// than the straight line. A room more never makes the way cheaper in metres counted.
TEST(Suggest, random_houses_keep_their_rooms_free) {
    std::mt19937 random(7);  // NOLINT: the same each time
    const auto between = [&](double a, double b) { return std::uniform_real_distribution<double>(a, b)(random); };
    int found = 0;
    for (int n = 0; n < sweep::cases(60); ++n) {
        Site site = house();
        const int rooms = static_cast<int>(between(0, 4));
        for (int i = 0; i < rooms; ++i) {
            const double x = between(0, 7), y = between(0, 5);
            site.rooms.push_back(room(x, y, x + between(1, 3), y + between(1, 3), 0.0, 2.4));
        }
        SuggestInput in =
            from_roof(site, {between(0.5, 7.5), between(0.5, 4.0)}, {between(0.5, 9.5), between(0.5, 7.5), 1.2});
        const Suggestion s = suggest_run(in);
        if (!s.found) continue;
        ++found;
        EXPECT_GE(s.length_m, straight_m(in) - 0.01);
        EXPECT_FALSE(legs_of(in.from, s.route, in.to).back().outdoors);
        for (const Room& r : site.rooms) {
            if (site::contains(r.outline, {in.to.x_m, in.to.y_m})) continue;  // the cylinder's own
            along(in, s, [&](Point3 p) {
                const bool inside = p.z_m > r.from_z_m + 0.01 && p.z_m < r.to_z_m - 0.01 &&
                                    site::contains(r.outline, {p.x_m, p.y_m}) &&
                                    site::edge_distance_m(r.outline, {p.x_m, p.y_m}) > 0.01;
                EXPECT_FALSE(inside) << n << ": " << p.x_m << ' ' << p.y_m << ' ' << p.z_m;
            });
        }
    }
    EXPECT_GT(found, sweep::cases(60) * 8 / 10);
}

#if !defined(WG_SANITIZED)
TEST(Suggest, is_quick) {
    Site site = house();
    for (int i = 0; i < 6; ++i)
        site.rooms.push_back(room(1.4 * i, 5.0, 1.4 * i + 1.2, 6.5, 0.0, 2.4));
    const SuggestInput in = from_roof(site, {4, 2}, {2.0, 7.3, 1.2});
    double best_ms = 1e9;
    for (int i = 0; i < 5; ++i) {
        const auto begin = std::chrono::steady_clock::now();
        EXPECT_TRUE(suggest_run(in).found);
        best_ms = std::min(best_ms,
                           std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - begin).count());
    }
    RecordProperty("suggest_ms", std::to_string(best_ms));
    EXPECT_LT(best_ms, 50.0);
}
#endif

}  // namespace
}  // namespace suggest_test
}  // namespace wg::pipework
