#pragma once
// Every test that the record tells of, repeated ones too: what `assess` said when it was made.

#include <cstddef>
#include <string>
#include <vector>

#include "core/commissioning/commissioning.h"

namespace wg::commissioning {

struct Attempt {
    std::string subject;
    Verdict verdict = Verdict::cannot_tell;
    std::string words;
    std::vector<std::string> reading_ids;
    std::size_t last_entry = 0;  ///< index in the record of the entry with which it was told
};

/// In the order of the record. A test that goes on (more readings from the same first one) stands once, with its newest
/// verdict; a verdict that turned over stays beside the one that took its place. Readings that were corrected later
/// stand as they were judged before.
[[nodiscard]] std::vector<Attempt> attempts(const std::vector<Reading>& record, const Expected& expected);

}  // namespace wg::commissioning
