#pragma once
// A small house with a roof to each side, a chimney, a wall and a terrace, and round figures for everything else.

#include "core/quantity/constants.h"
#include "core/siting/siting.h"

namespace wg::siting {

/// Suns of 50 deg north: declination by Cooper, hour angle by the clock; 400 W/m2 of beam whenever it is up.
inline sky::PreparedYear plain_year() {
    sky::PreparedYear year;
    const double latitude = radians(50.0);
    for (int hour = 0; hour < 8760; ++hour) {
        const double declination = radians(23.45 * std::sin(2.0 * pi * (284.0 + hour / 24 + 1) / 365.0));
        const double angle = radians(15.0 * (hour % 24 + 0.5 - 12.0));
        year.sun_east.push_back(-std::cos(declination) * std::sin(angle));
        year.sun_north.push_back(std::sin(declination) * std::cos(latitude) -
                                 std::cos(declination) * std::cos(angle) * std::sin(latitude));
        year.sun_up.push_back(std::sin(declination) * std::sin(latitude) +
                              std::cos(declination) * std::cos(angle) * std::cos(latitude));
        year.beam_normal_w_m2.push_back(year.sun_up.back() > 0.0 ? 400.0 : 0.0);
        year.diffuse_w_m2.push_back(year.sun_up.back() > 0.0 ? 100.0 : 0.0);
        year.global_w_m2.push_back(year.diffuse_w_m2.back() +
                                   year.beam_normal_w_m2.back() * std::fmax(0.0, year.sun_up.back()));
        year.extraterrestrial_normal_w_m2.push_back(1361.0);
    }
    sky::derive(year);
    return year;
}

inline Surface surface_of(const char* id, SurfaceKind kind, double tilt, double azimuth, Point3 origin, double width,
                          double height, Covering covering) {
    Surface s;
    s.id = s.label = id;
    s.kind = kind;
    s.roof_form = kind == SurfaceKind::roof ? RoofForm::duo_pitch : RoofForm::not_a_roof;
    s.tilt_deg = tilt;
    s.azimuth_deg = azimuth;
    s.origin = origin;
    s.outline = {{0, 0}, {width, 0}, {width, height}, {0, height}};
    s.covering = covering;
    s.ridge_height_m = 7.0;
    return s;
}

/// Sketch y is north. The south roof runs from (0, 0) to (8, 0) at 3 m, the ridge lies at y = 4.
inline Site small_house() {
    Site site;
    site.location.latitude_deg = 50.0;
    site.terrain = Terrain::suburb_iii;
    site.surfaces = {
        surface_of("south roof", SurfaceKind::roof, 40.0, 180.0, {0, 0, 3.0}, 8.0, 5.0, Covering::clay_tile),
        surface_of("north roof", SurfaceKind::roof, 40.0, 0.0, {8, 8, 3.0}, 8.0, 5.0, Covering::clay_tile),
        surface_of("south wall", SurfaceKind::wall, 90.0, 180.0, {0, 0, 0.0}, 8.0, 3.0, Covering::masonry),
        surface_of("terrace", SurfaceKind::terrace, 0.0, 180.0, {2, -6, 0.0}, 4.0, 3.0, Covering::paving)};
    Obstacle chimney;
    chimney.id = chimney.label = "chimney";
    chimney.base = {2.0, 2.5, 4.0};
    chimney.width_m = chimney.depth_m = 0.8;
    chimney.height_m = 3.0;
    site.obstacles = {chimney};
    KeepOut window;
    window.id = window.label = "window";
    window.kind = KeepOutKind::roof_window;
    window.outline = {{5.0, 1.0}, {5.8, 1.0}, {5.8, 2.2}, {5.0, 2.2}};
    window.clearance_m = 0.2;
    site.surfaces[0].keep_outs = {window};
    return site;
}

inline Catalogue two_methods() {
    Catalogue catalogue;
    FixingMethod hooks;
    hooks.id = "hooks";
    hooks.coverings = {Covering::clay_tile};
    hooks.needs_rafters = false;
    FixingMethod anchors = hooks;
    anchors.id = "anchors";
    anchors.coverings = {Covering::masonry, Covering::paving};
    anchors.screw_diameter_mm = 0.0;
    anchors.pull_out_n = 4000.0;
    anchors.shear_n = 4000.0;
    catalogue.fixing_methods = {hooks, anchors};
    return catalogue;
}

inline CollectorModel plain_plate() {
    CollectorModel m;
    m.fixing_points = {{0.2, 0.1}, {1.0, 0.1}, {1.8, 0.1}, {0.2, 0.7}, {1.0, 0.7}, {1.8, 0.7}};
    m.liquid_connection = {1.8, 0.0};
    m.suction_connection = {1.9, 0.0};
    return m;
}

/// Everything but site, year and catalogue, which the caller keeps alive.
inline Input input_for(const Site& site, const sky::PreparedYear& year, const Catalogue& catalogue, double cell_m) {
    Input in;
    in.site = &site;
    in.year = &year;
    in.catalogue = &catalogue;
    in.collector = plain_plate();
    in.block.run_max_m = 30.0;
    in.block.lift_max_m = 12.0;
    in.block_connection = {7.0, 4.0, 1.0};
    in.seats = seats_of(site, in.collector, catalogue, "hooks");
    for (const Seat& seat : in.seats) {
        sky::PlaneInput plane;
        plane.tilt_deg = seat.tilt_deg;
        plane.azimuth_deg = seat.azimuth_deg;
        const sky::PlaneYear light = sky::plane_year(year, plane, {});
        OpenLight open;
        for (std::size_t i = 0; i < light.beam_w_m2.size(); ++i) {
            open.beam += 1e-3 * light.beam_w_m2[i];
            open.sky += 1e-3 * light.sky_diffuse_w_m2[i];
            open.ground += 1e-3 * light.ground_w_m2[i];
        }
        in.open_light.push_back(open);
        YieldCurve curve;
        curve.light_kwh_m2 = {0.0, 3000.0};
        curve.electricity_kwh = {1500.0, 600.0};
        curve.pump_heat_kwh = {2500.0, 3500.0};
        curve.electricity_per_run_m = 1.0;
        in.yields.push_back(curve);
    }
    in.objective = objective_for(Aim::running_cost);
    in.cell_m = cell_m;
    return in;
}

}  // namespace wg::siting
