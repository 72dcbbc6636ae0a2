// A house drawn through the real widgets: clicks, typed lengths, corners dragged, undone.

#include <gtest/gtest.h>

#include <QPushButton>
#include <QSignalSpy>
#include <QTableWidget>
#include <QTest>

#include "core/job/codec.h"
#include "core/roof/linked.h"
#include "tests/ui/common/sample.h"
#include "ui/common/building_edits.h"
#include "ui/common/edits.h"
#include "ui/drawing/site_canvas.h"
#include "ui/visit/building_editor.h"
#include "ui/visit/corner_tool.h"
#include "ui/visit/new_elements.h"
#include "ui/visit/outline_tool.h"
#include "ui/visit/visit_stage.h"

namespace wg::ui {
namespace {

Job empty_job() {
    Job job = sample::job();
    job.site.surfaces.clear();
    job.site.obstacles.clear();
    job.choices.clear();
    job.chosen_choice_id.clear();
    job.site.sketch_up_azimuth_deg = 0.0;
    return job;
}

struct Sketch : testing::Test {
    JobSession session{empty_job(), sample::reference(), sample::quick_to_read_plan};
    VisitStage stage;
    void SetUp() override {
        stage.resize(1040, 640);
        stage.set_session(&session);
        stage.show();
    }
    SiteCanvas& canvas() { return *stage.canvas(); }
    OutlineTool& outline() { return dynamic_cast<OutlineTool&>(*canvas().tool()); }
    QPoint at(double x_m, double y_m) { return canvas().view().map(x_m, y_m).toPoint(); }
    void click(double x_m, double y_m) {
        QTest::mouseMove(&canvas(), at(x_m, y_m));
        QTest::mouseClick(&canvas(), Qt::LeftButton, Qt::NoModifier, at(x_m, y_m));
    }
    void type(const char* keys) {
        QTest::keyClicks(&canvas(), QString::fromLatin1(keys));
        QTest::keyClick(&canvas(), Qt::Key_Return);
    }
    /// 12 x 6 with a wing of 5 x 5, by keys alone.
    void draw_l_house(BuildingShape shape) {
        stage.draw_building(shape);
        QTest::keyClick(&canvas(), Qt::Key_Return);
        QTest::keyClick(&canvas(), Qt::Key_Right);
        type("12");
        type("6");
        type("7");
        type("5 @ -90");
        type("5");
        QTest::keyClick(&canvas(), Qt::Key_Return);
    }
};

TEST_F(Sketch, a_house_is_drawn_by_keys_alone) {
    draw_l_house(BuildingShape::hip);
    ASSERT_EQ(session.job().site.buildings.size(), 1U);
    const Building& house = session.job().site.buildings.front();
    ASSERT_EQ(house.edges.size(), 6U);
    EXPECT_EQ(session.job().site.surfaces.size(), 12U);
    EXPECT_EQ(stage.selected(), house.id);
    EXPECT_TRUE(validate(session.job()).empty());
    const double lengths[] = {12, 6, 7, 5, 5, 11};
    for (std::size_t i = 0; i < 6; ++i) {
        const Point2& a = house.edges[i].from;
        const Point2& b = house.edges[(i + 1) % 6].from;
        EXPECT_NEAR(std::hypot(b.x_m - a.x_m, b.y_m - a.y_m), lengths[i], 0.002) << i;
    }
    EXPECT_EQ(session.undo_stack().count(), 1);
    session.undo_stack().undo();
    EXPECT_TRUE(session.job().site.surfaces.empty());
    EXPECT_TRUE(session.job().site.buildings.empty());
    EXPECT_EQ(canvas().tool(), nullptr) << "no corners are left to edit";
}

TEST_F(Sketch, a_house_is_drawn_by_clicks_and_closed_on_its_first_corner) {
    stage.draw_building(BuildingShape::gable);
    canvas().zoom_by(canvas().units_per_m() > 25.0 ? 0.5 : 1.0, QPointF(canvas().rect().center()));
    const Point2 c = canvas().view().unmap(QPointF(canvas().rect().center()));
    const auto r = [](double v) { return std::round(v); };
    const Point2 o{r(c.x_m) - 3.0, r(c.y_m) - 2.0};
    click(o.x_m, o.y_m);
    click(o.x_m + 6.0, o.y_m);
    click(o.x_m + 6.0, o.y_m + 4.0);
    click(o.x_m, o.y_m + 4.0);
    EXPECT_EQ(outline().drawn().size(), 4U);
    click(o.x_m, o.y_m);
    ASSERT_EQ(session.job().site.buildings.size(), 1U);
    EXPECT_EQ(session.job().site.surfaces.size(), 6U);
}

TEST_F(Sketch, an_edge_that_crosses_is_refused_with_its_number) {
    stage.draw_building(BuildingShape::gable);
    QTest::keyClick(&canvas(), Qt::Key_Return);
    QTest::keyClick(&canvas(), Qt::Key_Right);
    type("8");
    type("5");
    type("4");
    type("9");
    EXPECT_EQ(outline().drawn().size(), 4U);
    EXPECT_NE(outline().problem().indexOf(QStringLiteral("edge 1")), -1) << outline().problem().toStdString();
    QTest::keyClick(&canvas(), Qt::Key_Escape);
    EXPECT_EQ(canvas().tool(), nullptr);
    EXPECT_EQ(session.undo_stack().count(), 0);
}

TEST_F(Sketch, nonsense_typed_is_said_and_left_to_be_mended) {
    stage.draw_building(BuildingShape::gable);
    QTest::keyClick(&canvas(), Qt::Key_Return);
    type("4.2.1");
    EXPECT_FALSE(outline().problem().isEmpty());
    EXPECT_EQ(outline().typed(), QStringLiteral("4.2.1"));
    EXPECT_EQ(outline().drawn().size(), 1U);
    QTest::keyClick(&canvas(), Qt::Key_Backspace);
    QTest::keyClick(&canvas(), Qt::Key_Backspace);
    QTest::keyClick(&canvas(), Qt::Key_Return);
    EXPECT_EQ(outline().drawn().size(), 2U);
    QTest::keyClick(&canvas(), Qt::Key_Backspace);
    EXPECT_EQ(outline().drawn().size(), 1U) << "back one corner";
}

TEST_F(Sketch, a_corner_dragged_takes_the_roof_along_in_one_step) {
    draw_l_house(BuildingShape::hip);
    canvas().fit();
    const Point2 corner = session.job().site.buildings.front().edges[2].from;
    const std::string surface = session.job().site.surfaces.front().id;
    const QPoint from = at(corner.x_m, corner.y_m);
    const int steps = session.undo_stack().count();
    QTest::mouseMove(&canvas(), from);
    QTest::mousePress(&canvas(), Qt::LeftButton, Qt::NoModifier, from);
    for (int i = 1; i <= 4; ++i)
        QTest::mouseMove(&canvas(), from + QPoint(8 * i, -3 * i));
    QTest::mouseRelease(&canvas(), Qt::LeftButton, Qt::NoModifier, from + QPoint(32, -12));
    const Building& house = session.job().site.buildings.front();
    EXPECT_GT(house.edges[2].from.x_m, corner.x_m + 0.2);
    EXPECT_EQ(session.undo_stack().count(), steps + 1);
    EXPECT_EQ(session.job().site.surfaces.front().id, surface);
    EXPECT_TRUE(validate(session.job()).empty());
}

TEST_F(Sketch, corners_are_edited_by_keys) {
    draw_l_house(BuildingShape::hip);
    QTest::keyClick(&canvas(), Qt::Key_PageDown);
    const Point2 corner = session.job().site.buildings.front().edges[0].from;
    QTest::keyClick(&canvas(), Qt::Key_Left, Qt::ShiftModifier);
    EXPECT_NEAR(session.job().site.buildings.front().edges[0].from.x_m, corner.x_m - 0.1, 1e-9);
    QTest::keyClick(&canvas(), Qt::Key_Insert);
    EXPECT_EQ(session.job().site.buildings.front().edges.size(), 7U);
    QTest::keyClick(&canvas(), Qt::Key_Delete);
    EXPECT_EQ(session.job().site.buildings.front().edges.size(), 6U);
}

TEST_F(Sketch, pitch_is_typed_as_degrees_as_rise_over_run_or_by_the_ridge) {
    draw_l_house(BuildingShape::hip);
    BuildingEditor& editor = *stage.building_editor();
    const auto pitch = [&] { return session.job().site.buildings.front().pitch_deg; };
    const auto typed = [&](QLineEdit* field, const char* text) {
        field->setText(QString::fromLatin1(text));
        QTest::keyClick(field, Qt::Key_Return);
    };
    typed(editor.pitch_field(), "7:12");
    EXPECT_NEAR(pitch(), 30.256, 0.001);  // arctan(7/12), steel-square tables
    typed(editor.pitch_field(), "41,5");
    EXPECT_NEAR(pitch(), 41.5, 1e-9);
    typed(editor.pitch_field(), "steep");
    EXPECT_FALSE(editor.problem().isEmpty());
    EXPECT_NEAR(pitch(), 41.5, 1e-9);
    // Hip over 6 m: 3 m of run from the wall; eaves at 5 m.
    typed(editor.ridge_field()->line_edit(), "8");
    EXPECT_NEAR(pitch(), 45.0, 1e-6);
    EXPECT_TRUE(editor.problem().isEmpty());
}

TEST_F(Sketch, a_length_typed_in_the_table_keeps_the_angles) {
    draw_l_house(BuildingShape::hip);
    QTableWidget& table = *stage.building_editor()->edges();
    ASSERT_EQ(table.rowCount(), 6);
    table.item(0, 0)->setText(QStringLiteral("13.5"));
    const Building& house = session.job().site.buildings.front();
    for (std::size_t i = 0; i < 6; ++i) {
        const Point2& a = house.edges[i].from;
        const Point2& b = house.edges[(i + 1) % 6].from;
        EXPECT_TRUE(std::abs(a.x_m - b.x_m) < 0.002 || std::abs(a.y_m - b.y_m) < 0.002) << i;
    }
    EXPECT_NEAR(house.edges[1].from.x_m - house.edges[0].from.x_m, 13.5, 0.002);
    table.item(0, 0)->setText(QStringLiteral("-2"));
    EXPECT_FALSE(stage.building_editor()->problem().isEmpty());
    EXPECT_NEAR(session.job().site.buildings.front().edges[1].from.x_m - house.edges[0].from.x_m, 13.5, 0.002);
}

TEST_F(Sketch, a_roof_plane_of_a_house_moves_and_goes_with_it) {
    draw_l_house(BuildingShape::gable);
    const Surface before = session.job().site.surfaces.front();
    stage.show_place(QString::fromStdString(before.id));
    QTest::keyClick(&canvas(), Qt::Key_Right, Qt::ShiftModifier);
    EXPECT_NEAR(session.job().site.surfaces.front().origin.x_m, before.origin.x_m + 0.1, 2e-3);
    EXPECT_NEAR(session.job().site.surfaces.back().origin.x_m, session.job().site.surfaces.back().origin.x_m, 2e-3);
    remove_element(session, before.id);
    EXPECT_TRUE(session.job().site.buildings.empty());
    EXPECT_TRUE(session.job().site.surfaces.empty());
}

TEST_F(Sketch, a_chimney_stands_on_the_roof_it_is_set_on) {
    draw_l_house(BuildingShape::gable);
    const Point2 corner = session.job().site.buildings.front().edges[0].from;
    const Obstacle chimney =
        new_obstacle(ObstacleUse::chimney, {corner.x_m + 6.0, corner.y_m + 3.0}, session.job().site);
    EXPECT_GT(chimney.base.z_m, 5.0);
    EXPECT_LT(chimney.base.z_m, 8.0);
    EXPECT_EQ(new_obstacle(ObstacleUse::chimney, {corner.x_m - 20.0, corner.y_m}, session.job().site).base.z_m, 0.0);
}

}  // namespace
}  // namespace wg::ui
