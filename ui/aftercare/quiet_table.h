#pragma once
// Tables that are read, not edited, in the manner of this stage; and their cells.

#include <QStringList>
#include <QTableWidget>

namespace wg::ui {

[[nodiscard]] QTableWidget* quiet_table(const QStringList& heads, QWidget* parent);
/// A cell with its own text as tooltip, so that nothing cut off is lost; figures are set to the right.
QTableWidgetItem* put_cell(QTableWidget& table, int row, int column, const QString& text, bool figure = false);
/// Widths by content for these columns, within a limit.
void fit_columns(QTableWidget& table, const std::vector<int>& columns, int most_px = 260);

}  // namespace wg::ui
