#include "ui/offer/agreed_bar.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include "ui/common/format.h"
#include "ui/comparison/choice_plans.h"

namespace wg::ui {

AgreedBar::AgreedBar(store::Store* store, QWidget* parent) : QFrame(parent), store_(store) {
    setFrameShape(QFrame::StyledPanel);
    const auto label = [this] {
        auto* made = new QLabel(this);
        made->setTextFormat(Qt::PlainText);
        made->setWordWrap(true);
        made->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
        return made;
    };
    agreed_line_ = label();
    QFont bold = agreed_line_->font();
    bold.setBold(true);
    agreed_line_->setFont(bold);
    today_line_ = label();
    causes_ = label();
    causes_->hide();
    why_ = new QPushButton(tr("Why"), this);
    why_->setCheckable(true);
    why_->setToolTip(tr("What the difference comes from, and what to do"));
    connect(why_, &QPushButton::toggled, causes_, &QWidget::setVisible);
    auto* row = new QHBoxLayout;
    row->setSpacing(16);
    row->addWidget(today_line_, 1);
    row->addWidget(why_, 0, Qt::AlignTop);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(16, 8, 16, 8);
    column->setSpacing(4);
    column->addWidget(agreed_line_);
    column->addLayout(row);
    column->addWidget(causes_);
    hide();
}

void AgreedBar::set_session(JobSession* session) {
    session_ = session;
    why_->setChecked(false);
    reload();
}

void AgreedBar::reload() {
    const std::optional<Agreed> known = std::move(agreed_);
    agreed_.reset();
    if (store_ != nullptr && session_ != nullptr) {
        auto read = agreed_of(*store_, session_->job().id, known);
        if (read.ok())
            agreed_ = std::move(read).value();
        else
            Q_EMIT problem(qs(text_of(read.problems())));
    }
    compare();
}

std::vector<std::string> AgreedBar::wants() const {
    if (!agreed_ || session_ == nullptr) return {};
    const std::string& id = agreed_->offer.choice_id;
    const Choice* shown = session_->current_choice();
    if (id.empty() || (shown != nullptr && shown->id == id) || find_choice(session_->job(), id) == nullptr) return {};
    return {id};
}

void AgreedBar::compare() {
    words_ = {};
    if (agreed_ && session_ != nullptr) {
        const std::string& id = agreed_->offer.choice_id;
        const auto shown = session_->plan();
        std::shared_ptr<const plan::Plan> plan;
        if (shown != nullptr && (id.empty() || shown->choice_id == id)) {
            plan = shown;
        } else if (const ChoicePlan* made = ChoicePlans::of(*session_).plan_of(id)) {
            plan = made->plan;
        }
        const bool there = id.empty() || find_choice(session_->job(), id) != nullptr;
        words_ = agreed_words(*agreed_, plan.get(), there, session_->job().price_list);
    }
    show_words();
}

void AgreedBar::show_words() {
    setVisible(agreed_.has_value());
    agreed_line_->setText(words_.agreed);
    today_line_->setText(words_.today);
    QStringList lines = words_.causes;
    if (!words_.advice.isEmpty()) lines += words_.advice;
    causes_->setText(lines.join(QLatin1Char('\n')));
    why_->setVisible(!lines.isEmpty());
    causes_->setVisible(why_->isChecked() && !lines.isEmpty());
}

}  // namespace wg::ui
