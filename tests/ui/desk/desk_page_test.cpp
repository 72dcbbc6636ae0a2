// The desk: search, views, what a job leads to, and removing.

#include <gtest/gtest.h>

#include <QAction>
#include <QComboBox>
#include <QHeaderView>
#include <QLineEdit>
#include <QMenu>
#include <QPushButton>
#include <QSignalSpy>
#include <QTabWidget>
#include <QTableView>
#include <QTableWidget>
#include <QTest>

#include "core/store/customers.h"
#include "tests/ui/desk/desks.h"
#include "ui/common/format.h"
#include "ui/common/notice_bar.h"
#include "ui/customers/customer_look.h"
#include "ui/customers/customers_page.h"
#include "ui/desk/desk_page.h"
#include "ui/desk/job_preview.h"
#include "ui/desk/job_table_model.h"
#include "ui/desk/list_filter.h"

namespace wg::ui {
namespace desk_page_test {

using desks::FakeStore;
using desks::fill;
using desks::real_desk;

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

TEST(DeskPage, the_preview_leads_to_the_jobs_customer_and_back) {
    const auto store = real_desk(1);
    const std::string id = "00000000-0000-4000-8000-000000000500";
    const Job job = store->load(id).value();
    store::CustomerBook book(*store);
    DeskPage page(*store, sample::reference());
    page.show();
    QPushButton* to_customer = page.preview()->customer_button();
    EXPECT_EQ(to_customer->text(), QStringLiteral("Make a customer of this client"));
    const auto customer = book.save(store::CustomerBook::of_client(job.client), Instant{1'800'000'100}).value();
    ASSERT_TRUE(book.link(id, customer.id).ok());
    page.reload(id);
    EXPECT_EQ(to_customer->text(), QStringLiteral("Customer C-0001"));
    to_customer->click();
    QCoreApplication::processEvents();
    ASSERT_NE(page.customers(), nullptr);
    EXPECT_TRUE(page.customers()->isVisible());
    EXPECT_EQ(page.customers()->shown_id(), customer.id);
    QSignalSpy open(&page, &DeskPage::open_asked);
    Q_EMIT page.customers()->look()->jobs()->cellActivated(0, 0);
    ASSERT_EQ(open.count(), 1);
    EXPECT_EQ(open[0][0].toString().toStdString(), id);
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

}  // namespace desk_page_test
}  // namespace wg::ui
