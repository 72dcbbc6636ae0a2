#pragma once
// What has to be ordered for an offer, by supplier. Pure.

#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "core/quote/offered.h"

namespace wg::quote {

/// What a price list knows of buying an item, and the firm's stock of having it.
struct Supply {
    std::string supplier;                 ///< empty: not told
    std::string number;                   ///< the supplier's own for it; may be empty
    double pack = 0.0;                    ///< sold in whole packs of so many units; 0: any quantity
    double waste_share = 0.0;             ///< bought beyond what the plan needs, as the parts list reckons it
    std::optional<double> in_stock = {};  ///< of the line's unit; below 0: the book lacks something; none: not kept
};
using SupplyOf = std::function<Supply(const std::string& item_id)>;

struct PurchaseLine {
    std::string item_id;  ///< empty: a line of the office's own
    std::string text;
    std::string unit;
    std::string number;     ///< the supplier's
    double needed = 0.0;    ///< what the plan came to
    double to_order = 0.0;  ///< with waste and whole packs, or as the office set it, less what is in stock
    double pack = 0.0;
    double packs = 0.0;                ///< whole packs that `to_order` takes; 0: not sold in packs, or none is needed
    std::optional<double> in_stock{};  ///< before this line took from it; none: not kept
};

struct PurchaseGroup {
    std::string supplier;  ///< empty: no supplier told
    std::vector<PurchaseLine> lines;
};

/// Parts that are in, and options that are ticked; no labour, nothing left out, no line of quantity 0. Groups by
/// supplier in the order of their names, those without one last; names that differ in capitals or spaces around them
/// are one. Lines in the order of the parts list. `supply_of` may be empty.
/// Stock goes off what is needed with its waste, or off what the office set, before whole packs are made of the rest;
/// lines of one item take from it one after the other. A stock below 0 is told and nothing is taken from it.
[[nodiscard]] std::vector<PurchaseGroup> purchase_list(const Offered& offered, const SupplyOf& supply_of);

}  // namespace wg::quote
