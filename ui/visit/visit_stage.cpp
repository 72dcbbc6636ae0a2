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
#include "ui/common/edits.h"
#include "ui/common/format.h"
#include "ui/common/job_session.h"
#include "ui/common/theme.h"
#include "ui/drawing/site_canvas.h"
#include "ui/visit/missing.h"
#include "ui/visit/new_elements.h"
#include "ui/visit/obstacle_editor.h"
#include "ui/visit/spot_editor.h"
#include "ui/visit/surface_editor.h"
#include "ui/visit/visit_form.h"

namespace wg::ui {
namespace {

constexpr int sheets_width_digits = 42;  // grows with the font
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
    return sheets_;
}

QWidget* VisitStage::build_sketch() {
    auto* holder = new QWidget(this);
    auto* column = new QVBoxLayout(holder);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(8);
    auto* bar = new QHBoxLayout;
    bar->setSpacing(8);
    auto* surface = new QPushButton(tr("Add surface"), holder);
    auto* surfaces = new QMenu(surface);
    for (const Word<SurfaceKind>& word : words<SurfaceKind>()) {
        const int kind = static_cast<int>(word.value);
        surfaces->addAction(QString::fromUtf8(word.text), this, [this, kind] { add_surface_at(kind); });
    }
    surface->setMenu(surfaces);
    auto* obstacle = new QPushButton(tr("Add obstacle"), holder);
    auto* obstacles = new QMenu(obstacle);
    for (const Word<ObstacleKind>& word : words<ObstacleKind>()) {
        const int kind = static_cast<int>(word.value);
        obstacles->addAction(QString::fromUtf8(word.text), this, [this, kind] { add_obstacle_at(kind); });
    }
    obstacle->setMenu(obstacles);
    auto* spot = new QPushButton(tr("Add spot"), holder);
    spot->setToolTip(tr("Where a cylinder could stand"));
    auto* remove = new QPushButton(tr("Remove"), holder);
    remove->setToolTip(tr("The selected element. Undo brings it back."));
    remove_ = remove;
    auto* fit = new QPushButton(tr("Fit"), holder);
    fit->setToolTip(tr("Everything in view (F). Wheel zooms, middle button or space pans."));
    for (QPushButton* button : {surface, obstacle, spot, remove})
        bar->addWidget(button);
    bar->addStretch(1);
    bar->addWidget(fit);
    column->addLayout(bar);
    canvas_ = new SiteCanvas(SiteCanvas::Drags::elements, holder);
    column->addWidget(canvas_, 1);
    connect(spot, &QPushButton::clicked, this, &VisitStage::add_spot_at);
    connect(remove, &QPushButton::clicked, this, &VisitStage::remove_selected);
    connect(fit, &QPushButton::clicked, canvas_, &Canvas::fit);
    return holder;
}

void VisitStage::set_session(JobSession* session) {
    if (session_ != nullptr) disconnect(session_, nullptr, this, nullptr);
    session_ = session;
    form_->set_session(session);
    canvas_->set_session(session);
    select({}, false);
    setEnabled(session_ != nullptr);
    if (session_ != nullptr) connect(session_, &JobSession::job_changed, this, &VisitStage::refresh);
    refresh_missing();
}

void VisitStage::refresh() {
    select(selected_, false);
    refresh_missing();
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
        }
    }
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

void VisitStage::add_obstacle_at(int kind) {
    if (session_ == nullptr) return;
    canvas_->ask_point(tr("Click where the obstacle stands."), [this, kind](Point2 at) {
        const std::string id =
            add_obstacle(*session_, new_obstacle(static_cast<ObstacleKind>(kind), at, session_->job().site));
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
