#include "core/fixing/layout_place.h"

#include <algorithm>
#include <cmath>

#include "core/fixing/layout_rules.h"
#include "core/quantity/constants.h"
#include "core/quantity/text.h"
#include "core/site/standing.h"

namespace wg::fixing {
namespace {

using site::touch_m;

}  // namespace

bool within_surface(const Neighbourhood& place, const std::vector<Point2>& outline) {
    return site::contains(place.surface->outline, outline);
}

bool clear_of(const KeepOut& keep_out, const std::vector<Point2>& outline) {
    if (keep_out.outline.empty()) return true;
    if (site::overlap(keep_out.outline, outline)) return false;
    return keep_out.clearance_m <= touch_m ||
           site::edge_gap_m(keep_out.outline, outline) >= keep_out.clearance_m - touch_m;
}

bool keeps_hard_rules(const Neighbourhood& place, const std::vector<Point2>& outline) {
    if (!within_surface(place, outline)) return false;
    for (const KeepOut& k : place.surface->keep_outs) {
        if (!clear_of(k, outline)) return false;
    }
    for (const auto& standing : place.standing) {
        if (site::overlap(standing.outline, outline)) return false;
    }
    return std::none_of(place.others.begin(), place.others.end(),
                        [&](const auto& other) { return site::overlap(other.outline, outline); });
}

bool keeps_free_strip(const Neighbourhood& place, const std::vector<Point2>& outline, double strip_m) {
    const double least = strip_m - touch_m;
    if (site::edge_gap_m(place.surface->outline, outline) < least) return false;
    for (const KeepOut& k : place.surface->keep_outs) {
        if (!k.outline.empty() && site::gap_m(k.outline, outline) < least) return false;
    }
    for (const auto& standing : place.standing) {
        if (site::gap_m(standing.outline, outline) < least) return false;
    }
    return std::none_of(place.others.begin(), place.others.end(),
                        [&](const auto& other) { return site::gap_m(other.outline, outline) < least; });
}

Neighbourhood neighbourhood_of(const Site& site, const Choice& choice, const CollectorModel& model,
                               const Placement& placement) {
    Neighbourhood place;
    place.surface = find_surface(site, placement.surface_id);
    if (place.surface == nullptr) return place;
    for (const Placement& other : choice.placements) {
        if (&other == &placement || other.surface_id != placement.surface_id) continue;
        place.others.push_back({&other, site::place(*place.surface, site.sketch_up_azimuth_deg, other, model).outline});
    }
    for (const Obstacle& obstacle : site.obstacles) {
        std::vector<Point2> section = site::section_on(*place.surface, site.sketch_up_azimuth_deg, obstacle);
        if (section.empty()) continue;
        const auto covers = [&](const KeepOut& k) {
            return k.outline.size() >= 3 && site::contains(k.outline, section);
        };
        const auto& zones = place.surface->keep_outs;
        if (std::none_of(zones.begin(), zones.end(), covers)) place.standing.push_back({&obstacle, std::move(section)});
    }
    return place;
}

std::optional<Move> shortest_mend(const Site& site, const Choice& choice, const CollectorModel& model,
                                  const Placement& placement) {
    const Neighbourhood place = neighbourhood_of(site, choice, model, placement);
    if (place.surface == nullptr) return std::nullopt;
    const std::vector<Point2> outline =
        site::place(*place.surface, site.sketch_up_azimuth_deg, placement, model).outline;
    std::optional<Move> hard_only;
    std::vector<Point2> moved = outline;
    const int steps = static_cast<int>(std::lround(move_reach_m / move_step_m));
    // Straight moves first at each distance: easiest to say and to do.
    constexpr int order[16] = {0, 4, 8, 12, 2, 6, 10, 14, 1, 3, 5, 7, 9, 11, 13, 15};
    for (int step = 1; step <= steps; ++step) {
        for (const int direction : order) {
            const double angle = radians(22.5 * direction), distance = move_step_m * step;
            Move m{distance * std::cos(angle), distance * std::sin(angle)};
            // Whole steps in each direction, so that what is said mends what it says.
            m.right_m = std::round(m.right_m / move_step_m) * move_step_m;
            m.up_m = std::round(m.up_m / move_step_m) * move_step_m;
            for (std::size_t i = 0; i < outline.size(); ++i) {
                moved[i] = {outline[i].x_m + m.right_m, outline[i].y_m + m.up_m};
            }
            if (!keeps_hard_rules(place, moved)) continue;
            if (keeps_free_strip(place, moved, model.clearance_m)) return m;
            if (!hard_only) hard_only = m;
        }
    }
    return hard_only;
}

std::string text_of(Move move) {
    std::string out;
    const auto part = [&](double value, const char* positive, const char* negative) {
        if (std::abs(value) < 0.005) return;
        if (!out.empty()) out += " and ";
        out += fixed(std::abs(value), 2) + " m " + (value > 0.0 ? positive : negative);
    };
    part(move.right_m, "to the right", "to the left");
    part(move.up_m, "up", "down");
    return out;
}

}  // namespace wg::fixing
