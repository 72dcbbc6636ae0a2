#pragma once
// A table to be read: rows as high as their words, nothing to be typed into.

#include <QStringList>
#include <vector>

class QTableWidget;
class QWidget;

namespace wg::ui {

[[nodiscard]] QTableWidget* reading_table(const QStringList& header, QWidget* parent);
/// A row of it; words that do not fit are told by the pointer, too.
void add_reading_row(QTableWidget& table, const QStringList& cells);
/// The table's width goes to its columns by these shares, but no column is narrower than its least; again whenever the
/// width changes.
void share_width(QTableWidget& table, std::vector<int> shares, std::vector<int> least_px = {});
/// For the beginning of a line.
[[nodiscard]] QString with_capital(QString words);

}  // namespace wg::ui
