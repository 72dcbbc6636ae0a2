#include "core/fixing/mounting_rules.h"

#include <algorithm>
#include <cmath>

#include "core/fixing/layout_rules.h"
#include "core/fixing/tight_spots.h"
#include "core/job/words.h"
#include "core/quantity/angle.h"
#include "core/quantity/text.h"

namespace wg::fixing {
namespace {

constexpr double quarter_deg = 90.0;

/// Worst finding of those codes.
std::optional<Severity> worst_of_codes(const std::vector<Finding>& findings, std::initializer_list<const char*> codes) {
    std::optional<Severity> worst;
    for (const Finding& f : findings) {
        if (std::none_of(codes.begin(), codes.end(), [&](const char* code) { return f.code == code; })) continue;
        if (!worst || f.severity > *worst) worst = f.severity;
    }
    return worst;
}

std::string whole_degrees(double from, double to) {
    return fixed(from, 0) + " to " + fixed(to, 0) + " deg";
}

MountingRule level_rule(const CollectorModel& model, double turn_deg, const std::vector<Finding>& found) {
    const char* side = model.level_side == LevelSide::long_side    ? "Long side level"
                       : model.level_side == LevelSide::short_side ? "Short side level"
                                                                   : "One side level";
    return {side, "turned by " + fixed(turn_deg, 1) + " deg", worst_of_codes(found, {"collector.not-level"})};
}

MountingRule connection_rule(double turn_deg, const std::vector<Finding>& found) {
    const double off = std::abs(turn_deg);
    return {"Connections at the lower edge",
            off > 135.0  ? "they leave upwards"
            : off > 45.0 ? "sideways"
                         : "below",
            worst_of_codes(found, {"collector.connections-up", "collector.connections-sideways"})};
}

MountingRule hand_rule(const CollectorModel& model, Hand hand, const std::vector<Finding>& found) {
    const char* made = model.right_hand && model.left_hand ? "right or left" : model.right_hand ? "right" : "left";
    return {std::string("Made with connections ") + made, std::string(wg::text_of(hand)),
            worst_of_codes(found, {"collector.hand-not-made"})};
}

MountingRule tilt_rule(const CollectorModel& model, double tilt_deg, const std::vector<Finding>& found) {
    std::string rule = "Tilt " + whole_degrees(model.tilt_min_deg, model.tilt_max_deg);
    if (model.tilt_recommended_min_deg > model.tilt_min_deg || model.tilt_recommended_max_deg < model.tilt_max_deg) {
        rule += ", best " + whole_degrees(model.tilt_recommended_min_deg, model.tilt_recommended_max_deg);
    }
    return {rule, fixed(tilt_deg, 1) + " deg",
            worst_of_codes(found, {"collector.tilt-outside-range", "collector.tilt-not-recommended"})};
}

MountingRule strip_rule(const Neighbourhood& place, const Placement& placement, const std::vector<Point2>& outline,
                        const CollectorModel& model) {
    MountingRule out{fixed(model.clearance_m, 2) + " m free all round for upkeep", "", {}};
    for (const TightSpot& spot : tight_spots(place, placement, outline, model)) {
        if (!out.broken || spot.severity > *out.broken) {
            out.broken = spot.severity;
            out.now = spot.text.substr(0, spot.text.find(';'));
        }
    }
    if (out.broken) return out;
    double least = site::edge_gap_m(place.surface->outline, outline);
    for (const KeepOut& k : place.surface->keep_outs)
        least = std::min(least, site::edge_gap_m(k.outline, outline));
    for (const Neighbourhood::Standing& standing : place.standing)
        least = std::min(least, site::edge_gap_m(standing.outline, outline));
    for (const Neighbourhood::Other& other : place.others)
        least = std::min(least, site::edge_gap_m(other.outline, outline));
    out.now = fixed(least, 2) + " m";
    return out;
}

}  // namespace

std::vector<MountingRule> mounting_rules(const Site& site, const Choice& choice, const CollectorModel& model,
                                         const Placement& placement) {
    const Neighbourhood place = neighbourhood_of(site, choice, model, placement);
    if (place.surface == nullptr) return {};
    const site::PlacedCollector placed = site::place(*place.surface, site.sketch_up_azimuth_deg, placement, model);
    const std::vector<Finding> found = check_attitude(site, choice, model, placement);
    return {level_rule(model, placed.connection_turn_deg, found), connection_rule(placed.connection_turn_deg, found),
            hand_rule(model, placement.hand, found), tilt_rule(model, placed.tilt_deg, found),
            strip_rule(place, placement, placed.outline, model)};
}

std::vector<double> allowed_turns(const CollectorModel& model) {
    switch (model.level_side) {
        case LevelSide::long_side: return {0.0};
        case LevelSide::short_side: return {quarter_deg, 3.0 * quarter_deg};
        case LevelSide::either: break;
    }
    return {0.0, quarter_deg, 3.0 * quarter_deg};
}

double next_turn_deg(const CollectorModel& model, double turn_deg, int direction) {
    const std::vector<double> turns = allowed_turns(model);
    const auto off = [turn_deg](double to) { return wrap_180(to - turn_deg); };
    const double nearest = *std::min_element(turns.begin(), turns.end(),
                                             [&](double a, double b) { return std::abs(off(a)) < std::abs(off(b)); });
    if (std::abs(off(nearest)) > 1e-9) return nearest;
    const auto ahead = [&](double to) {
        const double by = wrap_360((to - turn_deg) * (direction < 0 ? -1.0 : 1.0));
        return by < 1e-9 ? 360.0 : by;
    };
    return *std::min_element(turns.begin(), turns.end(), [&](double a, double b) { return ahead(a) < ahead(b); });
}

}  // namespace wg::fixing
