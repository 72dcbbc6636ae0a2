// The beam of a period on each cell of a surface.
#include <algorithm>
#include <cmath>
#include <cstdint>

#include "core/site/cell_sums.h"
#include "core/site/grid_shadow.h"
#include "core/site/shade.h"
#include "core/site/suns.h"
#include "core/site/vec.h"

namespace wg::site {
namespace {

/// Energies are whole numbers of this share of a Wh/m2, so that sums are exact in any order.
constexpr double steps_per_wh = 1048576.0;
constexpr double most_weight = 1000.0;
constexpr double most_beam_w_m2 = 2000.0;

double in_range(double weight) noexcept {
    return weight > 0.0 ? std::min(weight, most_weight) : 0.0;  // NaN: 0
}

double weighted_wh(const Sun& sun, const ShadeMapOptions& options) noexcept {
    double weight = in_range(options.month_weight[static_cast<std::size_t>(sun.month - 1)]);
    if (!options.hour_weight.empty()) {
        weight *=
            sun.hour < options.hour_weight.size() ? in_range(static_cast<double>(options.hour_weight[sun.hour])) : 0.0;
    }
    return std::min(sun.beam_w_m2, most_beam_w_m2) * std::min(weight, most_weight);
}

}  // namespace

ShadeMap shade_map(const Site& site, const Surface& surface, const sky::PreparedYear& year,
                   const ShadeMapOptions& options) {
    ShadeMap map;
    map.cell_m = options.cell_m;
    CellGrid cells = CellGrid::over(surface, site.sketch_up_azimuth_deg, options.cell_m, shade_map_off_m);
    if (cells.empty()) return map;
    const Bounds b = bounds_of(surface.outline);
    map.origin = {b.min_x_m, b.min_y_m};
    map.columns = cells.columns;
    map.rows = cells.rows;
    map.share.assign(cells.size(), -1.0F);
    map.beam_kwh_m2.assign(cells.size(), -1.0F);

    const Point3 normal = cells.normal;
    GridShadow shadow(std::move(cells), Occluder::of(site, surface.id));
    const Horizon horizon(site.horizon);
    CellSums lost(map.rows, shadow.opaque().words_per_row());
    std::int64_t whole = 0, hidden = 0;
    for (const Sun& sun : suns_before(year, normal, site.sketch_up_azimuth_deg, options.every_nth_day)) {
        const double beam = weighted_wh(sun, options) * steps_per_wh;
        const auto steps = static_cast<std::int64_t>(std::llround(beam));
        if (steps <= 0) continue;
        whole += steps;
        if (!horizon.empty() && horizon.hides(sun.east, sun.north, sun.up)) {
            hidden += steps;
            continue;
        }
        if (!shadow.cast(sun.dir)) continue;
        shadow.groups([&](std::size_t k) { return shadow.occluders()[k].crown_transmittance(sun.month); },
                      [&](int row, int word, std::uint64_t bits, double passed) {
                          lost.add(
                              row, word, bits,
                              passed == 0.0 ? steps : static_cast<std::int64_t>(std::llround(beam * (1.0 - passed))));
                      });
    }
    lost.sum_up();

    const double whole_wh = static_cast<double>(whole) / steps_per_wh;
    const double open_wh = static_cast<double>(whole - hidden) / steps_per_wh;
    double year_wh = whole_wh;  // of every day, where only some were looked at
    if (options.every_nth_day > 1) {
        year_wh = 0.0;
        for (const Sun& sun : suns_before(year, normal, site.sketch_up_azimuth_deg, 1))
            year_wh += weighted_wh(sun, options);
    }
    map.unshaded_kwh_m2 = 1e-3 * year_wh;
    for (int row = 0; row < map.rows; ++row) {
        for (int column = 0; column < map.columns; ++column) {
            if (!contains(surface.outline,
                          {b.min_x_m + (column + 0.5) * options.cell_m, b.min_y_m + (row + 0.5) * options.cell_m})) {
                continue;
            }
            const std::size_t i = static_cast<std::size_t>(row) * static_cast<std::size_t>(map.columns) +
                                  static_cast<std::size_t>(column);
            const double share =
                whole > 0 ? (open_wh - static_cast<double>(lost.sum(row, column)) / steps_per_wh) / whole_wh : 1.0;
            map.share[i] = static_cast<float>(share);
            map.beam_kwh_m2[i] = static_cast<float>(share * map.unshaded_kwh_m2);
        }
    }
    return map;
}

ShadeMap shade_map(const Site& site, const Surface& surface, const sky::PreparedYear& year, double cell_m,
                   int every_nth_day) {
    ShadeMapOptions options;
    options.cell_m = cell_m;
    options.every_nth_day = every_nth_day;
    return shade_map(site, surface, year, options);
}

}  // namespace wg::site
