#include "core/scene/convex.h"

#include <algorithm>
#include <cmath>
#include <numeric>

#include "core/site/geometry.h"
#include "core/site/vec.h"

namespace wg::scene {
namespace {

using site::operator-, site::operator+, site::operator*;
using site::cross;
using Piece = std::vector<std::size_t>;

constexpr double level = 1e-12;  ///< m2: three corners in a line

double turn_at(const std::vector<Point2>& outline, std::size_t a, std::size_t b, std::size_t c) {
    return cross(outline[b] - outline[a], outline[c] - outline[b]);
}

bool is_convex(const std::vector<Point2>& outline, const Piece& piece) {
    const std::size_t n = piece.size();
    for (std::size_t i = 0; i < n; ++i) {
        if (turn_at(outline, piece[i], piece[(i + 1) % n], piece[(i + 2) % n]) < -level) return false;
    }
    return true;
}

bool in_triangle(Point2 p, Point2 a, Point2 b, Point2 c) {
    return cross(b - a, p - a) >= 0.0 && cross(c - b, p - b) >= 0.0 && cross(a - c, p - c) >= 0.0;
}

bool is_ear(const std::vector<Point2>& outline, const Piece& left, std::size_t i) {
    const std::size_t n = left.size();
    const std::size_t a = left[(i + n - 1) % n], b = left[i], c = left[(i + 1) % n];
    if (turn_at(outline, a, b, c) <= level) return false;
    return std::none_of(left.begin(), left.end(), [&](std::size_t k) {
        return k != a && k != b && k != c && in_triangle(outline[k], outline[a], outline[b], outline[c]);
    });
}

std::vector<Piece> triangles(const std::vector<Point2>& outline, Piece left) {
    std::vector<Piece> out;
    while (left.size() > 3) {
        std::size_t ear = left.size();
        for (std::size_t i = 0; i < left.size() && ear == left.size(); ++i) {
            if (is_ear(outline, left, i)) ear = i;
        }
        if (ear == left.size()) {
            // Only corners in a line, or a crossing: a flat corner goes without a triangle.
            for (std::size_t i = 0; i < left.size() && ear == left.size(); ++i) {
                const std::size_t n = left.size();
                if (std::abs(turn_at(outline, left[(i + n - 1) % n], left[i], left[(i + 1) % n])) <= level) ear = i;
            }
            if (ear == left.size()) return out;
        } else {
            const std::size_t n = left.size();
            out.push_back({left[(ear + n - 1) % n], left[ear], left[(ear + 1) % n]});
        }
        left.erase(left.begin() + static_cast<std::ptrdiff_t>(ear));
    }
    if (turn_at(outline, left[0], left[1], left[2]) > level) out.push_back(left);
    return out;
}

/// The two joined at an edge that they share; empty when they share none.
Piece joined(const Piece& a, const Piece& b) {
    for (std::size_t i = 0; i < a.size(); ++i) {
        const std::size_t from = a[i], to = a[(i + 1) % a.size()];
        for (std::size_t k = 0; k < b.size(); ++k) {
            if (b[k] != to || b[(k + 1) % b.size()] != from) continue;
            Piece out;
            for (std::size_t s = 0; s < a.size(); ++s)  // a from the edge's end round to its start
                out.push_back(a[(i + 1 + s) % a.size()]);
            for (std::size_t s = 2; s < b.size(); ++s)  // then b's other corners
                out.push_back(b[(k + s) % b.size()]);
            return out;
        }
    }
    return {};
}

}  // namespace

std::vector<Piece> convex_pieces(const std::vector<Point2>& outline) {
    if (outline.size() < 3) return {};
    Piece all(outline.size());
    std::iota(all.begin(), all.end(), std::size_t{0});
    const double area = site::signed_area_m2(outline);
    if (!(std::abs(area) > level)) return {};
    if (area < 0.0) std::reverse(all.begin(), all.end());
    if (is_convex(outline, all)) return {all};
    std::vector<Piece> pieces = triangles(outline, std::move(all));
    for (bool again = true; again;) {
        again = false;
        for (std::size_t a = 0; a < pieces.size() && !again; ++a) {
            for (std::size_t b = a + 1; b < pieces.size() && !again; ++b) {
                Piece both = joined(pieces[a], pieces[b]);
                if (both.empty() || !is_convex(outline, both)) continue;
                pieces[a] = std::move(both);
                pieces.erase(pieces.begin() + static_cast<std::ptrdiff_t>(b));
                again = true;
            }
        }
    }
    return pieces;
}

std::vector<Point2> hull_of(std::vector<Point2> points) {
    if (points.size() < 3) return points;
    std::sort(points.begin(), points.end(),
              [](Point2 a, Point2 b) { return a.x_m < b.x_m || (a.x_m == b.x_m && a.y_m < b.y_m); });
    std::vector<Point2> out(2 * points.size());
    std::size_t n = 0;
    const auto add = [&](Point2 p, std::size_t least) {
        while (n >= least && cross(out[n - 1] - out[n - 2], p - out[n - 1]) <= 0.0)
            --n;
        out[n++] = p;
    };
    for (const Point2 p : points)
        add(p, 2);
    const std::size_t upper = n + 1;
    for (std::size_t i = points.size() - 1; i-- > 0;)
        add(points[i], upper);
    out.resize(n > 0 ? n - 1 : 0);
    return out;
}

std::vector<Point2> shared_part(const std::vector<Point2>& a, const std::vector<Point2>& b) {
    if (a.size() < 3 || b.size() < 3) return {};
    std::vector<Point2> part = a, next;
    for (std::size_t i = 0; i < b.size() && !part.empty(); ++i) {
        const Point2 from = b[i], along = b[(i + 1) % b.size()] - from;
        next.clear();
        for (std::size_t k = 0; k < part.size(); ++k) {
            const Point2 p = part[k], q = part[(k + 1) % part.size()];
            const double at_p = cross(along, p - from), at_q = cross(along, q - from);
            if (at_p >= 0.0) next.push_back(p);
            if ((at_p > 0.0 && at_q < 0.0) || (at_p < 0.0 && at_q > 0.0))
                next.push_back(p + (q - p) * (at_p / (at_p - at_q)));
        }
        part.swap(next);
    }
    constexpr double least_m2 = 1e-9;
    if (part.size() < 3 || site::signed_area_m2(part) < least_m2) return {};
    return part;
}

}  // namespace wg::scene
