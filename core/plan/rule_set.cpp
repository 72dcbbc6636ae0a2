#include "core/plan/rule_set.h"

#include <charconv>
#include <nlohmann/json.hpp>
#include <optional>
#include <set>

#include "core/equipment/fields.h"
#include "core/plan/rule_sources.h"
#include "core/quantity/utf8.h"

namespace wg::plan {
namespace {

using fields::Reader;

constexpr int rule_set_schema = 1;

void read_snow(Reader& r, fixing::ActionRules& a) {
    static const std::vector<std::string> rules = {"fixed",   "alpine",        "central_east", "central_west",
                                                   "iberian", "mediterranean", "uk_ireland"};
    if (r.has("snow_rule")) a.snow_rule = static_cast<fixing::SnowRule>(r.one_of("snow_rule", rules));
    a.snow_zone = r.number_or("snow_zone", a.snow_zone, 0.0, 10.0, "");
    a.snow_exposure = r.number_or("snow_exposure", a.snow_exposure, 0.5, 1.5, "");
    a.snow_thermal = r.number_or("snow_thermal", a.snow_thermal, 0.3, 1.2, "");
    a.snow_density_kn_m3 = r.number_or("snow_density_kn_m3", a.snow_density_kn_m3, 1.0, 5.0, "kN/m3");
    a.snow_slides = r.flag_or("snow_slides", a.snow_slides);
}

void read_net_pressure(Reader& r, fixing::ActionRules& a) {
    static const std::vector<std::string> rules = {"surface_share", "two_faces", "coefficients"};
    if (r.has("net_pressure")) a.net_pressure = static_cast<fixing::NetPressureRule>(r.one_of("net_pressure", rules));
    a.hidden_face_share = r.number_or("hidden_face_share", a.hidden_face_share, 0.0, 1.0, "");
    a.net_uplift_middle = r.number_or("net_uplift_middle", a.net_uplift_middle, -5.0, 0.0, "");
    a.net_uplift_edge = r.number_or("net_uplift_edge", a.net_uplift_edge, -5.0, 0.0, "");
    a.net_pressure_all = r.number_or("net_pressure_all", a.net_pressure_all, 0.0, 5.0, "");
    a.net_pressure_source = r.text_or("net_pressure_source", "");
    if (a.net_pressure == fixing::NetPressureRule::coefficients && a.net_pressure_source.empty())
        r.problem("net_pressure_source", "is missing", "Name the guide that the net coefficients come from");
    if (a.net_uplift_edge > a.net_uplift_middle)
        r.problem("net_uplift_edge", "lifts less than net_uplift_middle", "Edge zones lift at least as much");
}

void read_value_sources(Reader& r) {
    std::optional<Reader> sources = r.object("sources", false);
    if (!sources) return;
    for (const std::string& value : values_with_source()) {
        if (sources->has(value.c_str())) static_cast<void>(sources->text(value.c_str()));
    }
    sources->done();
}

fixing::ActionRules read_actions(Reader r) {
    fixing::ActionRules a;
    a.basic_wind_m_s = r.number("basic_wind_m_s", 10.0, 80.0, "m/s");
    a.ground_snow_kn_m2 = r.number("ground_snow_kn_m2", 0.0, 25.0, "kN/m2");
    a.air_density_kg_m3 = r.number("air_density_kg_m3", 0.8, 1.5, "kg/m3");
    a.gamma_permanent_unfavourable = r.number("gamma_permanent_unfavourable", 1.0, 2.0, "");
    a.gamma_permanent_favourable = r.number("gamma_permanent_favourable", 0.5, 1.0, "");
    a.gamma_variable = r.number("gamma_variable", 1.0, 2.0, "");
    a.psi_0_wind = r.number("psi_0_wind", 0.0, 1.0, "");
    a.psi_0_snow = r.number("psi_0_snow", 0.0, 1.0, "");
    a.k_mod = r.number("k_mod", 0.3, 1.2, "");
    a.gamma_timber = r.number("gamma_timber", 1.0, 2.0, "");
    a.timber_density_kg_m3 = r.number("timber_density_kg_m3", 200.0, 800.0, "kg/m3");
    a.standing_off_net_factor = r.number("standing_off_net_factor", 0.1, 3.0, "");
    read_snow(r, a);
    read_net_pressure(r, a);
    a.wind_altitude_per_m = r.number_or("wind_altitude_per_m", 0.0, 0.0, 0.005, "1/m");
    a.gamma_bolt = r.number_or("gamma_bolt", a.gamma_bolt, 1.0, 2.0, "");
    a.deflection_span_share = r.number_or("deflection_span_share", a.deflection_span_share, 50.0, 1000.0, "");
    a.source = r.text("source");
    read_value_sources(r);
    r.done();
    return a;
}

quote::TaxRules read_tax(Reader r) {
    quote::TaxRules t;
    std::set<std::string> classes;
    for (Reader& item : r.objects("rates")) {
        quote::TaxRate rate;
        rate.tax_class = item.text("tax_class");
        item.name_by(rate.tax_class);
        rate.label = item.text("label");
        rate.rate = item.number("rate", 0.0, 1.0, "(0.2 is 20 %)");
        if (!classes.insert(rate.tax_class).second) item.problem("tax_class", "is used twice", "Name each class once");
        item.done();
        t.rates.push_back(std::move(rate));
    }
    if (t.rates.empty()) r.problem("rates", "is empty", "Give at least one rate; tax-free is a rate of 0");
    t.tax_by_total = r.one_of("tax_by", {"total", "line"}) == 0;
    t.rounding = r.one_of("rounding", {"half_up", "half_even"}) == 0 ? Rounding::half_up : Rounding::half_even;
    t.source = r.text("source");
    r.done();
    return t;
}

std::vector<MarketRule> read_market(Reader& root) {
    std::vector<MarketRule> out;
    for (Reader& r : root.objects("market")) {
        MarketRule rule;
        rule.gwp_from = r.number("gwp_from", 0.0, 30000.0, "kg CO2e/kg");
        rule.since = r.date("since");
        rule.text = r.text("text");
        rule.source = r.text("source");
        r.done();
        out.push_back(std::move(rule));
    }
    return out;
}

// The words that steps::aftercare knows.
bool is_condition(const std::string& when) {
    if (when == "always" || when == "anode" || when == "flammable" || when == "leak_duty") return true;
    const std::string by_emission = "t_co2e>=";
    if (when.rfind(by_emission, 0) != 0 || when.size() == by_emission.size()) return false;
    double limit_t = 0.0;
    const char* const end = when.data() + when.size();
    const auto read = std::from_chars(when.data() + by_emission.size(), end, limit_t);
    return read.ec == std::errc() && read.ptr == end && limit_t >= 0.0 && limit_t <= 1e6;
}

std::vector<ServiceRule> read_service(Reader& root) {
    std::vector<ServiceRule> out;
    std::set<std::string> ids;
    for (Reader& r : root.objects("service")) {
        ServiceRule rule;
        rule.id = r.text("id");
        r.name_by(rule.id);
        rule.text = r.text("text");
        rule.every_months = r.whole("every_months", 1, 240);
        rule.when = r.text("when");
        if (!is_condition(rule.when)) {
            r.problem("when", "'" + for_message(rule.when) + "' is not a condition",
                      "Use always, anode, flammable, leak_duty, or t_co2e>= and a number");
        }
        rule.source = r.text("source");
        if (!ids.insert(rule.id).second) r.problem("id", "is used twice", "Give each rule its own id");
        r.done();
        out.push_back(std::move(rule));
    }
    return out;
}

ChargeDuties read_duties(Reader r) {
    ChargeDuties d;
    for (Reader& item : r.objects("leak_checks")) {
        LeakDuty duty;
        duty.by_mass = item.one_of("by", {"t_co2e", "kg"}) == 1;
        duty.from = item.number("from", 0.0, 1e6, duty.by_mass ? "kg" : "t CO2e");
        duty.every_months = item.whole("every_months", 1, 240);
        item.done();
        d.leak_checks.push_back(duty);
    }
    d.by_mass = r.texts("by_mass", false);
    d.not_fluorinated = r.texts("not_fluorinated", false);
    d.source = r.text("source");
    r.done();
    return d;
}

std::string text_of_field(const nlohmann::json& object, const std::string& key) {
    const auto found = object.find(key);
    return found != object.end() && found->is_string() ? found->get<std::string>() : std::string();
}

// A set that is not called assumed: every value that it gives comes from somewhere. `document` was read without
// problems.
void ask_for_sources(const nlohmann::json& document, const std::string& file_name, std::vector<Problem>& problems) {
    const auto need = [&](const std::string& place, const std::string& source) {
        if (says_assumed(source))
            problems.push_back({file_name + ": " + place, "names no source, or says that it is assumed",
                                "State where the value comes from, or write \"assumed\": true"});
    };
    need("source", text_of_field(document, "source"));
    const nlohmann::json& actions = document["actions"];
    const nlohmann::json own = actions.value("sources", nlohmann::json::object());
    for (const std::string& value : values_with_source()) {
        if (!actions.contains(value)) continue;  // left out: the recommended value of the standard
        const std::string source = text_of_field(own, value);
        need("actions.sources." + value, source.empty() ? text_of_field(actions, group_source_of(value)) : source);
    }
    need("tax.source", text_of_field(document["tax"], "source"));
    for (const char* list : {"market", "service"}) {
        for (std::size_t i = 0; i < document[list].size(); ++i)
            need(std::string(list) + '[' + std::to_string(i) + "].source", text_of_field(document[list][i], "source"));
    }
    if (document.contains("charge_duties"))
        need("charge_duties.source", text_of_field(document["charge_duties"], "source"));
}

}  // namespace

Result<RuleSet> rule_set_from_json(std::string_view text, const std::string& file_name) {
    std::vector<Problem> problems;
    nlohmann::json document;
    if (!fields::parse(text, file_name, rule_set_schema, document, problems)) return problems;
    Reader root(document, file_name, problems);
    (void)root.whole("schema", rule_set_schema, rule_set_schema);
    (void)root.text_or("note", "");
    RuleSet rules;
    rules.id = root.text("id");
    rules.label = root.text("label");
    rules.source = root.text("source");
    rules.assumed = root.flag("assumed");
    if (auto actions = root.object("actions")) rules.actions = read_actions(std::move(*actions));
    if (auto tax = root.object("tax")) rules.tax = read_tax(std::move(*tax));
    rules.market = read_market(root);
    rules.service = read_service(root);
    if (auto duties = root.object("charge_duties", false)) rules.duties = read_duties(std::move(*duties));
    root.done();
    if (problems.empty() && !rules.assumed) ask_for_sources(document, file_name, problems);
    if (!problems.empty()) return problems;
    return rules;
}

}  // namespace wg::plan
