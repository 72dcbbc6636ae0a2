#include "core/weather/climate.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <fstream>
#include <iterator>
#include <limits>
#include <nlohmann/json.hpp>

#include "core/quantity/time.h"
#include "core/sun/year.h"
#include "core/weather/humidity.h"
#include "core/weather/quality.h"
#include "core/weather/random.h"

namespace wg::weather {
namespace {

constexpr double promised = 1e-9;       // what climate.h promises of monthly means
constexpr double humidity_mean = 1e-4;  // bisection on a factor, then the limit at saturation

std::string harrowmere_text() {
    std::ifstream file(std::string(WG_RESOURCES_DIR) + "/climates/harrowmere.json", std::ios::binary);
    return {std::istreambuf_iterator<char>(file), std::istreambuf_iterator<char>()};
}
Climate harrowmere() {
    return climate_from_json(harrowmere_text(), "harrowmere.json").value();
}

double month_sum(const std::vector<double>& series, int month) {
    double sum = 0.0;
    for (int h = first_hour_of_month(month); h < first_hour_of_month(month + 1); ++h)
        sum += series[static_cast<std::size_t>(h)];
    return sum;
}
int month_hours(int month) {
    return first_hour_of_month(month + 1) - first_hour_of_month(month);
}

std::vector<double> daily(const std::vector<double>& hourly) {
    std::vector<double> days(365, 0.0);
    for (std::size_t i = 0; i < 8760; ++i)
        days[i / 24] += hourly[i];
    return days;
}

double correlation(const std::vector<double>& a, const std::vector<double>& b) {
    const auto n = static_cast<double>(a.size());
    double ma = 0.0, mb = 0.0, ab = 0.0, aa = 0.0, bb = 0.0;
    for (std::size_t i = 0; i < a.size(); ++i) {
        ma += a[i] / n;
        mb += b[i] / n;
    }
    for (std::size_t i = 0; i < a.size(); ++i) {
        ab += (a[i] - ma) * (b[i] - mb);
        aa += (a[i] - ma) * (a[i] - ma);
        bb += (b[i] - mb) * (b[i] - mb);
    }
    return ab / std::sqrt(aa * bb);
}

TEST(Synthesis, MonthlyMeansOfLightAndAirAreTheClimates) {
    for (std::uint64_t seed : {std::uint64_t{1}, std::uint64_t{2}, std::uint64_t{20270621}, ~std::uint64_t{0}}) {
        Climate climate = harrowmere();
        climate.seed = seed;
        const Result<Year> result = synthesise(climate);
        ASSERT_TRUE(result) << text_of(result.problems());
        const Year& year = result.value();
        for (int month = 1; month <= 12; ++month) {
            const auto m = static_cast<std::size_t>(month) - 1;
            const double days = month_hours(month) / 24.0;
            const double wanted = 1e3 * climate.global_kwh_m2_day[m] * days;
            EXPECT_NEAR(month_sum(year.global_w_m2, month), wanted, promised * wanted);
            EXPECT_NEAR(month_sum(year.air_c, month) / month_hours(month), climate.air_mean_c[m],
                        promised * std::fmax(1.0, std::fabs(climate.air_mean_c[m])));
            EXPECT_NEAR(month_sum(year.wind_m_s, month) / month_hours(month), climate.wind_m_s[m], 1e-9);
            double humidity = 0.0;
            for (int h = first_hour_of_month(month); h < first_hour_of_month(month + 1); ++h) {
                const auto i = static_cast<std::size_t>(h);
                humidity += relative_humidity(year.air_c[i], year.dew_point_c[i]) / month_hours(month);
            }
            EXPECT_NEAR(humidity, climate.relative_humidity[m], humidity_mean);
        }
    }
}

TEST(Synthesis, TheInventedTownHasAboutElevenHundredKilowattHours) {
    const QualityReport report = assess(synthesise(harrowmere()).value());
    EXPECT_NEAR(report.global_year_kwh_m2, 1130.0, 5.0);
    EXPECT_NEAR(report.air_mean_year_c, 9.5, 0.05);
    EXPECT_TRUE(report.remarks.empty());
    EXPECT_EQ(report.hours_light_below_horizon, 0);
    EXPECT_EQ(report.hours_closure_off, 0);
    EXPECT_EQ(report.hours_above_extraterrestrial, 0);
    EXPECT_TRUE(synthesise(harrowmere()).value().invented);
}

TEST(Synthesis, LightFitsTogetherInEveryHour) {
    const Climate climate = harrowmere();
    const Year year = synthesise(climate).value();
    const sun::YearSun sun = sun::year_sun({climate.latitude_deg, climate.longitude_deg, climate.altitude_m,
                                            climate.utc_offset_h, 30.0, sun::weather_sun_year});
    for (std::size_t i = 0; i < 8760; ++i) {
        const double closed = year.diffuse_w_m2[i] + year.beam_normal_w_m2[i] * std::fmax(0.0, sun.up[i]);
        ASSERT_NEAR(closed, year.global_w_m2[i], 1e-9);
        ASSERT_GE(year.global_w_m2[i], 0.0);
        ASSERT_GE(year.diffuse_w_m2[i], 0.0);
        ASSERT_LE(year.beam_normal_w_m2[i], 1100.0);
        ASSERT_LE(year.dew_point_c[i], year.air_c[i]);
        ASSERT_GE(year.wind_m_s[i], 0.0);
        ASSERT_TRUE(sun.up_share[i] > 0.0 || year.global_w_m2[i] == 0.0);
    }
}

TEST(Synthesis, DaysPersistAndDiffer) {
    const Climate climate = harrowmere();
    const Year year = synthesise(climate).value();
    // Clearness of days, relative to the month's mean.
    std::vector<double> light = daily(year.global_w_m2);
    std::vector<double> air = daily(year.air_c);
    for (std::size_t d = 0; d < 365; ++d) {
        const auto m = static_cast<std::size_t>(month_of_hour(static_cast<int>(d) * 24) - 1);
        light[d] /= 1e3 * climate.global_kwh_m2_day[m];
        air[d] = air[d] / 24.0 - climate.air_mean_c[m];
    }
    const std::vector<double> light_next(light.begin() + 1, light.end());
    const std::vector<double> air_next(air.begin() + 1, air.end());
    light.pop_back();
    air.pop_back();
    // Lag-one correlation of daily clearness in measured years: 0.15 to 0.35 (Aguiar et al. 1988; Graham et al. 1988).
    const double light_persistence = correlation(light, light_next);
    EXPECT_GT(light_persistence, 0.1);
    EXPECT_LT(light_persistence, 0.5);
    EXPECT_GT(correlation(air, air_next), 0.55);
    EXPECT_LT(*std::min_element(light.begin(), light.end()), 0.35);
    EXPECT_GT(*std::max_element(light.begin(), light.end()), 1.5);
}

TEST(Synthesis, WarmestHourIsInTheAfternoonAndColdestBeforeSunrise) {
    const Year year = synthesise(harrowmere()).value();
    std::array<double, 24> mean{};
    for (std::size_t i = 0; i < 8760; ++i)
        mean[i % 24] += year.air_c[i] / 365.0;
    const auto warmest = std::max_element(mean.begin(), mean.end()) - mean.begin();
    const auto coldest = std::min_element(mean.begin(), mean.end()) - mean.begin();
    EXPECT_GE(warmest, 13);
    EXPECT_LE(warmest, 16);
    EXPECT_GE(coldest, 3);
    EXPECT_LE(coldest, 6);
    EXPECT_NEAR(mean[static_cast<std::size_t>(warmest)] - mean[static_cast<std::size_t>(coldest)], 8.0, 1.0);
}

TEST(Synthesis, SameSeedGivesTheSameYearAndAnotherSeedAnother) {
    Climate climate = harrowmere();
    const Year first = synthesise(climate).value();
    const Year again = synthesise(climate).value();
    EXPECT_EQ(first.global_w_m2, again.global_w_m2);
    EXPECT_EQ(first.air_c, again.air_c);
    EXPECT_EQ(first.wind_m_s, again.wind_m_s);
    climate.seed += 1;
    EXPECT_NE(synthesise(climate).value().global_w_m2, first.global_w_m2);
}

TEST(Synthesis, WorksInTheSouthAtThePolarCircleAndInTheTropics) {
    Climate climate = harrowmere();
    climate.latitude_deg = -47.4;
    std::rotate(climate.global_kwh_m2_day.begin(), climate.global_kwh_m2_day.begin() + 6,
                climate.global_kwh_m2_day.end());
    std::rotate(climate.air_mean_c.begin(), climate.air_mean_c.begin() + 6, climate.air_mean_c.end());
    EXPECT_TRUE(assess(synthesise(climate).value()).remarks.empty());

    climate = harrowmere();
    climate.latitude_deg = 70.0;
    climate.global_kwh_m2_day = {0.0, 0.2, 1.0, 2.6, 4.0, 4.5, 4.0, 2.8, 1.4, 0.4, 0.0, 0.0};
    const Result<Year> polar = synthesise(climate);
    ASSERT_TRUE(polar) << text_of(polar.problems());
    EXPECT_EQ(month_sum(polar.value().global_w_m2, 12), 0.0);
    EXPECT_NEAR(month_sum(polar.value().global_w_m2, 6), 4500.0 * 30.0, 1e-3);

    climate = harrowmere();
    climate.latitude_deg = 1.0;
    climate.global_kwh_m2_day.fill(4.7);
    climate.air_mean_c.fill(27.0);
    climate.relative_humidity.fill(0.85);
    EXPECT_TRUE(synthesise(climate));
}

TEST(Synthesis, RefusesMoreLightThanACloudlessMonth) {
    Climate climate = harrowmere();
    climate.global_kwh_m2_day[11] = 3.0;
    const Result<Year> year = synthesise(climate);
    ASSERT_FALSE(year);
    ASSERT_EQ(year.problems().size(), 1u);
    EXPECT_EQ(year.problems().front().where, "harrowmere: global_kwh_m2_day[11]");
    EXPECT_NE(year.problems().front().what.find("cloudless"), std::string::npos);
    climate.latitude_deg = 80.0;  // polar night
    EXPECT_FALSE(synthesise(climate));
}

TEST(Synthesis, RefusesFiguresThatAreNone) {
    Climate climate = harrowmere();
    climate.air_mean_c[3] = std::nan("");
    climate.latitude_deg = std::numeric_limits<double>::infinity();
    climate.relative_humidity[0] = 1.2;
    const Result<Year> year = synthesise(climate);
    ASSERT_FALSE(year);
    EXPECT_EQ(year.problems().size(), 3u) << text_of(year.problems());
}

TEST(ClimateJson, ReadsTheBuiltInClimate) {
    const Climate climate = harrowmere();
    EXPECT_EQ(climate.id, "harrowmere");
    EXPECT_TRUE(climate.invented);
    EXPECT_EQ(climate.latitude_deg, 47.4);
    EXPECT_EQ(climate.air_mean_c[6], 18.9);
    EXPECT_EQ(climate.seed, 20270621u);
}

TEST(ClimateJson, ScatterFromYearToYearMayBeGiven) {
    EXPECT_FALSE(harrowmere().global_variation.has_value());
    nlohmann::json json = nlohmann::json::parse(harrowmere_text());
    json["global_variation"] = std::vector<double>(12, 0.11);
    json["air_spread_k"] = std::vector<double>(12, 1.4);
    json["country"] = "CH";
    const Climate climate = climate_from_json(json.dump(), "c.json").value();
    EXPECT_EQ((*climate.global_variation)[3], 0.11);
    EXPECT_EQ((*climate.air_spread_k)[11], 1.4);
    EXPECT_EQ(climate.country, "CH");
    json["air_spread_k"] = std::vector<double>(11, 1.4);
    json["global_variation"][2] = 0.9;
    const Result<Climate> wrong = climate_from_json(json.dump(), "c.json");
    ASSERT_FALSE(wrong);
    EXPECT_EQ(wrong.problems().size(), 2u) << text_of(wrong.problems());
}

TEST(ClimateJson, NamesEveryFieldThatIsWrong) {
    nlohmann::json json = nlohmann::json::parse(harrowmere_text());
    json.erase("label");
    json["latitude_deg"] = 100.0;
    json["wind_m_s"] = {1, 2, 3};
    json["air_mean_c"][4] = "warm";
    json["relative_humidity"][0] = 83;
    json["seed"] = -1;
    json["invented"] = "yes";
    const Result<Climate> climate = climate_from_json(json.dump(), "c.json");
    ASSERT_FALSE(climate);
    const std::string all = text_of(climate.problems());
    for (const char* part : {"c.json: label", "c.json: latitude_deg", "c.json: wind_m_s", "c.json: air_mean_c[4]",
                             "c.json: relative_humidity[0]", "c.json: seed", "c.json: invented"}) {
        EXPECT_NE(all.find(part), std::string::npos) << part << "\n" << all;
    }
}

TEST(ClimateJson, RefusesTextThatIsNoClimateAtItsPlace) {
    std::string broken = harrowmere_text();
    broken.replace(broken.find("\"id\":"), 5, "\"id\" ");
    const Result<Climate> climate = climate_from_json(broken, "c.json");
    ASSERT_FALSE(climate);
    EXPECT_EQ(climate.problems().front().where.rfind("c.json:3:", 0), 0u) << climate.problems().front().where;
    for (const char* text : {"", "[]", "null", "12", "{\"id\": 1e999}", "{\"latitude_deg\": NaN}"}) {
        EXPECT_FALSE(climate_from_json(text, "c.json")) << text;
    }
    EXPECT_FALSE(climate_from_json(std::string(100000, '['), "c.json"));
}

// scipy.stats.norm.ppf (scipy 1.11.4).
TEST(Random, NormalQuantileEqualsScipy) {
    EXPECT_NEAR(normal_quantile(0.975), 1.959963984540054, 1e-14);
    EXPECT_NEAR(normal_quantile(0.3), -0.5244005127080409, 1e-14);
    EXPECT_NEAR(normal_quantile(1e-5), -4.264890793922825, 1e-13);
    EXPECT_NEAR(normal_quantile(1e-12), -7.034483825301131, 1e-12);
    EXPECT_NEAR(normal_quantile(1e-40), -13.31092137142517, 1e-11);
    EXPECT_EQ(normal_quantile(0.5), 0.0);
    for (double p = 0.001; p < 1.0; p += 0.001)
        EXPECT_NEAR(normal_probability(normal_quantile(p)), p, 1e-14);
}

TEST(Random, SequenceIsFixedForEver) {
    // xoshiro256** seeded by splitmix64: splitmix64(0) begins 0xE220A8397B1DCDAF, 0x6E789E6AA1B965F4,
    // 0x06C45D188009454F, 0xF88BB8A8724C81EC (published test vectors); the first output follows from these four words
    // by the definition.
    Random random(0);
    const std::uint64_t s1 = 0x6E789E6AA1B965F4ULL * 5;
    EXPECT_EQ(random.next(), ((s1 << 7) | (s1 >> 57)) * 9);
}

TEST(Random, NormalsHaveMeanZeroVarianceOneAndPersistenceAsAsked) {
    Random random(5);
    Persistent series(0.6, random);
    constexpr int n = 200000;
    double sum = 0.0, squares = 0.0, lagged = 0.0, previous = series.next();
    for (int i = 0; i < n; ++i) {
        const double x = series.next();
        sum += x;
        squares += x * x;
        lagged += x * previous;
        previous = x;
    }
    // Standard errors at n = 200,000 with persistence 0.6: about 0.0045 of the mean, 0.005 of the moments; four of
    // them.
    EXPECT_NEAR(sum / n, 0.0, 0.02);
    EXPECT_NEAR(squares / n, 1.0, 0.02);
    EXPECT_NEAR(lagged / n, 0.6, 0.02);
}

}  // namespace
}  // namespace wg::weather
