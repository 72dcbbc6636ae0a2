#include "core/sky/ground.h"

#include <cassert>
#include <cmath>
#include <cstddef>
#include <string>

#include "core/quantity/text.h"
#include "core/quantity/time.h"
#include "core/weather/year.h"

namespace wg::sky {
namespace {

void check_share(double value, const std::string& where, std::vector<Problem>& problems) {
    if (value >= 0.0 && value <= 1.0) return;
    problems.push_back({where, "it is " + fixed(value, 2) + ", and 0 to 1 is possible", "enter a share from 0 to 1"});
}

void check_albedos(double bare, double snow, std::vector<Problem>& problems) {
    check_share(bare, "reflectance of the ground", problems);
    check_share(snow, "reflectance of snow", problems);
}

}  // namespace

Result<std::vector<double>> albedo_with_snow_days(double bare_albedo, double albedo_under_snow,
                                                  const std::array<double, 12>& snow_day_share) {
    std::vector<Problem> problems;
    check_albedos(bare_albedo, albedo_under_snow, problems);
    for (std::size_t m = 0; m < snow_day_share.size(); ++m)
        check_share(snow_day_share[m], "share of days with snow in month " + std::to_string(m + 1), problems);
    if (!problems.empty()) return problems;
    std::vector<double> albedo;
    albedo.reserve(weather::hours_in_year);
    for (int hour = 0; hour < weather::hours_in_year; ++hour) {
        const double share = snow_day_share[static_cast<std::size_t>(month_of_hour(hour) - 1)];
        albedo.push_back(bare_albedo + (albedo_under_snow - bare_albedo) * share);
    }
    return albedo;
}

Result<std::vector<double>> albedo_with_snow_depth(double bare_albedo, double albedo_under_snow,
                                                   const std::vector<double>& snow_depth_m) {
    std::vector<Problem> problems;
    check_albedos(bare_albedo, albedo_under_snow, problems);
    std::vector<double> albedo;
    albedo.reserve(snow_depth_m.size());
    for (std::size_t i = 0; i < snow_depth_m.size(); ++i) {
        if (!(snow_depth_m[i] >= 0.0 && snow_depth_m[i] <= 20.0)) {
            problems.push_back({"depth of snow in hour " + std::to_string(i),
                                "it is " + fixed(snow_depth_m[i], 2) + " m, and 0 to 20 m is possible",
                                "correct the depth, in metres"});
            break;  // one is enough: a wrong unit is wrong in every hour
        }
        const double cover = std::fmin(1.0, snow_depth_m[i] / full_snow_cover_m);
        albedo.push_back(bare_albedo + (albedo_under_snow - bare_albedo) * cover);
    }
    if (!problems.empty()) return problems;
    return albedo;
}

double mean_albedo(const std::vector<double>& albedo_of_hour, const std::vector<double>& global_w_m2) {
    assert(albedo_of_hour.size() == global_w_m2.size() && !albedo_of_hour.empty());
    double reflected = 0.0;
    double global = 0.0;
    double plain = 0.0;
    for (std::size_t i = 0; i < albedo_of_hour.size(); ++i) {
        reflected += albedo_of_hour[i] * global_w_m2[i];
        global += global_w_m2[i];
        plain += albedo_of_hour[i];
    }
    return global > 0.0 ? reflected / global : plain / static_cast<double>(albedo_of_hour.size());
}

}  // namespace wg::sky
