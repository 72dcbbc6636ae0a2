#include <algorithm>
#include <cmath>
#include <limits>

#include "core/site/geometry.h"
#include "ui/drawing/plan_painter.h"

namespace wg::ui {
namespace {

constexpr int circle_corners = 24;
constexpr double spot_radius_m = 0.35;  ///< about half a cylinder's diameter: the hand aims at the symbol

double to_segment_m(Point2 p, Point2 a, Point2 b) {
    const double dx = b.x_m - a.x_m;
    const double dy = b.y_m - a.y_m;
    const double length2 = dx * dx + dy * dy;
    const double t =
        length2 > 0.0 ? std::clamp(((p.x_m - a.x_m) * dx + (p.y_m - a.y_m) * dy) / length2, 0.0, 1.0) : 0.0;
    return std::hypot(p.x_m - a.x_m - t * dx, p.y_m - a.y_m - t * dy);
}

double to_outline_m(Point2 p, const std::vector<Point2>& outline) {
    double nearest = std::numeric_limits<double>::infinity();
    for (std::size_t i = 0; i < outline.size(); ++i) {
        nearest = std::min(nearest, to_segment_m(p, outline[i], outline[(i + 1) % outline.size()]));
    }
    return nearest;
}

/// Height over ground that decides which of two surfaces lies on top in plan.
double top_m(const Surface& surface, double up_azimuth_deg) {
    const site::Frame frame = site::frame_of(surface, up_azimuth_deg);
    double top = -std::numeric_limits<double>::infinity();
    for (Point2 corner : surface.outline)
        top = std::max(top, site::to_space(frame, corner).z_m);
    return top;
}

}  // namespace

std::vector<Point2> outline_in_plan(const Surface& surface, double sketch_up_azimuth_deg) {
    const site::Frame frame = site::frame_of(surface, sketch_up_azimuth_deg);
    std::vector<Point2> seen;
    seen.reserve(surface.outline.size());
    for (Point2 corner : surface.outline) {
        const Point3 at = site::to_space(frame, corner);
        seen.push_back({at.x_m, at.y_m});
    }
    return seen;
}

std::vector<Point2> outline_in_plan(const Obstacle& obstacle) {
    std::vector<Point2> seen;
    switch (obstacle.kind) {
        case ObstacleKind::box: {
            const double turn = obstacle.turn_deg * M_PI / 180.0;
            const double c = std::cos(turn);
            const double s = std::sin(turn);
            for (const auto& [fx, fy] : {std::pair{-0.5, -0.5}, {0.5, -0.5}, {0.5, 0.5}, {-0.5, 0.5}}) {
                const double x = fx * obstacle.width_m;
                const double y = fy * obstacle.depth_m;
                seen.push_back({obstacle.base.x_m + c * x - s * y, obstacle.base.y_m + s * x + c * y});
            }
            return seen;
        }
        case ObstacleKind::prism: return obstacle.outline;
        case ObstacleKind::post:
        case ObstacleKind::tree: break;
    }
    for (int i = 0; i < circle_corners; ++i) {
        const double angle = 2.0 * M_PI * i / circle_corners;
        seen.push_back({obstacle.base.x_m + obstacle.radius_m * std::cos(angle),
                        obstacle.base.y_m + obstacle.radius_m * std::sin(angle)});
    }
    return seen;
}

std::string element_at(const Site& site, Point2 sketch_point, double reach_m) {
    for (auto spot = site.spots.rbegin(); spot != site.spots.rend(); ++spot) {
        if (std::hypot(spot->position.x_m - sketch_point.x_m, spot->position.y_m - sketch_point.y_m) <=
            std::max(reach_m, spot_radius_m)) {
            return spot->id;
        }
    }
    // The smallest obstacle under the pointer wins, so that a chimney in front of a tree can be had.
    const Obstacle* best = nullptr;
    double best_area = std::numeric_limits<double>::infinity();
    for (const Obstacle& obstacle : site.obstacles) {
        const std::vector<Point2> seen = outline_in_plan(obstacle);
        if (seen.size() < 3) continue;
        if (!site::contains(seen, sketch_point) && to_outline_m(sketch_point, seen) > reach_m) continue;
        const double area = std::abs(site::signed_area_m2(seen));
        if (area < best_area) {
            best = &obstacle;
            best_area = area;
        }
    }
    if (best != nullptr) return best->id;
    // By its edge only: the roof above it is clicked more often.
    for (auto room = site.rooms.rbegin(); room != site.rooms.rend(); ++room)
        if (room->outline.size() >= 3 && to_outline_m(sketch_point, room->outline) <= reach_m) return room->id;
    const Surface* top = nullptr;
    double top_height = -std::numeric_limits<double>::infinity();
    for (const Surface& surface : site.surfaces) {
        const std::vector<Point2> seen = outline_in_plan(surface, site.sketch_up_azimuth_deg);
        if (seen.size() < 3) continue;
        const bool upright = std::abs(site::signed_area_m2(seen)) < 0.02;
        const bool near = to_outline_m(sketch_point, seen) <= reach_m;
        if (!(upright ? near : near || site::contains(seen, sketch_point))) continue;
        // A wall shows as a line only: it wins over the areas beside it.
        const double height = upright ? std::numeric_limits<double>::max() : top_m(surface, site.sketch_up_azimuth_deg);
        if (top == nullptr || height > top_height) {
            top = &surface;
            top_height = height;
        }
    }
    return top != nullptr ? top->id : std::string();
}

RouteLine route_line(const Job& job, const Choice& choice, const CollectorModel* model) {
    RouteLine line;
    if (model != nullptr && !choice.placements.empty()) {
        if (const Surface* surface = find_surface(job.site, choice.placements.front().surface_id)) {
            line.points.push_back(
                site::place(*surface, job.site.sketch_up_azimuth_deg, choice.placements.front(), *model)
                    .connection_in_space);
        }
    }
    line.first_bend = line.points.size();
    for (const RoutePoint& point : choice.route)
        line.points.push_back(point.position);
    if (const CylinderSpot* spot = find_spot(job.site, choice.spot_id)) line.points.push_back(spot->position);
    return line;
}

int route_point_at(const Choice& choice, Point2 sketch_point, double reach_m) {
    int nearest = -1;
    double best = reach_m;
    for (std::size_t i = 0; i < choice.route.size(); ++i) {
        const Point3 at = choice.route[i].position;
        const double distance = std::hypot(at.x_m - sketch_point.x_m, at.y_m - sketch_point.y_m);
        if (distance <= best) {
            best = distance;
            nearest = static_cast<int>(i);
        }
    }
    return nearest;
}

}  // namespace wg::ui
