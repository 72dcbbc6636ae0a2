#pragma once
// Pieces of the face-on drawing; surface_painter.cpp calls them in order.

#include <QPainterPath>
#include <vector>

#include "ui/drawing/dimension.h"
#include "ui/drawing/lettering.h"
#include "ui/drawing/surface_painter.h"

namespace wg::ui::face {

struct Pass {
    QPainter& painter;
    const SurfaceDrawing& what;
    const PlaneView& view;
    const Theme& theme;
    Lettering letters;
    Lettering bold;
    LabelPlacer placer;

    [[nodiscard]] double line(double factor) const { return what.line_units * theme.line_scale * factor; }
    [[nodiscard]] DimensionPen dimension_pen() const {
        QColor plate = theme.panel;
        plate.setAlphaF(0.82F);
        return {&letters, theme.muted, theme.text, plate, line(1.0)};
    }
};

/// A placement of the drawn surface with where its plate lies.
struct Drawn {
    const Placement* placement = nullptr;
    const plan::PlacementPlan* planned = nullptr;  ///< null while no plan knows it
    site::PlacedCollector placed;
    bool moved = false;  ///< has left the place that `planned` was computed for
};
[[nodiscard]] std::vector<Drawn> drawn_placements(const SurfaceDrawing& what);

[[nodiscard]] QColor surface_tint(const Theme& theme, SurfaceKind kind);
[[nodiscard]] QPainterPath path_of(const std::vector<Point2>& outline, const PlaneView& view);
[[nodiscard]] QRectF bounds_of(const std::vector<Point2>& outline, const PlaneView& view);
/// Metres as whole millimetres with a thin space between thousands, no unit: drawings state the unit once.
[[nodiscard]] QString millimetres(double metres);

void fill_surface(Pass& pass);
void shade_overlay(Pass& pass);
void rafters(Pass& pass);
/// Writes the spacing once, between two rafters where there is room under the ridge.
void rafter_figure(Pass& pass);
void keep_outs(Pass& pass);
void keep_out_labels(Pass& pass);
void outline(Pass& pass);

/// An obstacle's section with the surface (core/site/standing.h).
struct Standing {
    const Obstacle* obstacle = nullptr;
    std::vector<Point2> outline;
    bool in_zone = false;  ///< a keep-out covers it whole and names it
};
[[nodiscard]] std::vector<Standing> standing_on(const SurfaceDrawing& what);
void standing(Pass& pass, const std::vector<Standing>& all);
void standing_labels(Pass& pass, const std::vector<Standing>& all);

void collectors(Pass& pass, const std::vector<Drawn>& drawn);
/// Names that found no room on their plates, beside them.
void collector_names(Pass& pass, const std::vector<Drawn>& drawn);
void fixing_points(Pass& pass, const std::vector<Drawn>& drawn);
void collector_dimensions(Pass& pass, const std::vector<Drawn>& drawn);
void overall_dimensions(Pass& pass);
/// Running dimensions of the fixing points; returns the depth used below the surface.
double point_chains(Pass& pass, const std::vector<Drawn>& drawn);
/// Unit of the dimensions and a scale bar, below the drawing.
void caption(Pass& pass, double chain_depth_units);

struct Chains {
    std::vector<ChainMark> x, y;
    Point2 datum;
};
[[nodiscard]] Chains chains_of(const SurfaceDrawing& what, const PlaneView& view, const std::vector<Drawn>& drawn);

}  // namespace wg::ui::face
