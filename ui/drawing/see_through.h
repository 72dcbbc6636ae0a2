#pragma once
// Tints that let their ground show, also where nothing can be transparent.

#include <QColor>

class QPainter;

namespace wg::ui {

/// `ink` with this share (0..1) of it on `ground`. PDF/A-1b knows no transparency (ISO 19005-1, 6.4) and Qt writes the
/// full ink there: for a PDF the two are mixed, so that what lies below is hidden but nothing turns solid.
[[nodiscard]] QColor see_through(const QPainter& painter, const QColor& ink, double share, const QColor& ground);
/// With the share that the ink's own alpha tells.
[[nodiscard]] QColor see_through(const QPainter& painter, const QColor& ink, const QColor& ground);

}  // namespace wg::ui
