#pragma once
// The Fitting stage: install sheet, the day's work with its entries, and the record they make.

#include <QPointer>
#include <functional>

#include "ui/common/stage_widget.h"
#include "ui/documents/documents.h"
#include "ui/fitting/instrument_book.h"

class QPushButton;
class QStackedWidget;
class QTabWidget;
class QTimer;

namespace wg::ui {

class WorkPage;
class EmptyPane;
class NoticeBar;
class PaperPane;
class PhotoShelf;
class PrintRow;
class ReadingForm;
class WholeRecordPage;

class FittingStage : public StageWidget {
    Q_OBJECT
   public:
    explicit FittingStage(QWidget* parent = nullptr);

    void set_session(JobSession* session) override;
    /// Where the firm's block on the install sheet comes from, asked anew whenever the sheet is composed: the Offer
    /// stage can change it in between. Without one the sheet says that it is not entered.
    void set_firm_source(std::function<Firm()> source);
    /// Photographs and signatures for papers, by hash.
    void set_picture_source(std::function<QImage(const std::string& sha256)> source);
    /// Where instruments, people and units are kept; without one they last as long as the stage.
    void set_settings(const SettingSource& source);
    /// Keeps photographs and signatures; without one there are none.
    void set_shelf(PhotoShelf* shelf);
    /// Adds what stands in the entry form to the record; false when the form refuses it. `taken_at`: ISO 8601 with
    /// offset.
    bool add_reading(const QString& taken_at);
    /// Writes the record as PDF, of the job as it stands; false while figures are being worked out, and when it could
    /// not be written (said on screen).
    bool save_record(const QString& path);
    [[nodiscard]] ReadingForm& form();
    [[nodiscard]] WorkPage& day() { return *day_; }
    [[nodiscard]] WholeRecordPage& record_page() { return *record_; }
    [[nodiscard]] PrintRow& print_row() { return *print_row_; }
    [[nodiscard]] QTabWidget& tabs() { return *tabs_; }

   protected:
    void changeEvent(QEvent* event) override;
    void showEvent(QShowEvent* event) override;

   private:
    QWidget* make_sheet_tab();
    void refresh_soon();
    void refresh();
    void refresh_sheet();
    void ask_and_save_record();

    QPointer<JobSession> session_;
    std::function<Firm()> firm_source_;
    std::function<QImage(const std::string&)> picture_source_;
    QTimer* timer_ = nullptr;
    NoticeBar* notice_ = nullptr;
    QTabWidget* tabs_ = nullptr;
    QStackedWidget* sheet_stack_ = nullptr;
    EmptyPane* empty_ = nullptr;
    PaperPane* paper_ = nullptr;
    PrintRow* print_row_ = nullptr;
    QPushButton* save_record_ = nullptr;
    WorkPage* day_ = nullptr;
    WholeRecordPage* record_ = nullptr;
};

}  // namespace wg::ui
