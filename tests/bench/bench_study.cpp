// The range of a year and the advice on sizes, as the Yield stage asks for them.

#include <benchmark/benchmark.h>

#include "core/plan/sizing_advice.h"
#include "core/plan/study.h"
#include "core/plan/weather_ensemble.h"
#include "tests/tools/load_reference.h"

namespace {

std::shared_ptr<const wg::plan::Reference> reference_with_years() {
    const wg::Job job = wg::test::demo_job();
    return wg::plan::with_weather_and_years(wg::test::reference(), job.weather, job.site.location.altitude_m).value();
}

// 200 members over 40 made years, bars of every factor included. Argument: step in seconds.
void ensemble_200(benchmark::State& state) {
    const auto reference = reference_with_years();
    const wg::Job job = wg::test::demo_job();
    wg::plan::StudyOptions options;
    options.step_s = static_cast<double>(state.range(0));
    double p10 = 0.0, p50 = 0.0, p90 = 0.0, factor = 0.0;
    for (auto _ : state) {
        const auto study = wg::plan::study(job, *reference, options);
        const wg::plan::Spread& e = study.value().of(wg::plan::Measure::electricity_kwh);
        p10 = *e.p10;
        p50 = *e.p50;
        p90 = *e.p90;
        factor = *study.value().of(wg::plan::Measure::seasonal_factor).p50;
    }
    state.counters["p10_kwh"] = p10;
    state.counters["p50_kwh"] = p50;
    state.counters["p90_kwh"] = p90;
    state.counters["factor"] = factor;
}
BENCHMARK(ensemble_200)->Arg(900)->Arg(600)->Unit(benchmark::kMillisecond)->UseRealTime();

}  // namespace
