#include "core/plan/weather_ensemble.h"

#include <cmath>
#include <future>
#include <utility>

#include "core/weather/altitude.h"
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

namespace {

std::shared_ptr<const PreparedWeather> at_height(std::shared_ptr<const PreparedWeather> weather, double altitude_m) {
    if (std::fabs(weather->year.altitude_m - altitude_m) < 1.0) return weather;
    Result<weather::MovedYear> moved = weather::at_altitude(weather->year, altitude_m);
    if (!moved) return weather;
    if (!moved.value().caution.empty()) moved.value().year.remarks.push_back(moved.value().caution);
    return prepared(std::move(moved.value().year));
}

/// Whether the weather is the year that the built-in climate gives, moved to another height or not.
bool is_of_climate(const Reference& reference, const std::string& climate_id) {
    const auto found = reference.climates.find(climate_id);
    if (found == reference.climates.end()) return false;
    const Result<weather::Year> made = weather::synthesise(found->second);
    return made && made.value().source == reference.weather->year.source;
}

}  // namespace

Result<WeatherYears> further_years_of(const Reference& reference, const std::string& climate_id, int count) {
    if (reference.weather == nullptr) {
        return Problem{"weather", "the reference holds no weather year", "Choose a built-in climate, or read a file"};
    }
    WeatherYears out;
    if (reference.further_years != nullptr) out = *reference.further_years;
    if (out.size() >= static_cast<std::size_t>(count)) {
        out.resize(static_cast<std::size_t>(count));
        return out;
    }
    Result<WeatherYears> made = is_of_climate(reference, climate_id) ? weather_ensemble(reference, climate_id, count)
                                                                     : weather_ensemble(*reference.weather, count);
    if (!made) return made.problems();
    for (std::size_t i = out.size(); i < made.value().size(); ++i)
        out.push_back(at_height(made.value()[i], reference.weather->year.altitude_m));
    return out;
}

Result<std::shared_ptr<const Reference>> with_weather_and_years(const Reference& reference,
                                                                const std::string& climate_id,
                                                                std::optional<double> site_altitude_m, int years) {
    auto out = std::make_shared<Reference>(reference);
    const bool own_year = out->weather != nullptr;
    if (!own_year) {
        Result<std::shared_ptr<const PreparedWeather>> weather = weather_for(reference, climate_id);
        if (!weather) return weather.problems();
        out->weather = std::move(weather).value();
    }
    Result<WeatherYears> further =
        own_year ? weather_ensemble(*out->weather, years) : weather_ensemble(reference, climate_id, years);
    if (site_altitude_m) out->weather = at_height(out->weather, *site_altitude_m);
    // Without further years the plan says that its range is assumed; that is no reason to refuse it.
    if (!further) return std::shared_ptr<const Reference>(std::move(out));
    if (site_altitude_m) {
        for (auto& year : further.value())
            year = at_height(year, *site_altitude_m);
    }
    out->further_years = std::make_shared<const WeatherYears>(std::move(further).value());
    return std::shared_ptr<const Reference>(std::move(out));
}

}  // namespace wg::plan
