#pragma once
// A pressure hold with dry nitrogen, judged from two temperatures and what the instruments can tell.

#include <optional>

namespace wg::commissioning {

struct HoldReading {
    double gauge_bar = 0.0;           ///< bar gauge
    std::optional<double> plate_c;    ///< gas outdoors: probe on the tube or plate, under insulation
    std::optional<double> indoors_c;  ///< gas indoors
    bool plate_in_sun = false;        ///< then no probe tells the temperature of the gas
};

struct HoldInstruments {
    double gauge_bar = 0.1;      ///< limits of error, each reading
    double thermometer_k = 1.0;  ///< the same
    double share = 0.1;          ///< of the share of the volume that lies outdoors
};

struct HoldTest {
    HoldReading start, end;
    double hours = 0.0;                 ///< between the readings
    double volume_l = 2.0;              ///< under test: plates and lines
    double outdoors_share = 0.7;        ///< of it, 0..1
    double air_pressure_bar = 1.01325;  ///< at the site's height
    HoldInstruments instruments;
    double leak_limit_g_year = 50.0;  ///< R134a at 20 deg C, that the hold has to rule out
};

enum class HoldVerdict {
    tight,           ///< no loss beyond the instruments, and a leak of the limit is ruled out
    leak,            ///< more is missing than instruments and temperatures explain
    wait_longer,     ///< no loss seen, but a leak of the limit is not ruled out yet
    no_temperature,  ///< a temperature is missing, or the plate is in the sun
    gained,          ///< more pressure than can be: gas or heat came in unseen
};

struct HoldResult {
    HoldVerdict verdict = HoldVerdict::no_temperature;
    double expected_bar = 0.0;       ///< gauge, of a tight system at the end's temperatures
    double ideal_gas_bar = 0.0;      ///< the same by the ideal gas law
    double spread_bar = 0.0;         ///< missing more than this is a leak: one sound hold in forty goes beyond it
    double missing_bar = 0.0;        ///< expected less read
    double leak_g_year = 0.0;        ///< for R134a at 20 deg C; 0 when nothing is missing
    double detectable_g_year = 0.0;  ///< a leak of this size is found in 19 of 20 holds like this
    double ruled_out_g_year = 0.0;  ///< by what was read, a larger leak is ruled out with 95 %; tight: within the limit
    double hours_needed = 0.0;      ///< until it is, if nothing more goes missing; 0 unless verdict wait_longer
};

/// Pressure of the same amount of nitrogen at other temperatures, bar gauge: connected volumes keep one pressure, so
/// p sum(V/(Z T)) stays. Real gas by nitrogen_compressibility.
[[nodiscard]] double tight_pressure_bar(double start_bar_gauge, double air_pressure_bar, double outdoors_share,
                                        double start_plate_c, double start_indoors_c, double end_plate_c,
                                        double end_indoors_c);

/// Mass of R134a a year through a path that lets `nitrogen_pa_m3_s` of nitrogen pass from `pressure_bar` to air:
/// laminar flow goes with (p^2 - p_air^2)/viscosity (EN 1779:1999 annex on flow regimes, from memory); at 20 deg C,
/// vapour at its saturation pressure 5.717 bar, 11.62 uPa s, 102.03 g/mol, as an ideal gas.
[[nodiscard]] double leak_g_year(double nitrogen_pa_m3_s, double pressure_bar_abs, double air_pressure_bar,
                                 double nitrogen_c);

/// Hours above 0 and pressures above 0 are the caller's to check; anything else gives no_temperature.
[[nodiscard]] HoldResult judge(const HoldTest& test);

}  // namespace wg::commissioning
