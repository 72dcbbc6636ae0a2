#pragma once
// Figures of a screen as a table to pass on.

#include <QByteArray>
#include <QString>
#include <QStringList>
#include <vector>

namespace wg::ui {

/// Table behind a picture or a screen. Cells behind a picture hold plain numbers with '.' as decimal sign.
struct FigureTable {
    QStringList header;  ///< with units
    std::vector<QStringList> rows;
    /// RFC 4180, UTF-8, CRLF.
    [[nodiscard]] QByteArray to_csv() const;
    /// A line a row, tabs between cells: pastes into letters and spreadsheets.
    [[nodiscard]] QString to_text() const;
};

}  // namespace wg::ui
