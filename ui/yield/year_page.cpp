#include "ui/yield/year_page.h"

#include <QBarCategoryAxis>
#include <QBarSet>
#include <QLineSeries>
#include <QLocale>
#include <QPen>
#include <QStackedBarSeries>
#include <QValueAxis>
#include <algorithm>
#include <cmath>

#include "ui/common/format.h"
#include "ui/common/theme.h"

namespace wg::ui {
namespace {

struct Part {
    QString name;
    QColor colour;
    double (*of)(const season::MonthSums&);
};

std::vector<Part> parts_of_heat() {
    const ChartColours colours = chart_colours();
    return {
        {YearPage::tr("Light"), colours.light, [](const season::MonthSums& m) { return m.light_kwh; }},
        {YearPage::tr("Air and sky"), colours.air,
         [](const season::MonthSums& m) { return m.air_kwh + m.long_wave_kwh; }},
        {YearPage::tr("Condensation"), colours.condensation, [](const season::MonthSums& m) { return m.latent_kwh; }},
        {YearPage::tr("Electricity"), colours.electricity,
         [](const season::MonthSums& m) { return m.electricity_kwh(); }}};
}

/// Round steps for the axis: 1, 2 or 5 times a power of ten.
double step_for(double span) {
    const double rough = std::max(1.0, span / 6.0);
    const double power = std::pow(10.0, std::floor(std::log10(rough)));
    for (const double factor : {1.0, 2.0, 5.0}) {
        if (rough <= factor * power) return factor * power;
    }
    return 10.0 * power;
}

}  // namespace

QStringList month_names() {
    QStringList names;
    for (int month = 1; month <= 12; ++month)
        names += QLocale::c().monthName(month, QLocale::ShortFormat);
    return names;
}

void YearPage::set_plan(const std::shared_ptr<const plan::Plan>& plan, bool carried) {
    plan_ = plan;
    clear_chart();
    if (plan == nullptr) return;
    const season::Year& year = plan->season;
    auto* bars = new QStackedBarSeries;
    bars->setBarWidth(0.7);
    double highest = 0.0;
    double lowest = 0.0;
    for (const Part& part : parts_of_heat()) {
        auto* set = new QBarSet(part.name);
        set->setBrush(part.colour);
        set->setPen(QPen(current_theme().panel, 1.0));
        for (const season::MonthSums& month : year.months)
            *set << part.of(month);
        bars->append(set);
    }
    for (const season::MonthSums& month : year.months) {
        double above = 0.0;
        double below = 0.0;
        for (const Part& part : parts_of_heat()) {
            const double value = part.of(month);
            (value >= 0.0 ? above : below) += value;
        }
        highest = std::max({highest, above, month.drawn_kwh});
        lowest = std::min(lowest, below);
    }
    connect(bars, &QStackedBarSeries::hovered, this, [this](bool over, int month, QBarSet* set) {
        if (!over || set == nullptr || month < 0 || month > 11) return;
        Q_EMIT pointed_at(
            QStringLiteral("%1, %2: %3")
                .arg(month_names()[month], set->label(), quantity(set->at(month), QStringLiteral("kWh"))));
    });
    auto* drawn = new QLineSeries;
    drawn->setName(tr("Hot water drawn"));
    drawn->setPen(QPen(chart_colours().water, 2.5));
    drawn->setPointsVisible(true);
    for (std::size_t month = 0; month < 12; ++month) {
        drawn->append(static_cast<double>(month), year.months[month].drawn_kwh);
    }
    chart().addSeries(bars);
    chart().addSeries(drawn);
    auto* months = new QBarCategoryAxis;
    months->append(month_names());
    months->setLabelsFont(base_font(10.0));
    months->setLabelsColor(current_theme().text);
    months->setGridLineVisible(false);
    months->setLinePenColor(current_theme().muted);
    auto* heat = new QValueAxis;
    dress_axis(*heat, tr("kWh a month"));
    const double step = step_for(highest - lowest);
    heat->setRange(std::floor(lowest / step) * step, std::ceil(highest * 1.02 / step) * step);
    heat->setTickType(QValueAxis::TicksDynamic);
    heat->setTickInterval(step);
    heat->setLabelFormat(QStringLiteral("%.0f"));
    chart().addAxis(months, Qt::AlignBottom);
    chart().addAxis(heat, Qt::AlignLeft);
    for (QAbstractSeries* series : chart().series()) {
        series->attachAxis(months);
        series->attachAxis(heat);
    }
    dress_chart();

    const plan::Figures& f = plan->figures;
    QString text = tr("In a year: hot water %1, electricity %2, that is %3 of heat for each kWh of electricity.")
                       .arg(ranged(f.heat_kwh, QStringLiteral("kWh")), ranged(f.electricity_kwh, QStringLiteral("kWh")),
                            ranged(f.seasonal_factor, QStringLiteral("kWh"), 1));
    text += tr(" Not met at the wanted temperature: about %1 in %2 draws; coldest water at the top %3.")
                .arg(quantity(year.total.shortfall_kwh, QStringLiteral("kWh")))
                .arg(year.shortfall_draws)
                .arg(temperature(year.lowest_top_c, 1));
    if (plan->weather_spread) {
        const plan::WeatherSpread& s = *plan->weather_spread;
        text += tr(" Weather of single years: in eight of ten, light %1 to %2 and electricity %3 to %4.")
                    .arg(number(s.light_kwh_m2.p10), quantity(s.light_kwh_m2.p90, QStringLiteral("kWh/m\u00b2")),
                         number(s.electricity_kwh.p10), quantity(s.electricity_kwh.p90, QStringLiteral("kWh")));
    }
    if (!plan->range_method.empty()) text += tr(" Ranges: %1.").arg(qs(plan->range_method));
    if (!plan->weather_source.empty()) {
        text +=
            tr(" Weather: %1%2.").arg(qs(plan->weather_source), plan->weather_invented ? tr(" (invented)") : QString());
    }
    if (carried) text = tr("From before the last edit; new figures follow. ") + text;
    set_words(text);
}

FigureTable YearPage::figures() const {
    FigureTable out;
    out.header = {QStringLiteral("month"),         QStringLiteral("light_kwh"),        QStringLiteral("air_kwh"),
                  QStringLiteral("long_wave_kwh"), QStringLiteral("condensation_kwh"), QStringLiteral("compressor_kwh"),
                  QStringLiteral("immersion_kwh"), QStringLiteral("standby_kwh"),      QStringLiteral("defrost_kwh"),
                  QStringLiteral("condenser_kwh"), QStringLiteral("drawn_kwh"),        QStringLiteral("shortfall_kwh"),
                  QStringLiteral("running_h")};
    if (plan_ == nullptr) return out;
    for (std::size_t i = 0; i < 12; ++i) {
        const season::MonthSums& m = plan_->season.months[i];
        QStringList row{QString::number(i + 1)};
        for (const double value :
             {m.light_kwh, m.air_kwh, m.long_wave_kwh, m.latent_kwh, m.compressor_kwh, m.immersion_kwh, m.standby_kwh,
              m.defrost_kwh, m.condenser_kwh, m.drawn_kwh, m.shortfall_kwh, m.running_h}) {
            row += QString::number(value, 'f', 2);
        }
        out.rows.push_back(row);
    }
    return out;
}

}  // namespace wg::ui
