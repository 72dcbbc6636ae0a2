// Services due: by week and area, and what leads to them.

#include <gtest/gtest.h>

#include <QComboBox>
#include <QDate>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalSpy>
#include <QTableWidget>
#include <QTest>

#include "tests/ui/desk/desks.h"
#include "ui/desk/desk_page.h"
#include "ui/desk/due_groups.h"
#include "ui/desk/services_page.h"

namespace wg::ui {
namespace services_page_test {

using desks::due_row;
using desks::FakeStore;
using desks::fill;

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

}  // namespace services_page_test
}  // namespace wg::ui
