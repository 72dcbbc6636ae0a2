#include "core/sun/geocentric.h"

#include <cmath>

#include "core/quantity/angle.h"
#include "core/quantity/constants.h"
#include "core/sun/spa_tables.h"

namespace wg::sun {
namespace {

constexpr std::int64_t j2000_unix_s = 946728000;  // 2000-01-01T12:00Z
constexpr double flattening_term = 0.99664719;    // ratio of the earth's axes as printed in the report
constexpr double earth_radius_m = 6378140.0;      // as printed in the report

template <std::size_t N>
double series(const std::array<detail::PeriodicTerm, N>& terms, double tau) noexcept {
    double sum = 0.0;
    for (const detail::PeriodicTerm& t : terms)
        sum += t.a * std::cos(t.b + t.c * tau);
    return sum;
}

double longitude_rad(double tau) noexcept {
    using namespace detail;
    const double sum =
        series(l0_terms, tau) +
        tau * (series(l1_terms, tau) +
               tau * (series(l2_terms, tau) +
                      tau * (series(l3_terms, tau) + tau * (series(l4_terms, tau) + tau * series(l5_terms, tau)))));
    return sum * 1e-8;
}

double latitude_rad(double tau) noexcept {
    return (series(detail::b0_terms, tau) + tau * series(detail::b1_terms, tau)) * 1e-8;
}

double radius_au(double tau) noexcept {
    using namespace detail;
    return (series(r0_terms, tau) +
            tau * (series(r1_terms, tau) +
                   tau * (series(r2_terms, tau) + tau * (series(r3_terms, tau) + tau * series(r4_terms, tau))))) *
           1e-8;
}

void add_nutation(Geocentric& g) noexcept {
    const double t = g.ephemeris_century;
    g.nutation_x_deg = {
        297.85036 + t * (445267.111480 + t * (-0.0019142 + t / 189474.0)),
        357.52772 + t * (35999.050340 + t * (-0.0001603 - t / 300000.0)),
        134.96298 + t * (477198.867398 + t * (0.0086972 + t / 56250.0)),
        93.27191 + t * (483202.017538 + t * (-0.0036825 + t / 327270.0)),
        125.04452 + t * (-1934.136261 + t * (0.0020708 + t / 450000.0)),
    };
    double psi = 0.0;
    double eps = 0.0;
    for (const detail::NutationTerm& term : detail::nutation_terms) {
        double argument_deg = 0.0;
        for (std::size_t k = 0; k < 5; ++k)
            argument_deg += term.y[k] * g.nutation_x_deg[k];
        const double argument = radians(argument_deg);
        psi += (term.a + term.b * t) * std::sin(argument);
        eps += (term.c + term.d * t) * std::cos(argument);
    }
    g.nutation_longitude_deg = psi / 36000000.0;
    g.nutation_obliquity_deg = eps / 36000000.0;
}

double mean_obliquity_arcsec(double millennium) noexcept {
    const double u = millennium / 10.0;
    constexpr std::array<double, 11> c = {84381.448, -4680.93, -1.55, 1999.25, -51.38, -249.67,
                                          -39.05,    7.12,     27.87, 5.79,    2.45};
    double sum = 0.0;
    for (std::size_t i = c.size(); i-- > 0;)
        sum = sum * u + c[i];
    return sum;
}

double mean_longitude_deg(double m) noexcept {
    return 280.4664567 +
           m * (360007.6982779 + m * (0.03032028 + m * (1.0 / 49931.0 + m * (-1.0 / 15300.0 - m / 2000000.0))));
}

}  // namespace

double days_since_j2000(Instant when_utc, double fraction_s) noexcept {
    return (static_cast<double>(when_utc.unix_s - j2000_unix_s) + fraction_s) / 86400.0;
}

Geocentric geocentric(double days, double delta_t_s) noexcept {
    Geocentric g;
    g.julian_day = 2451545.0 + days;
    const double ephemeris_days = days + delta_t_s / 86400.0;
    g.ephemeris_day = 2451545.0 + ephemeris_days;
    g.ephemeris_century = ephemeris_days / 36525.0;
    g.ephemeris_millennium = g.ephemeris_century / 10.0;

    const double tau = g.ephemeris_millennium;
    g.heliocentric_longitude_deg = wrap_360(degrees(longitude_rad(tau)));
    g.heliocentric_latitude_deg = degrees(latitude_rad(tau));
    g.distance_au = radius_au(tau);
    add_nutation(g);
    g.true_obliquity_deg = mean_obliquity_arcsec(tau) / 3600.0 + g.nutation_obliquity_deg;
    g.aberration_deg = -20.4898 / (3600.0 * g.distance_au);
    g.apparent_longitude_deg =
        wrap_360(g.heliocentric_longitude_deg + 180.0 + g.nutation_longitude_deg + g.aberration_deg);

    const double century = days / 36525.0;
    g.mean_sidereal_deg = wrap_360(280.46061837 + wrap_360(360.98564736629 * days) +
                                   century * century * (0.000387933 - century / 38710000.0));
    const double obliquity = radians(g.true_obliquity_deg);
    const double nutation_in_ra_deg = g.nutation_longitude_deg * std::cos(obliquity);
    g.apparent_sidereal_deg = wrap_360(g.mean_sidereal_deg + nutation_in_ra_deg);

    const double lambda = radians(g.apparent_longitude_deg);
    const double beta = -radians(g.heliocentric_latitude_deg);
    g.right_ascension_deg = wrap_360(degrees(
        std::atan2(std::sin(lambda) * std::cos(obliquity) - std::tan(beta) * std::sin(obliquity), std::cos(lambda))));
    g.declination_deg = degrees(
        std::asin(std::sin(beta) * std::cos(obliquity) + std::cos(beta) * std::sin(obliquity) * std::sin(lambda)));
    g.equation_of_time_min =
        4.0 * wrap_180(mean_longitude_deg(tau) - 0.0057183 - g.right_ascension_deg + nutation_in_ra_deg);
    return g;
}

Topocentric topocentric(const Geocentric& sun, const Observer& observer) noexcept {
    const double latitude = radians(observer.latitude_deg);
    const double u = std::atan(flattening_term * std::tan(latitude));
    const double x = std::cos(u) + observer.altitude_m / earth_radius_m * std::cos(latitude);
    const double y = flattening_term * std::sin(u) + observer.altitude_m / earth_radius_m * std::sin(latitude);

    Topocentric t;
    t.hour_angle_deg = wrap_360(sun.apparent_sidereal_deg + observer.longitude_deg - sun.right_ascension_deg);
    t.parallax_deg = 8.794 / (3600.0 * sun.distance_au);

    const double sin_xi = std::sin(radians(t.parallax_deg));
    const double hour_angle = radians(t.hour_angle_deg);
    const double declination = radians(sun.declination_deg);
    const double from_axis = std::cos(declination) - x * sin_xi * std::cos(hour_angle);
    const double delta_ra = std::atan2(-x * sin_xi * std::sin(hour_angle), from_axis);
    const double declination_t = std::atan2((std::sin(declination) - y * sin_xi) * std::cos(delta_ra), from_axis);
    t.parallax_right_ascension_deg = degrees(delta_ra);
    t.right_ascension_deg = sun.right_ascension_deg + t.parallax_right_ascension_deg;
    t.declination_deg = degrees(declination_t);
    t.topocentric_hour_angle_deg = t.hour_angle_deg - t.parallax_right_ascension_deg;

    const double h = radians(t.topocentric_hour_angle_deg);
    const double sin_elevation =
        std::sin(latitude) * std::sin(declination_t) + std::cos(latitude) * std::cos(declination_t) * std::cos(h);
    t.elevation_deg = degrees(std::asin(std::fmin(1.0, std::fmax(-1.0, sin_elevation))));
    t.refraction_deg = refraction_deg(t.elevation_deg, observer.pressure_pa, observer.temperature_c);
    // Written without tan(declination), so that the poles and the zenith need no special case.
    t.azimuth_deg = wrap_360(180.0 + degrees(std::atan2(std::sin(h) * std::cos(declination_t),
                                                        std::cos(h) * std::sin(latitude) * std::cos(declination_t) -
                                                            std::sin(declination_t) * std::cos(latitude))));
    return t;
}

double refraction_deg(double elevation_deg, double pressure_pa, double temperature_c) noexcept {
    if (elevation_deg < upper_limb_elevation_deg) return 0.0;
    const double air = (pressure_pa / 101000.0) * (283.0 / (273.0 + temperature_c));
    return air * 1.02 / (60.0 * std::tan(radians(elevation_deg + 10.3 / (elevation_deg + 5.11))));
}

}  // namespace wg::sun
