#include "core/quote/purchase.h"

#include <algorithm>
#include <cmath>
#include <map>

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

}  // namespace

std::vector<PurchaseGroup> purchase_list(const Offered& offered, const SupplyOf& supply_of) {
    std::map<std::string, PurchaseGroup> groups;
    std::map<std::string, double> left;  // in stock, by item
    const auto take_from_stock = [&left](const OfferedLine& offered_line, const Supply& supply, PurchaseLine& out) {
        const parts::Line& line = offered_line.line;
        double& stock = left.emplace(line.item_id, *supply.in_stock).first->second;
        out.in_stock = stock;
        if (stock < least_amount) return;
        // The parts list has rounded up to packs; what is short of need is rounded anew.
        const double wanted = offered_line.source == LineSource::plan
                                  ? std::min(line.to_buy, line.quantity * (1.0 + supply.waste_share))
                                  : line.to_buy;
        const double taken = std::min(stock, wanted);
        stock -= taken;
        const double rest = wanted - taken;
        if (rest < least_amount)
            out.to_order = 0.0;
        else if (supply.pack > 0.0)
            out.to_order = std::ceil((rest - least_amount) / supply.pack) * supply.pack;
        else
            out.to_order = std::ceil(rest * 1000.0 - 1e-6) / 1000.0;
    };
    const auto take = [&](const OfferedLine& offered_line) {
        const parts::Line& line = offered_line.line;
        if (line.labour || offered_line.left_out || line.to_buy < least_amount) return;
        Supply supply;
        if (supply_of && !line.item_id.empty()) supply = supply_of(line.item_id);
        // The office's word for this very line goes before the price list's.
        if (!offered_line.supplier.empty()) supply.supplier = offered_line.supplier;
        PurchaseLine out;
        out.item_id = line.item_id;
        out.text = line.text;
        out.unit = line.unit;
        out.number = supply.number;
        out.needed = line.quantity;
        out.to_order = line.to_buy;
        out.pack = supply.pack;
        if (supply.in_stock) take_from_stock(offered_line, supply, out);
        // A thousandth below the next whole pack is that pack: what is counted is what was rounded to packs.
        if (supply.pack > 0.0 && out.to_order >= least_amount)
            out.packs = std::ceil((out.to_order - least_amount) / supply.pack);
        const std::string name = trimmed_name(supply.supplier);
        PurchaseGroup& group = groups[name_key(name)];
        if (group.supplier.empty()) group.supplier = name;
        group.lines.push_back(std::move(out));
    };
    for (const OfferedLine& line : offered.lines)
        take(line);
    for (const Option& option : offered.options)
        if (option.ticked) take(option.line);
    std::vector<PurchaseGroup> out;
    out.reserve(groups.size());
    for (auto& [key, group] : groups)
        if (!key.empty()) out.push_back(std::move(group));
    if (const auto none = groups.find(""); none != groups.end()) out.push_back(std::move(none->second));
    return out;
}

}  // namespace wg::quote
