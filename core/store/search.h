#pragma once
// What the search knows of a job.

#include <optional>

#include "core/job/job.h"
#include "core/store/database.h"

namespace wg::store {

/// Writes the job's words under `save_seq`, where none may stand yet.
[[nodiscard]] std::optional<Problem> index_job(const Database& database, const Job& job, std::int64_t save_seq);

}  // namespace wg::store
