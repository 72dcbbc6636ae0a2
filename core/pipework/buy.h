#pragma once
// What to buy and cut for each line.

#include <vector>

#include "core/pipework/legs.h"

namespace wg::pipework {

// Allowances of the trade, no published source.
inline constexpr double cutting_allowance = 0.05;  ///< of the cut length, bought on top
inline constexpr double collector_stub_m = 0.15;   ///< past the last bend to the collector's connection, with its joint
inline constexpr double block_stub_m = 0.30;       ///< to the block, with a loop that takes up its shaking
inline constexpr double trap_m = 0.40;             ///< tube of an oil trap beyond the straight way
inline constexpr double lagging_length_m = 2.0;    ///< as sold

struct LineToBuy {
    /// In order from the collector: legs, the stubs added to the first and the last, traps to theirs.
    std::vector<double> pieces_m;
    double cut_m = 0.0;           ///< sum of the pieces; bends are counted as sharp corners
    double buy_m = 0.0;           ///< with the cutting allowance
    std::vector<double> coils_m;  ///< usual coils of 15, 25, 30 and 50 m that hold it, fewest joints first
    int joints = 0;               ///< where a coil ends
    double lagging_m = 0.0;       ///< with the allowance; 0: none
    int lagging_lengths = 0;
};

/// Fewest coils, then the least length left over.
[[nodiscard]] std::vector<double> coils_for_m(double buy_m);

[[nodiscard]] LineToBuy to_buy(const std::vector<Leg>& legs, const std::vector<std::size_t>& trap_legs, bool lagged);

}  // namespace wg::pipework
