#pragma once
// A print's code as squares (QR code, ISO/IEC 18004), vector on paper.

#include <QPainter>
#include <QString>
#include <vector>

#include "ui/documents/sheet.h"

namespace wg::ui::paper {

struct PrintSquare {
    int side = 0;  ///< in modules, without the quiet zone; 0: no code
    std::vector<bool> dark;
    static constexpr double module = 0.5 * mm;
    static constexpr int quiet = 4;  ///< modules left white all round, as the standard asks
    [[nodiscard]] double paper_side() const { return side == 0 ? 0.0 : (side + 2 * quiet) * module; }
};

/// Empty text, or one too long for a code: none.
[[nodiscard]] PrintSquare print_square(const QString& text);
void paint_square(QPainter& painter, const PrintSquare& square, const QRectF& at);

}  // namespace wg::ui::paper
