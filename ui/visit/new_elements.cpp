#include "ui/visit/new_elements.h"

#include "core/site/geometry.h"

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

Obstacle new_obstacle(ObstacleKind kind, Point2 middle, const Site& site) {
    Obstacle obstacle;
    obstacle.kind = kind;
    obstacle.base = {middle.x_m, middle.y_m, 0.0};
    if (site.location.latitude_deg < 0.0) {
        obstacle.leaf_from_month = 10;
        obstacle.leaf_to_month = 4;
    }
    switch (kind) {
        case ObstacleKind::box:
            obstacle.width_m = 8.0;
            obstacle.depth_m = 8.0;
            obstacle.height_m = 7.0;
            break;
        case ObstacleKind::prism:
            obstacle.height_m = 5.0;
            obstacle.outline = {{middle.x_m - 3.0, middle.y_m - 2.0},
                                {middle.x_m + 3.0, middle.y_m - 2.0},
                                {middle.x_m + 3.0, middle.y_m + 2.0},
                                {middle.x_m - 3.0, middle.y_m + 2.0}};
            break;
        case ObstacleKind::post:
            obstacle.radius_m = 0.1;
            obstacle.height_m = 6.0;
            break;
        case ObstacleKind::tree:
            obstacle.radius_m = 2.5;
            obstacle.height_m = 8.0;
            obstacle.crown_base_m = 2.0;
            break;
    }
    return obstacle;
}

CylinderSpot new_spot(Point2 at) {
    CylinderSpot spot;
    spot.position = {at.x_m, at.y_m, 0.0};
    return spot;
}

}  // namespace wg::ui
