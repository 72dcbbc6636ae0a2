#pragma once
// A year's light by tilt and bearing, as a map with contour lines.

#include <memory>
#include <optional>

#include "core/sky/orientation_map.h"
#include "ui/drawing/plot_frame.h"

namespace wg::ui {

struct OrientationPicture {
    std::shared_ptr<const sky::OrientationMap> map;
    double latitude_deg = 0.0;
    struct Mark {
        double tilt_deg = 0.0;
        double azimuth_deg = 180.0;
        QString label;
    };
    std::vector<Mark> collectors;
};

/// Bearings are centred on the side of the noon sun.
struct OrientationFrame {
    PlotFrame frame;
    QRectF bar;
    double centre_deg = 180.0;
    [[nodiscard]] double bearing_of(double x) const;
    [[nodiscard]] double x_of(double bearing_deg) const;
};
[[nodiscard]] OrientationFrame orientation_frame(const OrientationPicture& picture, const QRectF& area,
                                                 double text_units);
void paint_orientation_map(QPainter& painter, const OrientationPicture& picture, const QRectF& area, const Theme& theme,
                           double text_units);
/// "Tilt 40°, bearing 170° S: about 1 130 kWh/m² a year, 2 % less than the best".
[[nodiscard]] QString words_at(const OrientationPicture& picture, double tilt_deg, double bearing_deg);

/// The round values that contour lines are drawn at.
[[nodiscard]] std::vector<double> contour_levels(const sky::OrientationMap& map);

}  // namespace wg::ui
