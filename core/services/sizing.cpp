#include "core/services/sizing.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace wg::services {

double water_density_kg_m3(double temperature_c) noexcept {
    const double t = temperature_c;
    return (999.83952 +
            t * (16.945176 + t * (-7.9870401e-3 + t * (-46.170461e-6 + t * (105.56302e-9 - t * 280.54253e-12))))) /
           (1.0 + 16.879850e-3 * t);
}

double expansion_l(double volume_l, double cold_c, double warm_c) noexcept {
    return volume_l * std::max(0.0, water_density_kg_m3(cold_c) / water_density_kg_m3(warm_c) - 1.0);
}

double vessel_l(double expansion_l, double supply_bar, double end_bar) noexcept {
    return end_bar > supply_bar ? expansion_l * (end_bar + 1.0) / (end_bar - supply_bar) : 0.0;
}

double vessel_size_l(double least_l) noexcept {
    constexpr std::array<double, 8> sizes_l{8.0, 12.0, 18.0, 24.0, 35.0, 50.0, 80.0, 100.0};
    for (const double size : sizes_l) {
        if (size >= least_l) return size;
    }
    return 100.0 * std::ceil(least_l / 100.0);
}

double safety_valve_bar(double cylinder_max_bar) noexcept {
    constexpr std::array<double, 3> settings_bar{6.0, 4.0, 3.0};
    for (const double setting : settings_bar) {
        if (setting <= cylinder_max_bar) return setting;
    }
    return 0.0;
}

RoomCharge room_charge(double charge_kg, double lfl_kg_m3, bool mildly, double release_height_m,
                       double floor_area_m2) noexcept {
    RoomCharge r;
    if (!(lfl_kg_m3 > 0.0)) return r;
    const double wide = mildly ? 2.0 : 1.0;
    r.free_kg = (mildly ? 6.0 : 4.0) * lfl_kg_m3;
    r.outside_kg = 130.0 * wide * lfl_kg_m3;
    const double per_root_area = 2.5 * std::pow(lfl_kg_m3, 1.25) * release_height_m;
    const double by_area = per_root_area * std::sqrt(std::max(0.0, floor_area_m2));
    r.room_kg = std::clamp(by_area, r.free_kg, 26.0 * wide * lfl_kg_m3);
    if (charge_kg > r.free_kg && per_root_area > 0.0) r.least_area_m2 = std::pow(charge_kg / per_root_area, 2.0);
    return r;
}

double opening_m2(double charge_kg, double room_kg, double lfl_kg_m3, double molar_mass_g_mol,
                  double floor_area_m2) noexcept {
    constexpr double air_g_mol = 29.0, gravity_m_s2 = 9.81;
    if (!(charge_kg > room_kg) || !(room_kg > 0.0) || !(lfl_kg_m3 > 0.0) || molar_mass_g_mol <= air_g_mol) return 0.0;
    return (charge_kg - room_kg) / (104.0 * lfl_kg_m3) *
           std::sqrt(std::max(0.0, floor_area_m2) / (gravity_m_s2 * room_kg)) * molar_mass_g_mol /
           (molar_mass_g_mol - air_g_mol);
}

}  // namespace wg::services
