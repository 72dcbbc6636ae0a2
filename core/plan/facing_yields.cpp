// A year of a set by tilt and bearing.
#include <array>
#include <utility>

#include "core/plan/in_parallel.h"
#include "core/plan/prepared_choice.h"
#include "core/plan/sizing_advice.h"
#include "core/plan/study_factors.h"
#include "core/quantity/text.h"

namespace wg::plan {
namespace {

constexpr std::array<double, 5> draws = {0.96, 0.98, 1.0, 1.02, 1.04};

struct Done {
    FacingYield yield;
    std::vector<Problem> problems;
};

/// All plates of the choice turned to one tilt and bearing, in the open.
Done run_facing(const Job& job, const detail::PreparedChoice& base, double tilt_deg, double bearing_deg) {
    Done out;
    out.yield.tilt_deg = tilt_deg;
    out.yield.bearing_deg = bearing_deg;
    std::vector<PlacementPlan> placements = base.plan.placements;
    for (PlacementPlan& placed : placements) {
        placed.placed.tilt_deg = tilt_deg;
        placed.placed.azimuth_deg = bearing_deg;
        placed.shade.sky_view = 1.0;
        placed.shade.ground_view = 1.0;
        placed.on_frame = placements.front().on_frame;
    }
    const sky::PlaneYear light = sky::plane_year(base.with.weather->sky, steps::plane_of(job, placements.front()), {});
    const std::vector<sky::PlaneYear> planes(placements.size(), light);
    out.yield.light_kwh_m2 = light.total_kwh_m2;
    season::Input input = steps::season_input(job, base.with, planes, placements, base.plan.run);
    const Demand usual = input.demand;
    for (const double draw : draws) {
        input.demand = usual;
        detail::scale_draw(input.demand, draw);
        const Result<season::Year> year = season::run(input, steps::options_for_comparing());
        if (!year) {
            out.problems = year.problems();
            return out;
        }
        const double share = 1.0 / static_cast<double>(draws.size());
        out.yield.electricity_kwh += share * year.value().total.electricity_kwh();
        out.yield.seasonal_factor += share * year.value().seasonal_factor;
        out.yield.shortfall_kwh += share * year.value().total.shortfall_kwh;
    }
    return out;
}

}  // namespace

Result<FacingYields> facing_yields(const Job& job, const Reference& reference, const std::string& choice_id,
                                   const Progress& progress, int threads) {
    if (threads < 1 || threads > 16)
        return Problem{"threads", std::to_string(threads) + " was asked for", "Choose 1 to 16"};
    const Result<detail::PreparedChoice> prepared = detail::prepared_choice(job, reference, choice_id);
    if (!prepared) return prepared.problems();
    const detail::PreparedChoice& base = prepared.value();
    FacingYields out;
    for (double tilt = 15.0; tilt <= 90.0; tilt += 15.0)
        out.tilts_deg.push_back(tilt);
    for (double bearing = 0.0; bearing < 360.0; bearing += 30.0)
        out.bearings_deg.push_back(bearing);
    const std::size_t columns = out.bearings_deg.size();
    const std::size_t cells = out.tilts_deg.size() * columns;
    const site::PlacedCollector& here = base.plan.placements.front().placed;
    std::vector<Done> done(cells + 1);
    detail::Reporter reporter(progress, done.size());
    detail::each(done.size(), threads, reporter, [&](std::size_t i) {
        done[i] = i < cells ? run_facing(job, base, out.tilts_deg[i / columns], out.bearings_deg[i % columns])
                            : run_facing(job, base, here.tilt_deg, here.azimuth_deg);
    });
    if (!reporter.report()) {
        out.cancelled = true;
        return out;
    }
    for (const Done& one : done)
        if (!one.problems.empty()) return one.problems;
    for (std::size_t i = 0; i < cells; ++i)
        out.cells.push_back(done[i].yield);
    out.here = done.back().yield;
    out.remarks = {
        "A bare plate lives from the air as well as from light: a poor bearing costs less than its light says",
        "Never level: water and snow lie on it, and condensate does not run off (common practice, no published source)",
        "Not towards the nearer pole where a better side is free (common practice, no published source)",
        base.with.collector->name + " is made for tilts of " + fixed(base.with.collector->tilt_min_deg, 0) + " to " +
            fixed(base.with.collector->tilt_max_deg, 0) + " deg"};
    out.method =
        "the mean of five years of operation at 15-minute steps, draw-off 4 % less to 4 % more, for each tilt and "
        "bearing, all plates of the set together, in "
        "the open without shade, run and height as placed; weather " +
        base.with.weather->year.source;
    return out;
}

}  // namespace wg::plan
