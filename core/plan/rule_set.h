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

/// Regular leak checks: from this charge on, at least every so many months.
struct LeakDuty {
    bool by_mass = false;  ///< from kg; else from t CO2e
    double from = 5.0;
    int every_months = 12;
};

/// Duties that go with the charge of a fluorinated gas.
struct ChargeDuties {
    std::vector<LeakDuty> leak_checks;
    std::vector<std::string> by_mass;          ///< refrigerants counted by mass, others by t CO2e
    std::vector<std::string> not_fluorinated;  ///< refrigerants that the duties do not touch
    std::string source;                        ///< empty: the rule set names no duties
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
    ChargeDuties duties;
};

[[nodiscard]] Result<RuleSet> rule_set_from_json(std::string_view text, const std::string& file_name);

}  // namespace wg::plan
