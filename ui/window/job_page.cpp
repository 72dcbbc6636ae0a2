#include "ui/window/job_page.h"

#include <QFrame>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QSplitter>
#include <QStackedWidget>
#include <QVBoxLayout>

#include "ui/common/elided_label.h"
#include "ui/common/findings_list.h"
#include "ui/common/format.h"
#include "ui/common/job_session.h"
#include "ui/common/ledger.h"
#include "ui/common/notice_bar.h"
#include "ui/common/stage_widget.h"
#include "ui/common/working_view.h"
#include "ui/window/choice_selector.h"
#include "ui/window/stage_bar.h"

namespace wg::ui {
namespace {

constexpr int side_panel_px = 320;
constexpr int foot_px = 28;

}  // namespace

JobPage::JobPage(std::array<StageFactory, stage_count> factories, QWidget* parent)
    : QWidget(parent), factories_(std::move(factories)) {
    setObjectName(QStringLiteral("page"));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    notice_ = new NoticeBar(this);
    column->addWidget(make_head());
    column->addWidget(make_body(), 1);
    column->addWidget(make_foot());
    notice_->lie_over({12, 12, 12, foot_px + 8});
    connect(bar_, &StageBar::stage_asked, this, &JobPage::show_stage);
    connect(findings_, &FindingsList::activated, this, &JobPage::go_to);
    connect(findings_, &FindingsList::working_asked, this, [this](const Finding& finding) {
        if (WorkingView* view = open_workings()) view->show_finding(finding);
    });
    connect(ledger_, &Ledger::working_asked, this, [this](const QString& key) {
        if (WorkingView* view = open_workings()) view->show_key(key);
    });
}

QWidget* JobPage::make_head() {
    auto* head = new QWidget(this);
    auto* row = new QHBoxLayout(head);
    row->setContentsMargins(12, 4, 12, 4);
    row->setSpacing(8);
    auto* back = new QPushButton(tr("Desk"), head);
    back->setToolTip(tr("Go back to the desk (Ctrl+D)"));
    title_ = new ElidedLabel(head);
    title_->setMinimumWidth(120);
    bar_ = new StageBar(head);
    choices_ = new ChoiceSelector(head);
    row->addWidget(back);
    row->addWidget(title_, 1);
    row->addWidget(bar_);
    row->addSpacing(8);
    row->addWidget(choices_);
    connect(back, &QPushButton::clicked, this, &JobPage::desk_asked);
    return head;
}

QWidget* JobPage::make_body() {
    auto* splitter = new QSplitter(Qt::Horizontal, this);
    stack_ = new QStackedWidget(splitter);
    stack_->setObjectName(QStringLiteral("stages"));
    stack_->setMinimumWidth(480);
    for (QWidget*& holder : holders_) {
        holder = new QWidget(stack_);
        auto* box = new QVBoxLayout(holder);
        box->setContentsMargins(0, 0, 0, 0);
        stack_->addWidget(holder);
    }
    auto* side = new QFrame(splitter);
    side->setProperty("role", QStringLiteral("panel"));
    side->setMinimumWidth(280);
    auto* column = new QVBoxLayout(side);
    column->setContentsMargins(1, 1, 1, 1);
    column->setSpacing(0);
    ledger_ = new Ledger(side);
    findings_ = new FindingsList(side);
    auto* rule = new QFrame(side);
    rule->setProperty("role", QStringLiteral("rule"));
    column->addWidget(ledger_);
    column->addWidget(rule);
    column->addWidget(findings_, 1);
    splitter->addWidget(stack_);
    splitter->addWidget(side);
    splitter->setStretchFactor(0, 1);
    splitter->setStretchFactor(1, 0);
    splitter->setSizes({10000, side_panel_px});
    splitter->setCollapsible(0, false);
    return splitter;
}

QWidget* JobPage::make_foot() {
    auto* foot = new QWidget(this);
    auto* row = new QHBoxLayout(foot);
    row->setContentsMargins(12, 2, 12, 2);
    row->setSpacing(16);
    status_ = new ElidedLabel(foot);
    saved_ = new QLabel(foot);
    planning_ = new QLabel(foot);
    for (QLabel* label : {status_, saved_, planning_})
        label->setProperty("role", QStringLiteral("muted"));
    status_->setAccessibleName(tr("What the pointer is over"));
    saved_->setAlignment(Qt::AlignRight | Qt::AlignVCenter);
    planning_->setAlignment(Qt::AlignRight | Qt::AlignVCenter);
    // Room for the longest words, so that the line does not jump while planning comes and goes.
    planning_->setMinimumWidth(fontMetrics().horizontalAdvance(tr("planning \u2026")) + 16);
    foot->setFixedHeight(foot_px);
    row->addWidget(status_, 1);
    row->addWidget(saved_);
    row->addWidget(planning_);
    return foot;
}

StageWidget* JobPage::ensure_stage(int stage) {
    const auto at = static_cast<std::size_t>(stage);
    if (stages_[at] != nullptr) return stages_[at];
    StageWidget* made = factories_[at](holders_[at]);
    holders_[at]->layout()->addWidget(made);
    connect(made, &StageWidget::status_text, this, [this, stage](const QString& text) {
        if (stage == current_) status_->setText(text);
    });
    connect(made, &StageWidget::weather_asked, this, &JobPage::weather_asked);
    connect(made, &StageWidget::customer_asked, this, &JobPage::customer_asked);
    connect(made, &StageWidget::working_asked, this, [this](const QString& key) {
        if (WorkingView* view = open_workings()) view->show_key(key);
    });
    connect(made, &StageWidget::point_working_asked, this, [this](const QString& placement_id, int point) {
        WorkingView* view = open_workings();
        if (view == nullptr) return;
        if (point > 0)
            view->show_point(placement_id.toStdString(), point);
        else
            view->show_key(QStringLiteral("fixing.worst"), placement_id.toStdString());
    });
    made->set_session(session_);
    stages_[at] = made;
    return made;
}

void JobPage::set_session(JobSession* session) {
    if (session_ != nullptr) session_->disconnect(this);
    session_ = session;
    notice_->clear();
    status_->clear();
    saved_->clear();
    if (workings_ != nullptr) workings_->close();
    for (StageWidget* stage : stages_) {
        if (stage != nullptr) stage->set_session(session);
    }
    ledger_->set_session(session);
    findings_->set_session(session);
    choices_->set_session(session);
    if (session_ != nullptr) {
        connect(session_, &JobSession::job_changed, this, &JobPage::refresh_head);
        connect(session_, &JobSession::job_changed, this, &JobPage::refresh_marks);
        connect(session_, &JobSession::plan_changed, this, &JobPage::refresh_marks);
        connect(session_, &JobSession::planning_changed, this, &JobPage::refresh_planning);
        connect(session_, &JobSession::plan_changed, this, [this] {
            if (workings_ != nullptr && session_->plan() != nullptr) workings_->set_plan(*session_->plan());
        });
    }
    refresh_head();
    refresh_marks();
    refresh_planning();
}

WorkingView* JobPage::working_view() const {
    return workings_;
}

WorkingView* JobPage::open_workings() {
    if (session_ == nullptr) return nullptr;
    if (session_->plan() == nullptr) {
        status_->setText(tr("There is no plan yet, so no working."));
        return nullptr;
    }
    if (workings_ == nullptr) {
        workings_ = new WorkingView(window());
        workings_->setAttribute(Qt::WA_DeleteOnClose);
    }
    workings_->set_plan(*session_->plan());
    workings_->show();
    workings_->raise();
    workings_->activateWindow();
    return workings_;
}

void JobPage::show_workings() {
    const QString key = ledger_->focused_key();
    const Finding* focused = findings_->focused_with_working();
    const std::optional<Finding> finding = focused != nullptr ? std::optional<Finding>(*focused) : std::nullopt;
    WorkingView* view = open_workings();
    if (view == nullptr) return;
    if (!key.isEmpty()) view->show_key(key);
    if (finding) view->show_finding(*finding);
}

void JobPage::show_stage(int stage) {
    if (stage < 0 || stage >= stage_count) return;
    current_ = stage;
    status_->clear();
    bar_->set_current(stage);
    StageWidget* shown = ensure_stage(stage);
    stack_->setCurrentIndex(stage);
    if (shown->focusPolicy() != Qt::NoFocus || shown->focusProxy() != nullptr) {
        shown->setFocus(Qt::OtherFocusReason);
    } else {
        bar_->focus_current();
    }
}

void JobPage::set_saved_text(const QString& text) {
    saved_->setText(text);
}

void JobPage::refresh_head() {
    if (session_ == nullptr) {
        title_->clear();
        return;
    }
    const Job& job = session_->job();
    QStringList parts;
    for (const std::string& part : {job.number, job.client.name.empty() ? job.title : job.client.name}) {
        if (!part.empty()) parts.append(qs(part));
    }
    title_->setText(parts.isEmpty() ? tr("New job") : parts.join(QStringLiteral("  ")));
    title_->setToolTip(qs(job.title));
}

void JobPage::refresh_marks() {
    if (session_ == nullptr) return;
    bar_->set_marks(stage_marks(session_->job(), session_->plan().get()));
}

void JobPage::refresh_planning() {
    planning_->setText(session_ != nullptr && session_->planning() ? tr("planning \u2026") : QString());
}

void JobPage::go_to(const QString& place_id, Stage stage) {
    show_stage(static_cast<int>(stage));
    if (StageWidget* shown = stages_[static_cast<std::size_t>(stage)]; !place_id.isEmpty()) shown->show_place(place_id);
}

}  // namespace wg::ui
