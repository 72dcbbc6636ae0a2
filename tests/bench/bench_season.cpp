// Figures the design asks for: property call under 50 ns, a year of operation at 10 min under 30 ms on one core.

#include <benchmark/benchmark.h>

#include "core/heatpump/operating_point.h"
#include "core/season/season.h"
#include "tests/core/season/fixture.h"

namespace {

using namespace wg;

void saturation_lookup(benchmark::State& state) {
    const auto fluid = season_test::properties("R134a");
    double t = -25.0;
    for (auto _ : state) {
        benchmark::DoNotOptimize(fluid->saturation(t));
        t = t > 74.0 ? -25.0 : t + 0.37;
    }
}
BENCHMARK(saturation_lookup);

void vapour_lookup(benchmark::State& state) {
    const auto fluid = season_test::properties("R134a");
    double t = -25.0;
    for (auto _ : state) {
        benchmark::DoNotOptimize(fluid->vapour(t, 5.0));
        t = t > 74.0 ? -25.0 : t + 0.37;
    }
}
BENCHMARK(vapour_lookup);

void operating_point(benchmark::State& state) {
    const auto input = season_test::equipment(2);
    const auto pump = heatpump::HeatPump::make(input.block, *input.refrigerant).value();
    const heatpump::PlateBalance balance(heatpump::plate_of(input.collector, 2, 35.0, 1.0, false),
                                         {400, 0, 15, 8, 2, 278, 101325});
    heatpump::Guess guess;
    double water = 10.0;
    for (auto _ : state) {
        const auto zone = heatpump::CondenserZone::uniform(220.0, water);
        const auto point = pump.point(balance, zone, {}, guess);
        guess = {point.suction_c, point.condensing_c};
        benchmark::DoNotOptimize(point.condenser_w);
        water = water > 55.0 ? 10.0 : water + 0.9;  // a step of ten minutes
    }
}
BENCHMARK(operating_point);

void performance_map(benchmark::State& state) {
    const auto input = season_test::equipment(2);
    for (auto _ : state) {
        const heatpump::CycleMap map(input.block, *input.refrigerant);
        benchmark::DoNotOptimize(map.at(0.0, 50.0));
    }
}
BENCHMARK(performance_map)->Unit(benchmark::kMicrosecond);

void year_of_operation(benchmark::State& state) {
    auto input = season_test::equipment(2);
    season_test::add_weather(input);
    input.demand.cycle = TappingCycle::l;
    for (auto _ : state) {
        const auto year = season::run(input);
        benchmark::DoNotOptimize(year.value().seasonal_factor);
    }
}
BENCHMARK(year_of_operation)->Unit(benchmark::kMillisecond);

}  // namespace
