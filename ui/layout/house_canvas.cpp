#include "ui/layout/house_canvas.h"

#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <algorithm>
#include <cmath>

#include "core/quantity/angle.h"
#include "core/sky/sun_path.h"
#include "ui/common/format.h"
#include "ui/common/job_session.h"
#include "ui/common/theme.h"
#include "ui/drawing/lettering.h"

namespace wg::ui {
namespace {

constexpr double degrees_a_pixel = 0.4;
constexpr int settled_ms = 160;
constexpr double least_elevation_deg = 4.0;
constexpr double hand_moves_units = 4.0;  ///< a click that trembles is not an orbit
constexpr std::size_t most_named = 3;     ///< collectors named one by one below the picture

QString share_words(double share) {
    if (share >= 0.995) return HouseCanvas::tr("all in the sun");
    if (share <= 0.005) return HouseCanvas::tr("in the shade");
    return HouseCanvas::tr("%1 in the sun").arg(percent(share));
}

}  // namespace

HouseCanvas::HouseCanvas(QWidget* parent) : Canvas(parent) {
    setAccessibleName(tr("House in space"));
    setAccessibleDescription(
        tr("Arrow keys turn the view by 5 degrees, with Shift by 15; plus and minus zoom; Home goes back to the first "
           "view; "
           "F brings everything into view"));
    moment_ = {sky::day_index(3, 21), 13.0};
    settled_.setSingleShot(true);
    settled_.setInterval(settled_ms);
    connect(&settled_, &QTimer::timeout, this, [this] { update(); });
}

void HouseCanvas::set_session(JobSession* session) {
    if (session_ != nullptr) disconnect(session_, nullptr, this, nullptr);
    session_ = session;
    homed_ = false;
    scene_known_ = false;
    site_ = {};
    choice_.reset();
    if (session_ != nullptr) {
        connect(session_, &JobSession::job_changed, this, &HouseCanvas::job_changed);
        connect(session_, &JobSession::choice_changed, this, [this] {
            homed_ = false;
            job_changed();
        });
    }
    job_changed();
}

void HouseCanvas::job_changed() {
    scene_known_ = false;
    if (!isVisible()) return;
    refit();
    Q_EMIT scene_changed();
}

void HouseCanvas::make_scene() const {
    if (scene_known_ || session_ == nullptr) return;
    scene_known_ = true;
    const Site& site = session_->job().site;
    const Choice* choice = session_->current_choice();
    const bool same = site == site_ && (choice != nullptr ? choice_ == *choice : !choice_.has_value());
    if (same && !order_.fragments().empty()) return;
    site_ = site;
    choice_ = choice != nullptr ? std::optional(*choice) : std::nullopt;
    const Catalogue& catalogue = session_->reference().catalogue;
    scene_ =
        scene::scene_of(site, choice, choice != nullptr ? find_collector(catalogue, choice->collector_model) : nullptr,
                        choice != nullptr ? find_cylinder(catalogue, choice->cylinder_model) : nullptr);
    order_ = scene::Order(scene_);
    plates_.clear();
    for (std::size_t i = 0; i < scene_.collectors.size(); ++i) {
        const auto placement = std::find_if(choice->placements.begin(), choice->placements.end(),
                                            [&](const Placement& p) { return p.id == scene_.collector_ids[i]; });
        plates_.push_back(
            {placement->id, placement->label, scene::PlateLight(site, scene_.collectors[i], placement->surface_id)});
    }
    light_known_ = false;
}

void HouseCanvas::make_light() const {
    make_scene();
    if (light_known_ || session_ == nullptr) return;
    light_known_ = true;
    sun_ = scene::sun_over(site_, moment_);
    shadows_ = sun_.shines() ? scene::shadows_of(scene_, order_, sun_.to_sun, sun_.month) : scene::Shadows{};
}

void HouseCanvas::set_moment(const scene::Moment& moment) {
    if (moment_ == moment) return;
    moment_ = moment;
    light_known_ = false;
    moves();
}

void HouseCanvas::moves() {
    settled_.start();
    update();
}

void HouseCanvas::set_selected(const std::string& surface_id, const std::string& placement_id) {
    surface_id_ = surface_id;
    placement_id_ = placement_id;
    update();
}

const scene::SunOverSite& HouseCanvas::sun() {
    make_light();
    return sun_;
}

const scene::Scene& HouseCanvas::scene_now() {
    make_scene();
    return scene_;
}

QString HouseCanvas::sun_words() {
    make_light();
    if (session_ == nullptr) return {};
    if (!sun_.up) {
        return tr("Night: the sun is %1 below the level.")
            .arg(quantity(-sun_.elevation_deg, QStringLiteral("°")))
            .replace(QStringLiteral("\u202f°"), QStringLiteral("°"));
    }
    QString text = tr("Sun %1° high, bearing %2.").arg(number(sun_.elevation_deg), bearing(sun_.azimuth_deg));
    if (sun_.behind_horizon) return text + tr(" It stands behind the surveyed horizon: all is in the shade.");
    if (plates_.empty()) return text + tr(" No collector is placed yet.");
    if (plates_.size() <= most_named) {
        for (Plate& plate : plates_)
            text += QStringLiteral(" %1: %2.")
                        .arg(qs(plate.label), share_words(plate.light.lit_share(sun_.to_sun, sun_.month)));
        return text;
    }
    double sum = 0.0;
    for (Plate& plate : plates_) {
        const double share = plate.light.lit_share(sun_.to_sun, sun_.month);
        sum += share;
        if (plate.id == placement_id_) text += QStringLiteral(" %1: %2.").arg(qs(plate.label), share_words(share));
    }
    return text + tr(" All %1 collectors together: %2.")
                      .arg(plates_.size())
                      .arg(share_words(sum / static_cast<double>(plates_.size())));
}

scene::Camera HouseCanvas::home_camera() const {
    scene::Camera camera;
    if (session_ == nullptr) return camera;
    const Site& site = session_->job().site;
    camera.azimuth_deg = sky::equator_bearing_deg(site.location.latitude_deg);
    if (const Choice* choice = session_->current_choice(); choice != nullptr && !choice->placements.empty()) {
        const Placement& first = choice->placements.front();
        if (const Surface* surface = find_surface(site, first.surface_id))
            camera.azimuth_deg = first.frame_azimuth_deg.value_or(surface->azimuth_deg);
    }
    camera.azimuth_deg = wrap_360(camera.azimuth_deg - 25.0);  // a little from the side: depth is seen
    return camera;
}

void HouseCanvas::home() {
    camera_ = home_camera();
    homed_ = true;
    own_house_ = true;
    fit();
}

void HouseCanvas::fit_everything() {
    own_house_ = false;
    fit();
}

void HouseCanvas::orbit(double turn_deg, double rise_deg) {
    camera_.azimuth_deg = wrap_360(camera_.azimuth_deg + turn_deg);
    camera_.elevation_deg = std::clamp(camera_.elevation_deg + rise_deg, least_elevation_deg, 90.0);
    Q_EMIT status(
        tr("Seen from %1, %2° above the level").arg(bearing(camera_.azimuth_deg), number(camera_.elevation_deg)));
    moves();
}

HouseView HouseCanvas::house_view() const {
    HouseView view;
    view.axes = scene::axes_of(camera_, scene_.sketch_up_azimuth_deg);
    view.middle = scene_.middle;
    view.units_per_m = units_per_m();
    view.origin = origin();
    return view;
}

Canvas::Fit HouseCanvas::fit_into(const QRectF& area) const {
    make_scene();
    const double air = text_units() * 2.2;
    const HouseView view = fit_house(scene_, camera_, area.adjusted(air, air, -air, -air),
                                     own_house_ ? HouseFit::own_house : HouseFit::everything);
    return {view.units_per_m, view.origin};
}

void HouseCanvas::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    paint_ground(painter);
    if (session_ == nullptr) return;
    make_light();
    if (scene_.empty()) {
        Lettering(text_units())
            .draw(painter, QRectF(rect()).center(), Qt::AlignCenter,
                  tr("No surface yet. Add a roof, wall or terrace on the Visit stage."), current_theme().muted);
        return;
    }
    if (!homed_) home();
    HouseDrawing what;
    what.scene = &scene_;
    what.order = &order_;
    what.shadows = &shadows_;
    what.sun = sun_;
    what.selected_id = surface_id_;
    what.collector_id = placement_id_;
    what.text_units = text_units();
    what.moving = settled_.isActive();
    what.area = QRectF(rect()).adjusted(4, 4, -4, -4);
    painter.setClipRect(what.area);
    paint_house(painter, what, house_view(), current_theme());
}

const scene::Thing* HouseCanvas::thing_at(QPointF at) const {
    make_scene();
    return house_thing_at(scene_, order_, house_view(), at);
}

QString HouseCanvas::words_for(const scene::Thing& thing) const {
    switch (thing.kind) {
        case scene::Kind::surface:
        case scene::Kind::keep_out:
            if (const Surface* s = find_surface(site_, thing.id)) {
                return tr("%1: tilt %2°, faces %3. Click chooses it, double click opens it face-on.")
                    .arg(qs(s->label), number(s->tilt_deg), bearing(s->azimuth_deg));
            }
            return {};
        case scene::Kind::collector: return tr("%1. Click chooses it.").arg(qs(thing.label));
        case scene::Kind::obstacle:
        case scene::Kind::crown:
            for (const Obstacle& o : site_.obstacles) {
                if (o.id == thing.id) return tr("%1, %2 high").arg(qs(o.label), length_m(o.height_m));
            }
            return {};
        default: return qs(thing.label);
    }
}

void HouseCanvas::press(QPointF at, Qt::KeyboardModifiers) {
    press_at_ = last_at_ = at;
    turned_ = false;
}

void HouseCanvas::drag(QPointF at, Qt::KeyboardModifiers) {
    if (!turned_ && std::hypot(at.x() - press_at_.x(), at.y() - press_at_.y()) < hand_moves_units) return;
    turned_ = true;
    const QPointF moved = at - last_at_;
    last_at_ = at;
    setCursor(Qt::ClosedHandCursor);
    orbit(moved.x() * degrees_a_pixel, moved.y() * degrees_a_pixel);
}

void HouseCanvas::release(QPointF at) {
    unsetCursor();
    if (turned_) return;
    const scene::Thing* thing = thing_at(at);
    if (thing == nullptr) return;
    if (thing->kind == scene::Kind::collector) Q_EMIT collector_clicked(qs(thing->id));
    if (thing->kind == scene::Kind::surface || thing->kind == scene::Kind::keep_out)
        Q_EMIT surface_clicked(qs(thing->id));
}

void HouseCanvas::hover(QPointF at) {
    const scene::Thing* thing = thing_at(at);
    Q_EMIT status(thing != nullptr ? words_for(*thing)
                                   : tr("Drag turns the view, the wheel zooms, the middle button or space pans."));
}

void HouseCanvas::mouseDoubleClickEvent(QMouseEvent* event) {
    const scene::Thing* thing = event->button() == Qt::LeftButton ? thing_at(event->position()) : nullptr;
    if (thing != nullptr && (thing->kind == scene::Kind::surface || thing->kind == scene::Kind::keep_out)) {
        Q_EMIT surface_opened(qs(thing->id));
        return;
    }
    Canvas::mouseDoubleClickEvent(event);
}

void HouseCanvas::keyPressEvent(QKeyEvent* event) {
    const double step = (event->modifiers() & Qt::ShiftModifier) != 0 ? 15.0 : 5.0;
    switch (event->key()) {
        case Qt::Key_Left: orbit(-step, 0.0); return;
        case Qt::Key_Right: orbit(step, 0.0); return;
        case Qt::Key_Up: orbit(0.0, step); return;
        case Qt::Key_Down: orbit(0.0, -step); return;
        case Qt::Key_Home: home(); return;
        case Qt::Key_0:
        case Qt::Key_F: fit_everything(); return;
        default: Canvas::keyPressEvent(event);
    }
}

}  // namespace wg::ui
