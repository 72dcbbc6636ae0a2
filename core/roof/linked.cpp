#include "core/roof/linked.h"

#include <algorithm>
#include <cmath>
#include <optional>
#include <unordered_set>

#include "core/quantity/angle.h"
#include "core/quantity/constants.h"
#include "core/quantity/outline.h"
#include "core/site/geometry.h"

namespace wg::roof {
namespace {

std::unordered_set<std::string> edge_ids(const Building& building) {
    std::unordered_set<std::string> out;
    for (const FootprintEdge& edge : building.edges)
        out.insert(edge.id);
    return out;
}

template <class T>
bool linked_to(const std::unordered_set<std::string>& edges, const T& element) {
    return !element.footprint_edge_id.empty() && edges.count(element.footprint_edge_id) != 0;
}

/// A plane that goes takes what is on it along; a collector must not vanish that way.
std::optional<Problem> collector_on(const Job& job, const Surface& surface) {
    for (const Choice& choice : job.choices)
        for (const Placement& placement : choice.placements) {
            if (placement.surface_id != surface.id) continue;
            return Problem{"choice \"" + choice.label + "\"",
                           "the collector \"" + placement.label + "\" stands on \"" + surface.label +
                               "\", which the building would no longer have",
                           "Move the collector to another surface first"};
        }
    return std::nullopt;
}

void note_lost(std::vector<std::string>& lost, const Surface& surface) {
    for (const KeepOut& keep_out : surface.keep_outs)
        lost.push_back("\"" + keep_out.label + "\" on \"" + surface.label + "\"");
}

/// What the building says about a surface; the rest is the surveyor's.
void take_shape(Surface& kept, const Surface& made) {
    kept.kind = made.kind;
    kept.roof_form = made.roof_form;
    kept.tilt_deg = made.tilt_deg;
    kept.azimuth_deg = made.azimuth_deg;
    kept.origin = made.origin;
    kept.outline = made.outline;
    kept.ridge_height_m = made.ridge_height_m;
}

void take_shape(Obstacle& kept, const Obstacle& made) {
    kept.kind = made.kind;
    kept.base = made.base;
    kept.width_m = made.width_m;
    kept.depth_m = made.depth_m;
    kept.height_m = made.height_m;
    kept.turn_deg = made.turn_deg;
}

const Surface* made_before(const Site& site, const std::string& edge_id, PartKind kind) {
    const bool wall = kind == PartKind::wall;
    const auto at = std::find_if(site.surfaces.begin(), site.surfaces.end(), [&](const Surface& s) {
        return s.footprint_edge_id == edge_id && (s.kind == SurfaceKind::wall) == wall;
    });
    return at == site.surfaces.end() ? nullptr : &*at;
}

std::vector<Surface> surfaces_of(const House& house, const Ordered& ordered, const Building& building,
                                 const Building* before, const Site& site, const NewId& new_id) {
    std::vector<Surface> out;
    for (const Part& part : house.parts) {
        const std::string& edge_id = building.edges[ordered.edges[part.edge]].id;
        Surface surface = part.surface;
        if (const Surface* kept = made_before(site, edge_id, part.kind)) {
            surface = *kept;
            take_shape(surface, part.surface);
            const bool wall = part.kind == PartKind::wall;
            if (before != nullptr && kept->covering == (wall ? before->wall_covering : before->covering))
                surface.covering = part.surface.covering;
        } else {
            surface.id = new_id();
            if (!building.label.empty()) surface.label = building.label + ": " + surface.label;
        }
        surface.footprint_edge_id = edge_id;
        out.push_back(std::move(surface));
    }
    return out;
}

std::vector<Obstacle> parapets_of(const House& house, const Ordered& ordered, const Building& building,
                                  const Site& site, const NewId& new_id) {
    std::vector<Obstacle> out;
    for (std::size_t i = 0; i < house.parapets.size(); ++i) {
        const std::string& edge_id = building.edges[ordered.edges[i]].id;
        const auto kept = std::find_if(site.obstacles.begin(), site.obstacles.end(),
                                       [&](const Obstacle& o) { return o.footprint_edge_id == edge_id; });
        Obstacle obstacle = house.parapets[i];
        if (kept != site.obstacles.end()) {
            obstacle = *kept;
            take_shape(obstacle, house.parapets[i]);
        } else {
            obstacle.id = new_id();
            obstacle.use = ObstacleUse::parapet;
        }
        obstacle.footprint_edge_id = edge_id;
        out.push_back(std::move(obstacle));
    }
    return out;
}

/// Puts `made` where the first of the building's own stood, so that an edit changes no order elsewhere.
template <class T>
void replace_linked(std::vector<T>& all, const std::unordered_set<std::string>& edges, std::vector<T> made) {
    std::size_t at = all.size();
    std::vector<T> out;
    for (const T& element : all) {
        if (!linked_to(edges, element))
            out.push_back(element);
        else
            at = std::min(at, out.size());
    }
    at = std::min(at, out.size());
    out.insert(out.begin() + static_cast<std::ptrdiff_t>(at), std::make_move_iterator(made.begin()),
               std::make_move_iterator(made.end()));
    all = std::move(out);
}

Problem no_building() {
    return {"building", "the job has no such building", "Choose one that exists"};
}

Result<Building> checked(Building building) {
    if (const auto fault = outline_fault(footprint_of(building)))
        return Problem{"footprint", fault->text(), "Put the corner where the outline closes without crossing"};
    return building;
}

}  // namespace

std::vector<Point2> footprint_of(const Building& building) {
    std::vector<Point2> out;
    for (const FootprintEdge& edge : building.edges)
        out.push_back(edge.from);
    return out;
}

HouseForm form_of(const Building& building) {
    HouseForm form;
    form.footprint = footprint_of(building);
    form.shape = building.shape;
    form.pitch_deg = building.pitch_deg;
    form.eaves_m = building.eaves_m;
    form.overhang_m = building.overhang_m;
    form.verge_m = building.verge_m;
    for (std::size_t i = 0; i < building.edges.size(); ++i) {
        if (building.edges[i].gable) form.gables.push_back(i);
        if (building.edges[i].id == building.low_edge_id) form.low_edge = i;
    }
    form.parapet_m = building.parapet_m;
    form.parapet_width_m = building.parapet_width_m;
    form.covering = building.covering;
    form.wall_covering = building.wall_covering;
    return form;
}

Result<Rebuilt> with_building(const Job& job, const Building& building, const NewId& new_id) {
    const auto house = house_of(form_of(building), job.site.sketch_up_azimuth_deg);
    if (!house) return house.problems();
    const Ordered ordered = counter_clockwise(footprint_of(building));
    const Building* before = find_building(job.site, building.id);

    Rebuilt out{job, {}};
    Site& site = out.job.site;
    auto surfaces = surfaces_of(house.value(), ordered, building, before, job.site, new_id);
    auto parapets = parapets_of(house.value(), ordered, building, job.site, new_id);
    std::unordered_set<std::string> edges = edge_ids(building);
    if (before != nullptr) edges.merge(edge_ids(*before));

    std::unordered_set<std::string> kept;
    for (const Surface& surface : surfaces)
        kept.insert(surface.id);
    for (const Surface& surface : job.site.surfaces) {
        if (!linked_to(edges, surface) || kept.count(surface.id) != 0) continue;
        if (auto problem = collector_on(job, surface)) return *problem;
        note_lost(out.lost, surface);
    }
    replace_linked(site.surfaces, edges, std::move(surfaces));
    replace_linked(site.obstacles, edges, std::move(parapets));
    if (before != nullptr)
        site.buildings[static_cast<std::size_t>(before - job.site.buildings.data())] = building;
    else
        site.buildings.push_back(building);
    return out;
}

Result<Rebuilt> without_building(const Job& job, const std::string& building_id) {
    const Building* building = find_building(job.site, building_id);
    if (building == nullptr) return no_building();
    const auto edges = edge_ids(*building);
    Rebuilt out{job, {}};
    for (const Surface& surface : job.site.surfaces) {
        if (!linked_to(edges, surface)) continue;
        if (auto problem = collector_on(job, surface)) return *problem;
        note_lost(out.lost, surface);
    }
    Site& site = out.job.site;
    replace_linked(site.surfaces, edges, std::vector<Surface>{});
    replace_linked(site.obstacles, edges, std::vector<Obstacle>{});
    site.buildings.erase(site.buildings.begin() + (building - job.site.buildings.data()));
    return out;
}

Result<Job> released(const Job& job, const std::string& building_id) {
    const Building* building = find_building(job.site, building_id);
    if (building == nullptr) return no_building();
    const auto edges = edge_ids(*building);
    Job out = job;
    for (Surface& surface : out.site.surfaces)
        if (linked_to(edges, surface)) surface.footprint_edge_id.clear();
    for (Obstacle& obstacle : out.site.obstacles)
        if (linked_to(edges, obstacle)) obstacle.footprint_edge_id.clear();
    out.site.buildings.erase(out.site.buildings.begin() + (building - job.site.buildings.data()));
    return out;
}

Result<Building> with_corner(const Building& building, std::size_t edge, const Point2& corner, const NewId& new_id) {
    if (edge >= building.edges.size()) return Problem{"footprint", "there is no such edge", "Choose an edge"};
    Building out = building;
    FootprintEdge added;
    added.id = new_id();
    added.from = corner;
    added.gable = building.edges[edge].gable;
    out.edges.insert(out.edges.begin() + static_cast<std::ptrdiff_t>(edge) + 1, added);
    return checked(std::move(out));
}

Result<Building> without_corner(const Building& building, std::size_t corner) {
    if (corner >= building.edges.size()) return Problem{"footprint", "there is no such corner", "Choose a corner"};
    if (building.edges.size() <= 3)
        return Problem{"footprint", "a footprint needs at least three corners", "Move the corner instead"};
    Building out = building;
    if (out.low_edge_id == out.edges[corner].id) {
        // The edge before runs on in its place.
        out.low_edge_id = out.edges[(corner + out.edges.size() - 1) % out.edges.size()].id;
    }
    out.edges.erase(out.edges.begin() + static_cast<std::ptrdiff_t>(corner));
    return checked(std::move(out));
}

Result<Building> with_corner_at(const Building& building, std::size_t corner, const Point2& place) {
    if (corner >= building.edges.size()) return Problem{"footprint", "there is no such corner", "Choose a corner"};
    Building out = building;
    out.edges[corner].from = place;
    return checked(std::move(out));
}

Result<Building> with_edge_length(const Building& building, std::size_t edge, double length_m) {
    const std::size_t count = building.edges.size();
    if (edge >= count) return Problem{"footprint", "there is no such edge", "Choose an edge"};
    if (!(length_m >= 0.01 && length_m <= 1000.0))
        return Problem{"footprint", "an edge is between 0.01 m and 1000 m long", "Measure again or correct the entry"};
    Building out = building;
    const Point2 from = building.edges[edge].from;
    Point2& to = out.edges[(edge + 1) % count].from;
    Point2& next = out.edges[(edge + 2) % count].from;
    const double now_m = std::hypot(to.x_m - from.x_m, to.y_m - from.y_m);
    if (now_m < 1e-6) return Problem{"footprint", "the edge has no direction", "Move one of its corners"};
    const double by = (length_m - now_m) / now_m;
    const Point2 shift{(to.x_m - from.x_m) * by, (to.y_m - from.y_m) * by};
    to = {to.x_m + shift.x_m, to.y_m + shift.y_m};
    // Of a triangle the next edge ends where this one begins, which stays.
    if (count > 3) next = {next.x_m + shift.x_m, next.y_m + shift.y_m};
    return checked(std::move(out));
}

Building moved(const Building& building, double dx_m, double dy_m) {
    Building out = building;
    for (FootprintEdge& edge : out.edges)
        edge.from = {edge.from.x_m + dx_m, edge.from.y_m + dy_m};
    return out;
}

Result<double> pitch_for_ridge(const Building& building, double ridge_m) {
    if (building.shape == BuildingShape::flat)
        return Problem{"building", "a flat roof has no pitch", "Choose another shape first"};
    const auto house = house_of(form_of(building), 0.0);
    if (!house) return house.problems();
    // Heights over the eaves grow with the tangent of the pitch; the run below them stays.
    const double run_m = (house.value().ridge_m - building.eaves_m) / std::tan(radians(building.pitch_deg));
    const auto pitch = pitch_from_heights(building.eaves_m, ridge_m, run_m);
    if (!pitch) return pitch.problems();
    if (pitch.value() < 1.0 || pitch.value() > 75.0)
        return Problem{"building", "this ridge would need a pitch outside 1 to 75 degrees",
                       "Measure both heights again"};
    return pitch.value();
}

double wall_faces_deg(const Building& building, std::size_t edge, double sketch_up_azimuth_deg) {
    const Point2 a = building.edges[edge].from;
    const Point2 b = building.edges[(edge + 1) % building.edges.size()].from;
    const double sign = site::signed_area_m2(footprint_of(building)) >= 0.0 ? 1.0 : -1.0;
    // Outward is to the right of an edge that runs round counter-clockwise.
    const double east = sign * (b.y_m - a.y_m), north = -sign * (b.x_m - a.x_m);
    return wrap_360(sketch_up_azimuth_deg + degrees(std::atan2(east, north)));
}

}  // namespace wg::roof
