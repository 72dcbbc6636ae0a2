#pragma once
// Where the sun stands in each of the 8,760 hours of a weather year.

#include <vector>

#include "core/sun/position.h"

namespace wg::sun {

/// The civil year whose sun is used for weather years, which are put together from months of several years: without
/// 29 February, and in the middle of the leap cycle.
inline constexpr int weather_sun_year = 2027;

struct YearSunInput {
    double latitude_deg = 0.0;
    double longitude_deg = 0.0;
    double altitude_m = 0.0;
    double utc_offset_h = 0.0;  ///< of the rows' local standard time
    /// Minute within the hour. 30 stands for a mean over the hour: hours in which the sun rises or sets then take the
    /// middle of the part in which it is up. Any other minute is a reading at that moment, taken as it is.
    double minute = 30.0;
    int year = weather_sun_year;  ///< 1950..2050
};

/// Structure of arrays, one value an hour since 1 January 00:00 local standard time. 29 February, where the year has
/// one, is left out. Vectors with refraction for a standard atmosphere of 12 deg C at the site's height.
struct YearSun {
    std::vector<double> east, north, up;  ///< unit vector; up is 0 or less in hours without sun
    std::vector<double> up_share;         ///< share of the hour with the centre of the disc above the horizon, 0..1
    std::vector<double> extraterrestrial_normal_w_m2;  ///< also at night
};

/// A polar day shorter than half an hour around one hour's boundary may be missed; everything else is found.
[[nodiscard]] YearSun year_sun(const YearSunInput& input);

/// Unix time of the start of hour 0 of the year in local standard time.
[[nodiscard]] double year_start_unix_s(int year, double utc_offset_h) noexcept;

}  // namespace wg::sun
