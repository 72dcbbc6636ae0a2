#pragma once
// The site in plan (from above), to scale, sketch axes, with a north arrow.

#include <QPainter>
#include <QRectF>
#include <string>

#include "core/job/job.h"
#include "core/plan/plan.h"
#include "ui/common/theme.h"

namespace wg::ui {

struct SiteView {
    double units_per_m = 20.0;
    QPointF origin;  ///< painter position of sketch (0, 0)
    [[nodiscard]] QPointF map(double x_m, double y_m) const { return {origin.x() + x_m * units_per_m, origin.y() - y_m * units_per_m}; }
    [[nodiscard]] Point2 unmap(QPointF p) const { return {(p.x() - origin.x()) / units_per_m, (origin.y() - p.y()) / units_per_m}; }
};
[[nodiscard]] SiteView fit_site(const Site& site, const QRectF& area, double margin_units);

struct SiteDrawing {
    const Job* job = nullptr;
    const Choice* choice = nullptr;    ///< may be null
    const plan::Plan* plan = nullptr;  ///< may be null
    std::string selected_id;
    bool grid = true;
    bool labels = true;
    double text_units = 11.0;
    double line_units = 1.0;
};
void paint_site(QPainter& painter, const SiteDrawing& what, const SiteView& view, const Theme& theme);
/// Id of the element under a point (obstacle, spot, surface; topmost first); empty: none.
[[nodiscard]] std::string element_at(const Site& site, Point2 sketch_point, double reach_m);

}  // namespace wg::ui
