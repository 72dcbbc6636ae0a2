#pragma once
// A compressor by its maker's ten coefficients (EN 12900, AHRI 540), at the block's own superheat.

#include <vector>

#include "core/equipment/equipment.h"
#include "core/quantity/result.h"
#include "core/refrigerant/properties.h"

namespace wg::heatpump {

/// Share of the gain in suction density that the mass flow follows when the superheat is not that of the rating:
/// Dabiri and Rice 1981 (ASHRAE Transactions 87), as public heat pump models apply it; the paper itself was not at
/// hand.
inline constexpr double superheat_share = 0.75;

struct Compressed {
    double mass_flow_kg_s = 0.0;
    double work_w = 0.0;
};

/// `block.compressor` must be there. Inside the stated range what the polynomials say, corrected to the block's
/// superheat. Outside it a smooth stand-in for the search alone (volumetric and overall efficiency run out flat within
/// some kelvin), which no caller may return: `covers` tells.
[[nodiscard]] Compressed compressed_by_data(const BlockModel& block, const refrigerant::Properties& refrigerant,
                                            double evaporating_c, double condensing_c) noexcept;
/// True without such data.
[[nodiscard]] bool covered_by_data(const BlockModel& block, double evaporating_c, double condensing_c) noexcept;

/// What of `block.compressor` cannot be: mass flow not rising with the evaporating temperature, an overall isentropic
/// efficiency that no compressor has, no state in common with the block's envelope. Empty also without such data.
[[nodiscard]] std::vector<Problem> problems_of_data(const BlockModel& block,
                                                    const refrigerant::Properties& refrigerant);

/// For variations of a year: the same compressor with its overall efficiency, or its filling (mass flow and with it
/// work), `factor` times as high; by whichever form the block states it.
void scale_efficiency(BlockModel& block, double factor) noexcept;
void scale_filling(BlockModel& block, double factor) noexcept;

}  // namespace wg::heatpump
