#pragma once
// What has to be ordered for an offer, by supplier. Pure.

#include <functional>
#include <map>
#include <optional>
#include <string>
#include <vector>

#include "core/parts/stock_orders.h"
#include "core/quote/offered.h"

namespace wg::quote {

/// What a price list knows of buying an item, and the firm's stock of having it.
struct Supply {
    std::string supplier;                   ///< empty: not told
    std::string number;                     ///< the supplier's own for it; may be empty
    double pack = 0.0;                      ///< sold in whole packs of so many units; 0: any quantity
    double waste_share = 0.0;               ///< bought beyond what the plan needs, as the parts list reckons it
    std::optional<double> in_stock = {};    ///< of the line's unit; below 0: the book lacks something; none: not kept
    double on_order = 0.0;                  ///< ordered before and not received yet
    double reserved = 0.0;                  ///< of both, for other jobs
    double taken = 0.0;                     ///< out of stock for this very job, less what came back
    std::vector<parts::Share> orders = {};  ///< which lists the ordered is of
    std::vector<parts::Share> reservations = {};
    bool service = false;                  ///< work or hire that is bought in
    std::optional<Money> list_price = {};  ///< the supplier's, net, a unit
    double discount_percent = 0.0;         ///< off it
    std::optional<Money> cost = {};        ///< what the firm pays, net, a unit
};
using SupplyOf = std::function<Supply(const std::string& item_id)>;

/// What earlier lists of the job ordered, in units: of no stock nothing else tells that it was ordered.
struct OrderedKey {
    std::string what;  ///< the item's id; of a line of the office's own: its text
    std::string unit;
    friend auto operator<=>(const OrderedKey&, const OrderedKey&) = default;
};
using OrderedBefore = std::map<OrderedKey, double>;

/// As the list has it, stock aside; nothing of an item that it does not have.
[[nodiscard]] Supply supply_in(const parts::PriceList& list, const std::string& item_id);

struct PurchaseLine {
    std::string item_id;  ///< empty: a line of the office's own
    std::string text;
    std::string unit;
    std::string number;     ///< the supplier's
    double needed = 0.0;    ///< what the plan came to
    double wanted = 0.0;    ///< that with its waste, or as the office set it; whole pieces
    double to_order = 0.0;  ///< what is wanted less what is taken, or free of stock and orders; whole packs and pieces
    double pack = 0.0;
    double packs = 0.0;                ///< whole packs that `to_order` takes; 0: not sold in packs, or none is needed
    std::optional<double> in_stock{};  ///< before this line took from it; none: not kept
    double on_order = 0.0;             ///< the same
    double reserved = 0.0;             ///< for other jobs
    double taken = 0.0;                ///< for this job, before this line counted of it
    double ordered_before = 0.0;       ///< the same of what no stock is kept of: by earlier lists of the job
    std::vector<parts::Share> orders{};
    std::vector<parts::Share> reservations{};
    bool service = false;
    std::optional<Money> list_price{};
    double discount_percent = 0.0;
    std::optional<Money> cost{};
    std::optional<Money> net{};  ///< of what is to be ordered; none: no cost is known
};

struct PurchaseGroup {
    std::string supplier;  ///< empty: no supplier told
    std::vector<PurchaseLine> lines;
    Money net{};            ///< of the lines with a known cost
    int without_price = 0;  ///< lines that are to be ordered and have none
};

/// Parts that are in, and options that are ticked; no labour, nothing left out, no line of quantity 0. Groups by
/// supplier in the order of their names, those without one last; names that differ in capitals or spaces around them
/// are one. Lines in the order of the parts list. `supply_of` may be empty.
/// What was taken from stock for the job goes off what is wanted first: it is at the job already. What is free of stock
/// and orders (less what other jobs have reserved) goes off next, before whole packs are made of the rest; lines
/// of one item take from it one after the other. A stock below 0 is told and counts as none. Of work, hire and lines of
/// the office's own no stock is kept: what earlier lists of the job ordered of them is not ordered again.
[[nodiscard]] std::vector<PurchaseGroup> purchase_list(const Offered& offered, const SupplyOf& supply_of,
                                                       const OrderedBefore& ordered_before = {});

/// What a job takes from stock: its parts that are in and that stock can be kept of, by item and unit.
struct StockNeed {
    std::string item_id;
    std::string text;
    std::string unit;
    double quantity = 0.0;  ///< as `PurchaseLine::wanted`
};
[[nodiscard]] std::vector<StockNeed> stock_needs(const Offered& offered, const SupplyOf& supply_of);

}  // namespace wg::quote
