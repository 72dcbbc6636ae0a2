#include "core/pipework/viscosity.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace wg::pipework {
namespace {

/// ln(uPa s) of saturated liquid over deg C; uPa s of vapour over the saturation temperature and the superheat.
struct ViscosityFit {
    std::array<double, 5> liquid;
    std::array<double, 4> vapour;
    double vapour_per_superheat_k;
};
constexpr ViscosityFit r134a_fit{
    {5.58492, -0.012814, 2.05899e-05, -2.75836e-07, -1.09997e-09}, {10.727, 0.037314, 5.4193e-05, 1.071e-06}, 0.041569};
constexpr ViscosityFit r290_fit{
    {4.8324, -0.0103096, 7.33706e-06, -1.29742e-07, -2.22036e-09}, {7.451, 0.02948, 9.7063e-05, 1.0243e-06}, 0.027723};
constexpr ViscosityFit r1234yf_fit{
    {5.28757, -0.012572, 1.19533e-05, -1.6224e-07, -1.16694e-09}, {11.371, 0.044492, 6.2119e-05, 8.7089e-07}, 0.041255};

// R513A: 44 % R134a and 56 % R1234yf by mass (ASHRAE 34), in moles.
constexpr double r134a_g_mol = 102.032;
constexpr double r1234yf_g_mol = 114.0416;
constexpr double r134a_share = (0.44 / r134a_g_mol) / (0.44 / r134a_g_mol + 0.56 / r1234yf_g_mol);

template <std::size_t N>
double polynomial(const std::array<double, N>& c, double t) noexcept {
    double sum = 0.0;
    for (std::size_t i = N; i-- > 0;)
        sum = sum * t + c[i];
    return sum;
}

double log_liquid(const ViscosityFit& fit, double t) noexcept {
    return polynomial(fit.liquid, t);
}
double vapour_of(const ViscosityFit& fit, double t, double superheat_k) noexcept {
    return polynomial(fit.vapour, t) + fit.vapour_per_superheat_k * superheat_k;
}

}  // namespace

double liquid_viscosity_pa_s(Refrigerant refrigerant, double temperature_c) noexcept {
    const double t = std::clamp(temperature_c, viscosity_min_c, liquid_viscosity_max_c);
    double log_upa_s = 0.0;
    switch (refrigerant) {
        case Refrigerant::r134a: log_upa_s = log_liquid(r134a_fit, t); break;
        case Refrigerant::r290: log_upa_s = log_liquid(r290_fit, t); break;
        case Refrigerant::r1234yf: log_upa_s = log_liquid(r1234yf_fit, t); break;
        case Refrigerant::r513a:
            log_upa_s = r134a_share * log_liquid(r134a_fit, t) + (1.0 - r134a_share) * log_liquid(r1234yf_fit, t);
            break;
    }
    return 1e-6 * std::exp(log_upa_s);
}

double vapour_viscosity_pa_s(Refrigerant refrigerant, double saturation_c, double superheat_k) noexcept {
    const double t = std::clamp(saturation_c, viscosity_min_c, vapour_viscosity_max_c);
    const double k = std::clamp(superheat_k, 0.0, vapour_viscosity_max_superheat_k);
    switch (refrigerant) {
        case Refrigerant::r134a: return 1e-6 * vapour_of(r134a_fit, t, k);
        case Refrigerant::r290: return 1e-6 * vapour_of(r290_fit, t, k);
        case Refrigerant::r1234yf: return 1e-6 * vapour_of(r1234yf_fit, t, k);
        case Refrigerant::r513a: break;
    }
    const double a = r134a_share * std::sqrt(r134a_g_mol);
    const double b = (1.0 - r134a_share) * std::sqrt(r1234yf_g_mol);
    return 1e-6 * (a * vapour_of(r134a_fit, t, k) + b * vapour_of(r1234yf_fit, t, k)) / (a + b);
}

}  // namespace wg::pipework
