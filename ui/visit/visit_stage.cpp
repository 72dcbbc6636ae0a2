#include "ui/visit/visit_stage.h"

#include <QFontMetrics>
#include <QHBoxLayout>
#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QScrollArea>
#include <QStackedWidget>
#include <QTabWidget>
#include <QVBoxLayout>
#include <algorithm>

#include "core/job/words.h"
#include "core/site/standing.h"
#include "ui/common/building_edits.h"
#include "ui/common/edits.h"
#include "ui/common/flow_layout.h"
#include "ui/common/format.h"
#include "ui/common/house_edits.h"
#include "ui/common/job_session.h"
#include "ui/common/theme.h"
#include "ui/drawing/plan_painter.h"
#include "ui/drawing/site_canvas.h"
#include "ui/visit/building_editor.h"
#include "ui/visit/corner_tool.h"
#include "ui/visit/face_canvas.h"
#include "ui/visit/missing.h"
#include "ui/visit/new_elements.h"
#include "ui/visit/obstacle_editor.h"
#include "ui/visit/outline_tool.h"
#include "ui/visit/photo_view.h"
#include "ui/visit/photos_page.h"
#include "ui/visit/room_editor.h"
#include "ui/visit/size_tool.h"
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
    room_editor_ = new RoomEditor(editors_);
    editors_->addWidget(scrolled(room_editor_, editors_));
    connect(form_, &VisitForm::customer_asked, this, &VisitStage::customer_asked);
    connect(form_, &VisitForm::draw_room_wanted, this, &VisitStage::draw_room);
    connect(form_, &VisitForm::room_wanted, this, &VisitStage::show_place);
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
            // What was just unfolded has its place only after the form is laid out again.
            if (QLayout* rows = form_->layout()) rows->activate();
            form_->adjustSize();
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
    // Wide words go on in a further line.
    auto* bar = new FlowLayout;
    bar->setSpacing(8);
    add_menus(holder, bar);
    column->addLayout(bar);
    auto* second = new FlowLayout;
    second->setSpacing(8);
    add_views(holder, second);
    auto* remove = new QPushButton(tr("Remove"), holder);
    remove->setToolTip(tr("The selected element. Undo brings it back."));
    remove_ = remove;
    auto* fit = new QPushButton(tr("Fit"), holder);
    fit->setToolTip(tr("Everything in view (F). Wheel zooms, middle button or space pans."));
    second->addWidget(remove);
    second->addWidget(fit);
    column->addLayout(second);
    refusal_ = new QLabel(holder);
    refusal_->setProperty("role", QStringLiteral("stop"));
    refusal_->setWordWrap(true);
    refusal_->hide();
    column->addWidget(refusal_);
    canvas_ = new SiteCanvas(SiteCanvas::Drags::elements, holder);
    views_ = new QStackedWidget(holder);
    views_->addWidget(canvas_);
    views_->addWidget(build_photo_page(views_));
    face_ = new FaceCanvas(views_);
    views_->addWidget(face_);
    column->addWidget(views_, 1);
    connect(remove, &QPushButton::clicked, this, &VisitStage::remove_selected);
    connect(fit, &QPushButton::clicked, this, [this] {
        if (views_->currentWidget() == face_)
            face_->fit();
        else
            canvas_->fit();
    });
    connect(views_, &QStackedWidget::currentChanged, this, &VisitStage::refresh_views);
    connect(face_, &Canvas::status, this, &StageWidget::status_text);
    connect(face_, &FaceCanvas::selection_changed, this, &VisitStage::select_on_face);
    return holder;
}

void VisitStage::say(const QString& problem) {
    refusal_->setText(problem.isEmpty() ? problem : QStringLiteral("\u25b2 ") + problem);
    refusal_->setVisible(!problem.isEmpty());
}

void VisitStage::offer_handles(const std::string& building_id, const std::string& obstacle_id) {
    auto* corners = dynamic_cast<CornerTool*>(canvas_->tool());
    auto* sizes = dynamic_cast<SizeTool*>(canvas_->tool());
    if (!building_id.empty()) {
        if (corners != nullptr && corners->building_id() == building_id) return;
        canvas_->set_tool(std::make_unique<CornerTool>(*session_, building_id));
    } else if (!obstacle_id.empty()) {
        if (sizes != nullptr && sizes->obstacle_id() == obstacle_id) return;
        canvas_->set_tool(std::make_unique<SizeTool>(*session_, obstacle_id));
    } else if (corners != nullptr || sizes != nullptr) {
        canvas_->set_tool(nullptr);
    }
}

void VisitStage::set_session(JobSession* session) {
    if (session_ != nullptr) disconnect(session_, nullptr, this, nullptr);
    session_ = session;
    form_->set_session(session);
    canvas_->set_session(session);
    face_->set_session(session);
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
        } else if (find_room(site, id) != nullptr) {
            editor = 5;
            room_editor_->show_room(session_, id);
        }
    }
    offer_handles(editor == 4 ? id : std::string(), editor == 2 ? id : std::string());
    editors_->setCurrentIndex(editor);
    remove_->setEnabled(editor != 0);
    // The face-on view keeps the surface that was looked at last, while something on it is selected.
    if (editor == 1) face_->set_surface(id);
    if (editor == 2 && face_->surface_id().empty()) {
        // A chimney chosen first: its roof.
        for (const Obstacle& one : session_->job().site.obstacles) {
            if (one.id != id) continue;
            if (const auto roof = site::roof_over(session_->job().site, {one.base.x_m, one.base.y_m}))
                face_->set_surface(roof->surface->id);
        }
    }
    if (session_ != nullptr && find_surface(session_->job().site, face_->surface_id()) == nullptr) {
        face_->set_surface({});
        if (views_->currentWidget() == face_) views_->setCurrentIndex(0);
    }
    refresh_views();
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

void VisitStage::remove_selected() {
    if (session_ == nullptr) return;
    // Face-on, what is marked on the surface goes; the surface itself only from the plan.
    const bool face_on = views_->currentWidget() == face_;
    const std::string id = face_on ? face_->selected() : selected_;
    if (id.empty()) return;
    if (face_on)
        face_->set_selected({});
    else
        select({}, false);
    remove_element(*session_, id);
}

}  // namespace wg::ui
