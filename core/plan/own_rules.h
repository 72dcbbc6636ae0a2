#pragma once
// The firm's own rule sets beside those that come with the program.

#include <string>
#include <vector>

#include "core/plan/reference.h"

namespace wg::plan {

struct OwnRules {
    std::string id;       ///< under which the firm keeps it
    std::string content;  ///< docs/rule-set-format.md
};

struct WithRules {
    Reference reference;
    /// Sets that could not be taken: unreadable, of another id than the firm keeps them under, or with an id that a
    /// set of the program has. The others stand.
    std::vector<Problem> problems;
};

/// Which ones are withdrawn, and needed all the same since a job names them, the caller knows.
[[nodiscard]] WithRules with_own_rules(const Reference& reference, const std::vector<OwnRules>& sets);

/// The set for a new job: the chosen one where it is there; else the first of the program's. Empty: there is none.
[[nodiscard]] std::string rules_for_new_jobs(const Reference& reference, const Reference& program,
                                             const std::string& chosen);

}  // namespace wg::plan
