#include "core/siting/seat_light.h"

#include <algorithm>
#include <cmath>

#include "core/quantity/constants.h"
#include "core/site/shade.h"
#include "core/site/view.h"

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

// Open sky changes slowly over a surface: worked out at points a metre apart, straight lines between.
std::vector<float> sky_over(const Site& site, const Surface& surface, const Seat& seat, const site::ShadeMap& map) {
    const site::Bounds b = site::bounds_of(surface.outline);
    const site::Frame frame = site::frame_of(surface, site.sketch_up_azimuth_deg);
    const std::vector<site::Occluder> occluders = site::Occluder::of(site, surface.id);
    const site::Horizon horizon(site.horizon);
    Surface plate = surface;
    plate.tilt_deg = seat.tilt_deg;
    plate.azimuth_deg = seat.azimuth_deg;
    const Point3 normal = site::frame_of(plate, site.sketch_up_azimuth_deg).normal;
    const int across = std::max(1, static_cast<int>(std::ceil(b.width_m() / view_step_m)));
    const int along = std::max(1, static_cast<int>(std::ceil(b.height_m() / view_step_m)));
    const double step_x = b.width_m() / across, step_y = b.height_m() / along;
    const auto stride = static_cast<std::size_t>(across) + 1;
    std::vector<double> open(stride * (static_cast<std::size_t>(along) + 1), 1.0);
    for (int j = 0; j <= along; ++j) {
        for (int i = 0; i <= across; ++i) {
            const Point3 at =
                site::to_space(frame, {b.min_x_m + i * step_x, b.min_y_m + j * step_y}, site::shade_map_off_m);
            open[static_cast<std::size_t>(j) * stride + static_cast<std::size_t>(i)] =
                site::view_from(at, normal, occluders, horizon, site.sketch_up_azimuth_deg).sky_open;
        }
    }
    std::vector<float> cells;
    cells.reserve(map.share.size());
    for (int row = 0; row < map.rows; ++row) {
        const double y = std::min((row + 0.5) * map.cell_m / step_y, static_cast<double>(along));
        const int j = std::min(static_cast<int>(y), along - 1);
        for (int column = 0; column < map.columns; ++column) {
            const double x = std::min((column + 0.5) * map.cell_m / step_x, static_cast<double>(across));
            const int i = std::min(static_cast<int>(x), across - 1);
            const double* low = open.data() + static_cast<std::size_t>(j) * stride + static_cast<std::size_t>(i);
            const double* high = low + stride;
            const double u = x - i, v = y - j;
            cells.push_back(static_cast<float>((1.0 - v) * ((1.0 - u) * low[0] + u * low[1]) +
                                               v * ((1.0 - u) * high[0] + u * high[1])));
        }
    }
    return cells;
}

}  // namespace

SeatLight light_of(const Site& site, const Surface& surface, const Seat& seat, const sky::PreparedYear& year,
                   double cell_m) {
    site::ShadeMapOptions options;
    options.cell_m = cell_m;
    options.hour_weight = weight_of_hours(year, surface, seat);
    const site::ShadeMap map = site::shade_map(site, surface, year, options);
    if (map.share.empty()) return {};
    return {map.columns, map.rows, map.share, sky_over(site, surface, seat, map)};
}

}  // namespace wg::siting
