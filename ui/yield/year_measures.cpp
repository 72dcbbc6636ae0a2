#include "ui/yield/year_measures.h"

#include <QObject>
#include <algorithm>
#include <cmath>
#include <limits>

#include "ui/common/format.h"
#include "ui/yield/chart_page.h"

namespace wg::ui {
namespace {

using Month = season::MonthSums;

/// The row, and how many of its kind stay although they are nothing.
struct Measure {
    QString unit;
    int decimals = 0;
    bool stacked = true;
    std::size_t always = 1;
    std::vector<YearSeries> series;
};

QString kwh() {
    return QStringLiteral("kWh");
}

YearSeries drawn_line() {
    return {QObject::tr("Hot water drawn"), QStringLiteral("drawn_kwh"), [](const Month& m) { return m.drawn_kwh; },
            true};
}

Measure sources() {
    return {
        kwh(),
        0,
        true,
        6,
        {{QObject::tr("Sun"), QStringLiteral("light_kwh"), [](const Month& m) { return m.light_kwh; }},
         {QObject::tr("Air and sky"), QStringLiteral("air_and_sky_kwh"),
          [](const Month& m) { return m.air_kwh + m.long_wave_kwh; }},
         {QObject::tr("Condensation and frost"), QStringLiteral("condensation_kwh"),
          [](const Month& m) { return m.latent_kwh; }},
         {QObject::tr("Compressor"), QStringLiteral("compressor_kwh"), [](const Month& m) { return m.compressor_kwh; }},
         {QObject::tr("Immersion heater"), QStringLiteral("immersion_kwh"),
          [](const Month& m) { return m.immersion_kwh; }},
         {QObject::tr("Other electricity"), QStringLiteral("standby_and_defrost_kwh"),
          [](const Month& m) { return m.standby_kwh + m.defrost_kwh; }},
         drawn_line()}};
}

Measure electricity() {
    return {
        kwh(),
        0,
        true,
        4,
        {{QObject::tr("Compressor"), QStringLiteral("compressor_kwh"), [](const Month& m) { return m.compressor_kwh; }},
         {QObject::tr("Immersion heater"), QStringLiteral("immersion_kwh"),
          [](const Month& m) { return m.immersion_kwh; }},
         {QObject::tr("Defrost"), QStringLiteral("defrost_kwh"), [](const Month& m) { return m.defrost_kwh; }},
         {QObject::tr("Stand-by"), QStringLiteral("standby_kwh"), [](const Month& m) { return m.standby_kwh; }},
         {QObject::tr("Of it for hygiene"), QStringLiteral("hygiene_kwh"), [](const Month& m) { return m.hygiene_kwh; },
          true}}};
}

Measure supply() {
    return {kwh(),
            0,
            true,
            1,
            {{QObject::tr("All electricity"), QStringLiteral("electricity_kwh"),
              [](const Month& m) { return m.electricity_kwh(); }},
             {QObject::tr("Of it met by own photovoltaics"), QStringLiteral("own_photovoltaics_kwh"),
              [](const Month& m) { return m.surplus_kwh; }, true},
             {QObject::tr("Of it in hours of the low price"), QStringLiteral("low_price_hours_kwh"),
              [](const Month& m) { return m.low_tariff_kwh; }, true}}};
}

Measure whither() {
    return {kwh(),
            0,
            true,
            3,
            {{QObject::tr("Hot water drawn"), QStringLiteral("drawn_kwh"), [](const Month& m) { return m.drawn_kwh; }},
             {QObject::tr("Loss of the cylinder"), QStringLiteral("standing_loss_kwh"),
              [](const Month& m) { return m.standing_loss_kwh; }},
             {QObject::tr("Loss of the heat pump's shell"), QStringLiteral("shell_loss_kwh"),
              [](const Month& m) { return m.shell_loss_kwh; }},
             {QObject::tr("Circulation"), QStringLiteral("recirculation_kwh"),
              [](const Month& m) { return m.recirculation_kwh; }}}};
}

Measure below_wanted() {
    return {QStringLiteral("l"),
            0,
            false,
            1,
            {{QObject::tr("Mixed water below the wanted temperature"), QStringLiteral("below_wanted_l"),
              [](const Month& m) { return m.short_litres; }}}};
}

Measure hours() {
    return {QStringLiteral("h"),
            0,
            false,
            2,
            {{QObject::tr("Pump running"), QStringLiteral("running_h"), [](const Month& m) { return m.running_h; }},
             {QObject::tr("Frost on the plate"), QStringLiteral("frost_h"), [](const Month& m) { return m.frost_h; }},
             {QObject::tr("At rest to thaw"), QStringLiteral("rest_h"), [](const Month& m) { return m.rest_h; }},
             {QObject::tr("Pump held back by its control"), QStringLiteral("pump_waits_h"),
              [](const Month& m) { return m.pump_waits_h; }}}};
}

Measure starts() {
    return {QObject::tr("starts"),
            0,
            false,
            1,
            {{QObject::tr("Starts of the compressor"), QStringLiteral("starts"),
              [](const Month& m) { return static_cast<double>(m.starts); }}}};
}

Measure factor() {
    return {
        QObject::tr("kWh for each kWh"),
        2,
        false,
        1,
        {{QObject::tr("Heat to the water for each kWh of electricity"), QStringLiteral("seasonal_factor"), factor_of}}};
}

Measure measure_of(YearMeasure measure) {
    switch (measure) {
        case YearMeasure::sources: return sources();
        case YearMeasure::electricity: return electricity();
        case YearMeasure::supply: return supply();
        case YearMeasure::whither: return whither();
        case YearMeasure::below_wanted: return below_wanted();
        case YearMeasure::hours: return hours();
        case YearMeasure::starts: return starts();
        case YearMeasure::factor: return factor();
    }
    return sources();
}

/// Colour and hatch of the parts from below: neighbours differ in brightness or hatch.
struct Look {
    QColor colour;
    BarHatch hatch = BarHatch::none;
};
std::vector<Look> looks(YearMeasure measure, const ChartColours& c) {
    switch (measure) {
        case YearMeasure::sources:
            return {{c.light},       {c.air, BarHatch::rising},          {c.condensation, BarHatch::falling},
                    {c.electricity}, {c.electricity, BarHatch::crossed}, {c.water, BarHatch::falling}};
        case YearMeasure::electricity:
            return {{c.electricity},
                    {c.light, BarHatch::rising},
                    {c.condensation, BarHatch::crossed},
                    {c.air, BarHatch::falling}};
        case YearMeasure::whither:
            return {{c.air, BarHatch::rising}, {c.light}, {c.electricity}, {c.condensation, BarHatch::crossed}};
        case YearMeasure::hours:
            return {{c.electricity},
                    {c.condensation, BarHatch::crossed},
                    {c.air, BarHatch::rising},
                    {c.light, BarHatch::falling}};
        case YearMeasure::supply:
        case YearMeasure::below_wanted:
        case YearMeasure::starts:
        case YearMeasure::factor: break;
    }
    return {{measure == YearMeasure::below_wanted ? c.warm : c.electricity}};
}

QString whole(const season::Year& year, const YearSeries& series, const QString& unit) {
    return QObject::tr("%1 %2").arg(series.name.toLower(), quantity(series.of(year.total), unit));
}

/// "sun 1 234 kWh, air and sky 900 kWh, ..." of everything that is shown.
QString sums_of(YearMeasure measure, const season::Year& year) {
    QStringList parts;
    for (const YearSeries& series : series_of(measure, year))
        parts += whole(year, series, unit_of(measure));
    return parts.join(QStringLiteral(", "));
}

QString main_words(const plan::Plan& plan) {
    const plan::Figures& f = plan.figures;
    return QObject::tr("In a year: hot water %1, electricity %2, that is %3 of heat for each kWh of electricity.")
        .arg(ranged(f.heat_kwh, kwh()), ranged(f.electricity_kwh, kwh()), ranged(f.seasonal_factor, kwh(), 1));
}

QString comfort_words(const season::Year& year) {
    if (year.shortfall_draws == 0)
        return QObject::tr(" Every draw reaches the wanted temperature; coldest water at the top %1.")
            .arg(temperature(year.lowest_top_c, 1));
    return QObject::tr(" Not met at the wanted temperature: about %1 in %2 draws; coldest water at the top %3.")
        .arg(quantity(year.total.shortfall_kwh, kwh()))
        .arg(year.shortfall_draws)
        .arg(temperature(year.lowest_top_c, 1));
}

QString basis_words(const plan::Plan& plan) {
    QString text;
    if (plan.weather_spread) {
        const plan::WeatherSpread& s = *plan.weather_spread;
        text += QObject::tr(" Weather of single years: in eight of ten, light %1 to %2 and electricity %3 to %4.")
                    .arg(number(s.light_kwh_m2.p10), quantity(s.light_kwh_m2.p90, QStringLiteral("kWh/m\u00b2")),
                         number(s.electricity_kwh.p10), quantity(s.electricity_kwh.p90, kwh()));
    }
    if (!plan.range_method.empty()) text += QObject::tr(" Ranges: %1.").arg(qs(plan.range_method));
    if (!plan.weather_source.empty()) {
        text += QObject::tr(" Weather: %1%2.")
                    .arg(qs(plan.weather_source), plan.weather_invented ? QObject::tr(" (invented)") : QString());
    }
    return text;
}

QString factor_words(const season::Year& year) {
    double least = std::numeric_limits<double>::infinity();
    double most = 0.0;
    for (const Month& month : year.months) {
        const double value = factor_of(month);
        if (!std::isfinite(value)) continue;
        least = std::min(least, value);
        most = std::max(most, value);
    }
    if (most <= 0.0) return QObject::tr("No electricity is used: there is no factor.");
    return QObject::tr(
               "Heat to the water by heat pump and heater for each kWh of all electricity: about %1 over the "
               "year, in single months from %2 to %3.")
        .arg(number(year.seasonal_factor, 2), number(least, 2), number(most, 2));
}

}  // namespace

QString name_of(YearMeasure measure) {
    switch (measure) {
        case YearMeasure::sources: return QObject::tr("Heat by source");
        case YearMeasure::electricity: return QObject::tr("Electricity by use");
        case YearMeasure::supply: return QObject::tr("Electricity by supply");
        case YearMeasure::whither: return QObject::tr("Where the heat goes");
        case YearMeasure::below_wanted: return QObject::tr("Water below wanted");
        case YearMeasure::hours: return QObject::tr("Running and frost hours");
        case YearMeasure::starts: return QObject::tr("Starts");
        case YearMeasure::factor: return QObject::tr("Seasonal factor");
    }
    return {};
}

double factor_of(const season::MonthSums& month) {
    // As season::Year does for the whole year.
    const double electricity_kwh = month.electricity_kwh();
    return electricity_kwh > 0.0 ? (month.condenser_kwh + month.immersion_kwh) / electricity_kwh
                                 : std::numeric_limits<double>::quiet_NaN();
}

std::vector<YearSeries> series_of(YearMeasure measure, const season::Year& year) {
    const Measure all = measure_of(measure);
    std::vector<YearSeries> out;
    for (std::size_t i = 0; i < all.series.size(); ++i) {
        const YearSeries& series = all.series[i];
        const bool something = std::any_of(year.months.begin(), year.months.end(),
                                           [&series](const Month& month) { return series.of(month) != 0.0; });
        if (i < all.always || something) out.push_back(series);
    }
    return out;
}

QString unit_of(YearMeasure measure) {
    return measure_of(measure).unit;
}

int decimals_of(YearMeasure measure) {
    return measure_of(measure).decimals;
}

BarsPicture year_picture(YearMeasure measure, const season::Year& year, const Theme& theme) {
    const ChartColours colours = chart_colours(theme.kind);
    const Measure all = measure_of(measure);
    const std::vector<Look> look = looks(measure, colours);
    BarsPicture picture;
    picture.stacked = all.stacked;
    picture.y_title = measure == YearMeasure::factor ? all.unit : QObject::tr("%1 a month").arg(all.unit);
    for (const YearSeries& series : series_of(measure, year)) {
        MonthValues values{};
        for (std::size_t month = 0; month < 12; ++month)
            values[month] = series.of(year.months[month]);
        if (series.line) {
            const bool second = !picture.lines.empty();
            picture.lines.push_back(
                {series.name, second ? colours.warm : colours.water, second ? Qt::DashLine : Qt::SolidLine, values});
        } else {
            // What is nothing all year would only stand in the legend; the file and the words keep it.
            const bool nothing = std::all_of(values.begin(), values.end(), [](double v) { return v == 0.0; });
            if (nothing && !picture.parts.empty()) continue;
            // The look goes with the term, not with how many of the others are there.
            std::size_t place = 0;
            while (place < all.series.size() && all.series[place].key != series.key)
                ++place;
            const Look& own = look[std::min(place, look.size() - 1)];
            picture.parts.push_back({series.name, own.colour, own.hatch, values});
        }
    }
    return picture;
}

QString year_words(YearMeasure measure, const plan::Plan& plan) {
    const season::Year& year = plan.season;
    switch (measure) {
        case YearMeasure::sources: return main_words(plan) + comfort_words(year) + basis_words(plan);
        case YearMeasure::electricity:
        case YearMeasure::supply:
            return QObject::tr("In a year: electricity %1; in the middle case %2.")
                       .arg(ranged(plan.figures.electricity_kwh, kwh()), sums_of(measure, year)) +
                   basis_words(plan);
        case YearMeasure::whither: return QObject::tr("In a year: %1.").arg(sums_of(measure, year)) + basis_words(plan);
        case YearMeasure::below_wanted:
            if (year.total.short_litres <= 0.0) return comfort_words(year).trimmed();
            return QObject::tr("In a year: %1 of mixed water below the wanted temperature, in %2.")
                       .arg(quantity(year.total.short_litres, QStringLiteral("l")),
                            quantity(year.total.short_h, QObject::tr("hours"))) +
                   comfort_words(year);
        case YearMeasure::hours: return QObject::tr("In a year: %1.").arg(sums_of(measure, year));
        case YearMeasure::starts: {
            const double hours_each =
                year.total.starts > 0 ? year.total.running_h / static_cast<double>(year.total.starts) : 0.0;
            return QObject::tr("In a year: %1 starts of the compressor, %2 of running, about %3 each.")
                .arg(number(year.total.starts), quantity(year.total.running_h, QStringLiteral("h")),
                     quantity(hours_each, QStringLiteral("h"), 1));
        }
        case YearMeasure::factor: return factor_words(year) + basis_words(plan);
    }
    return {};
}

}  // namespace wg::ui
