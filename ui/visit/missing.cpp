#include "ui/visit/missing.h"

#include <QCoreApplication>

#include "ui/common/format.h"

namespace wg::ui {
namespace {

QString tr(const char* text) {
    return QCoreApplication::translate("Missing", text);
}

void missing_of_client(const Job& job, std::vector<Missing>& list) {
    if (job.client.name.empty())
        list.push_back({tr("Client's name"), tr("papers stay without a name"), {}, QStringLiteral("name")});
    if (job.client.street.empty() || job.client.town.empty()) {
        list.push_back({tr("Address of the site"), tr("papers stay without an address"), {}, QStringLiteral("street")});
    }
    if (job.survey.visited_on.empty()) {
        list.push_back(
            {tr("Day of the visit"), tr("the job counts as not yet visited"), {}, QStringLiteral("visited_on")});
    }
    if (job.survey.access.empty()) {
        list.push_back({tr("Access and where a scaffold can stand"),
                        tr("the fitters will have to ask"),
                        {},
                        QStringLiteral("access")});
    }
    if (job.survey.roof_condition.empty()) {
        list.push_back({tr("Condition of the roof or wall"),
                        tr("the fixings count on sound timber and covering"),
                        {},
                        QStringLiteral("roof_condition")});
    }
}

void missing_of_place(const Job& job, std::vector<Missing>& list) {
    const Location& at = job.site.location;
    if (at.latitude_deg == 0.0 && at.longitude_deg == 0.0) {
        list.push_back({tr("Latitude and longitude"),
                        tr("the sun is taken for the Gulf of Guinea"),
                        {},
                        QStringLiteral("latitude")});
    } else if (place_is_assumed(job)) {
        list.push_back(
            {tr("Place of the site: its name, latitude, longitude and altitude"),
             tr("%1, %2 and %3 are assumed")
                 .arg(quantity(at.latitude_deg, QStringLiteral("\u00b0"), 2),
                      quantity(at.longitude_deg, QStringLiteral("\u00b0"), 2), quantity(at.altitude_m, tr("m"))),
             {},
             QStringLiteral("place")});
    }
    if (!job.site.basic_wind_m_s) {
        list.push_back({tr("Wind: basic speed for the place"),
                        tr("the rule set's assumption is used"),
                        {},
                        QStringLiteral("wind")});
    }
    if (!job.site.ground_snow_kn_m2) {
        list.push_back({tr("Snow: load on the ground for the place"),
                        tr("the rule set's assumption is used"),
                        {},
                        QStringLiteral("snow")});
    }
    for (const Surface& surface : job.site.surfaces) {
        const bool flat_roof = surface.kind == SurfaceKind::roof && surface.tilt_deg <= 5.0;
        if (!flat_roof || surface.spare_load_kn_m2) continue;
        list.push_back({tr("%1: spare load of the flat roof").arg(qs(surface.label)),
                        tr("nobody has shown that it carries ballast"),
                        surface.id,
                        {}});
        break;  // one line says it
    }
    if (job.site.horizon.empty()) {
        list.push_back({tr("Horizon"), tr("the view counts as free all round"), {}, QStringLiteral("horizon")});
    }
}

/// Rafters count where a collector lies; before there is one, of any roof.
void missing_rafters(const Job& job, std::vector<Missing>& list) {
    const Surface* any = nullptr;
    bool measured = false;
    bool placed = false;
    for (const Surface& surface : job.site.surfaces) {
        if (surface.kind != SurfaceKind::roof) continue;
        if (any == nullptr) any = &surface;
        measured = measured || surface.rafters.present;
        bool carries = false;
        for (const Choice& choice : job.choices)
            for (const Placement& one : choice.placements)
                carries = carries || one.surface_id == surface.id;
        placed = placed || carries;
        if (carries && !surface.rafters.present)
            list.push_back({tr("%1: rafters").arg(qs(surface.label)),
                            tr("fixing points cannot be set on timber"),
                            surface.id,
                            {}});
    }
    if (any != nullptr && !placed && !measured)
        list.push_back({tr("Rafters of the roof that shall carry collectors"),
                        tr("fixing points cannot be set on timber"),
                        any->id,
                        {}});
}

void missing_of_elements(const Job& job, std::vector<Missing>& list) {
    if (job.site.surfaces.empty()) {
        list.push_back(
            {tr("A surface for the collector"), tr("nothing can be placed"), {}, QStringLiteral("add_surface")});
    }
    missing_rafters(job, list);
    if (job.site.spots.empty()) {
        list.push_back({tr("A spot for the cylinder"), tr("no run can be worked out"), {}, QStringLiteral("add_spot")});
    }
    for (const CylinderSpot& spot : job.site.spots) {
        if (!spot.floor_load_measured) {
            list.push_back({tr("%1: what the floor carries").arg(qs(spot.label)),
                            tr("%1 assumed").arg(quantity(spot.floor_load_kg, tr("kg"))),
                            spot.id,
                            {}});
        }
        if (!spot.supply.present && spot.supply.distance_m <= 0.0) {
            list.push_back(
                {tr("%1: way to an electrical supply").arg(qs(spot.label)), tr("no cable is counted"), spot.id, {}});
        }
        if (!spot.drain.present && spot.drain.distance_m <= 0.0) {
            list.push_back({tr("%1: way to a drain").arg(qs(spot.label)), tr("no drain pipe is counted"), spot.id, {}});
        }
    }
}

}  // namespace

namespace {

void missing_of_supplies(const Job& job, std::vector<Missing>& list) {
    const Electrics& supply = job.site.electrics;
    if (supply.earthing == EarthingSystem::unknown)
        list.push_back({tr("Earthing system of the supply"),
                        tr("protection against shock is not settled"),
                        {},
                        QStringLiteral("earthing")});
    if (!supply.main_fuse_a || supply.phases == 0)
        list.push_back({tr("Phases and main fuse"),
                        tr("nobody has shown that the supply carries the block"),
                        {},
                        supply.phases == 0 ? QStringLiteral("phases") : QStringLiteral("main_fuse")});
    if (!job.site.water.static_pressure_bar)
        list.push_back(
            {tr("Water pressure at rest"), tr("a usual pressure is assumed"), {}, QStringLiteral("static_pressure")});
    if (!job.site.water.hardness_mmol_l)
        list.push_back({tr("Hardness of the water"), tr("scale is not judged"), {}, QStringLiteral("hardness")});
}

}  // namespace

bool place_is_assumed(const Job& job) {
    return job.site.location.place_name.empty();
}

std::vector<Missing> still_to_measure(const Job& job) {
    std::vector<Missing> list;
    missing_of_client(job, list);
    missing_of_place(job, list);
    missing_of_elements(job, list);
    missing_of_supplies(job, list);
    return list;
}

}  // namespace wg::ui
