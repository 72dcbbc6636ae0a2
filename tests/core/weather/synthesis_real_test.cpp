// Years made from the monthly means of real ones, against the real ones: the data folder of the pvlib 0.9.5 wheel,
// fetched by tests/reference/fetch_weather.sh. Without it the tests skip and say so. The figures printed here stand in
// docs/handbook/weather.md. One real year against the mean of eight made ones: the bounds leave room for what one year
// differs from the next, and are narrower than what a wrong method gives.

#include <gtest/gtest.h>

#include <cstdio>
#include <fstream>
#include <iterator>

#include "core/weather/climate.h"
#include "core/weather/read.h"
#include "year_statistics.h"

namespace wg::weather {
namespace {

constexpr int seeds = 8;

struct Made {
    YearStatistics mean;  // distributions of all seeds together
};

Made made_from(const Climate& means) {
    Made made;
    Climate climate = means;
    for (int seed = 1; seed <= seeds; ++seed) {
        climate.seed = static_cast<std::uint64_t>(seed);
        const Result<Year> year = synthesise(climate);
        EXPECT_TRUE(year) << text_of(year.problems());
        const YearStatistics s = statistics_of(year.value());
        YearStatistics& m = made.mean;
        m.day_clearness.insert(m.day_clearness.end(), s.day_clearness.begin(), s.day_clearness.end());
        m.hour_clearness.insert(m.hour_clearness.end(), s.hour_clearness.begin(), s.hour_clearness.end());
        for (double YearStatistics::*q :
             {&YearStatistics::day_persistence, &YearStatistics::hour_deviation, &YearStatistics::hour_persistence,
              &YearStatistics::swing_k, &YearStatistics::swing_deviation_k, &YearStatistics::swing_with_light,
              &YearStatistics::air_deviation_k, &YearStatistics::air_persistence,
              &YearStatistics::air_with_light_bright, &YearStatistics::air_with_light_dark,
              &YearStatistics::humidity_deviation, &YearStatistics::humidity_with_light}) {
            m.*q += s.*q / seeds;
        }
        for (std::size_t i = 0; i < 3; ++i)
            m.utilisable[i] += s.utilisable[i] / seeds;
    }
    return made;
}

class RealYear : public ::testing::TestWithParam<const char*> {};

TEST_P(RealYear, MadeYearsAreLikeIt) {
    const std::string path = std::string(WG_CACHE_DIR) + "/weather/" + GetParam();
    std::ifstream file(path, std::ios::binary);
    const std::string text{std::istreambuf_iterator<char>(file), std::istreambuf_iterator<char>()};
    if (text.empty()) GTEST_SKIP() << "no " << path << ": run tests/reference/fetch_weather.sh";
    const Result<Year> read = read_any(text, GetParam());
    ASSERT_TRUE(read) << text_of(read.problems());
    const YearStatistics real = statistics_of(read.value());
    const Climate means = climate_of(read.value(), "real");
    const YearStatistics made = made_from(means).mean;
    const Climate again = climate_of(synthesise(means).value(), "made");
    for (std::size_t m = 0; m < 12; ++m) {
        EXPECT_NEAR(again.global_kwh_m2_day[m], means.global_kwh_m2_day[m], 1e-9 * 10.0);
        EXPECT_NEAR(again.air_mean_c[m], means.air_mean_c[m], 1e-9 * 40.0);
    }
    const double days = statistics::largest_difference(real.day_clearness, made.day_clearness);
    const double hours = statistics::largest_difference(real.hour_clearness, made.hour_clearness);
    std::printf("%s: largest difference of distribution: days %.3f, hours %.3f\n", GetParam(), days, hours);
    const auto near = [](const char* what, double a, double b, double within) {
        std::printf("  %-44s real %6.2f made %6.2f\n", what, a, b);
        EXPECT_NEAR(a, b, within) << what;
    };
    // One year of 365 days that persist by 0.25 differs by 0.1 from its own distribution in one year of twenty.
    EXPECT_LT(days, 0.16);
    EXPECT_LT(hours, 0.16);
    near("clearness of days, lag 1", real.day_persistence, made.day_persistence, 0.15);
    near("clearness of hours, deviation", real.hour_deviation, made.hour_deviation, 0.05);
    near("clearness of hours within a day, lag 1", real.hour_persistence, made.hour_persistence, 0.25);
    near("light over 200 W/m2, share", real.utilisable[0], made.utilisable[0], 0.04);
    near("light over 400 W/m2, share", real.utilisable[1], made.utilisable[1], 0.03);
    near("light over 600 W/m2, share", real.utilisable[2], made.utilisable[2], 0.03);
    near("daily swing, K", real.swing_k, made.swing_k, 0.4);
    near("daily swing, deviation, K", real.swing_deviation_k, made.swing_deviation_k, 1.2);
    near("daily swing with light", real.swing_with_light, made.swing_with_light, 0.35);
    near("daily air, deviation, K", real.air_deviation_k, made.air_deviation_k, 1.6);
    near("daily air, lag 1", real.air_persistence, made.air_persistence, 0.15);
    near("daily air with light, lighter half", real.air_with_light_bright, made.air_with_light_bright, 0.3);
    near("daily air with light, darker half", real.air_with_light_dark, made.air_with_light_dark, 0.5);
    near("daily humidity, deviation", real.humidity_deviation, made.humidity_deviation, 0.07);
    near("daily humidity with light", real.humidity_with_light, made.humidity_with_light, 0.25);
}

INSTANTIATE_TEST_SUITE_P(Synthesis, RealYear,
                         ::testing::Values("tmy3_greensboro.csv", "epw_amsterdam.epw", "pvgis_45n_8e.csv",
                                           "tmy3_sand_point.csv"),
                         [](const auto& file) {
                             const std::string name(file.param);
                             return name.substr(0, name.find('.'));
                         });

}  // namespace
}  // namespace wg::weather
