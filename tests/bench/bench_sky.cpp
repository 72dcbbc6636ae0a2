// Sun positions of a year, preparing a weather year, and light on planes.

#include <benchmark/benchmark.h>

#include <fstream>
#include <iterator>
#include <string>

#include "core/sky/orientation.h"
#include "core/sky/prepared.h"
#include "core/sun/ephemeris.h"
#include "core/sun/year.h"
#include "core/weather/climate.h"
#include "core/weather/quality.h"

namespace {

using namespace wg;

constexpr double start_2027_unix_s = 1798761600.0;

const weather::Climate& climate() {
    static const weather::Climate value = [] {
        const std::string path = std::string(WG_RESOURCES_DIR) + "/climates/harrowmere.json";
        std::ifstream file(path, std::ios::binary);
        const std::string text{std::istreambuf_iterator<char>(file), std::istreambuf_iterator<char>()};
        return weather::climate_from_json(text, path).value();
    }();
    return value;
}

const weather::Year& weather_year() {
    static const weather::Year value = weather::synthesise(climate()).value();
    return value;
}

const sky::PreparedYear& prepared_year() {
    static const sky::PreparedYear value = sky::prepare(weather_year());
    return value;
}

// 8,760 positions, and what a weather year needs besides: sunrise and sunset within their hours.
void sun_positions_year(benchmark::State& state) {
    const sun::YearSunInput input{47.4, 9.2, 520.0, 1.0, 30.0, sun::weather_sun_year};
    for (auto _ : state)
        benchmark::DoNotOptimize(sun::year_sun(input));
}
BENCHMARK(sun_positions_year)->Unit(benchmark::kMicrosecond);

// Plain positions at even steps: 8,760 hours or 525,600 minutes, the nodes included.
void sun_positions_steps(benchmark::State& state) {
    const auto count = static_cast<int>(state.range(0));
    const double step_s = 365.0 * 86400.0 / count;
    sun::Observer observer;
    observer.latitude_deg = 47.4;
    observer.longitude_deg = 9.2;
    for (auto _ : state) {
        const sun::Place place(observer);
        const auto first = static_cast<std::int64_t>(start_2027_unix_s);
        const sun::Ephemeris ephemeris(Instant{first}, Instant{first + 365 * 86400}, 73.0);
        double sum = 0.0;
        for (int i = 0; i < count; ++i)
            sum += ephemeris.direction(start_2027_unix_s + step_s * i, place).up;
        benchmark::DoNotOptimize(sum);
    }
}
BENCHMARK(sun_positions_steps)->Arg(8760)->Arg(525600)->Unit(benchmark::kMicrosecond);

void prepare_year(benchmark::State& state) {
    const weather::Year& year = weather_year();
    for (auto _ : state)
        benchmark::DoNotOptimize(sky::prepare(year));
}
BENCHMARK(prepare_year)->Unit(benchmark::kMicrosecond);

void synthesise_year(benchmark::State& state) {
    for (auto _ : state)
        benchmark::DoNotOptimize(weather::synthesise(climate()));
}
BENCHMARK(synthesise_year)->Unit(benchmark::kMicrosecond);

void assess_year(benchmark::State& state) {
    for (auto _ : state)
        benchmark::DoNotOptimize(weather::assess(weather_year()));
}
BENCHMARK(assess_year)->Unit(benchmark::kMicrosecond);

// Every hour of the year on one plane.
void plane_year_of(benchmark::State& state, sky::DiffuseModel model) {
    sky::PlaneInput input;
    input.model = model;
    for (auto _ : state)
        benchmark::DoNotOptimize(sky::plane_year(prepared_year(), input, {}));
}
void plane_year_hay_davies(benchmark::State& state) {
    plane_year_of(state, sky::DiffuseModel::hay_davies);
}
void orientation_year_perez(benchmark::State& state) {
    plane_year_of(state, sky::DiffuseModel::perez_1990);
}
BENCHMARK(plane_year_hay_davies)->Unit(benchmark::kMicrosecond);
BENCHMARK(orientation_year_perez)->Unit(benchmark::kMicrosecond);

// The year's sum on one plane, as a search over orientations asks for it.
void orientation_year_hay_davies(benchmark::State& state) {
    const sky::DaylightYear day = sky::daylight(prepared_year());
    double azimuth_deg = 0.0;
    for (auto _ : state) {
        benchmark::DoNotOptimize(sky::orientation_kwh_m2(day, 35.0, azimuth_deg, 0.2));
        azimuth_deg += 1.0;
    }
}
BENCHMARK(orientation_year_hay_davies)->Unit(benchmark::kMicrosecond);

}  // namespace
