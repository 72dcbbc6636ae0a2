// Fixing points under the hand on SurfaceCanvas: what is pointed at, marked and asked about.
#include <QContextMenuEvent>
#include <QMenu>
#include <cmath>

#include "ui/common/format.h"
#include "ui/common/job_session.h"
#include "ui/layout/surface_canvas.h"

namespace wg::ui {
namespace {

constexpr double point_reach_units = 9.0;

}  // namespace

void SurfaceCanvas::mark_point(const std::string& placement_id, int number) {
    marked_point_of_ = placement_id;
    marked_point_ = number;
    update();
}

SurfaceCanvas::PointHit SurfaceCanvas::point_at(QPointF at) const {
    for (const PointNumber& one : numbers_)
        if (one.box.adjusted(-3.0, -3.0, 3.0, 3.0).contains(at)) return {&one, true};
    for (const PointNumber& one : numbers_)
        if (std::hypot(one.cross.x() - at.x(), one.cross.y() - at.y()) <= point_reach_units) return {&one, false};
    return {};
}

void SurfaceCanvas::ask_about(PointNumber point) {
    if (!is_selected(point.placement_id)) select({point.placement_id});
    mark_point(point.placement_id, point.number);
    Q_EMIT point_chosen(qs(point.placement_id), point.number);
    Q_EMIT point_working_asked(qs(point.placement_id), point.number);
}

QString SurfaceCanvas::point_words(const PointNumber& point) const {
    const auto plan = session_ != nullptr ? session_->plan() : nullptr;
    if (plan != nullptr) {
        for (const plan::PlacementPlan& placed : plan->placements) {
            if (placed.placement_id != point.placement_id) continue;
            for (const fixing::FixingPoint& one : placed.fixing.points) {
                if (one.number != point.number) continue;
                return tr("Point %1: %2 of its hold used, by %3. Click its number: show working.")
                    .arg(point.number)
                    .arg(percent(one.utilisation), qs(one.worst_combination));
            }
        }
    }
    return tr("Point %1: not worked out yet").arg(point.number);
}

void SurfaceCanvas::contextMenuEvent(QContextMenuEvent* event) {
    const QPointF at = event->pos();
    const PointHit hit = point_at(at);
    const std::string id = hit.point != nullptr ? hit.point->placement_id : at_pointer(view().unmap(at));
    if (id.empty()) return;
    const int number = hit.point != nullptr ? hit.point->number : 0;
    if (number > 0) {
        mark_point(id, number);
        Q_EMIT point_chosen(qs(id), number);
    }
    auto* menu = new QMenu(this);
    menu->setAttribute(Qt::WA_DeleteOnClose);
    const QString words =
        number > 0 ? tr("Show working of point %1").arg(number) : tr("Show working of the worst point");
    menu->addAction(words, this, [this, id, number] { Q_EMIT point_working_asked(qs(id), number); });
    menu->popup(event->globalPos());
}

}  // namespace wg::ui
