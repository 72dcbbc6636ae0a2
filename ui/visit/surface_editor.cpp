#include "ui/visit/surface_editor.h"

#include <QHBoxLayout>
#include <QPushButton>
#include <algorithm>
#include <memory>

#include "ui/common/edits.h"
#include "ui/common/format.h"
#include "ui/common/job_session.h"
#include "ui/visit/corner_table.h"
#include "ui/visit/guarded_edit.h"
#include "ui/visit/keep_out_editor.h"

namespace wg::ui {
namespace {

constexpr double level_tilt_deg = 5.0;  ///< flat in the sense of EN 1991-1-4 7.2.3

}  // namespace

SurfaceEditor::SurfaceEditor(QWidget* parent) : FormColumn(parent) {
    build_lie();
    build_outline();
    build_rafters();
    build_carries();
    heading(tr("Kept free"));
    keep_outs_ = new KeepOutEditor(this);
    add(keep_outs_);
    finish();
}

NumberField* SurfaceEditor::surface_number(const QString& label, const QString& unit, const NumberField::Range& range,
                                           std::function<double&(Surface&)> member) {
    // The field is known only after it is made, but the change needs it to show a refusal.
    const auto self = std::make_shared<NumberField*>(nullptr);
    NumberField* field = number(label, unit, range, [this, self, member](std::optional<double> value) {
        if (value) apply([&](Surface& s) { member(s) = *value; }, *self);
    });
    *self = field;
    shows_.push_back([field, member](const Surface& s) {
        Surface copy = s;
        field->set_value(member(copy));
    });
    return field;
}

void SurfaceEditor::build_lie() {
    heading(tr("Surface"));
    part_of_ = new QWidget(this);
    auto* part_row = new QHBoxLayout(part_of_);
    part_row->setContentsMargins(0, 0, 0, 0);
    part_words_ = new QLabel(part_of_);
    part_words_->setWordWrap(true);
    auto* edit = new QPushButton(tr("Change it"), part_of_);
    part_row->addWidget(part_words_, 1);
    part_row->addWidget(edit);
    add(part_of_);
    connect(edit, &QPushButton::clicked, this, [this] {
        const Surface* now = surface();
        if (now == nullptr) return;
        if (const Building* building = building_of_edge(session_->job().site, now->footprint_edge_id))
            Q_EMIT building_wanted(qs(building->id));
    });
    TextField* label = text(tr("Name"), [this](const QString& value) {
        apply([&](Surface& s) { s.label = value.trimmed().toStdString(); });
    });
    shows_.push_back([label](const Surface& s) { label->set_value(qs(s.label)); });
    CalmCombo* kind = words_of<SurfaceKind>(tr("Kind"), [this](SurfaceKind value) {
        apply([&](Surface& s) {
            s.kind = value;
            if (value == SurfaceKind::wall) s.tilt_deg = 90.0;
            if (value != SurfaceKind::roof) s.roof_form = RoofForm::not_a_roof;
            if (value == SurfaceKind::roof && s.roof_form == RoofForm::not_a_roof) s.roof_form = RoofForm::duo_pitch;
        });
    });
    shows_.push_back([kind](const Surface& s) { kind->show_data(QString::fromLatin1(key_of(s.kind))); });
    CalmCombo* form =
        words_of<RoofForm>(tr("Part of"), [this](RoofForm value) { apply([&](Surface& s) { s.roof_form = value; }); });
    shows_.push_back([form](const Surface& s) { form->show_data(QString::fromLatin1(key_of(s.roof_form))); });
    shaped_fields_ = {kind, form};
    pair_next();
    shaped_fields_.push_back(surface_number(tr("Tilt from level"), tr("\u00b0"), {0.0, 90.0, 1, 1.0, false},
                                            [](Surface& s) -> double& { return s.tilt_deg; }));
    shaped_fields_.push_back(surface_number(tr("Faces (true bearing)"), tr("\u00b0"), {0.0, 360.0, 1, 1.0, false},
                                            [](Surface& s) -> double& { return s.azimuth_deg; }));
    pair_next();
    shaped_fields_.push_back(surface_number(tr("Lower edge over ground"), tr("m"), {-50.0, 500.0, 3, 0.05, false},
                                            [](Surface& s) -> double& { return s.origin.z_m; }));
    shaped_fields_.push_back(surface_number(tr("Ridge over ground"), tr("m"), {0.0, 1000.0, 2, 0.05, false},
                                            [](Surface& s) -> double& { return s.ridge_height_m; }));
    CalmCombo* covering =
        words_of<Covering>(tr("Covering"), [this](Covering value) { apply([&](Surface& s) { s.covering = value; }); });
    shows_.push_back([covering](const Surface& s) { covering->show_data(QString::fromLatin1(key_of(s.covering))); });
}

void SurfaceEditor::build_outline() {
    heading(tr("Outline, seen face-on"));
    pair_next();
    width_ =
        number(tr("Width"), tr("m"), {0.1, 1000.0, 3, 0.05, false}, [this](std::optional<double>) { commit_size(); });
    height_ = number(tr("Height up the slope"), tr("m"), {0.1, 1000.0, 3, 0.05, false},
                     [this](std::optional<double>) { commit_size(); });
    no_rectangle_ = new QLabel(tr("Not a rectangle: see the corners."), this);
    no_rectangle_->setProperty("role", QStringLiteral("muted"));
    add(no_rectangle_);
    auto* show_corners = new QPushButton(tr("Corners"), this);
    show_corners->setCheckable(true);
    add(show_corners);
    corners_ = new CornerTable(this);
    corners_->hide();
    add(corners_);
    connect(show_corners, &QPushButton::toggled, corners_, &QWidget::setVisible);
    corners_->set_taker(
        [this](const std::vector<Point2>& outline) { return apply([&](Surface& s) { s.outline = outline; }); });
}

void SurfaceEditor::build_rafters() {
    heading(tr("Rafters or studs"));
    QCheckBox* present =
        check(tr("Found and measured"), [this](bool on) { apply([&](Surface& s) { s.rafters.present = on; }); });
    shows_.push_back([present](const Surface& s) { show_checked(present, s.rafters.present); });
    pair_next();
    rafter_fields_.push_back(surface_number(tr("First from left"), tr("m"), {-100.0, 100.0, 3, 0.01, false},
                                            [](Surface& s) -> double& { return s.rafters.first_m; }));
    rafter_fields_.push_back(surface_number(tr("Centre to centre"), tr("m"), {0.2, 2.0, 3, 0.01, false},
                                            [](Surface& s) -> double& { return s.rafters.spacing_m; }));
    pair_next();
    rafter_fields_.push_back(surface_number(tr("Width"), tr("m"), {0.01, 1.0, 3, 0.01, false},
                                            [](Surface& s) -> double& { return s.rafters.width_m; }));
    rafter_fields_.push_back(surface_number(tr("Depth"), tr("m"), {0.01, 2.0, 3, 0.01, false},
                                            [](Surface& s) -> double& { return s.rafters.depth_m; }));
}

void SurfaceEditor::build_carries() {
    heading(tr("Snow and load"));
    QCheckBox* held = check(tr("Snow guard or parapet holds the snow"),
                            [this](bool on) { apply([&](Surface& s) { s.snow_held = on; }); });
    held->setToolTip(tr("Snow cannot slide off: it counts in full, EN 1991-1-3 5.3.2"));
    fields_.insert(QStringLiteral("snow_held"), held);
    shows_.push_back([held](const Surface& s) { show_checked(held, s.snow_held); });
    const auto self = std::make_shared<NumberField*>(nullptr);
    NumberField* spare = number(
        tr("Spare load of the flat roof"), tr("kN/m\u00b2"), {0.0, 100.0, 2, 0.1, true},
        [this, self](std::optional<double> value) { apply([&](Surface& s) { s.spare_load_kn_m2 = value; }, *self); });
    *self = spare;
    spare->setToolTip(tr("What the slab or deck carries besides its own weight, snow and people, from its designer"));
    fields_.insert(QStringLiteral("spare_load"), spare);
    shows_.push_back([this, spare](const Surface& s) {
        spare->set_value(s.spare_load_kn_m2);
        // Asked where ballast may lie; a figure that is there stays in sight.
        show_row(spare, s.tilt_deg <= level_tilt_deg || s.spare_load_kn_m2.has_value());
    });
}

const Surface* SurfaceEditor::surface() const {
    return session_ != nullptr ? find_surface(session_->job().site, surface_id_) : nullptr;
}

QString SurfaceEditor::apply(const std::function<void(Surface&)>& change, NumberField* field) {
    const Surface* now = surface();
    if (now == nullptr) return tr("The surface is gone");
    Surface changed = *now;
    change(changed);
    const QString why = refusal(session_->job(), [&](Job& job) {
        for (Surface& one : job.site.surfaces) {
            if (one.id == surface_id_) one = changed;
        }
    });
    if (!why.isEmpty()) {
        if (field != nullptr) field->show_problem(why);
        return why;
    }
    set_surface(*session_, changed);
    return {};
}

void SurfaceEditor::commit_size() {
    const Surface* now = surface();
    if (now == nullptr || !width_->value() || !height_->value()) return;
    const auto rectangle = as_rectangle(now->outline);
    if (!rectangle) return;
    Rectangle wanted = *rectangle;
    wanted.width_m = *width_->value();
    wanted.height_m = *height_->value();
    apply([&](Surface& s) { s.outline = outline_of(wanted); }, width_);
}

void SurfaceEditor::show_surface(JobSession* session, const std::string& surface_id, const std::string& keep_out_id) {
    session_ = session;
    surface_id_ = surface_id;
    refresh();
    keep_outs_->show_zones(session_, surface_id_, keep_out_id);
}

void SurfaceEditor::refresh() {
    const Surface* now = surface();
    setEnabled(now != nullptr);
    if (now == nullptr) return;
    for (const auto& show : shows_)
        show(*now);
    const auto rectangle = as_rectangle(now->outline);
    const Building* building = building_of_edge(session_->job().site, now->footprint_edge_id);
    part_of_->setVisible(building != nullptr);
    if (building != nullptr)
        part_words_->setText(tr("Part of \"%1\"; its lie and outline follow it.").arg(qs(building->label)));
    for (QWidget* field : shaped_fields_)
        field->setEnabled(building == nullptr);
    corners_->setEnabled(building == nullptr);
    width_->setEnabled(building == nullptr && rectangle.has_value());
    height_->setEnabled(building == nullptr && rectangle.has_value());
    no_rectangle_->setVisible(!rectangle);
    width_->set_value(rectangle ? std::optional<double>(rectangle->width_m) : std::nullopt);
    height_->set_value(rectangle ? std::optional<double>(rectangle->height_m) : std::nullopt);
    corners_->set_outline(now->outline);
    for (QWidget* field : rafter_fields_)
        field->setEnabled(now->rafters.present);
}

}  // namespace wg::ui
