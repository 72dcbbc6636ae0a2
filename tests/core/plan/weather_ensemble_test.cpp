#include "core/plan/weather_ensemble.h"

#include <gtest/gtest.h>

#include <fstream>
#include <iterator>

#include "core/weather/climate_table.h"
#include "core/weather/ensemble.h"

namespace wg::plan {
namespace {

const Reference& places() {
    static const Reference reference = [] {
        std::ifstream file(std::string(WG_RESOURCES_DIR) + "/climates/places.csv", std::ios::binary);
        const std::string text{std::istreambuf_iterator<char>(file), std::istreambuf_iterator<char>()};
        Reference out;
        for (const weather::Climate& climate : weather::climates_from_csv(text, "places.csv").value())
            out.climates.emplace(climate.id, climate);
        return out;
    }();
    return reference;
}

TEST(WeatherEnsemble, TwoThreadsGiveTheYearsOfTheClimateInOrder) {
    const Result<WeatherYears> years = weather_ensemble(places(), "place:zurich", 5);
    ASSERT_TRUE(years) << text_of(years.problems());
    ASSERT_EQ(years.value().size(), 5U);
    for (int number = 1; number <= 5; ++number) {
        const PreparedWeather& got = *years.value()[static_cast<std::size_t>(number) - 1];
        const weather::Year alone = weather::ensemble_year(places().climates.at("place:zurich"), number).value();
        EXPECT_EQ(got.year.global_w_m2, alone.global_w_m2) << number;
        EXPECT_EQ(got.sky.global_w_m2, alone.global_w_m2) << number;
        EXPECT_EQ(got.year.air_c, alone.air_c) << number;
    }
}

TEST(WeatherEnsemble, YearsLikeAnImportedOneScatterAboutIt) {
    const auto like = prepared(weather::synthesise(places().climates.at("place:essen")).value());
    const Result<WeatherYears> years = weather_ensemble(*like, 4);
    ASSERT_TRUE(years) << text_of(years.problems());
    const auto sum = [](const PreparedWeather& w) {
        double kwh = 0.0;
        for (const double g : w.year.global_w_m2)
            kwh += 1e-3 * g;
        return kwh;
    };
    double mean = 0.0;
    for (const auto& year : years.value())
        mean += sum(*year) / 4.0;
    EXPECT_NEAR(mean, sum(*like), 0.1 * sum(*like));  // four years of 4.5 %: four standard errors
    EXPECT_EQ(weather_ensemble(*like, 4).value()[3]->year.global_w_m2, years.value()[3]->year.global_w_m2);
}

TEST(WeatherEnsemble, RefusesWhatItCannotMake) {
    EXPECT_FALSE(weather_ensemble(places(), "place:atlantis", 5));
    EXPECT_FALSE(weather_ensemble(places(), "place:zurich", 0));
    EXPECT_FALSE(weather_ensemble(places(), "place:zurich", 100000));
}

}  // namespace
}  // namespace wg::plan
