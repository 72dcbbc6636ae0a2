#pragma once
// What the program is and what it must not be trusted with.

class QWidget;

namespace wg::ui {

void show_about(QWidget* parent);

}  // namespace wg::ui
