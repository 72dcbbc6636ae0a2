#pragma once
// Units that gauges and thermometers on site show, beside the one the record is kept in.

#include <string_view>
#include <vector>

namespace wg {

enum class SiteQuantity {
    none,             ///< one unit only
    gauge_pressure,   ///< kept in bar gauge
    vacuum,           ///< kept in Pa absolute
    temperature,      ///< kept in deg C
    temperature_gap,  ///< kept in K
    mass              ///< kept in kg
};

struct SiteUnit {
    const char* name;     ///< UTF-8
    double factor = 1.0;  ///< kept = factor * (shown - zero)
    double zero = 0.0;    ///< shown at 0 of the kept unit
    int decimals = 1;     ///< that instruments show
    [[nodiscard]] double kept(double shown) const noexcept { return factor * (shown - zero); }
    [[nodiscard]] double shown(double kept_value) const noexcept { return kept_value / factor + zero; }
};

/// The unit of the record first; empty for `none`.
[[nodiscard]] const std::vector<SiteUnit>& site_units(SiteQuantity quantity);
/// By name; the unit of the record when there is none of that name. Not for `none`.
[[nodiscard]] const SiteUnit& site_unit(SiteQuantity quantity, std::string_view name);

}  // namespace wg
