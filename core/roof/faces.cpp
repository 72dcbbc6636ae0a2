#include "core/roof/faces.h"

#include <algorithm>
#include <cmath>
#include <string>

#include "core/quantity/constants.h"
#include "core/quantity/outline.h"
#include "core/roof/front.h"

namespace wg::roof {
namespace {

constexpr double same_point_m = 1e-5;
constexpr double most_extent_m = 1000.0;
constexpr double area_share = 1e-5;  // of the footprint that faces may miss by rounding

double area_of(const std::vector<Point2>& outline) {
    double sum = 0.0;
    for (std::size_t i = 0; i < outline.size(); ++i) {
        const Point2& a = outline[i];
        const Point2& b = outline[(i + 1) % outline.size()];
        sum += a.x_m * b.y_m - b.x_m * a.y_m;
    }
    return 0.5 * sum;
}

bool same(const Point2& a, const Point2& b) {
    return std::hypot(a.x_m - b.x_m, a.y_m - b.y_m) < same_point_m;
}

std::vector<Problem> problems_of(const std::vector<Point2>& footprint, const std::vector<EdgePitch>& pitches) {
    std::vector<Problem> problems;
    if (pitches.size() != footprint.size()) {
        problems.push_back({"roof",
                            "there are " + std::to_string(pitches.size()) + " pitches for " +
                                std::to_string(footprint.size()) + " edges",
                            "Give every edge a pitch or make it a gable"});
        return problems;
    }
    for (const Point2& p : footprint) {
        if (std::abs(p.x_m) <= most_extent_m && std::abs(p.y_m) <= most_extent_m) continue;
        problems.push_back({"footprint", "a corner lies more than 1000 m from the sketch's origin",
                            "Draw the house near the origin of the sketch"});
        return problems;
    }
    if (const auto fault = outline_fault(footprint)) {
        problems.push_back({"footprint", fault->text(), "Move the corners until the outline closes without crossing"});
        return problems;
    }
    if (area_of(footprint) < 0.0)
        problems.push_back({"footprint", "its corners run clockwise", "Turn the order of the corners round"});
    bool any_slope = false;
    for (std::size_t i = 0; i < pitches.size(); ++i) {
        any_slope = any_slope || pitches[i].has_value();
        if (!pitches[i] || (*pitches[i] >= 1.0 && *pitches[i] <= 89.0)) continue;
        problems.push_back({"roof, edge " + std::to_string(i + 1),
                            "a pitch of " + std::to_string(*pitches[i]) + " deg lies outside 1 to 89 deg",
                            "Enter the pitch as an angle from level"});
    }
    if (!any_slope)
        problems.push_back({"roof", "every edge is a gable, so nothing rises", "Give at least one edge a pitch"});
    return problems;
}

/// Joins the loose sides of a face into one outline that begins with its edge. Nothing when they do not close.
std::optional<std::vector<RoofPoint>> chained(std::vector<Side> sides, const RoofPoint& first,
                                              const RoofPoint& second) {
    std::vector<RoofPoint> outline{first, second};
    while (!sides.empty()) {
        const Point2 end = outline.back().plan;
        // On a gable several points of different height may lie over one place: the height decides there.
        const double height = outline.back().height_m;
        auto next = sides.end();
        bool turned = false;
        for (auto side = sides.begin(); side != sides.end(); ++side) {
            const bool forward = same(side->from.plan, end) && std::abs(side->from.height_m - height) < same_point_m;
            const bool backward = same(side->to.plan, end) && std::abs(side->to.height_m - height) < same_point_m;
            if (!forward && !backward) continue;
            next = side;
            turned = !forward;
            break;
        }
        if (next == sides.end()) return std::nullopt;
        const RoofPoint reached = turned ? next->from : next->to;
        sides.erase(next);
        if (same(reached.plan, first.plan) && std::abs(reached.height_m - first.height_m) < same_point_m) break;
        outline.push_back(reached);
    }
    if (!sides.empty()) return std::nullopt;
    return outline;
}

/// Corners in the middle of straight lines go: they come from events that another part of the roof had.
void straighten(std::vector<RoofPoint>& outline) {
    for (std::size_t i = 2; outline.size() > 3 && i < outline.size();) {
        const RoofPoint& a = outline[i - 1];
        const RoofPoint& b = outline[i];
        const RoofPoint& c = outline[(i + 1) % outline.size()];
        const double u[3] = {b.plan.x_m - a.plan.x_m, b.plan.y_m - a.plan.y_m, b.height_m - a.height_m};
        const double v[3] = {c.plan.x_m - b.plan.x_m, c.plan.y_m - b.plan.y_m, c.height_m - b.height_m};
        const double cross =
            std::hypot(std::hypot(u[1] * v[2] - u[2] * v[1], u[2] * v[0] - u[0] * v[2]), u[0] * v[1] - u[1] * v[0]);
        const double along = u[0] * v[0] + u[1] * v[1] + u[2] * v[2];
        if (cross < same_point_m && along > 0.0)
            outline.erase(outline.begin() + static_cast<std::ptrdiff_t>(i));
        else
            ++i;
    }
}

Problem no_roof() {
    return {"roof", "planes at these pitches and gables do not close over this footprint",
            "Make gables only of edges between two outer corners, or give the edge a pitch"};
}

}  // namespace

Result<std::vector<Face>> faces_over(const std::vector<Point2>& footprint, const std::vector<EdgePitch>& pitches) {
    if (auto problems = problems_of(footprint, pitches); !problems.empty()) return problems;
    Front front(footprint, pitches);
    if (!front.rise()) return no_roof();

    std::vector<Face> faces;
    double covered_m2 = 0.0;
    for (std::size_t i = 0; i < footprint.size(); ++i) {
        Face face;
        face.edge = i;
        const RoofPoint first{footprint[i], 0.0};
        const RoofPoint second{footprint[(i + 1) % footprint.size()], 0.0};
        auto outline = chained(front.sides_of(i), first, second);
        if (!outline) return no_roof();
        straighten(*outline);
        std::vector<Point2> plan;
        for (const RoofPoint& p : *outline)
            plan.push_back(p.plan);
        if (outline->size() >= 3) {
            face.outline = std::move(*outline);
            const double area_m2 = area_of(plan);
            if (pitches[i] && outline_fault(plan)) return no_roof();
            covered_m2 += area_m2;
        } else if (pitches[i]) {
            return no_roof();
        }
        faces.push_back(std::move(face));
    }
    const double whole_m2 = area_of(footprint);
    if (std::abs(covered_m2 - whole_m2) > area_share * whole_m2 + same_point_m) return no_roof();
    return faces;
}

}  // namespace wg::roof
