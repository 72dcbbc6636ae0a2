#include "core/plan/issued_plan.h"

#include <algorithm>
#include <array>
#include <string>
#include <utility>

#include "core/equipment/keys.h"

namespace wg::plan {
namespace {

using Json = nlohmann::json;
using quote::FrozenReader;

constexpr std::size_t most_corners = 100;
constexpr int most_valid_days = 36'500;

Json flat_point(Point2 p) {
    return {{"x_m", p.x_m}, {"y_m", p.y_m}};
}

Json space_point(Point3 p) {
    return {{"x_m", p.x_m}, {"y_m", p.y_m}, {"z_m", p.z_m}};
}

template <class Points, class Of>
Json points_json(const Points& points, const Of& of) {
    Json out = Json::array();
    for (const auto& p : points)
        out.push_back(of(p));
    return out;
}

Point2 flat_point_of(FrozenReader& read, const Json& object) {
    return {read.figure(object, "x_m"), read.figure(object, "y_m")};
}

Point3 space_point_of(FrozenReader& read, const Json& object) {
    return {read.figure(object, "x_m"), read.figure(object, "y_m"), read.figure(object, "z_m")};
}

template <class Point>
std::vector<Point> points_of(FrozenReader& read, const Json& object, const char* key,
                             Point (*of)(FrozenReader&, const Json&)) {
    const Json& list = read.list(object, key);
    std::vector<Point> out;
    if (list.size() > most_corners) {
        read.refuse(key);
        return out;
    }
    out.reserve(list.size());
    for (const Json& one : list)
        out.push_back(of(read, one));
    return out;
}

Json placement_json(const PlacementPlan& p) {
    const site::PlacedCollector& placed = p.placed;
    return {{"placement_id", p.placement_id},
            {"surface_id", p.surface_id},
            {"surface", p.surface_label},
            {"outline", points_json(placed.outline, flat_point)},
            {"corners", points_json(placed.corners, space_point)},
            {"liquid_connection", flat_point(placed.liquid_connection)},
            {"suction_connection", flat_point(placed.suction_connection)},
            {"connection", space_point(placed.connection_in_space)},
            {"tilt_deg", placed.tilt_deg},
            {"azimuth_deg", placed.azimuth_deg},
            {"lowest_m", placed.lowest_m},
            {"highest_m", placed.highest_m},
            {"connection_turn_deg", placed.connection_turn_deg}};
}

PlacementPlan placement_of(FrozenReader& read, const Json& object) {
    PlacementPlan out;
    out.placement_id = read.text(object, "placement_id");
    out.surface_id = read.text(object, "surface_id");
    out.surface_label = read.text(object, "surface");
    site::PlacedCollector& placed = out.placed;
    placed.outline = points_of(read, object, "outline", flat_point_of);
    placed.corners = points_of(read, object, "corners", space_point_of);
    placed.liquid_connection = flat_point_of(read, read.object(object, "liquid_connection"));
    placed.suction_connection = flat_point_of(read, read.object(object, "suction_connection"));
    placed.connection_in_space = space_point_of(read, read.object(object, "connection"));
    placed.tilt_deg = read.figure(object, "tilt_deg");
    placed.azimuth_deg = read.figure(object, "azimuth_deg");
    placed.lowest_m = read.figure(object, "lowest_m");
    placed.highest_m = read.figure(object, "highest_m");
    placed.connection_turn_deg = read.figure(object, "connection_turn_deg");
    return out;
}

/// Names and sizes alone: what else an item has no quote tells, and its own format goes on.
Json sets_json(const Plan& plan) {
    const CollectorModel& c = plan.collector;
    return {
        {"collector",
         {{"id", c.id},
          {"name", c.name},
          {"length_m", c.length_m},
          {"width_m", c.width_m},
          {"liquid_connection", flat_point(c.liquid_connection)},
          {"suction_connection", flat_point(c.suction_connection)}}},
        {"block", {{"id", plan.block.id}, {"name", plan.block.name}, {"refrigerant", name_of(plan.block.refrigerant)}}},
        {"cylinder",
         {{"id", plan.cylinder.id},
          {"name", plan.cylinder.name},
          {"volume_l", plan.cylinder.volume_l},
          {"immersion_w", plan.cylinder.immersion_w}}}};
}

void read_sets(FrozenReader& read, const Json& object, Plan& out) {
    const Json& collector = read.object(object, "collector");
    out.collector.id = read.text(collector, "id");
    out.collector.name = read.text(collector, "name");
    out.collector.length_m = read.figure(collector, "length_m");
    out.collector.width_m = read.figure(collector, "width_m");
    out.collector.liquid_connection = flat_point_of(read, read.object(collector, "liquid_connection"));
    out.collector.suction_connection = flat_point_of(read, read.object(collector, "suction_connection"));
    const Json& block = read.object(object, "block");
    out.block.id = read.text(block, "id");
    out.block.name = read.text(block, "name");
    const std::vector<std::string>& refrigerants = equipment_keys::refrigerant();
    const auto refrigerant = std::find(refrigerants.begin(), refrigerants.end(), read.text(block, "refrigerant"));
    if (refrigerant == refrigerants.end()) {
        read.refuse("refrigerant");
    } else {
        out.block.refrigerant = static_cast<Refrigerant>(refrigerant - refrigerants.begin());
    }
    const Json& cylinder = read.object(object, "cylinder");
    out.cylinder.id = read.text(cylinder, "id");
    out.cylinder.name = read.text(cylinder, "name");
    out.cylinder.volume_l = read.figure(cylinder, "volume_l");
    out.cylinder.immersion_w = read.figure(cylinder, "immersion_w");
}

Json range_json(const Ranged& value) {
    return {{"low", value.low}, {"mid", value.mid}, {"high", value.high}};
}

Ranged range_of(FrozenReader& read, const Json& object, const char* key) {
    const Json& range = read.object(object, key);
    return {read.figure(range, "low"), read.figure(range, "mid"), read.figure(range, "high")};
}

Json figures_json(const Plan& plan) {
    return {{"heat_kwh", range_json(plan.figures.heat_kwh)},
            {"electricity_kwh", range_json(plan.figures.electricity_kwh)},
            {"seasonal_factor", range_json(plan.figures.seasonal_factor)},
            {"running_cost_minor", range_json(plan.figures.running_cost_minor)},
            {"present_cost_minor", plan.economy.present_cost.minor},
            {"co2_kg", plan.economy.co2_kg},
            {"present_co2_kg", plan.economy.present_co2_kg},
            {"simple_payback_y", plan.economy.simple_payback_y}};
}

void read_figures(FrozenReader& read, const Json& object, Plan& out) {
    out.figures.heat_kwh = range_of(read, object, "heat_kwh");
    out.figures.electricity_kwh = range_of(read, object, "electricity_kwh");
    out.figures.seasonal_factor = range_of(read, object, "seasonal_factor");
    out.figures.running_cost_minor = range_of(read, object, "running_cost_minor");
    out.economy.present_cost = read.money(object, "present_cost_minor");
    out.economy.co2_kg = read.figure(object, "co2_kg");
    out.economy.present_co2_kg = read.figure(object, "present_co2_kg");
    out.economy.simple_payback_y = read.figure(object, "simple_payback_y");
}

Json line_json(const parts::Line& line) {
    return {{"item", line.item_id},        {"text", line.text},     {"unit", line.unit},    {"to_buy", line.to_buy},
            {"net_minor", line.net.minor}, {"labour", line.labour}, {"priced", line.priced}};
}

parts::Line line_of_issued(FrozenReader& read, const Json& object) {
    parts::Line line;
    line.item_id = read.text(object, "item");
    line.text = read.text(object, "text");
    line.unit = read.text(object, "unit");
    line.to_buy = read.figure(object, "to_buy");
    line.net = read.money(object, "net_minor");
    line.labour = read.flag(object, "labour");
    line.priced = read.flag(object, "priced");
    return line;
}

Json price_json(const quote::Quote& price) {
    Json lines = Json::array();
    for (const parts::Line& line : price.lines)
        lines.push_back(line_json(line));
    Json taxes = Json::array();
    for (const quote::TaxSum& tax : price.taxes) {
        taxes.push_back({{"label", tax.rate.label},
                         {"rate", tax.rate.rate},
                         {"net_minor", tax.net.minor},
                         {"tax_minor", tax.tax.minor}});
    }
    return {{"lines", lines}, {"discount_minor", price.discount.minor}, {"net_minor", price.net.minor},
            {"taxes", taxes}, {"gross_minor", price.gross.minor},       {"valid_days", price.valid_days}};
}

quote::Quote price_of(FrozenReader& read, const Json& object, const std::string& currency) {
    quote::Quote out;
    out.currency = currency;
    for (const Json& line : read.list(object, "lines"))
        out.lines.push_back(line_of_issued(read, line));
    out.discount = read.money(object, "discount_minor");
    out.net = read.money(object, "net_minor");
    for (const Json& one : read.list(object, "taxes")) {
        quote::TaxSum tax;
        tax.rate.label = read.text(one, "label");
        tax.rate.rate = read.figure(one, "rate");
        tax.net = read.money(one, "net_minor");
        tax.tax = read.money(one, "tax_minor");
        out.taxes.push_back(std::move(tax));
    }
    out.gross = read.money(object, "gross_minor");
    out.valid_days = static_cast<int>(read.whole(object, "valid_days", 0, most_valid_days));
    return out;
}

Json offered_json(const quote::Offered& offered) {
    Json options = Json::array();
    for (const quote::Option& option : offered.options) {
        if (option.ticked) continue;  // stands among the lines of the price
        Json line = line_json(option.line.line);
        line["gross_minor"] = option.gross.minor;
        options.push_back(line);
    }
    Json subsidies = Json::array();
    for (const quote::Subsidy& one : offered.subsidies)
        subsidies.push_back({{"text", one.text}, {"granted_minor", one.granted.minor}});
    Json instalments = Json::array();
    for (const quote::InstalmentSum& part : offered.instalments)
        instalments.push_back({{"text", part.text}, {"percent", part.percent}, {"sum_minor", part.sum.minor}});
    return {{"options", options},
            {"subsidies", subsidies},
            {"instalments", instalments},
            {"granted_minor", offered.granted.minor},
            {"to_bring_minor", offered.to_bring.minor}};
}

quote::Offered offered_of(FrozenReader& read, const Json& object) {
    quote::Offered out;
    for (const Json& one : read.list(object, "options")) {
        quote::Option option;
        option.line.line = line_of_issued(read, one);
        option.gross = read.money(one, "gross_minor");
        out.options.push_back(std::move(option));
    }
    for (const Json& one : read.list(object, "subsidies"))
        out.subsidies.push_back({std::string(), read.text(one, "text"), read.money(one, "granted_minor")});
    for (const Json& one : read.list(object, "instalments"))
        out.instalments.push_back(
            {std::string(), read.text(one, "text"), read.figure(one, "percent"), read.money(one, "sum_minor")});
    out.granted = read.money(object, "granted_minor");
    out.to_bring = read.money(object, "to_bring_minor");
    return out;
}

constexpr std::array told_severities = {Severity::stop, Severity::caution, Severity::note};
// The one note that a quote tells.
constexpr const char* told_note = "water.scald";
constexpr std::array all_stages = {Stage::visit, Stage::layout,  Stage::yield,
                                   Stage::offer, Stage::fitting, Stage::aftercare};

Json findings_json(const std::vector<Finding>& findings) {
    Json out = Json::array();
    for (const Finding& finding : findings) {
        if (finding.severity == Severity::note && finding.code != told_note) continue;
        out.push_back({{"code", finding.code},
                       {"severity", word(finding.severity)},
                       {"stage", word(finding.stage)},
                       {"place", finding.place},
                       {"message", finding.message},
                       {"remedy", finding.remedy}});
    }
    return out;
}

template <class Values>
auto value_of_word(FrozenReader& read, const Json& object, const char* key, const Values& values) {
    const std::string told = read.text(object, key);
    for (const auto value : values)
        if (told == word(value)) return value;
    read.refuse(key);
    return values.front();
}

}  // namespace

Json issued_plan_json(const Plan& plan) {
    Json placements = Json::array();
    for (const PlacementPlan& placement : plan.placements)
        placements.push_back(placement_json(placement));
    Json out = {{"job_id", plan.job_id},
                {"revision", plan.job_revision},
                {"content_sha256", plan.content_sha256},
                {"mark", plan.plan_mark},
                {"invented", plan.invented},
                {"choice_id", plan.choice_id},
                {"choice", plan.choice_label},
                {"equipment", sets_json(plan)},
                {"weather", plan.weather_source},
                {"weather_invented", plan.weather_invented},
                {"price_list", plan.price_list_label},
                {"currency", plan.currency},
                {"placements", placements},
                {"range_method", plan.range_method},
                {"run_m", plan.run.length_m},
                {"to_be_made", plan.services.water.to_be_made},
                {"findings", findings_json(plan.findings)}};
    if (plan.has_yield) out["figures"] = figures_json(plan);
    if (plan.quote) out["price"] = price_json(*plan.quote);
    if (plan.offered) out["offered"] = offered_json(*plan.offered);
    return out;
}

void read_issued_plan(FrozenReader& read, const Json& object, Plan& out) {
    out.job_id = read.text(object, "job_id");
    out.job_revision = read.whole(object, "revision", 0, 1'000'000'000);
    out.content_sha256 = read.text(object, "content_sha256");
    out.plan_mark = read.text(object, "mark");
    out.invented = read.flag(object, "invented");
    out.choice_id = read.text(object, "choice_id");
    out.choice_label = read.text(object, "choice");
    read_sets(read, read.object(object, "equipment"), out);
    out.weather_source = read.text(object, "weather");
    out.weather_invented = read.flag(object, "weather_invented");
    out.price_list_label = read.text(object, "price_list");
    out.currency = read.text(object, "currency");
    for (const Json& placement : read.list(object, "placements"))
        out.placements.push_back(placement_of(read, placement));
    out.range_method = read.text(object, "range_method");
    out.run.length_m = read.figure(object, "run_m");
    const auto to_be_made = object.find("to_be_made");
    if (to_be_made != object.end() && to_be_made->is_array() && to_be_made->size() <= most_corners) {
        for (const Json& item : *to_be_made) {
            if (!item.is_string()) {
                read.refuse("to_be_made");
                break;
            }
            out.services.water.to_be_made.push_back(item.get<std::string>());
        }
    } else {
        read.refuse("to_be_made");
    }
    for (const Json& one : read.list(object, "findings")) {
        Finding finding;
        if (one.contains("code")) finding.code = read.text(one, "code");  // since schema 2
        finding.severity = value_of_word(read, one, "severity", told_severities);
        finding.stage = value_of_word(read, one, "stage", all_stages);
        finding.place = read.text(one, "place");
        finding.message = read.text(one, "message");
        finding.remedy = read.text(one, "remedy");
        out.findings.push_back(std::move(finding));
    }
    out.has_yield = object.contains("figures");
    if (out.has_yield) read_figures(read, read.object(object, "figures"), out);
    if (object.contains("price")) out.quote = price_of(read, read.object(object, "price"), out.currency);
    if (object.contains("offered")) out.offered = offered_of(read, read.object(object, "offered"));
    if (out.quote && out.offered) out.offered->quote = *out.quote;
}

}  // namespace wg::plan
