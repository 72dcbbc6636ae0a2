#pragma once
// The rating test of EN 16147 on a set of plate, block and cylinder, computed. docs/handbook/rating.md says which steps
// are taken from where.

#include <string>
#include <vector>

#include "core/equipment/equipment.h"
#include "core/job/job.h"
#include "core/quantity/result.h"
#include "core/refrigerant/properties.h"

namespace wg::rating {

/// What is put into the chamber.
struct Item {
    CollectorModel collector;
    int collectors = 1;
    BlockModel block;
    CylinderModel cylinder;
    const refrigerant::Properties* refrigerant = nullptr;  ///< of the block; not owned, must outlive the call
    double set_point_c = 55.0;                             ///< as delivered, 40..65
    double hysteresis_k = 6.0;                             ///< 2..15
    double line_ua_w_k = 0.0;                              ///< suction line of the test, see season::Input
    double suction_drop_k = 0.0;
};

/// Air of the chamber, dry and wet bulb.
struct Air {
    double dry_c = 7.0;
    double wet_c = 6.0;
    friend bool operator==(const Air&, const Air&) = default;
};
/// Regulation (EU) 812/2013, Annex VII table 6: outdoor air of the colder, average and warmer climate.
inline constexpr Air air_2{2.0, 1.0};
inline constexpr Air air_7{7.0, 6.0};
inline constexpr Air air_14{14.0, 13.0};

/// The chamber. Dark: no light on either face, and every surface that the plate sees has the temperature of the air.
struct Chamber {
    Air air = air_7;
    double air_speed_m_s = 1.0;  ///< over the plate, 0..5; an assumption: sheets rarely state it
    double room_c = 20.0;        ///< around the cylinder
    double cold_c = 10.0;        ///< cold water
    double tilt_deg = 45.0;      ///< of the plate: natural convection depends on it
    double pressure_pa = 101325.0;
};
/// Dew point (over water) from dry and wet bulb: psychrometer formula of WMO-No. 8, 6.53e-4 (1 + 0.000944 t'), without
/// its enhancement factor (less than 0.1 K), saturation after Sonntag 1990. Dry bulb -20..50 deg C; below 0 deg C the
/// wet bulb counts as wet, not iced. -90 deg C when the air would be dry to less than nothing.
[[nodiscard]] double dew_point_c(const Air& air, double pressure_pa) noexcept;

struct Test {
    TappingCycle cycle = TappingCycle::l;
    bool heat_up_only = false;  ///< leave the stages after heating up out
    bool curve = false;         ///< note the course of the heating up
    double step_s = 120.0;      ///< 60..900, divides an hour
    int nodes = 10;             ///< 5..40
    int settling_days = 1;      ///< draw-off days before counting, 0..30
    int counted_days = 4;       ///< 1..30; a real test counts one: several even out where in its band the thermostat is
    int standby_cycles = 2;     ///< whole thermostat cycles, 1..10
};

/// Energies of the counted draw-off days, mean of a day, kWh, each from its own equation. The immersion heater is off.
struct Day {
    double useful_kwh = 0.0;  ///< drawn over cold water
    double shortfall_kwh = 0.0;
    double condenser_kwh = 0.0;  ///< heat to the water
    double standing_loss_kwh = 0.0, store_change_kwh = 0.0;
    double compressor_kwh = 0.0, defrost_kwh = 0.0, standby_kwh = 0.0;  ///< electricity
    double running_h = 0.0, frost_h = 0.0, rest_h = 0.0;
    int short_draws = 0;   ///< of all counted days: more than 2 % of the heat missing
    int peaks_missed = 0;  ///< of all counted days: top of the cylinder colder than the peak that the draw asks for
    [[nodiscard]] double electricity_kwh() const noexcept { return compressor_kwh + defrost_kwh + standby_kwh; }
};

/// The heating up as it goes on.
struct CurvePoint {
    double hours = 0.0;
    double water_c = 0.0;     ///< mean of the cylinder
    double top_c = 0.0;       ///< topmost layer
    double heat_w = 0.0;      ///< to the water, mean since the point before
    double electric_w = 0.0;  ///< controls included, mean since the point before
};

struct Rating {
    bool completed = false;
    std::string why_not;  ///< when not completed: what stopped the test
    // Heating up from cold to the thermostat's first stop.
    double heat_up_h = 0.0;
    double heat_up_heat_kwh = 0.0;
    double heat_up_electricity_kwh = 0.0;  ///< standby included
    std::vector<CurvePoint> curve;         ///< when the test asks for it; up to where it got, when not completed
    // Standing hot, whole thermostat cycles.
    double standby_w = 0.0;  ///< mean electric power
    double standby_h = 0.0;  ///< length of those cycles
    // Draw-off.
    Day day;
    double cop_dhw = 0.0;
    // One draw of the cylinder after the thermostat's stop.
    double v40_l = 0.0;        ///< mixed water at 40 deg C
    double hot_water_c = 0.0;  ///< mean outlet temperature of that draw down to 40 deg C
    double closure = 0.0;  ///< what does not add up over the whole test, share of the heat moved; larger of both sides
    double relative_humidity = 0.0;  ///< of the chamber, over water
};

/// Runs the test. Deterministic to the bit. A set that cannot finish (envelope, endless frost) gives a rating that is
/// not completed and says why; a value out of range is a problem.
[[nodiscard]] Result<Rating> rate(const Item& item, const Chamber& chamber, const Test& test = {});

/// Steady point: plate unfrosted in the chamber's air, condenser zone evenly at `water_c`, control power included.
struct SteadyPoint {
    bool running = false;
    std::string why_not;
    double heat_w = 0.0;
    double electric_w = 0.0;
    double cop = 0.0;
};
[[nodiscard]] Result<SteadyPoint> steady_point(const Item& item, const Chamber& chamber, double water_c);

}  // namespace wg::rating
