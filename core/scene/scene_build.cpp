// From the job's site and choice to polygons, bodies, lines and casters.
#include <algorithm>
#include <cmath>
#include <limits>

#include "core/quantity/constants.h"
#include "core/scene/convex.h"
#include "core/scene/scene.h"
#include "core/scene/shapes.h"
#include "core/site/occluders.h"
#include "core/site/vec.h"

namespace wg::scene {

using site::operator+, site::operator-, site::operator*;
using site::cross, site::dot, site::norm;

namespace {

bool within(double v) {
    return std::abs(v) <= site::Occluder::most_m;  // false for NaN
}
bool within(Point3 p) {
    return within(p.x_m) && within(p.y_m) && within(p.z_m);
}
bool within(const std::vector<Point2>& outline) {
    return std::all_of(outline.begin(), outline.end(), [](Point2 p) { return within(p.x_m) && within(p.y_m); });
}

class Builder {
   public:
    Builder(const Site& site, const Choice* choice, const CollectorModel* collector, const CylinderModel* cylinder)
        : site_(site), choice_(choice), collector_(collector), cylinder_(cylinder) {
        scene_.sketch_up_azimuth_deg = site.sketch_up_azimuth_deg;
        thing(Kind::ground, {}, {});
    }
    Scene build() {
        for (const Surface& surface : site_.surfaces)
            add_surface(surface);
        for (const Obstacle& obstacle : site_.obstacles)
            add_obstacle(obstacle);
        for (const Surface& surface : site_.surfaces)
            add_open_corners(surface);
        add_choice();
        finish();
        return std::move(scene_);
    }

   private:
    int thing(Kind kind, const std::string& id, const std::string& label) {
        Thing one;
        one.kind = kind;
        one.id = id;
        one.label = label;
        scene_.things.push_back(std::move(one));
        return static_cast<int>(scene_.things.size()) - 1;
    }
    Thing& at(int index) { return scene_.things[static_cast<std::size_t>(index)]; }

    void add_sheet(const site::Frame& frame, const std::vector<Point2>& outline, int owner, int layer, bool casts);
    void add_surface(const Surface& surface);
    void add_obstacle(const Obstacle& obstacle);
    void add_prism(const Obstacle& obstacle, int owner);
    void add_tree(const Obstacle& obstacle, int owner);
    void add_open_corners(const Surface& surface);
    void add_choice();
    void add_collector(const Placement& placement);
    void add_cylinder(const CylinderSpot& spot);
    void add_run();
    void finish();

    const Site& site_;
    const Choice* choice_;
    const CollectorModel* collector_;
    const CylinderModel* cylinder_;
    Scene scene_;
};

void Builder::add_sheet(const site::Frame& frame, const std::vector<Point2>& outline, int owner, int layer,
                        bool casts) {
    for (const std::vector<std::size_t>& piece : convex_pieces(outline)) {
        Polygon polygon;
        polygon.thing = owner;
        polygon.layer = layer;
        polygon.two_sided = layer == 0;
        polygon.normal = frame.normal;
        for (std::size_t i = 0; i < piece.size(); ++i) {
            const std::size_t from = piece[i], to = piece[(i + 1) % piece.size()];
            polygon.corners.push_back(site::to_space(frame, outline[from]));
            const std::size_t n = outline.size();
            polygon.drawn.push_back((from + 1) % n == to || (to + 1) % n == from ? 1 : 0);
        }
        if (casts) scene_.casters.push_back(sheet_caster(polygon.corners, owner));
        scene_.polygons.push_back(std::move(polygon));
    }
}

void Builder::add_surface(const Surface& surface) {
    if (surface.outline.size() < 3 || !within(surface.outline) || !within(surface.origin) ||
        !within(surface.tilt_deg) || !within(surface.azimuth_deg))
        return;
    const site::Frame frame = site::frame_of(surface, site_.sketch_up_azimuth_deg);
    const int owner = thing(Kind::surface, surface.id, surface.label);
    at(owner).surface_kind = surface.kind;
    const site::Bounds b = site::bounds_of(surface.outline);
    at(owner).anchor = site::to_space(frame, {0.5 * (b.min_x_m + b.max_x_m), 0.5 * (b.min_y_m + b.max_y_m)});
    add_sheet(frame, surface.outline, owner, 0, true);
    for (const KeepOut& zone : surface.keep_outs) {
        if (!within(zone.outline)) continue;
        const int part = thing(Kind::keep_out, surface.id, zone.label);
        at(part).surface_kind = surface.kind;
        add_sheet(frame, zone.outline, part, 1, false);
    }
}

void Builder::add_prism(const Obstacle& obstacle, int owner) {
    const double low = obstacle.base.z_m, high = low + obstacle.height_m;
    for (const std::vector<std::size_t>& piece : convex_pieces(obstacle.outline)) {
        std::vector<Point2> outline;
        std::vector<char> drawn;
        const std::size_t n = obstacle.outline.size();
        for (std::size_t i = 0; i < piece.size(); ++i) {
            const std::size_t from = piece[i], to = piece[(i + 1) % piece.size()];
            outline.push_back(obstacle.outline[from]);
            drawn.push_back((from + 1) % n == to || (to + 1) % n == from ? 1 : 0);
        }
        add_column(scene_.polygons, outline, drawn, low, high, owner);
        scene_.casters.push_back(column_caster(outline, low, high, owner));
    }
}

void Builder::add_tree(const Obstacle& obstacle, int owner) {
    const double crown_low = std::clamp(obstacle.crown_base_m, 0.0, obstacle.height_m);
    const Point2 middle{obstacle.base.x_m, obstacle.base.y_m};
    const double half_height = 0.5 * (obstacle.height_m - crown_low);
    if (crown_low > site::touch_m) {
        scene_.bodies.push_back(upright_body(middle, site::trunk_share * obstacle.radius_m, obstacle.base.z_m,
                                             obstacle.base.z_m + crown_low, owner));
        scene_.casters.push_back(upright_caster(middle, site::trunk_share * obstacle.radius_m, obstacle.base.z_m,
                                                obstacle.base.z_m + crown_low, owner));
    }
    if (!(half_height > site::touch_m)) return;
    const int crown = thing(Kind::crown, obstacle.id, {});
    const Point3 crown_middle{middle.x_m, middle.y_m, obstacle.base.z_m + crown_low + half_height};
    scene_.bodies.push_back(crown_body(crown_middle, obstacle.radius_m, half_height, crown));
    Caster caster = crown_caster(crown_middle, obstacle.radius_m, half_height, crown);
    caster.crown = true;
    caster.transmittance_leaf = std::clamp(obstacle.transmittance_leaf, 0.0, 1.0);
    caster.transmittance_bare = std::clamp(obstacle.transmittance_bare, 0.0, 1.0);
    caster.leaf_from_month = obstacle.leaf_from_month;
    caster.leaf_to_month = obstacle.leaf_to_month;
    scene_.casters.push_back(std::move(caster));
}

void Builder::add_obstacle(const Obstacle& obstacle) {
    if (!within(obstacle.base) || !within(obstacle.height_m) || !(obstacle.height_m > site::touch_m)) return;
    const bool is_round = obstacle.kind == ObstacleKind::post || obstacle.kind == ObstacleKind::tree;
    if (is_round && (!within(obstacle.radius_m) || !(obstacle.radius_m > site::touch_m))) return;
    if (obstacle.kind == ObstacleKind::tree &&
        (!within(obstacle.transmittance_leaf) || !within(obstacle.transmittance_bare)))
        return;
    const double low = obstacle.base.z_m, high = low + obstacle.height_m;
    const int owner = thing(Kind::obstacle, obstacle.id, obstacle.label);
    at(owner).anchor = {obstacle.base.x_m, obstacle.base.y_m, high};
    switch (obstacle.kind) {
        case ObstacleKind::box: {
            if (!within(obstacle.turn_deg) || !(obstacle.width_m > site::touch_m) || !within(obstacle.width_m) ||
                !(obstacle.depth_m > site::touch_m) || !within(obstacle.depth_m))
                return;
            const double c = std::cos(radians(obstacle.turn_deg)), s = std::sin(radians(obstacle.turn_deg));
            std::vector<Point2> outline;
            for (const auto& [x, y] : {std::pair{-0.5, -0.5}, {0.5, -0.5}, {0.5, 0.5}, {-0.5, 0.5}})
                outline.push_back(Point2{obstacle.base.x_m, obstacle.base.y_m} +
                                  site::turned({x * obstacle.width_m, y * obstacle.depth_m}, c, s));
            add_column(scene_.polygons, outline, {1, 1, 1, 1}, low, high, owner);
            scene_.casters.push_back(column_caster(outline, low, high, owner));
            return;
        }
        case ObstacleKind::prism: {
            if (obstacle.outline.size() < 3 || !within(obstacle.outline)) return;
            const site::Bounds b = site::bounds_of(obstacle.outline);
            at(owner).anchor = {0.5 * (b.min_x_m + b.max_x_m), 0.5 * (b.min_y_m + b.max_y_m), high};
            add_prism(obstacle, owner);
            return;
        }
        case ObstacleKind::post:
            scene_.bodies.push_back(
                upright_body({obstacle.base.x_m, obstacle.base.y_m}, obstacle.radius_m, low, high, owner));
            scene_.casters.push_back(
                upright_caster({obstacle.base.x_m, obstacle.base.y_m}, obstacle.radius_m, low, high, owner));
            return;
        case ObstacleKind::tree: add_tree(obstacle, owner); return;
    }
}

/// Lines from the low corners of a roof down to the ground where no wall is surveyed, so that it does not float.
void Builder::add_open_corners(const Surface& surface) {
    constexpr double near_m = 1.0, upright_deg = 80.0, level_m = 0.05, least_m = 0.5;
    if (surface.kind != SurfaceKind::roof || surface.outline.size() < 3 || surface.tilt_deg > upright_deg) return;
    const site::Frame frame = site::frame_of(surface, site_.sketch_up_azimuth_deg);
    const site::Bounds b = site::bounds_of(surface.outline);
    for (const Point2 corner : surface.outline) {
        if (corner.y_m > b.min_y_m + level_m) continue;
        const Point3 top = site::to_space(frame, corner);
        if (!within(top) || top.z_m < least_m) continue;
        const bool walled = std::any_of(site_.surfaces.begin(), site_.surfaces.end(), [&](const Surface& wall) {
            if (wall.tilt_deg <= upright_deg || wall.outline.size() < 3) return false;
            const site::Frame plane = site::frame_of(wall, site_.sketch_up_azimuth_deg);
            if (std::abs(dot(top - plane.origin, plane.normal)) > near_m) return false;
            const double along = dot(top - plane.origin, plane.right);
            const site::Bounds w = site::bounds_of(wall.outline);
            return along > w.min_x_m - near_m && along < w.max_x_m + near_m;
        });
        if (walled) continue;
        const int owner = thing(Kind::post_line, surface.id, {});
        scene_.lines.push_back({top, {top.x_m, top.y_m, 0.0}, owner});
    }
}

void Builder::add_collector(const Placement& placement) {
    const Surface* surface = find_surface(site_, placement.surface_id);
    if (surface == nullptr) return;
    const site::PlacedCollector placed = site::place(*surface, site_.sketch_up_azimuth_deg, placement, *collector_);
    if (placed.corners.size() != 4 ||
        !std::all_of(placed.corners.begin(), placed.corners.end(), [](Point3 p) { return within(p); }))
        return;
    const Point3 across = cross(placed.corners[1] - placed.corners[0], placed.corners[3] - placed.corners[0]);
    if (!(norm(across) > 0.0)) return;
    const Point3 normal = across * (1.0 / norm(across));
    const int owner = thing(Kind::collector, placement.id, placement.label);
    at(owner).anchor = (placed.corners[0] + placed.corners[2]) * 0.5;
    // A plate that lies level with its surface has that plane behind it, as site::Occluder::seen_by says.
    const site::Frame base = site::frame_of(*surface, site_.sketch_up_azimuth_deg);
    if (surface->tilt_deg == 0.0 || dot(base.normal, normal) > 1.0 - 1e-9) {
        for (std::size_t i = 0; i < scene_.things.size(); ++i) {
            if (scene_.things[i].kind == Kind::surface && scene_.things[i].id == surface->id)
                at(owner).without_shadow_of = static_cast<int>(i);
        }
    }
    scene_.collectors.push_back(placed.corners);
    scene_.collector_ids.push_back(placement.id);
    const auto face = [&](std::vector<Point3> corners) {
        Polygon polygon;
        const Point3 n = cross(corners[1] - corners[0], corners[3] - corners[0]);
        polygon.normal = n * (1.0 / norm(n));
        polygon.corners = std::move(corners);
        polygon.drawn.assign(4, 1);
        polygon.thing = owner;
        scene_.polygons.push_back(std::move(polygon));
    };
    std::vector<Point3> back;
    for (const Point3 p : placed.corners)
        back.push_back(p - normal * plate_drawn_m);
    face(placed.corners);
    face({back[3], back[2], back[1], back[0]});
    for (std::size_t i = 0; i < 4; ++i) {
        const std::size_t k = (i + 1) % 4;
        face({back[i], back[k], placed.corners[k], placed.corners[i]});
    }
    if (!placement.frame_tilt_deg) return;
    const int stand = thing(Kind::stand, placement.id, {});
    for (const Point3 top : back) {
        const Point3 foot = top - base.normal * dot(top - base.origin, base.normal);
        scene_.lines.push_back({top, foot, stand});
    }
}

void Builder::add_cylinder(const CylinderSpot& spot) {
    const double radius = cylinder_ != nullptr ? 0.5 * cylinder_->diameter_m : 0.3;
    const double height = cylinder_ != nullptr ? cylinder_->height_m : 1.7;
    if (!within(spot.position) || !within(radius) || !(radius > 0.0) || !within(height) || !(height > 0.0)) return;
    const int owner = thing(Kind::cylinder, spot.id, spot.label);
    const Point2 middle{spot.position.x_m, spot.position.y_m};
    const double low = spot.position.z_m, high = low + height;
    at(owner).anchor = {middle.x_m, middle.y_m, high};
    scene_.cylinder = {ring(middle, radius, low), ring(middle, radius, high)};
    // What stands in a cellar cannot be seen from above the ground.
    if (low >= 0.0) scene_.bodies.push_back(upright_body(middle, radius, low, high, owner));
}

void Builder::add_run() {
    std::vector<Point3>& run = scene_.run;
    if (collector_ != nullptr && !choice_->placements.empty()) {
        const Placement& first = choice_->placements.front();
        if (const Surface* surface = find_surface(site_, first.surface_id))
            run.push_back(site::place(*surface, site_.sketch_up_azimuth_deg, first, *collector_).connection_in_space);
    }
    for (const RoutePoint& bend : choice_->route)
        run.push_back(bend.position);
    if (const CylinderSpot* spot = find_spot(site_, choice_->spot_id)) run.push_back(spot->position);
    std::erase_if(run, [](Point3 p) { return !within(p); });
    if (run.size() < 2) return;
    const int owner = thing(Kind::route, {}, {});
    for (std::size_t i = 1; i < run.size(); ++i) {
        Point3 a = run[i - 1], b = run[i];
        if (a.z_m < 0.0 && b.z_m < 0.0) continue;
        if (a.z_m * b.z_m < 0.0) {
            const Point3 through = a + (b - a) * (a.z_m / (a.z_m - b.z_m));
            (a.z_m < 0.0 ? a : b) = through;
        }
        if (norm(b - a) > site::touch_m) scene_.lines.push_back({a, b, owner});
    }
}

void Builder::add_choice() {
    if (choice_ == nullptr) return;
    if (collector_ != nullptr) {
        for (const Placement& placement : choice_->placements)
            add_collector(placement);
    }
    if (const CylinderSpot* spot = find_spot(site_, choice_->spot_id)) add_cylinder(*spot);
    add_run();
}

/// Upright box round points.
struct Box {
    static constexpr double far = std::numeric_limits<double>::infinity();
    Point3 low{far, far, far}, high{-far, -far, -far};
    void take(const std::vector<Point3>& points) {
        for (const Point3 p : points) {
            low = {std::min(low.x_m, p.x_m), std::min(low.y_m, p.y_m), std::min(low.z_m, p.z_m)};
            high = {std::max(high.x_m, p.x_m), std::max(high.y_m, p.y_m), std::max(high.z_m, p.z_m)};
        }
    }
    [[nodiscard]] bool empty() const { return !(low.x_m <= high.x_m); }
};

void Builder::finish() {
    Box all, house;
    for (const Polygon& polygon : scene_.polygons) {
        all.take(polygon.corners);
        if (at(polygon.thing).kind == Kind::surface) house.take(polygon.corners);
    }
    for (const Body& body : scene_.bodies) {
        for (const std::vector<Point3>& part : body.skin)
            all.take(part);
    }
    if (all.empty()) all.take({{-5, -5, 0}, {5, 5, 0}});
    if (house.empty()) house = all;
    scene_.middle = (house.low + house.high) * 0.5;
    const Point3 low = all.low, high = all.high;
    const double margin = 2.0 + 0.15 * std::max(high.x_m - low.x_m, high.y_m - low.y_m);
    scene_.ground.corners = {{low.x_m - margin, low.y_m - margin, 0.0},
                             {high.x_m + margin, low.y_m - margin, 0.0},
                             {high.x_m + margin, high.y_m + margin, 0.0},
                             {low.x_m - margin, high.y_m + margin, 0.0}};
    scene_.ground.drawn.assign(4, 1);
    scene_.ground.normal = {0, 0, 1};
}

}  // namespace

double Caster::passes(int month) const noexcept {
    if (!crown) return 0.0;
    const bool in_leaf = leaf_from_month <= leaf_to_month ? month >= leaf_from_month && month <= leaf_to_month
                                                          : month >= leaf_from_month || month <= leaf_to_month;
    return in_leaf ? transmittance_leaf : transmittance_bare;
}

Scene scene_of(const Site& site, const Choice* choice, const CollectorModel* collector, const CylinderModel* cylinder) {
    return Builder(site, choice, collector, cylinder).build();
}

}  // namespace wg::scene
