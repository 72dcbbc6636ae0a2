/* Prints libnova_sun.json: apparent places of the sun by libnova (VSOP87, Meeus' nutation, aberration and sidereal time),
 * an implementation that shares nothing with the algorithm of the program. For core/sun.
 *
 *     cc -O1 libnova_sun.c -lnova -lm && ./a.out > libnova_sun.json
 *
 * Rows: unix time, latitude, longitude, zenith and azimuth (clockwise from north) of the sun at that place without parallax
 * and refraction, apparent right ascension and declination of date, distance in AU, the delta-T of libnova in s. Moments
 * and places from a fixed linear congruential generator. Made with the package libnova-dev 0.16-5 of Debian 12.
 */
#include <libnova/dynamical_time.h>
#include <libnova/earth.h>
#include <libnova/julian_day.h>
#include <libnova/nutation.h>
#include <libnova/precession.h>
#include <libnova/sidereal_time.h>
#include <libnova/solar.h>
#include <libnova/transform.h>
#include <libnova/utility.h>
#include <math.h>
#include <stdint.h>
#include <stdio.h>

static uint64_t state = 20270101u;
static double unit(void) {
    state = state * 6364136223846793005u + 1442695040888963407u;
    return (double)(state >> 11) / 9007199254740992.0;
}

/* ln_get_solar_equ_coords of libnova 0.15/0.16 is no reference: it divides the aberration by 360 too much and takes the
 * place for the equinox of 2000 with the obliquity of date. Its parts are sound: earth, precession, nutation. */
static void apparent_sun(double jd, struct ln_equ_posn *sun) {
    const double rad = 3.14159265358979323846 / 180.0;
    const double obliquity_2000 = 23.4392911 * rad; /* IAU 1976 */
    struct ln_helio_posn seen;
    struct ln_equ_posn of_2000;
    struct ln_nutation nutation;
    ln_get_solar_geom_coords(jd, &seen);
    const double l = (seen.L - 20.4898 / 3600.0 / seen.R) * rad; /* aberration */
    const double b = seen.B * rad;
    of_2000.ra = ln_range_degrees(atan2(sin(l) * cos(obliquity_2000) - tan(b) * sin(obliquity_2000), cos(l)) / rad);
    of_2000.dec = asin(sin(b) * cos(obliquity_2000) + cos(b) * sin(obliquity_2000) * sin(l)) / rad;
    ln_get_equ_prec(&of_2000, jd, sun);
    /* Nutation to first order (Meeus, Astronomical Algorithms, eq. 23.1): what is left is under 1e-6 deg. */
    ln_get_nutation(jd, &nutation);
    const double ra = sun->ra * rad, dec = sun->dec * rad, ecliptic = nutation.ecliptic * rad;
    sun->ra += (cos(ecliptic) + sin(ecliptic) * sin(ra) * tan(dec)) * nutation.longitude -
               cos(ra) * tan(dec) * nutation.obliquity;
    sun->dec += sin(ecliptic) * cos(ra) * nutation.longitude + sin(ra) * nutation.obliquity;
}

int main(void) {
    const double places[][2] = {{36.1, -79.95}, {47.4, 9.2},    {-35.0, 149.0}, {69.6, 18.9},  {0.0, 0.0},
                                {-77.8, 166.7}, {55.3, -179.5}, {90.0, 0.0},    {-90.0, 0.0}, {23.44, 100.0}};
    const int count = sizeof places / sizeof places[0];
    printf("{\n \"made_with\": {\"libnova\": \"%s\"},\n", ln_get_version());
    printf(" \"columns\": [\"unix_s\", \"latitude_deg\", \"longitude_deg\", \"zenith_deg\", \"azimuth_deg\", ");
    printf("\"right_ascension_deg\", \"declination_deg\", \"distance_au\", \"delta_t_s\"],\n \"rows\": [\n");
    for (int i = 0; i < 30 * count; ++i) {
        const double unix_s = floor(-631152000.0 + unit() * 3187296000.0); /* 1950 to 2050 */
        const double jd = 2440587.5 + unix_s / 86400.0;
        struct ln_lnlat_posn observer = {places[i % count][1], places[i % count][0]};
        struct ln_equ_posn sun;
        struct ln_hrz_posn seen;
        struct ln_helio_posn earth;
        /* Its places want dynamical time; the same delta-T is given to the program under test. */
        const double jde = jd + ln_get_dynamical_time_diff(jd) / 86400.0;
        apparent_sun(jde, &sun);
        ln_get_hrz_from_equ_sidereal_time(&sun, &observer, ln_get_apparent_sidereal_time(jd), &seen);
        ln_get_solar_geom_coords(jde, &earth);
        /* libnova counts azimuth from south, westward */
        printf("  [%.0f, %.2f, %.2f, %.6f, %.6f, %.6f, %.6f, %.7f, %.3f]%s\n", unix_s, observer.lat, observer.lng,
               90.0 - seen.alt, ln_range_degrees(seen.az + 180.0), ln_range_degrees(sun.ra), sun.dec, earth.R,
               ln_get_dynamical_time_diff(jd), i + 1 < 30 * count ? "," : "");
    }
    printf(" ]\n}\n");
    return 0;
}
