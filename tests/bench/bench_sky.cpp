// Sun positions of a year, preparing a weather year, and light on planes.

#include <benchmark/benchmark.h>

#include <cstddef>
#include <cstdint>
#include <fstream>
#include <iterator>
#include <memory>
#include <string>
#include <vector>

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

sun::Observer observer() {
    sun::Observer at;
    at.latitude_deg = 47.4;
    at.longitude_deg = 9.2;
    at.altitude_m = 520.0;
    return at;
}

// Positions at even steps over a year as structure of arrays with refraction, the full series at its nodes included.
void sun_positions(benchmark::State& state, std::size_t count) {
    const double step_s = 365.0 * 86400.0 / static_cast<double>(count);
    const auto first = static_cast<std::int64_t>(start_2027_unix_s);
    std::vector<double> east(count), north(count), up(count);
    for (auto _ : state) {
        const sun::Ephemeris ephemeris(Instant{first}, Instant{first + 365 * 86400}, 73.0);
        ephemeris.directions(start_2027_unix_s, step_s, sun::Place(observer()), east, north, up);
        benchmark::DoNotOptimize(up.data());
        benchmark::ClobberMemory();
    }
}
void sun_positions_year(benchmark::State& state) {
    sun_positions(state, 8760);
}
void sun_positions_minutes(benchmark::State& state) {
    sun_positions(state, 525600);
}
BENCHMARK(sun_positions_year)->Unit(benchmark::kMicrosecond);
BENCHMARK(sun_positions_minutes)->Unit(benchmark::kMicrosecond);

// What a weather year needs: 8,760 positions, sunrise and sunset within their hours, light outside the atmosphere.
void sun_of_weather_year(benchmark::State& state) {
    const sun::YearSunInput input{47.4, 9.2, 520.0, 1.0, 30.0, sun::weather_sun_year};
    for (auto _ : state)
        benchmark::DoNotOptimize(sun::year_sun(input));
}
BENCHMARK(sun_of_weather_year)->Unit(benchmark::kMicrosecond);

// One moment after the other, for comparison.
void sun_positions_single(benchmark::State& state) {
    const auto first = static_cast<std::int64_t>(start_2027_unix_s);
    const sun::Ephemeris ephemeris(Instant{first}, Instant{first + 365 * 86400}, 73.0);
    const sun::Place place(observer());
    for (auto _ : state) {
        double sum = 0.0;
        for (int i = 0; i < 8760; ++i)
            sum += ephemeris.direction(start_2027_unix_s + 3600.0 * i, place).up;
        benchmark::DoNotOptimize(sum);
    }
}
BENCHMARK(sun_positions_single)->Unit(benchmark::kMicrosecond);

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

// Every hour of the year on one plane, kept in double precision part by part.
void series_of_one_plane(benchmark::State& state, sky::DiffuseModel model) {
    sky::PlaneInput input;
    input.model = model;
    sky::PlaneYear plane;
    for (auto _ : state) {
        sky::plane_year(prepared_year(), input, {}, plane);
        benchmark::DoNotOptimize(plane.total_kwh_m2);
    }
}
void orientation_series_hay_davies(benchmark::State& state) {
    series_of_one_plane(state, sky::DiffuseModel::hay_davies);
}
void orientation_series_perez(benchmark::State& state) {
    series_of_one_plane(state, sky::DiffuseModel::perez_1990);
}
BENCHMARK(orientation_series_hay_davies)->Unit(benchmark::kMicrosecond);
BENCHMARK(orientation_series_perez)->Unit(benchmark::kMicrosecond);

// The same as a total in single precision over the hours with light.
void orientation_total_series(benchmark::State& state, sky::DiffuseModel model) {
    const sky::DaylightHours hours = sky::daylight_hours(prepared_year(), model);
    std::vector<float> light(hours.hour.size());
    double azimuth_deg = 0.0;
    for (auto _ : state) {
        const double tilt_deg = 35.0;
        sky::orientation_series(hours, {&tilt_deg, 1}, {&azimuth_deg, 1}, 0.2, 1.0, light);
        benchmark::DoNotOptimize(light.data());
        benchmark::ClobberMemory();
        azimuth_deg += 1.0;
    }
}
BENCHMARK_CAPTURE(orientation_total_series, hay_davies, sky::DiffuseModel::hay_davies)->Unit(benchmark::kMicrosecond);
BENCHMARK_CAPTURE(orientation_total_series, perez, sky::DiffuseModel::perez_1990)->Unit(benchmark::kMicrosecond);

// The year's sum on one plane, as a search over orientations asks for it.
void orientation_year(benchmark::State& state, sky::DiffuseModel model) {
    const sky::DaylightYear day = sky::daylight(prepared_year(), model);
    double azimuth_deg = 0.0;
    for (auto _ : state) {
        benchmark::DoNotOptimize(sky::orientation_kwh_m2(day, 35.0, azimuth_deg, 0.2));
        azimuth_deg += 1.0;
    }
}
void orientation_year_hay_davies(benchmark::State& state) {
    orientation_year(state, sky::DiffuseModel::hay_davies);
}
void orientation_year_perez(benchmark::State& state) {
    orientation_year(state, sky::DiffuseModel::perez_1990);
}
BENCHMARK(orientation_year_hay_davies)->Unit(benchmark::kMicrosecond);
BENCHMARK(orientation_year_perez)->Unit(benchmark::kMicrosecond);

// Tilt 0..90 by 5 with azimuth 0..360 by 5: the year's sums, from the prepared year (0), and from sun vectors and the
// weather's light with the models' coefficients for every hour worked out anew (1).
void orientation_grid_19x73(benchmark::State& state, sky::DiffuseModel model) {
    const std::vector<double> tilts = sky::even_steps(0.0, 90.0, 5.0);
    const std::vector<double> azimuths = sky::even_steps(0.0, 360.0, 5.0);
    sky::PreparedYear year = prepared_year();
    for (auto _ : state) {
        if (state.range(0) == 1) sky::derive(year);
        benchmark::DoNotOptimize(sky::orientation_grid(sky::daylight(year, model), tilts, azimuths, 0.2));
    }
}
BENCHMARK_CAPTURE(orientation_grid_19x73, hay_davies, sky::DiffuseModel::hay_davies)
    ->Arg(0)
    ->Arg(1)
    ->Unit(benchmark::kMicrosecond);
BENCHMARK_CAPTURE(orientation_grid_19x73, perez, sky::DiffuseModel::perez_1990)
    ->Arg(0)
    ->Arg(1)
    ->Unit(benchmark::kMicrosecond);

// The same grid with the light of every hour kept, single precision.
void orientation_grid_series_19x73(benchmark::State& state, sky::DiffuseModel model) {
    const std::vector<double> tilts = sky::even_steps(0.0, 90.0, 5.0);
    const std::vector<double> azimuths = sky::even_steps(0.0, 360.0, 5.0);
    for (auto _ : state) {
        const sky::DaylightHours hours = sky::daylight_hours(prepared_year(), model);
        const std::size_t count = hours.hour.size() * tilts.size() * azimuths.size();
        const std::unique_ptr<float[]> light(new float[count]);
        sky::orientation_series(hours, tilts, azimuths, 0.2, 1.0, {light.get(), count});
        benchmark::DoNotOptimize(light[0]);
        benchmark::ClobberMemory();
    }
}
BENCHMARK_CAPTURE(orientation_grid_series_19x73, hay_davies, sky::DiffuseModel::hay_davies)
    ->Unit(benchmark::kMicrosecond);
BENCHMARK_CAPTURE(orientation_grid_series_19x73, perez, sky::DiffuseModel::perez_1990)->Unit(benchmark::kMicrosecond);

}  // namespace
