#pragma once
// Our own signs: a square on its corner with a small picture of what can hurt. They always stand beside words.

#include <QPainter>
#include <QRectF>

namespace wg::ui::paper {

enum class Sign { stop, caution, height, pressure, flame, electricity, heat, hygiene };

void paint_sign(QPainter& painter, Sign sign, const QRectF& frame);

}  // namespace wg::ui::paper
