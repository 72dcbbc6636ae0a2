#include "core/plan/study_factors.h"

#include <algorithm>
#include <cmath>
#include <utility>

#include "core/heatpump/compressor.h"
#include "core/quantity/text.h"
#include "core/weather/random.h"

namespace wg::plan::detail {
namespace {

using Apply = std::function<void(Member&, double)>;

constexpr double no_limit = 1e300;

void scale(std::vector<double>& series, double by) {
    for (double& value : series)
        value *= by;
}

/// The one place where hourly series of the plate are touched.
void scale_light(season::Input& input, double by) {
    for (season::PlateGroup& group : input.groups) {
        scale(group.front_w_m2, by);
        scale(group.rear_w_m2, by);
    }
}
void scale_wind(season::Input& input, double by) {
    for (season::PlateGroup& group : input.groups)
        scale(group.wind_plate_m_s, by);
}
void shift_sky(season::Input& input, double by_k) {
    for (double& sky : input.sky_k)
        sky += by_k;
}

/// The household draws the same litres at the wanted temperature, not the same heat.
void set_cold(Member& member, double cold_c) {
    Demand& d = member.input.demand;
    // A cycle states heat, a household litres: those stay the same by themselves.
    if (d.draw_source == DrawSource::cycle) scale_draw(d, (d.wanted_c - cold_c) / (d.wanted_c - d.cold_mean_c));
    d.cold_mean_c = cold_c;
}

class Rules {
   public:
    explicit Rules(const Member& nominal) : nominal_(nominal) {}

    /// A value with a unit, moved up or down.
    void moved(const char* key, const char* title, const char* unit, FactorKind kind, double nominal, double half,
               double least, double most, const char* ground, Apply apply) {
        FactorRule rule;
        rule.shape = Shape::normal;
        rule.step = half;
        // What the job holds is run as it is, even where it lies outside: then the year itself says so.
        rule.least = std::min(least, nominal);
        rule.most = std::max(most, nominal);
        rule.factor.distribution = "normal, eight in ten within " + fixed(half, half < 0.5 ? 2 : 1) +
                                   (*unit == '\0' ? "" : std::string(" ") + unit) + " of the middle";
        add(std::move(rule), key, title, unit, kind, nominal, ground, std::move(apply));
    }
    /// A factor on what the data say.
    void scaled(const char* key, const char* title, FactorKind kind, double ratio, double least, double most,
                const char* ground, Apply apply) {
        FactorRule rule;
        rule.shape = Shape::log_normal;
        rule.step = ratio;
        rule.least = std::min(least, 1.0);
        rule.most = std::max(most, 1.0);
        rule.factor.distribution =
            "log-normal, eight in ten between " + fixed(1.0 / ratio, 2) + " and " + fixed(ratio, 2) + " times";
        add(std::move(rule), key, title, "", kind, 1.0, ground, std::move(apply));
    }
    std::vector<FactorRule> take() { return std::move(rules_); }
    [[nodiscard]] const Member& nominal() const { return nominal_; }

   private:
    void add(FactorRule rule, const char* key, const char* title, const char* unit, FactorKind kind, double nominal,
             const char* ground, Apply apply) {
        rule.factor.key = key;
        rule.factor.title = title;
        rule.factor.unit = unit;
        rule.factor.kind = kind;
        rule.factor.nominal = nominal;
        rule.factor.ground = ground;
        rule.apply = std::move(apply);
        rule.factor.low = rule.value(0.1);
        rule.factor.high = rule.value(0.9);
        rules_.push_back(std::move(rule));
    }
    const Member& nominal_;
    std::vector<FactorRule> rules_;
};

void household(Rules& rules) {
    const Demand& d = rules.nominal().input.demand;
    const CylinderModel& tank = rules.nominal().input.cylinder;
    rules.scaled("draw", "water drawn", FactorKind::household, 1.25, 0.05 / d.scale, 10.0 / d.scale,
                 "assumed: what a household draws is asked, not measured",
                 [](Member& m, double v) { scale_draw(m.input.demand, v); });
    rules.moved("cold", "cold water, mean of the year", "deg C", FactorKind::household, d.cold_mean_c, 1.5,
                d.cold_swing_k, std::min(30.0, d.wanted_c - 5.0 - d.cold_swing_k),
                "assumed: follows the ground that the main lies in; litres drawn stay the same", set_cold);
    rules.moved("set_point", "set-point that the household keeps", "deg C", FactorKind::household, d.set_point_c, 3.0,
                40.0, std::min(65.0, tank.max_temperature_c), "assumed: people turn the dial",
                [](Member& m, double v) { m.input.demand.set_point_c = v; });
    rules.moved("room", "room round the cylinder", "deg C", FactorKind::household, rules.nominal().input.room_c, 3.0,
                -20.0, 50.0, "assumed: noted at one visit", [](Member& m, double v) { m.input.room_c = v; });
}

void plate(Rules& rules) {
    const CollectorModel& c = rules.nominal().input.collector;
    rules.scaled("plate", "plate to refrigerant", FactorKind::equipment, 1.25, 10.0 / c.plate_to_refrigerant_w_m2k,
                 2000.0 / c.plate_to_refrigerant_w_m2k, "assumed: fin contact and boiling are known no better",
                 [](Member& m, double v) { m.input.collector.plate_to_refrigerant_w_m2k *= v; });
    rules.moved("absorptance", "absorptance of the plate for light", "", FactorKind::equipment, c.absorptance, 0.03,
                0.05, 1.0, "assumed: dirt and age",
                [](Member& m, double v) { move_absorptance(m.input.collector, v); });
    rules.moved("emittance", "emittance of the plate for heat", "", FactorKind::equipment, c.emittance, 0.03, 0.02, 1.0,
                "assumed: coating and frost", [](Member& m, double v) { move_emittance(m.input.collector, v); });
    rules.moved("rear", "wind's share on the rear face", "", FactorKind::equipment, c.rear_exposure, 0.2, 0.0, 1.0,
                "assumed: the gap behind a plate is not measured",
                [](Member& m, double v) { move_rear_exposure(m.input.collector, v); });
}

void heat_pump(Rules& rules) {
    const BlockModel& b = rules.nominal().input.block;
    // A maker's polynomials have no efficiency of their own that could leave its limits.
    constexpr double data_least = 0.85;
    constexpr double data_most = 1.15;
    const bool by_data = b.compressor.has_value();
    rules.scaled("compressor", "compressor's overall efficiency", FactorKind::equipment, 1.05,
                 by_data ? data_least : 0.2 / b.overall_peak, by_data ? data_most : 0.8 / b.overall_peak,
                 "tolerance usual in data sheets: common practice, no published source",
                 [](Member& m, double v) { heatpump::scale_efficiency(m.input.block, v); });
    rules.scaled("filling", "compressor's filling", FactorKind::equipment, 1.03,
                 by_data ? data_least : 0.5 / b.volumetric_at_unity, by_data ? data_most : 1.0 / b.volumetric_at_unity,
                 "tolerance usual in data sheets: common practice, no published source",
                 [](Member& m, double v) { heatpump::scale_filling(m.input.block, v); });
    rules.scaled("condenser", "condenser", FactorKind::equipment, 1.18, 20.0 / b.condenser_w_k,
                 2000.0 / b.condenser_w_k, "assumed: scale and placing",
                 [](Member& m, double v) { m.input.block.condenser_w_k *= v; });
    rules.moved("superheat", "superheat, by charge and valve", "K", FactorKind::equipment, b.superheat_k, 2.0, 1.0,
                15.0, "assumed: charge and setting of the valve on the day",
                [](Member& m, double v) { m.input.block.superheat_k = v; });
    rules.scaled("standing_loss", "standing loss with the pipes", FactorKind::equipment, 1.15, 0.2, 5.0,
                 "assumed: declared by EN 12897 without the pipes of the house",
                 [](Member& m, double v) { m.input.cylinder.standing_loss_kwh_24h *= v; });
    rules.scaled("line", "suction line's heat exchange", FactorKind::equipment, 1.3, 0.1, 5.0,
                 "assumed: workmanship of the insulation", [](Member& m, double v) { m.input.line_ua_w_k *= v; });
}

void site_and_sky(Rules& rules, bool sky_measured) {
    rules.scaled("light", "light on the plates and shade", FactorKind::site, 1.05, 0.2, 1.3,
                 "assumed: turning light onto a plane, reflection of the ground and sketched obstacles, a few per cent "
                 "together",
                 [](Member& m, double v) { scale_light(m.input, v); });
    rules.scaled("wind", "wind at the plates", FactorKind::site, 1.4, 0.1, 3.0,
                 "assumed: about one class of terrain of EN 1991-1-4 to either side",
                 [](Member& m, double v) { scale_wind(m.input, v); });
    rules.moved("sky", "sky's temperature, off by", "K", FactorKind::site, 0.0, sky_measured ? 1.0 : 3.0, -30.0, 30.0,
                sky_measured ? "assumed: error of a long-wave instrument"
                             : "assumed: 0.03 of the sky's emittance, worked out from dew point and cloud, is 3 K",
                [](Member& m, double v) { shift_sky(m.input, v); });
}

void prices(Rules& rules) {
    rules.scaled("electricity_price", "price of electricity", FactorKind::prices, 1.15, 0.0, no_limit,
                 "assumed: tariffs of the coming years are not known",
                 [](Member& m, double v) { m.tariffs.electricity_minor_kwh *= v; });
    if (rules.nominal().input.demand.present_fuel == Fuel::electric_immersion) return;
    rules.scaled("fuel_price", "price of the present fuel", FactorKind::prices, 1.2, 0.0, no_limit,
                 "assumed: tariffs of the coming years are not known", [](Member& m, double v) {
                     for (double* price : {&m.tariffs.gas_minor_kwh, &m.tariffs.lpg_minor_kwh, &m.tariffs.oil_minor_kwh,
                                           &m.tariffs.wood_minor_kwh})
                         *price *= v;
                 });
}

double unlimited(const FactorRule& rule, double probability) {
    const double z = weather::normal_quantile(probability) / weather::normal_quantile(0.9);
    return rule.shape == Shape::normal ? rule.factor.nominal + rule.step * z
                                       : rule.factor.nominal * std::pow(rule.step, z);
}

}  // namespace

void scale_draw(Demand& demand, double by) noexcept {
    demand.scale *= by;
}

double FactorRule::value(double probability) const {
    return std::clamp(unlimited(*this, probability), least, most);
}

bool FactorRule::limited(double probability) const {
    const double v = unlimited(*this, probability);
    return v < least || v > most;
}

std::vector<FactorRule> factor_rules(const Member& nominal, bool sky_measured) {
    Rules rules(nominal);
    household(rules);
    plate(rules);
    heat_pump(rules);
    site_and_sky(rules, sky_measured);
    prices(rules);
    return rules.take();
}

}  // namespace wg::plan::detail
