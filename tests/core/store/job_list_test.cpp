// The desk's list narrowed and sorted, the same on both databases.

#include "core/store/job_list.h"

#include <gtest/gtest.h>

#include <map>
#include <set>

#include <algorithm>

#include "tests/core/store/store_fixture.h"

namespace wg::store::test {
namespace job_list_test {
namespace {

/// Twelve jobs of three towns and several states; each third is a demonstration, each fourth falls due.
void fill_desk(Store& store) {
    const JobState states[] = {JobState::visit, JobState::offered, JobState::in_service};
    const char* names[] = {"adler", "Brook", "caspar", "Dunn"};
    for (unsigned n = 1; n <= 12; ++n) {
        Job job = numbered_job(n);
        job.client.name = names[n % 4];
        job.client.town = n % 3 == 0 ? "Oakhill" : n % 3 == 1 ? "birch" : "Ashby";
        job.client.street = "Mill Lane " + std::to_string(n);
        job.client.postcode = "OH" + std::to_string(100 + n);
        job.client.phone = "0555 01" + std::to_string(10 + n);
        job.state = states[n % 3];
        job.invented = n % 3 == 0;
        ASSERT_TRUE(store.save(job, at(static_cast<int>(n) * 24 * 60)).ok());
        if (n % 4 != 0) continue;
        ServiceDueRow due;
        due.service_id = "look";
        due.due_on = "2028-0" + std::to_string(n / 4) + "-10";
        ASSERT_TRUE(store.set_services_due(job.id, {due}).ok());
    }
}

std::vector<std::string> numbers(const JobList& list, const JobFilter& filter, int limit = 100, int offset = 0) {
    const auto rows = list.page(filter, limit, offset);
    EXPECT_TRUE(rows.ok()) << (rows.ok() ? "" : text_of(rows.problems()));
    std::vector<std::string> out;
    if (!rows) return out;
    for (const JobRow& row : rows.value())
        out.push_back(row.number);
    EXPECT_TRUE(limit < 100 || list.count(filter).value() == static_cast<int>(out.size()));
    return out;
}

TEST_P(EachStore, TheListIsNarrowedByStateDayAndWhatFallsDue) {
    const auto store = open();
    fill_desk(*store);
    const JobList list(*store);
    EXPECT_EQ(numbers(list, {}).size(), 12U);
    EXPECT_EQ(numbers(list, {}).front(), numbered_job(12).number) << "the newest first";
    JobFilter filter;
    filter.states = {JobState::offered, JobState::visit};
    EXPECT_EQ(numbers(list, filter).size(), 8U);
    filter.without_invented = true;
    EXPECT_EQ(numbers(list, filter).size(), 4U);
    filter = {};
    filter.due_until = "2028-02-10";
    EXPECT_EQ(numbers(list, filter), (std::vector<std::string>{numbered_job(8).number, numbered_job(4).number}));
    filter = {};
    filter.changed_until = "2027-06-23";
    EXPECT_EQ(numbers(list, filter).size(), 2U);
    filter.words = "brook";
    EXPECT_EQ(numbers(list, filter).size(), 1U);
    filter.due_until = "soon";
    EXPECT_FALSE(list.page(filter, 10, 0).ok());
    EXPECT_FALSE(list.count(filter).ok());
    EXPECT_EQ(list.count({}, 5).value(), 6) << "more than five";
    EXPECT_EQ(list.count({}, 12).value(), 12);
    ASSERT_TRUE(store->remove(numbered_job(12).id, at(1)).ok());
    EXPECT_EQ(numbers(list, {}).size(), 11U);
}

TEST_P(EachStore, TheListIsSortedWhateverTheCapitalsAndPagesJoinWithoutGap) {
    const auto store = open();
    fill_desk(*store);
    const JobList list(*store);
    for (const JobOrder order :
         {JobOrder::newest, JobOrder::number, JobOrder::client, JobOrder::title, JobOrder::town, JobOrder::state}) {
        for (const bool backwards : {false, true}) {
            for (const char* words : {"", "mill"}) {
                JobFilter filter;
                filter.words = words;
                filter.order = order;
                filter.backwards = backwards;
                const std::vector<std::string> whole = numbers(list, filter);
                ASSERT_EQ(whole.size(), 12U);
                std::vector<std::string> joined;
                for (int offset = 0; offset < 12; offset += 5) {
                    const auto page = numbers(list, filter, 5, offset);
                    joined.insert(joined.end(), page.begin(), page.end());
                }
                EXPECT_EQ(joined, whole);
                filter.backwards = !backwards;
                std::vector<std::string> other = numbers(list, filter);
                std::reverse(other.begin(), other.end());
                EXPECT_EQ(other, whole) << "the other way round";
            }
        }
    }
    JobFilter filter;
    filter.order = JobOrder::client;
    const auto rows = list.page(filter, 100, 0).value();
    EXPECT_EQ(rows.front().client, "adler");
    EXPECT_EQ(rows[3].client, "Brook");
    EXPECT_EQ(rows.back().client, "Dunn");
}

TEST_P(EachStore, AddressTelephoneAndQuoteNumbersAreFound) {
    const auto store = open();
    fill_desk(*store);
    const JobList list(*store);
    const auto found = [&list](const char* words) {
        JobFilter filter;
        filter.words = words;
        return numbers(list, filter);
    };
    EXPECT_EQ(found("mill lane 7"), std::vector<std::string>{numbered_job(7).number});
    EXPECT_EQ(found("oh105"), std::vector<std::string>{numbered_job(5).number});
    EXPECT_EQ(found("0119"), std::vector<std::string>{numbered_job(9).number});
    EXPECT_TRUE(found("zq-77").empty());
    ASSERT_TRUE(
        store->issue_quote({id(0x900), numbered_job(3).id, 1, "ZQ-77-1", "2027-06-22T08:00:00Z", "{}", "", 1, "EUR"})
            .ok());
    EXPECT_EQ(found("zq-77"), std::vector<std::string>{numbered_job(3).number});
    Job job = store->load(numbered_job(3).id).value();
    job.notes = "edited";
    ASSERT_TRUE(store->save(job, at(90)).ok());
    EXPECT_EQ(found("zq-77").size(), 1U) << "and still after a save";
    EXPECT_EQ(store->list("zq-77", 10, 0).value().size(), 1U);
}

TEST_P(EachStore, WhatIsToBeDoneNextNarrowsTheListAsItsColumnSays) {
    const auto store = open();
    // Every state with every fate of its quotes, and services before, on and after the day.
    constexpr const char* today = "2027-07-15";
    const std::vector<std::vector<Answer>> fates = {
        {}, {Answer::accepted}, {Answer::declined}, {Answer::withdrawn}, {Answer::accepted, Answer::withdrawn}};
    const char* const due_days[] = {"", "2027-07-14", today, "2027-07-16"};
    unsigned n = 0;
    for (const Word<JobState>& state : words<JobState>()) {
        for (int quotes = 0; quotes < 3; ++quotes) {
            for (std::size_t fate = 0; fate < (quotes == 0 ? 1 : fates.size()); ++fate) {
                Job job = numbered_job(++n);
                job.state = state.value;
                job = store->save(job, at(1)).value();
                for (int q = 0; q < quotes; ++q) {
                    const std::string quote_id = id(0x10000 + 16 * n + static_cast<unsigned>(q));
                    // The older one was declined; the newer decides.
                    const std::string on = q + 1 < quotes ? "2027-06-30" : "2027-07-02";
                    ASSERT_TRUE(
                        store
                            ->issue_quote({quote_id, job.id, 1, "Q-" + std::to_string(n) + "-" + std::to_string(q),
                                           on + "T08:00:00Z", "{}", "", 1, "EUR"})
                            .ok());
                    const std::vector<Answer> answers = q + 1 < quotes ? std::vector{Answer::declined} : fates[fate];
                    for (std::size_t a = 0; a < answers.size(); ++a) {
                        QuoteAnswer answer;
                        answer.id = id(0x90000 + 256 * n + 16 * static_cast<unsigned>(q) + static_cast<unsigned>(a));
                        answer.quote_id = quote_id;
                        answer.answer = answers[a];
                        answer.on = "2027-07-0" + std::to_string(4 + a);
                        answer.who = "M. Lindholm";
                        ASSERT_TRUE(QuoteBook(*store).answer(answer, at(2)).ok());
                    }
                }
                ServiceDueRow due;
                due.service_id = "look";
                due.due_on = due_days[n % 4];
                if (!due.due_on.empty()) ASSERT_TRUE(store->set_services_due(job.id, {due}).ok());
            }
        }
    }
    const JobList list(*store);
    const CivilDate day = date_from_iso8601(today).value();
    const auto all = list.page({}, 1000, 0).value();
    const auto steps = list.next_steps(all, day);
    ASSERT_TRUE(steps.ok()) << text_of(steps.problems());
    ASSERT_EQ(steps.value().size(), all.size());
    std::map<NextStep, std::set<std::string>> by_step;
    for (std::size_t i = 0; i < all.size(); ++i)
        by_step[steps.value()[i].step].insert(all[i].id);
    EXPECT_EQ(by_step.size(), 9U) << "each step is somebody's";
    const auto found = [&list](const std::vector<NextStep>& wanted) {
        JobFilter filter;
        filter.steps = wanted;
        filter.today = today;
        std::set<std::string> out;
        for (const JobRow& row : list.page(filter, 1000, 0).value())
            out.insert(row.id);
        EXPECT_EQ(list.count(filter).value(), static_cast<int>(out.size()));
        return out;
    };
    for (const auto& [step, ids] : by_step)
        EXPECT_EQ(found({step}), ids) << static_cast<int>(step);
    std::set<std::string> both = by_step[NextStep::service];
    both.insert(by_step[NextStep::fit].begin(), by_step[NextStep::fit].end());
    EXPECT_EQ(found({NextStep::fit, NextStep::service}), both);
    JobFilter filter;
    filter.steps = {NextStep::service};
    EXPECT_FALSE(list.page(filter, 10, 0).ok()) << "without a day nothing is due";
    filter.today = today;
    filter.words = "lindholm";
    filter.states = {JobState::in_service};
    EXPECT_EQ(list.page(filter, 1000, 0).value().size(), by_step[NextStep::service].size())
        << "beside words and states";
    EXPECT_EQ(store->check().value(), "ok") << "the kept rows are what the rules of next_step() say";
}

TEST_P(EachStore, ViewsAreKeptUnderTheirNames) {
    const auto store = open();
    JobList list(*store);
    EXPECT_TRUE(list.views().value().empty());
    JobView waiting;
    waiting.name = "Answers to await";
    waiting.states = {JobState::offered};
    waiting.quiet_for_days = 14;
    waiting.steps = {NextStep::await_answer, NextStep::after_refusal};
    waiting.order = JobOrder::client;
    waiting.backwards = true;
    JobView due;
    due.name = "A month of services";
    due.due_within_days = 30;
    ASSERT_TRUE(list.keep_view(waiting).ok());
    ASSERT_TRUE(list.keep_view(due).ok());
    ASSERT_TRUE(list.keep_view(waiting).ok()) << "once under its name";
    EXPECT_EQ(list.views().value(), (std::vector<JobView>{due, waiting}));
    const JobFilter filter = filter_of(waiting, "brook", {2027, 3, 1});
    EXPECT_EQ(filter.changed_until, "2027-02-15");
    EXPECT_EQ(filter.steps, waiting.steps);
    EXPECT_EQ(filter.today, "2027-03-01");
    EXPECT_EQ(filter_of(due, "", {2028, 2, 10}).due_until, "2028-03-11") << "2028 has a 29 February";
    ASSERT_TRUE(list.drop_view("A month of services").ok());
    EXPECT_EQ(list.views().value(), std::vector<JobView>{waiting});
    EXPECT_FALSE(list.keep_view({}).ok());
    ASSERT_TRUE(store->set_setting("desk.views", R"([{"name":"x","states":["asleep"]}])").ok());
    EXPECT_FALSE(list.views().ok());
    EXPECT_FALSE(list.drop_view("x").ok());
    EXPECT_FALSE(list.views().ok()) << "what cannot be read stays";
    ASSERT_TRUE(list.drop_all_views().ok());
    EXPECT_TRUE(list.views().value().empty());
}

}  // namespace
}  // namespace job_list_test
}  // namespace wg::store::test
