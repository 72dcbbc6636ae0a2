#pragma once
// How the desk's tables look and are walked: whole rows, one at a time, quiet, and the tab key leads out of them.

class QTableView;

namespace wg::ui {

void make_plain(QTableView& table, int row_px);

}  // namespace wg::ui
