#include <gtest/gtest.h>

#include <cmath>
#include <random>

#include "tests/ui/drawing/picture.h"
#include "ui/drawing/bars_painter.h"
#include "ui/drawing/plan_painter.h"
#include "ui/drawing/run_painter.h"
#include "ui/drawing/surface_painter.h"

namespace wg::ui {
namespace painters_test {

constexpr double exact_m = 1e-9;  // mapping there and back is a handful of floating-point operations

const QRect area(100, 80, 700, 500);
const QSize sheet(900, 660);

SurfaceDrawing drawing_of(const Job& job, const plan::Plan& plan) {
    SurfaceDrawing what;
    what.job = &job;
    what.surface = &job.site.surfaces.front();
    what.choice = &job.choices.front();
    what.plan = &plan;
    return what;
}

TEST(PlaneView, MapsThereAndBack) {
    const PlaneView view{123.4, {50.0, 600.0}};
    const Point2 back = view.unmap(view.map({3.21, 1.07}));
    EXPECT_NEAR(back.x_m, 3.21, exact_m);
    EXPECT_NEAR(back.y_m, 1.07, exact_m);
    EXPECT_LT(view.map({0.0, 2.0}).y(), view.map({0.0, 1.0}).y()) << "up the slope is up the sheet";
}

TEST(SiteView, MapsThereAndBack) {
    const SiteView view{17.0, {-20.0, 300.0}};
    const Point2 back = view.unmap(view.map(-4.5, 12.25));
    EXPECT_NEAR(back.x_m, -4.5, exact_m);
    EXPECT_NEAR(back.y_m, 12.25, exact_m);
}

TEST(SurfacePainter, KeepsInsideTheMarginsItAsksFor) {
    const Job job = sample::job();
    const plan::Plan plan = picture::plan_of(job);
    for (const bool points : {false, true}) {
        SurfaceDrawing what = drawing_of(job, plan);
        what.point_dimensions = points;
        what.scale_bar = true;
        const QRect ink = picture::ink_of(sheet, [&](QPainter& painter) {
            paint_surface(painter, what, fit_surface(*what.surface, area, margins_for(what)), paper_theme());
        });
        EXPECT_TRUE(area.adjusted(-1, -1, 1, 1).contains(ink))
            << "points " << points << ": " << ink.left() << ".." << ink.right() << ", " << ink.top() << ".."
            << ink.bottom();
        EXPECT_GT(ink.width(), area.width() / 2) << "something was drawn";
    }
}

TEST(SurfacePainter, AsksForMoreRoomBelowWhenEveryPointIsDimensioned) {
    const Job job = sample::job();
    const plan::Plan plan = picture::plan_of(job);
    SurfaceDrawing what = drawing_of(job, plan);
    const QMarginsF plain = margins_for(what);
    what.point_dimensions = true;
    EXPECT_GT(margins_for(what).bottom(), plain.bottom());
    EXPECT_GT(margins_for(what).left(), plain.left());
    EXPECT_GE(margin_for(what), margins_for(what).bottom());
}

TEST(SurfacePainter, DrawsWithoutPlanChoiceOrOutlineWithoutFailing) {
    Job job = sample::job();
    SurfaceDrawing what;
    what.job = &job;
    what.surface = &job.site.surfaces.front();
    EXPECT_FALSE(picture::ink_of(sheet, [&](QPainter& p) {
                     paint_surface(p, what, fit_surface(*what.surface, area, 20.0), paper_theme());
                 }).isEmpty());
    job.site.surfaces.front().outline.clear();
    EXPECT_TRUE(picture::ink_of(sheet, [&](QPainter& p) {
                    paint_surface(p, what, fit_surface(*what.surface, area, 20.0), paper_theme());
                }).isEmpty());
}

TEST(SurfacePainter, ReachIsMeasuredAlongTheAxisToTheNearestEdge) {
    // An L: notch at the upper right.
    const std::vector<Point2> outline{{0, 0}, {6, 0}, {6, 2}, {3, 2}, {3, 5}, {0, 5}};
    EXPECT_NEAR(*reach_m(outline, {1.0, 4.0}, 1.0, 0.0), 2.0, exact_m);
    EXPECT_NEAR(*reach_m(outline, {1.0, 1.0}, 1.0, 0.0), 5.0, exact_m);
    EXPECT_NEAR(*reach_m(outline, {5.0, 1.0}, 0.0, 1.0), 1.0, exact_m);
    EXPECT_FALSE(reach_m(outline, {5.0, 6.0}, 1.0, 0.0).has_value());
}

TEST(ShadeScale, EndsAtTheNextTenPercentAndNeverBelowTen) {
    site::ShadeMap map;
    map.columns = 2;
    map.rows = 1;
    map.share = {1.0F, 0.77F};
    EXPECT_NEAR(shade_scale_end(map), 0.3, 1e-9);
    map.share = {1.0F, -1.0F};  // outside cells do not count as full shade
    EXPECT_NEAR(shade_scale_end(map), 0.1, 1e-9);
}

TEST(RunPainter, KeepsInsideItsArea) {
    const Job job = sample::job();
    const plan::Plan plan = picture::plan_of(job);
    const QRect ink = picture::ink_of(
        sheet, [&](QPainter& painter) { paint_run(painter, job, plan, QRectF(area), paper_theme(), 13.0, 1.0); });
    EXPECT_TRUE(area.contains(ink));
    EXPECT_GT(ink.height(), area.height() / 2);
}

/// Runs as routes go: from the plate through passages and bends, up, down and level, some legs short.
plan::Plan random_run(std::mt19937& random, const plan::Plan& like) {
    std::uniform_int_distribution<int> count(1, 8);
    std::uniform_real_distribution<double> length(0.15, 5.0);
    std::uniform_int_distribution<int> way(0, 5);
    std::uniform_int_distribution<int> end(0, 3);
    plan::Plan plan = like;
    plan.run.legs.clear();
    Point3 at = plan.placements.front().placed.connection_in_space;
    const int legs = count(random);
    plan.run.length_m = 0.0;
    for (int i = 0; i < legs; ++i) {
        static const double ways[6][3] = {{1, 0, 0}, {-1, 0, 0}, {0, 1, 0}, {0, -1, 0}, {0, 0, -1}, {0, 0, 1}};
        const double* to = ways[way(random)];
        const double l = length(random);
        const Point3 next{at.x_m + l * to[0], at.y_m + l * to[1], at.z_m + l * to[2]};
        static const RoutePointKind ends[] = {RoutePointKind::free, RoutePointKind::roof_passage,
                                              RoutePointKind::wall_passage, RoutePointKind::floor_passage};
        plan.run.legs.push_back({at, next, l, ends[end(random)]});
        plan.run.length_m += l;
        at = next;
    }
    plan.run.lift_m = plan.run.legs.front().from.z_m - at.z_m;
    plan.run.bends = legs - 1;
    return plan;
}

/// Returns how many labels were seen.
std::size_t expect_labels_apart(const Job& job, const plan::Plan& plan, QSizeF size, double text, const char* what) {
    QImage image(10, 10, QImage::Format_ARGB32_Premultiplied);
    QPainter painter(&image);
    const std::vector<RunLabel> labels =
        paint_run(painter, job, plan, QRectF(QPointF(0.0, 0.0), size), paper_theme(), text, text * 0.06);
    for (std::size_t i = 0; i < labels.size(); ++i)
        for (std::size_t k = i + 1; k < labels.size(); ++k)
            EXPECT_FALSE(labels[i].box.intersects(labels[k].box))
                << what << ": " << labels[i].text.toStdString() << " over " << labels[k].text.toStdString();
    return labels.size();
}

TEST(RunPainter, NoLabelStandsOnAnotherForManyRunsAndBothHands) {
    Job job = sample::job();
    std::mt19937 random(811);
    // Half an A4 page's width, a whole one, and a window; lettering of 9 pt, of large print, and of a screen.
    const std::pair<QSizeF, double> sheets[] = {
        {{8750.0, 7800.0}, 318.0}, {{18000.0, 7800.0}, 494.0}, {{900.0, 560.0}, 14.0}};
    for (const Hand hand : {Hand::left, Hand::right}) {
        for (Placement& placement : job.choices.front().placements)
            placement.hand = hand;
        const plan::Plan like = picture::plan_of(job);
        for (int i = 0; i < 40; ++i) {
            const plan::Plan plan = random_run(random, like);
            for (const auto& [size, text] : sheets) {
                const std::string what = "run " + std::to_string(i) + (hand == Hand::left ? " left" : " right");
                // Summary, foot, a figure for each leg and both ends.
                EXPECT_GE(expect_labels_apart(job, plan, size, text, what.c_str()), plan.run.legs.size() + 4) << what;
            }
        }
    }
}

TEST(RunPainter, SaysWhatIsMissingWhenThereIsNoRun) {
    const Job job = sample::job();
    const QRect ink = picture::ink_of(sheet, [&](QPainter& painter) {
        paint_run(painter, job, plan::Plan{}, QRectF(area), paper_theme(), 13.0, 1.0);
    });
    EXPECT_FALSE(ink.isEmpty());
    EXPECT_TRUE(area.contains(ink));
}

TEST(PlanPainter, KeepsInsideItsArea) {
    const Job job = sample::job();
    SiteDrawing what;
    what.job = &job;
    what.scale_bar = true;
    what.area = QRectF(area);
    const QRect ink = picture::ink_of(sheet, [&](QPainter& painter) {
        paint_site(painter, what, fit_site(job.site, QRectF(area), 40.0), paper_theme());
    });
    EXPECT_TRUE(area.contains(ink));
}

TEST(PlanPainter, NorthArrowTurnsAgainstTheSketch) {
    // The arrow's corner differs between a sketch with north up and one with east up; nothing else does when the
    // surfaces turn with it.
    Job job = sample::job();
    job.site.surfaces.clear();
    job.site.obstacles.clear();
    const auto picture_for = [&](double up_deg) {
        job.site.sketch_up_azimuth_deg = up_deg;
        QImage image(sheet, QImage::Format_RGB32);
        image.fill(Qt::white);
        QPainter painter(&image);
        SiteDrawing what;
        what.job = &job;
        what.area = QRectF(area);
        paint_site(painter, what, fit_site(job.site, QRectF(area), 40.0), paper_theme());
        painter.end();
        return image;
    };
    EXPECT_NE(picture_for(0.0), picture_for(90.0));
    EXPECT_EQ(picture_for(0.0), picture_for(360.0));
}

TEST(BarsPainter, counts_have_no_mark_between_one_and_the_next) {
    BarsPicture picture;
    picture.stacked = false;
    picture.counts = true;
    picture.parts.push_back({QStringLiteral("jobs"), Qt::black, BarHatch::none, {}});
    for (int most = 1; most <= 60; ++most) {
        picture.parts.front().values[5] = most;
        const double top = bars_frame(picture, QRectF(area), 13.0).y_to;
        EXPECT_GE(top, most);
        EXPECT_EQ(top, std::round(top)) << "a whole number of steps of one or more";
    }
    picture.counts = false;
    picture.parts.front().values[5] = 3;
    EXPECT_EQ(bars_frame(picture, QRectF(area), 13.0).y_to, 3.5) << "halves, where halves may be";
}

}  // namespace painters_test
}  // namespace wg::ui
