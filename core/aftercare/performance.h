#pragma once
// The client's meters against the model: electricity used over a period, held against a year of operation under the
// weather of that period, on the same days. Pure; the plan comes in.

#include <array>
#include <optional>
#include <string>
#include <vector>

#include "core/aftercare/calendar.h"
#include "core/job/job.h"
#include "core/plan/plan.h"

namespace wg::aftercare {

/// Between two readings of the electricity meter.
struct Metered {
    CivilDate from;  ///< day of the first reading
    CivilDate to;    ///< day of the second: not in the period any more
    double electricity_kwh = 0.0;
    std::optional<double> heat_kwh;  ///< of hot water drawn, from a heat meter read on both days
    std::optional<double> water_m3;  ///< the same of a water meter
    [[nodiscard]] int days() const noexcept { return days_between(from, to); }
};

/// Successive readings of the electricity meter, after corrections, oldest first, and from three readings on the whole
/// as the last. Where the meter went backwards (exchanged, or misread) nothing is reckoned across it. Readings of the
/// other meters count from the same day, or up to two days off.
[[nodiscard]] std::vector<Metered> metered_periods(const std::vector<Reading>& record);

/// Heat in hot water measured by volume, kWh: drawn at the set-point, cold inflow at the yearly mean. Both assumed;
/// good to about 10 %.
[[nodiscard]] double heat_of_water_kwh(double water_m3, const Demand& demand) noexcept;

/// Heat drawn as far as the meters tell: the heat meter before the water meter.
[[nodiscard]] std::optional<double> heat_read_kwh(const Metered& metered, const Demand& demand) noexcept;

/// What a year of operation used and gave on each day, and how sure the model is.
struct DayModel {
    static constexpr std::size_t days = 365;
    std::array<double, days> electricity_kwh{};
    std::array<double, days> drawn_kwh{};
    // Of the electricity, shares of the middle: with the use of hot water as planned...
    double low_share = 1.0;
    double high_share = 1.0;
    // ...and with the use known from a meter.
    double low_share_metered = 1.0;
    double high_share_metered = 1.0;
};
/// Of a plan with hours; nullopt: without.
[[nodiscard]] std::optional<DayModel> day_model(const plan::Plan& plan);

/// Sum over the days of a period, each by its place in the year; 29 February counts as the 28th. `to` is left out.
[[nodiscard]] double sum_over(const std::array<double, DayModel::days>& values, CivilDate from, CivilDate to) noexcept;

/// The demand with its draws so many times as large, as far as the model goes (`Demand::scale` 0.2 to 3).
[[nodiscard]] Demand scaled_draws(Demand demand, double ratio) noexcept;

/// Days of a period that fall into years which the text names in four figures: "Upper Sallow 2027".
[[nodiscard]] int days_named(const std::string& text, CivilDate from, CivilDate to) noexcept;

enum class Performance { as_expected, more, clearly_more, less, clearly_less, cannot_tell };
[[nodiscard]] const char* text_of(Performance performance) noexcept;

/// Shorter periods say nothing: one holiday or one hygiene run more is too large a part.
inline constexpr int least_days = 28;
/// Beyond the model's range by up to this share of the middle: to be watched, not yet clear. Common practice.
inline constexpr double watch_share = 0.10;

struct PerformanceCheck {
    Metered metered;
    double low_kwh = 0.0, mid_kwh = 0.0, high_kwh = 0.0;  ///< electricity expected
    double drawn_expected_kwh = 0.0;
    std::optional<double> heat_kwh;     ///< as far as metered
    std::optional<double> factor_read;  ///< heat drawn / electricity, from the meters
    double factor_expected = 0.0;
    Performance verdict = Performance::cannot_tell;
    std::string words;                 ///< "used 12 % more than expected for this weather: within what is usual"
    std::vector<std::string> look_at;  ///< what to look at, likeliest first; empty when as expected
    std::string weather_words;         ///< whether the weather is that of the period
    bool weather_of_period = false;
    bool use_metered = false;  ///< the model ran with the use of hot water that the meter shows
};

/// `model`: of the weather named by `weather_text`, with the draws as metered when `use_metered`.
[[nodiscard]] PerformanceCheck check_performance(const Metered& metered, const DayModel& model, const Demand& demand,
                                                 const std::string& weather_text, bool use_metered);

/// Plans the job's chosen choice under the reference's weather and holds the meter against it; where heat or water is
/// metered, with draws of that size. One or two full plans: seconds, not for the window's own thread. Problems: as
/// plan() has them, or when there is no year of operation.
[[nodiscard]] Result<PerformanceCheck> performance_of(const Job& job, const plan::Reference& reference,
                                                      const Metered& metered, const std::string& weather_text);

}  // namespace wg::aftercare
