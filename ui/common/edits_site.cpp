// Verbs about the site: location, surfaces, obstacles, spots, horizon.

#include "core/job/words.h"
#include "core/quantity/angle.h"
#include "ui/common/edit_tools.h"
#include "ui/common/edits.h"
#include "ui/common/format.h"

namespace wg::ui {
namespace {

QString quoted_label(const std::string& label) {
    return label.empty() ? QString() : QStringLiteral(" '%1'").arg(qs(label));
}

QString key_for(const char* verb, const std::string& id) {
    return QLatin1String(verb) + QLatin1Char(':') + qs(id);
}

std::string capital(std::string word) {
    if (!word.empty() && word[0] >= 'a' && word[0] <= 'z') word[0] = static_cast<char>(word[0] - 'a' + 'A');
    return word;
}

KeepOut* find_keep_out(Site& site, const std::string& id) {
    for (Surface& surface : site.surfaces) {
        if (KeepOut* found = with_id(surface.keep_outs, id)) return found;
    }
    return nullptr;
}

void remove_surface(Job& job, const std::string& id) {
    erase_id(job.site.surfaces, id);
    for (Choice& choice : job.choices) {
        choice.placements.erase(std::remove_if(choice.placements.begin(), choice.placements.end(),
                                               [&id](const Placement& p) { return p.surface_id == id; }),
                                choice.placements.end());
    }
}

void remove_building(Job& job, const std::string& id) {
    const Building* building = find_building(job.site, id);
    if (building == nullptr) return;
    std::vector<std::string> surfaces;
    for (const Surface& surface : job.site.surfaces)
        if (building_of_edge(job.site, surface.footprint_edge_id) == building) surfaces.push_back(surface.id);
    std::vector<std::string> obstacles;
    for (const Obstacle& obstacle : job.site.obstacles)
        if (building_of_edge(job.site, obstacle.footprint_edge_id) == building) obstacles.push_back(obstacle.id);
    for (const std::string& surface : surfaces)
        remove_surface(job, surface);
    for (const std::string& obstacle : obstacles)
        erase_id(job.site.obstacles, obstacle);
    erase_id(job.site.buildings, id);
}

void remove_spot(Job& job, const std::string& id) {
    erase_id(job.site.spots, id);
    for (Choice& choice : job.choices) {
        if (choice.spot_id == id) choice.spot_id = job.site.spots.empty() ? std::string() : job.site.spots.front().id;
    }
}

}  // namespace

void set_location(JobSession& session, const Location& location, const QString& merge_key) {
    session.edit(
        QObject::tr("Change the location"), [&](Job& job) { job.site.location = location; }, merge_key);
}

void set_terrain(JobSession& session, Terrain terrain) {
    session.edit(QObject::tr("Change the terrain"), [&](Job& job) { job.site.terrain = terrain; });
}

void set_basic_wind(JobSession& session, std::optional<double> basic_wind_m_s) {
    if (basic_wind_m_s && !std::isfinite(*basic_wind_m_s)) return;
    session.edit(QObject::tr("Change the basic wind"), [&](Job& job) { job.site.basic_wind_m_s = basic_wind_m_s; });
}

void set_ground_snow(JobSession& session, std::optional<double> ground_snow_kn_m2) {
    if (ground_snow_kn_m2 && !std::isfinite(*ground_snow_kn_m2)) return;
    session.edit(QObject::tr("Change the snow load"),
                 [&](Job& job) { job.site.ground_snow_kn_m2 = ground_snow_kn_m2; });
}

void set_ground_albedo(JobSession& session, double ground_albedo) {
    if (!std::isfinite(ground_albedo)) return;
    session.edit(QObject::tr("Change the ground's reflectance"),
                 [&](Job& job) { job.site.ground_albedo = ground_albedo; });
}

void set_sketch_up_azimuth(JobSession& session, double azimuth_deg) {
    if (!std::isfinite(azimuth_deg)) return;
    session.edit(
        QObject::tr("Turn north"), [&](Job& job) { job.site.sketch_up_azimuth_deg = wrap_360(azimuth_deg); },
        QStringLiteral("north"));
}

void set_horizon(JobSession& session, const std::vector<HorizonPoint>& horizon) {
    session.edit(QObject::tr("Change the horizon"), [&](Job& job) { job.site.horizon = horizon; });
}

void set_declination(JobSession& session, double declination_deg) {
    if (!(declination_deg >= -180.0 && declination_deg <= 180.0)) return;
    session.edit(QObject::tr("Change the declination"), [&](Job& job) {
        const double by_deg = declination_deg - job.site.declination_deg;
        for (HorizonPoint& point : job.site.horizon)
            point.azimuth_deg = wrap_360(point.azimuth_deg + by_deg);
        job.site.declination_deg = declination_deg;
    });
}

void set_street_azimuth(JobSession& session, std::optional<double> azimuth_deg) {
    if (azimuth_deg && !(*azimuth_deg >= 0.0 && *azimuth_deg <= 360.0)) return;
    session.edit(QObject::tr("Mark the street side"), [&](Job& job) { job.site.street_azimuth_deg = azimuth_deg; });
}

std::string add_surface(JobSession& session, Surface surface) {
    if (surface.id.empty()) surface.id = new_id();
    if (surface.label.empty()) {
        surface.label = free_label(session.job().site.surfaces, capital(text_of(surface.kind)));
    }
    const std::string id = surface.id;
    session.edit(QObject::tr("Add%1").arg(quoted_label(surface.label)),
                 [&](Job& job) { job.site.surfaces.push_back(surface); });
    return id;
}

std::string add_obstacle(JobSession& session, Obstacle obstacle) {
    if (obstacle.id.empty()) obstacle.id = new_id();
    if (obstacle.label.empty()) {
        obstacle.label =
            free_label(session.job().site.obstacles,
                       capital(obstacle.use == ObstacleUse::other ? text_of(obstacle.kind) : text_of(obstacle.use)));
    }
    const std::string id = obstacle.id;
    session.edit(QObject::tr("Add%1").arg(quoted_label(obstacle.label)),
                 [&](Job& job) { job.site.obstacles.push_back(obstacle); });
    return id;
}

std::string add_spot(JobSession& session, CylinderSpot spot) {
    if (spot.id.empty()) spot.id = new_id();
    if (spot.label.empty()) spot.label = free_label(session.job().site.spots, "Spot");
    const std::string id = spot.id;
    session.edit(QObject::tr("Add%1").arg(quoted_label(spot.label)), [&](Job& job) {
        job.site.spots.push_back(spot);
        // A choice made before there was any spot takes the first one.
        for (Choice& choice : job.choices) {
            if (choice.spot_id.empty()) choice.spot_id = id;
        }
    });
    return id;
}

std::string add_keep_out(JobSession& session, const std::string& surface_id, KeepOut keep_out) {
    const Surface* surface = find_surface(session.job().site, surface_id);
    if (surface == nullptr) return {};
    if (keep_out.id.empty()) keep_out.id = new_id();
    if (keep_out.label.empty()) keep_out.label = free_label(surface->keep_outs, capital(text_of(keep_out.kind)));
    const std::string id = keep_out.id;
    session.edit(QObject::tr("Add%1").arg(quoted_label(keep_out.label)), [&](Job& job) {
        if (Surface* target = with_id(job.site.surfaces, surface_id)) target->keep_outs.push_back(keep_out);
    });
    return id;
}

void set_surface(JobSession& session, const Surface& surface, const QString& merge_key) {
    session.edit(
        QObject::tr("Change%1").arg(quoted_label(surface.label)),
        [&](Job& job) {
            if (Surface* target = with_id(job.site.surfaces, surface.id)) *target = surface;
        },
        merge_key);
}

void set_obstacle(JobSession& session, const Obstacle& obstacle, const QString& merge_key) {
    session.edit(
        QObject::tr("Change%1").arg(quoted_label(obstacle.label)),
        [&](Job& job) {
            if (Obstacle* target = with_id(job.site.obstacles, obstacle.id)) *target = obstacle;
        },
        merge_key);
}

void set_spot_data(JobSession& session, const CylinderSpot& spot, const QString& merge_key) {
    session.edit(
        QObject::tr("Change%1").arg(quoted_label(spot.label)),
        [&](Job& job) {
            if (CylinderSpot* target = with_id(job.site.spots, spot.id)) *target = spot;
        },
        merge_key);
}

void set_keep_out(JobSession& session, const KeepOut& keep_out, const QString& merge_key) {
    session.edit(
        QObject::tr("Change%1").arg(quoted_label(keep_out.label)),
        [&](Job& job) {
            if (KeepOut* target = find_keep_out(job.site, keep_out.id)) *target = keep_out;
        },
        merge_key);
}

void move_obstacle(JobSession& session, const std::string& obstacle_id, double x_m, double y_m) {
    const Obstacle* obstacle = with_id(session.job().site.obstacles, obstacle_id);
    if (obstacle == nullptr || !std::isfinite(x_m) || !std::isfinite(y_m)) return;
    session.edit(
        QObject::tr("Move%1").arg(quoted_label(obstacle->label)),
        [&](Job& job) {
            Obstacle& target = *with_id(job.site.obstacles, obstacle_id);
            if (target.kind == ObstacleKind::prism && !target.outline.empty()) {
                const double dx = to_mm(x_m) - target.outline.front().x_m;
                const double dy = to_mm(y_m) - target.outline.front().y_m;
                for (Point2& corner : target.outline)
                    corner = {to_mm(corner.x_m + dx), to_mm(corner.y_m + dy)};
            } else {
                target.base.x_m = to_mm(x_m);
                target.base.y_m = to_mm(y_m);
            }
        },
        key_for("move", obstacle_id));
}

void move_spot(JobSession& session, const std::string& spot_id, double x_m, double y_m) {
    const CylinderSpot* spot = find_spot(session.job().site, spot_id);
    if (spot == nullptr || !std::isfinite(x_m) || !std::isfinite(y_m)) return;
    session.edit(
        QObject::tr("Move%1").arg(quoted_label(spot->label)),
        [&](Job& job) {
            CylinderSpot& target = *with_id(job.site.spots, spot_id);
            target.position.x_m = to_mm(x_m);
            target.position.y_m = to_mm(y_m);
        },
        key_for("move", spot_id));
}

void move_surface(JobSession& session, const std::string& surface_id, double origin_x_m, double origin_y_m) {
    const Surface* surface = find_surface(session.job().site, surface_id);
    if (surface == nullptr || !std::isfinite(origin_x_m) || !std::isfinite(origin_y_m)) return;
    session.edit(
        QObject::tr("Move%1").arg(quoted_label(surface->label)),
        [&](Job& job) {
            Surface& target = *with_id(job.site.surfaces, surface_id);
            target.origin.x_m = to_mm(origin_x_m);
            target.origin.y_m = to_mm(origin_y_m);
        },
        key_for("move", surface_id));
}

void remove_element(JobSession& session, const std::string& id) {
    const Site& site = session.job().site;
    QString label;
    if (const Surface* surface = find_surface(site, id)) label = quoted_label(surface->label);
    if (const Obstacle* obstacle = with_id(site.obstacles, id)) label = quoted_label(obstacle->label);
    if (const CylinderSpot* spot = find_spot(site, id)) label = quoted_label(spot->label);
    if (const Room* room = with_id(site.rooms, id)) label = quoted_label(room->label);
    // A plane of a building would come back with the next edit: the building goes, and all that was made from it.
    std::string building_id = id;
    if (const Surface* surface = find_surface(site, id))
        if (const Building* building = building_of_edge(site, surface->footprint_edge_id)) building_id = building->id;
    if (const Building* building = find_building(site, building_id)) label = quoted_label(building->label);
    session.edit(QObject::tr("Remove%1").arg(label), [&](Job& job) {
        remove_building(job, building_id);
        remove_surface(job, id);
        erase_id(job.site.obstacles, id);
        remove_spot(job, id);
        erase_id(job.site.rooms, id);
        for (Surface& surface : job.site.surfaces)
            erase_id(surface.keep_outs, id);
    });
}

}  // namespace wg::ui
