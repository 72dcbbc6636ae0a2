// A whole table of the rating test (three cycles by two airs) within 2 s on two cores; a fit to six declared values
// while one waits.

#include <benchmark/benchmark.h>

#include "core/rating/fit.h"
#include "core/rating/table.h"
#include "tests/core/rating/fixture.h"

namespace {

using namespace wg;
using rating::Declared;
using rating::Quantity;

rating::Item demonstration_set() {
    return rating_test::item("rill-18", "marl-18", 2, "copse-250");
}

void rating_one_test(benchmark::State& state) {
    const auto item = demonstration_set();
    for (auto _ : state)
        benchmark::DoNotOptimize(rating_test::rated(item, rating::air_7).cop_dhw);
}
BENCHMARK(rating_one_test)->Unit(benchmark::kMillisecond);

void rating_test_table(benchmark::State& state) {
    const auto item = demonstration_set();
    for (auto _ : state) {
        const auto table = rating::rate_table(item, {}, {}, {TappingCycle::m, TappingCycle::l, TappingCycle::xl},
                                              {rating::air_7, rating::air_14});
        benchmark::DoNotOptimize(table.value().cells.front().rating.cop_dhw);
    }
}
BENCHMARK(rating_test_table)->Unit(benchmark::kMillisecond)->UseRealTime();

/// A sheet that the set can meet, and one that it cannot.
void rating_fit(benchmark::State& state) {
    const bool can_be_met = state.range(0) == 1;
    const auto item = demonstration_set();
    const std::vector<Declared> sheet = {
        {Quantity::cop_dhw, can_be_met ? 2.9 : 4.4, 0.05, rating::air_7},
        {Quantity::cop_dhw, 3.3, 0.05, rating::air_14},
        {Quantity::heat_up_h, 8.0, 0.05, rating::air_7},
        {Quantity::standby_w, 25.0, 0.10, rating::air_7},
        {Quantity::heat_w, 1700.0, 0.05, rating::air_7, TappingCycle::l, 35.0},
        {Quantity::steady_cop, 4.0, 0.05, rating::air_7, TappingCycle::l, 35.0},
    };
    for (auto _ : state) {
        const auto fit = rating::fit(item, sheet);
        state.counters["tests"] = fit.value().evaluations;
    }
}
BENCHMARK(rating_fit)->Arg(1)->Arg(0)->Unit(benchmark::kMillisecond)->UseRealTime()->Iterations(1);

}  // namespace
