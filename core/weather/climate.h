#pragma once
// A year made from monthly means, for places without an hourly file and for the invented demonstration climate.

#include <array>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

#include "core/quantity/result.h"
#include "core/weather/year.h"

namespace wg::weather {

struct Climate {
    std::string id;
    std::string label;
    std::string country;  ///< two letters of ISO 3166-1, or empty
    bool invented = false;
    std::string source;
    double latitude_deg = 0.0;
    double longitude_deg = 0.0;
    double altitude_m = 0.0;
    double utc_offset_h = 0.0;
    std::array<double, 12> global_kwh_m2_day{};  ///< monthly mean of the daily global on the horizontal
    std::array<double, 12> air_mean_c{};
    std::array<double, 12> air_daily_swing_k{};  ///< mean daily maximum less minimum
    std::array<double, 12> relative_humidity{};  ///< 0..1, 24 h mean
    std::array<double, 12> wind_m_s{};           ///< mean at 10 m
    /// How months differ from year to year, for ensembles; ensemble.h states what is assumed when empty.
    std::optional<std::array<double, 12>> global_variation;  ///< standard deviation over mean of a month's global
    std::optional<std::array<double, 12>> air_spread_k;      ///< standard deviation of a month's mean air temperature
    std::uint64_t seed = 1;
};

/// Least and largest value each kind of figure may have.
struct ClimateRange {
    double low, high;
};
namespace climate_range {
inline constexpr ClimateRange latitude_deg{-90.0, 90.0};
inline constexpr ClimateRange longitude_deg{-180.0, 180.0};
inline constexpr ClimateRange altitude_m{-450.0, 6000.0};
inline constexpr ClimateRange utc_offset_h{-12.0, 14.0};
inline constexpr ClimateRange global_kwh_m2_day{0.0, 12.0};
inline constexpr ClimateRange air_mean_c{-50.0, 45.0};
inline constexpr ClimateRange air_daily_swing_k{0.0, 25.0};
inline constexpr ClimateRange relative_humidity{0.05, 0.98};
inline constexpr ClimateRange wind_m_s{0.0, 12.0};
inline constexpr ClimateRange global_variation{0.0, 0.5};
inline constexpr ClimateRange air_spread_k{0.0, 6.0};
}  // namespace climate_range

[[nodiscard]] Result<Climate> climate_from_json(std::string_view text, const std::string& file_name);

/// Monthly means of an hourly year with all its series, so that other years like it can be made: global, air, daily
/// swing (mean of the days' highest less lowest hour), relative humidity and wind. Figures outside climate_range are
/// brought to its edge. `id` and `seed` are the caller's; label and source are the year's own.
[[nodiscard]] Climate climate_of(const Year& year, const std::string& id, std::uint64_t seed = 1);

/// A seeded hourly year whose monthly means of global and air temperature equal the climate's to 1e-9 relative.
/// The method and its limits: docs/handbook/weather.md. Deterministic across machines (own generator, no
/// std::*_distribution). Figures outside the ranges below, NaN included, are refused, as is a month with more light
/// than a cloudless one.
[[nodiscard]] Result<Year> synthesise(const Climate& climate);

}  // namespace wg::weather
