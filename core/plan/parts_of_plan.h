#pragma once
// Steps of plan(), in the order it takes them. Internal to core/plan.

#include <string>
#include <vector>

#include "core/commissioning/model.h"
#include "core/pipework/suggest.h"
#include "core/plan/plan.h"

namespace wg::plan::steps {

/// Everything the choice names, found in the reference. Pointers into Job and Reference: both outlive plan().
struct Selection {
    const Choice* choice = nullptr;
    const CollectorModel* collector = nullptr;
    const BlockModel* block = nullptr;
    const CylinderModel* cylinder = nullptr;
    const FixingMethod* method = nullptr;
    const std::vector<FixingMethod>* methods = nullptr;  ///< all of the catalogue
    const CylinderSpot* spot = nullptr;
    const RuleSet* rules = nullptr;
    const parts::PriceList* prices = nullptr;
    const refrigerant::Properties* refrigerant = nullptr;
    std::shared_ptr<const PreparedWeather> weather;
    std::shared_ptr<const std::vector<std::shared_ptr<const PreparedWeather>>> further_years;  ///< may be null
};
[[nodiscard]] Result<Selection> select(const Job& job, const Reference& reference, const Options& options);

/// Where the block's connections are: at two thirds of the cylinder's height over the spot.
[[nodiscard]] Point3 block_connection(const CylinderSpot& spot, const CylinderModel& cylinder);

/// The plane of a placed collector whose shade is worked out.
[[nodiscard]] sky::PlaneInput plane_of(const Job& job, const PlacementPlan& placed);

/// Light on each placed collector; fills `Plan::placements` and returns the plane years in the same order.
[[nodiscard]] std::vector<sky::PlaneYear> light(const Job& job, const Selection& with, const Options& options,
                                                Plan& plan);

/// What a year of operation needs, from the light on each collector (mean of all) and the run.
[[nodiscard]] season::Input season_input(const Job& job, const Selection& with,
                                         const std::vector<sky::PlaneYear>& planes,
                                         const std::vector<PlacementPlan>& placements, const pipework::Run& run);

/// Light on the photovoltaic plane of the wish times peak power and a performance ratio, less the house's load; without
/// shade. Empty when there are none.
[[nodiscard]] std::vector<double> photovoltaic_surplus_w(const Job& job, const sky::PreparedYear& year);

/// Quarter-hour steps and a short warm-up, for years of which only the difference from one another is used.
[[nodiscard]] season::Options options_for_comparing() noexcept;

/// The further years, each a year of operation at quarter-hour steps. Empty when there are none.
[[nodiscard]] Result<std::optional<WeatherSpread>> spread_over_years(const Job& job, const Selection& with,
                                                                     const Plan& plan);

/// Everything a run needs but where it goes.
[[nodiscard]] pipework::Input run_input(const Selection& with);

/// What a suggestion of the run needs. At least one placement.
[[nodiscard]] pipework::SuggestInput suggest_input(const Job& job, const Selection& with,
                                                   const std::vector<PlacementPlan>& placements);

/// Run, fixings, services.
void engineering(const Job& job, const Selection& with, Plan& plan);

/// The lines' losses at the points the year has found. `factor_without`: seasonal factor of the same year without the
/// suction line's drop and heat; 0: not worked out.
void losses_over_year(const Selection& with, double factor_without, Plan& plan);

/// The year, its range, warm-up, standstill, from the input of season_input.
[[nodiscard]] std::vector<Problem> yield(const Job& job, const Selection& with, const Options& options,
                                         const season::Input& input, Plan& plan);

/// Parts, quote, economy. `on`: Options::on.
void money(const Job& job, const Selection& with, const std::string& on, Plan& plan);

/// What concerns the whole: combinations of equipment, weather, market, assumptions, comfort.
void checks(const Job& job, const Selection& with, Plan& plan);

/// Standstill and test pressures.
void pressure_checks(const Selection& with, Plan& plan);

/// Leak checks and records by the rule set.
void charge_duties(const Selection& with, Plan& plan);

/// Comfort, hygiene programme, holidays and loop.
void household_checks(const Job& job, const Selection& with, Plan& plan);

/// Values expected on the day, verdicts on the record so far, service that falls due; with the year's input also what
/// the running pump should show month by month. `input` null: a quick plan.
void aftercare(const Job& job, const Selection& with, const season::Input* input, Plan& plan);

/// What the running pump should show on a usual day of each month; empty when it runs in none of them.
[[nodiscard]] std::vector<commissioning::MonthForecast> forecasts(const commissioning::Model& model);

/// Whether the record is whole and was made for the plan as it is now.
void record_checks(const Job& job, Plan& plan);

}  // namespace wg::plan::steps
