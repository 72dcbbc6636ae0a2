#include "core/siting/seat_light.h"

#include <algorithm>
#include <cmath>

#include "core/quantity/constants.h"
#include "core/site/shade.h"

namespace wg::siting {
namespace {

/// What an hour's beam on the surface counts for the plate: the plate's beam and circumsolar light over it. Parallel
/// plates differ by the circumsolar light alone, plates on a frame by their angle to the sun, too.
std::vector<float> weight_of_hours(const sky::PreparedYear& year, const Surface& surface, const Seat& seat) {
    const auto towards = [](double tilt_deg, double azimuth_deg, double east, double north, double up) {
        const double tilt = radians(tilt_deg), azimuth = radians(azimuth_deg);
        return std::sin(tilt) * (std::sin(azimuth) * east + std::cos(azimuth) * north) + std::cos(tilt) * up;
    };
    const std::size_t hours = year.sun_up.size();
    std::vector<float> weight(hours, 0.0F);
    const bool derived = year.circumsolar_hay_davies_w_m2.size() == hours;
    for (std::size_t h = 0; h < hours; ++h) {
        const double east = year.sun_east[h], north = year.sun_north[h], up = year.sun_up[h];
        const double beam = year.beam_normal_w_m2[h];
        const double on_surface = beam * towards(surface.tilt_deg, surface.azimuth_deg, east, north, up);
        if (!(up > 0.0) || !(on_surface > 0.0)) continue;
        const double direct = beam + (derived ? year.circumsolar_hay_davies_w_m2[h] : 0.0);
        const double on_plate = direct * std::fmax(0.0, towards(seat.tilt_deg, seat.azimuth_deg, east, north, up));
        weight[h] = static_cast<float>(std::fmin(1000.0, on_plate / on_surface));
    }
    return weight;
}

}  // namespace

SeatLight light_of(const Site& site, const Surface& surface, const Seat& seat, const sky::PreparedYear& year,
                   double cell_m) {
    site::ShadeMapOptions options;
    options.cell_m = cell_m;
    options.hour_weight = weight_of_hours(year, surface, seat);
    const site::ShadeMap map = site::shade_map(site, surface, year, options);
    return {map.columns, map.rows, map.share, std::vector<float>(map.share.size(), 1.0F)};
}

}  // namespace wg::siting
