#pragma once
// A surface face-on, to scale: on screen in Layout, on paper in the sheets. Same code, other theme and scale.

#include <QMarginsF>
#include <QPainter>
#include <QPointF>
#include <QRectF>
#include <QTransform>
#include <optional>
#include <string>
#include <vector>

#include "core/fixing/tight_spots.h"
#include "core/fixing/zone_outlines.h"
#include "core/job/job.h"
#include "core/plan/plan.h"
#include "core/site/surface_run.h"
#include "ui/common/theme.h"

namespace wg::ui {

/// Maps plane metres (y up) to painter units (y down).
struct PlaneView {
    double units_per_m = 100.0;
    QPointF origin;  ///< painter position of plane (0, 0)
    [[nodiscard]] QPointF map(Point2 p) const {
        return {origin.x() + p.x_m * units_per_m, origin.y() - p.y_m * units_per_m};
    }
    [[nodiscard]] Point2 unmap(QPointF p) const {
        return {(p.x() - origin.x()) / units_per_m, (origin.y() - p.y()) / units_per_m};
    }
};

/// View that fits the surface's outline into `area` with a margin for dimensions.
[[nodiscard]] PlaneView fit_surface(const Surface& surface, const QRectF& area, double margin_units);

/// Where the number of a fixing point stands in a finished drawing.
struct PointNumber {
    std::string placement_id;
    int number = 0;
    QPointF cross;  ///< middle of the point itself
    QRectF box;     ///< of its number
};

struct SurfaceDrawing {
    const Job* job = nullptr;
    const Surface* surface = nullptr;
    const Choice* choice = nullptr;
    const plan::Plan* plan = nullptr;  ///< may be null: then no fixing points
    const site::ShadeMap* shade_map = nullptr;
    QString shade_period;  ///< that the map is made for, as in "lost in a year"; empty: a year
    std::string selected_id;
    std::vector<std::string> also_selected;  ///< further collectors that move with the selected one
    // What stands against the places as they are now; null: not drawn.
    const std::vector<fixing::TightSpot>* tight = nullptr;
    const fixing::WindZones* zones = nullptr;
    const site::SurfaceRun* run = nullptr;
    QRectF keep_free;               ///< where whoever shows the drawing writes on it; painter units
    QRectF cut_out;                 ///< the part that is seen, when not all is: labels keep inside; painter units
    bool level_marks = false;       ///< a level on the side that the maker wants level
    bool dimensions = true;         ///< collector's distances to edges, fixing points' set-out on paper
    bool point_dimensions = false;  ///< every fixing point from the nearest two edges
    bool rafters = true;
    double text_units = 11.0;  ///< height of lettering in painter units
    double line_units = 1.0;
    /// Draws placements as the choice has them now, ahead of a plan that is still being computed. Null: the plan's
    /// model.
    const CollectorModel* collector = nullptr;
    bool scale_bar = false;
    std::vector<PointNumber>* numbers = nullptr;  ///< filled while painting, for whoever is asked what was clicked
    std::string marked_point_of;                  ///< placement whose point `marked_point` is ringed
    int marked_point = 0;                         ///< 0: none
    bool collector_dimensions_all_round = false;  ///< all four sides instead of the nearest two: while placing
};

/// Distance from a point along an axis of the plane (dx, dy: one of them +-1, the other 0) to the nearest crossing of
/// the outline; nullopt when there is none.
[[nodiscard]] std::optional<double> reach_m(const std::vector<Point2>& outline, Point2 from, double dx, double dy);

/// Margins round the outline that this drawing's dimensions and legends need, in painter units.
[[nodiscard]] QMarginsF margins_for(const SurfaceDrawing& what);
/// The largest of them.
[[nodiscard]] double margin_for(const SurfaceDrawing& what);
/// View that fits the outline and exactly these margins.
[[nodiscard]] PlaneView fit_surface(const Surface& surface, const QRectF& area, const QMarginsF& margins);

/// Upper end of the shade map's scale: greatest yearly loss of beam on the map, rounded up to whole 10 %.
[[nodiscard]] double shade_scale_end(const site::ShadeMap& map);

void paint_surface(QPainter& painter, const SurfaceDrawing& what, const PlaneView& view, const Theme& theme);

}  // namespace wg::ui
