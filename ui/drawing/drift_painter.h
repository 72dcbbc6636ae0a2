#pragma once
// One kind of reading over the visits, each with what the model gives for the conditions of its day.

#include "core/aftercare/drift.h"
#include "ui/drawing/plot_frame.h"

namespace wg::ui {

void paint_drift(QPainter& painter, const aftercare::DriftRow& row, const QRectF& area, const Theme& theme,
                 double text_units);
/// The reading nearest to a place in the area in words; empty: none near.
[[nodiscard]] QString drift_words(const aftercare::DriftRow& row, const QRectF& area, QPointF at, double text_units);

}  // namespace wg::ui
