#include "ui/common/edits.h"

#include <gtest/gtest.h>

#include <QRegularExpression>

#include "core/job/codec.h"
#include "core/job/record_chain.h"
#include "core/site/geometry.h"
#include "tests/ui/common/sample.h"
#include "ui/common/format.h"

namespace wg::ui {
namespace {

using sample::placement_id;

class Edits : public testing::Test {
   protected:
    JobSession session_{sample::job(), sample::reference(), &sample::quick_to_read_plan};

    [[nodiscard]] const Choice& choice() const { return *session_.current_choice(); }
    [[nodiscard]] const Placement& placement() const { return choice().placements.front(); }
    [[nodiscard]] std::vector<Point2> outline_of(const Placement& placement) const {
        const Surface* surface = find_surface(session_.job().site, placement.surface_id);
        return site::place(*surface, session_.job().site.sketch_up_azimuth_deg, placement,
                           session_.reference().catalogue.collectors.front())
            .outline;
    }
};

TEST_F(Edits, ids_are_fresh_uuids_without_braces) {
    const QString id = qs(new_id());
    const QRegularExpression uuid(
        QStringLiteral("^[0-9a-f]{8}-[0-9a-f]{4}-4[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$"));
    EXPECT_TRUE(uuid.match(id).hasMatch()) << id.toStdString();
    EXPECT_NE(new_id(), new_id());
}

TEST_F(Edits, positions_are_kept_in_whole_millimetres) {
    move_placement(session_, placement_id, 3.00049, 2.12351);
    EXPECT_DOUBLE_EQ(placement().x_m, 3.0);
    EXPECT_DOUBLE_EQ(placement().y_m, 2.124);
}

TEST_F(Edits, a_second_collector_lands_on_the_roof_beside_the_first) {
    const std::string id = add_collector(session_, sample::roof().id);
    ASSERT_EQ(choice().placements.size(), 2U);
    const Placement& second = choice().placements.back();
    EXPECT_EQ(second.id, id);
    EXPECT_EQ(second.label, "Collector 2");
    EXPECT_TRUE(site::contains(sample::roof().outline, outline_of(second)));
    EXPECT_FALSE(site::overlap(outline_of(second), outline_of(placement())));
}

TEST_F(Edits, keep_outs_are_respected_when_a_place_is_looked_for) {
    Surface roof = sample::roof();
    KeepOut window;
    window.id = new_id();
    window.outline = {{3, 1.5}, {5, 1.5}, {5, 3.5}, {3, 3.5}};
    window.clearance_m = 0.2;
    roof.keep_outs = {window};
    set_surface(session_, roof);
    remove_collector(session_, placement_id);
    add_collector(session_, roof.id);
    ASSERT_EQ(choice().placements.size(), 1U);
    constexpr double rounding_m = 0.0005;  // places are rounded to whole millimetres
    EXPECT_GE(site::gap_m(window.outline, outline_of(placement())), 0.2 - rounding_m);
}

TEST_F(Edits, a_collector_moved_to_a_level_surface_gets_a_frame_towards_the_equator_and_loses_it_again) {
    move_placement_to_surface(session_, placement_id, sample::terrace().id);
    ASSERT_TRUE(placement().frame_tilt_deg.has_value());
    EXPECT_GE(*placement().frame_tilt_deg, 30.0);
    EXPECT_DOUBLE_EQ(*placement().frame_azimuth_deg, 180.0);
    move_placement_to_surface(session_, placement_id, sample::roof().id);
    EXPECT_FALSE(placement().frame_tilt_deg.has_value());
    EXPECT_EQ(session_.undo_stack().count(), 2);
}

TEST_F(Edits, in_the_southern_hemisphere_the_frame_looks_north) {
    Location location = session_.job().site.location;
    location.latitude_deg = -37.0;
    set_location(session_, location);
    move_placement_to_surface(session_, placement_id, sample::terrace().id);
    EXPECT_DOUBLE_EQ(*placement().frame_azimuth_deg, 0.0);
}

TEST_F(Edits, turning_wraps_to_a_full_circle) {
    turn_placement(session_, placement_id, -90.0);
    EXPECT_DOUBLE_EQ(placement().turn_deg, 270.0);
}

TEST_F(Edits, removing_a_surface_takes_its_collectors_along_and_undo_brings_both_back) {
    const Job before = session_.job();
    remove_element(session_, sample::roof().id);
    EXPECT_EQ(session_.job().site.surfaces.size(), 1U);
    EXPECT_TRUE(choice().placements.empty());
    session_.undo_stack().undo();
    EXPECT_EQ(session_.job(), before);
}

TEST_F(Edits, removing_a_spot_moves_choices_to_one_that_is_left) {
    CylinderSpot attic;
    attic.label = "Attic";
    const std::string attic_id = add_spot(session_, attic);
    remove_element(session_, session_.job().site.spots.front().id);
    EXPECT_EQ(choice().spot_id, attic_id);
    remove_element(session_, attic_id);
    EXPECT_EQ(choice().spot_id, "");
}

TEST_F(Edits, a_duplicate_shares_no_id_with_its_original) {
    add_route_point(session_, 0, {1.0, 2.0, 3.0});
    const Choice original = choice();
    duplicate_choice(session_, original.id);
    const Choice& copy = choice();
    EXPECT_EQ(copy.label, "B");
    EXPECT_NE(copy.id, original.id);
    EXPECT_NE(copy.placements.front().id, original.placements.front().id);
    EXPECT_NE(copy.route.front().id, original.route.front().id);
    EXPECT_EQ(copy.collector_model, original.collector_model);
}

TEST_F(Edits, a_letter_with_words_behind_it_is_taken) {
    rename_choice(session_, choice().id, "A: two collectors");
    duplicate_choice(session_, choice().id);
    EXPECT_EQ(choice().label, "B");
    rename_choice(session_, choice().id, "Before the chimney");
    duplicate_choice(session_, choice().id);
    EXPECT_EQ(choice().label, "B") << "no longer taken, whatever the first letter of the words";
}

TEST_F(Edits, removing_the_chosen_choice_marks_another_as_chosen) {
    const std::string first = choice().id;
    const std::string second = duplicate_choice(session_, first);
    remove_choice(session_, first);
    EXPECT_EQ(session_.job().chosen_choice_id, second);
    EXPECT_EQ(session_.current_choice()->id, second);
}

TEST_F(Edits, bends_keep_the_order_from_collector_to_block) {
    const std::string last = add_route_point(session_, 99, {0, 0, 2});
    const std::string first = add_route_point(session_, 0, {0, 0, 5}, RoutePointKind::roof_passage);
    ASSERT_EQ(choice().route.size(), 2U);
    EXPECT_EQ(choice().route[0].id, first);
    EXPECT_EQ(choice().route[1].id, last);
    remove_route_point(session_, first);
    EXPECT_EQ(choice().route[0].id, last);
}

TEST_F(Edits, a_prism_moves_with_its_whole_outline) {
    Obstacle prism;
    prism.kind = ObstacleKind::prism;
    prism.outline = {{0, 0}, {2, 0}, {0, 2}};
    const std::string id = add_obstacle(session_, prism);
    move_obstacle(session_, id, 10.0, 20.0);
    EXPECT_EQ(session_.job().site.obstacles.back().outline, (std::vector<Point2>{{10, 20}, {12, 20}, {10, 22}}));
}

TEST_F(Edits, readings_are_only_ever_added) {
    Reading reading;
    reading.kind = ReadingKind::supply_current;
    reading.value = 4.2;
    const std::string first = append_reading(session_, reading);
    reading.corrects_id = first;
    reading.value = 2.4;
    append_reading(session_, reading);
    ASSERT_EQ(session_.job().record.size(), 2U);
    EXPECT_DOUBLE_EQ(session_.job().record[0].value, 4.2);
    EXPECT_EQ(session_.job().record[1].corrects_id, first);
    EXPECT_TRUE(check_chain(session_.job().record).whole());
    EXPECT_EQ(session_.job().record[1].previous_sha256, session_.job().record[0].sha256);
    EXPECT_EQ(session_.job().record[0].plan_mark, plan_mark(session_.job()));
}

TEST_F(Edits, undo_and_redo_leave_the_record_alone) {
    set_notes(session_, "before");
    append_reading(session_, Reading{});
    set_title(session_, "Another title");
    append_reading(session_, Reading{});
    session_.undo_stack().undo();
    session_.undo_stack().undo();
    EXPECT_EQ(session_.job().record.size(), 2U);
    EXPECT_NE(session_.job().title, "Another title");
    session_.undo_stack().redo();
    EXPECT_EQ(session_.job().record.size(), 2U);
    EXPECT_TRUE(session_.dirty());
    // Nor can an edit reach it.
    session_.edit(QStringLiteral("Tamper"), [](Job& job) {
        job.record.clear();
        job.title = "Tampered";
    });
    EXPECT_EQ(session_.job().record.size(), 2U);
}

TEST_F(Edits, entries_kept_but_not_saved_come_back_for_good) {
    Job kept = session_.job();
    kept.title = "Kept";
    Reading entry;
    entry.id = new_id();
    entry.taken_at = "2027-06-21T12:00:00Z";
    kept.record.push_back(chained(entry, {}));
    session_.bring_back(kept, QStringLiteral("Bring back"));
    ASSERT_EQ(session_.job().record.size(), 1U);
    EXPECT_EQ(session_.job().title, "Kept");
    session_.undo_stack().undo();
    EXPECT_NE(session_.job().title, "Kept");
    EXPECT_EQ(session_.job().record.size(), 1U);
}

}  // namespace
}  // namespace wg::ui
