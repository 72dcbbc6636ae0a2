#pragma once
// Where the sun stands. Azimuth clockwise from true north; zenith from straight up.

#include "core/quantity/time.h"

namespace wg::sun {

struct Observer {
    double latitude_deg = 0.0;
    double longitude_deg = 0.0;  ///< east positive
    double altitude_m = 0.0;
    double pressure_pa = 101325.0;  ///< for refraction; 0 switches refraction off
    double temperature_c = 12.0;
};

struct Position {
    double zenith_deg = 0.0;           ///< true (geometric, topocentric) zenith, 0..180
    double apparent_zenith_deg = 0.0;  ///< with refraction; equals zenith_deg when the sun is well below the horizon
    double azimuth_deg = 0.0;          ///< 0..360
    double declination_deg = 0.0;
    double equation_of_time_min = 0.0;
    double distance_au = 1.0;
};

/// Topocentric position by the NREL solar position algorithm (Reda and Andreas, NREL/TP-560-34302, 2008).
/// Valid -2000..6000; delta-T by `delta_t_s`.
[[nodiscard]] Position position(Instant when_utc, double fraction_s, const Observer& observer, double delta_t_s);

/// Terrestrial time less UT1, s, 1950-2050: polynomials of Espenak and Meeus (NASA/TP-2006-214141).
[[nodiscard]] double delta_t_s(double year) noexcept;

}  // namespace wg::sun
