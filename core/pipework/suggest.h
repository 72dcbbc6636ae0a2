#pragma once
// A first way for the run: along the building's planes and their edges, through roof or wall, indoors under ceilings.

#include <string>
#include <vector>

#include "core/job/job.h"
#include "core/quantity/geometry.h"

namespace wg::pipework {

// What a way is judged by, in metres of pipe: practice, no published source.
inline constexpr double bend_costs_m = 0.5;
inline constexpr double roof_passage_costs_m = 3.0;
inline constexpr double wall_passage_costs_m = 1.5;
inline constexpr double floor_passage_costs_m = 1.0;
inline constexpr double open_face_costs = 1.25;    ///< a metre away from the edges of a plane
inline constexpr double through_room_costs = 2.0;  ///< a level metre indoors that is not under a ceiling
inline constexpr double rising_costs = 1.3;        ///< a metre in which vapour rises to the block

/// A collector's outline in the plane of its surface: the way goes round it.
struct Occupied {
    std::string surface_id;
    std::vector<Point2> outline;
};

struct SuggestInput {
    const Site* site = nullptr;  ///< not owned
    Point3 from;                 ///< middle of the collectors' connections
    std::string from_surface;    ///< that carries them
    Point3 to;                   ///< block
    double ceiling_m = 0.0;      ///< height of the ceiling over the cylinder in the sketch
    std::vector<Occupied> collectors;
};

struct Suggestion {
    bool found = false;
    std::vector<RoutePoint> route;  ///< between collector and block, in order; ids are the caller's to give
    double length_m = 0.0;
    int bends = 0;
    int passages = 0;
    std::string why;  ///< how it goes and what was assumed; when not found, what stands in the way
};

/// Shortest by the costs above. Keeps out of rooms without pipes, keep-outs, obstacles and collectors; where the house
/// stands is known from its buildings, or else from the roofs drawn. Same input, same way. The handbook tells the
/// limits.
[[nodiscard]] Suggestion suggest_run(const SuggestInput& input);

}  // namespace wg::pipework
