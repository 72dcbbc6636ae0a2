#include "ui/visit/room_editor.h"

#include <memory>

#include "ui/common/format.h"
#include "ui/common/house_edits.h"
#include "ui/common/job_session.h"
#include "ui/visit/corner_table.h"
#include "ui/visit/guarded_edit.h"

namespace wg::ui {

RoomEditor::RoomEditor(QWidget* parent) : FormColumn(parent) {
    heading(tr("Room"));
    TextField* label = text(
        tr("Name"), [this](const QString& value) { apply([&](Room& r) { r.label = value.trimmed().toStdString(); }); });
    fields_.insert(QStringLiteral("label"), label);
    shows_.push_back([label](const Room& r) { label->set_value(qs(r.label)); });
    QCheckBox* no_pipe =
        check(tr("No pipe goes through it"), [this](bool on) { apply([&](Room& r) { r.no_pipe = on; }); });
    no_pipe->setToolTip(tr("The run keeps out of the room's space; a run that goes through it is found and named"));
    fields_.insert(QStringLiteral("no_pipe"), no_pipe);
    shows_.push_back([no_pipe](const Room& r) { show_checked(no_pipe, r.no_pipe); });
    pair_next();
    height(QStringLiteral("from_z"), tr("Floor over ground"), tr("Of the sketch's ground; a cellar's is negative"),
           &Room::from_z_m);
    height(QStringLiteral("to_z"), tr("Ceiling over ground"), tr("Of the sketch's ground, not of the floor"),
           &Room::to_z_m);
    heading(tr("Corners in the sketch"));
    corners_ = new CornerTable(this);
    corners_->set_taker(
        [this](const std::vector<Point2>& outline) { return apply([&](Room& r) { r.outline = outline; }); });
    add(corners_);
    finish();
}

void RoomEditor::height(const QString& key, const QString& label, const QString& tip, double Room::*member) {
    const auto self = std::make_shared<NumberField*>(nullptr);
    NumberField* field =
        number(label, tr("m"), {-100.0, 1000.0, 2, 0.05, false}, [this, self, member](std::optional<double> value) {
            if (value) apply([&](Room& r) { r.*member = *value; }, *self);
        });
    *self = field;
    field->setToolTip(tip);
    fields_.insert(key, field);
    shows_.push_back([field, member](const Room& r) { field->set_value(r.*member); });
}

const Room* RoomEditor::room() const {
    return session_ != nullptr ? find_room(session_->job().site, room_id_) : nullptr;
}

QString RoomEditor::apply(const std::function<void(Room&)>& change, NumberField* field) {
    const Room* now = room();
    if (now == nullptr) return tr("The room is gone");
    Room changed = *now;
    change(changed);
    const QString why = refusal(session_->job(), [&](Job& job) {
        for (Room& one : job.site.rooms)
            if (one.id == room_id_) one = changed;
    });
    if (why.isEmpty())
        set_room(*session_, changed);
    else if (field != nullptr)
        field->show_problem(why);
    return why;
}

void RoomEditor::show_room(JobSession* session, const std::string& room_id) {
    session_ = session;
    room_id_ = room_id;
    refresh();
}

void RoomEditor::refresh() {
    const Room* now = room();
    setEnabled(now != nullptr);
    if (now == nullptr) return;
    for (const auto& show : shows_)
        show(*now);
    corners_->set_outline(now->outline);
}

}  // namespace wg::ui
