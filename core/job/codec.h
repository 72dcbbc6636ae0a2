#pragma once
// Jobs as JSON (docs/job-format.md). Reading is strict: the text is treated as hostile.

#include <string>
#include <string_view>

#include "core/job/job.h"
#include "core/quantity/result.h"

namespace wg {

/// Reads a job of schema 1 (later: every earlier schema through its upgraders).
/// `file_name` only serves messages. Refused, with the field's path and label: not JSON (line and column), wrong
/// types, unknown enumerators, numbers that are not finite or lie outside the ranges stated in job.h, duplicate or
/// malformed ids, references to ids that do not exist, outlines with fewer than three corners or that cross
/// themselves, a newer schema, more than 64 MiB of text or nesting deeper than 64.
/// Fields that this version does not know are kept in `extra_json`.
[[nodiscard]] Result<Job> job_from_json(std::string_view text, const std::string& file_name);

/// The job as indented JSON with sorted known keys, UTF-8, ending with a newline. Reading it back gives an equal job.
[[nodiscard]] std::string job_to_json(const Job& job);

/// Checks a job built in memory against the same rules as job_from_json. Empty: valid.
[[nodiscard]] std::vector<Problem> validate(const Job& job);

/// SHA-256, as 64 hex digits, of the job's JSON without the fields `revision`, `changed_at`, `base_sha256`,
/// `base_revision`: equal content, equal hash.
[[nodiscard]] std::string content_sha256(const Job& job);

/// SHA-256 of one entry's JSON without its field `sha256`: what the chain of the record rests on.
[[nodiscard]] std::string reading_sha256(const Reading& entry);

/// What a print of the plan is told by, e.g. "3FA9-07B2": the first 8 digits of the SHA-256 of all that a plan is made
/// from, so without record, photographs, notes, state and revision. It changes with any change of the plan, and only
/// then.
[[nodiscard]] std::string plan_mark(const Job& job);

}  // namespace wg
