#pragma once
// Shade over a surface as the plate of one seat meets it. Inside core/siting.

#include <vector>

#include "core/job/job.h"
#include "core/siting/seats.h"
#include "core/sky/prepared.h"

namespace wg::siting {

inline constexpr double view_step_m = 1.0;

/// Cells from the lower left of the surface's bounding box, row-major; under 0 outside the surface.
struct SeatLight {
    int columns = 0, rows = 0;
    std::vector<float> beam_share;  ///< of the year's beam on a plate with this seat's tilt and bearing
    std::vector<float> sky_view;    ///< share of the plate's sky that is open, between points `view_step_m` apart
};
[[nodiscard]] SeatLight light_of(const Site& site, const Surface& surface, const Seat& seat,
                                 const sky::PreparedYear& year, double cell_m);

}  // namespace wg::siting
