#include "core/site/shade_period.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace wg::site {
namespace {

/// Shortest stretch of the day that holds the share of the day's sum; the earliest of equals.
std::array<int, 2> span_of(const std::array<double, 24>& by_hour, double share) noexcept {
    double sum = 0.0;
    for (const double v : by_hour)
        sum += v;
    const double wanted = share * sum * (1.0 - 1e-12);
    for (int length = 1; length <= 24; ++length) {
        for (int from = 0; from + length <= 24; ++from) {
            double held = 0.0;
            for (int h = from; h < from + length; ++h)
                held += by_hour[static_cast<std::size_t>(h)];
            if (held >= wanted) return {from, from + length};
        }
    }
    return {0, 24};
}

}  // namespace

void find_worst(ShadeCause& cause) {
    std::array<double, 12> by_month{};
    std::array<double, 24> by_hour{};
    for (std::size_t m = 0; m < 12; ++m) {
        for (std::size_t h = 0; h < 24; ++h) {
            by_month[m] += cause.lost_by_hour_kwh_m2[m][h];
            by_hour[h] += cause.lost_by_hour_kwh_m2[m][h];
        }
    }
    const auto worst = std::max_element(by_month.begin(), by_month.end()) - by_month.begin();
    cause.worst_month = static_cast<int>(worst) + 1;
    cause.worst_hour = static_cast<int>(std::max_element(by_hour.begin(), by_hour.end()) - by_hour.begin());
    const std::array<int, 2> span =
        span_of(cause.lost_by_hour_kwh_m2[static_cast<std::size_t>(worst)], worst_span_share);
    cause.worst_from_hour = span[0];
    cause.worst_to_hour = span[1];
}

ShadeCause cause_within(ShadeCause cause, const Months& months) {
    cause.lost_kwh_m2 = 0.0;
    for (std::size_t m = 0; m < 12; ++m) {
        if (!months[m]) cause.lost_by_hour_kwh_m2[m].fill(0.0);
        for (const double lost : cause.lost_by_hour_kwh_m2[m])
            cause.lost_kwh_m2 += lost;
    }
    find_worst(cause);
    return cause;
}

Shade shade_within(const Shade& shade, const Months& months) {
    Shade out = shade;
    out.causes.clear();
    for (const ShadeCause& cause : shade.causes) {
        ShadeCause within = cause_within(cause, months);
        if (within.lost_kwh_m2 > 0.0) out.causes.push_back(std::move(within));
    }
    std::stable_sort(out.causes.begin(), out.causes.end(),
                     [](const ShadeCause& a, const ShadeCause& b) { return a.lost_kwh_m2 > b.lost_kwh_m2; });
    out.lost_kwh_m2 = 0.0;
    for (std::size_t m = 0; m < 12; ++m) {
        if (!months[m]) out.lost_by_hour_kwh_m2[m].fill(0.0);
        for (const double lost : out.lost_by_hour_kwh_m2[m])
            out.lost_kwh_m2 += lost;
    }
    return out;
}

Shade shade_on_surface(const Site& site, const Surface& surface, const sky::PreparedYear& year) {
    if (surface.outline.size() < 3) return {};
    const Frame frame = frame_of(surface, site.sketch_up_azimuth_deg);
    const Bounds b = bounds_of(surface.outline);
    PlacedCollector plate;
    plate.outline = {{b.min_x_m, b.min_y_m}, {b.max_x_m, b.min_y_m}, {b.max_x_m, b.max_y_m}, {b.min_x_m, b.max_y_m}};
    for (const Point2 corner : plate.outline)
        plate.corners.push_back(to_space(frame, corner, shade_map_off_m));
    plate.tilt_deg = surface.tilt_deg;
    plate.azimuth_deg = surface.azimuth_deg;
    return shade_of(site, plate, surface.id, year);
}

ShadeMapOptions map_options_for(const Months& months) {
    ShadeMapOptions options;
    for (std::size_t m = 0; m < 12; ++m)
        options.month_weight[m] = months[m] ? 1.0 : 0.0;
    return options;
}

std::optional<CellLight> cell_at(const ShadeMap& map, Point2 at) noexcept {
    if (!(map.cell_m > 0.0)) return std::nullopt;
    const double column = std::floor((at.x_m - map.origin.x_m) / map.cell_m);
    const double row = std::floor((at.y_m - map.origin.y_m) / map.cell_m);
    if (!(column >= 0.0 && row >= 0.0 && column < map.columns && row < map.rows)) return std::nullopt;
    const auto i =
        static_cast<std::size_t>(row) * static_cast<std::size_t>(map.columns) + static_cast<std::size_t>(column);
    if (i >= map.share.size() || i >= map.beam_kwh_m2.size() || map.share[i] < 0.0F) return std::nullopt;
    return CellLight{1.0 - static_cast<double>(map.share[i]), static_cast<double>(map.beam_kwh_m2[i])};
}

}  // namespace wg::site
