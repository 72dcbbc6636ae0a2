#pragma once
// Oil in the suction line: where vapour rises or lies level, how fast it goes at the least flow, where traps belong.

#include <vector>

#include "core/pipework/legs.h"
#include "core/pipework/lines.h"

namespace wg::pipework {

inline constexpr double rising_leg_m = 0.30;  ///< lower rises carry oil over by the vapour's gusts
inline constexpr double level_slope = 0.01;   ///< legs that fall more steeply than this drain by themselves
inline constexpr double level_oil_m_s = 2.5;  ///< vapour in level legs: common practice, no published source
inline constexpr double riser_oil_m_s = 5.0;  ///< and in risers

/// Legs in a row in which vapour rises, on the way from collector to block.
struct Riser {
    std::size_t first_leg = 0, last_leg = 0;
    Point3 foot;
    double height_m = 0.0;
};

struct OilTrap {
    Point3 at;
    std::size_t leg = 0;
    bool foot = true;  ///< at the foot of a riser; else on the way up
};

struct OilReturn {
    bool known = false;         ///< the flow; risers, traps and level legs follow from the route alone
    OperatingPoint at;          ///< the coldest, heat at the least flow
    double velocity_m_s = 0.0;  ///< of the vapour then
    double riser_m_s = 0.0;     ///< least speed by Jacobs and others 1976
    std::vector<Riser> risers;  ///< higher than rising_leg_m
    std::vector<OilTrap> traps;
    double level_m = 0.0;  ///< legs that neither fall nor rise
    [[nodiscard]] double highest_riser_m() const noexcept;
};

/// `every_m`: traps asked for by the block's data; 0: none.
[[nodiscard]] OilReturn oil_return(const std::vector<Leg>& legs, double every_m);

}  // namespace wg::pipework
