#pragma once
// Job in, plan out. Pure and deterministic to the bit: same input, same plan.

#include <array>
#include <optional>
#include <string>
#include <vector>

#include "core/commissioning/commissioning.h"
#include "core/economy/economy.h"
#include "core/findings/finding.h"
#include "core/fixing/fixing.h"
#include "core/job/job.h"
#include "core/parts/parts.h"
#include "core/pipework/run.h"
#include "core/pipework/suggest.h"
#include "core/plan/charge_duties.h"
#include "core/plan/reference.h"
#include "core/quote/offered.h"
#include "core/season/season.h"
#include "core/services/services.h"
#include "core/site/geometry.h"
#include "core/site/shade.h"
#include "core/sky/plane.h"
#include "core/weather/ensemble.h"

namespace wg::plan {

/// A figure with its likely range (about 80 % of cases, by the runs named in `Plan::range_method`).
struct Ranged {
    double low = 0.0;
    double mid = 0.0;
    double high = 0.0;
};

/// What the weather of single years alone does to the year's figures: quantiles over further years of the climate.
struct WeatherSpread {
    int years = 0;
    weather::Quantiles light_kwh_m2;  ///< on the front of the plates, mean of all, after shade
    weather::Quantiles electricity_kwh;
    weather::Quantiles heat_kwh;  ///< drawn
    weather::Quantiles seasonal_factor;
};

struct PlacementPlan {
    std::string placement_id;
    std::string label;
    std::string surface_id;
    std::string surface_label;
    site::PlacedCollector placed;
    bool on_frame = false;
    site::Shade shade;
    double plane_kwh_m2 = 0.0;  ///< a year on the front face after shade
    double plane_unshaded_kwh_m2 = 0.0;
    std::array<double, 12> plane_month_kwh_m2{};  ///< beam, diffuse and ground together
    // The same by kind of light, front face after shade.
    std::array<double, 12> plane_month_beam_kwh_m2{};  ///< with the light from around the sun, as the model has it
    std::array<double, 12> plane_month_diffuse_kwh_m2{};
    std::array<double, 12> plane_month_ground_kwh_m2{};
    /// Beam that shade keeps off the plate; a year of it is `plane_unshaded_kwh_m2` less `plane_kwh_m2`.
    std::array<double, 12> plane_month_shade_loss_kwh_m2{};
    sky::DiffuseModel diffuse_model = sky::DiffuseModel::hay_davies;  ///< that split and turned the sky's light
    fixing::Outcome fixing;
};

/// Yearly figures for ledger and quote.
struct Figures {
    Ranged heat_kwh;  ///< useful heat drawn
    Ranged electricity_kwh;
    Ranged seasonal_factor;  ///< heat to water / electricity
    Ranged running_cost_minor;
    double run_m = 0.0;
    double charge_kg = 0.0;
    double worst_utilisation = 0.0;
    int worst_point = 0;
    Money price_gross;
    Money price_net;
};

struct ServiceDue {
    std::string id;
    std::string text;
    int every_months = 12;
    std::string why;
    std::string source;
};

/// Pressures to test collector and lines with, bar gauge, dry nitrogen; the block is shut off.
struct PressureTests {
    double weakest_bar = 0.0;  ///< least PS of what is tested
    std::string weakest_part;
    double standstill_bar = 0.0;  ///< highest pressure with the pump off
    bool standstill_known = false;
    double tightness_bar = 0.0;  ///< as the block's data ask, not below standstill, not above the weakest part
    double strength_bar = 0.0;   ///< 1.1 times the weakest part's
};

struct Plan {
    std::string job_id;
    std::string job_number;
    std::string title;
    std::int64_t job_revision = 0;
    std::string content_sha256;  ///< of the job's content that was planned
    std::string plan_mark;       ///< plan_mark() of the job: prints are told apart by it
    bool invented = false;       ///< demonstration data somewhere in it
    std::string choice_id;
    std::string choice_label;
    // Models as they were, frozen with the plan.
    CollectorModel collector;
    BlockModel block;
    CylinderModel cylinder;
    FixingMethod fixing_method;
    std::string weather_source;
    bool weather_invented = false;
    std::string rule_set_label;
    std::string price_list_label;
    std::string currency;
    // Rooms.
    std::vector<PlacementPlan> placements;
    bool has_yield = false;  ///< false in a quick plan or when a stop prevents it
    season::Year season;
    season::Standstill standstill;
    std::optional<season::WarmUp> warm_up_good;  ///< 800 W/m2, 20 deg C
    std::optional<season::WarmUp> warm_up_fair;  ///< 400 W/m2, 15 deg C
    std::optional<season::WarmUp> warm_up_poor;  ///< night, 2 deg C
    std::string range_method;
    std::optional<WeatherSpread> weather_spread;  ///< when the reference holds further years
    pipework::Run run;
    bool run_suggested = false;              ///< the choice has no route: `run` goes the way of core/pipework/suggest.h
    std::optional<double> run_loss_percent;  ///< of the seasonal factor, against a year without the suction line
    services::Outcome services;
    parts::Outcome parts;
    std::optional<quote::Quote> quote;      ///< over what is offered: `offered->quote`
    std::optional<quote::Offered> offered;  ///< the parts list with the office's changes and lines
    economy::Outcome economy;
    PressureTests pressure_tests;
    ChargeDuty duty;
    commissioning::Expected expected;
    std::vector<commissioning::Assessment> assessments;
    std::vector<commissioning::Assessment> service_assessments;  ///< of the newest service visit, when there was one
    std::vector<commissioning::MonthForecast> forecasts;  ///< of all months, or none: a quick plan, no pump that runs
    std::vector<ServiceDue> service;
    Figures figures;
    std::vector<Finding> findings;  ///< sorted, worst first
    std::vector<Working> workings;
    [[nodiscard]] bool stopped() const noexcept { return has_stop(findings); }
};

struct Options {
    std::string choice_id;  ///< empty: the chosen one
    std::string on;         ///< ISO 8601 date of the quote, for tax rates that change; empty: the newest rates
    bool yield = true;      ///< false: geometry, run, fixings and price only (for the first figures while dragging)
    bool ranges = true;     ///< the extra runs for Ranged
    bool keep_hours = true;
    int shade_samples_x = 5;
    int shade_samples_y = 3;
};

/// Problems: the job names models, spots, rule sets or climates that the reference does not hold, or has no choice.
/// Everything else that is wrong with the layout becomes a finding.
[[nodiscard]] Result<Plan> plan(const Job& job, const Reference& reference, const Options& options = {});

/// A way for the run of a choice (empty: the chosen one) by what is drawn; the route's points have no ids. Problems: as
/// plan() has them, and when the choice has no collector.
[[nodiscard]] Result<pipework::Suggestion> suggested_run(const Job& job, const Reference& reference,
                                                         const std::string& choice_id = {});

/// plan.json of the command line (docs/plan-format.md).
[[nodiscard]] std::string plan_to_json(const Plan& plan);
/// One page of text: the summary that the command line prints.
[[nodiscard]] std::string summary(const Plan& plan);

}  // namespace wg::plan
