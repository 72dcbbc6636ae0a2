#pragma once
// Numbers copied from a data sheet or a spreadsheet, in the writing of whoever made it.

#include <string_view>
#include <vector>

#include "core/quantity/result.h"

namespace wg {

/// The numbers of a text in order, apart by spaces, tabs, line ends, semicolons or commas. A comma is a decimal one
/// when the text holds no point and every comma stands alone between two digits of a word ("1,5 2,25"). The typographic
/// minus sign counts as minus. A problem names the word that is no finite number, or says that there are more than
/// 1,000 of them.
[[nodiscard]] Result<std::vector<double>> numbers_in(std::string_view text);

}  // namespace wg
