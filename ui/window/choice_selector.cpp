#include "ui/window/choice_selector.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QMenu>
#include <QStyleOptionComboBox>
#include <QStylePainter>
#include <QToolButton>
#include <QWidgetAction>

#include "ui/common/edits.h"
#include "ui/common/format.h"
#include "ui/common/job_session.h"
#include "ui/common/mark.h"
#include "ui/common/theme.h"

namespace wg::ui {

void ElidedCombo::paintEvent(QPaintEvent*) {
    QStylePainter painter(this);
    QStyleOptionComboBox option;
    initStyleOption(&option);
    const QRect field = style()->subControlRect(QStyle::CC_ComboBox, &option, QStyle::SC_ComboBoxEditField, this);
    const int icon_width = option.currentIcon.isNull() ? 0 : option.iconSize.width() + 6;
    option.currentText = fontMetrics().elidedText(option.currentText, Qt::ElideRight, field.width() - icon_width - 8);
    painter.drawComplexControl(QStyle::CC_ComboBox, option);
    painter.drawControl(QStyle::CE_ComboBoxLabel, option);
}

ChoiceSelector::ChoiceSelector(QWidget* parent) : QWidget(parent) {
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(4);
    choices_ = new ElidedCombo(this);
    choices_->setAccessibleName(tr("Choice on screen"));
    choices_->setMinimumWidth(150);
    choices_->setMaximumWidth(260);
    more_ = new QToolButton(this);
    more_->setText(tr("Choice"));
    more_->setToolTip(tr("Add, duplicate, rename or remove a choice"));
    more_->setPopupMode(QToolButton::InstantPopup);
    row->addWidget(choices_);
    row->addWidget(more_);
    make_menu();
    connect(choices_, &QComboBox::activated, this, [this](int index) {
        if (session_ != nullptr) session_->set_current_choice(choices_->itemData(index).toString().toStdString());
    });
    refresh();
}

void ChoiceSelector::make_menu() {
    menu_ = new QMenu(this);
    menu_->addAction(tr("Add a choice"), this, [this] {
        if (session_ != nullptr) add_choice(*session_);
    });
    need_choice_.append(menu_->addAction(tr("Duplicate this choice"), this, [this] {
        if (session_ != nullptr) duplicate_choice(*session_, current_id());
    }));
    mark_ = menu_->addAction(tr("Mark as chosen"), this, [this] {
        if (session_ != nullptr) mark_chosen(*session_, current_id());
    });
    need_choice_.append(mark_);
    // Renaming happens in the menu itself: a dialog would be too much for one word.
    auto* line = new QWidget(menu_);
    auto* row = new QHBoxLayout(line);
    row->setContentsMargins(24, 2, 12, 2);
    row->addWidget(new QLabel(tr("Rename"), line));
    rename_ = new QLineEdit(line);
    rename_->setAccessibleName(tr("New name of the choice"));
    row->addWidget(rename_, 1);
    auto* rename = new QWidgetAction(menu_);
    rename->setDefaultWidget(line);
    menu_->addAction(rename);
    need_choice_.append(rename);
    menu_->addSeparator();
    need_choice_.append(menu_->addAction(tr("Remove this choice"), this, [this] {
        if (session_ != nullptr) remove_choice(*session_, current_id());
    }));
    more_->setMenu(menu_);
    connect(rename_, &QLineEdit::returnPressed, this, [this] {
        const QString label = rename_->text().trimmed();
        if (session_ != nullptr && !label.isEmpty()) rename_choice(*session_, current_id(), label.toStdString());
        menu_->close();
    });
}

void ChoiceSelector::set_session(JobSession* session) {
    if (session_ != nullptr) session_->disconnect(this);
    session_ = session;
    if (session_ != nullptr) {
        connect(session_, &JobSession::job_changed, this, &ChoiceSelector::refresh);
        connect(session_, &JobSession::choice_changed, this, &ChoiceSelector::refresh);
    }
    refresh();
}

std::string ChoiceSelector::current_id() const {
    const Choice* current = session_ != nullptr ? session_->current_choice() : nullptr;
    return current != nullptr ? current->id : std::string();
}

void ChoiceSelector::refresh() {
    choices_->clear();
    const std::string current = current_id();
    if (session_ != nullptr) {
        const Job& job = session_->job();
        const Choice* chosen = chosen_choice(job);
        for (const Choice& choice : job.choices) {
            const bool is_chosen = chosen != nullptr && chosen->id == choice.id;
            // The mark goes before the label, which may be long and cut.
            choices_->addItem(mark_icon(is_chosen ? Mark::ready : Mark::empty, current_theme()), qs(choice.label),
                              qs(choice.id));
            const QString words = is_chosen ? tr("%1 (chosen)") : tr("%1 (not chosen)");
            choices_->setItemData(choices_->count() - 1, words.arg(qs(choice.label)), Qt::ToolTipRole);
            if (choice.id == current) {
                choices_->setCurrentIndex(choices_->count() - 1);
                rename_->setText(qs(choice.label));
                mark_->setEnabled(!is_chosen);
            }
        }
    }
    const bool any = choices_->count() > 0;
    choices_->setToolTip(any ? tr("On screen: %1").arg(choices_->currentData(Qt::ToolTipRole).toString()) : QString());
    if (!any) choices_->addItem(tr("no choice yet"));
    choices_->setEnabled(any);
    more_->setEnabled(session_ != nullptr);
    for (QAction* action : need_choice_) {
        if (action != mark_ || !any) action->setEnabled(any);
    }
}

}  // namespace wg::ui
