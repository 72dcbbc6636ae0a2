#pragma once
// Price list: what is bought and the labour to fit it.

#include <string>
#include <string_view>
#include <vector>

#include "core/economy/economy.h"
#include "core/quantity/money.h"
#include "core/quantity/result.h"

namespace wg::parts {

struct PriceItem {
    std::string id;  ///< catalogue id for equipment; own id for material
    std::string text;
    std::string unit;       ///< "pc", "m", "kg", "h"
    Money price;            ///< net, a unit
    double pack = 0.0;      ///< sold in whole packs of so many units; 0: any quantity
    std::string tax_class;  ///< key into the rule set's tax rates
    friend bool operator==(const PriceItem&, const PriceItem&) = default;
};

struct LabourTask {
    std::string id;
    std::string text;
    double hours = 0.0;            ///< once
    double hours_per_m = 0.0;      ///< of run
    double hours_per_point = 0.0;  ///< of fixing
    double hours_per_collector = 0.0;
    friend bool operator==(const LabourTask&, const LabourTask&) = default;
};

struct PriceList {
    std::string id;
    std::string label;
    bool invented = false;
    std::string currency;    ///< ISO 4217, two decimals
    std::string valid_from;  ///< ISO 8601 dates
    std::string valid_to;
    Money labour_hour;
    std::string labour_tax_class;
    std::vector<PriceItem> items;
    std::vector<LabourTask> tasks;
    economy::Tariffs tariffs;
};

[[nodiscard]] Result<PriceList> price_list_from_json(std::string_view text, const std::string& file_name);
[[nodiscard]] const PriceItem* find_item(const PriceList& list, const std::string& id) noexcept;

}  // namespace wg::parts
