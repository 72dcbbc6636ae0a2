#include "ui/window/stage_bar.h"

#include <QButtonGroup>
#include <QFocusEvent>
#include <QHBoxLayout>
#include <QPainter>
#include <QShortcut>

#include "ui/common/style_sheet.h"
#include "ui/common/theme.h"

namespace wg::ui {
namespace {

constexpr int mark_px = 14;
constexpr int pad_px = 10;

}  // namespace

StageButton::StageButton(int stage, QWidget* parent) : QAbstractButton(parent), stage_(stage) {
    setText(stage_title(stage));
    setCheckable(true);
    setFocusPolicy(Qt::StrongFocus);
    setCursor(Qt::PointingHandCursor);
    setAttribute(Qt::WA_Hover);
    setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
    set_mark({});
}

void StageButton::set_mark(const StageMark& mark) {
    mark_ = mark;
    const QString state = mark.why.isEmpty() ? word_of(mark.mark) : tr("%1, %2").arg(word_of(mark.mark), mark.why);
    setToolTip(tr("%1: %2 (Ctrl+%3)").arg(text(), state).arg(stage_ + 1));
    setAccessibleName(text());
    setAccessibleDescription(state);
    update();
}

QSize StageButton::sizeHint() const {
    QFont strong = font();
    strong.setWeight(QFont::DemiBold);
    return {QFontMetrics(strong).horizontalAdvance(text()) + mark_px + 6 + 2 * pad_px, touch_height + 4};
}

void StageButton::paintEvent(QPaintEvent*) {
    const Theme& theme = current_theme();
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    if (underMouse() || isDown()) {
        QColor tint = theme.accent;
        tint.setAlphaF(isDown() ? 0.18F : 0.09F);
        painter.fillRect(rect(), tint);
    }
    if (isChecked()) painter.fillRect(QRect(pad_px, height() - 3, width() - 2 * pad_px, 3), theme.accent);
    if (hasFocus() && by_keyboard_) {
        painter.setPen(QPen(theme.accent, 2));
        painter.drawRoundedRect(QRectF(rect()).adjusted(1, 1, -1, -1), 3, 3);
    }
    paint_mark(painter, QRectF(pad_px, (height() - mark_px) / 2.0, mark_px, mark_px), mark_.mark, theme);
    QFont face = font();
    if (isChecked()) face.setWeight(QFont::DemiBold);
    painter.setFont(face);
    painter.setPen(theme.text);
    painter.drawText(rect().adjusted(pad_px + mark_px + 6, 0, -pad_px, 0), Qt::AlignVCenter | Qt::AlignLeft, text());
}

void StageButton::focusInEvent(QFocusEvent* event) {
    by_keyboard_ = event->reason() == Qt::TabFocusReason || event->reason() == Qt::BacktabFocusReason ||
                   event->reason() == Qt::ShortcutFocusReason;
    QAbstractButton::focusInEvent(event);
}

StageBar::StageBar(QWidget* parent) : QWidget(parent) {
    setAccessibleName(tr("Stages"));
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(0);
    auto* group = new QButtonGroup(this);
    for (int stage = 0; stage < stage_count; ++stage) {
        auto* button = new StageButton(stage, this);
        buttons_[static_cast<std::size_t>(stage)] = button;
        group->addButton(button, stage);
        row->addWidget(button);
        auto* shortcut = new QShortcut(QKeySequence(QStringLiteral("Ctrl+%1").arg(stage + 1)), this);
        connect(shortcut, &QShortcut::activated, this, [this, stage] { Q_EMIT stage_asked(stage); });
    }
    connect(group, &QButtonGroup::idClicked, this, &StageBar::stage_asked);
}

void StageBar::set_marks(const std::array<StageMark, stage_count>& marks) {
    for (std::size_t i = 0; i < marks.size(); ++i)
        buttons_[i]->set_mark(marks[i]);
}

void StageBar::focus_current() {
    for (StageButton* button : buttons_) {
        if (button->isChecked()) button->setFocus(Qt::OtherFocusReason);
    }
}

void StageBar::set_current(int stage) {
    buttons_.at(static_cast<std::size_t>(stage))->setChecked(true);
}

}  // namespace wg::ui
