#include "ui/documents/drawings.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include "core/site/geometry.h"
#include "ui/common/format.h"
#include "ui/common/paper_words.h"
#include "ui/drawing/plan_painter.h"
#include "ui/drawing/run_painter.h"
#include "ui/drawing/surface_painter.h"

namespace wg::ui::paper {
namespace {

constexpr double bar_room = 9.0 * mm;     ///< under a drawing for scale bar and words
constexpr double line_units = 0.18 * mm;  ///< the painters' line of width 1 on paper

struct Extent {
    double left = std::numeric_limits<double>::max();
    double right = std::numeric_limits<double>::lowest();
    double low = std::numeric_limits<double>::max();
    double high = std::numeric_limits<double>::lowest();
    void take(double x_m, double y_m) {
        left = std::min(left, x_m);
        right = std::max(right, x_m);
        low = std::min(low, y_m);
        high = std::max(high, y_m);
    }
    [[nodiscard]] bool usable() const {
        return std::isfinite(left) && std::isfinite(right) && std::isfinite(low) && std::isfinite(high) &&
               right - left > 1e-3 && high - low > 1e-3 && right - left < 1e4 && high - low < 1e4;
    }
    [[nodiscard]] double width() const { return right - left; }
    [[nodiscard]] double height() const { return high - low; }
};

SurfaceDrawing drawing_of(const PaperInput& input, const Surface& surface, bool set_out, const Sheet& sheet) {
    SurfaceDrawing drawing;
    drawing.job = &input.job;
    drawing.surface = &surface;
    drawing.choice = find_choice(input.job, input.plan.choice_id);
    drawing.plan = &input.plan;
    drawing.dimensions = true;
    drawing.point_dimensions = set_out;
    drawing.rafters = set_out;
    drawing.text_units = text_units(sheet.least());
    drawing.line_units = line_units;
    return drawing;
}

QString scale_words(const DrawingScale& scale, const Sheet& sheet) {
    return say("Scale 1:%1 on %2 printed at full size. Check the bar with a rule before measuring.")
        .arg(QString::number(scale.denominator), sheet.name);
}

void paint_scale_line(QPainter& painter, const DrawingScale& scale, const QRectF& frame, const Sheet& sheet) {
    const ScaleBar bar = scale_bar_for(scale);
    paint_scale_bar(painter, bar, QPointF(frame.left() + 3.0 * mm, frame.bottom() - 2.0 * mm), sheet);
}

}  // namespace

std::optional<DrawingScale> scale_that_fits(double width_m, double height_m, double width, double height) {
    for (const int denominator : {20, 25, 40, 50, 75, 100, 150, 200, 250, 500, 1000}) {
        const DrawingScale scale{denominator};
        if (width_m * scale.units_per_m() <= width && height_m * scale.units_per_m() <= height) return scale;
    }
    return std::nullopt;
}

ScaleBar scale_bar_for(const DrawingScale& scale) {
    ScaleBar bar;
    bar.units_per_m = scale.units_per_m();
    // Between 35 and 100 mm long on paper.
    for (const double length_m : {1.0, 2.0, 4.0, 10.0, 20.0, 40.0}) {
        bar.length_m = length_m;
        if (bar.drawn() >= 35.0 * mm) break;
    }
    bar.parts = bar.length_m == 1.0 ? 4 : (bar.length_m == 2.0 || bar.length_m == 4.0 ? 4 : 5);
    return bar;
}

void paint_scale_bar(QPainter& painter, const ScaleBar& bar, QPointF left_foot, const Sheet& sheet) {
    const Theme theme = sheet.theme();
    const double height = 1.6 * mm;
    const double part = bar.drawn() / bar.parts;
    const Style style = sheet.lettered({least_pt, false, false});
    painter.save();
    painter.setFont(font_of(style));
    painter.setPen(QPen(theme.text, firm_rule / 2.0));
    for (int i = 0; i < bar.parts; ++i) {
        painter.setBrush(i % 2 == 0 ? QBrush(theme.text) : QBrush(Qt::white));
        painter.drawRect(QRectF(left_foot.x() + i * part, left_foot.y() - height, part, height));
    }
    const int decimals = std::fabs(bar.length_m / bar.parts - std::round(bar.length_m / bar.parts)) < 1e-9 ? 0 : 2;
    // Both ends are always told, what lies between where its figure has room.
    const double gap = text_width(QStringLiteral("0"), style) * 0.6;
    std::vector<QPair<double, double>> taken;
    std::vector<int> order{0, bar.parts};
    for (int i = 1; i < bar.parts; ++i)
        order.push_back(i);
    for (const int i : order) {
        const double metres = bar.length_m * i / bar.parts;
        QString word = number(metres, i == 0 || i == bar.parts || decimals == 0 ? 0 : decimals);
        const double left = left_foot.x() + i * part - text_width(word, style) / 2.0;
        if (i == bar.parts) word += QStringLiteral(" m");
        const double right = left + text_width(word, style);
        if (std::any_of(taken.begin(), taken.end(),
                        [&](const auto& one) { return left < one.second + gap && one.first < right + gap; }))
            continue;
        taken.emplace_back(left, right);
        painter.drawText(QPointF(left, left_foot.y() - height - 1.0 * mm), word);
    }
    painter.restore();
}

QStringList edge_names(const std::vector<Point2>& outline) {
    const std::size_t n = outline.size();
    double area = 0.0;
    for (std::size_t i = 0; i < n; ++i) {
        const Point2& a = outline[i];
        const Point2& b = outline[(i + 1) % n];
        area += a.x_m * b.y_m - b.x_m * a.y_m;
    }
    QStringList names;
    for (std::size_t i = 0; i < n; ++i) {
        const Point2& a = outline[i];
        const Point2& b = outline[(i + 1) % n];
        // Outward normal of a counter-clockwise outline is to the right of its edges.
        const double turn = area >= 0.0 ? 1.0 : -1.0;
        const double nx = turn * (b.y_m - a.y_m);
        const double ny = turn * (a.x_m - b.x_m);
        if (std::fabs(ny) >= std::fabs(nx) * 0.7) {
            names += ny < 0.0 ? QStringLiteral("lower") : QStringLiteral("upper");
        } else {
            names += nx < 0.0 ? QStringLiteral("left") : QStringLiteral("right");
        }
    }
    const QStringList plain = names;
    for (qsizetype i = 0; i < names.size(); ++i) {
        if (plain.count(plain[i]) > 1) names[i] += QStringLiteral(" (from corner %1)").arg(i + 1);
    }
    return names;
}

std::optional<DrawingScale> draw_surface(Flow& flow, const std::shared_ptr<const PaperInput>& input,
                                         const Surface& surface, const SurfacePicture& what) {
    const Sheet& sheet = flow.sheet();
    Extent extent;
    for (const Point2& p : surface.outline)
        extent.take(p.x_m, p.y_m);
    if (!extent.usable()) {
        if (!what.heading.isEmpty()) flow.heading(what.heading);
        flow.paragraph(
            say("%1 has no outline that can be drawn yet: measure it and enter its corners.").arg(qs(surface.label)));
        return std::nullopt;
    }
    const QMarginsF border = margins_for(drawing_of(*input, surface, what.set_out, sheet));
    const double across = border.left() + border.right();
    const double upright = border.top() + border.bottom();
    const auto scale = scale_that_fits(extent.width(), extent.height(), sheet.body_width() - across,
                                       what.most_height - upright - bar_room);
    if (!scale) {
        if (!what.heading.isEmpty()) flow.heading(what.heading);
        flow.paragraph(say("%1 is too large to be drawn to scale on one sheet.").arg(qs(surface.label)));
        return std::nullopt;
    }
    const double drawn_height = extent.height() * scale->units_per_m() + upright;
    if (!what.heading.isEmpty()) flow.heading(what.heading);
    const std::string surface_id = surface.id;
    const bool set_out = what.set_out;
    const DrawingScale used = *scale;
    flow.picture(
        qs(surface.label) + say(", seen face-on"), drawn_height + bar_room, used.units_per_m(),
        [input, surface_id, set_out, border, used, extent, sheet](QPainter& painter, const QRectF& frame) {
            const Surface* drawn = find_surface(input->job.site, surface_id);
            if (drawn == nullptr) return;
            PlaneView view;
            view.units_per_m = used.units_per_m();
            const double width = extent.width() * view.units_per_m;
            const double spare = frame.width() - width - border.left() - border.right();
            view.origin = QPointF(frame.left() + border.left() + spare / 2.0 - extent.left * view.units_per_m,
                                  frame.top() + border.top() + extent.high * view.units_per_m);
            const SurfaceDrawing drawing = drawing_of(*input, *drawn, set_out, sheet);
            painter.save();
            paint_surface(painter, drawing, view, sheet.theme());
            painter.restore();
            paint_scale_line(painter, used, frame, sheet);
        },
        scale_words(used, sheet));
    return scale;
}

namespace {

Extent close_up_extent(const PaperInput& input, const Surface& surface) {
    constexpr double air_m = 0.25;
    constexpr double below_m = 0.45;  // the tubes and their words hang below the plate
    Extent extent;
    for (const plan::PlacementPlan& placed : input.plan.placements) {
        if (placed.surface_id != surface.id) continue;
        for (const Point2& p : placed.placed.outline) {
            extent.take(p.x_m - air_m, p.y_m - below_m);
            extent.take(p.x_m + air_m, p.y_m + air_m);
        }
    }
    return extent;
}

}  // namespace

std::optional<DrawingScale> close_up_scale(const PaperInput& input, const Surface& surface, const DrawingScale& shown,
                                           const CloseUp& most) {
    const Extent extent = close_up_extent(input, surface);
    if (!extent.usable()) return std::nullopt;
    const auto scale = scale_that_fits(extent.width(), extent.height(), most.width, most.height);
    // A little larger is not worth a second drawing.
    if (!scale || 3 * scale->denominator > 2 * shown.denominator) return std::nullopt;
    return scale;
}

void draw_points_close_up(Flow& flow, const std::shared_ptr<const PaperInput>& input, const Surface& surface,
                          const DrawingScale& shown, const CloseUp& most) {
    const Sheet& sheet = flow.sheet();
    const Extent extent = close_up_extent(*input, surface);
    const auto scale = close_up_scale(*input, surface, shown, most);
    if (!scale) return;
    const DrawingScale used = *scale;
    const std::string surface_id = surface.id;
    flow.subheading(say("The points close up"));
    flow.picture(
        qs(surface.label) + say(", points close up"), extent.height() * used.units_per_m() + bar_room,
        used.units_per_m(),
        [input, surface_id, used, extent, sheet](QPainter& painter, const QRectF& frame) {
            // Only what lies in the cut-out: labels of other things would be cut off at its edge.
            Job job = input->job;
            job.site.obstacles.clear();
            for (Surface& one : job.site.surfaces) {
                auto& zones = one.keep_outs;
                zones.erase(std::remove_if(zones.begin(), zones.end(),
                                           [&extent](const KeepOut& zone) {
                                               return std::any_of(zone.outline.begin(), zone.outline.end(),
                                                                  [&extent](const Point2& p) {
                                                                      return p.x_m < extent.left ||
                                                                             p.x_m > extent.right ||
                                                                             p.y_m < extent.low || p.y_m > extent.high;
                                                                  });
                                           }),
                            zones.end());
            }
            const Surface* drawn = find_surface(job.site, surface_id);
            if (drawn == nullptr) return;
            PlaneView view;
            view.units_per_m = used.units_per_m();
            const double width = extent.width() * view.units_per_m;
            const double height = extent.height() * view.units_per_m;
            const QRectF area(frame.left() + (frame.width() - width) / 2.0, frame.top(), width, height);
            view.origin =
                QPointF(area.left() - extent.left * view.units_per_m, area.top() + extent.high * view.units_per_m);
            SurfaceDrawing drawing = drawing_of(*input, *drawn, false, sheet);
            drawing.job = &job;
            drawing.dimensions = false;
            drawing.rafters = true;
            drawing.cut_out = area;
            painter.save();
            painter.setClipRect(area, Qt::IntersectClip);
            paint_surface(painter, drawing, view, sheet.theme());
            painter.restore();
            painter.save();
            painter.setPen(QPen(sheet.theme().muted, line_units));
            painter.setBrush(Qt::NoBrush);
            painter.drawRect(area);
            painter.restore();
            paint_scale_line(painter, used, frame, sheet);
        },
        scale_words(used, sheet));
}

std::optional<DrawingScale> draw_site(Flow& flow, const std::shared_ptr<const PaperInput>& input) {
    const Sheet& sheet = flow.sheet();
    const Site& site = input->job.site;
    Extent extent;
    for (const Surface& surface : site.surfaces) {
        const site::Frame frame = site::frame_of(surface, site.sketch_up_azimuth_deg);
        for (const Point2& corner : surface.outline) {
            const Point3 at = site::to_space(frame, corner);
            extent.take(at.x_m, at.y_m);
        }
    }
    for (const Obstacle& obstacle : site.obstacles) {
        if (obstacle.kind == ObstacleKind::prism) {
            for (const Point2& corner : obstacle.outline)
                extent.take(corner.x_m, corner.y_m);
            continue;
        }
        double reach_m = obstacle.radius_m;
        if (obstacle.kind == ObstacleKind::box) reach_m = 0.5 * std::hypot(obstacle.width_m, obstacle.depth_m);
        extent.take(obstacle.base.x_m - reach_m, obstacle.base.y_m - reach_m);
        extent.take(obstacle.base.x_m + reach_m, obstacle.base.y_m + reach_m);
    }
    for (const CylinderSpot& spot : site.spots)
        extent.take(spot.position.x_m, spot.position.y_m);
    if (!extent.usable()) {
        flow.heading(say("Site in plan"));
        flow.paragraph(say("Nothing is sketched yet: draw the house, its surfaces and the cylinder's place."));
        return std::nullopt;
    }
    const double border = 12.0 * mm;
    const double caption = 12.0 * mm;
    const double heading = 14.0 * mm;
    const auto scale_in = [&](double height) {
        return scale_that_fits(extent.width(), extent.height(), sheet.body_width() - 2.0 * border,
                               height - 2.0 * border - bar_room);
    };
    // On this page where that costs nothing in size, else on a page of its own.
    const auto whole_page = scale_in(flow.full_height() - heading - caption);
    const auto here = scale_in(flow.left() - heading - caption);
    const auto scale = here && whole_page && here->denominator <= whole_page->denominator ? here : whole_page;

    if (!scale) {
        flow.heading(say("Site in plan"));
        flow.paragraph(say("The site is too large to be drawn to scale on one sheet."));
        return std::nullopt;
    }
    const DrawingScale used = *scale;
    const double height = extent.height() * used.units_per_m() + 2.0 * border + bar_room;
    flow.heading(say("Site in plan"));
    flow.picture(
        say("Site in plan"), height, used.units_per_m(),
        [input, used, extent, sheet](QPainter& painter, const QRectF& frame) {
            const QRectF area = frame.adjusted(0.0, 0.0, 0.0, -bar_room);
            SiteView view;
            view.units_per_m = used.units_per_m();
            view.origin = QPointF(area.center().x() - (extent.left + extent.right) / 2.0 * view.units_per_m,
                                  area.center().y() + (extent.low + extent.high) / 2.0 * view.units_per_m);
            SiteDrawing drawing;
            drawing.job = &input->job;
            drawing.choice = find_choice(input->job, input->plan.choice_id);
            drawing.plan = input->plan.choice_id.empty() ? nullptr : &input->plan;
            drawing.text_units = text_units(sheet.least());
            drawing.line_units = line_units;
            drawing.area = area;
            drawing.scale_bar = false;
            painter.save();
            paint_site(painter, drawing, view, sheet.theme());
            painter.restore();
            paint_scale_line(painter, used, frame, sheet);
        },
        scale_words(used, sheet));
    return scale;
}

void draw_run(Flow& flow, const std::shared_ptr<const PaperInput>& input, double height) {
    const Sheet& sheet = flow.sheet();
    flow.picture(say("Pipe run, not to scale"), height, 0.0, [input, sheet](QPainter& painter, const QRectF& frame) {
        painter.save();
        paint_run(painter, input->job, input->plan, frame.adjusted(0.0, 0.0, 0.0, -4.0 * mm), sheet.theme(),
                  text_units(sheet.least()), line_units);
        painter.restore();
    });
}

}  // namespace wg::ui::paper
