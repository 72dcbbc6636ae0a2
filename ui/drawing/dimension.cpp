#include "ui/drawing/dimension.h"

#include <QPen>
#include <algorithm>
#include <array>
#include <cmath>

namespace wg::ui {
namespace {

using namespace Qt::StringLiterals;

QPen thin(const DimensionPen& pen, double factor = 0.8) {
    return QPen(pen.line, pen.line_units * factor, Qt::SolidLine, Qt::FlatCap);
}

void tick(QPainter& painter, QPointF at, double half) {
    painter.drawLine(at + QPointF(-half, half), at + QPointF(half, -half));
}

QString mark_text(const ChainMark& mark) {
    return mark.numbers.isEmpty() ? mark.figure : u"%1 \u00b7 %2"_s.arg(mark.numbers, mark.figure);
}

/// Places for figures: as near to their marks as a spacing allows, in order, kept centred on crowded groups.
std::vector<double> spread(const std::vector<ChainMark>& marks, double spacing) {
    std::vector<double> at;
    at.reserve(marks.size());
    for (const ChainMark& mark : marks)
        at.push_back(mark.at);
    // A few relaxation passes share the shift between neighbours instead of pushing everything one way.
    for (int pass = 0; pass < 200; ++pass) {
        bool moved = false;
        for (std::size_t i = 1; i < at.size(); ++i) {
            const double lack = spacing - (at[i] - at[i - 1]);
            if (lack > 1e-6) {
                at[i - 1] -= lack / 2.0;
                at[i] += lack / 2.0;
                moved = true;
            }
        }
        if (!moved) break;
    }
    return at;
}

constexpr double knee_lines = 0.9;   ///< depth of the knee between projection line and figure, in lines of text
constexpr double figure_gap = 0.25;  ///< between knee and figure

}  // namespace

QRectF draw_dimension(QPainter& painter, QPointF a, QPointF b, const QString& figure, const DimensionPen& pen) {
    const Lettering& letters = *pen.lettering;
    painter.save();
    painter.setPen(thin(pen));
    painter.drawLine(a, b);
    const double half = letters.line() * 0.24;
    tick(painter, a, half);
    tick(painter, b, half);
    painter.restore();

    const double dx = b.x() - a.x();
    const double dy = b.y() - a.y();
    const double length = std::hypot(dx, dy);
    double turn_deg = std::atan2(dy, dx) * 180.0 / M_PI;
    // Read from below or from the right: a vertical figure runs upwards.
    if (turn_deg >= 89.9) turn_deg -= 180.0;
    if (turn_deg < -90.1) turn_deg += 180.0;
    const double turn = turn_deg * M_PI / 180.0;
    const QPointF along(std::cos(turn), std::sin(turn));
    const QPointF above(std::sin(turn), -std::cos(turn));
    const double w = letters.width(figure);
    QPointF middle = (a + b) / 2.0;
    if (w + half * 2.0 > length && std::abs(along.y()) > 0.7) {
        // No room between the ticks of an upright line: the figure stands level beside it.
        const QRectF beside =
            letters.box(middle + QPointF(letters.line() * 0.35, 0.0), Qt::AlignLeft | Qt::AlignVCenter, figure);
        letters.draw_in(painter, beside, figure, pen.text, pen.plate);
        return beside;
    }
    const QPointF anchor = middle + above * (letters.line() / 2.0 + pen.line_units);
    if (pen.plate.isValid()) {
        painter.save();
        painter.translate(anchor);
        painter.rotate(turn_deg);
        painter.fillRect(QRectF(-w / 2.0 - half * 0.4, -letters.line() / 2.0, w + half * 0.8, letters.line() * 0.96),
                         pen.plate);
        painter.restore();
    }
    letters.draw(painter, anchor, Qt::AlignCenter, figure, pen.text, turn_deg);
    const double bw = std::abs(std::cos(turn)) * w + std::abs(std::sin(turn)) * letters.line();
    const double bh = std::abs(std::sin(turn)) * w + std::abs(std::cos(turn)) * letters.line();
    return {anchor.x() - bw / 2.0, anchor.y() - bh / 2.0, bw, bh};
}

double chain_depth(const std::vector<ChainMark>& marks, const Lettering& lettering) {
    double longest = 0.0;
    for (const ChainMark& mark : marks)
        longest = std::max(longest, lettering.width(mark_text(mark)));
    return longest + lettering.line() * (knee_lines + figure_gap + 0.3);
}

double draw_chain_x(QPainter& painter, double datum_x, double line_y, std::vector<ChainMark> marks,
                    const DimensionPen& pen) {
    if (marks.empty()) return 0.0;
    const Lettering& letters = *pen.lettering;
    std::sort(marks.begin(), marks.end(), [](const ChainMark& p, const ChainMark& q) { return p.at < q.at; });
    const double line = letters.line();
    const std::vector<double> at = spread(marks, line * 1.02);
    const double first = std::min(datum_x, marks.front().at);
    const double last = std::max(datum_x, marks.back().at);
    painter.save();
    painter.setPen(thin(pen));
    painter.drawLine(QPointF(first, line_y), QPointF(last, line_y));
    painter.setBrush(pen.line);
    painter.drawEllipse(QPointF(datum_x, line_y), line * 0.14, line * 0.14);
    for (std::size_t i = 0; i < marks.size(); ++i) {
        painter.setPen(QPen(pen.line, pen.line_units * 0.5, Qt::DotLine));
        painter.drawLine(QPointF(marks[i].at, marks[i].to), QPointF(marks[i].at, line_y));
        painter.setPen(thin(pen));
        tick(painter, {marks[i].at, line_y}, line * 0.2);
        const double knee_y = line_y + line * knee_lines;
        painter.drawLine(QPointF(marks[i].at, line_y), QPointF(at[i], knee_y));
        letters.draw(painter, {at[i], knee_y + line * figure_gap}, Qt::AlignRight | Qt::AlignVCenter,
                     mark_text(marks[i]), pen.text, -90.0);
    }
    painter.restore();
    return chain_depth(marks, letters);
}

double draw_chain_y(QPainter& painter, double datum_y, double line_x, std::vector<ChainMark> marks,
                    const DimensionPen& pen) {
    if (marks.empty()) return 0.0;
    const Lettering& letters = *pen.lettering;
    std::sort(marks.begin(), marks.end(), [](const ChainMark& p, const ChainMark& q) { return p.at < q.at; });
    const double line = letters.line();
    const std::vector<double> at = spread(marks, line * 1.02);
    const double first = std::min(datum_y, marks.front().at);
    const double last = std::max(datum_y, marks.back().at);
    painter.save();
    painter.setPen(thin(pen));
    painter.drawLine(QPointF(line_x, first), QPointF(line_x, last));
    painter.setBrush(pen.line);
    painter.drawEllipse(QPointF(line_x, datum_y), line * 0.14, line * 0.14);
    for (std::size_t i = 0; i < marks.size(); ++i) {
        painter.setPen(QPen(pen.line, pen.line_units * 0.5, Qt::DotLine));
        painter.drawLine(QPointF(marks[i].to, marks[i].at), QPointF(line_x, marks[i].at));
        painter.setPen(thin(pen));
        tick(painter, {line_x, marks[i].at}, line * 0.2);
        const double knee_x = line_x - line * knee_lines;
        painter.drawLine(QPointF(line_x, marks[i].at), QPointF(knee_x, at[i]));
        letters.draw(painter, {knee_x - line * figure_gap, at[i]}, Qt::AlignRight | Qt::AlignVCenter,
                     mark_text(marks[i]), pen.text);
    }
    painter.restore();
    return chain_depth(marks, letters);
}

void draw_scale_bar(QPainter& painter, QPointF left, double units_per_m, double most_units, const DimensionPen& pen) {
    static constexpr std::array<double, 9> lengths_m{0.1, 0.2, 0.5, 1.0, 2.0, 5.0, 10.0, 20.0, 50.0};
    double length_m = lengths_m.front();
    for (double candidate : lengths_m) {
        if (candidate * units_per_m <= most_units) length_m = candidate;
    }
    const Lettering& letters = *pen.lettering;
    const double bar = letters.line() * 0.32;
    const double piece = length_m * units_per_m / 4.0;
    painter.save();
    painter.setPen(QPen(pen.text, pen.line_units * 0.8));
    for (int i = 0; i < 4; ++i) {
        painter.setBrush(i % 2 == 0 ? QBrush(pen.text) : QBrush(pen.plate.isValid() ? pen.plate : QColor(Qt::white)));
        painter.drawRect(QRectF(left.x() + piece * i, left.y() - bar, piece, bar));
    }
    painter.restore();
    const int decimals = length_m < 1.0 ? 1 : 0;
    letters.draw(painter, left + QPointF(0.0, -bar * 1.4), Qt::AlignLeft | Qt::AlignBottom, u"0"_s, pen.text);
    letters.draw(painter, left + QPointF(piece * 4.0, -bar * 1.4), Qt::AlignHCenter | Qt::AlignBottom,
                 u"%1\u202fm"_s.arg(length_m, 0, 'f', decimals), pen.text);
}

}  // namespace wg::ui
