#include "core/pipework/checks.h"

#include <algorithm>
#include <cmath>

#include "core/quantity/text.h"

namespace wg::pipework {
namespace {

constexpr double same_size_mm = 0.06;  // 3/8 inch is written 9.52 and 9.53
constexpr double at_limit_m = 1e-6;    // a run of exactly the limit passes
constexpr double rising_leg_m = 0.30;  // lower rises carry oil over by the vapour's gusts

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

void check_flow(const Rules& rules, const Run& run, const Flow& flow) {
    if (!flow.known) {
        rules.add(Severity::caution, Stage::yield, "run.losses-unknown",
                  rules.input.refrigerant == nullptr
                      ? "There are no property tables for the refrigerant: losses of the lines are not worked out"
                      : "The rating point of " + fixed(rules.input.rating_evaporating_c, 1) + " deg C and " +
                            fixed(rules.input.rating_heat_w, 0) +
                            " W lies outside the property tables: losses of the lines are not worked out",
                  "Check the block's data", "Refrigerant properties at the rating point", "property tables");
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
    double rise_m = 0.0;  // vapour flows from the collector to the block
    for (const Leg& leg : run.legs)
        rise_m = std::max(rise_m, leg.to.z_m - leg.from.z_m);
    if (rise_m > rising_leg_m && flow.mass_velocity_kg_m2s < flow.riser_kg_m2s) {
        rules.add(Severity::caution, Stage::layout, "run.oil-return",
                  "Vapour rises " + metres(rise_m) + " in the suction line at only " + fixed(flow.velocity_m_s, 1) +
                      " m/s; oil needs " + fixed(flow.riser_kg_m2s / flow.vapour_density_kg_m3, 1) + " m/s to follow",
                  "Let the suction line fall towards the block, or ask the maker for a smaller riser with an oil trap "
                  "at its foot",
                  "Least vapour speed in risers", "Jacobs, Scheideman, Kazem, Macken, ASHRAE Transactions 82, 1976");
    }
    const double flash_k = run.liquid_head_pa / flow.liquid_slope_pa_k;
    if (flash_k > rules.input.block.subcooling_k) {
        rules.add(Severity::caution, Stage::layout, "run.flash-gas",
                  "Lifting the liquid by " + metres(run.lift_m) + " takes " + fixed(run.liquid_head_pa * 1e-3, 0) +
                      " kPa, worth " + fixed(flash_k, 1) + " K; it leaves the condenser only " +
                      fixed(rules.input.block.subcooling_k, 1) + " K below boiling",
                  "Ask the maker whether the expansion valve takes flash gas at this height, or bring collector and "
                  "block nearer in height",
                  "Static head of the liquid line within the subcooling", "hydrostatics; common practice");
    }
}

}  // namespace

std::vector<Finding> check_run(const Input& input, const Run& run, const Flow& flow) {
    std::vector<Finding> out;
    const Rules rules{input, out};
    check_length(rules, run);
    check_sizes(rules);
    check_flow(rules, run, flow);
    return out;
}

}  // namespace wg::pipework
