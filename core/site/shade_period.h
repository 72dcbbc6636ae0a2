#pragma once
// Parts of a shade result for people: the worst hours of a cause, a cause within some months, a map's cell at a point.

#include <array>
#include <cstddef>
#include <optional>

#include "core/site/shade.h"

namespace wg::site {

using Months = std::array<bool, 12>;  ///< January first
inline constexpr Months whole_year = {true, true, true, true, true, true, true, true, true, true, true, true};

/// Sets worst month, worst hour and the stretch of hours of the worst month from the table of losses.
void find_worst(ShadeCause& cause);

/// The cause as if the year had these months alone.
[[nodiscard]] ShadeCause cause_within(ShadeCause cause, const Months& months);
/// All causes so, worst first; those that take nothing in these months are left out.
[[nodiscard]] Shade shade_within(const Shade& shade, const Months& months);

/// Shade on a surface as if a plate lay over the whole of its bounding rectangle: for what to say of a bare surface.
[[nodiscard]] Shade shade_on_surface(const Site& site, const Surface& surface, const sky::PreparedYear& year);

[[nodiscard]] ShadeMapOptions map_options_for(const Months& months);

/// What the map knows of the cell under a point of the plane.
struct CellLight {
    double lost_share = 0.0;   ///< of the period's beam on the plane
    double beam_kwh_m2 = 0.0;  ///< that reaches the cell in the period
};
/// Nothing beyond the map and outside the outline.
[[nodiscard]] std::optional<CellLight> cell_at(const ShadeMap& map, Point2 at) noexcept;

}  // namespace wg::site
