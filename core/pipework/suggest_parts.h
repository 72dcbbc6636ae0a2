#pragma once
// Inside of suggest.cpp: the way out of doors over the planes, and the way indoors.

#include <optional>
#include <vector>

#include "core/pipework/suggest.h"
#include "core/site/geometry.h"

namespace wg::pipework::suggesting {

inline constexpr double clear_of_m = 0.10;  ///< of the pipe from edges, plates, obstacles, walls
inline constexpr double behind_m = 0.30;    ///< a passage leads so far before the pipe can turn

[[nodiscard]] inline Point3 sum(Point3 a, Point3 b, double times = 1.0) noexcept {
    return {a.x_m + times * b.x_m, a.y_m + times * b.y_m, a.z_m + times * b.z_m};
}
[[nodiscard]] double apart_m(Point3 a, Point3 b) noexcept;

/// Where the house is, as far as it is drawn.
struct House {
    std::vector<std::vector<Point2>> plan;  ///< footprints, or the roofs seen from above
    double wall_in_m = 0.0;                 ///< of the wall behind the plan's edge: the overhang where roofs stand in
    bool from_roofs = false;
    Point2 u{1.0, 0.0}, v{0.0, 1.0};  ///< level directions of its walls
    struct Roof {
        site::Frame frame;
        std::vector<Point2> plan;
    };
    std::vector<Roof> roofs;
    std::vector<double> floors_m;  ///< heights where a vertical leg goes through a floor, rising
    struct Closed {
        std::vector<Point2> outline;
        double from_z_m, to_z_m;
    };
    std::vector<Closed> closed;  ///< rooms without pipes, obstacles that go through
    int rooms_closed = 0;

    [[nodiscard]] bool covers(Point2 p) const;
    [[nodiscard]] double under_roof_m(Point2 p) const;  ///< height of the roof there; very high where none is drawn
    [[nodiscard]] bool is_closed(Point3 p) const;
};
[[nodiscard]] House house_round(const Site& site, Point3 to, double ceiling_m);
/// Outline of a box, prism or post seen from above, `clear_m` wider all round; empty for a tree.
[[nodiscard]] std::vector<Point2> plan_of(const Obstacle& obstacle, double clear_m);

/// A place where the way can leave the open air.
struct Entrance {
    Point3 at;
    RoutePointKind kind = RoutePointKind::wall_passage;
    Point3 inward;            ///< unit vector of the first leg behind it
    double cost = 0.0;        ///< from the collector to here, passage included
    std::vector<Point3> way;  ///< corners from the collector's plane to `at`, ends included
};
/// Cheapest way to each entrance, cheapest first.
[[nodiscard]] std::vector<Entrance> entrances(const SuggestInput& input, const House& house);

/// Corners from `from` to `to` along the house's directions and plumb, ends included; nothing when there is no way.
struct Indoors {
    double cost = 0.0;
    std::vector<Point3> way;
};
[[nodiscard]] std::optional<Indoors> indoors(const House& house, Point3 from, Point3 arriving, Point3 to,
                                             double ceiling_m);

}  // namespace wg::pipework::suggesting
