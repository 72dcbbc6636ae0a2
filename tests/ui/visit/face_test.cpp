// What lies on a surface placed face-on, obstacles resized in plan, the run drawn: through the real widgets.

#include <gtest/gtest.h>

#include <QPushButton>
#include <QTest>

#include "core/job/codec.h"
#include "core/site/geometry.h"
#include "tests/ui/common/sample.h"
#include "ui/common/edits.h"
#include "ui/drawing/site_canvas.h"
#include "ui/visit/face_canvas.h"
#include "ui/visit/missing.h"
#include "ui/visit/new_elements.h"
#include "ui/visit/run_tool.h"
#include "ui/visit/size_tool.h"
#include "ui/visit/visit_stage.h"

namespace wg::ui {
namespace face_test {
namespace {

struct FaceOn : testing::Test {
    JobSession session{sample::job(), sample::reference(), sample::quick_to_read_plan};
    VisitStage stage;
    std::string zone_id;
    void SetUp() override {
        stage.resize(1040, 700);
        stage.set_session(&session);
        stage.show();
        zone_id = add_keep_out(session, sample::roof().id, new_keep_out(KeepOutKind::roof_window, {2.0, 2.0}));
        stage.show_place(QString::fromStdString(sample::roof().id));
        press("Face-on");
        face().fit();
    }
    FaceCanvas& face() { return *stage.face(); }
    SiteCanvas& canvas() { return *stage.canvas(); }
    void press(const char* text) {
        for (QPushButton* button : stage.findChildren<QPushButton*>())
            if (button->text() == QString::fromLatin1(text)) QTest::mouseClick(button, Qt::LeftButton);
    }
    const Job& job() { return session.job(); }
    const KeepOut& zone() { return find_surface(job().site, sample::roof().id)->keep_outs.front(); }
    QPoint on_face(Point2 p) { return face().view().map(p).toPoint(); }
    QPoint in_plan(double x_m, double y_m) { return canvas().view().map(x_m, y_m).toPoint(); }
    static void pull(QWidget& widget, QPoint from, QPoint to) {
        QTest::mouseMove(&widget, from);
        QTest::mousePress(&widget, Qt::LeftButton, Qt::NoModifier, from);
        QTest::mouseMove(&widget, (from + to) / 2);
        QTest::mouseMove(&widget, to);
        QTest::mouseRelease(&widget, Qt::LeftButton, Qt::NoModifier, to);
    }
};

TEST_F(FaceOn, a_zone_is_dragged_in_one_step_and_lands_on_the_grid) {
    const int steps = session.undo_stack().count();
    const std::vector<Point2> before = zone().outline;
    pull(face(), on_face({2.0, 2.0}), on_face({3.52, 2.71}));
    EXPECT_EQ(face().selected(), zone_id);
    EXPECT_EQ(session.undo_stack().count(), steps + 1);
    const site::Bounds b = site::bounds_of(zone().outline);
    EXPECT_NEAR(b.width_m(), site::bounds_of(before).width_m(), 1e-9);
    EXPECT_NEAR(b.min_x_m, 3.13, 0.06);
    EXPECT_NEAR(std::remainder(b.min_x_m, 0.05), 0.0, 1e-9);
    session.undo_stack().undo();
    EXPECT_EQ(zone().outline, before);
}

TEST_F(FaceOn, a_zone_is_resized_by_its_corner_and_stays_a_rectangle) {
    face().set_selected(zone_id);
    const site::Bounds before = site::bounds_of(zone().outline);
    pull(face(), on_face({before.max_x_m, before.max_y_m}), on_face({before.max_x_m + 1.0, before.max_y_m + 0.5}));
    const site::Bounds after = site::bounds_of(zone().outline);
    EXPECT_NEAR(after.max_x_m, before.max_x_m + 1.0, 0.06);
    EXPECT_NEAR(after.min_x_m, before.min_x_m, 1e-9);
    EXPECT_NEAR(after.min_y_m, before.min_y_m, 1e-9);
    EXPECT_EQ(zone().outline.size(), 4U);
}

TEST_F(FaceOn, keys_alone_choose_move_resize_and_remove) {
    face().setFocus();
    QTest::keyClick(&face(), Qt::Key_Tab);
    ASSERT_EQ(face().selected(), zone_id);
    const site::Bounds before = site::bounds_of(zone().outline);
    QTest::keyClick(&face(), Qt::Key_Right, Qt::ShiftModifier);
    QTest::keyClick(&face(), Qt::Key_Up);
    EXPECT_NEAR(site::bounds_of(zone().outline).min_x_m, before.min_x_m + 0.10, 1e-9);
    EXPECT_NEAR(site::bounds_of(zone().outline).min_y_m, before.min_y_m + 0.01, 1e-9);
    QTest::keyClick(&face(), Qt::Key_PageDown);
    QTest::keyClick(&face(), Qt::Key_Left, Qt::ShiftModifier);
    EXPECT_NEAR(site::bounds_of(zone().outline).width_m(), before.width_m() + 0.10, 1e-9);
    QTest::keyClick(&face(), Qt::Key_Escape);
    QTest::keyClick(&face(), Qt::Key_Delete);
    EXPECT_TRUE(find_surface(job().site, sample::roof().id)->keep_outs.empty());
}

TEST_F(FaceOn, an_obstacle_on_the_roof_moves_and_grows_face_on) {
    const site::Frame frame = site::frame_of(sample::roof(), job().site.sketch_up_azimuth_deg);
    Obstacle chimney = job().site.obstacles.front();
    const Point3 foot = site::to_space(frame, {5.0, 3.0});
    chimney.base = {foot.x_m, foot.y_m, foot.z_m - 1.0};
    chimney.height_m = 3.0;
    chimney.width_m = chimney.depth_m = 0.6;
    chimney.turn_deg = std::atan2(frame.right.y_m, frame.right.x_m) * 180.0 / std::acos(-1.0);
    set_obstacle(session, chimney);
    pull(face(), on_face({5.0, 3.0}), on_face({6.0, 3.5}));
    EXPECT_EQ(face().selected(), chimney.id);
    EXPECT_EQ(stage.selected(), chimney.id) << "its fields are shown";
    const Point2 moved = site::to_plane(frame, job().site.obstacles.front().base);
    EXPECT_NEAR(moved.x_m, 6.0, 0.06);
    const double width = job().site.obstacles.front().width_m;
    pull(face(), on_face({moved.x_m + 0.3, 3.5 + 0.3 / std::cos(sample::roof().tilt_deg * std::acos(-1.0) / 180.0)}),
         on_face({moved.x_m + 1.0, 4.2}));
    EXPECT_NEAR(job().site.obstacles.front().width_m, width + 0.7, 0.08);
    EXPECT_TRUE(validate(job()).empty());
}

TEST_F(FaceOn, an_obstacle_is_resized_and_still_dragged_in_plan) {
    press("Plan");
    Obstacle box = job().site.obstacles.front();
    box.base = {12.0, 4.0, 0.0};
    box.width_m = box.depth_m = 2.0;
    box.turn_deg = 0.0;
    set_obstacle(session, box);
    canvas().fit();
    stage.show_place(QString::fromStdString(box.id));
    ASSERT_NE(dynamic_cast<SizeTool*>(canvas().tool()), nullptr);
    const int steps = session.undo_stack().count();
    pull(canvas(), in_plan(13.0, 5.0), in_plan(14.0, 5.5));
    EXPECT_EQ(session.undo_stack().count(), steps + 1);
    EXPECT_NEAR(job().site.obstacles.front().width_m, 3.0, 0.15);
    EXPECT_NEAR(job().site.obstacles.front().depth_m, 2.5, 0.15);
    EXPECT_NEAR(job().site.obstacles.front().base.x_m - 0.5 * job().site.obstacles.front().width_m, 11.0, 0.002);
    const Point3 base = job().site.obstacles.front().base;
    pull(canvas(), in_plan(base.x_m, base.y_m), in_plan(base.x_m + 1.0, base.y_m));
    EXPECT_NEAR(job().site.obstacles.front().base.x_m, base.x_m + 1.0, 0.15) << "the body still drags";
    EXPECT_NE(dynamic_cast<SizeTool*>(canvas().tool()), nullptr);
    canvas().setFocus();
    QTest::keyClick(&canvas(), Qt::Key_PageDown);
    QTest::keyClick(&canvas(), Qt::Key_Left, Qt::ShiftModifier);
    EXPECT_NEAR(job().site.obstacles.front().width_m, 3.1, 0.16);
}

TEST_F(FaceOn, the_run_is_drawn_with_levels_and_passages) {
    press("Plan");
    canvas().fit();
    stage.draw_run();
    auto* tool = dynamic_cast<RunTool*>(canvas().tool());
    ASSERT_NE(tool, nullptr);
    QTest::mouseMove(&canvas(), in_plan(4.0, 2.0));
    QTest::mouseClick(&canvas(), Qt::LeftButton, Qt::NoModifier, in_plan(4.0, 2.0));
    ASSERT_EQ(tool->points().size(), 1U);
    const double roof_m = tool->points()[0].position.z_m;
    EXPECT_GT(roof_m, 0.0) << "the first bend lies on the roof";
    QTest::keyClick(&canvas(), Qt::Key_R);
    QTest::keyClicks(&canvas(), QStringLiteral("0.8"));
    QTest::keyClick(&canvas(), Qt::Key_Return);
    ASSERT_EQ(tool->points().size(), 2U);
    EXPECT_EQ(tool->points()[1].position.z_m, 0.8);
    EXPECT_EQ(tool->points()[1].position.x_m, tool->points()[0].position.x_m);
    QTest::keyClicks(&canvas(), QStringLiteral("0.8"));
    QTest::keyClick(&canvas(), Qt::Key_Return);
    EXPECT_FALSE(tool->problem().isEmpty()) << "it is there already";
    QTest::keyClick(&canvas(), Qt::Key_Backspace);
    QTest::keyClick(&canvas(), Qt::Key_Backspace);
    QTest::keyClick(&canvas(), Qt::Key_Backspace);
    QTest::keyClick(&canvas(), Qt::Key_Return);
    EXPECT_EQ(canvas().tool(), nullptr);
    const std::vector<RoutePoint>& route = session.current_choice()->route;
    ASSERT_EQ(route.size(), 2U);
    EXPECT_EQ(route[0].kind, RoutePointKind::roof_passage);
    EXPECT_EQ(route[1].position.z_m, 0.8);
    EXPECT_FALSE(route[0].id.empty());
    EXPECT_TRUE(validate(job()).empty());
}

TEST_F(FaceOn, rafters_are_asked_for_where_collectors_lie) {
    const auto asks = [this] {
        int count = 0;
        for (const Missing& one : still_to_measure(job()))
            count += one.what.contains(QStringLiteral("after")) ? 1 : 0;
        return count;
    };
    Surface bare = sample::roof();
    bare.id.clear();
    bare.rafters.present = false;
    add_surface(session, bare);
    add_surface(session, bare);
    EXPECT_EQ(asks(), 0) << "the roof with the collector has them";
    Surface first = *find_surface(job().site, sample::roof().id);
    first.rafters.present = false;
    set_surface(session, first);
    EXPECT_EQ(asks(), 1);
    remove_collector(session, sample::placement_id);
    EXPECT_EQ(asks(), 1) << "once for all roofs while none carries a collector";
}

}  // namespace
}  // namespace face_test
}  // namespace wg::ui
