#pragma once
// What the tables of a price list's terms show, and what an entry in them makes of the list.

#include "ui/prices/terms_table.h"

namespace wg::ui {

[[nodiscard]] TermsRows labour_rate_rows();
[[nodiscard]] TermsRows task_rows();
[[nodiscard]] TermsRows height_rows();
[[nodiscard]] TermsRows covering_rows();
[[nodiscard]] TermsRows access_rows();
[[nodiscard]] TermsRows discount_group_rows();
[[nodiscard]] TermsRows tax_rate_rows();
[[nodiscard]] TermsRows tariff_rows();

}  // namespace wg::ui
