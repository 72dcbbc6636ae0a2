// Wind pressure, snow shape and screws: the formulas that stand alone.
#include <algorithm>
#include <cmath>

#include "core/fixing/fixing.h"
#include "core/fixing/screws.h"
#include "core/quantity/constants.h"

namespace wg::fixing {
namespace {

struct Roughness {
    double z0_m, least_height_m;
};

Roughness roughness_of(Terrain terrain) noexcept {  // EN 1991-1-4 table 4.1
    switch (terrain) {
        case Terrain::sea_0: return {0.003, 1.0};
        case Terrain::open_i: return {0.01, 1.0};
        case Terrain::farmland_ii: return {0.05, 2.0};
        case Terrain::suburb_iii: return {0.3, 5.0};
        case Terrain::town_iv: return {1.0, 10.0};
    }
    return {0.05, 2.0};
}

}  // namespace

PeakPressure peak_pressure(double basic_wind_m_s, Terrain terrain, double height_m, double air_density_kg_m3,
                           double orography) {
    const Roughness ground = roughness_of(terrain);
    PeakPressure p;
    p.z_used_m = std::max(height_m, ground.least_height_m);
    const double kr = 0.19 * std::pow(ground.z0_m / 0.05, 0.07);
    const double log_z = std::log(p.z_used_m / ground.z0_m);
    p.cr = kr * log_z;
    p.co = orography;
    p.intensity = 1.0 / (orography * log_z);
    p.qb_pa = 0.5 * air_density_kg_m3 * basic_wind_m_s * basic_wind_m_s;
    p.ce = (1.0 + 7.0 * p.intensity) * p.cr * p.cr * orography * orography;
    p.qp_pa = p.ce * p.qb_pa;
    return p;
}

double pressure_by_area(double cpe_1, double cpe_10, double area_m2) {
    if (area_m2 <= 1.0) return cpe_1;
    if (area_m2 >= 10.0) return cpe_10;
    return cpe_1 - (cpe_1 - cpe_10) * std::log10(area_m2);
}

double snow_shape_mu1(double pitch_deg) {
    if (pitch_deg <= 30.0) return 0.8;
    if (pitch_deg >= 60.0) return 0.0;
    return 0.8 * (60.0 - pitch_deg) / 30.0;
}

double screw_withdrawal_n(double diameter_mm, double grip_mm, double density_kg_m3) {
    if (!(diameter_mm > 0.0) || !(grip_mm > 0.0) || !(density_kg_m3 > 0.0)) return 0.0;
    const double f_ax = 0.52 * std::pow(diameter_mm, -0.5) * std::pow(grip_mm, -0.1) * std::pow(density_kg_m3, 0.8);
    return f_ax * diameter_mm * grip_mm * std::min(diameter_mm / 8.0, 1.0);
}

double screw_embedment_n_mm2(double diameter_mm, double density_kg_m3) {
    return 0.082 * density_kg_m3 * std::pow(1.1 * root_share * diameter_mm, -0.3);
}

double screw_yield_nmm(double diameter_mm) {
    return 0.3 * screw_steel_n_mm2 * std::pow(1.1 * root_share * diameter_mm, 2.6);
}

double screw_shear_n(double diameter_mm, double grip_mm, double density_kg_m3) {
    if (!(diameter_mm > 0.0) || !(grip_mm > 0.0) || !(density_kg_m3 > 0.0)) return 0.0;
    const double effective_mm = 1.1 * root_share * diameter_mm;
    const double embedment = screw_embedment_n_mm2(diameter_mm, density_kg_m3);
    const double yield_nmm = screw_yield_nmm(diameter_mm);
    return std::min(0.4 * embedment * grip_mm * effective_mm,
                    1.15 * std::sqrt(2.0 * yield_nmm * embedment * effective_mm));
}

double screws_together(int screws) {
    return screws <= 0 ? 0.0 : std::pow(static_cast<double>(screws), 0.9);
}

}  // namespace wg::fixing
