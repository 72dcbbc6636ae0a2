#pragma once
// The shadow of one thing on a plane of cells, as a set of cells. The outline of the shadow is filled row by row;
// cells so near to it that rounding could decide are asked of `Occluder::passes`, so that the set is the same as if
// every cell had sent a ray.

#include <array>
#include <cstddef>
#include <vector>

#include "core/site/cell_grid.h"
#include "core/site/occluders.h"

namespace wg::site {

/// A sun seen from a grid: how far a shadow moves for each metre that the thing stands off the plane.
struct SunOnGrid {
    Point3 dir;                           ///< unit vector to the sun, sketch
    double slant_x = 0.0, slant_y = 0.0;  ///< cells for each metre off the plane
    double reach_x = 0.0, reach_y = 0.0;  ///< of the shadow of a ball, cells for each metre of its radius
    double stretch = 1.0;                 ///< 1 / cosine on the plane
    [[nodiscard]] bool before() const noexcept { return stretch > 0.0; }      ///< the plane's open side sees it
    [[nodiscard]] bool grazing() const noexcept { return !(stretch < 1e5); }  ///< outlines are no longer sharp
};
[[nodiscard]] SunOnGrid on_grid(const CellGrid& grid, Point3 to_sun) noexcept;

/// Room for the work; one for each thread.
class ShadowScratch {
   public:
    explicit ShadowScratch(const CellGrid& grid);

   private:
    friend class Shadow;
    friend class SpanFill;
    struct Ask {
        int row, from, to;  ///< columns from..to-1
    };
    CellMask outer;
    std::vector<Ask> asks, outer_asks;  ///< cells at which the spans may be wrong
    std::vector<int> low, high;         ///< of the row: first column inside, first column behind
    std::vector<Point2> corners;
    std::vector<char> faces_sun;
    std::vector<std::array<int, 2>> crossings;  ///< row and column
};

/// One occluder made ready for one grid.
class Shadow {
   public:
    Shadow(const Occluder& occluder, const CellGrid& grid);

    /// Puts the cells from which the ray to the sun is stopped into `opaque` and those whose ray meets a crown into
    /// `crown` (cells behind trunk and crown may be in either). Both masks come empty and of the grid's size. False
    /// when no cell is met.
    bool cast(const SunOnGrid& sun, ShadowScratch& scratch, CellMask& opaque, CellMask& crown) const;

    /// Share of the grid's whole rectangle in shadow, from the outline alone; `not_known` for what has none that is
    /// simple (crowns, prisms that are not convex) or sharp. A round post counts as one of 12 to 64 sides (within 2 %
    /// of its width).
    [[nodiscard]] double covered(const SunOnGrid& sun, ShadowScratch& scratch) const;
    static constexpr double not_known = -1.0;

   private:
    /// Corner in the grid's own coordinates: columns, rows, metres off the plane.
    struct Corner {
        double x, y, off_m;
    };
    /// Convex body, cut off behind the cells' plane.
    struct Body {
        struct Edge {
            int a, b, left, right;  ///< faces beside it; -1: the cut
        };
        std::vector<Corner> corners;
        std::vector<Point3> normals;
        std::vector<Edge> edges;
    };
    /// Flat outline, cut off behind the cells' plane; even-odd.
    struct Sheet {
        std::vector<Corner> corners;
        bool convex = false;
    };
    struct Ball {
        Corner middle{};
        double radius_m = -1.0;  ///< negative: nothing to shade with
    };
    struct Crown {
        Point3 first, step_x, step_y;  ///< of the grid, where the crown is a unit ball round the origin
        double per_radius = 0.0, per_half = 0.0;
        double blur = 0.0;                           ///< of the ball's radius by rounding
        bool cut = false;                            ///< the cells' plane cuts it
        std::vector<std::array<double, 2>> section;  ///< of each row with the ball; from > to: none
    };

    void add_prism(const Occluder& occluder, const std::vector<Point2>& outline);
    void add_post(const Occluder& occluder);
    void add_plane(const Occluder& occluder);
    void add_crown(const Occluder& occluder);
    [[nodiscard]] Corner corner(Point3 p) const noexcept;
    [[nodiscard]] std::vector<Corner> cut(const std::vector<Point3>& outline);
    [[nodiscard]] Body body_of(const std::vector<Point2>& outline, double low_m, double high_m);
    [[nodiscard]] bool may_touch(const SunOnGrid& sun, const Ball& ball, std::array<int, 4>& cells) const noexcept;
    void fill(const Body& body, const SunOnGrid& sun, ShadowScratch& scratch, CellMask& cells,
              std::vector<ShadowScratch::Ask>& asks) const;
    void fill(const Sheet& sheet, const SunOnGrid& sun, ShadowScratch& scratch, CellMask& cells) const;
    void fill_crown(const SunOnGrid& sun, const std::array<int, 4>& box, ShadowScratch& scratch, CellMask& cells) const;
    void cast_solid(const SunOnGrid& sun, ShadowScratch& scratch, CellMask& opaque) const;
    void ask_all(const SunOnGrid& sun, const std::array<int, 4>& cells, CellMask& opaque, CellMask& crown) const;
    [[nodiscard]] double passes(int column, int row, const SunOnGrid& sun) const noexcept;
    [[nodiscard]] double margin_m(const SunOnGrid& sun) const noexcept;

    const Occluder* occluder_;
    const CellGrid* grid_;
    std::vector<Body> bodies_;  ///< one; of some posts two: in the round, and round it
    std::vector<Sheet> sheets_;
    Crown crown_;
    Ball whole_, solid_, crown_ball_;
    bool sharp_ = true;     ///< false: outlines would not be safe; every cell is asked
    double scale_m_ = 1.0;  ///< of the coordinates: rounding grows with it
    double fuzz_m_ = 0.0;   ///< of the outline in the cells' plane, beside rounding
    double round_m_ = 0.0;  ///< of the thing itself: a round post stands as one of many sides
    double columns_per_m_ = 1.0, rows_per_m_ = 1.0;
};

}  // namespace wg::site
