#include "core/siting/seat_light.h"

#include "core/site/shade.h"

namespace wg::siting {

SeatLight light_of(const Site& site, const Surface& surface, const Seat& seat, const sky::PreparedYear& year,
                   double cell_m) {
    (void)seat;
    const site::ShadeMap map = site::shade_map(site, surface, year, cell_m, 1);
    return {map.columns, map.rows, map.share, std::vector<float>(map.share.size(), 1.0F)};
}

}  // namespace wg::siting
