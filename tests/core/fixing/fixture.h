#pragma once
// One collector in the middle of a plain tiled roof, all figures chosen to be easy to follow.

#include <algorithm>
#include <string>
#include <vector>

#include "core/fixing/fixing.h"

namespace wg::fixing {

inline CollectorModel plain_collector() {
    CollectorModel m;
    m.maker = "Invented";
    m.name = "P";
    m.mass_kg = 10.0;
    m.fixing_points = {{0.3, 0.1}, {1.7, 0.1}, {0.3, 0.7}, {1.7, 0.7}};
    m.liquid_connection = {1.8, 0.0};
    m.suction_connection = {1.9, 0.0};
    return m;
}

inline FixingMethod hooks() {
    FixingMethod f;
    f.label = "hooks";
    f.coverings = {Covering::clay_tile};
    f.needs_rafters = false;
    return f;
}

inline Surface plain_roof() {
    Surface s;
    s.id = "roof";
    s.label = "South roof";
    s.tilt_deg = 35.0;
    s.azimuth_deg = 180.0;
    s.origin = {0, 0, 3.0};
    s.outline = {{0, 0}, {10, 0}, {10, 6}, {0, 6}};
    s.ridge_height_m = 7.0;
    return s;
}

inline Input plain_input() {
    Input in;
    in.surface = plain_roof();
    in.site.surfaces = {in.surface};
    in.site.location.latitude_deg = 50.0;
    in.placement.id = "p1";
    in.placement.label = "Collector 1";
    in.placement.surface_id = "roof";
    in.placement.x_m = 5.0;
    in.placement.y_m = 3.0;
    in.collector = plain_collector();
    in.method = hooks();
    return in;
}

/// Places and fixes.
inline Outcome fixed_up(Input in) {
    in.placed = site::place(in.surface, in.site.sketch_up_azimuth_deg, in.placement, in.collector);
    return fix(in);
}

inline const Finding* find_code(const std::vector<Finding>& findings, const std::string& code) {
    const auto at = std::find_if(findings.begin(), findings.end(), [&](const Finding& f) { return f.code == code; });
    return at == findings.end() ? nullptr : &*at;
}

}  // namespace wg::fixing
