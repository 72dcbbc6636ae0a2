#pragma once
// A country's or firm's rules as one file (docs/rule-set-format.md): actions on fixings, tax, service intervals.

#include <string>
#include <string_view>
#include <vector>

#include "core/fixing/rules.h"
#include "core/quantity/result.h"
#include "core/quote/quote.h"

namespace wg::plan {

/// A refrigerant restriction by date, shown as a caution: how a set joined on site is classed is left to the maker.
struct MarketRule {
    double gwp_from = 0.0;
    std::string since;  ///< ISO 8601 date
    std::string text;
    std::string source;
};

struct ServiceRule {
    std::string id;
    std::string text;
    int every_months = 12;
    std::string when;  ///< "always", "anode", "t_co2e>=5", "flammable"
    std::string source;
};

struct RuleSet {
    std::string id;
    std::string label;
    std::string source;
    bool assumed = true;
    fixing::ActionRules actions;
    quote::TaxRules tax;
    std::vector<MarketRule> market;
    std::vector<ServiceRule> service;
};

[[nodiscard]] Result<RuleSet> rule_set_from_json(std::string_view text, const std::string& file_name);

}  // namespace wg::plan
