#include "ui/yield/sizing_page.h"

#include <QButtonGroup>
#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QStackedWidget>
#include <QToolButton>
#include <QVBoxLayout>

#include "core/job/codec.h"
#include "ui/common/edits.h"
#include "ui/common/empty_pane.h"
#include "ui/common/format.h"
#include "ui/common/job_session.h"
#include "ui/drawing/picture_view.h"
#include "ui/yield/background_task.h"
#include "ui/yield/comfort_row.h"
#include "ui/yield/sizing_words.h"
#include "ui/yield/task_row.h"

namespace wg::ui {
namespace {

constexpr double sets_share = 0.15;  ///< of the progress; the years by tilt and bearing take the rest

QLabel* text_label(QWidget* parent) {
    auto* label = new QLabel(parent);
    label->setWordWrap(true);
    label->setTextFormat(Qt::PlainText);
    label->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    return label;
}

}  // namespace

SizingPage::SizingPage(QWidget* parent) : YieldPage(parent) {
    task_ = new BackgroundTask(this);
    build();
    connect(row_, &TaskRow::start_asked, this, &SizingPage::start);
    connect(empty_, &EmptyPane::step_asked, this, &SizingPage::start);
    connect(task_, &BackgroundTask::finished, this, &SizingPage::fill_state);
    connect(comfort_, &ComfortRow::changed, this, &SizingPage::judge);
    connect(views_, &QButtonGroup::idClicked, this, [this](int view) { show_view(static_cast<View>(view)); });
    connect(cost_, &QComboBox::currentIndexChanged, this, &SizingPage::fill);
    connect(make_, &QPushButton::clicked, this, [this] { make_choice(); });
    connect(view_, &PictureView::pointed_at, this, &YieldPage::pointed_at);
    connect(view_, &PictureView::pressed_at, this, [this](const QRectF& area, QPointF at, double text_units) {
        if (view_shown() != View::sets || !answer_) return;
        if (const int found = set_at(sets_, area, at, text_units); found >= 0) select_point(found);
    });
}

void SizingPage::build() {
    row_ = new TaskRow(tr("Compare the sets"), task_, this);
    views_ = new QButtonGroup(this);
    int number = 0;
    for (const QString& words : {tr("Cost and comfort"), tr("Tilt and bearing"), tr("Warm-up by month")}) {
        auto* button = new QToolButton(this);
        button->setText(words);
        button->setCheckable(true);
        views_->addButton(button, number++);
        row_->row().addWidget(button);
    }
    views_->button(0)->setChecked(true);
    wishes_ = new QWidget(this);
    cost_ = new QComboBox(wishes_);
    cost_->addItems({tr("Whole cost a year"), tr("Investment")});
    cost_->setAccessibleName(tr("Cost shown"));
    comfort_ = new ComfortRow(wishes_);
    auto* wishes = new QHBoxLayout(wishes_);
    wishes->setContentsMargins(0, 0, 0, 0);
    wishes->setSpacing(16);
    wishes->addWidget(comfort_);
    wishes->addStretch(1);
    wishes->addWidget(cost_);
    view_ = new PictureView(this);
    chosen_ = text_label(this);
    make_ = new QPushButton(tr("Make this a choice"), this);
    words_ = text_label(this);
    words_->setProperty("role", QStringLiteral("muted"));
    auto* chosen = new QHBoxLayout;
    chosen->setSpacing(16);
    chosen->addWidget(chosen_, 1);
    chosen->addWidget(make_, 0, Qt::AlignTop);
    auto* body = new QWidget(this);
    auto* parts = new QVBoxLayout(body);
    parts->setContentsMargins(16, 8, 16, 16);
    parts->setSpacing(8);
    parts->addWidget(wishes_);
    parts->addWidget(view_, 1);
    parts->addLayout(chosen);
    parts->addWidget(words_);
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

void SizingPage::set_session(JobSession* session) {
    task_->stop();
    session_ = session;
    answer_.reset();
    key_.clear();
    problem_.clear();
    sets_.selected = -1;
    refresh();
}

std::string SizingPage::state_key() const {
    if (session_ == nullptr) return {};
    // What the advice does not look at stays out: adding one of its sets as a choice leaves the others as they are.
    Job job = session_->job();
    const Choice* choice = session_->current_choice();
    if (answer_) {
        const Choice* base = find_choice(job, answer_->wish.choice_id);
        if (base != nullptr) choice = base;
    }
    const std::vector<Choice> only = choice == nullptr ? std::vector<Choice>() : std::vector<Choice>{*choice};
    job.choices = only;
    job.chosen_choice_id.clear();
    const auto reference = session_->shared_reference();
    return content_sha256(job) + std::to_string(reinterpret_cast<std::uintptr_t>(reference->weather.get()));
}

bool SizingPage::outdated() const {
    return answer_.has_value() && key_ != state_key();
}

void SizingPage::start() {
    if (session_ == nullptr || session_->current_choice() == nullptr) return;
    const auto job = std::make_shared<const Job>(session_->job());
    const auto reference = session_->shared_reference();
    plan::SizingWish wish;
    wish.choice_id = session_->current_choice()->id;
    wish.comfort = comfort_->target();
    problem_.clear();
    task_->start([this, job, reference, wish](const plan::Progress& progress) -> BackgroundTask::Take {
        const auto refuse = [this](const std::vector<Problem>& problems) {
            return BackgroundTask::Take([this, text = qs(text_of(problems))] { problem_ = text; });
        };
        auto answer = std::make_shared<Answer>();
        answer->wish = wish;
        answer->demand = job->demand;
        auto advice =
            plan::sizing_advice(*job, *reference, wish, [&](double share) { return progress(sets_share * share); });
        if (!advice.ok()) return refuse(advice.problems());
        if (advice.value().cancelled) return {};
        answer->advice = std::move(advice).value();
        auto facing = plan::facing_yields(*job, *reference, wish.choice_id, [&](double share) {
            return progress(sets_share + (1.0 - sets_share) * share);
        });
        if (!facing.ok()) return refuse(facing.problems());
        if (facing.value().cancelled) return {};
        answer->facing = std::move(facing).value();
        auto warm = plan::warm_up_by_month(*job, *reference, wish.choice_id);
        if (!warm.ok()) return refuse(warm.problems());
        answer->warm_up = std::move(warm).value();
        return [this, answer, job] {
            show_answer(*answer);
            // The job may have been changed meanwhile: then the figures are those of the state they were asked for.
            if (session_ != nullptr && !(content_sha256(session_->job()) == content_sha256(*job))) key_.clear();
            fill_state();
        };
    });
    row_->follow();
    fill_state();
}

void SizingPage::show_answer(const Answer& answer) {
    answer_ = answer;
    key_ = state_key();
    sets_.selected = -1;
    judge();
    fill_state();
}

void SizingPage::judge() {
    // The field keeps to the limits that core has; a target is never refused here.
    if (answer_) (void)plan::judge_comfort(answer_->advice, comfort_->target());
    fill();
}

bool SizingPage::shows_empty_pane() const {
    return stack_->currentWidget() == empty_;
}

SizingPage::View SizingPage::view_shown() const {
    return static_cast<View>(std::max(0, views_->checkedId()));
}

void SizingPage::show_view(View view) {
    views_->button(static_cast<int>(view))->setChecked(true);
    fill();
}

void SizingPage::select_point(int index) {
    if (!answer_ || index < 0 || index >= static_cast<int>(answer_->advice.points.size())) return;
    sets_.selected = index;
    fill();
}

std::string SizingPage::make_choice() {
    if (session_ == nullptr || !answer_ || sets_.selected < 0 || outdated()) return {};
    return add_set_as_choice(*session_, answer_->wish,
                             answer_->advice.points[static_cast<std::size_t>(sets_.selected)]);
}

void SizingPage::refresh() {
    fill();
    fill_state();
}

void SizingPage::fill() {
    const View view = view_shown();
    wishes_->setVisible(view == View::sets);
    chosen_->setVisible(view == View::sets);
    make_->setVisible(view == View::sets);
    if (!answer_) {
        view_->show_picture({}, {});
        words_->clear();
        return;
    }
    const int selected = sets_.selected;
    sets_ = sets_of(answer_->advice, cost_->currentIndex() == 0);
    sets_.selected = selected;
    const bool south = session_ == nullptr || session_->job().site.location.latitude_deg >= 0.0;
    facing_ = facing_of(answer_->facing, south);
    warm_up_ = warm_up_of(answer_->warm_up);
    const bool one = selected >= 0;
    chosen_->setText(one ? point_words(answer_->advice.points[static_cast<std::size_t>(selected)], answer_->advice)
                         : tr("No set is picked."));
    make_->setEnabled(one && !outdated());
    switch (view) {
        case View::sets: words_->setText(sets_words(answer_->advice)); break;
        case View::facing: words_->setText(facing_words(answer_->facing)); break;
        case View::warm_up: words_->setText(warm_up_words(answer_->warm_up, answer_->demand)); break;
    }
    view_->setAccessibleName(words_->text());
    show_pictures();
}

void SizingPage::show_pictures() {
    view_->show_picture(
        [this](QPainter& painter, const QRectF& area, const Theme& theme, double text_units) {
            switch (view_shown()) {
                case View::sets: paint_sets(painter, sets_, area, theme, text_units); break;
                case View::facing: paint_facing(painter, facing_, area, theme, text_units); break;
                case View::warm_up: paint_warm_up(painter, warm_up_, area, theme, text_units); break;
            }
        },
        [this](const QRectF& area, QPointF at, double text_units) {
            if (view_shown() == View::sets) {
                const int found = set_at(sets_, area, at, text_units);
                return found < 0
                           ? QString()
                           : point_words(answer_->advice.points[static_cast<std::size_t>(found)], answer_->advice);
            }
            if (view_shown() == View::facing) {
                const int found = facing_at(facing_, facing_frame(facing_, area, text_units), at);
                if (found >= 0) return cell_words(answer_->facing.cells[static_cast<std::size_t>(found)]);
            }
            return QString();
        });
}

void SizingPage::fill_state() {
    const bool can = session_ != nullptr && session_->current_choice() != nullptr;
    empty_->set_words(
        task_->running() ? tr("Working out years\u2026") : tr("Which set suits this household"),
        problem_.isEmpty()
            ? tr("Works out a year for every block and cylinder of the catalogue that go together, with as many "
                 "collectors as the block is made for; a year by tilt and bearing for the set as chosen; and how "
                 "long it takes to warm up month by month. That takes up to a minute; the job can be edited meanwhile.")
            : problem_,
        can && !task_->running() ? tr("Compare the sets") : QString());
    stack_->setCurrentIndex(answer_ ? 1 : 0);
    // Before the first answer the pane has the button, and there is nothing to switch between.
    row_->setVisible(answer_ || task_->running());
    for (QAbstractButton* button : views_->buttons())
        button->setVisible(answer_.has_value());
    row_->set_enabled(session_ != nullptr && session_->current_choice() != nullptr);
    make_->setEnabled(answer_ && sets_.selected >= 0 && !outdated());
    if (!problem_.isEmpty()) {
        row_->set_state(problem_, true);
    } else if (task_->running()) {
        row_->set_state(tr("Working out years\u2026"), false);
    } else if (!answer_) {
        row_->set_state(tr("Not worked out yet"), false);
    } else if (outdated()) {
        row_->set_state(tr("Of an earlier state of the job: compare again"), true);
    } else {
        row_->set_state(tr("%1 sets compared").arg(answer_->advice.points.size()), false);
    }
}

FigureTable SizingPage::figures() const {
    if (!answer_) return {{QStringLiteral("set")}, {}};
    switch (view_shown()) {
        case View::sets: return sets_figures(answer_->advice);
        case View::facing: return facing_figures(answer_->facing);
        case View::warm_up: return warm_up_figures(answer_->warm_up);
    }
    return {};
}

bool SizingPage::save_picture(const QString& path) const {
    return answer_ && view_->save(path);
}

QString SizingPage::words() const {
    return words_->text();
}

}  // namespace wg::ui
