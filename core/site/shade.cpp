#include "core/site/shade.h"

#include <algorithm>
#include <cmath>
#include <utility>

#include "core/quantity/constants.h"
#include "core/site/grid_shadow.h"
#include "core/site/shade_period.h"
#include "core/site/suns.h"
#include "core/site/vec.h"
#include "core/site/view.h"

namespace wg::site {
namespace {

constexpr std::size_t hours = 8760;
constexpr double least_cause_kwh_m2 = 1e-3;  ///< smaller losses are not worth a line
constexpr int most_samples = 1000;           ///< along a side

/// Adds up what one cause takes, by month and hour of day.
struct Tally {
    MonthHourTable lost_wh_m2{};

    void add(const Sun& sun, double lost_share) noexcept {
        lost_wh_m2[static_cast<std::size_t>(sun.month - 1)][sun.hour % 24] += sun.beam_w_m2 * lost_share;
    }
    [[nodiscard]] double sum_kwh_m2() const noexcept {
        double sum = 0.0;
        for (const auto& month : lost_wh_m2) {
            for (const double wh : month)
                sum += wh;
        }
        return 1e-3 * sum;
    }
    [[nodiscard]] MonthHourTable table_kwh_m2() const noexcept {
        MonthHourTable table = lost_wh_m2;
        for (auto& month : table) {
            for (double& v : month)
                v *= 1e-3;
        }
        return table;
    }
};

ShadeCause cause_of(const Tally& tally, std::string id, std::string label) {
    ShadeCause c;
    c.obstacle_id = std::move(id);
    c.label = std::move(label);
    c.lost_kwh_m2 = tally.sum_kwh_m2();
    c.lost_by_hour_kwh_m2 = tally.table_kwh_m2();
    find_worst(c);
    return c;
}

int count_outside(const CellMask& mask, const CellMask& other) noexcept {
    int cells = 0;
    for (int row = mask.row_from(); row < mask.row_to(); ++row) {
        for (int w = 0; w < mask.words_per_row(); ++w)
            cells += CellMask::count(mask.word(row, w) & ~other.word(row, w));
    }
    return cells;
}

}  // namespace

Shade shade_of(const Site& site, const PlacedCollector& collector, const std::string& own_surface_id,
               const sky::PreparedYear& year, int samples_x, int samples_y) {
    Shade out;
    out.beam_share.assign(hours, 0.0F);
    CellGrid grid = CellGrid::over(collector.corners, std::clamp(samples_x, 1, most_samples),
                                   std::clamp(samples_y, 1, most_samples));
    if (grid.empty()) return out;
    const Point3 normal = grid.normal;
    const Point3 middle = (collector.corners[0] + collector.corners[2]) * 0.5;
    const auto samples = static_cast<double>(grid.size());
    out.rays_per_hour = static_cast<int>(grid.size());
    GridShadow shadow(std::move(grid), Occluder::seen_by(site, own_surface_id, normal));
    const std::vector<Occluder>& occluders = shadow.occluders();
    const Horizon horizon(site.horizon);

    std::vector<Tally> tallies(occluders.size());
    Tally all, horizon_tally, building_tally;
    CellMask by_building(shadow.opaque());
    std::vector<std::size_t> met;  // by this sun
    for (const Sun& sun : suns_before(year, normal, site.sketch_up_azimuth_deg, 1)) {
        const bool hidden = !horizon.empty() && horizon.hides(sun.east, sun.north, sun.up);
        if (hidden) horizon_tally.add(sun, 1.0);
        // Each alone, by the area of its outline where that is known.
        const SunOnGrid on = on_grid(shadow.grid(), sun.dir);
        met.clear();
        bool all_known = true;
        double most_covered = 0.0, building_covered = 0.0;
        int planes = 0;
        for (std::size_t k = 0; k < occluders.size(); ++k) {
            const double covered = shadow.covered(on, k);
            if (covered == 0.0) continue;
            met.push_back(k);
            all_known = all_known && covered != Shadow::not_known;
            most_covered = std::max(most_covered, covered);
            if (occluders[k].own_building()) {
                ++planes;
                building_covered = std::max(building_covered, covered);
            } else if (covered > 0.0) {
                tallies[k].add(sun, covered);
            }
        }
        double stopped = most_covered;
        const bool settled =
            all_known && (met.size() <= 1 || most_covered == 1.0) && (planes <= 1 || building_covered == 1.0);
        if (!settled) {  // together, by the cells: what several throw overlaps
            const auto transmittance = [&](std::size_t k) { return occluders[k].crown_transmittance(sun.month); };
            by_building.clear();
            shadow.cast(sun.dir, met, [&](std::size_t k, const CellMask& opaque, const CellMask& crown) {
                if (occluders[k].own_building()) {
                    by_building.add(opaque);
                } else if (shadow.covered(on, k) == Shadow::not_known) {
                    tallies[k].add(
                        sun, (opaque.count() + (1.0 - transmittance(k)) * count_outside(crown, opaque)) / samples);
                }
            });
            double cells = 0.0;
            shadow.groups(transmittance, [&](int, int, std::uint64_t bits, double passed) {
                cells += CellMask::count(bits) * (1.0 - passed);
            });
            stopped = std::max(stopped, cells / samples);
            building_covered = std::max(building_covered, by_building.count() / samples);
        }
        if (building_covered > 0.0) building_tally.add(sun, building_covered);
        const double lit = hidden ? 0.0 : 1.0 - stopped;
        all.add(sun, 1.0 - lit);
        out.beam_share[sun.hour] = static_cast<float>(lit);
    }

    for (std::size_t k = 0; k < occluders.size(); ++k) {
        if (!occluders[k].own_building())
            out.causes.push_back(cause_of(tallies[k], occluders[k].id(), occluders[k].label()));
    }
    out.causes.push_back(cause_of(building_tally, {}, building_label));
    out.causes.push_back(cause_of(horizon_tally, {}, horizon_label));
    out.causes.erase(std::remove_if(out.causes.begin(), out.causes.end(),
                                    [](const ShadeCause& c) { return !(c.lost_kwh_m2 > least_cause_kwh_m2); }),
                     out.causes.end());
    std::stable_sort(out.causes.begin(), out.causes.end(),
                     [](const ShadeCause& a, const ShadeCause& b) { return a.lost_kwh_m2 > b.lost_kwh_m2; });
    out.lost_kwh_m2 = all.sum_kwh_m2();
    out.lost_by_hour_kwh_m2 = all.table_kwh_m2();
    const ViewFactors view = view_from(middle, normal, occluders, horizon, site.sketch_up_azimuth_deg);
    out.sky_view = view.sky_open;
    out.ground_view = view.ground_open;
    return out;
}

}  // namespace wg::site
