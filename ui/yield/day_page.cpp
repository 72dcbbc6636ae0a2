#include "ui/yield/day_page.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineSeries>
#include <QLocale>
#include <QPen>
#include <QSlider>
#include <QToolButton>
#include <QVBoxLayout>
#include <QValueAxis>
#include <algorithm>
#include <cmath>

#include "ui/common/format.h"
#include "ui/common/theme.h"

namespace wg::ui {
namespace {

constexpr int days = 365;

/// Any year without 29 February.
QDate date_of(int day) {
    return QDate(2027, 1, 1).addDays(day);
}

const season::HourSeries* hours_of(const std::shared_ptr<const plan::Plan>& plan) {
    if (plan == nullptr || !plan->season.hours) return nullptr;
    const season::HourSeries& hours = *plan->season.hours;
    const auto whole = [](const std::vector<float>& series) { return series.size() == 8760; };
    const bool all = whole(hours.top_c) && whole(hours.bottom_c) && whole(hours.plate_c) && whole(hours.electric_w) &&
                     whole(hours.condenser_w) && whole(hours.air_c) && whole(hours.light_w_m2) && whole(hours.drawn_w);
    return all ? &hours : nullptr;
}

/// The day with the greatest sum of the series times `sign`.
int extreme_day(const std::vector<float>& series, double sign) {
    int best = 0;
    double best_sum = -1e300;
    for (int day = 0; day < days; ++day) {
        double sum = 0.0;
        for (int hour = 0; hour < 24; ++hour)
            sum += sign * static_cast<double>(series[static_cast<std::size_t>(day * 24 + hour)]);
        if (sum > best_sum) {
            best_sum = sum;
            best = day;
        }
    }
    return best;
}

}  // namespace

DayPage::DayPage(QWidget* parent) : ChartPage(parent) {
    auto* before = new QToolButton(this);
    before->setText(tr("Day before"));
    auto* after = new QToolButton(this);
    after->setText(tr("Day after"));
    date_ = new QLabel(this);
    date_->setProperty("role", QStringLiteral("heading"));
    date_->setMinimumWidth(110);
    slider_ = new QSlider(Qt::Horizontal, this);
    slider_->setRange(0, days - 1);
    slider_->setPageStep(30);
    slider_->setValue(79);
    slider_->setAccessibleName(tr("Day of the year"));
    jump_ = new QComboBox(this);
    jump_->addItems(
        {tr("Go to a day"), tr("Coldest air"), tr("Most light"), tr("Least light"), tr("Most electricity")});
    auto* row = new QHBoxLayout;
    row->setSpacing(8);
    row->addWidget(before);
    row->addWidget(after);
    row->addWidget(date_);
    row->addWidget(slider_, 1);
    row->addWidget(jump_);
    column().insertLayout(0, row);
    connect(before, &QToolButton::clicked, this, [this] { show_day(day() - 1); });
    connect(after, &QToolButton::clicked, this, [this] { show_day(day() + 1); });
    connect(slider_, &QSlider::valueChanged, this, &DayPage::refresh);
    connect(jump_, &QComboBox::activated, this, &DayPage::jump);
}

int DayPage::day() const {
    return slider_->value();
}

void DayPage::show_day(int day) {
    slider_->setValue((day + days) % days);
}

void DayPage::jump(int which) {
    const season::HourSeries* hours = hours_of(plan_);
    if (hours != nullptr) {
        if (which == 1) show_day(extreme_day(hours->air_c, -1.0));
        if (which == 2) show_day(extreme_day(hours->light_w_m2, 1.0));
        if (which == 3) show_day(extreme_day(hours->light_w_m2, -1.0));
        if (which == 4) show_day(extreme_day(hours->electric_w, 1.0));
    }
    jump_->setCurrentIndex(0);
}

void DayPage::set_plan(const std::shared_ptr<const plan::Plan>& plan) {
    plan_ = plan;
    refresh();
}

void DayPage::refresh() {
    date_->setText(QLocale::c().toString(date_of(day()), QStringLiteral("d MMMM")));
    clear_chart();
    const season::HourSeries* hours = hours_of(plan_);
    if (hours == nullptr) {
        set_words(tr("Hours are kept with a complete plan only."));
        return;
    }
    const ChartColours colours = chart_colours();
    auto* time = new QValueAxis;
    dress_axis(*time, tr("hour, local standard time"));
    time->setRange(0.0, 24.0);
    time->setTickType(QValueAxis::TicksDynamic);
    time->setTickInterval(3.0);
    time->setLabelFormat(QStringLiteral("%.0f"));
    auto* degrees = new QValueAxis;
    dress_axis(*degrees, tr("°C"));
    auto* power = new QValueAxis;
    dress_axis(*power, tr("W"));
    power->setGridLineVisible(false);
    chart().addAxis(time, Qt::AlignBottom);
    chart().addAxis(degrees, Qt::AlignLeft);
    chart().addAxis(power, Qt::AlignRight);
    const auto from = static_cast<std::size_t>(day()) * 24;
    double low = 1e300;
    double high = -1e300;
    double most_w = 100.0;
    const auto line = [&](const QString& name, const std::vector<float>& series, const QPen& pen, QValueAxis* axis) {
        auto* made = new QLineSeries;
        made->setName(name);
        for (std::size_t hour = 0; hour < 24; ++hour) {
            const double value = static_cast<double>(series[from + hour]);
            if (axis == power) {
                // Means over the hour: drawn as steps.
                made->append(static_cast<double>(hour), value);
                made->append(static_cast<double>(hour + 1), value);
                most_w = std::max(most_w, value);
            } else {
                made->append(static_cast<double>(hour) + 0.5, value);
                low = std::min(low, value);
                high = std::max(high, value);
            }
        }
        chart().addSeries(made);
        made->setPen(pen);
        made->attachAxis(time);
        made->attachAxis(axis);
        connect(made, &QLineSeries::hovered, this, [this, name, axis, power](const QPointF& at, bool over) {
            if (!over) return;
            const QString value = axis == power ? quantity(at.y(), QStringLiteral("W")) : temperature(at.y(), 1);
            Q_EMIT pointed_at(QStringLiteral("%1 %2:00: %3").arg(name).arg(static_cast<int>(at.x())).arg(value));
        });
    };
    line(tr("Top of the cylinder"), hours->top_c, QPen(colours.warm, 2.5), degrees);
    line(tr("Bottom"), hours->bottom_c, QPen(colours.warm, 1.8, Qt::DashLine), degrees);
    line(tr("Plate"), hours->plate_c, QPen(colours.cold, 2.5), degrees);
    line(tr("Air"), hours->air_c, QPen(colours.cold, 1.5, Qt::DotLine), degrees);
    line(tr("Heat to the water, W"), hours->condenser_w, QPen(colours.condensation, 2.0), power);
    line(tr("Electricity, W"), hours->electric_w, QPen(colours.electricity, 2.0), power);
    degrees->setRange(std::floor(low / 10.0) * 10.0, std::ceil(high / 10.0) * 10.0);
    degrees->setTickType(QValueAxis::TicksDynamic);
    degrees->setTickInterval(10.0);
    degrees->setLabelFormat(QStringLiteral("%.0f"));
    const double step = most_w > 2000.0 ? 1000.0 : 250.0;
    power->setRange(0.0, std::ceil(most_w / step) * step);
    power->setLabelFormat(QStringLiteral("%.0f"));
    dress_chart();
    double heat = 0.0;
    double electricity = 0.0;
    double drawn = 0.0;
    for (std::size_t hour = 0; hour < 24; ++hour) {
        heat += static_cast<double>(hours->condenser_w[from + hour]) / 1000.0;
        electricity += static_cast<double>(hours->electric_w[from + hour]) / 1000.0;
        drawn += static_cast<double>(hours->drawn_w[from + hour]) / 1000.0;
    }
    set_words(tr("%1: about %2 of heat to the water, %3 of electricity, %4 of hot water drawn. One weather year; other "
                 "years differ.")
                  .arg(date_->text(), quantity(heat, QStringLiteral("kWh"), 1),
                       quantity(electricity, QStringLiteral("kWh"), 1), quantity(drawn, QStringLiteral("kWh"), 1)));
}

FigureTable DayPage::figures() const {
    FigureTable out;
    out.header = {QStringLiteral("date"),       QStringLiteral("hour"),        QStringLiteral("top_c"),
                  QStringLiteral("bottom_c"),   QStringLiteral("plate_c"),     QStringLiteral("air_c"),
                  QStringLiteral("light_w_m2"), QStringLiteral("condenser_w"), QStringLiteral("electric_w"),
                  QStringLiteral("drawn_w")};
    const season::HourSeries* hours = hours_of(plan_);
    if (hours == nullptr) return out;
    for (int hour = 0; hour < 24; ++hour) {
        const auto at = static_cast<std::size_t>(day() * 24 + hour);
        QStringList row{date_of(day()).toString(QStringLiteral("MM-dd")), QString::number(hour)};
        for (const std::vector<float>* series :
             {&hours->top_c, &hours->bottom_c, &hours->plate_c, &hours->air_c, &hours->light_w_m2, &hours->condenser_w,
              &hours->electric_w, &hours->drawn_w}) {
            row += QString::number(static_cast<double>((*series)[at]), 'f', 1);
        }
        out.rows.push_back(row);
    }
    return out;
}

}  // namespace wg::ui
