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
        if (supply.pack > 0.0) {
            out.pack = supply.pack;
            // A thousandth below the next whole pack is that pack: what is counted is what was rounded to packs.
            out.packs = std::ceil((line.to_buy - least_amount) / supply.pack);
        }
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
