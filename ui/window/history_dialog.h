#pragma once
// The revisions of a job: who changed what, and when; an earlier one can be brought back as an edit.

#include <QDialog>
#include <optional>
#include <vector>

#include "core/store/job_history.h"

class QLabel;
class QPushButton;
class QTableWidget;

namespace wg::ui {

class HistoryDialog : public QDialog {
    Q_OBJECT
   public:
    /// The store must outlive the dialog.
    HistoryDialog(store::Store& store, std::string job_id, QWidget* parent = nullptr);
    [[nodiscard]] QTableWidget* revisions() const { return revisions_; }
    [[nodiscard]] QTableWidget* changes() const { return changes_; }
    [[nodiscard]] QPushButton* back_button() const { return back_; }

   Q_SIGNALS:
    void back_asked(const wg::Job& earlier);

   private:
    void show_changes();
    void bring_back();

    store::Store& store_;
    std::string job_id_;
    std::vector<store::JobRevision> rows_;
    QTableWidget* revisions_ = nullptr;
    QTableWidget* changes_ = nullptr;
    QLabel* words_ = nullptr;
    QPushButton* back_ = nullptr;
};

}  // namespace wg::ui
