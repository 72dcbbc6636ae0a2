#pragma once
// A year of operation: plate, heat pump and stratified cylinder under weather and draw-off.

#include <array>
#include <optional>
#include <string>
#include <vector>

#include "core/equipment/equipment.h"
#include "core/heatpump/plate.h"
#include "core/job/job.h"
#include "core/quantity/result.h"
#include "core/refrigerant/properties.h"

namespace wg::season {

/// Collectors in one plane under the same light: one plate with the sum of their areas.
struct PlateGroup {
    int count = 1;
    // Hourly series of 8760 values.
    std::vector<double> front_w_m2;      ///< light on the sunlit face after shade
    std::vector<double> rear_w_m2;       ///< light on the rear face
    std::vector<double> wind_plate_m_s;  ///< at plate height
    double tilt_deg = 35.0;
    double sky_view = 1.0;   ///< of the sunlit face to the sky after obstacles, on top of (1 + cos b)/2
    bool rear_free = false;  ///< rear sees sky and ground instead of roof or wall
    /// Share of `front_w_m2` that counts by a tested collector's incidence modifiers, hourly; empty: as the standard's
    /// hemispherical light.
    std::vector<double> incidence;
    friend bool operator==(const PlateGroup&, const PlateGroup&) = default;
};

/// More planes than any house has; with collectors in series each counts for itself.
inline constexpr std::size_t most_groups = 50;

/// Everything the year needs, in SI, with no reference to jobs or catalogues beyond the models themselves.
struct Input {
    CollectorModel collector;
    BlockModel block;
    CylinderModel cylinder;
    const refrigerant::Properties* refrigerant = nullptr;  ///< not owned; must outlive the call
    /// In the order in which the refrigerant passes them when joined in series. At least one, at most
    /// `most_groups`.
    std::vector<PlateGroup> groups = std::vector<PlateGroup>(1);
    Joined joined = Joined::parallel;
    // Hourly series of 8760 values.
    std::vector<double> sun_up;  ///< sine of the sun's elevation: shapes light inside the hour
    std::vector<double> air_c;
    std::vector<double> dew_point_c;
    std::vector<double> sky_k;
    std::vector<double> pressure_pa;
    std::vector<double> surplus_w;  ///< left of the house's own photovoltaics, hourly; empty: none
    int first_weekday = 0;          ///< of 1 January, 0 Monday
    double room_c = 18.0;           ///< around the cylinder
    double line_ua_w_k = 0.0;       ///< suction line's heat gain (less than zero loss) to outdoor air
    double suction_drop_k = 0.0;    ///< fall of saturation temperature along the suction line
    Demand demand;

    /// What an hour is to the plates of a group.
    [[nodiscard]] heatpump::Surroundings surroundings(const PlateGroup& group, std::size_t hour) const noexcept;
    [[nodiscard]] int plates() const noexcept;  ///< of all groups
    /// Light on the sunlit faces in an hour, mean over all plates.
    [[nodiscard]] double mean_front_w_m2(std::size_t hour) const noexcept;
};

struct Options {
    double step_s = 600.0;  ///< 60..900, divides an hour
    int nodes = 10;         ///< 5..40
    int warm_up_days = 14;
    bool mid_step = true;    ///< water temperature at mid-step; false only for comparison
    bool keep_hours = true;  ///< fill `Year::hours`
};

struct MonthSums {
    double light_kwh = 0.0;      ///< absorbed by the plate while running
    double air_kwh = 0.0;        ///< convection
    double long_wave_kwh = 0.0;  ///< net, signed
    double latent_kwh = 0.0;     ///< condensation and frost less melt
    double line_kwh = 0.0;       ///< gained or lost on the way
    double compressor_kwh = 0.0;
    double immersion_kwh = 0.0;
    double standby_kwh = 0.0;
    double defrost_kwh = 0.0;  ///< electricity for defrost
    double shell_loss_kwh = 0.0;
    double condenser_kwh = 0.0;  ///< heat given to the water by the heat pump
    double drawn_kwh = 0.0;      ///< useful heat over cold inflow
    double standing_loss_kwh = 0.0;
    double store_change_kwh = 0.0;
    double wanted_kwh = 0.0;     ///< useful heat asked for
    double shortfall_kwh = 0.0;  ///< asked for and not met at the wanted temperature
    double running_h = 0.0;
    double frost_h = 0.0;
    double rest_h = 0.0;  ///< resting to thaw
    double light_on_plane_kwh_m2 = 0.0;
    double recirculation_kwh = 0.0;  ///< heat lost by the loop
    double hygiene_kwh = 0.0;        ///< electricity of compressor and heater during hygiene runs: part of theirs
    double surplus_kwh = 0.0;        ///< electricity met by the house's own photovoltaics
    double low_tariff_kwh = 0.0;     ///< electricity bought in the low windows
    double short_litres = 0.0;       ///< mixed water below the wanted temperature
    double short_h = 0.0;            ///< hours of the clock in which a draw fell short
    double pump_waits_h = 0.0;       ///< the sensor asks for heat and clock, set-back or holidays keep the pump off
    int starts = 0;
    [[nodiscard]] double electricity_kwh() const noexcept {
        return compressor_kwh + immersion_kwh + standby_kwh + defrost_kwh;
    }
};

struct HourSeries {
    std::vector<float> condenser_w, electric_w, light_w_m2, plate_c, top_c, bottom_c, drawn_w, air_c;
    std::vector<float> immersion_w, short_litres, wanted_w, frost_kg_m2, set_point_c;
    std::vector<float> waits_h;                 ///< of the hour: as MonthSums::pump_waits_h; empty: not recorded
    std::vector<std::array<float, 10>> node_c;  ///< top to bottom, resampled to ten when nodes differ
};

/// What the pump did while the evaporating temperature at the plate lay in a band of `band_k`: means over the hours it
/// ran there.
inline constexpr double band_k = 5.0;
struct OperatingBand {
    double hours = 0.0;
    double evaporating_c = 0.0;
    double condensing_c = 0.0;
    double evaporator_w = 0.0;
    double air_c = 0.0;
};

struct Year {
    std::array<MonthSums, 12> months{};
    MonthSums total;
    double seasonal_factor = 0.0;     ///< heat to water by the pump and heaters / all electricity; 0 when none used
    double useful_factor = 0.0;       ///< useful heat drawn / all electricity
    double closure_circuit = 0.0;     ///< |sum of terms| / throughput over the year, refrigerant side
    double closure_water = 0.0;       ///< the same, water side
    double worst_step_closure = 0.0;  ///< largest of both over all steps, of that step's throughput
    double off_too_cold_h = 0.0;      ///< hours in which heat was wanted and the pump stayed off: below envelope
    double off_other_h = 0.0;         ///< beyond discharge, pressure ratio or condensing limit, or the data's range
    double off_beyond_data_h = 0.0;   ///< of those: the compressor's ten-coefficient data end before the balance
    double pressure_limited_h = 0.0;
    double lowest_top_c = 0.0;
    int shortfall_draws = 0;
    double coldest_draw_c = 0.0;  ///< coldest water that came from a tap, at most the wanted temperature
    int coldest_draw_hour = 0;
    int hygiene_runs = 0;                  ///< begun
    int hygiene_upper_only = 0;            ///< held the target above the immersion heater alone
    int hygiene_missed = 0;                ///< held it nowhere
    std::vector<OperatingBand> operation;  ///< coldest first; bands in which the pump never ran are left out
    std::string models;                    ///< names of the models used, for print
    std::optional<HourSeries> hours;
};

/// Runs the year. Deterministic to the bit. Problems name the input that is wrong (series length, NaN, range).
[[nodiscard]] Result<Year> run(const Input& input, const Options& options = {});

/// Time from cold to set-point under constant conditions, without draw-off.
struct WarmUpConditions {
    double start_c = 10.0;
    double light_w_m2 = 400.0;
    double rear_light_w_m2 = 0.0;
    double air_c = 15.0;
    double relative_humidity = 0.65;
    double wind_m_s = 2.0;
    double sky_below_air_k = 10.0;
};
struct WarmUp {
    bool reached = false;
    double hours = 0.0;
    double heat_kwh = 0.0;
    double electricity_kwh = 0.0;
    double mean_cop = 0.0;
    std::string why_not;  ///< when not reached
};
[[nodiscard]] Result<WarmUp> warm_up(const Input& equipment, const WarmUpConditions& conditions,
                                     const Options& options = {});

/// Hottest standstill of the plate (pump off) over the year's hours and the saturation pressure that goes with it.
struct Standstill {
    double plate_c = 0.0;
    double pressure_bar_abs = 0.0;  ///< saturation pressure at plate_c; above the critical point: see `above_critical`
    bool above_critical = false;
    int hour = 0;
    std::size_t group = 0;  ///< of plates, the one that gets hottest
    double light_w_m2 = 0.0;
    double air_c = 0.0;
    double wind_m_s = 0.0;
};
[[nodiscard]] Result<Standstill> standstill(const Input& input);

}  // namespace wg::season
