#include "core/fixing/tight_spots.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include "core/job/words.h"
#include "core/quantity/text.h"
#include "core/site/vec.h"

namespace wg::fixing {
namespace {

using site::cross;
using site::dot;
using site::norm;
using site::operator+;
using site::operator-;
using site::operator*;

std::string metres_of(double v) {
    return fixed(v, 2) + " m";
}

Point2 nearest_on(Point2 a, Point2 b, Point2 p) {
    const Point2 along = b - a;
    const double length = dot(along, along);
    const double t = length > 0.0 ? std::clamp(dot(p - a, along) / length, 0.0, 1.0) : 0.0;
    return a + along * t;
}

/// Corner of the plate that sticks out furthest over the edge, and where the edge is.
Gap furthest_out(const std::vector<Point2>& outline, const std::vector<Point2>& plate) {
    Gap worst{plate.front(), plate.front()};
    double most = -1.0;
    for (const Point2 corner : plate) {
        if (site::contains(outline, corner)) continue;
        Point2 nearest = outline.front();
        for (std::size_t i = 0; i < outline.size(); ++i) {
            const Point2 on = nearest_on(outline[i], outline[(i + 1) % outline.size()], corner);
            if (norm(on - corner) < norm(nearest - corner)) nearest = on;
        }
        if (norm(nearest - corner) <= most) continue;
        most = norm(nearest - corner);
        worst = {corner, nearest};
    }
    return worst;
}

}  // namespace

Gap least_gap(const std::vector<Point2>& a, const std::vector<Point2>& b) {
    Gap best;
    double least = std::numeric_limits<double>::infinity();
    std::vector<Gap> alike;
    const auto meet = [&](Point2 on_a, Point2 on_b) {
        const double distance = norm(on_b - on_a);
        if (distance < least - site::touch_m) {
            alike.clear();
            least = distance;
            best = {on_a, on_b};
        }
        // Only those that look the same way: a plate midway between two edges has two gaps, not one between them.
        const bool same_way = norm((on_b - on_a) - (best.on_b - best.on_a)) <= 10.0 * site::touch_m;
        if (distance <= least + site::touch_m && same_way) alike.push_back({on_a, on_b});
    };
    for (std::size_t i = 0; i < a.size(); ++i) {
        for (std::size_t j = 0; j < b.size(); ++j) {
            meet(a[i], nearest_on(b[j], b[(j + 1) % b.size()], a[i]));
            meet(nearest_on(a[i], a[(i + 1) % a.size()], b[j]), b[j]);
        }
    }
    if (alike.size() < 2) return best;
    // Furthest two of them: the ends of the shared stretch.
    const Point2 across = best.on_b - best.on_a;
    const Point2 along = norm(across) > site::touch_m ? Point2{-across.y_m, across.x_m} : Point2{1.0, 0.7};
    const auto before = [&](const Gap& p, const Gap& q) { return dot(p.on_a, along) < dot(q.on_a, along); };
    const auto [from, to] = std::minmax_element(alike.begin(), alike.end(), before);
    return {(from->on_a + to->on_a) * 0.5, (from->on_b + to->on_b) * 0.5};
}

std::vector<TightSpot> tight_spots(const Neighbourhood& place, const Placement& placement,
                                   const std::vector<Point2>& outline, const CollectorModel& model) {
    using Against = TightSpot::Against;
    std::vector<TightSpot> out;
    if (place.surface == nullptr || outline.size() < 3 || place.surface->outline.size() < 3) return out;
    const double strip = model.clearance_m;
    const auto too_near = [&](double gap) { return gap < strip - site::touch_m; };
    const auto add = [&](Against against, Severity severity, const char* code, const std::string& id,
                         const std::string& name) -> TightSpot& {
        TightSpot spot;
        spot.against = against;
        spot.severity = severity;
        spot.code = code;
        spot.placement_id = placement.id;
        spot.thing_id = id;
        spot.thing = name;
        return out.emplace_back(std::move(spot));
    };
    const auto lies_over = [&](TightSpot& spot, const std::vector<Point2>& thing, const std::string& text) {
        spot.over = true;
        spot.thing_outline = thing;
        const site::Bounds a = site::bounds_of(outline), b = site::bounds_of(thing);
        spot.on_plate = spot.on_thing = {0.5 * (std::max(a.min_x_m, b.min_x_m) + std::min(a.max_x_m, b.max_x_m)),
                                         0.5 * (std::max(a.min_y_m, b.min_y_m) + std::min(a.max_y_m, b.max_y_m))};
        spot.text = text;
    };
    const auto near = [&](TightSpot& spot, const std::vector<Point2>& thing, double asked, bool maker) {
        const Gap gap = least_gap(outline, thing);
        if (spot.against != Against::edge) spot.thing_outline = thing;
        spot.gap_m = site::edge_gap_m(thing, outline);
        spot.asked_m = asked;
        spot.maker_asks = maker;
        spot.on_plate = gap.on_a;
        spot.on_thing = gap.on_b;
        spot.text = metres_of(spot.gap_m) + " to " + spot.thing + "; " + metres_of(asked) + " asked (" +
                    (maker ? "maker" : "survey") + ")";
    };

    const Surface& surface = *place.surface;
    if (!within_surface(place, outline)) {
        TightSpot& spot =
            add(Against::edge, Severity::stop, "collector.outside-surface", surface.id, "edge of " + surface.label);
        const Gap beyond = furthest_out(surface.outline, outline);
        spot.over = true;
        spot.on_plate = beyond.on_a;
        spot.on_thing = beyond.on_b;
        spot.gap_m = norm(beyond.on_b - beyond.on_a);
        spot.text = "reaches beyond the edge of " + surface.label;
        if (spot.gap_m > site::touch_m) {
            spot.text = metres_of(spot.gap_m) + " beyond the edge of " + surface.label;
        }
    } else if (too_near(site::edge_gap_m(surface.outline, outline))) {
        near(add(Against::edge, Severity::caution, "collector.edge-clearance", surface.id, "edge of " + surface.label),
             surface.outline, strip, true);
    }
    for (const KeepOut& k : surface.keep_outs) {
        if (k.outline.empty()) continue;
        const std::string name = k.label.empty() ? std::string(wg::text_of(k.kind)) : k.label;
        if (site::overlap(k.outline, outline)) {
            lies_over(add(Against::keep_out, Severity::stop, "collector.on-keep-out", k.id, name), k.outline,
                      "over " + name + "; nothing is fixed there (survey)");
        } else if (!clear_of(k, outline)) {
            near(add(Against::keep_out, Severity::stop, "collector.keep-out-clearance", k.id, name), k.outline,
                 k.clearance_m, false);
        } else if (too_near(site::edge_gap_m(k.outline, outline))) {
            near(add(Against::keep_out, Severity::caution, "collector.strip-at-keep-out", k.id, name), k.outline, strip,
                 true);
        }
    }
    for (const Neighbourhood::Standing& standing : place.standing) {
        const Obstacle& o = *standing.obstacle;
        const std::string name = o.label.empty() ? std::string(wg::text_of(o.use)) : o.label;
        if (site::overlap(standing.outline, outline)) {
            lies_over(add(Against::obstacle, Severity::stop, "collector.on-obstacle", o.id, name), standing.outline,
                      "where " + name + " stands (survey)");
        } else if (too_near(site::edge_gap_m(standing.outline, outline))) {
            near(add(Against::obstacle, Severity::caution, "collector.strip-at-obstacle", o.id, name), standing.outline,
                 strip, true);
        }
    }
    for (const Neighbourhood::Other& other : place.others) {
        const Placement& them = *other.placement;
        if (site::overlap(other.outline, outline)) {
            lies_over(add(Against::collector, Severity::stop, "collector.overlap", them.id, them.label), other.outline,
                      "overlaps " + them.label);
        } else if (too_near(site::edge_gap_m(other.outline, outline))) {
            near(add(Against::collector, Severity::caution, "collector.strip-at-collector", them.id, them.label),
                 other.outline, strip, true);
        }
    }
    return out;
}

std::vector<TightSpot> tight_spots(const Site& site, const Choice& choice, const CollectorModel& model,
                                   const Placement& placement) {
    const Neighbourhood place = neighbourhood_of(site, choice, model, placement);
    if (place.surface == nullptr) return {};
    return tight_spots(place, placement,
                       site::place(*place.surface, site.sketch_up_azimuth_deg, placement, model).outline, model);
}

}  // namespace wg::fixing
