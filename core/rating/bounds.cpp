#include "core/rating/bounds.h"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <utility>

#include "core/cylinder/store.h"
#include "core/heatpump/compressor.h"
#include "core/heatpump/cycle.h"
#include "core/quantity/constants.h"
#include "core/quantity/text.h"

namespace wg::rating {

double carnot_cop(double water_c, double air_c) noexcept {
    assert(water_c > air_c);
    return kelvin(water_c) / (water_c - air_c);
}

double ideal_cop(double cold_c, double hot_c, double air_c) noexcept {
    assert(hot_c > cold_c && hot_c > air_c);
    const double from_c = std::max(cold_c, air_c);
    return (hot_c - cold_c) / (hot_c - from_c - kelvin(air_c) * std::log(kelvin(hot_c) / kelvin(from_c)));
}

double shortest_heat_up_h(const Item& item, const Chamber& chamber) {
    constexpr double step_k = 0.5;
    BlockModel best = item.block;
    best.volumetric_at_unity = 1.0;
    best.volumetric_slope = 0.0;
    best.overall_peak = range_of(Parameter::overall_peak).low;
    best.overall_curvature = 0.0;
    best.shell_loss = 0.0;
    const auto& table = *item.refrigerant;
    const double evaporating_c = std::clamp(chamber.air.dry_c, best.evaporating_min_c, best.evaporating_max_c);
    const double per_step_j = item.cylinder.volume_l * cylinder::heat_capacity_j_l_k * step_k;
    double seconds = 0.0;
    for (double water_c = chamber.cold_c; water_c < item.set_point_c; water_c += step_k) {
        const double condensing_c = std::min(std::max(water_c, evaporating_c + best.least_lift_k), table.max_c());
        if (!heatpump::covered_by_data(best, evaporating_c, condensing_c)) return 0.0;
        const auto cycle = heatpump::cycle_at(best, table, evaporating_c, condensing_c);
        const double share = std::min(1.0, (item.set_point_c - water_c) / step_k);
        seconds += share * per_step_j / (cycle.evaporator_w + cycle.work_w);
    }
    return seconds / 3600.0;
}

double least_standby_w(const Item& item, const Chamber& chamber, double loss_w_k) noexcept {
    const double water_c = item.set_point_c - item.hysteresis_k;
    const double loss_w = loss_w_k * std::max(0.0, water_c - chamber.room_c);
    return water_c > chamber.air.dry_c ? loss_w / carnot_cop(water_c, chamber.air.dry_c) : 0.0;
}

namespace {

class Judge {
   public:
    Judge(const Item& item, const Chamber& chamber, bool loss_is_open) : item_(item), base_(chamber) {
        const double kwh = loss_is_open ? range_of(Parameter::standing_loss).low : item.cylinder.standing_loss_kwh_24h;
        CylinderModel cylinder = item.cylinder;
        cylinder.standing_loss_kwh_24h = std::min(kwh, cylinder.standing_loss_kwh_24h);
        loss_w_k_ = cylinder::geometry_of(cylinder, 10).loss_w_k;
    }

    void one(const Declared& d) {
        const Chamber chamber = chamber_of(d);
        const double low = d.value * (1.0 - d.tolerance);
        const double high = d.value * (1.0 + d.tolerance);
        const double stored_c = item_.set_point_c - item_.hysteresis_k;
        const double air_c = d.air.dry_c;
        switch (d.quantity) {
            case Quantity::cop_dhw: {
                if (stored_c <= air_c || stored_c <= chamber.cold_c) return;
                const double ideal = ideal_cop(chamber.cold_c, stored_c, air_c);
                const double carnot = carnot_cop(stored_c, air_c);
                if (low > ideal)
                    say(d, "no machine can do it: the second law allows " + fixed(ideal, 2) +
                               " for warming water from " + fixed(chamber.cold_c, 0) + " to " + fixed(stored_c, 0) +
                               " deg C with this air");
                else if (low > carnot)
                    say(d,
                        "it is above Carnot, " + fixed(carnot, 2) + " between this air and water stored at " +
                            fixed(stored_c, 0) + " deg C; only a machine that warms the water layer by layer could",
                        " is hardly believable: ");
                return;
            }
            case Quantity::steady_cop:
                if (d.water_c > air_c && low > carnot_cop(d.water_c, air_c))
                    say(d, "it is above Carnot, " + fixed(carnot_cop(d.water_c, air_c), 2) +
                               " at these temperatures: no machine can do it");
                return;
            case Quantity::heat_up_h: {
                const double least_h = shortest_heat_up_h(item_, chamber);
                if (high < least_h)
                    say(d, std::string(item_.block.compressor ? "by its data the compressor"
                                                              : "the compressor's swept volume") +
                               " needs at least " + fixed(least_h, 1) + " h for " + fixed(item_.cylinder.volume_l, 0) +
                               " litres, even with a perfect plate and condenser");
                return;
            }
            case Quantity::standby_w: {
                const double least_w = least_standby_w(item_, chamber, loss_w_k_);
                if (high < least_w)
                    say(d, "the cylinder's loss alone asks for at least " + fixed(least_w, 1) +
                               " W, even from a perfect heat pump");
                return;
            }
            case Quantity::v40_l: {
                const double most_l =
                    item_.cylinder.volume_l * (item_.set_point_c - chamber.cold_c) / (40.0 - chamber.cold_c);
                if (low > most_l)
                    say(d, fixed(item_.cylinder.volume_l, 0) + " litres at " + fixed(item_.set_point_c, 0) +
                               " deg C mix to " + fixed(most_l, 0) + " litres at most");
                return;
            }
            case Quantity::heat_w: return;
        }
    }

    /// Power falls as the water warms, so a steady point with water warmer than the middle of the heating-up tells
    /// nothing; with colder water its power is more than the mean of the heating-up can be.
    void pair(const Declared& time, const Declared& power) {
        if (time.quantity != Quantity::heat_up_h || power.quantity != Quantity::heat_w || time.air != power.air) return;
        const Chamber chamber = chamber_of(time);
        const double middle_c = 0.5 * (chamber.cold_c + item_.set_point_c);
        const double needed_w = item_.cylinder.volume_l * cylinder::heat_capacity_j_l_k *
                                (item_.set_point_c - chamber.cold_c) / (time.value * (1.0 + time.tolerance) * 3600.0);
        const double given_w = power.value * (1.0 + power.tolerance);
        // The mean over time of a power that falls nearly in a straight line is not above that at the middle by more.
        constexpr double curvature = 1.1;
        if (power.water_c > middle_c || needed_w <= curvature * given_w) return;
        say(time, "it needs " + fixed(needed_w, 0) + " W on average for " + fixed(item_.cylinder.volume_l, 0) +
                      " litres, but the heating power is declared as " + fixed(power.value, 0) + " W");
    }

    std::vector<std::string> found;

   private:
    Chamber chamber_of(const Declared& d) const {
        Chamber chamber = base_;
        chamber.air = d.air;
        return chamber;
    }
    void say(const Declared& d, const std::string& why, const char* verdict = " cannot be met: ") {
        const int decimals = d.value < 20.0 ? 2 : 0;
        found.push_back(name_of(d) + ": " + fixed(d.value, decimals) + verdict + why + ".");
    }

    const Item& item_;
    const Chamber& base_;
    double loss_w_k_ = 0.0;
};

}  // namespace

std::vector<std::string> contradictions(const Item& item, const Chamber& chamber, const std::vector<Declared>& declared,
                                        bool loss_is_open) {
    Judge judge(item, chamber, loss_is_open);
    for (const Declared& d : declared)
        judge.one(d);
    for (const Declared& a : declared)
        for (const Declared& b : declared)
            judge.pair(a, b);
    return std::move(judge.found);
}

}  // namespace wg::rating
