#include "core/plan/own_rules.h"

#include <utility>

#include "core/quantity/utf8.h"

namespace wg::plan {

WithRules with_own_rules(const Reference& reference, const std::vector<OwnRules>& sets) {
    WithRules out{reference, {}};
    for (const OwnRules& own : sets) {
        const std::string where = "rule set '" + for_message(own.id) + "'";
        if (reference.rule_sets.count(own.id) != 0) {
            // Jobs that name it would be reckoned otherwise from one day to the next, and on other machines not.
            out.problems.push_back(
                {where, "has the id of a set that comes with the program", "Save it under an id of its own"});
            continue;
        }
        Result<RuleSet> read = rule_set_from_json(own.content, where);
        if (!read) {
            out.problems.insert(out.problems.end(), read.problems().begin(), read.problems().end());
            continue;
        }
        if (read.value().id != own.id) {
            out.problems.push_back({where, "calls itself '" + for_message(read.value().id) + "'",
                                    "Save it under the id that stands in it"});
            continue;
        }
        out.reference.rule_sets.insert_or_assign(own.id, std::move(read).value());
    }
    return out;
}

std::string rules_for_new_jobs(const Reference& reference, const Reference& program, const std::string& chosen) {
    if (reference.rule_sets.count(chosen) != 0) return chosen;
    return program.rule_sets.empty() ? std::string() : program.rule_sets.begin()->first;
}

}  // namespace wg::plan
