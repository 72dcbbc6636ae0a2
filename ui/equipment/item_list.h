#pragma once
// All items, the program's and the firm's, to search and choose from.

#include <QWidget>
#include <vector>

#include "core/store/equipment_book.h"

class QLabel;
class QLineEdit;
class QTableWidget;

namespace wg::ui {

class CalmCombo;

/// One row.
struct ItemEntry {
    QString key;  ///< tells rows apart: the id, or a name of its own for one that is not saved yet
    store::ItemKind kind = store::ItemKind::collector;
    QString maker, name, id;
    bool program = false;  ///< comes with the program, and cannot be changed
    bool invented = false;
    bool withdrawn = false;
    bool came = false;  ///< with a job from another machine
    bool unsaved = false;
    QString approved_by;
};

class ItemList : public QWidget {
    Q_OBJECT
   public:
    explicit ItemList(QWidget* parent = nullptr);
    /// Selects `key` when it is there.
    void show_entries(std::vector<ItemEntry> entries, const QString& key);
    [[nodiscard]] QString selected() const;
    void select(const QString& key);
    [[nodiscard]] QLineEdit* search() const { return search_; }
    [[nodiscard]] CalmCombo* kind() const { return kind_; }
    [[nodiscard]] QTableWidget* table() const { return table_; }

   Q_SIGNALS:
    void chosen(const QString& key);

   private:
    /// `keep`: the row of that key stays although it does not match.
    void fill(const QString& key, bool keep = false);
    [[nodiscard]] bool matches(const ItemEntry& entry) const;
    [[nodiscard]] static QString source_words(const ItemEntry& entry);

    std::vector<ItemEntry> entries_;
    QLineEdit* search_ = nullptr;
    CalmCombo* kind_ = nullptr;
    QTableWidget* table_ = nullptr;
    QLabel* count_ = nullptr;
    bool filling_ = false;
};

}  // namespace wg::ui
