#include "ui/common/job_session.h"
#include "ui/common/weather_book.h"

#include <gtest/gtest.h>

#include <QSignalSpy>

#include "tests/tools/load_reference.h"
#include "tests/ui/common/sample.h"
#include "ui/common/edits.h"

namespace wg::ui {
namespace {

using sample::Gate;
using sample::placement_id;
using sample::settle;

double first_x(const JobSession& session) {
    return session.job().choices.front().placements.front().x_m;
}

TEST(JobSession, undo_restores_the_job_exactly_and_redo_repeats_it) {
    JobSession session(sample::job(), sample::reference(), &sample::quick_to_read_plan);
    const Job before = session.job();
    move_placement(session, placement_id, 3.0, 2.0);
    set_notes(session, "mind the dog");
    remove_element(session, before.site.obstacles.front().id);
    const Job after = session.job();
    EXPECT_NE(before, after);
    while (session.undo_stack().canUndo())
        session.undo_stack().undo();
    EXPECT_EQ(session.job(), before);
    while (session.undo_stack().canRedo())
        session.undo_stack().redo();
    EXPECT_EQ(session.job(), after);
}

TEST(JobSession, a_drag_is_one_step_until_it_ends) {
    JobSession session(sample::job(), sample::reference(), &sample::quick_to_read_plan);
    for (int i = 1; i <= 20; ++i)
        move_placement(session, placement_id, 4.0 + 0.01 * i, 2.5);
    EXPECT_EQ(session.undo_stack().count(), 1);
    session.end_merge();
    move_placement(session, placement_id, 3.0, 2.5);
    EXPECT_EQ(session.undo_stack().count(), 2);
    session.undo_stack().undo();
    EXPECT_DOUBLE_EQ(first_x(session), 4.2);
    session.undo_stack().undo();
    EXPECT_DOUBLE_EQ(first_x(session), 4.0);
}

TEST(JobSession, drags_of_different_elements_stay_apart) {
    JobSession session(sample::job(), sample::reference(), &sample::quick_to_read_plan);
    move_placement(session, placement_id, 3.0, 2.5);
    move_obstacle(session, session.job().site.obstacles.front().id, 1.0, 1.0);
    move_placement(session, placement_id, 3.5, 2.5);
    EXPECT_EQ(session.undo_stack().count(), 3);
}

TEST(JobSession, a_drag_back_to_its_start_leaves_no_step) {
    JobSession session(sample::job(), sample::reference(), &sample::quick_to_read_plan);
    move_placement(session, placement_id, 3.0, 2.5);
    move_placement(session, placement_id, 4.0, 2.5);
    EXPECT_EQ(session.undo_stack().count(), 0);
    EXPECT_EQ(session.job(), sample::job());
}

TEST(JobSession, an_edit_that_changes_nothing_pushes_nothing_and_plans_nothing) {
    JobSession session(sample::job(), sample::reference(), &sample::quick_to_read_plan);
    ASSERT_TRUE(settle(session));
    QSignalSpy changed(&session, &JobSession::job_changed);
    set_notes(session, session.job().notes);
    move_placement(session, "no such collector", 1.0, 1.0);
    move_placement(session, placement_id, std::nan(""), 1.0);
    EXPECT_EQ(session.undo_stack().count(), 0);
    EXPECT_EQ(changed.count(), 0);
    EXPECT_FALSE(session.planning());
}

TEST(JobSession, undo_after_a_save_keeps_the_stored_revision) {
    JobSession session(sample::job(), sample::reference(), &sample::quick_to_read_plan);
    set_notes(session, "first");
    Job stored = session.job();
    stored.revision = 5;
    stored.changed_at = "2027-06-21T12:00:00Z";
    EXPECT_TRUE(session.dirty());
    session.mark_saved(stored);
    EXPECT_FALSE(session.dirty());
    session.undo_stack().undo();
    EXPECT_EQ(session.job().revision, 5);
    EXPECT_EQ(session.job().notes, "");
    EXPECT_TRUE(session.dirty());
    session.undo_stack().redo();
    EXPECT_FALSE(session.dirty());
}

TEST(JobSession, the_newest_edit_wins_and_those_in_between_are_never_planned_in_full) {
    Gate gate;
    gate.hold();
    JobSession session(sample::job(), sample::reference(), gate.function());
    for (int i = 1; i <= 50; ++i)
        move_placement(session, placement_id, 1.0 + 0.01 * i, 2.5);
    gate.let_go();
    ASSERT_TRUE(settle(session));
    // One was under way when the edits began, the newest followed.
    EXPECT_EQ(gate.made(), (std::vector<double>{4.0, 1.5}));
    ASSERT_NE(session.plan(), nullptr);
    EXPECT_TRUE(session.settled());
    EXPECT_DOUBLE_EQ(session.plan()->figures.run_m, 1.5);
    EXPECT_DOUBLE_EQ(session.plan()->figures.heat_kwh.mid, 150.0);
}

TEST(JobSession, the_quick_plan_comes_first_and_carries_the_yield_of_before) {
    Gate gate;
    JobSession session(sample::job(), sample::reference(), gate.function());
    ASSERT_TRUE(settle(session));
    ASSERT_TRUE(session.settled());
    gate.hold();
    move_placement(session, placement_id, 2.0, 2.5);
    ASSERT_TRUE(QTest::qWaitFor([&] { return session.plan()->figures.run_m == 2.0; }, sample::patience_ms));
    EXPECT_FALSE(session.plan()->has_yield);
    EXPECT_TRUE(session.yield_carried());
    EXPECT_FALSE(session.settled());
    EXPECT_DOUBLE_EQ(session.plan()->figures.heat_kwh.mid, 400.0);
    EXPECT_EQ(session.plan()->workings.size(), 1U);
    gate.let_go();
    ASSERT_TRUE(settle(session));
    EXPECT_TRUE(session.plan()->has_yield);
    EXPECT_FALSE(session.yield_carried());
    EXPECT_DOUBLE_EQ(session.plan()->figures.heat_kwh.mid, 200.0);
    ASSERT_NE(session.earlier_plan(), nullptr);
    EXPECT_DOUBLE_EQ(session.earlier_plan()->figures.heat_kwh.mid, 400.0);
}

TEST(JobSession, all_of_a_drag_is_compared_with_the_plan_from_before_it) {
    JobSession session(sample::job(), sample::reference(), &sample::quick_to_read_plan);
    ASSERT_TRUE(settle(session));
    for (const double x_m : {3.5, 3.0, 2.5}) {
        move_placement(session, placement_id, x_m, 2.5);
        ASSERT_TRUE(settle(session));
    }
    ASSERT_NE(session.earlier_plan(), nullptr);
    EXPECT_DOUBLE_EQ(session.earlier_plan()->figures.run_m, 4.0);
    session.end_merge();
    move_placement(session, placement_id, 2.0, 2.5);
    ASSERT_TRUE(settle(session));
    EXPECT_DOUBLE_EQ(session.earlier_plan()->figures.run_m, 2.5);
}

TEST(JobSession, an_older_full_plan_does_not_take_the_place_of_a_newer_quick_one) {
    Gate gate;
    gate.hold();
    JobSession session(sample::job(), sample::reference(), gate.function());
    ASSERT_TRUE(QTest::qWaitFor([&] { return session.plan() != nullptr; }, sample::patience_ms));
    move_placement(session, placement_id, 1.0, 2.5);
    ASSERT_TRUE(QTest::qWaitFor([&] { return session.plan()->figures.run_m == 1.0; }, sample::patience_ms));
    bool went_back = false;
    QObject::connect(&session, &JobSession::plan_changed, &session,
                     [&] { went_back = went_back || session.plan()->figures.run_m != 1.0; });
    gate.let_go();
    ASSERT_TRUE(settle(session));
    EXPECT_FALSE(went_back);
    EXPECT_EQ(gate.made(), (std::vector<double>{4.0, 1.0}));
}

TEST(JobSession, what_cannot_be_planned_says_why_and_recovers) {
    const PlanFunction failing = [](const Job& job, const plan::Reference& reference, const plan::Options& options) {
        if (job.notes == "bad") return Result<plan::Plan>(Problem{"notes", "is bad", "Write something else"});
        return sample::quick_to_read_plan(job, reference, options);
    };
    JobSession session(sample::job(), sample::reference(), failing);
    ASSERT_TRUE(settle(session));
    set_notes(session, "bad");
    ASSERT_TRUE(settle(session));
    EXPECT_EQ(session.plan(), nullptr);
    EXPECT_TRUE(session.plan_problem().contains(QStringLiteral("is bad")));
    session.undo_stack().undo();
    ASSERT_TRUE(settle(session));
    EXPECT_NE(session.plan(), nullptr);
    EXPECT_TRUE(session.plan_problem().isEmpty());
}

TEST(JobSession, without_a_choice_there_is_no_plan_but_a_next_step) {
    Job job = sample::job();
    job.choices.clear();
    job.chosen_choice_id.clear();
    JobSession session(job, sample::reference(), &sample::quick_to_read_plan);
    EXPECT_EQ(session.plan(), nullptr);
    EXPECT_FALSE(session.planning());
    EXPECT_FALSE(session.plan_problem().isEmpty());
    const std::string id = add_choice(session);
    EXPECT_EQ(session.current_choice()->id, id);
    EXPECT_EQ(session.job().chosen_choice_id, id);
    EXPECT_EQ(session.undo_stack().count(), 1);
    ASSERT_TRUE(settle(session));
    EXPECT_NE(session.plan(), nullptr);
    session.undo_stack().undo();
    EXPECT_EQ(session.current_choice(), nullptr);
    EXPECT_EQ(session.plan(), nullptr);
}

TEST(JobSession, figures_of_one_choice_are_never_carried_to_another) {
    Gate gate;
    JobSession session(sample::job(), sample::reference(), gate.function());
    ASSERT_TRUE(settle(session));
    const std::string second = duplicate_choice(session, session.current_choice()->id);
    EXPECT_EQ(session.current_choice()->id, second);
    EXPECT_EQ(session.plan(), nullptr);
    EXPECT_EQ(session.earlier_plan(), nullptr);
    ASSERT_TRUE(settle(session));
    EXPECT_EQ(session.plan()->choice_id, second);
}

TEST(JobSession, ending_while_a_plan_is_under_way_is_safe) {
    Gate gate;
    gate.hold();
    auto session = std::make_unique<JobSession>(sample::job(), sample::reference(), gate.function());
    move_placement(*session, placement_id, 2.0, 2.5);
    std::thread opener([&gate] {
        std::this_thread::sleep_for(std::chrono::milliseconds(30));
        gate.let_go();
    });
    session.reset();
    opener.join();
    QCoreApplication::processEvents();
    EXPECT_EQ(gate.made(), (std::vector<double>{4.0}));
}

TEST(WeatherBook, AnUnknownWeatherGetsNoYearInsteadOfAnothers) {
    const auto base = std::make_shared<const plan::Reference>(test::reference());
    const auto own = base->weather;
    WeatherBook book(base, "year:of the first");
    Job job;
    job.site.location.altitude_m = own->year.altitude_m;
    job.weather = "year:nobody has";
    const auto none = book.reference_for(job);
    ASSERT_TRUE(none.ok());
    EXPECT_EQ(none.value()->weather, nullptr);
    // Once it is offered, it is there.
    book.offer(job.weather, own);
    const auto offered = book.reference_for(job);
    ASSERT_TRUE(offered.ok());
    EXPECT_EQ(offered.value()->weather, own);
}

}  // namespace
}  // namespace wg::ui
