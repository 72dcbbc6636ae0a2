#include "ui/visit/visit_stage.h"

#include <QFontMetrics>
#include <QHBoxLayout>
#include <QLabel>
#include <QListWidget>
#include <QMenu>
#include <QPushButton>
#include <QScrollArea>
#include <QStackedWidget>
#include <QTabWidget>
#include <QVBoxLayout>
#include <algorithm>

#include "core/job/words.h"
#include "core/roof/building.h"
#include "core/roof/linked.h"
#include "ui/common/building_edits.h"
#include "ui/common/edits.h"
#include "ui/common/format.h"
#include "ui/common/job_session.h"
#include "ui/common/theme.h"
#include "ui/drawing/plan_painter.h"
#include "ui/drawing/site_canvas.h"
#include "ui/visit/building_editor.h"
#include "ui/visit/corner_tool.h"
#include "ui/visit/missing.h"
#include "ui/visit/new_elements.h"
#include "ui/visit/obstacle_editor.h"
#include "ui/visit/outline_tool.h"
#include "ui/visit/photo_view.h"
#include "ui/visit/photos_page.h"
#include "ui/visit/spot_editor.h"
#include "ui/visit/surface_editor.h"
#include "ui/visit/visit_form.h"

namespace wg::ui {
namespace {

constexpr int sheets_width_digits = 50;  // grows with the font
enum Sheet { sheet_form = 0, sheet_element = 1, sheet_missing = 2 };
constexpr int place_role = Qt::UserRole;
constexpr int field_role = Qt::UserRole + 1;

QScrollArea* scrolled(QWidget* inside, QWidget* parent) {
    auto* area = new QScrollArea(parent);
    area->setWidget(inside);
    area->setWidgetResizable(true);
    area->setFrameShape(QFrame::NoFrame);
    area->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    return area;
}

QString capital(QString word) {
    if (!word.isEmpty()) word[0] = word[0].toUpper();
    return word;
}

}  // namespace

VisitStage::VisitStage(QWidget* parent) : StageWidget(parent) {
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(16);
    row->addWidget(build_sheets());
    row->addWidget(build_sketch(), 1);
    connect(canvas_, &Canvas::status, this, &StageWidget::status_text);
    connect(canvas_, &SiteCanvas::selection_changed, this,
            [this](const QString& id) { select(id.toStdString(), true); });
    connect_photos();
    select({}, false);
}

QWidget* VisitStage::build_sheets() {
    sheets_ = new QTabWidget(this);
    sheets_->setFixedWidth(QFontMetrics(base_font()).horizontalAdvance(QLatin1Char('0')) * sheets_width_digits);
    sheets_->setDocumentMode(true);
    form_ = new VisitForm(sheets_);
    form_area_ = scrolled(form_, sheets_);
    sheets_->addTab(form_area_, tr("Form"));

    editors_ = new QStackedWidget(sheets_);
    nothing_ = new QLabel(tr("Click something in the sketch to see and change what was measured, or add it with the "
                             "buttons above the sketch."),
                          editors_);
    nothing_->setProperty("role", QStringLiteral("muted"));
    nothing_->setWordWrap(true);
    nothing_->setMargin(12);
    nothing_->setAlignment(Qt::AlignTop | Qt::AlignLeft);
    surface_editor_ = new SurfaceEditor(editors_);
    obstacle_editor_ = new ObstacleEditor(editors_);
    spot_editor_ = new SpotEditor(editors_);
    editors_->addWidget(nothing_);
    editors_->addWidget(scrolled(surface_editor_, editors_));
    editors_->addWidget(scrolled(obstacle_editor_, editors_));
    editors_->addWidget(scrolled(spot_editor_, editors_));
    building_editor_ = new BuildingEditor(editors_);
    editors_->addWidget(scrolled(building_editor_, editors_));
    connect(surface_editor_, &SurfaceEditor::building_wanted, this,
            [this](const QString& id) { select(id.toStdString(), true); });
    sheets_->addTab(editors_, tr("Selected"));

    auto* page = new QWidget(sheets_);
    auto* column = new QVBoxLayout(page);
    column->setContentsMargins(12, 12, 12, 12);
    column->setSpacing(8);
    missing_words_ = new QLabel(page);
    missing_words_->setWordWrap(true);
    column->addWidget(missing_words_);
    missing_ = new QListWidget(page);
    missing_->setAccessibleName(tr("Still to measure"));
    missing_->setWordWrap(true);
    missing_->setSpacing(2);
    missing_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    missing_->setResizeMode(QListView::Adjust);
    column->addWidget(missing_, 1);
    connect(missing_, &QListWidget::itemActivated, this, [this](QListWidgetItem* item) {
        const QString place = item->data(place_role).toString();
        const QString field = item->data(field_role).toString();
        if (!place.isEmpty()) {
            show_place(place);
        } else if (field == QStringLiteral("add_surface")) {
            add_surface_at(static_cast<int>(SurfaceKind::roof));
        } else if (field == QStringLiteral("add_spot")) {
            add_spot_at();
        } else if (form_->field(field) != nullptr) {
            sheets_->setCurrentIndex(sheet_form);
            form_->go_to(field);
            form_area_->ensureWidgetVisible(form_->field(field));
        }
    });
    connect(missing_, &QListWidget::itemClicked, missing_, &QListWidget::itemActivated);
    sheets_->addTab(page, tr("To measure"));
    photos_ = new PhotosPage(sheets_);
    sheets_->addTab(scrolled(photos_, sheets_), tr("Photos"));
    return sheets_;
}

QWidget* VisitStage::build_sketch() {
    auto* holder = new QWidget(this);
    auto* column = new QVBoxLayout(holder);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(8);
    auto* bar = new QHBoxLayout;
    bar->setSpacing(8);
    add_menus(holder, bar);
    auto* remove = new QPushButton(tr("Remove"), holder);
    remove->setToolTip(tr("The selected element. Undo brings it back."));
    remove_ = remove;
    auto* fit = new QPushButton(tr("Fit"), holder);
    fit->setToolTip(tr("Everything in view (F). Wheel zooms, middle button or space pans."));
    bar->addWidget(remove);
    bar->addStretch(1);
    bar->addWidget(fit);
    column->addLayout(bar);
    refusal_ = new QLabel(holder);
    refusal_->setProperty("role", QStringLiteral("stop"));
    refusal_->setWordWrap(true);
    refusal_->hide();
    column->addWidget(refusal_);
    canvas_ = new SiteCanvas(SiteCanvas::Drags::elements, holder);
    views_ = new QStackedWidget(holder);
    views_->addWidget(canvas_);
    views_->addWidget(build_photo_page(views_));
    column->addWidget(views_, 1);
    connect(remove, &QPushButton::clicked, this, &VisitStage::remove_selected);
    connect(fit, &QPushButton::clicked, canvas_, &Canvas::fit);
    return holder;
}

void VisitStage::add_menus(QWidget* holder, QHBoxLayout* bar) {
    auto* house = new QPushButton(tr("Draw house"), holder);
    house->setToolTip(tr("A footprint by clicks or typed lengths; roof planes and walls are made from it."));
    auto* houses = new QMenu(house);
    for (const Word<BuildingShape>& word : words<BuildingShape>()) {
        const BuildingShape shape = word.value;
        houses->addAction(tr("With %1").arg(QString::fromUtf8(word.text)), this,
                          [this, shape] { draw_building(shape); });
    }
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
    obstacles->addSeparator();
    obstacles->addAction(tr("Neighbouring building, drawn by its outline"), this, &VisitStage::draw_neighbour);
    obstacle->setMenu(obstacles);
    auto* spot = new QPushButton(tr("Add spot"), holder);
    spot->setToolTip(tr("Where a cylinder could stand"));
    connect(spot, &QPushButton::clicked, this, &VisitStage::add_spot_at);
    for (QPushButton* button : {house, surface, obstacle, spot})
        bar->addWidget(button);
}

void VisitStage::say(const QString& problem) {
    refusal_->setText(problem.isEmpty() ? problem : QStringLiteral("\u25b2 ") + problem);
    refusal_->setVisible(!problem.isEmpty());
}

void VisitStage::draw_outline(const QString& what, std::function<void(const std::vector<Point2>&)> then) {
    if (session_ == nullptr) return;
    say({});
    select({}, false);
    const Site& site = session_->job().site;
    std::vector<std::vector<Point2>> others;
    for (const Building& building : site.buildings)
        others.push_back(roof::footprint_of(building));
    for (const Surface& surface : site.surfaces)
        if (surface.footprint_edge_id.empty()) others.push_back(outline_in_plan(surface, site.sketch_up_azimuth_deg));
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

void VisitStage::edit_corners(const std::string& building_id) {
    auto* corners = dynamic_cast<CornerTool*>(canvas_->tool());
    if (building_id.empty()) {
        if (corners != nullptr) canvas_->set_tool(nullptr);
        return;
    }
    if (corners != nullptr && corners->building_id() == building_id) return;
    canvas_->set_tool(std::make_unique<CornerTool>(*session_, building_id));
}

void VisitStage::set_session(JobSession* session) {
    if (session_ != nullptr) disconnect(session_, nullptr, this, nullptr);
    session_ = session;
    form_->set_session(session);
    canvas_->set_session(session);
    photos_->set_session(session);
    views_->setCurrentIndex(0);
    select({}, false);
    setEnabled(session_ != nullptr);
    if (session_ != nullptr) connect(session_, &JobSession::job_changed, this, &VisitStage::refresh);
    refresh_missing();
}

void VisitStage::refresh() {
    select(selected_, false);
    refresh_missing();
    photos_->refresh();
    if (find_photograph(session_->job(), photos_->chosen()) == nullptr) views_->setCurrentIndex(0);
    photo_view_->update();
}

void VisitStage::refresh_missing() {
    missing_->clear();
    if (session_ == nullptr) return;
    const std::vector<Missing> list = still_to_measure(session_->job());
    for (const Missing& one : list) {
        auto* item =
            new QListWidgetItem(one.what + QStringLiteral("\n") + tr("until then: %1").arg(one.until_then), missing_);
        item->setData(place_role, qs(one.place_id));
        item->setData(field_role, one.field);
    }
    missing_words_->setText(list.empty() ? tr("Nothing is missing that the plan asks for.")
                                         : tr("Click a line to go where it is entered."));
    sheets_->setTabText(sheet_missing, list.empty() ? tr("To measure") : tr("To measure (%1)").arg(list.size()));
}

void VisitStage::select(const std::string& id, bool bring_forward) {
    selected_ = id;
    canvas_->set_selected(id);
    int editor = 0;
    if (session_ != nullptr && !id.empty()) {
        const Site& site = session_->job().site;
        if (find_surface(site, id) != nullptr) {
            editor = 1;
            surface_editor_->show_surface(session_, id);
        } else if (find_spot(site, id) != nullptr) {
            editor = 3;
            spot_editor_->show_spot(session_, id);
        } else if (std::any_of(site.obstacles.begin(), site.obstacles.end(),
                               [&](const Obstacle& o) { return o.id == id; })) {
            editor = 2;
            obstacle_editor_->show_obstacle(session_, id);
        } else if (find_building(site, id) != nullptr) {
            editor = 4;
            building_editor_->show_building(session_, id);
        }
    }
    edit_corners(editor == 4 ? id : std::string());
    editors_->setCurrentIndex(editor);
    remove_->setEnabled(editor != 0);
    if (bring_forward && editor != 0) sheets_->setCurrentIndex(sheet_element);
}

void VisitStage::show_place(const QString& place_id) {
    if (session_ == nullptr) return;
    const std::string id = place_id.toStdString();
    for (const Surface& surface : session_->job().site.surfaces) {
        for (const KeepOut& zone : surface.keep_outs) {
            if (zone.id != id) continue;
            select(surface.id, true);
            surface_editor_->show_surface(session_, surface.id, id);
            return;
        }
    }
    select(id, true);
}

void VisitStage::add_surface_at(int kind) {
    if (session_ == nullptr) return;
    canvas_->ask_point(tr("Click where the middle of the surface lies."), [this, kind](Point2 at) {
        const std::string id =
            add_surface(*session_, new_surface(static_cast<SurfaceKind>(kind), at, session_->job().site));
        select(id, true);
    });
}

void VisitStage::add_obstacle_at(int use) {
    if (session_ == nullptr) return;
    canvas_->ask_point(tr("Click where the obstacle stands."), [this, use](Point2 at) {
        const std::string id =
            add_obstacle(*session_, new_obstacle(static_cast<ObstacleUse>(use), at, session_->job().site));
        select(id, true);
    });
}

void VisitStage::add_spot_at() {
    if (session_ == nullptr) return;
    canvas_->ask_point(tr("Click where the cylinder could stand."), [this](Point2 at) {
        const std::string id = add_spot(*session_, new_spot(at));
        select(id, true);
    });
}

void VisitStage::remove_selected() {
    if (session_ == nullptr || selected_.empty()) return;
    const std::string id = selected_;
    select({}, false);
    remove_element(*session_, id);
}

}  // namespace wg::ui
