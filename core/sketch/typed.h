#pragma once
// Lengths and angles as a surveyor types them.

#include <optional>
#include <string_view>

#include "core/quantity/geometry.h"
#include "core/quantity/result.h"

namespace wg::sketch {

/// Metres from "3.25", "3,25 m", "325 cm", "3250 mm", "10 ft 8 in", "10' 8\"". A number alone is metres. 0.001 to 1000
/// m.
[[nodiscard]] Result<double> length_m(std::string_view typed);
/// Degrees from "35", "35.5", "35,5 deg", "35°", or as rise over run "7:12" and "70 %". 0 to 360.
[[nodiscard]] Result<double> angle_deg(std::string_view typed);

/// One line while drawing: a length, and after a space, "@" or "<" nothing but an angle turned from the last edge
/// (counter-clockwise), e.g. "4.20" or "4.20 @ 90".
struct Step {
    double length_m = 0.0;
    std::optional<double> turn_deg;
};
[[nodiscard]] Result<Step> step(std::string_view typed);

/// End of a step from a corner: in the direction `heading_deg` (counter-clockwise from the x axis).
[[nodiscard]] Point2 end_of(const Point2& from, double heading_deg, double length_m) noexcept;

}  // namespace wg::sketch
