#pragma once
// Formulas for water and room, each for itself.

#include <string>

namespace wg::services {

/// Density of water at 1 atm, kg/m3, 0..100 deg C (Kell 1975, J. Chem. Eng. Data 20(1), equation 16); within 0.01 kg/m3
/// of IAPWS-95 up to 70 deg C.
[[nodiscard]] double water_density_kg_m3(double temperature_c) noexcept;

/// What `volume_l` of water filled cold grows by when warmed, l.
[[nodiscard]] double expansion_l(double volume_l, double cold_c, double warm_c) noexcept;
/// Vessel volume V_e (p1 + 1)/(p1 - p0), bar gauge, pre-charge p0 equal to the supply's pressure; 0 when p1 <= p0.
[[nodiscard]] double vessel_l(double expansion_l, double supply_bar, double end_bar) noexcept;
/// Next size to buy: 8, 12, 18, 24, 35, 50, 80, 100 l, then whole hundreds.
[[nodiscard]] double vessel_size_l(double least_l) noexcept;
/// Safety valve for a cylinder: the greatest of 6, 4 and 3 bar within its limit (6 is the usual
/// setting on closed cylinders); 0 when none fits.
[[nodiscard]] double safety_valve_bar(double cylinder_max_bar) noexcept;

/// Charge limits of IEC 60335-2-40 annex GG (also EN 378-1), kg, for a refrigerant of that lower flammability limit.
struct RoomCharge {
    double free_kg = 0.0;        ///< m1: below it no room rule
    double room_kg = 0.0;        ///< 2.5 LFL^1.25 h0 A^0.5, at least m1, at most m2
    double outside_kg = 0.0;     ///< m3: above it not indoors at all
    double least_area_m2 = 0.0;  ///< that the charge would need at this release height; 0 below m1
};
/// `mildly` is class A2L, whose m1 and m3 are 6 and 260 times LFL instead of 4 and 130 (from memory), m2 52 instead
/// of 26.
[[nodiscard]] RoomCharge room_charge(double charge_kg, double lfl_kg_m3, bool mildly, double release_height_m,
                                     double floor_area_m2) noexcept;

/// Permanent opening to a neighbouring room that makes up for a room too small, m2: (m - m_max)/(104 LFL)
/// sqrt(A/(g m_max)) M/(M - 29) of IEC 60335-2-40:2018, GG.2 (seen in a maker's manual); 0 when none is needed or
/// the refrigerant is no heavier than air.
[[nodiscard]] double opening_m2(double charge_kg, double room_kg, double lfl_kg_m3, double molar_mass_g_mol,
                                double floor_area_m2) noexcept;

}  // namespace wg::services
