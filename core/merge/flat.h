#pragma once
// A job taken apart into fields that change by themselves, and put together again.
//
// A field is a member with a value, a group of members that only make sense together, or "is there" of an element.
// Outlines, the horizon, windows of the clock and whatever else is a list without ids is one value. Members that this
// program does not know are taken apart the same way. Not among them: revision, changed_at, base_sha256, base_revision.

#include <map>
#include <string>
#include <vector>

#include "core/job/job.h"
#include "core/quantity/result.h"

namespace wg::merge {

struct Flat {
    /// Path to compact JSON. An element's own path holds `true`, an entry of the record the whole entry.
    std::map<std::string, std::string, std::less<>> fields;
    /// Path of a list to the ids of its elements in order. A list that is empty may be missing.
    std::map<std::string, std::vector<std::string>, std::less<>> lists;
};

/// A member left out of the file while it is the usual one is left out here too, whatever stands beside it.
[[nodiscard]] Flat flattened(const Job& job);

/// The job of these fields, read as strictly as a file. Members that have no place are left out.
[[nodiscard]] Result<Job> job_of(const Flat& flat);

/// Whether `group`, e.g. "*place", is known for elements of that list or objects of that name, and the members of
/// `json` all belong to it.
[[nodiscard]] bool is_group_value(std::string_view path, const std::string& json);

}  // namespace wg::merge
