#pragma once
// One column of a table takes the room that the others leave, but never less than its words need: then the table is
// scrolled sideways instead.

class QTableView;

namespace wg::ui {

/// For a table that has its model. The other columns keep the widths that they were given, by code or by hand.
void keep_wide(QTableView& table, int column, int least_px);

}  // namespace wg::ui
