#include <gtest/gtest.h>

#include <QAbstractItemModelTester>
#include <QLineEdit>
#include <QSignalSpy>
#include <QTableView>

#include "core/job/codec.h"
#include "tests/ui/common/fake_store.h"
#include "tests/ui/common/sample.h"
#include "ui/common/notice_bar.h"
#include "ui/desk/desk_page.h"
#include "ui/desk/job_table_model.h"
#include "ui/desk/new_job.h"
#include "ui/desk/next_due.h"

namespace wg::ui {
namespace {

using sample::FakeStore;

void fill(FakeStore& store, int jobs) {
    for (int i = 0; i < jobs; ++i) {
        Job job = sample::job();
        job.id = "job-" + std::to_string(10000 + i);
        job.number = "T-" + std::to_string(i);
        job.client.name = i % 2 == 0 ? "Even (invented)" : "Odd (invented)";
        store.jobs[job.id] = job;
    }
}

TEST(JobTable, keeps_the_rules_of_item_models_while_it_fetches) {
    FakeStore store;
    fill(store, 250);
    JobTableModel model(store);
    QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::Fatal);
    // Left to itself, the tester fetches in the middle of a reset and then complains of that.
    tester.setUseFetchMore(false);
    model.reload();
    EXPECT_EQ(model.rowCount(), 100);
    EXPECT_EQ(model.total(), 250);
    while (model.canFetchMore({}))
        model.fetchMore({});
    EXPECT_EQ(model.rowCount(), 250);
    model.set_query(QStringLiteral("Odd"));
    EXPECT_EQ(model.total(), 125);
    model.set_query(QStringLiteral("nobody"));
    EXPECT_EQ(model.rowCount(), 0);
}

TEST(JobTable, a_full_page_that_is_the_last_ends_the_fetching) {
    FakeStore store;
    fill(store, 100);
    JobTableModel model(store);
    model.reload();
    EXPECT_TRUE(model.canFetchMore({}));
    model.fetchMore({});
    EXPECT_FALSE(model.canFetchMore({}));
    EXPECT_EQ(model.rowCount(), 100);
}

TEST(DeskPage, the_cursor_stands_in_the_search_and_typing_narrows_the_list) {
    FakeStore store;
    fill(store, 20);
    DeskPage page(store, sample::reference());
    page.show();
    ASSERT_TRUE(QTest::qWaitFor([&] { return page.search()->hasFocus() || !page.isActiveWindow(); }));
    QTest::keyClicks(page.search(), QStringLiteral("Even"));
    EXPECT_EQ(page.table()->model()->rowCount(), 10);
    QSignalSpy open(&page, &DeskPage::open_asked);
    QTest::keyClick(page.search(), Qt::Key_Down);
    QTest::keyClick(page.search(), Qt::Key_Return);
    ASSERT_EQ(open.count(), 1);
    EXPECT_EQ(open[0][0].toString(), QStringLiteral("job-10002"));
}

TEST(DeskPage, enter_without_a_match_opens_nothing) {
    FakeStore store;
    fill(store, 2);
    DeskPage page(store, sample::reference());
    QTest::keyClicks(page.search(), QStringLiteral("nobody"));
    QSignalSpy open(&page, &DeskPage::open_asked);
    QTest::keyClick(page.search(), Qt::Key_Return);
    EXPECT_EQ(open.count(), 0);
}

TEST(DeskPage, a_removed_job_can_be_brought_back) {
    FakeStore store;
    fill(store, 3);
    DeskPage page(store, sample::reference());
    page.table()->selectRow(1);
    QTest::keyClick(page.table(), Qt::Key_Delete);
    EXPECT_EQ(store.jobs.size(), 2U);
    EXPECT_EQ(page.table()->model()->rowCount(), 2);
    Q_EMIT page.notice().step_asked();
    EXPECT_EQ(store.jobs.size(), 3U);
    EXPECT_EQ(page.table()->model()->rowCount(), 3);
}

TEST(NewJob, passes_the_rules_of_job_files) {
    const Job job = new_job(*sample::reference(), "2027-0001", Instant{1'800'000'000});
    const std::vector<Problem> problems = validate(job);
    EXPECT_TRUE(problems.empty()) << text_of(problems);
    EXPECT_EQ(job.number, "2027-0001");
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

}  // namespace
}  // namespace wg::ui
