#include "ui/layout/layout_stage.h"

#include <QButtonGroup>
#include <QCheckBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QSplitter>
#include <QStackedWidget>
#include <QTabWidget>
#include <QToolButton>
#include <QVBoxLayout>
#include <algorithm>

#include "ui/common/edits.h"
#include "ui/common/flow_layout.h"
#include "ui/common/format.h"
#include "ui/common/job_session.h"
#include "ui/comparison/comparison.h"
#include "ui/drawing/site_canvas.h"
#include "ui/layout/collector_panel.h"
#include "ui/layout/equipment_panel.h"
#include "ui/layout/house_canvas.h"
#include "ui/layout/house_pane.h"
#include "ui/layout/places_panel.h"
#include "ui/layout/points_box.h"
#include "ui/layout/run_panel.h"
#include "ui/layout/run_view.h"
#include "ui/layout/shade_bar.h"
#include "ui/layout/shade_note.h"
#include "ui/layout/shade_service.h"
#include "ui/layout/sun_path_pane.h"
#include "ui/layout/surface_canvas.h"

namespace wg::ui {
namespace {

constexpr int tools_width = 296;

QScrollArea* scrolled(QWidget* inside, QWidget* parent) {
    auto* area = new QScrollArea(parent);
    area->setWidget(inside);
    area->setWidgetResizable(true);
    area->setFrameShape(QFrame::NoFrame);
    area->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    return area;
}

}  // namespace

LayoutStage::LayoutStage(QWidget* parent) : StageWidget(parent) {
    shade_ = new ShadeService(this);
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(16);
    row->addWidget(build_tools());
    row->addWidget(build_drawing(), 1);
    connect_parts();
    show_view(View::surface);
}

QWidget* LayoutStage::build_tools() {
    auto* tabs = panels_ = new QTabWidget(this);
    tabs->setFixedWidth(tools_width);
    tabs->setDocumentMode(true);
    collectors_ = new CollectorPanel(tabs);
    points_ = new PointsBox(collectors_);
    collectors_->layout()->addWidget(points_);
    shade_note_ = new ShadeNote(shade_, collectors_);
    collectors_->layout()->addWidget(shade_note_);
    equipment_ = new EquipmentPanel(tabs);
    run_panel_ = new RunPanel(tabs);
    tools_ = new QStackedWidget(tabs);
    const auto page = [this](QWidget* panel) {
        auto* holder = new QWidget(tools_);
        auto* column = new QVBoxLayout(holder);
        column->setContentsMargins(12, 12, 12, 12);
        column->addWidget(panel);
        column->addStretch(1);
        return scrolled(holder, tools_);
    };
    tools_->addWidget(page(collectors_));
    tools_->addWidget(page(run_panel_));
    tabs->addTab(tools_, tr("Place"));
    auto* equipment_page = page(equipment_);
    tabs->addTab(equipment_page, tr("Equipment"));
    places_ = new PlacesPanel(tabs);
    tabs->addTab(page(places_), tr("Find"));
    return tabs;
}

QWidget* LayoutStage::build_drawing() {
    auto* holder = new QWidget(this);
    auto* column = new QVBoxLayout(holder);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(8);
    auto* bar = bar_ = new FlowLayout;
    bar->setSpacing(8);
    views_ = new QButtonGroup(this);
    views_->setExclusive(true);
    const struct {
        View view;
        QString text;
        QString tip;
    } switches[] = {
        {View::surface, tr("Surface"), tr("One surface seen face-on")},
        {View::site_plan, tr("Site plan"), tr("Everything seen from above; the run's bends are moved here")},
        {View::run, tr("Run"), tr("The pipe run in space with its lengths")},
        {View::house, tr("House"), tr("Everything in space, with the sun and shadows of any date and hour")},
        {View::compare, tr("Compare"), tr("Up to four choices side by side")}};
    for (const auto& one : switches) {
        auto* button = new QToolButton(holder);
        button->setText(one.text);
        button->setToolTip(one.tip);
        button->setCheckable(true);
        views_->addButton(button, static_cast<int>(one.view));
        bar->addWidget(button);
    }
    snap_ = new QCheckBox(tr("Snap"), holder);
    snap_->setToolTip(tr("Hold dragged collectors at rafters, clearances and their neighbours"));
    snap_->setChecked(true);
    bar->addWidget(snap_);
    shade_bar_ = new ShadeBar(shade_, holder);
    bar->addWidget(shade_bar_);
    zones_box_ = new QCheckBox(tr("Wind zones"), holder);
    zones_box_->setToolTip(tr("Zones of EN 1991-1-4 from which each plate's suction is taken, with their widths"));
    bar->addWidget(zones_box_);
    sun_path_box_ = new QCheckBox(tr("Sun path"), holder);
    sun_path_box_->setToolTip(tr("The sun's way over the selected collector, with what stands in front of it"));
    bar->addWidget(sun_path_box_);
    fit_ = new QPushButton(tr("Fit"), holder);
    fit_->setToolTip(tr("Everything in view (F). Wheel zooms, middle button or space pans."));
    bar->addWidget(fit_);
    column->addLayout(bar);

    no_choice_ = new QWidget(holder);
    auto* first = new QHBoxLayout(no_choice_);
    first->setContentsMargins(0, 0, 0, 0);
    first->addWidget(new QLabel(tr("No choice of equipment yet."), no_choice_));
    auto* begin = new QPushButton(tr("Propose a first choice"), no_choice_);
    begin->setProperty("role", QStringLiteral("primary"));
    first->addWidget(begin);
    first->addStretch(1);
    column->addWidget(no_choice_);
    connect(begin, &QPushButton::clicked, this, [this] {
        if (session_ != nullptr) add_choice(*session_);
    });

    auto* parts = new QSplitter(Qt::Vertical, holder);
    parts->setChildrenCollapsible(false);
    drawings_ = new QStackedWidget(parts);
    surface_canvas_ = new SurfaceCanvas(shade_, drawings_);
    site_canvas_ = new SiteCanvas(SiteCanvas::Drags::bends, drawings_);
    run_view_ = new RunView(drawings_);
    drawings_->addWidget(surface_canvas_);
    drawings_->addWidget(site_canvas_);
    drawings_->addWidget(run_view_);
    house_ = new HousePane(drawings_);
    drawings_->addWidget(house_);
    comparison_ = new Comparison(drawings_);
    drawings_->addWidget(comparison_);
    sun_path_ = new SunPathPane(parts);
    sun_path_->hide();
    parts->addWidget(drawings_);
    parts->addWidget(sun_path_);
    parts->setStretchFactor(0, 3);
    parts->setStretchFactor(1, 2);
    column->addWidget(parts, 1);
    return holder;
}

void LayoutStage::connect_parts() {
    connect(views_, &QButtonGroup::idClicked, this, [this](int id) { show_view(static_cast<View>(id)); });
    connect(snap_, &QCheckBox::toggled, this, [this](bool on) { surface_canvas_->set_snapping(on); });
    connect(shade_bar_, &ShadeBar::toggled, this, [this](bool on) { surface_canvas_->set_shade_shown(on); });
    connect(zones_box_, &QCheckBox::toggled, this, [this](bool on) { surface_canvas_->set_zones_shown(on); });
    connect(fit_, &QPushButton::clicked, this, &LayoutStage::fit_view);
    connect(comparison_, &Comparison::said, this, &StageWidget::status_text);
    connect(surface_canvas_, &Canvas::status, this, &StageWidget::status_text);
    connect(site_canvas_, &Canvas::status, this, &StageWidget::status_text);
    connect(surface_canvas_, &SurfaceCanvas::selection_changed, this, &LayoutStage::after_selection);
    connect(collectors_, &CollectorPanel::placements_chosen, this, &LayoutStage::select_placements);
    connect(collectors_, &CollectorPanel::said, this, &StageWidget::status_text);
    connect(surface_canvas_, &SurfaceCanvas::move_to_surface, this, &LayoutStage::step_surface);
    connect(surface_canvas_, &SurfaceCanvas::point_working_asked, this, &StageWidget::point_working_asked);
    connect(surface_canvas_, &SurfaceCanvas::point_chosen, points_,
            [this](const QString& id, int number) { points_->mark(id.toStdString(), number); });
    connect(points_, &PointsBox::working_asked, this, &StageWidget::point_working_asked);
    connect(points_, &PointsBox::point_chosen, this,
            [this](const QString& id, int number) { surface_canvas_->mark_point(id.toStdString(), number); });
    connect(collectors_, &CollectorPanel::surface_chosen, this,
            [this](const QString& id) { show_surface(id.toStdString()); });
    connect(collectors_, &CollectorPanel::placement_chosen, this,
            [this](const QString& id) { select_placement(id.toStdString()); });
    connect(places_, &PlacesPanel::proposals_changed, surface_canvas_,
            [this] { surface_canvas_->set_proposals(places_->proposals()); });
    connect(places_, &PlacesPanel::surface_wanted, this, [this](const QString& id) { show_surface(id.toStdString()); });
    connect(places_, &PlacesPanel::placement_put, this,
            [this](const QString& id) { select_placement(id.toStdString()); });
    connect(site_canvas_, &SiteCanvas::selection_changed, this,
            [this](const QString& id) { run_panel_->show_selected(id.toStdString()); });
    connect(run_panel_, &RunPanel::point_chosen, this,
            [this](const QString& id) { site_canvas_->set_selected(id.toStdString()); });
    connect_house();
}

void LayoutStage::connect_house() {
    HouseCanvas* house = house_->canvas();
    connect(house, &Canvas::status, this, &StageWidget::status_text);
    connect(house, &HouseCanvas::collector_clicked, this,
            [this](const QString& id) { select_placement(id.toStdString()); });
    connect(house, &HouseCanvas::surface_clicked, this, [this](const QString& id) {
        surface_canvas_->set_surface(id.toStdString());
        select_placement({});
    });
    connect(house, &HouseCanvas::surface_opened, this, [this](const QString& id) { show_surface(id.toStdString()); });
    connect(sun_path_box_, &QCheckBox::toggled, this, &LayoutStage::show_sun_path);
    connect(sun_path_, &SunPathPane::pointed_at, this, &StageWidget::status_text);
    connect(house_, &HousePane::moment_changed, this, [this] { sun_path_->set_moment(house_->moment()); });
}

void LayoutStage::set_session(JobSession* session) {
    if (session_ != nullptr) disconnect(session_, nullptr, this, nullptr);
    session_ = session;
    shade_->set_session(session);
    surface_canvas_->set_session(session);
    site_canvas_->set_session(session);
    run_view_->set_session(session);
    house_->set_session(session);
    sun_path_->set_session(session);
    comparison_->set_session(session);
    collectors_->set_session(session);
    points_->set_session(session);
    shade_note_->set_session(session);
    equipment_->set_session(session);
    places_->set_session(session);
    run_panel_->set_session(session);
    if (session_ != nullptr) {
        connect(session_, &JobSession::job_changed, this, &LayoutStage::after_job_change);
        connect(session_, &JobSession::choice_changed, this, [this] {
            surface_canvas_->set_surface({});
            after_job_change();
        });
    }
    after_job_change();
}

void LayoutStage::after_job_change() {
    const Choice* choice = session_ != nullptr ? session_->current_choice() : nullptr;
    no_choice_->setVisible(session_ != nullptr && choice == nullptr);
    if (session_ == nullptr) return;
    const Site& site = session_->job().site;
    std::string surface_id = surface_canvas_->surface_id();
    if (find_surface(site, surface_id) == nullptr) {
        // The surface that carries the first collector tells most; else the first there is.
        surface_id.clear();
        if (choice != nullptr && !choice->placements.empty()) surface_id = choice->placements.front().surface_id;
        if (find_surface(site, surface_id) == nullptr && !site.surfaces.empty()) surface_id = site.surfaces.front().id;
        surface_canvas_->set_surface(surface_id);
    }
    std::vector<std::string> selected = surface_canvas_->selection();
    const auto gone = [choice](const std::string& id) {
        return choice == nullptr || std::none_of(choice->placements.begin(), choice->placements.end(),
                                                 [&id](const Placement& one) { return one.id == id; });
    };
    selected.erase(std::remove_if(selected.begin(), selected.end(), gone), selected.end());
    surface_canvas_->set_selection(selected);
    show_state(surface_id);
}

void LayoutStage::show_state(const std::string& surface_id) {
    collectors_->show_state(surface_id, surface_canvas_->selection());
    points_->show_surface(surface_id);
    house_->canvas()->set_selected(surface_id, surface_canvas_->selected());
    sun_path_->set_placement(surface_canvas_->selected());
    shade_note_->show_state(surface_id, surface_canvas_->selected());
}

void LayoutStage::after_selection() {
    places_->set_moving(surface_canvas_->selected());
    show_state(surface_canvas_->surface_id());
}

void LayoutStage::select_placements(const QStringList& placement_ids) {
    const Choice* choice = session_ != nullptr ? session_->current_choice() : nullptr;
    if (choice == nullptr) return;
    if (placement_ids.isEmpty()) {
        surface_canvas_->set_selection({});
        after_selection();
        return;
    }
    // What is selected together lies on one surface: that of the last one.
    const auto surface_of = [choice](const QString& id) {
        for (const Placement& one : choice->placements) {
            if (one.id == id.toStdString()) return one.surface_id;
        }
        return std::string();
    };
    const std::string on = surface_of(placement_ids.back());
    std::vector<std::string> ids;
    for (const QString& id : placement_ids) {
        if (surface_of(id) == on) ids.push_back(id.toStdString());
    }
    surface_canvas_->set_surface(on);
    surface_canvas_->set_selection(ids);
    after_selection();
}

void LayoutStage::show_surface(const std::string& surface_id) {
    surface_canvas_->set_surface(surface_id);
    show_view(View::surface);
    show_state(surface_id);
}

void LayoutStage::select_placement(const std::string& placement_id) {
    select_placements(placement_id.empty() ? QStringList() : QStringList{qs(placement_id)});
}

void LayoutStage::step_surface(int direction) {
    if (session_ == nullptr) return;
    const std::vector<Surface>& surfaces = session_->job().site.surfaces;
    const int count = static_cast<int>(surfaces.size());
    for (int i = 0; i < count; ++i) {
        if (surfaces[static_cast<std::size_t>(i)].id != surface_canvas_->surface_id()) continue;
        const std::string to = surfaces[static_cast<std::size_t>((i + direction + count) % count)].id;
        const std::string moved = surface_canvas_->selected();
        if (!moved.empty()) move_placement_to_surface(*session_, moved, to);
        show_surface(to);
        surface_canvas_->setFocus();
        return;
    }
}

void LayoutStage::show_view(View view) {
    drawings_->setCurrentIndex(static_cast<int>(view));
    Q_EMIT status_text({});  // what the hand did on another drawing is no news here
    if (QAbstractButton* button = views_->button(static_cast<int>(view))) button->setChecked(true);
    tools_->setCurrentIndex(view == View::surface || view == View::house ? 0 : 1);
    snap_->setVisible(view == View::surface);
    shade_bar_->setVisible(view == View::surface);
    zones_box_->setVisible(view == View::surface);
    sun_path_box_->setVisible(view != View::compare);
    sun_path_->setVisible(view != View::compare && sun_path_box_->isChecked());
    panels_->setVisible(view != View::compare);
    bar_->setContentsMargins(view == View::compare ? 16 : 0, 0, 0, 0);
    fit_->setVisible(view == View::surface || view == View::site_plan || view == View::house);
    // The hour of the house view means something only while its sliders are in sight.
    sun_path_->set_moment(view == View::house ? std::optional(house_->moment()) : std::nullopt);
}

void LayoutStage::show_sun_path(bool on) {
    sun_path_box_->setChecked(on);
    sun_path_->setVisible(on && view() != View::compare);
}

LayoutStage::View LayoutStage::view() const {
    return static_cast<View>(drawings_->currentIndex());
}

void LayoutStage::fit_view() {
    if (view() == View::surface) surface_canvas_->fit();
    if (view() == View::site_plan) site_canvas_->fit();
    if (view() == View::house) house_->canvas()->fit_everything();
}

void LayoutStage::show_place(const QString& place_id) {
    if (session_ == nullptr || place_id.isEmpty()) return;
    const std::string id = place_id.toStdString();
    const Site& site = session_->job().site;
    if (find_surface(site, id) != nullptr) {
        show_surface(id);
        return;
    }
    for (const Surface& surface : site.surfaces) {
        for (const KeepOut& zone : surface.keep_outs) {
            if (zone.id == id) {
                show_surface(surface.id);
                return;
            }
        }
    }
    const Choice* choice = session_->current_choice();
    if (choice == nullptr) return;
    for (const Placement& one : choice->placements) {
        if (one.id == id) {
            show_view(View::surface);
            select_placement(id);
            surface_canvas_->setFocus();
            return;
        }
    }
    for (const RoutePoint& point : choice->route) {
        if (point.id == id) {
            show_view(View::site_plan);
            site_canvas_->set_selected(id);
            run_panel_->show_selected(id);
            site_canvas_->setFocus();
            return;
        }
    }
    if (find_spot(site, id) != nullptr) show_view(View::site_plan);
}

}  // namespace wg::ui
