#pragma once
// A short list edited as a table: words chosen, figures typed, yes or no ticked; rows added and removed.

#include <QVariant>
#include <QWidget>
#include <functional>
#include <utility>
#include <vector>

class QLabel;
class QPushButton;
class QTableWidget;

namespace wg::ui {

struct RowsColumn {
    enum class Kind { text, number, word, check };
    Kind kind = Kind::text;
    QString title;  ///< with the unit
    int decimals = 1;
    double least = 0.0;
    double most = 0.0;
    std::vector<std::pair<QString, QString>> words;  ///< key and text of what may be chosen
};

class RowsTable : public QWidget {
    Q_OBJECT
   public:
    /// `name`: of the whole list. `add_words`: on the button that adds a row.
    RowsTable(const QString& name, std::vector<RowsColumn> columns, const QString& add_words,
              QWidget* parent = nullptr);
    void set_rows(const std::vector<QVariantList>& rows);

    // What the owner does with an edit; each says why not in words, or nothing. Figures come as doubles.
    std::function<QString(int row, int column, const QVariant& value)> on_change;
    std::function<QString()> on_add;
    std::function<QString(int row)> on_remove;

    [[nodiscard]] QTableWidget* table() const { return table_; }
    [[nodiscard]] QPushButton* add_button() const { return add_; }
    [[nodiscard]] QPushButton* remove_button() const { return remove_; }
    [[nodiscard]] QString problem() const;

   private:
    void show_rows();
    void edited(int row, int column);
    void say(const QString& why);
    void put_word(int row, int column, const QString& key);

    QString name_;
    std::vector<RowsColumn> columns_;
    std::vector<QVariantList> rows_;
    QTableWidget* table_ = nullptr;
    QPushButton* add_ = nullptr;
    QPushButton* remove_ = nullptr;
    QLabel* problem_ = nullptr;
};

}  // namespace wg::ui
