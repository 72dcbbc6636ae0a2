#include "core/weather/nearest.h"

#include <algorithm>
#include <cmath>

#include "core/quantity/constants.h"
#include "core/quantity/text.h"

namespace wg::weather {
namespace {

constexpr double earth_radius_km = 6371.0088;

std::string caution_for(const Near& near) {
    const bool far_away = near.distance_km > far_km;
    const bool far_up = near.higher_m && std::fabs(*near.higher_m) > far_height_m;
    if (!far_away && !far_up) return {};
    std::string out;
    if (far_away) out = fixed(near.distance_km, 0) + " km away";
    if (far_up) {
        out += (out.empty() ? "" : ", ") + fixed(std::fabs(*near.higher_m), 0) + " m " +
               (*near.higher_m > 0.0 ? "higher" : "lower");
    }
    return out + ": sun, fog and frost may differ. Ask for weather from nearer by, or check with someone local.";
}

}  // namespace

double great_circle_km(const Spot& a, const Spot& b) noexcept {
    // Haversine form: exact for points side by side, where the cosine form loses its digits.
    const double half_up = std::sin(0.5 * radians(b.latitude_deg - a.latitude_deg));
    const double half_along = std::sin(0.5 * radians(b.longitude_deg - a.longitude_deg));
    const double h = half_up * half_up +
                     std::cos(radians(a.latitude_deg)) * std::cos(radians(b.latitude_deg)) * half_along * half_along;
    return 2.0 * earth_radius_km * std::asin(std::sqrt(std::clamp(h, 0.0, 1.0)));
}

std::vector<Near> nearest(const Spot& site, const std::vector<Spot>& candidates, std::size_t most) {
    std::vector<Near> out;
    for (std::size_t i = 0; i < candidates.size(); ++i) {
        Near near;
        near.index = i;
        near.distance_km = great_circle_km(site, candidates[i]);
        near.order_km = near.distance_km;
        if (site.altitude_m && candidates[i].altitude_m) {
            near.higher_m = *candidates[i].altitude_m - *site.altitude_m;
            near.order_km += std::fabs(*near.higher_m) * far_km / far_height_m;
        }
        if (!std::isfinite(near.order_km)) continue;
        near.caution = caution_for(near);
        out.push_back(std::move(near));
    }
    std::stable_sort(out.begin(), out.end(), [](const Near& a, const Near& b) { return a.order_km < b.order_km; });
    if (out.size() > most) out.resize(most);
    return out;
}

}  // namespace wg::weather
