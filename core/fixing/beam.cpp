#include "core/fixing/beam.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace wg::fixing {
namespace {

constexpr double same_support_m = 1e-3;
constexpr double same_rail_m = 0.05;  ///< points this near across share a rail
constexpr double least_spread_m = 1e-3;

/// Reactions on sorted, distinct supports under an even load w = 1 / length.
std::vector<double> reactions(const std::vector<double>& s, double from_m, double to_m) {
    const std::size_t n = s.size();
    std::vector<double> r(n, 0.0);
    const double w = 1.0 / (to_m - from_m);
    if (n == 1) return {1.0};
    const double left = s.front() - from_m, right = to_m - s.back();
    std::vector<double> moment(n, 0.0);  // sagging positive
    moment.front() = -0.5 * w * left * left;
    moment.back() = -0.5 * w * right * right;
    if (n > 2) {  // three-moment equations for the inner supports, solved by elimination (Thomas)
        std::vector<double> diagonal(n), load(n);
        for (std::size_t i = 1; i + 1 < n; ++i) {
            const double a = s[i] - s[i - 1], b = s[i + 1] - s[i];
            diagonal[i] = 2.0 * (a + b);
            load[i] = -0.25 * w * (a * a * a + b * b * b);
            if (i == 1) load[i] -= moment.front() * a;
            if (i + 2 == n) load[i] -= moment.back() * b;
        }
        for (std::size_t i = 2; i + 1 < n; ++i) {
            const double span = s[i] - s[i - 1], k = span / diagonal[i - 1];
            diagonal[i] -= k * span;
            load[i] -= k * load[i - 1];
        }
        for (std::size_t i = n - 2; i >= 1; --i) {
            const double next = i + 2 == n ? 0.0 : (s[i + 1] - s[i]) * moment[i + 1];
            moment[i] = (load[i] - next) / diagonal[i];
        }
    }
    r.front() += w * left;
    r.back() += w * right;
    for (std::size_t i = 0; i + 1 < n; ++i) {
        const double span = s[i + 1] - s[i], half = 0.5 * w * span, shift = (moment[i + 1] - moment[i]) / span;
        r[i] += half + shift;
        r[i + 1] += half - shift;
    }
    return r;
}

/// Rails as lists of point numbers, points within same_rail_m across belonging together.
std::vector<std::vector<std::size_t>> rails_of(const std::vector<Point2>& points, bool along_x) {
    std::vector<std::size_t> order(points.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    const auto across = [&](std::size_t i) { return along_x ? points[i].y_m : points[i].x_m; };
    std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) { return across(a) < across(b); });
    std::vector<std::vector<std::size_t>> rails;
    for (const std::size_t i : order) {
        if (rails.empty() || across(i) - across(rails.back().front()) > same_rail_m) rails.emplace_back();
        rails.back().push_back(i);
    }
    return rails;
}

int single_points(const std::vector<std::vector<std::size_t>>& rails) {
    return static_cast<int>(
        std::count_if(rails.begin(), rails.end(), [](const auto& rail) { return rail.size() == 1; }));
}

Point2 middle_of(const std::vector<Point2>& points) noexcept {
    Point2 m;
    for (const Point2 p : points) {
        m.x_m += p.x_m;
        m.y_m += p.y_m;
    }
    const double k = 1.0 / static_cast<double>(points.size());
    return {m.x_m * k, m.y_m * k};
}

}  // namespace

std::vector<double> beam_shares(const std::vector<double>& supports_m, double from_m, double to_m) {
    if (supports_m.empty()) return {};
    std::vector<std::size_t> order(supports_m.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::stable_sort(order.begin(), order.end(),
                     [&](std::size_t a, std::size_t b) { return supports_m[a] < supports_m[b]; });
    std::vector<double> distinct;
    std::vector<std::size_t> belongs(supports_m.size());
    std::vector<int> sharing;
    for (const std::size_t i : order) {
        if (distinct.empty() || supports_m[i] - distinct.back() > same_support_m) {
            distinct.push_back(supports_m[i]);
            sharing.push_back(0);
        }
        belongs[i] = distinct.size() - 1;
        ++sharing.back();
    }
    const std::vector<double> r = reactions(distinct, from_m, to_m);
    std::vector<double> out(supports_m.size());
    for (std::size_t i = 0; i < out.size(); ++i)
        out[i] = r[belongs[i]] / sharing[belongs[i]];
    return out;
}

Shares even_load_shares(const PointedPlate& plate) {
    Shares out;
    const std::size_t n = plate.nominal.size();
    out.of_point.assign(n, 0.0);
    if (n == 0) return out;
    const auto by_x = rails_of(plate.nominal, true), by_y = rails_of(plate.nominal, false);
    const bool along_x = single_points(by_x) <= single_points(by_y);
    const auto& rails = along_x ? by_x : by_y;
    out.rails = static_cast<int>(rails.size());
    out.single_point_rails = single_points(rails);
    const double run_m = along_x ? plate.length_m : plate.width_m;
    const double depth_m = along_x ? plate.width_m : plate.length_m;
    std::vector<double> across_m;
    for (const auto& rail : rails) {
        double sum = 0.0;
        for (const std::size_t i : rail)
            sum += along_x ? plate.points[i].y_m : plate.points[i].x_m;
        across_m.push_back(sum / static_cast<double>(rail.size()));
    }
    const std::vector<double> of_rail = beam_shares(across_m, 0.0, depth_m);
    for (std::size_t k = 0; k < rails.size(); ++k) {
        std::vector<double> along_m;
        for (const std::size_t i : rails[k])
            along_m.push_back(along_x ? plate.points[i].x_m : plate.points[i].y_m);
        const std::vector<double> shares = beam_shares(along_m, 0.0, run_m);
        for (std::size_t i = 0; i < shares.size(); ++i)
            out.of_point[rails[k][i]] = of_rail[k] * shares[i];
    }
    return out;
}

std::vector<double> couple_forces(const std::vector<Point2>& points, Point2 couple_nm) {
    std::vector<double> out(points.size(), 0.0);
    if (points.size() < 2) return out;
    const Point2 m = middle_of(points);
    double xx = 0.0, xy = 0.0, yy = 0.0;
    for (const Point2 p : points) {
        xx += (p.x_m - m.x_m) * (p.x_m - m.x_m);
        xy += (p.x_m - m.x_m) * (p.y_m - m.y_m);
        yy += (p.y_m - m.y_m) * (p.y_m - m.y_m);
    }
    // Main directions of the points; a direction without extent takes no part of the couple.
    const double angle = 0.5 * std::atan2(2.0 * xy, xx - yy);
    const double c = std::cos(angle), s = std::sin(angle);
    const double least = least_spread_m * least_spread_m * static_cast<double>(points.size());
    const double along = xx * c * c + 2.0 * xy * c * s + yy * s * s,
                 across = xx * s * s - 2.0 * xy * c * s + yy * c * c;
    const double k_along = along > least ? (couple_nm.x_m * c + couple_nm.y_m * s) / along : 0.0;
    const double k_across = across > least ? (-couple_nm.x_m * s + couple_nm.y_m * c) / across : 0.0;
    for (std::size_t i = 0; i < points.size(); ++i) {
        const double dx = points[i].x_m - m.x_m, dy = points[i].y_m - m.y_m;
        out[i] = k_along * (dx * c + dy * s) + k_across * (-dx * s + dy * c);
    }
    return out;
}

double spread_m(const std::vector<Point2>& points, Point2 direction) noexcept {
    if (points.empty()) return 0.0;
    const Point2 m = middle_of(points);
    double sum = 0.0;
    for (const Point2 p : points) {
        const double d = (p.x_m - m.x_m) * direction.x_m + (p.y_m - m.y_m) * direction.y_m;
        sum += d * d;
    }
    return std::sqrt(sum / static_cast<double>(points.size()));
}

}  // namespace wg::fixing
