#pragma once
// Where the values of a rule set come from: which ones have a source of their own, and which are owned to be assumed.

#include <string>
#include <string_view>
#include <vector>

namespace wg::plan {

/// Values of `actions` that may have a source of their own under `actions.sources`; without one they have the group's:
/// `net_pressure_source` for the net pressures, `source` for the rest.
[[nodiscard]] const std::vector<std::string>& values_with_source();
/// Field of `actions` that holds the source of a value which has none of its own.
[[nodiscard]] const char* group_source_of(std::string_view value);

/// Whether a source says nothing, or says itself that the value is nobody's: empty, or with the word 'assumed' or
/// 'invented' in it, whatever the capitals.
[[nodiscard]] bool says_assumed(std::string_view source);

}  // namespace wg::plan
