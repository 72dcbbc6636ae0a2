#pragma once
// Problems that stop the work at hand, shown whole, scrollable and to be copied.

#include <QString>

class QWidget;

namespace wg::ui {

/// Blocks until it is closed.
void show_problems(QWidget* parent, const QString& title, const QString& introduction, const QString& problems);

}  // namespace wg::ui
