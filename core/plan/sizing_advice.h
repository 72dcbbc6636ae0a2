#pragma once
// Which equipment suits a household: every set of the catalogue beside the others, what tilt and bearing do to it on
// this site, and how long it takes to warm up through the year. docs/handbook/sizing.md has the methods.

#include <array>
#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "core/findings/finding.h"
#include "core/job/job.h"
#include "core/plan/reference.h"
#include "core/plan/study.h"
#include "core/season/season.h"

namespace wg::plan {

/// A house full of guests all year, to see which set has something in hand where all serve the usual household;
/// assumed.
inline constexpr double guests_factor = 1.5;

/// What a household puts up with in a usual year. Every limit that is given must be kept; none given: every set will
/// do.
struct ComfortTarget {
    /// Litres a year missing at the wanted temperature, at most, 0..100000; assumed: a litre a day.
    std::optional<double> most_short_l = 365.0;
    /// Hours of the clock a year in which a draw falls short, at most, 0..8760.
    std::optional<double> most_short_h;
    friend bool operator==(const ComfortTarget&, const ComfortTarget&) = default;
};

struct SizingWish {
    std::string choice_id;    ///< its collector, places, spot, fixing and light; empty: the chosen one
    int most_collectors = 4;  ///< 1..4
    ComfortTarget comfort;
    int threads = 2;  ///< 1..16; changes nothing but the time taken
};

/// One set: block, cylinder and number of collectors, and a year with it.
struct SizingPoint {
    std::string block_id, cylinder_id;
    std::string label;  ///< "2 x Marl 18, Rill 18, Copse 250"
    int collectors = 1;
    bool present = false;                     ///< the set of the choice itself
    std::vector<Placement> placements;        ///< of the choice, and further ones where a place was found
    int without_place = 0;                    ///< collectors that no place was found for; they are priced all the same
    std::optional<double> investment_minor;   ///< with tax; absent: a price is missing
    double running_cost_minor = 0.0;          ///< electricity a year
    std::optional<double> yearly_cost_minor;  ///< investment as an annuity, service and electricity
    double electricity_kwh = 0.0;
    double heat_kwh = 0.0;
    double seasonal_factor = 0.0;
    double shortfall_kwh = 0.0;
    double short_l = 0.0;  ///< shortfall as litres heated from the mean cold inflow to the wanted temperature
    int short_draws = 0;
    double short_h = 0.0;         ///< hours of the clock in which a draw fell short
    double short_guests_l = 0.0;  ///< the same in a year in which `guests_factor` times as much is drawn
    double warm_up_h = 0.0;       ///< from 10 deg C in fair light (400 W/m2, 15 deg C); 0: not reached
    bool meets_comfort = false;
    /// No other set has less of one and no more of the other: cost, and water short with guests.
    bool front_investment = false;
    bool front_yearly = false;   ///< the same with the yearly whole cost
    std::vector<Finding> stops;  ///< what stands against it on this site
};

struct SizingAdvice {
    bool cancelled = false;
    ComfortTarget comfort;  ///< that meets_comfort goes by
    std::string currency;
    std::vector<SizingPoint> points;   ///< by block, cylinder, number
    std::vector<std::string> remarks;  ///< sets left out and why
    std::string method;
};
[[nodiscard]] Result<SizingAdvice> sizing_advice(const Job& job, const Reference& reference,
                                                 const SizingWish& wish = {}, const Progress& progress = {});

/// Sets meets_comfort anew: another target needs no further year of operation. Problem for a limit out of its range;
/// the advice then stays as it was.
[[nodiscard]] Result<bool> judge_comfort(SizingAdvice& advice, const ComfortTarget& target);

/// The job with one more choice made of the point, not yet the chosen one. `ids` makes a fresh id at each call.
[[nodiscard]] Job with_set(Job job, const SizingWish& wish, const SizingPoint& point, const std::string& label,
                           const std::function<std::string()>& ids);

/// A year of the choice's set by tilt and bearing, all its plates together in the open: no shade. Mean of years with
/// a little less, as much and a little more drawn: the draw-off cycle is the same every day, so that a small change
/// shifts when the pump starts on all days at once and a single year jumps by a per cent or two.
struct FacingYield {
    double tilt_deg = 0.0, bearing_deg = 0.0;
    double light_kwh_m2 = 0.0, electricity_kwh = 0.0, seasonal_factor = 0.0, shortfall_kwh = 0.0;
};
struct FacingYields {
    bool cancelled = false;
    std::vector<double> tilts_deg, bearings_deg;
    std::vector<FacingYield> cells;  ///< by tilt, then bearing
    FacingYield here;                ///< the choice's first collector's tilt and bearing, in the open, too
    std::vector<std::string> remarks;
    std::string method;
};
[[nodiscard]] Result<FacingYields> facing_yields(const Job& job, const Reference& reference,
                                                 const std::string& choice_id = {}, const Progress& progress = {},
                                                 int threads = 2);

/// Warming up in one month's usual day or night.
struct MonthWarmUp {
    season::WarmUpConditions conditions;
    season::WarmUp warm_up;
};
struct MonthsWarmUp {
    std::array<MonthWarmUp, 12> day;    ///< mean of 09:00 to 17:00 sun time
    std::array<MonthWarmUp, 12> night;  ///< mean of 21:00 to 05:00 sun time
    std::string method;
};
/// From the month's cold inflow to the set-point under the month's mean conditions held constant.
[[nodiscard]] Result<MonthsWarmUp> warm_up_by_month(const Job& job, const Reference& reference,
                                                    const std::string& choice_id = {});

}  // namespace wg::plan
