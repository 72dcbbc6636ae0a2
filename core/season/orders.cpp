#include "core/season/orders.h"

#include <algorithm>

namespace wg::season {
namespace {

constexpr double never_c = -100.0;
// Frost-safe in holidays: water at 8 deg C calls the pump, at 5 deg C the immersion heater.
constexpr double frost_safe_start_c = 8.0;
constexpr double frost_safe_stop_c = 12.0;
constexpr double frost_safe_back_up_c = 5.0;
constexpr double return_s = 12.0 * 3600.0;  // of the last day of holidays: the set is on again

bool nothing_asked(const Input& input) {
    const Demand& d = input.demand;
    const Control& c = d.control;
    const bool by_clock = !c.run_windows.empty() || (c.low_tariff_only && !d.tariff.low_windows.empty()) ||
                          !c.set_back_windows.empty() || !d.tariff.low_windows.empty();
    return !by_clock && input.surplus_w.empty() && d.holidays.empty() && !d.recirculation.present &&
           d.hygiene.rule == HygieneRule::none && c.back_up == BackUpRule::when_blocked_or_cold;
}

}  // namespace

OrderBook::OrderBook(const Input& input)
    : input_(&input), calendar_(input.demand.holidays, input.first_weekday), idle_(nothing_asked(input)) {}

bool OrderBook::away(int day, double begin_s) const noexcept {
    if (input_->demand.control.holiday_rule == HolidayRule::as_usual || !calendar_.holiday(day)) return false;
    return !(calendar_.last_of_holiday(day) && begin_s >= return_s);
}

void OrderBook::order_heat(int day, double begin_s, Orders& orders) const noexcept {
    const Demand& demand = input_->demand;
    const Control& control = demand.control;
    if (away(day, begin_s)) {
        const bool safe = control.holiday_rule == HolidayRule::frost_safe;
        orders.set_point_c = safe ? frost_safe_stop_c : never_c;
        orders.start_below_c = safe ? frost_safe_start_c : never_c;
        orders.back_up_below_c = safe && control.back_up != BackUpRule::never ? frost_safe_back_up_c : never_c;
        orders.back_up_when_blocked = false;
        return;
    }
    if (!input_->surplus_w.empty() && orders.surplus_w >= control.surplus.threshold_w &&
        control.surplus.raise_k > 0.0) {
        const double top_c = std::max(demand.set_point_c, input_->cylinder.max_temperature_c);
        orders.set_point_c = std::min(demand.set_point_c + control.surplus.raise_k, top_c);
        orders.start_below_c = orders.set_point_c - demand.hysteresis_k;
        return;
    }
    if (calendar_.in(control.set_back_windows, day, begin_s)) {
        orders.set_point_c -= control.set_back_k;
        orders.start_below_c -= control.set_back_k;
    }
    const bool by_tariff = control.low_tariff_only && !demand.tariff.low_windows.empty();
    if (control.run_windows.empty() && !by_tariff) return;
    const bool open = calendar_.in(control.run_windows, day, begin_s) ||
                      (by_tariff && calendar_.in(demand.tariff.low_windows, day, begin_s));
    if (open) return;
    orders.set_point_c = std::min(orders.set_point_c, control.always_below_c + demand.hysteresis_k);
    orders.start_below_c = std::min(orders.start_below_c, control.always_below_c);
}

bool OrderBook::hygiene_begins(int day, double begin_s, double length_s) const noexcept {
    const auto within = [&](double at_s) { return begin_s <= at_s && at_s < begin_s + length_s; };
    const Demand& demand = input_->demand;
    if (demand.control.hygiene_before_return && calendar_.last_of_holiday(day) && within(return_s)) return true;
    const Hygiene& h = demand.hygiene;
    if (h.rule == HygieneRule::none || away(day, begin_s)) return false;
    if (h.rule == HygieneRule::weekly && calendar_.weekday(day) != h.weekday) return false;
    return within(h.at_h * 3600.0);
}

Orders OrderBook::at(int day, double begin_s, double length_s) const noexcept {
    const Demand& demand = input_->demand;
    Orders orders;
    orders.set_point_c = demand.set_point_c;
    orders.start_below_c = demand.set_point_c - demand.hysteresis_k;
    orders.usual_start_c = orders.start_below_c;
    const BackUpRule back_up = demand.control.back_up;
    orders.back_up_below_c = back_up == BackUpRule::never ? never_c : demand.wanted_c;
    orders.back_up_when_blocked = back_up == BackUpRule::when_blocked_or_cold;
    const auto hour = static_cast<std::size_t>(24 * day + static_cast<int>(begin_s / 3600.0));
    if (hour < input_->surplus_w.size()) orders.surplus_w = input_->surplus_w[hour];
    orders.low_tariff_share = calendar_.share_in(demand.tariff.low_windows, day, begin_s, length_s);
    if (demand.recirculation.present && !away(day, begin_s)) {
        const auto& windows = demand.recirculation.windows;
        orders.recirculation_share = windows.empty() ? 1.0 : calendar_.share_in(windows, day, begin_s, length_s);
    }
    order_heat(day, begin_s, orders);
    orders.hygiene_begins = hygiene_begins(day, begin_s, length_s);
    return orders;
}

}  // namespace wg::season
