// Entry for a coverage-guided fuzzer (clang++ -fsanitize=fuzzer,address): any bytes as a rule set.

#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <nlohmann/json.hpp>
#include <string>
#include <string_view>

#include "core/plan/frozen_plan.h"
#include "core/plan/rule_sources.h"
#include "core/quantity/utf8.h"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    namespace wp = wg::plan;
    const std::string_view text(reinterpret_cast<const char*>(data), size);
    const wg::Result<wp::RuleSet> read = wp::rule_set_from_json(text, "fuzz.json");
    if (!read.ok()) {
        if (read.problems().empty()) std::abort();
        for (const wg::Problem& problem : read.problems()) {
            if (problem.where.empty() || problem.what.empty() || problem.remedy.empty()) std::abort();
            if (!wg::is_utf8(problem.text())) std::abort();
        }
        return 0;
    }
    const wp::RuleSet& rules = read.value();
    if (rules.id.empty() || rules.tax.rates.empty()) std::abort();
    if (!rules.assumed && (wp::says_assumed(rules.source) || wp::says_assumed(rules.tax.source))) std::abort();
    // As it is frozen with a quote it reads again and is the same; sources of single values are not frozen, so that
    // only a set that is called assumed does without them.
    const std::string frozen = wp::frozen_plan({}, rules);
    nlohmann::json again = nlohmann::json::parse(frozen).at("rules");
    again["assumed"] = true;
    const wg::Result<wp::RuleSet> reread = wp::rule_set_from_json(again.dump(), "again.json");
    if (!reread.ok()) std::abort();
    wp::RuleSet same = reread.value();
    same.assumed = rules.assumed;
    if (wp::frozen_plan({}, same) != frozen) std::abort();
    return 0;
}
