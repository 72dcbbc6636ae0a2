#pragma once
// Who changed what of a job, and when: its revisions, and what each brought.

#include <string>
#include <vector>

#include "core/merge/join.h"
#include "core/store/store.h"

namespace wg::store {

struct JobRevision {
    std::int64_t revision = 0;
    std::string changed_at;  ///< ISO 8601 UTC
    std::string changed_by;  ///< empty: saved by a program that did not tell
};

class JobHistory {
   public:
    /// The store must outlive it.
    explicit JobHistory(Store& store) : store_(store), database_(store.database()) {}

    /// Newest first. Refused: a job that is not there.
    [[nodiscard]] Result<std::vector<JobRevision>> revisions(const std::string& job_id) const;
    /// What the revision has otherwise than the one before it, in words; nothing of the first. Refused: a revision that
    /// is not there or cannot be read.
    [[nodiscard]] Result<std::vector<merge::Change>> changes(const std::string& job_id, std::int64_t revision) const;

   private:
    Store& store_;
    const Database& database_;
};

}  // namespace wg::store
