// A collector with the coefficients of a test (ISO 9806:2017) from the catalogue to the year, and how collectors are
// joined.

#include <gtest/gtest.h>

#include <algorithm>

#include "core/plan/plan.h"
#include "core/plan/study_factors.h"
#include "tests/tools/load_reference.h"

namespace wg::plan {
namespace {

class TestedCollector : public ::testing::Test {
   protected:
    static void SetUpTestSuite() { reference_ = new Reference(test::reference()); }
    static void TearDownTestSuite() { delete reference_; }
    static Job job_with(const std::string& collector_id, Joined joined = Joined::parallel) {
        Job job = test::demo_job();
        const std::string id = chosen_choice(job)->id;
        for (Choice& choice : job.choices) {
            if (choice.id != id) continue;
            choice.collector_model = collector_id;
            choice.joined = joined;
        }
        return job;
    }
    static Plan planned(const Job& job, const Reference& reference) {
        Options options;
        options.ranges = false;
        Result<Plan> result = plan(job, reference, options);
        EXPECT_TRUE(result.ok()) << (result.ok() ? "" : text_of(result.problems()));
        return std::move(result).value();
    }
    static Reference* reference_;
};
Reference* TestedCollector::reference_ = nullptr;

// Its coefficients are those of the Marl 18 fitted over a weather grid
// (tests/core/heatpump/plate_coefficients_test.cpp).
TEST_F(TestedCollector, of_the_catalogue_gives_the_year_of_its_kin_by_first_principles) {
    const Plan kin = planned(job_with("marl-18"), *reference_);
    const Plan tested = planned(job_with("marl-18t"), *reference_);
    ASSERT_TRUE(kin.has_yield && tested.has_yield);
    EXPECT_NEAR(tested.season.total.electricity_kwh() / kin.season.total.electricity_kwh(), 1.0, 0.03);
    EXPECT_NE(tested.season.total.electricity_kwh(), kin.season.total.electricity_kwh());
    EXPECT_LT(tested.season.closure_circuit, 1e-6);
    EXPECT_LT(tested.season.closure_water, 1e-6);
    // Far over the air losses grow faster than the line fitted near it: standstill comes out hotter, on the safe side.
    EXPECT_GT(tested.standstill.plate_c, kin.standstill.plate_c);
    EXPECT_LT(tested.standstill.plate_c, kin.standstill.plate_c + 15.0);
    EXPECT_TRUE(std::none_of(tested.findings.begin(), tested.findings.end(),
                             [](const Finding& f) { return f.severity == Severity::stop; }));
    EXPECT_TRUE(std::any_of(tested.workings.begin(), tested.workings.end(), [](const Working& w) {
        return w.source.find("ISO 9806:2017") != std::string::npos && w.source.find("10 m/s") != std::string::npos;
    }));
}

TEST_F(TestedCollector, that_reflects_slanting_light_needs_more_electricity) {
    Reference shiny = *reference_;
    for (CollectorModel& c : shiny.catalogue.collectors)
        if (c.iso9806) {
            c.iso9806->incidence_b0 = 0.3;
            c.iso9806->diffuse = 0.85;
        }
    const double plain = planned(job_with("marl-18t"), *reference_).season.total.electricity_kwh();
    EXPECT_GT(planned(job_with("marl-18t"), shiny).season.total.electricity_kwh(), 1.005 * plain);
}

TEST_F(TestedCollector, in_series_needs_more_electricity_than_in_parallel_for_its_pressure_drop) {
    const double parallel = planned(job_with("marl-18t"), *reference_).season.total.electricity_kwh();
    const double series = planned(job_with("marl-18t", Joined::series), *reference_).season.total.electricity_kwh();
    EXPECT_GT(series, parallel + 1.0);
    EXPECT_LT(series, 1.1 * parallel);
}

TEST_F(TestedCollector, follows_a_studys_factors_of_the_plate_and_stays_usable) {
    detail::Member nominal;
    nominal.input.collector = *find_collector(reference_->catalogue, "marl-18t");
    const Iso9806 before = *nominal.input.collector.iso9806;
    int moved = 0;
    for (const detail::FactorRule& rule : detail::factor_rules(nominal, false)) {
        for (const double probability : {0.005, 0.1, 0.9, 0.995}) {
            detail::Member member = nominal;
            rule.apply(member, rule.value(probability));
            const Iso9806& after = *member.input.collector.iso9806;
            EXPECT_TRUE(faults_of(after, 1.0, Iso9806::moved_slack).empty()) << rule.factor.key;
            if (rule.factor.key == "absorptance") {
                EXPECT_NE(after.zero_loss, before.zero_loss);
            } else if (rule.factor.key == "emittance") {
                EXPECT_NE(after.a4, before.a4);
            } else if (rule.factor.key == "rear") {
                EXPECT_NE(after.a3, before.a3);
            } else {
                EXPECT_EQ(after, before) << rule.factor.key;
                continue;
            }
            ++moved;
        }
    }
    EXPECT_EQ(moved, 12);
}

}  // namespace
}  // namespace wg::plan
