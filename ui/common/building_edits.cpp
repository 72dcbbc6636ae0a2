#include "ui/common/building_edits.h"

#include <QObject>
#include <cmath>

#include "core/job/words.h"
#include "core/roof/linked.h"
#include "ui/common/edits.h"
#include "ui/common/format.h"
#include "ui/common/job_session.h"

namespace wg::ui {
namespace {

QString words_of_refusal(const std::vector<Problem>& problems) {
    return problems.empty() ? QObject::tr("This building cannot be made.") : qs(problems.front().text());
}

/// Corners to the whole millimetre, as all positions in a job.
Building in_mm(Building building) {
    for (FootprintEdge& edge : building.edges)
        edge.from = {std::round(edge.from.x_m * 1000.0) / 1000.0, std::round(edge.from.y_m * 1000.0) / 1000.0};
    return building;
}

QString put(JobSession& session, const QString& what, const Building& building, const QString& merge_key) {
    const auto rebuilt = roof::with_building(session.job(), in_mm(building), new_id);
    if (!rebuilt) return words_of_refusal(rebuilt.problems());
    session.edit(
        what, [&](Job& job) { job = rebuilt.value().job; }, merge_key);
    return {};
}

std::string free_name(const Site& site) {
    for (std::size_t number = 1;; ++number) {
        const std::string name = number == 1 ? "House" : "House " + std::to_string(number);
        bool taken = false;
        for (const Building& building : site.buildings)
            taken = taken || building.label == name;
        if (!taken) return name;
    }
}

}  // namespace

BuildingAdded add_building(JobSession& session, const std::vector<Point2>& footprint, BuildingShape shape) {
    Building building;
    building.id = new_id();
    building.label = free_name(session.job().site);
    building.shape = shape;
    for (const Point2& corner : footprint)
        building.edges.push_back({new_id(), corner, false, {}});
    switch (shape) {
        case BuildingShape::flat:
            building.overhang_m = 0.0;
            building.covering = Covering::membrane;
            break;
        case BuildingShape::lean_to:
            building.pitch_deg = 15.0;
            building.eaves_m = 2.5;
            break;
        case BuildingShape::mono_pitch: building.pitch_deg = 15.0; break;
        case BuildingShape::gable:
        case BuildingShape::hip: break;
    }
    const QString refusal = put(session, QObject::tr("Draw \"%1\"").arg(qs(building.label)), building, {});
    return {refusal.isEmpty() ? building.id : std::string(), refusal};
}

QString set_building(JobSession& session, const Building& building, const QString& merge_key) {
    return put(session, QObject::tr("Change \"%1\"").arg(qs(building.label)), building, merge_key);
}

QString move_building(JobSession& session, const std::string& building_id, double dx_m, double dy_m) {
    const Building* building = find_building(session.job().site, building_id);
    if (building == nullptr || !std::isfinite(dx_m) || !std::isfinite(dy_m)) return QObject::tr("It cannot be moved.");
    return put(session, QObject::tr("Move \"%1\"").arg(qs(building->label)), roof::moved(*building, dx_m, dy_m),
               QStringLiteral("move ") + qs(building_id));
}

QString release_building(JobSession& session, const std::string& building_id) {
    const auto job = roof::released(session.job(), building_id);
    if (!job) return words_of_refusal(job.problems());
    session.edit(QObject::tr("Free the planes"), [&](Job& changed) { changed = job.value(); });
    return {};
}

}  // namespace wg::ui
