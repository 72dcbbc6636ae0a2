#include <QImage>
#include <algorithm>
#include <cmath>

#include "ui/drawing/surface_parts.h"

namespace wg::ui {

double shade_scale_end(const site::ShadeMap& map) {
    double most = 0.0;
    for (float share : map.share) {
        if (share >= 0.0F) most = std::max(most, 1.0 - static_cast<double>(share));
    }
    return std::clamp(std::ceil(most * 10.0 - 1e-6) / 10.0, 0.1, 1.0);
}

namespace face {

using namespace Qt::StringLiterals;

namespace {

constexpr int legend_cells = 5;
/// On a dark surface the light end of the scale must stay dark enough for light lines and figures to be read on it.
double overlay_opacity(const Theme& theme) {
    return theme.kind == ThemeKind::dark ? 0.42 : 0.72;
}

void legend(Pass& pass, double end) {
    const QRectF box = bounds_of(pass.what.surface->outline, pass.view);
    const double line = pass.letters.line();
    const QString words = pass.what.shade_period.isEmpty()
                              ? u"direct sun lost in a year, about"_s
                              : u"direct sun lost, %1, about"_s.arg(pass.what.shade_period);
    const QString none = u"0\u202f%"_s;
    const QString most = u"%1\u202f%"_s.arg(std::lround(end * 100.0));
    const double cell = line * 1.3;
    const double width = pass.letters.width(words) + pass.letters.width(none) + pass.letters.width(most) +
                         cell * legend_cells + line * 1.2;
    const double right = std::max(box.right(), box.left() + width);
    const double y = box.top() - line * 2.75;
    double x = right - width;
    pass.letters.draw(pass.painter, {x, y}, Qt::AlignLeft | Qt::AlignVCenter, words, pass.theme.text);
    x += pass.letters.width(words) + line * 0.4;
    pass.letters.draw(pass.painter, {x, y}, Qt::AlignLeft | Qt::AlignVCenter, none, pass.theme.text);
    x += pass.letters.width(none) + line * 0.3;
    pass.painter.setPen(QPen(pass.theme.text, pass.line(0.6)));
    for (int i = 0; i < legend_cells; ++i) {
        // Mixed with the surface's tint as on the map, so that legend and map agree to the eye.
        const QRectF box_of_cell(x, y - line * 0.35, cell, line * 0.7);
        QColor ink = quantity_colour(static_cast<double>(i) / (legend_cells - 1));
        ink.setAlphaF(static_cast<float>(overlay_opacity(pass.theme)));
        pass.painter.fillRect(box_of_cell, surface_tint(pass.theme, pass.what.surface->kind));
        pass.painter.setBrush(ink);
        pass.painter.drawRect(box_of_cell);
        x += cell;
    }
    pass.letters.draw(pass.painter, {x + line * 0.3, y}, Qt::AlignLeft | Qt::AlignVCenter, most, pass.theme.text);
}

}  // namespace

void shade_overlay(Pass& pass) {
    if (pass.what.shade_map == nullptr) return;
    const site::ShadeMap& map = *pass.what.shade_map;
    if (map.columns < 1 || map.rows < 1 ||
        map.share.size() != static_cast<std::size_t>(map.columns) * static_cast<std::size_t>(map.rows)) {
        return;
    }
    const double end = shade_scale_end(map);
    QImage cells(map.columns, map.rows, QImage::Format_ARGB32);
    cells.fill(Qt::transparent);
    for (int row = 0; row < map.rows; ++row) {
        for (int column = 0; column < map.columns; ++column) {
            const float share = map.share[static_cast<std::size_t>(row) * static_cast<std::size_t>(map.columns) +
                                          static_cast<std::size_t>(column)];
            if (share < 0.0F) continue;
            const double lost = std::clamp((1.0 - static_cast<double>(share)) / end, 0.0, 1.0);
            cells.setPixelColor(column, map.rows - 1 - row, quantity_colour(lost));
        }
    }
    const QPointF low_left = pass.view.map(map.origin);
    const QPointF high_right =
        pass.view.map({map.origin.x_m + map.columns * map.cell_m, map.origin.y_m + map.rows * map.cell_m});
    pass.painter.save();
    pass.painter.setClipPath(path_of(pass.what.surface->outline, pass.view), Qt::IntersectClip);
    pass.painter.setOpacity(overlay_opacity(pass.theme));
    pass.painter.setRenderHint(QPainter::SmoothPixmapTransform, false);
    pass.painter.drawImage(QRectF(QPointF(low_left.x(), high_right.y()), QPointF(high_right.x(), low_left.y())), cells);
    pass.painter.restore();
    legend(pass, end);
}

}  // namespace face
}  // namespace wg::ui
