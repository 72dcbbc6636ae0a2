#include "core/quote/purchase.h"

#include <algorithm>
#include <cmath>
#include <map>

#include "core/parts/price_entry.h"
#include "core/parts/stock.h"

namespace wg::quote {
namespace {

constexpr double least_amount = 5e-4;  // quantities count in thousandths

std::string trimmed_name(const std::string& name) {
    const auto first = name.find_first_not_of(" \t");
    if (first == std::string::npos) return {};
    return name.substr(first, name.find_last_not_of(" \t") - first + 1);
}

/// Names are told apart without capitals, where they are of the Latin alphabet.
std::string name_key(std::string name) {
    for (char& c : name)
        if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
    return name;
}

double whole_for(double quantity, const std::string& unit) {
    return parts::units_of_thousandths(parts::up_to_countable(quantity, unit));
}

/// The parts list has rounded up to packs; what is taken and what is short of need is reckoned without.
double wanted_of(const OfferedLine& offered_line, const Supply& supply) {
    const parts::Line& line = offered_line.line;
    const double wanted = offered_line.source == LineSource::plan
                              ? std::min(line.to_buy, line.quantity * (1.0 + supply.waste_share))
                              : line.to_buy;
    return whole_for(wanted, line.unit);
}

/// What is there and promised of an item, while the lines of a list take from it.
struct Pool {
    double in_stock = 0.0;
    double on_order = 0.0;
    double reserved = 0.0;
    double taken = 0.0;

    double take(double wanted) {
        const double at_the_job = std::min(taken, wanted);
        taken -= at_the_job;
        const double there = std::max(0.0, in_stock);
        const double free = std::clamp(there + on_order - reserved, 0.0, wanted - at_the_job);
        const double from_stock = std::min(there, free);
        in_stock -= from_stock;
        on_order -= free - from_stock;
        return at_the_job + free;
    }
};

/// Of what is wanted, when so much of it need not be bought; with nothing off it the parts list's figure stands.
void take_off(double covered, const Supply& supply, PurchaseLine& out) {
    if (covered < least_amount) return;
    const double rest = out.wanted - covered;
    if (rest < least_amount)
        out.to_order = 0.0;
    else if (supply.pack > 0.0)
        out.to_order = std::ceil((rest - least_amount) / supply.pack) * supply.pack;
    else
        out.to_order = whole_for(rest, out.unit);
}

/// The list price less the discount for the whole line, rounded once, as the supplier's invoice has it.
Money net_of(Money list_price, double discount_percent, double quantity) {
    return scaled_exact(list_price, in_last_place(quantity, 3) * (10'000 - in_last_place(discount_percent, 2)),
                        std::int64_t{1000} * 10'000);
}

void put_prices(const Supply& supply, PurchaseLine& out) {
    out.list_price = supply.list_price;
    out.discount_percent = supply.discount_percent;
    out.cost = supply.cost;
    if (supply.list_price)
        out.net = net_of(*supply.list_price, supply.discount_percent, out.to_order);
    else if (supply.cost)
        out.net = line_net(*supply.cost, out.to_order);
}

bool is_bought(const OfferedLine& line) {
    return !line.line.labour && !line.left_out && line.line.to_buy >= least_amount;
}

/// Lines that are in, then options that are ticked.
template <class Take>
void each_bought(const Offered& offered, const Take& take) {
    for (const OfferedLine& line : offered.lines)
        if (is_bought(line)) take(line);
    for (const Option& option : offered.options)
        if (option.ticked && is_bought(option.line)) take(option.line);
}

Supply supply_for(const SupplyOf& supply_of, const OfferedLine& line) {
    Supply supply;
    if (supply_of && !line.line.item_id.empty()) supply = supply_of(line.line.item_id);
    // The office's word for this very line goes before the price list's.
    if (!line.supplier.empty()) supply.supplier = line.supplier;
    return supply;
}

}  // namespace

Supply supply_in(const parts::PriceList& list, const std::string& item_id) {
    Supply out;
    const parts::PriceItem* item = parts::find_item(list, item_id);
    if (item == nullptr) return out;
    out.supplier = item->supplier;
    out.number = item->supplier_number;
    out.pack = item->pack;
    out.waste_share = parts::waste_share_of(*item);
    out.service = item->service;
    out.list_price = item->supplier_price;
    out.cost = item->cost;
    for (const parts::DiscountGroup& group : list.discount_groups)
        if (!item->discount_group.empty() && group.id == item->discount_group) out.discount_percent = group.percent;
    return out;
}

std::vector<PurchaseGroup> purchase_list(const Offered& offered, const SupplyOf& supply_of,
                                         const OrderedBefore& ordered_before) {
    std::map<std::string, PurchaseGroup> groups;
    std::map<std::string, Pool> pools;  // by item
    OrderedBefore ordered = ordered_before;
    const auto take_what_is_free = [&pools](const Supply& supply, PurchaseLine& out) {
        Pool& pool = pools
                         .emplace(out.item_id, Pool{supply.in_stock.value_or(0.0), supply.on_order, supply.reserved,
                                                    std::max(0.0, supply.taken)})
                         .first->second;
        if (supply.in_stock) out.in_stock = pool.in_stock;
        out.on_order = pool.on_order;
        out.reserved = pool.reserved;
        out.taken = pool.taken;
        out.orders = supply.orders;
        out.reservations = supply.reservations;
        take_off(pool.take(out.wanted), supply, out);
    };
    const auto leave_out_ordered = [&ordered](const Supply& supply, PurchaseLine& out) {
        const auto before = ordered.find({out.item_id.empty() ? out.text : out.item_id, out.unit});
        if (before == ordered.end()) return;
        out.ordered_before = before->second;
        const double covered = std::min(before->second, out.wanted);
        before->second -= covered;
        take_off(covered, supply, out);
    };
    each_bought(offered, [&](const OfferedLine& offered_line) {
        const parts::Line& line = offered_line.line;
        const Supply supply = supply_for(supply_of, offered_line);
        PurchaseLine out;
        out.item_id = line.item_id;
        out.text = line.text;
        out.unit = line.unit;
        out.number = supply.number;
        out.needed = line.quantity;
        out.wanted = wanted_of(offered_line, supply);
        out.to_order = parts::counted_whole(line.unit) ? whole_for(line.to_buy, line.unit) : line.to_buy;
        out.pack = supply.pack;
        out.service = supply.service;
        if (line.item_id.empty() || supply.service || line.unit == "h")
            leave_out_ordered(supply, out);
        else
            take_what_is_free(supply, out);
        // A thousandth below the next whole pack is that pack: what is counted is what was rounded to packs.
        if (supply.pack > 0.0 && out.to_order >= least_amount)
            out.packs = std::ceil((out.to_order - least_amount) / supply.pack);
        put_prices(supply, out);
        const std::string name = trimmed_name(supply.supplier);
        PurchaseGroup& group = groups[name_key(name)];
        if (group.supplier.empty()) group.supplier = name;
        group.net += out.net.value_or(Money{});
        if (!out.net && out.to_order >= least_amount) ++group.without_price;
        group.lines.push_back(std::move(out));
    });
    std::vector<PurchaseGroup> out;
    out.reserve(groups.size());
    for (auto& [key, group] : groups)
        if (!key.empty()) out.push_back(std::move(group));
    if (const auto none = groups.find(""); none != groups.end()) out.push_back(std::move(none->second));
    return out;
}

std::vector<StockNeed> stock_needs(const Offered& offered, const SupplyOf& supply_of) {
    std::vector<StockNeed> out;
    each_bought(offered, [&](const OfferedLine& offered_line) {
        const parts::Line& line = offered_line.line;
        const Supply supply = supply_for(supply_of, offered_line);
        if (line.item_id.empty() || supply.service || line.unit == "h") return;
        const double wanted = wanted_of(offered_line, supply);
        const auto known = std::find_if(out.begin(), out.end(), [&](const StockNeed& one) {
            return one.item_id == line.item_id && one.unit == line.unit;
        });
        if (known == out.end())
            out.push_back({line.item_id, line.text, line.unit, wanted});
        else
            known->quantity += wanted;
    });
    return out;
}

}  // namespace wg::quote
