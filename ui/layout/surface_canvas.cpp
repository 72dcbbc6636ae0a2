#include "ui/layout/surface_canvas.h"

#include <QPainter>
#include <QPolygonF>
#include <algorithm>

#include "core/site/geometry.h"
#include "ui/common/edits.h"
#include "ui/common/format.h"
#include "ui/common/job_session.h"
#include "ui/drawing/lettering.h"
#include "ui/layout/shade_pointer.h"
#include "ui/layout/shade_service.h"

namespace wg::ui {
SurfaceCanvas::SurfaceCanvas(ShadeService* shade, QWidget* parent) : Canvas(parent), shade_(shade) {
    setAccessibleName(tr("Surface seen face-on"));
    setAccessibleDescription(tr(
        "Tab goes to the next collector, Ctrl+A selects all; arrow keys move what is selected by 1 cm, with Shift by "
        "10 cm; R turns it; H changes the side of the connections; W shows how its worst fixing point was reached; "
        "Page up and Page down take "
        "it to another surface"));
    connect(shade_, &ShadeService::ready, this, [this] { update(); });
    connect(shade_, &ShadeService::period_changed, this, [this] { update(); });
}

void SurfaceCanvas::set_session(JobSession* session) {
    if (session_ != nullptr) disconnect(session_, nullptr, this, nullptr);
    session_ = session;
    selection_.clear();
    surface_id_.clear();
    moving_ = banding_ = false;
    if (session_ != nullptr) {
        connect(session_, &JobSession::job_changed, this, &SurfaceCanvas::after_content);
        connect(session_, &JobSession::plan_changed, this, [this] { update(); });
        connect(session_, &JobSession::choice_changed, this, &SurfaceCanvas::after_content);
    }
    refresh_live();
}

void SurfaceCanvas::after_content() {
    refresh_live();
    refit();
}

void SurfaceCanvas::refresh_live() {
    live_ = session_ != nullptr ? live_rules(*session_, surface_id_, selection_) : LiveRules();
    zones_ = session_ != nullptr && zones_shown_ ? zones_of(*session_, surface_id_) : fixing::WindZones();
}

void SurfaceCanvas::set_surface(const std::string& surface_id) {
    if (surface_id_ == surface_id) return;
    surface_id_ = surface_id;
    moving_ = banding_ = false;
    refresh_live();
    fit();
}

void SurfaceCanvas::set_selected(const std::string& placement_id) {
    set_selection(placement_id.empty() ? std::vector<std::string>() : std::vector{placement_id});
}

void SurfaceCanvas::set_selection(const std::vector<std::string>& placement_ids) {
    if (selection_ == placement_ids) return;
    selection_ = placement_ids;
    refresh_live();
    update();
}

void SurfaceCanvas::set_zones_shown(bool on) {
    zones_shown_ = on;
    refresh_live();
    refit();
}

void SurfaceCanvas::set_shade_shown(bool on) {
    shade_shown_ = on;
    refit();
}

const Surface* SurfaceCanvas::surface() const {
    return session_ != nullptr ? find_surface(session_->job().site, surface_id_) : nullptr;
}

const CollectorModel* SurfaceCanvas::model() const {
    const Choice* choice = session_ != nullptr ? session_->current_choice() : nullptr;
    return choice != nullptr ? find_collector(session_->reference().catalogue, choice->collector_model) : nullptr;
}

std::vector<const Placement*> SurfaceCanvas::placements() const {
    std::vector<const Placement*> here;
    const Choice* choice = session_ != nullptr ? session_->current_choice() : nullptr;
    if (choice == nullptr) return here;
    for (const Placement& one : choice->placements) {
        if (one.surface_id == surface_id_) here.push_back(&one);
    }
    return here;
}

const Placement* SurfaceCanvas::placement(const std::string& id) const {
    for (const Placement* one : placements()) {
        if (one->id == id) return one;
    }
    return nullptr;
}

SurfaceDrawing SurfaceCanvas::drawing() const {
    SurfaceDrawing what;
    if (session_ == nullptr) return what;
    what.job = &session_->job();
    what.surface = surface();
    what.choice = session_->current_choice();
    what.collector = model();
    what.selected_id = selected();
    what.also_selected = selection_;
    what.tight = &live_.tight;
    what.run = live_.run ? &*live_.run : nullptr;
    what.zones = zones_shown_ ? &zones_ : nullptr;
    what.level_marks = true;
    what.scale_bar = true;
    what.collector_dimensions_all_round = true;
    what.text_units = text_units();
    what.shade_period = shade_->period_words();
    what.marked_point_of = marked_point_of_;
    what.marked_point = marked_point_;
    return what;
}

Canvas::Fit SurfaceCanvas::fit_into(const QRectF& area) const {
    SurfaceDrawing what = drawing();
    if (what.surface == nullptr) return {};
    // Room for the legend also while the map is still being worked out: the drawing must not jump when it comes.
    const site::ShadeMap legend_only{};
    if (shade_shown_) what.shade_map = &legend_only;
    const double air = text_units() * 0.8;
    const PlaneView fitted = fit_surface(*what.surface, area, margins_for(what) + QMarginsF(air, air, air, air));
    return {fitted.units_per_m, fitted.origin};
}

void SurfaceCanvas::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    paint_ground(painter);
    const Theme& theme = current_theme();
    const Lettering letters(text_units());
    SurfaceDrawing what = drawing();
    if (what.surface == nullptr) {
        letters.draw(painter, QRectF(rect()).center(), Qt::AlignCenter,
                     tr("No surface yet. Add a roof, wall or terrace on the Visit stage."), theme.muted);
        return;
    }
    const auto plan = session_->plan();
    what.plan = plan.get();
    if (shade_shown_) what.shade_map = shade_->map_of(surface_id_);
    const Lettering bold(text_units(), true);
    QRectF reason_box;
    if (moving_ && !reason_.isEmpty()) {
        const Placement* moved = placement(selected());
        const QPointF at = moved != nullptr ? view().map({moved->x_m, moved->y_m}) : QRectF(rect()).center();
        reason_box = bold.box(at + QPointF(0.0, text_units() * 2.6), Qt::AlignHCenter | Qt::AlignTop, reason_)
                         .adjusted(-6, -2, 6, 2);
        what.keep_free = reason_box;
    }
    numbers_.clear();
    what.numbers = &numbers_;
    paint_surface(painter, what, view(), theme);
    paint_proposals(painter);
    if (placements().empty()) {
        const QRectF box =
            letters.box(QPointF(width() / 2.0, height() - text_units() * 1.0), Qt::AlignHCenter | Qt::AlignBottom,
                        tr("No collector here. 'Add collector' puts one on this surface."));
        letters.draw_in(painter, box, tr("No collector here. 'Add collector' puts one on this surface."), theme.muted,
                        theme.panel);
    }
    if (shade_shown_ && what.shade_map == nullptr) {
        letters.draw(painter, QPointF(width() - 12.0, 10.0), Qt::AlignRight | Qt::AlignTop,
                     tr("working out the shade map \u2026"), theme.muted);
    }
    if (what.shade_map != nullptr && pointer_ && !moving_ && !banding_) {
        paint_shade_at(painter, *what.shade_map, view().unmap(*pointer_), *pointer_, QRectF(rect()), text_units(),
                       theme);
    }
    if (!reason_box.isEmpty()) {
        painter.fillRect(reason_box, theme.accent);
        bold.draw_in(painter, reason_box, reason_, theme.panel);
    }
    if (banding_) {
        QColor inside = theme.accent;
        inside.setAlphaF(0.12F);
        painter.setPen(QPen(theme.accent, 1.2, Qt::DashLine));
        painter.setBrush(inside);
        painter.drawRect(QRectF(band_from_, band_to_).normalized());
    }
}

void SurfaceCanvas::set_proposals(std::vector<ProposedPlace> proposals) {
    proposals_ = std::move(proposals);
    update();
}

void SurfaceCanvas::paint_proposals(QPainter& painter) const {
    const Theme& theme = current_theme();
    painter.save();
    for (const ProposedPlace& one : proposals_) {
        if (one.surface_id != surface_id_) continue;
        QPolygonF outline;
        for (const Point2 p : one.outline)
            outline << view().map(p);
        QPen pen(theme.accent, one.marked ? 3.0 : 2.0, Qt::DashLine);
        painter.setPen(pen);
        painter.setBrush(Qt::NoBrush);
        painter.drawPolygon(outline);
        const Lettering bold(text_units(), true);
        const QString number = QString::number(one.number);
        const QRectF box =
            bold.box(outline.boundingRect().topLeft() + QPointF(6.0, 4.0), Qt::AlignLeft | Qt::AlignTop, number)
                .adjusted(-5, -2, 5, 2);
        painter.fillRect(box, one.marked ? theme.accent : theme.panel);
        bold.draw_in(painter, box, number, one.marked ? theme.panel : theme.accent);
    }
    painter.restore();
}

QString SurfaceCanvas::place_words(Point2 at) const {
    const Surface* on = surface();
    if (on == nullptr) return {};
    if (!site::contains(on->outline, at)) return tr("%1: outside the outline").arg(qs(on->label));
    const auto left = reach_m(on->outline, at, -1.0, 0.0);
    const auto low = reach_m(on->outline, at, 0.0, -1.0);
    return tr("%1: %2 from the left edge, %3 from the lower edge")
        .arg(qs(on->label), length_m(left.value_or(0.0)), length_m(low.value_or(0.0)));
}

}  // namespace wg::ui
