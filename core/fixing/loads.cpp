#include "core/fixing/loads.h"

#include <algorithm>
#include <cmath>

#include "core/fixing/zone_tables.h"
#include "core/quantity/constants.h"
#include "core/site/vec.h"

namespace wg::fixing {
namespace {

using site::cross;
using site::dot;
using site::operator+;
using site::operator-;
using site::operator*;

/// A force in space acting at the plate's middle. What its part along the surface turns over is left to the points.
Action action_of(Point3 force_n, const site::Frame& frame, double middle_off_m) {
    Action a;
    a.normal_n = -dot(force_n, frame.normal);
    a.along_n = {dot(force_n, frame.right), dot(force_n, frame.up)};
    a.couple_nm = a.along_n * middle_off_m;
    return a;
}

bool stands_free(const Input& input) {
    return input.placement.frame_tilt_deg.has_value() || input.surface.kind == SurfaceKind::ground ||
           input.surface.kind == SurfaceKind::terrace;
}

void wind_of(Loads& l, const Input& input) {
    const ActionRules& rules = input.rules;
    l.body = body_of(input.site, input.surface);
    const double building_m = l.body.reference_height_m();
    const double height_m =
        l.free ? std::max(input.placed.highest_m, input.surface.kind == SurfaceKind::ground ? 0.0 : building_m)
               : building_m;
    l.basic_wind_m_s = input.site.basic_wind_m_s.value_or(rules.basic_wind_m_s);
    l.altitude_factor = 1.0 + rules.wind_altitude_per_m * std::max(0.0, input.site.location.altitude_m);
    l.orography = orography_of(input.site.hill, height_m);
    l.wind = peak_pressure(l.basic_wind_m_s * l.altitude_factor, input.site.terrain, height_m, rules.air_density_kg_m3,
                           l.orography.factor);
}

/// The part of a point in the surface's plane: own coordinates laid over the placed outline.
std::array<Point2, 4> part_on_surface(const Input& input, const PlatePart& part) {
    const auto& o = input.placed.outline;
    const Point2 x = (o[1] - o[0]) * (1.0 / input.collector.length_m);
    const Point2 y = (o[3] - o[0]) * (1.0 / input.collector.width_m);
    const auto at = [&](double px, double py) { return o[0] + x * px + y * py; };
    return {at(part.low.x_m, part.low.y_m), at(part.high.x_m, part.low.y_m), at(part.high.x_m, part.high.y_m),
            at(part.low.x_m, part.high.y_m)};
}

/// Wind on a plate that lies along its surface: even over the plate, and part by part.
void lying_winds(Loads& l, const Input& input, const Layout& layout) {
    const std::vector<ZoneBand> bands = zone_bands(input.surface, l.body);
    const auto& o = input.placed.outline;
    const std::array<Point2, 4> whole{o[0], o[1], o[2], o[3]};
    l.zone = force_in(bands, plan_plate(input.surface, whole), l.area_m2);
    const Net net = net_of(l.zone, input.rules);
    l.net_uplift = net.uplift;
    l.net_pressure = net.pressure;
    const double q = l.wind.qp_pa;
    l.winds.reserve(4);
    l.winds.push_back({"suction", true, {q * l.net_uplift * l.area_m2, {}, {}}, {}, {}});
    l.winds.push_back({"pressure", false, {q * l.net_pressure * l.area_m2, {}, {}}, {}, {}});
    const std::size_t n = layout.points.size();
    l.parts.reserve(n);
    for (const PlatePart& part : layout.shares.parts) {
        PartWind p;
        p.area_m2 = part.area_m2();
        p.zone = force_in(bands, plan_plate(input.surface, part_on_surface(input, part)), p.area_m2);
        const Net own = net_of(p.zone, input.rules);
        p.net_uplift = own.uplift;
        p.net_pressure = own.pressure;
        l.parts.push_back(p);
    }
    if (l.parts.empty()) return;
    for (const bool suction : {true, false}) {
        const auto coefficient = [&](const PartWind& p) { return suction ? p.net_uplift : p.net_pressure; };
        WindCase w{suction ? "suction by parts" : "pressure by parts", suction, {}, {}, {}};
        bool even = true;
        for (const PartWind& p : l.parts) {
            w.of_part.push_back(q * coefficient(p) * p.area_m2);
            w.action.normal_n += w.of_part.back();
            even = even && coefficient(p) == coefficient(l.parts.front());
        }
        if (even) {
            for (const double share : layout.shares.of_point)
                w.of_point.push_back(share * w.action.normal_n);
        } else {
            w.of_point = part_load_reactions(layout.plate, layout.shares, w.of_part);
        }
        l.winds.push_back(std::move(w));
    }
}

/// Wind on a plate that stands free: from both faces, the force off the middle as the standard asks.
void free_winds(Loads& l, const Input& input, const site::Frame& frame) {
    const site::PlacedCollector& placed = input.placed;
    const Point3 along = placed.corners[1] - placed.corners[0], across = placed.corners[3] - placed.corners[0];
    const Point3 square = cross(along, across);
    const Point3 normal = square * (1.0 / site::norm(square));
    // Width across the wind: of the level direction in the plate; a plate lying level takes its long side.
    Point3 level{-normal.y_m, normal.x_m, 0.0};
    const double level_length = site::norm(level);
    level = level_length > 1e-9 ? level * (1.0 / level_length) : along * (1.0 / site::norm(along));
    const Point3 slope = cross(normal, level);
    const auto extent = [&](Point3 d) { return std::abs(dot(along, d)) + std::abs(dot(across, d)); };
    l.canopy = placed.tilt_deg <= canopy_tilt_deg;
    const tables::CanopyForce canopy = tables::canopy(placed.tilt_deg);
    l.net_uplift = l.canopy ? canopy.up : -free_plate_coefficient;
    l.net_pressure = l.canopy ? canopy.down : free_plate_coefficient;
    l.zone.zone_uplift = l.zone.zone_pressure = "free";
    l.zone.uplift = l.net_uplift;
    l.zone.pressure = l.net_pressure;
    const auto add = [&](const char* name, bool suction, Point3 off) {
        const double force_n = l.wind.qp_pa * l.area_m2 * (suction ? -l.net_uplift : -l.net_pressure);
        WindCase w{name, suction, action_of(normal * force_n, frame, l.middle_off_m), {}, {}};
        const Point2 in_plane{dot(off, frame.right), dot(off, frame.up)};
        w.action.couple_nm =
            w.action.couple_nm + in_plane * w.action.normal_n + w.action.along_n * dot(off, frame.normal);
        l.winds.push_back(std::move(w));
    };
    l.winds.reserve(8);
    if (l.canopy) {
        const Point3 up = slope * (free_plate_offset * extent(slope));
        add("lifting, near the upper edge", true, up);
        add("lifting, near the lower edge", true, up * -1.0);
        add("pressing, near the upper edge", false, up);
        add("pressing, near the lower edge", false, up * -1.0);
        if (placed.tilt_deg >= ballast_tilt_deg) return;
        const Point3 side = level * (free_plate_offset * extent(level));  // near level any edge may be the near one
        add("lifting, near the right edge", true, side);
        add("lifting, near the left edge", true, side * -1.0);
        add("pressing, near the right edge", false, side);
        add("pressing, near the left edge", false, side * -1.0);
        return;
    }
    const Point3 side = level * (free_plate_offset * extent(level));
    add("from behind, off to the right", true, side);
    add("from behind, off to the left", true, side * -1.0);
    add("on the face, off to the right", false, side);
    add("on the face, off to the left", false, side * -1.0);
}

}  // namespace

Net net_of(const ZoneForce& zone, const ActionRules& rules) {
    switch (rules.net_pressure) {
        case NetPressureRule::surface_share: break;
        case NetPressureRule::two_faces: {
            const double both = 1.0 + rules.hidden_face_share;
            return {both * zone.uplift, both * zone.pressure};
        }
        case NetPressureRule::coefficients:
            return {zone.edge ? rules.net_uplift_edge : rules.net_uplift_middle, rules.net_pressure_all};
    }
    return {rules.standing_off_net_factor * zone.uplift, rules.standing_off_net_factor * zone.pressure};
}

Loads loads_of(const Input& input, const Layout& layout) {
    Loads l;
    const ActionRules& rules = input.rules;
    const site::Frame frame = site::frame_of(input.surface, input.site.sketch_up_azimuth_deg);
    const site::PlacedCollector& placed = input.placed;
    l.on_frame = input.placement.frame_tilt_deg.has_value();
    l.free = stands_free(input);
    l.area_m2 = input.collector.length_m * input.collector.width_m;
    for (const Point3 c : placed.corners)
        l.middle_off_m += 0.25 * dot(c - frame.origin, frame.normal);
    wind_of(l, input);

    const Point3 down{0.0, 0.0, -1.0};
    l.weight_n = (input.collector.mass_kg + input.refrigerant_kg) * gravity_m_s2;
    if (by_ballast(input.method)) l.weight_n += input.method.frame_mass_kg * gravity_m_s2;
    l.permanent = action_of(down * l.weight_n, frame, l.middle_off_m);
    l.snow_ground_n_m2 = 1000.0 * site_snow_kn_m2(input.site, rules);
    const double ground = l.snow_ground_n_m2 * rules.snow_exposure * rules.snow_thermal;
    // EN 1991-1-3 5.3.3 (4): where snow cannot slide off the shape stays at 0.8 or more.
    const auto shape = [&](double tilt_deg, bool held) {
        return held ? std::max(0.8, snow_shape_mu1(tilt_deg)) : snow_shape_mu1(tilt_deg);
    };
    const bool held = input.surface.snow_held && !l.on_frame && input.surface.kind == SurfaceKind::roof;
    l.snow_shape = shape(placed.tilt_deg, held);
    l.snow_n_m2 = l.snow_shape * ground;
    l.snow_plan_m2 = l.area_m2 * std::max(0.0, std::cos(radians(placed.tilt_deg)));
    l.snow = action_of(down * (l.snow_n_m2 * l.snow_plan_m2), frame, l.middle_off_m);
    if (rules.snow_slides && !l.on_frame && input.surface.kind == SurfaceKind::roof && input.surface.tilt_deg > 0.0 &&
        placed.outline.size() == 4) {
        const double roof_shape = shape(input.surface.tilt_deg, held);
        l.slide = snow_slide(input.surface, placed.outline, input.others, roof_shape * ground);
        l.slide.roof_shape = roof_shape;
        const Point2 along{0.0, -l.slide.force_n};
        l.snow.along_n = l.snow.along_n + along;
        l.snow.couple_nm = l.snow.couple_nm + along * l.middle_off_m;
    }

    if (placed.outline.size() != 4 || placed.corners.size() != 4) return l;
    if (l.free) {
        free_winds(l, input, frame);
    } else {
        lying_winds(l, input, layout);
    }
    return l;
}

}  // namespace wg::fixing
