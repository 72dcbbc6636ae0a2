#pragma once
// Duties that go with the charge of a fluorinated gas, from a rule set.

#include <string>
#include <vector>

#include "core/plan/rule_set.h"

namespace wg::plan {

struct ChargeDuty {
    bool named = false;        ///< the rule set names duties at all
    bool fluorinated = false;  ///< they touch this refrigerant
    bool by_mass = false;      ///< counted in kg, else in t CO2e
    double kg = 0.0;
    double t_co2e = 0.0;
    double counted = 0.0;              ///< in the unit it is counted by
    double first_from = 0.0;           ///< least charge of that unit with regular leak checks; 0: none named
    int leak_check_months = 0;         ///< at least so often; 0: no regular leak check
    std::vector<std::string> records;  ///< what is written down, one sentence each
    std::string source;
};

/// Joints made on site leave no relief for hermetically sealed sets.
[[nodiscard]] ChargeDuty charge_duty(const ChargeDuties& duties, const std::string& refrigerant, double kg,
                                     double t_co2e);

}  // namespace wg::plan
