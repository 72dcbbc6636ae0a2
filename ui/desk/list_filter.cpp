#include "ui/desk/list_filter.h"

#include <QCheckBox>
#include <QComboBox>
#include <QHBoxLayout>
#include <QInputDialog>
#include <QMenu>
#include <QSignalBlocker>
#include <QToolButton>

#include "core/job/words.h"
#include "core/store/fitted_parts.h"
#include "ui/common/format.h"
#include "ui/desk/step_words.h"

namespace wg::ui {
namespace {

constexpr int any_step = -1;
constexpr int waits_for_us = -2;
constexpr int several_steps = -3;
constexpr NextStep all_steps[] = {NextStep::survey,       NextStep::plan,          NextStep::send_quote,
                                  NextStep::await_answer, NextStep::after_refusal, NextStep::fit,
                                  NextStep::hand_over,    NextStep::service,       NextStep::nothing};

void show_days(QComboBox* box, int days) {
    int at = box->findData(days);
    if (at < 0) {  // of a view that another program kept
        box->addItem(ListFilter::tr("%1 days").arg(days), days);
        at = box->count() - 1;
    }
    box->setCurrentIndex(at);
}

}  // namespace

ListFilter::ListFilter(store::Store& store, QWidget* parent) : QWidget(parent), store_(store) {
    states_ = new QToolButton(this);
    states_->setPopupMode(QToolButton::InstantPopup);
    auto* menu = new QMenu(states_);
    for (const Word<JobState>& state : words<JobState>()) {
        QAction* action = menu->addAction(QString::fromUtf8(state.text));
        action->setCheckable(true);
        action->setData(static_cast<int>(state.value));
        connect(action, &QAction::toggled, this, [this] {
            refresh_words();
            Q_EMIT changed();
        });
        state_actions_.push_back(action);
    }
    states_->setMenu(menu);
    due_ = new QComboBox(this);
    due_->setAccessibleName(tr("Service due"));
    for (const auto& [words, days] :
         {std::pair{tr("Any service day"), -1}, std::pair{tr("Service overdue or today"), 0},
          std::pair{tr("Service within 30 days"), 30}, std::pair{tr("Service within 90 days"), 90}})
        due_->addItem(words, days);
    quiet_ = new QComboBox(this);
    quiet_->setAccessibleName(tr("Not changed for"));
    for (const auto& [words, days] : {std::pair{tr("Changed whenever"), -1}, std::pair{tr("Quiet for 14 days"), 14},
                                      std::pair{tr("Quiet for 30 days"), 30}, std::pair{tr("Quiet for 90 days"), 90}})
        quiet_->addItem(words, days);
    steps_ = new QComboBox(this);
    steps_->setAccessibleName(tr("What is to be done next"));
    steps_->addItem(tr("Whatever is next"), any_step);
    steps_->addItem(tr("Waits for us"), waits_for_us);
    for (const NextStep step : all_steps)
        steps_->addItem(step_name(step), static_cast<int>(step));
    for (QComboBox* box : {due_, quiet_, steps_})
        connect(box, &QComboBox::currentIndexChanged, this, &ListFilter::changed);
    items_button_ = new QToolButton(this);
    items_button_->setPopupMode(QToolButton::InstantPopup);
    items_button_->setAccessibleName(tr("Equipment that stands there"));
    items_ = new QMenu(items_button_);
    items_button_->setMenu(items_);
    connect(items_, &QMenu::aboutToShow, this, &ListFilter::fill_items);
    without_invented_ = new QCheckBox(tr("Without demonstrations"), this);
    connect(without_invented_, &QCheckBox::toggled, this, &ListFilter::changed);
    views_button_ = new QToolButton(this);
    views_button_->setText(tr("Views"));
    views_button_->setPopupMode(QToolButton::InstantPopup);
    views_ = new QMenu(views_button_);
    views_button_->setMenu(views_);
    connect(views_, &QMenu::aboutToShow, this, &ListFilter::fill_views);
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(8);
    for (QWidget* part : {static_cast<QWidget*>(states_), static_cast<QWidget*>(steps_), static_cast<QWidget*>(due_),
                          static_cast<QWidget*>(quiet_), static_cast<QWidget*>(items_button_),
                          static_cast<QWidget*>(without_invented_)})
        row->addWidget(part);
    row->addStretch(1);
    row->addWidget(views_button_);
    refresh_words();
}

std::vector<NextStep> ListFilter::steps_of(int entry) const {
    if (entry == any_step) return {};
    if (entry == several_steps) return other_steps_;
    if (entry != waits_for_us) return {static_cast<NextStep>(entry)};
    std::vector<NextStep> out;
    for (const NextStep step : all_steps) {
        if (waits_for(step) == WaitsFor::firm) out.push_back(step);
    }
    return out;
}

void ListFilter::show_steps(const std::vector<NextStep>& steps) {
    for (int i = 0; i < steps_->count(); ++i) {
        if (steps_of(steps_->itemData(i).toInt()) != steps) continue;
        steps_->setCurrentIndex(i);
        return;
    }
    // Of a view that was kept elsewhere.
    QStringList names;
    for (const NextStep step : steps)
        names << step_name(step);
    other_steps_ = steps;
    if (steps_->findData(several_steps) < 0) steps_->addItem(QString(), several_steps);
    steps_->setItemText(steps_->findData(several_steps), names.join(QStringLiteral(", ")));
    steps_->setCurrentIndex(steps_->findData(several_steps));
}

QAction* ListFilter::state_action(JobState state) const {
    for (QAction* action : state_actions_) {
        if (action->data().toInt() == static_cast<int>(state)) return action;
    }
    return nullptr;
}

store::JobView ListFilter::chosen() const {
    store::JobView view;
    for (const QAction* action : state_actions_) {
        if (action->isChecked()) view.states.push_back(static_cast<JobState>(action->data().toInt()));
    }
    view.without_invented = without_invented_->isChecked();
    view.due_within_days = due_->currentData().toInt();
    view.quiet_for_days = quiet_->currentData().toInt();
    view.steps = steps_of(steps_->currentData().toInt());
    view.item_id = item_id_;
    view.order = order_;
    view.backwards = backwards_;
    return view;
}

void ListFilter::set_order(store::JobOrder order, bool backwards) {
    order_ = order;
    backwards_ = backwards;
}

void ListFilter::show_view(const store::JobView& view) {
    {
        const QSignalBlocker quiet_here(this);
        for (QAction* action : state_actions_) {
            const auto state = static_cast<JobState>(action->data().toInt());
            action->setChecked(std::find(view.states.begin(), view.states.end(), state) != view.states.end());
        }
        show_days(due_, view.due_within_days);
        show_days(quiet_, view.quiet_for_days);
        show_steps(view.steps);
        without_invented_->setChecked(view.without_invented);
        item_id_ = view.item_id;
        refresh_words();
        set_order(view.order, view.backwards);
    }
    Q_EMIT view_chosen(view);
}

void ListFilter::refresh_words() {
    QStringList chosen_states;
    for (const QAction* action : state_actions_) {
        if (action->isChecked()) chosen_states << action->text();
    }
    states_->setText(chosen_states.isEmpty()     ? tr("All states")
                     : chosen_states.size() <= 2 ? chosen_states.join(QStringLiteral(", "))
                                                 : tr("%1 states").arg(chosen_states.size()));
    items_button_->setText(item_id_.empty() ? tr("Any equipment") : name_of_item(item_id_));
}

QString ListFilter::name_of_item(const std::string& item_id) const {
    const QString name = item_name_ ? item_name_(item_id) : QString();
    return name.isEmpty() ? qs(item_id) : name;
}

void ListFilter::choose_item(const std::string& item_id) {
    item_id_ = item_id;
    refresh_words();
    Q_EMIT changed();
}

void ListFilter::fill_items() {
    items_->clear();
    connect(items_->addAction(tr("Any equipment")), &QAction::triggered, this, [this] { choose_item({}); });
    const auto there = store::FittedBook(store_).items();
    if (!there) {
        Q_EMIT problem(qs(text_of(there.problems())));
        return;
    }
    if (there.value().empty()) {
        items_->addAction(tr("Nothing is recorded as fitted yet"))->setEnabled(false);
        return;
    }
    for (const store::FittedItem& item : there.value()) {
        const QString words = item.jobs == 1 ? tr("%1, 1 job").arg(name_of_item(item.item_id))
                                             : tr("%1, %2 jobs").arg(name_of_item(item.item_id), number(item.jobs));
        connect(items_->addAction(words), &QAction::triggered, this, [this, id = item.item_id] { choose_item(id); });
    }
}

void ListFilter::fill_views() {
    views_->clear();
    connect(views_->addAction(tr("Everything, newest first")), &QAction::triggered, this, [this] { show_view({}); });
    const auto kept = store::JobList(store_).views();
    if (!kept) {
        Q_EMIT problem(qs(text_of(kept.problems())));
    } else {
        for (const store::JobView& view : kept.value())
            connect(views_->addAction(qs(view.name)), &QAction::triggered, this, [this, view] { show_view(view); });
    }
    views_->addSeparator();
    connect(views_->addAction(tr("Keep this view\u2026")), &QAction::triggered, this, &ListFilter::ask_and_keep);
    if (!kept) {
        connect(views_->addAction(tr("Remove all views")), &QAction::triggered, this, [this] {
            if (const auto done = store::JobList(store_).drop_all_views(); !done)
                Q_EMIT problem(qs(text_of(done.problems())));
        });
        return;
    }
    if (kept.value().empty()) return;
    QMenu* remove = views_->addMenu(tr("Remove a view"));
    for (const store::JobView& view : kept.value()) {
        connect(remove->addAction(qs(view.name)), &QAction::triggered, this, [this, name = view.name] {
            if (const auto done = store::JobList(store_).drop_view(name); !done)
                Q_EMIT problem(qs(text_of(done.problems())));
        });
    }
}

void ListFilter::ask_and_keep() {
    bool accepted = false;
    const QString name = QInputDialog::getText(this, tr("Keep this view"), tr("Name of the view"), QLineEdit::Normal,
                                               QString(), &accepted);
    if (accepted && !name.trimmed().isEmpty()) keep(name.trimmed());
}

void ListFilter::keep(const QString& name) {
    store::JobView view = chosen();
    view.name = name.toStdString();
    if (const auto kept = store::JobList(store_).keep_view(view); !kept) Q_EMIT problem(qs(text_of(kept.problems())));
}

}  // namespace wg::ui
