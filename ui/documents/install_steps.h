#pragma once
// The work on site in order: one table of texts (install_texts.h), of which only the lines that apply to this plan
// are shown. Numbers run without gaps over what is shown.

#include <QString>
#include <QStringList>
#include <vector>

#include "core/job/job.h"
#include "core/plan/plan.h"
#include "ui/documents/flow.h"

namespace wg::ui::paper {

/// What decides whether a line applies.
struct StepFacts {
    bool on_roof = false;
    bool on_wall = false;
    FixingKind kind = FixingKind::hook;
    bool into_timber = false;  ///< screws into rafters or studs
    // Coverings of the surfaces that carry a plate.
    bool tiles = false;  ///< clay or concrete
    bool membrane = false;
    bool render = false;
    bool soil = false;
    bool on_frame = false;
    bool left_hand = false;
    bool right_hand = false;
    bool several = false;  ///< collectors
    bool parallel = false;
    bool series = false;
    bool flared = false;  ///< at least one of the two tubes, to the sizes of flare_torque
    bool brazed = false;
    bool expansion_at_collector = false;
    bool oil_traps = false;
    bool collector_below = false;  ///< the plate hangs lower than the block
    bool passages = false;
    bool extra_charge = false;
    bool immersed = false;  ///< condenser in the drinking water
    bool anode = false;
    bool mixing_valve = false;
    bool recirculation = false;
    bool flammable_a3 = false;
    bool flammable_a2l = false;
    bool room_opening = false;  ///< asked for by the charge in the room
    bool scaffold = false;
    [[nodiscard]] bool flammable() const { return flammable_a3 || flammable_a2l; }
    [[nodiscard]] bool hook_on_tiles() const { return kind == FixingKind::hook && tiles; }
    /// The fixing opens or pierces what keeps the rain out.
    [[nodiscard]] bool pierces() const {
        return kind == FixingKind::hook || kind == FixingKind::screw_through || (frame_anchor() && membrane);
    }
    [[nodiscard]] bool wall_anchor() const { return kind == FixingKind::anchor && on_wall; }
    [[nodiscard]] bool frame_anchor() const { return kind == FixingKind::anchor && !on_wall; }
};
[[nodiscard]] StepFacts facts_of(const Job& job, const plan::Plan& plan);

/// ISO 817 class, "A1", "A2L" or "A3".
[[nodiscard]] QString safety_class(Refrigerant refrigerant);

struct Step {
    enum class Kind { section, work, hold };
    Kind kind = Kind::work;
    int number = 0;     ///< of work, from 1
    QString text;       ///< section: its title; hold: what is held
    QString why;        ///< reason or what goes wrong; of a hold: what must be true; may be empty
    QString who;        ///< who may do it, where not everybody may: "licensed electrician"
    QString pattern{};  ///< the text before its figures were put in
};
[[nodiscard]] std::vector<Step> steps_for(const Job& job, const plan::Plan& plan);
/// Number of the step of work that tells a figure, "{vacuum}"; 0: none does.
[[nodiscard]] int step_that_names(const std::vector<Step>& steps, const char* figure);

[[nodiscard]] std::vector<Flow::Notice> warnings_for(const Job& job, const plan::Plan& plan);

struct Tool {
    QString place;  ///< in the van
    QString text;
};
/// Hand tools and instruments that the steps ask for, those of one place together.
[[nodiscard]] std::vector<Tool> tools_for(const Job& job, const plan::Plan& plan);

// Evacuation as the steps and the table of readings state it: 500 micron is common practice of makers; 270 Pa is the
// level EN 378-4 names before charging (from memory).
inline constexpr double vacuum_target_pa = 65.0;
inline constexpr double vacuum_limit_pa = 270.0;
inline constexpr int vacuum_wait_min = 20;

/// Tightening torque of a flare nut as fitters commonly use it, "14 to 18 N m"; empty for sizes not in the table.
/// Figures after JIS B 8607 for copper tube, from memory: the sheet says to verify with the fitting's maker.
[[nodiscard]] QString flare_torque(double outside_diameter_mm);

}  // namespace wg::ui::paper
