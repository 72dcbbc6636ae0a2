#include "core/fixing/beam.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numeric>

namespace wg::fixing {
namespace {

constexpr double same_support_m = 1e-3;
constexpr double same_rail_m = 0.05;  ///< points this near across share a rail
constexpr double least_spread_m = 1e-3;

constexpr std::size_t most_supports = 64;
using Row = std::array<double, most_supports>;

/// Sorted supports of a beam; those in one place share a reaction.
struct Supports {
    Row at{};
    std::size_t count = 0;
    std::array<std::size_t, most_supports> belongs{};
    Row sharing{};

    explicit Supports(const std::vector<double>& places) {
        std::array<std::size_t, most_supports> order{};
        const std::size_t n = std::min(places.size(), most_supports);
        std::iota(order.begin(), order.begin() + static_cast<std::ptrdiff_t>(n), std::size_t{0});
        std::sort(order.begin(), order.begin() + static_cast<std::ptrdiff_t>(n), [&](std::size_t a, std::size_t b) {
            return places[a] < places[b] || (places[a] == places[b] && a < b);
        });
        for (std::size_t k = 0; k < n; ++k) {
            const std::size_t i = order[k];
            if (count == 0 || places[i] - at[count - 1] > same_support_m) {
                at[count] = places[i];
                sharing[count] = 0.0;
                ++count;
            }
            belongs[i] = count - 1;
            sharing[count - 1] += 1.0;
        }
    }
};

/// Reactions and moments over the supports (sagging positive) under a load of `w` for each metre from p to q.
struct Solved {
    Row reaction{}, moment{};
};

Solved solve(const Supports& s, double p, double q, double w) {
    Solved out;
    const std::size_t n = s.count;
    if (n == 0 || !(q > p)) return out;
    if (n == 1) {  // stiffly held: a cantilever to both sides
        const double left = std::max(0.0, s.at[0] - p), right = std::max(0.0, q - s.at[0]);
        out.reaction[0] = w * (q - p);
        out.moment[0] = -0.5 * w * std::max(left * left, right * right);
        return out;
    }
    const double first = s.at[0], last = s.at[n - 1];
    const double left = std::max(0.0, std::min(q, first) - p), right = std::max(0.0, q - std::max(p, last));
    const double left_arm = first - 0.5 * (p + std::min(q, first)), right_arm = 0.5 * (q + std::max(p, last)) - last;
    out.moment[0] = left > 0.0 ? -w * left * left_arm : 0.0;
    out.moment[n - 1] = right > 0.0 ? -w * right * right_arm : 0.0;
    out.reaction[0] += w * left;
    out.reaction[n - 1] += w * right;
    // Load of each span: the terms of the three-moment equation at its two ends, and a simple beam's reactions.
    Row from_left{}, from_right{};
    for (std::size_t i = 0; i + 1 < n; ++i) {
        const double span = s.at[i + 1] - s.at[i];
        const double a = std::clamp(p - s.at[i], 0.0, span), b = std::clamp(q - s.at[i], 0.0, span);
        if (!(b > a)) continue;
        const auto term = [span](double x) { return span * x * x / 2.0 - x * x * x * x / (4.0 * span); };
        from_left[i] = w * (term(b) - term(a));                 // for the span's right support
        from_right[i] = w * (term(span - a) - term(span - b));  // for its left one
        const double load = w * (b - a), middle = 0.5 * (a + b);
        out.reaction[i] += load * (1.0 - middle / span);
        out.reaction[i + 1] += load * middle / span;
    }
    if (n > 2) {  // three-moment equations for the inner supports, solved by elimination (Thomas)
        Row diagonal{}, load{};
        for (std::size_t i = 1; i + 1 < n; ++i) {
            const double a = s.at[i] - s.at[i - 1], b = s.at[i + 1] - s.at[i];
            diagonal[i] = 2.0 * (a + b);
            load[i] = -from_left[i - 1] - from_right[i];
            if (i == 1) load[i] -= out.moment[0] * a;
            if (i + 2 == n) load[i] -= out.moment[n - 1] * b;
        }
        for (std::size_t i = 2; i + 1 < n; ++i) {
            const double span = s.at[i] - s.at[i - 1], k = span / diagonal[i - 1];
            diagonal[i] -= k * span;
            load[i] -= k * load[i - 1];
        }
        for (std::size_t i = n - 2; i >= 1; --i) {
            const double next = i + 2 == n ? 0.0 : (s.at[i + 1] - s.at[i]) * out.moment[i + 1];
            out.moment[i] = (load[i] - next) / diagonal[i];
        }
    }
    for (std::size_t i = 0; i + 1 < n; ++i) {
        const double span = s.at[i + 1] - s.at[i], shift = (out.moment[i + 1] - out.moment[i]) / span;
        out.reaction[i] += shift;
        out.reaction[i + 1] -= shift;
    }
    return out;
}

/// Greatest moment of a beam that `solve` solved for an even load of 1 N/m all along.
double greatest_moment(const Supports& s, const Solved& solved, double& at, bool& over_support) {
    double greatest = 0.0;
    const auto meet = [&](double m, double where, bool support) {
        if (std::abs(m) <= greatest) return;
        greatest = std::abs(m);
        at = where;
        over_support = support;
    };
    for (std::size_t i = 0; i < s.count; ++i) {
        meet(solved.moment[i], s.at[i], true);
        if (i + 1 == s.count) break;
        const double span = s.at[i + 1] - s.at[i], ma = solved.moment[i], mb = solved.moment[i + 1];
        const double x = 0.5 * span + (mb - ma) / span;  // where the shear is nothing
        if (x > 0.0 && x < span) meet(ma + (mb - ma) * x / span + 0.5 * x * (span - x), s.at[i] + x, false);
    }
    return greatest;
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
    const Supports s(supports_m);
    const Solved solved = solve(s, from_m, to_m, 1.0 / (to_m - from_m));
    std::vector<double> out(supports_m.size(), 0.0);
    for (std::size_t i = 0; i < std::min(out.size(), most_supports); ++i)
        out[i] = solved.reaction[s.belongs[i]] / s.sharing[s.belongs[i]];
    return out;
}

RailBend bend_of(const std::vector<double>& supports_m, double from_m, double to_m) {
    RailBend out;
    const Supports s(supports_m);
    if (s.count == 0) return out;
    const Solved solved = solve(s, from_m, to_m, 1.0);
    out.moment_nm = greatest_moment(s, solved, out.moment_at_m, out.over_support);
    if (s.count == 1) return out;  // turns about its point: no deflection of its own
    const auto meet = [&](double sag, double span, bool cantilever) {
        if (!(span > 0.0) || std::abs(sag) / span <= out.sag_of_span) return;
        out.sag_of_span = std::abs(sag) / span;
        out.sag_m = std::abs(sag);
        out.span_m = span;
        out.cantilever = cantilever;
    };
    for (std::size_t i = 0; i + 1 < s.count; ++i) {
        const double span = s.at[i + 1] - s.at[i], ma = solved.moment[i], mb = solved.moment[i + 1];
        constexpr int steps = 40;
        for (int k = 1; k < steps; ++k) {
            const double x = span * k / steps, t = static_cast<double>(k) / steps;
            meet(x * (span * span * span - 2.0 * span * x * x + x * x * x) / 24.0 +
                     span * span / 6.0 * (ma * (2.0 * t - 3.0 * t * t + t * t * t) + mb * (t - t * t * t)),
                 span, false);
        }
        // The ends turn with their neighbours' spans.
        const double turn_a = span * span * span / 24.0 + span * (2.0 * ma + mb) / 6.0;
        const double turn_b = span * span * span / 24.0 + span * (ma + 2.0 * mb) / 6.0;
        const double left = s.at[0] - from_m, right = to_m - s.at[s.count - 1];
        if (i == 0) meet(std::pow(left, 4) / 8.0 - turn_a * left, 2.0 * left, true);
        if (i + 2 == s.count) meet(std::pow(right, 4) / 8.0 - turn_b * right, 2.0 * right, true);
    }
    return out;
}

RailLine rail_line(const PointedPlate& plate, const Shares& shares, std::size_t rail) {
    RailLine out;
    out.to_m = shares.along_x ? plate.length_m : plate.width_m;
    for (std::size_t i = 0; i < shares.parts.size(); ++i) {
        if (shares.parts[i].rail == rail)
            out.supports_m.push_back(shares.along_x ? plate.points[i].x_m : plate.points[i].y_m);
    }
    return out;
}

Shares even_load_shares(const PointedPlate& plate) {
    Shares out;
    const std::size_t n = plate.nominal.size();
    out.of_point.assign(n, 0.0);
    out.parts.resize(n);
    if (n == 0) return out;
    const auto by_x = rails_of(plate.nominal, true), by_y = rails_of(plate.nominal, false);
    out.along_x = single_points(by_x) <= single_points(by_y);
    const bool along_x = out.along_x;
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
    out.of_rail = beam_shares(across_m, 0.0, depth_m);
    std::vector<double> along_m;
    std::vector<std::size_t> order;
    for (std::size_t k = 0; k < rails.size(); ++k) {
        along_m.clear();
        for (const std::size_t i : rails[k])
            along_m.push_back(along_x ? plate.points[i].x_m : plate.points[i].y_m);
        const Supports s(along_m);
        const Solved solved = solve(s, 0.0, run_m, 1.0);
        for (std::size_t i = 0; i < along_m.size(); ++i) {
            const std::size_t at = s.belongs[i];
            out.of_point[rails[k][i]] = out.of_rail[k] * solved.reaction[at] / (s.sharing[at] * run_m);
        }
        double at = 0.0;
        bool over_support = false;
        out.rail_moment_m2.push_back(greatest_moment(s, solved, at, over_support));
        // Rails come sorted across the plate: half-way lines to the neighbours.
        const double low_across = k == 0 ? 0.0 : 0.5 * (across_m[k - 1] + across_m[k]);
        const double high_across = k + 1 == rails.size() ? depth_m : 0.5 * (across_m[k] + across_m[k + 1]);
        order.resize(along_m.size());
        std::iota(order.begin(), order.end(), std::size_t{0});
        std::sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
            return along_m[a] < along_m[b] || (along_m[a] == along_m[b] && a < b);
        });
        for (std::size_t j = 0; j < order.size(); ++j) {
            const double low = j == 0 ? 0.0 : 0.5 * (along_m[order[j - 1]] + along_m[order[j]]);
            const double high = j + 1 == order.size() ? run_m : 0.5 * (along_m[order[j]] + along_m[order[j + 1]]);
            out.parts[rails[k][order[j]]] = along_x ? PlatePart{{low, low_across}, {high, high_across}, k}
                                                    : PlatePart{{low_across, low}, {high_across, high}, k};
        }
    }
    return out;
}

std::vector<double> part_load_reactions(const PointedPlate& plate, const Shares& shares,
                                        const std::vector<double>& load_n) {
    const std::size_t n = shares.parts.size();
    std::vector<double> out(n, 0.0);
    const std::size_t rails = shares.of_rail.size();
    const auto across_of = [&](Point2 p) { return shares.along_x ? p.y_m : p.x_m; };
    const auto along_of = [&](Point2 p) { return shares.along_x ? p.x_m : p.y_m; };
    std::vector<double> across_m(rails, 0.0), on_rail(rails, 0.0);
    for (std::size_t i = 0; i < n; ++i) {
        across_m[shares.parts[i].rail] += across_of(plate.points[i]);
        on_rail[shares.parts[i].rail] += 1.0;
    }
    for (std::size_t k = 0; k < rails; ++k)
        across_m[k] /= on_rail[k];
    const Supports across(across_m);
    std::vector<double> along_m;
    std::vector<std::size_t> of_rail;
    for (std::size_t k = 0; k < rails; ++k) {
        along_m.clear();
        of_rail.clear();
        for (std::size_t i = 0; i < n; ++i) {
            if (shares.parts[i].rail != k) continue;
            along_m.push_back(along_of(plate.points[i]));
            of_rail.push_back(i);
        }
        const Supports along(along_m);
        for (std::size_t i = 0; i < n; ++i) {
            const PlatePart& part = shares.parts[i];
            const double low = across_of(part.low), high = across_of(part.high);
            const double from = along_of(part.low), to = along_of(part.high);
            if (!(high > low) || !(to > from)) {  // points in one place: the load stays with its own
                if (part.rail == k) out[i] += load_n[i];
                continue;
            }
            const std::size_t at = across.belongs[k];
            const double on_this = solve(across, low, high, 1.0 / (high - low)).reaction[at] / across.sharing[at];
            if (std::abs(on_this) < 1e-12) continue;
            const Solved solved = solve(along, from, to, load_n[i] * on_this / (to - from));
            for (std::size_t j = 0; j < of_rail.size(); ++j)
                out[of_rail[j]] += solved.reaction[along.belongs[j]] / along.sharing[along.belongs[j]];
        }
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
