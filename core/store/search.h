#pragma once
// What the search knows of a job.

#include <QString>
#include <optional>
#include <string>

#include "core/job/job.h"
#include "core/store/database.h"
#include "core/store/store.h"

namespace wg::store {

/// Writes the job's words, with the numbers of its quotes, and serial numbers and items of its fitted parts, under
/// `save_seq`, where none may stand yet.
[[nodiscard]] std::optional<Problem> index_job(const Database& database, const Job& job, std::int64_t save_seq);

/// All jobs that are not removed, into an index that is empty. A job whose text cannot be read is found by what the
/// list shows of it.
[[nodiscard]] std::optional<Problem> index_all_jobs(const Database& database);

/// What a list of jobs selects, and its rows.
inline constexpr const char* list_columns =
    "SELECT j.id, j.number, j.title, j.client, j.town, j.state, j.changed_at, j.revision, j.invented ";
[[nodiscard]] Result<std::vector<JobRow>> rows_of_list(const Database& database, QSqlQuery& at);

/// What the search's text is turned into: words, each to be found as a beginning. Empty: everything.
[[nodiscard]] Result<QString> match_of(const std::string& query, Dialect dialect);

}  // namespace wg::store
