#include <algorithm>
#include <cmath>

#include "core/commissioning/gauge_log.h"

namespace wg::commissioning {
namespace {

constexpr double vacuum_floor_pa = 10.0;  // below it a vacuum gauge's own error is of the reading's size

/// The three curves of a log on scales of their own range, so that they can be weighed against each other.
struct ThinningCurves {
    std::vector<double> value[3];  ///< NaN: no reading

    explicit ThinningCurves(const std::vector<GaugePoint>& points) {
        for (const GaugePoint& p : points) {
            value[0].push_back(p.absolute_pa ? std::log(*p.absolute_pa + vacuum_floor_pa) : NAN);
            value[1].push_back(p.gauge_bar.value_or(NAN));
            value[2].push_back(p.c.value_or(NAN));
        }
        for (std::size_t k = 0; k < 3; ++k) {
            double low = HUGE_VAL, high = -HUGE_VAL;
            for (const double v : value[k])
                if (!std::isnan(v)) {
                    low = std::min(low, v);
                    high = std::max(high, v);
                }
            // Temperatures move with the pressure or on their own; the pressure goes first.
            const double scale = high > low ? (k == 2 ? 0.3 : 1.0) / (high - low) : 0.0;
            for (double& v : value[k])
                v *= scale;
        }
    }
};

struct Farthest {
    std::size_t at = 0;
    double off = -1.0;
};

Farthest farthest(const std::vector<GaugePoint>& points, const ThinningCurves& curves, std::size_t from,
                  std::size_t to) {
    Farthest best;
    for (std::size_t i = from + 1; i < to; ++i) {
        const double part = (points[i].seconds - points[from].seconds) / (points[to].seconds - points[from].seconds);
        double off = 0.0;
        for (const std::vector<double>& v : curves.value) {
            const double line = v[from] + part * (v[to] - v[from]);
            if (std::isfinite(line) && std::isfinite(v[i])) off = std::max(off, std::fabs(v[i] - line));
        }
        if (off > best.off) best = {i, off};
    }
    return best;
}

}  // namespace

std::vector<GaugePoint> thinned(const std::vector<GaugePoint>& points, std::size_t most) {
    most = std::max<std::size_t>(most, 2);
    if (points.size() <= most) return points;
    const ThinningCurves curves(points);
    const double span = points.back().seconds - points.front().seconds;
    std::vector<std::size_t> kept = {0};
    const std::size_t even = most / 3;
    for (std::size_t k = 1; k < even; ++k) {
        const double at = points.front().seconds + span * static_cast<double>(k) / static_cast<double>(even);
        const auto found = std::lower_bound(points.begin(), points.end(), at,
                                            [](const GaugePoint& p, double s) { return p.seconds < s; });
        const std::size_t i = static_cast<std::size_t>(found - points.begin());
        if (i > kept.back() && i + 1 < points.size()) kept.push_back(i);
    }
    kept.push_back(points.size() - 1);

    std::vector<Farthest> between;  // of the stretch after each kept point
    for (std::size_t k = 0; k + 1 < kept.size(); ++k)
        between.push_back(farthest(points, curves, kept[k], kept[k + 1]));
    while (kept.size() < most) {
        const auto widest = std::max_element(between.begin(), between.end(),
                                             [](const Farthest& a, const Farthest& b) { return a.off < b.off; });
        if (widest->off < 0.0) break;
        const std::ptrdiff_t k = widest - between.begin();
        const std::size_t from = kept[static_cast<std::size_t>(k)], at = widest->at,
                          to = kept[static_cast<std::size_t>(k) + 1];
        kept.insert(kept.begin() + k + 1, at);
        between[static_cast<std::size_t>(k)] = farthest(points, curves, from, at);
        between.insert(between.begin() + k + 1, farthest(points, curves, at, to));
    }
    std::vector<GaugePoint> out;
    out.reserve(kept.size());
    for (const std::size_t i : kept)
        out.push_back(points[i]);
    return out;
}

}  // namespace wg::commissioning
