#include "core/roof/parts.h"

#include <cmath>

#include "core/quantity/angle.h"
#include "core/quantity/constants.h"
#include "core/quantity/outline.h"
#include "core/site/geometry.h"

namespace wg::roof {
namespace {

constexpr double parallel = 1e-9;

struct Direction {
    Point2 along, outward;
    double length_m = 0.0;
};

Direction direction_of(const Point2& from, const Point2& to) {
    Direction d;
    d.length_m = std::hypot(to.x_m - from.x_m, to.y_m - from.y_m);
    d.along = {(to.x_m - from.x_m) / d.length_m, (to.y_m - from.y_m) / d.length_m};
    d.outward = {d.along.y_m, -d.along.x_m};
    return d;
}

/// True bearing of a direction in the sketch.
double bearing_deg(const Point2& direction, double up_azimuth_deg) {
    return wrap_360(up_azimuth_deg + degrees(std::atan2(direction.x_m, direction.y_m)));
}

std::string edge_words(std::size_t edge) {
    return " over edge " + std::to_string(edge + 1);
}

/// Fills the outline from points in space, with the first as origin.
void set_outline(Surface& surface, const std::vector<Point3>& points, double up_azimuth_deg) {
    surface.origin = points.front();
    const site::Frame frame = site::frame_of(surface, up_azimuth_deg);
    surface.outline.clear();
    for (const Point3& p : points)
        surface.outline.push_back(site::to_plane(frame, p));
}

}  // namespace

Result<std::vector<Point2>> moved_out(const std::vector<Point2>& footprint, const std::vector<double>& past_m) {
    const std::size_t count = footprint.size();
    std::vector<Direction> edges;
    for (std::size_t i = 0; i < count; ++i)
        edges.push_back(direction_of(footprint[i], footprint[(i + 1) % count]));
    std::vector<Point2> out;
    for (std::size_t i = 0; i < count; ++i) {
        const std::size_t k = (i + count - 1) % count;
        const Point2& u = edges[k].outward;
        const Point2& v = edges[i].outward;
        const double turn = u.x_m * v.y_m - u.y_m * v.x_m;
        Point2 p = footprint[i];
        if (std::abs(turn) < parallel) {
            // In line: both move alike, or the corner would have to be two.
            const double past = std::max(past_m[k], past_m[i]);
            p = {p.x_m + v.x_m * past, p.y_m + v.y_m * past};
        } else {
            const double a = past_m[k];
            const double b = past_m[i];
            p = {p.x_m + (a * v.y_m - b * u.y_m) / turn, p.y_m + (b * u.x_m - a * v.x_m) / turn};
        }
        out.push_back(p);
    }
    bool turned = outline_fault(out).has_value();
    for (std::size_t i = 0; !turned && i < count; ++i) {
        const Direction moved = direction_of(out[i], out[(i + 1) % count]);
        turned = moved.along.x_m * edges[i].along.x_m + moved.along.y_m * edges[i].along.y_m < 0.0;
    }
    if (turned)
        return Problem{"building", "the overhang or parapet is larger than a side of the footprint allows",
                       "Make it smaller, or leave the small corner out of the footprint"};
    return out;
}

Part roof_plane(const Face& face, const HouseForm& building, RoofForm form, double base_m, double ridge_m,
                double up_azimuth_deg) {
    Part part{PartKind::roof_plane, face.edge, {}};
    Surface& s = part.surface;
    s.label = "Roof" + edge_words(face.edge);
    s.kind = SurfaceKind::roof;
    s.roof_form = form;
    s.covering = building.covering;
    s.tilt_deg = building.pitch_deg;
    s.azimuth_deg = bearing_deg(direction_of(face.outline[0].plan, face.outline[1].plan).outward, up_azimuth_deg);
    s.ridge_height_m = ridge_m;
    std::vector<Point3> points;
    for (const RoofPoint& p : face.outline)
        points.push_back({p.plan.x_m, p.plan.y_m, base_m + p.height_m});
    set_outline(s, points, up_azimuth_deg);
    return part;
}

Part level_roof(const Face& face, const HouseForm& building, double ridge_m, double up_azimuth_deg) {
    Part part = roof_plane(face, building, RoofForm::flat, building.eaves_m, ridge_m, up_azimuth_deg);
    part.surface.label = "Flat roof";
    part.surface.tilt_deg = 0.0;
    std::vector<Point3> points;
    for (const RoofPoint& p : face.outline)
        points.push_back({p.plan.x_m, p.plan.y_m, building.eaves_m});
    set_outline(part.surface, points, up_azimuth_deg);
    return part;
}

Part wall(std::size_t edge, const RoofPoint& from, const RoofPoint& to, const std::vector<RoofPoint>& top,
          const HouseForm& building, double ridge_m, double up_azimuth_deg) {
    Part part{PartKind::wall, edge, {}};
    Surface& s = part.surface;
    s.label = "Wall" + edge_words(edge);
    s.kind = SurfaceKind::wall;
    s.roof_form = RoofForm::not_a_roof;
    s.covering = building.wall_covering;
    s.tilt_deg = 90.0;
    s.azimuth_deg = bearing_deg(direction_of(from.plan, to.plan).outward, up_azimuth_deg);
    s.ridge_height_m = ridge_m;
    std::vector<Point3> points{{from.plan.x_m, from.plan.y_m, 0.0},
                               {to.plan.x_m, to.plan.y_m, 0.0},
                               {to.plan.x_m, to.plan.y_m, building.eaves_m + to.height_m}};
    for (const RoofPoint& p : top)
        points.push_back({p.plan.x_m, p.plan.y_m, building.eaves_m + p.height_m});
    points.push_back({from.plan.x_m, from.plan.y_m, building.eaves_m + from.height_m});
    set_outline(s, points, up_azimuth_deg);
    return part;
}

Obstacle parapet(const Point2& from, const Point2& to, const HouseForm& building) {
    const Direction d = direction_of(from, to);
    Obstacle o;
    o.label = "Parapet";
    o.kind = ObstacleKind::box;
    const double in_m = 0.5 * building.parapet_width_m;
    o.base = {0.5 * (from.x_m + to.x_m) - d.outward.x_m * in_m, 0.5 * (from.y_m + to.y_m) - d.outward.y_m * in_m,
              building.eaves_m};
    o.width_m = d.length_m;
    o.depth_m = building.parapet_width_m;
    o.height_m = building.parapet_m;
    o.turn_deg = degrees(std::atan2(d.along.y_m, d.along.x_m));
    return o;
}

}  // namespace wg::roof
