#pragma once
// One seat made ready for judging its places, and one place judged. Inside core/siting, and for its tests.

#include <cstdint>
#include <optional>
#include <vector>

#include "core/fixing/fixing.h"
#include "core/fixing/layout_place.h"
#include "core/site/occluders.h"
#include "core/siting/siting.h"

namespace wg::siting {

/// Position in a seat's grid: the lower left corner of the plate's outline stands on a cell's corner.
struct GridPlace {
    int row = 0;
    int column = 0;
    Hand hand = Hand::right;
};

/// Sums of a figure over rectangles of cells, exact: whole numbers of 2^-30.
class CellSums {
   public:
    CellSums() = default;
    /// `values` row-major; cells under zero (outside the surface) count as not there.
    CellSums(const std::vector<float>& values, int columns, int rows);
    /// Mean over the cells from (row, column), `rows` x `columns`, of those that are there; 1 when none is.
    [[nodiscard]] double mean(int row, int column, int rows, int columns) const noexcept;

   private:
    [[nodiscard]] std::size_t at(int row, int column) const noexcept {
        return static_cast<std::size_t>(row) * stride_ + static_cast<std::size_t>(column);
    }
    std::size_t stride_ = 0;
    int rows_ = 0, columns_ = 0;
    std::vector<std::int64_t> sum_;
    std::vector<std::int32_t> count_;
};

/// Points on the ground from which a passer-by may look, at eye height. Where the street is marked: along a line that
/// touches the ring below on the street's side, square to the bearing of the street and seen from the house within
/// `street_side_deg` of it. Else all round: a ring `ring_off_m` outside the circle round all surfaces.
inline constexpr int viewpoints = 16;
inline constexpr double ring_off_m = 15.0;
inline constexpr double eye_height_m = 1.6;
inline constexpr double street_side_deg = 60.0;
[[nodiscard]] std::vector<Point3> viewpoints_of(const Site& site);

/// Length of run from a connection: level along the surface, then straight to the route's first passage (or to the
/// block), then the route's rest as drawn.
[[nodiscard]] double estimated_run_m(Point3 connection, Point3 level, const std::vector<RoutePoint>& route,
                                     Point3 block_connection);

class SeatGround {
   public:
    SeatGround(const Input& input, std::size_t seat);

    [[nodiscard]] int rows() const noexcept { return rows_; }
    [[nodiscard]] int columns() const noexcept { return columns_; }
    /// Keeps the rules of layout, whichever hand.
    [[nodiscard]] bool allowed(int row, int column) const;
    /// Light, run and what follows from them; utilisation and view left at 0. Nothing when run or lift are beyond the
    /// block's data.
    [[nodiscard]] std::optional<Measures> cheap(const GridPlace& at) const;
    /// Adds utilisation and view. False: a point would not hold.
    [[nodiscard]] bool complete(const GridPlace& at, Measures& measures) const;
    [[nodiscard]] Placement placement(const GridPlace& at) const;
    /// The grid's place nearest to a placement in this seat; nothing when it lies beyond the grid.
    [[nodiscard]] std::optional<GridPlace> nearest(const Placement& placement) const;

   private:
    [[nodiscard]] Point2 middle(int row, int column) const noexcept;
    [[nodiscard]] double seen(const site::PlacedCollector& placed) const;

    const Input& input_;
    std::size_t seat_number_;
    const Seat& seat_;
    const Surface* surface_ = nullptr;
    fixing::Neighbourhood round_;
    std::vector<Point2> outline_;  ///< of the plate with its lower left corner in (0, 0)
    Point2 corner_to_middle_;
    Point2 origin_;
    int rows_ = 0, columns_ = 0;              ///< of places
    int plate_rows_ = 1, plate_columns_ = 1;  ///< cells under the plate
    CellSums beam_, sky_;
    std::vector<site::Occluder> occluders_;
    std::vector<Point3> eyes_;
    fixing::Input fixing_;
};

/// One place in full; nothing when it breaks a rule.
[[nodiscard]] std::optional<Place> judge(const Input& input, const SeatGround& ground, std::size_t seat,
                                         const GridPlace& at);

}  // namespace wg::siting
