#include "core/plan/weather_ensemble.h"

#include <future>
#include <utility>

#include "core/weather/climate_table.h"
#include "core/weather/ensemble.h"

namespace wg::plan {

Result<WeatherYears> weather_ensemble(const weather::Climate& climate, int count) {
    // The first year also finds what is wrong with climate or count, before any thread starts.
    Result<weather::Climate> good = weather::climate_in_year(climate, count);
    if (!good) return good.problems();

    WeatherYears years(static_cast<std::size_t>(count));
    // Every second year on each thread; each writes only its own elements.
    const auto make = [&](int first) -> std::vector<Problem> {
        for (int number = first; number <= count; number += 2) {
            Result<weather::Year> year = weather::ensemble_year(climate, number);
            if (!year) return year.problems();
            years[static_cast<std::size_t>(number) - 1] = prepared(std::move(year).value());
        }
        return {};
    };
    std::future<std::vector<Problem>> even = std::async(std::launch::async, make, 2);
    std::vector<Problem> problems = make(1);
    const std::vector<Problem> others = even.get();
    problems.insert(problems.end(), others.begin(), others.end());
    if (!problems.empty()) return problems;
    return years;
}

Result<WeatherYears> weather_ensemble(const Reference& reference, const std::string& climate_id, int count) {
    const auto found = reference.climates.find(climate_id);
    if (found != reference.climates.end()) return weather_ensemble(found->second, count);
    return Problem{"weather", "there is no climate '" + climate_id + "'",
                   "Choose a built-in climate, or read a weather file"};
}

Result<WeatherYears> weather_ensemble(const PreparedWeather& like, int count) {
    const std::string& source = like.year.source;
    return weather_ensemble(
        weather::within_cloudless(weather::climate_of(like.year, source, weather::seed_of_id(source))), count);
}

}  // namespace wg::plan
