#include "ui/drawing/lettering.h"

#include <QCache>
#include <QPaintEngine>
#include <QPen>
#include <QStaticText>
#include <array>
#include <cmath>
#include <limits>
#include <memory>

#include "ui/common/theme.h"

namespace wg::ui {
namespace {

// Below this a font's pixel size is too coarse a step; lettering is then drawn large and scaled down.
constexpr double least_font_pixels = 9.0;
constexpr int scaled_font_pixels = 64;

QFont font_for(double text_units, bool bold) {
    QFont font = base_font(10.0);
    font.setPixelSize(text_units < least_font_pixels ? scaled_font_pixels : static_cast<int>(std::lround(text_units)));
    font.setBold(bold);
    return font;
}

/// A word as the font shapes it. Shaping costs more than painting it, and a drag paints the same words again and again.
struct Shaped {
    QStaticText text;
    double width = 0.0;
};

constexpr int words_kept = 2000;

/// Painting is done by the window's thread and, for papers, by others: each keeps its own.
const Shaped& shaped(const QFont& font, const QFontMetricsF& metrics, const QString& text) {
    thread_local QCache<QString, Shaped> kept(words_kept);
    const QString key = text + QChar(font.bold() ? 0xE000 : 0xE001) + QChar(font.pixelSize());
    if (const Shaped* known = kept.object(key)) return *known;
    auto made = std::make_unique<Shaped>();
    made->text.setTextFormat(Qt::PlainText);
    made->text.setPerformanceHint(QStaticText::AggressiveCaching);
    made->text.setText(text);
    made->text.prepare(QTransform(), font);
    made->width = metrics.horizontalAdvance(text);
    const Shaped& out = *made;
    kept.insert(key, made.release());
    return out;
}

}  // namespace

Lettering::Lettering(double text_units, bool bold)
    : font_(font_for(text_units, bold)), scale_(text_units / static_cast<double>(font_.pixelSize())), metrics_(font_) {}

double Lettering::width(const QString& text) const {
    return shaped(font_, metrics_, text).width * scale_;
}

double Lettering::line() const {
    return (metrics_.ascent() + metrics_.descent()) * scale_;
}

QRectF Lettering::box(QPointF anchor, Qt::Alignment hold, const QString& text) const {
    const double w = width(text);
    const double h = line();
    double left = 0.0;
    double top = 0.0;
    if (hold & Qt::AlignRight) left = -w;
    if (hold & Qt::AlignHCenter) left = -w / 2.0;
    if (hold & Qt::AlignBottom) top = -h;
    if (hold & Qt::AlignVCenter) top = -h / 2.0;
    return {anchor.x() + left, anchor.y() + top, w, h};
}

void Lettering::draw(QPainter& painter, QPointF anchor, Qt::Alignment hold, const QString& text, const QColor& colour,
                     double turn_deg) const {
    const QRectF place = box({0.0, 0.0}, hold, text);
    painter.save();
    painter.translate(anchor);
    painter.rotate(turn_deg);
    painter.translate(place.topLeft());
    painter.scale(scale_, scale_);
    painter.setFont(font_);
    painter.setPen(colour);
    // Papers keep words as text.
    if (painter.paintEngine() != nullptr && painter.paintEngine()->type() == QPaintEngine::Raster)
        painter.drawStaticText(QPointF(0.0, 0.0), shaped(font_, metrics_, text).text);
    else
        painter.drawText(QPointF(0.0, metrics_.ascent()), text);
    painter.restore();
}

void Lettering::draw_in(QPainter& painter, const QRectF& box, const QString& text, const QColor& colour,
                        const QColor& plate) const {
    if (plate.isValid()) painter.fillRect(box, plate);
    draw(painter, box.center(), Qt::AlignCenter, text, colour);
}

void LabelPlacer::keep_free_line(QPointF a, QPointF b, double width) {
    const double length = std::hypot(b.x() - a.x(), b.y() - a.y());
    const int steps = std::max(1, static_cast<int>(std::ceil(length / std::max(width * 2.0, 1e-6))));
    for (int i = 0; i <= steps; ++i) {
        const QPointF at = a + (b - a) * (static_cast<double>(i) / steps);
        taken_.emplace_back(at.x() - width / 2.0, at.y() - width / 2.0, width, width);
    }
}

namespace {

/// What one taken box costs another. Any touch costs more than the next ring out does: a corner over a line is read as
/// a blot. Asked some ten thousand times for a picture, so without the general case of turned-inside-out rectangles.
double cost_of(const QRectF& box, const QRectF& taken) {
    const double wide = std::min(box.right(), taken.right()) - std::max(box.left(), taken.left());
    if (!(wide > 0.0)) return 0.0;
    const double high = std::min(box.bottom(), taken.bottom()) - std::max(box.top(), taken.top());
    if (!(high > 0.0)) return 0.0;
    return 0.1 + wide * high / std::min(box.width() * box.height(), taken.width() * taken.height());
}

}  // namespace

double LabelPlacer::crowding(const QRectF& box) const {
    return score(box, 0.0, std::numeric_limits<double>::infinity()) / 10.0;
}

double LabelPlacer::score(const QRectF& box, double rest, double enough) const {
    double covered = !bounds_.isEmpty() && !bounds_.contains(box) ? 4.0 : 0.0;
    for (const QRectF& other : taken_) {
        const double cost = cost_of(box, other);
        if (cost <= 0.0) continue;
        covered += cost;
        if (covered * 10.0 + rest >= enough) break;
    }
    return covered * 10.0 + rest;
}

bool LabelPlacer::is_free(const QRectF& box) const {
    return crowding(box) <= 0.0;
}

LabelPlacer::Label LabelPlacer::place(QPointF anchor, QSizeF size, double gap, QPointF prefer) {
    const Label label = find(anchor, size, gap, prefer);
    taken_.push_back(label.box);
    return label;
}

LabelPlacer::Label LabelPlacer::find(QPointF anchor, QSizeF size, double gap, QPointF prefer) const {
    static constexpr std::array<std::array<double, 2>, 8> directions{
        {{0.7, -0.7}, {1.0, 0.0}, {0.7, 0.7}, {0.0, -1.0}, {-0.7, -0.7}, {-1.0, 0.0}, {-0.7, 0.7}, {0.0, 1.0}}};
    static constexpr std::array<double, 6> rings{1.0, 2.5, 4.5, 7.0, 10.0, 14.0};
    Label best;
    double best_score = std::numeric_limits<double>::infinity();
    for (std::size_t ring = 0; ring < rings.size(); ++ring) {
        for (std::size_t d = 0; d < directions.size(); ++d) {
            const double dx = directions[d][0];
            const double dy = directions[d][1];
            // The box's near side or corner, not its middle, lies at the ring's distance.
            const double side_x = dx > 0.1 ? 0.5 : (dx < -0.1 ? -0.5 : 0.0);
            const double side_y = dy > 0.1 ? 0.5 : (dy < -0.1 ? -0.5 : 0.0);
            const QPointF middle(anchor.x() + dx * gap * rings[ring] + side_x * size.width(),
                                 anchor.y() + dy * gap * rings[ring] + side_y * size.height());
            const QRectF box(middle.x() - size.width() / 2.0, middle.y() - size.height() / 2.0, size.width(),
                             size.height());
            const double against = (1.0 - (prefer.x() * dx + prefer.y() * dy)) * (prefer.isNull() ? 0.0 : 0.5);
            const double rest = static_cast<double>(ring) * 0.6 + static_cast<double>(d) * 0.02 + against;
            if (rest >= best_score) continue;
            const double here = score(box, rest, best_score);
            if (here < best_score) {
                best_score = here;
                best = {box, ring >= 2};
            }
        }
    }
    return best;
}

}  // namespace wg::ui
