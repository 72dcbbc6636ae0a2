#include "ui/layout/run_panel.h"

#include <gtest/gtest.h>

#include <QLabel>
#include <QPushButton>

#include "tests/ui/common/sample.h"
#include "ui/common/edits.h"

namespace wg::ui {
namespace run_panel_test {
namespace {

struct Panel : testing::Test {
    JobSession session{sample::job(), sample::reference(), sample::quick_to_read_plan};
    RunPanel panel;
    void SetUp() override {
        panel.set_session(&session);
        stand_cylinder_at({4.0, 3.0, -0.8});
    }
    void stand_cylinder_at(const Point3& place) {
        CylinderSpot spot = session.job().site.spots.front();
        spot.position = place;
        set_spot_data(session, spot);
    }
    QPushButton* button(const QString& text) {
        for (QPushButton* b : panel.findChildren<QPushButton*>())
            if (b->text() == text) return b;
        return nullptr;
    }
    QLabel* note() {
        for (QLabel* label : panel.findChildren<QLabel*>())
            if (label->accessibleName() == QLatin1String("About the suggested run")) return label;
        return nullptr;
    }
    [[nodiscard]] const std::vector<RoutePoint>& route() const { return session.current_choice()->route; }
};

TEST_F(Panel, suggestion_is_one_step_with_points_of_their_own_that_can_be_moved) {
    const std::vector<RoutePoint> before = route();
    ASSERT_NE(button(QStringLiteral("Suggest a run")), nullptr);
    const int steps = session.undo_stack().count();
    button(QStringLiteral("Suggest a run"))->click();
    ASSERT_NE(route(), before) << note()->text().toStdString();
    EXPECT_EQ(session.undo_stack().count(), steps + 1);
    for (const RoutePoint& point : route())
        EXPECT_EQ(point.id.size(), 36u);
    EXPECT_TRUE(note()->isVisibleTo(&panel));
    EXPECT_TRUE(note()->text().startsWith(QLatin1String("Through the "))) << note()->text().toStdString();
    const std::string first = route().front().id;
    Point3 at = route().front().position;
    at.z_m += 0.1;
    move_route_point(session, first, at);
    EXPECT_EQ(route().front().position, at);
    EXPECT_FALSE(note()->isVisibleTo(&panel)) << "no longer the suggested way";
    session.undo_stack().undo();
    session.undo_stack().undo();
    EXPECT_EQ(route(), before);
}

TEST_F(Panel, without_a_collector_there_is_nothing_to_suggest) {
    while (!session.current_choice()->placements.empty())
        remove_collector(session, session.current_choice()->placements.front().id);
    EXPECT_FALSE(button(QStringLiteral("Suggest a run"))->isEnabled());
}

TEST_F(Panel, what_stands_in_the_way_is_told) {
    stand_cylinder_at({4.0, 3.0, 3.0});  // over the roof
    const std::vector<RoutePoint> before = route();
    const int steps = session.undo_stack().count();
    button(QStringLiteral("Suggest a run"))->click();
    EXPECT_EQ(route(), before);
    EXPECT_EQ(session.undo_stack().count(), steps);
    EXPECT_TRUE(note()->isVisibleTo(&panel));
    EXPECT_TRUE(note()->text().startsWith(QLatin1String("No way"))) << note()->text().toStdString();
}

}  // namespace
}  // namespace run_panel_test
}  // namespace wg::ui
