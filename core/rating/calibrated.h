#pragma once
// A calibrated set as an equipment file (docs/equipment-format.md) that says how it came about.

#include <string>

#include "core/rating/fit.h"

namespace wg::rating {

/// Plate, block and cylinder under ids and names of their own ("rill-18-calibrated", "Rill 18 (calibrated)"), so that
/// they can stand beside the items that they were made from. The file's note lists the figures that were changed, the
/// values they were calibrated to, and `source`. A problem when the catalogue's reader would refuse the figures.
[[nodiscard]] Result<std::string> calibrated_equipment(const Fit& fit, const std::string& source);

/// What the note says.
[[nodiscard]] std::string calibration_note(const Fit& fit, const std::string& source);

}  // namespace wg::rating
