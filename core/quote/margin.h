#pragma once
// What the firm keeps of an offer. For the firm alone: on no paper.

#include <optional>

#include "core/quote/offered.h"

namespace wg::quote {

struct Margin {
    Money cost;          ///< of the lines whose cost is known
    Money sold;          ///< the same lines' net, less their share of the discount
    Money kept;          ///< sold less cost
    Money unknown_sold;  ///< net of the lines whose cost is not known, less their share of the discount
    int unknown_lines = 0;
    /// kept / cost in percent; nothing without a cost.
    std::optional<double> percent;
};

/// Over the lines and ticked options that count. The discount falls on all lines alike; own lines have no cost told.
[[nodiscard]] Margin margin_of(const Offered& offered);

}  // namespace wg::quote
