#pragma once
// One operating point: plate, circuit and condenser in balance.

#include <array>
#include <cstddef>
#include <memory>
#include <vector>

#include "core/heatpump/cycle.h"
#include "core/heatpump/plate.h"
#include "core/heatpump/plate_field.h"

namespace wg::heatpump {

/// How much warmer than the condensing temperature the refrigerant is along the condenser, K, in the mean over a part
/// that takes `share` of the surface and has `above` of it over itself: +glide/2 at the top of the zone, falling in a
/// straight line to -glide/2 at its bottom. Over the whole surface the mean is zero.
[[nodiscard]] inline double glide_offset_k(double glide_k, double above, double share) noexcept {
    return glide_k * (0.5 - above - 0.5 * share);
}

/// The water the condenser touches: parts with a share of its surface and a temperature each. Shares sum to 1. Where
/// the refrigerant glides, `water_c` is the water's temperature less the part's glide_offset_k: what the condensing
/// temperature must exceed for heat to pass there.
struct CondenserZone {
    static constexpr std::size_t capacity = 44;
    double ua_w_k = 220.0;
    std::size_t count = 0;
    std::array<double, capacity> share{};
    std::array<double, capacity> water_c{};

    /// Water of one temperature; with a glide in parts, or the glide could not show.
    [[nodiscard]] static CondenserZone uniform(double ua_w_k, double water_c, double glide_k = 0.0) noexcept;
    /// Heat passed to the water at a condensing temperature: only to parts colder than it.
    [[nodiscard]] double heat_w(double condensing_c) const noexcept;
};

/// Suction line between plate and compressor.
struct Line {
    double ua_w_k = 0.0;  ///< to outdoor air
    double drop_k = 0.0;  ///< fall of saturation temperature
};

/// beyond_data: the balance lies outside the stated range of the compressor's ten-coefficient data.
enum class Off { none, too_cold, condensing, pressure_ratio, discharge, beyond_data };
[[nodiscard]] const char* reason_text(Off off) noexcept;

/// Where a point was last found: a start for the next search.
struct Guess {
    double suction_c = 0.0;
    double condensing_c = 40.0;
};

struct Point {
    Off off = Off::none;            ///< none: running
    bool pressure_limited = false;  ///< evaporating temperature held at its upper limit, plate warmer than balance
    double evaporating_c = 0.0;     ///< at the plate
    double suction_c = 0.0;         ///< saturation temperature at the compressor, lower by the line's drop
    double condensing_c = 0.0;
    double plate_c = 0.0;
    double discharge_c = 0.0;
    double pressure_ratio = 1.0;
    PlateHeat plate;
    double evaporator_w = 0.0;
    double line_w = 0.0;        ///< taken up by the suction line (negative: lost)
    double work_w = 0.0;        ///< electricity
    double shell_loss_w = 0.0;  ///< share of the work, and whatever the suction line picked up
    double condenser_w = 0.0;   ///< to the water: evaporator + line + work - shell loss
    int evaluations = 0;        ///< of the plate balance
    [[nodiscard]] bool running() const noexcept { return off == Off::none; }
    [[nodiscard]] double cop() const noexcept { return work_w > 0.0 ? condenser_w / work_w : 0.0; }
};

/// Plate balance is met within this, W: below 1e-6 of the heat that a set of ordinary size moves.
inline constexpr double balance_tolerance_w = 5e-4;

/// A block with its refrigerant, and its map. Immutable; the properties must outlive it.
class HeatPump {
   public:
    [[nodiscard]] static Result<HeatPump> make(const BlockModel& block, const refrigerant::Properties& refrigerant);

    /// Off with a reason when the balance lies outside the envelope; all heats are then zero. The evaporating
    /// temperature is bracketed between the envelope's ends; at the upper end it is held and the pump keeps running.
    [[nodiscard]] Point point(const PlateBalance& plate, const CondenserZone& zone, const Line& line,
                              const Guess& guess) const noexcept;
    /// The same for plates in several planes or in series; `field` keeps what each plate does at the point.
    [[nodiscard]] Point point(PlateField& field, const CondenserZone& zone, const Line& line,
                              const Guess& guess) const noexcept;
    /// The same straight from the tables, without the map: slower, for proving the map.
    [[nodiscard]] Point point_without_map(const PlateBalance& plate, const CondenserZone& zone, const Line& line,
                                          const Guess& guess) const noexcept;
    [[nodiscard]] const BlockModel& block() const noexcept { return block_; }
    [[nodiscard]] const refrigerant::Properties& refrigerant() const noexcept { return *refrigerant_; }
    [[nodiscard]] const CycleMap& map() const noexcept { return map_; }

   private:
    HeatPump(const BlockModel& block, const refrigerant::Properties& refrigerant)
        : block_(block), refrigerant_(&refrigerant), map_(block, refrigerant) {}
    BlockModel block_;
    const refrigerant::Properties* refrigerant_;
    CycleMap map_;
};

/// Block alone: what it does at an evaporating and a water temperature, limits applied.
struct MapPoint {
    Off off = Off::none;
    double condensing_c = 0.0;
    double evaporator_w = 0.0;
    double work_w = 0.0;
    double condenser_w = 0.0;
    [[nodiscard]] double cop() const noexcept { return work_w > 0.0 ? condenser_w / work_w : 0.0; }
};
struct PerformanceMap {
    std::vector<double> evaporating_c;
    std::vector<double> water_c;
    std::vector<MapPoint> points;  ///< row by row of evaporating_c
};
[[nodiscard]] PerformanceMap performance_map(const HeatPump& pump, const std::vector<double>& evaporating_c,
                                             const std::vector<double>& water_c);

}  // namespace wg::heatpump
