#include "core/site/surface_run.h"

#include <cmath>

#include "core/site/geometry.h"
#include "core/site/vec.h"

namespace wg::site {
namespace {

struct Seen {
    Point2 in_plane;
    double off_m = 0.0;  ///< in front of the plane; negative behind
};
Seen seen_from_front(const Frame& frame, Point3 p) {
    return {to_plane(frame, p), dot(p - frame.origin, frame.normal)};
}

bool lies_on(const Surface& surface, const Seen& p) {
    return std::abs(p.off_m) <= on_surface_m &&
           (contains(surface.outline, p.in_plane) || edge_distance_m(surface.outline, p.in_plane) <= on_surface_m);
}

}  // namespace

std::optional<SurfaceRun> run_on_surface(const Site& site, const Surface& surface, const Choice& choice,
                                         const CollectorModel& model, const Point3& block) {
    SurfaceRun out;
    const Frame frame = frame_of(surface, site.sketch_up_azimuth_deg);
    Point3 start{};
    int count = 0;
    for (const Placement& one : choice.placements) {
        const Surface* on = find_surface(site, one.surface_id);
        if (on == nullptr) continue;
        const PlacedCollector placed = place(*on, site.sketch_up_azimuth_deg, one, model);
        start = start + placed.connection_in_space;
        ++count;
        if (on->id == surface.id) {
            out.connections.push_back((placed.liquid_connection + placed.suction_connection) * 0.5);
        }
    }
    if (out.connections.empty() || surface.outline.size() < 3) return std::nullopt;
    start = start * (1.0 / count);

    Point3 last = start;
    const auto leaves_to = [&](Point3 next) {
        const Seen seen = seen_from_front(frame, next);
        out.towards = seen.in_plane;
        out.behind = seen.off_m < -touch_m;
        out.next_m = norm(next - last);
    };
    const Seen first = seen_from_front(frame, start);
    if (!lies_on(surface, first) && count > static_cast<int>(out.connections.size())) {
        last = to_space(frame, out.connections.front());
        leaves_to(start);
        return out;
    }
    out.line.push_back(first.in_plane);
    for (const RoutePoint& point : choice.route) {
        const Seen seen = seen_from_front(frame, point.position);
        if (out.passage || !lies_on(surface, seen)) {
            out.next = point.kind;
            leaves_to(point.position);
            return out;
        }
        out.lengths_m.push_back(norm(point.position - last));
        out.line.push_back(seen.in_plane);
        out.ends_as = point.kind;
        out.passage = point.kind != RoutePointKind::free;
        last = point.position;
    }
    out.to_block = true;
    leaves_to(block);
    return out;
}

}  // namespace wg::site
