#include "ui/yield/day_picture.h"

#include <QLocale>
#include <QObject>
#include <algorithm>

#include "ui/common/format.h"
#include "ui/yield/chart_page.h"

namespace wg::ui {
namespace {

constexpr std::size_t hours_in_year = 8760;

std::vector<double> day_of(const std::vector<float>& series, int day) {
    const auto from = series.begin() + day * 24;
    return {from, from + 24};
}

/// States at an hour's end or mean: drawn at its middle.
std::vector<QPointF> at_middles(const std::vector<double>& values) {
    std::vector<QPointF> points;
    for (std::size_t hour = 0; hour < values.size(); ++hour)
        points.emplace_back(static_cast<double>(hour) + 0.5, values[hour]);
    return points;
}

double sum_of(const std::vector<double>& values) {
    double sum = 0.0;
    for (const double value : values)
        sum += value;
    return sum;
}

Axis clock_axis() {
    Axis axis;
    axis.title = QObject::tr("hour, local standard time");
    for (int hour = 0; hour <= 24; hour += 2)
        axis.marks.push_back({static_cast<double>(hour), QString::number(hour), false});
    return axis;
}

CurvesPanel temperatures(const season::HourSeries& hours, int day, const ChartColours& c, const Theme& theme) {
    CurvesPanel panel;
    panel.unit = QStringLiteral("°C");
    panel.share = 1.6;
    const auto add = [&panel](const QString& name, const QColor& colour, Qt::PenStyle style, double width,
                              const std::vector<double>& values) {
        panel.curves.push_back({name, colour, style, width, at_middles(values), false});
    };
    if (hours.node_c.size() == hours_in_year) {
        for (std::size_t node = 1; node + 1 < 10; ++node) {
            std::vector<double> values;
            for (std::size_t hour = 0; hour < 24; ++hour)
                values.push_back(static_cast<double>(hours.node_c[static_cast<std::size_t>(day * 24) + hour][node]));
            add(node == 1 ? QObject::tr("Layers between") : QString(), c.warm, Qt::SolidLine, 0.7, values);
        }
    }
    add(QObject::tr("Top of the cylinder"), c.warm, Qt::SolidLine, 3.0, day_of(hours.top_c, day));
    add(QObject::tr("Bottom"), c.warm, Qt::DashLine, 2.4, day_of(hours.bottom_c, day));
    if (const auto* set_point = optional_series(hours.set_point_c)) {
        panel.curves.push_back(
            {QObject::tr("Set-point"), theme.text, Qt::DotLine, 1.6, steps_of(day_of(*set_point, day)), false});
    }
    add(QObject::tr("Plate"), c.cold, Qt::SolidLine, 2.4, day_of(hours.plate_c, day));
    add(QObject::tr("Air"), c.cold, Qt::DashDotLine, 1.8, day_of(hours.air_c, day));
    fit_panel(panel, false);
    return panel;
}

CurvesPanel powers(const season::HourSeries& hours, int day, const ChartColours& c) {
    CurvesPanel panel;
    panel.unit = QStringLiteral("W");
    panel.share = 1.2;
    panel.curves.push_back(
        {QObject::tr("Hot water drawn"), c.air, Qt::SolidLine, 1.4, steps_of(day_of(hours.drawn_w, day)), true});
    panel.curves.push_back({QObject::tr("Heat from the pump"), c.water, Qt::SolidLine, 2.4,
                            steps_of(day_of(hours.condenser_w, day)), false});
    panel.curves.push_back({QObject::tr("All electricity"), c.electricity, Qt::DashLine, 2.4,
                            steps_of(day_of(hours.electric_w, day)), false});
    if (const auto* immersion = optional_series(hours.immersion_w)) {
        const std::vector<double> values = day_of(*immersion, day);
        if (sum_of(values) > 0.0) {
            panel.curves.push_back(
                {QObject::tr("Of it immersion heater"), c.electricity, Qt::DotLine, 2.0, steps_of(values), false});
        }
    }
    if (const auto* waits = optional_series(hours.waits_h)) {
        for (int hour = 0; hour < 24; ++hour) {
            if ((*waits)[static_cast<std::size_t>(day * 24 + hour)] <= 0.0F) continue;
            if (!panel.spans.empty() && panel.spans.back().to == hour) {
                panel.spans.back().to = hour + 1;
            } else {
                panel.spans.push_back({static_cast<double>(hour), static_cast<double>(hour + 1)});
            }
        }
        panel.span_name = QObject::tr("Control holds the pump back");
    }
    fit_panel(panel, true);
    return panel;
}

CurvesPanel light(const season::HourSeries& hours, int day, const ChartColours& c, ThemeKind kind) {
    CurvesPanel panel;
    panel.unit = QStringLiteral("W/m²");
    panel.share = 0.6;
    // A pale line would be lost on a pale ground, a darkened one on a dark.
    const QColor line = kind == ThemeKind::dark ? c.light : c.light.darker(170);
    panel.curves.push_back(
        {QObject::tr("Light on the plate"), line, Qt::SolidLine, 1.6, steps_of(day_of(hours.light_w_m2, day)), true});
    fit_panel(panel, true);
    panel.high = std::max(panel.high, 100.0);
    return panel;
}

/// Only on days that have any: a panel for nothing would take room from the others.
void add_if_any(CurvesPicture& picture, const std::vector<float>& series, int day, const QString& name,
                const QString& unit, const QColor& colour, bool steps) {
    const auto* whole = optional_series(series);
    if (whole == nullptr) return;
    const std::vector<double> values = day_of(*whole, day);
    if (*std::max_element(values.begin(), values.end()) <= 0.0) return;
    CurvesPanel panel;
    panel.unit = unit;
    panel.share = 0.5;
    panel.curves.push_back({name, colour, Qt::SolidLine, 1.8, steps ? steps_of(values) : at_middles(values), true});
    fit_panel(panel, true);
    picture.panels.push_back(panel);
}

}  // namespace

QDate date_of_day(int day) {
    return QDate(2027, 1, 1).addDays(day);  // any year without 29 February
}

const std::vector<float>* optional_series(const std::vector<float>& series) {
    return series.size() == hours_in_year ? &series : nullptr;
}

const season::HourSeries* whole_hours(const season::Year& year) {
    if (!year.hours) return nullptr;
    const season::HourSeries& h = *year.hours;
    for (const std::vector<float>* series :
         {&h.top_c, &h.bottom_c, &h.plate_c, &h.electric_w, &h.condenser_w, &h.air_c, &h.light_w_m2, &h.drawn_w}) {
        if (optional_series(*series) == nullptr) return nullptr;
    }
    return &h;
}

int notable_day(const season::HourSeries& hours, NotableDay which) {
    const std::vector<float>* series = nullptr;
    double sign = 1.0;
    switch (which) {
        case NotableDay::coldest:
            series = optional_series(hours.air_c);
            sign = -1.0;
            break;
        case NotableDay::darkest:
            series = optional_series(hours.light_w_m2);
            sign = -1.0;
            break;
        case NotableDay::brightest: series = optional_series(hours.light_w_m2); break;
        case NotableDay::most_short: series = optional_series(hours.short_litres); break;
        case NotableDay::most_electricity: series = optional_series(hours.electric_w); break;
    }
    if (series == nullptr) return -1;
    int best = 0;
    double best_sum = -1e300;
    for (int day = 0; day < days_in_year; ++day) {
        const double sum = sign * sum_of(day_of(*series, day));
        if (sum > best_sum) {
            best_sum = sum;
            best = day;
        }
    }
    return which == NotableDay::most_short && best_sum <= 0.0 ? -1 : best;
}

CurvesPicture day_picture(const season::HourSeries& hours, int day, const Theme& theme) {
    const ChartColours colours = chart_colours(theme.kind);
    CurvesPicture picture;
    picture.x = clock_axis();
    picture.x_to = 24.0;
    picture.panels = {temperatures(hours, day, colours, theme), powers(hours, day, colours),
                      light(hours, day, colours, theme.kind)};
    add_if_any(picture, hours.frost_kg_m2, day, QObject::tr("Frost on the plate"), QStringLiteral("kg/m²"),
               colours.cold, false);
    add_if_any(picture, hours.short_litres, day, QObject::tr("Mixed water below wanted"), QStringLiteral("l"),
               theme.stop, true);
    return picture;
}

QString hour_words(const season::HourSeries& hours, int hour_of_year) {
    const auto i = static_cast<std::size_t>(hour_of_year);
    const auto at = [i](const std::vector<float>& series) { return static_cast<double>(series[i]); };
    const QString watts = QStringLiteral("W");
    QString text =
        QObject::tr("%1, %2:00 to %3:00: top %4, bottom %5, plate %6, air %7; heat %8,")
            .arg(QLocale::c().toString(date_of_day(hour_of_year / 24), QStringLiteral("d MMM")))
            .arg(hour_of_year % 24)
            .arg(hour_of_year % 24 + 1)
            .arg(temperature(at(hours.top_c), 1), temperature(at(hours.bottom_c), 1), temperature(at(hours.plate_c), 1),
                 temperature(at(hours.air_c), 1), quantity(at(hours.condenser_w), watts));
    text += QObject::tr(" electricity %1, drawn %2; light %3")
                .arg(quantity(at(hours.electric_w), watts), quantity(at(hours.drawn_w), watts),
                     quantity(at(hours.light_w_m2), QStringLiteral("W/m²")));
    if (const auto* frost = optional_series(hours.frost_kg_m2); frost != nullptr && at(*frost) > 0.0)
        text += QObject::tr("; frost %1").arg(quantity(at(*frost), QStringLiteral("kg/m²"), 2));
    if (const auto* litres = optional_series(hours.short_litres); litres != nullptr && at(*litres) > 0.0)
        text += QObject::tr("; below wanted %1").arg(quantity(at(*litres), QStringLiteral("l")));
    if (const auto* waits = optional_series(hours.waits_h); waits != nullptr && at(*waits) > 0.0)
        text += QObject::tr("; pump held back");
    return text;
}

}  // namespace wg::ui
