#pragma once
// The running pump against the model at these very conditions: bands for what was read, and, where a reading lies
// outside, the faults that would explain it, ranked by simulating them.

#include <array>
#include <optional>
#include <string>
#include <vector>

#include "core/heatpump/operating_point.h"

namespace wg::commissioning {

/// After ten minutes of running or more. Absent: not measured.
struct StartReadings {
    std::optional<double> suction_gas_c;  ///< tube temperature at the block
    std::optional<double> suction_bar;    ///< bar gauge
    std::optional<double> discharge_c;    ///< tube temperature at the compressor
    std::optional<double> discharge_bar;  ///< bar gauge
    std::optional<double> current_a;      ///< of the block, without the immersion heater
};

struct StartConditions {
    heatpump::Surroundings surroundings;  ///< as measured; light by `light_known`
    bool light_known = false;             ///< else the light is taken between 0 and `surroundings.front_w_m2`
    double water_c = 15.0;                ///< lower part of the cylinder
    double air_pressure_bar = 1.01325;
    heatpump::Plate plate;
    heatpump::Line line;
    heatpump::Frost frost;  ///< seen on the plate
};

enum class StartQuantity { suction_gas, suction_pressure, discharge, discharge_pressure, current };
inline constexpr std::size_t start_quantities = 5;
[[nodiscard]] const char* text_of(StartQuantity quantity) noexcept;

struct StartBand {
    double low = 0.0, mid = 0.0, high = 0.0;  ///< deg C, bar gauge or A
    std::optional<double> read;
    [[nodiscard]] bool outside() const noexcept { return read && (*read < low || *read > high); }
};

enum class Fault {
    low_charge,
    air_in_circuit,
    suction_restricted,  ///< valve not fully open, kinked line
    plate_shaded,
    plate_iced,
    condenser_scaled,
    wrong_hand,  ///< connections not at the lower end: liquid carries over
};
[[nodiscard]] const char* text_of(Fault fault) noexcept;
[[nodiscard]] const char* remedy_of(Fault fault) noexcept;

struct Suspect {
    Fault fault = Fault::low_charge;
    double degree = 0.0;  ///< 0..1 of the size simulated
    double misfit = 0.0;  ///< root mean square of (read - simulated)/half band over what was read
};

enum class StartVerdict { as_expected, outside, not_running, nothing_read, cannot_run };

struct StartResult {
    StartVerdict verdict = StartVerdict::nothing_read;
    std::array<StartBand, start_quantities> bands;
    double misfit = 0.0;            ///< of the sound set
    std::vector<Suspect> suspects;  ///< best first; only those that explain more than the sound set does
    std::string why_not;            ///< with cannot_run: what keeps the pump off at these conditions by the model
};

/// Bands from the model: what plate, condenser, line, compressor, mains, surroundings and instruments leave open is
/// propagated at these conditions (assumed deviations in start.cpp, 2.88 of them together); without known light, from
/// both ends of it. Sizes of the simulated faults are assumed; the ranking is a pointer for the technician, no
/// diagnosis. The pump's refrigerant must outlive the call.
[[nodiscard]] StartResult judge(const heatpump::HeatPump& pump, const StartConditions& conditions,
                                const StartReadings& readings);

}  // namespace wg::commissioning
