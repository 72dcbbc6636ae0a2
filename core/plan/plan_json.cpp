// plan.json, documented in docs/plan-format.md. Keys name their units; numbers are rounded to what they mean, so that a
// text comparison of two plans shows real differences only.

#include <nlohmann/json.hpp>

#include "core/equipment/codec.h"
#include "core/job/words.h"
#include "core/plan/frozen_plan.h"
#include "core/plan/plan.h"
#include "core/plan/plan_json_parts.h"

namespace wg::plan {
namespace {

using json_parts::Json;
using json_parts::num;
using json_parts::point;

Json ranged(const Ranged& value, int decimals) {
    return {{"low", num(value.low, decimals)}, {"mid", num(value.mid, decimals)}, {"high", num(value.high, decimals)}};
}

Json quantiles(const weather::Quantiles& q, int decimals) {
    return {{"p10", num(q.p10, decimals)}, {"p50", num(q.p50, decimals)}, {"p90", num(q.p90, decimals)}};
}

Json weather_spread(const Plan& plan) {
    if (!plan.weather_spread) return nullptr;
    const WeatherSpread& s = *plan.weather_spread;
    return {{"years", s.years},
            {"light_kwh_m2", quantiles(s.light_kwh_m2, 1)},
            {"electricity_kwh", quantiles(s.electricity_kwh, 1)},
            {"heat_kwh", quantiles(s.heat_kwh, 1)},
            {"seasonal_factor", quantiles(s.seasonal_factor, 3)}};
}

Json to_json(const Finding& f) {
    return {{"code", f.code},    {"severity", word(f.severity)}, {"stage", word(f.stage)}, {"place_id", f.place_id},
            {"place", f.place},  {"message", f.message},         {"remedy", f.remedy},     {"rule", f.rule},
            {"source", f.source}};
}

Json to_json(const Working& w) {
    Json inputs = Json::array();
    for (const auto& [name, value] : w.inputs)
        inputs.push_back({{"name", name}, {"value", value}});
    return {{"key", w.key},       {"title", w.title},   {"formula", w.formula}, {"inputs", inputs},
            {"result", w.result}, {"source", w.source}, {"assumed", w.assumed}};
}

Json to_json(const fixing::FixingPoint& p) {
    return {{"number", p.number},
            {"position_m", point(p.position)},
            {"from_edge_a_m", num(p.edge_a.distance_m, 3)},
            {"from_edge_b_m", num(p.edge_b.distance_m, 3)},
            {"on_rafter", p.on_rafter},
            {"pull_n", num(p.pull_n, 0)},
            {"push_n", num(p.push_n, 0)},
            {"shear_n", num(p.shear_n, 0)},
            {"resistance_pull_n", num(p.resistance_pull_n, 0)},
            {"resistance_shear_n", num(p.resistance_shear_n, 0)},
            {"utilisation", num(p.utilisation, 3)},
            {"held_by", fixing::text_of(p.held_by)},
            {"combination", p.worst_combination}};
}

Json to_json(const PlacementPlan& p) {
    Json points = Json::array();
    for (const fixing::FixingPoint& f : p.fixing.points)
        points.push_back(to_json(f));
    Json causes = Json::array();
    for (const site::ShadeCause& c : p.shade.causes) {
        causes.push_back({{"label", c.label},
                          {"lost_kwh_m2", num(c.lost_kwh_m2, 1)},
                          {"worst_month", c.worst_month},
                          {"worst_hour", c.worst_hour}});
    }
    const auto by_month = [](const std::array<double, 12>& sums) {
        Json months = Json::array();
        for (const double m : sums)
            months.push_back(num(m, 2));
        return months;
    };
    Json outline = Json::array();
    for (const Point2 corner : p.placed.outline)
        outline.push_back(point(corner));
    return {{"placement_id", p.placement_id},
            {"label", p.label},
            {"surface", p.surface_label},
            {"tilt_deg", num(p.placed.tilt_deg, 2)},
            {"azimuth_deg", num(p.placed.azimuth_deg, 2)},
            {"outline_m", outline},
            {"connection_m", point(p.placed.connection_in_space)},
            {"plane_kwh_m2", num(p.plane_kwh_m2, 1)},
            {"plane_unshaded_kwh_m2", num(p.plane_unshaded_kwh_m2, 1)},
            {"plane_month_kwh_m2", by_month(p.plane_month_kwh_m2)},
            {"plane_month_beam_kwh_m2", by_month(p.plane_month_beam_kwh_m2)},
            {"plane_month_diffuse_kwh_m2", by_month(p.plane_month_diffuse_kwh_m2)},
            {"plane_month_ground_kwh_m2", by_month(p.plane_month_ground_kwh_m2)},
            {"plane_month_shade_loss_kwh_m2", by_month(p.plane_month_shade_loss_kwh_m2)},
            {"diffuse_model", sky::name_of(p.diffuse_model)},
            {"sky_view", num(p.shade.sky_view, 3)},
            {"shade_causes", causes},
            {"wind",
             {{"peak_pressure_pa", num(p.fixing.wind.qp_pa, 1)},
              {"zone", p.fixing.zone},
              {"uplift_coefficient", num(p.fixing.cpe_uplift, 3)},
              {"pressure_coefficient", num(p.fixing.cpe_pressure, 3)}}},
            {"snow_n_m2", num(p.fixing.snow_n_m2, 0)},
            {"snow_slide_n", num(p.fixing.snow_slide_n, 0)},
            {"profile_bending_use", num(p.fixing.bending_use, 3)},
            {"profile_deflection_use", num(p.fixing.sag_use, 3)},
            {"fixing_points", points}};
}

Json to_json(const season::MonthSums& m) {
    return {{"light_kwh", num(m.light_kwh, 2)},
            {"air_kwh", num(m.air_kwh, 2)},
            {"long_wave_kwh", num(m.long_wave_kwh, 2)},
            {"latent_kwh", num(m.latent_kwh, 2)},
            {"line_kwh", num(m.line_kwh, 2)},
            {"compressor_kwh", num(m.compressor_kwh, 2)},
            {"immersion_kwh", num(m.immersion_kwh, 2)},
            {"standby_kwh", num(m.standby_kwh, 2)},
            {"defrost_kwh", num(m.defrost_kwh, 2)},
            {"shell_loss_kwh", num(m.shell_loss_kwh, 2)},
            {"condenser_kwh", num(m.condenser_kwh, 2)},
            {"drawn_kwh", num(m.drawn_kwh, 2)},
            {"standing_loss_kwh", num(m.standing_loss_kwh, 2)},
            {"store_change_kwh", num(m.store_change_kwh, 2)},
            {"wanted_kwh", num(m.wanted_kwh, 2)},
            {"shortfall_kwh", num(m.shortfall_kwh, 2)},
            {"recirculation_kwh", num(m.recirculation_kwh, 2)},
            {"hygiene_kwh", num(m.hygiene_kwh, 2)},
            {"surplus_kwh", num(m.surplus_kwh, 2)},
            {"low_tariff_kwh", num(m.low_tariff_kwh, 2)},
            {"short_litres", num(m.short_litres, 1)},
            {"short_h", num(m.short_h, 0)},
            {"pump_waits_h", num(m.pump_waits_h, 1)},
            {"running_h", num(m.running_h, 1)},
            {"frost_h", num(m.frost_h, 1)},
            {"rest_h", num(m.rest_h, 1)},
            {"starts", m.starts}};
}

Json warm_up(const std::optional<season::WarmUp>& warm) {
    if (!warm) return nullptr;
    if (!warm->reached) return {{"reached", false}, {"why_not", warm->why_not}};
    return {{"reached", true},
            {"hours", num(warm->hours, 2)},
            {"heat_kwh", num(warm->heat_kwh, 2)},
            {"electricity_kwh", num(warm->electricity_kwh, 2)},
            {"mean_cop", num(warm->mean_cop, 2)}};
}

Json yield_json(const Plan& plan) {
    if (!plan.has_yield) return nullptr;
    Json months = Json::array();
    for (const season::MonthSums& m : plan.season.months)
        months.push_back(to_json(m));
    return {{"months", months},
            {"year", to_json(plan.season.total)},
            {"seasonal_factor", num(plan.season.seasonal_factor, 3)},
            {"useful_factor", num(plan.season.useful_factor, 3)},
            {"closure_circuit", num(plan.season.closure_circuit, 9)},
            {"closure_water", num(plan.season.closure_water, 9)},
            {"off_too_cold_h", num(plan.season.off_too_cold_h, 1)},
            {"off_other_h", num(plan.season.off_other_h, 1)},
            {"off_beyond_data_h", num(plan.season.off_beyond_data_h, 1)},
            {"pressure_limited_h", num(plan.season.pressure_limited_h, 1)},
            {"shortfall_draws", plan.season.shortfall_draws},
            {"models", plan.season.models},
            {"range_method", plan.range_method},
            {"weather_spread", weather_spread(plan)},
            {"standstill",
             {{"plate_c", num(plan.standstill.plate_c, 1)},
              {"pressure_bar_abs", num(plan.standstill.pressure_bar_abs, 2)},
              {"above_critical", plan.standstill.above_critical},
              {"light_w_m2", num(plan.standstill.light_w_m2, 0)},
              {"air_c", num(plan.standstill.air_c, 1)}}},
            {"warm_up_good_light", warm_up(plan.warm_up_good)},
            {"warm_up_fair_light", warm_up(plan.warm_up_fair)},
            {"warm_up_winter_night", warm_up(plan.warm_up_poor)}};
}

/// What is offered, with the office's changes: what an order and later changes of it are counted from.
void add_offered(const quote::Offered& offered, Json& money) {
    const auto line_json = [](const quote::OfferedLine& offered_line) {
        const parts::Line& line = offered_line.line;
        Json out = {{"item", line.item_id.empty() ? offered_line.element_id : line.item_id},
                    {"text", line.text},
                    {"to_buy", num(line.to_buy, 3)},
                    {"unit", line.unit},
                    {"unit_price_minor", line.unit_price.minor},
                    {"net_minor", line.net.minor},
                    {"labour", line.labour}};
        if (offered_line.left_out) out["left_out"] = true;
        return out;
    };
    Json lines = Json::array();
    for (const quote::OfferedLine& line : offered.lines)
        lines.push_back(line_json(line));
    Json options = Json::array();
    for (const quote::Option& option : offered.options) {
        if (option.ticked) {
            lines.push_back(line_json(option.line));
            continue;
        }
        Json open = line_json(option.line);
        open["gross_minor"] = option.gross.minor;
        options.push_back(open);
    }
    Json instalments = Json::array();
    for (const quote::InstalmentSum& part : offered.instalments)
        instalments.push_back({{"text", part.text}, {"percent", num(part.percent, 2)}, {"sum_minor", part.sum.minor}});
    money["offered"] = lines;
    if (!options.empty()) money["options"] = options;
    if (!instalments.empty()) money["instalments"] = instalments;
}

Json money_json(const Plan& plan) {
    Json lines = Json::array();
    for (const parts::Line& line : plan.parts.lines) {
        lines.push_back({{"item", line.item_id},
                         {"text", line.text},
                         {"quantity", num(line.quantity, 3)},
                         {"to_buy", num(line.to_buy, 3)},
                         {"unit", line.unit},
                         {"unit_price_minor", line.unit_price.minor},
                         {"net_minor", line.net.minor},
                         {"tax_class", line.tax_class},
                         {"labour", line.labour},
                         {"priced", line.priced},
                         {"why", line.why}});
    }
    Json taxes = Json::array();
    Json quote = nullptr;
    if (plan.quote) {
        for (const quote::TaxSum& tax : plan.quote->taxes) {
            taxes.push_back({{"label", tax.rate.label},
                             {"rate", num(tax.rate.rate, 4)},
                             {"net_minor", tax.net.minor},
                             {"tax_minor", tax.tax.minor}});
        }
        quote = {{"net_minor", plan.quote->net.minor}, {"taxes", taxes}, {"gross_minor", plan.quote->gross.minor}};
        if (plan.quote->discount.minor != 0) quote["discount_minor"] = plan.quote->discount.minor;
        if (plan.offered && plan.offered->granted.minor != 0) {
            quote["granted_minor"] = plan.offered->granted.minor;
            quote["to_bring_minor"] = plan.offered->to_bring.minor;
        }
    }
    Json out = {
        {"currency", plan.currency}, {"parts", lines}, {"labour_h", num(plan.parts.labour_h, 2)}, {"quote", quote}};
    if (plan.offered) add_offered(*plan.offered, out);
    return out;
}

Json economy_json(const Plan& plan) {
    if (!plan.has_yield) return nullptr;
    const auto course = [](const std::vector<Money>& years) {
        Json out = Json::array();
        for (const Money sum : years)
            out.push_back(sum.minor);
        return out;
    };
    return {{"running_cost_minor", plan.economy.running_cost.minor},
            {"present_cost_minor", plan.economy.present_cost.minor},
            {"yearly_saving_minor", plan.economy.yearly_saving.minor},
            {"co2_kg", num(plan.economy.co2_kg, 1)},
            {"present_co2_kg", num(plan.economy.present_co2_kg, 1)},
            {"simple_payback_y", num(plan.economy.simple_payback_y, 2)},
            {"net_present_value_minor", plan.economy.net_present_value.minor},
            {"cumulative_minor", course(plan.economy.cumulative)},
            {"cumulative_low_minor", course(plan.economy.cumulative_low)},
            {"cumulative_high_minor", course(plan.economy.cumulative_high)}};
}

Json band_json(const commissioning::Band& band) {
    return {{"label", band.label},     {"unit", band.unit},         {"low", num(band.low, 3)},
            {"mid", num(band.mid, 3)}, {"high", num(band.high, 3)}, {"read", band.read ? num(*band.read, 3) : Json()}};
}

Json forecasts_json(const std::vector<commissioning::MonthForecast>& forecasts) {
    Json out = Json::array();
    for (const commissioning::MonthForecast& f : forecasts) {
        Json bands = Json::array();
        for (const commissioning::Band& band : f.bands)
            bands.push_back(band_json(band));
        const auto hours = [](double h) { return h > 0.0 ? num(h, 2) : Json(); };
        out.push_back({{"month", f.month},
                       {"air_c", num(f.air_c, 1)},
                       {"light_w_m2", num(f.light_w_m2, 0)},
                       {"wind_m_s", num(f.wind_m_s, 1)},
                       {"water_from_c", num(f.water_from_c, 1)},
                       {"water_to_c", num(f.water_to_c, 1)},
                       {"bands", bands},
                       {"hours_low", hours(f.hours_low)},
                       {"hours_mid", hours(f.hours_mid)},
                       {"hours_high", hours(f.hours_high)}});
    }
    return out;
}

Json choice_json(const Plan& plan) {
    return {{"id", plan.choice_id},
            {"label", plan.choice_label},
            {"collector", plan.collector.maker + ' ' + plan.collector.name},
            {"block", plan.block.maker + ' ' + plan.block.name},
            {"cylinder", plan.cylinder.maker + ' ' + plan.cylinder.name},
            {"fixing_method", plan.fixing_method.label}};
}

// `rules`: those that it was reckoned with, to be frozen with it; null: left out.
std::string written(const Plan& plan, const RuleSet* rules) {
    Json out;
    out["format"] = "warmgable-plan";
    out["schema"] = 1;
    out["job"] = {{"id", plan.job_id},
                  {"number", plan.job_number},
                  {"title", plan.title},
                  {"revision", plan.job_revision},
                  {"content_sha256", plan.content_sha256},
                  {"plan_mark", plan.plan_mark},
                  {"invented", plan.invented}};
    out["choice"] = choice_json(plan);
    // A frozen plan stays readable when the catalogue has gone on: the items themselves, as an equipment file.
    out["equipment"] =
        Json::parse(catalogue_to_json({{plan.collector}, {plan.block}, {plan.cylinder}, {plan.fixing_method}}));
    out["reference"] = {{"weather", plan.weather_source},
                        {"weather_invented", plan.weather_invented},
                        {"rule_set", plan.rule_set_label},
                        {"price_list", plan.price_list_label}};
    if (rules != nullptr) out["rules"] = json_parts::rules_json(*rules);
    out["stopped"] = plan.stopped();
    const Figures& f = plan.figures;
    out["figures"] = {{"heat_kwh", plan.has_yield ? ranged(f.heat_kwh, 1) : Json(nullptr)},
                      {"electricity_kwh", plan.has_yield ? ranged(f.electricity_kwh, 1) : Json(nullptr)},
                      {"seasonal_factor", plan.has_yield ? ranged(f.seasonal_factor, 3) : Json(nullptr)},
                      {"running_cost_minor", plan.has_yield ? ranged(f.running_cost_minor, 0) : Json(nullptr)},
                      {"run_m", num(f.run_m, 2)},
                      {"charge_kg", num(f.charge_kg, 3)},
                      {"worst_utilisation", num(f.worst_utilisation, 3)},
                      {"worst_point", f.worst_point},
                      {"price_net_minor", f.price_net.minor},
                      {"price_gross_minor", f.price_gross.minor}};
    Json findings = Json::array();
    for (const Finding& finding : plan.findings)
        findings.push_back(to_json(finding));
    out["findings"] = findings;
    Json placements = Json::array();
    for (const PlacementPlan& placement : plan.placements)
        placements.push_back(to_json(placement));
    out["placements"] = placements;
    out["run"] = json_parts::run_json(plan);
    out["services"] = json_parts::services_json(plan.services);
    out["yield"] = yield_json(plan);
    out["money"] = money_json(plan);
    out["economy"] = economy_json(plan);
    Json service = Json::array();
    for (const ServiceDue& due : plan.service) {
        service.push_back({{"id", due.id},
                           {"text", due.text},
                           {"every_months", due.every_months},
                           {"why", due.why},
                           {"source", due.source}});
    }
    out["service"] = service;
    out["charge_duties"] = json_parts::duties_json(plan.duty);
    out["pressure_tests"] = json_parts::pressure_tests_json(plan.pressure_tests);
    const auto verdicts_json = [](const std::vector<commissioning::Assessment>& assessments) {
        Json verdicts = Json::array();
        for (const commissioning::Assessment& a : assessments) {
            Json bands = Json::array();
            for (const commissioning::Band& band : a.bands)
                bands.push_back(band_json(band));
            verdicts.push_back({{"subject", a.subject},
                                {"verdict", commissioning::word(a.verdict)},
                                {"words", a.words},
                                {"next", a.next},
                                {"causes", a.causes},
                                {"bands", bands}});
        }
        return verdicts;
    };
    out["verdicts"] = verdicts_json(plan.assessments);
    out["service_verdicts"] = verdicts_json(plan.service_assessments);
    out["forecasts"] = forecasts_json(plan.forecasts);
    Json workings = Json::array();
    for (const Working& working : plan.workings)
        workings.push_back(to_json(working));
    out["workings"] = workings;
    return out.dump(2, ' ', false, nlohmann::ordered_json::error_handler_t::replace) + '\n';
}

}  // namespace

std::string plan_to_json(const Plan& plan) {
    return written(plan, nullptr);
}

std::string frozen_plan(const Plan& plan, const RuleSet& rules) {
    return written(plan, &rules);
}

std::string offer_of_plan(const Plan& plan) {
    const Json out = {{"choice", choice_json(plan)}, {"money", money_json(plan)}};
    return out.dump(-1, ' ', false, nlohmann::ordered_json::error_handler_t::replace);
}

}  // namespace wg::plan
