// What the face-on drawing shows beyond the plates: broken rules, wind zones, the run, the level side. Looked for by
// ink near where it has to stand.
#include <gtest/gtest.h>

#include "core/fixing/zones.h"
#include "tests/ui/drawing/picture.h"
#include "ui/drawing/surface_painter.h"

namespace wg::ui {
namespace surface_rules_test {

const QSize sheet_size(900, 660);
const QRect drawing_area(60, 60, 780, 540);

struct Drawn : testing::Test {
    Job job = sample::job();
    plan::Plan plan = picture::plan_of(job);
    CollectorModel model = picture::plate();
    SurfaceDrawing what;
    PlaneView view;

    Drawn() {
        what.job = &job;
        what.surface = &job.site.surfaces.front();
        what.choice = &job.choices.front();
        what.plan = &plan;
        what.collector = &model;
        view = fit_surface(*what.surface, drawing_area, QMarginsF(60, 60, 60, 60));
    }
    [[nodiscard]] QImage painted() const {
        QImage image(sheet_size, QImage::Format_RGB32);
        image.fill(Qt::white);
        QPainter painter(&image);
        paint_surface(painter, what, view, theme_of(ThemeKind::light));
        painter.end();
        return image;
    }
    /// Pixels that differ within `reach` of a place on the surface.
    [[nodiscard]] int changed(const QImage& a, const QImage& b, Point2 at, int reach) const {
        const QPoint middle = view.map(at).toPoint();
        int count = 0;
        for (int y = middle.y() - reach; y <= middle.y() + reach; ++y) {
            for (int x = middle.x() - reach; x <= middle.x() + reach; ++x)
                count += a.pixel(x, y) != b.pixel(x, y) ? 1 : 0;
        }
        return count;
    }
};

TEST_F(Drawn, ABrokenRuleStandsAtItsGapAndInWords) {
    const QImage in_order = painted();
    fixing::TightSpot spot;
    spot.against = fixing::TightSpot::Against::keep_out;
    spot.severity = Severity::stop;
    spot.placement_id = sample::placement_id;
    spot.thing = "vent";
    spot.gap_m = 0.4;
    spot.asked_m = 0.6;
    spot.on_plate = {5.0, 2.5};
    spot.on_thing = {5.4, 2.5};
    spot.thing_outline = {{5.4, 2.3}, {5.8, 2.3}, {5.8, 2.7}, {5.4, 2.7}};
    spot.text = "0.40 m to vent; 0.60 m asked (survey)";
    const std::vector<fixing::TightSpot> tight{spot};
    what.tight = &tight;
    const QImage broken = painted();
    EXPECT_GT(changed(in_order, broken, {5.2, 2.5}, 8), 20) << "the gap";
    EXPECT_GT(changed(in_order, broken, {5.6, 2.5 + 0.2 + 0.6}, 6), 5) << "the strip above the vent";
    const std::vector<fixing::TightSpot> none;
    what.tight = &none;
    EXPECT_EQ(painted(), in_order);
}

TEST_F(Drawn, ZoneBordersStandAtTheirWidths) {
    const QImage plain = painted();
    const fixing::WindZones zones = fixing::wind_zones(*what.surface, 4.0, 1.6);
    ASSERT_FALSE(zones.borders.empty());
    what.zones = &zones;
    what.dimensions = false;
    SurfaceDrawing without = what;
    without.zones = nullptr;
    const QImage with = painted();
    what = without;
    const QImage bare = painted();
    for (const fixing::ZoneBorder& border : zones.borders) {
        const Point2 middle{(border.from.x_m + border.to.x_m) / 2.0, (border.from.y_m + border.to.y_m) / 2.0};
        EXPECT_GT(changed(bare, with, middle, 12), 3) << middle.x_m << ", " << middle.y_m;
    }
    EXPECT_NE(plain, bare);
}

TEST_F(Drawn, TheRunIsDrawnToWhereItLeaves) {
    const QImage plain = painted();
    RoutePoint passage;
    passage.kind = RoutePointKind::roof_passage;
    const site::Frame frame = site::frame_of(*what.surface, job.site.sketch_up_azimuth_deg);
    passage.position = site::to_space(frame, {6.5, 0.9});
    job.choices.front().route = {passage};
    const auto run = site::run_on_surface(job.site, *what.surface, job.choices.front(), model, Point3{0.0, 5.0, -1.0});
    ASSERT_TRUE(run);
    ASSERT_EQ(run->line.size(), 2u);
    what.run = &*run;
    const QImage with = painted();
    EXPECT_GT(changed(plain, with, {6.5, 0.9}, 4), 10) << "the passage";
    const Point2 half{(run->line[0].x_m + 6.5) / 2.0, (run->line[0].y_m + 0.9) / 2.0};
    EXPECT_GT(changed(plain, with, half, 3), 5) << "half way";
}

TEST_F(Drawn, TheLevelLiesOnTheLowerLongSideAndOnTheTrueOneOfAFrame) {
    const QImage plain = painted();
    what.level_marks = true;
    const QImage with = painted();
    EXPECT_GT(changed(plain, with, {4.0, 2.5 - 0.4 + 0.06}, 40), 20);
    EXPECT_EQ(changed(plain, with, {4.0, 2.5 + 0.4 - 0.02}, 4), 0) << "nothing on the upper side";
    // On a frame that stands askew the plate's lower side is still level in space: no ink in the stop's colour.
    job.site.surfaces.front().tilt_deg = 0.0;
    job.choices.front().placements.front().frame_tilt_deg = 45.0;
    job.choices.front().placements.front().frame_azimuth_deg = 150.0;
    const QImage askew = painted();
    const QRgb stop = theme_of(ThemeKind::light).stop.rgb();
    int alarmed = 0;
    for (int y = 0; y < askew.height(); ++y) {
        for (int x = 0; x < askew.width(); ++x)
            alarmed += askew.pixel(x, y) == stop ? 1 : 0;
    }
    EXPECT_EQ(alarmed, 0);
    job.choices.front().placements.front().turn_deg = 20.0;
    const QImage turned = painted();
    for (int y = 0; y < turned.height(); ++y) {
        for (int x = 0; x < turned.width(); ++x)
            alarmed += turned.pixel(x, y) == stop ? 1 : 0;
    }
    EXPECT_GT(alarmed, 3) << "turned on its frame it is not";
}

}  // namespace surface_rules_test
}  // namespace wg::ui
