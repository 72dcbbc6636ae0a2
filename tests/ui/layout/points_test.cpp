// Fixing points on the drawing and in the list beside it: numbers clicked, rows chosen, workings asked for.

#include <gtest/gtest.h>

#include <QListWidget>
#include <QMenu>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>

#include "core/site/geometry.h"
#include "tests/ui/common/sample.h"
#include "ui/layout/layout_stage.h"
#include "ui/layout/points_box.h"
#include "ui/layout/surface_canvas.h"

namespace wg::ui {
namespace points_test {

std::shared_ptr<const plan::Reference> reference_with_points() {
    auto made = std::make_shared<plan::Reference>(*sample::reference());
    CollectorModel& plate = made->catalogue.collectors.front();
    plate.fixing_points = {{0.3, 0.1},
                           {plate.length_m - 0.3, 0.1},
                           {plate.length_m - 0.3, plate.width_m - 0.1},
                           {0.3, plate.width_m - 0.1}};
    return made;
}

Result<plan::Plan> plan_with_points(const Job& job, const plan::Reference& reference, const plan::Options& options) {
    Result<plan::Plan> made = sample::quick_to_read_plan(job, reference, options);
    if (!made.ok()) return made;
    plan::Plan plan = made.value();
    plan.collector = reference.catalogue.collectors.front();
    const Placement& placement = find_choice(job, options.choice_id)->placements.front();
    plan::PlacementPlan placed;
    placed.placement_id = placement.id;
    placed.label = placement.label;
    placed.surface_id = placement.surface_id;
    placed.placed = site::place(job.site.surfaces.front(), job.site.sketch_up_azimuth_deg, placement, plan.collector);
    const double uses[] = {0.55, 0.95, 1.2, 0.3};
    for (std::size_t i = 0; i < placed.placed.fixing_points.size() && i < 4; ++i) {
        fixing::FixingPoint point;
        point.number = static_cast<int>(i) + 1;
        point.placement_id = placement.id;
        point.position = placed.placed.fixing_points[i];
        point.pull_n = 1500.0 * uses[i];
        point.shear_n = 400.0;
        point.utilisation = uses[i];
        point.worst_combination = "wind uplift, " + std::to_string(i);
        placed.fixing.points.push_back(point);
    }
    placed.fixing.worst_point = 3;
    placed.fixing.worst_utilisation = 1.2;
    plan.placements = {placed};
    return plan;
}

struct Points : testing::Test {
    JobSession session{sample::job(), reference_with_points(), plan_with_points};
    LayoutStage stage;
    SurfaceCanvas* canvas = nullptr;
    QListWidget* list = nullptr;
    void SetUp() override {
        stage.resize(1000, 640);
        stage.set_session(&session);
        stage.show();
        canvas = stage.surface_canvas();
        list = stage.points_box()->list();
        ASSERT_TRUE(sample::settle(session));
        canvas->fit();
        canvas->grab();  // paints, which says where the numbers stand
    }
    const PointNumber& number(int wanted) {
        for (const PointNumber& one : canvas->point_numbers())
            if (one.number == wanted) return one;
        static const PointNumber none;
        return none;
    }
};

TEST_F(Points, the_list_gives_every_point_with_its_use_and_marks_the_worst_by_word) {
    ASSERT_EQ(static_cast<std::size_t>(list->count()), session.plan()->placements.front().fixing.points.size());
    const auto words = [&](int row) {
        return list->item(row)->data(Qt::AccessibleTextRole).toString().remove(QChar(0x202F));
    };
    EXPECT_TRUE(words(1).contains(QStringLiteral("95% used"))) << words(1).toStdString();
    EXPECT_TRUE(words(0).contains(QStringLiteral("pull 0.83kN, shear 0.40kN"))) << words(0).toStdString();
    EXPECT_TRUE(words(2).contains(QStringLiteral("worst, 120% used"))) << words(2).toStdString();
    EXPECT_TRUE(words(2).contains(QStringLiteral("governed by wind uplift, 2"))) << words(2).toStdString();
    EXPECT_FALSE(words(1).contains(QStringLiteral("worst")));
    EXPECT_FALSE(list->accessibleName().isEmpty());
    // The other surface has none.
    stage.show_place(QString::fromStdString(sample::terrace().id));
    EXPECT_EQ(list->count(), 0);
    EXPECT_TRUE(list->isHidden());
}

TEST_F(Points, a_click_on_a_number_asks_for_that_points_working_and_moves_nothing) {
    ASSERT_EQ(canvas->point_numbers().size(), session.plan()->placements.front().fixing.points.size());
    QSignalSpy asked(&stage, &StageWidget::point_working_asked);
    QTest::mouseClick(canvas, Qt::LeftButton, {}, number(2).box.center().toPoint());
    ASSERT_EQ(asked.count(), 1);
    EXPECT_EQ(asked[0][0].toString().toStdString(), sample::placement_id);
    EXPECT_EQ(asked[0][1].toInt(), 2);
    EXPECT_EQ(list->currentRow(), 1) << "the row beside is chosen too";
    EXPECT_EQ(canvas->selected(), sample::placement_id);
    EXPECT_EQ(session.undo_stack().count(), 0);
}

TEST_F(Points, a_plate_is_dragged_from_a_number_that_lies_on_it_and_asks_nothing) {
    QSignalSpy asked(&stage, &StageWidget::point_working_asked);
    canvas->set_snapping(false);
    // A number over the plate, wherever the painter has put it: drag from the cross, which the plate surely carries.
    QPoint from = number(3).cross.toPoint();
    for (const PointNumber& one : canvas->point_numbers()) {
        const Point2 at = canvas->view().unmap(one.box.center());
        const auto placed = session.plan()->placements.front().placed.outline;
        if (site::contains(placed, at)) from = one.box.center().toPoint();
    }
    QTest::mousePress(canvas, Qt::LeftButton, {}, from);
    for (int i = 1; i <= 5; ++i)
        QTest::mouseMove(canvas, from + QPoint(8 * i, 0));
    QTest::mouseRelease(canvas, Qt::LeftButton, {}, from + QPoint(40, 0));
    EXPECT_EQ(asked.count(), 0);
    EXPECT_EQ(session.undo_stack().count(), 1);
}

TEST_F(Points, the_list_asks_by_enter_and_by_its_button_and_w_on_the_drawing_for_the_worst) {
    QSignalSpy asked(&stage, &StageWidget::point_working_asked);
    list->setCurrentRow(3);
    Q_EMIT list->itemActivated(list->item(3));
    ASSERT_EQ(asked.count(), 1);
    EXPECT_EQ(asked[0][1].toInt(), 4);
    for (QPushButton* button : stage.points_box()->findChildren<QPushButton*>())
        button->click();
    ASSERT_EQ(asked.count(), 2);
    EXPECT_EQ(asked[1][1].toInt(), 4);
    canvas->set_selected(sample::placement_id);
    QTest::keyClick(canvas, Qt::Key_W);
    ASSERT_EQ(asked.count(), 3);
    EXPECT_EQ(asked[2][1].toInt(), 0) << "of the worst";
}

TEST_F(Points, the_menu_on_a_point_offers_its_working) {
    QSignalSpy asked(&stage, &StageWidget::point_working_asked);
    const QPoint at = number(3).cross.toPoint();
    QContextMenuEvent event(QContextMenuEvent::Mouse, at, canvas->mapToGlobal(at));
    QApplication::sendEvent(canvas, &event);
    auto* menu = canvas->findChild<QMenu*>();
    ASSERT_NE(menu, nullptr);
    ASSERT_EQ(menu->actions().size(), 1);
    EXPECT_TRUE(menu->actions().front()->text().contains(u'3'));
    menu->actions().front()->trigger();
    ASSERT_EQ(asked.count(), 1);
    EXPECT_EQ(asked[0][1].toInt(), 3);
    menu->close();
}

TEST_F(Points, use_is_told_by_shape_square_over_the_limit_triangle_near_it_and_a_diamond_at_the_worst) {
    // Grey print: count dark dots in the ring of space where only the shapes reach.
    const QImage grey = canvas->grab().toImage().convertToFormat(QImage::Format_Grayscale8);
    const double ratio = grey.devicePixelRatio();
    const auto ink_round = [&](int wanted) {
        const QPointF at = number(wanted).cross * ratio;
        int dark = 0;
        for (int y = -14; y <= 14; ++y)
            for (int x = -14; x <= 14; ++x) {
                const double r = std::hypot(x, y);
                if (r > 6.5 && r < 14.0 && std::abs(x) > 1 && std::abs(y) > 1)
                    dark += qGray(grey.pixel(qRound(at.x()) + x, qRound(at.y()) + y)) < 150 ? 1 : 0;
            }
        return dark;
    };
    EXPECT_GT(ink_round(3), ink_round(2)) << "square and diamond against a triangle";
    EXPECT_GT(ink_round(2), ink_round(4)) << "a triangle against a plain ring";
}

}  // namespace points_test
}  // namespace wg::ui
