#pragma once
// The pipe run in axonometric view, with lengths, bends and passages.

#include <QPainter>
#include <QRectF>

#include "core/plan/plan.h"
#include "ui/common/theme.h"

namespace wg::ui {

void paint_run(QPainter& painter, const Job& job, const plan::Plan& plan, const QRectF& area, const Theme& theme,
               double text_units, double line_units);

}  // namespace wg::ui
