#include "core/site/shade.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <utility>

#include "core/quantity/constants.h"
#include "core/quantity/time.h"
#include "core/site/occluders.h"
#include "core/site/vec.h"

namespace wg::site {
namespace {

constexpr std::size_t hours = 8760;
constexpr double least_cause_kwh_m2 = 1e-3;  ///< smaller losses are not worth a line

struct Sun {
    std::size_t hour = 0;
    int month = 1;
    double beam_w_m2 = 0.0;  ///< on the plane, unshaded
    double east = 0.0, north = 0.0, up = 0.0;
    Point3 dir;
};

/// Hours in which the sun is up and before the plane.
std::vector<Sun> suns_before(const sky::PreparedYear& year, Point3 normal, double sketch_up_azimuth_deg,
                             int every_nth_day) {
    std::vector<Sun> suns;
    const std::size_t n = std::min({hours, year.sun_up.size(), year.sun_east.size(), year.sun_north.size()});
    const auto every = static_cast<std::size_t>(std::max(1, every_nth_day));
    suns.reserve(5000 / every);
    for (int month = 1; month <= 12; ++month) {
        const auto from = static_cast<std::size_t>(first_hour_of_month(month));
        const auto to = std::min(n, static_cast<std::size_t>(first_hour_of_month(month + 1)));
        for (std::size_t h = from; h < to; ++h) {
            if ((h / 24) % every != 0 || year.sun_up[h] <= 0.0) continue;
            Sun s{h, month, 0.0, year.sun_east[h], year.sun_north[h], year.sun_up[h], {}};
            s.dir = to_sketch(s.east, s.north, s.up, sketch_up_azimuth_deg);
            const double cosine = dot(s.dir, normal);
            if (!(cosine > 0.0)) continue;
            if (h < year.beam_normal_w_m2.size()) s.beam_w_m2 = year.beam_normal_w_m2[h] * cosine;
            suns.push_back(s);
        }
    }
    return suns;
}

/// Adds up what one cause takes, by month and by hour of day.
struct Tally {
    double lost_wh_m2 = 0.0;
    std::array<double, 12> by_month{};
    std::array<double, 24> by_hour{};

    void add(const Sun& sun, double passed) {
        const double lost = sun.beam_w_m2 * (1.0 - passed);
        lost_wh_m2 += lost;
        by_month[static_cast<std::size_t>(sun.month - 1)] += lost;
        by_hour[sun.hour % 24] += lost;
    }
    [[nodiscard]] ShadeCause cause(std::string id, std::string label) const {
        ShadeCause c{std::move(id), std::move(label), lost_wh_m2 * 1e-3, 0, 0};
        c.worst_month = static_cast<int>(std::max_element(by_month.begin(), by_month.end()) - by_month.begin()) + 1;
        c.worst_hour = static_cast<int>(std::max_element(by_hour.begin(), by_hour.end()) - by_hour.begin());
        return c;
    }
};

struct Plate {
    std::vector<Point3> samples;
    Point3 middle, normal;
    double radius_m = 0.0;
};

Plate sampled(const std::vector<Point3>& corners, int samples_x, int samples_y) {
    Plate plate;
    const Point3 along = corners[1] - corners[0], across = corners[3] - corners[0];
    const Point3 normal = cross(along, across);
    plate.normal = normal * (1.0 / std::max(norm(normal), 1e-12));
    plate.middle = corners[0] + (along + across) * 0.5;
    plate.radius_m = 0.5 * norm(along + across);
    for (int j = 0; j < samples_y; ++j) {
        for (int i = 0; i < samples_x; ++i) {
            plate.samples.push_back(corners[0] + along * ((i + 0.5) / samples_x) + across * ((j + 0.5) / samples_y));
        }
    }
    return plate;
}

/// Share of the isotropic sky before the plane that is open, seen from the plate's middle: directions spread evenly
/// over the sky's half-sphere (equal steps of height are equal areas, Archimedes), each weighted by its cosine on the
/// plane.
double sky_view(const Plate& plate, const std::vector<Occluder>& occluders, const Horizon& horizon,
                double sketch_up_azimuth_deg) {
    constexpr int rings = 24, spokes = 60;
    std::vector<double> yearly_transmittance;
    for (const Occluder& o : occluders) {
        double sum = 0.0;
        for (int month = 1; month <= 12; ++month)
            sum += o.crown_transmittance(month);
        yearly_transmittance.push_back(sum / 12.0);
    }
    double open = 0.0, whole = 0.0;
    for (int i = 0; i < rings; ++i) {
        const double up = (i + 0.5) / rings, level = std::sqrt(1.0 - up * up);
        for (int j = 0; j < spokes; ++j) {
            const double bearing = radians((j + 0.5) * 360.0 / spokes);
            const double east = level * std::sin(bearing), north = level * std::cos(bearing);
            const Point3 dir = to_sketch(east, north, up, sketch_up_azimuth_deg);
            const double weight = dot(dir, plate.normal);
            if (!(weight > 0.0)) continue;
            whole += weight;
            if (!horizon.empty() && horizon.hides(east, north, up)) continue;
            double passed = 1.0;
            for (std::size_t k = 0; k < occluders.size() && passed > 0.0; ++k) {
                if (!occluders[k].may_meet(plate.middle, 0.0, dir)) continue;
                passed *= occluders[k].passes(plate.middle, dir, yearly_transmittance[k]);
            }
            open += weight * passed;
        }
    }
    return whole > 0.0 ? open / whole : 1.0;
}

}  // namespace

Shade shade_of(const Site& site, const PlacedCollector& collector, const std::string& own_surface_id,
               const sky::PreparedYear& year, int samples_x, int samples_y) {
    Shade out;
    out.beam_share.assign(hours, 0.0F);
    if (collector.corners.size() != 4) return out;
    const Plate plate = sampled(collector.corners, std::max(1, samples_x), std::max(1, samples_y));
    const std::size_t samples = plate.samples.size();
    out.rays_per_hour = static_cast<int>(samples);
    const std::vector<Occluder> occluders = Occluder::seen_by(site, own_surface_id, plate.normal);
    const Horizon horizon(site.horizon);

    std::vector<Tally> tallies(occluders.size());
    Tally horizon_tally, building_tally;
    std::vector<double> passed(samples), by_building(samples);
    for (const Sun& sun : suns_before(year, plate.normal, site.sketch_up_azimuth_deg, 1)) {
        const bool hidden = !horizon.empty() && horizon.hides(sun.east, sun.north, sun.up);
        if (hidden) horizon_tally.add(sun, 0.0);
        std::fill(passed.begin(), passed.end(), 1.0);
        bool building_meets = false;
        for (std::size_t k = 0; k < occluders.size(); ++k) {
            const Occluder& o = occluders[k];
            if (!o.may_meet(plate.middle, plate.radius_m, sun.dir)) continue;
            const double crown = o.crown_transmittance(sun.month);
            double alone = 0.0;
            if (o.own_building() && !building_meets) {
                building_meets = true;
                std::fill(by_building.begin(), by_building.end(), 1.0);
            }
            for (std::size_t i = 0; i < samples; ++i) {
                const double p = o.passes(plate.samples[i], sun.dir, crown);
                alone += p;
                passed[i] *= p;
                if (o.own_building()) by_building[i] *= p;
            }
            if (!o.own_building()) tallies[k].add(sun, alone / static_cast<double>(samples));
        }
        const auto mean = [&](const std::vector<double>& v) {
            double sum = 0.0;
            for (const double p : v)
                sum += p;
            return sum / static_cast<double>(samples);
        };
        if (building_meets) building_tally.add(sun, mean(by_building));
        out.beam_share[sun.hour] = hidden ? 0.0F : static_cast<float>(mean(passed));
    }

    for (std::size_t k = 0; k < occluders.size(); ++k) {
        if (!occluders[k].own_building())
            out.causes.push_back(tallies[k].cause(occluders[k].id(), occluders[k].label()));
    }
    out.causes.push_back(building_tally.cause({}, building_label));
    out.causes.push_back(horizon_tally.cause({}, horizon_label));
    out.causes.erase(std::remove_if(out.causes.begin(), out.causes.end(),
                                    [](const ShadeCause& c) { return !(c.lost_kwh_m2 > least_cause_kwh_m2); }),
                     out.causes.end());
    std::stable_sort(out.causes.begin(), out.causes.end(),
                     [](const ShadeCause& a, const ShadeCause& b) { return a.lost_kwh_m2 > b.lost_kwh_m2; });
    out.sky_view = sky_view(plate, occluders, horizon, site.sketch_up_azimuth_deg);
    return out;
}

ShadeMap shade_map(const Site& site, const Surface& surface, const sky::PreparedYear& year, double cell_m,
                   int every_nth_day) {
    ShadeMap map;
    map.cell_m = cell_m;
    constexpr double most_cells = 1e6;
    if (surface.outline.size() < 3 || !(cell_m > 0.0)) return map;
    const Bounds b = bounds_of(surface.outline);
    const double columns = std::ceil(b.width_m() / cell_m - 1e-9), rows = std::ceil(b.height_m() / cell_m - 1e-9);
    if (!(columns * rows <= most_cells) || !(columns * rows >= 1.0)) return map;
    map.origin = {b.min_x_m, b.min_y_m};
    map.columns = static_cast<int>(columns);
    map.rows = static_cast<int>(rows);
    map.share.assign(static_cast<std::size_t>(map.columns) * static_cast<std::size_t>(map.rows), -1.0F);

    struct Cell {
        Point3 at;
        bool on_surface = false;
        int touched_by = -1;  ///< number of the sun for which `now` counts
        double now = 1.0;
        double lost_wh = 0.0;
    };
    const Frame frame = frame_of(surface, site.sketch_up_azimuth_deg);
    std::vector<Cell> cells(map.share.size());
    for (int r = 0; r < map.rows; ++r) {
        for (int c = 0; c < map.columns; ++c) {
            const Point2 p{b.min_x_m + (c + 0.5) * cell_m, b.min_y_m + (r + 0.5) * cell_m};
            Cell& cell = cells[static_cast<std::size_t>(r) * static_cast<std::size_t>(map.columns) +
                               static_cast<std::size_t>(c)];
            cell.at = to_space(frame, p, shade_map_off_m);
            cell.on_surface = contains(surface.outline, p);
        }
    }
    const std::vector<Occluder> occluders = Occluder::of(site, surface.id);
    const Horizon horizon(site.horizon);
    const Point3 middle =
        to_space(frame, {0.5 * (b.min_x_m + b.max_x_m), 0.5 * (b.min_y_m + b.max_y_m)}, shade_map_off_m);
    const double radius_m = 0.5 * std::hypot(b.width_m(), b.height_m());
    const auto first_cell = [cell_m](double from_m) { return static_cast<int>(std::ceil(from_m / cell_m - 0.5)); };
    const auto last_cell = [cell_m](double to_m) { return static_cast<int>(std::floor(to_m / cell_m - 0.5)); };

    double whole_wh = 0.0, hidden_wh = 0.0;
    int number = -1;
    std::vector<std::size_t> touched;
    for (const Sun& sun : suns_before(year, frame.normal, site.sketch_up_azimuth_deg, every_nth_day)) {
        if (!(sun.beam_w_m2 > 0.0)) continue;
        ++number;
        whole_wh += sun.beam_w_m2;
        if (!horizon.empty() && horizon.hides(sun.east, sun.north, sun.up)) {
            hidden_wh += sun.beam_w_m2;
            continue;
        }
        touched.clear();
        const double steep = dot(sun.dir, frame.normal);
        const Point2 slant{dot(sun.dir, frame.right) / steep, dot(sun.dir, frame.up) / steep};
        for (const Occluder& o : occluders) {
            if (!o.may_meet(middle, radius_m, sun.dir)) continue;
            // Shadow of the ball round it, on the plane of the cells: only cells in the rectangle round that are asked.
            const double off_m = dot(o.bound_middle() - frame.origin, frame.normal) - shade_map_off_m;
            const Point2 foot = to_plane(frame, o.bound_middle()) - slant * off_m - map.origin;
            const double reach_x = o.bound_radius_m() * std::sqrt(1.0 + slant.x_m * slant.x_m);
            const double reach_y = o.bound_radius_m() * std::sqrt(1.0 + slant.y_m * slant.y_m);
            if (!(foot.x_m + reach_x > 0.0 && foot.x_m - reach_x < columns * cell_m && foot.y_m + reach_y > 0.0 &&
                  foot.y_m - reach_y < rows * cell_m)) {
                continue;
            }
            const int c0 = foot.x_m - reach_x > 0.0 ? first_cell(foot.x_m - reach_x) : 0;
            const int r0 = foot.y_m - reach_y > 0.0 ? first_cell(foot.y_m - reach_y) : 0;
            const int c1 = foot.x_m + reach_x < columns * cell_m ? last_cell(foot.x_m + reach_x) : map.columns - 1;
            const int r1 = foot.y_m + reach_y < rows * cell_m ? last_cell(foot.y_m + reach_y) : map.rows - 1;
            const double crown = o.crown_transmittance(sun.month);
            for (int r = r0; r <= r1; ++r) {
                for (int c = c0; c <= c1; ++c) {
                    const std::size_t i = static_cast<std::size_t>(r) * static_cast<std::size_t>(map.columns) +
                                          static_cast<std::size_t>(c);
                    Cell& cell = cells[i];
                    if (!cell.on_surface) continue;
                    if (cell.touched_by != number) {
                        cell.touched_by = number;
                        cell.now = 1.0;
                        touched.push_back(i);
                    }
                    if (cell.now > 0.0) cell.now *= o.passes(cell.at, sun.dir, crown);
                }
            }
        }
        for (const std::size_t i : touched)
            cells[i].lost_wh += (1.0 - cells[i].now) * sun.beam_w_m2;
    }
    for (std::size_t i = 0; i < cells.size(); ++i) {
        if (!cells[i].on_surface) continue;
        map.share[i] = whole_wh > 0.0 ? static_cast<float>((whole_wh - hidden_wh - cells[i].lost_wh) / whole_wh) : 1.0F;
    }
    return map;
}

}  // namespace wg::site
