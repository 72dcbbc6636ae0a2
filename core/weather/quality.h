#pragma once
// What a weather year is worth: range and closure tests, sums by month, light while the sun is down.

#include <array>
#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "core/weather/closure.h"
#include "core/weather/year.h"

namespace wg::weather {

/// What can be wrong with one hour: bits of `QualityReport::flags`.
enum class Flag : std::uint8_t {
    above_extraterrestrial = 1,  ///< global over the light outside the atmosphere by 20 W/m2, or beam over it
    closure_off = 2,             ///< |global - diffuse - beam cos z| over 50 W/m2 and over 15 %
    light_below_horizon = 4,     ///< global over 5 W/m2 with the sun lower than -1 deg through the hour
    above_clear_sky = 8,         ///< global over 1.15 times a very clean sky (Ineichen and Perez, Linke 2) plus 40 W/m2
    stuck = 16,                  ///< air the same for 36 hours or more, or global over 20 W/m2 for 4
    jump = 32,                   ///< air more than 10 K off the hour before
};
inline constexpr std::size_t flag_count = 6;

struct FlagWords {
    Flag flag;
    const char* name;    ///< a few words for a legend
    const char* what;    ///< what it means
    const char* remedy;  ///< what to do
};
/// In the order of their bits.
[[nodiscard]] const std::array<FlagWords, flag_count>& flag_words() noexcept;

struct QualityReport {
    std::array<double, 12> global_kwh_m2{};
    std::array<double, 12> beam_horizontal_kwh_m2{};
    std::array<double, 12> diffuse_kwh_m2{};
    std::array<double, 12> air_mean_c{};
    double global_year_kwh_m2 = 0.0;
    double beam_normal_year_kwh_m2 = 0.0;
    double diffuse_year_kwh_m2 = 0.0;
    double air_mean_year_c = 0.0;
    double air_min_c = 0.0;
    double air_max_c = 0.0;
    double wind_mean_m_s = 0.0;
    /// One value an hour, bits of Flag; 0: nothing found.
    std::vector<std::uint8_t> flags;
    /// Hours with a flag by month, in the order of flag_words().
    std::array<std::array<int, 12>, flag_count> flagged_hours{};
    int hours_light_below_horizon = 0;
    int hours_closure_off = 0;
    int hours_above_extraterrestrial = 0;
    /// Shift of the stamps which makes clear mornings and afternoons symmetric, minutes; positive: the stamps stand too
    /// early. Haze and slopes that favour one half of the day move it by up to about 15 minutes. 0 with too few
    /// clear days.
    double best_shift_min = 0.0;
    int clear_days = 0;  ///< days best_shift_min rests on
    /// The same for December to February, March to May, June to August, September to November; nullopt with fewer than
    /// five clear days. Summer an hour off winter: the stamps follow daylight saving time.
    std::array<std::optional<double>, 4> season_shift_min{};
    std::array<int, 4> season_clear_days{};
    /// Minute of the hour at which global, diffuse and beam fit together best (closure.h).
    std::optional<ClosureMinute> closure;
    std::vector<std::string> remarks;  ///< in words; empty: nothing to remark

    [[nodiscard]] bool has(std::size_t hour, Flag flag) const noexcept {
        return (flags[hour] & static_cast<std::uint8_t>(flag)) != 0;
    }
    [[nodiscard]] int hours(Flag flag) const noexcept;  ///< of the year with this flag
};

[[nodiscard]] QualityReport assess(const Year& year);
/// "Dec-Feb" and so on, in the order of season_shift_min.
[[nodiscard]] const std::array<const char*, 4>& season_names() noexcept;
/// The report as plain text lines for the command line and the screen.
[[nodiscard]] std::string text(const Year& year, const QualityReport& report);

}  // namespace wg::weather
