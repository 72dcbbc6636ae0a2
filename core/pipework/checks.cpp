#include "core/pipework/checks.h"

#include <algorithm>
#include <cmath>

#include "core/pipework/tube.h"
#include "core/quantity/text.h"

namespace wg::pipework {
namespace {

constexpr double same_size_mm = 0.06;     // 3/8 inch is written 9.52 and 9.53
constexpr double at_limit_m = 1e-6;       // a run of exactly the limit passes
constexpr double shortest_level_m = 1.0;  // shorter level legs are swept by the gas that leaves the last bend

std::string metres(double v) {
    return fixed(v, 2) + " m";
}

struct Rules {
    const Input& input;
    std::vector<Finding>& out;
    std::string data = "Equipment data of " + input.block.maker + ' ' + input.block.name;

    void add(Severity severity, Stage stage, const char* code, std::string message, std::string remedy,
             std::string rule, std::string source) const {
        out.push_back({code,
                       severity,
                       stage,
                       {},
                       "pipe run",
                       std::move(message),
                       std::move(remedy),
                       std::move(rule),
                       std::move(source)});
    }
    void maker(Severity severity, Stage stage, const char* code, std::string message, std::string remedy,
               const std::string& rule) const {
        add(severity, stage, code, std::move(message), std::move(remedy), data + ": " + rule, "equipment data");
    }
};

void check_length(const Rules& rules, const Run& run) {
    const BlockModel& b = rules.input.block;
    if (run.length_m < b.precharged_min_m - at_limit_m) {
        rules.maker(Severity::caution, Stage::layout, "run.too-short",
                    "The run is " + metres(run.length_m) + " long; the factory charge serves " +
                        metres(b.precharged_min_m) + " or more",
                    "Lengthen the run by " + metres(b.precharged_min_m - run.length_m) +
                        " (in level loops that hold no oil), or ask the maker how much charge to take out",
                    "run from " + metres(b.precharged_min_m));
    }
    if (run.length_m > b.run_max_m + at_limit_m) {
        rules.maker(Severity::stop, Stage::layout, "run.too-long",
                    "The run is " + metres(run.length_m) + " long; " + metres(b.run_max_m) + " is the most",
                    "Shorten the run by " + metres(run.length_m - b.run_max_m) +
                        ": move the collector or the cylinder, or take a straighter way",
                    "run up to " + metres(b.run_max_m));
    } else if (run.extra_charge_kg > 0.0) {
        rules.maker(Severity::note, Stage::fitting, "run.extra-charge",
                    "The run is " + metres(run.length_m - b.precharged_max_m) + " longer than the pre-charged " +
                        metres(b.precharged_max_m) + ": weigh in " + fixed(run.extra_charge_kg * 1e3, 0) + " g more",
                    "", fixed(b.extra_charge_g_m, 0) + " g for every metre beyond " + metres(b.precharged_max_m));
    }
    const double height = std::abs(run.lift_m);
    if (height > b.lift_max_m + at_limit_m) {
        rules.maker(Severity::stop, Stage::layout, "run.lift",
                    "The collector's connections lie " + metres(height) + (run.lift_m > 0.0 ? " above" : " below") +
                        " the block's; " + metres(b.lift_max_m) + " is the most",
                    "Bring collector and block " + metres(height - b.lift_max_m) + " nearer in height",
                    "height difference up to " + metres(b.lift_max_m));
    }
}

void check_sizes(const Rules& rules) {
    const BlockModel& b = rules.input.block;
    const CollectorModel& c = rules.input.collector;
    const auto compare = [&](const char* code, const char* line, double collector_mm, double block_mm) {
        if (std::abs(collector_mm - block_mm) <= same_size_mm) return;
        rules.maker(Severity::caution, Stage::fitting, code,
                    std::string("The ") + line + " connection is " + fixed(collector_mm, 2) +
                        " mm at the collector and " + fixed(block_mm, 2) + " mm at the block",
                    "Run the line in " + fixed(block_mm, 2) + " mm and braze a reducer at the collector",
                    std::string(line) + " line " + fixed(block_mm, 2) + " mm");
    };
    compare("run.liquid-size", "liquid", c.liquid_od_mm, b.liquid_od_mm);
    compare("run.suction-size", "suction", c.suction_od_mm, b.suction_od_mm);
}

/// Legs too short for the bends at their ends, of tube that is bent by hand.
void check_bends(const Rules& rules, const Run& run) {
    const BlockModel& b = rules.input.block;
    std::string which;
    double worst_m = 0.0;
    double needed_m = 0.0;
    for (std::size_t i = 0; i < run.legs.size(); ++i) {
        double need_m = 0.0;
        for (const double od_mm : {b.liquid_od_mm, b.suction_od_mm})
            if (od_mm < elbow_from_od_mm) need_m = std::max(need_m, bend_room_m(run.legs, i, od_mm));
        if (run.legs[i].length_m >= need_m - at_limit_m) continue;
        which += (which.empty() ? "" : ", ") + std::to_string(i + 1) + " (" + metres(run.legs[i].length_m) + ')';
        if (need_m - run.legs[i].length_m > needed_m - worst_m) {
            needed_m = need_m;
            worst_m = run.legs[i].length_m;
        }
    }
    if (which.empty()) return;
    rules.add(Severity::caution, Stage::layout, "run.bend-room",
              "Too short for the bends at its ends: leg " + which + "; up to " + metres(needed_m) + " is needed",
              "Draw these legs longer, leave a bend out, or braze elbows there",
              "Bends of " + fixed(bend_diameters, 1) + " tube diameters to the centre line, by spring or bender",
              "common practice, no published source");
}

void check_oil(const Rules& rules, const Run& run) {
    const BlockModel& b = rules.input.block;
    const OilReturn& oil = run.oil;
    if (!oil.traps.empty()) {
        std::string where;
        for (const OilTrap& trap : oil.traps)
            where += (where.empty() ? "" : ", ") + std::string(trap.foot ? "at the foot of leg " : "in leg ") +
                     std::to_string(trap.leg + 1) + " at " + metres(trap.at.z_m);
        rules.maker(Severity::note, Stage::fitting, "run.oil-traps",
                    "Vapour rises " + metres(oil.highest_riser_m()) + " on its way to the block: " +
                        counted(static_cast<long>(oil.traps.size()), "oil trap", "oil traps") +
                        " in the suction line, " + where + " over ground",
                    "", "a trap at the foot of a riser and every " + fixed(b.oil_trap_every_m, 1) + " m");
    }
    const bool level = oil.level_m > shortest_level_m;
    if (oil.risers.empty() && !level) return;
    if (!oil.known) {
        rules.add(Severity::note, Stage::yield, "run.oil-unknown",
                  "Vapour rises or lies level in the suction line, and its speed at the least flow is not known",
                  "Check evaporating_min_c and displacement or compressor data of the block",
                  "Oil return at the coldest evaporating temperature", "property tables and equipment data");
        return;
    }
    const std::string when = fixed(oil.velocity_m_s, 1) + " m/s at " + fixed(oil.at.evaporating_c, 0) +
                             " deg C evaporating and " + fixed(100.0 * b.least_flow_share, 0) + " % flow";
    if (!oil.risers.empty() && oil.velocity_m_s < oil.riser_m_s) {
        rules.add(Severity::caution, Stage::layout, "run.oil-return",
                  "Vapour rises " + metres(oil.highest_riser_m()) + " in the suction line at only " + when +
                      "; oil needs " + fixed(oil.riser_m_s, 1) + " m/s to follow",
                  "Let the suction line fall towards the block, or ask the maker for a smaller riser with an oil trap "
                  "at its foot",
                  "Least vapour speed in risers", "Jacobs, Scheideman, Kazem, Macken, ASHRAE Transactions 82, 1976");
    }
    if (level && oil.velocity_m_s < level_oil_m_s) {
        rules.add(Severity::note, Stage::layout, "run.oil-level",
                  metres(oil.level_m) + " of the suction line lie level, with vapour at only " + when + "; " +
                      fixed(level_oil_m_s, 1) + " m/s carry oil along",
                  "Let these legs fall towards the block, 1 cm on each metre", "Vapour speed in level suction lines",
                  "common practice, no published source");
    }
}

void check_lagging(const Rules& rules, const Run& run) {
    if (!run.legs.empty() && !run.lagging.passage_known) {
        rules.add(Severity::note, Stage::layout, "run.no-passage",
                  "The route has no roof or wall passage: how much of it lies indoors is not known",
                  "Mark the point of the run where it goes through roof or wall (Layout, Run, Kind)",
                  "Lagging by the air round each leg", "common practice, no published source");
    }
    if (run.lagging.small.stays_dry && run.lagging.suction.stays_dry) return;
    const Air& air = rules.input.air;
    rules.add(Severity::caution, Stage::fitting, "run.dew",
              "Dew forms on the lagging even at " + fixed(run.insulation_mm, 0) + " mm, in room air of " +
                  fixed(air.room_c, 0) + " deg C and " + fixed(100.0 * air.room_humidity, 0) + " %",
              "Lead the lines through drier rooms, or lay a second layer with staggered seams",
              "Face of the lagging above the dew point", "ISO 12241:2008, form; humidity assumed");
}

/// What the small line leaves: pressure for the expansion device, or liquid free of gas.
void check_small_line(const Rules& rules, const Run& run) {
    const BlockModel& b = rules.input.block;
    if (b.expansion == ExpansionPlace::block) {
        const double left = std::min(run.rating.device_share, run.mean.least_device_share);
        if (left >= least_device_share) return;
        rules.add(Severity::caution, Stage::layout, "run.small-line-loss",
                  "The small line takes " + fixed(100.0 * (1.0 - left), 0) +
                      " % of the pressure difference that the expansion device has to work with",
                  "Shorten the run, leave out bends, or ask the maker for the next larger small tube",
                  "At least " + fixed(100.0 * least_device_share, 0) + " % left for the device",
                  "common practice, no published source");
        return;
    }
    const PointLines* worst = run.rating.known ? &run.rating : nullptr;
    for (const PointLines& p : run.points)
        if (p.known && (worst == nullptr || p.left_over_boiling_pa < worst->left_over_boiling_pa)) worst = &p;
    if (worst == nullptr || worst->left_over_boiling_pa >= 0.0) return;
    rules.add(Severity::caution, Stage::layout, "run.flash-gas",
              "On " + metres(run.length_m) + " with a lift of " + metres(run.lift_m) + " the liquid loses " +
                  fixed((worst->small.friction_pa + worst->small.head_pa) * 1e-3, 0) + " kPa, worth " +
                  fixed(worst->small.drop_k, 1) + " K; it leaves the condenser only " + fixed(b.subcooling_k, 1) +
                  " K below boiling",
              "Ask the maker whether the expansion device takes flash gas at this height, or bring collector and "
              "block nearer in height",
              "Friction and column of the liquid line within the subcooling", "hydrostatics; Churchill 1977");
}

void check_flow(const Rules& rules, const Run& run) {
    const OperatingPoint& at = rules.input.rating;
    if (!run.rating.known) {
        rules.add(Severity::caution, Stage::yield, "run.losses-unknown",
                  rules.input.refrigerant == nullptr
                      ? "There are no property tables for the refrigerant: losses of the lines are not worked out"
                      : "The rating point of " + fixed(at.evaporating_c, 1) + " deg C evaporating, " +
                            fixed(at.condensing_c, 1) + " deg C condensing and " + fixed(at.evaporator_w, 0) +
                            " W lies outside the property tables: losses of the lines are not worked out",
                  "Check refrigerant, liquid_od_mm, suction_od_mm, subcooling_k and superheat_k of the block",
                  "Refrigerant properties at the rating point", "property tables");
        return;
    }
    if (run.suction_drop_k > suction_drop_limit_k) {
        rules.add(Severity::caution, Stage::layout, "run.suction-loss",
                  "The suction line costs " + fixed(run.suction_drop_k, 2) + " K of evaporating temperature (" +
                      fixed(run.suction_loss_pa * 1e-3, 1) + " kPa)",
                  "Shorten the run, leave out bends, or ask the maker for the next larger tube",
                  "Suction line loss up to " + fixed(suction_drop_limit_k, 1) + " K",
                  "ASHRAE Handbook Refrigeration, halocarbon systems: usual sizing");
    }
    check_small_line(rules, run);
}

}  // namespace

std::vector<Finding> check_run(const Input& input, const Run& run) {
    std::vector<Finding> out;
    const Rules rules{input, out};
    check_length(rules, run);
    check_sizes(rules);
    check_bends(rules, run);
    check_flow(rules, run);
    check_oil(rules, run);
    check_lagging(rules, run);
    return out;
}

}  // namespace wg::pipework
