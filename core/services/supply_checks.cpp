// What the block asks of the house's supply against what the survey tells of it.
#include <algorithm>
#include <cmath>

#include "core/quantity/text.h"
#include "core/services/parts.h"

namespace wg::services {
namespace {

constexpr double voltage_tolerance = 0.10;  ///< IEC 60038
constexpr double frequency_tolerance_hz = 1.0;

const char* earthing_words(EarthingSystem system) noexcept {
    switch (system) {
        case EarthingSystem::tn_s: return "TN-S";
        case EarthingSystem::tn_c_s: return "TN-C-S";
        case EarthingSystem::tt: return "TT";
        case EarthingSystem::it: return "IT";
        case EarthingSystem::unknown: break;
    }
    return "";
}

struct CheckList {
    const Input& in;
    const SpotFindings& findings;
    Electrical& e;
    std::string missing;

    void add(const char* what, std::string needed, std::string found, bool met) {
        e.checks.push_back({what, std::move(needed), std::move(found), met ? Answer::met : Answer::not_met});
    }
    void open(const char* what, std::string needed, const char* field) {
        e.checks.push_back({what, std::move(needed), "", Answer::not_told});
        add_missing(missing, field);
    }
    void mismatch(const char* code, std::string message, std::string remedy, const char* rule,
                  const char* source) const {
        findings.add(Severity::stop, Stage::visit, code, std::move(message), std::move(remedy), rule, source);
    }

    void own_circuit() {
        const Service& supply = in.spot.supply;
        add("own circuit", "own protected circuit from the board",
            supply.present ? "there" : "to be made, " + fixed(supply.distance_m, 1) + " m", supply.present);
        if (supply.present && !(in.spot.distribution_m > 0.0))
            open("way from the board", "metres, for the voltage drop", "way from the distribution board");
        else
            add("way from the board", "metres, for the voltage drop", fixed(e.way_m, 1) + " m to the terminals", true);
    }

    void phases() {
        const int needed = in.block.supply_phases, there = in.electrics.phases;
        const std::string asks = counted(needed, "phase", "phases");
        if (there == 0) return open("phases", asks, "phases");
        add("phases", asks, counted(there, "phase", "phases"), there >= needed);
        if (there >= needed) return;
        mismatch("supply.phases", "The block needs " + asks + "; the house has " + std::to_string(there),
                 "Choose a block for one phase, or have the network operator bring three",
                 "Phases of the block's supply", "equipment data");
    }

    void voltage() {
        const double needed_v = in.block.supply_phases == 3 ? in.block.supply_v / std::sqrt(3.0) : in.block.supply_v;
        const std::string asks = fixed(needed_v, 0) + " V, within 10 %";
        if (!in.electrics.voltage_v) return open("voltage", asks, "voltage");
        const double there_v = *in.electrics.voltage_v;
        const bool met = std::fabs(there_v - needed_v) <= voltage_tolerance * needed_v;
        add("voltage", asks, fixed(there_v, 0) + " V", met);
        if (met) return;
        mismatch("supply.voltage",
                 "The block needs " + fixed(needed_v, 0) + " V; the house has " + fixed(there_v, 0) + " V",
                 "Choose a block for the house's voltage", "Supply voltage within 10 % of the rated one",
                 "IEC 60038; equipment data");
    }

    void frequency() {
        const std::string asks = fixed(in.block.supply_hz, 0) + " Hz";
        if (!in.electrics.frequency_hz) return open("frequency", asks, "frequency");
        const double there_hz = *in.electrics.frequency_hz;
        const bool met = std::fabs(there_hz - in.block.supply_hz) <= frequency_tolerance_hz;
        add("frequency", asks, fixed(there_hz, 0) + " Hz", met);
        if (met) return;
        mismatch("supply.frequency", "The block is made for " + asks + "; the house has " + fixed(there_hz, 0) + " Hz",
                 "Choose a block for the house's frequency", "Frequency of the block's supply", "equipment data");
    }

    void main_fuse() {
        const Electrics& house = in.electrics;
        const std::string more = fixed(e.running_a, 1) + " A besides what runs at the same time";
        if (!house.main_fuse_a || !house.used_a) {
            if (!house.main_fuse_a) add_missing(missing, "main fuse");
            if (!house.used_a) add_missing(missing, "current of what runs at the same time");
            e.checks.push_back({"main fuse", more,
                                house.main_fuse_a ? fixed(*house.main_fuse_a, 0) + " A" : std::string(),
                                Answer::not_told});
        } else {
            const double together_a = *house.used_a + e.running_a;
            const bool met = together_a <= *house.main_fuse_a;
            add("main fuse", more,
                fixed(*house.main_fuse_a, 0) + " A a phase, " + fixed(*house.used_a, 0) + " A of it used", met);
            if (!met)
                mismatch("supply.main-fuse",
                         "With the block " + fixed(together_a, 0) +
                             " A may run at the same time on a phase; the main "
                             "fuse is " +
                             fixed(*house.main_fuse_a, 0) + " A",
                         "Lock the immersion heater or another large load out while the block runs, or have the "
                         "connection enlarged",
                         "What runs at the same time within the main fuse", "IEC 60364-1, 311");
        }
        if (house.main_fuse_a && e.breaker_a > 0.0 && *house.main_fuse_a <= e.breaker_a)
            findings.add(Severity::caution, Stage::visit, "supply.selectivity",
                         "The circuit's breaker of " + fixed(e.breaker_a, 0) + " A is not below the main fuse of " +
                             fixed(*house.main_fuse_a, 0) + " A: a fault there may put the house in the dark",
                         "Have an electrician check selectivity", "Breaker below the fuse before it",
                         "IEC 60364-5-53, 536");
    }

    void earthing() {
        const std::string asks = "protective earth, and the system it is part of";
        if (in.electrics.earthing == EarthingSystem::unknown) return open("earthing", asks, "earthing system");
        add("earthing", asks,
            std::string(earthing_words(in.electrics.earthing)) +
                (in.spot.earth.present ? ", earth at the spot" : ", earth to be brought"),
            in.spot.earth.present);
    }
};

}  // namespace

const char* word(Answer answer) noexcept {
    switch (answer) {
        case Answer::met: return "met";
        case Answer::not_met: return "not met";
        case Answer::not_told: return "not told";
    }
    return "";
}

void provide_supply_checks(const Input& input, Outcome& out) {
    const SpotFindings findings{input, out.findings};
    CheckList list{input, findings, out.electrical, {}};
    list.own_circuit();
    list.phases();
    list.voltage();
    list.frequency();
    list.main_fuse();
    list.earthing();
    if (!list.missing.empty())
        findings.add(
            Severity::caution, Stage::visit, "supply.not-told",
            "The survey does not tell of the electrical supply: " + list.missing + "; nothing is assumed in its place",
            "Fill in on Visit", "Supply known before the block is offered",
            "IEC 60364-1, 311 to 313 (assessment of supply)");
    Working w{"services.supply",
              "Electrical supply: check list",
              "needed against found",
              {},
              "",
              "equipment data; survey; IEC 60364-1, 311 to 313",
              false};
    long met = 0;
    for (const SupplyCheck& check : out.electrical.checks) {
        met += check.answer == Answer::met ? 1 : 0;
        w.inputs.emplace_back(
            check.what,
            check.needed + ": " +
                (check.answer == Answer::not_told ? std::string("not told") : check.found + ", " + word(check.answer)));
    }
    w.inputs.push_back(electricians_word);
    w.result = std::to_string(met) + " of " +
               counted(static_cast<long>(out.electrical.checks.size()), "point met", "points met");
    out.workings.push_back(std::move(w));
}

}  // namespace wg::services
