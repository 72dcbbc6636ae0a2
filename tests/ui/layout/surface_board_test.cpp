// Several collectors, rows and the rules of place on the face-on surface.
#include <gtest/gtest.h>

#include <QCheckBox>
#include <QImage>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>
#include <QWindow>
#include <cmath>

#include "core/site/geometry.h"
#include "tests/ui/common/sample.h"
#include "ui/common/arrange_edits.h"
#include "ui/common/edits.h"
#include "ui/drawing/fields.h"
#include "ui/layout/arrange_panel.h"
#include "ui/layout/collector_panel.h"
#include "ui/layout/layout_stage.h"
#include "ui/layout/rules_box.h"
#include "ui/layout/surface_canvas.h"

namespace wg::ui {
namespace surface_board_test {

constexpr double rounding_m = 0.0006;  // positions are whole millimetres

/// South roof of 8 x 5 m with a window at its upper right, three collectors of 2 x 0.8 m.
Job board_job() {
    Job job = sample::job();
    job.site.obstacles.clear();
    KeepOut window;
    window.id = "77777777-7777-4777-8777-777777777777";
    window.label = "Roof window";
    window.clearance_m = 0.25;
    window.outline = {{6.0, 3.0}, {7.0, 3.0}, {7.0, 4.2}, {6.0, 4.2}};
    job.site.surfaces[0].keep_outs = {window};
    Placement more = job.choices[0].placements[0];
    for (const auto& [id, label, x, y] : {std::tuple{"p2", "Collector 2", 1.6, 1.0}, {"p3", "Collector 3", 5.1, 1.2}}) {
        more.id = id;
        more.label = label;
        more.x_m = x;
        more.y_m = y;
        job.choices[0].placements.push_back(more);
    }
    return job;
}

struct Board : testing::Test {
    JobSession session{board_job(), sample::reference(), sample::quick_to_read_plan};
    LayoutStage stage;
    SurfaceCanvas* canvas = nullptr;

    void SetUp() override {
        stage.resize(1100, 700);
        stage.set_session(&session);
        stage.show();
        canvas = stage.surface_canvas();
        canvas->set_snapping(false);
        canvas->fit();
    }
    [[nodiscard]] const Placement& at(int i) const {
        return session.current_choice()->placements[static_cast<std::size_t>(i)];
    }
    [[nodiscard]] QPoint middle(int i) const { return canvas->view().map({at(i).x_m, at(i).y_m}).toPoint(); }
    void click(int i, Qt::KeyboardModifiers keys = Qt::NoModifier) {
        QTest::mouseClick(canvas, Qt::LeftButton, keys, middle(i));
    }
    void press_button(const QString& words) {
        QCoreApplication::processEvents();  // what has just been shown gets its place first
        for (QPushButton* button : stage.findChildren<QPushButton*>()) {
            if (button->text() == words && button->isVisible()) {
                QTest::mouseClick(button, Qt::LeftButton);
                return;
            }
        }
        FAIL() << "no button " << words.toStdString();
    }
    [[nodiscard]] bool has_code(const char* code) const {
        for (const fixing::TightSpot& spot : canvas->rules().tight) {
            if (spot.code == code) return true;
        }
        return false;
    }
};

TEST_F(Board, ADragTowardsAWindowShowsTheRuleAtOnceAndOutAgainClearsIt) {
    QSignalSpy said(&stage, &StageWidget::status_text);
    const QPoint from = middle(0);  // at 4.0, 2.5
    QTest::mousePress(canvas, Qt::LeftButton, Qt::NoModifier, from);
    EXPECT_TRUE(canvas->rules().tight.empty());
    const auto to = [&](double x, double y) {
        QTest::mouseMove(canvas, canvas->view().map({x, y}).toPoint());
        return said.isEmpty() ? QString() : said.last().front().toString();
    };
    QString words = to(4.88, 3.5);  // right side at 5.88: 0.12 m from the window
    ASSERT_TRUE(has_code("collector.keep-out-clearance"));
    EXPECT_TRUE(words.startsWith(QStringLiteral("Stop: 0.1"))) << words.toStdString();
    EXPECT_TRUE(words.contains(QStringLiteral("to Roof window; 0.25 m asked (survey)"))) << words.toStdString();
    words = to(6.0, 3.5);
    EXPECT_TRUE(has_code("collector.on-keep-out"));
    EXPECT_TRUE(words.contains(QStringLiteral("over Roof window"))) << words.toStdString();
    words = to(7.5, 2.0);  // right side at 8.5
    EXPECT_TRUE(has_code("collector.outside-surface"));
    EXPECT_FALSE(has_code("collector.on-keep-out"));
    words = to(3.0, 3.0);
    EXPECT_TRUE(canvas->rules().tight.empty());
    EXPECT_FALSE(words.contains(QStringLiteral("Stop"))) << words.toStdString();
    QTest::mouseRelease(canvas, Qt::LeftButton, Qt::NoModifier, canvas->view().map({3.0, 3.0}).toPoint());
    EXPECT_EQ(session.undo_stack().count(), 1);
}

TEST_F(Board, NudgingShowsTheRuleToo) {
    canvas->set_selected(at(0).id);
    for (int i = 0; i < 8; ++i)
        QTest::keyClick(canvas, Qt::Key_Up, Qt::ShiftModifier);
    for (int i = 0; i < 9; ++i)
        QTest::keyClick(canvas, Qt::Key_Right, Qt::ShiftModifier);
    EXPECT_TRUE(has_code("collector.keep-out-clearance"));
    session.undo_stack().undo();
    session.undo_stack().undo();
    session.undo_stack().undo();
    EXPECT_FALSE(has_code("collector.keep-out-clearance"));
}

TEST_F(Board, TheBrokenRuleIsOnTheDrawing) {
    const QImage before = canvas->grab().toImage();
    canvas->set_selected(at(0).id);
    move_placement(session, at(0).id, 4.88, 3.5);
    const QImage with = canvas->grab().toImage();
    // The stop's own colour stands nowhere else on a drawing in order.
    const auto count = [](const QImage& image) {
        const QRgb stop = current_theme().stop.rgb();
        int pixels = 0;
        for (int y = 0; y < image.height(); ++y) {
            for (int x = 0; x < image.width(); ++x)
                pixels += (image.pixel(x, y) | 0xff000000U) == (stop | 0xff000000U) ? 1 : 0;
        }
        return pixels;
    };
    EXPECT_EQ(count(before), 0);
    EXPECT_GT(count(with), 50);
}

TEST_F(Board, CautionsAreOnlyDrawnForWhatIsSelected) {
    move_placement(session, "p2", 1.2, 1.0);  // 0.2 m from the left edge: the maker's strip
    canvas->set_selected({});
    EXPECT_TRUE(canvas->rules().tight.empty());
    canvas->set_selected("p2");
    EXPECT_TRUE(has_code("collector.edge-clearance"));
    move_placement(session, "p2", 0.9, 1.0);
    canvas->set_selected({});
    EXPECT_TRUE(has_code("collector.outside-surface")) << "a stop is always drawn";
}

TEST_F(Board, WhatStandsOnTheRoofIsShownToo) {
    Obstacle mast;
    mast.label = "Mast";
    mast.kind = ObstacleKind::post;
    mast.base = site::to_space(site::frame_of(session.job().site.surfaces[0], 0.0), {4.0, 2.5});
    mast.base.z_m -= 1.0;
    mast.height_m = 3.0;
    const std::string id = add_obstacle(session, mast);
    canvas->set_selected(at(0).id);
    EXPECT_TRUE(has_code("collector.on-obstacle"));
    remove_element(session, id);
    EXPECT_FALSE(has_code("collector.on-obstacle"));
}

TEST_F(Board, ACollectorAddedBreaksNoRuleWhereThereIsRoom) {
    const std::string id = add_collector(session, at(0).surface_id);
    canvas->set_selected(id);
    EXPECT_TRUE(canvas->rules().tight.empty()) << canvas->rules().words().toStdString();
}

TEST_F(Board, CtrlClickTogglesAndCtrlASelectsAll) {
    click(0);
    click(1, Qt::ControlModifier);
    EXPECT_EQ(canvas->selection(), (std::vector<std::string>{at(0).id, "p2"}));
    click(0, Qt::ControlModifier);
    EXPECT_EQ(canvas->selection(), (std::vector<std::string>{"p2"}));
    click(2, Qt::ShiftModifier);
    EXPECT_EQ(canvas->selection().size(), 2u);
    QTest::keyClick(canvas, Qt::Key_A, Qt::ControlModifier);
    EXPECT_EQ(canvas->selection().size(), 3u);
    click(1);  // a plain click on one of several leaves it alone selected
    EXPECT_EQ(canvas->selection(), (std::vector<std::string>{"p2"}));
    EXPECT_EQ(session.undo_stack().count(), 0);
}

TEST_F(Board, AFrameDrawnRoundThemSelectsThem) {
    const QPoint from = canvas->view().map({0.1, 0.1}).toPoint();
    const QPoint to = canvas->view().map({7.9, 1.9}).toPoint();
    QTest::mousePress(canvas, Qt::LeftButton, Qt::NoModifier, from);
    QTest::mouseMove(canvas, (from + to) / 2);
    QTest::mouseRelease(canvas, Qt::LeftButton, Qt::NoModifier, to);
    EXPECT_EQ(canvas->selection(), (std::vector<std::string>{"p2", "p3"}));
    EXPECT_EQ(session.undo_stack().count(), 0);
}

TEST_F(Board, SeveralMoveTogetherInOneStep) {
    click(1);
    click(2, Qt::ControlModifier);
    const double units = canvas->units_per_m();
    const QPoint from = middle(2);
    QTest::mousePress(canvas, Qt::LeftButton, Qt::NoModifier, from);
    for (int i = 1; i <= 4; ++i)
        QTest::mouseMove(canvas, from + QPoint(10, -5) * i);
    QTest::mouseRelease(canvas, Qt::LeftButton, Qt::NoModifier, from + QPoint(40, -20));
    EXPECT_NEAR(at(1).x_m, 1.6 + 40.0 / units, rounding_m);
    EXPECT_NEAR(at(2).x_m, 5.1 + 40.0 / units, rounding_m);
    EXPECT_NEAR(at(2).y_m, 1.2 + 20.0 / units, rounding_m);
    EXPECT_EQ(at(0).x_m, 4.0);
    EXPECT_EQ(canvas->selection().size(), 2u);
    EXPECT_EQ(session.undo_stack().count(), 1);
    QTest::keyClick(canvas, Qt::Key_Left);
    EXPECT_EQ(session.undo_stack().count(), 2);
    session.undo_stack().undo();
    session.undo_stack().undo();
    EXPECT_EQ(at(1).x_m, 1.6);
    EXPECT_EQ(at(2).x_m, 5.1);
}

TEST_F(Board, EscapePutsAllBack) {
    canvas->setFocus();
    click(1);
    click(2, Qt::ControlModifier);
    const QPoint from = middle(2);
    QTest::mousePress(canvas, Qt::LeftButton, Qt::NoModifier, from);
    QTest::mouseMove(canvas, from + QPoint(30, 0));
    EXPECT_GT(at(1).x_m, 1.65);
    QTest::keyClick(canvas, Qt::Key_Escape);
    EXPECT_NEAR(at(1).x_m, 1.6, 1e-9);
    EXPECT_NEAR(at(2).x_m, 5.1, 1e-9);
    QTest::mouseRelease(canvas, Qt::LeftButton, Qt::NoModifier, from);
    EXPECT_EQ(canvas->selection().size(), 2u);
}

TEST_F(Board, ButtonsBringIntoLineAndSpaceEvenly) {
    QTest::keyClick(canvas, Qt::Key_A, Qt::ControlModifier);
    press_button(QStringLiteral("Lower edges"));
    EXPECT_NEAR(at(0).y_m, 1.0, 1e-9);
    EXPECT_NEAR(at(2).y_m, 1.0, 1e-9);
    EXPECT_EQ(session.undo_stack().count(), 1);
    // From 0.6 to 6.1 m, three plates of 2 m: no room for gaps.
    press_button(QStringLiteral("Sideways"));
    EXPECT_EQ(session.undo_stack().count(), 1);
    move_placement(session, "p3", 6.7, 1.0);
    session.end_merge();
    press_button(QStringLiteral("Sideways"));
    EXPECT_NEAR(at(0).x_m, 4.15, 1e-9);  // gaps of 0.55 m between 0.6..2.6 and 5.7..7.7
    EXPECT_EQ(at(1).x_m, 1.6);
    EXPECT_EQ(at(2).x_m, 6.7);
    const int steps = session.undo_stack().count();
    press_button(QStringLiteral("Sideways"));
    press_button(QStringLiteral("Lower edges"));
    EXPECT_EQ(session.undo_stack().count(), steps) << "already so: no step";
}

TEST_F(Board, ShortcutsOfTheButtonsWorkFromTheDrawing) {
    stage.activateWindow();
    ASSERT_TRUE(QTest::qWaitForWindowActive(&stage));
    canvas->setFocus();
    QTest::keyClick(canvas, Qt::Key_A, Qt::ControlModifier);
    QTest::keyClick(stage.windowHandle(), Qt::Key_Left, Qt::ControlModifier | Qt::ShiftModifier);
    // A button pressed by its keys goes down for a moment first.
    EXPECT_TRUE(QTest::qWaitFor([this] { return std::abs(at(0).x_m - 1.6) < 1e-9; }, sample::patience_ms));
    EXPECT_NEAR(at(2).x_m, 1.6, 1e-9);
}

TEST_F(Board, ARowIsPutInOneStepOrRefusedInWords) {
    click(1);
    RowPanel* row = stage.collector_panel()->row_panel();
    EXPECT_NEAR(row->gap()->value().value_or(0.0), sample::reference()->catalogue.collectors[0].clearance_m, 1e-9);
    remove_collector(session, "p3");
    click(1);
    const int steps = session.undo_stack().count();
    press_button(QStringLiteral("Put in a row"));
    ASSERT_EQ(session.current_choice()->placements.size(), 3u);
    EXPECT_NEAR(at(2).x_m, 3.9, 1e-9);  // 2.0 m and the maker's 0.30 m further
    EXPECT_EQ(at(2).y_m, 1.0);
    EXPECT_EQ(session.undo_stack().count(), steps + 1);
    EXPECT_EQ(canvas->selection().size(), 2u) << "the row is selected together";
    click(1);
    QSignalSpy said(&stage, &StageWidget::status_text);
    row->count()->line_edit()->setText(QStringLiteral("4"));
    Q_EMIT row->count()->line_edit()->editingFinished();
    press_button(QStringLiteral("Put in a row"));
    EXPECT_EQ(session.current_choice()->placements.size(), 3u);
    EXPECT_TRUE(row->problem().contains(QStringLiteral("No room"))) << row->problem().toStdString();
    ASSERT_FALSE(said.isEmpty());
    EXPECT_EQ(said.last().front().toString(), row->problem()) << "in the bottom line too";
}

TEST_F(Board, TheListSelectsSeveralToo) {
    click(0);
    click(2, Qt::ControlModifier);
    Q_EMIT stage.collector_panel()->placements_chosen({QString::fromStdString(at(1).id), QStringLiteral("p3")});
    EXPECT_EQ(canvas->selection(), (std::vector<std::string>{"p2", "p3"}));
    EXPECT_TRUE(stage.collector_panel()->arrange_panel()->isVisible());
    click(1);
    EXPECT_FALSE(stage.collector_panel()->arrange_panel()->isVisible());
}

TEST_F(Board, TheMakersRulesStandBesideTheDrawing) {
    click(1);
    const QStringList kept = stage.collector_panel()->rules_box()->lines();
    ASSERT_EQ(kept.size(), 5);
    EXPECT_EQ(kept[0], QStringLiteral("Long side level, kept: turned by 0.0\u00b0"));
    turn_placement(session, "p2", 90.0);
    EXPECT_TRUE(stage.collector_panel()->rules_box()->lines()[0].contains(QStringLiteral("stop")));
    QTest::keyClick(canvas, Qt::Key_R);
    EXPECT_NEAR(at(1).turn_deg, 0.0, 1e-9) << "back to the turn that the maker allows";
    const int steps = session.undo_stack().count();
    QTest::keyClick(canvas, Qt::Key_R);
    EXPECT_EQ(session.undo_stack().count(), steps) << "there is no other";
}

TEST_F(Board, WindZonesAreDrawnOnWish) {
    const QImage without = canvas->grab().toImage();
    stage.zones_box()->setChecked(true);
    EXPECT_NE(canvas->grab().toImage(), without);
    stage.zones_box()->setChecked(false);
    EXPECT_EQ(canvas->grab().toImage(), without);
}

TEST_F(Board, DeleteRemovesWhatIsSelectedInOneStep) {
    click(1);
    click(2, Qt::ControlModifier);
    QTest::keyClick(canvas, Qt::Key_Delete);
    EXPECT_EQ(session.current_choice()->placements.size(), 1u);
    EXPECT_EQ(session.undo_stack().count(), 1);
    EXPECT_TRUE(canvas->selection().empty());
}

}  // namespace surface_board_test
}  // namespace wg::ui
