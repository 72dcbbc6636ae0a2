#include <gtest/gtest.h>

#include "core/plan/plan.h"
#include "core/plan/weather_ensemble.h"
#include "tests/tools/load_reference.h"

namespace wg::plan {
namespace spread_test {

class Spread : public ::testing::Test {
   protected:
    static void SetUpTestSuite() {
        const Job job = test::demo_job();
        with_ = with_weather_and_years(test::reference(), job.weather, job.site.location.altitude_m).value();
        Reference without = *with_;
        without.further_years.reset();
        ranged_ = new Plan(plan(job, *with_).value());
        assumed_ = new Plan(plan(job, without).value());
    }
    static void TearDownTestSuite() {
        delete ranged_;
        delete assumed_;
        with_.reset();
    }
    static std::shared_ptr<const Reference> with_;
    static Plan* ranged_;
    static Plan* assumed_;
};
std::shared_ptr<const Reference> Spread::with_;
Plan* Spread::ranged_ = nullptr;
Plan* Spread::assumed_ = nullptr;

TEST_F(Spread, YearsDifferAndPercentilesAreInOrder) {
    ASSERT_TRUE(ranged_->weather_spread.has_value());
    const WeatherSpread& s = *ranged_->weather_spread;
    EXPECT_EQ(s.years, usual_further_years);
    for (const weather::Quantiles& q : {s.light_kwh_m2, s.electricity_kwh, s.heat_kwh, s.seasonal_factor}) {
        EXPECT_LE(q.p10, q.p50);
        EXPECT_LE(q.p50, q.p90);
        EXPECT_GT(q.p10, 0.0);
    }
    EXPECT_LT(s.light_kwh_m2.p10, 0.99 * s.light_kwh_m2.p90);
    EXPECT_LT(s.electricity_kwh.p10, s.electricity_kwh.p90);
    // The middle of the years is the usual year, by and large.
    EXPECT_NEAR(s.light_kwh_m2.p50, ranged_->placements[0].plane_kwh_m2, 0.05 * s.light_kwh_m2.p50);
    EXPECT_NEAR(s.electricity_kwh.p50, ranged_->figures.electricity_kwh.mid, 0.05 * s.electricity_kwh.p50);
}

TEST_F(Spread, TheYearItselfIsNotMovedByItsRange) {
    EXPECT_EQ(ranged_->figures.electricity_kwh.mid, assumed_->figures.electricity_kwh.mid);
    EXPECT_FALSE(assumed_->weather_spread.has_value());
    EXPECT_NE(assumed_->range_method.find("light -7/+7 %"), std::string::npos);
    EXPECT_NE(ranged_->range_method.find("10 made years"), std::string::npos);
}

TEST_F(Spread, RangeHoldsTheWeathersShare) {
    const Ranged& e = ranged_->figures.electricity_kwh;
    const weather::Quantiles& q = ranged_->weather_spread->electricity_kwh;
    EXPECT_LE(e.low, e.mid - e.mid * (1.0 - q.p10 / q.p50));
    EXPECT_GE(e.high, e.mid + e.mid * (q.p90 / q.p50 - 1.0));
}

TEST_F(Spread, SameYearsGiveTheSamePlanToTheBit) {
    EXPECT_EQ(plan_to_json(plan(test::demo_job(), *with_).value()), plan_to_json(*ranged_));
}

TEST_F(Spread, AYearOfTheUsersGetsYearsLikeIt) {
    Reference own = test::reference();
    own.weather = with_->weather;
    const auto made = with_weather_and_years(own, "no climate of that name", std::nullopt, 3);
    ASSERT_TRUE(made.ok());
    ASSERT_NE(made.value()->further_years, nullptr);
    EXPECT_EQ(made.value()->further_years->size(), 3U);
    EXPECT_EQ(made.value()->weather, with_->weather);
}

TEST_F(Spread, AHigherSiteIsColderInEveryYear) {
    const Job job = test::demo_job();
    Reference bare = test::reference();
    bare.weather.reset();
    const double higher_m = 300.0;
    const double base_m = bare.climates.at(job.weather).altitude_m;
    const auto low = with_weather_and_years(bare, job.weather, base_m, 2);
    const auto high = with_weather_and_years(bare, job.weather, base_m + higher_m, 2);
    ASSERT_TRUE(low.ok() && high.ok());
    const auto mean_air = [](const PreparedWeather& w) {
        double sum = 0.0;
        for (const double t : w.year.air_c)
            sum += t / 8760.0;
        return sum;
    };
    // ISO 2533: 6.5 K a kilometre.
    EXPECT_NEAR(mean_air(*low.value()->weather) - mean_air(*high.value()->weather), 0.0065 * higher_m, 1e-6);
    EXPECT_NEAR(mean_air(*low.value()->further_years->back()) - mean_air(*high.value()->further_years->back()),
                0.0065 * higher_m, 1e-6);
    EXPECT_EQ(high.value()->weather->year.altitude_m, base_m + higher_m);
    EXPECT_EQ(low.value()->weather->sky.global_w_m2, high.value()->weather->sky.global_w_m2);
}

}  // namespace spread_test
}  // namespace wg::plan
