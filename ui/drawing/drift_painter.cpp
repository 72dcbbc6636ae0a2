#include "ui/drawing/drift_painter.h"

#include <QCoreApplication>
#include <QLocale>
#include <QPainterPath>
#include <algorithm>
#include <cmath>

#include "ui/common/format.h"

namespace wg::ui {
namespace {

QString drift_text(const char* text) {
    return QCoreApplication::translate("Drift", text);
}

QString drift_day(CivilDate date) {
    return QLocale(QLocale::English, QLocale::UnitedKingdom)
        .toString(QDate(date.year, date.month, date.day), QStringLiteral("d MMM yyyy"));
}

struct DriftPlot {
    PlotFrame frame;
    Axis x, y;
};

double day_at(const aftercare::DriftPoint& point) {
    return static_cast<double>(days_from_civil(point.on));
}

/// Dates under the points, as many as stand beside each other.
void date_marks(const aftercare::DriftRow& row, const Lettering& letters, DriftPlot& plot) {
    double taken_to = -1e300;
    for (auto point = row.points.begin(); point != row.points.end(); ++point) {
        const QString words = drift_day(point->on);
        const double x = plot.frame.map(day_at(*point), plot.frame.y_from).x();
        const double half = 0.5 * letters.width(words);
        const bool fits = x - half > taken_to + letters.line() * 0.6;
        plot.x.marks.push_back({day_at(*point), fits ? words : QString()});
        if (fits) taken_to = x + half;
    }
}

DriftPlot drift_plot(const aftercare::DriftRow& row, const QRectF& area, const Lettering& letters) {
    DriftPlot plot;
    double low = 1e300, high = -1e300;
    for (const aftercare::DriftPoint& point : row.points) {
        low = std::min({low, point.read, point.model ? point.model->low : point.read});
        high = std::max({high, point.read, point.model ? point.model->high : point.read});
    }
    if (low > high) low = high = 0.0;
    const double room = std::max(0.08 * (high - low), 0.5 * std::pow(10.0, -row.decimals));
    const double step = round_step(high - low + 2.0 * room, 5.0);
    plot.frame.y_from = std::floor((low - room) / step) * step;
    plot.frame.y_to = std::ceil((high + room) / step) * step;
    plot.y.title = qs(row.unit);
    double widest = 0.0;
    const int decimals = decimals_for(step);
    const int steps = static_cast<int>(std::lround((plot.frame.y_to - plot.frame.y_from) / step));
    for (int i = 0; i <= steps; ++i) {
        const double at = plot.frame.y_from + i * step;
        plot.y.marks.push_back({at, number(at, decimals)});
        widest = std::max(widest, letters.width(plot.y.marks.back().text));
    }
    const double first = row.points.empty() ? 0.0 : day_at(row.points.front());
    const double last = row.points.empty() ? 1.0 : day_at(row.points.back());
    const double margin = std::max(10.0, 0.12 * (last - first));
    plot.frame.x_from = first - margin;
    plot.frame.x_to = last + margin;
    plot.frame.plot = plot_area(area, letters, widest, 2);
    date_marks(row, letters, plot);
    return plot;
}

void paint_reading(const PictureInk& ink, QPointF at, Occasion occasion) {
    const double r = 5.0 * ink.line;
    ink.painter.setPen(QPen(ink.theme.panel, 1.5 * ink.line));
    ink.painter.setBrush(ink.theme.text);
    // A square from the fitting, a disc from later: told apart without colour.
    if (occasion == Occasion::fitting) {
        ink.painter.drawRect(QRectF(at - QPointF(r, r), QSizeF(2.0 * r, 2.0 * r)));
    } else {
        ink.painter.drawEllipse(at, r, r);
    }
}

void paint_model(const PictureInk& ink, QPointF high, QPointF low, double mid_y) {
    const double half = 9.0 * ink.line;
    QPainterPath box;
    box.addRect(QRectF(QPointF(high.x() - half, high.y()), QPointF(low.x() + half, low.y())));
    QColor tint = ink.theme.accent;
    tint.setAlpha(60);
    ink.painter.fillPath(box, tint);
    paint_hatch(ink.painter, box, ink.theme.accent, 6.0 * ink.line, 0.8 * ink.line, true);
    ink.painter.setPen(QPen(ink.theme.accent, 2.0 * ink.line));
    ink.painter.drawLine(QPointF(high.x() - half, mid_y), QPointF(high.x() + half, mid_y));
}

}  // namespace

void paint_drift(QPainter& painter, const aftercare::DriftRow& row, const QRectF& area, const Theme& theme,
                 double text_units) {
    const Lettering letters(text_units);
    const PictureInk ink{painter, theme, letters, text_units / 13.0 * theme.line_scale};
    const DriftPlot plot = drift_plot(row, area, letters);
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    paint_grid(ink, plot.frame, plot.x, plot.y);
    bool with_model = false;
    QPolygonF line;
    for (const aftercare::DriftPoint& point : row.points) {
        const auto at = [&](double value) { return plot.frame.map(day_at(point), value); };
        line << at(point.read);
        if (!point.model) continue;
        with_model = true;
        paint_model(ink, at(point.model->high), at(point.model->low), at(point.model->mid).y());
    }
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(theme.muted, ink.line, Qt::DashLine));
    painter.drawPolyline(line);
    for (qsizetype i = 0; i < line.size(); ++i)
        paint_reading(ink, line[i], row.points[static_cast<std::size_t>(i)].occasion);
    paint_axes(ink, plot.frame, plot.x, plot.y);
    std::vector<LegendItem> legend = {
        {drift_text("read at the fitting"),
         [ink](QPainter&, const QRectF& box) { paint_reading(ink, box.center(), Occasion::fitting); }},
        {drift_text("read later"),
         [ink](QPainter&, const QRectF& box) { paint_reading(ink, box.center(), Occasion::service); }}};
    if (with_model) {
        legend.push_back(
            {drift_text("by the model on that day"), [ink](QPainter&, const QRectF& box) {
                 paint_model(ink, {box.center().x(), box.top()}, {box.center().x(), box.bottom()}, box.center().y());
             }});
    }
    paint_legend(&painter,
                 QRectF(plot.frame.plot.left(), area.top(), area.right() - plot.frame.plot.left(), area.height()),
                 legend, theme, letters);
    painter.restore();
}

QString drift_words(const aftercare::DriftRow& row, const QRectF& area, QPointF at, double text_units) {
    const DriftPlot plot = drift_plot(row, area, Lettering(text_units));
    const aftercare::DriftPoint* best = nullptr;
    double nearest = 2.0 * text_units;
    for (const aftercare::DriftPoint& point : row.points) {
        const double off = std::abs(plot.frame.map(day_at(point), point.read).x() - at.x());
        if (off >= nearest) continue;
        nearest = off;
        best = &point;
    }
    if (best == nullptr) return {};
    QString words = QStringLiteral("%1: %2").arg(drift_day(best->on), quantity(best->read, qs(row.unit), row.decimals));
    if (best->model) {
        words += drift_text(", by the model %1 (%2 to %3)")
                     .arg(quantity(best->model->mid, qs(row.unit), row.decimals),
                          number(best->model->low, row.decimals), number(best->model->high, row.decimals));
    }
    if (!best->by.empty()) words += drift_text(", read by %1").arg(qs(best->by));
    return words;
}

}  // namespace wg::ui
