#include "ui/layout/edge_offsets.h"

#include <algorithm>

#include "core/site/geometry.h"
#include "ui/drawing/surface_painter.h"

namespace wg::ui {

EdgeOffsets edge_offsets(const Surface& surface, const Placement& placement, const CollectorModel& model,
                         double sketch_up_azimuth_deg) {
    const site::PlacedCollector placed = site::place(surface, sketch_up_azimuth_deg, placement, model);
    if (placed.outline.empty()) return {};
    double left = placed.outline.front().x_m;
    double low = placed.outline.front().y_m;
    for (Point2 p : placed.outline) {
        left = std::min(left, p.x_m);
        low = std::min(low, p.y_m);
    }
    const Point2 middle{placement.x_m, placement.y_m};
    EdgeOffsets out;
    if (const auto reach = reach_m(surface.outline, middle, -1.0, 0.0)) out.left_m = *reach - (middle.x_m - left);
    if (const auto reach = reach_m(surface.outline, middle, 0.0, -1.0)) out.low_m = *reach - (middle.y_m - low);
    return out;
}

}  // namespace wg::ui
