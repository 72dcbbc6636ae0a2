#pragma once
// Price lists for tests of the store: read as any file is.

#include <string>

#include "core/parts/prices.h"

namespace wg::store::test {

inline std::string price_list_text(const std::string& id, const std::string& label) {
    parts::PriceList list;
    list.id = id;
    list.label = label;
    list.invented = true;
    list.currency = "EUR";
    list.valid_from = "2027-01-01";
    list.valid_to = "2027-12-31";
    list.labour_hour = {6800};
    list.labour_tax_class = "standard";
    list.tariffs.years = 20;
    list.tariffs.source = "invented";
    return parts::price_list_to_json(list);
}

}  // namespace wg::store::test
