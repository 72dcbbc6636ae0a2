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

// First order by Carnot with the share that is felt (core/pipework/lines.h): half to twice is asked for, over the three
// systems of the demonstration and runs of other lengths.
TEST_F(RunLosses, first_order_share_is_near_that_of_two_years) {
    const Job job = test::demo_job();
    for (const Choice& choice : job.choices) {
        Options options;
        options.choice_id = choice.id;
        const Plan plan = planned(job, options);
        ASSERT_TRUE(plan.run_loss_percent.has_value());
        EXPECT_GT(100.0 * plan.run.mean.factor_share, 0.5 * *plan.run_loss_percent) << choice.label;
        EXPECT_LT(100.0 * plan.run.mean.factor_share, 2.0 * *plan.run_loss_percent) << choice.label;
    }
}

TEST_F(RunLosses, a_longer_run_costs_more_of_the_factor) {
    const Job job = test::demo_job();
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
        EXPECT_GT(*plan.run_loss_percent, last);
        EXPECT_LT(100.0 * plan.run.mean.factor_share, 2.0 * *plan.run_loss_percent) << more_m;
        last = *plan.run_loss_percent;
    }
}

TEST_F(RunLosses, a_choice_without_a_route_is_planned_by_a_suggested_one_and_says_so) {
    Job job = test::demo_job();
    Options quick;
    quick.yield = false;
    for (Choice& choice : job.choices) {
        choice.route.clear();
        quick.choice_id = choice.id;
        const Plan plan = planned(job, quick);
        EXPECT_TRUE(plan.run_suggested) << choice.label;
        ASSERT_NE(find(plan, "run.no-route"), nullptr);
        EXPECT_EQ(find(plan, "run.no-route")->severity, Severity::caution);
        EXPECT_GT(plan.run.passages, 0);
        const Result<pipework::Suggestion> suggested = suggested_run(job, *reference_, choice.id);
        ASSERT_TRUE(suggested.ok());
        EXPECT_NEAR(suggested.value().length_m, plan.run.length_m, 1e-9);
        EXPECT_EQ(suggested.value().bends, plan.run.bends);
        choice.route = suggested.value().route;  // as the window puts it in
        const Plan drawn = planned(job, quick);
        EXPECT_FALSE(drawn.run_suggested);
        EXPECT_EQ(find(drawn, "run.no-route"), nullptr);
        EXPECT_EQ(find(drawn, "run.bend-room"), nullptr) << find(drawn, "run.bend-room")->message;
        EXPECT_NEAR(drawn.run.length_m, plan.run.length_m, 1e-9);
        EXPECT_EQ(drawn.figures.price_gross, plan.figures.price_gross) << "passages and all";
    }
}

TEST_F(RunLosses, suggestion_names_what_is_missing) {
    Job job = test::demo_job();
    EXPECT_FALSE(suggested_run(job, *reference_, "no such choice").ok());
    chosen(job).placements.clear();
    const auto none = suggested_run(job, *reference_);
    ASSERT_FALSE(none.ok());
    EXPECT_NE(text_of(none.problems()).find("no collector is placed"), std::string::npos);
    job = test::demo_job();
    chosen(job).spot_id = "gone";
    ASSERT_FALSE(suggested_run(job, *reference_).ok());
    EXPECT_NE(text_of(suggested_run(job, *reference_).problems()).find("spot_id"), std::string::npos);
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
