#pragma once
// Jobs with different ids that tell of the same client and site: a copy made by hand instead of an exchange.

#include <string>

#include "core/job/job.h"

namespace wg::merge {

/// SHA-256 of client and site without ids: equal for a job and a copy of it whose elements were given new ids. Empty
/// when client and site say nothing yet, so that two new jobs are no copies of one another.
[[nodiscard]] std::string house_sha256(const Job& job);

/// Different jobs of the same client and site.
[[nodiscard]] bool is_copy_by_hand(const Job& a, const Job& b);

}  // namespace wg::merge
