#pragma once
// Shapes that carry a meaning together with a word and a colour: readable without the colour.

#include <QIcon>
#include <QPainter>
#include <QString>

#include "core/findings/finding.h"
#include "ui/common/theme.h"

namespace wg::ui {

enum class Mark {
    stop,     ///< octagon with a bar
    caution,  ///< triangle
    note,     ///< square with a rule on it, like a slip of paper
    ready,    ///< disc with a tick
    begun,    ///< half-filled ring
    empty,    ///< ring
};

[[nodiscard]] Mark mark_of(Severity severity) noexcept;
[[nodiscard]] QColor colour_of(Mark mark, const Theme& theme);
/// "stop", "caution", "note", "ready", "begun", "empty".
[[nodiscard]] QString word_of(Mark mark);
/// Paints the shape inside `area` (a square).
void paint_mark(QPainter& painter, const QRectF& area, Mark mark, const Theme& theme);
[[nodiscard]] QIcon mark_icon(Mark mark, const Theme& theme, int size_px = 16);

}  // namespace wg::ui
