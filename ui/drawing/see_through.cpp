#include "ui/drawing/see_through.h"

#include <QPaintEngine>
#include <QPainter>
#include <cmath>

namespace wg::ui {

QColor see_through(const QPainter& painter, const QColor& ink, double share, const QColor& ground) {
    const QPaintEngine* engine = painter.paintEngine();
    if (engine == nullptr || engine->type() != QPaintEngine::Pdf) {
        QColor out = ink;
        out.setAlphaF(static_cast<float>(share));
        return out;
    }
    const auto mixed = [share](int of_ink, int of_ground) {
        return static_cast<int>(std::lround(of_ink * share + of_ground * (1.0 - share)));
    };
    return {mixed(ink.red(), ground.red()), mixed(ink.green(), ground.green()), mixed(ink.blue(), ground.blue())};
}

QColor see_through(const QPainter& painter, const QColor& ink, const QColor& ground) {
    return see_through(painter, ink, ink.alphaF(), ground);
}

}  // namespace wg::ui
