#include "core/site/view.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <utility>

#include "core/quantity/constants.h"
#include "core/site/cell_sums.h"
#include "core/site/grid_shadow.h"
#include "core/site/shade.h"
#include "core/site/vec.h"

namespace wg::site {
namespace {

constexpr int directions = 2048;

/// Directions before a plane, each for the same part of its view: points spread over the unit disc by the golden angle,
/// raised to the half-sphere (Malley's method: equal areas of the disc are equal view factors).
std::vector<Point3> directions_before(Point3 normal) {
    const Point3 helper = std::abs(normal.z_m) < 0.9 ? Point3{0, 0, 1} : Point3{1, 0, 0};
    Point3 right = cross(helper, normal);
    right = right * (1.0 / norm(right));
    const Point3 up = cross(normal, right);
    std::vector<Point3> out;
    out.reserve(directions);
    const double golden = pi * (3.0 - std::sqrt(5.0));
    for (int i = 0; i < directions; ++i) {
        const double r2 = (i + 0.5) / directions, r = std::sqrt(r2), angle = golden * i;
        out.push_back(right * (r * std::cos(angle)) + up * (r * std::sin(angle)) + normal * std::sqrt(1.0 - r2));
    }
    return out;
}

/// True-north form of a direction in the sketch: to_sketch turned back.
bool hidden_by(const Horizon& horizon, Point3 dir, double sketch_up_azimuth_deg) noexcept {
    if (horizon.empty()) return false;
    const Point3 north = to_sketch(dir.x_m, dir.y_m, dir.z_m, -sketch_up_azimuth_deg);
    return horizon.hides(north.x_m, north.y_m, north.z_m);
}

double yearly_transmittance(const Occluder& o) noexcept {
    double sum = 0.0;
    for (int month = 1; month <= 12; ++month)
        sum += o.crown_transmittance(month);
    return sum / 12.0;
}

std::vector<double> yearly_transmittances(const std::vector<Occluder>& occluders) {
    std::vector<double> out;
    out.reserve(occluders.size());
    for (const Occluder& o : occluders)
        out.push_back(yearly_transmittance(o));
    return out;
}

ViewFactors factors(double sky_open, double ground_open, double unobstructed_sky) noexcept {
    ViewFactors v;
    v.sky_open = std::clamp(sky_open, 0.0, 1.0);
    v.ground_open = std::clamp(ground_open, 0.0, 1.0);
    v.sky = v.sky_open * unobstructed_sky;
    v.ground = v.ground_open * (1.0 - unobstructed_sky);
    return v;
}

/// Planes that lie level are ground to whoever looks down on them.
std::vector<Occluder> without_level_planes(const std::vector<Occluder>& occluders) {
    std::vector<Occluder> out;
    for (const Occluder& o : occluders) {
        if (!o.lies_level()) out.push_back(o);
    }
    return out;
}

}  // namespace

ViewFactors view_from(Point3 from, Point3 normal, const std::vector<Occluder>& occluders, const Horizon& horizon,
                      double sketch_up_azimuth_deg) {
    const std::vector<double> transmittances = yearly_transmittances(occluders);
    double sky = 0.0, ground = 0.0, sky_open = 0.0, ground_open = 0.0;
    for (const Point3 dir : directions_before(normal)) {
        const bool above = dir.z_m > 0.0;
        (above ? sky : ground) += 1.0;
        double passed = above && hidden_by(horizon, dir, sketch_up_azimuth_deg) ? 0.0 : 1.0;
        for (std::size_t k = 0; k < occluders.size() && passed > 0.0; ++k) {
            const Occluder& o = occluders[k];
            if ((!above && o.lies_level()) || !o.may_meet(from, 0.0, dir)) continue;
            passed *= o.passes(from, dir, transmittances[k]);
        }
        (above ? sky_open : ground_open) += passed;
    }
    return factors(sky > 0.0 ? sky_open / sky : 1.0, ground > 0.0 ? ground_open / ground : 1.0,
                   0.5 * (1.0 + normal.z_m));
}

ViewFactors view_of(const Site& site, const PlacedCollector& collector, const std::string& own_surface_id) {
    const CellGrid plate = CellGrid::over(collector.corners, 1, 1);
    if (plate.empty()) return {};
    return view_from(plate.first, plate.normal, Occluder::seen_by(site, own_surface_id, plate.normal),
                     Horizon(site.horizon), site.sketch_up_azimuth_deg);
}

ViewMap view_map(const Site& site, const Surface& surface, double cell_m) {
    constexpr double steps = 1048576.0;
    ViewMap map;
    map.cell_m = cell_m;
    CellGrid cells = CellGrid::over(surface, site.sketch_up_azimuth_deg, cell_m, shade_map_off_m);
    if (cells.empty()) return map;
    const Bounds b = bounds_of(surface.outline);
    const Point3 normal = cells.normal;
    map.origin = {b.min_x_m, b.min_y_m};
    map.columns = cells.columns;
    map.rows = cells.rows;
    map.unobstructed_sky = 0.5 * (1.0 + normal.z_m);
    const Horizon horizon(site.horizon);
    const std::vector<Occluder> occluders = Occluder::of(site, surface.id);
    GridShadow over(cells, occluders), under(std::move(cells), without_level_planes(occluders));
    const int words = over.opaque().words_per_row();
    CellSums sky_lost(map.rows, words), ground_lost(map.rows, words);
    double sky = 0.0, ground = 0.0, hidden = 0.0;
    for (const Point3 dir : directions_before(normal)) {
        const bool above = dir.z_m > 0.0;
        (above ? sky : ground) += 1.0;
        if (above && hidden_by(horizon, dir, site.sketch_up_azimuth_deg)) {
            hidden += 1.0;
            continue;
        }
        GridShadow& shadow = above ? over : under;
        if (!shadow.cast(dir)) continue;
        CellSums& lost = above ? sky_lost : ground_lost;
        shadow.groups([&](std::size_t k) { return yearly_transmittance(shadow.occluders()[k]); },
                      [&](int row, int word, std::uint64_t bits, double passed) {
                          lost.add(row, word, bits, static_cast<std::int64_t>(std::llround((1.0 - passed) * steps)));
                      });
    }
    sky_lost.sum_up();
    ground_lost.sum_up();
    for (int row = 0; row < map.rows; ++row) {
        for (int column = 0; column < map.columns; ++column) {
            const double no_sky = hidden + static_cast<double>(sky_lost.sum(row, column)) / steps;
            const double no_ground = static_cast<double>(ground_lost.sum(row, column)) / steps;
            map.sky_open.push_back(static_cast<float>(sky > 0.0 ? 1.0 - no_sky / sky : 1.0));
            map.ground_open.push_back(static_cast<float>(ground > 0.0 ? 1.0 - no_ground / ground : 1.0));
        }
    }
    return map;
}

ViewFactors ViewMap::at(Point2 in_plane) const noexcept {
    if (columns < 1 || rows < 1) return factors(1.0, 1.0, unobstructed_sky);
    const auto place = [this](double along_m, int count) {
        const double x = along_m / cell_m - 0.5;
        return x > 0.0 ? std::min(x, count - 1.0) : 0.0;  // NaN: the first
    };
    const double x = place(in_plane.x_m - origin.x_m, columns), y = place(in_plane.y_m - origin.y_m, rows);
    const int c0 = static_cast<int>(x), r0 = static_cast<int>(y);
    const int c1 = std::min(c0 + 1, columns - 1), r1 = std::min(r0 + 1, rows - 1);
    const double u = x - c0, v = y - r0;
    const auto between = [&](const std::vector<float>& values) {
        const auto value = [&](int c, int r) {
            return static_cast<double>(
                values[static_cast<std::size_t>(r) * static_cast<std::size_t>(columns) + static_cast<std::size_t>(c)]);
        };
        return (1.0 - v) * ((1.0 - u) * value(c0, r0) + u * value(c1, r0)) +
               v * ((1.0 - u) * value(c0, r1) + u * value(c1, r1));
    };
    return factors(between(sky_open), between(ground_open), unobstructed_sky);
}

}  // namespace wg::site
