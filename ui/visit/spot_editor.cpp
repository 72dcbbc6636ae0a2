#include "ui/visit/spot_editor.h"

#include <QHBoxLayout>
#include <cmath>
#include <memory>

#include "ui/common/edits.h"
#include "ui/common/format.h"
#include "ui/common/job_session.h"
#include "ui/visit/guarded_edit.h"

namespace wg::ui {

SpotEditor::SpotEditor(QWidget* parent) : FormColumn(parent) {
    heading(tr("Cylinder's spot"));
    TextField* label = text(tr("Name"), [this](const QString& value) {
        apply([&](CylinderSpot& s) { s.label = value.trimmed().toStdString(); });
    });
    shows_.push_back([label](const CylinderSpot& s) { label->set_value(qs(s.label)); });
    pair_next();
    NumberField* floor =
        number(tr("Floor over ground"), tr("m"), {-50.0, 200.0, 2, 0.05, false}, [this](std::optional<double> value) {
            if (value) apply([&](CylinderSpot& s) { s.position.z_m = *value; });
        });
    shows_.push_back([floor](const CylinderSpot& s) { floor->set_value(s.position.z_m); });
    sized(tr("Headroom"), tr("m"), {0.0, 100.0, 2, 0.05, false}, &CylinderSpot::headroom_m);
    pair_next();
    sized(tr("Free width"), tr("m"), {0.0, 1000.0, 2, 0.05, false}, &CylinderSpot::free_width_m);
    sized(tr("Free depth"), tr("m"), {0.0, 1000.0, 2, 0.05, false}, &CylinderSpot::free_depth_m);
    pair_next();
    sized(tr("Floor of the room"), tr("m\u00b2"), {0.0, 100000.0, 1, 0.5, false}, &CylinderSpot::floor_area_m2);
    sized(tr("Room temperature"), tr("\u00b0C"), {-50.0, 60.0, 1, 1.0, false}, &CylinderSpot::room_temperature_c);
    sized(tr("Floor may carry"), tr("kg"), {0.0, 1000000.0, 0, 50.0, false}, &CylinderSpot::floor_load_kg);
    yes_no(tr("Floor load measured or proven"), &CylinderSpot::floor_load_measured);
    yes_no(tr("Room is ventilated"), &CylinderSpot::ventilated);
    yes_no(tr("Flame or spark in the room"), &CylinderSpot::ignition_source);
    heading(tr("Services at the spot"));
    words(tr("Not there: metres to where it can be had."));
    service(tr("Electrical supply"), &CylinderSpot::supply);
    service(tr("Earth"), &CylinderSpot::earth);
    service(tr("Cold water"), &CylinderSpot::cold);
    service(tr("Hot water pipe"), &CylinderSpot::hot);
    service(tr("Drain"), &CylinderSpot::drain);
    service(tr("Recirculation"), &CylinderSpot::recirculation);
    build_cable();
    finish();
}

void SpotEditor::build_cable() {
    heading(tr("Cable of the block's own circuit"));
    CalmCombo* method = words_of<CableMethod>(
        tr("How it is laid"), [this](CableMethod value) { apply([&](CylinderSpot& s) { s.cable.method = value; }); });
    method->setToolTip(
        tr("Reference method of installation, IEC 60364-5-52 table B.52.1: it decides what the cable may carry"));
    fields_.insert(QStringLiteral("cable_method"), method);
    shows_.push_back(
        [method](const CylinderSpot& s) { method->show_data(QString::fromLatin1(key_of(s.cable.method))); });
    pair_next();
    const auto ambient_self = std::make_shared<NumberField*>(nullptr);
    NumberField* ambient = number(tr("Warmest place on its way"), tr("\u00b0C"), {10.0, 60.0, 0, 5.0, false},
                                  [this, ambient_self](std::optional<double> value) {
                                      if (value)
                                          apply([&](CylinderSpot& s) { s.cable.ambient_c = *value; }, *ambient_self);
                                  });
    *ambient_self = ambient;
    ambient->setToolTip(tr("Ambient temperature for the cable: under a roof up to 50 \u00b0C"));
    const auto together_self = std::make_shared<NumberField*>(nullptr);
    NumberField* together =
        number(tr("Circuits side by side"), QString(), {1.0, 20.0, 0, 1.0, false},
               [this, together_self](std::optional<double> value) {
                   if (!value) return;
                   apply([&](CylinderSpot& s) { s.cable.circuits_together = static_cast<int>(std::lround(*value)); },
                         *together_self);
               });
    *together_self = together;
    together->setToolTip(tr("Loaded circuits bunched in the same duct or tray, this one counted"));
    fields_.insert(QStringLiteral("cable_ambient"), ambient);
    fields_.insert(QStringLiteral("cable_together"), together);
    shows_.push_back([ambient](const CylinderSpot& s) { ambient->set_value(s.cable.ambient_c); });
    shows_.push_back([together](const CylinderSpot& s) { together->set_value(s.cable.circuits_together); });
    const auto way_self = std::make_shared<NumberField*>(nullptr);
    NumberField* way = number(tr("Way from the distribution board (empty: as the supply above)"), tr("m"),
                              {0.0, 500.0, 1, 0.5, true}, [this, way_self](std::optional<double> value) {
                                  apply([&](CylinderSpot& s) { s.distribution_m = value.value_or(0.0); }, *way_self);
                              });
    *way_self = way;
    way->setToolTip(tr("Length of cable from the board to the block, all turns followed"));
    fields_.insert(QStringLiteral("distribution"), way);
    shows_.push_back([way](const CylinderSpot& s) {
        way->set_value(s.distribution_m > 0.0 ? std::optional<double>(s.distribution_m) : std::nullopt);
    });
}

void SpotEditor::sized(const QString& label, const QString& unit, const NumberField::Range& range,
                       double CylinderSpot::*member) {
    const auto self = std::make_shared<NumberField*>(nullptr);
    NumberField* field = number(label, unit, range, [this, self, member](std::optional<double> value) {
        if (value) apply([&](CylinderSpot& s) { s.*member = *value; }, *self);
    });
    *self = field;
    shows_.push_back([field, member](const CylinderSpot& s) { field->set_value(s.*member); });
}

void SpotEditor::yes_no(const QString& label, bool CylinderSpot::*member) {
    QCheckBox* box = check(label, [this, member](bool on) { apply([&](CylinderSpot& s) { s.*member = on; }); });
    shows_.push_back([box, member](const CylinderSpot& s) { show_checked(box, s.*member); });
}

void SpotEditor::service(const QString& label, Service CylinderSpot::*member) {
    auto* line = new QWidget(this);
    auto* row = new QHBoxLayout(line);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(8);
    auto* there = new QCheckBox(label, line);
    auto* distance = new NumberField(tr("Way to %1").arg(label.toLower()), tr("m"), {0.0, 1000.0, 1, 0.5, false}, line);
    distance->setMaximumWidth(128);
    row->addWidget(there, 1);
    row->addWidget(distance);
    add(line);
    connect(there, &QCheckBox::toggled, this,
            [this, member](bool on) { apply([&](CylinderSpot& s) { (s.*member).present = on; }); });
    connect(distance, &NumberField::committed, this, [this, member, distance](std::optional<double> value) {
        if (value) apply([&](CylinderSpot& s) { (s.*member).distance_m = *value; }, distance);
    });
    shows_.push_back([there, distance, member](const CylinderSpot& s) {
        const Service& now = s.*member;
        show_checked(there, now.present);
        distance->setVisible(!now.present);
        distance->set_value(now.distance_m);
    });
}

const CylinderSpot* SpotEditor::spot() const {
    return session_ != nullptr ? find_spot(session_->job().site, spot_id_) : nullptr;
}

void SpotEditor::apply(const std::function<void(CylinderSpot&)>& change, NumberField* field) {
    const CylinderSpot* now = spot();
    if (now == nullptr) return;
    CylinderSpot changed = *now;
    change(changed);
    const QString why = refusal(session_->job(), [&](Job& job) {
        for (CylinderSpot& one : job.site.spots) {
            if (one.id == spot_id_) one = changed;
        }
    });
    if (why.isEmpty()) {
        set_spot_data(*session_, changed);
    } else if (field != nullptr) {
        field->show_problem(why);
    }
}

void SpotEditor::show_spot(JobSession* session, const std::string& spot_id) {
    session_ = session;
    spot_id_ = spot_id;
    refresh();
}

void SpotEditor::refresh() {
    const CylinderSpot* now = spot();
    setEnabled(now != nullptr);
    if (now == nullptr) return;
    for (const auto& show : shows_)
        show(*now);
}

}  // namespace wg::ui
