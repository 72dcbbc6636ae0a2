// Losses of the lines over the year: by two years and to first order, and the suggested run where none is drawn.

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

#include "core/plan/plan.h"
#include "tests/tools/load_reference.h"

namespace wg::plan {
namespace run_losses_test {
namespace {

class RunLosses : public ::testing::Test {
   protected:
    static void SetUpTestSuite() { reference_ = new Reference(test::reference()); }
    static void TearDownTestSuite() { delete reference_; }
    static Plan planned(const Job& job, const Options& options) {
        Result<Plan> result = plan(job, *reference_, options);
        EXPECT_TRUE(result.ok()) << (result.ok() ? "" : text_of(result.problems()));
        return std::move(result).value();
    }
    static Choice& chosen(Job& job) {
        return *std::find_if(job.choices.begin(), job.choices.end(),
                             [&](const Choice& c) { return c.id == chosen_choice(job)->id; });
    }
    static const Finding* find(const Plan& plan, const std::string& code) {
        const auto at =
            std::find_if(plan.findings.begin(), plan.findings.end(), [&](const Finding& f) { return f.code == code; });
        return at == plan.findings.end() ? nullptr : &*at;
    }
    static const Working* working(const Plan& plan, const std::string& key) {
        const auto at =
            std::find_if(plan.workings.begin(), plan.workings.end(), [&](const Working& w) { return w.key == key; });
        return at == plan.workings.end() ? nullptr : &*at;
    }
    static Reference* reference_;
};
Reference* RunLosses::reference_ = nullptr;

TEST_F(RunLosses, year_gives_the_points_that_the_losses_are_weighed_by) {
    const Plan plan = planned(test::demo_job(), {});
    ASSERT_FALSE(plan.season.operation.empty());
    double hours = 0.0, evaporator_kwh = 0.0;
    for (const season::OperatingBand& band : plan.season.operation) {
        hours += band.hours;
        evaporator_kwh += 1e-3 * band.hours * band.evaporator_w;
        EXPECT_LT(band.evaporating_c, band.condensing_c);
    }
    const season::MonthSums& t = plan.season.total;
    EXPECT_NEAR(hours, t.running_h, 1e-6 * t.running_h);
    // What the plate took up, from the ledger: all its heats together.
    const double taken_kwh = t.light_kwh + t.air_kwh + t.long_wave_kwh + t.latent_kwh;
    EXPECT_NEAR(evaporator_kwh, taken_kwh, 0.005 * taken_kwh);
    EXPECT_EQ(plan.run.points.size(), plan.season.operation.size());
    ASSERT_NE(working(plan, "run.losses"), nullptr);
    EXPECT_NE(working(plan, "run.losses")->formula.find("two years"), std::string::npos);
}

// First order by Carnot leaves out that a compressor which moves less gas lets the plate get warmer (less loss) and
// that it then runs longer with its standby and shell losses (more): half to twice is asked for.
TEST_F(RunLosses, first_order_share_is_near_that_of_two_years) {
    Job job = test::demo_job();
    double last = 0.0;
    for (const double more_m : {0.0, 6.0, 14.0}) {
        Job longer = job;
        Choice& choice = chosen(longer);
        ASSERT_FALSE(choice.route.empty());
        RoutePoint aside = choice.route.back();
        aside.id += "-aside";
        aside.position.y_m += 0.5 * more_m;  // there and back
        if (more_m > 0.0) choice.route.insert(choice.route.end() - 1, aside);
        const Plan plan = planned(longer, {});
        ASSERT_TRUE(plan.run_loss_percent.has_value());
        const double first_order = 100.0 * plan.run.mean.factor_share;
        EXPECT_GT(*plan.run_loss_percent, last) << "a longer run costs more";
        EXPECT_GT(first_order, 0.5 * *plan.run_loss_percent) << more_m;
        EXPECT_LT(first_order, 2.0 * *plan.run_loss_percent) << more_m;
        last = *plan.run_loss_percent;
    }
}

TEST_F(RunLosses, without_a_year_named_points_stand_in) {
    Options quick;
    quick.yield = false;
    const Plan plan = planned(test::demo_job(), quick);
    EXPECT_FALSE(plan.run_loss_percent.has_value());
    ASSERT_NE(working(plan, "run.losses"), nullptr);
    EXPECT_NE(working(plan, "run.losses")->inputs.front().second.find("assumed"), std::string::npos);
    EXPECT_EQ(plan.run.mean.points, 3);
}

}  // namespace
}  // namespace run_losses_test
}  // namespace wg::plan
