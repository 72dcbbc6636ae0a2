#include "ui/common/elided_label.h"

#include <QPainter>
#include <QStyle>
#include <QStyleOption>

namespace wg::ui {

ElidedLabel::ElidedLabel(QWidget* parent) : QLabel(parent) {
    setTextFormat(Qt::PlainText);
    setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
}

QSize ElidedLabel::minimumSizeHint() const {
    return {40, QLabel::minimumSizeHint().height()};
}

void ElidedLabel::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    const QString shown = fontMetrics().elidedText(text().simplified(), Qt::ElideRight, width());
    style()->drawItemText(&painter, rect(), static_cast<int>(alignment() | Qt::AlignVCenter), palette(), isEnabled(),
                          shown, foregroundRole());
}

}  // namespace wg::ui
