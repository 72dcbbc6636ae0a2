#pragma once
// Customers as the rows of a table, for other programs and for whoever asks what is kept of them.

#include <string>
#include <vector>

#include "core/customers/customer.h"

namespace wg::customers {

/// The headings first, each of which `guess_mapping` knows; then a row each with its first addresses and contact.
/// Further addresses and contacts follow in rows of their own under the same number; `preview_import` takes them back
/// together. Addresses keep their order within their use; former numbers stand one a line in their cell.
[[nodiscard]] std::vector<std::vector<std::string>> rows_of(const std::vector<Customer>& customers);

}  // namespace wg::customers
