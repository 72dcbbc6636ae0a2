#pragma once
// The sun's way over a site: bearing across, height up, with what stands in front of it.

#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "core/job/job.h"
#include "core/sky/sun_path.h"
#include "ui/drawing/plot_frame.h"

namespace wg::ui {

/// Highest thing in one direction as seen from the plate.
struct SkylineStep {
    double azimuth_deg = 0.0;  ///< true
    double elevation_deg = 0.0;
    std::string id;
    QString label;
    bool tree = false;
};

struct SunPathPicture {
    std::shared_ptr<const sky::SunTable> sun;
    double latitude_deg = 0.0;
    std::vector<HorizonPoint> horizon;  ///< as surveyed; empty: free
    std::vector<SkylineStep> skyline;   ///< by rising bearing, once round; empty: nothing in front
    struct Plate {
        double tilt_deg = 0.0;
        double azimuth_deg = 180.0;
    };
    std::optional<Plate> plate;
    struct SunMark {
        double azimuth_deg = 0.0;
        double elevation_deg = 0.0;
        QString label;
    };
    std::optional<SunMark> now;          ///< where the sun stands at a moment that is shown beside
    std::optional<HorizonPoint> marked;  ///< of the horizon, the reading being entered
    bool few_lines = false;              ///< solstices and equinox only and no legend, for a small picture
};

/// Bearings run from `x_from` to `x_to` as degrees to the right of `centre_deg`, the side of the noon sun; wide enough
/// for every bearing that the sun is seen at.
struct SunPathFrame {
    PlotFrame frame;
    double centre_deg = 180.0;
    [[nodiscard]] double bearing_of(double x) const;  ///< 0..360
    [[nodiscard]] double x_of(double bearing_deg) const;
};
[[nodiscard]] SunPathFrame sun_path_frame(const SunPathPicture& picture, const QRectF& area, double text_units);

/// `text_units`: height of the lettering in painter units.
void paint_sun_path(QPainter& painter, const SunPathPicture& picture, const QRectF& area, const Theme& theme,
                    double text_units);

/// What is in that direction, in words: bearing and height, the dates and hour of the sun, what hides it.
[[nodiscard]] QString words_at(const SunPathPicture& picture, double bearing_deg, double elevation_deg);

/// Of the skyline, at a bearing; nullptr where nothing stands.
[[nodiscard]] const SkylineStep* skyline_at(const SunPathPicture& picture, double bearing_deg);

}  // namespace wg::ui
