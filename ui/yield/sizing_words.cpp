#include "ui/yield/sizing_words.h"

#include <QLocale>
#include <algorithm>
#include <cmath>

#include "ui/common/format.h"

namespace wg::ui {
namespace {

QString kwh(double value) {
    return quantity(value, QStringLiteral("kWh"));
}
QString litres(double value) {
    return quantity(value, QStringLiteral("l"));
}
QString amount(const std::optional<double>& minor, const std::string& currency) {
    return minor ? quantity(*minor / 100.0, qs(currency)) : QStringLiteral("\u2014");
}
/// "2 × Marl 18, Rill 18, Copse 250".
QString set_name(const plan::SizingPoint& p) {
    QString name = qs(p.label);
    const qsizetype times = name.indexOf(QStringLiteral(" x "));
    if (times > 0) name.replace(times, 3, QStringLiteral(" \u00d7 "));
    return name;
}
/// The collectors when they are the same in every set: said once instead of at every point.
QString collectors_of_all(const plan::SizingAdvice& advice) {
    QString same;
    for (const plan::SizingPoint& p : advice.points) {
        const QString own = set_name(p).section(QStringLiteral(", "), 0, 0);
        if (!same.isEmpty() && own != same) return {};
        same = own;
    }
    return same;
}
/// "at most 365 l or 12 h short a year".
QString limit_words(const plan::ComfortTarget& target) {
    QStringList limits;
    if (target.most_short_l) limits += litres(*target.most_short_l);
    if (target.most_short_h) limits += quantity(*target.most_short_h, QStringLiteral("h"));
    if (limits.isEmpty()) return QObject::tr("however much falls short");
    return QObject::tr("at most %1 a year not at the wanted temperature").arg(limits.join(QObject::tr(" and ")));
}
QString csv(double value, int decimals) {
    return QString::number(value, 'f', decimals);
}
QString csv(const std::optional<double>& value, double share, int decimals) {
    return value ? csv(*value * share, decimals) : QString();
}

}  // namespace

SetsPicture sets_of(const plan::SizingAdvice& advice, bool yearly) {
    SetsPicture out;
    const QString currency = qs(advice.currency);
    out.cost_title = yearly ? QObject::tr("whole cost a year, %1").arg(currency)
                            : QObject::tr("investment with tax, %1").arg(currency);
    out.comfort_title = QObject::tr("litres short a year, half as much again drawn");
    const QString same = collectors_of_all(advice);
    if (!same.isEmpty()) out.cost_title += QObject::tr("; every set with %1").arg(same);
    for (const plan::SizingPoint& p : advice.points) {
        const std::optional<double>& cost = yearly ? p.yearly_cost_minor : p.investment_minor;
        SetsPicture::Point point;
        // A set without a price is not drawn; the table and the words have it.
        point.cost = cost.value_or(0.0) / 100.0;
        point.priced = cost.has_value();
        point.short_l = p.short_guests_l;
        point.label = same.isEmpty() ? set_name(p) : set_name(p).mid(same.size() + 2);
        point.missed = !p.meets_comfort;
        point.front = yearly ? p.front_yearly : p.front_investment;
        point.stopped = !p.stops.empty();
        point.present = p.present;
        out.points.push_back(point);
    }
    return out;
}

FacingPicture facing_of(const plan::FacingYields& yields, bool equator_south) {
    FacingPicture out;
    out.title = QObject::tr("electricity a year in kWh (dark: little), below it the seasonal factor");
    out.tilts_deg = yields.tilts_deg;
    out.bearings_deg = yields.bearings_deg;
    for (const plan::FacingYield& cell : yields.cells) {
        out.values.push_back(cell.electricity_kwh);
        out.second.push_back(number(cell.seasonal_factor, 2));
    }
    out.here_tilt_deg = yields.here.tilt_deg;
    out.here_bearing_deg = yields.here.bearing_deg;
    out.equator_south = equator_south;
    return out;
}

WarmUpPicture warm_up_of(const plan::MonthsWarmUp& months) {
    WarmUpPicture out;
    for (std::size_t m = 0; m < 12; ++m) {
        if (months.day[m].warm_up.reached) out.day_h[m] = months.day[m].warm_up.hours;
        if (months.night[m].warm_up.reached) out.night_h[m] = months.night[m].warm_up.hours;
    }
    return out;
}

QString point_words(const plan::SizingPoint& p, const plan::SizingAdvice& advice) {
    QString text =
        QObject::tr(
            "%1%2: investment about %3, electricity about %4 (%5) a year, whole cost about %6 a year. "
            "Seasonal factor %7. Short of water: about %8 a year, with half as much again drawn "
            "about %9.")
            .arg(set_name(p), p.present ? QObject::tr(" (the choice's own set)") : QString(),
                 amount(p.investment_minor, advice.currency), amount(p.running_cost_minor, advice.currency),
                 kwh(p.electricity_kwh), amount(p.yearly_cost_minor, advice.currency), number(p.seasonal_factor, 2),
                 QObject::tr("%1 in %2").arg(litres(p.short_l), quantity(p.short_h, QStringLiteral("h"))),
                 litres(p.short_guests_l));
    text += p.warm_up_h > 0.0 ? QObject::tr(" From 10 \u00b0C to set-point in fair light about %1.")
                                    .arg(quantity(p.warm_up_h, QStringLiteral("h"), 1))
                              : QObject::tr(" It does not reach the set-point from 10 \u00b0C in fair light.");
    text += (p.meets_comfort ? QObject::tr(" It keeps the comfort asked for (%1).")
                             : QObject::tr(" It misses the comfort asked for (%1)."))
                .arg(limit_words(advice.comfort));
    for (const Finding& stop : p.stops)
        text += QStringLiteral(" \u2014 ") + qs(stop.message) + QLatin1Char('.');
    return text;
}

QString sets_words(const plan::SizingAdvice& advice) {
    const auto met = std::count_if(advice.points.begin(), advice.points.end(),
                                   [](const plan::SizingPoint& p) { return p.meets_comfort; });
    // The target that nobody has touched is ours, not the household's.
    const bool assumed = advice.comfort == plan::ComfortTarget{};
    QString text =
        QObject::tr(
            "%1 of %2 sets keep the comfort asked for in a usual year: %3 (%4). Upwards is water short in a "
            "year in which half as much again is drawn (assumed): the lower a point, the more it has in hand. "
            "Press a point for its figures.")
            .arg(met)
            .arg(advice.points.size())
            .arg(limit_words(advice.comfort), assumed ? QObject::tr("assumed") : QObject::tr("as set above"));
    for (const std::string& remark : advice.remarks)
        text += QLatin1Char(' ') + qs(remark) + QLatin1Char('.');
    return text + QObject::tr(" Method: %1.").arg(qs(advice.method));
}

QString cell_words(const plan::FacingYield& cell) {
    return QObject::tr("Tilt %1\u00b0, bearing %2: electricity about %3 a year, seasonal factor %4, light %5")
        .arg(std::lround(cell.tilt_deg))
        .arg(bearing(cell.bearing_deg), kwh(cell.electricity_kwh), number(cell.seasonal_factor, 2),
             quantity(cell.light_kwh_m2, QStringLiteral("kWh/m\u00b2")));
}

QString lower_first(QString text) {
    if (!text.isEmpty()) text[0] = text[0].toLower();
    return text;
}

QString facing_words(const plan::FacingYields& yields) {
    if (yields.cells.empty()) return {};
    const auto less = [](const plan::FacingYield& a, const plan::FacingYield& b) {
        return a.electricity_kwh < b.electricity_kwh;
    };
    const auto [best, worst] = std::minmax_element(yields.cells.begin(), yields.cells.end(), less);
    QString text =
        QObject::tr(
            "Best of the grid: %1. Worst: %2; that is %3 more electricity for %4 less light. "
            "The ring is the choice's plate: %5.")
            .arg(lower_first(cell_words(*best)), lower_first(cell_words(*worst)),
                 percent(worst->electricity_kwh / best->electricity_kwh - 1.0),
                 percent(1.0 - worst->light_kwh_m2 / best->light_kwh_m2), lower_first(cell_words(yields.here)));
    for (const std::string& remark : yields.remarks)
        text += QLatin1Char(' ') + qs(remark) + QLatin1Char('.');
    return text + QObject::tr(" Method: %1.").arg(qs(yields.method));
}

QString warm_up_words(const plan::MonthsWarmUp& months, const Demand& demand) {
    QString never;
    for (std::size_t m = 0; m < 12; ++m)
        for (const auto* found : {&months.day[m], &months.night[m]})
            if (!found->warm_up.reached)
                never += QObject::tr(" %1, %2: %3.")
                             .arg(QLocale::c().monthName(static_cast<int>(m) + 1),
                                  found == &months.day[m] ? QObject::tr("day") : QObject::tr("night"),
                                  qs(found->warm_up.why_not));
    return QObject::tr(
               "Hours to heat the whole cylinder from the month's cold inflow to %1, about. A day or night that "
               "is shorter than that does not finish it.")
               .arg(temperature(demand.set_point_c)) +
           (never.isEmpty() ? QString() : QObject::tr(" Not reached:") + never) +
           QObject::tr(" Method: %1.").arg(qs(months.method));
}

FigureTable sets_figures(const plan::SizingAdvice& advice) {
    const QString unit = QStringLiteral("_") + qs(advice.currency);
    FigureTable out;
    out.header = {QStringLiteral("set"),
                  QStringLiteral("collectors"),
                  QStringLiteral("investment") + unit,
                  QStringLiteral("running_cost") + unit,
                  QStringLiteral("whole_cost_year") + unit,
                  QStringLiteral("electricity_kwh"),
                  QStringLiteral("heat_kwh"),
                  QStringLiteral("seasonal_factor"),
                  QStringLiteral("short_l"),
                  QStringLiteral("short_h"),
                  QStringLiteral("short_with_guests_l"),
                  QStringLiteral("warm_up_h"),
                  QStringLiteral("keeps_comfort"),
                  QStringLiteral("not_beaten_by_investment"),
                  QStringLiteral("not_beaten_by_whole_cost"),
                  QStringLiteral("stops")};
    for (const plan::SizingPoint& p : advice.points) {
        QStringList stops;
        for (const Finding& stop : p.stops)
            stops += qs(stop.message);
        out.rows.push_back({qs(p.label), QString::number(p.collectors), csv(p.investment_minor, 0.01, 2),
                            csv(p.running_cost_minor / 100.0, 2), csv(p.yearly_cost_minor, 0.01, 2),
                            csv(p.electricity_kwh, 1), csv(p.heat_kwh, 1), csv(p.seasonal_factor, 3), csv(p.short_l, 1),
                            csv(p.short_h, 0), csv(p.short_guests_l, 1), csv(p.warm_up_h, 2),
                            QString::number(p.meets_comfort ? 1 : 0), QString::number(p.front_investment ? 1 : 0),
                            QString::number(p.front_yearly ? 1 : 0), stops.join(QStringLiteral("; "))});
    }
    return out;
}

FigureTable facing_figures(const plan::FacingYields& yields) {
    FigureTable out;
    out.header = {QStringLiteral("tilt_deg"),        QStringLiteral("bearing_deg"),     QStringLiteral("light_kwh_m2"),
                  QStringLiteral("electricity_kwh"), QStringLiteral("seasonal_factor"), QStringLiteral("short_kwh")};
    for (const plan::FacingYield& cell : yields.cells)
        out.rows.push_back({csv(cell.tilt_deg, 0), csv(cell.bearing_deg, 0), csv(cell.light_kwh_m2, 1),
                            csv(cell.electricity_kwh, 1), csv(cell.seasonal_factor, 3), csv(cell.shortfall_kwh, 2)});
    return out;
}

FigureTable warm_up_figures(const plan::MonthsWarmUp& months) {
    FigureTable out;
    out.header = {QStringLiteral("month"),           QStringLiteral("time"),    QStringLiteral("start_c"),
                  QStringLiteral("light_w_m2"),      QStringLiteral("air_c"),   QStringLiteral("relative_humidity"),
                  QStringLiteral("wind_m_s"),        QStringLiteral("reached"), QStringLiteral("hours"),
                  QStringLiteral("electricity_kwh"), QStringLiteral("mean_cop")};
    for (std::size_t m = 0; m < 12; ++m)
        for (const auto* found : {&months.day[m], &months.night[m]}) {
            const season::WarmUpConditions& c = found->conditions;
            const season::WarmUp& w = found->warm_up;
            out.rows.push_back({QString::number(m + 1),
                                found == &months.day[m] ? QStringLiteral("day") : QStringLiteral("night"),
                                csv(c.start_c, 1), csv(c.light_w_m2, 0), csv(c.air_c, 1), csv(c.relative_humidity, 2),
                                csv(c.wind_m_s, 1), QString::number(w.reached ? 1 : 0), csv(w.hours, 2),
                                csv(w.electricity_kwh, 2), csv(w.mean_cop, 2)});
        }
    return out;
}

}  // namespace wg::ui
