#include "ui/layout/snap.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>
#include <optional>

#include "core/site/geometry.h"
#include "ui/common/format.h"
#include "ui/drawing/surface_painter.h"

namespace wg::ui {
namespace {

constexpr double on_rafter_m = 0.010;  ///< a screw still meets the middle third of a 60 mm rafter

QString tr(const char* text) {
    return QCoreApplication::translate("Snap", text);
}

struct Pull {
    double shift = 0.0;
    double rank = 0.0;  ///< higher wins before distance
    QString reason;
};

struct Box {
    double left = 1e9, right = -1e9, low = 1e9, high = -1e9;
};

Box box_of(const std::vector<Point2>& outline) {
    Box box;
    for (Point2 p : outline) {
        box.left = std::min(box.left, p.x_m);
        box.right = std::max(box.right, p.x_m);
        box.low = std::min(box.low, p.y_m);
        box.high = std::max(box.high, p.y_m);
    }
    return box;
}

std::optional<Pull> best_of(const std::vector<Pull>& pulls, double reach_m) {
    std::optional<Pull> best;
    for (const Pull& pull : pulls) {
        if (std::abs(pull.shift) > reach_m) continue;
        if (!best || pull.rank > best->rank ||
            (pull.rank == best->rank && std::abs(pull.shift) < std::abs(best->shift))) {
            best = pull;
        }
    }
    return best;
}

/// Shifts that bring fixing points onto rafters, ranked by how many points meet one.
void rafter_pulls(const std::vector<double>& rafters, const std::vector<Point2>& points, double reach_m,
                  std::vector<Pull>& pulls) {
    for (Point2 point : points) {
        for (double rafter : rafters) {
            const double shift = rafter - point.x_m;
            if (std::abs(shift) > reach_m) continue;
            int met = 0;
            for (Point2 other : points) {
                const bool meets = std::any_of(rafters.begin(), rafters.end(), [&](double r) {
                    return std::abs(r - other.x_m - shift) <= on_rafter_m;
                });
                if (meets) ++met;
            }
            const int all = static_cast<int>(points.size());
            pulls.push_back(
                {shift, 1.0 + static_cast<double>(met), tr("rafters: %1 of %2 points meet").arg(met).arg(all)});
        }
    }
}

/// Beside a thing, `gap` away from it; only sides that face the collector pull.
void facing_pulls(const Box& mine, const Box& thing, double gap, const QString& reason, std::vector<Pull>& x,
                  std::vector<Pull>& y) {
    if (mine.low < thing.high && mine.high > thing.low) {
        x.push_back({thing.left - gap - mine.right, 1.0, reason});
        x.push_back({thing.right + gap - mine.left, 1.0, reason});
    }
    if (mine.left < thing.right && mine.right > thing.left) {
        y.push_back({thing.low - gap - mine.high, 1.0, reason});
        y.push_back({thing.high + gap - mine.low, 1.0, reason});
    }
}

void edge_pulls(const SnapInput& input, const Box& mine, std::vector<Pull>& x, std::vector<Pull>& y) {
    const double gap = input.model->clearance_m;
    const QString reason = tr("edge %1").arg(length_mm(gap));
    const double my = (mine.low + mine.high) / 2.0;
    const double mx = (mine.left + mine.right) / 2.0;
    const std::vector<Point2>& outline = input.surface->outline;
    if (const auto d = reach_m(outline, {mx, my}, -1.0, 0.0)) x.push_back({gap - (*d - (mx - mine.left)), 1.0, reason});
    if (const auto d = reach_m(outline, {mx, my}, 1.0, 0.0)) x.push_back({(*d - (mine.right - mx)) - gap, 1.0, reason});
    if (const auto d = reach_m(outline, {mx, my}, 0.0, -1.0)) y.push_back({gap - (*d - (my - mine.low)), 1.0, reason});
    if (const auto d = reach_m(outline, {mx, my}, 0.0, 1.0)) y.push_back({(*d - (mine.high - my)) - gap, 1.0, reason});
    for (const KeepOut& zone : input.surface->keep_outs) {
        if (zone.outline.size() < 3) continue;
        const QString near = tr("clear of %1").arg(zone.label.empty() ? tr("keep-out") : qs(zone.label));
        // Where the maker asks for more than the survey, the plate rests where both are content.
        facing_pulls(mine, box_of(zone.outline), std::max(zone.clearance_m, gap), near, x, y);
    }
}

void neighbour_pulls(const SnapInput& input, const Box& mine, std::vector<Pull>& x, std::vector<Pull>& y) {
    for (const Placement* other : input.others) {
        const Box box = box_of(site::place(*input.surface, input.sketch_up_azimuth_deg, *other, *input.model).outline);
        const QString in_line =
            tr("in line with %1").arg(other->label.empty() ? tr("the other collector") : qs(other->label));
        y.push_back({box.low - mine.low, 1.5, in_line});
        x.push_back({box.left - mine.left, 1.5, in_line});
        const double gap = input.model->clearance_m;
        facing_pulls(mine, box, gap, tr("%1 beside %2").arg(length_mm(gap), qs(other->label)), x, y);
    }
}

}  // namespace

Snapped snap(const SnapInput& input, double x_m, double y_m) {
    Snapped out{x_m, y_m, {}, {}};
    if (input.surface == nullptr || input.placement == nullptr || input.model == nullptr) return out;
    Placement wanted = *input.placement;
    wanted.x_m = x_m;
    wanted.y_m = y_m;
    const site::PlacedCollector placed = site::place(*input.surface, input.sketch_up_azimuth_deg, wanted, *input.model);
    const Box mine = box_of(placed.outline);
    std::vector<Pull> x;
    std::vector<Pull> y;
    if (input.surface->rafters.present) {
        rafter_pulls(site::rafter_lines(*input.surface), placed.fixing_points, input.reach_m, x);
    }
    edge_pulls(input, mine, x, y);
    neighbour_pulls(input, mine, x, y);
    if (const auto pull = best_of(x, input.reach_m)) {
        out.x_m += pull->shift;
        out.reason_x = pull->reason;
    }
    if (const auto pull = best_of(y, input.reach_m)) {
        out.y_m += pull->shift;
        out.reason_y = pull->reason;
    }
    return out;
}

}  // namespace wg::ui
