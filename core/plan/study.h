#pragma once
// What a choice's yearly figures are worth: many years of operation in which weather, household, equipment and prices
// are drawn from stated distributions. docs/handbook/ranges.md has the method, every width and its ground.

#include <array>
#include <cstddef>
#include <cstdint>
#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "core/job/job.h"
#include "core/plan/reference.h"

namespace wg::plan {

/// Called now and then with the share done, 0..1, from one thread at a time; false stops the work.
using Progress = std::function<bool(double)>;

struct StudyOptions {
    std::string choice_id;   ///< empty: the chosen one
    int members = 200;       ///< 20..5000
    int weather_years = 40;  ///< made years that members draw from, 2..weather::most_ensemble_years
    std::uint64_t seed = 1;  ///< of the draws; the weather's seeds are the climate's own
    double step_s = 900.0;   ///< of the years of operation, as season::Options has it
    int threads = 2;         ///< 1..16; changes nothing but the time taken
};

enum class Measure { heat_kwh, electricity_kwh, seasonal_factor, running_cost, saving, payback_y, shortfall_kwh };
inline constexpr std::size_t measure_count = 7;  ///< costs in minor units a year

enum class FactorKind { weather, household, equipment, site, prices };

/// One input that is not known for certain.
struct Factor {
    std::string key;    ///< "plate", "draw", ...
    std::string title;  ///< "plate to refrigerant"
    std::string unit;   ///< of the three values; empty: a factor on what the data say
    FactorKind kind = FactorKind::equipment;
    double low = 0.0;  ///< tenth percentile
    double nominal = 0.0;
    double high = 0.0;         ///< ninetieth percentile
    std::string distribution;  ///< in words
    std::string ground;        ///< source, or why assumed
    bool assumed = true;
};

/// What one factor does to one measure.
struct Bar {
    std::size_t factor = 0;  ///< index into Study::factors
    double at_low = 0.0;     ///< the measure with this factor alone at its low, all others nominal
    double at_high = 0.0;
    double rank_correlation = 0.0;  ///< over the members, Spearman
    double share = 0.0;             ///< its square: about the share of the variance that goes with this factor
    double share_error = 0.0;       ///< standard error of the share
    [[nodiscard]] double span() const noexcept { return at_high > at_low ? at_high - at_low : at_low - at_high; }
};

struct Spread {
    double nominal = 0.0;
    /// Over the members; absent for a payback that is not reached within the years looked at.
    std::optional<double> p10, p50, p90;
    double never_share = 0.0;  ///< payback only: share of the members that never pay back
    std::vector<Bar> bars;     ///< widest first; none for payback
};

struct Study {
    bool cancelled = false;  ///< nothing else is filled then
    int members = 0;
    int weather_years = 0;
    std::uint64_t seed = 0;
    std::string choice_id, choice_label, currency;
    bool has_price = false;  ///< without one there is no payback
    std::vector<Factor> factors;
    std::array<Spread, measure_count> spreads;
    std::vector<std::string> remarks;  ///< values that had to be kept inside limits, and how often; weather not made
    std::string method;
    [[nodiscard]] const Spread& of(Measure measure) const noexcept {
        return spreads[static_cast<std::size_t>(measure)];
    }
};

/// Deterministic to the bit, whatever the threads. Problems as plan() has them, for options out of range, and when the
/// choice has no collector.
[[nodiscard]] Result<Study> study(const Job& job, const Reference& reference, const StudyOptions& options = {},
                                  const Progress& progress = {});

}  // namespace wg::plan
