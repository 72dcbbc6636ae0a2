#pragma once
// Drinking-water pipes: sizes by the simplified method of EN 806-3, losses, the way of hot water to a tap, discharge.

#include "core/job/house.h"

namespace wg::services {

/// Loading units of a draw-off, EN 806-3 table 2: 1 is 0.1 l/s.
[[nodiscard]] double loading_units(Fixture kind) noexcept;
/// Whether hot water runs to it (washing machine, dishwasher, cistern and garden tap take cold).
[[nodiscard]] bool takes_hot(Fixture kind) noexcept;

/// Flow to size with for so many loading units of which the largest draw-off has `largest`, l/s: EN 806-3 figure B.1,
/// read as a straight line on its logarithmic axes from the largest draw-off alone to 1.7 l/s at 300 units, from there
/// on 0.1 sqrt(units). 0 for none.
[[nodiscard]] double design_flow_l_s(double units, double largest_units) noexcept;

struct CopperPipe {
    double outside_mm = 0.0;  ///< 0: beyond the table
    double bore_mm = 0.0;
};
/// Least copper tube of EN 806-3's table for copper (from memory): by all units on it, the largest single draw-off and,
/// for 12 and 15 mm, its length.
[[nodiscard]] CopperPipe copper_for(double units, double largest_units, double length_m) noexcept;

/// Dynamic viscosity of water, Pa s, 0..100 deg C: Vogel form 2.414e-5 10^(247.8/(T - 140 K)), within 2.5 %.
[[nodiscard]] double water_viscosity_pa_s(double temperature_c) noexcept;
/// Speed in a round bore, m/s.
[[nodiscard]] double water_speed_m_s(double flow_l_s, double bore_mm) noexcept;
/// Friction of water in drawn copper tube, bar: Darcy with Churchill 1977, roughness 0.0015 mm. 0 without flow, bore
/// or length.
[[nodiscard]] double friction_loss_bar(double flow_l_s, double bore_mm, double length_m, double water_c) noexcept;
/// Pressure that `height_m` of water takes away going up, bar.
[[nodiscard]] double head_bar(double height_m, double water_c) noexcept;

/// Water that stands in a tube, l.
[[nodiscard]] double tube_litres(double length_m, double bore_mm) noexcept;
/// Water that runs until it is hot at the end, l: the front of plug flow, held back by the heat that copper of
/// `wall_mm` takes up. Nothing lost outwards.
[[nodiscard]] double litres_until_hot(double length_m, double bore_mm, double wall_mm) noexcept;

/// Outlet of a safety valve by the cylinder's volume, DN 15, 20 or 25 (table of DIN 1988-200, from memory).
[[nodiscard]] double valve_outlet_dn(double volume_l) noexcept;
/// Copper of the discharge, outside diameter, mm: from valve to tundish, and from there on for that length and number
/// of bends; 0: longer than the table (Approved Document G3, table 3.1).
struct Discharge {
    double to_tundish_mm = 0.0;
    double from_tundish_mm = 0.0;
};
[[nodiscard]] Discharge discharge_pipe(double outlet_dn, double length_m, int bends) noexcept;

}  // namespace wg::services
