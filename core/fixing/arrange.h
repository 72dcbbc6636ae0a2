#pragma once
// Several collectors of one surface brought into line, spread evenly, or put beside each other in a row.

#include <optional>
#include <vector>

#include "core/equipment/equipment.h"
#include "core/fixing/layout_rules.h"
#include "core/job/job.h"
#include "core/site/geometry.h"

namespace wg::fixing {

/// What is brought onto one line. Middles: `upright` on one line up the slope, `level` on one level line.
enum class Align { left, right, upper, lower, middles_upright, middles_level };
enum class Along { level, slope };

/// How each plate has to move so that edges or middles are in line: with the outermost edge among them, or with the
/// middle of all. By the plates' upright bounds, as a string line is stretched. Doing it again moves nothing.
[[nodiscard]] std::vector<Move> aligning_moves(const std::vector<site::Bounds>& plates, Align to);

/// How each plate has to move so that the gaps between neighbours are equal; the two outer ones stay. Nothing when
/// there are fewer than three, or when the outer ones leave no room between them.
[[nodiscard]] std::optional<std::vector<Move>> distributing_moves(const std::vector<site::Bounds>& plates, Along along);

/// Further collectors like `first`, on its level, each `gap_m` from the next: to the right where they fit there, else
/// to the left, else on both sides.
struct Row {
    std::vector<Point2> middles;  ///< nearest to the first collector first; empty when not all fit
    int room_for = 0;             ///< how many would fit, at most as many as asked
};
/// Fits: on the surface, clear of keep-outs with their clearance and off other collectors. Places that also leave the
/// free strip go first; the strip is the gap where that is less than the maker asks.
[[nodiscard]] Row row_beside(const Site& site, const Choice& choice, const CollectorModel& model,
                             const Placement& first, int count, double gap_m);

}  // namespace wg::fixing
