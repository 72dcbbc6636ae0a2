#include "ui/fitting/fitting_stage.h"

#include <QDate>
#include <QEvent>
#include <QFileDialog>
#include <QPushButton>
#include <QStackedWidget>
#include <QStandardPaths>
#include <QTabWidget>
#include <QTimer>
#include <QVBoxLayout>

#include "ui/common/edits.h"
#include "ui/common/empty_pane.h"
#include "ui/common/format.h"
#include "ui/common/job_session.h"
#include "ui/common/notice_bar.h"
#include "ui/common/photo_shelf.h"
#include "ui/documents/paper_pane.h"
#include "ui/documents/session_input.h"
#include "ui/fitting/print_row.h"
#include "ui/fitting/whole_record_page.h"
#include "ui/fitting/work_page.h"

namespace wg::ui {
namespace {

constexpr int refresh_delay_ms = 150;

}  // namespace

FittingStage::FittingStage(QWidget* parent) : StageWidget(parent) {
    timer_ = new QTimer(this);
    timer_->setSingleShot(true);
    timer_->setInterval(refresh_delay_ms);
    connect(timer_, &QTimer::timeout, this, &FittingStage::refresh);
    notice_ = new NoticeBar(this);
    tabs_ = new QTabWidget(this);
    tabs_->setDocumentMode(true);
    day_ = new WorkPage(this);
    record_ = new WholeRecordPage(this);
    tabs_->addTab(make_sheet_tab(), tr("Install sheet"));
    tabs_->addTab(day_, tr("Day's work"));
    tabs_->addTab(record_, tr("Record"));
    // Beside the tabs: the paper has the height.
    print_row_ = new PrintRow(tabs_);
    tabs_->setCornerWidget(print_row_);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    notice_->lie_over({12, 12, 12, 12});
    column->addWidget(print_row_->answer_line());
    column->addWidget(tabs_, 1);
    connect(day_, &WorkPage::status_text, this, &StageWidget::status_text);
    connect(day_, &WorkPage::failed, this, [this](const QString& text) { notice_->add(Mark::stop, text); });
    for (const ReadingKind where : {ReadingKind::pressure_hold_start, ReadingKind::vacuum_level}) {
        auto* log = new QPushButton(tr("Gauge log\u2026"), day_);
        connect(log, &QPushButton::clicked, this, [this] {
            day_->take_in_log(QFileDialog::getOpenFileName(this, tr("Log of a gauge"), {},
                                                           tr("Logs (*.csv *.txt *.tsv);;All files (*)")));
        });
        day_->add_tool(log, where);
    }
    connect(day_, &WorkPage::working_asked, this, &StageWidget::working_asked);
    connect(record_, &WholeRecordPage::working_asked, this, &StageWidget::working_asked);
    connect(record_, &WholeRecordPage::correct_asked, this, [this](const Reading& reading) {
        tabs_->setCurrentWidget(day_);
        day_->correct(reading);
    });
    save_record_ = new QPushButton(tr("Record as PDF\u2026"), record_);
    connect(save_record_, &QPushButton::clicked, this, &FittingStage::ask_and_save_record);
    record_->add_button(save_record_);
    connect(record_, &WholeRecordPage::first_entry_asked, this, [this] {
        tabs_->setCurrentWidget(day_);
        day_->open_kind(ReadingKind::pressure_hold_start);
    });
}

QWidget* FittingStage::make_sheet_tab() {
    auto* tab = new QWidget(this);
    sheet_stack_ = new QStackedWidget(tab);
    empty_ = new EmptyPane(QString(), QString(), QString(), sheet_stack_);
    paper_ = new PaperPane(Paper::install_sheet, sheet_stack_);
    paper_->offer_also(Paper::workings);
    paper_->offer_also(Paper::record);
    sheet_stack_->addWidget(empty_);
    sheet_stack_->addWidget(paper_);
    connect(paper_, &PaperPane::failed, this, [this](const QString& text) { notice_->add(Mark::stop, text); });
    connect(paper_, &PaperPane::saved, this, [this](const QString& path) {
        Q_EMIT status_text(tr("%1 saved as %2").arg(title_of(paper_->shown()), path));
    });
    connect(empty_, &EmptyPane::step_asked, this, [this] {
        if (session_ != nullptr && session_->job().choices.empty()) add_choice(*session_);
    });
    auto* column = new QVBoxLayout(tab);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addWidget(sheet_stack_, 1);
    return tab;
}

void FittingStage::set_session(JobSession* session) {
    if (session_ != nullptr) disconnect(session_, nullptr, this, nullptr);
    session_ = session;
    notice_->clear();
    day_->set_session(session);
    record_->set_session(session);
    if (session != nullptr) {
        connect(session, &JobSession::plan_changed, this, &FittingStage::refresh_soon);
        connect(session, &JobSession::job_changed, this, &FittingStage::refresh_soon);
        connect(session, &JobSession::planning_changed, this, &FittingStage::refresh_soon);
        connect(session, &JobSession::saved_changed, this, &FittingStage::refresh_soon);
    }
    refresh();
}

void FittingStage::set_firm_source(std::function<Firm()> source) {
    firm_source_ = std::move(source);
    refresh();
}

void FittingStage::set_picture_source(std::function<QImage(const std::string& sha256)> source) {
    picture_source_ = std::move(source);
    refresh();
}

void FittingStage::set_settings(const SettingSource& source) {
    day_->form().set_source(source);
    refresh();
}

void FittingStage::set_shelf(PhotoShelf* shelf) {
    record_->set_shelf(shelf);
    if (shelf == nullptr) return day_->form().set_keep({});
    day_->form().set_keep([shelf = QPointer<PhotoShelf>(shelf)](const QByteArray& bytes) -> Result<std::string> {
        if (shelf == nullptr) return Problem{"photograph", "cannot be kept: the desk is closed", "Open the job again"};
        return shelf->keep_bytes(bytes);
    });
}

void FittingStage::changeEvent(QEvent* event) {
    StageWidget::changeEvent(event);
    // Signs are painted in the colours of their theme.
    if (event->type() == QEvent::PaletteChange && timer_ != nullptr) refresh_soon();
}

void FittingStage::showEvent(QShowEvent* event) {
    StageWidget::showEvent(event);
    refresh();
}

void FittingStage::refresh_soon() {
    if (isVisible() && !timer_->isActive()) timer_->start();
}

void FittingStage::refresh() {
    refresh_sheet();
    day_->refresh();
    record_->refresh();
}

void FittingStage::refresh_sheet() {
    const auto plan = session_ == nullptr ? nullptr : session_->plan();
    if (plan == nullptr) {
        if (session_ == nullptr) {
            empty_->set_words(tr("No job open"), tr("Open a job from the desk."), QString());
        } else if (session_->job().choices.empty()) {
            empty_->set_words(
                tr("Nothing to fit yet"),
                tr("The install sheet comes from a choice: drawings with every fixing point, parts to load and "
                   "the work in order."),
                tr("Propose a choice"));
        } else if (session_->planning()) {
            empty_->set_words(tr("Working out the plan"), tr("The install sheet appears as soon as it is there."),
                              QString());
        } else {
            empty_->set_words(tr("There is no plan to fit from"), session_->plan_problem(), QString());
        }
    }
    const Firm firm = firm_source_ ? firm_source_() : Firm();
    paper_->set_input(plan == nullptr ? nullptr : input_of(*session_, firm, QDate::currentDate(), picture_source_));
    if (session_ != nullptr) paper_->set_ready(session_->settled(), tr("The figures are still being worked out"));
    sheet_stack_->setCurrentWidget(plan == nullptr ? static_cast<QWidget*>(empty_) : paper_);
    const bool settled = plan != nullptr && session_->settled();
    // While a plan is worked out the one before it is no measure of a print.
    print_row_->set_present(session_ == nullptr ? std::string() : session_->job().id,
                            session_ == nullptr ? 0 : session_->job().revision,
                            settled ? plan->plan_mark : std::string());
    print_row_->setVisible(plan != nullptr);
    const bool entries = session_ != nullptr && !session_->job().record.empty();
    save_record_->setEnabled(settled && entries);
    save_record_->setToolTip(!entries   ? tr("The record has no entry yet")
                             : !settled ? tr("The figures are still being worked out")
                                        : tr("What was fitted, read, judged and signed, with every entry"));
}

bool FittingStage::save_record(const QString& path) {
    if (session_ == nullptr || !session_->settled()) return false;
    refresh_sheet();  // an entry may be newer than the papers on screen
    if (paper_->input() == nullptr) return false;
    const auto written = write_pdf(Paper::record, *paper_->input(), path);
    if (!written.ok()) {
        notice_->add(Mark::stop, qs(text_of(written.problems())));
        return false;
    }
    Q_EMIT status_text(tr("%1 saved as %2").arg(title_of(Paper::record), path));
    return true;
}

void FittingStage::ask_and_save_record() {
    if (session_ == nullptr) return;
    QString name = (qs(session_->job().number) + QLatin1Char(' ') + file_name_of(Paper::record)).trimmed();
    name.replace(QLatin1Char('/'), QLatin1Char('-'));
    QString path = QFileDialog::getSaveFileName(
        this, tr("Save %1").arg(title_of(Paper::record).toLower()),
        QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation) + QLatin1Char('/') + name,
        tr("PDF (*.pdf)"));
    if (path.isEmpty()) return;
    if (!path.endsWith(QStringLiteral(".pdf"), Qt::CaseInsensitive)) path += QStringLiteral(".pdf");
    save_record(path);
}

ReadingForm& FittingStage::form() {
    return day_->form();
}

bool FittingStage::add_reading(const QString& taken_at) {
    const bool added = day_->add_reading(taken_at);
    if (added) record_->refresh();
    return added;
}

}  // namespace wg::ui
