// One part of the day's work: what it wants, how each of it stands, and what the readings say.

#include <QDateTime>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QScrollBar>
#include <QStyle>
#include <QVBoxLayout>
#include <algorithm>

#include "ui/common/format.h"
#include "ui/common/job_session.h"
#include "ui/fitting/reading_words.h"
#include "ui/fitting/verdict_list.h"
#include "ui/fitting/work_page.h"

namespace wg::ui {
namespace {

/// An entry of the part that the chain speaks against; null: none.
const EntryBreak* break_in(const WorkStage& stage, const std::vector<Reading>& standing, const EntryBreaks& breaks) {
    for (const Want& want : stage.wants) {
        const Reading* entry = entry_for(want, standing);
        const auto at = entry == nullptr ? breaks.end() : breaks.find(entry->id);
        if (at != breaks.end()) return &at->second;
    }
    return nullptr;
}

/// What stops a part before what leaves it open; null: it is in order.
const commissioning::Assessment* worst_of(const std::vector<commissioning::Assessment>& assessments) {
    const commissioning::Assessment* worst = nullptr;
    for (const commissioning::Assessment& one : assessments)
        if (one.verdict != commissioning::Verdict::passed && !of_the_chain(one) &&
            (worst == nullptr || worst->verdict == commissioning::Verdict::cannot_tell))
            worst = &one;
    return worst;
}

}  // namespace

QString WorkPage::expected_of(const Want& want, const Reading* entry) const {
    const auto plan = session_ == nullptr ? nullptr : session_->plan();
    QDate day = QDate::currentDate();
    if (entry != nullptr)
        if (const QDate on = QDateTime::fromString(qs(entry->taken_at), Qt::ISODate).toLocalTime().date(); on.isValid())
            day = on;
    return plan == nullptr ? QString() : expected_words(want.kind, *plan, day);
}

/// Said at once, without scrolling: the details stand below the readings.
void WorkPage::say_worst(const WorkStage& stage, const std::vector<commissioning::Assessment>& own) {
    const EntryBreak* altered = break_in(stage, standing_, breaks_);
    const commissioning::Assessment* worst = worst_of(own);
    worst_->setVisible(altered != nullptr || worst != nullptr);
    const QString stop_sign = QStringLiteral("\u25a0 ");
    bool stop = true;
    if (altered != nullptr) {
        worst_->setText(stop_sign + altered->meaning);
    } else if (worst != nullptr) {
        stop = worst->verdict == commissioning::Verdict::failed;
        worst_->setText(QStringLiteral("%1%2: %3. %4")
                            .arg(stop ? stop_sign : QStringLiteral("\u25b2 "), qs(worst->subject),
                                 QString::fromUtf8(commissioning::word(worst->verdict)), on_screen(worst->next)));
    }
    worst_->setProperty("role", stop ? QStringLiteral("stop") : QStringLiteral("caution"));
    worst_->style()->unpolish(worst_);
    worst_->style()->polish(worst_);
}

QString WorkPage::shown_by(const WorkStage& stage, const std::vector<commissioning::Assessment>& own) const {
    QStringList shows{stage.title, QString::number(static_cast<int>(current_theme().kind))};
    for (const Want& want : stage.wants) {
        const Reading* entry = entry_for(want, standing_);
        shows << want.name << (entry == nullptr ? QString() : qs(entry->id)) << expected_of(want, entry) << want.note;
        if (entry != nullptr && breaks_.count(entry->id) > 0) shows << breaks_.at(entry->id).word;
    }
    for (const commissioning::Assessment& one : own)
        shows << qs(one.words) << qs(one.next) << QString::fromUtf8(commissioning::word(one.verdict))
              << QString::number(one.bands.size());
    return shows.join(QLatin1Char('\n'));
}

void WorkPage::fill_part() {
    const WorkStage& stage = stages_[static_cast<std::size_t>(current_)];
    const auto own = assessments_of(stage, standing_, assessments());
    title_->setText(stage.title);
    say_worst(stage, own);
    for (const auto& [tool, where] : tools_)
        tool->setVisible(std::any_of(stage.wants.begin(), stage.wants.end(),
                                     [kind = where](const Want& want) { return want.kind == kind; }));
    const QString now = shown_by(stage, own);
    if (now == shown_) return;
    shown_ = now;
    const int scrolled = scroll_->verticalScrollBar()->value();
    auto* fresh = new QWidget(wants_->parentWidget());
    auto* rows = new QVBoxLayout(fresh);
    rows->setContentsMargins(0, 0, 0, 0);
    rows->setSpacing(8);
    column_->replaceWidget(wants_, fresh);
    wants_->deleteLater();  // a press of one of its buttons may have led here
    wants_->hide();
    wants_ = fresh;
    for (std::size_t at = 0; at < stage.wants.size(); ++at)
        add_want(static_cast<int>(at), stage.wants[at]);
    verdicts_->set_assessments(own, QString(), breaks_);
    // Shown and laid out before the scroll area looks at its height: else it finds an empty part and goes to the top.
    wants_->show();
    verdicts_->layout()->activate();
    column_->activate();
    scroll_->widget()->adjustSize();
    scroll_->verticalScrollBar()->setValue(scrolled);
}

void WorkPage::add_want(int at, const Want& want) {
    const Reading* entry = entry_for(want, standing_);
    auto* row = new QHBoxLayout;
    row->setSpacing(8);
    auto* sign = new QLabel(wants_);
    const auto broken = entry == nullptr ? breaks_.end() : breaks_.find(entry->id);
    const bool altered = broken != breaks_.end();
    const bool refused = entry != nullptr && words_of(want.kind).manner == EntryManner::yes_no && entry->value < 0.5;
    // What belongs to a fail is no tick, though it is entered.
    bool failed = refused || altered;
    if (entry != nullptr)
        for (const commissioning::Assessment& one : assessments())
            failed = failed ||
                     (one.verdict == commissioning::Verdict::failed &&
                      std::find(one.reading_ids.begin(), one.reading_ids.end(), entry->id) != one.reading_ids.end());
    const Mark mark = failed ? Mark::stop : entry != nullptr ? Mark::ready : want.needed ? Mark::empty : Mark::note;
    sign->setPixmap(mark_icon(mark, current_theme(), 20).pixmap(20, 20));
    auto* words = new QVBoxLayout;
    words->setSpacing(0);
    auto* name = new QLabel(want.needed || entry != nullptr ? want.name : tr("%1 (optional)").arg(want.name), wants_);
    name->setWordWrap(true);
    words->addStretch(1);
    words->addWidget(name);
    const QString expected = want.note.isEmpty() ? expected_of(want, entry) : want.note;
    QString below = entry != nullptr ? entered_words(*entry, QDate::currentDate()) : expected;
    if (altered) below = tr("Entry %1 %2: %3").arg(broken->second.number).arg(broken->second.word, below);
    if (entry != nullptr && !expected.isEmpty() && want.note.isEmpty())
        below += QStringLiteral("; ") + tr("expected: %1").arg(expected);
    if (!below.isEmpty()) {
        auto* what = new QLabel(below, wants_);
        what->setWordWrap(true);
        what->setProperty("role", refused || altered ? QStringLiteral("stop") : QStringLiteral("muted"));
        if (altered) what->setToolTip(broken->second.meaning);
        words->addWidget(what);
    }
    words->addStretch(1);
    auto* enter = new QPushButton(entry == nullptr ? tr("Enter") : tr("Again"), wants_);
    enter->setProperty("touch", QStringLiteral("large"));
    enter->setMinimumWidth(108);
    enter->setAccessibleName(tr("Enter: %1").arg(want.name));
    if (entry != nullptr) enter->setToolTip(tr("A further entry; the one that is there stays in the record"));
    connect(enter, &QPushButton::clicked, this, [this, at] { open_want(current_, at); });
    row->addWidget(sign, 0, Qt::AlignVCenter);
    row->addLayout(words, 1);
    row->addWidget(enter, 0, Qt::AlignVCenter);
    static_cast<QVBoxLayout*>(wants_->layout())->addLayout(row);
}

}  // namespace wg::ui
