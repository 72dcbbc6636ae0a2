#include "core/fixing/layout_rules.h"

#include <algorithm>
#include <cmath>

#include "core/fixing/layout_place.h"
#include "core/job/words.h"
#include "core/quantity/angle.h"
#include "core/quantity/constants.h"
#include "core/quantity/text.h"

namespace wg::fixing {
namespace {

std::string metres(double v) {
    return fixed(v, 2) + " m";
}
std::string degrees_text(double v) {
    return fixed(v, 1) + " deg";
}

class Checker {
   public:
    Checker(const Site& site, const Choice& choice, const CollectorModel& model, const Placement& placement,
            std::vector<Finding>& out)
        : site_(site),
          choice_(choice),
          model_(model),
          placement_(placement),
          out_(out),
          place_(neighbourhood_of(site, choice, model, placement)) {
        if (place_.surface != nullptr) {
            placed_ = site::place(*place_.surface, site.sketch_up_azimuth_deg, placement, model);
        }
    }

    void check() {
        if (place_.surface == nullptr) return;
        check_surface();
        check_keep_outs();
        check_obstacles();
        check_others();
        check_tilt();
        check_turn();
        check_hand();
        check_bearing();
    }

   private:
    void add(Severity severity, const char* code, std::string message, std::string remedy, std::string rule,
             std::string source) {
        out_.push_back({code, severity, Stage::layout, placement_.id, placement_.label, std::move(message),
                        std::move(remedy), std::move(rule), std::move(source)});
    }
    void maker(Severity severity, const char* code, std::string message, std::string remedy, const std::string& rule) {
        add(severity, code, std::move(message), std::move(remedy),
            "Equipment data of " + model_.maker + ' ' + model_.name + ": " + rule, "equipment data");
    }
    /// "Move the collector 0.40 m to the right", or `otherwise` when no move within reach helps.
    std::string move_text(const std::string& otherwise) {
        if (!searched_) mend_ = shortest_mend(site_, choice_, model_, placement_);
        searched_ = true;
        return mend_ ? "Move the collector " + text_of(*mend_) : otherwise;
    }

    void check_surface() {
        const Surface& s = *place_.surface;
        if (!within_surface(place_, placed_.outline)) {
            const site::Bounds plate = site::bounds_of(placed_.outline), all = site::bounds_of(s.outline);
            if (plate.width_m() > all.width_m() + site::touch_m || plate.height_m() > all.height_m() + site::touch_m) {
                add(Severity::stop, "collector.too-big",
                    "The collector takes " + metres(plate.width_m()) + " x " + metres(plate.height_m()) + "; " +
                        s.label + " is only " + metres(all.width_m()) + " x " + metres(all.height_m()),
                    "Choose another surface, a smaller collector, or turn it if its data allow that",
                    "The collector lies wholly on its surface", "by definition");
            } else {
                add(Severity::stop, "collector.outside-surface",
                    "The collector reaches beyond the outline of " + s.label,
                    move_text("Place it further inside " + s.label + ", or choose another surface"),
                    "The collector lies wholly on its surface", "by definition");
            }
            return;
        }
        const double gap = site::edge_gap_m(s.outline, placed_.outline);
        if (gap < model_.clearance_m - site::touch_m) {
            maker(Severity::caution, "collector.edge-clearance",
                  "Only " + metres(gap) + " between collector and edge of " + s.label,
                  move_text("No place on " + s.label +
                            " leaves the strip free: ask the maker, or choose another surface"),
                  metres(model_.clearance_m) + " free all round");
        }
    }

    void check_keep_outs() {
        for (const KeepOut& k : place_.surface->keep_outs) {
            if (k.outline.empty()) continue;
            const std::string name = k.label.empty() ? std::string(wg::text_of(k.kind)) : k.label;
            const std::string otherwise = "Move the collector away from " + name + ", or choose another surface";
            if (site::overlap(k.outline, placed_.outline)) {
                add(Severity::stop, "collector.on-keep-out", "The collector lies over " + name, move_text(otherwise),
                    "Nothing is fixed on " + name, "survey");
            } else if (!clear_of(k, placed_.outline)) {
                add(Severity::stop, "collector.keep-out-clearance",
                    "Only " + metres(site::edge_gap_m(k.outline, placed_.outline)) + " between collector and " + name,
                    move_text(otherwise), metres(k.clearance_m) + " free round " + name, "survey");
            } else if (site::edge_gap_m(k.outline, placed_.outline) < model_.clearance_m - site::touch_m) {
                maker(Severity::caution, "collector.strip-at-keep-out",
                      "Only " + metres(site::edge_gap_m(k.outline, placed_.outline)) + " between collector and " + name,
                      move_text(otherwise), metres(model_.clearance_m) + " free all round");
            }
        }
    }

    void check_obstacles() {
        for (const auto& standing : place_.standing) {
            const Obstacle& o = *standing.obstacle;
            const std::string name = o.label.empty() ? std::string(wg::text_of(o.use)) : o.label;
            const std::string otherwise = "Move the collector away from " + name + ", or choose another surface";
            if (site::overlap(standing.outline, placed_.outline)) {
                add(Severity::stop, "collector.on-obstacle", "The collector lies where " + name + " stands",
                    move_text(otherwise), "Nothing is fixed where an obstacle stands", "survey");
            } else if (const double gap = site::edge_gap_m(standing.outline, placed_.outline);
                       gap < model_.clearance_m - site::touch_m) {
                maker(Severity::caution, "collector.strip-at-obstacle",
                      "Only " + metres(gap) + " between collector and " + name, move_text(otherwise),
                      metres(model_.clearance_m) + " free all round");
            }
        }
    }

    void check_others() {
        for (const auto& other : place_.others) {
            if (site::overlap(other.outline, placed_.outline)) {
                add(Severity::stop, "collector.overlap", "The collector overlaps " + other.placement->label,
                    move_text("Move one of the two, or choose another surface"), "Collectors lie beside each other",
                    "by definition");
            } else if (const double gap = site::edge_gap_m(other.outline, placed_.outline);
                       gap < model_.clearance_m - site::touch_m) {
                maker(Severity::caution, "collector.strip-at-collector",
                      "Only " + metres(gap) + " between collector and " + other.placement->label,
                      move_text("Move one of the two, or choose another surface"),
                      metres(model_.clearance_m) + " free all round");
            }
        }
    }

    void check_tilt() {
        constexpr double exact_deg = 1e-6;
        const double tilt = placed_.tilt_deg;
        const CollectorModel& m = model_;
        const bool on_frame = placement_.frame_tilt_deg.has_value();
        const std::string means =
            on_frame ? "Set the frame to " : "Choose another surface, or a frame that brings it to ";
        const auto range = [](double from, double to) { return fixed(from, 0) + " to " + fixed(to, 0) + " deg"; };
        if (tilt < m.tilt_min_deg - exact_deg || tilt > m.tilt_max_deg + exact_deg) {
            maker(Severity::stop, "collector.tilt-outside-range", "The collector is tilted by " + degrees_text(tilt),
                  means + range(m.tilt_min_deg, m.tilt_max_deg), "tilt " + range(m.tilt_min_deg, m.tilt_max_deg));
        } else if (tilt < m.tilt_recommended_min_deg - exact_deg || tilt > m.tilt_recommended_max_deg + exact_deg) {
            maker(Severity::caution, "collector.tilt-not-recommended",
                  "The collector is tilted by " + degrees_text(tilt),
                  means + range(m.tilt_recommended_min_deg, m.tilt_recommended_max_deg),
                  "recommended tilt " + range(m.tilt_recommended_min_deg, m.tilt_recommended_max_deg));
        }
    }

    void check_turn() {
        const double turn = placed_.connection_turn_deg;  // -180..180
        const auto near = [&](double wanted) {
            return std::abs(wrap_180(turn - wanted)) <= level_tolerance_deg + 1e-9;
        };
        const bool long_level = near(0.0) || near(180.0), short_level = near(90.0) || near(-90.0);
        const LevelSide asked = model_.level_side;
        const bool level =
            (asked != LevelSide::short_side && long_level) || (asked != LevelSide::long_side && short_level);
        if (!level) {
            const char* side = asked == LevelSide::long_side    ? "long side level"
                               : asked == LevelSide::short_side ? "short side level"
                                                                : "one side level";
            const double step = asked == LevelSide::either ? 90.0 : 180.0,
                         from = asked == LevelSide::short_side ? 90.0 : 0.0;
            const double by = from + step * std::round((turn - from) / step) - turn;
            maker(Severity::stop, "collector.not-level",
                  "The collector is turned by " + degrees_text(turn) + ", so that its " +
                      (asked == LevelSide::short_side ? "short" : "long") + " side is not level",
                  "Turn it by " + degrees_text(std::abs(by)) + (by > 0.0 ? " counter-clockwise" : " clockwise"), side);
        }
        if (std::abs(turn) > 180.0 - 45.0) {
            maker(Severity::stop, "collector.connections-up", "The connections leave the collector upwards",
                  "Turn it by 180.0 deg", "connections at the lower edge");
        } else if (asked != LevelSide::short_side && std::abs(turn) > 45.0) {
            maker(Severity::caution, "collector.connections-sideways", "The connections leave the collector sideways",
                  "Turn it by 90.0 deg " + std::string(turn > 0.0 ? "clockwise" : "counter-clockwise") +
                      ", or ask the maker whether oil returns in this position",
                  "connections at the lower edge");
        }
    }

    void check_hand() {
        if ((placement_.hand == Hand::right && model_.right_hand) ||
            (placement_.hand == Hand::left && model_.left_hand))
            return;
        const std::string other = placement_.hand == Hand::right ? "left" : "right";
        maker(Severity::stop, "collector.hand-not-made",
              "The collector is not made with connections on the " + std::string(wg::text_of(placement_.hand)),
              "Choose connections on the " + other, "made with connections on the " + other + " only");
    }

    /// +1 facing the equator, -1 facing the pole, 0 across or level.
    [[nodiscard]] double equatorward(double tilt_deg, double azimuth_deg) const {
        const double towards_deg = site_.location.latitude_deg >= 0.0 ? 180.0 : 0.0;
        return std::sin(radians(tilt_deg)) * std::cos(radians(azimuth_deg - towards_deg));
    }

    void check_bearing() {
        constexpr double tropic_deg = 23.44;  // nearer the equator the sun stands on either side in turn
        constexpr double clearly = 0.17;      // 10 deg of tilt towards the pole
        if (std::abs(site_.location.latitude_deg) < tropic_deg) return;
        if (equatorward(placed_.tilt_deg, placed_.azimuth_deg) > -clearly) return;
        for (const Surface& s : site_.surfaces) {
            if (s.id == place_.surface->id || s.outline.size() < 3) continue;
            if (s.tilt_deg < model_.tilt_min_deg || s.tilt_deg > model_.tilt_max_deg) continue;
            if (equatorward(s.tilt_deg, s.azimuth_deg) < clearly) continue;
            const site::Bounds b = site::bounds_of(s.outline), plate = site::bounds_of(placed_.outline);
            if (b.width_m() < plate.width_m() || b.height_m() < plate.height_m()) continue;
            add(Severity::note, "collector.faces-pole",
                "The collector faces " + std::string(compass_point(placed_.azimuth_deg)) +
                    ", away from the sun's path; " + s.label + " faces " + compass_point(s.azimuth_deg),
                "Compare with a place on " + s.label, "Towards the equator where there is a choice",
                "common practice, no published source");
            return;
        }
    }

    const Site& site_;
    const Choice& choice_;
    const CollectorModel& model_;
    const Placement& placement_;
    std::vector<Finding>& out_;
    Neighbourhood place_;
    site::PlacedCollector placed_;
    bool searched_ = false;
    std::optional<Move> mend_;
};

}  // namespace

std::vector<Finding> check_layout(const Site& site, const Choice& choice, const CollectorModel& model) {
    std::vector<Finding> out;
    for (const Placement& placement : choice.placements)
        Checker(site, choice, model, placement, out).check();
    return out;
}

}  // namespace wg::fixing
