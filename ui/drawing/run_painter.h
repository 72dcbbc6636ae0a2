#pragma once
// The pipe run in axonometric view, with lengths, bends and passages.

#include <QPainter>
#include <QRectF>
#include <QString>
#include <vector>

#include "core/plan/plan.h"
#include "ui/common/theme.h"

namespace wg::ui {

struct RunLabel {
    QRectF box;
    QString text;
};

/// Returns where its words and figures stand.
std::vector<RunLabel> paint_run(QPainter& painter, const Job& job, const plan::Plan& plan, const QRectF& area,
                                const Theme& theme, double text_units, double line_units);

}  // namespace wg::ui
