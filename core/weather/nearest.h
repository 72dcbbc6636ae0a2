#pragma once
// Which of several weather years or climates suits a site: by distance and height. Plain places in, an order out; what
// stands behind a place (a table of climates, the store's years) is the caller's business.

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

namespace wg::weather {

struct Spot {
    double latitude_deg = 0.0;         ///< -90..90
    double longitude_deg = 0.0;        ///< east positive, any turn
    std::optional<double> altitude_m;  ///< not known: height counts for nothing
};

// Common practice, no published source. One metre of height counts as much as far_km / far_height_m kilometres, so that
// both limits weigh the same in the order.
inline constexpr double far_km = 50.0;
inline constexpr double far_height_m = 200.0;

struct Near {
    std::size_t index = 0;           ///< among the candidates
    double distance_km = 0.0;        ///< great circle
    std::optional<double> higher_m;  ///< candidate's height less the site's
    double order_km = 0.0;           ///< distance with height counted in: what the order goes by
    std::string caution;             ///< empty when near
};

/// Great-circle distance on a sphere of 6371.0088 km (IUGG mean radius), within 0.6 % of the ellipsoid's.
[[nodiscard]] double great_circle_km(const Spot& a, const Spot& b) noexcept;

/// At most `most` candidates, best first; equal ones in the order they were given. Candidates with a place that is no
/// number are left out.
[[nodiscard]] std::vector<Near> nearest(const Spot& site, const std::vector<Spot>& candidates, std::size_t most);

}  // namespace wg::weather
