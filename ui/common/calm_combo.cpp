#include "ui/common/calm_combo.h"

#include <QSignalBlocker>
#include <QWheelEvent>

namespace wg::ui {

void CalmCombo::show_data(const QVariant& wanted) {
    const QSignalBlocker quiet(this);
    setCurrentIndex(findData(wanted));
    setToolTip(currentText());  // what a narrow form cuts off is read here
}

void CalmCombo::wheelEvent(QWheelEvent* event) {
    // Scrolling the panel must not change what it passes over.
    event->ignore();
}

}  // namespace wg::ui
