#pragma once
// The footprint's outline as it shrinks while the roof rises. Internal to core/roof.

#include <vector>

#include "core/roof/faces.h"

namespace wg::roof {

/// A piece of a face's boundary.
struct Side {
    RoofPoint from, to;
};

/// Every edge moves inwards at its own speed (cotangent of its pitch a metre of height; a gable stands still), and the
/// corners between neighbours draw the hips, valleys and ridges. Three things happen on the way: an edge shrinks to
/// nothing; an inner corner runs into another edge and parts the outline in two; two edges meet along a line, a ridge.
/// After O. Aichholzer, F. Aurenhammer et al., A novel type of skeleton for polygons, J. Universal Computer Science 1
/// (1995) 752, with weights; events are searched anew each time (footprints have few corners).
class Front {
   public:
    Front(const std::vector<Point2>& footprint, const std::vector<EdgePitch>& pitches);

    /// Lets the outline shrink until nothing is left. False: it does not come to an end.
    [[nodiscard]] bool rise();
    /// Boundary of the face over an edge, the edge itself left out; unordered.
    [[nodiscard]] const std::vector<Side>& sides_of(std::size_t edge) const { return sides_[edge]; }

   private:
    /// Line of an edge: points p with normal . p = offset + speed * height.
    struct Line {
        Point2 normal, along;
        double offset = 0.0, speed = 0.0;
    };
    /// Place of an edge in a loop, with the corner at its beginning: where that was born and how it moves.
    struct Corner {
        std::size_t edge = 0;
        RoofPoint born;
        Point2 velocity;
    };
    using Loop = std::vector<Corner>;
    struct Event {
        double height_m = 0.0;
        std::size_t loop = 0, corner = 0, hit = 0;
        bool splits = false;
    };

    [[nodiscard]] Point2 at(const Corner& corner, double height_m) const;
    [[nodiscard]] bool start(const Loop& loop, std::size_t corner, RoofPoint born, Corner& out) const;
    [[nodiscard]] bool restart(Loop& loop, std::size_t corner, const RoofPoint& born);
    [[nodiscard]] bool meets_along(std::size_t edge_a, std::size_t edge_b, double height_m) const;
    [[nodiscard]] std::optional<Event> next_event() const;
    [[nodiscard]] bool apply(const Event& event);
    [[nodiscard]] bool shrink(std::size_t loop, std::size_t corner);
    [[nodiscard]] bool split(const Event& event);
    [[nodiscard]] bool close_ridges(std::size_t loop);
    void end_corner(const Loop& loop, std::size_t corner, double height_m);
    void finish(const Loop& loop);
    void add(std::size_t edge, const RoofPoint& from, const RoofPoint& to);
    [[nodiscard]] double area_m2(const Loop& loop, double height_m) const;

    std::vector<Line> lines_;
    std::vector<Loop> loops_;
    std::vector<std::vector<Side>> sides_;
    double height_m_ = 0.0;
};

}  // namespace wg::roof
