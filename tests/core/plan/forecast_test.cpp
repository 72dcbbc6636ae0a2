// What the plan foretells of the day, and what it says of the record.
#include <gtest/gtest.h>

#include <algorithm>

#include "core/job/record_chain.h"
#include "core/plan/plan.h"
#include "tests/tools/load_reference.h"

namespace wg::plan {
namespace forecast_test {

int count_of(const Plan& plan, const std::string& code) {
    return static_cast<int>(std::count_if(plan.findings.begin(), plan.findings.end(),
                                          [&](const Finding& finding) { return finding.code == code; }));
}

Plan quick_plan(const Job& job) {
    Options options;
    options.yield = options.ranges = options.keep_hours = false;
    return plan(job, test::reference(), options).value();
}

class Forecast : public ::testing::Test {
   protected:
    static const Plan& full() {
        static const Plan made = [] {
            Options options;
            options.ranges = options.keep_hours = false;
            return plan(test::demo_job(), test::reference(), options).value();
        }();
        return made;
    }
};

TEST_F(Forecast, has_twelve_months_in_a_full_plan_and_none_in_a_quick_one) {
    ASSERT_EQ(full().forecasts.size(), 12U);
    EXPECT_TRUE(quick_plan(test::demo_job()).forecasts.empty());
    for (const commissioning::MonthForecast& f : full().forecasts) {
        EXPECT_FALSE(f.bands.empty()) << f.month;
        for (const commissioning::Band& band : f.bands) {
            EXPECT_LT(band.low, band.mid) << f.month << band.label;
            EXPECT_LT(band.mid, band.high) << f.month << band.label;
            EXPECT_FALSE(band.read);
        }
        EXPECT_LE(f.hours_low, f.hours_mid) << f.month;
        if (f.hours_high > 0.0) EXPECT_LE(f.hours_mid, f.hours_high) << f.month;
    }
}

// The demonstration lies in the north: July is warmer and brighter than January, its water less cold, so the first
// heating takes less time and the suction pressure is higher.
TEST_F(Forecast, summer_heats_sooner_than_winter) {
    const auto& january = full().forecasts[0];
    const auto& july = full().forecasts[6];
    EXPECT_GT(july.air_c, january.air_c + 5.0);
    EXPECT_GT(july.light_w_m2, january.light_w_m2);
    EXPECT_GT(july.water_from_c, january.water_from_c);
    ASSERT_GT(january.hours_mid, 0.0);
    EXPECT_LT(july.hours_mid, january.hours_mid);
    EXPECT_GT(july.bands[1].mid, january.bands[1].mid);
}

// Heat into the water cannot take more than the hours and the pump's own figure allow: 200 to 300 l from 10 to 55 deg C
// are 10 to 16 kWh, at 1 to 4 kW some 3 to 16 hours (m c dT).
TEST_F(Forecast, hours_are_of_the_size_that_heat_and_power_ask) {
    for (const commissioning::MonthForecast& f : full().forecasts) {
        if (!(f.hours_mid > 0.0)) continue;
        EXPECT_GT(f.hours_mid, 1.0) << f.month;
        EXPECT_LT(f.hours_mid, 30.0) << f.month;
    }
}

TEST(RecordFindings, broken_chain_is_a_caution_and_another_mark_a_note) {
    Job job = test::demo_job();
    const Plan before = quick_plan(job);
    for (int i = 0; i < 3; ++i) {
        Reading r;
        r.id = "r" + std::to_string(i);
        r.kind = ReadingKind::supply_current;
        r.value = 3.0;
        r.taken_at = "2027-04-01T10:00:00Z";
        r.plan_mark = before.plan_mark;
        r.plan_revision = 7;
        job.record.push_back(chained(r, job.record));
    }
    EXPECT_EQ(count_of(quick_plan(job), "record.chain"), 0);
    EXPECT_EQ(count_of(quick_plan(job), "record.plan-changed"), 0) << "the record is no part of what is marked";

    Job altered = job;
    altered.record[1].value = 2.0;
    const Plan found = quick_plan(altered);
    EXPECT_EQ(count_of(found, "record.chain"), 1);
    EXPECT_EQ(found.stopped(), before.stopped()) << "it stops nothing";

    job.demand.set_point_c -= 3.0;
    const Plan changed = quick_plan(job);
    ASSERT_EQ(count_of(changed, "record.plan-changed"), 1);
    const auto note = std::find_if(changed.findings.begin(), changed.findings.end(),
                                   [](const Finding& f) { return f.code == "record.plan-changed"; });
    EXPECT_EQ(note->severity, Severity::note);
    EXPECT_NE(note->message.find(before.plan_mark), std::string::npos);
    EXPECT_NE(note->message.find(changed.plan_mark), std::string::npos);
    EXPECT_NE(note->message.find("revision 7"), std::string::npos);
}

TEST(RecordFindings, service_verdicts_stand_beside_those_of_the_installation) {
    Job job = test::demo_job();
    Reading r;
    r.id = "s";
    r.kind = ReadingKind::supply_voltage;
    r.value = 180.0;
    r.taken_at = "2028-04-01T10:00:00Z";
    r.occasion = Occasion::service;
    job.record.push_back(r);
    const Plan plan = quick_plan(job);
    EXPECT_TRUE(plan.assessments.empty());
    ASSERT_EQ(plan.service_assessments.size(), 1U);
    EXPECT_EQ(plan.service_assessments[0].verdict, commissioning::Verdict::failed);
}

}  // namespace forecast_test
}  // namespace wg::plan
