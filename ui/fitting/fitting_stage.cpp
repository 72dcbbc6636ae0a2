#include "ui/fitting/fitting_stage.h"

#include <QDateTime>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QSplitter>
#include <QStackedWidget>
#include <QTabWidget>
#include <QTableView>
#include <QTimer>
#include <QVBoxLayout>

#include "ui/common/edits.h"
#include "ui/common/empty_pane.h"
#include "ui/common/format.h"
#include "ui/common/job_session.h"
#include "ui/common/notice_bar.h"
#include "ui/documents/paper_pane.h"
#include "ui/documents/session_input.h"
#include "ui/fitting/reading_form.h"
#include "ui/fitting/record_model.h"
#include "ui/fitting/verdict_list.h"

namespace wg::ui {
namespace {

constexpr int refresh_delay_ms = 150;

QString now_with_offset() {
    const QDateTime now = QDateTime::currentDateTime();
    return now.toOffsetFromUtc(now.offsetFromUtc()).toString(Qt::ISODate);
}

}  // namespace

FittingStage::FittingStage(QWidget* parent) : StageWidget(parent) {
    timer_ = new QTimer(this);
    timer_->setSingleShot(true);
    timer_->setInterval(refresh_delay_ms);
    connect(timer_, &QTimer::timeout, this, &FittingStage::refresh);
    notice_ = new NoticeBar(this);
    tabs_ = new QTabWidget(this);
    tabs_->setDocumentMode(true);
    tabs_->addTab(make_sheet_tab(), tr("Install sheet"));
    tabs_->addTab(make_record_tab(), tr("Readings"));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addWidget(notice_);
    column->addWidget(tabs_, 1);
}

QWidget* FittingStage::make_sheet_tab() {
    sheet_stack_ = new QStackedWidget(this);
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
    return sheet_stack_;
}

QWidget* FittingStage::make_record_tab() {
    auto* split = new QSplitter(Qt::Horizontal, this);
    auto* left = new QWidget(split);
    record_ = new RecordModel(this);
    record_view_ = new QTableView(left);
    record_view_->setModel(record_);
    record_view_->setSelectionBehavior(QAbstractItemView::SelectRows);
    record_view_->setSelectionMode(QAbstractItemView::SingleSelection);
    record_view_->setShowGrid(false);
    record_view_->setAlternatingRowColors(true);
    record_view_->verticalHeader()->hide();
    record_view_->verticalHeader()->setDefaultSectionSize(36);
    record_view_->horizontalHeader()->setSectionResizeMode(RecordModel::column_note, QHeaderView::Stretch);
    record_view_->setAccessibleName(tr("Record, newest first"));
    correct_ = new QPushButton(tr("Correct this entry"), left);
    correct_->setToolTip(tr("Makes a new entry that names the old one; the old one stays in the record"));
    connect(correct_, &QPushButton::clicked, this, &FittingStage::correct_selected);
    auto* record_title = new QLabel(tr("Record"), left);
    record_title->setProperty("role", QStringLiteral("title"));
    auto* head = new QHBoxLayout;
    head->addWidget(record_title, 1);
    head->addWidget(correct_);
    auto* left_column = new QVBoxLayout(left);
    left_column->setContentsMargins(16, 16, 8, 16);
    left_column->setSpacing(8);
    left_column->addLayout(head);
    record_stack_ = new QStackedWidget(left);
    auto* none = new EmptyPane(tr("No reading yet"), tr("They stand here, newest first."),
                               tr("Enter the pressure hold"), record_stack_);
    connect(none, &EmptyPane::step_asked, this, [this] {
        form_->choose_kind(ReadingKind::pressure_hold_start);
        form_->start();
    });
    record_stack_->addWidget(none);
    record_stack_->addWidget(record_view_);
    left_column->addWidget(record_stack_, 1);

    auto* right = new QWidget(split);
    form_ = new ReadingForm(right);
    connect(form_, &ReadingForm::add_asked, this, [this] { add_reading(now_with_offset()); });
    verdicts_ = new VerdictList(right);
    auto* form_title = new QLabel(tr("New reading"), right);
    form_title->setProperty("role", QStringLiteral("title"));
    auto* verdict_title = new QLabel(tr("What the readings say"), right);
    verdict_title->setProperty("role", QStringLiteral("title"));
    auto* right_column = new QVBoxLayout(right);
    right_column->setContentsMargins(8, 16, 16, 16);
    right_column->setSpacing(8);
    right_column->addWidget(form_title);
    right_column->addWidget(form_);
    right_column->addSpacing(16);
    right_column->addWidget(verdict_title);
    right_column->addWidget(verdicts_, 1);
    split->addWidget(left);
    split->addWidget(right);
    split->setStretchFactor(0, 3);
    split->setStretchFactor(1, 2);
    split->setSizes({600, 380});
    split->setChildrenCollapsible(false);
    return split;
}

void FittingStage::set_session(JobSession* session) {
    if (session_ != nullptr) disconnect(session_, nullptr, this, nullptr);
    session_ = session;
    notice_->clear();
    form_->clear_figures();
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

void FittingStage::showEvent(QShowEvent* event) {
    StageWidget::showEvent(event);
    refresh();
}

void FittingStage::refresh_soon() {
    if (isVisible() && !timer_->isActive()) timer_->start();
}

void FittingStage::refresh() {
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
    paper_->set_input(plan == nullptr ? nullptr : input_of(*session_, firm, QDate::currentDate()));
    if (session_ != nullptr) paper_->set_ready(session_->settled(), tr("The figures are still being worked out"));
    sheet_stack_->setCurrentWidget(plan == nullptr ? static_cast<QWidget*>(empty_) : paper_);

    const std::vector<Reading> none;
    const std::vector<Reading>& record = session_ == nullptr ? none : session_->job().record;
    record_->set_record(record);
    for (int column = 0; column < RecordModel::column_note; ++column)
        record_view_->resizeColumnToContents(column);
    record_stack_->setCurrentIndex(record.empty() ? 0 : 1);
    correct_->setEnabled(!record.empty());
    form_->setEnabled(session_ != nullptr);
    form_->set_record(record);
    verdicts_->set_assessments(plan == nullptr ? std::vector<commissioning::Assessment>() : plan->assessments);
}

bool FittingStage::add_reading(const QString& taken_at) {
    if (session_ == nullptr) return false;
    const auto reading = form_->reading(taken_at);
    if (!reading) return false;
    append_reading(*session_, *reading);
    form_->clear_figures();
    refresh();
    Q_EMIT status_text(tr("Reading added to the record"));
    return true;
}

void FittingStage::correct_selected() {
    const Reading* reading = record_->reading_at(std::max(0, record_view_->currentIndex().row()));
    if (reading != nullptr) form_->correct(*reading);
}

}  // namespace wg::ui
