#pragma once
// What counts as typing a length while drawing, the same in every tool.

#include <QKeyEvent>
#include <QString>

namespace wg::ui {

/// A key that begins a length or goes on with one: digits, `signs`, and once something is typed letters (units) and
/// spaces, which pan the canvas otherwise.
[[nodiscard]] inline bool types_length(const QKeyEvent& event, const QString& typed, const QString& signs) {
    const QString text = event.text();
    if (text.size() != 1 || (event.modifiers() & (Qt::ControlModifier | Qt::MetaModifier)) != 0) return false;
    const QChar c = text.front();
    return c.isDigit() || signs.contains(c) || (!typed.isEmpty() && (c.isLetter() || c == QLatin1Char(' ')));
}

}  // namespace wg::ui
