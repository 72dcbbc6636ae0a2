#pragma once
// What a scale told of refrigerant, by the entries of a record.

#include <string>
#include <vector>

#include "core/job/job.h"

namespace wg::commissioning {

struct Weighed {
    double added_kg = 0.0;
    double recovered_kg = 0.0;
    double lost_kg = 0.0;                  ///< as far as known
    std::vector<std::string> reading_ids;  ///< of all that was summed, and of `unreadable`
    const Reading* unreadable = nullptr;   ///< the first mass that is less than nothing or no number; not summed
    [[nodiscard]] double taken_out_kg() const noexcept { return recovered_kg + lost_kg; }
    /// With `factory_kg` from the maker; less than 0 when more went out than came in.
    [[nodiscard]] double in_system_kg(double factory_kg) const noexcept {
        return factory_kg + added_kg - taken_out_kg();
    }
};

/// Refrigerant may be weighed in several goes, and taken out for a repair: all of them count. `standing` is a record
/// after its corrections; `unreadable` points into it.
[[nodiscard]] Weighed weighed(const std::vector<Reading>& standing);

}  // namespace wg::commissioning
