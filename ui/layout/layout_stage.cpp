#include "ui/layout/layout_stage.h"

#include <QButtonGroup>
#include <QCheckBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QStackedWidget>
#include <QTabWidget>
#include <QToolButton>
#include <QVBoxLayout>

#include "ui/common/edits.h"
#include "ui/common/format.h"
#include "ui/common/job_session.h"
#include "ui/comparison/comparison.h"
#include "ui/drawing/site_canvas.h"
#include "ui/layout/collector_panel.h"
#include "ui/layout/equipment_panel.h"
#include "ui/layout/places_panel.h"
#include "ui/layout/run_panel.h"
#include "ui/layout/run_view.h"
#include "ui/layout/shade_bar.h"
#include "ui/layout/shade_note.h"
#include "ui/layout/shade_service.h"
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
    auto* bar = bar_ = new QHBoxLayout;
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
        {View::compare, tr("Compare"), tr("Up to four choices side by side")}};
    for (const auto& one : switches) {
        auto* button = new QToolButton(holder);
        button->setText(one.text);
        button->setToolTip(one.tip);
        button->setCheckable(true);
        views_->addButton(button, static_cast<int>(one.view));
        bar->addWidget(button);
    }
    bar->addStretch(1);
    snap_ = new QCheckBox(tr("Snap"), holder);
    snap_->setToolTip(tr("Hold dragged collectors at rafters, clearances and their neighbours"));
    snap_->setChecked(true);
    shade_bar_ = new ShadeBar(shade_, holder);
    fit_ = new QPushButton(tr("Fit"), holder);
    fit_->setToolTip(tr("Everything in view (F). Wheel zooms, middle button or space pans."));
    bar->addWidget(fit_);
    column->addLayout(bar);
    second_bar_ = new QHBoxLayout;
    second_bar_->setSpacing(8);
    second_bar_->addStretch(1);
    column->addLayout(second_bar_);
    put_options(*bar_);

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

    drawings_ = new QStackedWidget(holder);
    surface_canvas_ = new SurfaceCanvas(shade_, drawings_);
    site_canvas_ = new SiteCanvas(SiteCanvas::Drags::bends, drawings_);
    run_view_ = new RunView(drawings_);
    drawings_->addWidget(surface_canvas_);
    drawings_->addWidget(site_canvas_);
    drawings_->addWidget(run_view_);
    comparison_ = new Comparison(drawings_);
    drawings_->addWidget(comparison_);
    column->addWidget(drawings_, 1);
    return holder;
}

void LayoutStage::put_options(QHBoxLayout& row) {
    int at = &row == bar_ ? bar_->count() - 2 : 0;  // before the stretch
    for (QWidget* one : std::initializer_list<QWidget*>{snap_, shade_bar_})
        row.insertWidget(at++, one);
    options_beside_ = &row == bar_;
}

/// Large lettering or a narrow window: what does not fit beside the views goes below them, before any word is cut.
void LayoutStage::fit_bar() {
    int needed = fit_->sizeHint().width() + snap_->sizeHint().width() + shade_bar_->sizeHint().width();
    for (const QAbstractButton* one : views_->buttons())
        needed += one->sizeHint().width();
    needed += bar_->spacing() * (static_cast<int>(views_->buttons().size()) + 3);
    const bool room = needed <= width() - panels_->minimumWidth() - layout()->spacing();
    if (room != options_beside_) put_options(room ? *bar_ : *second_bar_);
}

void LayoutStage::resizeEvent(QResizeEvent* event) {
    StageWidget::resizeEvent(event);
    fit_bar();
}

void LayoutStage::connect_parts() {
    connect(views_, &QButtonGroup::idClicked, this, [this](int id) { show_view(static_cast<View>(id)); });
    connect(snap_, &QCheckBox::toggled, this, [this](bool on) { surface_canvas_->set_snapping(on); });
    connect(shade_bar_, &ShadeBar::toggled, this, [this](bool on) { surface_canvas_->set_shade_shown(on); });
    connect(fit_, &QPushButton::clicked, this, &LayoutStage::fit_view);
    connect(comparison_, &Comparison::said, this, &StageWidget::status_text);
    connect(surface_canvas_, &Canvas::status, this, &StageWidget::status_text);
    connect(site_canvas_, &Canvas::status, this, &StageWidget::status_text);
    connect(surface_canvas_, &SurfaceCanvas::selection_changed, this,
            [this](const QString& id) { select_placement(id.toStdString()); });
    connect(surface_canvas_, &SurfaceCanvas::move_to_surface, this, &LayoutStage::step_surface);
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
}

void LayoutStage::set_session(JobSession* session) {
    if (session_ != nullptr) disconnect(session_, nullptr, this, nullptr);
    session_ = session;
    shade_->set_session(session);
    surface_canvas_->set_session(session);
    site_canvas_->set_session(session);
    run_view_->set_session(session);
    comparison_->set_session(session);
    collectors_->set_session(session);
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
    std::string selected = surface_canvas_->selected();
    bool known = false;
    if (choice != nullptr) {
        for (const Placement& one : choice->placements)
            known = known || one.id == selected;
    }
    if (!known && !selected.empty()) {
        selected.clear();
        surface_canvas_->set_selected(selected);
    }
    show_state(surface_id, selected);
}

void LayoutStage::show_state(const std::string& surface_id, const std::string& placement_id) {
    collectors_->show_state(surface_id, placement_id);
    shade_note_->show_state(surface_id, placement_id);
}

void LayoutStage::show_surface(const std::string& surface_id) {
    surface_canvas_->set_surface(surface_id);
    show_view(View::surface);
    show_state(surface_id, surface_canvas_->selected());
}

void LayoutStage::select_placement(const std::string& placement_id) {
    const Choice* choice = session_ != nullptr ? session_->current_choice() : nullptr;
    if (choice != nullptr) {
        for (const Placement& one : choice->placements) {
            if (one.id == placement_id && one.surface_id != surface_canvas_->surface_id()) {
                surface_canvas_->set_surface(one.surface_id);
            }
        }
    }
    surface_canvas_->set_selected(placement_id);
    places_->set_moving(placement_id);
    show_state(surface_canvas_->surface_id(), placement_id);
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
    if (QAbstractButton* button = views_->button(static_cast<int>(view))) button->setChecked(true);
    tools_->setCurrentIndex(view == View::surface ? 0 : 1);
    snap_->setVisible(view == View::surface);
    shade_bar_->setVisible(view == View::surface);
    panels_->setVisible(view != View::compare);
    bar_->setContentsMargins(view == View::compare ? 16 : 0, 0, 0, 0);
    fit_->setVisible(view == View::surface || view == View::site_plan);
}

LayoutStage::View LayoutStage::view() const {
    return static_cast<View>(drawings_->currentIndex());
}

void LayoutStage::fit_view() {
    if (view() == View::surface) surface_canvas_->fit();
    if (view() == View::site_plan) site_canvas_->fit();
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
