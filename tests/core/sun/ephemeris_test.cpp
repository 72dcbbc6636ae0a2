// The fast positions against the full series, and the full series against pvlib.

#include "core/sun/ephemeris.h"

#include <gtest/gtest.h>

#include <cmath>
#include <fstream>
#include <nlohmann/json.hpp>
#include <random>
#include <vector>

#include "core/quantity/angle.h"
#include "core/quantity/constants.h"
#include "core/sun/geocentric.h"
#include "core/sun/year.h"

namespace wg::sun {
namespace ephemeris_test {

constexpr double promised_deg = 1e-4;  // what ephemeris.h promises
constexpr double distance_au = 1e-6;   // 2e-6 of the irradiance
constexpr double pvlib_deg = 1e-5;     // same algorithm in double precision; azimuth rounded to 1e-7 in the file

double zenith_of(const Direction& d) {
    return degrees(std::atan2(std::hypot(d.east, d.north), d.up));
}
double azimuth_of(const Direction& d) {
    return wrap_360(degrees(std::atan2(d.east, d.north)));
}

TEST(Ephemeris, FastPositionsKeepTheirPromiseAllOverTheEarthFrom1950To2050) {
    std::mt19937_64 random(20270101);
    std::uniform_real_distribution<double> unit(0.0, 1.0);
    double worst = 0.0;
    for (int span = 0; span < 40; ++span) {
        const auto start = static_cast<std::int64_t>(-631152000.0 + unit(random) * 3124137600.0);
        const std::int64_t length = 30 * 86400;
        const double delta_t = delta_t_s(1970.0 + static_cast<double>(start) / 31556952.0);
        const Ephemeris ephemeris(Instant{start}, Instant{start + length}, delta_t);
        Observer observer;
        observer.latitude_deg = -90.0 + 180.0 * unit(random);
        observer.longitude_deg = -180.0 + 360.0 * unit(random);
        observer.altitude_m = 3000.0 * unit(random);
        observer.pressure_pa = span % 4 == 0 ? 0.0 : 70000.0 + 35000.0 * unit(random);
        observer.temperature_c = -20.0 + 50.0 * unit(random);
        const Place place(observer);
        for (int i = 0; i < 100; ++i) {
            const double at = std::floor(static_cast<double>(length) * unit(random)) + static_cast<double>(start);
            const Position full = position(Instant{static_cast<std::int64_t>(at)}, 0.0, observer, delta_t);
            const Direction fast = ephemeris.direction(at, place);
            const double off =
                angular_separation_deg(full.apparent_zenith_deg, full.azimuth_deg, zenith_of(fast), azimuth_of(fast));
            worst = std::fmax(worst, off);
            ASSERT_NEAR(std::hypot(fast.east, fast.north, fast.up), 1.0, 1e-9);
            ASSERT_NEAR(fast.distance_au, full.distance_au, distance_au);
            ASSERT_NEAR(ephemeris.declination_deg(at), full.declination_deg, promised_deg);
        }
    }
    EXPECT_LT(worst, promised_deg);
    RecordProperty("worst_deg", std::to_string(worst));
    std::printf("worst separation %.2e deg\n", worst);
}

// Steps from a second to more than a day, across the polynomials' joints, at the poles, the equator and between, with
// and without air.
TEST(Ephemeris, EvenStepsKeepTheSamePromiseEverywhere) {
    std::mt19937_64 random(20270102);
    std::uniform_real_distribution<double> unit(0.0, 1.0);
    const double latitudes[] = {-90.0, -66.6, -35.0, 0.0, 23.44, 47.4, 69.0, 90.0};
    const double steps_s[] = {1.0, 60.0, 600.0, 3600.0, 3600.0 * 7.0, 86400.0 * 1.3, 86400.0 * 4.1};
    double worst_full = 0.0;
    double worst_single = 0.0;
    for (const double latitude : latitudes) {
        for (const double step_s : steps_s) {
            const auto start = static_cast<std::int64_t>(-631152000.0 + unit(random) * 3124137600.0);
            const std::size_t count = step_s < 3600.0 ? 2000 : 300;
            const double first = static_cast<double>(start) + 3.3 * 86400.0;  // soon comes the end of a polynomial
            const std::int64_t length = 8 * 86400 + static_cast<std::int64_t>(step_s * static_cast<double>(count));
            const double delta_t = delta_t_s(1970.0 + static_cast<double>(start) / 31556952.0);
            const Ephemeris ephemeris(Instant{start}, Instant{start + length}, delta_t);
            Observer observer;
            observer.latitude_deg = latitude;
            observer.longitude_deg = -180.0 + 360.0 * unit(random);
            observer.altitude_m = 3000.0 * unit(random);
            observer.pressure_pa = step_s == 600.0 ? 0.0 : 101325.0;
            const Place place(observer);
            std::vector<double> east(count), north(count), up(count);
            ephemeris.directions(first, step_s, place, east, north, up);
            for (std::size_t i = 0; i < count; ++i) {
                const double at = first + step_s * static_cast<double>(i);
                const Direction single = ephemeris.direction(at, place);
                worst_single =
                    std::fmax(worst_single,
                              degrees(std::hypot(single.east - east[i], single.north - north[i], single.up - up[i])));
                if (i % 7 != 0) continue;
                const double whole = std::floor(at);
                const Position full =
                    position(Instant{static_cast<std::int64_t>(whole)}, at - whole, observer, delta_t);
                const Direction fast{east[i], north[i], up[i], 1.0};
                ASSERT_NEAR(std::hypot(east[i], north[i], up[i]), 1.0, 1e-9);
                // The disc's edge in the horizon, where refraction begins at once: either side counts.
                if (std::fabs(full.zenith_deg - 90.0 + upper_limb_elevation_deg) < promised_deg) continue;
                const double off = angular_separation_deg(full.apparent_zenith_deg, full.azimuth_deg, zenith_of(fast),
                                                          azimuth_of(fast));
                ASSERT_LT(off, promised_deg) << "latitude " << latitude << " step " << step_s << " number " << i;
                worst_full = std::fmax(worst_full, off);
            }
        }
    }
    EXPECT_LT(worst_single, 2e-6);
    std::printf("worst from the full series %.2e deg, from single positions %.2e deg\n", worst_full, worst_single);
}

// A whole year of minutes against single positions: nothing lost between the blocks.
TEST(Ephemeris, MinutesOfAYearEqualSinglePositions) {
    const std::int64_t start = 1798761600;  // 2027-01-01
    const Ephemeris ephemeris(Instant{start}, Instant{start + 365 * 86400}, 73.0);
    Observer observer;
    observer.latitude_deg = 47.4;
    observer.longitude_deg = 9.2;
    const Place place(observer);
    const std::size_t count = 525600;
    std::vector<double> east(count), north(count), up(count);
    ephemeris.directions(static_cast<double>(start), 60.0, place, east, north, up);
    double worst = 0.0;
    for (std::size_t i = 0; i < count; ++i) {
        const Direction d = ephemeris.direction(static_cast<double>(start) + 60.0 * static_cast<double>(i), place);
        worst = std::fmax(worst, std::hypot(d.east - east[i], d.north - north[i], d.up - up[i]));
    }
    EXPECT_LT(degrees(worst), 1e-6);
}

TEST(Ephemeris, WorksAtTheEdgesOfItsSpan) {
    const std::int64_t start = 1798761600;  // 2027-01-01
    const Ephemeris one_moment(Instant{start}, Instant{start}, 70.0);
    const Ephemeris year(Instant{start}, Instant{start + 365 * 86400}, 70.0);
    Observer observer;
    observer.latitude_deg = 47.0;
    const Place place(observer);
    for (const std::int64_t at : {start, start + 365 * 86400}) {
        const Position full = position(Instant{at}, 0.0, observer, 70.0);
        const Direction fast = year.direction(static_cast<double>(at), place);
        EXPECT_LT(angular_separation_deg(full.apparent_zenith_deg, full.azimuth_deg, zenith_of(fast), azimuth_of(fast)),
                  promised_deg);
    }
    const Position full = position(Instant{start}, 0.0, observer, 70.0);
    const Direction fast = one_moment.direction(static_cast<double>(start), place);
    EXPECT_LT(angular_separation_deg(full.apparent_zenith_deg, full.azimuth_deg, zenith_of(fast), azimuth_of(fast)),
              promised_deg);
}

// tests/reference/pvlib_values.json: pvlib 0.9.5, made by pvlib_year.py.
TEST(Position, EqualsPvlibOverACenturyInBothHemispheres) {
    std::ifstream file(std::string(WG_TESTS_DIR) + "/reference/pvlib_values.json");
    ASSERT_TRUE(file) << "committed reference values are missing";
    const nlohmann::json values = nlohmann::json::parse(file);
    double worst = 0.0;
    int count = 0;
    for (const auto& row : values["positions"]) {
        Observer o;
        o.latitude_deg = row[0];
        o.longitude_deg = row[1];
        o.altitude_m = row[2];
        o.pressure_pa = 101325.0 * std::pow(1.0 - 2.25577e-5 * o.altitude_m, 5.25588);
        const Instant when{row[3].get<std::int64_t>()};
        const double delta_t = row[4];
        const CivilDate date = civil_from_days(when.unix_s >= 0 ? when.unix_s / 86400 : (when.unix_s - 86399) / 86400);
        EXPECT_NEAR(delta_t_s(date.year + 0.5), delta_t, 1e-5);
        const Position p = position(when, 0.0, o, delta_t);
        const double off = std::fmax(angular_separation_deg(p.apparent_zenith_deg, p.azimuth_deg, row[5], row[7]),
                                     angular_separation_deg(p.zenith_deg, p.azimuth_deg, row[6], row[7]));
        EXPECT_LT(off, pvlib_deg) << row.dump();
        worst = std::fmax(worst, off);
        ++count;
    }
    EXPECT_GE(count, 200);
    std::printf("worst separation from pvlib %.2e deg over %d moments\n", worst, count);
}

TEST(DeltaT, HasNoJumpsBetweenItsPolynomials) {
    for (const double seam : {1920.0, 1941.0, 1961.0, 1986.0, 2005.0, 2050.0}) {
        EXPECT_NEAR(delta_t_s(seam - 1e-6), delta_t_s(seam), 0.6)
            << seam;  // the published pieces meet within half a second
    }
    EXPECT_NEAR(delta_t_s(2000.0), 63.86, 0.01);  // Espenak and Meeus 2006: value at the centre of the polynomial
    EXPECT_NEAR(delta_t_s(1975.0), 45.45, 0.01);
}

}  // namespace ephemeris_test
}  // namespace wg::sun
