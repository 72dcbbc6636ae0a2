#include <gtest/gtest.h>

#include <cmath>

#include "core/job/codec.h"

namespace {

using namespace wg;

Demand asking_for_all() {
    Demand d;
    d.draw_source = DrawSource::household;
    d.household = {3, 42.0, DayRhythm::evening, 1.25, true, 17, R"({"pets":2})"};
    d.holidays = {{12, 24, 1, 2, ""}};
    d.control.run_windows = {{22.0, 6.0, true, false, R"({"why":"tariff"})"}};
    d.control.surplus.peak_kw = 6.5;
    d.control.holiday_rule = HolidayRule::frost_safe;
    d.control.back_up = BackUpRule::below_wanted;
    d.tariff.low_windows = {{13.0, 15.5, true, true, ""}};
    d.recirculation = {true, 95.0, {{6.0, 9.0, true, true, ""}}, ""};
    d.hygiene = {HygieneRule::weekly, 62.0, 20.0, 2, 1.5, HygieneSource::immersion, ""};
    return d;
}

std::string job_with_demand(const std::string& demand) {
    return R"({"format":"warmgable-job","schema":1,"id":"00000000-0000-4000-8000-000000000001","demand":)" + demand +
           "}";
}

TEST(HouseholdOnFile, comes_back_as_it_was_with_fields_of_newer_programs) {
    Job job;
    job.id = "00000000-0000-4000-8000-000000000001";
    job.demand = asking_for_all();
    const auto read = job_from_json(job_to_json(job), "j");
    ASSERT_TRUE(read.ok()) << text_of(read.problems());
    EXPECT_EQ(read.value().demand, job.demand);
    EXPECT_EQ(content_sha256(read.value()), content_sha256(job));
}

TEST(HouseholdOnFile, a_job_that_asks_for_nothing_keeps_its_text) {
    Job job;
    job.id = "00000000-0000-4000-8000-000000000001";
    const std::string text = job_to_json(job);
    for (const char* key : {"draw_source", "household", "holidays", "control", "tariff", "recirculation", "hygiene"})
        EXPECT_EQ(text.find(std::string("\"") + key + "\":"), std::string::npos) << key;
    const auto told = job_from_json(job_with_demand(R"({"household":{},"control":{"surplus":{}},"holidays":[]})"), "j");
    ASSERT_TRUE(told.ok());
    EXPECT_EQ(content_sha256(told.value()), content_sha256(job)) << "defaults told are defaults";
}

TEST(HouseholdOnFile, bad_values_are_refused_with_their_place) {
    const std::pair<const char*, const char*> cases[] = {
        {R"({"draw_source":"people"})", "demand.draw_source"},
        {R"({"household":{"persons":0}})", "demand.household.persons"},
        {R"({"household":{"persons":99999999999999999999}})", "demand.household.persons"},
        {R"({"household":{"litres_40_per_person":1e300}})", "demand.household.litres_40_per_person"},
        {R"({"household":[]})", "demand.household"},
        {R"({"holidays":[{"from_month":2,"from_day":30}]})", "demand.holidays[0].from_day"},
        {R"({"holidays":[{"from_month":13}]})", "demand.holidays[0].from_month"},
        {R"({"control":{"run_windows":[{"from_h":-1}]}})", "demand.control.run_windows[0].from_h"},
        {R"({"control":{"run_windows":7}})", "demand.control.run_windows"},
        {R"({"control":{"surplus":{"threshold_w":0}}})", "demand.control.surplus.threshold_w"},
        {R"({"control":{"back_up":null}})", "demand.control.back_up"},
        {R"({"tariff":{"low_minor_kwh":-5}})", "demand.tariff.low_minor_kwh"},
        {R"({"recirculation":{"loss_w":5000}})", "demand.recirculation.loss_w"},
        {R"({"hygiene":{"target_c":90}})", "demand.hygiene.target_c"},
        {R"({"hygiene":{"weekday":2.5}})", "demand.hygiene.weekday"},
    };
    for (const auto& [demand, place] : cases) {
        const auto read = job_from_json(job_with_demand(demand), "j");
        ASSERT_FALSE(read.ok()) << demand;
        EXPECT_NE(text_of(read.problems()).find(place), std::string::npos) << text_of(read.problems());
    }
    std::string many = R"({"control":{"set_back_windows":[{})";
    for (int i = 0; i < 30; ++i)
        many += ",{}";
    EXPECT_FALSE(job_from_json(job_with_demand(many + "]}}"), "j").ok()) << "too many windows";
}

TEST(HouseholdOnFile, a_job_in_memory_is_held_against_the_same_rules) {
    Job job;
    job.id = "00000000-0000-4000-8000-000000000001";
    job.demand = asking_for_all();
    EXPECT_TRUE(validate(job).empty()) << text_of(validate(job));
    job.demand.hygiene.hold_min = std::nan("");
    job.demand.holidays[0].to_day = 32;
    EXPECT_EQ(validate(job).size(), 2u);
}

}  // namespace
