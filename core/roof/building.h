#pragma once
// One step from a footprint to a house: roof planes, walls and parapets with tilt, bearing, outline and height.

#include <string>
#include <vector>

#include "core/job/job.h"
#include "core/quantity/result.h"

namespace wg::roof {

/// What the surveyor enters.
struct HouseForm {
    std::vector<Point2> footprint;  ///< along the outside of the walls, sketch coordinates, either sense
    BuildingShape shape = BuildingShape::gable;
    double pitch_deg = 35.0;   ///< 1..75; of no account for a flat roof
    double eaves_m = 5.0;      ///< height of the roof over the ground where it meets the wall (the low one), 1..60
    double overhang_m = 0.4;   ///< level, past the wall at eaves, 0..2
    double verge_m = 0.2;      ///< past the wall at gables and at the sides of a mono-pitch, 0..2
    std::size_t low_edge = 0;  ///< mono-pitch, lean-to: the edge with the low eaves; a lean-to's high edge has no wall
    std::vector<std::size_t> gables;  ///< gable roof: edges that are gables; empty: `usual_gables`
    double parapet_m = 0.0;           ///< flat roof: height of its parapet over the roof, 0..3
    double parapet_width_m = 0.30;    ///< 0.05..1
    Covering covering = Covering::clay_tile;
    Covering wall_covering = Covering::render;
};

enum class PartKind { roof_plane, wall };

/// A surface with what it came from: kind and edge stay the same when heights and angles are edited.
struct Part {
    PartKind kind = PartKind::roof_plane;
    std::size_t edge = 0;  ///< of the footprint made counter-clockwise
    Surface surface;       ///< id empty
};

struct House {
    std::vector<Part> parts;         ///< roof planes, then walls, each in the order of edges
    std::vector<Obstacle> parapets;  ///< ids empty
    double ridge_m = 0.0;            ///< highest point of the roof over the ground
};

/// Problems name what is wrong with footprint, pitch, heights or gables.
[[nodiscard]] Result<House> house_of(const HouseForm& building, double sketch_up_azimuth_deg);

/// A plane drawn free in plan: it rises from its first edge at the pitch (0..89 degrees; 0: level), that edge at
/// `edge_height_m` over the ground. Kind roof; id, label and covering are the caller's. Problem: a bad outline or one
/// that reaches below its first edge.
[[nodiscard]] Result<Surface> free_plane(const std::vector<Point2>& outline, double pitch_deg, double edge_height_m,
                                         double sketch_up_azimuth_deg);

/// Edges of a counter-clockwise footprint that carry gables by habit: the ends of wings, and the short sides of a plain
/// rectangle.
[[nodiscard]] std::vector<std::size_t> usual_gables(const std::vector<Point2>& footprint);

/// The footprint counter-clockwise; edge i of `edges` is the given one's edge.
struct Ordered {
    std::vector<Point2> footprint;
    std::vector<std::size_t> edges;
};
[[nodiscard]] Ordered counter_clockwise(const std::vector<Point2>& footprint);

/// Pitch from rise over run (0 < rise, 0 < run), and from the heights of both ends of a slope.
[[nodiscard]] Result<double> pitch_from_rise(double rise_m, double run_m);
[[nodiscard]] Result<double> pitch_from_heights(double low_m, double high_m, double run_m);

}  // namespace wg::roof
