#include "core/parts/prices.h"

#include <cmath>
#include <nlohmann/json.hpp>
#include <set>

#include "core/equipment/fields.h"
#include "core/quantity/utf8.h"

namespace wg::parts {
namespace {

using fields::figure;
using fields::Reader;

constexpr int price_list_schema = 1;
constexpr double most_price = 1e7;  // of one unit; keeps every sum far inside 64 bits

// Prices stand in the file as people write them, in whole units with at most two decimals.
Money read_money(Reader& r, const char* key) {
    const double amount = r.number(key, 0.0, most_price, "");
    const double minor = amount * 100.0;
    const double whole = std::round(minor);
    if (std::fabs(minor - whole) > 1e-6 * std::fmax(1.0, minor * 1e-6)) {
        r.problem(key, "is " + figure(amount) + ", which has more than two decimals", "Round it to two decimals");
    }
    return {static_cast<std::int64_t>(whole)};
}

PriceItem read_item(Reader& r) {
    PriceItem item;
    item.id = r.text("id");
    r.name_by(item.id);
    item.text = r.text("text");
    static const std::vector<std::string> units = {"pc", "m", "kg", "h"};
    item.unit = units[r.one_of("unit", units)];
    item.price = read_money(r, "price");
    item.pack = r.number_or("pack", 0.0, 0.0, 10000.0, "");
    item.tax_class = r.text("tax_class");
    r.done();
    return item;
}

LabourTask read_task(Reader& r) {
    LabourTask task;
    task.id = r.text("id");
    r.name_by(task.id);
    task.text = r.text("text");
    task.hours = r.number_or("hours", 0.0, 0.0, 1000.0, "h");
    task.hours_per_m = r.number_or("hours_per_m", 0.0, 0.0, 50.0, "h/m");
    task.hours_per_point = r.number_or("hours_per_point", 0.0, 0.0, 50.0, "h");
    task.hours_per_collector = r.number_or("hours_per_collector", 0.0, 0.0, 200.0, "h");
    if (task.hours + task.hours_per_m + task.hours_per_point + task.hours_per_collector <= 0.0) {
        r.problem("hours", "and all hours_per_... are 0 or missing", "Give at least one, or leave the task out");
    }
    r.done();
    return task;
}

economy::Tariffs read_tariffs(Reader r) {
    economy::Tariffs t;
    const auto price = [&r](const char* key) { return r.number(key, 0.0, 10000.0, "minor units/kWh"); };
    const auto emission = [&r](const char* key) { return r.number(key, 0.0, 3.0, "kg CO2/kWh"); };
    t.electricity_minor_kwh = price("electricity_minor_kwh");
    t.gas_minor_kwh = price("gas_minor_kwh");
    t.lpg_minor_kwh = price("lpg_minor_kwh");
    t.oil_minor_kwh = price("oil_minor_kwh");
    t.wood_minor_kwh = price("wood_minor_kwh");
    t.electricity_kg_co2_kwh = emission("electricity_kg_co2_kwh");
    t.gas_kg_co2_kwh = emission("gas_kg_co2_kwh");
    t.lpg_kg_co2_kwh = emission("lpg_kg_co2_kwh");
    t.oil_kg_co2_kwh = emission("oil_kg_co2_kwh");
    t.wood_kg_co2_kwh = emission("wood_kg_co2_kwh");
    t.yearly_rise = r.number("yearly_rise", -0.2, 0.3, "(0.02 is 2 %)");
    t.discount_rate = r.number("discount_rate", -0.05, 0.3, "(0.03 is 3 %)");
    t.years = r.whole("years", 1, 60);
    t.yearly_service_minor = r.number("yearly_service_minor", 0.0, 1e7, "minor units");
    t.source = r.text("source");
    r.done();
    return t;
}

void check_currency(Reader& root, const std::string& code) {
    const bool shaped = code.size() == 3 && code.find_first_not_of("ABCDEFGHIJKLMNOPQRSTUVWXYZ") == std::string::npos;
    if (!shaped) {
        root.problem("currency", "'" + for_message(code, 10) + "' is not a currency code",
                     "Use three capitals, e.g. EUR");
        return;
    }
    // Amounts are kept in hundredths; these currencies of ISO 4217 have none, or have thousandths.
    static const std::set<std::string> other = {"BHD", "BIF", "CLF", "CLP", "DJF", "GNF", "IQD", "ISK", "JOD",
                                                "JPY", "KMF", "KRW", "KWD", "LYD", "OMR", "PYG", "RWF", "TND",
                                                "UGX", "UYI", "VND", "VUV", "XAF", "XOF", "XPF"};
    if (other.count(code) != 0) {
        root.problem("currency", code + " is not counted in hundredths", "Use a currency with two decimals");
    }
}

}  // namespace

Result<PriceList> price_list_from_json(std::string_view text, const std::string& file_name) {
    std::vector<Problem> problems;
    nlohmann::json document;
    if (!fields::parse(text, file_name, price_list_schema, document, problems)) return problems;
    Reader root(document, file_name, problems);
    (void)root.whole("schema", price_list_schema, price_list_schema);
    (void)root.text_or("note", "");
    PriceList list;
    list.id = root.text("id");
    list.label = root.text("label");
    list.invented = root.flag_or("invented", false);
    list.currency = root.text("currency");
    check_currency(root, list.currency);
    list.valid_from = root.date("valid_from");
    list.valid_to = root.date("valid_to");
    // ISO dates of equal length sort as text.
    if (list.valid_to < list.valid_from) root.problem("valid_to", "lies before valid_from", "Correct one of the two");
    list.labour_hour = read_money(root, "labour_hour");
    list.labour_tax_class = root.text("labour_tax_class");
    std::set<std::string> ids;
    for (Reader& r : root.objects("items")) {
        list.items.push_back(read_item(r));
        if (!ids.insert(list.items.back().id).second) r.problem("id", "is used twice", "Give each item its own id");
    }
    for (Reader& r : root.objects("tasks")) {
        list.tasks.push_back(read_task(r));
        if (!ids.insert(list.tasks.back().id).second) r.problem("id", "is used twice", "Give each task its own id");
    }
    if (auto tariffs = root.object("tariffs")) list.tariffs = read_tariffs(std::move(*tariffs));
    root.done();
    if (!problems.empty()) return problems;
    return list;
}

const PriceItem* find_item(const PriceList& list, const std::string& id) noexcept {
    for (const PriceItem& item : list.items) {
        if (item.id == id) return &item;
    }
    return nullptr;
}

}  // namespace wg::parts
