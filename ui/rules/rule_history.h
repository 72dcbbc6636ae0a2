#pragma once
// The versions of a rule set: who saved which, when and why, and what changed from the one before.

#include <QDialog>
#include <string>
#include <vector>

#include "core/store/rule_book.h"

class QTableWidget;

namespace wg::ui {

class RuleHistory : public QDialog {
    Q_OBJECT
   public:
    RuleHistory(store::Store& store, std::string id, QWidget* parent = nullptr);
    [[nodiscard]] QTableWidget* versions() const { return versions_; }
    [[nodiscard]] QTableWidget* changes() const { return changes_; }

   private:
    void show_changes();

    store::Store& store_;
    std::string id_;
    std::vector<store::RuleSetVersion> rows_;
    QTableWidget* versions_ = nullptr;
    QTableWidget* changes_ = nullptr;
};

}  // namespace wg::ui
