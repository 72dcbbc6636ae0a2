#pragma once
// What is to be done next on many jobs at once: a condition on the list, and a column of it. Both come from the row
// that the database keeps for each job (migration_progress.cpp) by the rules of core/job/next_step.h; tests and `check`
// hold the row against them.

#include <QString>
#include <QVariantList>
#include <map>
#include <string>
#include <vector>

#include "core/job/next_step.h"
#include "core/store/database.h"

namespace wg::store {

/// A condition on `j` of the list, in brackets, whose values are added in the order of their places.
[[nodiscard]] QString condition_of_steps(const std::vector<NextStep>& steps, const std::string& today,
                                         QVariantList& values);

/// A job's kept row: `step` is a word of its own where the day decides.
struct KeptStep {
    std::string step;
    std::string since;
    std::string service_due_on;  ///< empty: no service
};
/// Nothing: a word that is none.
[[nodiscard]] std::optional<NextStepOfJob> next_step_of(const KeptStep& kept, const std::string& today);

/// What the rules want to know of these jobs but for their state, read from where it comes from.
[[nodiscard]] Result<std::map<std::string, JobStanding>> standings_of(const Database& database,
                                                                      const QVariantList& job_ids);

}  // namespace wg::store
