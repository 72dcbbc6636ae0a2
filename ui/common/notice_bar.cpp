#include "ui/common/notice_bar.h"

#include <QApplication>
#include <QClipboard>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>

namespace wg::ui {
namespace {

constexpr int most_lines = 12;  ///< older ones go: the strip must not eat the window

}  // namespace

NoticeBar::NoticeBar(QWidget* parent) : QFrame(parent) {
    setProperty("role", QStringLiteral("panel"));
    setAccessibleName(tr("Notice"));
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(12, 8, 8, 8);
    row->setSpacing(8);
    sign_ = new QLabel(this);
    text_ = new QLabel(this);
    text_->setWordWrap(true);
    text_->setTextFormat(Qt::PlainText);
    text_->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    step_ = new QPushButton(this);
    auto* copy = new QPushButton(tr("Copy"), this);
    copy->setAccessibleName(tr("Copy the notice"));
    auto* close_button = new QPushButton(tr("Close"), this);
    close_button->setAccessibleName(tr("Close the notice"));
    row->addWidget(sign_, 0, Qt::AlignTop);
    row->addWidget(text_, 1);
    row->addWidget(step_, 0, Qt::AlignTop);
    row->addWidget(copy, 0, Qt::AlignTop);
    row->addWidget(close_button, 0, Qt::AlignTop);
    connect(copy, &QPushButton::clicked, this, [this] { QApplication::clipboard()->setText(text()); });
    connect(close_button, &QPushButton::clicked, this, &NoticeBar::clear);
    connect(step_, &QPushButton::clicked, this, &NoticeBar::step_asked);
    step_->hide();
    hide();
}

void NoticeBar::add(Mark mark, const QString& text) {
    for (const QString& line : text.split(QLatin1Char('\n'), Qt::SkipEmptyParts)) {
        lines_.removeAll(line);
        lines_.append(line);
    }
    while (lines_.size() > most_lines)
        lines_.removeFirst();
    show_lines(mark);
}

void NoticeBar::add_with_step(Mark mark, const QString& text, const QString& step) {
    step_->setText(step);
    step_->show();
    add(mark, text);
}

void NoticeBar::clear() {
    lines_.clear();
    step_->hide();
    hide();
}

void NoticeBar::show_lines(Mark mark) {
    sign_->setPixmap(mark_icon(mark, current_theme(), 20).pixmap(20, 20));
    sign_->setToolTip(word_of(mark));
    text_->setText(text());
    setAccessibleDescription(text());
    show();
}

}  // namespace wg::ui
