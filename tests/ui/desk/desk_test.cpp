#include <gtest/gtest.h>

#include <QAbstractItemModelTester>
#include <QAction>
#include <QComboBox>
#include <QDateEdit>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QMenu>
#include <QPushButton>
#include <QSignalSpy>
#include <QSpinBox>
#include <QTabWidget>
#include <QTableView>
#include <QTableWidget>

#include "core/job/codec.h"
#include "core/store/state_days.h"
#include "tests/ui/common/fake_store.h"
#include "tests/ui/common/sample.h"
#include "ui/common/format.h"
#include "ui/common/notice_bar.h"
#include "ui/customers/customers_page.h"
#include "ui/desk/desk_page.h"
#include "ui/desk/due_groups.h"
#include "ui/desk/figures_page.h"
#include "ui/desk/job_preview.h"
#include "ui/desk/job_table_model.h"
#include "ui/desk/list_filter.h"
#include "ui/desk/new_job.h"
#include "ui/desk/next_due.h"
#include "ui/desk/register_form.h"
#include "ui/desk/register_page.h"
#include "ui/desk/services_page.h"

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

/// A real store with jobs of every state.
std::unique_ptr<store::Store> real_desk(int jobs) {
    auto store = store::Store::open(":memory:", Instant{1'800'000'000}).value();
    for (int i = 0; i < jobs; ++i) {
        Job job = sample::job();
        job.id = "00000000-0000-4000-8000-000000000" + std::to_string(500 + i);
        job.number = "T-" + std::to_string(100 + i);
        job.client.name = i % 2 == 0 ? "adler" : "Brook";
        job.state = static_cast<JobState>(i % 3);
        job.revision = 0;
        job.invented = false;
        EXPECT_TRUE(store->save(job, Instant{1'800'000'000 + i}).ok());
    }
    return store;
}

TEST(DeskPage, the_list_is_narrowed_by_state_sorted_by_its_header_and_kept_as_a_view) {
    const auto store = real_desk(9);
    DeskPage page(*store, sample::reference());
    page.show();
    const auto number_at = [&page](int row) { return page.table()->model()->index(row, 0).data().toString(); };
    EXPECT_EQ(number_at(0), QStringLiteral("T-108"));
    page.filter()->state_action(JobState::planning)->setChecked(true);
    EXPECT_EQ(page.table()->model()->rowCount(), 3);
    page.table()->horizontalHeader()->setSortIndicator(JobTableModel::number_column, Qt::AscendingOrder);
    EXPECT_EQ(number_at(0), QStringLiteral("T-101"));
    page.filter()->keep(QStringLiteral("In planning"));
    Q_EMIT page.filter()->views_menu()->aboutToShow();
    page.filter()->show_view({});
    EXPECT_EQ(page.table()->model()->rowCount(), 9);
    EXPECT_EQ(number_at(0), QStringLiteral("T-108")) << "the newest first again";
    page.table()->horizontalHeader()->setSortIndicator(JobTableModel::client_column, Qt::AscendingOrder);
    EXPECT_EQ(page.table()->model()->index(0, 1).data().toString(), QStringLiteral("adler"));
    Q_EMIT page.filter()->views_menu()->aboutToShow();
    for (QAction* action : page.filter()->views_menu()->actions()) {
        if (action->text() == QStringLiteral("In planning")) action->trigger();
    }
    EXPECT_EQ(page.table()->model()->rowCount(), 3);
    EXPECT_EQ(number_at(0), QStringLiteral("T-101"));
    page.search()->setText(QStringLiteral("brook"));
    EXPECT_EQ(page.table()->model()->rowCount(), 2) << "words and view together";
    page.filter()->due()->setCurrentIndex(1);
    EXPECT_EQ(page.table()->model()->rowCount(), 0);
}

TEST(DeskPage, a_job_stays_selected_when_customers_were_erased) {
    const auto store = real_desk(3);
    DeskPage page(*store, sample::reference());
    page.show();
    page.table()->selectRow(1);
    page.findChild<QTabWidget*>()->setCurrentIndex(4);
    ASSERT_NE(page.customers(), nullptr);
    Q_EMIT page.customers()->jobs_changed();
    QCoreApplication::processEvents();
    EXPECT_EQ(page.table()->currentIndex().row(), 1);
    QSignalSpy open(&page, &DeskPage::open_asked);
    Q_EMIT page.table()->activated(page.table()->currentIndex());
    ASSERT_EQ(open.count(), 1);
    EXPECT_FALSE(open[0][0].toString().isEmpty());
}

TEST(DeskPage, a_serial_number_and_an_item_that_is_called_back_lead_to_the_jobs) {
    const auto store = real_desk(3);
    Job job = store->load("00000000-0000-4000-8000-000000000501").value();
    job.state = JobState::in_service;
    Reading entry;
    entry.id = "00000000-0000-4000-8000-00000000e001";
    entry.kind = ReadingKind::serial_number;
    entry.taken_at = "2027-01-15T10:00:00Z";
    entry.subject = "block";
    entry.note = "RQ-4711";
    job.record = {entry};
    job = store->save(job, Instant{1'800'100'000}).value();
    const Choice* choice = chosen_choice(job);
    ASSERT_NE(choice, nullptr);
    const auto reference = sample::reference();
    auto named = std::make_shared<plan::Reference>(*reference);
    for (BlockModel& one : named->catalogue.blocks)
        one.name = "Quay 20";
    const std::string block = "Quay 20";
    DeskPage page(*store, named);
    page.show();
    page.search()->setText(QStringLiteral("rq-47"));
    ASSERT_EQ(page.table()->model()->rowCount(), 1);
    EXPECT_EQ(page.table()->model()->index(0, 0).data().toString(), QStringLiteral("T-101"));
    page.search()->clear();
    Q_EMIT page.filter()->items_menu()->aboutToShow();
    bool offered = false;
    for (QAction* action : page.filter()->items_menu()->actions()) {
        if (action->text() != qs(block) + QStringLiteral(", 1 job")) continue;
        offered = true;
        action->trigger();
        break;
    }
    ASSERT_TRUE(offered) << block;
    EXPECT_EQ(page.table()->model()->rowCount(), 1);
    EXPECT_EQ(page.filter()->chosen().item_id, choice->block_model);
    const auto list = static_cast<JobTableModel*>(page.table()->model())->whole_list();
    ASSERT_TRUE(list.ok());
    EXPECT_EQ(list.value().header.last(), QStringLiteral("Serial numbers"));
    EXPECT_EQ(list.value().rows.at(0).last(), QStringLiteral("RQ-4711"));
    page.filter()->show_view({});
    EXPECT_EQ(page.table()->model()->rowCount(), 3);
}

TEST(DeskPage, the_preview_tells_since_when_a_job_is_in_its_state) {
    const auto store = real_desk(1);
    Job job = store->load("00000000-0000-4000-8000-000000000500").value();
    job.state = JobState::offered;
    job = store->save(job, instant_from_iso8601("2027-03-09T10:00:00Z").value()).value();
    job.notes = "typed later";
    ASSERT_TRUE(store->save(job, instant_from_iso8601("2027-04-01T10:00:00Z").value()).ok());
    JobPreview preview;
    preview.show_job(job, {}, store::StateDays(*store).of(job.id).value());
    const auto labels = preview.findChildren<QLabel*>();
    const auto state = std::find_if(labels.begin(), labels.end(), [](const QLabel* label) {
        return label->text() == QStringLiteral("State: offered since %1").arg(day("2027-03-09"));
    });
    ASSERT_NE(state, labels.end());
    EXPECT_EQ((*state)->toolTip().count(QLatin1Char('\n')), 1) << "a line for each state";
}

TEST(JobTable, a_narrowed_list_keeps_the_rules_of_item_models_while_it_fetches) {
    const auto store = real_desk(250);
    JobTableModel model(*store);
    QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::Fatal);
    tester.setUseFetchMore(false);
    model.reload();
    model.sort(JobTableModel::number_column, Qt::DescendingOrder);
    EXPECT_EQ(model.rowCount(), 100);
    while (model.canFetchMore({}))
        model.fetchMore({});
    EXPECT_EQ(model.rowCount(), 250);
    EXPECT_EQ(model.index(249, 0).data().toString(), QStringLiteral("T-100"));
    const auto list = model.whole_list();
    ASSERT_TRUE(list.ok());
    ASSERT_EQ(list.value().rows.size(), 250U);
    EXPECT_EQ(list.value().rows.front().front(), QStringLiteral("T-349")) << "in the order on screen";
}

TEST(FiguresPage, tells_the_year_in_words_pictures_and_a_table) {
    const auto store = real_desk(6);
    store::IssuedQuote quote{"00000000-0000-4000-8000-000000000900",
                             "00000000-0000-4000-8000-000000000500",
                             1,
                             "Q-1",
                             "2027-03-10T08:00:00Z",
                             R"({"figures":{"heat_kwh":{"mid":3400.5}}})",
                             "",
                             812'345,
                             "EUR"};
    ASSERT_TRUE(store->issue_quote(quote).ok());
    FiguresPage page(*store);
    page.year()->setValue(2027);
    page.resize(1000, 600);
    EXPECT_FALSE(page.grab().isNull());
    EXPECT_TRUE(page.words().startsWith(QStringLiteral("2027: quotes issued 1, accepted 0; without an answer now 1")))
        << page.words().toStdString();
    EXPECT_EQ(page.figures().rows.at(2).at(4), QStringLiteral("3400.5"));
    EXPECT_EQ(page.states()->rowCount(), 7);
    EXPECT_EQ(page.states()->item(0, 1)->text(), QStringLiteral("2"));
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

store::ServiceDueRow due_row(const char* job, const char* service, const char* on, const char* postcode = "",
                             const char* town = "") {
    store::ServiceDueRow row;
    row.job_id = job;
    row.service_id = service;
    row.text = service;
    row.due_on = on;
    row.postcode = postcode;
    row.town = town;
    return row;
}

TEST(DueWeeks, put_a_house_on_one_line_and_neighbours_together) {
    const CivilDate today{2027, 6, 23};  // a Wednesday
    const std::vector<store::ServiceDueRow> rows = {
        due_row("a", "look", "2027-06-25", "SW4 1AA"),        due_row("b", "look", "2027-06-24", "N1 7GU"),
        due_row("a", "anode", "2027-06-24", "SW4 1AA"),       due_row("c", "look", "2027-06-28", "SW4 2BB"),
        due_row("d", "look", "2027-06-22", "", "Brookfield"), due_row("e", "look", "not a day")};
    const auto weeks = due_weeks(rows, today);
    ASSERT_EQ(weeks.size(), 3U);
    EXPECT_FALSE(weeks[0].monday) << "overdue first";
    EXPECT_EQ(weeks[0].visits.at(0).house.job_id, "d");
    EXPECT_EQ(weeks[1].monday, (CivilDate{2027, 6, 21}));
    ASSERT_EQ(weeks[1].visits.size(), 2U);
    EXPECT_EQ(weeks[1].visits[0].house.job_id, "b") << "N1 before SW4";
    EXPECT_EQ(weeks[1].visits[1].services.size(), 2U);
    EXPECT_EQ(weeks[1].visits[1].on, (CivilDate{2027, 6, 24}));
    EXPECT_EQ(weeks[2].visits.at(0).house.job_id, "c");
    EXPECT_EQ(due_weeks(rows, today, "sw4").size(), 2U);
    EXPECT_EQ(due_weeks(rows, today, "brook").at(0).visits.at(0).house.job_id, "d");
    EXPECT_EQ(due_this_week(rows, today), 3);
    EXPECT_EQ(overdue(rows, today), 1);
}

TEST(DueWeeks, areas_are_the_postcodes_first_part_or_the_town) {
    EXPECT_EQ(area_of(due_row("a", "s", "", "SW4 1AA", "London")), "SW4");
    EXPECT_EQ(area_of(due_row("a", "s", "", "79104", "Freiburg")), "79");
    EXPECT_EQ(area_of(due_row("a", "s", "", "", "Freiburg")), "Freiburg");
    EXPECT_EQ(area_of(due_row("a", "s", "", "7", "X")), "7");
}

TEST(ServicesPage, filters_by_span_and_area_and_opens_the_job) {
    FakeStore store;
    fill(store, 3);
    store.jobs["job-10000"].client.town = "Brookfield";
    store.services["job-10000"] = {due_row("", "look", "2027-06-01"), due_row("", "anode", "2027-07-10")};
    store.services["job-10001"] = {due_row("", "look", "2027-08-30")};
    store.services["job-10002"] = {due_row("", "look", "2029-08-30")};
    ServicesPage page(store);
    page.reload({2027, 6, 23});
    const auto houses = [&page] {
        int count = 0;
        for (const DueWeek& week : page.weeks())
            count += static_cast<int>(week.visits.size());
        return count;
    };
    EXPECT_EQ(houses(), 2) << "overdue and within four weeks";
    EXPECT_EQ(page.table()->rowCount(), 4) << "a heading for each week";
    page.choose(ServicesPage::overdue_only);
    EXPECT_EQ(houses(), 1);
    page.choose(ServicesPage::three_months);
    EXPECT_EQ(houses(), 3);
    page.choose(ServicesPage::everything);
    EXPECT_EQ(houses(), 4);
    page.area()->setText(QStringLiteral("brook"));
    EXPECT_EQ(houses(), 2);
    EXPECT_EQ(page.list().rows.size(), 2U);
    EXPECT_EQ(page.calendar().count(QStringLiteral("BEGIN:VEVENT")), 2);
    QSignalSpy open(&page, &ServicesPage::open_asked);
    Q_EMIT page.table()->cellActivated(0, 0);
    EXPECT_EQ(open.count(), 0) << "a heading opens nothing";
    Q_EMIT page.table()->cellActivated(1, 1);
    ASSERT_EQ(open.count(), 1);
    EXPECT_EQ(open[0][0].toString(), QStringLiteral("job-10000"));
    EXPECT_EQ(page.count_words(), QStringLiteral("1 service overdue"));
}

TEST(DeskPage, says_how_many_services_are_due_this_week_and_leads_to_them) {
    FakeStore store;
    fill(store, 2);
    const std::string today = QDate::currentDate().toString(Qt::ISODate).toStdString();
    store.services["job-10000"] = {due_row("", "look", today.c_str())};
    DeskPage page(store, sample::reference());
    page.show();
    ASSERT_TRUE(QTest::qWaitFor([&] { return page.due_button()->isVisible(); }));
    EXPECT_EQ(page.due_button()->text(), QStringLiteral("1 service due this week"));
    page.due_button()->click();
    EXPECT_TRUE(page.services()->isVisible());
    QSignalSpy open(&page, &DeskPage::aftercare_asked);
    Q_EMIT page.services()->table()->cellActivated(1, 0);
    ASSERT_EQ(open.count(), 1);
}

TEST(RegisterPage, adds_corrects_and_explains) {
    FakeStore store;
    RegisterPage page(store, {"R134a", "R290"});
    page.reload();
    const auto add = [&](RefrigerantMove move, const char* kg, const QDate& on) {
        page.form()->moves()->setCurrentIndex(page.form()->moves()->findData(static_cast<int>(move)));
        page.form()->mass()->setText(QString::fromLatin1(kg));
        page.form()->date()->setDate(on);
        return page.add_entry(Instant{1'800'000'000});
    };
    const int year = QDate::currentDate().year() - 1;
    EXPECT_FALSE(add(RefrigerantMove::received, "10", {year, 2, 1})) << "nobody named";
    page.form()->by()->setText(QStringLiteral("A. Reed"));
    EXPECT_FALSE(add(RefrigerantMove::received, "ten", {year, 2, 1}));
    EXPECT_FALSE(add(RefrigerantMove::received, "-1", {year, 2, 1}));
    EXPECT_FALSE(page.form()->problem().isEmpty());
    ASSERT_TRUE(add(RefrigerantMove::received, "10,0", {year, 2, 1}));
    ASSERT_TRUE(add(RefrigerantMove::counted, "7.5", {year, 12, 31}));
    ASSERT_EQ(store.refrigerant.size(), 2U);
    EXPECT_EQ(store.refrigerant[0].refrigerant, "R134a");
    EXPECT_DOUBLE_EQ(store.refrigerant[0].kg, 10.0);
    ASSERT_EQ(page.years()->rowCount(), 1);
    EXPECT_TRUE(page.year_words().contains(QStringLiteral("What may lie behind it")))
        << page.year_words().toStdString();
    page.correct(store.refrigerant[1].id);
    EXPECT_EQ(page.form()->mass()->text(), QStringLiteral("7.500"));
    page.form()->mass()->setText(QStringLiteral("9.9"));
    ASSERT_TRUE(page.add_entry(Instant{1'800'000'000}));
    ASSERT_EQ(store.refrigerant.size(), 3U);
    EXPECT_EQ(store.refrigerant[2].corrects_id, store.refrigerant[1].id);
    EXPECT_EQ(page.table()->rowCount(), 3) << "the old entry stays to be read";
    EXPECT_FALSE(page.year_words().contains(QStringLiteral("What may lie behind it")));
    store.refuse = true;
    EXPECT_FALSE(add(RefrigerantMove::used, "1", {year, 2, 1}));
    EXPECT_TRUE(page.form()->problem().contains(QStringLiteral("disk is full")));
}

}  // namespace
}  // namespace wg::ui
