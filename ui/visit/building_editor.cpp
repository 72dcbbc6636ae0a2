#include "ui/visit/building_editor.h"

#include <QHeaderView>
#include <QPushButton>
#include <QTableWidget>
#include <algorithm>
#include <cmath>

#include "core/roof/linked.h"
#include "core/sketch/typed.h"
#include "ui/common/building_edits.h"
#include "ui/common/format.h"
#include "ui/common/job_session.h"

namespace wg::ui {
namespace {

enum Column { column_length, column_faces, column_gable, columns };

QString edge_words(const Building& building, std::size_t edge) {
    const Point2& a = building.edges[edge].from;
    const Point2& b = building.edges[(edge + 1) % building.edges.size()].from;
    return QObject::tr("Edge %1, %2")
        .arg(QString::number(edge + 1), length_m(std::hypot(b.x_m - a.x_m, b.y_m - a.y_m)));
}

bool one_slope(BuildingShape shape) {
    return shape == BuildingShape::mono_pitch || shape == BuildingShape::lean_to;
}

}  // namespace

BuildingEditor::BuildingEditor(QWidget* parent) : FormColumn(parent) {
    heading(tr("Building"));
    problem_ = new QLabel(this);
    problem_->setWordWrap(true);
    problem_->setProperty("role", QStringLiteral("stop"));
    add(problem_);
    TextField* label = text(tr("Name"), [this](const QString& value) {
        apply([&](Building& b) { b.label = value.trimmed().toStdString(); });
    });
    shows_.push_back([label](const Building& b) { label->set_value(qs(b.label)); });
    build_roof();
    build_edges();
    made_ = new QLabel(this);
    made_->setWordWrap(true);
    made_->setProperty("role", QStringLiteral("muted"));
    add(made_);
    auto* release = new QPushButton(tr("Free the planes"), this);
    release->setToolTip(
        tr("Keeps roof planes and walls as they are and forgets the footprint, so that each can be changed "
           "by itself."));
    connect(release, &QPushButton::clicked, this, [this] {
        if (session_ != nullptr) say(release_building(*session_, building_id_));
    });
    add(release);
    finish();
    say({});
}

NumberField* BuildingEditor::measured(const QString& label, const NumberField::Range& range, double Building::*member) {
    NumberField* field = number(label, tr("m"), range, [this, member](std::optional<double> value) {
        if (value) apply([&](Building& b) { b.*member = *value; });
    });
    shows_.push_back([field, member](const Building& b) { field->set_value(b.*member); });
    return field;
}

void BuildingEditor::build_roof() {
    shape_ = words_of<BuildingShape>(tr("Roof"), [this](BuildingShape value) {
        apply([&](Building& b) {
            b.shape = value;
            if (value != BuildingShape::gable)
                for (FootprintEdge& edge : b.edges)
                    edge.gable = false;
        });
    });
    shows_.push_back([this](const Building& b) { shape_->show_data(QString::fromLatin1(key_of(b.shape))); });
    pitch_ = text(tr("Pitch: degrees, or rise over run as 7:12 or 70 %"),
                  [this](const QString& typed) { pitch_typed(typed); });
    shows_.push_back([this](const Building& b) {
        pitch_->set_value(QString::number(b.pitch_deg, 'f', 1) + QStringLiteral("\u00b0"));
    });
    sloped_fields_.push_back(pitch_);
    pair_next();
    measured(tr("Eaves over ground"), {1.0, 60.0, 2, 0.05, false}, &Building::eaves_m);
    ridge_ =
        number(tr("Ridge over ground"), tr("m"), {1.0, 200.0, 2, 0.05, false}, [this](std::optional<double> value) {
            if (value) ridge_typed(*value);
        });
    sloped_fields_.push_back(ridge_);
    pair_next();
    sloped_fields_.push_back(measured(tr("Overhang, eaves"), {0.0, 2.0, 2, 0.05, false}, &Building::overhang_m));
    sloped_fields_.push_back(measured(tr("Overhang, gables"), {0.0, 2.0, 2, 0.05, false}, &Building::verge_m));
    pair_next();
    flat_fields_.push_back(measured(tr("Parapet height"), {0.0, 3.0, 2, 0.05, false}, &Building::parapet_m));
    flat_fields_.push_back(measured(tr("Parapet width"), {0.05, 1.0, 2, 0.05, false}, &Building::parapet_width_m));
    low_edge_ = choice(tr("Low edge"),
                       [this](const QString& id) { apply([&](Building& b) { b.low_edge_id = id.toStdString(); }); });
    CalmCombo* covering = words_of<Covering>(
        tr("Roof covering"), [this](Covering value) { apply([&](Building& b) { b.covering = value; }); });
    shows_.push_back([covering](const Building& b) { covering->show_data(QString::fromLatin1(key_of(b.covering))); });
    CalmCombo* walls = words_of<Covering>(
        tr("Walls"), [this](Covering value) { apply([&](Building& b) { b.wall_covering = value; }); });
    shows_.push_back([walls](const Building& b) { walls->show_data(QString::fromLatin1(key_of(b.wall_covering))); });
}

void BuildingEditor::build_edges() {
    heading(tr("Edges of the footprint"));
    edges_ = new QTableWidget(0, columns, this);
    edges_->setHorizontalHeaderLabels({tr("Length, m"), tr("Wall faces"), tr("Gable")});
    edges_->setAccessibleName(tr("Edges of the footprint"));
    edges_->horizontalHeader()->setSectionResizeMode(QHeaderView::Stretch);
    edges_->setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    edges_->setTabKeyNavigation(false);
    add(edges_);
    connect(edges_, &QTableWidget::cellChanged, this, &BuildingEditor::edge_edited);
}

const Building* BuildingEditor::building() const {
    return session_ != nullptr ? find_building(session_->job().site, building_id_) : nullptr;
}

QString BuildingEditor::problem() const {
    return problem_->text();
}

void BuildingEditor::say(const QString& problem) {
    problem_->setText(problem.isEmpty() ? problem : QStringLiteral("\u25b2 ") + problem);
    problem_->setVisible(!problem.isEmpty());
}

void BuildingEditor::apply(const std::function<void(Building&)>& change) {
    const Building* now = building();
    if (now == nullptr) return;
    Building changed = *now;
    change(changed);
    say(set_building(*session_, changed));
    refresh();
}

void BuildingEditor::pitch_typed(const QString& typed) {
    const auto angle = sketch::angle_deg(typed.toStdString());
    if (!angle) return say(qs(angle.problems().front().text()));
    apply([&](Building& b) { b.pitch_deg = angle.value(); });
}

void BuildingEditor::ridge_typed(double ridge_m) {
    const Building* now = building();
    if (now == nullptr) return;
    const auto pitch = roof::pitch_for_ridge(*now, ridge_m);
    if (!pitch) return say(qs(pitch.problems().front().text()));
    apply([&](Building& b) { b.pitch_deg = pitch.value(); });
}

void BuildingEditor::edge_edited(int row, int column) {
    const Building* now = building();
    if (filling_ || now == nullptr || row < 0 || static_cast<std::size_t>(row) >= now->edges.size()) return;
    const auto edge = static_cast<std::size_t>(row);
    if (column == column_gable) {
        const bool gable = edges_->item(row, column)->checkState() == Qt::Checked;
        apply([&](Building& b) {
            // The usual gables stand until the first is set by hand.
            const auto ordered = roof::counter_clockwise(roof::footprint_of(b));
            if (std::none_of(b.edges.begin(), b.edges.end(), [](const FootprintEdge& e) { return e.gable; }))
                for (const std::size_t usual : roof::usual_gables(ordered.footprint))
                    b.edges[ordered.edges[usual]].gable = true;
            b.edges[edge].gable = gable;
        });
        return;
    }
    const auto length = sketch::length_m(edges_->item(row, column)->text().toStdString());
    if (!length) {
        say(qs(length.problems().front().text()));
    } else {
        const auto changed = roof::with_edge_length(*now, edge, length.value());
        say(changed ? set_building(*session_, changed.value()) : qs(changed.problems().front().text()));
    }
    refresh();
}

void BuildingEditor::fill_edges(const Building& building) {
    filling_ = true;
    const int count = static_cast<int>(building.edges.size());
    edges_->setRowCount(count);
    const auto ordered = roof::counter_clockwise(roof::footprint_of(building));
    std::vector<bool> gable(building.edges.size(), false);
    bool set_by_hand = false;
    for (std::size_t i = 0; i < building.edges.size(); ++i) {
        gable[i] = building.edges[i].gable;
        set_by_hand = set_by_hand || gable[i];
    }
    if (!set_by_hand)
        for (const std::size_t usual : roof::usual_gables(ordered.footprint))
            gable[ordered.edges[usual]] = true;
    for (int row = 0; row < count; ++row) {
        const auto edge = static_cast<std::size_t>(row);
        const Point2& a = building.edges[edge].from;
        const Point2& b = building.edges[(edge + 1) % building.edges.size()].from;
        auto* length = new QTableWidgetItem(QString::number(std::hypot(b.x_m - a.x_m, b.y_m - a.y_m), 'f', 3));
        length->setTextAlignment(Qt::AlignRight | Qt::AlignVCenter);
        length->setToolTip(tr("Type the length; the next edge moves along, so that the angles stay."));
        auto* faces = new QTableWidgetItem(
            bearing(roof::wall_faces_deg(building, edge, session_->job().site.sketch_up_azimuth_deg)));
        faces->setFlags(Qt::ItemIsEnabled);
        auto* ends = new QTableWidgetItem;
        ends->setFlags(building.shape == BuildingShape::gable ? Qt::ItemIsEnabled | Qt::ItemIsUserCheckable
                                                              : Qt::ItemFlags(Qt::NoItemFlags));
        if (building.shape == BuildingShape::gable) ends->setCheckState(gable[edge] ? Qt::Checked : Qt::Unchecked);
        edges_->setItem(row, column_length, length);
        edges_->setItem(row, column_faces, faces);
        edges_->setItem(row, column_gable, ends);
    }
    edges_->setFixedHeight(edges_->horizontalHeader()->sizeHint().height() +
                           edges_->verticalHeader()->defaultSectionSize() * count + 2 * edges_->frameWidth());
    filling_ = false;
}

void BuildingEditor::show_building(JobSession* session, const std::string& building_id) {
    if (building_id_ != building_id) say({});
    session_ = session;
    building_id_ = building_id;
    refresh();
}

void BuildingEditor::refresh() {
    const Building* now = building();
    setEnabled(now != nullptr);
    if (now == nullptr) return;
    const bool flat = now->shape == BuildingShape::flat;
    for (QWidget* field : sloped_fields_)
        show_row(field, !flat);
    for (QWidget* field : flat_fields_)
        show_row(field, flat);
    show_row(low_edge_, one_slope(now->shape));
    low_edge_->blockSignals(true);
    low_edge_->clear();
    for (std::size_t i = 0; i < now->edges.size(); ++i)
        low_edge_->addItem(edge_words(*now, i), qs(now->edges[i].id));
    low_edge_->blockSignals(false);
    low_edge_->show_data(qs(now->low_edge_id.empty() ? now->edges.front().id : now->low_edge_id));
    for (const auto& show : shows_)
        show(*now);
    fill_edges(*now);
    int planes = 0;
    int walls = 0;
    double ridge_m = now->eaves_m;
    for (const Surface& surface : session_->job().site.surfaces) {
        if (building_of_edge(session_->job().site, surface.footprint_edge_id) != now) continue;
        (surface.kind == SurfaceKind::wall ? walls : planes) += 1;
        ridge_m = std::max(ridge_m, surface.ridge_height_m);
    }
    ridge_->set_value(ridge_m);
    made_->setText(tr("Made from it: %1 roof planes, %2 walls. They follow when it changes.").arg(planes).arg(walls));
}

}  // namespace wg::ui
