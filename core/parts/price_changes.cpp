#include "core/parts/price_changes.h"

#include <map>

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
            {"supplier's number", item.supplier_number}};
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

template <class T>
void compare(const std::vector<T>& before, const std::vector<T>& after, const std::string& currency,
             std::vector<PriceChange>& out) {
    std::map<std::string, const T*> left;
    for (const T& one : before)
        left[one.id] = &one;
    for (const T& now : after) {
        const std::string name = now.text + " (" + now.id + ")";
        const auto was = left.find(now.id);
        if (was == left.end()) {
            out.push_back({name, "", "added"});
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
        if (left.count(one.id) != 0) out.push_back({one.text + " (" + one.id + ")", "was there", ""});
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
    const auto changed = [&field](const char* name, bool same) { field(name, "", same ? "" : "changed"); };
    changed("labour rates", before.labour_rates == after.labour_rates);
    changed("discount groups", before.discount_groups == after.discount_groups);
    changed("what makes work slower", before.difficulty == after.difficulty);
    changed("travel", before.travel == after.travel);
    changed("tax rates", before.tax_rates == after.tax_rates);
    changed("energy prices", before.tariffs == after.tariffs);
    return out;
}

}  // namespace wg::parts
