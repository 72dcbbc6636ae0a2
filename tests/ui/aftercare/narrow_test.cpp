// Aftercare in the room that a small notebook leaves it at large type: nothing cut, nothing beside the pane.

#include <gtest/gtest.h>

#include <QApplication>
#include <QHeaderView>
#include <QLineEdit>
#include <QScrollArea>
#include <QScrollBar>
#include <QStyledItemDelegate>
#include <QTabWidget>
#include <QTableWidget>
#include <QTest>

#include "core/job/record_chain.h"
#include "tests/ui/documents/sample.h"
#include "ui/aftercare/aftercare_stage.h"
#include "ui/aftercare/service_page.h"
#include "ui/aftercare/service_visit.h"
#include "ui/common/job_session.h"
#include "ui/common/theme.h"

namespace wg::ui {
namespace narrow_test {
namespace {

constexpr QSize large_type(768, 500);  ///< 1366 by 768 at 120 dpi, less ledger, head and bottom line

std::unique_ptr<JobSession> session_of(const Job& job) {
    auto made = std::make_unique<JobSession>(
        job, std::make_shared<const plan::Reference>(),
        [](const Job& planned, const plan::Reference&, const plan::Options&) -> Result<plan::Plan> {
            plan::Plan plan = sample::plan(planned);
            for (plan::ServiceDue& service : plan.service)
                service.text =
                    "Measure the mixed water at the nearest tap and exercise the thermostatic mixing valve; clean its "
                    "strainers and write down what was read";
            return plan;
        });
    EXPECT_TRUE(QTest::qWaitFor([&] { return made->settled(); }, 5000));
    return made;
}

/// Counts how often a cell is measured.
class CountingCells : public QStyledItemDelegate {
   public:
    using QStyledItemDelegate::QStyledItemDelegate;
    QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override {
        ++measured;
        return QStyledItemDelegate::sizeHint(option, index);
    }
    mutable int measured = 0;
};

/// What the text of a cell needs by the font, with the padding that the style sheet gives it.
int needed_px(const QTableWidget& table, int row, int column) {
    const int inside = table.columnWidth(column) - 2 * 8 - 2 * 3;
    return table.fontMetrics()
        .boundingRect(QRect(0, 0, inside, 10000), Qt::TextWordWrap, table.item(row, column)->text())
        .height();
}

TEST(NarrowAftercare, services_are_whole_and_the_visit_lies_within_its_pane) {
    apply_theme(*qApp, ThemeKind::light);
    const auto session = session_of(sample::job());
    AftercareStage stage;
    stage.set_session(session.get());
    stage.resize(large_type);
    stage.show();
    ASSERT_TRUE(QTest::qWaitForWindowExposed(&stage));
    const QTableWidget& table = *stage.services()->table();
    ASSERT_EQ(table.rowCount(), 2);
    const int services = table.columnCount() - 1;
    const auto whole = [&] {
        for (int row = 0; row < table.rowCount(); ++row)
            if (table.rowHeight(row) < needed_px(table, row, services)) return false;
        return true;
    };
    EXPECT_TRUE(QTest::qWaitFor(whole, 1000)) << table.rowHeight(0) << " of " << needed_px(table, 0, services);
    EXPECT_GT(needed_px(table, 0, services), 3 * table.fontMetrics().lineSpacing()) << "it wraps here";
    // Whatever the width: a measure that forgets the padding is wrong only where a line just fits.
    for (int width = large_type.width(); width < 1040; width += 7) {
        stage.resize(width, large_type.height());
        EXPECT_TRUE(QTest::qWaitFor(whole, 1000))
            << width << ": " << table.rowHeight(0) << " of " << needed_px(table, 0, services);
    }
    stage.resize(large_type);
    EXPECT_TRUE(QTest::qWaitFor(whole, 1000));
    auto* scroll = stage.services()->form()->findChild<QScrollArea*>();
    ASSERT_NE(scroll, nullptr);
    EXPECT_LE(scroll->widget()->minimumSizeHint().width(), scroll->viewport()->width());
    // What is refused is brought into sight.
    QLineEdit* last = stage.services()->form()->field(ReadingKind::water_meter);
    stage.services()->form()->by()->setText(QStringLiteral("A. Reed"));
    last->setText(QStringLiteral("-3"));
    scroll->verticalScrollBar()->setValue(0);
    EXPECT_FALSE(stage.services()->add_visit());
    const QRect at(last->mapTo(scroll->viewport(), QPoint(0, 0)), last->size());
    EXPECT_TRUE(scroll->viewport()->rect().contains(at)) << at.top() << ' ' << scroll->viewport()->height();
    stage.set_session(nullptr);
    qApp->setStyleSheet(QString());
}

TEST(NarrowAftercare, a_long_record_is_filled_without_measuring_the_table_for_every_cell) {
    Job job = sample::job();
    job.record.clear();
    for (int i = 0; i < 150; ++i) {
        Reading r;
        r.id = sample::uuid(1000 + i);
        r.kind = ReadingKind::remark;
        r.note = "Leaves behind the collector cleared; two fixing points of the lower rail tightened";
        r.taken_by = "A. Reed";
        r.taken_at = "2027-06-01T10:00:00+01:00";
        job.record.push_back(r);
    }
    const auto session = session_of(job);
    AftercareStage stage;
    stage.set_session(session.get());
    stage.resize(large_type);
    stage.tabs()->setCurrentIndex(4);
    stage.show();
    ASSERT_TRUE(QTest::qWaitForWindowExposed(&stage));
    QTableWidget* record = nullptr;
    for (QTableWidget* table : stage.findChildren<QTableWidget*>())
        if (table->isVisible()) record = table;
    ASSERT_NE(record, nullptr);
    ASSERT_EQ(record->rowCount(), 150);
    EXPECT_TRUE(QTest::qWaitFor([&] { return record->rowHeight(75) >= needed_px(*record, 75, 1); }, 5000));
    auto* cells = new CountingCells(record);
    record->setItemDelegate(cells);
    stage.tabs()->setCurrentIndex(0);
    stage.tabs()->setCurrentIndex(4);
    QTest::qWait(300);
    EXPECT_GT(cells->measured, record->rowCount());
    EXPECT_LE(cells->measured, 10 * record->rowCount() * record->columnCount());
    stage.set_session(nullptr);
}

TEST(NarrowAftercare, an_altered_entry_is_named_in_the_record) {
    Job job = sample::job();
    job.record.clear();
    for (const double amp : {2.4, 2.5}) {
        Reading r;
        r.id = sample::uuid(300 + static_cast<int>(job.record.size()));
        r.kind = ReadingKind::supply_current;
        r.value = amp;
        r.taken_by = "A. Reed";
        r.taken_at = "2027-06-01T10:00:00+01:00";
        job.record.push_back(chained(r, job.record));
    }
    job.record[0].value = 2.9;
    const auto session = session_of(job);
    AftercareStage stage;
    stage.set_session(session.get());
    const QTableWidget* record = nullptr;
    for (const QTableWidget* table : stage.findChildren<QTableWidget*>())
        if (table->accessibleName().startsWith(QStringLiteral("Record"))) record = table;
    ASSERT_NE(record, nullptr);
    ASSERT_EQ(record->rowCount(), 2);
    EXPECT_TRUE(record->item(1, 1)->text().startsWith(QStringLiteral("altered: "))) << "newest first";
    EXPECT_FALSE(record->item(1, 1)->icon().isNull());
    EXPECT_TRUE(record->item(1, 2)->toolTip().contains(QStringLiteral("Compare with the signed print")));
    EXPECT_FALSE(record->item(0, 1)->text().contains(QStringLiteral("altered")));
    stage.set_session(nullptr);
}

}  // namespace
}  // namespace narrow_test
}  // namespace wg::ui
