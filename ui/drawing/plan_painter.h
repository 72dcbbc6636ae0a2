#pragma once
// The site in plan (from above), to scale, sketch axes, with a north arrow.

#include <QImage>
#include <QPainter>
#include <QRectF>
#include <string>
#include <vector>

#include "core/job/job.h"
#include "core/plan/plan.h"
#include "ui/common/theme.h"

namespace wg::ui {

struct SiteView {
    double units_per_m = 20.0;
    QPointF origin;  ///< painter position of sketch (0, 0)
    [[nodiscard]] QPointF map(double x_m, double y_m) const {
        return {origin.x() + x_m * units_per_m, origin.y() - y_m * units_per_m};
    }
    [[nodiscard]] Point2 unmap(QPointF p) const {
        return {(p.x() - origin.x()) / units_per_m, (origin.y() - p.y()) / units_per_m};
    }
};
/// `also`: further points that shall be in view.
[[nodiscard]] SiteView fit_site(const Site& site, const QRectF& area, double margin_units,
                                const std::vector<Point2>& also = {});

/// A picture under the sketch, ready to paint: `image` may be smaller than the original by `shrink` (0..1].
struct UnderlayImage {
    QImage image;
    double shrink = 1.0;
    double metres_per_pixel = 0.02;  ///< of the original
    double turn_deg = 0.0;           ///< counter-clockwise
    Point2 origin;                   ///< upper left corner, in the sketch
    double opacity = 0.6;
};

struct SiteDrawing {
    const Job* job = nullptr;
    const Choice* choice = nullptr;    ///< may be null
    const plan::Plan* plan = nullptr;  ///< may be null
    std::vector<UnderlayImage> underlays;
    std::string selected_id;
    bool grid = true;
    bool labels = true;
    double text_units = 11.0;
    double line_units = 1.0;
    bool scale_bar = false;
    QRectF area;  ///< that grid, north arrow and scale bar may use; empty: round the site
};
void paint_site(QPainter& painter, const SiteDrawing& what, const SiteView& view, const Theme& theme);
/// The run as far as it is known: the first collector's connections when a plan tells the model, the bends, the spot.
struct RouteLine {
    std::vector<Point3> points;
    std::size_t first_bend = 0;  ///< index in `points` of the choice's first route point
};
[[nodiscard]] RouteLine route_line(const Job& job, const Choice& choice, const CollectorModel* model);

/// Outline of a surface seen from above, sketch coordinates; a wall comes out as a line there and back.
[[nodiscard]] std::vector<Point2> outline_in_plan(const Surface& surface, double sketch_up_azimuth_deg);
/// Outline of an obstacle seen from above; posts and trees as regular polygons of 24 corners.
[[nodiscard]] std::vector<Point2> outline_in_plan(const Obstacle& obstacle);
/// Id of the element under a point (spot, obstacle, edge of a room, surface; topmost first); empty: none.
[[nodiscard]] std::string element_at(const Site& site, Point2 sketch_point, double reach_m);
/// Index of the route point within reach; -1: none.
[[nodiscard]] int route_point_at(const Choice& choice, Point2 sketch_point, double reach_m);

}  // namespace wg::ui
