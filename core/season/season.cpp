#include "core/season/season.h"

#include <algorithm>
#include <cmath>

#include "core/quantity/constants.h"
#include "core/quantity/time.h"
#include "core/season/orders.h"
#include "core/season/schedule.h"
#include "core/season/simulation.h"

namespace wg::season {

namespace {

constexpr int hours_in_year = 8760;
constexpr int most_parts = 60;

void into(MonthSums& m, const Ledger& l) {
    const auto kwh = [](double joule) { return joule / joule_per_kwh; };
    m.light_kwh = kwh(l.light);
    m.air_kwh = kwh(l.air);
    m.long_wave_kwh = kwh(l.long_wave);
    m.latent_kwh = kwh(l.latent);
    m.line_kwh = kwh(l.line);
    m.compressor_kwh = kwh(l.compressor);
    m.immersion_kwh = kwh(l.immersion);
    m.standby_kwh = kwh(l.standby);
    m.defrost_kwh = kwh(l.defrost);
    m.shell_loss_kwh = kwh(l.shell_loss);
    m.condenser_kwh = kwh(l.condenser);
    m.drawn_kwh = kwh(l.drawn);
    m.standing_loss_kwh = kwh(l.standing_loss);
    m.store_change_kwh = kwh(l.store_change);
    m.wanted_kwh = kwh(l.wanted);
    m.shortfall_kwh = kwh(l.shortfall);
    m.running_h = l.running_s / 3600.0;
    m.frost_h = l.frost_s / 3600.0;
    m.rest_h = l.rest_s / 3600.0;
    m.recirculation_kwh = kwh(l.recirculation);
    m.hygiene_kwh = kwh(l.hygiene);
    m.surplus_kwh = kwh(l.surplus);
    m.low_tariff_kwh = kwh(l.low_tariff);
    m.short_litres = l.short_l;
    m.pump_waits_h = l.waits_s / 3600.0;
    m.starts = l.starts;
}

std::string draws_text(const Demand& demand) {
    if (demand.draw_source == DrawSource::cycle) return "Draw-off by the load profiles of EU 812/2013.";
    return "Draw-off of a household by probabilities after Jordan and Vajen (2001, from memory), seed " +
           std::to_string(demand.household.seed_number) + ", the year beginning on its stated weekday.";
}

std::string hygiene_text(const Hygiene& hygiene) {
    if (hygiene.rule == HygieneRule::none)
        return "no hygiene programme (heating above the pump's envelope against legionella) is included, its "
               "electricity comes on top where rules ask for it.";
    return "the hygiene programme counts as held when all water above a tenth of the height keeps the target for the "
           "asked time.";
}

std::string plate_text(const Input& input) {
    if (!input.collector.iso9806)
        return "Bare plate, both faces: forced convection after Watmuff, Charters and Proctor (1977) with natural "
               "convection after Walton (1983), net long-wave exchange, condensation and frost by Lewis' analogy.";
    long windy = 0;
    for (std::size_t hour = 0; hour < input.air_c.size(); ++hour)
        windy += std::any_of(input.groups.begin(), input.groups.end(), [hour](const PlateGroup& group) {
            return group.wind_plate_m_s[hour] > Iso9806::strongest_wind_m_s;
        });
    return "Plate by the coefficients of a test to ISO 9806:2017, which is dry: condensation and frost, by Lewis' "
           "analogy with convection after Watmuff, Charters and Proctor (1977) and Walton (1983), are added. Light on "
           "the rear is not counted. Wind above 10 m/s, taken as 10 m/s: " +
           std::to_string(windy) + " h.";
}

std::string models_text(const Input& input, const Options& options) {
    return plate_text(input) + " Circuit of " + input.refrigerant->name() + " from " + input.refrigerant->source() +
           ". Cylinder as a stack of at most " + std::to_string(options.nodes) + " layers. " +
           draws_text(input.demand) + " Steps of " + std::to_string(static_cast<int>(options.step_s)) +
           " s. Simplified: ground and roof behind the plate at air temperature; draws are instant and all at the "
           "wanted tap temperature; frost settles evenly on a face; " +
           hygiene_text(input.demand.hygiene);
}

class Recorder {
   public:
    explicit Recorder(HourSeries& out) : out_(out) {
        for (auto* series : {&out.condenser_w, &out.electric_w, &out.light_w_m2, &out.plate_c, &out.top_c,
                             &out.bottom_c, &out.drawn_w, &out.air_c, &out.immersion_w, &out.short_litres,
                             &out.wanted_w, &out.frost_kg_m2, &out.set_point_c, &out.waits_h})
            series->reserve(hours_in_year);
        out.node_c.reserve(hours_in_year);
    }
    void hour(const Ledger& sum, const Simulation& simulation, double light_w_m2, double air_c) {
        const auto mean_w = [](double joule) { return static_cast<float>(joule / 3600.0); };
        out_.condenser_w.push_back(mean_w(sum.condenser));
        out_.electric_w.push_back(mean_w(sum.compressor + sum.immersion + sum.standby + sum.defrost));
        out_.light_w_m2.push_back(static_cast<float>(light_w_m2));
        out_.plate_c.push_back(static_cast<float>(simulation.plate_c()));
        out_.top_c.push_back(static_cast<float>(simulation.store().top_c()));
        out_.bottom_c.push_back(static_cast<float>(simulation.store().bottom_c()));
        out_.drawn_w.push_back(mean_w(sum.drawn));
        out_.air_c.push_back(static_cast<float>(air_c));
        out_.immersion_w.push_back(mean_w(sum.immersion));
        out_.short_litres.push_back(static_cast<float>(sum.short_l));
        out_.wanted_w.push_back(mean_w(sum.wanted));
        const heatpump::Frost& frost = simulation.frost();
        out_.frost_kg_m2.push_back(static_cast<float>(std::max(frost.front_kg_m2, frost.rear_kg_m2)));
        out_.set_point_c.push_back(static_cast<float>(simulation.set_point_c()));
        out_.waits_h.push_back(static_cast<float>(sum.waits_s / 3600.0));
        std::array<double, 10> slices{};
        simulation.store().resample(slices);
        std::array<float, 10> nodes{};
        for (std::size_t i = 0; i < nodes.size(); ++i)
            nodes[i] = static_cast<float>(slices[i]);
        out_.node_c.push_back(nodes);
    }

   private:
    HourSeries& out_;
};

/// Sums over the running hours by bands of the evaporating temperature.
class Bands {
   public:
    void add(const heatpump::Point& point, double running_s, double air_c) noexcept {
        const double at = std::clamp((point.evaporating_c - first_c) / band_k, 0.0, bands - 1.0);
        OperatingBand& band = sums_[static_cast<std::size_t>(at)];
        const double h = running_s / 3600.0;
        band.hours += h;
        band.evaporating_c += h * point.evaporating_c;
        band.condensing_c += h * point.condensing_c;
        band.evaporator_w += h * point.evaporator_w;
        band.air_c += h * air_c;
    }
    [[nodiscard]] std::vector<OperatingBand> means() const {
        std::vector<OperatingBand> out;
        for (OperatingBand band : sums_) {
            if (!(band.hours > 0.0)) continue;
            for (double* sum : {&band.evaporating_c, &band.condensing_c, &band.evaporator_w, &band.air_c})
                *sum /= band.hours;
            out.push_back(band);
        }
        return out;
    }

   private:
    static constexpr double first_c = -40.0;
    static constexpr std::size_t bands = 16;  // to 40 deg C
    std::array<OperatingBand, bands> sums_{};
};

double share_of(double miss, double throughput) noexcept {
    constexpr double least_j = 1e3;  // a step that moves less has nothing to close against
    return miss / std::max(throughput, least_j);
}

}  // namespace

int Input::plates() const noexcept {
    int sum = 0;
    for (const PlateGroup& group : groups)
        sum += group.count;
    return sum;
}

heatpump::Surroundings Input::surroundings(const PlateGroup& group, std::size_t hour) const noexcept {
    heatpump::Surroundings out{group.front_w_m2[hour],     group.rear_w_m2[hour], air_c[hour],      dew_point_c[hour],
                               group.wind_plate_m_s[hour], sky_k[hour],           pressure_pa[hour]};
    if (collector.iso9806)
        out.incidence = group.incidence.empty() ? collector.iso9806->hemispherical() : group.incidence[hour];
    return out;
}

double Input::mean_front_w_m2(std::size_t hour) const noexcept {
    if (groups.size() == 1) return groups[0].front_w_m2[hour];
    double sum = 0.0;
    for (const PlateGroup& group : groups)
        sum += group.count * group.front_w_m2[hour];
    return sum / plates();
}

Result<Year> run(const Input& input, const Options& options) {
    if (auto problems = problems_of(input, options, true); !problems.empty()) return problems;
    const auto made = heatpump::HeatPump::make(input.block, *input.refrigerant);
    if (!made) return made.problems();
    const auto cold_c = cold_inflow_c(input.air_c, input.demand);
    const DaySchedules days(input.demand, input.first_weekday, options.step_s, cold_c);
    const OrderBook book(input);
    Simulation simulation(input, made.value(), options, input.demand.set_point_c - 0.5 * input.demand.hysteresis_k);

    Year year;
    std::array<Ledger, 12> months{};
    year.lowest_top_c = 1e9;
    std::optional<Recorder> recorder;
    double shape[most_parts];
    Bands bands;

    std::array<double, 12> short_h{};
    double coldest_draw_c = 1e9;

    for (int run_day = -options.warm_up_days; run_day < 365; ++run_day) {
        const int day = run_day < 0 ? run_day + options.warm_up_days : run_day;
        const bool counted = run_day >= 0;
        if (counted && options.keep_hours && !recorder) recorder.emplace(year.hours.emplace());
        int hour_now = -1;
        Ledger hour_sum;
        std::size_t hour = 0;
        const Schedule& schedule = days.of(day);
        double begin_s = 0.0;
        for (std::size_t s = 0; s < schedule.slots.size(); ++s) {
            const Slot& slot = schedule.slots[s];
            const auto shine = [&](const Slot& at) {
                for (std::size_t g = 0; g < input.groups.size(); ++g)
                    simulation.set_light(input.groups[g].front_w_m2[hour] * shape[at.part],
                                         input.groups[g].rear_w_m2[hour] * shape[at.part], g);
            };
            if (slot.hour != hour_now) {
                hour_now = slot.hour;
                hour = static_cast<std::size_t>(24 * day + slot.hour);
                hour_sum = {};
                for (std::size_t g = 0; g < input.groups.size(); ++g)
                    simulation.set_weather(input.surroundings(input.groups[g], hour), g);
                light_shape(input.sun_up, static_cast<int>(hour), schedule.parts_per_hour, shape);
            }
            shine(slot);
            if (!book.idle()) simulation.set_orders(book.at(day, begin_s, slot.length_s));
            const Ledger step = simulation.step(slot.length_s, schedule.draws_j.data() + slot.first_draw,
                                                slot.draw_count, cold_c[static_cast<std::size_t>(day)], slot.quiet_s);
            begin_s += simulation.passed_s();
            if (simulation.passed_s() > slot.length_s) {
                s += static_cast<std::size_t>(slot.quiet_slots - 1);
                shine(schedule.slots[s]);
            }
            if (!counted) continue;
            hour_sum.add(step);
            if (step.running_s > 0.0) bands.add(simulation.last_point(), step.running_s, input.air_c[hour]);
            year.lowest_top_c = std::min(year.lowest_top_c, simulation.store().top_c());
            year.worst_step_closure =
                std::max({year.worst_step_closure, share_of(step.circuit_miss(), step.circuit_throughput()),
                          share_of(step.water_miss(), step.water_throughput())});
            const bool hour_ends = s + 1 == schedule.slots.size() || schedule.slots[s + 1].hour != slot.hour;
            if (step.coldest_draw_c < coldest_draw_c) {
                coldest_draw_c = step.coldest_draw_c;
                year.coldest_draw_hour = static_cast<int>(hour);
            }
            if (!hour_ends) continue;
            const int month = month_of_hour(static_cast<int>(hour)) - 1;
            months[static_cast<std::size_t>(month)].add(hour_sum);
            if (hour_sum.short_draws > 0) short_h[static_cast<std::size_t>(month)] += 1.0;
            year.months[static_cast<std::size_t>(month)].light_on_plane_kwh_m2 += input.mean_front_w_m2(hour) / 1000.0;
            if (recorder) recorder->hour(hour_sum, simulation, input.mean_front_w_m2(hour), input.air_c[hour]);
        }
    }

    Ledger total;
    double plane_kwh_m2 = 0.0;
    double short_hours = 0.0;
    for (std::size_t m = 0; m < 12; ++m) {
        total.add(months[m]);
        into(year.months[m], months[m]);
        year.months[m].short_h = short_h[m];
        short_hours += short_h[m];
        plane_kwh_m2 += year.months[m].light_on_plane_kwh_m2;
    }
    into(year.total, total);
    year.total.light_on_plane_kwh_m2 = plane_kwh_m2;
    year.total.short_h = short_hours;
    const double electricity_kwh = year.total.electricity_kwh();
    if (electricity_kwh > 0.0) {
        year.seasonal_factor = (year.total.condenser_kwh + year.total.immersion_kwh) / electricity_kwh;
        year.useful_factor = year.total.drawn_kwh / electricity_kwh;
    }
    year.closure_circuit = share_of(total.circuit_miss(), total.circuit_throughput());
    year.closure_water = share_of(total.water_miss(), total.water_throughput());
    year.off_too_cold_h = total.too_cold_s / 3600.0;
    year.off_other_h = total.other_off_s / 3600.0;
    year.off_beyond_data_h = total.beyond_data_s / 3600.0;
    year.pressure_limited_h = total.limited_s / 3600.0;
    year.shortfall_draws = total.short_draws;
    year.coldest_draw_c = std::min(coldest_draw_c, input.demand.wanted_c);
    year.hygiene_runs = total.hygiene_runs;
    year.hygiene_upper_only = total.hygiene_upper_only;
    year.hygiene_missed = total.hygiene_missed;
    year.operation = bands.means();
    year.models = models_text(input, options);
    return year;
}

}  // namespace wg::season
