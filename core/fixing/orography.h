#pragma once
// Wind over hills and cliffs, EN 1991-1-4:2005 annex A.3.

#include <string>

#include "core/job/job.h"

namespace wg::fixing {

/// Orography factor c_o and how it came about. Equations (A.1) to (A.13) of the annex.
struct Orography {
    double factor = 1.0;              ///< c_o
    double slope = 0.0;               ///< Phi = H / L_u
    double effective_length_m = 0.0;  ///< L_e
    double location = 0.0;            ///< s
    /// Why the place lies outside what the annex covers, for people; empty: within it.
    const char* outside = "";
};
/// At height z over the ground of the house. 1 on level ground and where the annex sees no influence any more.
[[nodiscard]] Orography orography_of(const Hill& hill, double height_m);

}  // namespace wg::fixing
