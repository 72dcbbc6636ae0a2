#include "core/parts/prices.h"

#include <algorithm>
#include <cmath>
#include <nlohmann/json.hpp>
#include <set>
#include <utility>

#include "core/equipment/fields.h"
#include "core/job/words.h"
#include "core/quantity/utf8.h"

namespace wg::parts {
namespace {

using fields::figure;
using fields::Reader;

constexpr int price_list_schema = 2;
constexpr double most_waste_percent = 100.0;
constexpr double most_margin = 1000.0;
constexpr double smallest_pack = 0.001;  // quantities count in thousandths
constexpr double most_price = 1e7;       // of one unit; keeps every sum far inside 64 bits

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

double read_percent(Reader& r, const char* key, double least, double most) {
    return r.number(key, least, most, "percent");
}

std::optional<Money> read_money_if_any(Reader& r, const char* key) {
    if (!r.has(key)) return std::nullopt;
    return read_money(r, key);
}

// Cost and price, each as it is, or one from the other.
void read_cost_and_price(Reader& r, const std::vector<DiscountGroup>& groups, PriceItem& item) {
    item.cost = read_money_if_any(r, "cost");
    item.supplier_price = read_money_if_any(r, "supplier_price");
    item.discount_group = r.text_or("discount_group", "");
    double discount = 0.0;
    if (!item.discount_group.empty()) {
        const auto group =
            std::find_if(groups.begin(), groups.end(), [&](const auto& g) { return g.id == item.discount_group; });
        if (group != groups.end()) {
            discount = group->percent;
        } else {
            r.problem("discount_group", "'" + for_message(item.discount_group) + "' is none of discount_groups",
                      "Name one of them, or leave it out");
        }
        if (!item.supplier_price) {
            r.problem("discount_group", "stands without a supplier_price to take it off", "Give supplier_price");
        }
    }
    if (item.supplier_price) {
        if (item.cost) r.problem("cost", "stands beside supplier_price, from which it follows", "Give one of the two");
        item.cost = cost_after_discount(*item.supplier_price, discount);
    }
    if (r.has("price")) {
        item.price = read_money(r, "price");
        if (r.has("margin_percent")) {
            r.problem("margin_percent", "stands beside price, from which it follows", "Give one of the two");
            r.skip("margin_percent");
        }
        return;
    }
    if (!r.has("margin_percent") || !item.cost) {
        r.problem("price", "is missing", "Give price, or cost and margin_percent");
        r.skip("margin_percent");
        return;
    }
    item.price = price_with_margin(*item.cost, read_percent(r, "margin_percent", -100.0, most_margin));
}

void read_quantity_prices(Reader& r, PriceItem& item) {
    for (Reader& one : r.objects("quantity_prices", false)) {
        QuantityPrice price;
        price.from = one.number("from", 0.0, 1e6, "");
        price.price = read_money(one, "price");
        if (!item.quantity_prices.empty() && price.from <= item.quantity_prices.back().from) {
            one.problem("from", "does not lie above the one before", "Put them in rising order");
        }
        item.quantity_prices.push_back(price);
        one.done();
    }
}

PriceItem read_item(Reader& r, const std::vector<DiscountGroup>& groups) {
    PriceItem item;
    item.id = r.text("id");
    r.name_by(item.id);
    item.text = r.text("text");
    static const std::vector<std::string> units = {"pc", "m", "kg", "h"};
    item.unit = units[r.one_of("unit", units)];
    read_cost_and_price(r, groups, item);
    item.pack = r.number_or("pack", 0.0, 0.0, 10000.0, "");
    if (item.pack > 0.0 && item.pack < smallest_pack)
        r.problem("pack", "is below a thousandth of the unit", "Give the units in a pack, or leave it out");
    item.tax_class = r.text("tax_class");
    item.supplier = r.text_or("supplier", "");
    item.supplier_number = r.text_or("supplier_number", "");
    item.service = r.flag_or("service", false);
    if (r.has("waste_percent")) item.waste_percent = read_percent(r, "waste_percent", 0.0, most_waste_percent);
    read_quantity_prices(r, item);
    r.done();
    return item;
}

LabourTask read_task(Reader& r, const std::vector<LabourRate>& rates) {
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
    task.rate = r.text_or("rate", "");
    if (!task.rate.empty() &&
        std::none_of(rates.begin(), rates.end(), [&](const LabourRate& rate) { return rate.id == task.rate; })) {
        r.problem("rate", "'" + for_message(task.rate) + "' is none of labour_rates", "Name one of them");
    }
    for (const std::string& kind : r.texts("slower_by", false)) {
        if (kind == "height") {
            task.by_height = true;
        } else if (kind == "covering") {
            task.by_covering = true;
        } else if (kind == "access") {
            task.by_access = true;
        } else if (kind == "storeys") {
            task.by_storeys = true;
        } else {
            r.problem("slower_by", "names '" + for_message(kind) + "'", "Use height, covering, access, storeys");
        }
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

std::vector<LabourRate> read_labour_rates(Reader& root) {
    std::vector<LabourRate> out;
    std::set<std::string> ids;
    for (Reader& r : root.objects("labour_rates", false)) {
        LabourRate rate;
        rate.id = r.text("id");
        r.name_by(rate.id);
        rate.text = r.text("text");
        rate.hour = read_money(r, "hour");
        rate.cost = read_money_if_any(r, "cost");
        if (!ids.insert(rate.id).second) r.problem("id", "is used twice", "Give each rate its own id");
        r.done();
        out.push_back(std::move(rate));
    }
    return out;
}

std::vector<DiscountGroup> read_discount_groups(Reader& root) {
    std::vector<DiscountGroup> out;
    std::set<std::string> ids;
    for (Reader& r : root.objects("discount_groups", false)) {
        DiscountGroup group;
        group.id = r.text("id");
        r.name_by(group.id);
        group.text = r.text_or("text", "");
        group.percent = read_percent(r, "percent", 0.0, 100.0);
        if (!ids.insert(group.id).second) r.problem("id", "is used twice", "Give each group its own id");
        r.done();
        out.push_back(std::move(group));
    }
    return out;
}

double read_factor(Reader& r) {
    return r.number("factor", 0.1, 10.0, "");
}

Difficulty read_difficulty(Reader r) {
    Difficulty d;
    for (Reader& one : r.objects("height", false)) {
        Difficulty::Height height;
        height.over_m = one.number("over_m", 0.0, 100.0, "m");
        height.factor = read_factor(one);
        if (!d.heights.empty() && height.over_m <= d.heights.back().over_m)
            one.problem("over_m", "does not lie above the one before", "Put them in rising order");
        one.done();
        d.heights.push_back(height);
    }
    std::set<Covering> told;
    for (Reader& one : r.objects("covering", false)) {
        const std::string key = one.text("covering");
        const double factor = read_factor(one);
        one.done();
        const std::optional<Covering> covering = from_key<Covering>(key);
        if (!covering || !told.insert(*covering).second) {
            one.problem("covering", "'" + for_message(key) + "' is no covering, or stands twice",
                        "Use each of the job file's words once, e.g. slate");
            continue;
        }
        d.coverings.push_back({*covering, factor});
    }
    std::set<std::string> ids;
    for (Reader& one : r.objects("access", false)) {
        Difficulty::Access access;
        access.id = one.text("id");
        one.name_by(access.id);
        access.text = one.text("text");
        access.factor = read_factor(one);
        if (!ids.insert(access.id).second) one.problem("id", "is used twice", "Give each way its own id");
        one.done();
        d.access.push_back(std::move(access));
    }
    d.each_storey = r.number_or("each_storey", 0.0, 0.0, 2.0, "(0.1 is 10 % for each)");
    r.done();
    return d;
}

Travel read_travel(Reader r) {
    Travel t;
    t.km = read_money(r, "km");
    t.hour = read_money(r, "hour");
    t.km_h = r.number("km_h", 5.0, 130.0, "km/h");
    t.trips = r.whole("trips", 1, 100);
    t.tax_class = r.text("tax_class");
    r.done();
    return t;
}

std::vector<DatedTaxRate> read_tax_rates(Reader& root) {
    std::vector<DatedTaxRate> out;
    std::set<std::pair<std::string, std::string>> known;
    for (Reader& r : root.objects("tax_rates", false)) {
        DatedTaxRate rate;
        rate.tax_class = r.text("tax_class");
        r.name_by(rate.tax_class);
        rate.label = r.text("label");
        rate.rate = r.number("rate", 0.0, 1.0, "(0.2 is 20 %)");
        rate.valid_from = r.date("valid_from");
        if (!known.insert({rate.tax_class, rate.valid_from}).second)
            r.problem("valid_from", "stands twice for the class", "Keep one of the two");
        r.done();
        out.push_back(std::move(rate));
    }
    return out;
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
    if (!fields::parse(text, file_name, price_list_schema, document, problems, 1)) return problems;
    Reader root(document, file_name, problems);
    (void)root.whole("schema", 1, price_list_schema);
    PriceList list;
    list.note = root.text_or("note", "");
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
    list.labour_cost = read_money_if_any(root, "labour_cost");
    list.labour_rates = read_labour_rates(root);
    list.discount_groups = read_discount_groups(root);
    std::set<std::string> ids;
    for (Reader& r : root.objects("items")) {
        list.items.push_back(read_item(r, list.discount_groups));
        if (!ids.insert(list.items.back().id).second) r.problem("id", "is used twice", "Give each item its own id");
    }
    for (Reader& r : root.objects("tasks")) {
        list.tasks.push_back(read_task(r, list.labour_rates));
        if (!ids.insert(list.tasks.back().id).second) r.problem("id", "is used twice", "Give each task its own id");
    }
    if (auto difficulty = root.object("difficulty", false)) list.difficulty = read_difficulty(std::move(*difficulty));
    if (auto travel = root.object("travel", false)) list.travel = read_travel(std::move(*travel));
    list.tax_rates = read_tax_rates(root);
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

std::optional<double> margin_percent(const PriceItem& item) noexcept {
    if (!item.cost || item.cost->minor <= 0) return std::nullopt;
    return 100.0 * static_cast<double>(item.price.minor - item.cost->minor) / static_cast<double>(item.cost->minor);
}

Money price_with_margin(Money cost, double margin_percent) {
    return scaled_exact(cost, 100'000 + in_last_place(margin_percent, 3), 100'000);
}

Money cost_after_discount(Money supplier_price, double discount_percent) {
    return scaled_exact(supplier_price, 10'000 - in_last_place(discount_percent, 2), 10'000);
}

Money unit_price_of(const PriceItem& item, double quantity) noexcept {
    Money price = item.price;
    for (const QuantityPrice& step : item.quantity_prices)
        if (quantity >= step.from) price = step.price;
    return price;
}

}  // namespace wg::parts
