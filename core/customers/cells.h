#pragma once
// The cells of one customer's lines, and what they make of a customer. For the room's own .cpp files.

#include <functional>
#include <map>
#include <string>
#include <string_view>
#include <vector>

#include "core/customers/import.h"

namespace wg::customers {

/// The cells of one line by what they are; empty ones are not there.
using Cells = std::map<Column, std::string>;

[[nodiscard]] Cells cells_of(const std::vector<std::string>& row, const Mapping& mapping);
[[nodiscard]] std::string cell_of(const Cells& cells, Column column);
/// A cell that is empty says nothing against the text.
[[nodiscard]] bool says(const Cells& cells, Column column, const std::string& text);

/// The numbers of a cell, one a line.
[[nodiscard]] std::vector<std::string> numbers_of(std::string_view cell);

/// Name, tax id and notes of the first line, addresses, contacts and former numbers of all, over what is there; notes
/// what changed.
void write_cells(const std::vector<Cells>& group, const NameKey& key, Customer& customer,
                 std::vector<std::string>& changes);

}  // namespace wg::customers
