#include "core/commissioning/nitrogen.h"

#include <cmath>

#include "core/quantity/constants.h"

namespace wg::commissioning {

double nitrogen_compressibility(double pressure_pa, double temperature_c) noexcept {
    constexpr double gas_constant = 8.314462618;  // J/(mol K), SI 2019
    const double t = kelvin(temperature_c), x = (t - 293.15) / 100.0;
    const double b_m3_mol = (((3.17149719 * x - 8.40305373) * x + 20.21043538) * x - 5.89477723) * 1e-6;
    const double c_m6_mol2 = ((168.81729245 * x - 257.44431016) * x + 1426.26007751) * 1e-12;
    double z = 1.0;
    for (int i = 0; i < 12; ++i) {  // contracts by about |B rho| < 0.03 a turn
        const double rho = pressure_pa / (z * gas_constant * t);
        z = 1.0 + (b_m3_mol + c_m6_mol2 * rho) * rho;
    }
    return z;
}

double nitrogen_viscosity_pa_s(double temperature_c) noexcept {
    constexpr double at_293_k = 17.57e-6, sutherland_k = 111.0;
    const double t = kelvin(temperature_c), t0 = 293.15;
    return at_293_k * std::pow(t / t0, 1.5) * (t0 + sutherland_k) / (t + sutherland_k);
}

}  // namespace wg::commissioning
