// Entries that the chain speaks against: marked in their rows by word and shape, and a part that rests on one says
// altered, whatever its figures come to. And the day's list stays where it was scrolled to.

#include <gtest/gtest.h>

#include <QApplication>
#include <QLabel>
#include <QListWidget>
#include <QScrollArea>
#include <QScrollBar>
#include <QTableView>
#include <QTest>

#include "core/job/record_chain.h"
#include "tests/ui/documents/sample.h"
#include "ui/common/edits.h"
#include "ui/common/entry_breaks.h"
#include "ui/common/job_session.h"
#include "ui/common/theme.h"
#include "ui/fitting/fitting_stage.h"
#include "ui/fitting/record_model.h"
#include "ui/fitting/verdict_list.h"
#include "ui/fitting/whole_record_page.h"
#include "ui/fitting/work_page.h"

namespace wg::ui {
namespace altered_test {
namespace {

/// Three chained entries of the water side, the hold point altered afterwards.
std::vector<Reading> altered_record() {
    std::vector<Reading> record;
    const auto add = [&record](ReadingKind kind, double value, const char* subject) {
        Reading r;
        r.id = sample::uuid(200 + static_cast<int>(record.size()));
        r.kind = kind;
        r.value = value;
        r.subject = subject;
        r.taken_by = "A. Reed";
        r.taken_at = "2027-06-01T10:00:00+01:00";
        record.push_back(chained(r, record));
    };
    add(ReadingKind::cold_pressure, 3.4, "");
    add(ReadingKind::hold_point, 1.0, "Water side full and tight");
    add(ReadingKind::supply_current, 2.6, "");
    record[1].value = 0.0;
    return record;
}

std::unique_ptr<JobSession> session_with(const std::vector<Reading>& record) {
    Job job = sample::job();
    job.record = record;
    auto made = std::make_unique<JobSession>(
        job, std::make_shared<const plan::Reference>(),
        [](const Job& planned, const plan::Reference&, const plan::Options&) -> Result<plan::Plan> {
            plan::Plan plan = sample::plan(planned);
            plan.assessments = commissioning::assess(planned.record, plan.expected);
            return plan;
        });
    EXPECT_TRUE(QTest::qWaitFor([&] { return made->settled(); }, 5000));
    return made;
}

bool says(const QWidget& in, const QString& words) {
    for (const QLabel* label : in.findChildren<QLabel*>())
        if (label->isVisible() && label->text().contains(words)) return true;
    return false;
}

TEST(EntryBreaks, name_the_altered_entry_and_the_one_put_in) {
    std::vector<Reading> record = altered_record();
    EntryBreaks breaks = entry_breaks(record);
    ASSERT_EQ(breaks.size(), 1U);
    EXPECT_EQ(breaks.at(record[1].id).word, QStringLiteral("altered"));
    EXPECT_EQ(breaks.at(record[1].id).number, 2);
    EXPECT_TRUE(breaks.at(record[1].id).meaning.contains(QStringLiteral("Compare with the signed print")));
    record[2].sha256.clear();
    breaks = entry_breaks(record);
    EXPECT_EQ(breaks.at(record[2].id).word, QStringLiteral("put in"));
    record[1].value = 1.0;
    record.erase(record.begin() + 2);
    EXPECT_TRUE(entry_breaks(record).empty());
    record.erase(record.begin());
    EXPECT_EQ(entry_breaks(record).at(record[0].id).word, QStringLiteral("chain broken"));
}

TEST(RecordModelTest, an_altered_entry_has_word_sign_and_meaning_in_its_row) {
    RecordModel model;
    const std::vector<Reading> record = altered_record();
    model.set_record(record);
    ASSERT_EQ(model.first_broken_row(), 1) << "newest first";
    const QModelIndex cell = model.index(1, RecordModel::column_chain);
    EXPECT_EQ(cell.data().toString(), QStringLiteral("altered"));
    EXPECT_FALSE(cell.data(Qt::DecorationRole).value<QIcon>().isNull());
    EXPECT_TRUE(cell.data(Qt::ToolTipRole).toString().contains(QStringLiteral("is not what was entered")));
    for (const int row : {0, 2}) {
        EXPECT_TRUE(model.index(row, RecordModel::column_chain).data().toString().isEmpty());
        EXPECT_FALSE(model.index(row, RecordModel::column_chain).data(Qt::DecorationRole).isValid());
    }
}

TEST(WorkStages, a_part_with_an_altered_hold_point_is_altered_and_neither_failed_nor_held) {
    const std::vector<Reading> record = altered_record();
    const auto session = session_with(record);
    const auto plan = session->plan();
    const auto& all = plan->assessments;
    ASSERT_TRUE(std::any_of(all.begin(), all.end(), &of_the_chain)) << "core tells of the chain in its verdicts";
    const WorkStage water = work_stages(session->job(), plan.get())[1];
    const std::vector<Reading> standing = entries_of(record, Occasion::fitting, {});
    ASSERT_FALSE(assessments_of(water, standing, all).empty());
    const WorkState state = state_of(water, standing, all, entry_breaks(record));
    EXPECT_EQ(state.words, QStringLiteral("altered"));
    EXPECT_EQ(state.mark, Mark::stop);
    EXPECT_NE(state_of(water, standing, all).words, QStringLiteral("failed"))
        << "the verdict on the record is none on the part";
}

TEST(WholeRecordPageTest, the_column_of_the_chain_is_there_only_when_it_is_broken) {
    std::vector<Reading> record = altered_record();
    FittingStage stage;
    const auto broken = session_with(record);
    stage.set_session(broken.get());
    EXPECT_FALSE(stage.record_page().table().isColumnHidden(RecordModel::column_chain));
    EXPECT_EQ(stage.record_page().table().currentIndex().row(), 1) << "what is wrong is shown first";
    record[1].value = 1.0;
    const auto whole = session_with(record);
    stage.set_session(whole.get());
    EXPECT_TRUE(stage.record_page().table().isColumnHidden(RecordModel::column_chain));
    stage.set_session(nullptr);
}

TEST(WorkPageTest, an_altered_entry_is_named_in_the_list_in_its_row_and_in_what_rests_on_it) {
    const auto session = session_with(altered_record());
    WorkPage page;
    page.set_session(session.get());
    page.show_stage(1);
    page.show();
    EXPECT_TRUE(page.stage_list().item(1)->text().endsWith(QStringLiteral("altered")))
        << page.stage_list().item(1)->text().toStdString();
    EXPECT_TRUE(says(page, QStringLiteral("Entry 2 altered: held")));
    EXPECT_TRUE(says(page, QStringLiteral("Compare with the signed print")));
    EXPECT_TRUE(says(page, QStringLiteral("Record: altered")));
    EXPECT_FALSE(says(page, QStringLiteral("failed")));
    page.set_session(nullptr);
}

TEST(VerdictListTest, a_verdict_that_rests_on_an_altered_entry_proves_nothing) {
    VerdictList list;
    commissioning::Assessment passed;
    passed.subject = "Cold water pressure";
    passed.verdict = commissioning::Verdict::passed;
    passed.reading_ids = {sample::uuid(201)};
    list.set_assessments({passed}, entry_breaks(altered_record()));
    EXPECT_TRUE(list.text().contains(QStringLiteral("Proves nothing as it stands: it rests on entry 2, altered")))
        << list.text().toStdString();
    list.set_assessments({passed});
    EXPECT_FALSE(list.text().contains(QStringLiteral("Proves nothing")));
}

TEST(WorkPageTest, a_change_of_theme_leaves_the_list_where_it_was_scrolled_to) {
    apply_theme(*qApp, ThemeKind::light);
    const auto session = session_with(altered_record());
    FittingStage stage;
    stage.set_session(session.get());
    stage.tabs().setCurrentWidget(&stage.day());
    stage.day().show_stage(6);
    stage.resize(1040, 420);
    stage.show();
    ASSERT_TRUE(QTest::qWaitForWindowExposed(&stage));
    QScrollBar* bar = nullptr;
    for (const QScrollArea* area : stage.day().findChildren<QScrollArea*>())
        if (area->isVisible() && area->verticalScrollBar()->maximum() > 100) bar = area->verticalScrollBar();
    ASSERT_NE(bar, nullptr) << "a part with more rows than fit";
    bar->setValue(bar->maximum() / 2);
    stage.day().stage_list().verticalScrollBar()->setValue(40);
    const int was = bar->value();
    const int list_was = stage.day().stage_list().verticalScrollBar()->value();
    ASSERT_GT(was, 0);
    ASSERT_GT(list_was, 0);
    for (const ThemeKind kind : {ThemeKind::dark, ThemeKind::sunlight, ThemeKind::light}) {
        apply_theme(*qApp, kind);
        QTest::qWait(400);  // the stage takes its signs anew a moment later
        EXPECT_EQ(bar->value(), was);
        EXPECT_EQ(stage.day().stage_list().verticalScrollBar()->value(), list_was);
    }
    stage.set_session(nullptr);
    qApp->setStyleSheet(QString());
}

}  // namespace
}  // namespace altered_test
}  // namespace wg::ui
