#pragma once
// Rows of one kind of a price list (rates, factors, groups ...), edited in place, with rows added and removed.

#include <QStringList>
#include <QWidget>
#include <functional>
#include <optional>
#include <vector>

#include "core/parts/prices.h"

class QLabel;
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
    /// What a row that was just added still needs before it is part of the list, in words; empty when nothing. None:
    /// rows are whole from the start.
    std::function<QString(const parts::PriceList&, int row)> lacks{};
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
    /// What a row that was begun still needs, in words; empty: there is none. Such a row is no part of the list yet.
    [[nodiscard]] QString unfinished() const;

    [[nodiscard]] QTableWidget* table() const { return table_; }

   Q_SIGNALS:
    void begun();  ///< a row was begun, or is no longer

   private:
    void fill();
    void take_cell(int row, int column);
    void take_begun(int column, const QString& entry);
    [[nodiscard]] bool is_begun(int row) const;
    /// The list that has the row: its own for one that was begun.
    [[nodiscard]] const parts::PriceList& list_of(int row) const;

    TermsRows rows_;
    std::function<bool(const Change&)> offer_;
    const parts::PriceList* list_ = nullptr;
    std::optional<parts::PriceList> begun_;  ///< the list with the row that was begun as its last
    bool editable_ = false;
    bool filling_ = false;
    QTableWidget* table_ = nullptr;
    QWidget* none_ = nullptr;
    QLabel* lack_ = nullptr;
    QPushButton* add_ = nullptr;
    QPushButton* remove_ = nullptr;
};

}  // namespace wg::ui
