#pragma once
// Sunrise, noon and sunset of one day at one place.

#include <optional>

#include "core/quantity/time.h"
#include "core/sun/position.h"

namespace wg::sun {

enum class DayKind {
    rises_and_sets,
    polar_day,    ///< the upper limb stays above the horizon from the midnight before noon to the one after
    polar_night,  ///< the upper limb does not come above the horizon
};

struct SunDay {
    DayKind kind = DayKind::rises_and_sets;
    /// Unix seconds. Absent in polar day and polar night, and on the one side where the sun does not cross the horizon
    /// between solar midnight and noon on the first or last day of the midnight sun.
    std::optional<double> sunrise_unix_s;
    std::optional<double> sunset_unix_s;
    double noon_unix_s = 0.0;         ///< sun on the meridian
    double noon_elevation_deg = 0.0;  ///< geometric; below zero in deep polar night
    double day_length_h = 0.0;        ///< 0 in polar night, 24 in polar day
};

/// The day whose solar noon lies nearest to 12:00 of local mean solar time on `date` at the observer's longitude: the
/// sunrise before that noon and the sunset after it. Sunrise and sunset are the touch of the upper limb on a level
/// horizon with 34' refraction (geometric elevation -0.8333 deg), as almanacs have it, whatever the observer's
/// pressure. Within 2 s of the full series.
[[nodiscard]] SunDay sun_day(CivilDate date, const Observer& observer, double delta_t_s);

}  // namespace wg::sun
