#include "core/plan/sizing_advice.h"

#include <algorithm>
#include <cmath>
#include <utility>

#include "core/plan/in_parallel.h"
#include "core/plan/prepared_choice.h"
#include "core/plan/sizing_place.h"
#include "core/plan/study_factors.h"
#include "core/quantity/constants.h"
#include "core/quantity/text.h"

namespace wg::plan {
namespace {

using detail::PreparedChoice;

constexpr double water_wh_l_k = 1.163;  ///< 4.187 kJ/(kg K), a litre taken as a kilogram
/// Fair daylight, as plan() has it (docs/handbook/season.md).
constexpr season::WarmUpConditions fair{10.0, 400.0, 0.0, 15.0, 0.65, 2.0, 10.0};

/// A set to be run.
struct Set {
    const BlockModel* block = nullptr;
    const CylinderModel* cylinder = nullptr;
    int collectors = 1;
};

bool fits(const BlockModel& block, const CylinderModel& cylinder) {
    const auto& ids = cylinder.fits_blocks;
    return ids.empty() || std::find(ids.begin(), ids.end(), block.id) != ids.end();
}

std::vector<Set> sets_of(const Reference& reference, const CollectorModel& collector, int most,
                         std::vector<std::string>& remarks) {
    std::vector<Set> out;
    for (const BlockModel& block : reference.catalogue.blocks) {
        if (reference.refrigerants.count(block.refrigerant) == 0) {
            remarks.push_back(block.name + ": no property table for its refrigerant");
            continue;
        }
        int counts = 0;
        for (int n = 1; n <= most; ++n) {
            const double area_m2 = n * collector.face_area_m2;
            if (area_m2 < block.collector_area_min_m2 || area_m2 > block.collector_area_max_m2) continue;
            ++counts;
            for (const CylinderModel& cylinder : reference.catalogue.cylinders)
                if (fits(block, cylinder)) out.push_back({&block, &cylinder, n});
        }
        if (counts == 0) {
            remarks.push_back(block.name + ": 1 to " + std::to_string(most) + " plates of " + collector.name +
                              " lie outside the " + fixed(block.collector_area_min_m2, 2) + " to " +
                              fixed(block.collector_area_max_m2, 2) + " m2 that it is made for");
        }
    }
    return out;
}

void take_stops(const std::vector<Finding>& from, bool overlapping, std::vector<Finding>& to) {
    for (const Finding& finding : from) {
        if (finding.severity != Severity::stop) continue;
        // Collectors without a place lie on top of another; that is said once, in words of its own.
        if (overlapping && finding.code == "collector.overlap") continue;
        to.push_back(finding);
    }
}

Finding no_place(int without, const Choice& choice) {
    return {"sizing.no-place",
            Severity::stop,
            Stage::layout,
            choice.id,
            choice.label,
            "No place for " + counted(without, "further collector", "further collectors") +
                " beside the others that keeps the rules of place and the free strip",
            "Look for a place on another surface in Layout",
            "Collectors lie on their surface, clear of keep-outs and each other",
            "site and equipment data"};
}

/// Money of a year: investment as an annuity without rise, service, electricity.
void take_costs(const steps::Selection& with, const Plan& plan, const season::Year& year, const Demand& demand,
                SizingPoint& point) {
    const economy::Tariffs& tariffs = with.prices->tariffs;
    economy::Input electricity;
    electricity.electricity_kwh = year.total.electricity_kwh();
    electricity.low_tariff_kwh = year.total.low_tariff_kwh;
    electricity.surplus_kwh = year.total.surplus_kwh;
    electricity.demand = demand;
    electricity.tariffs = tariffs;
    point.running_cost_minor = point.electricity_kwh * economy::mean_price_minor_kwh(electricity);
    const bool all_priced = std::all_of(plan.parts.lines.begin(), plan.parts.lines.end(),
                                        [](const parts::Line& line) { return line.priced; });
    if (!plan.quote || !all_priced) return;
    point.investment_minor = static_cast<double>(plan.quote->gross.minor);
    const double worth = economy::present_worth_factor(tariffs.years, 0.0, tariffs.discount_rate);
    if (worth > 0.0)
        point.yearly_cost_minor =
            *point.investment_minor / worth + tariffs.yearly_service_minor + point.running_cost_minor;
}

struct Done {
    SizingPoint point;
    std::vector<Problem> problems;
};

/// Every collector has the light of the choice's: the first of its own place, further ones in turn.
season::Input input_of(const Job& job, const PreparedChoice& base, const steps::Selection& with, const Plan& plan) {
    std::vector<sky::PlaneYear> planes;
    std::vector<PlacementPlan> placements;
    for (std::size_t i = 0; i < with.choice->placements.size(); ++i) {
        planes.push_back(base.planes[i % base.planes.size()]);
        placements.push_back(base.plan.placements[i % base.planes.size()]);
    }
    return steps::season_input(job, with, planes, placements, plan.run);
}

double litres(double shortfall_kwh, const Demand& demand) {
    return 1e3 * shortfall_kwh / (water_wh_l_k * (demand.wanted_c - demand.cold_mean_c));
}

void take_year(const season::Year& year, const Demand& demand, SizingPoint& point) {
    point.electricity_kwh = year.total.electricity_kwh();
    point.heat_kwh = year.total.drawn_kwh;
    point.seasonal_factor = year.seasonal_factor;
    point.shortfall_kwh = year.total.shortfall_kwh;
    point.short_l = litres(year.total.shortfall_kwh, demand);
    point.short_draws = year.shortfall_draws;
    point.short_h = year.total.short_h;
}

Done run_set(const Job& job, const Reference& reference, const PreparedChoice& base, const Set& set) {
    Done out;
    SizingPoint& point = out.point;
    const Choice& original = *base.with.choice;
    Choice choice = original;
    detail::Placed placed = detail::placed_collectors(job.site, original, *base.with.collector, set.collectors);
    choice.placements = std::move(placed.placements);
    choice.block_model = set.block->id;
    choice.cylinder_model = set.cylinder->id;
    steps::Selection with = base.with;
    with.choice = &choice;
    with.block = set.block;
    with.cylinder = set.cylinder;
    with.refrigerant = reference.refrigerants.at(set.block->refrigerant).get();

    Plan plan;
    Options no_light;
    no_light.yield = false;
    (void)steps::light(job, with, no_light, plan);
    steps::engineering(job, with, plan);
    steps::money(job, with, {}, plan);

    point.block_id = set.block->id;
    point.cylinder_id = set.cylinder->id;
    point.collectors = set.collectors;
    point.label = std::to_string(set.collectors) + " x " + base.with.collector->name + ", " + set.block->name + ", " +
                  set.cylinder->name;
    point.present = set.block == base.with.block && set.cylinder == base.with.cylinder &&
                    static_cast<std::size_t>(set.collectors) == original.placements.size();
    point.placements = choice.placements;
    point.without_place = placed.without_place;

    const season::Input input = input_of(job, base, with, plan);
    const Result<season::Year> year = season::run(input, steps::options_for_comparing());
    if (!year) {
        out.problems = year.problems();
        return out;
    }
    take_year(year.value(), job.demand, point);
    season::Input guests = input;
    detail::scale_draw(guests.demand, guests_factor);
    const Result<season::Year> busy = season::run(guests, steps::options_for_comparing());
    if (!busy) {
        out.problems = busy.problems();
        return out;
    }
    point.short_guests_l = litres(busy.value().total.shortfall_kwh, job.demand);
    const Result<season::WarmUp> warm = season::warm_up(input, fair);
    if (!warm) {
        out.problems = warm.problems();
        return out;
    }
    if (warm.value().reached) point.warm_up_h = warm.value().hours;
    const Result<season::Standstill> still = season::standstill(input);
    if (!still) {
        out.problems = still.problems();
        return out;
    }
    plan.season = year.value();
    plan.standstill = still.value();
    plan.has_yield = true;
    steps::checks(job, with, plan);
    take_costs(with, plan, year.value(), job.demand, point);
    const bool overlapping = placed.without_place > 0;
    if (overlapping) point.stops.push_back(no_place(placed.without_place, original));
    take_stops(plan.findings, overlapping, point.stops);
    take_stops(plan.services.findings, false, point.stops);
    for (const PlacementPlan& placement : plan.placements)
        take_stops(placement.fixing.findings, false, point.stops);
    return out;
}

/// Marks what no other of the set has less cost and no more water short with guests, or the other way round. Sets with
/// a stop are measured against nothing and beat nothing, unless there is no other.
template <class Cost>
void mark_front(std::vector<SizingPoint>& points, bool SizingPoint::*mark, Cost cost) {
    const bool some_can = std::any_of(points.begin(), points.end(), [](const auto& p) { return p.stops.empty(); });
    const auto counts = [&](const SizingPoint& p) { return cost(p).has_value() && (!some_can || p.stops.empty()); };
    for (SizingPoint& p : points) {
        const auto beaten_by = [&](const SizingPoint& q) {
            return counts(q) && *cost(q) <= *cost(p) && q.short_guests_l <= p.short_guests_l &&
                   (*cost(q) < *cost(p) || q.short_guests_l < p.short_guests_l);
        };
        p.*mark = counts(p) && std::none_of(points.begin(), points.end(), beaten_by);
    }
}

void check(std::vector<Problem>& problems, const char* what, double value, double low, double high) {
    if (value >= low && value <= high) return;
    problems.push_back({std::string("wish.") + what, fixed(value, 1) + " was asked for",
                        "Choose " + fixed(low, 0) + " to " + fixed(high, 0)});
}

std::vector<Problem> problems_of(const ComfortTarget& target) {
    std::vector<Problem> problems;
    if (target.most_short_l) check(problems, "comfort.most_short_l", *target.most_short_l, 0.0, 100000.0);
    if (target.most_short_h) check(problems, "comfort.most_short_h", *target.most_short_h, 0.0, 8760.0);
    return problems;
}

std::vector<Problem> problems_of(const SizingWish& wish) {
    std::vector<Problem> problems = problems_of(wish.comfort);
    check(problems, "most_collectors", wish.most_collectors, 1, 4);
    check(problems, "threads", wish.threads, 1, 16);
    return problems;
}

}  // namespace

Result<SizingAdvice> sizing_advice(const Job& job, const Reference& reference, const SizingWish& wish,
                                   const Progress& progress) {
    if (auto problems = problems_of(wish); !problems.empty()) return problems;
    const Result<PreparedChoice> prepared = detail::prepared_choice(job, reference, wish.choice_id);
    if (!prepared) return prepared.problems();
    const PreparedChoice& base = prepared.value();

    SizingAdvice out;
    const std::vector<Set> sets = sets_of(reference, *base.with.collector, wish.most_collectors, out.remarks);
    std::vector<Done> done(sets.size());
    detail::Reporter reporter(progress, std::max<std::size_t>(1, sets.size()));
    detail::each(sets.size(), wish.threads, reporter,
                 [&](std::size_t i) { done[i] = run_set(job, reference, base, sets[i]); });
    if (!reporter.report()) {
        out.cancelled = true;
        return out;
    }
    for (Done& one : done) {
        if (!one.problems.empty()) {
            out.remarks.push_back(one.point.label + ": " + text_of(one.problems));
            continue;
        }
        out.points.push_back(std::move(one.point));
    }
    mark_front(out.points, &SizingPoint::front_investment, [](const SizingPoint& p) { return p.investment_minor; });
    mark_front(out.points, &SizingPoint::front_yearly, [](const SizingPoint& p) { return p.yearly_cost_minor; });
    if (const Result<bool> judged = judge_comfort(out, wish.comfort); !judged) return judged.problems();
    out.currency = base.with.prices->currency;
    out.method =
        "every block and cylinder of the catalogue that go together, with as many collectors as the block is made for; "
        "a year of operation each at 15-minute steps, every collector in the light of the choice's own; priced by the "
        "parts list of the set on this site, prices of " +
        base.with.prices->label + "; weather " + base.with.weather->year.source;
    return out;
}

Result<bool> judge_comfort(SizingAdvice& advice, const ComfortTarget& target) {
    if (auto problems = problems_of(target); !problems.empty()) return problems;
    for (SizingPoint& p : advice.points)
        p.meets_comfort = p.short_l <= target.most_short_l.value_or(p.short_l) &&
                          p.short_h <= target.most_short_h.value_or(p.short_h);
    advice.comfort = target;
    return true;
}

Job with_set(Job job, const SizingWish& wish, const SizingPoint& point, const std::string& label,
             const std::function<std::string()>& ids) {
    const Choice* original = wish.choice_id.empty() ? chosen_choice(job) : find_choice(job, wish.choice_id);
    if (original == nullptr) return job;
    Choice choice = *original;
    choice.id = ids();
    choice.label = label;
    choice.block_model = point.block_id;
    choice.cylinder_model = point.cylinder_id;
    choice.placements = point.placements;
    for (Placement& placement : choice.placements)
        placement.id = ids();
    for (RoutePoint& bend : choice.route)
        bend.id = ids();
    for (ExtraItem& extra : choice.extras)
        extra.id = ids();
    job.choices.push_back(std::move(choice));
    return job;
}

}  // namespace wg::plan
