#pragma once
// The shade map's figures under the pointer, in words and as a small tag beside it.

#include <QPainter>
#include <QPointF>
#include <QString>

#include "core/site/shade_period.h"
#include "ui/common/theme.h"

namespace wg::ui {

/// "November to April: about 8 % of direct sun lost, 412 kWh/m2 left"; empty off the map. `period`: "November to
/// April"; empty: a year.
[[nodiscard]] QString shade_words_at(const site::ShadeMap& map, Point2 at, const QString& period);

/// Two short lines beside the pointer, kept inside `area`; nothing off the map.
void paint_shade_at(QPainter& painter, const site::ShadeMap& map, Point2 at, QPointF pointer, const QRectF& area,
                    double text_units, const Theme& theme);

}  // namespace wg::ui
