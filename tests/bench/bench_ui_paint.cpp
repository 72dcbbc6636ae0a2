// A large site of 40 surfaces and 60 obstacles painted in plan and as a whole house, as the window does it.
#include <benchmark/benchmark.h>
#include <QApplication>
#include <QImage>
#include <QPainter>
#include <cmath>
#include <string>

#include "core/scene/order.h"
#include "core/scene/shadows.h"
#include "ui/common/theme.h"
#include "ui/drawing/house_painter.h"
#include "ui/drawing/plan_painter.h"

namespace {

using namespace wg;

/// A street of ten houses, each with two roof planes and two gables, and six obstacles to a house.
Job large_job() {
    Job job;
    job.site.location.latitude_deg = 48.0;
    for (int house = 0; house < 10; ++house) {
        const double x = 14.0 * (house % 5), y = 24.0 * (house / 5);
        const auto surface = [&](const char* name, SurfaceKind kind, double tilt, double azimuth, Point3 origin,
                                 std::vector<Point2> outline) {
            Surface s;
            s.id = s.label = std::string(name) + " " + std::to_string(house + 1);
            s.kind = kind;
            s.tilt_deg = tilt;
            s.azimuth_deg = azimuth;
            s.origin = origin;
            s.outline = std::move(outline);
            job.site.surfaces.push_back(s);
        };
        const double rise = 4.0 * std::tan(40.0 * M_PI / 180.0), slope = 4.0 / std::cos(40.0 * M_PI / 180.0);
        surface("South roof", SurfaceKind::roof, 40, 180, {x, y, 4}, {{0, 0}, {9, 0}, {9, slope}, {0, slope}});
        surface("North roof", SurfaceKind::roof, 40, 0, {x + 9, y + 8, 4}, {{0, 0}, {9, 0}, {9, slope}, {0, slope}});
        surface("East gable", SurfaceKind::wall, 90, 90, {x + 9, y, 0},
                {{0, 0}, {8, 0}, {8, 4}, {4, 4 + rise}, {0, 4}});
        surface("West gable", SurfaceKind::wall, 90, 270, {x, y + 8, 0},
                {{0, 0}, {8, 0}, {8, 4}, {4, 4 + rise}, {0, 4}});
        for (int k = 0; k < 6; ++k) {
            Obstacle o;
            o.id = o.label = "Obstacle " + std::to_string(6 * house + k + 1);
            o.kind = static_cast<ObstacleKind>(k % 4);
            // A chimney through the roof, a dormer of an L-shaped plan, a pole, trees and a shed in the garden.
            o.base = {x + 1.5 + 1.3 * k, k < 2 ? y + 3.0 : y - 3.0 - k, k < 2 ? 4.5 : 0.0};
            o.width_m = o.depth_m = 0.8;
            o.turn_deg = 10.0 * k;
            o.height_m = k < 2 ? 4.0 : 3.0 + k;
            o.radius_m = o.kind == ObstacleKind::tree ? 1.6 : 0.1;
            const double px = o.base.x_m, py = o.base.y_m;
            o.outline = {
                {px, py},      {px + 1.6, py}, {px + 1.6, py + 0.8}, {px + 0.8, py + 0.8}, {px + 0.8, py + 1.6},
                {px, py + 1.6}};
            job.site.obstacles.push_back(o);
        }
    }
    return job;
}

/// The platform's drawing without a screen; one application for the whole program.
void without_screen() {
    static int count = 1;
    static char name[] = "bench";
    static char* arguments[] = {name, nullptr};
    if (QCoreApplication::instance() != nullptr) return;
    qputenv("QT_QPA_PLATFORM", "offscreen");
    static QApplication app(count, arguments);
    ui::apply_theme(app, ui::ThemeKind::light);
}

const QSize screen(1000, 640);

void paint_large_site_plan(benchmark::State& state) {
    without_screen();
    const Job job = large_job();
    QImage image(screen, QImage::Format_ARGB32_Premultiplied);
    ui::SiteDrawing what;
    what.job = &job;
    what.area = QRectF(QPointF(0, 0), screen);
    what.text_units = 14.0;
    const ui::SiteView view = ui::fit_site(job.site, what.area, 30.0);
    for (auto _ : state) {
        image.fill(Qt::white);
        QPainter painter(&image);
        ui::paint_site(painter, what, view, ui::theme_of(ui::ThemeKind::light));
        painter.end();
        benchmark::DoNotOptimize(image.constBits());
    }
}
BENCHMARK(paint_large_site_plan)->Unit(benchmark::kMillisecond);

/// One frame: `sun` is worked out anew in each when a day is played, and kept while the view is turned.
void house(benchmark::State& state, bool sun_moves, bool moving) {
    without_screen();
    const Job job = large_job();
    const scene::Scene scene = scene::scene_of(job.site, nullptr, nullptr, nullptr);
    const scene::Order order(scene);
    QImage image(screen, QImage::Format_ARGB32_Premultiplied);
    ui::HouseDrawing what;
    what.scene = &scene;
    what.order = &order;
    what.area = QRectF(QPointF(0, 0), screen);
    what.text_units = 14.0;
    double hour = 12.0, turn = 150.0;
    what.sun = scene::sun_over(job.site, {79, hour});
    scene::Shadows shadows = scene::shadows_of(scene, order, what.sun.to_sun, what.sun.month);
    what.shadows = &shadows;
    what.moving = moving;
    for (auto _ : state) {
        if (sun_moves) {
            hour = hour < 16.0 ? hour + 0.02 : 8.0;
            what.sun = scene::sun_over(job.site, {79, hour});
            shadows = scene::shadows_of(scene, order, what.sun.to_sun, what.sun.month);
        } else {
            turn += 1.0;
        }
        image.fill(Qt::white);
        QPainter painter(&image);
        ui::paint_house(painter, what, ui::fit_house(scene, {turn, 30.0}, what.area),
                        ui::theme_of(ui::ThemeKind::light));
        painter.end();
        benchmark::DoNotOptimize(image.constBits());
    }
    state.counters["fragments"] = static_cast<double>(order.fragments().size());
}
void paint_large_site_house_turned(benchmark::State& state) {
    house(state, false, true);
}
void paint_large_site_house_played(benchmark::State& state) {
    house(state, true, true);
}
void paint_large_site_house_at_rest(benchmark::State& state) {
    house(state, false, false);
}
BENCHMARK(paint_large_site_house_at_rest)->Unit(benchmark::kMillisecond);
BENCHMARK(paint_large_site_house_turned)->Unit(benchmark::kMillisecond);
BENCHMARK(paint_large_site_house_played)->Unit(benchmark::kMillisecond);

void part_large_site(benchmark::State& state) {
    const Job job = large_job();
    for (auto _ : state) {
        const scene::Scene scene = scene::scene_of(job.site, nullptr, nullptr, nullptr);
        benchmark::DoNotOptimize(scene::Order(scene).fragments().size());
    }
}
BENCHMARK(part_large_site)->Unit(benchmark::kMillisecond);

}  // namespace
