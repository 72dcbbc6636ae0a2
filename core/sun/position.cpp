#include "core/sun/position.h"

#include "core/sun/geocentric.h"

namespace wg::sun {

Position position(Instant when_utc, double fraction_s, const Observer& observer, double delta_t_s) {
    const Geocentric sun = geocentric(days_since_j2000(when_utc, fraction_s), delta_t_s);
    const Topocentric seen = topocentric(sun, observer);
    Position p;
    p.zenith_deg = 90.0 - seen.elevation_deg;
    p.apparent_zenith_deg = 90.0 - seen.elevation_deg - seen.refraction_deg;
    p.azimuth_deg = seen.azimuth_deg;
    p.declination_deg = sun.declination_deg;
    p.equation_of_time_min = sun.equation_of_time_min;
    p.distance_au = sun.distance_au;
    return p;
}

double delta_t_s(double year) noexcept {
    // Horner form of the polynomials of Espenak and Meeus, "Five Millennium Canon of Solar Eclipses",
    // NASA/TP-2006-214141.
    if (year < 1900.0 || year >= 2150.0) {
        const double u = (year - 1820.0) / 100.0;  // their long-term parabola; off by some seconds in the 19th century
        return -20.0 + 32.0 * u * u;
    }
    if (year < 1920.0) {
        const double t = year - 1900.0;
        return -2.79 + t * (1.494119 + t * (-0.0598939 + t * (0.0061966 - t * 0.000197)));
    }
    if (year < 1941.0) {
        const double t = year - 1920.0;
        return 21.20 + t * (0.84493 + t * (-0.076100 + t * 0.0020936));
    }
    if (year < 1961.0) {
        const double t = year - 1950.0;
        return 29.07 + t * (0.407 + t * (-1.0 / 233.0 + t / 2547.0));
    }
    if (year < 1986.0) {
        const double t = year - 1975.0;
        return 45.45 + t * (1.067 + t * (-1.0 / 260.0 - t / 718.0));
    }
    if (year < 2005.0) {
        const double t = year - 2000.0;
        return 63.86 + t * (0.3345 + t * (-0.060374 + t * (0.0017275 + t * (0.000651814 + t * 0.00002373599))));
    }
    if (year < 2050.0) {
        const double t = year - 2000.0;
        return 62.92 + t * (0.32217 + t * 0.005589);
    }
    const double u = (year - 1820.0) / 100.0;
    return -20.0 + 32.0 * u * u - 0.5628 * (2150.0 - year);
}

}  // namespace wg::sun
