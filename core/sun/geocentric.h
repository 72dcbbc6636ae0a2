#pragma once
// The steps of the NREL solar position algorithm, with their intermediates, so that each can be held against the
// published worked example. Callers who only want to know where the sun stands use position.h or year.h.

#include <array>

#include "core/quantity/time.h"
#include "core/sun/position.h"

namespace wg::sun {

/// Days since 2000-01-01T12:00Z. Kept apart from the Julian day, whose size costs a double its last digits.
[[nodiscard]] double days_since_j2000(Instant when_utc, double fraction_s) noexcept;

/// The sun seen from the earth's centre (Reda and Andreas, NREL/TP-560-34302, 2008, sections 3.1-3.10). Angles in
/// degrees, wrapped to 0..360 where they run round.
struct Geocentric {
    double julian_day = 0.0;
    double ephemeris_day = 0.0;
    double ephemeris_century = 0.0;
    double ephemeris_millennium = 0.0;
    double heliocentric_longitude_deg = 0.0;
    double heliocentric_latitude_deg = 0.0;
    double distance_au = 1.0;
    std::array<double, 5> nutation_x_deg{};
    double nutation_longitude_deg = 0.0;
    double nutation_obliquity_deg = 0.0;
    double true_obliquity_deg = 0.0;
    double aberration_deg = 0.0;
    double apparent_longitude_deg = 0.0;
    double mean_sidereal_deg = 0.0;
    double apparent_sidereal_deg = 0.0;
    double right_ascension_deg = 0.0;
    double declination_deg = 0.0;
    double equation_of_time_min = 0.0;
};

/// `days` since J2000 in UT1 (UTC is within 0.9 s, 0.004 deg).
[[nodiscard]] Geocentric geocentric(double days, double delta_t_s) noexcept;

/// The sun seen from a place on the ground (sections 3.11-3.15). Angles in degrees.
struct Topocentric {
    double hour_angle_deg = 0.0;  ///< geocentric, westward from the meridian, 0..360
    double parallax_deg = 0.0;    ///< xi
    double parallax_right_ascension_deg = 0.0;
    double right_ascension_deg = 0.0;
    double declination_deg = 0.0;
    double topocentric_hour_angle_deg = 0.0;
    double elevation_deg = 0.0;   ///< without refraction
    double refraction_deg = 0.0;  ///< 0 when the whole disc is below the horizon
    double azimuth_deg = 0.0;     ///< clockwise from north
};

[[nodiscard]] Topocentric topocentric(const Geocentric& sun, const Observer& observer) noexcept;

/// Refraction to add to the geometric elevation (eq. 42, after Meeus). Zero below -0.8333 deg, where no part of the
/// disc is seen, and zero without air. Elevation in degrees.
[[nodiscard]] double refraction_deg(double elevation_deg, double pressure_pa, double temperature_c) noexcept;

/// Geometric elevation of the centre of the disc when its upper limb touches the horizon: 16' semi-diameter and
/// 34' refraction (the same report, appendix A.2).
inline constexpr double upper_limb_elevation_deg = -0.26667 - 0.5667;

}  // namespace wg::sun
