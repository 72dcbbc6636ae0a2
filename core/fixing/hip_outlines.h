#pragma once
// A hip roof's plane cut along the slanting ends of its wind zones. Inside core/fixing.

#include "core/fixing/zone_outlines.h"

namespace wg::fixing {

/// Adds areas, borders and marks; `out` has table, height and widths already.
void add_hip_areas(WindZones& out, const Surface& surface, const Body& body, double area_m2);

}  // namespace wg::fixing
