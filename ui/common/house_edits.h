#pragma once
// The verbs about what the survey knows of the house beside its shape (see edits.h): hill, supplies, rooms.

#include <QString>
#include <string>

#include "core/job/job.h"

namespace wg::ui {

class JobSession;

void set_hill(JobSession& session, const Hill& hill, const QString& merge_key = {});
void set_electrics(JobSession& session, const Electrics& electrics, const QString& merge_key = {});
void set_water(JobSession& session, const WaterSupply& water, const QString& merge_key = {});

[[nodiscard]] const Room* find_room(const Site& site, const std::string& id) noexcept;
/// Without an id it gets a fresh one, without a label one such as "Room 2"; the id is returned.
std::string add_room(JobSession& session, Room room);
/// Replaces the room of the same id.
void set_room(JobSession& session, const Room& room, const QString& merge_key = {});
/// Moves it with its outline; x and y are those of the first corner.
void move_room(JobSession& session, const std::string& room_id, double x_m, double y_m);

}  // namespace wg::ui
