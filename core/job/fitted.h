#pragma once
// What stands at the client's: the main parts with their numbers, as the record of a job tells them.

#include <string>
#include <vector>

#include "core/job/job.h"

namespace wg {

/// A part that was fitted, or one that follows from the plan of a job that has been fitted without its number entered.
struct FittedPart {
    std::string reading_id;   ///< the entry that tells it; empty: from the plan alone
    std::string part;         ///< the entry's subject: "collector 2", "block", "cylinder", ...; may be empty
    std::string item_id;      ///< of the catalogue, as the chosen choice has it; empty: not one of its parts
    std::string serial;       ///< empty: not entered
    std::string fitted_on;    ///< ISO 8601 date of the entry; empty: not told
    std::string replaced_on;  ///< of the entry that tells the part in its place; empty: it is there
    friend bool operator==(const FittedPart&, const FittedPart&) = default;
};

/// In the order of the record; then, of a job that is fitted or in service (or closed with a record), collector, block
/// and cylinder of the chosen choice that no entry names. A later number of the same part takes the earlier one's
/// place; the same number again is the same part. An entry that names no part stands for itself.
[[nodiscard]] std::vector<FittedPart> fitted_parts(const Job& job);

}  // namespace wg
