#include "core/parts/price_changes.h"

#include <map>
#include <string_view>
#include <type_traits>

#include "core/job/words.h"
#include "core/quantity/text.h"

namespace wg::parts {
namespace {

using Fields = std::vector<std::pair<const char*, std::string>>;

std::string amount_or_none(const std::optional<Money>& amount, const std::string& currency) {
    return amount ? text(*amount, currency) : std::string("not told");
}

Fields fields_of(const PriceItem& item, const std::string& currency) {
    std::string many;
    for (const QuantityPrice& step : item.quantity_prices) {
        many += many.empty() ? "" : ", ";
        many += "from " + plain(step.from, 3) + " ";
        many += text(step.price, currency);
    }
    return {{"text", item.text},
            {"unit", item.unit},
            {"price", text(item.price, currency)},
            {"cost", amount_or_none(item.cost, currency)},
            {"supplier's price", amount_or_none(item.supplier_price, currency)},
            {"discount group", item.discount_group},
            {"pack", plain(item.pack, 3)},
            {"waste", item.waste_percent ? plain(*item.waste_percent, 3) + " %" : "not told"},
            {"prices of many", many},
            {"tax class", item.tax_class},
            {"supplier", item.supplier},
            {"supplier's number", item.supplier_number},
            {"stock", item.service ? "not kept" : "kept"}};
}

Fields fields_of(const LabourTask& task, const std::string&) {
    std::string slower;
    const std::pair<bool, const char*> kinds[] = {{task.by_height, "height "},
                                                  {task.by_covering, "covering "},
                                                  {task.by_access, "access "},
                                                  {task.by_storeys, "storeys "}};
    for (const auto& [on, word] : kinds)
        if (on) slower += word;
    return {{"text", task.text},
            {"hours", plain(task.hours, 4)},
            {"hours per m", plain(task.hours_per_m, 4)},
            {"hours per point", plain(task.hours_per_point, 4)},
            {"hours per collector", plain(task.hours_per_collector, 4)},
            {"rate", task.rate},
            {"slower by", slower}};
}

Fields fields_of(const LabourRate& rate, const std::string& currency) {
    return {{"text", rate.text},
            {"an hour", text(rate.hour, currency)},
            {"cost of an hour", amount_or_none(rate.cost, currency)}};
}

Fields fields_of(const DiscountGroup& group, const std::string&) {
    return {{"text", group.text}, {"discount", plain(group.percent, 2) + " %"}};
}

/// A row of what makes work slower, or of dated taxes: told under a name that finds it again.
struct NamedRow {
    std::string id;
    std::string text;
    Fields fields;
};

Fields fields_of(const NamedRow& row, const std::string&) {
    return row.fields;
}

std::vector<NamedRow> difficulty_rows(const Difficulty& d) {
    std::vector<NamedRow> out;
    for (const Difficulty::Height& one : d.heights)
        out.push_back({"height", "over " + plain(one.over_m, 3) + " m", {{"hours times", plain(one.factor, 4)}}});
    for (const Difficulty::OfCovering& one : d.coverings)
        out.push_back({"covering", wg::text_of(one.covering), {{"hours times", plain(one.factor, 4)}}});
    for (const Difficulty::Access& one : d.access)
        out.push_back({one.id, one.text, {{"hours times", plain(one.factor, 4)}}});
    return out;
}

std::vector<NamedRow> tax_rows(const std::vector<DatedTaxRate>& rates) {
    std::vector<NamedRow> out;
    out.reserve(rates.size());
    for (const DatedTaxRate& one : rates)
        out.push_back({one.valid_from,
                       "tax " + one.tax_class,
                       {{"label", one.label}, {"rate", plain(100.0 * one.rate, 4) + " %"}}});
    return out;
}

Fields fields_of(const std::optional<Travel>& travel, const std::string& currency) {
    if (!travel) return {{"", "not reckoned"}};
    return {{"a kilometre", text(travel->km, currency)},
            {"an hour on the road", text(travel->hour, currency)},
            {"speed", plain(travel->km_h, 2) + " km/h"},
            {"trips", std::to_string(travel->trips)},
            {"tax class", travel->tax_class}};
}

Fields fields_of(const economy::Tariffs& t) {
    const auto kwh = [](double minor) { return plain(minor / 100.0, 6); };
    return {{"electricity, a kWh", kwh(t.electricity_minor_kwh)},
            {"gas, a kWh", kwh(t.gas_minor_kwh)},
            {"liquid gas, a kWh", kwh(t.lpg_minor_kwh)},
            {"oil, a kWh", kwh(t.oil_minor_kwh)},
            {"wood, a kWh", kwh(t.wood_minor_kwh)},
            {"electricity, kg CO2 a kWh", plain(t.electricity_kg_co2_kwh, 4)},
            {"gas, kg CO2 a kWh", plain(t.gas_kg_co2_kwh, 4)},
            {"liquid gas, kg CO2 a kWh", plain(t.lpg_kg_co2_kwh, 4)},
            {"oil, kg CO2 a kWh", plain(t.oil_kg_co2_kwh, 4)},
            {"wood, kg CO2 a kWh", plain(t.wood_kg_co2_kwh, 4)},
            {"energy rises a year by", plain(100.0 * t.yearly_rise, 4) + " %"},
            {"discounted a year by", plain(100.0 * t.discount_rate, 4) + " %"},
            {"years looked at", std::to_string(t.years)},
            {"service a year", kwh(t.yearly_service_minor)},
            {"source of energy prices", t.source}};
}

/// "added: rate 8.1 %, label VAT": a row that is new or gone, with what stands in it.
std::string whole_row(const char* word, const Fields& fields) {
    std::string out;
    for (const auto& [name, value] : fields) {
        if (value.empty() || value == "0" || value == "not told" || std::string_view(name) == "text") continue;
        out += out.empty() ? ": " : ", ";
        out.append(name).append(" ").append(value);
    }
    return word + out;
}

template <class T>
void compare(const std::vector<T>& before, const std::vector<T>& after, const std::string& currency,
             std::vector<PriceChange>& out) {
    // By text, too, where rows of one kind have no id of their own.
    const auto key_of = [](const T& one) {
        if constexpr (std::is_same_v<T, NamedRow>)
            return one.id + '\n' + one.text;
        else
            return one.id;
    };
    std::map<std::string, const T*> left;
    for (const T& one : before)
        left[key_of(one)] = &one;
    for (const T& now : after) {
        const std::string name = now.text + " (" + now.id + ")";
        const auto was = left.find(key_of(now));
        if (was == left.end()) {
            out.push_back({name, "", whole_row("added", fields_of(now, currency))});
            continue;
        }
        const Fields old_fields = fields_of(*was->second, currency);
        const Fields new_fields = fields_of(now, currency);
        for (std::size_t i = 0; i < new_fields.size(); ++i) {
            if (old_fields[i].second == new_fields[i].second) continue;
            out.push_back({name + ": " + new_fields[i].first, old_fields[i].second, new_fields[i].second});
        }
        left.erase(was);
    }
    for (const T& one : before)  // in the order of the list, not of the map
        if (left.count(key_of(one)) != 0)
            out.push_back({one.text + " (" + one.id + ")", whole_row("was there", fields_of(one, currency)), ""});
}

void compare_fields(const std::string& of, const Fields& before, const Fields& after, std::vector<PriceChange>& out) {
    if (before.size() != after.size()) {  // one of the two is not there at all
        out.push_back(
            {of, before.size() == 1 ? before[0].second : "was there", after.size() == 1 ? after[0].second : "added"});
        return;
    }
    for (std::size_t i = 0; i < after.size(); ++i)
        if (before[i].second != after[i].second)
            out.push_back(
                {of.empty() ? after[i].first : of + ", " + after[i].first, before[i].second, after[i].second});
}

}  // namespace

std::vector<PriceChange> price_changes(const PriceList& before, const PriceList& after) {
    std::vector<PriceChange> out;
    compare(before.items, after.items, after.currency, out);
    compare(before.tasks, after.tasks, after.currency, out);
    const auto field = [&out](const char* name, const std::string& was, const std::string& is) {
        if (was != is) out.push_back({name, was, is});
    };
    field("name of the list", before.label, after.label);
    field("currency", before.currency, after.currency);
    field("holds from", before.valid_from, after.valid_from);
    field("holds until", before.valid_to, after.valid_to);
    field("an hour of work", text(before.labour_hour, before.currency), text(after.labour_hour, after.currency));
    field("cost of an hour", amount_or_none(before.labour_cost, before.currency),
          amount_or_none(after.labour_cost, after.currency));
    field("tax class of work", before.labour_tax_class, after.labour_tax_class);
    field("note", before.note, after.note);
    field("prices invented or not checked", before.invented ? "yes" : "no", after.invented ? "yes" : "no");
    compare(before.labour_rates, after.labour_rates, after.currency, out);
    compare(before.discount_groups, after.discount_groups, after.currency, out);
    compare(difficulty_rows(before.difficulty), difficulty_rows(after.difficulty), after.currency, out);
    field("each storey adds", plain(100.0 * before.difficulty.each_storey, 4) + " %",
          plain(100.0 * after.difficulty.each_storey, 4) + " %");
    compare_fields("travel", fields_of(before.travel, before.currency), fields_of(after.travel, after.currency), out);
    compare(tax_rows(before.tax_rates), tax_rows(after.tax_rates), after.currency, out);
    compare_fields("", fields_of(before.tariffs), fields_of(after.tariffs), out);
    return out;
}

}  // namespace wg::parts
