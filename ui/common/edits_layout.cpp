// Verbs about collectors on their surfaces and the pipe run.

#include <limits>

#include "core/equipment/equipment.h"
#include "core/fixing/layout_place.h"
#include "core/quantity/angle.h"
#include "core/site/geometry.h"
#include "ui/common/edit_tools.h"
#include "ui/common/edits.h"
#include "ui/common/format.h"

namespace wg::ui {
namespace {

constexpr double search_step_m = 0.1;        ///< of free_place()
constexpr std::size_t search_cells = 40000;  ///< at most; larger surfaces are searched more coarsely
constexpr double side_gap_m = 0.1;           ///< kept between neighbouring collectors: room for a hand and a clamp

QString key_for(const char* verb, const std::string& id) {
    return QLatin1String(verb) + QLatin1Char(':') + qs(id);
}

void edit_placement(JobSession& session, const QString& what, const std::string& id,
                    const std::function<void(Placement&)>& change, const QString& merge_key = {}) {
    const Choice* current = session.current_choice();
    if (current == nullptr || with_id(current->placements, id) == nullptr) return;
    const std::string choice_id = current->id;
    session.edit(
        what, [&](Job& job) { change(*with_id(with_id(job.choices, choice_id)->placements, id)); }, merge_key);
}

void edit_route(JobSession& session, const QString& what, const std::function<void(std::vector<RoutePoint>&)>& change,
                const QString& merge_key = {}) {
    const Choice* current = session.current_choice();
    if (current == nullptr) return;
    const std::string choice_id = current->id;
    session.edit(
        what, [&](Job& job) { change(with_id(job.choices, choice_id)->route); }, merge_key);
}

struct Box {
    double left = std::numeric_limits<double>::infinity();
    double bottom = std::numeric_limits<double>::infinity();
    double right = -std::numeric_limits<double>::infinity();
    double top = -std::numeric_limits<double>::infinity();
};

Box box_of(const std::vector<Point2>& outline) {
    Box box;
    for (const Point2& p : outline) {
        box.left = std::min(box.left, p.x_m);
        box.right = std::max(box.right, p.x_m);
        box.bottom = std::min(box.bottom, p.y_m);
        box.top = std::max(box.top, p.y_m);
    }
    return box;
}

/// How good a place is for a plate; places that only the best keep go first.
enum class Fit { none, off_others, with_strip };

Fit fit_of(const fixing::Neighbourhood& round, const std::vector<Point2>& outline, double strip_m) {
    if (!fixing::keeps_hard_rules(round, outline)) return Fit::none;
    const bool off = std::none_of(round.others.begin(), round.others.end(), [&outline](const auto& other) {
        return site::gap_m(other.outline, outline) < side_gap_m;
    });
    if (!off) return Fit::none;
    return fixing::keeps_free_strip(round, outline, strip_m) ? Fit::with_strip : Fit::off_others;
}

/// A frame for surfaces too flat for the plate itself, none elsewhere.
void choose_frame(const JobSession& session, const Surface& surface, const CollectorModel* model,
                  Placement& placement) {
    const double least = model != nullptr ? model->tilt_min_deg : 10.0;
    if (surface.tilt_deg >= least) {
        placement.frame_tilt_deg.reset();
        placement.frame_azimuth_deg.reset();
    } else if (!placement.frame_tilt_deg) {
        const double usual_deg = 45.0;
        placement.frame_tilt_deg =
            model != nullptr ? std::clamp(usual_deg, model->tilt_recommended_min_deg,
                                          std::max(model->tilt_recommended_min_deg, model->tilt_recommended_max_deg))
                             : usual_deg;
        placement.frame_azimuth_deg = session.job().site.location.latitude_deg < 0.0 ? 0.0 : 180.0;
    }
}

Point2 free_place_of(const JobSession& session, const Choice& choice, const Surface& surface,
                     const Placement& placement) {
    if (surface.outline.empty()) return {};
    const Box box = box_of(surface.outline);
    const Point2 middle{(box.left + box.right) / 2.0, (box.bottom + box.top) / 2.0};
    const CollectorModel* model = find_collector(session.reference().catalogue, choice.collector_model);
    if (model == nullptr) return {to_mm(middle.x_m), to_mm(middle.y_m)};
    const double up = session.job().site.sketch_up_azimuth_deg;
    // The outline only moves with the placement, so it is worked out once and shifted.
    Placement at_origin = placement;
    at_origin.surface_id = surface.id;
    at_origin.x_m = 0.0;
    at_origin.y_m = 0.0;
    const std::vector<Point2> shape = site::place(surface, up, at_origin, *model).outline;
    Choice without = choice;
    erase_id(without.placements, placement.id);
    const fixing::Neighbourhood round = fixing::neighbourhood_of(session.job().site, without, *model, at_origin);
    if (round.surface == nullptr) return {to_mm(middle.x_m), to_mm(middle.y_m)};
    const double width = box.right - box.left;
    const double height = box.top - box.bottom;
    const double step = std::max(search_step_m, std::sqrt(width * height / static_cast<double>(search_cells)));
    const int half_x = static_cast<int>(width / 2.0 / step);
    const int half_y = static_cast<int>(height / 2.0 / step);
    // Nearest to the middle with the maker's strip free, and nearest without.
    constexpr double far = std::numeric_limits<double>::infinity();
    Point2 best = middle;
    Point2 best_kept;
    double best_distance = far;
    double best_kept_distance = far;
    for (int row = -half_y; row <= half_y; ++row) {
        for (int column = -half_x; column <= half_x; ++column) {
            const double dx = column * step;
            const double dy = row * step;
            // A little dearer up and down than sideways: neighbours stand in a row.
            const double distance = dx * dx + 1.5 * dy * dy;
            if (distance >= best_kept_distance) continue;
            std::vector<Point2> outline = shape;
            for (Point2& corner : outline)
                corner = {corner.x_m + middle.x_m + dx, corner.y_m + middle.y_m + dy};
            const Fit fit = fit_of(round, outline, model->clearance_m);
            if (fit == Fit::with_strip) {
                best_kept = {middle.x_m + dx, middle.y_m + dy};
                best_kept_distance = distance;
            } else if (fit == Fit::off_others && distance < best_distance) {
                best = {middle.x_m + dx, middle.y_m + dy};
                best_distance = distance;
            }
        }
    }
    if (best_kept_distance < far) best = best_kept;
    return {to_mm(best.x_m), to_mm(best.y_m)};
}

}  // namespace

Point2 free_place(const JobSession& session, const Surface& surface, const Placement& placement) {
    const Choice* current = session.current_choice();
    return free_place_of(session, current != nullptr ? *current : Choice(), surface, placement);
}

Placement proposed_collector(const JobSession& session, const Choice& choice, const Surface& surface) {
    const CollectorModel* model = find_collector(session.reference().catalogue, choice.collector_model);
    Placement placement;
    placement.id = new_id();
    placement.label = free_label(choice.placements, "Collector");
    placement.surface_id = surface.id;
    if (model != nullptr) {
        placement.hand = model->right_hand ? Hand::right : Hand::left;
        // Plates made to stand on the short side only are turned so from the start.
        placement.turn_deg = model->level_side == LevelSide::short_side ? 90.0 : 0.0;
    }
    choose_frame(session, surface, model, placement);
    const Point2 place = free_place_of(session, choice, surface, placement);
    placement.x_m = place.x_m;
    placement.y_m = place.y_m;
    return placement;
}

std::string add_collector(JobSession& session, const std::string& surface_id) {
    const Choice* current = session.current_choice();
    const Surface* surface = find_surface(session.job().site, surface_id);
    if (current == nullptr || surface == nullptr) return {};
    const Placement placement = proposed_collector(session, *current, *surface);
    const std::string choice_id = current->id;
    session.edit(QObject::tr("Place a collector on '%1'").arg(qs(surface->label)),
                 [&](Job& job) { with_id(job.choices, choice_id)->placements.push_back(placement); });
    return placement.id;
}

void remove_collector(JobSession& session, const std::string& placement_id) {
    const Choice* current = session.current_choice();
    if (current == nullptr) return;
    const std::string choice_id = current->id;
    session.edit(QObject::tr("Remove a collector"),
                 [&](Job& job) { erase_id(with_id(job.choices, choice_id)->placements, placement_id); });
}

void set_placement(JobSession& session, const Placement& placement, const QString& merge_key) {
    edit_placement(
        session, QObject::tr("Change the collector"), placement.id, [&](Placement& target) { target = placement; },
        merge_key);
}

void move_placement(JobSession& session, const std::string& placement_id, double x_m, double y_m) {
    if (!std::isfinite(x_m) || !std::isfinite(y_m)) return;
    edit_placement(
        session, QObject::tr("Move the collector"), placement_id,
        [&](Placement& target) {
            target.x_m = to_mm(x_m);
            target.y_m = to_mm(y_m);
        },
        key_for("move", placement_id));
}

void turn_placement(JobSession& session, const std::string& placement_id, double turn_deg) {
    if (!std::isfinite(turn_deg)) return;
    edit_placement(
        session, QObject::tr("Turn the collector"), placement_id,
        [&](Placement& target) { target.turn_deg = wrap_360(turn_deg); }, key_for("turn", placement_id));
}

void set_hand(JobSession& session, const std::string& placement_id, Hand hand) {
    const QString what =
        hand == Hand::left ? QObject::tr("Put the connections left") : QObject::tr("Put the connections right");
    edit_placement(session, what, placement_id, [&](Placement& target) { target.hand = hand; });
}

void move_placement_to_surface(JobSession& session, const std::string& placement_id, const std::string& surface_id) {
    const Choice* current = session.current_choice();
    const Surface* surface = find_surface(session.job().site, surface_id);
    if (current == nullptr || surface == nullptr) return;
    const Placement* placement = with_id(current->placements, placement_id);
    if (placement == nullptr || placement->surface_id == surface_id) return;
    Placement moved = *placement;
    moved.surface_id = surface_id;
    choose_frame(session, *surface, find_collector(session.reference().catalogue, current->collector_model), moved);
    const Point2 place = free_place(session, *surface, moved);
    moved.x_m = place.x_m;
    moved.y_m = place.y_m;
    edit_placement(session, QObject::tr("Move the collector to '%1'").arg(qs(surface->label)), placement_id,
                   [&](Placement& target) { target = moved; });
}

std::string put_collector(JobSession& session, const std::string& placement_id, Placement at,
                          const std::string& fixing_method) {
    const Choice* current = session.current_choice();
    const Surface* surface = find_surface(session.job().site, at.surface_id);
    if (current == nullptr || surface == nullptr || !std::isfinite(at.x_m) || !std::isfinite(at.y_m)) return {};
    const Placement* old = with_id(current->placements, placement_id);
    if (old == nullptr && !placement_id.empty()) return {};
    at.id = old != nullptr ? old->id : new_id();
    at.label = old != nullptr ? old->label : free_label(current->placements, "Collector");
    if (old != nullptr) at.extra_json = old->extra_json;
    at.x_m = to_mm(at.x_m);
    at.y_m = to_mm(at.y_m);
    const std::string choice_id = current->id;
    session.edit(QObject::tr("Put the collector on '%1'").arg(qs(surface->label)), [&](Job& job) {
        Choice& choice = *with_id(job.choices, choice_id);
        if (Placement* target = with_id(choice.placements, at.id)) {
            *target = at;
        } else {
            choice.placements.push_back(at);
        }
        if (!fixing_method.empty()) choice.fixing_method = fixing_method;
    });
    return at.id;
}

void set_frame(JobSession& session, const std::string& placement_id, std::optional<double> tilt_deg,
               std::optional<double> azimuth_deg) {
    if ((tilt_deg && !std::isfinite(*tilt_deg)) || (azimuth_deg && !std::isfinite(*azimuth_deg))) return;
    if (azimuth_deg) azimuth_deg = wrap_360(*azimuth_deg);
    edit_placement(
        session, QObject::tr("Change the frame"), placement_id,
        [&](Placement& target) {
            target.frame_tilt_deg = tilt_deg;
            target.frame_azimuth_deg = azimuth_deg;
        },
        key_for("frame", placement_id));
}

std::string add_route_point(JobSession& session, std::size_t index, const Point3& position, RoutePointKind kind) {
    if (session.current_choice() == nullptr || !finite(position)) return {};
    RoutePoint point;
    point.id = new_id();
    point.kind = kind;
    point.position = to_mm(position);
    edit_route(session, QObject::tr("Add a bend to the run"), [&](std::vector<RoutePoint>& route) {
        const std::size_t at = std::min(index, route.size());
        route.insert(route.begin() + static_cast<std::ptrdiff_t>(at), point);
    });
    return point.id;
}

void move_route_point(JobSession& session, const std::string& point_id, const Point3& position) {
    if (!finite(position)) return;
    edit_route(
        session, QObject::tr("Move a bend of the run"),
        [&](std::vector<RoutePoint>& route) {
            if (RoutePoint* point = with_id(route, point_id)) point->position = to_mm(position);
        },
        key_for("move", point_id));
}

void set_route_point_kind(JobSession& session, const std::string& point_id, RoutePointKind kind) {
    edit_route(session, QObject::tr("Change a bend of the run"), [&](std::vector<RoutePoint>& route) {
        if (RoutePoint* point = with_id(route, point_id)) point->kind = kind;
    });
}

void remove_route_point(JobSession& session, const std::string& point_id) {
    edit_route(session, QObject::tr("Remove a bend of the run"),
               [&](std::vector<RoutePoint>& route) { erase_id(route, point_id); });
}

void set_route(JobSession& session, std::vector<RoutePoint> route) {
    for (RoutePoint& point : route) {
        if (point.id.empty()) point.id = new_id();
        if (!finite(point.position)) return;
        point.position = to_mm(point.position);
    }
    edit_route(session, QObject::tr("Change the run"), [&](std::vector<RoutePoint>& target) { target = route; });
}

}  // namespace wg::ui
