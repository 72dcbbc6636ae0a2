#pragma once
// Price list: what is bought and the labour to fit it.

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/economy/economy.h"
#include "core/job/job.h"
#include "core/quantity/money.h"
#include "core/quantity/result.h"

namespace wg::parts {

/// From this quantity on, bought at once, each unit is sold at this price.
struct QuantityPrice {
    double from = 0.0;  ///< in the item's unit
    Money price;        ///< net, a unit
    friend bool operator==(const QuantityPrice&, const QuantityPrice&) = default;
};

struct PriceItem {
    std::string id;  ///< catalogue id for equipment; own id for material
    std::string text;
    std::string unit;                     ///< "pc", "m", "kg", "h"
    Money price;                          ///< net, a unit
    double pack = 0.0;                    ///< sold in whole packs of so many units; 0: any quantity
    std::string tax_class;                ///< key into the rule set's tax rates
    std::optional<Money> cost;            ///< what the firm pays, net, a unit; of the firm alone, on no paper
    std::optional<Money> supplier_price;  ///< from the supplier's own list; less the group's discount it is the cost
    std::string discount_group;           ///< id; empty: none
    std::string supplier;
    std::string supplier_number;          ///< the supplier's own for the item
    bool service = false;                 ///< work or hire that is bought in: no stock is kept of it
    std::optional<double> waste_percent;  ///< bought beyond what is needed, for cutting; none: as the parts list has it
    std::vector<QuantityPrice> quantity_prices;  ///< rising
    friend bool operator==(const PriceItem&, const PriceItem&) = default;
};

struct DiscountGroup {
    std::string id;
    std::string text;
    double percent = 0.0;  ///< off the supplier's price, 0..100, hundredths
    friend bool operator==(const DiscountGroup&, const DiscountGroup&) = default;
};

/// An hour of one kind of work.
struct LabourRate {
    std::string id;
    std::string text;
    Money hour;
    std::optional<Money> cost;  ///< what the hour costs the firm
    friend bool operator==(const LabourRate&, const LabourRate&) = default;
};

struct LabourTask {
    std::string id;
    std::string text;
    double hours = 0.0;            ///< once
    double hours_per_m = 0.0;      ///< of run
    double hours_per_point = 0.0;  ///< of fixing
    double hours_per_collector = 0.0;
    std::string rate;  ///< id of a labour rate; empty: the list's hour
    // What makes it slower.
    bool by_height = false;
    bool by_covering = false;
    bool by_access = false;
    bool by_storeys = false;
    friend bool operator==(const LabourTask&, const LabourTask&) = default;
};

/// What stretches the hours of a task. Factors of different kinds multiply; each is 0.1 to 10.
struct Difficulty {
    struct Height {
        double over_m = 0.0;  ///< highest corner of the plates over ground; the last one that is passed counts
        double factor = 1.0;
        friend bool operator==(const Height&, const Height&) = default;
    };
    struct OfCovering {
        Covering covering = Covering::clay_tile;
        double factor = 1.0;
        friend bool operator==(const OfCovering&, const OfCovering&) = default;
    };
    struct Access {
        std::string id;  ///< what Offer::access names
        std::string text;
        double factor = 1.0;
        friend bool operator==(const Access&, const Access&) = default;
    };
    std::vector<Height> heights;  ///< rising
    std::vector<OfCovering> coverings;
    std::vector<Access> access;
    double each_storey = 0.0;  ///< share added for each storey that things are carried, 0..2
    friend bool operator==(const Difficulty&, const Difficulty&) = default;
};

/// The way to the client and back.
struct Travel {
    Money km;
    Money hour;
    double km_h = 50.0;  ///< on the road, 5..130
    int trips = 1;       ///< there and back; the offer may say another number
    std::string tax_class;
    friend bool operator==(const Travel&, const Travel&) = default;
};

/// A tax rate from a day on; the quote's day decides.
struct DatedTaxRate {
    std::string tax_class;
    std::string label;
    double rate = 0.0;       ///< 0..1
    std::string valid_from;  ///< ISO 8601 date
    friend bool operator==(const DatedTaxRate&, const DatedTaxRate&) = default;
};

struct PriceList {
    std::string id;
    std::string label;
    bool invented = false;
    std::string note;
    std::string currency;    ///< ISO 4217, two decimals
    std::string valid_from;  ///< ISO 8601 dates
    std::string valid_to;
    Money labour_hour;
    std::optional<Money> labour_cost;  ///< what that hour costs the firm
    std::string labour_tax_class;
    std::vector<LabourRate> labour_rates;
    std::vector<DiscountGroup> discount_groups;
    std::vector<PriceItem> items;
    std::vector<LabourTask> tasks;
    Difficulty difficulty;
    std::optional<Travel> travel;
    std::vector<DatedTaxRate> tax_rates;
    economy::Tariffs tariffs;
};

/// Reads docs/price-format.md, schema 1 and 2. Every field is checked; all problems at once, each with item and field.
[[nodiscard]] Result<PriceList> price_list_from_json(std::string_view text, const std::string& file_name);
/// The same format, schema 2: read again it is the same list. Indented, a fixed order of fields.
[[nodiscard]] std::string price_list_to_json(const PriceList& list);
[[nodiscard]] const PriceItem* find_item(const PriceList& list, const std::string& id) noexcept;

/// (price - cost) / cost in percent; nothing without a cost, or with one of 0.
[[nodiscard]] std::optional<double> margin_percent(const PriceItem& item) noexcept;
/// The cost with so many percent on it, rounded half up to the minor unit; the percentage counts in thousandths.
[[nodiscard]] Money price_with_margin(Money cost, double margin_percent);
/// The supplier's price less the group's discount, rounded half up.
[[nodiscard]] Money cost_after_discount(Money supplier_price, double discount_percent);
/// The price of one when so many are bought.
[[nodiscard]] Money unit_price_of(const PriceItem& item, double quantity) noexcept;

}  // namespace wg::parts
