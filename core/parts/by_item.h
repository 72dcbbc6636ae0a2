#pragma once
// What is reckoned by item and unit, made a list.

#include <map>
#include <string>
#include <utility>
#include <vector>

namespace wg::parts {

template <class Row>
using ByItem = std::map<std::pair<std::string, std::string>, Row>;

/// The rows in the order of item, then unit, each with both written into it.
template <class Row>
[[nodiscard]] std::vector<Row> rows_of(ByItem<Row>&& by_item) {
    std::vector<Row> out;
    out.reserve(by_item.size());
    for (auto& [key, row] : by_item) {
        row.item_id = key.first;
        row.unit = key.second;
        out.push_back(std::move(row));
    }
    return out;
}

}  // namespace wg::parts
