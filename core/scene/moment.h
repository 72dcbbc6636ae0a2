#pragma once
// The sun over a site at a date and an hour.

#include <optional>

#include "core/job/job.h"
#include "core/quantity/geometry.h"

namespace wg::scene {

struct Moment {
    int day = 0;       ///< 0..364 of a year without 29 February
    double hour = 12;  ///< local standard time, 0..24
    friend bool operator==(const Moment&, const Moment&) = default;
};

struct SunOverSite {
    double elevation_deg = 0.0;  ///< as seen, with refraction
    double azimuth_deg = 0.0;    ///< true bearing
    Point3 to_sun;               ///< unit vector in the sketch
    int month = 1;
    bool up = false;              ///< over the level horizon
    bool behind_horizon = false;  ///< over the level one but not over the surveyed one
    [[nodiscard]] bool shines() const noexcept { return up && !behind_horizon; }
};
[[nodiscard]] SunOverSite sun_over(const Site& site, const Moment& moment);

/// From sunrise to sunset in hours of local standard time: `from_h` may lie before midnight of the day and `to_h` after
/// its end at places whose clock is far from the sun. The whole day where the sun stays up; nullopt where it stays
/// down.
struct Daylight {
    double from_h = 0.0, to_h = 24.0;
    bool all_day = false;
};
[[nodiscard]] std::optional<Daylight> daylight(const Site& site, int day);

}  // namespace wg::scene
