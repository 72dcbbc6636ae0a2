#include "ui/common/empty_pane.h"

#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

namespace wg::ui {
namespace {

constexpr int text_wide_px = 460;
constexpr int text_narrow_px = 280;
constexpr int long_text_letters = 120;

}  // namespace

EmptyPane::EmptyPane(const QString& title, const QString& text, const QString& step, QWidget* parent)
    : QWidget(parent) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(24, 24, 24, 24);
    column->setSpacing(8);
    title_ = new QLabel(this);
    title_->setProperty("role", QStringLiteral("title"));
    title_->setAlignment(Qt::AlignHCenter);
    text_ = new QLabel(this);
    text_->setProperty("role", QStringLiteral("muted"));
    text_->setWordWrap(true);
    text_->setAlignment(Qt::AlignHCenter);
    text_->setMaximumWidth(text_wide_px);
    step_ = new QPushButton(this);
    step_->setProperty("role", QStringLiteral("primary"));
    column->addStretch(2);
    column->addWidget(title_, 0, Qt::AlignHCenter);
    column->addWidget(text_, 0, Qt::AlignHCenter);
    column->addSpacing(8);
    column->addWidget(step_, 0, Qt::AlignHCenter);
    column->addStretch(3);
    connect(step_, &QPushButton::clicked, this, &EmptyPane::step_asked);
    set_words(title, text, step);
}

void EmptyPane::set_words(const QString& title, const QString& text, const QString& step) {
    title_->setText(title);
    text_->setText(text);
    // A centred label that wraps takes a guess at its width and may be cut: long text gets its width and height told.
    const int width = text.size() > long_text_letters ? text_wide_px : text_narrow_px;
    text_->setMinimumWidth(width);
    text_->ensurePolished();
    text_->setMinimumHeight(text.isEmpty() ? 0 : text_->heightForWidth(width));
    step_->setText(step);
    step_->setVisible(!step.isEmpty());
    setAccessibleName(title);
    setAccessibleDescription(text);
}

}  // namespace wg::ui
