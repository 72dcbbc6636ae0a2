#pragma once
// Rows of one kind of a price list (rates, factors, groups ...), edited in place, with rows added and removed.

#include <QStringList>
#include <QWidget>
#include <functional>
#include <vector>

#include "core/parts/prices.h"

class QPushButton;
class QTableWidget;

namespace wg::ui {

struct TermsColumn {
    QString words;
    bool figure = false;
    QString tip{};
    int width = 0;  ///< pixels; 0: what is left
    /// What can be chosen; none: any text.
    std::function<QStringList(const parts::PriceList&)> choices{};
};

/// One kind of rows: how many, what stands in them, and what an entry makes of the list.
struct TermsRows {
    QString title;
    QString none;  ///< said in the place of an empty table
    std::vector<TermsColumn> columns;
    std::function<int(const parts::PriceList&)> count;
    std::function<QString(const parts::PriceList&, int row, int column)> text;
    /// Puts an entry into the list; what is wrong with it in words, empty when nothing is.
    std::function<QString(parts::PriceList&, int row, int column, const QString&)> put;
    /// A row at the end that could be saved as it is; why there can be none in words. None: the rows are fixed.
    std::function<QString(parts::PriceList&)> add{};
    std::function<void(parts::PriceList&, int row)> remove{};
};

class TermsTable : public QWidget {
    Q_OBJECT
   public:
    /// What an edit makes of a list; the words are why it cannot.
    using Change = std::function<QString(parts::PriceList&)>;
    /// `offer`: takes a change into the list that is edited, or refuses it and says so itself.
    TermsTable(TermsRows rows, std::function<bool(const Change&)> offer, QWidget* parent = nullptr);
    void show_list(const parts::PriceList& list, bool editable);
    bool add_row();
    bool remove_row(int row);

    [[nodiscard]] QTableWidget* table() const { return table_; }

   private:
    void fill();
    void take_cell(int row, int column);

    TermsRows rows_;
    std::function<bool(const Change&)> offer_;
    const parts::PriceList* list_ = nullptr;
    bool editable_ = false;
    bool filling_ = false;
    QTableWidget* table_ = nullptr;
    QWidget* none_ = nullptr;
    QPushButton* add_ = nullptr;
    QPushButton* remove_ = nullptr;
};

}  // namespace wg::ui
