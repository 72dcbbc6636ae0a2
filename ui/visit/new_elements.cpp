#include "ui/visit/new_elements.h"

#include <algorithm>
#include <cmath>

#include "core/site/geometry.h"
#include "core/site/standing.h"

namespace wg::ui {
namespace {

struct Usual {
    double width_m, height_m, lower_edge_m, tilt_deg;
    Covering covering;
    RoofForm form;
};

Usual usual(SurfaceKind kind) {
    switch (kind) {
        case SurfaceKind::roof: return {9.0, 5.0, 3.0, 38.0, Covering::clay_tile, RoofForm::duo_pitch};
        case SurfaceKind::wall: return {8.0, 5.0, 0.0, 90.0, Covering::render, RoofForm::not_a_roof};
        case SurfaceKind::terrace: return {5.0, 4.0, 0.1, 0.0, Covering::paving, RoofForm::not_a_roof};
        case SurfaceKind::ground: return {8.0, 6.0, 0.0, 0.0, Covering::soil, RoofForm::not_a_roof};
    }
    return {5.0, 4.0, 0.0, 0.0, Covering::paving, RoofForm::not_a_roof};
}

}  // namespace

Surface new_surface(SurfaceKind kind, Point2 middle, const Site& site) {
    const Usual is = usual(kind);
    Surface surface;
    surface.kind = kind;
    surface.roof_form = is.form;
    surface.covering = is.covering;
    surface.tilt_deg = is.tilt_deg;
    surface.azimuth_deg = site.location.latitude_deg < 0.0 ? 0.0 : 180.0;
    surface.outline = {{0.0, 0.0}, {is.width_m, 0.0}, {is.width_m, is.height_m}, {0.0, is.height_m}};
    surface.origin = {0.0, 0.0, is.lower_edge_m};
    const Point3 at =
        site::to_space(site::frame_of(surface, site.sketch_up_azimuth_deg), {is.width_m / 2.0, is.height_m / 2.0});
    surface.origin.x_m = middle.x_m - at.x_m;
    surface.origin.y_m = middle.y_m - at.y_m;
    return surface;
}

Obstacle new_obstacle(ObstacleUse use, Point2 middle, const Site& site) {
    Obstacle obstacle;
    obstacle.use = use;
    obstacle.base = {middle.x_m, middle.y_m, 0.0};
    if (site.location.latitude_deg < 0.0) {
        obstacle.leaf_from_month = 10;
        obstacle.leaf_to_month = 4;
    }
    const auto box = [&](double width_m, double depth_m, double height_m) {
        obstacle.kind = ObstacleKind::box;
        obstacle.width_m = width_m;
        obstacle.depth_m = depth_m;
        obstacle.height_m = height_m;
    };
    // What stands on a roof reaches a little into it, so that no gap is left below.
    const auto on_roof = [&](double into_m) {
        if (const auto roof = site::roof_over(site, middle)) obstacle.base.z_m = std::max(0.0, roof->height_m - into_m);
    };
    switch (use) {
        case ObstacleUse::chimney:
            box(0.6, 0.6, 1.8);
            on_roof(0.6);
            break;
        case ObstacleUse::vent:
            obstacle.kind = ObstacleKind::post;
            obstacle.radius_m = 0.06;
            obstacle.height_m = 0.6;
            on_roof(0.1);
            break;
        case ObstacleUse::dormer:
            box(2.2, 2.5, 2.2);
            on_roof(1.0);
            break;
        case ObstacleUse::parapet:
            box(4.0, 0.3, 0.8);
            on_roof(0.0);
            break;
        case ObstacleUse::neighbour: box(8.0, 8.0, 7.0); break;
        case ObstacleUse::pole:
            obstacle.kind = ObstacleKind::post;
            obstacle.radius_m = 0.1;
            obstacle.height_m = 6.0;
            break;
        case ObstacleUse::tree:
            obstacle.kind = ObstacleKind::tree;
            obstacle.radius_m = 2.5;
            obstacle.height_m = 8.0;
            obstacle.crown_base_m = 2.0;
            break;
        case ObstacleUse::other: box(2.0, 2.0, 2.5); break;
    }
    return obstacle;
}

KeepOut new_keep_out(KeepOutKind kind, Point2 middle) {
    KeepOut zone;
    zone.kind = kind;
    // Common sizes and strips, typed over at once; no published source.
    double half_width_m = 0.4;
    double half_height_m = 0.4;
    zone.clearance_m = 0.2;
    switch (kind) {
        case KeepOutKind::roof_window:
            half_width_m = 0.39;
            half_height_m = 0.59;
            zone.clearance_m = 0.25;
            break;
        case KeepOutKind::vent:
            half_width_m = half_height_m = 0.1;
            zone.clearance_m = 0.15;
            break;
        case KeepOutKind::valley:
            half_width_m = 0.3;
            half_height_m = 1.5;
            break;
        case KeepOutKind::reserved: break;
    }
    const auto mm = [](double v) { return std::round(v * 1000.0) / 1000.0; };
    const double left = mm(middle.x_m - half_width_m);
    const double low = mm(middle.y_m - half_height_m);
    const double right = mm(middle.x_m + half_width_m);
    const double high = mm(middle.y_m + half_height_m);
    zone.outline = {{left, low}, {right, low}, {right, high}, {left, high}};
    return zone;
}

CylinderSpot new_spot(Point2 at) {
    CylinderSpot spot;
    spot.position = {at.x_m, at.y_m, 0.0};
    return spot;
}

}  // namespace wg::ui
