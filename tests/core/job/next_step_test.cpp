#include "core/job/next_step.h"

#include <gtest/gtest.h>

namespace wg {
namespace next_step_test {

constexpr const char* today = "2027-06-21";

JobStanding standing(JobState state) {
    JobStanding out;
    out.state = state;
    out.reached_on = "2027-06-01";
    return out;
}

TEST(NextStepOfJob, FollowsTheStateWhereNoQuoteIsOut) {
    EXPECT_EQ(next_step(standing(JobState::visit), today), (NextStepOfJob{NextStep::survey, "2027-06-01"}));
    EXPECT_EQ(next_step(standing(JobState::planning), today), (NextStepOfJob{NextStep::plan, "2027-06-01"}));
    EXPECT_EQ(next_step(standing(JobState::offered), today), (NextStepOfJob{NextStep::send_quote, "2027-06-01"}));
    EXPECT_EQ(next_step(standing(JobState::accepted), today), (NextStepOfJob{NextStep::fit, "2027-06-01"}));
    EXPECT_EQ(next_step(standing(JobState::fitted), today), (NextStepOfJob{NextStep::hand_over, "2027-06-01"}));
    EXPECT_EQ(next_step(standing(JobState::in_service), today), (NextStepOfJob{NextStep::nothing, ""}));
    EXPECT_EQ(next_step(standing(JobState::closed), today), (NextStepOfJob{NextStep::nothing, ""}));
}

TEST(NextStepOfJob, FollowsTheNewestQuoteWhilePlannedOrOffered) {
    for (const JobState state : {JobState::planning, JobState::offered}) {
        JobStanding one = standing(state);
        one.quoted_on = "2027-06-05";
        EXPECT_EQ(next_step(one, today), (NextStepOfJob{NextStep::await_answer, "2027-06-05"}));
        one.answered_on = "2027-06-10";
        one.answer = "accepted";
        EXPECT_EQ(next_step(one, today), (NextStepOfJob{NextStep::fit, "2027-06-10"}));
        one.answer = "declined";
        EXPECT_EQ(next_step(one, today), (NextStepOfJob{NextStep::after_refusal, "2027-06-10"}));
        one.answer = "withdrawn";
        EXPECT_EQ(next_step(one, today), (NextStepOfJob{NextStep::send_quote, "2027-06-10"}));
    }
    JobStanding accepted = standing(JobState::accepted);
    accepted.quoted_on = "2027-06-05";
    accepted.answer = "accepted";
    accepted.answered_on = "2027-06-10";
    EXPECT_EQ(next_step(accepted, today).since, "2027-06-10");
    JobStanding visit = standing(JobState::visit);
    visit.quoted_on = "2027-06-05";
    EXPECT_EQ(next_step(visit, today).step, NextStep::survey) << "measured again: the state says so";
}

TEST(NextStepOfJob, AServiceIsDueOnItsDay) {
    JobStanding one = standing(JobState::in_service);
    one.service_due_on = "2027-06-22";
    EXPECT_EQ(next_step(one, today), (NextStepOfJob{NextStep::nothing, "2027-06-22"}));
    one.service_due_on = today;
    EXPECT_EQ(next_step(one, today), (NextStepOfJob{NextStep::service, today}));
    one.service_due_on = "2026-01-31";
    EXPECT_EQ(next_step(one, today), (NextStepOfJob{NextStep::service, "2026-01-31"}));
    one.state = JobState::closed;
    EXPECT_EQ(next_step(one, today).step, NextStep::nothing);
}

TEST(NextStepOfJob, SaysWhoHasToAct) {
    EXPECT_EQ(waits_for(NextStep::await_answer), WaitsFor::client);
    EXPECT_EQ(waits_for(NextStep::nothing), WaitsFor::nobody);
    for (const NextStep step : {NextStep::survey, NextStep::plan, NextStep::send_quote, NextStep::after_refusal,
                                NextStep::fit, NextStep::hand_over, NextStep::service})
        EXPECT_EQ(waits_for(step), WaitsFor::firm);
}

}  // namespace next_step_test
}  // namespace wg
