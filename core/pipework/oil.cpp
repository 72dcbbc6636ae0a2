#include "core/pipework/oil.h"

#include <algorithm>
#include <cmath>

namespace wg::pipework {
namespace {

bool rises(const Leg& leg) noexcept {
    return leg.to.z_m - leg.from.z_m > level_slope * leg.length_m;
}
bool falls(const Leg& leg) noexcept {
    return leg.from.z_m - leg.to.z_m > level_slope * leg.length_m;
}

/// Where the riser passes `height_m` over its foot.
OilTrap trap_at(const std::vector<Leg>& legs, const Riser& riser, double height_m) {
    for (std::size_t i = riser.first_leg; i <= riser.last_leg; ++i) {
        const Leg& leg = legs[i];
        const double over_m = leg.to.z_m - riser.foot.z_m;
        if (over_m < height_m && i < riser.last_leg) continue;
        const double share =
            std::clamp((riser.foot.z_m + height_m - leg.from.z_m) / (leg.to.z_m - leg.from.z_m), 0.0, 1.0);
        return {{leg.from.x_m + share * (leg.to.x_m - leg.from.x_m), leg.from.y_m + share * (leg.to.y_m - leg.from.y_m),
                 leg.from.z_m + share * (leg.to.z_m - leg.from.z_m)},
                i,
                false};
    }
    return {riser.foot, riser.first_leg, true};
}

}  // namespace

double OilReturn::highest_riser_m() const noexcept {
    double highest = 0.0;
    for (const Riser& riser : risers)
        highest = std::max(highest, riser.height_m);
    return highest;
}

OilReturn oil_return(const std::vector<Leg>& legs, double every_m) {
    constexpr double at_the_top_m = 1e-6;  // a riser of just one interval needs no trap at its top
    OilReturn out;
    for (std::size_t i = 0; i < legs.size(); ++i) {
        if (!rises(legs[i])) {
            if (!falls(legs[i])) out.level_m += legs[i].length_m;
            continue;
        }
        Riser riser{i, i, legs[i].from, 0.0};
        while (riser.last_leg + 1 < legs.size() && rises(legs[riser.last_leg + 1]))
            ++riser.last_leg;
        i = riser.last_leg;
        riser.height_m = legs[riser.last_leg].to.z_m - riser.foot.z_m;
        if (riser.height_m <= rising_leg_m) continue;
        out.risers.push_back(riser);
        if (!(every_m > 0.0)) continue;
        out.traps.push_back({riser.foot, riser.first_leg, true});
        for (int k = 1; every_m * k < riser.height_m - at_the_top_m; ++k)
            out.traps.push_back(trap_at(legs, riser, every_m * k));
    }
    return out;
}

}  // namespace wg::pipework
