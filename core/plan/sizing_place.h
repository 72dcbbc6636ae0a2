#pragma once
// Places for a given number of collectors of a choice. Inside core/plan.

#include <vector>

#include "core/equipment/equipment.h"
#include "core/job/job.h"

namespace wg::plan::detail {

struct Placed {
    std::vector<Placement> placements;
    /// Of them at the end, those that no place was found for: they lie on top of the last one, to be counted and
    /// priced.
    int without_place = 0;
};

/// The first collectors of the choice; further ones lie as its last one does, on the surfaces of its collectors, at the
/// nearest place of a 0.1 m grid that keeps the rules of place and the maker's free strip.
[[nodiscard]] Placed placed_collectors(const Site& site, const Choice& choice, const CollectorModel& model, int count);

}  // namespace wg::plan::detail
