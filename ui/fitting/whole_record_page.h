#pragma once
// The record whole: whether its chain holds, for which plan it was made, every entry, and all verdicts.

#include <QPointer>
#include <QWidget>

#include "core/job/job.h"

class QLabel;
class QPushButton;
class QStackedWidget;
class QTableView;

namespace wg::ui {

class FlowLayout;
class JobSession;
class PhotoShelf;
class RecordModel;
class VerdictList;

class WholeRecordPage : public QWidget {
    Q_OBJECT
   public:
    explicit WholeRecordPage(QWidget* parent = nullptr);
    void set_session(JobSession* session);
    void set_shelf(PhotoShelf* shelf);
    void refresh();
    /// More buttons above the table.
    void add_button(QPushButton* button);
    /// Chain and plan as words: what tests look at.
    [[nodiscard]] QString state_text() const;
    [[nodiscard]] QTableView& table() { return *view_; }

   Q_SIGNALS:
    void correct_asked(const wg::Reading& reading);
    void first_entry_asked();
    void working_asked(const QString& key);

   private:
    [[nodiscard]] const Reading* selected() const;
    void refresh_buttons();
    void show_picture();

    QPointer<JobSession> session_;
    QPointer<PhotoShelf> shelf_;
    std::size_t shown_entries_ = 0;
    QLabel* chain_sign_ = nullptr;
    QLabel* chain_ = nullptr;
    QLabel* plan_sign_ = nullptr;
    QLabel* plan_ = nullptr;
    FlowLayout* buttons_ = nullptr;
    QPushButton* correct_ = nullptr;
    QPushButton* picture_ = nullptr;
    QStackedWidget* stack_ = nullptr;
    RecordModel* model_ = nullptr;
    QTableView* view_ = nullptr;
    VerdictList* verdicts_ = nullptr;
};

}  // namespace wg::ui
