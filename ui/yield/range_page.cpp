#include "ui/yield/range_page.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QScrollArea>
#include <QStackedWidget>
#include <QTableWidget>
#include <QVBoxLayout>
#include <algorithm>

#include "core/job/codec.h"
#include "ui/common/empty_pane.h"
#include "ui/common/format.h"
#include "ui/common/job_session.h"
#include "ui/drawing/picture_view.h"
#include "ui/yield/background_task.h"
#include "ui/yield/range_words.h"
#include "ui/yield/task_row.h"

namespace wg::ui {
namespace {

/// With bars, in the order of the box.
constexpr plan::Measure with_bars[] = {plan::Measure::electricity_kwh, plan::Measure::seasonal_factor,
                                       plan::Measure::running_cost,    plan::Measure::heat_kwh,
                                       plan::Measure::saving,          plan::Measure::shortfall_kwh};

constexpr int above_and_below_px = 8;  // of a row's lettering

QTableWidgetItem* cell(const QString& text, bool right) {
    auto* item = new QTableWidgetItem(text);
    item->setTextAlignment((right ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter);
    return item;
}

}  // namespace

RangePage::RangePage(QWidget* parent) : YieldPage(parent) {
    task_ = new BackgroundTask(this);
    build();
    connect(row_, &TaskRow::start_asked, this, &RangePage::start);
    connect(empty_, &EmptyPane::step_asked, this, &RangePage::start);
    connect(task_, &BackgroundTask::finished, this, &RangePage::fill_state);
    connect(measures_, &QComboBox::currentIndexChanged, this, &RangePage::fill_picture);
    connect(view_, &PictureView::pointed_at, this, &YieldPage::pointed_at);
}

void RangePage::build() {
    row_ = new TaskRow(tr("Work out the range"), task_, this);
    measures_ = new QComboBox(this);
    measures_->setAccessibleName(tr("Figure"));
    for (const plan::Measure measure : with_bars)
        measures_->addItem(measure_name(measure), static_cast<int>(measure));
    row_->row().addWidget(measures_);
    view_ = new PictureView(this);
    table_ = new QTableWidget(this);
    table_->setEditTriggers(QAbstractItemView::NoEditTriggers);
    table_->setSelectionMode(QAbstractItemView::NoSelection);
    table_->setFocusPolicy(Qt::NoFocus);
    table_->setShowGrid(false);
    table_->verticalHeader()->hide();
    table_->setColumnCount(5);
    table_->setHorizontalHeaderLabels({tr("A year"), tr("Nominal"), tr("P10"), tr("P50"), tr("P90")});
    table_->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    table_->horizontalHeader()->setSectionResizeMode(0, QHeaderView::Stretch);
    table_->horizontalHeader()->setToolTip(
        tr("Nominal: every input at its middle. P10, P50, P90: one, five and nine in ten of the years lie below."));
    table_->verticalHeader()->setMinimumSectionSize(20);
    table_->verticalHeader()->setDefaultSectionSize(table_->fontMetrics().height() + above_and_below_px);
    table_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    table_->setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    table_->setWordWrap(false);
    table_->setAccessibleName(tr("Range of the yearly figures"));
    words_ = new QLabel(this);
    words_->setWordWrap(true);
    words_->setTextFormat(Qt::PlainText);
    words_->setAlignment(Qt::AlignTop | Qt::AlignLeft);
    words_->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    auto* scroll = new QScrollArea(this);
    scroll->setWidgetResizable(true);
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setWidget(words_);
    auto* side = new QVBoxLayout;
    side->setSpacing(8);
    side->addWidget(table_);
    side->addWidget(scroll, 1);
    auto* body = new QWidget(this);
    auto* parts = new QHBoxLayout(body);
    parts->setContentsMargins(16, 8, 16, 16);
    parts->setSpacing(16);
    parts->addWidget(view_, 3);
    parts->addLayout(side, 2);
    empty_ = new EmptyPane(QString(), QString(), QString(), this);
    stack_ = new QStackedWidget(this);
    stack_->addWidget(empty_);
    stack_->addWidget(body);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addWidget(row_);
    column->addWidget(stack_, 1);
}

void RangePage::set_session(JobSession* session) {
    task_->stop();
    session_ = session;
    study_.reset();
    key_.clear();
    problem_.clear();
    refresh();
}

std::string RangePage::state_key() const {
    if (session_ == nullptr) return {};
    const Choice* choice = session_->current_choice();
    const auto reference = session_->shared_reference();
    // Place in memory stands for the weather: a session keeps all references that it ever handed out.
    return content_sha256(session_->job()) + (choice == nullptr ? "" : choice->id) +
           std::to_string(reinterpret_cast<std::uintptr_t>(reference->weather.get()));
}

bool RangePage::outdated() const {
    return study_.has_value() && key_ != state_key();
}

void RangePage::start() {
    if (session_ == nullptr || session_->current_choice() == nullptr) return;
    const auto job = std::make_shared<const Job>(session_->job());
    const auto reference = session_->shared_reference();
    plan::StudyOptions options;
    options.choice_id = session_->current_choice()->id;
    problem_.clear();
    task_->start([this, job, reference, options, key = state_key()](const plan::Progress& progress) {
        auto answer = std::make_shared<Result<plan::Study>>(plan::study(*job, *reference, options, progress));
        if (answer->ok() && answer->value().cancelled) return BackgroundTask::Take();
        return BackgroundTask::Take([this, answer, key] {
            if (!answer->ok()) {
                problem_ = qs(text_of(answer->problems()));
                return;
            }
            show_study(answer->value());
            key_ = key;
        });
    });
    row_->follow();
    fill_state();
}

void RangePage::show_study(const plan::Study& study) {
    study_ = study;
    key_ = state_key();
    refresh();
}

void RangePage::show_measure(plan::Measure measure) {
    const int index = measures_->findData(static_cast<int>(measure));
    if (index >= 0) measures_->setCurrentIndex(index);
}

void RangePage::refresh() {
    fill_table();
    fill_picture();
    fill_words();
    fill_state();
}

void RangePage::fill_table() {
    table_->setRowCount(0);
    if (!study_) return;
    int row = 0;
    table_->setRowCount(static_cast<int>(plan::measure_count));
    for (std::size_t m = 0; m < plan::measure_count; ++m) {
        const auto measure = static_cast<plan::Measure>(m);
        const plan::Spread& spread = study_->spreads[m];
        const auto text = [&](const std::optional<double>& v) {
            const bool never = !v || (measure == plan::Measure::payback_y && *v == 0.0);
            return never ? tr("never") : measure_number(measure, *v);
        };
        table_->setItem(row, 0, cell(measure_title(*study_, measure), false));
        table_->setItem(row, 1, cell(text(spread.nominal), true));
        table_->setItem(row, 2, cell(text(spread.p10), true));
        table_->setItem(row, 3, cell(text(spread.p50), true));
        table_->setItem(row, 4, cell(text(spread.p90), true));
        ++row;
    }
    // The picture gives way to the table, whose columns must be read whole at any font.
    const QAbstractItemView& cells = *table_;
    int width = 2 * table_->frameWidth();
    for (int column = 0; column < table_->columnCount(); ++column) {
        const auto& header = *table_->horizontalHeader();
        width += std::max(header.sectionSizeHint(column), cells.sizeHintForColumn(column));
    }
    table_->setMinimumWidth(width);
    table_->setFixedHeight(table_->horizontalHeader()->sizeHint().height() +
                           row * table_->verticalHeader()->defaultSectionSize() + 4);
}

void RangePage::fill_picture() {
    picture_ = TornadoPicture();
    if (study_) picture_ = tornado_of(*study_, static_cast<plan::Measure>(measures_->currentData().toInt()));
    view_->show_picture([this](QPainter& painter, const QRectF& area, const Theme& theme,
                               double text_units) { paint_tornado(painter, picture_, area, theme, text_units); },
                        [this](const QRectF& area, QPointF at, double text_units) {
                            if (picture_.rows.empty()) return QString();
                            return tornado_words(picture_, tornado_frame(picture_, area, text_units), at);
                        });
}

void RangePage::fill_words() {
    words_->setText(study_ ? range_words(*study_, session_ == nullptr ? nullptr : session_->plan().get()) : QString());
    view_->setAccessibleName(words_->text());
}

bool RangePage::shows_empty_pane() const {
    return stack_->currentWidget() == empty_;
}

void RangePage::fill_state() {
    const bool can = session_ != nullptr && session_->current_choice() != nullptr;
    empty_->set_words(
        task_->running() ? tr("Working out years\u2026") : tr("How far the figures may lie from the plan's"),
        problem_.isEmpty()
            ? tr("A year's figures hang on weather, household, equipment and prices that nobody knows for certain. "
                 "Two hundred years of operation, each with its own draw of all of them, say how far the figures may "
                 "lie from the plan's, and which input matters. That takes up to a minute; the job can be edited "
                 "meanwhile.")
            : problem_,
        can && !task_->running() ? tr("Work out the range") : QString());
    stack_->setCurrentIndex(study_ ? 1 : 0);
    // Before the first answer the pane has the button, and there is nothing to switch between.
    row_->setVisible(study_ || task_->running());
    measures_->setVisible(study_.has_value());
    row_->set_enabled(session_ != nullptr && session_->current_choice() != nullptr);
    if (!problem_.isEmpty()) {
        row_->set_state(problem_, true);
    } else if (task_->running()) {
        row_->set_state(tr("Working out years\u2026"), false);
    } else if (!study_) {
        row_->set_state(tr("Not worked out yet"), false);
    } else if (outdated()) {
        row_->set_state(tr("Of an earlier state of the job: work it out again"), true);
    } else {
        row_->set_state(tr("%1 years of choice %2").arg(study_->members).arg(qs(study_->choice_label)), false);
    }
}

FigureTable RangePage::figures() const {
    return study_ ? range_figures(*study_) : FigureTable{{QStringLiteral("figure")}, {}};
}

bool RangePage::save_picture(const QString& path) const {
    return study_ && view_->save(path);
}

QString RangePage::words() const {
    return words_->text();
}

}  // namespace wg::ui
