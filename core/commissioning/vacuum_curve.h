#pragma once
// The rise of pressure after the pump is shut off, as a curve: tight and dry, moisture, or a leak.

#include <vector>

namespace wg::commissioning {

struct VacuumReading {
    double minutes = 0.0;  ///< since valve-off
    double pa = 0.0;       ///< absolute
};

struct VacuumTest {
    std::vector<VacuumReading> rise;  ///< at least four, over at least least_minutes; any order
    double coldest_c = 20.0;          ///< of the circuit, usually the plate
    double limit_pa = 270.0;          ///< at the end of the wait (EN 378-4 before charging, from memory)
    double least_minutes = 20.0;      ///< common practice, no published source
    double gauge_share = 0.05;        ///< of a reading, the gauge may be wrong by this
    double gauge_pa = 3.0;            ///< and by this besides
    double volume_l = 2.0;            ///< evacuated
};

enum class VacuumVerdict {
    dry_and_tight,
    moisture,     ///< levels off near the vapour pressure of water or ice at the coldest part
    outgassing,   ///< levels off well below it: gas from oil or hoses
    leak,         ///< keeps rising
    wait_longer,  ///< too few readings, or too short a wait
    too_cold,     ///< coldest part below 5 deg C: moisture may hide as ice
    not_true,     ///< a reading that cannot be
};

struct VacuumResult {
    VacuumVerdict verdict = VacuumVerdict::wait_longer;
    // The fitted curve p = start + slope t + swell (1 - exp(-t/settle)).
    double start_pa = 0.0;
    double slope_pa_min = 0.0;
    double swell_pa = 0.0;
    double settle_min = 0.0;    ///< 0: no swell in the curve
    double residual_pa = 0.0;   ///< root mean square
    double end_pa = 0.0;        ///< of the curve at the last reading
    double levels_at_pa = 0.0;  ///< start + swell
    double vapour_pa = 0.0;     ///< of water or ice at the coldest part
    double leak_g_year = 0.0;   ///< by the slope: air into vacuum turned into R134a out at 20 deg C
    [[nodiscard]] double at(double minutes) const noexcept;
};

/// Vapour pressure over water from 0 deg C up, over ice below (Magnus form, WMO Guide No. 8, annex 4.B), Pa.
[[nodiscard]] double water_vapour_pa(double temperature_c) noexcept;

/// Least squares over both models, straight and levelling off with or without a straight part; the simpler one stands
/// unless the other halves the residual and goes beyond the gauge. Deterministic.
[[nodiscard]] VacuumResult judge(const VacuumTest& test);

}  // namespace wg::commissioning
