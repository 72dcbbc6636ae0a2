#pragma once
// The whole site in axonometric view, with the sun's light and shadows of one moment.

#include <QPainter>
#include <QPolygonF>
#include <QRectF>
#include <string>
#include <vector>

#include "core/scene/camera.h"
#include "core/scene/moment.h"
#include "core/scene/shadows.h"
#include "ui/common/theme.h"

namespace wg::ui {

struct HouseView {
    scene::ViewAxes axes;
    Point3 middle;  ///< of the scene, the point that the view turns about
    double units_per_m = 20.0;
    QPointF origin;  ///< painter position of `middle`
    [[nodiscard]] QPointF map(Point3 p) const {
        const Point2 at = scene::seen(axes, middle, p);
        return {origin.x() + at.x_m * units_per_m, origin.y() - at.y_m * units_per_m};
    }
};
enum class HouseFit {
    everything,
    own_house,  ///< surfaces and collectors; everything where there is no surface
};
[[nodiscard]] HouseView fit_house(const scene::Scene& scene, const scene::Camera& camera, const QRectF& area,
                                  HouseFit what = HouseFit::everything);

struct HouseDrawing {
    const scene::Scene* scene = nullptr;
    const scene::Order* order = nullptr;
    const scene::Shadows* shadows = nullptr;  ///< of that order
    scene::SunOverSite sun;
    std::string selected_id;   ///< surface or obstacle
    std::string collector_id;  ///< placement
    bool labels = true;
    bool moving = false;  ///< a frame of many: labels of collectors only, a large site without smooth lines
    double text_units = 11.0;
    double line_units = 1.0;
    QRectF area;  ///< that labels and compass may use
};
void paint_house(QPainter& painter, const HouseDrawing& what, const HouseView& view, const Theme& theme);

/// What is seen at a place; nullptr beside everything. The ground counts as nothing.
[[nodiscard]] const scene::Thing* house_thing_at(const scene::Scene& scene, const scene::Order& order,
                                                 const HouseView& view, QPointF at);

}  // namespace wg::ui
