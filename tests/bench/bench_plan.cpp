// The whole plan, as it follows an edit in the window.

#include <benchmark/benchmark.h>

#include "core/plan/plan.h"
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

}  // namespace
