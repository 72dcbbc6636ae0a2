// Drift and meters with the real model: the demonstration job, planned.

#include <gtest/gtest.h>

#include "core/aftercare/drift.h"
#include "core/aftercare/performance.h"
#include "tests/tools/load_reference.h"

namespace wg::aftercare {
namespace with_plan_test {
namespace {

using K = ReadingKind;

const plan::Reference& shared() {
    static const plan::Reference reference = wg::test::reference();
    return reference;
}

const plan::Plan& demo_plan() {
    static const plan::Plan plan = plan::plan(wg::test::demo_job(), shared()).value();
    return plan;
}

Metered year_of(double kwh) {
    Metered m;
    m.from = {2027, 1, 1};
    m.to = {2028, 1, 1};
    m.electricity_kwh = kwh;
    return m;
}

TEST(DayModelOfAPlan, days_make_the_year_of_the_plan) {
    const std::optional<DayModel> model = day_model(demo_plan());
    ASSERT_TRUE(model);
    const season::MonthSums& total = demo_plan().season.total;
    // Hours are kept as floats.
    EXPECT_NEAR(sum_over(model->electricity_kwh, {2027, 1, 1}, {2028, 1, 1}), total.electricity_kwh(),
                1e-4 * total.electricity_kwh());
    EXPECT_NEAR(sum_over(model->drawn_kwh, {2027, 1, 1}, {2028, 1, 1}), total.drawn_kwh, 1e-4 * total.drawn_kwh);
    EXPECT_NEAR(sum_over(model->electricity_kwh, {2027, 6, 1}, {2027, 7, 1}),
                demo_plan().season.months[5].electricity_kwh(), 1e-3 * total.electricity_kwh());
    EXPECT_LT(model->low_share, 1.0);
    EXPECT_GT(model->high_share, 1.0);
    EXPECT_LT(model->high_share_metered - model->low_share_metered, model->high_share - model->low_share)
        << "a metered use leaves less open";
    EXPECT_GE(model->high_share_metered, 1.12);
}

TEST(PerformanceOfAJob, the_models_own_use_is_as_expected_and_twice_as_much_is_not) {
    const double kwh = demo_plan().season.total.electricity_kwh();
    const auto same = performance_of(wg::test::demo_job(), shared(), year_of(kwh), "");
    ASSERT_TRUE(same.ok()) << text_of(same.problems());
    EXPECT_EQ(same.value().verdict, Performance::as_expected);
    EXPECT_NEAR(same.value().mid_kwh, kwh, 1e-3 * kwh);
    EXPECT_FALSE(same.value().use_metered);
    const auto twice = performance_of(wg::test::demo_job(), shared(), year_of(2.0 * kwh), "");
    EXPECT_EQ(twice.value().verdict, Performance::clearly_more);
}

TEST(PerformanceOfAJob, a_metered_use_moves_what_is_expected) {
    Metered m = year_of(1000.0);
    m.heat_kwh = 1.3 * demo_plan().season.total.drawn_kwh;
    const auto check = performance_of(wg::test::demo_job(), shared(), m, "");
    ASSERT_TRUE(check.ok()) << text_of(check.problems());
    EXPECT_TRUE(check.value().use_metered);
    EXPECT_NEAR(check.value().drawn_expected_kwh, *m.heat_kwh, 0.05 * *m.heat_kwh);
    EXPECT_GT(check.value().mid_kwh, 1.1 * demo_plan().season.total.electricity_kwh());
    m.heat_kwh = 100.0 * *m.heat_kwh;
    EXPECT_FALSE(performance_of(wg::test::demo_job(), shared(), m, "").value().use_metered) << "beyond the model";
}

TEST(ModelOfAPlan, gives_bands_for_the_running_pump_that_follow_the_day) {
    const auto properties = shared().refrigerants.at(demo_plan().block.refrigerant);
    const ModelAtDay model = model_of(demo_plan(), *properties);
    ASSERT_TRUE(model);
    const DayBands mild = model({40.0, 15.0, 200.0, 2.0});
    const DayBands cold = model({40.0, -2.0, 200.0, 2.0});
    const DayBands warm_water = model({50.0, 15.0, 200.0, 2.0});
    for (const K kind : {K::suction_temperature, K::suction_pressure, K::discharge_temperature, K::discharge_pressure,
                         K::supply_current}) {
        ASSERT_NE(mild.of(kind), nullptr);
        EXPECT_LT(mild.of(kind)->low, mild.of(kind)->mid);
        EXPECT_GT(mild.of(kind)->high, mild.of(kind)->mid);
    }
    EXPECT_LT(cold.of(K::suction_temperature)->mid, mild.of(K::suction_temperature)->mid - 5.0);
    EXPECT_GT(warm_water.of(K::discharge_pressure)->mid, mild.of(K::discharge_pressure)->mid);
    EXPECT_TRUE(model({std::nullopt, 15.0, 200.0, 2.0}).bands.empty());
    const DayBands dark = model({40.0, 15.0, std::nullopt, 2.0});
    EXPECT_GT(dark.of(K::suction_temperature)->high - dark.of(K::suction_temperature)->low,
              mild.of(K::suction_temperature)->high - mild.of(K::suction_temperature)->low)
        << "unknown light widens the band";
}

}  // namespace
}  // namespace with_plan_test
}  // namespace wg::aftercare
