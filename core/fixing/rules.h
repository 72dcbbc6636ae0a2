#pragma once
// National values for actions and safety, as data. The neutral default is marked 'assumed'.

#include <string>

namespace wg::fixing {

/// How the ground snow load follows from the place: a fixed value, or EN 1991-1-3 annex C by climate region.
enum class SnowRule {
    fixed,
    alpine,
    central_east,
    central_west,
    iberian,
    mediterranean,
    uk_ireland,
};

/// Which force the wind puts on a plate that stands off the surface behind it: two faces, not one.
enum class NetPressureRule {
    surface_share,  ///< a share of the surface's own c_pe as a net force
    two_faces,      ///< the surface's c_pe outside and, sealed at no edge, a share of it of the other sign beneath
    coefficients,   ///< net coefficients of a national guide, for the middle and the edge zones
};

struct ActionRules {
    double basic_wind_m_s = 26.0;  ///< when the site has none of its own
    /// Rise of the basic wind velocity with the site's altitude, for each metre: of maps that are drawn for sea level.
    double wind_altitude_per_m = 0.0;
    double ground_snow_kn_m2 = 0.65;  ///< by SnowRule::fixed
    SnowRule snow_rule = SnowRule::fixed;
    double snow_zone = 2.0;                      ///< Z of annex C
    double snow_exposure = 1.0;                  ///< C_e, EN 1991-1-3 table 5.1
    double snow_thermal = 1.0;                   ///< C_t
    double snow_density_kn_m3 = 2.0;             ///< of drifts, EN 1991-1-3 6.2
    bool snow_slides = true;                     ///< snow above a collector on a roof slides against it (6.4)
    double air_density_kg_m3 = 1.25;             ///< EN 1991-1-4, 4.5 note 2
    double gamma_permanent_unfavourable = 1.35;  ///< EN 1990 A1.2(B)
    double gamma_permanent_favourable = 0.9;     ///< EN 1990 A1.2(A), uplift
    double gamma_variable = 1.5;
    double psi_0_wind = 0.6;
    double psi_0_snow = 0.5;
    double k_mod = 0.9;                    ///< EN 1995-1-1 table 3.1, short-term, service class 2
    double gamma_timber = 1.3;             ///< EN 1995-1-1 table 2.3, connections
    double gamma_bolt = 1.25;              ///< EN 1993-1-8 table 2.1
    double timber_density_kg_m3 = 350.0;   ///< characteristic, C24 (EN 338)
    double deflection_span_share = 200.0;  ///< profiles may bend by their span over this, characteristic loads
    NetPressureRule net_pressure = NetPressureRule::surface_share;
    /// surface_share: share of the surface's c_pe that acts as a net force, two faces.
    double standing_off_net_factor = 1.0;
    /// two_faces: share of c_pe that acts on the hidden face at the same time.
    double hidden_face_share = 0.3;
    // coefficients: net, uplift negative.
    double net_uplift_middle = -1.3;
    double net_uplift_edge = -1.8;
    double net_pressure_all = 1.0;
    std::string net_pressure_source;  ///< of the rule and its figures
    std::string source;               ///< of these values, or "assumed"
};

}  // namespace wg::fixing
