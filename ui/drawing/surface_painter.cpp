#include "ui/drawing/surface_painter.h"

#include <algorithm>
#include <cmath>

#include "ui/drawing/surface_parts.h"

namespace wg::ui {
namespace {

// Lines of text that each side's dimensions take up.
constexpr double overall_top_lines = 2.1;
constexpr double overall_right_lines = 2.4;
constexpr double caption_lines = 2.4;
constexpr double legend_lines = 3.6;
constexpr double zone_caption_lines = 1.2;

}  // namespace

PlaneView fit_surface(const Surface& surface, const QRectF& area, const QMarginsF& margins) {
    PlaneView view;
    if (surface.outline.empty()) {
        view.origin = area.center();
        return view;
    }
    const auto [left, right] = std::minmax_element(surface.outline.begin(), surface.outline.end(),
                                                   [](Point2 a, Point2 b) { return a.x_m < b.x_m; });
    const auto [low, high] = std::minmax_element(surface.outline.begin(), surface.outline.end(),
                                                 [](Point2 a, Point2 b) { return a.y_m < b.y_m; });
    const QRectF room = area.marginsRemoved(margins);
    const double width_m = std::max(right->x_m - left->x_m, 0.01);
    const double height_m = std::max(high->y_m - low->y_m, 0.01);
    view.units_per_m = std::min(std::max(room.width(), 1.0) / width_m, std::max(room.height(), 1.0) / height_m);
    const Point2 middle{(left->x_m + right->x_m) / 2.0, (low->y_m + high->y_m) / 2.0};
    view.origin = {room.center().x() - middle.x_m * view.units_per_m,
                   room.center().y() + middle.y_m * view.units_per_m};
    return view;
}

PlaneView fit_surface(const Surface& surface, const QRectF& area, double margin_units) {
    return fit_surface(surface, area, QMarginsF(margin_units, margin_units, margin_units, margin_units));
}

QMarginsF margins_for(const SurfaceDrawing& what) {
    const Lettering letters(what.text_units);
    const double line = letters.line();
    QMarginsF margins(line * 0.8, line * 0.8, line * 0.8, line * 0.8);
    if (what.dimensions || what.point_dimensions) {
        margins.setTop(line * overall_top_lines);
        margins.setRight(line * overall_right_lines);
        margins.setBottom(line * caption_lines);
    }
    if (what.zones != nullptr && what.dimensions) margins.setBottom(margins.bottom() + line * zone_caption_lines);
    if (what.shade_map != nullptr) margins.setTop(line * legend_lines);
    if (what.point_dimensions && what.surface != nullptr) {
        // Only the figures' widths matter here, not where they stand.
        const face::Chains chains = face::chains_of(what, PlaneView{}, face::drawn_placements(what));
        margins.setBottom(margins.bottom() + chain_depth(chains.x, letters) + line * 0.7);
        margins.setLeft(chain_depth(chains.y, letters) + line * 1.2);
    }
    return margins;
}

double margin_for(const SurfaceDrawing& what) {
    const QMarginsF margins = margins_for(what);
    return std::max({margins.left(), margins.right(), margins.top(), margins.bottom()});
}

void paint_surface(QPainter& painter, const SurfaceDrawing& what, const PlaneView& view, const Theme& theme) {
    if (what.surface == nullptr || what.surface->outline.size() < 3) return;
    QRectF bounds = face::bounds_of(what.surface->outline, view);
    if (!what.cut_out.isEmpty()) bounds = bounds.intersected(what.cut_out);
    face::Pass pass{
        painter, what, view, theme, Lettering(what.text_units), Lettering(what.text_units, true), LabelPlacer(bounds)};
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    const std::vector<face::Drawn> drawn = face::drawn_placements(what);
    face::fill_surface(pass);
    face::shade_overlay(pass);
    if (what.rafters) face::rafters(pass);
    face::zone_lines(pass);
    face::outline(pass);
    // What labels must stay clear of is noted before the first label is placed.
    for (std::size_t i = 0; i < what.surface->outline.size(); ++i) {
        pass.placer.keep_free_line(view.map(what.surface->outline[i]),
                                   view.map(what.surface->outline[(i + 1) % what.surface->outline.size()]),
                                   pass.line(2.0));
    }
    for (const face::Drawn& one : drawn) {
        const std::size_t n = one.placed.outline.size();
        for (std::size_t i = 0; i < n; ++i) {
            pass.placer.keep_free_line(view.map(one.placed.outline[i]), view.map(one.placed.outline[(i + 1) % n]),
                                       pass.line(3.0));
        }
    }
    if (!what.keep_free.isEmpty()) pass.placer.keep_free(what.keep_free);
    face::collectors(pass, drawn);
    face::keep_outs(pass);
    const std::vector<face::Standing> obstacles = face::standing_on(what);
    face::standing(pass, obstacles);
    face::run_line(pass);
    face::tight_strips(pass, drawn);
    if (what.dimensions || what.point_dimensions) face::overall_dimensions(pass);
    if (what.dimensions) {
        face::zone_widths(pass);
        face::collector_dimensions(pass, drawn);
    }
    const double depth = what.point_dimensions ? face::point_chains(pass, drawn) : 0.0;
    if (what.dimensions || what.point_dimensions) face::caption(pass, depth);
    face::fixing_points(pass, drawn);
    face::collector_names(pass, drawn);
    face::keep_out_labels(pass);
    face::standing_labels(pass, obstacles);
    face::run_words(pass);
    face::zone_words(pass, drawn);
    if (what.rafters && (what.dimensions || what.point_dimensions)) face::rafter_figure(pass);
    face::tight_gaps(pass, drawn);
    painter.restore();
}

}  // namespace wg::ui
