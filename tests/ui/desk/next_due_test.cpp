// What is to be done next with a job, and the job that is started fresh.

#include <gtest/gtest.h>

#include "core/job/codec.h"
#include "tests/ui/desk/desks.h"
#include "ui/desk/new_job.h"
#include "ui/desk/next_due.h"

namespace wg::ui {
namespace next_due_test {

TEST(NewJob, passes_the_rules_of_job_files) {
    const Job job = new_job(*sample::reference(), "2027-0001", Instant{1'800'000'000});
    const std::vector<Problem> problems = validate(job);
    EXPECT_TRUE(problems.empty()) << text_of(problems);
    EXPECT_EQ(job.number, "2027-0001");
    EXPECT_EQ(job.site.location.place_name, "") << "where a weather year was made is not where the client lives";
    EXPECT_NE(job.id, new_job(*sample::reference(), "2027-0001", Instant{1'800'000'000}).id);
}

TEST(NextDue, service_is_counted_from_the_last_reading_by_the_rule_set) {
    Job job = sample::job();
    job.state = JobState::in_service;
    job.rule_set = "rules";
    Reading reading;
    reading.taken_at = "2027-06-21T12:00:00Z";
    job.record = {reading};
    plan::Reference reference = *sample::reference();
    plan::RuleSet rules;
    rules.service = {{"tank", "Look at the anode", 24, "anode", ""}, {"all", "Service", 18, "always", ""}};
    reference.rule_sets["rules"] = rules;
    const NextDue due = next_due(job, {}, reference, QDate(2028, 1, 1));
    EXPECT_EQ(due.on, QDate(2028, 12, 21));
    EXPECT_FALSE(due.overdue);
    EXPECT_TRUE(next_due(job, {}, reference, QDate(2029, 1, 1)).overdue);
}

TEST(NextDue, every_state_has_a_next_step) {
    Job job = sample::job();
    for (const JobState state : {JobState::visit, JobState::planning, JobState::offered, JobState::accepted,
                                 JobState::fitted, JobState::in_service, JobState::closed}) {
        job.state = state;
        EXPECT_FALSE(next_due(job, {}, *sample::reference(), QDate(2027, 1, 1)).text.isEmpty());
    }
}

TEST(NextDue, an_answer_is_due_thirty_days_after_the_newest_quote) {
    Job job = sample::job();
    job.state = JobState::offered;
    store::IssuedQuote older;
    older.issued_at = "2027-01-01T12:00:00Z";
    store::IssuedQuote newer;
    newer.issued_at = "2027-02-01T12:00:00Z";
    EXPECT_EQ(next_due(job, {newer, older}, *sample::reference(), QDate(2027, 2, 2)).on, QDate(2027, 3, 3));
}

}  // namespace next_due_test
}  // namespace wg::ui
