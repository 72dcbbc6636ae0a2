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

[[nodiscard]] Result<Climate> climate_from_json(std::string_view text, const std::string& file_name);

/// A seeded hourly year whose monthly means of global and air temperature equal the climate's to 1e-9 relative.
/// The method and its limits: docs/handbook/weather.md. Deterministic across machines (own generator, no
/// std::*_distribution).
[[nodiscard]] Result<Year> synthesise(const Climate& climate);

}  // namespace wg::weather
