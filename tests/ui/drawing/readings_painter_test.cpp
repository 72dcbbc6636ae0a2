#include "ui/drawing/readings_painter.h"

#include <gtest/gtest.h>

#include <QImage>

namespace wg::ui {
namespace readings_painter_test {
namespace {

commissioning::Curve rise() {
    commissioning::Curve curve;
    curve.x_label = "since valve-off";
    curve.x_unit = "min";
    curve.y_label = "absolute";
    curve.y_unit = "Pa";
    for (int i = 0; i <= 6; ++i) {
        curve.read.push_back({5.0 * i, 50.0 + 5.0 * i});
        curve.fitted.push_back({5.0 * i, 51.0 + 5.0 * i});
    }
    curve.limit = 270.0;
    return curve;
}

QImage painted(const commissioning::Curve& curve, ThemeKind kind) {
    QImage image(420, 240, QImage::Format_RGB32);
    const Theme theme = theme_of(kind);
    image.fill(theme.ground);
    QPainter painter(&image);
    paint_readings(painter, curve, QRectF(image.rect()), theme, 14.0);
    return image;
}

TEST(ReadingsPainter, the_frame_holds_every_reading_and_the_limit) {
    const commissioning::Curve curve = rise();
    const PlotFrame frame = readings_frame(curve, QRectF(0, 0, 420, 240), 14.0);
    for (const auto& point : curve.read)
        EXPECT_TRUE(frame.plot.contains(frame.map(point.x, point.y)));
    EXPECT_TRUE(frame.plot.contains(frame.map(10.0, *curve.limit)));
    EXPECT_GT(frame.plot.height(), 80.0) << "axes leave room for the course";
}

TEST(ReadingsPainter, odd_courses_are_painted_too) {
    for (const commissioning::Curve& curve : {commissioning::Curve{}, [] {
                                                  commissioning::Curve one = rise();
                                                  one.read = {{3.0, 28.0}};  // one reading, no span at all
                                                  one.fitted.clear();
                                                  one.limit.reset();
                                                  return one;
                                              }()}) {
        const PlotFrame frame = readings_frame(curve, QRectF(0, 0, 420, 240), 14.0);
        EXPECT_LT(frame.x_from, frame.x_to);
        EXPECT_LT(frame.y_from, frame.y_to);
        EXPECT_FALSE(painted(curve, ThemeKind::sunlight).isNull());
    }
}

TEST(ReadingsPainter, readings_stand_out_in_grey_in_every_theme) {
    for (const ThemeKind kind : {ThemeKind::light, ThemeKind::dark, ThemeKind::sunlight}) {
        const commissioning::Curve curve = rise();
        const PlotFrame frame = readings_frame(curve, QRectF(0, 0, 420, 240), 14.0);
        const QImage grey = painted(curve, kind).convertToFormat(QImage::Format_Grayscale8);
        const QPoint at = frame.map(15.0, 65.0).toPoint();
        const int ground = qGray(theme_of(kind).ground.rgb());
        EXPECT_GT(std::abs(qGray(grey.pixel(at)) - ground), 100) << "theme " << static_cast<int>(kind);
    }
}

TEST(ReadingsPainter, a_reading_outside_its_band_is_drawn_apart) {
    commissioning::Band band{"suction temperature", "°C", 1, 4.0, 6.0, 8.0, 6.0};
    const auto picture = [](const commissioning::Band& of) {
        QImage image(400, 60, QImage::Format_RGB32);
        const Theme theme = theme_of(ThemeKind::light);
        image.fill(theme.ground);
        QPainter painter(&image);
        paint_bands(painter, {of}, QRectF(image.rect()), theme, 14.0);
        return image;
    };
    const QRgb stop = theme_of(ThemeKind::light).stop.rgb();
    const auto has_stop = [stop](const QImage& image) {
        for (int y = 0; y < image.height(); ++y)
            for (int x = 0; x < image.width(); ++x)
                if (image.pixel(x, y) == stop) return true;
        return false;
    };
    EXPECT_FALSE(has_stop(picture(band)));
    band.read = 30.0;
    EXPECT_TRUE(has_stop(picture(band)));
    band.read.reset();
    EXPECT_FALSE(has_stop(picture(band)));
    EXPECT_GE(bands_height(2, 14.0), 2 * 14.0 * 3);
}

}  // namespace
}  // namespace readings_painter_test
}  // namespace wg::ui
