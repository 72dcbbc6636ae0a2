#pragma once
// The record of an installation: what was read, done, signed and photographed on the day and after. Append-only: a
// correction is a new entry that names the old one. Entries are chained by hash (core/job/record_chain.h).

#include <cstdint>
#include <optional>
#include <string>

namespace wg {

/// What the visit was for. Verdicts on the installation rest on `fitting` and `repair`, those of a service on its own.
enum class Occasion { fitting, repair, service };

enum class ReadingKind {
    pressure_hold_start,  ///< value: bar gauge; second: gas outdoors (plate, tube), deg C; subject: the gas
    pressure_hold_end,    ///< the same
    vacuum_level,         ///< value: Pa absolute, at the end of evacuation; second: coldest part, deg C
    vacuum_after_rise,    ///< value: Pa absolute, after valve-off; second: coldest part, deg C
    charge_added,         ///< value: kg weighed in
    suction_temperature,
    discharge_temperature,
    supply_current,     ///< value: A
    water_temperature,  ///< value: deg C, lower part of the cylinder; after heating: where the sensor sits
    outdoor_temperature,
    insulation_resistance,  ///< value: MOhm
    earth_resistance,       ///< value: ohm
    residual_current_trip,  ///< value: ms at rated residual current
    remark,
    suction_pressure,       ///< value: bar gauge
    discharge_pressure,     ///< value: bar gauge
    superheat,              ///< value: K at the block's inlet, as an instrument shows it
    irradiance,             ///< value: W/m2 in the plane of the plate
    wind_speed,             ///< value: m/s at the plate
    heating_start,          ///< value: water, deg C, when the pump starts from cold; second: outdoor air, deg C
    heating_end,            ///< value: water, deg C, when it switches off; second: outdoor air, deg C
    wall_contact,           ///< value: kOhm between condenser and cylinder wall, dry, before it is closed
    protective_conductor,   ///< value: ohm of continuity
    loop_impedance,         ///< value: ohm
    supply_voltage,         ///< value: V
    cold_pressure,          ///< value: bar gauge behind the reducing valve, no tap open
    water_vented,           ///< value: 1 water without air at the farthest tap and nothing drips, 0 not
    safety_valve_lift,      ///< value: 1 lifts by hand, runs to the tundish and closes, 0 not
    tap_temperature,        ///< value: deg C of hot water at the tap
    set_point,              ///< value: deg C, as set on the control
    hygiene_setting,        ///< value: deg C as set; second: days from run to run
    refrigerant_recovered,  ///< value: kg taken out
    refrigerant_lost,       ///< value: kg that leaked, as far as known
    electricity_meter,      ///< value: kWh on the meter of the block
    heat_meter,             ///< value: kWh on the meter of hot water
    water_meter,            ///< value: m3 on the meter of hot water
    serial_number,          ///< subject: of what; note: the number
    signature,              ///< subject: in what role; taken_by: who; attachment: as drawn
    photograph,             ///< attachment; note: what it shows
    hold_point,             ///< subject: of the install sheet; value: 1 released, 0 held
    service_done,           ///< subject: id of the service
};

/// How the plate lay at a reading.
enum class PlateState { not_told, in_shade, in_sun, frosted };

struct Reading {
    std::string id;
    ReadingKind kind = ReadingKind::remark;
    std::string taken_at;  ///< ISO 8601 with offset
    std::string taken_by;
    std::string instrument;
    double value = 0.0;
    std::optional<double> second_value;
    std::string note;
    std::string corrects_id;  ///< empty: an entry of its own
    Occasion occasion = Occasion::fitting;
    std::string subject{};
    std::string calibrated_on{};        ///< ISO 8601 date of the instrument's last calibration; empty: not told
    std::optional<double> indoors_c{};  ///< pressure hold: gas indoors
    PlateState plate = PlateState::not_told;
    std::string attachment_sha256{};  ///< of bytes kept in the store: photograph or drawn signature
    std::int64_t plan_revision = 0;   ///< of the job as it was when the entry was made; 0: not told
    std::string plan_mark{};          ///< plan_mark() of the job then
    std::string previous_sha256{};    ///< of the entry before it in the chain; empty: the first
    std::string sha256{};             ///< of this entry; empty: made before entries were chained
    std::string extra_json{};
    friend bool operator==(const Reading&, const Reading&) = default;
};

/// What readings are held against where the firm, the authority or the maker asks for something else than the program's
/// own limits (docs/handbook/commissioning.md). Absent: the program's own.
struct AcceptanceLimits {
    std::optional<double> least_insulation_mohm;  ///< 0.01..1000
    std::optional<double> most_earth_ohm;         ///< 0.01..5000
    std::optional<double> most_loop_ohm;          ///< 0.01..100
    std::optional<double> residual_current_ma;    ///< rated, of the device fitted, 1..1000
    std::optional<double> most_trip_ms;           ///< 1..1000
    std::optional<double> most_tap_c;             ///< 30..70
    std::optional<double> most_leak_g_year;       ///< 0.1..1000, R134a
    std::optional<double> most_vacuum_pa;         ///< 1..5000
    std::optional<double> gauge_error_bar;        ///< limit of error of the gauge at the hold, 0.0001..2
    std::optional<double> thermometer_error_k;    ///< 0.01..10
    std::string extra_json;
    friend bool operator==(const AcceptanceLimits&, const AcceptanceLimits&) = default;
};

/// What was agreed for the time after.
struct AftercareTerms {
    std::optional<double> warranty_months;  ///< 0..600, from the hand-over
    std::string warranty_words;             ///< by whom and on what
    bool service_contract = false;
    std::string contract_words;
    std::string extra_json;
    friend bool operator==(const AftercareTerms&, const AftercareTerms&) = default;
};

}  // namespace wg
