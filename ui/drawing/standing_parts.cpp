// Obstacles that go through the surface seen face-on, or stand on it.
#include <QPen>

#include "core/job/words.h"
#include "core/site/geometry.h"
#include "core/site/standing.h"
#include "ui/drawing/see_through.h"
#include "ui/drawing/surface_parts.h"

namespace wg::ui::face {

std::vector<Standing> standing_on(const SurfaceDrawing& what) {
    std::vector<Standing> all;
    if (what.job == nullptr || what.surface == nullptr) return all;
    for (const Obstacle& obstacle : what.job->site.obstacles) {
        std::vector<Point2> section = site::section_on(*what.surface, what.job->site.sketch_up_azimuth_deg, obstacle);
        if (section.empty()) continue;
        Standing one{&obstacle, std::move(section), false};
        for (const KeepOut& zone : what.surface->keep_outs)
            one.in_zone = one.in_zone || (zone.outline.size() >= 3 && site::contains(zone.outline, one.outline));
        all.push_back(std::move(one));
    }
    return all;
}

void standing(Pass& pass, const std::vector<Standing>& all) {
    for (const Standing& one : all) {
        const QPainterPath path = path_of(one.outline, pass.view);
        const QRectF box = path.boundingRect();
        const bool selected = one.obstacle->id == pass.what.selected_id;
        const QColor solid =
            see_through(pass.painter, pass.theme.muted, 0.45, surface_tint(pass.theme, pass.what.surface->kind));
        pass.painter.save();
        pass.painter.setClipPath(path_of(pass.what.surface->outline, pass.view), Qt::IntersectClip);
        pass.painter.fillPath(path, solid);
        pass.painter.setBrush(Qt::NoBrush);
        pass.painter.setPen(QPen(selected ? pass.theme.accent : pass.theme.text, pass.line(selected ? 2.4 : 1.2)));
        pass.painter.drawPath(path);
        // Corner to corner: something solid, not a zone on paper.
        pass.painter.setPen(QPen(pass.theme.text, pass.line(0.7)));
        pass.painter.setClipPath(path, Qt::IntersectClip);
        pass.painter.drawLine(box.topLeft(), box.bottomRight());
        pass.painter.drawLine(box.bottomLeft(), box.topRight());
        pass.painter.restore();
        pass.placer.keep_free(box);
    }
}

void standing_labels(Pass& pass, const std::vector<Standing>& all) {
    for (const Standing& one : all) {
        if (one.in_zone) continue;  // the zone's name says it
        const QRectF box = bounds_of(one.outline, pass.view);
        const Obstacle& obstacle = *one.obstacle;
        const QString label =
            obstacle.label.empty() ? QString::fromUtf8(text_of(obstacle.use)) : QString::fromStdString(obstacle.label);
        QColor solid = pass.theme.panel;
        solid.setAlphaF(0.9F);
        const auto place = pass.placer.find(QPointF(box.center().x(), box.bottom()), pass.letters.size(label),
                                            pass.letters.line() * 0.35, {0.0, 1.0});
        if (place.far && !pass.placer.is_free(place.box)) continue;  // as with the names of zones
        pass.placer.keep_free(place.box);
        pass.letters.draw_in(pass.painter, place.box, label, pass.theme.text, solid);
    }
}

}  // namespace wg::ui::face
