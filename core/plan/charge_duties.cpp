#include "core/plan/charge_duties.h"

#include <algorithm>
#include <cmath>

#include "core/plan/parts_of_plan.h"
#include "core/quantity/text.h"

namespace wg::plan {
namespace {

bool holds(const std::vector<std::string>& names, const std::string& name) {
    return std::find(names.begin(), names.end(), name) != names.end();
}

/// The limit from which leak checks begin: "1 kg", "5 t CO2e".
std::string first_limit(const ChargeDuty& duty) {
    const double from = duty.first_from;
    return fixed(from, from == std::floor(from) ? 0 : 3) + (duty.by_mass ? " kg" : " t CO2e");
}

}  // namespace

ChargeDuty charge_duty(const ChargeDuties& duties, const std::string& refrigerant, double kg, double t_co2e) {
    ChargeDuty duty;
    duty.named = !duties.source.empty();
    duty.kg = kg;
    duty.t_co2e = t_co2e;
    duty.source = duties.source;
    if (!duty.named) return duty;
    duty.fluorinated = !holds(duties.not_fluorinated, refrigerant);
    if (!duty.fluorinated) return duty;
    duty.by_mass = holds(duties.by_mass, refrigerant);
    duty.counted = duty.by_mass ? kg : t_co2e;
    for (const LeakDuty& rule : duties.leak_checks) {
        if (rule.by_mass != duty.by_mass) continue;
        if (duty.first_from == 0.0 || rule.from < duty.first_from) duty.first_from = rule.from;
        if (duty.counted < rule.from) continue;
        if (duty.leak_check_months == 0 || rule.every_months < duty.leak_check_months)
            duty.leak_check_months = rule.every_months;
    }
    duty.records.emplace_back("Label on the block: gas, charge in kg and in t CO2e, its GWP");
    duty.records.emplace_back(
        "Gas, quantity put in at fitting and its origin, who did it with the number of his "
        "certificate");
    if (duty.leak_check_months > 0) {
        duty.records.emplace_back("Each leak check: date, result, who did it; quantities added and recovered");
        duty.records.emplace_back("Kept for five years by the owner and by the firm");
    }
    return duty;
}

namespace steps {

void charge_duties(const Selection& with, Plan& plan) {
    const std::string name = with.refrigerant->name();
    plan.duty = charge_duty(with.rules->duties, name, plan.run.total_charge_kg, plan.run.total_charge_t_co2e);
    const ChargeDuty& duty = plan.duty;
    const auto note = [&](const char* code, std::string message, std::string remedy, const std::string& source) {
        plan.findings.push_back({code, Severity::note, Stage::aftercare, "", with.block->name, std::move(message),
                                 std::move(remedy), "Duties that go with the charge", source});
    };
    if (!(duty.kg > 0.0)) return;
    if (!duty.named) {
        if (with.refrigerant->gwp100() > 0.0 && !(with.refrigerant->safety_class() == "A3"))
            note("charge.duties-not-named", "The rule set names no duties that go with a charge of " + name,
                 "Take the national rules on leak checks and records, or a rule set that names them",
                 with.rules->source);
        return;
    }
    const std::string is = "The system holds " + fixed(duty.kg, 3) + " kg of " + name +
                           (duty.by_mass ? std::string(", counted by mass") : ", " + fixed(duty.t_co2e, 3) + " t CO2e");
    if (duty.fluorinated && duty.leak_check_months > 0) {
        note("charge.leak-check",
             is + ": a leak check every " + std::to_string(duty.leak_check_months) +
                 " months, joints made on site leave no relief for hermetic sets",
             "Sell the checks with the system and keep the record", duty.source);
    } else if (duty.fluorinated) {
        note("charge.no-leak-check",
             is +
                 (duty.first_from > 0.0 ? ": no regular leak check below " + first_limit(duty)
                                        : std::string(": the rule set names no leak check for it")) +
                 "; fitting, charging and recovery still take a certified person",
             "", duty.source);
    }
    Working work{"charge.duties",
                 "Duties that go with the charge",
                 "t CO2e = kg GWP/1000; interval by the strictest limit reached",
                 {{"charge", fixed(duty.kg, 3) + " kg of " + name},
                  {"GWP", fixed(with.refrigerant->gwp100(), with.refrigerant->gwp100() < 10.0 ? 3 : 0)},
                  {"t CO2e", fixed(duty.t_co2e, 3)},
                  {"counted by", !duty.fluorinated ? "not a fluorinated gas"
                                 : duty.by_mass    ? "mass"
                                                   : "t CO2e"}},
                 "",
                 duty.source,
                 with.rules->assumed};
    if (duty.fluorinated && duty.first_from > 0.0) work.inputs.emplace_back("leak checks from", first_limit(duty));
    work.inputs.emplace_back("hermetic relief", "none: joints are made on site");
    for (const std::string& record : duty.records)
        work.inputs.emplace_back("record", record);
    work.inputs.emplace_back("standing", "planning aid; local code and a licensed refrigeration engineer decide");
    work.result = duty.leak_check_months > 0 ? "leak check every " + std::to_string(duty.leak_check_months) + " months"
                  : duty.fluorinated         ? std::string("no regular leak check")
                                             : std::string("none but the service of the plan");
    plan.workings.push_back(std::move(work));
}

}  // namespace steps

}  // namespace wg::plan
