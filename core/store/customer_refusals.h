#pragma once
// Words of customers for messages, and their former numbers as the store keeps them. For the room's own .cpp files.

#include <QString>
#include <string>
#include <vector>

#include "core/customers/customer.h"

namespace wg::store {

/// "customer C-0001", for messages.
[[nodiscard]] std::string called(const customers::Customer& customer);
/// Former numbers, one a line.
[[nodiscard]] std::string joined_numbers(const customers::Customer& customer);
[[nodiscard]] std::vector<std::string> parted_numbers(const QString& text);

}  // namespace wg::store
