#include <gtest/gtest.h>

#include <QImage>
#include <QPushButton>
#include <QSignalSpy>
#include <QSlider>
#include <QTest>
#include <cmath>

#include "core/quantity/angle.h"
#include "core/sky/sun_path.h"
#include "tests/ui/common/sample.h"
#include "ui/common/edits.h"
#include "ui/layout/house_canvas.h"
#include "ui/layout/house_pane.h"
#include "ui/layout/layout_stage.h"
#include "ui/layout/sun_path_pane.h"
#include "ui/layout/surface_canvas.h"

namespace wg::ui {
namespace house_pane_test {

/// The sample's roof lies on the ground with the terrace under it: here they stand apart, as on a house.
Job house_job() {
    Job job = sample::job();
    job.site.location.utc_offset_h = 0.0;
    job.site.surfaces[0].origin = {0, 0, 3};
    job.site.surfaces[1].origin = {0, -6, 0.1};
    job.site.obstacles[0].base = {30, 30, 0};
    return job;
}

struct House : testing::Test {
    JobSession session{house_job(), sample::reference(), sample::quick_to_read_plan};
    LayoutStage stage;
    HousePane* pane = nullptr;
    HouseCanvas* canvas = nullptr;

    void SetUp() override {
        stage.resize(1000, 700);
        stage.set_session(&session);
        stage.show();
        stage.show_view(LayoutStage::View::house);
        pane = stage.house_pane();
        canvas = pane->canvas();
        canvas->grab();  // the first view is taken when it is first painted
    }
    /// On screen, of a place in a surface's plane.
    [[nodiscard]] QPoint on_screen(std::size_t surface, Point2 at) const {
        const Site& site = session.job().site;
        const Point3 p = site::to_space(site::frame_of(site.surfaces[surface], site.sketch_up_azimuth_deg), at);
        return canvas->house_view().map(p).toPoint();
    }
    [[nodiscard]] QSlider* slider(const char* name) const {
        for (QSlider* one : pane->findChildren<QSlider*>()) {
            if (one->accessibleName() == QLatin1String(name)) return one;
        }
        return nullptr;
    }
};

TEST_F(House, FirstViewHoldsTheWholeHouseAndLooksAtTheCollectorsSurface) {
    EXPECT_NEAR(wrap_180(canvas->camera().azimuth_deg - 180.0), 0.0, 45.0);
    for (const Point2 corner : session.job().site.surfaces[0].outline)
        EXPECT_TRUE(canvas->rect().contains(on_screen(0, corner)));
    for (const Point2 corner : session.job().site.surfaces[1].outline)
        EXPECT_TRUE(canvas->rect().contains(on_screen(1, corner)));
}

TEST_F(House, AClickOnASurfaceChoosesItInLayoutWithoutLeavingTheView) {
    QTest::mouseClick(canvas, Qt::LeftButton, Qt::NoModifier, on_screen(1, {5.5, 0.5}));
    EXPECT_EQ(stage.surface_canvas()->surface_id(), sample::terrace().id);
    EXPECT_EQ(stage.view(), LayoutStage::View::house);
    QTest::mouseClick(canvas, Qt::LeftButton, Qt::NoModifier, on_screen(0, {0.5, 0.5}));
    EXPECT_EQ(stage.surface_canvas()->surface_id(), sample::roof().id);
    EXPECT_EQ(session.undo_stack().count(), 0);
}

TEST_F(House, AClickOnACollectorSelectsIt) {
    QTest::mouseClick(canvas, Qt::LeftButton, Qt::NoModifier, on_screen(0, {4.0, 2.5}));
    EXPECT_EQ(stage.surface_canvas()->selected(), sample::placement_id);
}

TEST_F(House, TheChosenSurfaceIsOutlinedInCopper) {
    const auto copper = [&](QPoint about) {
        const QImage image = canvas->grab().toImage();
        int count = 0;
        for (int dx = -4; dx <= 4; ++dx) {
            for (int dy = -4; dy <= 4; ++dy) {
                const QColor c = image.pixelColor(about + QPoint(dx, dy));
                if (std::abs(c.red() - 0x9a) < 30 && std::abs(c.green() - 0x4f) < 30 && c.blue() < 0x50) ++count;
            }
        }
        return count;
    };
    QTest::mouseClick(canvas, Qt::LeftButton, Qt::NoModifier, on_screen(0, {0.5, 0.5}));
    const QPoint edge_of_terrace = on_screen(1, {3.0, 0.0});
    EXPECT_EQ(copper(edge_of_terrace), 0);
    QTest::mouseClick(canvas, Qt::LeftButton, Qt::NoModifier, on_screen(1, {5.5, 0.5}));
    EXPECT_GT(copper(edge_of_terrace), 8);
}

TEST_F(House, DraggingAndArrowsTurnTheViewAndHomeComesBack) {
    const scene::Camera first = canvas->camera();
    QTest::mousePress(canvas, Qt::LeftButton, Qt::NoModifier, QPoint(200, 200));
    QTest::mouseMove(canvas, QPoint(240, 220));
    QTest::mouseMove(canvas, QPoint(300, 230));
    QTest::mouseRelease(canvas, Qt::LeftButton, Qt::NoModifier, QPoint(300, 230));
    EXPECT_GT(wrap_180(canvas->camera().azimuth_deg - first.azimuth_deg), 20.0);
    EXPECT_GT(canvas->camera().elevation_deg, first.elevation_deg);
    EXPECT_EQ(stage.surface_canvas()->surface_id(), sample::roof().id) << "a drag is no click";
    const double before = canvas->camera().azimuth_deg;
    QTest::keyClick(canvas, Qt::Key_Right);
    EXPECT_NEAR(wrap_180(canvas->camera().azimuth_deg - before), 5.0, 1e-9);
    for (int i = 0; i < 40; ++i)
        QTest::keyClick(canvas, Qt::Key_Up);
    EXPECT_EQ(canvas->camera().elevation_deg, 90.0);  // never past the zenith
    for (int i = 0; i < 40; ++i)
        QTest::keyClick(canvas, Qt::Key_Down);
    EXPECT_GT(canvas->camera().elevation_deg, 0.0);  // never under the ground
    const double units = canvas->units_per_m();
    QTest::keyClick(canvas, Qt::Key_Plus);
    EXPECT_GT(canvas->units_per_m(), units);
    QTest::keyClick(canvas, Qt::Key_Home);
    EXPECT_EQ(canvas->camera(), first);
}

TEST_F(House, NightAndSunAreSaidInWords) {
    pane->show_moment({sky::day_index(6, 21), 12.0});
    EXPECT_TRUE(pane->words().contains(QStringLiteral("66° high"))) << pane->words().toStdString();  // 90 - 47 + 23.4
    EXPECT_TRUE(pane->words().contains(QStringLiteral("Collector 1: all in the sun")));
    pane->show_moment({sky::day_index(6, 21), 0.0});
    EXPECT_TRUE(pane->words().startsWith(QStringLiteral("Night")));
}

TEST_F(House, AHillAndAWallInFrontAreToldApart) {
    set_horizon(session, {{0.0, 80.0, {}}});
    pane->show_moment({sky::day_index(6, 21), 12.0});
    EXPECT_TRUE(pane->words().contains(QStringLiteral("behind the surveyed horizon"))) << pane->words().toStdString();
    set_horizon(session, {});
    EXPECT_TRUE(pane->words().contains(QStringLiteral("all in the sun"))) << pane->words().toStdString();
    // A box wide and high enough to shade all of the plate at noon.
    session.edit(QStringLiteral("wall"), [](Job& job) {
        job.site.obstacles[0].base = {4, -3, 0};
        job.site.obstacles[0].width_m = 40;
        job.site.obstacles[0].depth_m = 0.5;
        job.site.obstacles[0].height_m = 40;
    });
    EXPECT_TRUE(pane->words().contains(QStringLiteral("Collector 1: in the shade"))) << pane->words().toStdString();
}

TEST_F(House, ASlidersStepChangesShadowsOnScreen) {
    QSlider* minute = slider("Hour of the day");
    ASSERT_NE(minute, nullptr);
    EXPECT_GE(minute->height(), 36);  // for fingers
    pane->show_moment({sky::day_index(3, 21), 9.0});
    QTest::qWait(250);  // until frames in a row are over
    const QImage morning = canvas->grab().toImage();
    minute->setValue(15 * 60);
    QTest::qWait(250);
    const QImage afternoon = canvas->grab().toImage();
    EXPECT_NE(morning, afternoon);
    QTest::keyClick(minute, Qt::Key_Right);
    EXPECT_NEAR(pane->moment().hour, 15.0 + 1.0 / 6.0, 1e-9);
}

TEST_F(House, PlayingRunsThroughTheDayAndStops) {
    pane->show_moment({sky::day_index(3, 21), 20.0});
    QSignalSpy moved(pane, &HousePane::moment_changed);
    pane->play();
    EXPECT_TRUE(pane->playing());
    EXPECT_NEAR(pane->moment().hour, 6.0, 0.5) << "begins at sunrise";
    EXPECT_TRUE(QTest::qWaitFor([&] { return moved.count() > 5; }, sample::patience_ms));
    EXPECT_GT(pane->moment().hour, 6.0);
    pane->stop();
    const double stopped = pane->moment().hour;
    QTest::qWait(120);
    EXPECT_EQ(pane->moment().hour, stopped);
    pane->play();
    stage.show_view(LayoutStage::View::surface);
    EXPECT_FALSE(pane->playing()) << "nobody looks";
}

TEST_F(House, WhereTheSunDoesNotRiseThereIsNoDayToPlay) {
    session.edit(QStringLiteral("north"), [](Job& job) { job.site.location.latitude_deg = 78.0; });
    pane->show_moment({sky::day_index(12, 21), 12.0});
    EXPECT_TRUE(pane->words().contains(QStringLiteral("does not rise")));
    pane->play();
    EXPECT_FALSE(pane->playing());
}

TEST_F(House, EveryMomentAndSideIsPaintedWithoutAJobOrSurfaces) {
    HousePane bare;
    bare.resize(400, 400);
    bare.show();
    bare.grab();
    Job empty = sample::job();
    empty.site.surfaces.clear();
    empty.site.obstacles.clear();
    empty.choices.clear();
    JobSession nothing(empty, sample::reference(), sample::quick_to_read_plan);
    bare.set_session(&nothing);
    bare.canvas()->grab();
    EXPECT_TRUE(bare.canvas()->scene_now().empty());
    bare.set_session(nullptr);
    bare.canvas()->grab();
}

// ------------------------------------------------------------------------------------------------- the sun's way

TEST_F(House, TheSunPathFollowsTheCollectorWhileItIsDragged) {
    stage.show_view(LayoutStage::View::surface);
    // A wall to the west of the roof: it reaches higher the nearer one stands.
    session.edit(QStringLiteral("wall"), [](Job& job) {
        job.site.obstacles[0].base = {-1, 2, 0};
        job.site.obstacles[0].width_m = 0.3;
        job.site.obstacles[0].depth_m = 30;
        job.site.obstacles[0].height_m = 9;
    });
    stage.show_sun_path(true);
    SunPathPane* path = stage.sun_path_pane();
    ASSERT_TRUE(path->isVisible());
    const auto west = [&] {
        const SkylineStep* step = skyline_at(path->picture(), 270.0);
        return step != nullptr ? step->elevation_deg : 0.0;
    };
    EXPECT_TRUE(path->words().contains(QStringLiteral("Collector 1")));
    const double before = west();
    EXPECT_GT(before, 10.0);
    SurfaceCanvas* surface = stage.surface_canvas();
    surface->set_snapping(false);
    surface->fit();
    const QPoint from = surface->view().map({4.0, 2.5}).toPoint();
    QTest::mousePress(surface, Qt::LeftButton, Qt::NoModifier, from);
    for (int i = 1; i <= 5; ++i)
        QTest::mouseMove(surface, from - QPoint(8 * i, 0));
    EXPECT_TRUE(QTest::qWaitFor([&] { return west() > before + 2.0; }, sample::patience_ms)) << "before it is let go";
    QTest::mouseRelease(surface, Qt::LeftButton, Qt::NoModifier, from - QPoint(40, 0));
}

TEST_F(House, TheSunPathMarksTheHousesHourAndOnlyThere) {
    stage.show_sun_path(true);
    SunPathPane* path = stage.sun_path_pane();
    pane->show_moment({sky::day_index(6, 21), 12.0});
    const auto at_noon = [&] {
        return path->picture().now.has_value() && std::abs(path->picture().now->elevation_deg - 66.4) < 0.5;
    };
    EXPECT_TRUE(QTest::qWaitFor(at_noon, sample::patience_ms));
    pane->show_moment({sky::day_index(6, 21), 0.0});
    EXPECT_TRUE(QTest::qWaitFor([&] { return !path->picture().now.has_value(); }, sample::patience_ms)) << "night";
    pane->show_moment({sky::day_index(6, 21), 12.0});
    EXPECT_TRUE(QTest::qWaitFor([&] { return path->picture().now.has_value(); }, sample::patience_ms));
    stage.show_view(LayoutStage::View::site_plan);
    EXPECT_TRUE(QTest::qWaitFor([&] { return !path->picture().now.has_value(); }, sample::patience_ms));
}

}  // namespace house_pane_test
}  // namespace wg::ui
