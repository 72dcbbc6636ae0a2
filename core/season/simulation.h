#pragma once
// One step of the whole set: draw, control, pump, frost, heaters, losses. Keeps its own state; ledgers are returned.

#include "core/cylinder/store.h"
#include "core/heatpump/operating_point.h"
#include "core/season/hygiene_run.h"
#include "core/season/orders.h"
#include "core/season/season.h"

namespace wg::season {

/// Control and frost rules that no catalogue item states; docs/handbook/season.md explains them.
struct Rules {
    double sensor_height = 0.4;     ///< thermostat, share of the cylinder's height; the cylinder's data decide
    double immersion_height = 0.6;  ///< heats what is above; likewise
    double immersion_sensor_height = 0.85;
    double immersion_sensor_above = 0.05;  ///< the heater, at least
    double retry_s = 1800.0;               ///< after a stop at the envelope's edge
    double blocked_margin_k = 3.0;         ///< pump cannot run: heat below wanted + this
    double immersion_band_k = 5.0;         ///< stops this much higher
    double longest_rest_s = 4.0 * 3600.0;
    double defrost_w = 2500.0;         ///< heat brought to the plate in reverse
    double defrost_surplus = 1.2;      ///< heat spent for each unit of ice melted; the surplus goes to the air
    double defrost_from_water = 0.85;  ///< rest: electricity
    double defrost_least_water_c = 15.0;
};

/// Energies of a step, J, each from its own equation: nothing here is a remainder.
struct Ledger {
    double light = 0.0, air = 0.0, long_wave = 0.0, latent = 0.0, line = 0.0;
    double compressor = 0.0, immersion = 0.0, standby = 0.0, defrost = 0.0, shell_loss = 0.0, condenser = 0.0;
    double drawn = 0.0, standing_loss = 0.0, store_change = 0.0, wanted = 0.0, shortfall = 0.0;
    double running_s = 0.0, frost_s = 0.0, rest_s = 0.0, limited_s = 0.0, too_cold_s = 0.0, other_off_s = 0.0;
    double beyond_data_s = 0.0;  ///< part of other_off_s
    double frost_formed_kg = 0.0, frost_melted_kg = 0.0;
    double recirculation = 0.0;                             ///< heat lost by the loop
    double hygiene = 0.0, surplus = 0.0, low_tariff = 0.0;  ///< electricity, parts of what is told above
    double short_l = 0.0, waits_s = 0.0, coldest_draw_c = 1e9;
    int hygiene_runs = 0, hygiene_upper_only = 0, hygiene_missed = 0;
    int starts = 0, short_draws = 0;

    [[nodiscard]] double electricity() const noexcept { return compressor + immersion + standby + defrost; }
    void add(const Ledger& other) noexcept;
    /// What does not add up, and what passed: refrigerant side and water side.
    [[nodiscard]] double circuit_miss() const noexcept;
    [[nodiscard]] double circuit_throughput() const noexcept;
    [[nodiscard]] double water_miss() const noexcept;
    [[nodiscard]] double water_throughput() const noexcept;
};

class Simulation {
   public:
    /// `pump` must outlive this. Starts idle, the cylinder evenly at `start_c`.
    Simulation(const Input& input, const heatpump::HeatPump& pump, const Options& options, double start_c);

    void set_weather(const heatpump::Surroundings& surroundings, std::size_t group = 0) noexcept {
        field_.set_weather(group, surroundings);
    }
    void set_light(double front_w_m2, double rear_w_m2, std::size_t group = 0) noexcept {
        field_.set_light(group, front_w_m2, rear_w_m2);
    }

    /// Orders for the steps to come; without any the set keeps the demand's set-point.
    void set_orders(const Orders& orders) noexcept {
        orders_ = orders;
        ordered_ = true;
    }

    /// Draws first, then everything else over `step_s`. Where nobody draws for `quiet_s` and nothing but cooling
    /// happens until then, that whole time passes at once: `passed_s` tells.
    Ledger step(double step_s, const double* draws_j, int draw_count, double cold_c, double quiet_s = 0.0) noexcept;
    [[nodiscard]] double passed_s() const noexcept { return passed_s_; }  ///< in the last step

    void demand_heat() noexcept { calling_ = true; }
    [[nodiscard]] bool calling() const noexcept { return calling_; }
    [[nodiscard]] heatpump::Off off_reason() const noexcept { return off_; }  ///< of the last step
    [[nodiscard]] const cylinder::Store& store() const noexcept { return store_; }
    [[nodiscard]] heatpump::Frost frost() const noexcept { return field_.worst_frost(); }  ///< thickest of each face
    [[nodiscard]] const heatpump::PlateField& field() const noexcept { return field_; }
    [[nodiscard]] bool running() const noexcept { return mode_ == Mode::running; }
    /// Plate temperature now, mean over all plates: of the last point, or standing still.
    [[nodiscard]] double plate_c() const noexcept;
    [[nodiscard]] double set_point_c() const noexcept { return set_point_c_; }
    [[nodiscard]] const heatpump::Point& last_point() const noexcept { return point_; }

   private:
    enum class Mode { idle, running, resting, defrosting };

    void draw(const double* draws_j, int count, double cold_c, Ledger& ledger) noexcept;
    [[nodiscard]] bool cools_through(double quiet_s, Ledger& ledger) noexcept;
    void run_pump(double step_s, Ledger& ledger) noexcept;
    void solve(double step_s) noexcept;
    void gather_zone() noexcept;
    void give_heat(double duration_s) noexcept;
    void book(double run_s, Ledger& ledger) noexcept;
    void melt_at_rest(double step_s, Ledger& ledger) noexcept;
    void defrost(double step_s, Ledger& ledger) noexcept;
    void immersion(double step_s, double start_c, double stop_c, Ledger& ledger) noexcept;
    // By order: ordered.cpp.
    void take_orders(Ledger& ledger) noexcept;
    void ordered_immersion(double step_s, bool blocked, Ledger& ledger) noexcept;
    void recirculate(double step_s, Ledger& ledger) noexcept;
    void follow_orders(double step_s, Ledger& ledger) noexcept;
    void follow_hygiene(double step_s, Ledger& ledger) noexcept;
    [[nodiscard]] bool pump_serves_hygiene() const noexcept;

    const heatpump::HeatPump* pump_;
    heatpump::PlateField field_;
    cylinder::Store store_, trial_;
    double energy_j_;
    heatpump::CondenserZone zone_;
    std::array<double, cylinder::Store::capacity> share_{}, heat_j_{};  ///< of every layer
    std::array<double, cylinder::Store::capacity> warmer_k_{};          ///< refrigerant there, by the condenser's glide
    double glide_k_ = 0.0;
    std::size_t first_in_zone_ = 0;
    heatpump::Line line_;
    heatpump::Point point_;
    heatpump::Guess guess_, before_;  ///< of the last point and the one before
    Rules rules_;
    double zone_top_, set_point_c_, start_below_c_, wanted_c_, room_c_, immersion_w_, frost_limit_kg_m2_;
    bool mid_step_, reverse_;
    Mode mode_ = Mode::idle;
    bool calling_ = false;
    bool heating_ = false;     ///< immersion heater
    bool have_power_ = false;  ///< point_ is that of the step before: predicts this one
    heatpump::Off off_ = heatpump::Off::none;
    double run_s_ = 0.0, idle_s_ = 1e9, rest_s_ = 0.0, passed_s_ = 0.0;
    Orders orders_;
    bool ordered_ = false;
    HygieneRun hygiene_run_;
    Hygiene hygiene_;
    double loop_loss_w_k_ = 0.0;
};

}  // namespace wg::season
