#pragma once
// Addresses or contacts of a customer: a table that is written in, with what adds a row and what takes one away.

#include <QStringList>
#include <QWidget>

class QPushButton;
class QTableWidget;

namespace wg::ui {

class EntryList : public QWidget {
    Q_OBJECT
   public:
    struct Words {
        QString title;
        QStringList heads;
        QString hint;  ///< in the free row
        QString add;
        QString remove;
    };

    /// The last row is free for the next entry; `first_text`: the column where its writing begins.
    EntryList(const Words& words, int first_text, QWidget* parent = nullptr);
    [[nodiscard]] QTableWidget* table() const { return table_; }
    [[nodiscard]] QPushButton* add_button() const { return add_; }
    [[nodiscard]] QPushButton* remove_button() const { return remove_; }
    /// The cursor into the free row.
    void begin_entry();
    /// Whether nothing is written in the row.
    [[nodiscard]] bool row_is_empty(int row) const;
    /// The button follows the selected row and what is written in it.
    void refresh();

   Q_SIGNALS:
    void row_removed();  ///< by the button; the table has gone without it

   private:
    void remove_row();

    QTableWidget* table_ = nullptr;
    QPushButton* add_ = nullptr;
    QPushButton* remove_ = nullptr;
    int first_text_ = 0;
};

}  // namespace wg::ui
