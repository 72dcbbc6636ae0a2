// Making an occluder ready for a grid: its corners in the grid's own coordinates, cut off behind the cells' plane.
#include <algorithm>
#include <cmath>
#include <map>
#include <utility>

#include "core/quantity/constants.h"
#include "core/site/shadow.h"
#include "core/site/vec.h"

namespace wg::site {
namespace {

/// Distances off the cells' plane below this share of the coordinates' size are zero: rounding may have made them.
constexpr double snap = 1e-12;
/// Blur in the cells' plane above which outlines are given up and every cell is asked.
constexpr double most_fuzz_m = 1e-3;

double largest(Point3 p) noexcept {
    return std::max({std::abs(p.x_m), std::abs(p.y_m), std::abs(p.z_m)});
}

bool is_convex(const std::vector<Point2>& outline) {  // counter-clockwise
    constexpr double straight = 1e-12;
    constexpr std::size_t most_corners = 64;
    if (outline.size() > most_corners || !is_simple(outline)) return false;
    for (std::size_t i = 0; i < outline.size(); ++i) {
        const Point2 a = outline[i], b = outline[(i + 1) % outline.size()], c = outline[(i + 2) % outline.size()];
        if (cross(b - a, c - b) < -straight * norm(b - a) * norm(c - b)) return false;
    }
    return true;
}

std::vector<Point3> at_height(const std::vector<Point2>& outline, double z_m) {
    std::vector<Point3> out;
    out.reserve(outline.size());
    for (const Point2 p : outline)
        out.push_back({p.x_m, p.y_m, z_m});
    return out;
}

}  // namespace

SunOnGrid on_grid(const CellGrid& grid, Point3 to_sun) noexcept {
    SunOnGrid sun;
    sun.dir = to_sun;
    const double cosine = dot(grid.normal, to_sun);
    sun.stretch = cosine > 0.0 ? 1.0 / cosine : 0.0;
    sun.slant_x = dot(grid.per_x, to_sun) * sun.stretch;
    sun.slant_y = dot(grid.per_y, to_sun) * sun.stretch;
    sun.reach_x = std::sqrt(dot(grid.per_x, grid.per_x) + sun.slant_x * sun.slant_x);
    sun.reach_y = std::sqrt(dot(grid.per_y, grid.per_y) + sun.slant_y * sun.slant_y);
    return sun;
}

ShadowScratch::ShadowScratch(const CellGrid& grid)
    : low(static_cast<std::size_t>(grid.rows), grid.columns), high(static_cast<std::size_t>(grid.rows), -1) {
    outer = CellMask(grid.columns, grid.rows);
}

Shadow::Shadow(const Occluder& occluder, const CellGrid& grid) : occluder_(&occluder), grid_(&grid) {
    using Shape = Occluder::Shape;
    columns_per_m_ = norm(grid.per_x);
    rows_per_m_ = norm(grid.per_y);
    scale_m_ = std::max({largest(grid.first), largest(grid.middles.back()),
                         largest(occluder.bound_middle()) + occluder.bound_radius_m(), 1.0});
    whole_ = {corner(occluder.bound_middle()), occluder.bound_radius_m() + 1e-9 * scale_m_};
    if (whole_.middle.off_m + whole_.radius_m < 0.0) {  // all of it behind the plane
        whole_.radius_m = -1.0;
        return;
    }
    solid_ = whole_;
    switch (occluder.shape_) {
        case Shape::box: {
            std::vector<Point2> outline;
            for (const Point2 p : {Point2{-1, -1}, {1, -1}, {1, 1}, {-1, 1}}) {
                outline.push_back(occluder.middle_ +
                                  turned({p.x_m * occluder.half_width_m_, p.y_m * occluder.half_depth_m_},
                                         occluder.turn_cos_, occluder.turn_sin_));
            }
            add_prism(occluder, outline);
            break;
        }
        case Shape::prism: add_prism(occluder, occluder.outline_); break;
        case Shape::post: add_post(occluder); break;
        case Shape::tree: {
            const double half = 0.5 * (occluder.high_m_ - occluder.low_m_);
            solid_ = {corner({occluder.middle_.x_m, occluder.middle_.y_m, occluder.low_m_ + half}),
                      std::hypot(half, occluder.radius_m_) + 1e-9 * scale_m_};
            add_post(occluder);
            if (occluder.crown_half_height_m_ > 0.0) add_crown(occluder);
            break;
        }
        case Shape::plane: add_plane(occluder); break;
    }
    if (!(fuzz_m_ <= most_fuzz_m)) sharp_ = false;
}

Shadow::Corner Shadow::corner(Point3 p) const noexcept {
    const Point3 v = p - grid_->first;
    Corner c{dot(grid_->per_x, v), dot(grid_->per_y, v), dot(grid_->normal, v)};
    if (std::abs(c.off_m) <= snap * scale_m_) c.off_m = 0.0;
    return c;
}

/// Sutherland and Hodgman: the part of an outline on the open side of the cells' plane.
std::vector<Shadow::Corner> Shadow::cut(const std::vector<Point3>& outline) {
    std::vector<Corner> out;
    double highest_m = -1.0;
    for (std::size_t i = 0, j = outline.size() - 1; i < outline.size(); j = i++) {
        const Corner a = corner(outline[j]), b = corner(outline[i]);
        highest_m = std::max(highest_m, b.off_m);
        if ((a.off_m > 0.0 && b.off_m < 0.0) || (a.off_m < 0.0 && b.off_m > 0.0)) {
            const double t = a.off_m / (a.off_m - b.off_m);
            out.push_back({a.x + t * (b.x - a.x), a.y + t * (b.y - a.y), 0.0});
            fuzz_m_ = std::max(fuzz_m_, 1e-14 * scale_m_ * norm(outline[i] - outline[j]) / std::abs(a.off_m - b.off_m));
        }
        if (b.off_m >= 0.0) out.push_back(b);
    }
    if (highest_m == 0.0 && out.size() > 2) sharp_ = false;  // in the cells' plane: rounding decides everywhere
    return out;
}

void Shadow::add_prism(const Occluder& occluder, const std::vector<Point2>& outline) {
    std::vector<Point2> turned_left = outline;
    if (signed_area_m2(outline) < 0.0) std::reverse(turned_left.begin(), turned_left.end());
    if (is_convex(turned_left)) {
        bodies_.push_back(body_of(turned_left, occluder.low_m_, occluder.high_m_));
        return;
    }
    // Whatever its outline: a ray that meets the prism goes through a side, or leaves by top or foot.
    const std::vector<Point3> top = at_height(outline, occluder.high_m_), foot = at_height(outline, occluder.low_m_);
    sheets_.push_back({cut(top), false});
    sheets_.push_back({cut(foot), false});
    for (std::size_t i = 0, j = outline.size() - 1; i < outline.size(); j = i++)
        sheets_.push_back({cut({foot[j], foot[i], top[i], top[j]}), true});
}

void Shadow::add_post(const Occluder& occluder) {
    if (!(occluder.high_m_ > occluder.low_m_)) return;
    const double r = occluder.radius_m_;
    // So many that the gap to the round is about 0.02 of a cell: few cells are asked for it.
    const double wanted = pi * std::sqrt(25.0 * r * std::max(columns_per_m_, rows_per_m_));
    const int sides = static_cast<int>(std::clamp(wanted, 12.0, 64.0));
    const auto post_of = [&](double reach_m) {
        std::vector<Point2> outline;
        for (int i = 0; i < sides; ++i) {
            const double angle = 2.0 * pi * i / sides;
            outline.push_back(occluder.middle_ + Point2{reach_m * std::cos(angle), reach_m * std::sin(angle)});
        }
        bodies_.push_back(body_of(outline, occluder.low_m_, occluder.high_m_));
    };
    // As long as the cells' plane cuts it across, if at all, what is left out between the sides and the round moves the
    // shadow's outline by little. Where the plane cuts along it or through its top that can be much: two bodies then.
    const double gap_m = r / std::cos(pi / sides) - r;
    const Corner top = corner({occluder.middle_.x_m, occluder.middle_.y_m, occluder.high_m_});
    const double level = std::abs(grid_->normal.z_m);
    if (level > 0.3 && top.off_m > 1.5 * r) {
        post_of(r + 0.5 * gap_m);  // as far out at the corners as in at the sides
        round_m_ = 0.5 * gap_m / level;
    } else {
        post_of(r);
        post_of(r + gap_m);
    }
}

void Shadow::add_plane(const Occluder& occluder) {
    std::vector<Point3> outline;
    for (const Point2 p : occluder.outline_)
        outline.push_back(to_space(occluder.frame_, p));
    bool near = false;
    for (const Point3 p : outline)
        near = near || corner(p).off_m < 1e-5;
    std::vector<Point2> turned_left = occluder.outline_;
    if (signed_area_m2(turned_left) < 0.0) std::reverse(turned_left.begin(), turned_left.end());
    sheets_.push_back({cut(outline), is_convex(turned_left)});
    // The ray test leaves out hits within 1e-6 m of the start, which is more in the cells' plane where planes are flat
    // to each other.
    if (near && !sheets_.back().corners.empty()) {
        fuzz_m_ = std::max(fuzz_m_, 4e-6 / norm(cross(occluder.frame_.normal, grid_->normal)));
    }
}

Shadow::Body Shadow::body_of(const std::vector<Point2>& outline, double low_m, double high_m) {
    const std::size_t n = outline.size();
    const auto number = [](std::size_t i) { return static_cast<int>(i); };
    std::vector<Point3> points = at_height(outline, low_m);
    for (const Point3 p : at_height(outline, high_m))
        points.push_back(p);
    std::vector<std::vector<int>> faces(2);
    std::vector<Point3> normals{{0, 0, 1}, {0, 0, -1}};
    for (std::size_t i = 0; i < n; ++i) {
        const std::size_t next = (i + 1) % n;
        faces[0].push_back(number(n + i));
        faces[1].push_back(number(n - 1 - i));
        faces.push_back({number(i), number(next), number(n + next), number(n + i)});
        normals.push_back({outline[next].y_m - outline[i].y_m, outline[i].x_m - outline[next].x_m, 0.0});
    }

    Body body;
    double highest_m = -1.0;
    for (const Point3 p : points) {
        body.corners.push_back(corner(p));
        highest_m = std::max(highest_m, body.corners.back().off_m);
    }
    if (highest_m == 0.0) sharp_ = false;
    if (highest_m <= 0.0) return {};
    std::map<std::pair<int, int>, int> cut_at;     // edge to the corner where it is cut
    std::map<std::pair<int, int>, int> face_left;  // of a directed edge
    for (std::size_t f = 0; f < faces.size(); ++f) {
        std::vector<int> kept;
        for (std::size_t i = 0; i < faces[f].size(); ++i) {
            const int a = faces[f][i], b = faces[f][(i + 1) % faces[f].size()];
            const Corner p = body.corners[static_cast<std::size_t>(a)], q = body.corners[static_cast<std::size_t>(b)];
            if (p.off_m >= 0.0) kept.push_back(a);
            if ((p.off_m > 0.0 && q.off_m < 0.0) || (p.off_m < 0.0 && q.off_m > 0.0)) {
                const auto [at, is_new] = cut_at.try_emplace(std::minmax(a, b), number(body.corners.size()));
                if (is_new) {
                    const double t = p.off_m / (p.off_m - q.off_m);
                    body.corners.push_back({p.x + t * (q.x - p.x), p.y + t * (q.y - p.y), 0.0});
                    const double length =
                        norm(points[static_cast<std::size_t>(a)] - points[static_cast<std::size_t>(b)]);
                    fuzz_m_ = std::max(fuzz_m_, 1e-14 * scale_m_ * length / std::abs(p.off_m - q.off_m));
                }
                kept.push_back(at->second);
            }
        }
        if (kept.size() < 3) continue;
        for (std::size_t i = 0; i < kept.size(); ++i)
            face_left[{kept[i], kept[(i + 1) % kept.size()]}] = number(f);
    }
    for (const auto& [ends, left] : face_left) {
        const auto other = face_left.find({ends.second, ends.first});
        if (other != face_left.end() && ends.first > ends.second) continue;  // had from the other side
        body.edges.push_back({ends.first, ends.second, left, other == face_left.end() ? -1 : other->second});
    }
    std::vector<int> place(body.corners.size(), -1);  // of the corners that are still needed
    std::vector<Corner> needed;
    for (Body::Edge& e : body.edges) {
        for (int* end : {&e.a, &e.b}) {
            int& at = place[static_cast<std::size_t>(*end)];
            if (at < 0) {
                at = number(needed.size());
                needed.push_back(body.corners[static_cast<std::size_t>(*end)]);
            }
            *end = at;
        }
    }
    body.corners = std::move(needed);
    body.normals = std::move(normals);
    return body;
}

void Shadow::add_crown(const Occluder& occluder) {
    const double r = occluder.crown_radius_m_, h = occluder.crown_half_height_m_;
    const Point3 n = grid_->normal;
    const double reach_m = std::hypot(r * std::hypot(n.x_m, n.y_m), h * n.z_m);  // of the crown along the normal
    crown_ball_ = {corner(occluder.crown_middle_), std::max(r, h) + 1e-9 * scale_m_};
    const double off_m = dot(n, occluder.crown_middle_ - grid_->first), near_m = 1e-7 * scale_m_;
    if (off_m + reach_m < -near_m) {
        crown_ball_.radius_m = -1.0;
        return;
    }
    if (std::abs(off_m + reach_m) <= near_m) sharp_ = false;  // the plane only touches it
    crown_.cut = off_m - reach_m < near_m;
    crown_.per_radius = 1.0 / r;
    crown_.per_half = 1.0 / h;
    const auto scaled = [&](Point3 p) {
        return Point3{p.x_m * crown_.per_radius, p.y_m * crown_.per_radius, p.z_m * crown_.per_half};
    };
    crown_.first = scaled(grid_->first - occluder.crown_middle_);
    crown_.step_x = scaled(grid_->step_x);
    crown_.step_y = scaled(grid_->step_y);
    const double far = scale_m_ * std::max(crown_.per_radius, crown_.per_half);
    crown_.blur = 1e-10 + 1e-14 * far * far;
    if (!(crown_.blur < 1e-4)) sharp_ = false;
    if (!crown_.cut) return;
    const double xx = dot(crown_.step_x, crown_.step_x);
    for (int row = 0; row < grid_->rows; ++row) {
        const Point3 p = crown_.first + crown_.step_y * row;
        const double middle = -dot(crown_.step_x, p) / xx;
        const Point3 nearest = p + crown_.step_x * middle;
        const double half2 = 1.0 - dot(nearest, nearest);
        if (half2 > 64.0 * crown_.blur) {
            const double half = std::sqrt(half2 / xx);
            crown_.section.push_back({middle - half, middle + half});
        } else if (half2 < -64.0 * crown_.blur) {
            crown_.section.push_back({1.0, -1.0});
        } else {
            crown_.section.push_back({0.0, std::nan("")});
        }
    }
}

}  // namespace wg::site
