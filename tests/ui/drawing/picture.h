#pragma once
// A job with a hand-made plan to draw, and a look at which pixels a painter touched.

#include <QImage>
#include <QPainter>
#include <functional>

#include "core/site/geometry.h"
#include "tests/ui/common/sample.h"

namespace wg::ui::picture {

inline CollectorModel plate() {
    CollectorModel model;
    model.id = "plate";
    model.length_m = 2.0;
    model.width_m = 0.8;
    model.liquid_connection = {1.8, 0.0};
    model.suction_connection = {1.9, 0.0};
    model.fixing_points = {{0.4, 0.1}, {1.0, 0.1}, {1.6, 0.1}, {0.4, 0.7}, {1.0, 0.7}, {1.6, 0.7}};
    return model;
}

inline plan::Plan plan_of(const Job& job) {
    plan::Plan plan;
    const Choice& choice = job.choices.front();
    plan.choice_id = choice.id;
    plan.collector = plate();
    int number = 1;
    for (const Placement& placement : choice.placements) {
        const Surface* surface = find_surface(job.site, placement.surface_id);
        plan::PlacementPlan planned;
        planned.placement_id = placement.id;
        planned.surface_id = placement.surface_id;
        planned.placed = site::place(*surface, job.site.sketch_up_azimuth_deg, placement, plan.collector);
        for (Point2 at : planned.placed.fixing_points) {
            fixing::FixingPoint point;
            point.number = number;
            point.position = at;
            point.utilisation = 0.1 * number;
            planned.fixing.points.push_back(point);
            ++number;
        }
        plan.placements.push_back(planned);
    }
    const Point3 start = plan.placements.front().placed.connection_in_space;
    const Point3 passage{start.x_m, start.y_m, start.z_m - 1.0};
    const Point3 low{start.x_m, start.y_m, start.z_m - 4.0};
    const Point3 end{start.x_m + 2.0, start.y_m + 1.0, start.z_m - 4.0};
    plan.run.legs = {{start, passage, 1.0, RoutePointKind::roof_passage},
                     {passage, low, 3.0, RoutePointKind::free},
                     {low, end, 2.24, RoutePointKind::free}};
    plan.run.length_m = 6.24;
    plan.run.lift_m = 4.0;
    plan.run.bends = 1;
    plan.run.passages = 1;
    return plan;
}

constexpr QRgb untouched = 0xffff00ff;

/// Paints on an image larger than `area` all round, and returns the bounds of the pixels that changed.
inline QRect ink_of(const QSize& size, const std::function<void(QPainter&)>& paint) {
    QImage image(size, QImage::Format_RGB32);
    image.fill(untouched);
    QPainter painter(&image);
    paint(painter);
    painter.end();
    QRect ink;
    for (int y = 0; y < image.height(); ++y) {
        for (int x = 0; x < image.width(); ++x) {
            if (image.pixel(x, y) != untouched) ink = ink.united(QRect(x, y, 1, 1));
        }
    }
    return ink;
}

}  // namespace wg::ui::picture
