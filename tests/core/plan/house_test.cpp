// Charge duties, pressures and the house's supply as the plan puts them together.

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <nlohmann/json.hpp>

#include "core/plan/charge_duties.h"
#include "core/plan/plan.h"
#include "tests/tools/load_reference.h"

namespace wg::plan {
namespace house_test {

ChargeDuties eu() {
    ChargeDuties d;
    d.leak_checks = {{false, 5.0, 12}, {false, 50.0, 6}, {false, 500.0, 3},
                     {true, 1.0, 12},  {true, 10.0, 6},  {true, 100.0, 3}};
    d.by_mass = {"R1234yf"};
    d.not_fluorinated = {"R290"};
    d.source = "Regulation (EU) 2024/573, Article 5";
    return d;
}

TEST(ChargeDuty, IntervalsOfTheRegulation) {
    // Regulation (EU) 2024/573, Article 5: 5, 50, 500 t CO2e; R134a of GWP 1430: 3.497, 34.97, 349.7 kg.
    const auto months = [](double kg) { return charge_duty(eu(), "R134a", kg, kg * 1.430).leak_check_months; };
    EXPECT_EQ(months(1.2), 0);
    EXPECT_EQ(months(3.496), 0);
    EXPECT_EQ(months(3.497), 12);
    EXPECT_EQ(months(34.96), 12);
    EXPECT_EQ(months(34.97), 6);
    EXPECT_EQ(months(349.7), 3);
    // Annex II gases by mass: 1, 10, 100 kg.
    const auto by_mass = [](double kg) { return charge_duty(eu(), "R1234yf", kg, kg * 5e-4).leak_check_months; };
    EXPECT_EQ(by_mass(0.99), 0);
    EXPECT_EQ(by_mass(1.0), 12);
    EXPECT_EQ(by_mass(10.0), 6);
    EXPECT_EQ(by_mass(100.0), 3);
    EXPECT_TRUE(charge_duty(eu(), "R1234yf", 1.0, 0.0).by_mass);
    EXPECT_EQ(charge_duty(eu(), "R1234yf", 1.0, 0.0).first_from, 1.0);
}

TEST(ChargeDuty, PropaneHasNoneAndAnUnnamedSetSaysSo) {
    const ChargeDuty propane = charge_duty(eu(), "R290", 200.0, 0.6);
    EXPECT_TRUE(propane.named);
    EXPECT_FALSE(propane.fluorinated);
    EXPECT_EQ(propane.leak_check_months, 0);
    EXPECT_TRUE(propane.records.empty());
    EXPECT_FALSE(charge_duty({}, "R134a", 100.0, 143.0).named);
    EXPECT_EQ(charge_duty({}, "R134a", 100.0, 143.0).leak_check_months, 0);
}

TEST(ChargeDuty, MoreChargeNeverMeansRarerChecks) {
    for (const char* name : {"R134a", "R1234yf", "R513a"}) {
        int before = 1000;
        for (double kg = 0.1; kg < 1000.0; kg *= 1.1) {
            const int months = charge_duty(eu(), name, kg, kg * 1.43).leak_check_months;
            const int now = months == 0 ? 1000 : months;
            EXPECT_LE(now, before) << name << ' ' << kg;
            before = now;
        }
    }
}

class HousePlan : public ::testing::Test {
   protected:
    static void SetUpTestSuite() {
        reference_ = new Reference(test::reference());
        job_ = new Job(test::demo_job());
    }
    static void TearDownTestSuite() {
        delete reference_;
        delete job_;
    }
    static BlockModel& block_of(Reference& reference, const Job& job) {
        return *std::find_if(reference.catalogue.blocks.begin(), reference.catalogue.blocks.end(),
                             [&](const BlockModel& b) { return b.id == chosen_choice(job)->block_model; });
    }
    static Plan planned(const Job& job, const Reference& reference) {
        Options options;
        options.ranges = false;
        Result<Plan> result = plan(job, reference, options);
        EXPECT_TRUE(result.ok()) << (result.ok() ? "" : text_of(result.problems()));
        return std::move(result).value();
    }
    static const Finding* find(const Plan& plan, const std::string& code) {
        const auto at =
            std::find_if(plan.findings.begin(), plan.findings.end(), [&](const Finding& f) { return f.code == code; });
        return at == plan.findings.end() ? nullptr : &*at;
    }
    static bool due(const Plan& plan, const std::string& id) {
        return std::any_of(plan.service.begin(), plan.service.end(), [&](const ServiceDue& s) { return s.id == id; });
    }
    static Reference* reference_;
    static Job* job_;
};
Reference* HousePlan::reference_ = nullptr;
Job* HousePlan::job_ = nullptr;

TEST_F(HousePlan, LeakCheckInServiceFollowsTheCharge) {
    Plan p = planned(*job_, *reference_);  // 0.94 kg of R1234yf
    EXPECT_FALSE(due(p, "leak-check"));
    ASSERT_NE(find(p, "charge.no-leak-check"), nullptr);
    Reference more = *reference_;
    block_of(more, *job_).charge_kg = 1.05;
    p = planned(*job_, more);
    EXPECT_TRUE(due(p, "leak-check"));
    ASSERT_NE(find(p, "charge.leak-check"), nullptr);
    EXPECT_NE(find(p, "charge.leak-check")->message.find("every 12 months"), std::string::npos);
    block_of(more, *job_).charge_kg = 10.5;
    p = planned(*job_, more);
    const auto check =
        std::find_if(p.service.begin(), p.service.end(), [](const ServiceDue& s) { return s.id == "leak-check"; });
    ASSERT_NE(check, p.service.end());
    EXPECT_EQ(check->every_months, 6);
}

TEST_F(HousePlan, TestPressuresLieBetweenStandstillAndTheWeakestPart) {
    const Plan p = planned(*job_, *reference_);
    const PressureTests& t = p.pressure_tests;
    EXPECT_EQ(t.weakest_bar, std::min(p.collector.max_pressure_bar, p.block.line_max_pressure_bar));
    EXPECT_EQ(t.weakest_part, "the collector");
    EXPECT_NEAR(t.strength_bar, 1.1 * 38.0, 1e-9);
    EXPECT_EQ(t.tightness_bar, 28.0);
    EXPECT_TRUE(t.standstill_known);
    EXPECT_NEAR(t.standstill_bar, p.standstill.pressure_bar_abs - 1.01325, 1e-9);
    EXPECT_EQ(p.expected.test_pressure_bar, t.tightness_bar);
    EXPECT_EQ(p.expected.max_pressure_bar, t.weakest_bar);
    // Data that ask for less than stands in the plate at noon: the plan tests at that.
    Reference other = *reference_;
    block_of(other, *job_).test_pressure_bar = 12.0;
    const Plan low = planned(*job_, other);
    EXPECT_NE(find(low, "test-pressure.below-standstill"), nullptr);
    EXPECT_NEAR(low.pressure_tests.tightness_bar, t.standstill_bar, 1e-9);
    // And never above what the weakest part may carry.
    block_of(other, *job_).test_pressure_bar = 60.0;
    const Plan high = planned(*job_, other);
    ASSERT_NE(find(high, "test-pressure.above-allowable"), nullptr);
    EXPECT_EQ(find(high, "test-pressure.above-allowable")->severity, Severity::stop);
    EXPECT_EQ(high.pressure_tests.tightness_bar, 38.0);
}

TEST_F(HousePlan, ALiquidLineToTheCollectorCarriesTheHighSide) {
    Reference other = *reference_;
    BlockModel& block = block_of(other, *job_);
    block.expansion = ExpansionPlace::collector;
    EXPECT_EQ(find(planned(*job_, other), "pressure.liquid-line"), nullptr);
    block.max_pressure_high_bar = 45.0;
    ASSERT_NE(find(planned(*job_, other), "pressure.liquid-line"), nullptr);
}

TEST_F(HousePlan, SurveyReachesTheServices) {
    Job job = *job_;
    job.site.electrics.lightning_protection = true;
    job.site.electrics.lightning_distance_m.reset();
    const Plan p = planned(job, *reference_);
    EXPECT_NE(find(p, "lightning.distance-not-told"), nullptr);
    double top = 0.0;
    for (const PlacementPlan& placement : p.placements)
        top = std::max(top, placement.placed.highest_m);
    EXPECT_NEAR(p.services.electrical.separation_m, 0.04 * 0.66 / 0.5 * top, 1e-9);
    const auto cold = std::find_if(p.workings.begin(), p.workings.end(),
                                   [](const Working& w) { return w.key == "services.cold-inflow"; });
    ASSERT_NE(cold, p.workings.end());
    EXPECT_EQ(cold->inputs.size(), 14U);
    job.site.electrics = {};
    job.site.water = {};
    const Plan bare = planned(job, *reference_);
    EXPECT_NE(find(bare, "supply.not-told"), nullptr);
    EXPECT_NE(find(bare, "water.not-told"), nullptr);
    EXPECT_FALSE(bare.stopped());
}

TEST_F(HousePlan, JsonTellsWhatDoesNotApplyAsNull) {
    Job job = *job_;
    job.site.water = {};
    job.site.electrics = {};
    const nlohmann::json j = nlohmann::json::parse(plan_to_json(planned(job, *reference_)));
    const auto& services = j.at("services");
    EXPECT_TRUE(services.at("tap_static_bar").is_null());
    EXPECT_TRUE(services.at("hot_pipe_mm").is_null());
    EXPECT_TRUE(services.at("earth_electrode_max_ohm").is_null());
    EXPECT_TRUE(services.at("supply_checks").at(2).at("found").is_null());
    EXPECT_EQ(services.at("supply_checks").at(2).at("answer"), "not told");
    EXPECT_EQ(j.at("charge_duties").at("counted_by"), "kg");
    EXPECT_TRUE(j.at("charge_duties").at("leak_check_months").is_null());
    EXPECT_GT(j.at("pressure_tests").at("strength_bar").get<double>(), 40.0);
}

}  // namespace house_test
}  // namespace wg::plan
