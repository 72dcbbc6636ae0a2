#include "ui/drawing/run_labels.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>

namespace wg::ui {
namespace {

QPointF nearest_on(const QRectF& box, QPointF to) {
    return {std::clamp(to.x(), box.left(), box.right()), std::clamp(to.y(), box.top(), box.bottom())};
}

bool crosses(const QLineF& line, const QRectF& box) {
    if (box.contains(line.p1()) || box.contains(line.p2())) return true;
    const std::array<QPointF, 4> corners{box.topLeft(), box.topRight(), box.bottomRight(), box.bottomLeft()};
    for (std::size_t i = 0; i < corners.size(); ++i)
        if (line.intersects(QLineF(corners[i], corners[(i + 1) % corners.size()]), nullptr) ==
            QLineF::BoundedIntersection)
            return true;
    return false;
}

}  // namespace

void RunLabels::keep_free(const QRectF& box) {
    near_.keep_free(box);
    drawn_.keep_free(box);
}

void RunLabels::keep_free_line(QPointF a, QPointF b, double width) {
    near_.keep_free_line(a, b, width);
    drawn_.keep_free_line(a, b, width);
}

void RunLabels::take(const QRectF& box, const QString& text) {
    taken_.push_back({box, text});
    keep_free(box);
}

bool RunLabels::on_label(const QRectF& box) const {
    return std::any_of(taken_.begin(), taken_.end(),
                       [&box](const RunLabel& label) { return label.box.intersects(box); });
}

/// Another label below costs more than anything else, then a leader through a label, then lines below, then distance.
double RunLabels::cost(const QRectF& box, QPointF anchor, double line) const {
    const QPointF end = nearest_on(box, anchor);
    const double away = std::hypot(end.x() - anchor.x(), end.y() - anchor.y()) / line;
    const QLineF leader(anchor, end);
    double sum = away > 1.0 ? 2.0 * away : away;
    for (const RunLabel& label : taken_) {
        if (label.box.intersects(box)) sum += 1e4;
        if (away > 1.0 && crosses(leader, label.box)) sum += 100.0;
    }
    for (const QLineF& other : leaders_) {
        if (crosses(other, box)) sum += 100.0;
        if (away > 1.0 && leader.intersects(other, nullptr) == QLineF::BoundedIntersection) sum += 5.0;
    }
    return sum + 40.0 * drawn_.crowding(box);
}

RunLabels::Place RunLabels::place(QPointF anchor, QSizeF size, double line, const QString& text) {
    // A little air round each.
    const double air = 0.12 * line;
    const QSizeF airy(size.width() + 2.0 * air, size.height() + 2.0 * air);
    QRectF best = near_.find(anchor, airy, line * 0.4).box;
    double least = cost(best, anchor, line);
    if (!bounds_.contains(best)) least += 1e5;
    if (least > 2.0) {
        const double step = line * 0.5;
        const double last_x = bounds_.right() - airy.width();
        const double last_y = bounds_.bottom() - airy.height();
        for (double y = bounds_.top(); y <= last_y; y += step) {
            for (double x = bounds_.left(); x <= last_x; x += step) {
                const QRectF box(QPointF(x, y), airy);
                const QPointF end = nearest_on(box, anchor);
                if (std::hypot(end.x() - anchor.x(), end.y() - anchor.y()) / line >= least || on_label(box)) continue;
                const double here = cost(box, anchor, line);
                if (here < least) {
                    least = here;
                    best = box;
                }
            }
        }
    }
    Place found;
    found.box = best.adjusted(air, air, -air, -air);
    const QPointF end = nearest_on(found.box, anchor);
    found.line = QLineF(anchor, end);
    found.leader = found.line.length() > 1.0 * line;
    if (found.leader) leaders_.push_back(found.line);
    take(found.box, text);
    return found;
}

}  // namespace wg::ui
