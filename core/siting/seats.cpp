#include "core/siting/seats.h"

#include <algorithm>

namespace wg::siting {
namespace {

bool suits(const FixingMethod& method, Covering covering) {
    return std::find(method.coverings.begin(), method.coverings.end(), covering) != method.coverings.end();
}

const FixingMethod* method_for(const Catalogue& catalogue, const std::string& preferred,
                               const std::vector<Covering>& on) {
    const auto suits_all = [&on](const FixingMethod& method) {
        return std::all_of(on.begin(), on.end(), [&method](Covering covering) { return suits(method, covering); });
    };
    const FixingMethod* own = find_fixing_method(catalogue, preferred);
    if (own != nullptr && suits_all(*own)) return own;
    for (const FixingMethod& method : catalogue.fixing_methods) {
        if (suits_all(method)) return &method;
    }
    return nullptr;
}

}  // namespace

std::vector<Seat> seats_of(const Site& site, const CollectorModel& collector, const Catalogue& catalogue,
                           const std::string& preferred_method, const std::vector<Covering>& also_on) {
    std::vector<Seat> seats;
    for (const Surface& surface : site.surfaces) {
        if (surface.outline.size() < 3) continue;
        std::vector<Covering> on = also_on;
        on.push_back(surface.covering);
        const FixingMethod* method = method_for(catalogue, preferred_method, on);
        if (method == nullptr || surface.tilt_deg > collector.tilt_max_deg) continue;
        Seat seat{surface.id, surface.label, 0.0, {}, {}, method->id, surface.tilt_deg, surface.azimuth_deg};
        if (surface.tilt_deg < collector.tilt_min_deg) {
            seat.tilt_deg = std::max(collector.tilt_min_deg, collector.tilt_recommended_min_deg);
            seat.azimuth_deg = site.location.latitude_deg >= 0.0 ? 180.0 : 0.0;
            seat.frame_tilt_deg = seat.tilt_deg;
            seat.frame_azimuth_deg = seat.azimuth_deg;
        }
        if (collector.level_side != LevelSide::short_side) seats.push_back(seat);
        if (collector.level_side != LevelSide::long_side) {
            seat.turn_deg = 90.0;
            seats.push_back(seat);
        }
    }
    return seats;
}

Placement placement_in(const Seat& seat, Point2 middle, Hand hand) {
    Placement placement;
    placement.surface_id = seat.surface_id;
    placement.x_m = middle.x_m;
    placement.y_m = middle.y_m;
    placement.turn_deg = seat.turn_deg;
    placement.hand = hand;
    placement.frame_tilt_deg = seat.frame_tilt_deg;
    placement.frame_azimuth_deg = seat.frame_azimuth_deg;
    return placement;
}

}  // namespace wg::siting
