// Ensembles: years that scatter about the climate as stated, each the same whichever others are made.

#include "core/weather/ensemble.h"

#include <gtest/gtest.h>

#include <limits>

#include "climate_fixture.h"

namespace wg::weather {
namespace {

double month_mean(const std::vector<double>& series, std::size_t m) {
    const int from = first_hour_of_month(static_cast<int>(m) + 1);
    const int to = first_hour_of_month(static_cast<int>(m) + 2);
    double sum = 0.0;
    for (int h = from; h < to; ++h)
        sum += series[static_cast<std::size_t>(h)];
    return sum / (to - from);
}

double year_kwh_m2(const Climate& climate) {
    double kwh = 0.0;
    for (int month = 1; month <= 12; ++month) {
        kwh += climate.global_kwh_m2_day[static_cast<std::size_t>(month) - 1] *
               (first_hour_of_month(month + 1) - first_hour_of_month(month)) / 24.0;
    }
    return kwh;
}

struct Moments {
    double mean = 0.0;
    double deviation = 0.0;
};
Moments moments(const std::vector<double>& values) {
    Moments out;
    const auto n = static_cast<double>(values.size());
    for (const double v : values)
        out.mean += v / n;
    for (const double v : values)
        out.deviation += (v - out.mean) * (v - out.mean) / (n - 1.0);
    out.deviation = std::sqrt(out.deviation);
    return out;
}

constexpr int many = 500;

TEST(Ensemble, MonthsScatterAboutTheClimateAsStated) {
    Climate climate = place("place:potsdam");
    climate.global_variation = std::array<double, 12>{};
    climate.global_variation->fill(0.12);
    climate.air_spread_k = std::array<double, 12>{};
    climate.air_spread_k->fill(1.5);
    std::array<std::vector<double>, 12> light;
    std::array<std::vector<double>, 12> air;
    for (const Climate& year : climates_in_years(climate, many).value()) {
        for (std::size_t m = 0; m < 12; ++m) {
            light[m].push_back(year.global_kwh_m2_day[m] / climate.global_kwh_m2_day[m]);
            air[m].push_back(year.air_mean_c[m] - climate.air_mean_c[m]);
        }
    }
    // Four standard errors at 500 years: 0.18 deviations of a mean, 13 % of a deviation.
    for (std::size_t m = 0; m < 12; ++m) {
        EXPECT_NEAR(moments(light[m]).mean, 1.0, 0.18 * 0.12);
        EXPECT_NEAR(moments(light[m]).deviation, 0.12, 0.13 * 0.12);
        EXPECT_NEAR(moments(air[m]).mean, 0.0, 0.18 * 1.5);
        EXPECT_NEAR(moments(air[m]).deviation, 1.5, 0.13 * 1.5);
    }
}

// Yearly sums: 4 to 5 % in Central Europe, less where the sky is clear; from memory of published long records.
TEST(Ensemble, AssumedScatterOfYearlySumsIsThatOfLongRecords) {
    const auto variation = [](const char* id) {
        std::vector<double> sums;
        for (const Climate& year : climates_in_years(place(id), many).value())
            sums.push_back(year_kwh_m2(year));
        return moments(sums).deviation / moments(sums).mean;
    };
    EXPECT_NEAR(variation("place:zurich"), 0.050, 0.010);
    EXPECT_NEAR(variation("place:hamburg"), 0.050, 0.010);
    EXPECT_LT(variation("place:calama"), 0.025);
    EXPECT_LT(variation("place:tucson"), 0.03);
}

TEST(Ensemble, AYearIsTheSameAloneAndAmongOthers) {
    const Climate& climate = place("place:zurich");
    const std::vector<Year> three = ensemble(climate, 3).value();
    ASSERT_EQ(three.size(), 3U);
    const Year alone = ensemble_year(climate, 3).value();
    EXPECT_EQ(three[2].global_w_m2, alone.global_w_m2);
    EXPECT_EQ(three[2].air_c, alone.air_c);
    EXPECT_EQ(three[2].dew_point_c, alone.dew_point_c);
    EXPECT_EQ(three[2].wind_m_s, alone.wind_m_s);
    EXPECT_EQ(three[2].source, "monthly means of Zurich, year 3");
    EXPECT_NE(three[0].global_w_m2, three[1].global_w_m2);
    const Climate means = climate_in_year(climate, 3).value();
    EXPECT_EQ(climates_in_years(climate, 3).value()[2].global_kwh_m2_day, means.global_kwh_m2_day);
    for (std::size_t m = 0; m < 12; ++m) {
        EXPECT_NEAR(24e-3 * month_mean(alone.global_w_m2, m), means.global_kwh_m2_day[m], 1e-9 * 10.0);
        EXPECT_NEAR(month_mean(alone.air_c, m), means.air_mean_c[m], 1e-9 * 40.0);
    }
}

TEST(Ensemble, SeedsOfYearsDiffer) {
    std::vector<std::uint64_t> seeds;
    for (const Climate& year : climates_in_years(place("place:zurich"), many).value())
        seeds.push_back(year.seed);
    std::sort(seeds.begin(), seeds.end());
    EXPECT_EQ(std::adjacent_find(seeds.begin(), seeds.end()), seeds.end());
}

TEST(Ensemble, EveryPlaceHasYears) {
    for (const Climate& climate : places()) {
        const YearToYear spread = year_to_year(climate);
        for (std::size_t m = 0; m < 12; ++m) {
            EXPECT_TRUE(spread.global_variation[m] >= 0.0 && spread.global_variation[m] <= 0.32) << climate.id;
            EXPECT_TRUE(spread.air_spread_k[m] >= 0.3 && spread.air_spread_k[m] <= 4.0) << climate.id;
        }
        const Result<Year> year = ensemble_year(climate, 77);
        ASSERT_TRUE(year) << text_of(year.problems());
        for (const std::vector<double>* series :
             {&year.value().global_w_m2, &year.value().air_c, &year.value().dew_point_c, &year.value().wind_m_s}) {
            EXPECT_TRUE(std::all_of(series->begin(), series->end(), [](double v) { return std::isfinite(v); }));
        }
    }
}

TEST(Ensemble, RefusesNumbersOutsideItsRangeAndBadClimates) {
    EXPECT_FALSE(ensemble(place("place:zurich"), 0));
    EXPECT_FALSE(ensemble(place("place:zurich"), most_ensemble_years + 1));
    EXPECT_FALSE(ensemble_year(place("place:zurich"), -1));
    Climate climate = place("place:zurich");
    climate.air_mean_c[2] = std::numeric_limits<double>::quiet_NaN();
    EXPECT_FALSE(climate_in_year(climate, 1));
    climate = place("place:zurich");
    climate.global_variation = std::array<double, 12>{};
    climate.global_variation->fill(0.7);
    EXPECT_FALSE(ensemble(climate, 2));
}

TEST(Ensemble, MonthsOfAnImportedYearThatAreTooBrightAreLowered) {
    Climate climate = place("place:calama");
    EXPECT_EQ(within_cloudless(climate).global_kwh_m2_day, climate.global_kwh_m2_day);
    climate.global_kwh_m2_day[5] = 6.5;
    climate.global_kwh_m2_day[6] = 6.6;
    EXPECT_FALSE(synthesise(climate));
    const Climate lowered = within_cloudless(climate);
    EXPECT_TRUE(synthesise(lowered));
    EXPECT_LT(lowered.global_kwh_m2_day[5], 6.0);
    EXPECT_NE(lowered.source.find("2 months lowered"), std::string::npos) << lowered.source;
}

// Light of a month with the sun just over the horizon, as at 64 degrees north in December, is no error.
TEST(Synthesis, TakesTheLittleLightOfALowSun) {
    Climate climate = place("place:reykjavik");
    climate.global_kwh_m2_day[11] = 0.07;
    EXPECT_TRUE(synthesise(climate));
    climate.global_kwh_m2_day[11] = 0.3;
    EXPECT_FALSE(synthesise(climate));
}

TEST(ClimateOf, MadeYearHasTheMeansOfTheYearItWasMadeFrom) {
    const Year year = ensemble_year(place("place:vienna"), 4).value();
    const Climate means = climate_of(year, "copy", 9);
    EXPECT_EQ(means.seed, 9U);
    const Climate again = climate_of(synthesise(means).value(), "again");
    for (std::size_t m = 0; m < 12; ++m) {
        EXPECT_NEAR(again.global_kwh_m2_day[m], means.global_kwh_m2_day[m], 1e-9 * 10.0);
        EXPECT_NEAR(again.air_mean_c[m], means.air_mean_c[m], 1e-9 * 40.0);
        EXPECT_NEAR(again.wind_m_s[m], means.wind_m_s[m], 1e-9);
        EXPECT_NEAR(again.relative_humidity[m], means.relative_humidity[m], 1e-3);  // bisection, then saturation
        // Day to day changes add to what the swing alone makes of a day's range, more where the swing is small.
        EXPECT_NEAR(again.air_daily_swing_k[m], means.air_daily_swing_k[m], 1.2);
    }
}

// numpy 1.26.4: numpy.quantile(x, [0.1, 0.5, 0.9]), whose default is type 7.
TEST(Quantiles, AreTypeSevenOfHyndmanAndFan) {
    const Quantiles five = quantiles({15.0, 20.0, 35.0, 40.0, 50.0}).value();
    EXPECT_NEAR(five.p10, 17.0, 1e-12);
    EXPECT_NEAR(five.p50, 35.0, 1e-12);
    EXPECT_NEAR(five.p90, 46.0, 1e-12);
    EXPECT_EQ(five.count, 5U);
    const Quantiles four = quantiles({4.0, 1.0, 3.0, 2.0}).value();
    EXPECT_NEAR(four.p10, 1.3, 1e-12);
    EXPECT_NEAR(four.p50, 2.5, 1e-12);
    EXPECT_NEAR(four.p90, 3.7, 1e-12);
    const Quantiles one = quantiles({7.0}).value();
    EXPECT_EQ(one.p10, 7.0);
    EXPECT_EQ(one.p90, 7.0);
    EXPECT_FALSE(quantiles({}));
    EXPECT_FALSE(quantiles({1.0, std::nan("")}));
}

}  // namespace
}  // namespace wg::weather
