#include "ui/window/job_page.h"

#include <gtest/gtest.h>

#include <QAbstractButton>
#include <QComboBox>
#include <QSignalSpy>
#include <QTemporaryDir>

#include "core/job/codec.h"
#include "tests/ui/common/fake_store.h"
#include "tests/ui/common/sample.h"
#include "ui/common/edits.h"
#include "ui/common/findings_list.h"
#include "ui/common/ledger.h"
#include "ui/common/stage_widget.h"
#include "ui/common/working_view.h"
#include "ui/window/auto_saver.h"
#include "ui/window/choice_selector.h"
#include "ui/window/job_files.h"
#include "ui/window/stage_bar.h"
#include "ui/window/stage_marks.h"

namespace wg::ui {
namespace {

using sample::FakeStore;

class StageStub : public StageWidget {
   public:
    using StageWidget::StageWidget;
    void set_session(JobSession* session) override { session_ = session; }
    void show_place(const QString& place_id) override { place_ = place_id; }
    JobSession* session_ = nullptr;
    QString place_;
};

struct Stages {
    std::array<StageStub*, stage_count> made{};
    std::array<StageFactory, stage_count> factories() {
        std::array<StageFactory, stage_count> list;
        for (std::size_t i = 0; i < list.size(); ++i) {
            list[i] = [this, i](QWidget* parent) { return made[i] = new StageStub(parent); };
        }
        return list;
    }
};

class JobPageTest : public testing::Test {
   protected:
    JobSession session_{sample::job(), sample::reference(), &sample::quick_to_read_plan};
    Stages stages_;
    JobPage page_{stages_.factories()};
    void TearDown() override { page_.set_session(nullptr); }
};

TEST_F(JobPageTest, stages_are_made_when_first_shown_and_get_the_session) {
    page_.set_session(&session_);
    EXPECT_EQ(stages_.made[1], nullptr);
    page_.show_stage(1);
    ASSERT_NE(stages_.made[1], nullptr);
    EXPECT_EQ(stages_.made[1]->session_, &session_);
    EXPECT_EQ(stages_.made[0], nullptr);
    page_.set_session(nullptr);
    EXPECT_EQ(stages_.made[1]->session_, nullptr);
}

TEST_F(JobPageTest, control_and_a_figure_lead_to_each_stage) {
    page_.set_session(&session_);
    page_.resize(1366, 700);
    page_.show();
    page_.activateWindow();
    ASSERT_TRUE(QTest::qWaitForWindowActive(&page_));
    for (int stage = 0; stage < stage_count; ++stage) {
        QTest::keyClick(&page_, static_cast<Qt::Key>(Qt::Key_1 + stage), Qt::ControlModifier);
        EXPECT_EQ(page_.stage(), stage);
    }
}

TEST_F(JobPageTest, a_finding_leads_to_its_stage_and_place) {
    page_.set_session(&session_);
    auto* findings = page_.findChild<FindingsList*>();
    ASSERT_NE(findings, nullptr);
    Q_EMIT findings->activated(QStringLiteral("roof-1"), Stage::layout);
    EXPECT_EQ(page_.stage(), 1);
    ASSERT_NE(stages_.made[1], nullptr);
    EXPECT_EQ(stages_.made[1]->place_, QStringLiteral("roof-1"));
}

TEST_F(JobPageTest, ledger_findings_and_points_lead_to_one_view_of_the_workings) {
    page_.set_session(&session_);
    ASSERT_TRUE(sample::settle(session_));
    page_.show_stage(1);
    Q_EMIT page_.findChild<Ledger*>()->working_asked(QStringLiteral("yield.heat"));
    const WorkingView* view = page_.working_view();
    ASSERT_NE(view, nullptr);
    ASSERT_NE(view->shown(), nullptr);
    EXPECT_EQ(view->shown()->working.key, "yield.heat");
    Finding finding;
    finding.code = "comfort.shortfall";
    Q_EMIT page_.findChild<FindingsList*>()->working_asked(finding);
    Q_EMIT stages_.made[1]->point_working_asked(QString::fromStdString(sample::placement_id), 1);
    page_.show_workings();
    EXPECT_EQ(page_.working_view(), view) << "one window, whoever asks";
    // Open while the plan changes: it follows.
    move_placement(session_, sample::placement_id, 3.0, 2.0);
    ASSERT_TRUE(sample::settle(session_));
    EXPECT_EQ(page_.working_view(), view);
    page_.set_session(nullptr);
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    EXPECT_EQ(page_.working_view(), nullptr) << "closed with its job";
}

TEST_F(JobPageTest, nothing_in_the_head_overlaps_or_is_cut_at_1366_pixels) {
    page_.set_session(&session_);
    page_.resize(1366, 768);
    page_.show();
    page_.show_stage(0);
    QCoreApplication::processEvents();
    auto* bar = page_.findChild<StageBar*>();
    auto* selector = page_.findChild<ChoiceSelector*>();
    EXPECT_GE(bar->width(), bar->sizeHint().width());
    EXPECT_LE(bar->geometry().right(), selector->geometry().left());
    EXPECT_LE(selector->geometry().right(), selector->parentWidget()->width());
    EXPECT_LE(page_.minimumSizeHint().width(), 1024);
    EXPECT_LE(page_.minimumSizeHint().height(), 640);
    for (const QAbstractButton* button : page_.findChildren<QAbstractButton*>()) {
        if (!button->isVisible()) continue;
        EXPECT_FALSE(button->accessibleName().isEmpty() && button->text().isEmpty());
    }
}

TEST_F(JobPageTest, the_choice_selector_switches_the_choice_on_screen) {
    const std::string first = session_.current_choice()->id;
    duplicate_choice(session_, first);
    page_.set_session(&session_);
    auto* combo = page_.findChild<ChoiceSelector*>()->findChild<QComboBox*>();
    ASSERT_EQ(combo->count(), 2);
    EXPECT_EQ(combo->currentIndex(), 1);
    EXPECT_EQ(combo->itemText(0), QStringLiteral("A"));
    EXPECT_EQ(combo->itemData(0, Qt::ToolTipRole).toString(), QStringLiteral("A (chosen)"));
    combo->setCurrentIndex(0);
    Q_EMIT combo->activated(0);
    EXPECT_EQ(session_.current_choice()->id, first);
}

TEST(StageMarks, a_fresh_job_is_empty_all_along) {
    for (const StageMark& mark : stage_marks(Job(), nullptr))
        EXPECT_EQ(mark.mark, Mark::empty);
}

TEST(StageMarks, follow_the_work) {
    Job job = sample::job();
    EXPECT_EQ(stage_marks(job, nullptr)[0].mark, Mark::begun);
    job.survey.visited_on = "2027-03-02";
    EXPECT_EQ(stage_marks(job, nullptr)[0].mark, Mark::ready);
    plan::Plan plan;
    plan.has_yield = true;
    plan.quote.emplace();
    const auto planned = stage_marks(job, &plan);
    EXPECT_EQ(planned[1].mark, Mark::ready);
    EXPECT_EQ(planned[2].mark, Mark::ready);
    EXPECT_EQ(planned[3].mark, Mark::begun);
    job.state = JobState::fitted;
    EXPECT_EQ(stage_marks(job, &plan)[3].mark, Mark::ready);
    EXPECT_EQ(stage_marks(job, &plan)[5].mark, Mark::begun);
}

TEST(StageMarks, a_stop_stands_at_the_stage_that_mends_it) {
    plan::Plan plan;
    plan.findings = {{"code", Severity::stop, Stage::fitting, "", "", "", "", "", ""}};
    const auto marks = stage_marks(sample::job(), &plan);
    EXPECT_EQ(marks[4].mark, Mark::stop);
    EXPECT_NE(marks[1].mark, Mark::stop);
}

TEST(StageMarks, a_failed_reading_is_a_stop_at_fitting) {
    Job job = sample::job();
    job.record.emplace_back();
    plan::Plan plan;
    plan.assessments.emplace_back();
    plan.assessments.back().verdict = commissioning::Verdict::failed;
    EXPECT_EQ(stage_marks(job, &plan)[4].mark, Mark::stop);
    plan.assessments.back().verdict = commissioning::Verdict::passed;
    EXPECT_EQ(stage_marks(job, &plan)[4].mark, Mark::ready);
}

TEST(AutoSaver, saves_a_while_after_the_last_edit_and_takes_over_the_revision) {
    FakeStore store;
    store.jobs[sample::job().id] = sample::job();
    JobSession session(sample::job(), sample::reference(), &sample::quick_to_read_plan);
    AutoSaver saver(store);
    saver.set_session(&session);
    QSignalSpy saved(&saver, &AutoSaver::saved);
    set_notes(session, "one");
    set_notes(session, "two");
    EXPECT_EQ(store.jobs.begin()->second.notes, "");
    ASSERT_TRUE(saved.wait(sample::patience_ms));
    EXPECT_EQ(saved.count(), 1);
    EXPECT_EQ(store.jobs.begin()->second.notes, "two");
    EXPECT_EQ(session.job().revision, 5);
    EXPECT_FALSE(session.dirty());
    EXPECT_TRUE(saver.saved_at().isValid());
}

TEST(AutoSaver, a_conflict_is_said_once_and_the_edits_stay) {
    FakeStore store;
    Job elsewhere = sample::job();
    elsewhere.revision = 9;
    store.jobs[elsewhere.id] = elsewhere;
    JobSession session(sample::job(), sample::reference(), &sample::quick_to_read_plan);
    AutoSaver saver(store);
    saver.set_session(&session);
    QSignalSpy failed(&saver, &AutoSaver::failed);
    set_notes(session, "mine");
    EXPECT_FALSE(saver.save_now());
    EXPECT_FALSE(saver.save_now());
    ASSERT_EQ(failed.count(), 1);
    EXPECT_TRUE(failed[0][0].toString().contains(QStringLiteral("somebody else saved it")));
    EXPECT_TRUE(session.dirty());
    EXPECT_EQ(session.job().notes, "mine");
    EXPECT_EQ(store.jobs.begin()->second.revision, 9);
}

TEST(AutoSaver, a_refused_save_is_made_again_without_a_further_edit) {
    FakeStore store;
    store.jobs[sample::job().id] = sample::job();
    store.refuse = true;
    JobSession session(sample::job(), sample::reference(), &sample::quick_to_read_plan);
    AutoSaver saver(store);
    saver.set_again_ms(150);
    saver.set_session(&session);
    QSignalSpy failed(&saver, &AutoSaver::failed);
    QSignalSpy saved(&saver, &AutoSaver::saved);
    set_notes(session, "kept in mind");
    ASSERT_TRUE(failed.wait(sample::patience_ms));
    QTest::qWait(400);
    EXPECT_EQ(failed.count(), 1) << "the same words are said once";
    store.refuse = false;
    ASSERT_TRUE(saved.wait(sample::patience_ms));
    EXPECT_TRUE(saved[0][0].toBool()) << "after a failure";
    EXPECT_EQ(store.jobs.begin()->second.notes, "kept in mind");
    EXPECT_FALSE(session.dirty());
}

TEST(JobFiles, what_is_written_reads_back_and_knows_where_it_came_from) {
    const QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("job.json"));
    FakeStore store;
    store.jobs[sample::job().id] = sample::job();
    store.revisions[{sample::job().id, 4}] = sample::job();
    ASSERT_TRUE(write_job_file(path, sample::job()).ok());
    const Result<std::string> text = read_job_file(path);
    ASSERT_TRUE(text.ok());
    Result<Job> read = job_from_json(text.value(), "job.json");
    ASSERT_TRUE(read.ok()) << text_of(read.problems());
    EXPECT_EQ(read.value().base_revision, 4);
    EXPECT_EQ(incoming(read.value(), store), Incoming::same);

    Job at_home = sample::job();
    at_home.notes = "changed at home";
    at_home.revision = 5;
    store.jobs[at_home.id] = at_home;
    EXPECT_EQ(incoming(read.value(), store), Incoming::desk_newer);
    read.value().notes = "changed on the way";
    EXPECT_EQ(incoming(read.value(), store), Incoming::differs);
    store.jobs[at_home.id] = sample::job();
    EXPECT_EQ(incoming(read.value(), store), Incoming::file_newer);
    store.jobs.clear();
    EXPECT_EQ(incoming(read.value(), store), Incoming::unknown);
}

TEST(JobFiles, what_cannot_be_read_or_written_says_so) {
    const QTemporaryDir folder;
    EXPECT_FALSE(read_job_file(folder.filePath(QStringLiteral("none.json"))).ok());
    EXPECT_FALSE(read_job_file(folder.path()).ok());
    EXPECT_FALSE(write_job_file(folder.filePath(QStringLiteral("no/such/folder.json")), sample::job()).ok());
}

TEST(JobFiles, names_are_safe_for_file_systems) {
    Job job = sample::job();
    job.number = "27/42";
    job.client.name = "A: <b> \\ c";
    EXPECT_EQ(job_file_name(job), QStringLiteral("2742 A b c.json"));
    EXPECT_EQ(job_file_name(Job()), QStringLiteral("job.json"));
}

}  // namespace
}  // namespace wg::ui
