#pragma once
// Many warm-ups of one set: its pump is made once.

#include "core/heatpump/operating_point.h"
#include "core/season/season.h"

namespace wg::season {

/// As `warm_up` of season.h, with a pump that was made of the equipment's block and refrigerant before.
[[nodiscard]] Result<WarmUp> warm_up(const Input& equipment, const heatpump::HeatPump& pump,
                                     const WarmUpConditions& conditions, const Options& options);

}  // namespace wg::season
