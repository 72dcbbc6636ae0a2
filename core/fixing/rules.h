#pragma once
// National values for actions and safety, as data. The neutral default is marked 'assumed'.

#include <string>

namespace wg::fixing {

struct ActionRules {
    double basic_wind_m_s = 26.0;  ///< when the site has none of its own
    double ground_snow_kn_m2 = 0.65;
    double air_density_kg_m3 = 1.25;             ///< EN 1991-1-4, 4.5 note 2
    double gamma_permanent_unfavourable = 1.35;  ///< EN 1990 A1.2(B)
    double gamma_permanent_favourable = 0.9;     ///< EN 1990 A1.2(A), uplift
    double gamma_variable = 1.5;
    double psi_0_wind = 0.6;
    double psi_0_snow = 0.5;
    double k_mod = 0.9;                   ///< EN 1995-1-1 table 3.1, short-term, service class 2
    double gamma_timber = 1.3;            ///< EN 1995-1-1 table 2.3, connections
    double timber_density_kg_m3 = 350.0;  ///< characteristic, C24 (EN 338)
    /// Net pressure on a plate that stands off its roof: share of the roof's c_pe that acts as a net force, two faces.
    double standing_off_net_factor = 1.0;
    std::string source;  ///< of these values, or "assumed"
};

}  // namespace wg::fixing
