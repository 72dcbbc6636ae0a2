#pragma once
// When a job came into which of its states, and through whom.

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "core/merge/versions.h"
#include "core/store/store.h"

namespace wg::store {

struct StateDay {
    std::int64_t revision = 0;  ///< that brought it
    std::string from;           ///< key of the state before; empty: the job was new here
    std::string to;             ///< key of the state
    std::string at;             ///< ISO 8601 UTC
    std::string by;             ///< who; empty: not told
    friend bool operator==(const StateDay&, const StateDay&) = default;
};

class StateDays {
   public:
    /// The store must outlive it.
    explicit StateDays(Store& store) : database_(store.database()) {}

    /// Oldest first; nothing of a job that is not there. The last is the state that the job has.
    [[nodiscard]] Result<std::vector<StateDay>> of(const std::string& job_id) const;

   private:
    const Database& database_;
};

/// When and on which machine the state of `job` was entered, as its versions have it: a state that came with a parcel
/// was reached on the day when it was entered there. By `changed_at` and `by` where they do not tell, or tell a later
/// day.
[[nodiscard]] StateDay state_day_of(const Job& job, const merge::Versions& versions, const std::string& by);

/// Within the transaction that brings the state.
[[nodiscard]] std::optional<Problem> write_state_day(const Database& database, const std::string& job_id,
                                                     const StateDay& day);

}  // namespace wg::store
