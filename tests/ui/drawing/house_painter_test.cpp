#include "ui/drawing/house_painter.h"

#include <gtest/gtest.h>

#include <cmath>

#include "core/site/geometry.h"
#include "tests/ui/drawing/picture.h"
#include "ui/drawing/house_labels.h"

namespace wg::ui {
namespace house_painter_test {

const QRectF area(30.0, 30.0, 640.0, 440.0);

struct Shown {
    scene::Scene scene;
    scene::Order order;
    scene::Shadows shadows;
    HouseDrawing what;
    HouseView view;
    Shown(const Site& site, const scene::Camera& camera, const scene::Moment& moment)
        : scene(scene::scene_of(site, nullptr, nullptr, nullptr)), order(scene) {
        what.sun = scene::sun_over(site, moment);
        if (what.sun.shines()) shadows = scene::shadows_of(scene, order, what.sun.to_sun, what.sun.month);
        what.scene = &scene;
        what.order = &order;
        what.shadows = &shadows;
        what.area = area;
        what.labels = false;
        view = fit_house(scene, camera, area.adjusted(250, 160, -250, -160));  // ground all round is in the picture
    }
    [[nodiscard]] QImage image(const Theme& theme) const {
        QImage out(QSize(700, 500), QImage::Format_RGB32);
        out.fill(Qt::white);
        QPainter painter(&out);
        paint_house(painter, what, view, theme);
        return out;
    }
};

Site box_on_ground() {
    Site site;
    site.location.latitude_deg = 48.0;
    Obstacle box;
    box.id = "box";
    box.label = "Shed";
    box.width_m = box.depth_m = 2.0;
    box.height_m = 3.0;
    site.obstacles = {box};
    return site;
}

TEST(HousePainterTest, the_shadow_lies_on_the_side_away_from_the_sun_in_every_theme) {
    // Noon in March from straight above: the sun is in the south, 42 deg high; the shadow reaches 3.3 m to the north.
    const Shown shown(box_on_ground(), {180.0, 90.0}, {79, 12.1});
    for (const ThemeKind kind : {ThemeKind::light, ThemeKind::dark, ThemeKind::sunlight}) {
        const QImage image = shown.image(theme_of(kind));
        const auto grey = [&](Point3 p) { return qGray(image.pixel(shown.view.map(p).toPoint())); };
        const int north = grey({0.0, 2.5, 0.0}), south = grey({0.0, -2.5, 0.0}), west = grey({-2.5, 0.0, 0.0});
        EXPECT_LT(north, south - 25) << static_cast<int>(kind);
        EXPECT_EQ(south, west) << static_cast<int>(kind);
    }
}

TEST(HousePainterTest, at_night_and_behind_a_hill_there_is_no_shadow) {
    Site site = box_on_ground();
    const Shown night(site, {180.0, 90.0}, {79, 0.0});
    site.horizon = {{0.0, 70.0, {}}};
    const Shown hill(site, {180.0, 90.0}, {79, 12.1});
    for (const Shown* shown : {&night, &hill}) {
        const QImage image = shown->image(theme_of(ThemeKind::light));
        EXPECT_EQ(image.pixel(shown->view.map({0.0, 2.5, 0.0}).toPoint()),
                  image.pixel(shown->view.map({0.0, -2.5, 0.0}).toPoint()));
    }
}

TEST(HousePainterTest, faces_to_the_sun_are_brighter_than_faces_away_from_it) {
    // Seen from the south-east in the morning: the east side is lit square on, the south side at a flat angle.
    const Shown morning(box_on_ground(), {135.0, 25.0}, {79, 8.0});
    const QImage image = morning.image(theme_of(ThemeKind::light));
    const auto grey = [&](Point3 p) { return qGray(image.pixel(morning.view.map(p).toPoint())); };
    EXPECT_GT(grey({1.0, 0.0, 1.5}), grey({0.0, -1.0, 1.5}) + 5);
    const Shown evening(box_on_ground(), {135.0, 25.0}, {79, 17.5});
    const QImage later = evening.image(theme_of(ThemeKind::light));
    EXPECT_LT(qGray(later.pixel(evening.view.map({1.0, 0.0, 1.5}).toPoint())), grey({1.0, 0.0, 1.5}) - 40);
}

TEST(HousePainterTest, what_stands_in_front_hides_what_is_behind_and_is_found_under_the_pointer) {
    Site site = box_on_ground();
    Surface wall;
    wall.id = "wall";
    wall.label = "Wall";
    wall.kind = SurfaceKind::wall;
    wall.tilt_deg = 90.0;
    wall.azimuth_deg = 180.0;
    wall.origin = {-4.0, 3.0, 0.0};
    wall.outline = {{0, 0}, {8, 0}, {8, 2}, {0, 2}};
    site.surfaces = {wall};
    const Shown south(site, {180.0, 12.0}, {79, 12.0}), north(site, {0.0, 12.0}, {79, 12.0});
    const Point3 middle_of_wall{0.0, 3.0, 1.0};
    const auto id_at = [](const Shown& shown, Point3 p) {
        const scene::Thing* thing = house_thing_at(shown.scene, shown.order, shown.view, shown.view.map(p));
        return thing != nullptr ? thing->id : std::string("nothing");
    };
    EXPECT_EQ(id_at(south, middle_of_wall), "box");
    EXPECT_EQ(id_at(north, middle_of_wall), "wall");
    EXPECT_EQ(id_at(south, {-3.5, 3.0, 1.0}), "wall");
    EXPECT_EQ(id_at(south, {-3.5, -3.0, 0.0}), "nothing");
}

TEST(HousePainterTest, labels_do_not_lie_over_each_other) {
    // Twelve posts in a row close together: those that find no place are left out, none covers another.
    Site site;
    for (int i = 0; i < 12; ++i) {
        Obstacle post;
        post.kind = ObstacleKind::post;
        post.id = std::to_string(i);
        post.base = {0.3 * i, 0.1 * i, 0.0};
        post.height_m = 2.0;
        post.label = "A pole with a long name, number " + std::to_string(i);
        site.obstacles.push_back(post);
    }
    const Shown shown(site, {180.0, 30.0}, {79, 12.0});
    HouseDrawing what = shown.what;
    what.labels = true;
    QImage image(QSize(700, 500), QImage::Format_RGB32);
    QPainter painter(&image);
    const std::vector<QRectF> places = paint_house_labels(painter, what, shown.view, theme_of(ThemeKind::light), {});
    EXPECT_GE(places.size(), 4U);
    for (std::size_t i = 0; i < places.size(); ++i) {
        EXPECT_TRUE(area.contains(places[i]));
        for (std::size_t k = 0; k < i; ++k)
            EXPECT_FALSE(places[i].intersects(places[k])) << i << ' ' << k;
    }
}

TEST(HousePainterTest, everything_fits_from_every_side) {
    Site site = sample::job().site;
    site.surfaces[0].origin = {0, 0, 3};
    const scene::Scene scene = scene::scene_of(site, nullptr, nullptr, nullptr);
    for (double azimuth = 0.0; azimuth < 360.0; azimuth += 30.0) {
        for (const double elevation : {4.0, 30.0, 60.0, 90.0}) {
            const HouseView view = fit_house(scene, {azimuth, elevation}, area);
            double widest = 0.0;
            for (const scene::Polygon& polygon : scene.polygons) {
                for (const Point3 p : polygon.corners) {
                    EXPECT_TRUE(area.adjusted(-0.01, -0.01, 0.01, 0.01).contains(view.map(p)));
                    widest = std::max(widest, std::abs(view.map(p).x() - area.center().x()) / area.width());
                    widest = std::max(widest, std::abs(view.map(p).y() - area.center().y()) / area.height());
                }
            }
            EXPECT_NEAR(widest, 0.5, 1e-6) << "and as large as it can be";
        }
    }
}

}  // namespace house_painter_test
}  // namespace wg::ui
