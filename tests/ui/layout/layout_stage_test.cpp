#include <gtest/gtest.h>

#include <QSignalSpy>
#include <QTest>
#include <cmath>

#include "tests/ui/common/sample.h"
#include "ui/common/theme.h"
#include "ui/drawing/site_canvas.h"
#include "ui/layout/edge_offsets.h"
#include "ui/layout/layout_stage.h"
#include "ui/layout/snap.h"
#include "ui/layout/surface_canvas.h"

namespace wg::ui {
namespace {

// The pointer stands on whole pixels; at the test's scale one is about a centimetre and a half.
constexpr double one_pixel_m = 0.02;
constexpr double rounding_m = 0.0006;  // positions are whole millimetres

struct Stage : testing::Test {
    JobSession session{sample::job(), sample::reference(), sample::quick_to_read_plan};
    LayoutStage stage;
    SurfaceCanvas* canvas = nullptr;

    void SetUp() override {
        stage.resize(1000, 640);
        stage.set_session(&session);
        stage.show();
        canvas = stage.surface_canvas();
        canvas->set_snapping(false);
        canvas->fit();
    }
    [[nodiscard]] const Placement& placement() const { return session.current_choice()->placements.front(); }
    [[nodiscard]] QPoint on_screen(Point2 at) const { return canvas->view().map(at).toPoint(); }
    void drag(QPoint from, QPoint to) {
        QTest::mousePress(canvas, Qt::LeftButton, Qt::NoModifier, from);
        for (int i = 1; i <= 5; ++i)
            QTest::mouseMove(canvas, from + (to - from) * i / 5);
        QTest::mouseRelease(canvas, Qt::LeftButton, Qt::NoModifier, to);
    }
};

TEST_F(Stage, ShowsTheSurfaceOfTheFirstCollector) {
    EXPECT_EQ(canvas->surface_id(), sample::roof().id);
}

TEST_F(Stage, DraggingMovesTheCollectorByTheMetresUnderThePointerInOneUndoStep) {
    const double units = canvas->units_per_m();
    const QPoint from = on_screen({placement().x_m, placement().y_m});
    const QPoint to = from + QPoint(60, -40);
    drag(from, to);
    EXPECT_NEAR(placement().x_m, 4.0 + 60.0 / units, rounding_m);
    EXPECT_NEAR(placement().y_m, 2.5 + 40.0 / units, rounding_m);
    EXPECT_EQ(session.undo_stack().count(), 1);
    session.undo_stack().undo();
    EXPECT_EQ(placement().x_m, 4.0);
    EXPECT_EQ(placement().y_m, 2.5);
}

TEST_F(Stage, TwoDragsAreTwoSteps) {
    const QPoint from = on_screen({placement().x_m, placement().y_m});
    drag(from, from + QPoint(30, 0));
    const QPoint again = on_screen({placement().x_m, placement().y_m});
    drag(again, again + QPoint(0, 30));
    EXPECT_EQ(session.undo_stack().count(), 2);
}

TEST_F(Stage, ClickingOnlySelects) {
    const QPoint at = on_screen({placement().x_m, placement().y_m});
    QTest::mouseClick(canvas, Qt::LeftButton, Qt::NoModifier, at);
    EXPECT_EQ(canvas->selected(), sample::placement_id);
    EXPECT_EQ(session.undo_stack().count(), 0);
    QTest::mouseClick(canvas, Qt::LeftButton, Qt::NoModifier, on_screen({0.2, 0.2}));
    EXPECT_EQ(canvas->selected(), "");
}

TEST_F(Stage, ArrowKeysNudgeByACentimetreAndWithShiftByTen) {
    canvas->set_selected(sample::placement_id);
    QTest::keyClick(canvas, Qt::Key_Right);
    EXPECT_NEAR(placement().x_m, 4.01, 1e-9);
    QTest::keyClick(canvas, Qt::Key_Up, Qt::ShiftModifier);
    EXPECT_NEAR(placement().y_m, 2.60, 1e-9);
    EXPECT_EQ(session.undo_stack().count(), 2) << "each press is a step of its own";
}

TEST(Turning, RGoesThroughTheTurnsThatTheMakerAllowsAndHChangesTheHand) {
    auto reference = std::make_shared<plan::Reference>(*sample::reference());
    reference->catalogue.collectors[0].level_side = LevelSide::either;
    JobSession session{sample::job(), reference, sample::quick_to_read_plan};
    LayoutStage stage;
    stage.set_session(&session);
    SurfaceCanvas* canvas = stage.surface_canvas();
    canvas->set_selected(sample::placement_id);
    const auto placement = [&]() -> const Placement& { return session.current_choice()->placements.front(); };
    QTest::keyClick(canvas, Qt::Key_R);
    EXPECT_NEAR(placement().turn_deg, 90.0, 1e-9);
    QTest::keyClick(canvas, Qt::Key_H);
    EXPECT_EQ(placement().hand, Hand::left);
    QTest::keyClick(canvas, Qt::Key_R);
    EXPECT_NEAR(placement().turn_deg, 270.0, 1e-9) << "not 180: the connections would look up";
    QTest::keyClick(canvas, Qt::Key_R);
    EXPECT_NEAR(placement().turn_deg, 0.0, 1e-9);
    QTest::keyClick(canvas, Qt::Key_R, Qt::ShiftModifier);
    EXPECT_NEAR(placement().turn_deg, 270.0, 1e-9);
}

TEST_F(Stage, PageDownTakesTheCollectorToTheNextSurface) {
    canvas->set_selected(sample::placement_id);
    QTest::keyClick(canvas, Qt::Key_PageDown);
    EXPECT_EQ(placement().surface_id, sample::terrace().id);
    EXPECT_EQ(canvas->surface_id(), sample::terrace().id);
}

TEST_F(Stage, EscapeDuringADragPutsTheCollectorBack) {
    canvas->setFocus();
    const QPoint from = on_screen({placement().x_m, placement().y_m});
    QTest::mousePress(canvas, Qt::LeftButton, Qt::NoModifier, from);
    QTest::mouseMove(canvas, from + QPoint(50, 0));
    EXPECT_GT(placement().x_m, 4.0 + one_pixel_m);
    QTest::keyClick(canvas, Qt::Key_Escape);
    EXPECT_NEAR(placement().x_m, 4.0, 1e-9);
    QTest::mouseRelease(canvas, Qt::LeftButton, Qt::NoModifier, from);
}

TEST_F(Stage, WheelZoomsAboutThePointer) {
    const QPointF at(300, 200);
    const Point2 before = canvas->view().unmap(at);
    const double units = canvas->units_per_m();
    canvas->zoom_by(1.5, at);
    EXPECT_NEAR(canvas->units_per_m(), units * 1.5, 1e-9);
    const Point2 after = canvas->view().unmap(at);
    EXPECT_NEAR(after.x_m, before.x_m, 1e-9);
    EXPECT_NEAR(after.y_m, before.y_m, 1e-9);
}

TEST_F(Stage, SaysWhereThePointerIs) {
    QSignalSpy said(&stage, &StageWidget::status_text);
    QTest::mouseMove(canvas, on_screen({1.0, 1.0}));
    ASSERT_FALSE(said.isEmpty());
    EXPECT_TRUE(said.last().front().toString().contains(QStringLiteral("from the left edge")));
}

TEST_F(Stage, FollowsAFindingToTheCollector) {
    stage.show_view(LayoutStage::View::run);
    stage.show_place(QString::fromStdString(sample::placement_id));
    EXPECT_EQ(stage.view(), LayoutStage::View::surface);
    EXPECT_EQ(canvas->selected(), sample::placement_id);
}

TEST_F(Stage, LosesItsSelectionWhenTheCollectorGoes) {
    canvas->set_selected(sample::placement_id);
    QTest::keyClick(canvas, Qt::Key_Delete);
    EXPECT_TRUE(session.current_choice()->placements.empty());
    EXPECT_EQ(canvas->selected(), "");
}

TEST_F(Stage, SurvivesTheClosingOfItsJob) {
    stage.set_session(nullptr);
    stage.grab();
    EXPECT_EQ(canvas->selected(), "");
}

SnapInput snap_input(const Surface& surface, const Placement& placement, const CollectorModel& model) {
    SnapInput input;
    input.surface = &surface;
    input.placement = &placement;
    input.model = &model;
    return input;
}

TEST(Snap, BringsFixingPointsOntoRaftersAndSaysHowMany) {
    Surface surface = sample::roof();
    surface.rafters.first_m = 0.2;
    surface.rafters.spacing_m = 0.6;
    CollectorModel model;
    model.fixing_points = {{0.4, 0.1}, {1.0, 0.1}, {1.6, 0.1}};  // 0.6 m apart, as the rafters
    Placement placement;
    // Rafters at 0.2 + 0.6 n; points at x - 0.6, x, x + 0.6: the middle belongs on 3.8.
    const Snapped to = snap(snap_input(surface, placement, model), 3.83, 2.0);
    EXPECT_NEAR(to.x_m, 3.8, 1e-9);
    EXPECT_TRUE(to.reason_x.contains(QStringLiteral("3 of 3"))) << to.reason_x.toStdString();
    EXPECT_EQ(to.y_m, 2.0);
    EXPECT_TRUE(to.reason_y.isEmpty());
}

TEST(Snap, HoldsTheMakersClearanceFromTheEdge) {
    Surface surface = sample::roof();
    surface.rafters.present = false;
    CollectorModel model;
    model.clearance_m = 0.3;
    const Placement placement;
    const Snapped to = snap(snap_input(surface, placement, model), 1.32, 2.0);  // left side at 0.32
    EXPECT_NEAR(to.x_m, 1.3, 1e-9);
    EXPECT_FALSE(to.reason_x.isEmpty());
}

TEST(Snap, RestsBesideAWindowWhereSurveyAndMakerAreBothContent) {
    Surface surface = sample::roof();
    surface.rafters.present = false;
    KeepOut window;
    window.label = "window";
    window.outline = {{5.5, 2.0}, {6.5, 2.0}, {6.5, 3.0}, {5.5, 3.0}};
    window.clearance_m = 0.15;
    surface.keep_outs = {window};
    CollectorModel model;  // 2.0 x 0.8 m
    model.clearance_m = 0.3;
    const Placement placement;
    EXPECT_NEAR(snap(snap_input(surface, placement, model), 4.22, 2.5).x_m, 4.2, 1e-9);  // right side at 5.2
    surface.keep_outs[0].clearance_m = 0.4;
    EXPECT_NEAR(snap(snap_input(surface, placement, model), 4.12, 2.5).x_m, 4.1, 1e-9);
}

TEST(Snap, RestsBesideItsNeighbourWithTheMakersStripBetween) {
    Surface surface = sample::roof();
    surface.rafters.present = false;
    CollectorModel model;
    model.clearance_m = 0.3;
    Placement other;
    other.label = "Collector 2";
    other.x_m = 2.0;
    other.y_m = 2.5;
    const Placement placement;
    SnapInput input = snap_input(surface, placement, model);
    input.others = {&other};
    const Snapped to = snap(input, 4.33, 2.55);
    EXPECT_NEAR(to.x_m, 4.3, 1e-9);
    EXPECT_NEAR(to.y_m, 2.5, 1e-9);
    EXPECT_TRUE(to.reason_x.contains(QStringLiteral("beside Collector 2"))) << to.reason_x.toStdString();
}

TEST(Snap, LeavesAFarPlaceAlone) {
    Surface surface = sample::roof();
    surface.rafters.present = false;
    const CollectorModel model;
    const Placement placement;
    const Snapped to = snap(snap_input(surface, placement, model), 4.0, 2.5);
    EXPECT_EQ(to.x_m, 4.0);
    EXPECT_EQ(to.y_m, 2.5);
}

TEST(EdgeOffsets, AreMeasuredFromThePlatesSides) {
    Placement placement;
    placement.x_m = 4.0;
    placement.y_m = 2.5;
    const CollectorModel model;  // 2.0 x 0.8 m
    const EdgeOffsets offsets = edge_offsets(sample::roof(), placement, model, 0.0);
    EXPECT_NEAR(*offsets.left_m, 3.0, 1e-9);
    EXPECT_NEAR(*offsets.low_m, 2.1, 1e-9);
    placement.turn_deg = 90.0;
    EXPECT_NEAR(*edge_offsets(sample::roof(), placement, model, 0.0).left_m, 3.6, 1e-9);
}

}  // namespace
}  // namespace wg::ui
