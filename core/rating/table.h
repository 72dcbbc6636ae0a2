#pragma once
// The rating test at several conditions at once: draw-off cycles by chamber airs.

#include <functional>
#include <vector>

#include "core/rating/rating.h"

namespace wg::rating {

struct Cell {
    TappingCycle cycle = TappingCycle::l;
    Air air;
    Rating rating;
};

struct Table {
    std::vector<Cell> cells;  ///< air by air, within each the cycles in the order asked for
    bool stopped = false;     ///< `cells` is empty then
};

/// Called from the calling thread with the share done, 0..1; false stops.
using Progress = std::function<bool(double)>;

/// The same ratings, to the bit, as rate() gives one by one; the course of the heating up is noted in the first cycle
/// of every air, since it is the same in all. Uses the machine's cores. Problems: as rate() has them, or nothing asked
/// for.
[[nodiscard]] Result<Table> rate_table(const Item& item, const Chamber& chamber, const Test& test,
                                       const std::vector<TappingCycle>& cycles, const std::vector<Air>& airs,
                                       const Progress& progress = {});

}  // namespace wg::rating
