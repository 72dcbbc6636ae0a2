#pragma once

class QWidget;

namespace wg::ui {

/// Opens at this size, or at what the screen that its parent stands on has room for: a dialog whose buttons lie below
/// the screen's edge cannot be answered.
void size_for_screen(QWidget& dialog, int wide_px, int high_px);

}  // namespace wg::ui
