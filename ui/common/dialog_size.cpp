#include "ui/common/dialog_size.h"

#include <QScreen>
#include <QWidget>

namespace wg::ui {
namespace {

constexpr QSize frame_px(16, 48);  // a window manager's title and edges, about

}  // namespace

void size_for_screen(QWidget& dialog, int wide_px, int high_px) {
    const QWidget* parent = dialog.parentWidget();
    const QScreen* screen = parent != nullptr ? parent->screen() : dialog.screen();
    QSize size(wide_px, high_px);
    if (screen != nullptr) size = size.boundedTo(screen->availableSize() - frame_px);
    dialog.resize(size);
}

}  // namespace wg::ui
