// What the store keeps of a job's progress: when it came into which state, what is to be done next, what was fitted.

#include "core/store/migration_records.h"
#include "core/store/fitted_parts.h"
#include "core/store/migrations.h"

namespace wg::store {
namespace {

constexpr int records_step = 19;
constexpr const char* records_what = "days of states, next steps, fitted parts and the heat of quotes";

}  // namespace

Migration records_of_progress(Dialect dialect) {
    Migration step{records_step, records_what, progress_statements(dialect), false, fill_fitted_parts};
    for (const char* statement : fitted_and_heat_statements(dialect))
        step.statements.push_back(statement);
    return step;
}

}  // namespace wg::store
