#include "core/roof/building.h"

#include <algorithm>
#include <cmath>

#include "core/quantity/angle.h"
#include "core/quantity/constants.h"
#include "core/quantity/outline.h"
#include "core/roof/faces.h"
#include "core/roof/parts.h"

namespace wg::roof {
namespace {

void check(std::vector<Problem>& problems, const char* where, double value, double low, double high) {
    if (value >= low && value <= high) return;
    problems.push_back(
        {std::string("building, ") + where,
         "the value " + std::to_string(value) + " lies outside " + std::to_string(low) + " to " + std::to_string(high),
         "Measure again or correct the entry"});
}

std::vector<Problem> problems_of(const HouseForm& b) {
    std::vector<Problem> problems;
    if (const auto fault = outline_fault(b.footprint)) {
        problems.push_back({"footprint", fault->text(), "Move the corners until the outline closes without crossing"});
        return problems;
    }
    if (b.shape != BuildingShape::flat) check(problems, "pitch, deg", b.pitch_deg, 1.0, 75.0);
    check(problems, "eaves height, m", b.eaves_m, 1.0, 60.0);
    check(problems, "overhang at the eaves, m", b.overhang_m, 0.0, 2.0);
    check(problems, "overhang at the gables, m", b.verge_m, 0.0, 2.0);
    check(problems, "parapet height, m", b.parapet_m, 0.0, 3.0);
    check(problems, "parapet width, m", b.parapet_width_m, 0.05, 1.0);
    const bool one_slope = b.shape == BuildingShape::mono_pitch || b.shape == BuildingShape::lean_to;
    if (one_slope && b.low_edge >= b.footprint.size())
        problems.push_back({"building, low edge", "there is no edge " + std::to_string(b.low_edge + 1),
                            "Choose one of the footprint's edges"});
    for (const std::size_t edge : b.gables) {
        if (edge < b.footprint.size()) continue;
        problems.push_back(
            {"building, gables", "there is no edge " + std::to_string(edge + 1), "Choose among the footprint's edges"});
    }
    return problems;
}

/// Edge numbers as the surveyor gave them, in the counter-clockwise footprint.
std::size_t in_order(const Ordered& ordered, std::size_t given) {
    const auto at = std::find(ordered.edges.begin(), ordered.edges.end(), given);
    return static_cast<std::size_t>(at - ordered.edges.begin());
}

Result<House> sloped(const HouseForm& b, const Ordered& ordered, double up_azimuth_deg) {
    const std::size_t count = ordered.footprint.size();
    std::vector<EdgePitch> pitches(count, b.pitch_deg);
    std::vector<double> past_m(count, b.overhang_m);
    std::vector<std::size_t> gables;
    if (b.shape == BuildingShape::gable) {
        if (b.gables.empty())
            gables = usual_gables(ordered.footprint);
        else
            for (const std::size_t given : b.gables)
                gables.push_back(in_order(ordered, given));
    }
    for (const std::size_t edge : gables) {
        pitches[edge] = std::nullopt;
        past_m[edge] = b.verge_m;
    }
    const auto eaves = moved_out(ordered.footprint, past_m);
    if (!eaves) return eaves.problems();
    const auto roof = faces_over(eaves.value(), pitches);
    if (!roof) return roof.problems();
    const auto walls = faces_over(ordered.footprint, pitches);
    if (!walls) return walls.problems();
    House house;
    const double eaves_line_m = b.eaves_m - b.overhang_m * std::tan(radians(b.pitch_deg));
    for (const Face& face : roof.value()) {
        for (const RoofPoint& p : face.outline)
            house.ridge_m = std::max(house.ridge_m, eaves_line_m + p.height_m);
    }
    const RoofForm form = b.shape == BuildingShape::hip ? RoofForm::hip : RoofForm::duo_pitch;
    for (const Face& face : roof.value()) {
        if (!pitches[face.edge]) continue;
        house.parts.push_back(roof_plane(face, b, form, eaves_line_m, house.ridge_m, up_azimuth_deg));
    }
    for (const Face& face : walls.value()) {
        std::vector<RoofPoint> top;  // from the far end back to the near one
        if (!pitches[face.edge] && face.outline.size() > 2) top.assign(face.outline.begin() + 2, face.outline.end());
        const Point2 from = ordered.footprint[face.edge];
        const Point2 to = ordered.footprint[(face.edge + 1) % count];
        house.parts.push_back(wall(face.edge, {from, 0.0}, {to, 0.0}, top, b, house.ridge_m, up_azimuth_deg));
    }
    return house;
}

/// One plane over the whole footprint. A lean-to differs in that its high edge is another house's wall.
Result<House> one_slope(const HouseForm& b, const Ordered& ordered, double up_azimuth_deg) {
    const std::size_t count = ordered.footprint.size();
    const std::size_t low = in_order(ordered, b.low_edge);
    const Point2 a = ordered.footprint[low];
    const Point2 e = ordered.footprint[(low + 1) % count];
    const double length_m = std::hypot(e.x_m - a.x_m, e.y_m - a.y_m);
    const Point2 along{(e.x_m - a.x_m) / length_m, (e.y_m - a.y_m) / length_m};
    const double slope = std::tan(radians(b.pitch_deg));
    const auto rise_m = [&](const Point2& p) {
        return slope * (-along.y_m * (p.x_m - a.x_m) + along.x_m * (p.y_m - a.y_m));
    };
    std::size_t high = low;
    double highest_m = -1e9;
    std::vector<double> past_m(count, b.verge_m);
    past_m[low] = b.overhang_m;
    for (std::size_t i = 0; i < count; ++i) {
        const Point2& p = ordered.footprint[i];
        const Point2& q = ordered.footprint[(i + 1) % count];
        if (rise_m(p) < -1e-6)
            return Problem{"building, low edge", "the footprint reaches lower than its low edge",
                           "Choose the edge that lies lowest down the slope"};
        const double middle_m = 0.5 * (rise_m(p) + rise_m(q));
        if (middle_m > highest_m) {
            highest_m = middle_m;
            high = i;
        }
    }
    if (b.shape == BuildingShape::lean_to) past_m[high] = 0.0;
    const auto eaves = moved_out(ordered.footprint, past_m);
    if (!eaves) return eaves.problems();
    House house;
    Face face;
    face.edge = low;
    // Begins with the low edge, so that the plane's origin is the low left corner.
    for (std::size_t i = 0; i < count; ++i) {
        const Point2& p = eaves.value()[(low + i) % count];
        face.outline.push_back({p, rise_m(p)});
        house.ridge_m = std::max(house.ridge_m, b.eaves_m + rise_m(p));
    }
    house.parts.push_back(roof_plane(face, b, RoofForm::mono_pitch, b.eaves_m, house.ridge_m, up_azimuth_deg));
    for (std::size_t i = 0; i < count; ++i) {
        if (b.shape == BuildingShape::lean_to && i == high) continue;
        const Point2& p = ordered.footprint[i];
        const Point2& q = ordered.footprint[(i + 1) % count];
        house.parts.push_back(wall(i, {p, rise_m(p)}, {q, rise_m(q)}, {}, b, house.ridge_m, up_azimuth_deg));
    }
    return house;
}

Result<House> flat(const HouseForm& b, const Ordered& ordered, double up_azimuth_deg) {
    const std::size_t count = ordered.footprint.size();
    House house;
    house.ridge_m = b.eaves_m + b.parapet_m;
    Face face;
    const auto roof = b.parapet_m > 0.0 ? moved_out(ordered.footprint, std::vector<double>(count, -b.parapet_width_m))
                                        : moved_out(ordered.footprint, std::vector<double>(count, b.overhang_m));
    if (!roof) return roof.problems();
    for (const Point2& p : roof.value())
        face.outline.push_back({p, 0.0});
    house.parts.push_back(level_roof(face, b, house.ridge_m, up_azimuth_deg));
    for (std::size_t i = 0; i < count; ++i) {
        const RoofPoint from{ordered.footprint[i], b.parapet_m};
        const RoofPoint to{ordered.footprint[(i + 1) % count], b.parapet_m};
        house.parts.push_back(wall(i, from, to, {}, b, house.ridge_m, up_azimuth_deg));
        if (b.parapet_m > 0.0) house.parapets.push_back(parapet(from.plan, to.plan, b));
    }
    return house;
}

}  // namespace

Ordered counter_clockwise(const std::vector<Point2>& footprint) {
    Ordered out;
    double twice_area = 0.0;
    const std::size_t count = footprint.size();
    for (std::size_t i = 0; i < count; ++i) {
        const Point2& a = footprint[i];
        const Point2& b = footprint[(i + 1) % count];
        twice_area += a.x_m * b.y_m - b.x_m * a.y_m;
        out.edges.push_back(i);
    }
    out.footprint = footprint;
    if (twice_area >= 0.0 || count < 2) return out;
    // Backwards from the last corner: new edge i runs the old edge count - 2 - i the other way.
    std::reverse(out.footprint.begin(), out.footprint.end());
    for (std::size_t i = 0; i < count; ++i)
        out.edges[i] = (2 * count - 2 - i) % count;
    return out;
}

std::vector<std::size_t> usual_gables(const std::vector<Point2>& footprint) {
    const std::size_t count = footprint.size();
    const auto edge = [&](std::size_t i) {
        const Point2& a = footprint[i % count];
        const Point2& b = footprint[(i + 1) % count];
        return Point2{b.x_m - a.x_m, b.y_m - a.y_m};
    };
    const auto length = [&](std::size_t i) { return std::hypot(edge(i).x_m, edge(i).y_m); };
    const auto outer = [&](std::size_t corner) {
        const Point2 u = edge(corner + count - 1);
        const Point2 v = edge(corner);
        return u.x_m * v.y_m - u.y_m * v.x_m > 0.0;
    };
    bool plain = true;
    for (std::size_t i = 0; i < count; ++i)
        plain = plain && outer(i);
    std::vector<std::size_t> out;
    for (std::size_t i = 0; i < count; ++i) {
        if (!outer(i) || !outer(i + 1)) continue;
        const Point2 u = edge(i + count - 1);
        const Point2 v = edge(i + 1);
        // The neighbours run against each other, as the sides of a wing do.
        const bool wing = std::abs(u.x_m * v.y_m - u.y_m * v.x_m) < 0.02 * length(i + count - 1) * length(i + 1) &&
                          u.x_m * v.x_m + u.y_m * v.y_m < 0.0;
        if (!wing) continue;
        // A wing begins at an inner corner. A plain rectangle has none: there the short sides; a square takes a pair.
        const double side_m = std::max(length(i + count - 1), length(i + 1));
        const bool shorter = length(i) < side_m - 1e-6 || (std::abs(length(i) - side_m) <= 1e-6 && i % 2 == 1);
        const bool ends_wing = !outer(i + count - 1) || !outer(i + 2);
        if (plain ? shorter : ends_wing) out.push_back(i);
    }
    return out;
}

Result<House> house_of(const HouseForm& building, double sketch_up_azimuth_deg) {
    if (auto problems = problems_of(building); !problems.empty()) return problems;
    const Ordered ordered = counter_clockwise(building.footprint);
    switch (building.shape) {
        case BuildingShape::mono_pitch:
        case BuildingShape::lean_to: return one_slope(building, ordered, sketch_up_azimuth_deg);
        case BuildingShape::flat: return flat(building, ordered, sketch_up_azimuth_deg);
        case BuildingShape::gable:
        case BuildingShape::hip: break;
    }
    return sloped(building, ordered, sketch_up_azimuth_deg);
}

Result<Surface> free_plane(const std::vector<Point2>& outline, double pitch_deg, double edge_height_m,
                           double sketch_up_azimuth_deg) {
    if (const auto fault = outline_fault(outline))
        return Problem{"plane", fault->text(), "Move the corners until the outline closes without crossing"};
    if (!(pitch_deg >= 0.0 && pitch_deg <= 89.0))
        return Problem{"plane", "the pitch lies outside 0 to 89 degrees", "Correct the entry"};
    const Ordered ordered = counter_clockwise(outline);
    const std::size_t count = outline.size();
    const std::size_t low = in_order(ordered, 0);
    HouseForm form;
    form.pitch_deg = pitch_deg;
    form.eaves_m = edge_height_m;
    const Point2 a = ordered.footprint[low];
    const Point2 e = ordered.footprint[(low + 1) % count];
    const double length_m = std::hypot(e.x_m - a.x_m, e.y_m - a.y_m);
    const double slope = std::tan(radians(pitch_deg));
    Face face;
    face.edge = low;
    for (std::size_t i = 0; i < count; ++i) {
        const Point2& p = ordered.footprint[(low + i) % count];
        const double inwards_m = ((e.x_m - a.x_m) * (p.y_m - a.y_m) - (e.y_m - a.y_m) * (p.x_m - a.x_m)) / length_m;
        if (pitch_deg > 0.0 && inwards_m < -1e-6)
            return Problem{"plane", "the outline reaches lower than its first edge", "Begin with the eaves"};
        face.outline.push_back({p, slope * inwards_m});
    }
    return roof_plane(face, form, RoofForm::mono_pitch, edge_height_m, 0.0, sketch_up_azimuth_deg).surface;
}

Result<double> pitch_from_rise(double rise_m, double run_m) {
    if (!(rise_m > 0.0 && run_m > 0.0 && std::isfinite(rise_m) && std::isfinite(run_m)))
        return Problem{"pitch", "rise and run must both be lengths greater than 0",
                       "Measure how far the roof rises over a level length"};
    return degrees(std::atan2(rise_m, run_m));
}

Result<double> pitch_from_heights(double low_m, double high_m, double run_m) {
    return pitch_from_rise(high_m - low_m, run_m);
}

}  // namespace wg::roof
