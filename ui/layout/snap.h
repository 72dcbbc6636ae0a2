#pragma once
// Where a collector that is dragged comes to rest: at rafters, clearances and lines it shares with others, with the
// reason in words. Geometry of the hand only; whether the place is allowed is the planner's to say.

#include <QString>
#include <vector>

#include "core/equipment/equipment.h"
#include "core/job/job.h"

namespace wg::ui {

struct SnapInput {
    const Surface* surface = nullptr;
    const Placement* placement = nullptr;  ///< turned and handed as it is; its position is not used
    const CollectorModel* model = nullptr;
    std::vector<const Placement*> others;  ///< further collectors on the same surface
    double sketch_up_azimuth_deg = 0.0;
    double reach_m = 0.08;  ///< how far a target pulls
};

struct Snapped {
    double x_m = 0.0;
    double y_m = 0.0;
    QString reason_x;  ///< empty: free
    QString reason_y;
};

/// The nearest place to rest around the wanted middle (x, y); the place itself where nothing pulls.
[[nodiscard]] Snapped snap(const SnapInput& input, double x_m, double y_m);

}  // namespace wg::ui
