#include "core/sky/clear_days.h"

#include <algorithm>
#include <cmath>
#include <cstddef>

#include "core/quantity/constants.h"
#include "core/sun/clear_sky.h"

namespace wg::sky {
namespace {

constexpr double clear_share = 0.85;
constexpr double least_clear_w_h = 1500.0;
constexpr double least_height_deg = 1.0;

}  // namespace

ClearDayProfile clear_day_profile(const PreparedYear& year) {
    ClearDayProfile profile;
    const auto add = [&](std::size_t hour) {
        const double up = std::min(1.0, year.sun_up[hour]);
        const double height = degrees(std::asin(up));
        const double clear = sun::haurwitz_global_w_m2(up);
        if (height < least_height_deg || !(clear > 0.0)) return;
        const auto bin = std::min(static_cast<std::size_t>(height / ClearDayProfile::bin_deg),
                                  static_cast<std::size_t>(ClearDayProfile::bins - 1));
        ClearDayProfile::Half& half = year.sun_east[hour] > 0.0 ? profile.morning : profile.afternoon;
        half.share[bin] += year.global_w_m2[hour] / clear;
        ++half.hours[bin];
    };
    for (std::size_t first = 0; first + 24 <= year.sun_up.size(); first += 24) {
        double measured = 0.0;
        double clear = 0.0;
        for (std::size_t hour = first; hour < first + 24; ++hour) {
            measured += year.global_w_m2[hour];
            clear += sun::haurwitz_global_w_m2(std::fmax(0.0, year.sun_up[hour]));
        }
        if (clear < least_clear_w_h || measured < clear_share * clear) continue;
        ++profile.days;
        for (std::size_t hour = first; hour < first + 24; ++hour)
            add(hour);
    }
    for (ClearDayProfile::Half* half : {&profile.morning, &profile.afternoon}) {
        for (std::size_t bin = 0; bin < ClearDayProfile::bins; ++bin) {
            if (half->hours[bin] > 0) half->share[bin] /= half->hours[bin];
        }
    }
    return profile;
}

}  // namespace wg::sky
