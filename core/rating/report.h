#pragma once
// Rating table and fit in words and as JSON, for the command line and for files.

#include <string>
#include <vector>

#include "core/rating/fit.h"
#include "core/rating/table.h"

namespace wg::rating {

[[nodiscard]] const char* letters_of(TappingCycle cycle) noexcept;  ///< "XL"

/// What the test takes for granted, a sentence each: chamber, thermostat, heater, suction line, stages.
[[nodiscard]] std::vector<std::string> assumptions_of(const Item& item, const Chamber& chamber, const Test& test);

/// Lines of text with the figures of every cell and the assumptions.
[[nodiscard]] std::string text_of(const Item& item, const Chamber& chamber, const Test& test, const Table& table);
/// Residuals before and after, calibrated figures, warnings.
[[nodiscard]] std::string text_of(const Fit& fit);

/// {"schema":1,"item":...,"conditions":...,"tests":[...],"fit":...}; `fit` may be null. Units stand in the names; what
/// is not known is null.
[[nodiscard]] std::string to_json(const Item& item, const Chamber& chamber, const Test& test, const Table& table,
                                  const Fit* fit);

}  // namespace wg::rating
