#include "ui/fitting/work_page.h"

#include <QComboBox>
#include <QDateTime>
#include <QHBoxLayout>
#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QScrollArea>
#include <QScrollBar>
#include <QStackedWidget>
#include <QVBoxLayout>
#include <algorithm>

#include "core/job/words.h"
#include "ui/common/edits.h"
#include "ui/common/flow_layout.h"
#include "ui/common/format.h"
#include "ui/common/job_session.h"
#include "ui/drawing/fields.h"
#include "ui/fitting/reading_words.h"
#include "ui/fitting/verdict_list.h"

namespace wg::ui {
namespace {

constexpr int list_width_px = 216;
constexpr int list_row_px = 52;
constexpr int least_for_all_px = 880;

/// After these there is something to wait for, or somebody else's turn: the list shows what comes next.
bool ends_a_row_of_entries(ReadingKind kind) {
    switch (kind) {
        case ReadingKind::pressure_hold_start:
        case ReadingKind::pressure_hold_end:
        case ReadingKind::vacuum_level:
        case ReadingKind::vacuum_after_rise:
        case ReadingKind::heating_start:
        case ReadingKind::heating_end:
        case ReadingKind::hold_point:
        case ReadingKind::signature:
        case ReadingKind::remark:
        case ReadingKind::photograph: return true;
        default: return false;
    }
}

}  // namespace

WorkPage::WorkPage(QWidget* parent) : QWidget(parent) {
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(12, 12, 12, 12);
    row->setSpacing(16);
    side_ = make_list();
    row->addWidget(side_);
    stack_ = new QStackedWidget(this);
    stack_->addWidget(make_part());
    form_ = new ReadingForm(this);
    stack_->addWidget(form_);
    row->addWidget(stack_, 1);
    connect(stack_, &QStackedWidget::currentChanged, this, &WorkPage::make_room);
    connect(form_, &ReadingForm::add_asked, this, [this] {
        const QDateTime now = QDateTime::currentDateTime();
        add_reading(now.toOffsetFromUtc(now.offsetFromUtc()).toString(Qt::ISODate));
    });
    connect(form_, &ReadingForm::back_asked, this, [this] {
        form_->clear_figures();
        stack_->setCurrentIndex(0);
    });
}

void WorkPage::make_room() {
    // On a small screen an entry has the whole width: fields, units and digits side by side.
    side_->setVisible(!entering() || width() >= least_for_all_px);
}

void WorkPage::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    make_room();
}

QWidget* WorkPage::make_list() {
    auto* side = new QWidget(this);
    side->setFixedWidth(list_width_px);
    auto* column = new QVBoxLayout(side);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(8);
    occasion_ = new CalmCombo(side);
    occasion_->setObjectName(QStringLiteral("occasion"));
    occasion_->setAccessibleName(tr("What the visit is for"));
    occasion_->setToolTip(tr("What the visit is for: entries of a service are judged on their own"));
    occasion_->setProperty("touch", QStringLiteral("large"));
    for (const Word<Occasion>& word : words<Occasion>()) {
        QString text = QString::fromUtf8(word.text);
        text[0] = text[0].toUpper();
        occasion_->addItem(text, static_cast<int>(word.value));
    }
    list_ = new QListWidget(side);
    list_->setIconSize(QSize(20, 20));
    list_->setAccessibleName(tr("The day's work in order"));
    list_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    list_->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    column->addWidget(occasion_);
    column->addWidget(list_, 1);
    connect(list_, &QListWidget::currentRowChanged, this, [this](int at) {
        if (at >= 0 && at != current_) show_stage(at);
    });
    // A click on the part that is shown already leads back from an entry to its list.
    connect(list_, &QListWidget::itemClicked, this, [this] { show_stage(list_->currentRow()); });
    connect(occasion_, &QComboBox::currentIndexChanged, this, [this] {
        form_->set_occasion(occasion());
        refresh();
    });
    return side;
}

QWidget* WorkPage::make_part() {
    auto* page = new QWidget(this);
    auto* column = new QVBoxLayout(page);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(8);
    title_ = new QLabel(page);
    title_->setProperty("role", QStringLiteral("title"));
    worst_ = new QLabel(page);
    worst_->setWordWrap(true);
    worst_->setTextInteractionFlags(Qt::TextSelectableByMouse);
    auto* tools = new QWidget(page);
    tool_row_ = new FlowLayout(tools);
    tool_row_->setContentsMargins(0, 0, 0, 0);
    tool_row_->setSpacing(8);
    const auto tool = [&](const QString& text, ReadingKind kind) {
        auto* button = new QPushButton(text, tools);
        button->setProperty("touch", QStringLiteral("large"));
        connect(button, &QPushButton::clicked, this, [this, kind] { open_kind(kind); });
        tool_row_->addWidget(button);
    };
    tool(tr("Photograph"), ReadingKind::photograph);
    tool(tr("Remark"), ReadingKind::remark);
    tool(tr("Other entry"), ReadingKind::supply_current);
    auto* inside = new QWidget(page);
    column_ = new QVBoxLayout(inside);
    column_->setContentsMargins(0, 0, 8, 0);
    column_->setSpacing(16);
    wants_ = new QWidget(inside);
    verdicts_ = new VerdictColumn(inside);
    connect(verdicts_, &VerdictColumn::working_asked, this, &WorkPage::working_asked);
    column_->addWidget(wants_);
    column_->addWidget(verdicts_);
    column_->addStretch(1);
    scroll_ = new QScrollArea(page);
    scroll_->setWidgetResizable(true);
    scroll_->setFrameShape(QFrame::NoFrame);
    scroll_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    scroll_->setWidget(inside);
    column->addWidget(title_);
    column->addWidget(worst_);
    column->addWidget(scroll_, 1);
    column->addWidget(tools);
    return page;
}

void WorkPage::add_tool(QPushButton* tool, ReadingKind where) {
    tool->setProperty("touch", QStringLiteral("large"));
    tool_row_->addWidget(tool);
    tools_.emplace_back(tool, where);
    shown_.clear();
}

void WorkPage::set_session(JobSession* session) {
    session_ = session;
    form_->clear_figures();
    stack_->setCurrentIndex(0);
    current_ = 0;
    refresh();
}

Occasion WorkPage::occasion() const {
    return static_cast<Occasion>(occasion_->currentData().toInt());
}

void WorkPage::set_occasion(Occasion occasion) {
    occasion_->setCurrentIndex(occasion_->findData(static_cast<int>(occasion)));
}

bool WorkPage::entering() const {
    return stack_->currentIndex() == 1;
}

std::vector<commissioning::Assessment> WorkPage::assessments() const {
    const auto plan = session_ == nullptr ? nullptr : session_->plan();
    return plan == nullptr ? std::vector<commissioning::Assessment>() : plan->assessments;
}

void WorkPage::refresh() {
    setEnabled(session_ != nullptr);
    const auto plan = session_ == nullptr ? nullptr : session_->plan();
    const Job none;
    const Job& job = session_ == nullptr ? none : session_->job();
    stages_ = work_stages(job, plan.get(), occasion() == Occasion::service);
    standing_ = entries_of(job.record, occasion(), QDate::currentDate());
    breaks_ = entry_breaks(job.record);
    form_->set_record(job.record);
    form_->set_services(plan == nullptr ? std::vector<plan::ServiceDue>() : plan->service);
    fill_list();
    fill_part();
}

void WorkPage::fill_list() {
    const QSignalBlocker quiet(list_);
    const auto all = assessments();
    while (list_->count() < static_cast<int>(stages_.size()))
        list_->addItem(new QListWidgetItem);
    for (int at = 0; at < list_->count(); ++at) {
        const WorkStage& stage = stages_[static_cast<std::size_t>(at)];
        const WorkState state = state_of(stage, standing_, all, breaks_);
        QListWidgetItem* item = list_->item(at);
        item->setText(QStringLiteral("%1. %2\n%3").arg(at + 1).arg(stage.title, state.words));
        item->setIcon(mark_icon(state.mark, current_theme(), 20));
        item->setToolTip(QStringLiteral("%1: %2").arg(stage.title, state.words));
        item->setSizeHint(QSize(0, std::max(list_row_px, 2 * list_->fontMetrics().lineSpacing() + 12)));
    }
    list_->setCurrentRow(current_);
}

void WorkPage::show_stage(int stage) {
    if (stage < 0 || stage >= static_cast<int>(stages_.size())) return;
    const bool other = stage != current_;
    current_ = stage;
    stack_->setCurrentIndex(0);
    if (list_->currentRow() != stage) {
        const QSignalBlocker quiet(list_);
        list_->setCurrentRow(stage);
    }
    fill_part();
    if (other) scroll_->verticalScrollBar()->setValue(0);
}

void WorkPage::open_want(int stage, int want) {
    if (stage < 0 || stage >= static_cast<int>(stages_.size())) return;
    show_stage(stage);
    const auto& wants = stages_[static_cast<std::size_t>(stage)].wants;
    if (want < 0 || want >= static_cast<int>(wants.size())) return;
    opened_want_ = want;
    form_->choose(wants[static_cast<std::size_t>(want)], expected_of(wants[static_cast<std::size_t>(want)]));
    stack_->setCurrentIndex(1);
    form_->start();
}

void WorkPage::open_kind(ReadingKind kind) {
    opened_want_ = -1;
    QString name = QString::fromUtf8(text_of(kind));
    name[0] = name[0].toUpper();
    form_->choose({kind, {}, name, false, {}}, expected_of({kind, {}, name, false, {}}), true);
    stack_->setCurrentIndex(1);
    form_->start();
}

void WorkPage::correct(const Reading& reading) {
    opened_want_ = -1;
    form_->clear_figures();
    set_occasion(reading.occasion);
    stack_->setCurrentIndex(1);
    form_->correct(reading);
}

bool WorkPage::add_reading(const QString& taken_at) {
    if (session_ == nullptr) return false;
    const auto reading = form_->reading(taken_at);
    if (!reading) return false;
    append_reading(*session_, *reading);
    form_->entered(*reading);
    refresh();
    after_entry(*reading);
    Q_EMIT status_text(tr("Entered: %1").arg(entered_words(*reading, QDate::currentDate())));
    return true;
}

void WorkPage::after_entry(const Reading& reading) {
    if (!ends_a_row_of_entries(reading.kind) && opened_want_ >= 0) {
        const auto& wants = stages_[static_cast<std::size_t>(current_)].wants;
        for (std::size_t at = static_cast<std::size_t>(opened_want_) + 1; at < wants.size(); ++at) {
            if (!wants[at].needed || entry_for(wants[at], standing_) != nullptr) continue;
            if (words_of(wants[at].kind).manner == EntryManner::signature) break;
            if (wants[at].kind == ReadingKind::hold_point) break;
            return open_want(current_, static_cast<int>(at));
        }
    }
    opened_want_ = -1;
    stack_->setCurrentIndex(0);
    scroll_->verticalScrollBar()->setValue(0);
}

}  // namespace wg::ui
