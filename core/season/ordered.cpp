// What the simulation does by order: set-points that change, hygiene runs, the loop, shares of the electricity.
#include <algorithm>

#include "core/season/simulation.h"

namespace wg::season {

using heatpump::Off;

namespace {

// Above the target, so that losses while it is held do not undo the run.
constexpr double hygiene_pump_stop_k = 2.0;
constexpr double hygiene_pump_start_k = 1.0;
constexpr double hygiene_heater_start_k = 1.0;
constexpr double hygiene_heater_stop_k = 3.0;
constexpr double hot_enough_k = 0.05;
constexpr double above_heater = 0.02;  // of the height: surely above the immersion heater
// Fall of the water's temperature around the loop, for the flow in it (common practice: at most 5 K).
constexpr double loop_fall_k = 5.0;
constexpr double loop_return_height = 0.5;

}  // namespace

bool Simulation::pump_serves_hygiene() const noexcept {
    return hygiene_run_.active() && hygiene_.source == HygieneSource::pump_then_immersion && !hygiene_run_.pump_spent();
}

void Simulation::take_orders(Ledger& ledger) noexcept {
    set_point_c_ = orders_.set_point_c;
    start_below_c_ = orders_.start_below_c;
    if (orders_.hygiene_begins && !hygiene_run_.active()) {
        hygiene_run_.begin();
        ++ledger.hygiene_runs;
    }
    if (pump_serves_hygiene()) {
        set_point_c_ = std::max(set_point_c_, hygiene_.target_c + hygiene_pump_stop_k);
        start_below_c_ = std::max(start_below_c_, hygiene_.target_c + hygiene_pump_start_k);
    }
    // A lower set-point ends a call that waits; a pump that runs stops by itself after its least run.
    const bool waiting = mode_ == Mode::idle || mode_ == Mode::resting;
    if (waiting && store_.temperature_at(rules_.sensor_height) >= set_point_c_) calling_ = false;
}

void Simulation::ordered_immersion(double step_s, bool blocked, Ledger& ledger) noexcept {
    const bool pump_at_work = pump_serves_hygiene() && (mode_ == Mode::running || calling_);
    if (hygiene_run_.active() && !pump_at_work) {
        immersion(step_s, hygiene_.target_c + hygiene_heater_start_k, hygiene_.target_c + hygiene_heater_stop_k,
                  ledger);
        return;
    }
    double start_c = orders_.back_up_below_c;
    if (blocked && orders_.back_up_when_blocked) start_c += rules_.blocked_margin_k;
    immersion(step_s, start_c, start_c + rules_.immersion_band_k, ledger);
}

void Simulation::recirculate(double step_s, Ledger& ledger) noexcept {
    const double warmer_k = store_.top_c() - room_c_;
    if (!(loop_loss_w_k_ > 0.0) || !(orders_.recirculation_share > 0.0) || !(warmer_k > 0.0)) return;
    const double heat_j = loop_loss_w_k_ * warmer_k * orders_.recirculation_share * step_s;
    const double litres = heat_j / (cylinder::heat_capacity_j_l_k * loop_fall_k);
    ledger.recirculation += store_.circulate(litres, heat_j, loop_return_height);
}

void Simulation::follow_hygiene(double step_s, Ledger& ledger) noexcept {
    if (!hygiene_run_.active()) return;
    ledger.hygiene = ledger.compressor + ledger.immersion;
    if (off_ != Off::none) hygiene_run_.pump_stopped();
    const double hot_c = hygiene_.target_c - hot_enough_k;
    const bool whole = store_.temperature_at(HygieneRun::whole_from) >= hot_c;
    const bool upper = store_.temperature_at(std::min(1.0, rules_.immersion_height + above_heater)) >= hot_c;
    const bool lower_can_warm = pump_serves_hygiene() && (mode_ == Mode::running || calling_);
    switch (hygiene_run_.advance(step_s, whole, upper, hygiene_.hold_min * 60.0, lower_can_warm)) {
        case HygieneRun::End::upper_only: ++ledger.hygiene_upper_only; break;
        case HygieneRun::End::missed: ++ledger.hygiene_missed; break;
        case HygieneRun::End::none:
        case HygieneRun::End::whole: break;
    }
}

void Simulation::follow_orders(double step_s, Ledger& ledger) noexcept {
    follow_hygiene(step_s, ledger);
    const double sensor_c = store_.temperature_at(rules_.sensor_height);
    const bool held_back = sensor_c < orders_.usual_start_c && sensor_c >= start_below_c_;
    if (held_back && mode_ != Mode::running) ledger.waits_s += step_s;
    const double used_j = ledger.electricity();
    ledger.surplus = std::min(used_j, orders_.surplus_w * step_s);
    ledger.low_tariff = (used_j - ledger.surplus) * orders_.low_tariff_share;
}

}  // namespace wg::season
