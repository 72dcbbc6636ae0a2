#pragma once
// The verbs about buildings (see edits.h). A building that cannot be leaves the job as it is; the words say why.

#include <QString>
#include <string>
#include <vector>

#include "core/job/job.h"

namespace wg::ui {

class JobSession;

struct BuildingAdded {
    std::string id;   ///< empty: refused
    QString refusal;  ///< in words; empty: done
};
BuildingAdded add_building(JobSession& session, const std::vector<Point2>& footprint, BuildingShape shape);
/// Replaces the building of the same id; its planes, walls and parapets follow. Returns why not; empty: done.
QString set_building(JobSession& session, const Building& building, const QString& merge_key = {});
/// Planes, walls and parapets with it.
QString move_building(JobSession& session, const std::string& building_id, double dx_m, double dy_m);
/// Planes, walls and parapets stay as drawn free.
QString release_building(JobSession& session, const std::string& building_id);

}  // namespace wg::ui
