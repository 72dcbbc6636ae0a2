#include "ui/fitting/print_row.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QStyle>

#include "ui/common/mark.h"
#include "ui/documents/print_check.h"

namespace wg::ui {
namespace {

constexpr int longest_code = 200;  ///< a scanner may send anything

Mark mark_of_print(PrintState state) {
    switch (state) {
        case PrintState::present: return Mark::ready;
        case PrintState::outdated:
        case PrintState::other_job: return Mark::stop;
        case PrintState::unreadable: break;
    }
    return Mark::caution;
}

QString role_of_print(Mark mark) {
    return mark == Mark::ready  ? QStringLiteral("ready")
           : mark == Mark::stop ? QStringLiteral("stop")
                                : QStringLiteral("caution");
}

}  // namespace

PrintRow::PrintRow(QWidget* parent) : QWidget(parent) {
    setAutoFillBackground(true);  // over the line that tabs draw behind what stands beside them
    auto* name = new QLabel(tr("Code of a print"), this);
    field_ = new QLineEdit(this);
    field_->setMaxLength(longest_code);
    field_->setPlaceholderText(tr("Scan, or type its mark"));
    field_->setToolTip(
        tr("The square on the install sheet, or the mark in the head of any paper: whether the print is "
           "of the plan as it is"));
    field_->setAccessibleName(name->text());
    field_->setFixedWidth(220);
    name->setBuddy(field_);
    line_ = new QWidget(this);
    sign_ = new QLabel(line_);
    words_ = new QLabel(line_);
    words_->setWordWrap(true);
    words_->setTextInteractionFlags(Qt::TextSelectableByMouse);
    words_->setAccessibleName(tr("Whether the print is present"));
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(8, 2, 8, 2);
    row->setSpacing(8);
    row->addWidget(name);
    row->addWidget(field_);
    auto* answered = new QHBoxLayout(line_);
    answered->setContentsMargins(12, 8, 12, 8);
    answered->setSpacing(8);
    answered->addWidget(sign_, 0, Qt::AlignTop);
    answered->addWidget(words_, 1);
    connect(field_, &QLineEdit::textChanged, this, &PrintRow::answer_typed);
    connect(field_, &QLineEdit::returnPressed, this, [this] {
        answer_whole();
        field_->selectAll();  // the next scan takes its place
    });
    answer_typed();
}

void PrintRow::set_present(const std::string& job_id, std::int64_t revision, const std::string& mark) {
    if (job_id == job_id_ && revision == revision_ && mark == mark_) return;
    // What was scanned for one job says nothing at another.
    if (job_id != job_id_) field_->clear();
    job_id_ = job_id;
    revision_ = revision;
    mark_ = mark;
    setEnabled(!mark_.empty());
    if (words_->text().isEmpty()) return answer_typed();
    answer_whole();
}

void PrintRow::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::PaletteChange && words_ != nullptr && !words_->text().isEmpty()) answer_whole();
}

QString PrintRow::answer() const {
    return words_->text();
}

/// While a code is still being typed it is no mistake yet.
void PrintRow::answer_typed() {
    if (read_print_code(field_->text())) return answer_whole();
    say_nothing();
}

void PrintRow::say_nothing() {
    sign_->clear();
    words_->clear();
    line_->hide();
}

void PrintRow::answer_whole() {
    if (mark_.empty() || field_->text().trimmed().isEmpty()) return say_nothing();
    const PrintCheck check = check_print(field_->text(), job_id_, revision_, mark_);
    const Mark mark = mark_of_print(check.state);
    sign_->setPixmap(mark_icon(mark, current_theme(), 20).pixmap(20, 20));
    words_->setProperty("role", role_of_print(mark));
    words_->style()->unpolish(words_);
    words_->style()->polish(words_);
    words_->setText(check.words);
    line_->show();
}

}  // namespace wg::ui
