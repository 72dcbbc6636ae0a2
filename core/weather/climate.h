#pragma once
// A year made from monthly means, for places without an hourly file and for the invented demonstration climate.

#include <array>
#include <cstdint>
#include <string>
#include <string_view>

#include "core/quantity/result.h"
#include "core/weather/year.h"

namespace wg::weather {

struct Climate {
    std::string id;
    std::string label;
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
}  // namespace climate_range

[[nodiscard]] Result<Climate> climate_from_json(std::string_view text, const std::string& file_name);

/// A seeded hourly year whose monthly means of global and air temperature equal the climate's to 1e-9 relative.
/// The method and its limits: docs/handbook/weather.md. Deterministic across machines (own generator, no
/// std::*_distribution). Figures outside the ranges below, NaN included, are refused, as is a month with more light
/// than a cloudless one.
[[nodiscard]] Result<Year> synthesise(const Climate& climate);

}  // namespace wg::weather
