#include "ui/fitting/verdict_list.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QVBoxLayout>

#include "ui/common/format.h"

namespace wg::ui {

Mark mark_of(commissioning::Verdict verdict) {
    switch (verdict) {
        case commissioning::Verdict::passed: return Mark::ready;
        case commissioning::Verdict::failed: return Mark::stop;
        case commissioning::Verdict::cannot_tell: return Mark::caution;
    }
    return Mark::note;
}

VerdictList::VerdictList(QWidget* parent) : QScrollArea(parent) {
    setWidgetResizable(true);
    setFrameShape(QFrame::NoFrame);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    set_assessments({});
}

void VerdictList::set_assessments(const std::vector<commissioning::Assessment>& assessments) {
    // A fresh inside each time: a dozen labels, rebuilt once a plan.
    inside_ = new QWidget(this);
    column_ = new QVBoxLayout(inside_);
    column_->setContentsMargins(0, 0, 0, 0);
    column_->setSpacing(16);
    lines_.clear();
    const auto label = [this](const QString& text, const QString& role) {
        auto* made = new QLabel(text, inside_);
        made->setWordWrap(true);
        made->setTextFormat(Qt::PlainText);
        made->setTextInteractionFlags(Qt::TextSelectableByMouse);
        if (!role.isEmpty()) made->setProperty("role", role);
        lines_ += text;
        return made;
    };
    for (const commissioning::Assessment& a : assessments) {
        const Mark mark = mark_of(a.verdict);
        auto* row = new QHBoxLayout;
        row->setSpacing(8);
        auto* sign = new QLabel(inside_);
        sign->setPixmap(mark_icon(mark, current_theme(), 20).pixmap(20, 20));
        row->addWidget(sign, 0, Qt::AlignTop);
        auto* words = new QVBoxLayout;
        words->setSpacing(2);
        words->addWidget(
            label(QStringLiteral("%1: %2").arg(qs(a.subject), QString::fromUtf8(commissioning::word(a.verdict))),
                  mark == Mark::ready ? QStringLiteral("ready") : word_of(mark)));
        if (!a.words.empty()) words->addWidget(label(qs(a.words), QString()));
        if (!a.next.empty()) words->addWidget(label(tr("Now: %1").arg(qs(a.next)), QString()));
        row->addLayout(words, 1);
        column_->addLayout(row);
    }
    if (assessments.empty()) {
        column_->addWidget(label(tr("No verdict yet. Enter the readings as the work goes: pressure hold first."),
                                 QStringLiteral("muted")));
    }
    column_->addStretch(1);
    setWidget(inside_);
}

}  // namespace wg::ui
