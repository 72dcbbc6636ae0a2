// Standstill pressure against what each part may carry, and the test pressures of the job.
#include <algorithm>
#include <array>

#include "core/plan/parts_of_plan.h"
#include "core/quantity/constants.h"
#include "core/quantity/text.h"

namespace wg::plan::steps {
namespace {

constexpr double strength_share = 1.1;  ///< of PS, pneumatic, EN 378-2

struct Part {
    const char* what;
    double limit_bar;
    std::string rule;
};

std::string data_of(const std::string& maker, const std::string& name) {
    return "Equipment data of " + maker + ' ' + name;
}

std::string bar(double v) {
    return fixed(v, 1) + " bar";
}

class Pressures {
   public:
    Pressures(const Selection& with, Plan& plan) : with_(with), plan_(plan) {
        const std::string block = data_of(with.block->maker, with.block->name);
        parts_ = {
            {{"the collector", with.collector->max_pressure_bar, data_of(with.collector->maker, with.collector->name)},
             {"the lines", with.block->line_max_pressure_bar, block},
             {"the block's low side", with.block->max_pressure_low_bar, block}}};
    }

    void check() {
        tests();
        if (plan_.has_yield) standstill();
        data_of_the_block();
        work();
    }

   private:
    void add(Severity severity, Stage stage, const char* code, std::string place, std::string message,
             std::string remedy, std::string rule, std::string source) {
        plan_.findings.push_back({code, severity, stage, "", std::move(place), std::move(message), std::move(remedy),
                                  std::move(rule), std::move(source)});
    }

    /// The block stays shut off behind its valves: collector and lines are tested.
    void tests() {
        PressureTests& t = plan_.pressure_tests;
        const Part& weakest = parts_[0].limit_bar <= parts_[1].limit_bar ? parts_[0] : parts_[1];
        t.weakest_bar = weakest.limit_bar;
        t.weakest_part = weakest.what;
        t.standstill_known = plan_.has_yield && !plan_.standstill.above_critical;
        if (t.standstill_known)
            t.standstill_bar = std::max(0.0, plan_.standstill.pressure_bar_abs - standard_pressure_pa * 1e-5);
        t.tightness_bar = std::min(std::max(with_.block->test_pressure_bar, t.standstill_bar), t.weakest_bar);
        t.strength_bar = strength_share * t.weakest_bar;
    }

    void standstill() {
        const season::Standstill& still = plan_.standstill;
        const double still_bar = plan_.pressure_tests.standstill_bar;
        const std::string conditions = " (" + fixed(still.light_w_m2, 0) + " W/m2 on the plate, air " +
                                       fixed(still.air_c, 0) + " deg C, wind " + fixed(still.wind_m_s, 1) +
                                       " m/s, pump off)";
        for (const Part& part : parts_) {
            if (!still.above_critical && still_bar <= part.limit_bar) continue;
            add(Severity::stop, Stage::layout, "standstill.pressure", part.what,
                "At standstill the plate reaches " + fixed(still.plate_c, 0) + " deg C" + conditions + ": " +
                    (still.above_critical ? with_.refrigerant->name() + " is above its critical temperature there"
                                          : bar(still_bar) + " gauge") +
                    ", more than the " + fixed(part.limit_bar, 0) + " bar that " + part.what + " may carry",
                "Choose a collector and block with a higher allowable pressure, or a place with less light",
                part.rule + ": maximum allowable pressure PS", "EN 378-2: no part above its PS, at standstill too");
        }
        Working work{
            "pressure.standstill",
            "Pressure at standstill against what the parts may carry",
            "p = p_sat(T_plate) - 1.013 bar <= PS",
            {{"plate", fixed(still.plate_c, 1) + " deg C" + conditions}, {"refrigerant", with_.refrigerant->name()}},
            "",
            "EN 378-2: no part above its PS, at standstill too; saturation tables (docs/handbook/refrigerants.md)",
            false};
        for (const Part& part : parts_)
            work.inputs.emplace_back(std::string("PS of ") + part.what, bar(part.limit_bar));
        work.inputs.emplace_back("holds for", "liquid left in the plate in the hottest hour of the weather year");
        work.inputs.emplace_back("standing", standing_);
        work.result = still.above_critical ? "above the critical temperature" : bar(still_bar) + " gauge";
        plan_.workings.push_back(std::move(work));
    }

    void data_of_the_block() {
        const BlockModel& block = *with_.block;
        const PressureTests& t = plan_.pressure_tests;
        const std::string block_data = data_of(block.maker, block.name);
        if (block.test_pressure_bar > t.weakest_bar) {
            add(Severity::stop, Stage::fitting, "test-pressure.above-allowable", block.name,
                "The tightness test at " + fixed(block.test_pressure_bar, 0) +
                    " bar is above what collector or lines may carry (" + fixed(t.weakest_bar, 0) + " bar)",
                "Choose parts that match each other", block_data + ": test pressure",
                "EN 378-2: tightness test up to PS");
        } else if (t.standstill_known && block.test_pressure_bar < t.standstill_bar) {
            add(Severity::caution, Stage::fitting, "test-pressure.below-standstill", block.name,
                "The block's data ask for a tightness test at " + fixed(block.test_pressure_bar, 0) +
                    " bar, below the standstill pressure of " + bar(t.standstill_bar) + "; the plan tests at " +
                    bar(t.tightness_bar),
                "Ask the maker for the test pressure that goes with the highest pressure of the site",
                "Tightness test up to the maximum allowable pressure", "EN 378-2 (edition to be checked)");
        }
        if (block.expansion == ExpansionPlace::collector && block.line_max_pressure_bar < block.max_pressure_high_bar)
            add(Severity::stop, Stage::layout, "pressure.liquid-line", block.name,
                "The liquid line carries the high side's " + fixed(block.max_pressure_high_bar, 0) +
                    " bar to the expansion device at the collector; the lines may carry " +
                    fixed(block.line_max_pressure_bar, 0) + " bar",
                "Choose lines for the high side's pressure, or a block that expands inside",
                block_data + ": PS of high side and lines", "EN 378-2: no part above its PS");
    }

    void work() {
        const PressureTests& t = plan_.pressure_tests;
        plan_.workings.push_back(
            {"pressure.tests",
             "Test pressures of the job",
             "strength >= 1.1 PS; standstill <= tightness <= PS",
             {{"PS of the weakest part tested", bar(t.weakest_bar) + ", " + t.weakest_part},
              {"standstill", t.standstill_known ? bar(t.standstill_bar) : std::string("not worked out")},
              {"the block's data ask for", bar(with_.block->test_pressure_bar)},
              {"with",
               "dry nitrogen only, regulator and relief on the bottle, block shut off, people away while it "
               "rises"},
              {"strength, 1.1 PS", bar(t.strength_bar) + ": above PS, the makers' works; on site only where the makers "
                                                         "of collector and lines ask for it in writing"},
              {"holds for", "collector and lines joined on site; the maker's word goes first"},
              {"standing", standing_}},
             "tightness at " + bar(t.tightness_bar) + " gauge, never above " + bar(t.weakest_bar),
             "EN 378-2, 6.3 (from memory: check the edition)",
             !t.standstill_known});
    }

    static constexpr const char* standing_ = "planning aid; local code and a licensed refrigeration engineer decide";
    const Selection& with_;
    Plan& plan_;
    std::array<Part, 3> parts_;
};

}  // namespace

void pressure_checks(const Selection& with, Plan& plan) {
    Pressures(with, plan).check();
}

}  // namespace wg::plan::steps
