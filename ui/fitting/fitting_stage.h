#pragma once
// The Fitting stage: install sheet and the record of the day.

#include <QPointer>
#include <functional>

#include "ui/common/stage_widget.h"
#include "ui/documents/documents.h"

class QPushButton;
class QStackedWidget;
class QTableView;
class QTabWidget;
class QTimer;

namespace wg::ui {

class EmptyPane;
class NoticeBar;
class PaperPane;
class ReadingForm;
class RecordModel;
class VerdictList;

class FittingStage : public StageWidget {
    Q_OBJECT
   public:
    explicit FittingStage(QWidget* parent = nullptr);

    void set_session(JobSession* session) override;
    /// Where the firm's block on the install sheet comes from, asked anew whenever the sheet is composed: the Offer
    /// stage can change it in between. Without one the sheet says that it is not entered.
    void set_firm_source(std::function<Firm()> source);
    /// Adds what stands in the entry form to the record; false when the form refuses it. `taken_at`: ISO 8601 with
    /// offset.
    bool add_reading(const QString& taken_at);
    [[nodiscard]] ReadingForm& form() { return *form_; }

   protected:
    void showEvent(QShowEvent* event) override;

   private:
    QWidget* make_sheet_tab();
    QWidget* make_record_tab();
    void refresh_soon();
    void refresh();
    void correct_selected();

    QPointer<JobSession> session_;
    std::function<Firm()> firm_source_;
    QTimer* timer_ = nullptr;
    NoticeBar* notice_ = nullptr;
    QTabWidget* tabs_ = nullptr;
    QStackedWidget* sheet_stack_ = nullptr;
    EmptyPane* empty_ = nullptr;
    PaperPane* paper_ = nullptr;
    RecordModel* record_ = nullptr;
    QStackedWidget* record_stack_ = nullptr;
    QTableView* record_view_ = nullptr;
    QPushButton* correct_ = nullptr;
    ReadingForm* form_ = nullptr;
    VerdictList* verdicts_ = nullptr;
};

}  // namespace wg::ui
