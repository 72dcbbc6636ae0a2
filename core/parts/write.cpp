#include <nlohmann/json.hpp>

#include "core/job/words.h"
#include "core/parts/prices.h"

namespace wg::parts {
namespace {

using nlohmann::ordered_json;

// Hundredths as people write them; the shortest digits that are the same number.
double in_units(Money amount) {
    return static_cast<double>(amount.minor) / 100.0;
}

void put_text(ordered_json& out, const char* key, const std::string& text) {
    if (!text.empty()) out[key] = text;
}

void put_money(ordered_json& out, const char* key, const std::optional<Money>& amount) {
    if (amount) out[key] = in_units(*amount);
}

ordered_json json_of(const PriceItem& item) {
    ordered_json out = {{"id", item.id}, {"text", item.text}, {"unit", item.unit}};
    if (item.supplier_price) {  // the cost follows from it
        put_money(out, "supplier_price", item.supplier_price);
        put_text(out, "discount_group", item.discount_group);
    } else {
        put_money(out, "cost", item.cost);
    }
    out["price"] = in_units(item.price);
    if (item.pack > 0.0) out["pack"] = item.pack;
    out["tax_class"] = item.tax_class;
    put_text(out, "supplier", item.supplier);
    put_text(out, "supplier_number", item.supplier_number);
    if (item.service) out["service"] = true;
    if (item.waste_percent) out["waste_percent"] = *item.waste_percent;
    for (const QuantityPrice& step : item.quantity_prices)
        out["quantity_prices"].push_back({{"from", step.from}, {"price", in_units(step.price)}});
    return out;
}

ordered_json json_of(const LabourTask& task) {
    ordered_json out = {{"id", task.id}, {"text", task.text}};
    const std::pair<const char*, double> hours[] = {{"hours", task.hours},
                                                    {"hours_per_m", task.hours_per_m},
                                                    {"hours_per_point", task.hours_per_point},
                                                    {"hours_per_collector", task.hours_per_collector}};
    for (const auto& [key, value] : hours)
        if (value > 0.0) out[key] = value;
    put_text(out, "rate", task.rate);
    const std::pair<const char*, bool> kinds[] = {{"height", task.by_height},
                                                  {"covering", task.by_covering},
                                                  {"access", task.by_access},
                                                  {"storeys", task.by_storeys}};
    for (const auto& [key, on] : kinds)
        if (on) out["slower_by"].push_back(key);
    return out;
}

ordered_json json_of(const LabourRate& rate) {
    ordered_json out = {{"id", rate.id}, {"text", rate.text}, {"hour", in_units(rate.hour)}};
    put_money(out, "cost", rate.cost);
    return out;
}

ordered_json json_of(const DiscountGroup& group) {
    ordered_json out = {{"id", group.id}};
    put_text(out, "text", group.text);
    out["percent"] = group.percent;
    return out;
}

ordered_json json_of(const DatedTaxRate& rate) {
    return {{"tax_class", rate.tax_class}, {"label", rate.label}, {"rate", rate.rate}, {"valid_from", rate.valid_from}};
}

template <class T>
void put_all(ordered_json& out, const char* key, const std::vector<T>& values) {
    for (const T& value : values)
        out[key].push_back(json_of(value));
}

ordered_json json_of(const Difficulty& d) {
    ordered_json out = ordered_json::object();
    for (const Difficulty::Height& one : d.heights)
        out["height"].push_back({{"over_m", one.over_m}, {"factor", one.factor}});
    for (const Difficulty::OfCovering& one : d.coverings)
        out["covering"].push_back({{"covering", key_of(one.covering)}, {"factor", one.factor}});
    for (const Difficulty::Access& one : d.access)
        out["access"].push_back({{"id", one.id}, {"text", one.text}, {"factor", one.factor}});
    if (d.each_storey > 0.0) out["each_storey"] = d.each_storey;
    return out;
}

ordered_json json_of(const economy::Tariffs& t) {
    return {{"electricity_minor_kwh", t.electricity_minor_kwh},
            {"gas_minor_kwh", t.gas_minor_kwh},
            {"lpg_minor_kwh", t.lpg_minor_kwh},
            {"oil_minor_kwh", t.oil_minor_kwh},
            {"wood_minor_kwh", t.wood_minor_kwh},
            {"electricity_kg_co2_kwh", t.electricity_kg_co2_kwh},
            {"gas_kg_co2_kwh", t.gas_kg_co2_kwh},
            {"lpg_kg_co2_kwh", t.lpg_kg_co2_kwh},
            {"oil_kg_co2_kwh", t.oil_kg_co2_kwh},
            {"wood_kg_co2_kwh", t.wood_kg_co2_kwh},
            {"yearly_rise", t.yearly_rise},
            {"discount_rate", t.discount_rate},
            {"years", t.years},
            {"yearly_service_minor", t.yearly_service_minor},
            {"source", t.source}};
}

}  // namespace

std::string price_list_to_json(const PriceList& list) {
    ordered_json out = {{"schema", 2}, {"id", list.id}, {"label", list.label}, {"invented", list.invented}};
    put_text(out, "note", list.note);
    out["currency"] = list.currency;
    out["valid_from"] = list.valid_from;
    out["valid_to"] = list.valid_to;
    out["labour_hour"] = in_units(list.labour_hour);
    put_money(out, "labour_cost", list.labour_cost);
    out["labour_tax_class"] = list.labour_tax_class;
    put_all(out, "labour_rates", list.labour_rates);
    put_all(out, "discount_groups", list.discount_groups);
    out["items"] = ordered_json::array();
    put_all(out, "items", list.items);
    out["tasks"] = ordered_json::array();
    put_all(out, "tasks", list.tasks);
    if (!(list.difficulty == Difficulty{})) out["difficulty"] = json_of(list.difficulty);
    if (list.travel) {
        out["travel"] = {{"km", in_units(list.travel->km)},
                         {"hour", in_units(list.travel->hour)},
                         {"km_h", list.travel->km_h},
                         {"trips", list.travel->trips},
                         {"tax_class", list.travel->tax_class}};
    }
    put_all(out, "tax_rates", list.tax_rates);
    out["tariffs"] = json_of(list.tariffs);
    // Text that is not UTF-8 cannot have come from a file; replaced rather than thrown.
    return out.dump(2, ' ', false, nlohmann::json::error_handler_t::replace) + '\n';
}

}  // namespace wg::parts
