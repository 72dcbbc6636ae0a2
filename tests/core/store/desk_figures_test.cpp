// The year in figures, counted by hand.

#include "core/store/desk_figures.h"

#include <gtest/gtest.h>

#include <numeric>

#include "core/store/quote_book.h"
#include "tests/core/store/store_fixture.h"

namespace wg::store::test {
namespace desk_figures_test {
namespace {

void quote(Store& store, const Job& job, unsigned n, const std::string& on, std::int64_t gross, const char* heat) {
    IssuedQuote issued{id(0x900 + n),
                       job.id,
                       1,
                       "Q-" + std::to_string(n),
                       on + "T08:00:00Z",
                       std::string(R"({"figures":{"heat_kwh":)") + heat + "}}",
                       "",
                       gross,
                       "EUR"};
    ASSERT_TRUE(QuoteBook(store).issue(issued, "%PDF-1.7 x", at(1)).ok());
}

void answer(Store& store, unsigned n, unsigned of_quote, Answer what, const std::string& on) {
    QuoteAnswer given;
    given.id = id(0xA00 + n);
    given.quote_id = id(0x900 + of_quote);
    given.answer = what;
    given.on = on;
    given.who = "Client";
    const auto entered = QuoteBook(store).answer(given, at(2));
    ASSERT_TRUE(entered.ok()) << text_of(entered.problems());
}

TEST_P(EachStore, TheYearInFiguresIsWhatWasDone) {
    const auto store = open();
    std::vector<Job> jobs;
    for (unsigned n = 1; n <= 5; ++n) {
        Job job = numbered_job(n);
        job.invented = n == 5;
        job.state = n <= 2 ? JobState::offered : JobState::in_service;
        jobs.push_back(store->save(job, at(1)).value());
    }
    // Job 1: two revisions, the second accepted the month after. Job 2: one that nobody answered. Job 3: declined,
    // without a yearly figure. Job 4: of the year before, accepted in this one. Job 5: a demonstration.
    quote(*store, jobs[0], 1, "2027-03-10", 800'000, R"({"mid":3400.0})");
    quote(*store, jobs[0], 2, "2027-03-20", 750'050, R"({"mid":3300.5})");
    answer(*store, 1, 2, Answer::accepted, "2027-04-02");
    quote(*store, jobs[1], 3, "2027-05-01", 500'000, R"({"mid":2000.0})");
    quote(*store, jobs[2], 4, "2027-05-02", 600'000, "null");
    answer(*store, 2, 4, Answer::declined, "2027-05-20");
    quote(*store, jobs[3], 5, "2026-12-20", 400'000, R"({"mid":1000.0})");
    answer(*store, 3, 5, Answer::accepted, "2027-01-05");
    quote(*store, jobs[4], 6, "2027-05-03", 999'999, R"({"mid":9999.0})");
    ServiceDueRow due;
    due.service_id = "look";
    due.due_on = "2027-11-30";
    ASSERT_TRUE(store->set_services_due(jobs[3].id, {due}).ok());
    due.due_on = "2028-01-01";
    ASSERT_TRUE(store->set_services_due(jobs[2].id, {due}).ok());

    const auto counted = desk_figures(*store, 2027, false);
    ASSERT_TRUE(counted.ok()) << text_of(counted.problems());
    const DeskFigures& year = counted.value();
    EXPECT_EQ(year.by_state, (std::map<JobState, int>{{JobState::offered, 2}, {JobState::in_service, 2}}));
    EXPECT_EQ(year.quotes_open, 1);
    EXPECT_EQ(year.quotes_issued[2], 2);
    EXPECT_EQ(year.quotes_issued[4], 2);
    EXPECT_EQ(std::accumulate(year.quotes_issued.begin(), year.quotes_issued.end(), 0), 4);
    EXPECT_EQ(year.quotes_accepted[3], 1);
    EXPECT_EQ(year.quotes_accepted[0], 1);
    EXPECT_EQ(year.accepted_minor, (std::map<std::string, std::int64_t>{{"EUR", 1'150'050}}));
    EXPECT_DOUBLE_EQ(year.heat_offered_kwh[2], 3300.5) << "the newest quote of the job counts";
    EXPECT_DOUBLE_EQ(year.heat_accepted_kwh[3], 3300.5);
    EXPECT_DOUBLE_EQ(year.heat_accepted_kwh[0], 1000.0);
    EXPECT_EQ(year.without_heat, 1);
    EXPECT_EQ(year.services_due[10], 1);
    EXPECT_EQ(std::accumulate(year.services_due.begin(), year.services_due.end(), 0), 1);
    EXPECT_EQ(counted.value().left_out, 1);
    EXPECT_EQ(desk_figures(*store, 2027, true).value().left_out, 0);
    EXPECT_EQ(desk_figures(*store, 2027, true).value().quotes_open, 2);
    ASSERT_TRUE(store->remove(jobs[1].id, at(3)).ok());
    EXPECT_EQ(desk_figures(*store, 2027, false).value().quotes_open, 0);
    EXPECT_FALSE(desk_figures(*store, 12, false).ok());

    // The client of job 1 accepts a third quote in place of the second: one order, not two.
    quote(*store, jobs[0], 7, "2027-06-01", 700'000, "null");
    answer(*store, 4, 7, Answer::accepted, "2027-06-10");
    const DeskFigures changed = desk_figures(*store, 2027, false).value();
    EXPECT_EQ(changed.quotes_accepted[3], 0);
    EXPECT_EQ(changed.quotes_accepted[5], 1);
    EXPECT_EQ(changed.accepted_minor.at("EUR"), 700'000 + 400'000);
    EXPECT_DOUBLE_EQ(changed.heat_accepted_kwh[3], 0.0);
    EXPECT_EQ(changed.accepted_without_heat, 1);
}

}  // namespace
}  // namespace desk_figures_test
}  // namespace wg::store::test
