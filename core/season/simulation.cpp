#include "core/season/simulation.h"

#include <algorithm>
#include <cmath>

namespace wg::season {

using heatpump::fusion_j_kg;
using heatpump::Off;

namespace {

constexpr std::size_t parts_along_glide = 4;
constexpr double noticed_shortfall = 0.02;  // share of a draw below which nobody notices
constexpr double sensor_tolerance_k = 0.01;
constexpr double loop_test_k = 35.0;  // the loop's loss is stated at this difference to the room

double thickest_frost_kg_m2(const heatpump::PlateField& field) noexcept {
    const heatpump::Frost worst = field.worst_frost();
    return std::max(worst.front_kg_m2, worst.rear_kg_m2);
}

heatpump::PlateField field_of(const Input& input) {
    std::vector<heatpump::Mounting> groups;
    groups.reserve(input.groups.size());
    for (const PlateGroup& group : input.groups)
        groups.push_back({group.count, group.tilt_deg, group.sky_view, group.rear_free});
    return {input.collector, groups, input.joined};
}

/// Time within a step at which a rising temperature passes `wanted_c`: false position, halving the weight of an end
/// that stays (mixing makes the rise uneven). `after(t)` gives the temperature after t seconds.
template <class After>
double passing_time(double wanted_c, double start_c, double step_s, double end_c, After after) {
    if (start_c >= wanted_c) return 0.0;
    double low_s = 0.0;
    double high_s = step_s;
    double low_miss = start_c - wanted_c;
    double high_miss = end_c - wanted_c;
    int side = 0;
    for (int i = 0; i < 30 && high_s - low_s > 1e-3; ++i) {
        const double t = low_s - low_miss * (high_s - low_s) / (high_miss - low_miss);
        const double miss = after(t) - wanted_c;
        if (std::abs(miss) < sensor_tolerance_k) return t;
        if (miss > 0.0) {
            high_s = t;
            high_miss = miss;
            if (side == 1) low_miss *= 0.5;
            side = 1;
        } else {
            low_s = t;
            low_miss = miss;
            if (side == -1) high_miss *= 0.5;
            side = -1;
        }
    }
    return high_s;
}

}  // namespace

void Ledger::add(const Ledger& o) noexcept {
    light += o.light;
    air += o.air;
    long_wave += o.long_wave;
    latent += o.latent;
    line += o.line;
    compressor += o.compressor;
    immersion += o.immersion;
    standby += o.standby;
    defrost += o.defrost;
    shell_loss += o.shell_loss;
    condenser += o.condenser;
    drawn += o.drawn;
    standing_loss += o.standing_loss;
    store_change += o.store_change;
    wanted += o.wanted;
    shortfall += o.shortfall;
    running_s += o.running_s;
    frost_s += o.frost_s;
    rest_s += o.rest_s;
    limited_s += o.limited_s;
    too_cold_s += o.too_cold_s;
    other_off_s += o.other_off_s;
    beyond_data_s += o.beyond_data_s;
    frost_formed_kg += o.frost_formed_kg;
    frost_melted_kg += o.frost_melted_kg;
    recirculation += o.recirculation;
    hygiene += o.hygiene;
    surplus += o.surplus;
    low_tariff += o.low_tariff;
    short_l += o.short_l;
    waits_s += o.waits_s;
    coldest_draw_c = std::min(coldest_draw_c, o.coldest_draw_c);
    hygiene_runs += o.hygiene_runs;
    hygiene_upper_only += o.hygiene_upper_only;
    hygiene_missed += o.hygiene_missed;
    starts += o.starts;
    short_draws += o.short_draws;
}

double Ledger::circuit_miss() const noexcept {
    return std::abs(light + air + long_wave + latent + line + compressor + defrost - shell_loss - condenser);
}
double Ledger::circuit_throughput() const noexcept {
    return std::abs(condenser) + compressor + defrost;
}
double Ledger::water_miss() const noexcept {
    return std::abs(condenser + immersion - drawn - standing_loss - recirculation - store_change);
}
double Ledger::water_throughput() const noexcept {
    return std::abs(condenser) + immersion + drawn + std::abs(standing_loss) + recirculation + std::abs(store_change);
}

Simulation::Simulation(const Input& input, const heatpump::HeatPump& pump, const Options& options, double start_c)
    : pump_(&pump),
      field_(field_of(input)),
      store_(cylinder::geometry_of(input.cylinder, static_cast<std::size_t>(options.nodes)), start_c),
      trial_(store_),
      energy_j_(store_.energy_j()),
      line_{input.line_ua_w_k, input.suction_drop_k},
      zone_top_(input.block.condenser_zone),
      set_point_c_(input.demand.set_point_c),
      start_below_c_(input.demand.set_point_c - input.demand.hysteresis_k),
      wanted_c_(input.demand.wanted_c),
      room_c_(input.room_c),
      immersion_w_(input.cylinder.immersion_w),
      frost_limit_kg_m2_(input.collector.frost_limit_kg_m2),
      mid_step_(options.mid_step),
      reverse_(input.block.defrost == DefrostKind::reverse) {
    zone_.ua_w_k = input.block.condenser_w_k;
    glide_k_ = input.block.condenser_glide_k;
    rules_.sensor_height = input.cylinder.sensor_height;
    rules_.immersion_height = input.cylinder.immersion_height;
    rules_.immersion_sensor_height =
        std::max(rules_.immersion_sensor_height, rules_.immersion_height + rules_.immersion_sensor_above);
    hygiene_ = input.demand.hygiene;
    if (input.demand.recirculation.present) loop_loss_w_k_ = input.demand.recirculation.loss_w / loop_test_k;
}

void Simulation::draw(const double* draws_j, int count, double cold_c, Ledger& ledger) noexcept {
    for (int i = 0; i < count; ++i) {
        const auto drawn = store_.draw(draws_j[i], wanted_c_, cold_c);
        ledger.wanted += draws_j[i];
        ledger.drawn += drawn.useful_j;
        ledger.shortfall += drawn.shortfall_j;
        ledger.short_l += drawn.short_l;
        ledger.coldest_draw_c = std::min(ledger.coldest_draw_c, drawn.coldest_c);
        if (drawn.shortfall_j > noticed_shortfall * draws_j[i]) ++ledger.short_draws;
    }
}

Ledger Simulation::step(double step_s, const double* draws_j, int draw_count, double cold_c, double quiet_s) noexcept {
    Ledger ledger;
    draw(draws_j, draw_count, cold_c, ledger);

    if (ordered_) take_orders(ledger);
    const double sensor_c = store_.temperature_at(rules_.sensor_height);
    if (sensor_c < start_below_c_) calling_ = true;
    if (mode_ == Mode::running && thickest_frost_kg_m2(field_) >= frost_limit_kg_m2_) {
        mode_ = Mode::resting;
        rest_s_ = 0.0;
        have_power_ = false;
    }
    off_ = Off::none;
    if (quiet_s > step_s && cools_through(quiet_s, ledger)) return ledger;
    passed_s_ = step_s;
    const double& min_rest_s = pump_->block().min_rest_s;
    if (mode_ == Mode::running || (mode_ == Mode::idle && calling_ && idle_s_ >= min_rest_s)) {
        run_pump(step_s, ledger);
    } else {
        idle_s_ += step_s;
        if (mode_ == Mode::defrosting)
            defrost(step_s, ledger);
        else
            melt_at_rest(step_s, ledger);
        if (mode_ == Mode::resting || mode_ == Mode::defrosting) {
            ledger.rest_s += step_s;
            rest_s_ += step_s;
            if (!field_.frost_lies())
                mode_ = Mode::idle;
            else if (mode_ == Mode::resting && reverse_ && rest_s_ >= rules_.longest_rest_s)
                mode_ = Mode::defrosting;
        }
    }
    const bool blocked = calling_ && (off_ != Off::none || mode_ == Mode::resting || mode_ == Mode::defrosting);
    if (immersion_w_ > 0.0) {
        const double start_c = blocked ? wanted_c_ + rules_.blocked_margin_k : wanted_c_;
        if (ordered_)
            ordered_immersion(step_s, blocked, ledger);
        else
            immersion(step_s, start_c, start_c + rules_.immersion_band_k, ledger);
    }
    if (ordered_) recirculate(step_s, ledger);
    ledger.standby = pump_->block().standby_w * step_s;
    ledger.standing_loss = store_.rest(room_c_, step_s);
    const double energy_now_j = store_.energy_j();
    ledger.store_change = energy_now_j - energy_j_;
    energy_j_ = energy_now_j;
    if (ordered_) follow_orders(step_s, ledger);
    return ledger;
}

/// Pump and heater off, nothing called for, no ice: steps then do nothing but cool the water. They pass as one when at
/// its end neither sensor calls; water and room lie apart one way, so that none has called in between.
bool Simulation::cools_through(double quiet_s, Ledger& ledger) noexcept {
    if (mode_ != Mode::idle || calling_ || heating_ || ordered_ || field_.frost_lies()) return false;
    const auto calls = [this](const cylinder::Store& store) {
        return store.temperature_at(rules_.sensor_height) < start_below_c_ ||
               (immersion_w_ > 0.0 && store.temperature_at(rules_.immersion_sensor_height) < wanted_c_);
    };
    if (calls(store_)) return false;
    trial_.copy_from(store_);
    const double lost_j = trial_.rest(room_c_, quiet_s);
    if (calls(trial_)) return false;
    store_.copy_from(trial_);
    idle_s_ += quiet_s;
    passed_s_ = quiet_s;
    ledger.standby = pump_->block().standby_w * quiet_s;
    ledger.standing_loss = lost_j;
    const double energy_now_j = store_.energy_j();
    ledger.store_change = energy_now_j - energy_j_;
    energy_j_ = energy_now_j;
    return true;
}

/// Layers that the condenser touches; the zone is the lower part, so they are the last ones.
void Simulation::gather_zone() noexcept {
    // Water that has mixed is one layer: it must be able to warm more at the hot end.
    if (glide_k_ > 0.0) store_.divide(zone_top_, parts_along_glide);
    store_.band_shares(0.0, zone_top_, share_);
    first_in_zone_ = 0;
    while (share_[first_in_zone_] <= 0.0)
        ++first_in_zone_;
    zone_.count = store_.count() - first_in_zone_;
    double above = 0.0;
    for (std::size_t i = 0; i < zone_.count; ++i) {
        const std::size_t layer = first_in_zone_ + i;
        zone_.share[i] = share_[layer];
        warmer_k_[layer] = heatpump::glide_offset_k(glide_k_, above, share_[layer]);
        zone_.water_c[i] = store_.layer_c(layer) - warmer_k_[layer];
        above += share_[layer];
    }
}

/// Distributes the condenser's heat of the last point over the zone, as the temperatures stand.
void Simulation::give_heat(double duration_s) noexcept {
    const std::size_t count = store_.count();
    double sum = 0.0;
    for (std::size_t i = 0; i < first_in_zone_; ++i)
        heat_j_[i] = 0.0;
    for (std::size_t i = first_in_zone_; i < count; ++i) {
        heat_j_[i] = share_[i] * std::max(0.0, point_.condensing_c + warmer_k_[i] - store_.layer_c(i));
        sum += heat_j_[i];
    }
    const double heat_j = point_.condenser_w * duration_s;
    if (sum > 0.0) {
        const double by = heat_j / sum;
        for (std::size_t i = first_in_zone_; i < count; ++i)
            heat_j_[i] *= by;
    } else {
        for (std::size_t i = first_in_zone_; i < count; ++i)
            heat_j_[i] = heat_j * share_[i];
    }
}

/// Water at mid-step: the cylinder as it stands plus half a step of the heat given in the step before. A first step
/// has none before it and is solved twice.
void Simulation::solve(double step_s) noexcept {
    gather_zone();
    const auto advance = [this, step_s] {
        give_heat(0.5 * step_s);
        for (std::size_t i = 0; i < zone_.count; ++i) {
            const std::size_t layer = first_in_zone_ + i;
            zone_.water_c[i] = store_.layer_c(layer) +
                               heat_j_[layer] / (cylinder::heat_capacity_j_l_k * store_.layer_l(layer)) -
                               warmer_k_[layer];
        }
    };
    const auto search = [this](const heatpump::Guess& guess) {
        point_ = pump_->point(field_, zone_, line_, guess);
        if (!point_.running()) return;
        before_ = have_power_ ? guess_ : heatpump::Guess{point_.suction_c, point_.condensing_c};
        guess_ = {point_.suction_c, point_.condensing_c};
    };
    if (mid_step_ && !have_power_) {
        search(guess_);
        if (!point_.running()) return;
    }
    if (mid_step_) advance();
    // Temperatures drift evenly while the water warms: the search starts where they would be next.
    search(have_power_ ? heatpump::Guess{2.0 * guess_.suction_c - before_.suction_c,
                                         2.0 * guess_.condensing_c - before_.condensing_c}
                       : guess_);
}

void Simulation::run_pump(double step_s, Ledger& ledger) noexcept {
    field_.set_frost(step_s);
    solve(step_s);
    if (!point_.running()) {
        off_ = point_.off;
        // Hot enough for now: the call ends, and the pump waits for the water to cool. Else it tries again later.
        if (store_.temperature_at(rules_.sensor_height) >= start_below_c_) calling_ = false;
        idle_s_ = pump_->block().min_rest_s - rules_.retry_s + step_s;
        mode_ = Mode::idle;
        have_power_ = false;
        melt_at_rest(step_s, ledger);
        (off_ == Off::too_cold ? ledger.too_cold_s : ledger.other_off_s) += step_s;
        if (off_ == Off::beyond_data) ledger.beyond_data_s += step_s;
        return;
    }
    if (mode_ == Mode::idle) {
        mode_ = Mode::running;
        run_s_ = 0.0;
        ++ledger.starts;
    }
    have_power_ = true;

    // Stop inside the step at the moment when the sensor reaches the set-point, but not before the least run.
    double run_s = step_s;
    bool stops = false;
    const double least_s = std::clamp(pump_->block().min_run_s - run_s_, 0.0, step_s);
    const auto sensor_after = [this](double duration_s) {
        trial_.copy_from(store_);
        give_heat(duration_s);
        trial_.add_heat(heat_j_);
        return trial_.temperature_at(rules_.sensor_height);
    };
    const double reached_c = sensor_after(step_s);
    if (reached_c >= set_point_c_) {
        stops = least_s < step_s || run_s_ + step_s >= pump_->block().min_run_s;
        run_s = std::max(
            passing_time(set_point_c_, store_.temperature_at(rules_.sensor_height), step_s, reached_c, sensor_after),
            least_s);
        sensor_after(run_s);
    }
    store_.copy_from(trial_);
    book(run_s, ledger);
    run_s_ += run_s;
    if (stops) {
        calling_ = false;
        mode_ = Mode::idle;
        idle_s_ = step_s - run_s;
        have_power_ = false;
    }
}

void Simulation::book(double run_s, Ledger& ledger) noexcept {
    const auto& plate = point_.plate;
    ledger.light += plate.light_w * run_s;
    ledger.air += plate.air_w * run_s;
    ledger.long_wave += plate.long_wave_w * run_s;
    ledger.latent += (plate.latent_w - plate.melt_w) * run_s;
    ledger.line += point_.line_w * run_s;
    ledger.compressor += point_.work_w * run_s;
    ledger.shell_loss += point_.shell_loss_w * run_s;
    ledger.condenser += point_.condenser_w * run_s;
    ledger.running_s += run_s;
    if (point_.pressure_limited) ledger.limited_s += run_s;
    const double formed_kg = (plate.frost_front_kg_s + plate.frost_rear_kg_s) * run_s;
    if (formed_kg > 0.0) ledger.frost_s += run_s;
    ledger.frost_formed_kg += formed_kg;
    ledger.frost_melted_kg += plate.melt_w * run_s / fusion_j_kg;
    field_.grow_frost(run_s);
}

/// Melting with the pump off is no heat of the circuit and is in no ledger but that of the frost.
void Simulation::melt_at_rest(double step_s, Ledger& ledger) noexcept {
    ledger.frost_melted_kg += field_.melt_at_rest(step_s);
}

void Simulation::defrost(double step_s, Ledger& ledger) noexcept {
    if (store_.temperature_at(0.5 * zone_top_) < rules_.defrost_least_water_c) {
        melt_at_rest(step_s, ledger);
        return;
    }
    const double lying_kg = field_.lying_kg();
    const double heat_j = std::min(rules_.defrost_w * step_s, rules_.defrost_surplus * lying_kg * fusion_j_kg);
    const double melting_j = heat_j / rules_.defrost_surplus;
    ledger.frost_melted_kg += field_.melt(melting_j / fusion_j_kg);
    store_.band_shares(0.0, zone_top_, share_);
    for (std::size_t i = 0; i < store_.count(); ++i)
        heat_j_[i] = -rules_.defrost_from_water * heat_j * share_[i];
    store_.add_heat(heat_j_);
    ledger.condenser -= rules_.defrost_from_water * heat_j;
    ledger.defrost += (1.0 - rules_.defrost_from_water) * heat_j;
    ledger.latent -= melting_j;
    ledger.shell_loss += heat_j - melting_j;
}

void Simulation::immersion(double step_s, double start_c, double stop_c, Ledger& ledger) noexcept {
    const double sensor_c = store_.temperature_at(rules_.immersion_sensor_height);
    if (sensor_c < start_c) heating_ = true;
    if (sensor_c >= stop_c) heating_ = false;
    if (!heating_) return;
    double heat_j = immersion_w_ * step_s;
    trial_.copy_from(store_);
    trial_.add_heat_above(rules_.immersion_height, heat_j);
    const double reached_c = trial_.temperature_at(rules_.immersion_sensor_height);
    if (reached_c > stop_c && reached_c > sensor_c) {
        heat_j *= (stop_c - sensor_c) / (reached_c - sensor_c);
        trial_.copy_from(store_);
        trial_.add_heat_above(rules_.immersion_height, heat_j);
        heating_ = false;
    }
    store_.copy_from(trial_);
    ledger.immersion += heat_j;
}

double Simulation::plate_c() const noexcept {
    if (mode_ == Mode::running) return point_.plate_c;
    return field_.still_c();
}

}  // namespace wg::season
