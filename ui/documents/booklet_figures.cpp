// Hot water and bills in the hand-over booklet.

#include <QLocale>
#include <algorithm>
#include <cmath>

#include "core/cylinder/mixed_water.h"
#include "core/plan/month_bills.h"
#include "ui/common/format.h"
#include "ui/common/theme.h"
#include "ui/documents/booklet_parts.h"
#include "ui/drawing/bars_painter.h"

namespace wg::ui::paper {
namespace {

constexpr double shower_l = 50.0;  ///< at 40 °C: about six minutes of 8 l/min (common practice, no published source)
constexpr double bath_l = 140.0;   ///< the same source
constexpr double month_chart_height = 78.0 * mm;
constexpr double month_chart_pt = 10.0;

QString from_cold(const std::optional<season::WarmUp>& warm_up) {
    if (!warm_up) return QStringLiteral("not worked out");
    if (!warm_up->reached) return QStringLiteral("not by the heat pump alone: the electric heater helps");
    return QStringLiteral("about %1")
        .arg(quantity(warm_up->hours, QStringLiteral("hours"), warm_up->hours < 10.0 ? 1 : 0));
}

/// To the nearest ten: a cylinder is not measured by the litre.
double to_ten(double litres) {
    return std::round(litres / 10.0) * 10.0;
}

QString whole_range(const plan::Ranged& value, const QString& unit) {
    return QStringLiteral("%1 (%2 to %3)").arg(quantity(value.mid, unit), number(value.low), number(value.high));
}

QString cost_range(const plan::Ranged& minor, const QString& currency, int decimals) {
    return QStringLiteral("%1 (%2 to %3)")
        .arg(quantity(minor.mid / 100.0, currency, decimals), number(minor.low / 100.0, decimals),
             number(minor.high / 100.0, decimals));
}

BarsPicture month_picture(const std::vector<plan::MonthBill>& bills, const Theme& theme) {
    BarsPicture picture;
    picture.stacked = false;
    picture.y_title = QStringLiteral("electricity, kWh a month");
    BarPart usual{QStringLiteral("likely"), quantity_colour(0.35), BarHatch::rising, {}};
    BarLine low{QStringLiteral("little"), theme.muted, Qt::DotLine, {}};
    BarLine high{QStringLiteral("much"), theme.text, Qt::DashLine, {}};
    for (std::size_t i = 0; i < bills.size() && i < 12; ++i) {
        usual.values[i] = bills[i].electricity_kwh.mid;
        low.values[i] = bills[i].electricity_kwh.low;
        high.values[i] = bills[i].electricity_kwh.high;
    }
    picture.parts = {usual};
    picture.lines = {high, low};
    return picture;
}

void month_table(Flow& flow, const PaperInput& input, const std::vector<plan::MonthBill>& bills) {
    const QString currency = qs(input.plan.currency);
    const QString kwh = QStringLiteral("kWh");
    double low_kwh = 0.0;
    double own_kwh = 0.0;
    for (const plan::MonthBill& bill : bills) {
        low_kwh += bill.low_tariff_kwh;
        own_kwh += bill.surplus_kwh;
    }
    Table table;
    table.whole = true;
    table.size_pt = 11.0;
    table.columns = {{QStringLiteral("Month"), 0.0},
                     {QStringLiteral("Electricity (range)"), 54.0, true},
                     {QStringLiteral("Cost (range)"), 54.0, true}};
    if (low_kwh > 0.5) table.columns.push_back({QStringLiteral("of it cheap"), 22.0, true});
    if (own_kwh > 0.5) table.columns.push_back({QStringLiteral("of it your own"), 22.0, true});
    const auto row = [&](const QString& name, const plan::Ranged& electricity, const plan::Ranged& cost, double cheap,
                         double own, int decimals) {
        QStringList cells{name, whole_range(electricity, kwh), cost_range(cost, currency, decimals)};
        if (low_kwh > 0.5) cells += quantity(cheap, kwh);
        if (own_kwh > 0.5) cells += quantity(own, kwh);
        return cells;
    };
    for (const plan::MonthBill& bill : bills) {
        table.rows.push_back({row(QLocale::c().monthName(bill.month), bill.electricity_kwh, bill.cost_minor,
                                  bill.low_tariff_kwh, bill.surplus_kwh, 2)});
    }
    table.rows.push_back({row(QStringLiteral("The year"), input.plan.figures.electricity_kwh,
                              input.plan.figures.running_cost_minor, low_kwh, own_kwh, 0),
                          Row::Kind::total});
    flow.table(table);
}

}  // namespace

void booklet_hot_water(Flow& flow, const PaperInput& input) {
    const plan::Plan& plan = input.plan;
    const Demand& demand = input.job.demand;
    const double volume = plan.cylinder.volume_l;
    const double tap = demand.wanted_c;
    const auto litres = [&](double share, double cold) {
        return cylinder::mixed_litres(volume, share, demand.set_point_c, cold, tap);
    };
    const double mid = to_ten(litres(cylinder::usable_mid, demand.cold_mean_c));
    const double low = to_ten(litres(cylinder::usable_low, demand.cold_mean_c - demand.cold_swing_k));
    const double high = to_ten(litres(cylinder::usable_high, demand.cold_mean_c + demand.cold_swing_k));
    flow.heading(QStringLiteral("How much hot water there is"), booklet_heading_pt);
    std::vector<std::pair<QString, QString>> lines;
    if (mid > 0.0) {
        lines.push_back(
            {QStringLiteral("A full hot cylinder gives"), ranged({low, mid, high}, QStringLiteral("litres")) +
                                                              QStringLiteral(" of water at %1").arg(temperature(tap))});
        lines.push_back({QStringLiteral("That is enough for"),
                         QStringLiteral("about %1 showers of %2, or %3 baths of %4")
                             .arg(number(std::floor(mid / shower_l)), quantity(shower_l, QStringLiteral("litres")),
                                  number(std::floor(mid / bath_l)), quantity(bath_l, QStringLiteral("litres")))});
    }
    lines.push_back({QStringLiteral("From cold to hot, bright and warm"), from_cold(plan.warm_up_good)});
    lines.push_back({QStringLiteral("On a dull, mild day"), from_cold(plan.warm_up_fair)});
    lines.push_back({QStringLiteral("On a winter night"), from_cold(plan.warm_up_poor)});
    booklet_pairs(flow, lines);
    flow.paragraph(QStringLiteral("The cylinder is seldom empty: the pump starts long before. In winter cold water is "
                                  "colder, so that there is less warm water, and getting it back takes longer."),
                   booklet_text);
}

void booklet_bills(Flow& flow, const SharedInput& input) {
    const plan::Plan& plan = input->plan;
    const std::vector<plan::MonthBill> bills = plan::month_bills(plan, input->job.demand.tariff);
    flow.heading(QStringLiteral("Electricity and what it costs"), booklet_heading_pt);
    if (bills.empty()) {
        flow.paragraph(QStringLiteral("The figures of the year are not worked out yet."), booklet_text);
        return;
    }
    flow.paragraph(
        QStringLiteral(
            "In a year we expect %1 of electricity for your hot water, %2 at today's prices. Each kilowatt-hour "
            "of electricity gives %3 of heat.")
            .arg(ranged(plan.figures.electricity_kwh, QStringLiteral("kWh")),
                 QStringLiteral("about ") + cost_range(plan.figures.running_cost_minor, qs(plan.currency), 0),
                 ranged(plan.figures.seasonal_factor, QStringLiteral("kWh"), 1)),
        booklet_text);
    flow.picture(QStringLiteral("electricity by month"), month_chart_height, 0.0,
                 [bills, sheet = flow.sheet()](QPainter& painter, const QRectF& frame) {
                     const Theme theme = sheet.theme();
                     paint_bars(painter, month_picture(bills, theme), frame, theme,
                                text_units(std::max(month_chart_pt, sheet.least())));
                 });
    month_table(flow, *input, bills);
    flow.paragraph(
        QStringLiteral("You use more hot water, or the year is colder and darker: it will be more. None of these "
                       "figures is a promise. A month far outside the range, twice in a row: call us."),
        booklet_text);
}

}  // namespace wg::ui::paper
