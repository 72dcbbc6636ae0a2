#pragma once
// The work on site in order: one table of texts (install_steps.cpp), of which only the lines that apply to this plan
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
    bool on_level = false;     ///< terrace, ground or flat roof
    bool into_timber = false;  ///< screws into rafters or studs
    bool on_frame = false;
    bool left_hand = false;
    bool right_hand = false;
    bool immersed = false;  ///< condenser in the drinking water
    bool flammable_a3 = false;
    bool flammable_a2l = false;
    bool extra_charge = false;
    bool passages = false;
    bool recirculation = false;
    bool anode = false;
    bool scaffold = false;
    bool collector_below = false;  ///< the plate hangs lower than the block
    bool several = false;          ///< collectors
    [[nodiscard]] bool flammable() const { return flammable_a3 || flammable_a2l; }
};
[[nodiscard]] StepFacts facts_of(const Job& job, const plan::Plan& plan);

/// ISO 817 class, "A1", "A2L" or "A3".
[[nodiscard]] QString safety_class(Refrigerant refrigerant);

struct Step {
    enum class Kind { section, work, hold };
    Kind kind = Kind::work;
    int number = 0;  ///< of work, from 1
    QString text;    ///< section: its title; hold: what must be true
    QString why;     ///< reason or what goes wrong; may be empty
};
[[nodiscard]] std::vector<Step> steps_for(const Job& job, const plan::Plan& plan);

[[nodiscard]] std::vector<Flow::Notice> warnings_for(const Job& job, const plan::Plan& plan);

/// Hand tools and instruments that the steps ask for.
[[nodiscard]] QStringList tools_for(const Job& job, const plan::Plan& plan);

// Evacuation as the steps and the table of readings state it: 500 micron is common practice of makers; 270 Pa is the
// level EN 378-4 names before charging (from memory).
inline constexpr double vacuum_target_pa = 65.0;
inline constexpr double vacuum_limit_pa = 270.0;
inline constexpr int vacuum_wait_min = 20;

/// Tightening torque of a flare nut as fitters commonly use it, "14 to 18 N m"; empty for sizes not in the table.
/// Figures after JIS B 8607 for copper tube, from memory: the sheet says to verify with the fitting's maker.
[[nodiscard]] QString flare_torque(double outside_diameter_mm);

}  // namespace wg::ui::paper
