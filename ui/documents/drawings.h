#pragma once
// Drawings to a stated scale on paper, painted by the same painters as the screen.

#include <memory>
#include <optional>
#include <vector>

#include "ui/documents/documents.h"
#include "ui/documents/flow.h"

namespace wg::ui::paper {

/// 1 : denominator.
struct DrawingScale {
    int denominator = 50;
    /// Paper units to the metre on site.
    [[nodiscard]] double units_per_m() const { return 1000.0 * mm / static_cast<double>(denominator); }
};

/// The largest of 1:20, 1:25, 1:50, 1:75, 1:100 (then 1:150, 1:200, 1:250, 1:500, 1:1000 for large sites) at which
/// `width_m` by `height_m` fits into the given paper size; nullopt when none does.
[[nodiscard]] std::optional<DrawingScale> scale_that_fits(double width_m, double height_m, double width, double height);

/// A bar divided in round lengths. `length_m` times the scale is exactly what is drawn.
struct ScaleBar {
    double length_m = 2.0;
    int parts = 4;
    double units_per_m = 2000.0;
    [[nodiscard]] double drawn() const { return length_m * units_per_m; }
};
[[nodiscard]] ScaleBar scale_bar_for(const DrawingScale& scale);
void paint_scale_bar(QPainter& painter, const ScaleBar& bar, QPointF left_foot, const Sheet& sheet = {});

/// Short names of an outline's edges as a fitter says them: "left", "upper", ... with the number of its first corner
/// where two would share a name.
[[nodiscard]] QStringList edge_names(const std::vector<Point2>& outline);

struct SurfacePicture {
    bool set_out = false;  ///< rafters and every fixing point with its dimensions; else only where the collectors lie
    double most_height = 150.0 * mm;
    QString heading;  ///< stands over the drawing, on the same page
};
/// The surface face-on with its scale bar and scale in words. Returns the scale used; nullopt when the outline fits no
/// scale (then a sentence stands instead).
std::optional<DrawingScale> draw_surface(Flow& flow, const std::shared_ptr<const PaperInput>& input,
                                         const Surface& surface, const SurfacePicture& what);
/// The most a close-up may take on paper.
struct CloseUp {
    double width = 0.0;
    double height = 0.0;
};
/// The collectors of a surface alone with their points and numbers, larger than in the whole surface; nothing when that
/// would not be much larger than at `shown`, or when they lie too far apart.
void draw_points_close_up(Flow& flow, const std::shared_ptr<const PaperInput>& input, const Surface& surface,
                          const DrawingScale& shown, const CloseUp& most);
/// The scale it is drawn at; nullopt: not drawn.
[[nodiscard]] std::optional<DrawingScale> close_up_scale(const PaperInput& input, const Surface& surface,
                                                         const DrawingScale& shown, const CloseUp& most);
/// The site in plan under its heading: on this page where it does not get smaller for that, else on a page of its own.
std::optional<DrawingScale> draw_site(Flow& flow, const std::shared_ptr<const PaperInput>& input);
void draw_run(Flow& flow, const std::shared_ptr<const PaperInput>& input, double height);

}  // namespace wg::ui::paper
