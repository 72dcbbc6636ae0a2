#pragma once
// Versions of an item, newest first, and what changed between one and the one before.

#include <QWidget>
#include <vector>

#include "core/store/equipment_book.h"

class QLabel;
class QTableWidget;

namespace wg::ui {

class ItemHistory : public QWidget {
    Q_OBJECT
   public:
    explicit ItemHistory(QWidget* parent = nullptr);
    void show_versions(store::EquipmentKept kept);
    /// No versions, but why.
    void show_reason(const QString& reason);
    [[nodiscard]] QTableWidget* versions() const { return versions_; }
    [[nodiscard]] QTableWidget* changes() const { return changes_; }

   private:
    void explain();

    std::vector<store::EquipmentVersion> kept_;
    QTableWidget* versions_ = nullptr;
    QLabel* words_ = nullptr;
    QTableWidget* changes_ = nullptr;
};

}  // namespace wg::ui
