#include "core/fixing/snow.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include "core/quantity/constants.h"

namespace wg::fixing {
namespace {

/// Lowest crossing of an upright line with an outline above `from`; infinite when there is none.
double next_above(const std::vector<Point2>& outline, double x, double from) {
    double lowest = std::numeric_limits<double>::infinity();
    for (std::size_t i = 0; i < outline.size(); ++i) {
        const Point2 a = outline[i], b = outline[i + 1 < outline.size() ? i + 1 : 0];
        if ((a.x_m > x) == (b.x_m > x)) continue;
        const double y = a.y_m + (b.y_m - a.y_m) * (x - a.x_m) / (b.x_m - a.x_m);
        if (y > from + site::touch_m) lowest = std::min(lowest, y);
    }
    return lowest;
}

}  // namespace

double ground_snow_kn_m2(SnowRule rule, double zone, double altitude_m) {
    const double a = std::max(0.0, altitude_m);
    const auto squared = [a](double scale_m) { return 1.0 + (a / scale_m) * (a / scale_m); };
    double s = 0.0;
    switch (rule) {
        case SnowRule::fixed: break;
        case SnowRule::alpine: s = (0.642 * zone + 0.009) * squared(728.0); break;
        case SnowRule::central_east: s = (0.264 * zone - 0.002) * squared(256.0); break;
        case SnowRule::central_west: s = 0.164 * zone - 0.082 + a / 966.0; break;
        case SnowRule::iberian: s = (0.190 * zone - 0.095) * squared(524.0); break;
        case SnowRule::mediterranean: s = (0.498 * zone - 0.209) * squared(452.0); break;
        case SnowRule::uk_ireland: s = 0.140 * zone - 0.1 + a / 501.0; break;
    }
    return std::max(0.0, s);
}

double site_snow_kn_m2(const Site& site, const ActionRules& rules) {
    if (site.ground_snow_kn_m2) return *site.ground_snow_kn_m2;
    if (rules.snow_rule == SnowRule::fixed) return rules.ground_snow_kn_m2;
    return ground_snow_kn_m2(rules.snow_rule, rules.snow_zone, site.location.altitude_m);
}

SnowSlide snow_slide(const Surface& surface, const std::vector<Point2>& plate,
                     const std::vector<std::vector<Point2>>& others, double roof_snow_n_m2) {
    SnowSlide out;
    const site::Bounds b = site::bounds_of(plate);
    out.width_m = b.width_m();
    constexpr int strips = 8;
    double above_m = 0.0;
    for (int i = 0; i < strips; ++i) {
        const double x = b.min_x_m + out.width_m * (i + 0.5) / strips;
        double top = next_above(surface.outline, x, b.max_y_m);
        for (const auto& other : others)
            top = std::min(top, next_above(other, x, b.max_y_m));
        if (std::isfinite(top)) above_m += (top - b.max_y_m) / strips;
    }
    const double pitch = radians(surface.tilt_deg);
    out.above_plan_m = above_m * std::cos(pitch);
    out.force_n = roof_snow_n_m2 * out.above_plan_m * std::sin(pitch) * out.width_m;
    return out;
}

SnowDrift snow_drift(double height_m, double ground_snow_n_m2, double density_kn_m3) {
    SnowDrift out;
    if (ground_snow_n_m2 > 0.0)
        out.shape = std::clamp(1000.0 * density_kn_m3 * std::max(0.0, height_m) / ground_snow_n_m2, 0.8, 2.0);
    out.length_m = std::clamp(2.0 * height_m, 5.0, 15.0);
    out.load_n_m2 = out.shape * ground_snow_n_m2;
    return out;
}

}  // namespace wg::fixing
