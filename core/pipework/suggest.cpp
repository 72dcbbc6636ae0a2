#include "core/pipework/suggest.h"

#include <algorithm>
#include <cmath>

#include "core/pipework/legs.h"
#include "core/pipework/suggest_parts.h"
#include "core/quantity/text.h"
#include "core/site/vec.h"

namespace wg::pipework {
namespace {

using suggesting::Entrance;
using suggesting::House;
using suggesting::Indoors;

constexpr int most_tried = 24;          // entrances searched from; the cheapest come first
constexpr double straight_on_m = 1e-4;  // a corner nearer to the line of its neighbours is none
constexpr double tall_storey_m = 3.5;

double room_metre(double v) {
    return std::round(v * 1000.0) / 1000.0;
}
Point3 to_millimetres(Point3 p) {
    return {room_metre(p.x_m), room_metre(p.y_m), room_metre(p.z_m)};
}

double least_indoors(Point3 a, Point3 b, const House& house) {
    const Point3 d{b.x_m - a.x_m, b.y_m - a.y_m, b.z_m - a.z_m};
    return std::abs(d.x_m * house.u.x_m + d.y_m * house.u.y_m) + std::abs(d.x_m * house.v.x_m + d.y_m * house.v.y_m) +
           std::abs(d.z_m);
}

/// Where the way indoors goes through floors.
void add_floors(const House& house, Point3 a, Point3 b, std::vector<RoutePoint>& route) {
    std::vector<double> crossed;
    for (const double floor : house.floors_m)
        if (floor > std::min(a.z_m, b.z_m) && floor <= std::max(a.z_m, b.z_m)) crossed.push_back(floor);
    if (a.z_m > b.z_m) std::reverse(crossed.begin(), crossed.end());
    for (const double floor : crossed)
        route.push_back({"", RoutePointKind::floor_passage, {a.x_m, a.y_m, floor}, ""});
}

/// Corners in one line are left out; passages stay.
std::vector<RoutePoint> without_needless(const SuggestInput& input, const std::vector<RoutePoint>& route) {
    std::vector<RoutePoint> kept;
    Point3 last = input.from;
    for (std::size_t i = 0; i < route.size(); ++i) {
        const Point3 p = route[i].position, next = i + 1 < route.size() ? route[i + 1].position : input.to;
        if (route[i].kind == RoutePointKind::free) {
            const double detour =
                suggesting::apart_m(last, p) + suggesting::apart_m(p, next) - suggesting::apart_m(last, next);
            if (detour < straight_on_m || suggesting::apart_m(last, p) < 0.01 || suggesting::apart_m(p, next) < 0.01)
                continue;
        }
        kept.push_back(route[i]);
        kept.back().position = to_millimetres(p);
        last = p;
    }
    return kept;
}

std::vector<RoutePoint> route_of(const SuggestInput& input, const House& house, const Entrance& entrance,
                                 const Indoors& inside) {
    std::vector<RoutePoint> route;
    for (std::size_t i = 0; i + 1 < entrance.way.size(); ++i)
        route.push_back({"", RoutePointKind::free, entrance.way[i], ""});
    route.push_back({"", entrance.kind, entrance.at, ""});
    Point3 last = entrance.at;
    for (const Point3 p : inside.way) {
        add_floors(house, last, p, route);
        if (suggesting::apart_m(p, input.to) > 1e-6) route.push_back({"", RoutePointKind::free, p, ""});
        last = p;
    }
    return without_needless(input, route);
}

std::string words_of(const SuggestInput& input, const House& house, RoutePointKind first) {
    std::string out = std::string("Through the ") + (first == RoutePointKind::roof_passage ? "roof" : "wall") +
                      ", then indoors plumb and along ceilings.";
    if (house.rooms_closed > 0)
        out += " Keeps out of " + counted(house.rooms_closed, "room", "rooms") + " without pipes.";
    if (house.plan.empty())
        out += " The house round the cylinder is not drawn: walls indoors are not known.";
    else if (house.from_roofs)
        out += " The house is taken as the roofs seen from above; draw its footprint for the walls.";
    double low = input.to.z_m;
    for (const double floor : house.floors_m) {
        if (floor > low && floor - low > tall_storey_m)
            out += " Floors between " + fixed(low, 1) + " m and " + fixed(floor, 1) +
                   " m are not known: count on one more passage for each.";
        low = std::max(low, floor);
    }
    return out;
}

}  // namespace

Suggestion suggest_run(const SuggestInput& input) {
    Suggestion out;
    if (input.site == nullptr) return out;
    const House house = suggesting::house_round(*input.site, input.to, input.ceiling_m);
    const std::vector<Entrance> ways_in = suggesting::entrances(input, house);
    if (ways_in.empty()) {
        out.why =
            "No way over the planes drawn leads from the collector to roof or wall of the house with the cylinder";
        return out;
    }
    std::vector<std::pair<double, std::size_t>> order;
    for (std::size_t i = 0; i < ways_in.size(); ++i)
        order.emplace_back(ways_in[i].cost + least_indoors(ways_in[i].at, input.to, house), i);
    std::sort(order.begin(), order.end());

    double best = 0.0;
    const Entrance* entrance = nullptr;
    Indoors inside;
    int tried = 0;
    for (const auto& [least, i] : order) {
        if (entrance != nullptr && least >= best) break;
        const Entrance& e = ways_in[i];
        const Point3 behind = suggesting::sum(e.at, e.inward, suggesting::behind_m);
        if (house.is_closed(behind)) continue;
        if (++tried > most_tried) break;
        const auto found = suggesting::indoors(house, behind, e.inward, input.to, input.ceiling_m);
        if (!found) continue;
        const double cost = e.cost + suggesting::behind_m + found->cost;
        if (entrance != nullptr && cost >= best - 1e-9) continue;
        best = cost;
        entrance = &e;
        inside = *found;
    }
    if (entrance == nullptr) {
        out.why = "No way indoors keeps out of the rooms without pipes";
        return out;
    }
    out.found = true;
    out.route = route_of(input, house, *entrance, inside);
    const std::vector<Leg> legs = legs_of(input.from, out.route, input.to);
    for (const Leg& leg : legs) {
        out.length_m += leg.length_m;
        if (leg.turn_deg > bend_from_deg) ++out.bends;
    }
    for (const RoutePoint& p : out.route)
        if (p.kind != RoutePointKind::free) ++out.passages;
    out.why = words_of(input, house, entrance->kind);
    return out;
}

}  // namespace wg::pipework
