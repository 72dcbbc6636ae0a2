#include "core/pipework/legs.h"

#include <algorithm>
#include <cmath>

#include "core/quantity/constants.h"

namespace wg::pipework {
namespace {

constexpr double shortest_leg_m = 1e-3;
constexpr double sharpest_bend_deg = 170.0;  // a run that turns back on itself: its tangents would have no length

Point3 minus(Point3 a, Point3 b) noexcept {
    return {a.x_m - b.x_m, a.y_m - b.y_m, a.z_m - b.z_m};
}
double dot(Point3 a, Point3 b) noexcept {
    return a.x_m * b.x_m + a.y_m * b.y_m + a.z_m * b.z_m;
}

double turn_between_deg(const Leg& a, const Leg& b) noexcept {
    const double cosine = dot(minus(a.to, a.from), minus(b.to, b.from)) / (a.length_m * b.length_m);
    return degrees(std::acos(std::clamp(cosine, -1.0, 1.0)));
}

double tangent_m(double turn_deg, double od_mm) noexcept {
    if (turn_deg <= bend_from_deg) return 0.0;
    return bend_diameters * od_mm * 1e-3 * std::tan(0.5 * radians(std::min(turn_deg, sharpest_bend_deg)));
}

}  // namespace

std::vector<Leg> legs_of(const Point3& collector, const std::vector<RoutePoint>& route, const Point3& block) {
    std::vector<Leg> legs;
    legs.reserve(route.size() + 1);
    Point3 at = collector;
    bool outdoors = true;
    const auto go = [&](Point3 to, RoutePointKind kind) {
        const Point3 d = minus(to, at);
        const double length = std::sqrt(dot(d, d));
        if (length < shortest_leg_m) {
            if (!legs.empty() && kind != RoutePointKind::free) legs.back().ends_at = kind;
        } else {
            legs.push_back({at, to, length, kind, 0.0, outdoors});
            at = to;
        }
        if (kind == RoutePointKind::roof_passage || kind == RoutePointKind::wall_passage) outdoors = !outdoors;
    };
    for (const RoutePoint& p : route)
        go(p.position, p.kind);
    go(block, RoutePointKind::free);
    for (std::size_t i = 1; i < legs.size(); ++i)
        legs[i - 1].turn_deg = turn_between_deg(legs[i - 1], legs[i]);
    return legs;
}

double bend_room_m(const std::vector<Leg>& legs, std::size_t leg, double od_mm) noexcept {
    const double before_m = leg > 0 ? tangent_m(legs[leg - 1].turn_deg, od_mm) : 0.0;
    return before_m + tangent_m(legs[leg].turn_deg, od_mm);
}

}  // namespace wg::pipework
