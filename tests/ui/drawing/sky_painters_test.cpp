#include <gtest/gtest.h>

#include <cmath>
#include <limits>

#include "tests/ui/drawing/picture.h"
#include "ui/drawing/carpet_painter.h"
#include "ui/drawing/orientation_map_painter.h"
#include "ui/drawing/picture_view.h"
#include "ui/drawing/sun_path_painter.h"
#include "ui/drawing/weather_painters.h"

namespace wg::ui {
namespace sky_painters_test {

const QRectF area(20.0, 20.0, 860.0, 460.0);
constexpr double text_units = 13.0;

/// Words that say which side was overrun; empty when everything stayed inside.
std::string overrun(const QRect& ink) {
    const QRect allowed = area.toAlignedRect().adjusted(-1, -1, 1, 1);
    std::string out;
    if (ink.left() < allowed.left()) out += "left by " + std::to_string(allowed.left() - ink.left()) + ' ';
    if (ink.top() < allowed.top()) out += "top by " + std::to_string(allowed.top() - ink.top()) + ' ';
    if (ink.right() > allowed.right()) out += "right by " + std::to_string(ink.right() - allowed.right()) + ' ';
    if (ink.bottom() > allowed.bottom()) out += "bottom by " + std::to_string(ink.bottom() - allowed.bottom());
    return out;
}

SunPathPicture sky_over(double latitude) {
    SunPathPicture picture;
    picture.sun = std::make_shared<const sky::SunTable>(sky::sun_table({latitude, 15.0, 100.0, 1.0}));
    picture.latitude_deg = latitude;
    picture.plate = SunPathPicture::Plate{35.0, 190.0};
    picture.horizon = {{0.0, 2.0, {}}, {180.0, 5.0, {}}};
    for (int bearing = 0; bearing < 360; bearing += 3) {
        SkylineStep step;
        step.azimuth_deg = bearing;
        if (bearing > 120 && bearing < 150)
            step = {step.azimuth_deg, 18.0, "house", QStringLiteral("Neighbour"), false};
        if (bearing > 330 || bearing < 20) step = {step.azimuth_deg, 25.0, "tree", QStringLiteral("Walnut"), true};
        picture.skyline.push_back(step);
    }
    return picture;
}

TEST(SunPathPainterTest, every_latitude_stays_inside_its_area_and_covers_every_bearing_of_the_sun) {
    for (const double latitude : {-90.0, -67.0, -34.0, 0.0, 12.0, 51.5, 66.6, 78.2, 90.0}) {
        const SunPathPicture picture = sky_over(latitude);
        const SunPathFrame where = sun_path_frame(picture, area, text_units);
        for (std::size_t i = 0; i < picture.sun->azimuth_deg.size(); ++i) {
            if (!(picture.sun->elevation_deg[i] > 0.0F)) continue;
            const double x = where.x_of(static_cast<double>(picture.sun->azimuth_deg[i]));
            ASSERT_GE(x, where.frame.x_from) << latitude;
            ASSERT_LE(x, where.frame.x_to) << latitude;
            ASSERT_LE(static_cast<double>(picture.sun->elevation_deg[i]), where.frame.y_to) << latitude;
        }
        for (const Theme& theme : {theme_of(ThemeKind::light), theme_of(ThemeKind::dark), paper_theme()}) {
            const QRect ink = picture::ink_of(
                QSize(900, 500), [&](QPainter& painter) { paint_sun_path(painter, picture, area, theme, text_units); });
            EXPECT_EQ(overrun(ink), "") << latitude;
            EXPECT_GT(ink.width(), 700) << latitude;
        }
    }
}

TEST(SunPathPainterTest, a_small_picture_with_few_lines_and_its_marks_stays_inside) {
    SunPathPicture picture = sky_over(51.5);
    picture.few_lines = true;
    picture.marked = HorizonPoint{320.0, 70.0, {}};
    picture.now = SunPathPicture::SunMark{180.0, 40.0, QStringLiteral("21 Mar, 12:00")};
    const QRectF small(20.0, 20.0, 340.0, 200.0);
    const Theme theme = theme_of(ThemeKind::light);
    const auto paint = [&](QPainter& painter) { paint_sun_path(painter, picture, small, theme, text_units); };
    const QRect ink = picture::ink_of(QSize(400, 260), paint);
    EXPECT_TRUE(small.toAlignedRect().adjusted(-1, -1, 1, 1).contains(ink))
        << ink.left() << ' ' << ink.top() << ' ' << ink.right() << ' ' << ink.bottom();
    QImage with(400, 260, QImage::Format_RGB32), without = with;
    for (QImage* image : {&with, &without}) {
        if (image == &without) picture.now.reset();
        image->fill(Qt::white);
        QPainter painter(image);
        paint(painter);
    }
    const SunPathFrame where = sun_path_frame(picture, small, text_units);
    const QPoint sun = where.frame.map(where.x_of(180.0), 40.0).toPoint();
    EXPECT_NE(with.pixel(sun), without.pixel(sun));
}

TEST(SunPathPainterTest, the_noon_side_is_in_the_middle_and_morning_lies_where_one_looks) {
    const SunPathFrame north = sun_path_frame(sky_over(51.5), area, text_units);
    EXPECT_DOUBLE_EQ(north.bearing_of(0.0), 180.0);
    EXPECT_LT(north.x_of(90.0), 0.0) << "looking south, east is on the left";
    const SunPathFrame south = sun_path_frame(sky_over(-34.0), area, text_units);
    EXPECT_DOUBLE_EQ(south.bearing_of(0.0), 0.0);
    EXPECT_GT(south.x_of(90.0), 0.0) << "looking north, east is on the right";
    for (const double bearing : {0.0, 33.0, 180.0, 271.0}) {
        EXPECT_NEAR(south.bearing_of(south.x_of(bearing)), bearing, 1e-9);
    }
    EXPECT_DOUBLE_EQ(sun_path_frame(sky_over(78.2), area, text_units).frame.x_to, 180.0)
        << "the midnight sun runs round";
}

TEST(SunPathPainterTest, words_tell_time_and_what_stands_in_front) {
    const SunPathPicture picture = sky_over(51.5);
    const QString noon = words_at(picture, 180.0, 38.5);
    EXPECT_TRUE(noon.contains(QStringLiteral("Mar"))) << noon.toStdString();
    EXPECT_TRUE(noon.contains(QStringLiteral("Sep"))) << noon.toStdString();
    EXPECT_TRUE(words_at(picture, 135.0, 10.0).contains(QStringLiteral("behind Neighbour")));
    EXPECT_FALSE(words_at(picture, 135.0, 30.0).contains(QStringLiteral("Neighbour")));
    EXPECT_TRUE(words_at(picture, 180.0, 3.0).contains(QStringLiteral("surveyed horizon")));
    EXPECT_TRUE(words_at(picture, 180.0, 80.0).contains(QStringLiteral("never")));
    EXPECT_TRUE(words_at(picture, 10.0, 5.0).contains(QStringLiteral("behind the collector's face")));
}

TEST(SunPathPainterTest, nothing_known_draws_axes_only) {
    const QRect ink = picture::ink_of(QSize(900, 500), [](QPainter& painter) {
        paint_sun_path(painter, SunPathPicture{}, area, theme_of(ThemeKind::light), text_units);
    });
    EXPECT_FALSE(ink.isEmpty());
}

OrientationPicture map_picture(double latitude) {
    auto map = std::make_shared<sky::OrientationMap>();
    map->best_tilt_deg = 35.0;
    map->best_azimuth_deg = latitude < 0.0 ? 0.0 : 180.0;
    map->best_kwh_m2 = 1200.0;
    map->least_kwh_m2 = 300.0;
    for (int tilt = 0; tilt < sky::OrientationMap::tilts; ++tilt) {
        for (int azimuth = 0; azimuth < sky::OrientationMap::azimuths; ++azimuth) {
            const double off_tilt = (tilt * 5.0 - 35.0) / 90.0;
            const double facing = std::cos((azimuth * 5.0 - map->best_azimuth_deg) / 57.29577951);
            map->kwh_m2.push_back(1200.0 - 500.0 * off_tilt * off_tilt - 4.0 * tilt * 5.0 * 0.5 * (1.0 - facing));
        }
    }
    OrientationPicture picture;
    picture.map = map;
    picture.latitude_deg = latitude;
    picture.collectors = {{38.0, 225.0, QStringLiteral("Lower collector")},
                          {38.0, 225.0, QStringLiteral("Upper collector")}};
    return picture;
}

TEST(OrientationPainterTest, stays_inside_and_speaks_of_the_place_pointed_at) {
    for (const double latitude : {48.0, -30.0}) {
        const OrientationPicture picture = map_picture(latitude);
        const QRect ink = picture::ink_of(QSize(900, 500), [&](QPainter& painter) {
            paint_orientation_map(painter, picture, area, theme_of(ThemeKind::light), text_units);
        });
        EXPECT_EQ(overrun(ink), "");
    }
    const OrientationPicture picture = map_picture(48.0);
    EXPECT_TRUE(words_at(picture, 35.0, 180.0).contains(QStringLiteral("as good as the best")));
    EXPECT_TRUE(words_at(picture, 90.0, 0.0).contains(QStringLiteral("less than the best")));
    EXPECT_TRUE(words_at(OrientationPicture{}, 35.0, 180.0).isEmpty());
}

TEST(OrientationPainterTest, contour_levels_are_round_and_inside_the_map) {
    const OrientationPicture picture = map_picture(48.0);
    const std::vector<double> levels = contour_levels(*picture.map);
    EXPECT_GE(levels.size(), 5U);
    EXPECT_LE(levels.size(), 14U);
    for (const double level : levels) {
        EXPECT_GE(level, picture.map->least_kwh_m2);
        EXPECT_LT(level, picture.map->best_kwh_m2);
        EXPECT_NEAR(std::remainder(level, 10.0), 0.0, 1e-9);
    }
    sky::OrientationMap flat;
    EXPECT_TRUE(contour_levels(flat).empty());
}

TEST(ValueColourTest, lightness_grows_with_the_value_and_nonsense_is_grey) {
    int last = -1;
    for (int i = 0; i <= 20; ++i) {
        const int grey = qGray(value_colour(i, 0.0, 20.0).rgb());
        EXPECT_GT(grey, last) << i;
        last = grey;
    }
    EXPECT_EQ(value_colour(std::numeric_limits<double>::quiet_NaN(), 0.0, 1.0), QColor(0x808080));
    EXPECT_TRUE(value_colour(5.0, 5.0, 5.0).isValid());
}

TEST(CarpetPainterTest, hours_are_found_back_under_the_pointer) {
    std::vector<double> values(8760, 1.0);
    CarpetPicture picture;
    picture.values = &values;
    picture.unit = QStringLiteral("W/m²");
    set_scale(picture, 0.0, 973.0);
    EXPECT_DOUBLE_EQ(picture.low, 0.0);
    EXPECT_DOUBLE_EQ(picture.high, 1000.0);
    const CarpetFrame where = carpet_frame(picture, area, text_units);
    for (const int hour : {0, 23, 24, 4000, 8759}) {
        const QPointF middle = where.frame.map(hour / 24 + 0.5, hour % 24 + 0.5);
        EXPECT_EQ(hour_at(where, middle), hour);
    }
    EXPECT_EQ(hour_at(where, area.topLeft()), -1);
}

TEST(CarpetPainterTest, stays_inside_with_flags_and_lines_and_without_values) {
    std::vector<double> values(8760);
    for (std::size_t i = 0; i < values.size(); ++i)
        values[i] = static_cast<double>(i % 24);
    CarpetPicture picture;
    picture.values = &values;
    picture.unit = QStringLiteral("°C");
    set_scale(picture, -4.0, 23.0);
    picture.flags.assign(8760, 0);
    picture.flags[5000] = 1;
    picture.flag_words = QStringLiteral("In doubt");
    picture.line_a.assign(365, 6.0);
    picture.line_b.assign(365, std::numeric_limits<double>::quiet_NaN());
    picture.line_words = QStringLiteral("Sunrise and sunset");
    const auto paint = [&](QPainter& painter) {
        paint_carpet(painter, picture, area, theme_of(ThemeKind::dark), text_units);
    };
    EXPECT_EQ(overrun(picture::ink_of(QSize(900, 500), paint)), "");
    values.resize(100);
    EXPECT_FALSE(picture::ink_of(QSize(900, 500), paint).isEmpty());
}

TEST(WeatherPaintersTest, months_and_clear_days_stay_inside) {
    WeatherMonths months;
    for (std::size_t m = 0; m < 12; ++m) {
        months.beam_kwh_m2[m] = 10.0 * static_cast<double>(m);
        months.diffuse_kwh_m2[m] = 40.0;
        months.air_c[m] = -3.0 + static_cast<double>(m);
    }
    sky::ClearDayProfile profile;
    profile.days = 20;
    for (std::size_t bin = 0; bin < 12; ++bin) {
        profile.morning.hours[bin] = profile.afternoon.hours[bin] = 10;
        profile.morning.share[bin] = 0.95;
        profile.afternoon.share[bin] = 1.02;
    }
    const QRect ink = picture::ink_of(QSize(900, 500), [&](QPainter& painter) {
        paint_weather_months(painter, months, area, theme_of(ThemeKind::light), text_units);
        paint_clear_days(painter, profile, area, theme_of(ThemeKind::light), text_units);
        paint_clear_days(painter, sky::ClearDayProfile{}, area, theme_of(ThemeKind::light), text_units);
    });
    EXPECT_EQ(overrun(ink), "");
}

TEST(PictureViewTest, saves_what_it_shows_and_refuses_without_a_picture) {
    PictureView view;
    view.resize(600, 400);
    QString said;
    QObject::connect(&view, &PictureView::pointed_at, [&said](const QString& text) { said = text; });
    EXPECT_FALSE(view.save(QStringLiteral("/nowhere/at/all.png")));
    view.show_picture([](QPainter& painter, const QRectF& where, const Theme& theme,
                         double) { painter.fillRect(where, theme.accent); },
                      [](const QRectF&, QPointF at, double) { return QStringLiteral("x %1").arg(at.x()); });
    view.show();
    QTest::mouseMove(&view, QPoint(50, 60));
    QCoreApplication::processEvents();
    EXPECT_TRUE(said.startsWith(QStringLiteral("x"))) << said.toStdString();
    EXPECT_FALSE(view.save(QStringLiteral("/nowhere/at/all.png")));
}

}  // namespace sky_painters_test
}  // namespace wg::ui
