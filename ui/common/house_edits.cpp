#include "ui/common/house_edits.h"

#include "ui/common/edit_tools.h"
#include "ui/common/edits.h"
#include "ui/common/format.h"

namespace wg::ui {

void set_hill(JobSession& session, const Hill& hill, const QString& merge_key) {
    session.edit(
        QObject::tr("Change the hill"), [&](Job& job) { job.site.hill = hill; }, merge_key);
}

void set_electrics(JobSession& session, const Electrics& electrics, const QString& merge_key) {
    session.edit(
        QObject::tr("Change the electrical supply"), [&](Job& job) { job.site.electrics = electrics; }, merge_key);
}

void set_water(JobSession& session, const WaterSupply& water, const QString& merge_key) {
    session.edit(
        QObject::tr("Change the water supply"), [&](Job& job) { job.site.water = water; }, merge_key);
}

const Room* find_room(const Site& site, const std::string& id) noexcept {
    for (const Room& room : site.rooms)
        if (room.id == id) return &room;
    return nullptr;
}

std::string add_room(JobSession& session, Room room) {
    if (room.id.empty()) room.id = new_id();
    if (room.label.empty()) room.label = free_label(session.job().site.rooms, "Room");
    const std::string id = room.id;
    session.edit(QObject::tr("Add '%1'").arg(qs(room.label)), [&](Job& job) { job.site.rooms.push_back(room); });
    return id;
}

void set_room(JobSession& session, const Room& room, const QString& merge_key) {
    session.edit(
        QObject::tr("Change '%1'").arg(qs(room.label)),
        [&](Job& job) {
            if (Room* target = with_id(job.site.rooms, room.id)) *target = room;
        },
        merge_key);
}

void move_room(JobSession& session, const std::string& room_id, double x_m, double y_m) {
    const Room* room = find_room(session.job().site, room_id);
    if (room == nullptr || room->outline.empty() || !std::isfinite(x_m) || !std::isfinite(y_m)) return;
    session.edit(
        QObject::tr("Move '%1'").arg(qs(room->label)),
        [&](Job& job) {
            Room& target = *with_id(job.site.rooms, room_id);
            const double dx = to_mm(x_m) - target.outline.front().x_m;
            const double dy = to_mm(y_m) - target.outline.front().y_m;
            for (Point2& corner : target.outline)
                corner = {to_mm(corner.x_m + dx), to_mm(corner.y_m + dy)};
        },
        QStringLiteral("move:") + qs(room_id));
}

}  // namespace wg::ui
