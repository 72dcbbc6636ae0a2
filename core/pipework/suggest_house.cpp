#include <algorithm>
#include <cmath>

#include "core/pipework/suggest_parts.h"
#include "core/quantity/constants.h"
#include "core/site/vec.h"

namespace wg::pipework::suggesting {
namespace {

using site::operator+;
using site::operator-;
using site::operator*;

constexpr double no_roof_m = 1e6;
constexpr double seam_m = 0.05;             // planes that meet are drawn within a few centimetres
constexpr double assumed_overhang_m = 0.4;  // where the walls are not drawn
constexpr double floors_apart_m = 0.5;      // two heights nearer than this are one floor

std::vector<Point2> seen_from_above(const site::Frame& frame, const std::vector<Point2>& outline) {
    std::vector<Point2> out;
    for (const Point2 p : outline) {
        const Point3 at = site::to_space(frame, p);
        out.push_back({at.x_m, at.y_m});
    }
    return out;
}

Point2 unit(Point2 a) {
    const double length = site::norm(a);
    return length > 0.0 ? a * (1.0 / length) : Point2{1.0, 0.0};
}

}  // namespace

double apart_m(Point3 a, Point3 b) noexcept {
    return site::norm(a - b);
}

bool House::covers(Point2 p) const {
    return std::any_of(plan.begin(), plan.end(), [p](const std::vector<Point2>& outline) {
        return site::contains(outline, p) || site::edge_distance_m(outline, p) < seam_m;
    });
}

double House::under_roof_m(Point2 p) const {
    double lowest = no_roof_m;
    for (const Roof& roof : roofs) {
        if (!site::contains(roof.plan, p)) continue;
        const Point3 d{p.x_m - roof.frame.origin.x_m, p.y_m - roof.frame.origin.y_m, 0.0};
        const Point3& n = roof.frame.normal;
        lowest = std::min(lowest, roof.frame.origin.z_m - (d.x_m * n.x_m + d.y_m * n.y_m) / n.z_m);
    }
    return lowest;
}

bool House::is_closed(Point3 p) const {
    return std::any_of(closed.begin(), closed.end(), [p](const Closed& c) {
        return p.z_m > c.from_z_m && p.z_m < c.to_z_m && site::contains(c.outline, {p.x_m, p.y_m});
    });
}

std::vector<Point2> plan_of(const Obstacle& o, double clear_m) {
    if (o.kind == ObstacleKind::tree) return {};
    if (o.kind == ObstacleKind::prism) {
        // Wider by its box: a notch of an outline is no way for a pipe.
        if (o.outline.size() < 3) return {};
        const site::Bounds b = site::bounds_of(o.outline);
        return {{b.min_x_m - clear_m, b.min_y_m - clear_m},
                {b.max_x_m + clear_m, b.min_y_m - clear_m},
                {b.max_x_m + clear_m, b.max_y_m + clear_m},
                {b.min_x_m - clear_m, b.max_y_m + clear_m}};
    }
    const bool post = o.kind == ObstacleKind::post;
    const double half_x = (post ? o.radius_m : 0.5 * o.width_m) + clear_m;
    const double half_y = (post ? o.radius_m : 0.5 * o.depth_m) + clear_m;
    const double turn = radians(post ? 0.0 : o.turn_deg);
    std::vector<Point2> out;
    for (const Point2 corner :
         {Point2{-half_x, -half_y}, Point2{half_x, -half_y}, Point2{half_x, half_y}, Point2{-half_x, half_y}}) {
        const Point2 t = site::turned(corner, std::cos(turn), std::sin(turn));
        out.push_back({o.base.x_m + t.x_m, o.base.y_m + t.y_m});
    }
    return out;
}

House house_round(const Site& site, Point3 to, double ceiling_m) {
    House house;
    const Point2 below{to.x_m, to.y_m};
    for (const Building& b : site.buildings) {
        std::vector<Point2> footprint;
        for (const FootprintEdge& edge : b.edges)
            footprint.push_back(edge.from);
        if (footprint.size() < 3 || !site::contains(footprint, below)) continue;
        if (house.plan.empty()) house.u = unit(footprint[1] - footprint[0]);
        house.plan.push_back(std::move(footprint));
    }
    double eaves_m = no_roof_m;
    std::vector<std::vector<Point2>> roof_plans;
    for (const Surface& s : site.surfaces) {
        if (s.kind != SurfaceKind::roof || s.outline.size() < 3 || s.tilt_deg > 80.0) continue;
        const site::Frame frame = site::frame_of(s, site.sketch_up_azimuth_deg);
        std::vector<Point2> plan = seen_from_above(frame, s.outline);
        if (house.plan.empty() && roof_plans.empty()) house.u = unit({frame.right.x_m, frame.right.y_m});
        if (s.tilt_deg > 10.0)
            for (const Point2 corner : s.outline)
                eaves_m = std::min(eaves_m, site::to_space(frame, corner).z_m);
        roof_plans.push_back(plan);
        house.roofs.push_back({frame, std::move(plan)});
    }
    if (house.plan.empty()) {
        house.plan = std::move(roof_plans);
        house.from_roofs = true;
        house.wall_in_m = assumed_overhang_m;
        if (!house.plan.empty() && !house.covers(below)) house.plan.clear();  // the cylinder stands elsewhere
    }
    house.v = {-house.u.y_m, house.u.x_m};

    std::vector<double> floors;
    if (to.z_m < 0.0 && ceiling_m < 1.0) floors.push_back(0.0);
    for (const Room& room : site.rooms)
        if (site::contains(room.outline, below)) floors.push_back(room.from_z_m);
    if (eaves_m < no_roof_m) floors.push_back(eaves_m);  // of the loft; assumed to lie where the roof begins
    std::sort(floors.begin(), floors.end());
    for (const double floor : floors)
        if (house.floors_m.empty() || floor - house.floors_m.back() > floors_apart_m) house.floors_m.push_back(floor);

    for (const Room& room : site.rooms) {
        if (!room.no_pipe || room.outline.size() < 3) continue;
        const bool own = site::contains(room.outline, below) && to.z_m >= room.from_z_m && to.z_m <= room.to_z_m;
        if (own) continue;  // the cylinder stands in it
        house.closed.push_back({room.outline, room.from_z_m, room.to_z_m});
        ++house.rooms_closed;
    }
    for (const Obstacle& o : site.obstacles) {
        std::vector<Point2> plan = plan_of(o, clear_of_m);
        const bool in_house = std::any_of(plan.begin(), plan.end(), [&house](Point2 p) { return house.covers(p); });
        if (in_house) house.closed.push_back({std::move(plan), o.base.z_m, o.base.z_m + o.height_m + clear_of_m});
    }
    return house;
}

}  // namespace wg::pipework::suggesting
