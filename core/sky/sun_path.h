#pragma once
// The sun's way over a place through the year, for a picture of it.

#include <cstddef>
#include <optional>
#include <vector>

#include "core/quantity/time.h"

namespace wg::sky {

inline constexpr int sun_steps_per_day = 144;  ///< ten minutes each

/// Where the sun is seen (with refraction) on each day of a year without 29 February, every ten minutes of local
/// standard time from midnight; below the horizon too. Index: day (0..364) * sun_steps_per_day + step.
struct SunTable {
    std::vector<float> azimuth_deg;  ///< 0..360, clockwise from true north
    std::vector<float> elevation_deg;
    [[nodiscard]] static std::size_t index(int day, int step) noexcept {
        return static_cast<std::size_t>(day * sun_steps_per_day + step);
    }
};

struct SunPlace {
    double latitude_deg = 0.0;
    double longitude_deg = 0.0;
    double altitude_m = 0.0;
    double utc_offset_h = 0.0;  ///< local standard time
    friend bool operator==(const SunPlace&, const SunPlace&) = default;
};
[[nodiscard]] SunTable sun_table(const SunPlace& place);

/// Day 0..364 of a date in a year without 29 February.
[[nodiscard]] int day_index(int month, int day) noexcept;
[[nodiscard]] CivilDate date_of_day(int day) noexcept;

/// When the sun stands nearest to a direction, within the days `from_day`..`to_day`; nullopt when it never comes
/// within `reach_deg`.
struct SunWhen {
    int day = 0;
    double hour = 0.0;  ///< local standard time
    double off_deg = 0.0;
};
[[nodiscard]] std::optional<SunWhen> sun_when(const SunTable& table, double azimuth_deg, double elevation_deg,
                                              int from_day, int to_day, double reach_deg);

/// One day in the table. Times in hours of local standard time, from the level horizon and the middle of the disc.
struct SunDayFacts {
    bool up_all_day = false;
    bool down_all_day = false;
    std::optional<double> rise_h, set_h;  ///< of the first rise and the last set within the day; absent: none
    double highest_deg = 0.0;
};
[[nodiscard]] SunDayFacts sun_day_facts(const SunTable& table, int day);

/// Bearing of the noon sun outside the tropics: 180 north of the equator (and on it), 0 south of it.
[[nodiscard]] double equator_bearing_deg(double latitude_deg) noexcept;

/// Elevation at a bearing under which the sun stands behind a plate's face: -90 where it never does, up to 90 behind
/// a wall.
[[nodiscard]] double behind_plate_below_deg(double tilt_deg, double plate_azimuth_deg, double bearing_deg) noexcept;

}  // namespace wg::sky
