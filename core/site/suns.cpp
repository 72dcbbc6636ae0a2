#include "core/site/suns.h"

#include <algorithm>
#include <cmath>

#include "core/quantity/constants.h"
#include "core/quantity/time.h"
#include "core/site/vec.h"

namespace wg::site {

std::vector<Sun> suns_before(const sky::PreparedYear& year, Point3 normal, double sketch_up_azimuth_deg,
                             int every_nth_day) {
    constexpr std::size_t hours = 8760;
    std::vector<Sun> suns;
    const std::size_t n = std::min({hours, year.sun_up.size(), year.sun_east.size(), year.sun_north.size()});
    const auto every = static_cast<std::size_t>(std::max(1, every_nth_day));
    suns.reserve(n / every);
    const double c = std::cos(radians(sketch_up_azimuth_deg)), s = std::sin(radians(sketch_up_azimuth_deg));
    for (int month = 1; month <= 12; ++month) {
        const auto from = static_cast<std::size_t>(first_hour_of_month(month));
        const auto to = std::min(n, static_cast<std::size_t>(first_hour_of_month(month + 1)));
        for (std::size_t h = from; h < to; ++h) {
            if ((h / 24) % every != 0 || !(year.sun_up[h] > 0.0)) continue;
            Sun sun{h, month, 0.0, year.sun_east[h], year.sun_north[h], year.sun_up[h], {}};
            sun.dir = {sun.east * c - sun.north * s, sun.north * c + sun.east * s, sun.up};  // as to_sketch
            const double cosine = dot(sun.dir, normal);
            if (!(cosine > 0.0)) continue;
            if (h < year.beam_normal_w_m2.size()) sun.beam_w_m2 = std::max(0.0, year.beam_normal_w_m2[h] * cosine);
            suns.push_back(sun);
        }
    }
    return suns;
}

}  // namespace wg::site
