// What is drawn on the visit's sketch, and the hand that draws it.

#include <QLayout>
#include <QMenu>
#include <QPushButton>
#include <QStackedWidget>
#include <algorithm>

#include "core/job/words.h"
#include "core/roof/building.h"
#include "core/roof/linked.h"
#include "core/site/geometry.h"
#include "core/site/standing.h"
#include "ui/common/building_edits.h"
#include "ui/common/edits.h"
#include "ui/common/format.h"
#include "ui/common/house_edits.h"
#include "ui/common/job_session.h"
#include "ui/drawing/plan_painter.h"
#include "ui/drawing/site_canvas.h"
#include "ui/visit/face_canvas.h"
#include "ui/visit/new_elements.h"
#include "ui/visit/outline_tool.h"
#include "ui/visit/run_tool.h"
#include "ui/visit/surface_editor.h"
#include "ui/visit/visit_stage.h"

namespace wg::ui {
namespace {

QString capital(QString word) {
    if (!word.isEmpty()) word[0] = word[0].toUpper();
    return word;
}

}  // namespace

void VisitStage::add_menus(QWidget* holder, QLayout* bar) {
    auto* house = new QPushButton(tr("Draw house"), holder);
    house->setToolTip(tr("A footprint by clicks or typed lengths; roof planes and walls are made from it."));
    auto* houses = new QMenu(house);
    for (const Word<BuildingShape>& word : words<BuildingShape>()) {
        const BuildingShape shape = word.value;
        houses->addAction(tr("With %1").arg(QString::fromUtf8(word.text)), this,
                          [this, shape] { draw_building(shape); });
    }
    houses->addSeparator();
    houses->addAction(tr("A room where no pipe goes"), this, &VisitStage::draw_room);
    house->setMenu(houses);
    auto* surface = new QPushButton(tr("Add surface"), holder);
    auto* surfaces = new QMenu(surface);
    for (const Word<SurfaceKind>& word : words<SurfaceKind>()) {
        const int kind = static_cast<int>(word.value);
        surfaces->addAction(tr("%1, a rectangle").arg(capital(QString::fromUtf8(word.text))), this,
                            [this, kind] { add_surface_at(kind); });
    }
    surfaces->addSeparator();
    for (const SurfaceKind kind : {SurfaceKind::roof, SurfaceKind::terrace, SurfaceKind::ground})
        surfaces->addAction(tr("%1, drawn by its outline").arg(capital(QString::fromUtf8(text_of(kind)))), this,
                            [this, kind] { draw_surface(kind); });
    surface->setMenu(surfaces);
    auto* obstacle = new QPushButton(tr("Add obstacle"), holder);
    auto* obstacles = new QMenu(obstacle);
    for (const Word<ObstacleUse>& word : words<ObstacleUse>()) {
        const int use = static_cast<int>(word.value);
        obstacles->addAction(capital(QString::fromUtf8(word.text)), this, [this, use] { add_obstacle_at(use); });
    }
    obstacles->addAction(tr("Roof window"), this, &VisitStage::add_roof_window_at);
    obstacles->addSeparator();
    obstacles->addAction(tr("Neighbouring building, drawn by its outline"), this, &VisitStage::draw_neighbour);
    obstacle->setMenu(obstacles);
    auto* spot = new QPushButton(tr("Add spot"), holder);
    spot->setToolTip(tr("Where a cylinder could stand"));
    connect(spot, &QPushButton::clicked, this, &VisitStage::add_spot_at);
    auto* run = new QPushButton(tr("Draw run"), holder);
    run->setToolTip(
        tr("The pipes' way from collector to block: bends, levels, passages. It replaces the run that the "
           "choice on screen has."));
    connect(run, &QPushButton::clicked, this, &VisitStage::draw_run);
    for (QPushButton* button : {house, surface, obstacle, spot, run})
        bar->addWidget(button);
}

void VisitStage::add_views(QWidget* holder, QLayout* bar) {
    plan_button_ = new QPushButton(tr("Plan"), holder);
    plan_button_->setToolTip(tr("The sketch from above"));
    face_button_ = new QPushButton(tr("Face-on"), holder);
    face_button_->setToolTip(tr("The selected surface face-on, to place what lies on it"));
    for (QPushButton* button : {plan_button_, face_button_}) {
        button->setCheckable(true);
        bar->addWidget(button);
    }
    connect(plan_button_, &QPushButton::clicked, this, [this] {
        views_->setCurrentIndex(0);
        refresh_views();
    });
    connect(face_button_, &QPushButton::clicked, this, [this] {
        views_->setCurrentWidget(face_);
        refresh_views();
        face_->setFocus();
    });
    zone_button_ = new QPushButton(tr("Add zone"), holder);
    zone_button_->setToolTip(tr("A part of the surface where nothing is fixed"));
    auto* zones = new QMenu(zone_button_);
    for (const Word<KeepOutKind>& word : words<KeepOutKind>()) {
        const int kind = static_cast<int>(word.value);
        zones->addAction(capital(QString::fromUtf8(word.text)), this, [this, kind] { add_zone_at(kind); });
    }
    zone_button_->setMenu(zones);
    bar->addWidget(zone_button_);
}

void VisitStage::refresh_views() {
    const bool face_on = views_->currentWidget() == face_;
    plan_button_->setChecked(views_->currentIndex() == 0);
    face_button_->setChecked(face_on);
    face_button_->setEnabled(!face_->surface_id().empty());
    zone_button_->setVisible(face_on);
    remove_->setEnabled(face_on ? !face_->selected().empty() : !selected_.empty());
}

void VisitStage::select_on_face(const QString& id) {
    const std::string chosen = id.toStdString();
    refresh_views();
    if (session_ == nullptr) return;
    const Site& site = session_->job().site;
    const std::string surface_id = face_->surface_id();
    const bool obstacle = std::any_of(site.obstacles.begin(), site.obstacles.end(),
                                      [&](const Obstacle& one) { return one.id == chosen; });
    select(obstacle ? chosen : surface_id, true);
    if (!obstacle && !chosen.empty()) surface_editor_->show_surface(session_, surface_id, chosen);
}

void VisitStage::draw_outline(const QString& what, std::function<void(const std::vector<Point2>&)> then) {
    if (session_ == nullptr) return;
    views_->setCurrentIndex(0);
    say({});
    select({}, false);
    const Site& site = session_->job().site;
    std::vector<std::vector<Point2>> others;
    for (const Building& building : site.buildings)
        others.push_back(roof::footprint_of(building));
    for (const Surface& surface : site.surfaces)
        if (surface.footprint_edge_id.empty()) others.push_back(outline_in_plan(surface, site.sketch_up_azimuth_deg));
    for (const Room& room : site.rooms)
        others.push_back(room.outline);
    canvas_->set_tool(std::make_unique<OutlineTool>(what, std::move(others), std::move(then)));
}

void VisitStage::draw_building(BuildingShape shape) {
    draw_outline(tr("Footprint"), [this, shape](const std::vector<Point2>& footprint) {
        const BuildingAdded added = add_building(*session_, footprint, shape);
        say(added.refusal);
        if (!added.id.empty()) select(added.id, true);
    });
}

void VisitStage::draw_surface(SurfaceKind kind) {
    const QString what = kind == SurfaceKind::roof ? tr("Roof plane from its eaves") : tr("Outline");
    draw_outline(what, [this, kind](const std::vector<Point2>& outline) {
        Surface usual = new_surface(kind, outline.front(), session_->job().site);
        const auto plane =
            roof::free_plane(outline, usual.tilt_deg, usual.origin.z_m, session_->job().site.sketch_up_azimuth_deg);
        if (!plane) return say(qs(plane.problems().front().text()));
        Surface surface = plane.value();
        surface.label.clear();
        surface.kind = kind;
        surface.roof_form = usual.roof_form;
        surface.covering = usual.covering;
        select(add_surface(*session_, surface), true);
    });
}

void VisitStage::draw_neighbour() {
    draw_outline(tr("Neighbouring building"), [this](const std::vector<Point2>& outline) {
        Obstacle obstacle = new_obstacle(ObstacleUse::neighbour, outline.front(), session_->job().site);
        obstacle.kind = ObstacleKind::prism;
        obstacle.outline = outline;
        select(add_obstacle(*session_, obstacle), true);
    });
}

void VisitStage::draw_room() {
    draw_outline(tr("Room"), [this](const std::vector<Point2>& outline) {
        Room room;
        room.outline = outline;
        select(add_room(*session_, room), true);
    });
}

void VisitStage::add_surface_at(int kind) {
    if (session_ == nullptr) return;
    views_->setCurrentIndex(0);
    canvas_->ask_point(tr("Click where the middle of the surface lies."), [this, kind](Point2 at) {
        const std::string id =
            add_surface(*session_, new_surface(static_cast<SurfaceKind>(kind), at, session_->job().site));
        select(id, true);
    });
}

void VisitStage::add_obstacle_at(int use) {
    if (session_ == nullptr) return;
    views_->setCurrentIndex(0);
    canvas_->ask_point(tr("Click where the obstacle stands."), [this, use](Point2 at) {
        const std::string id =
            add_obstacle(*session_, new_obstacle(static_cast<ObstacleUse>(use), at, session_->job().site));
        select(id, true);
    });
}

void VisitStage::add_roof_window_at() {
    if (session_ == nullptr) return;
    views_->setCurrentIndex(0);
    canvas_->ask_point(tr("Click the roof window's middle on its roof."), [this](Point2 at) {
        const auto roof = site::roof_over(session_->job().site, at);
        if (!roof) return say(tr("There is no roof there. Draw the house first, or click on a roof plane."));
        say({});
        const std::string surface_id = roof->surface->id;
        const Point2 middle = roof->in_plane;
        const std::string id = add_keep_out(*session_, surface_id, new_keep_out(KeepOutKind::roof_window, middle));
        show_place(qs(id));
    });
}

void VisitStage::add_zone_at(int kind) {
    if (session_ == nullptr || find_surface(session_->job().site, face_->surface_id()) == nullptr) return;
    views_->setCurrentWidget(face_);
    face_->ask_point(tr("Click where the middle of the zone lies."), [this, kind](Point2 at) {
        const std::string id =
            add_keep_out(*session_, face_->surface_id(), new_keep_out(static_cast<KeepOutKind>(kind), at));
        show_place(qs(id));
    });
}

void VisitStage::draw_run() {
    if (session_ == nullptr) return;
    views_->setCurrentIndex(0);
    say({});
    select({}, false);
    // A run belongs to a choice: without one the first proposal is made, as on the Layout stage.
    if (session_->current_choice() == nullptr && add_choice(*session_).empty()) {
        say(tr("There is no equipment to lay a run for."));
        return;
    }
    const Job& job = session_->job();
    const Choice& choice = *session_->current_choice();
    RunTool::Ends ends;
    const CollectorModel* model = find_collector(session_->reference().catalogue, choice.collector_model);
    if (model != nullptr && !choice.placements.empty()) {
        const Placement& first = choice.placements.front();
        if (const Surface* on = find_surface(job.site, first.surface_id))
            ends.collector = site::place(*on, job.site.sketch_up_azimuth_deg, first, *model).connection_in_space;
    }
    if (const CylinderSpot* spot = find_spot(job.site, choice.spot_id)) ends.block = spot->position;
    const auto level = [this](Point2 at) {
        const auto roof = site::roof_over(session_->job().site, at);
        return roof ? roof->height_m : 0.0;
    };
    canvas_->set_tool(std::make_unique<RunTool>(ends, level, [this](const std::vector<RoutePoint>& points) {
        if (session_->current_choice() != nullptr) set_route(*session_, points);
    }));
}

void VisitStage::add_spot_at() {
    if (session_ == nullptr) return;
    views_->setCurrentIndex(0);
    canvas_->ask_point(tr("Click where the cylinder could stand."), [this](Point2 at) {
        const std::string id = add_spot(*session_, new_spot(at));
        select(id, true);
    });
}

}  // namespace wg::ui
