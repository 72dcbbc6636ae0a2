// The desk's table of jobs, fetched page by page.

#include <gtest/gtest.h>

#include <QAbstractItemModelTester>

#include "tests/ui/desk/desks.h"
#include "ui/desk/job_table_model.h"

namespace wg::ui {
namespace job_table_test {

using desks::FakeStore;
using desks::fill;
using desks::real_desk;

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

}  // namespace job_table_test
}  // namespace wg::ui
