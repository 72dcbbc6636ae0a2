#include "core/aftercare/performance.h"

#include <gtest/gtest.h>

#include <numeric>
#include <random>

#include "tests/tools/sweep.h"

namespace wg::aftercare {
namespace performance_test {
namespace {

using K = ReadingKind;

Reading meter(K kind, const char* day, double value) {
    static int next = 0;
    Reading made;
    made.id = std::to_string(++next);
    made.kind = kind;
    made.taken_at = std::string(day) + "T12:00:00Z";
    made.value = value;
    return made;
}

/// 3 kWh a day in the first half of the year, 1 in the second; twice as much heat.
DayModel plain_model() {
    DayModel model;
    for (std::size_t i = 0; i < DayModel::days; ++i) {
        model.electricity_kwh[i] = i < 181 ? 3.0 : 1.0;  // 181: 1 July
        model.drawn_kwh[i] = 2.0 * model.electricity_kwh[i];
    }
    model.low_share = 0.8;
    model.high_share = 1.2;
    model.low_share_metered = 0.9;
    model.high_share_metered = 1.1;
    return model;
}

Metered used(CivilDate from, CivilDate to, double kwh) {
    Metered m;
    m.from = from;
    m.to = to;
    m.electricity_kwh = kwh;
    return m;
}

TEST(MeteredPeriods, run_from_reading_to_reading_and_over_the_whole) {
    const auto periods = metered_periods(
        {meter(K::electricity_meter, "2028-06-01", 900.0), meter(K::electricity_meter, "2027-06-01", 100.0),
         meter(K::water_meter, "2027-06-02", 10.0), meter(K::water_meter, "2028-06-01", 40.0),
         meter(K::heat_meter, "2028-06-01", 40.0), meter(K::electricity_meter, "2028-12-01", 1300.0)});
    ASSERT_EQ(periods.size(), 3U);
    EXPECT_DOUBLE_EQ(periods[0].electricity_kwh, 800.0);
    EXPECT_EQ(periods[0].days(), 366);
    EXPECT_DOUBLE_EQ(*periods[0].water_m3, 30.0) << "a day off is near enough";
    EXPECT_FALSE(periods[0].heat_kwh) << "read at one end only";
    EXPECT_DOUBLE_EQ(periods[1].electricity_kwh, 400.0);
    EXPECT_FALSE(periods[1].water_m3);
    EXPECT_DOUBLE_EQ(periods[2].electricity_kwh, 1200.0);
    EXPECT_EQ(periods[2].from, (CivilDate{2027, 6, 1}));
}

TEST(MeteredPeriods, nothing_is_reckoned_across_an_exchanged_meter) {
    const auto periods = metered_periods({meter(K::electricity_meter, "2027-06-01", 5000.0),
                                          meter(K::electricity_meter, "2028-06-01", 12.0),
                                          meter(K::electricity_meter, "2029-06-01", 700.0)});
    ASSERT_EQ(periods.size(), 1U);
    EXPECT_DOUBLE_EQ(periods[0].electricity_kwh, 688.0);
    EXPECT_TRUE(metered_periods({meter(K::electricity_meter, "2027-06-01", 5000.0)}).empty());
}

TEST(MeteredPeriods, corrections_count) {
    auto first = meter(K::electricity_meter, "2027-06-01", 5000.0);
    auto right = meter(K::electricity_meter, "2027-06-01", 500.0);
    right.corrects_id = first.id;
    const auto periods = metered_periods({first, right, meter(K::electricity_meter, "2028-06-01", 700.0)});
    ASSERT_EQ(periods.size(), 1U);
    EXPECT_DOUBLE_EQ(periods[0].electricity_kwh, 200.0);
}

TEST(SumOver, days_by_their_place_in_the_year) {
    const DayModel model = plain_model();
    const double year = std::accumulate(model.electricity_kwh.begin(), model.electricity_kwh.end(), 0.0);
    EXPECT_DOUBLE_EQ(sum_over(model.electricity_kwh, {2027, 1, 1}, {2028, 1, 1}), year);
    EXPECT_DOUBLE_EQ(sum_over(model.electricity_kwh, {2027, 6, 29}, {2027, 7, 2}), 3.0 + 3.0 + 1.0);
    EXPECT_DOUBLE_EQ(sum_over(model.electricity_kwh, {2027, 12, 31}, {2028, 1, 2}), 1.0 + 3.0);
    EXPECT_DOUBLE_EQ(sum_over(model.electricity_kwh, {2028, 2, 28}, {2028, 3, 2}), 9.0) << "the 29th as the 28th";
    EXPECT_DOUBLE_EQ(sum_over(model.electricity_kwh, {2027, 5, 1}, {2027, 5, 1}), 0.0);
    EXPECT_DOUBLE_EQ(sum_over(model.electricity_kwh, {2027, 5, 2}, {2027, 5, 1}), 0.0);
}

TEST(SumOver, parts_of_a_period_make_the_whole) {
    std::mt19937_64 random(20270621);
    DayModel model;
    for (double& kwh : model.electricity_kwh)
        kwh = static_cast<double>(random() % 1000U) * 1e-2;
    const std::int64_t first = days_from_civil({2026, 1, 1});
    for (int i = 0; i < wg::sweep::cases(300); ++i) {
        std::array<std::int64_t, 3> d{};
        for (auto& day : d)
            day = first + static_cast<std::int64_t>(random() % 1500U);
        std::sort(d.begin(), d.end());
        const auto sum = [&](int a, int b) {
            return sum_over(model.electricity_kwh, civil_from_days(d[static_cast<std::size_t>(a)]),
                            civil_from_days(d[static_cast<std::size_t>(b)]));
        };
        EXPECT_NEAR(sum(0, 1) + sum(1, 2), sum(0, 2), 1e-9);
    }
}

TEST(HeatOfWater, by_hand) {
    Demand demand;
    demand.set_point_c = 55.0;
    demand.cold_mean_c = 10.0;
    EXPECT_NEAR(heat_of_water_kwh(10.0, demand), 523.35, 0.01);  // 10 000 kg * 4.187 kJ/(kg K) * 45 K / 3600
}

TEST(WeatherNamed, counts_the_days_of_named_years) {
    EXPECT_EQ(days_named("Upper Sallow 2027", {2027, 6, 1}, {2027, 7, 1}), 30);
    EXPECT_EQ(days_named("station 120271, year 2028", {2027, 6, 1}, {2028, 6, 1}), 152) << "no year in a longer number";
    EXPECT_EQ(days_named("2027 and 2028", {2027, 6, 1}, {2028, 6, 1}), 366);
    EXPECT_EQ(days_named("typical year", {2027, 6, 1}, {2028, 6, 1}), 0);
}

TEST(Verdict, follows_the_models_range) {
    const DayModel model = plain_model();  // June: 90 kWh expected, 72 to 108
    Demand demand;
    const auto verdict = [&](double kwh, bool metered = false) {
        Metered m = used({2027, 6, 1}, {2027, 7, 1}, kwh);
        if (metered) m.heat_kwh = 180.0;
        return check_performance(m, model, demand, "2027", metered);
    };
    EXPECT_EQ(verdict(100.8).verdict, Performance::as_expected);
    EXPECT_EQ(verdict(100.8).words, "used 12 % more than expected for this weather: within what is usual");
    EXPECT_EQ(verdict(100.8, true).verdict, Performance::more) << "the use is known: the range is narrower";
    Metered by_volume = used({2027, 6, 1}, {2027, 7, 1}, 100.8);
    by_volume.water_m3 = 3.4;
    EXPECT_EQ(check_performance(by_volume, model, demand, "2027", true).verdict, Performance::as_expected)
        << "a volume tells the heat less well: root of squares of both";
    EXPECT_EQ(verdict(110.0).verdict, Performance::more);
    EXPECT_EQ(verdict(118.0).verdict, Performance::clearly_more);
    EXPECT_FALSE(verdict(118.0).look_at.empty());
    EXPECT_EQ(verdict(70.0).verdict, Performance::less);
    EXPECT_EQ(verdict(50.0).verdict, Performance::clearly_less);
    EXPECT_EQ(verdict(90.0).words, "used as much as expected for this weather: within what is usual");
    EXPECT_TRUE(verdict(90.0).weather_of_period);
    EXPECT_TRUE(verdict(90.0).look_at.empty());
}

TEST(Verdict, short_periods_and_other_weather_are_said) {
    const DayModel model = plain_model();
    const auto shorter = check_performance(used({2027, 6, 1}, {2027, 6, 20}, 500.0), model, {}, "2027", false);
    EXPECT_EQ(shorter.verdict, Performance::cannot_tell);
    const auto other = check_performance(used({2027, 6, 1}, {2027, 7, 1}, 90.0), model, {}, "typical year", false);
    EXPECT_FALSE(other.weather_of_period);
    EXPECT_NE(other.weather_words.find("does not say"), std::string::npos);
}

TEST(Verdict, the_factor_comes_from_both_meters) {
    Metered m = used({2027, 6, 1}, {2027, 7, 1}, 60.0);
    m.heat_kwh = 150.0;
    const auto check = check_performance(m, plain_model(), {}, "2027", true);
    EXPECT_DOUBLE_EQ(*check.factor_read, 2.5);
    EXPECT_DOUBLE_EQ(check.factor_expected, 2.0);
}

TEST(ScaledDraws, stay_within_what_a_job_may_hold) {
    Demand demand;
    EXPECT_DOUBLE_EQ(scaled_draws(demand, 1.5).scale, 1.5);
    EXPECT_DOUBLE_EQ(scaled_draws(demand, 100.0).scale, 3.0);
    EXPECT_DOUBLE_EQ(scaled_draws(demand, 0.01).scale, 0.2);
    EXPECT_DOUBLE_EQ(scaled_draws(demand, std::nan("")).scale, 1.0);
}

}  // namespace
}  // namespace performance_test
}  // namespace wg::aftercare
