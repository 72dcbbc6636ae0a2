#pragma once
// The versions of something that is kept version by version: who saved which, when and why, and what changed from the
// one before. A page of its own, or a dialog.

#include <QDialog>
#include <QWidget>
#include <vector>

#include "ui/common/kept_version.h"

class QLabel;
class QTableWidget;

namespace wg::ui {

class VersionsView : public QWidget {
    Q_OBJECT
   public:
    /// `note_head`: over the column of notes. Horizontal: what changed stands beside the versions, else below.
    VersionsView(const QString& note_head, Qt::Orientation orientation, QWidget* parent = nullptr);
    void show_versions(std::vector<KeptVersion> versions, ChangesBetween between);
    /// No versions, but why.
    void show_reason(const QString& reason);
    [[nodiscard]] QTableWidget* versions() const { return versions_; }
    [[nodiscard]] QTableWidget* changes() const { return changes_; }
    [[nodiscard]] QString words() const;

   private:
    void explain();

    std::vector<KeptVersion> kept_;
    ChangesBetween between_;
    QTableWidget* versions_ = nullptr;
    QLabel* words_ = nullptr;
    QTableWidget* changes_ = nullptr;
};

class VersionsDialog : public QDialog {
    Q_OBJECT
   public:
    VersionsDialog(const QString& title, const Result<std::vector<KeptVersion>>& versions, ChangesBetween between,
                   QWidget* parent = nullptr);
    [[nodiscard]] VersionsView* view() const { return view_; }

   private:
    VersionsView* view_ = nullptr;
};

}  // namespace wg::ui
