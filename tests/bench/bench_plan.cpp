// The whole plan, as it follows an edit in the window.

#include <benchmark/benchmark.h>

#include <chrono>
#include <cstdlib>

#include "core/commissioning/conditions.h"
#include "core/plan/best_places.h"
#include "core/plan/plan.h"
#include "core/plan/prepared_choice.h"
#include "tests/tools/load_reference.h"

namespace {

void plan_quick(benchmark::State& state) {
    const wg::plan::Reference reference = wg::test::reference();
    const wg::Job job = wg::test::demo_job();
    wg::plan::Options options;
    options.yield = false;
    for (auto _ : state)
        benchmark::DoNotOptimize(wg::plan::plan(job, reference, options));
}
BENCHMARK(plan_quick)->Unit(benchmark::kMillisecond);

void plan_full(benchmark::State& state) {
    const wg::plan::Reference reference = wg::test::reference();
    const wg::Job job = wg::test::demo_job();
    for (auto _ : state)
        benchmark::DoNotOptimize(wg::plan::plan(job, reference));
}
BENCHMARK(plan_full)->Unit(benchmark::kMillisecond)->UseRealTime();

// What a full plan spends on the first heating of each month: three sets made once, 36 warm-ups.
void heating_hours_of_months(benchmark::State& state) {
    const wg::plan::Reference reference = wg::test::reference();
    const wg::Job job = wg::test::demo_job();
    const auto prepared = wg::plan::detail::prepared_choice(job, reference, job.chosen_choice_id);
    for (auto _ : state) {
        const auto sets = wg::commissioning::HeatingSets::make(prepared.value().input);
        wg::season::WarmUpConditions at;
        for (int month = 0; month < 12; ++month) {
            at.air_c = 20.0 - 20.0 * std::abs(month - 6) / 6.0;
            benchmark::DoNotOptimize(sets.value().hours(10.0, 50.0, at, {150.0, 300.0, 500.0}));
        }
    }
}
BENCHMARK(heating_hours_of_months)->Unit(benchmark::kMillisecond);

// What follows each step of a drag: a collector of the demonstration lies a centimetre further on, the first figures
// are planned and then the whole year with its range. The window runs the two beside each other; here one after the
// other, so the shares of one run are seen.
void replan_after_drag(benchmark::State& state) {
    const wg::plan::Reference reference = wg::test::reference();
    wg::Job job = wg::test::demo_job();
    wg::Placement& moved = job.choices.front().placements.front();
    wg::plan::Options quick;
    quick.choice_id = job.choices.front().id;
    quick.yield = quick.ranges = quick.keep_hours = false;
    wg::plan::Options full;
    full.choice_id = quick.choice_id;
    using Clock = std::chrono::steady_clock;
    std::chrono::duration<double, std::milli> first{}, year{};
    double step_m = 0.01;
    for (auto _ : state) {
        moved.x_m += step_m;
        step_m = -step_m;
        const Clock::time_point start = Clock::now();
        benchmark::DoNotOptimize(wg::plan::plan(job, reference, quick));
        const Clock::time_point between = Clock::now();
        benchmark::DoNotOptimize(wg::plan::plan(job, reference, full));
        first += between - start;
        year += Clock::now() - between;
    }
    const auto runs = static_cast<double>(state.iterations());
    state.counters["first_ms"] = first.count() / runs;
    state.counters["year_ms"] = year.count() / runs;
    state.counters["first_share"] = first.count() / (first.count() + year.count());
    state.counters["year_share"] = year.count() / (first.count() + year.count());
}
BENCHMARK(replan_after_drag)->Unit(benchmark::kMillisecond)->UseRealTime();

// The site of the demonstration with one collector and a lower annexe of two more roofs: six surfaces, both hands,
// 0.10 m cells, years of operation for the estimate included.
wg::Job job_of_six_surfaces() {
    wg::Job job = wg::test::demo_job();
    for (wg::Choice& choice : job.choices)
        choice.placements.erase(choice.placements.begin() + 1, choice.placements.end());
    for (const std::size_t i : {std::size_t{0}, std::size_t{1}}) {
        wg::Surface annexe = job.site.surfaces[i];
        annexe.id += "-annexe";
        annexe.label += " of the annexe";
        annexe.origin.x_m += 14.0;
        annexe.origin.z_m -= 0.5;
        job.site.surfaces.push_back(annexe);
    }
    return job;
}

void best_place_house(benchmark::State& state) {
    wg::plan::Reference reference = wg::test::reference();
    for (wg::BlockModel& block : reference.catalogue.blocks)
        block.run_max_m = 60.0;  // so that the annexe counts
    const wg::Job job = job_of_six_surfaces();
    wg::plan::PlaceWish wish;
    wish.aim = static_cast<wg::siting::Aim>(state.range(0));
    std::size_t looked_at = 0;
    for (auto _ : state) {
        const auto found = wg::plan::best_places(job, reference, wish);
        looked_at = found.value().outcome.looked_at;
        benchmark::DoNotOptimize(found);
    }
    state.counters["places"] = static_cast<double>(looked_at);
    state.counters["surfaces"] = static_cast<double>(job.site.surfaces.size());
}
BENCHMARK(best_place_house)->DenseRange(0, 4)->Unit(benchmark::kMillisecond)->UseRealTime();

}  // namespace
