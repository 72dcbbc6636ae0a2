#pragma once
// How a day is cut into steps, and what the weather of an hour is like within it.

#include <array>
#include <vector>

#include "core/season/season.h"

namespace wg::season {

/// A step of the day; longer steps are cut where a draw begins. Draws happen at the beginning of their step.
struct Slot {
    double length_s = 600.0;
    int hour = 0;
    int part = 0;  ///< which even part of the hour, for the light
    int first_draw = 0;
    int draw_count = 0;
    double quiet_s = 0.0;  ///< from its beginning to the next draw or the end of the hour
    int quiet_slots = 1;   ///< slots in that time
};

struct Schedule {
    int parts_per_hour = 6;
    std::vector<Slot> slots;      ///< 00:00 to 24:00
    std::vector<double> draws_j;  ///< useful heat asked for, in order of time
};
[[nodiscard]] Schedule schedule_of(const Demand& demand, double step_s);

/// The schedule of each day of the year. With a fixed cycle all days share one; on holidays nobody draws; a household
/// has a schedule a day, in which draws closer to each other than a step happen together, one after the other.
class DaySchedules {
   public:
    DaySchedules(const Demand& demand, int first_weekday, double step_s, const std::array<double, 365>& cold_c);
    [[nodiscard]] const Schedule& of(int day) const noexcept {
        return all_[static_cast<std::size_t>(which_[static_cast<std::size_t>(day)])];
    }
    [[nodiscard]] int parts_per_hour() const noexcept { return all_.front().parts_per_hour; }

   private:
    std::vector<Schedule> all_;
    std::array<int, 365> which_{};
};

/// Share of the hour's mean light in each even part, mean 1: follows the sine of the sun's elevation, taken in
/// straight lines between the hours' middles; even when the sun is down by that account.
void light_shape(const std::vector<double>& sun_up, int hour, int parts, double* shape) noexcept;

/// Cold inflow for each day: yearly mean plus a wave in step with the year's wave of air temperature, later by
/// `cold_delay_days` (ground at pipe depth). Works in both hemispheres.
inline constexpr double cold_delay_days = 35.0;
[[nodiscard]] std::array<double, 365> cold_inflow_c(const std::vector<double>& air_c, const Demand& demand);

/// Problems with what household, clock, tariff, loop and hygiene programme ask, and with the surplus series.
void add_demand_problems(const Input& input, std::vector<Problem>& problems);

/// Problems with the input, all at once. `series`: check the hourly series, too.
[[nodiscard]] std::vector<Problem> problems_of(const Input& input, const Options& options, bool series);

}  // namespace wg::season
