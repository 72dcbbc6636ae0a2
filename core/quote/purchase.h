#pragma once
// What has to be ordered for an offer, by supplier. Pure.

#include <functional>
#include <string>
#include <vector>

#include "core/quote/offered.h"

namespace wg::quote {

/// What a price list knows of buying an item.
struct Supply {
    std::string supplier;  ///< empty: not told
    std::string number;    ///< the supplier's own for it; may be empty
    double pack = 0.0;     ///< sold in whole packs of so many units; 0: any quantity
};
using SupplyOf = std::function<Supply(const std::string& item_id)>;

struct PurchaseLine {
    std::string item_id;  ///< empty: a line of the office's own
    std::string text;
    std::string unit;
    std::string number;     ///< the supplier's
    double needed = 0.0;    ///< what the plan came to
    double to_order = 0.0;  ///< with waste and whole packs, or as the office set it
    double pack = 0.0;
    double packs = 0.0;  ///< whole packs that `to_order` takes; 0: not sold in packs
};

struct PurchaseGroup {
    std::string supplier;  ///< empty: no supplier told
    std::vector<PurchaseLine> lines;
};

/// Parts that are in, and options that are ticked; no labour, nothing left out, no line of quantity 0. Groups by
/// supplier in the order of their names, those without one last; names that differ in capitals or spaces around them
/// are one. Lines in the order of the parts list. `supply_of` may be empty.
[[nodiscard]] std::vector<PurchaseGroup> purchase_list(const Offered& offered, const SupplyOf& supply_of);

}  // namespace wg::quote
