// The rule set in a frozen plan, field by field as in its file (docs/rule-set-format.md).

#include "core/plan/frozen_plan.h"
#include "core/plan/plan_json_parts.h"

namespace wg::plan::json_parts {
namespace {

// In the order of their enumerators.
constexpr const char* snow_rule_words[] = {"fixed",   "alpine",        "central_east", "central_west",
                                           "iberian", "mediterranean", "uk_ireland"};
constexpr const char* net_pressure_words[] = {"surface_share", "two_faces", "coefficients"};

Json actions_json(const fixing::ActionRules& a) {
    Json out = {{"basic_wind_m_s", a.basic_wind_m_s},
                {"wind_altitude_per_m", a.wind_altitude_per_m},
                {"ground_snow_kn_m2", a.ground_snow_kn_m2},
                {"snow_rule", snow_rule_words[static_cast<std::size_t>(a.snow_rule)]},
                {"snow_zone", a.snow_zone},
                {"snow_exposure", a.snow_exposure},
                {"snow_thermal", a.snow_thermal},
                {"snow_density_kn_m3", a.snow_density_kn_m3},
                {"snow_slides", a.snow_slides},
                {"air_density_kg_m3", a.air_density_kg_m3},
                {"gamma_permanent_unfavourable", a.gamma_permanent_unfavourable},
                {"gamma_permanent_favourable", a.gamma_permanent_favourable},
                {"gamma_variable", a.gamma_variable},
                {"psi_0_wind", a.psi_0_wind},
                {"psi_0_snow", a.psi_0_snow},
                {"k_mod", a.k_mod},
                {"gamma_timber", a.gamma_timber},
                {"gamma_bolt", a.gamma_bolt},
                {"timber_density_kg_m3", a.timber_density_kg_m3},
                {"deflection_span_share", a.deflection_span_share},
                {"net_pressure", net_pressure_words[static_cast<std::size_t>(a.net_pressure)]},
                {"standing_off_net_factor", a.standing_off_net_factor},
                {"hidden_face_share", a.hidden_face_share},
                {"net_uplift_middle", a.net_uplift_middle},
                {"net_uplift_edge", a.net_uplift_edge},
                {"net_pressure_all", a.net_pressure_all},
                {"source", a.source}};
    if (!a.net_pressure_source.empty()) out["net_pressure_source"] = a.net_pressure_source;
    return out;
}

Json tax_json(const quote::TaxRules& tax) {
    Json rates = Json::array();
    for (const quote::TaxRate& rate : tax.rates)
        rates.push_back({{"tax_class", rate.tax_class}, {"label", rate.label}, {"rate", rate.rate}});
    return {{"rates", rates},
            {"tax_by", tax.tax_by_total ? "total" : "line"},
            {"rounding", tax.rounding == Rounding::half_up ? "half_up" : "half_even"},
            {"source", tax.source}};
}

Json leak_json(const ChargeDuties& duties) {
    Json checks = Json::array();
    for (const LeakDuty& duty : duties.leak_checks)
        checks.push_back(
            {{"by", duty.by_mass ? "kg" : "t_co2e"}, {"from", duty.from}, {"every_months", duty.every_months}});
    return {{"leak_checks", checks},
            {"by_mass", duties.by_mass},
            {"not_fluorinated", duties.not_fluorinated},
            {"source", duties.source}};
}

}  // namespace

Json rules_json(const RuleSet& rules) {
    Json market = Json::array();
    for (const MarketRule& rule : rules.market)
        market.push_back(
            {{"gwp_from", rule.gwp_from}, {"since", rule.since}, {"text", rule.text}, {"source", rule.source}});
    Json service = Json::array();
    for (const ServiceRule& rule : rules.service)
        service.push_back({{"id", rule.id},
                           {"text", rule.text},
                           {"every_months", rule.every_months},
                           {"when", rule.when},
                           {"source", rule.source}});
    Json out = {{"schema", 1},
                {"id", rules.id},
                {"label", rules.label},
                {"source", rules.source},
                {"assumed", rules.assumed},
                {"actions", actions_json(rules.actions)},
                {"tax", tax_json(rules.tax)},
                {"market", market},
                {"service", service}};
    if (!rules.duties.source.empty()) out["charge_duties"] = leak_json(rules.duties);
    return out;
}

}  // namespace wg::plan::json_parts
