#pragma once
// The wish: hot water by cycle or by household, control, tariff, loop and hygiene.

#include <string>
#include <vector>

namespace wg {

/// Draw-off cycles of EU 812/2013, annex VII table 3.
enum class TappingCycle { s, m, l, xl, xxl };
enum class Fuel { electric_immersion, natural_gas, lpg, heating_oil, wood };

/// Where the draws of a day come from.
enum class DrawSource { cycle, household };
/// When a household draws most.
enum class DayRhythm { even, morning, evening };

/// People in place of a fixed cycle: draws differ from day to day, the same for the same number of the seed.
struct Household {
    int persons = 4;                     ///< 1..20
    double litres_40_per_person = 35.0;  ///< a day at home, mixed water of 40 deg C, 5..200
    DayRhythm rhythm = DayRhythm::even;
    double weekend_factor = 1.1;    ///< litres of a Saturday or Sunday to those of a weekday, 0.2..3
    bool away_on_weekdays = false;  ///< nobody draws between 8:30 and 16:30
    int seed_number = 1;            ///< 0..999999
    std::string extra_json;
    friend bool operator==(const Household&, const Household&) = default;
};

/// Days of the year, ends included, in which nobody draws. May run over the turn of the year.
struct HolidayPeriod {
    int from_month = 7;
    int from_day = 15;
    int to_month = 7;
    int to_day = 28;
    std::string extra_json;
    friend bool operator==(const HolidayPeriod&, const HolidayPeriod&) = default;
};

/// Hours of the day in local standard time; over midnight when `to_h` is less than `from_h`; equal: never.
struct ClockWindow {
    double from_h = 0.0;  ///< 0..24
    double to_h = 24.0;
    bool weekdays = true;  ///< a window over midnight belongs to the day it begins on
    bool weekends = true;
    std::string extra_json;
    friend bool operator==(const ClockWindow&, const ClockWindow&) = default;
};

/// Photovoltaics of the house: what is left after the house's own load may raise the set-point.
struct SurplusSignal {
    double peak_kw = 0.0;  ///< 0: none
    double tilt_deg = 30.0;
    double azimuth_deg = 180.0;
    double base_load_w = 300.0;  ///< the house without the hot water
    double threshold_w = 600.0;  ///< surplus from which the signal is on
    double raise_k = 5.0;        ///< of the set-point while it is on; 0: none
    std::string extra_json;
    friend bool operator==(const SurplusSignal&, const SurplusSignal&) = default;
};

enum class HolidayRule { as_usual, off, frost_safe };
/// When the immersion heater helps out.
enum class BackUpRule { when_blocked_or_cold, below_wanted, never };

struct Control {
    std::vector<ClockWindow> run_windows;  ///< the pump runs in these only; empty: at any time
    bool low_tariff_only = false;          ///< the windows of the low tariff count as run windows
    double always_below_c = 40.0;          ///< outside the windows it runs only below this, 10..60
    std::vector<ClockWindow> set_back_windows;
    double set_back_k = 5.0;  ///< lower set-point in those, 0..20
    SurplusSignal surplus;
    HolidayRule holiday_rule = HolidayRule::as_usual;
    bool hygiene_before_return = false;  ///< a hygiene run at noon of the last day of holidays
    BackUpRule back_up = BackUpRule::when_blocked_or_cold;
    std::string extra_json;
    friend bool operator==(const Control&, const Control&) = default;
};

/// What the house pays beside the price list's one price. Assumed until a bill is seen.
struct Tariff {
    std::vector<ClockWindow> low_windows;
    double low_minor_kwh = 22.0;     ///< in the low windows
    double feed_in_minor_kwh = 8.0;  ///< paid for what is fed in: the worth of own photovoltaic electricity
    std::string extra_json;
    friend bool operator==(const Tariff&, const Tariff&) = default;
};

/// Loop of hot water through the house.
struct Recirculation {
    bool present = false;
    double loss_w = 80.0;              ///< while it runs, with the top of the cylinder 35 K over the room
    std::vector<ClockWindow> windows;  ///< empty: always
    std::string extra_json;
    friend bool operator==(const Recirculation&, const Recirculation&) = default;
};

enum class HygieneRule { none, weekly, daily };
enum class HygieneSource { immersion, pump_then_immersion };

/// Heating of the store against legionella.
struct Hygiene {
    HygieneRule rule = HygieneRule::none;
    double target_c = 60.0;  ///< 50..75
    double hold_min = 30.0;  ///< 1..240
    int weekday = 6;         ///< of a weekly run, 0 Monday
    double at_h = 2.0;       ///< begins, 0..24
    HygieneSource source = HygieneSource::pump_then_immersion;
    std::string extra_json;
    friend bool operator==(const Hygiene&, const Hygiene&) = default;
};

struct Demand {
    TappingCycle cycle = TappingCycle::m;
    double scale = 1.0;         ///< of every draw's energy, 0.2..3
    double set_point_c = 55.0;  ///< 40..65
    double hysteresis_k = 6.0;  ///< 2..15
    double wanted_c = 40.0;     ///< mixed water at the tap, 35..50
    double cold_mean_c = 10.0;  ///< yearly mean of cold inflow
    double cold_swing_k = 4.0;  ///< half the yearly range
    Fuel present_fuel = Fuel::electric_immersion;
    double present_efficiency = 0.95;
    DrawSource draw_source = DrawSource::cycle;
    Household household;  ///< with DrawSource::household
    std::vector<HolidayPeriod> holidays;
    Control control;
    Tariff tariff;
    Recirculation recirculation;
    Hygiene hygiene;
    std::string extra_json;
    friend bool operator==(const Demand&, const Demand&) = default;
};

}  // namespace wg
