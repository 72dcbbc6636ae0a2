#include "ui/drawing/house_inks.h"

#include <algorithm>
#include <cmath>

#include "core/site/vec.h"

namespace wg::ui::house {

QColor mixed(const QColor& a, const QColor& b, double share_of_b) {
    const auto blend = [share_of_b](int from, int to) {
        return static_cast<int>(std::lround(from + share_of_b * (to - from)));
    };
    return {blend(a.red(), b.red()), blend(a.green(), b.green()), blend(a.blue(), b.blue())};
}

QColor tint_of(const scene::Thing& thing, const Theme& theme) {
    switch (thing.kind) {
        case scene::Kind::ground: return mixed(theme.soil, theme.panel, 0.35);
        case scene::Kind::surface:
            switch (thing.surface_kind) {
                case SurfaceKind::roof: return theme.roof;
                case SurfaceKind::wall: return theme.wall;
                case SurfaceKind::terrace: return theme.terrace;
                case SurfaceKind::ground: return theme.soil;
            }
            return theme.wall;
        case scene::Kind::keep_out: return mixed(theme.hatch, theme.roof, 0.35);
        case scene::Kind::obstacle: return mixed(theme.wall, theme.hatch, 0.30);
        case scene::Kind::crown: return theme.ready;
        case scene::Kind::collector: return mixed(theme.panel, theme.collector_line, 0.62);
        case scene::Kind::cylinder: return mixed(theme.panel, theme.note, 0.45);
        case scene::Kind::stand:
        case scene::Kind::route:
        case scene::Kind::post_line: return theme.collector_line;
    }
    return theme.wall;
}

QColor in_light(const QColor& tint, double light, const Theme& theme) {
    const bool dark = theme.kind == ThemeKind::dark;
    const QColor low = mixed(tint, dark ? QColor(Qt::black) : theme.text, dark ? 0.62 : 0.66);
    const QColor high = mixed(tint, dark ? theme.text : QColor(Qt::white), dark ? 0.42 : 0.30);
    return mixed(low, high, std::clamp(light, 0.0, 1.0));
}

double sunlit(double cosine) {
    constexpr double steps = 6.0;
    return 0.66 + 0.34 * std::ceil(std::clamp(cosine, 0.0, 1.0) * steps) / steps;
}

double shaded(Point3 normal, Point3 right, bool night) {
    const double form = 0.05 * normal.z_m + 0.05 * site::dot(normal, right);
    return (night ? 0.16 : 0.30) + form;
}

}  // namespace wg::ui::house
