#include "ui/documents/look_button.h"

#include <QActionGroup>
#include <QMenu>

namespace wg::ui {
namespace {

/// Each by its own name, whatever the window speaks.
QString own_name(Language language) {
    switch (language) {
        case Language::english: return QStringLiteral("English");
        case Language::spanish: return QStringLiteral("Español");
        case Language::german: return QStringLiteral("Deutsch");
    }
    return {};
}

QString name_of_form(PageForm form) {
    return form == PageForm::letter ? LookButton::tr("Letter") : LookButton::tr("A4");
}

}  // namespace

LookButton::LookButton(QWidget* parent) : QToolButton(parent) {
    setPopupMode(QToolButton::InstantPopup);
    setMenu(new QMenu(this));
    menu()->setToolTipsVisible(true);
    auto* one_form = new QActionGroup(this);
    auto* one_language = new QActionGroup(this);
    for (const PageForm form : {PageForm::a4, PageForm::letter})
        forms_.emplace_back(add(name_of_form(form), tr("Paper size"), one_form), form);
    menu()->addSeparator();
    large_ = add(tr("Large print"), tr("Nothing lettered below 14 pt"), nullptr);
    plain_ = add(tr("Black and white"), tr("No tints and no colours"), nullptr);
    menu()->addSeparator();
    for (const Language language : {Language::english, Language::spanish, Language::german})
        languages_.emplace_back(add(own_name(language), tr("Language of the paper"), one_language), language);
    set_look({});
    refresh();
}

QAction* LookButton::add(const QString& words, const QString& tip, QActionGroup* one_of) {
    QAction* action = menu()->addAction(words);
    action->setCheckable(true);
    action->setToolTip(tip);
    action->setActionGroup(one_of);
    connect(action, &QAction::triggered, this, &LookButton::take);
    return action;
}

QAction* LookButton::entry(const QString& words) const {
    for (QAction* action : menu()->actions())
        if (action->text() == words) return action;
    return nullptr;
}

void LookButton::set_look(const PaperLook& look) {
    look_ = look;
    for (const auto& [action, form] : forms_)
        action->setChecked(form == look.form);
    for (const auto& [action, language] : languages_)
        action->setChecked(language == look.language);
    large_->setChecked(look.large_print);
    plain_->setChecked(look.black_and_white);
    refresh();
}

void LookButton::take() {
    PaperLook now;
    for (const auto& [action, form] : forms_)
        if (action->isChecked()) now.form = form;
    for (const auto& [action, language] : languages_)
        if (action->isChecked()) now.language = language;
    now.large_print = large_->isChecked();
    now.black_and_white = plain_->isChecked();
    if (now == look_) return;
    look_ = now;
    refresh();
    Q_EMIT look_chosen(look_);
}

void LookButton::refresh() {
    // Short enough for one row of tools; the tooltip says it in full.
    QStringList brief{name_of_form(look_.form)};
    QStringList whole{tr("Paper size %1").arg(brief.front())};
    if (look_.large_print) {
        brief << tr("large");
        whole << tr("large print");
    }
    if (look_.black_and_white) {
        brief << tr("b/w");
        whole << tr("black and white");
    }
    brief << own_name(look_.language);
    whole << own_name(look_.language);
    const QString between = QStringLiteral(", ");
    setText(tr("Paper: %1").arg(brief.join(between)));
    setToolTip(whole.join(between));
    setAccessibleName(tr("How the paper looks: %1").arg(whole.join(between)));
}

}  // namespace wg::ui
