#pragma once
// What a weather year is worth: range and closure tests, sums by month, light while the sun is down.

#include <array>
#include <optional>
#include <string>
#include <vector>

#include "core/weather/closure.h"
#include "core/weather/year.h"

namespace wg::weather {

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
    int hours_light_below_horizon = 0;  ///< global over 5 W/m2 with the sun lower than -1 deg through the hour
    int hours_closure_off = 0;          ///< |global - diffuse - beam cos z| over 50 W/m2 and over 15 %
    int hours_above_extraterrestrial = 0;
    /// Shift of the stamps which makes clear mornings and afternoons symmetric, minutes; positive: the stamps stand too
    /// early. Haze and slopes that favour one half of the day move it by up to about 15 minutes. 0 with too few
    /// clear days.
    double best_shift_min = 0.0;
    int clear_days = 0;  ///< days best_shift_min rests on
    /// Minute of the hour at which global, diffuse and beam fit together best (closure.h).
    std::optional<ClosureMinute> closure;
    std::vector<std::string> remarks;  ///< in words; empty: nothing to remark
};

[[nodiscard]] QualityReport assess(const Year& year);
/// The report as plain text lines for the command line and the screen.
[[nodiscard]] std::string text(const Year& year, const QualityReport& report);

}  // namespace wg::weather
