#include "ui/yield/range_words.h"

#include <cmath>

#include "ui/common/format.h"

namespace wg::ui {
namespace {

QString words(const char* text) {
    return QObject::tr(text);
}

bool in_money(plan::Measure measure) {
    return measure == plan::Measure::running_cost || measure == plan::Measure::saving;
}

QString unit_of(const plan::Study& study, plan::Measure measure) {
    switch (measure) {
        case plan::Measure::heat_kwh:
        case plan::Measure::electricity_kwh:
        case plan::Measure::shortfall_kwh: return QStringLiteral("kWh");
        case plan::Measure::running_cost:
        case plan::Measure::saving: return qs(study.currency);
        case plan::Measure::payback_y: return words("years");
        case plan::Measure::seasonal_factor: return {};
    }
    return {};
}

double shown(plan::Measure measure, double value) {
    return in_money(measure) ? value / 100.0 : value;
}

int decimals_of(plan::Measure measure) {
    if (measure == plan::Measure::seasonal_factor) return 2;
    return measure == plan::Measure::payback_y || measure == plan::Measure::shortfall_kwh ? 1 : 0;
}

/// "87 ± 2 %": a share that its own error swallows is "under" that error.
QString share_text(const plan::Bar& bar) {
    if (bar.share < 2.0 * bar.share_error) return QStringLiteral("< %1").arg(percent(2.0 * bar.share_error));
    return QStringLiteral("%1 \u00b1 %2").arg(number(100.0 * bar.share), percent(bar.share_error));
}

QString plan_range_words(const plan::Plan& plan) {
    const plan::Ranged& e = plan.figures.electricity_kwh;
    return QObject::tr(
               "The plan's own quick range of electricity is %1: %2. The range here comes of drawing all "
               "inputs together and stands for itself.")
        .arg(ranged(e, QStringLiteral("kWh")), qs(plan.range_method));
}

}  // namespace

QString measure_name(plan::Measure measure) {
    switch (measure) {
        case plan::Measure::heat_kwh: return words("Hot water");
        case plan::Measure::electricity_kwh: return words("Electricity");
        case plan::Measure::seasonal_factor: return words("Seasonal factor");
        case plan::Measure::running_cost: return words("Running cost");
        case plan::Measure::saving: return words("Saving");
        case plan::Measure::payback_y: return words("Payback");
        case plan::Measure::shortfall_kwh: return words("Heat short");
    }
    return {};
}

QString measure_text(const plan::Study& study, plan::Measure measure, double value) {
    return quantity(shown(measure, value), unit_of(study, measure), decimals_of(measure));
}

QString measure_title(const plan::Study& study, plan::Measure measure) {
    const QString unit = unit_of(study, measure);
    return unit.isEmpty() ? measure_name(measure) : measure_name(measure) + QStringLiteral(", ") + unit;
}

QString measure_number(plan::Measure measure, double value) {
    return number(shown(measure, value), decimals_of(measure));
}

QString factor_text(const plan::Factor& factor, double value) {
    if (factor.kind == plan::FactorKind::weather)
        return value < 0.5 ? words("a kind year (one in ten)") : words("a poor year (one in ten)");
    if (factor.unit.empty()) {
        // Factors on what the data say have the middle 1; shares keep their own figure.
        return factor.nominal == 1.0 ? QStringLiteral("\u00d7\u202f%1").arg(number(value, 2)) : number(value, 2);
    }
    const QString unit = factor.unit == "deg C" ? QStringLiteral("\u00b0C") : qs(factor.unit);
    return quantity(value, unit, 1);
}

TornadoPicture tornado_of(const plan::Study& study, plan::Measure measure) {
    const plan::Spread& spread = study.of(measure);
    TornadoPicture out;
    out.title = measure_title(study, measure) + words(" a year");
    if (measure == plan::Measure::seasonal_factor)
        out.title = words("Seasonal factor, heat for each kWh of electricity");
    out.decimals = decimals_of(measure);
    out.nominal = shown(measure, spread.nominal);
    for (const plan::Bar& bar : spread.bars) {
        if (bar.span() <= 0.0) continue;
        const plan::Factor& f = study.factors[bar.factor];
        TornadoPicture::Row row;
        row.label = qs(f.title);
        if (!row.label.isEmpty()) row.label[0] = row.label[0].toUpper();
        row.low_text = factor_text(f, f.low);
        row.high_text = factor_text(f, f.high);
        row.at_low = shown(measure, bar.at_low);
        row.at_high = shown(measure, bar.at_high);
        row.share = share_text(bar);
        out.rows.push_back(std::move(row));
    }
    return out;
}

QString range_words(const plan::Study& study, const plan::Plan* plan) {
    const plan::Spread& e = study.of(plan::Measure::electricity_kwh);
    QString text;
    if (e.p10 && e.p90) {
        text += QObject::tr("In eight of ten drawn years electricity lies between %1 and %2. ")
                    .arg(measure_text(study, plan::Measure::electricity_kwh, *e.p10),
                         measure_text(study, plan::Measure::electricity_kwh, *e.p90));
    }
    if (!e.bars.empty()) {
        text += QObject::tr("Most of that comes of: %1.").arg(qs(study.factors[e.bars.front().factor].title));
    }
    if (const double never = study.of(plan::Measure::payback_y).never_share; study.has_price && never > 0.0)
        text += QObject::tr(" In %1 of the years the price is not saved back within the years looked at.")
                    .arg(percent(never));
    if (!study.has_price) text += QObject::tr(" Without a price there is no payback.");
    text += QStringLiteral("\n\n");
    text += QObject::tr(
                "Each bar is the figure with that one input at its low and at its high, all others nominal; of "
                "the weather, the tenth and ninetieth percentile of %1 made years. The share is how much of "
                "the spread over all years goes with that input (squared rank correlation, with its standard "
                "error).")
                .arg(study.weather_years);
    if (plan != nullptr && plan->has_yield && plan->choice_id == study.choice_id)
        text += QStringLiteral("\n\n") + plan_range_words(*plan);
    text += QStringLiteral("\n\n") + QObject::tr("What was varied:");
    for (const plan::Factor& f : study.factors) {
        text += QStringLiteral("\n\u2022 %1: %2; %3").arg(qs(f.title), qs(f.distribution), qs(f.ground));
    }
    for (const std::string& remark : study.remarks)
        text += QStringLiteral("\n\n") + qs(remark) + QLatin1Char('.');
    text += QStringLiteral("\n\n") + QObject::tr("Method: %1.").arg(qs(study.method));
    return text;
}

FigureTable range_figures(const plan::Study& study) {
    FigureTable out;
    out.header = {QStringLiteral("figure"),     QStringLiteral("unit"),
                  QStringLiteral("input"),      QStringLiteral("nominal"),
                  QStringLiteral("p10"),        QStringLiteral("p50"),
                  QStringLiteral("p90"),        QStringLiteral("at_low"),
                  QStringLiteral("at_high"),    QStringLiteral("variance_share"),
                  QStringLiteral("share_error")};
    const auto text = [](const std::optional<double>& v) { return v ? QString::number(*v, 'f', 3) : QString(); };
    for (std::size_t m = 0; m < plan::measure_count; ++m) {
        const auto measure = static_cast<plan::Measure>(m);
        const plan::Spread& spread = study.spreads[m];
        const auto scaled = [&](const std::optional<double>& v) { return v ? text(shown(measure, *v)) : QString(); };
        out.rows.push_back({measure_name(measure), unit_of(study, measure), QString(), scaled(spread.nominal),
                            scaled(spread.p10), scaled(spread.p50), scaled(spread.p90), QString(), QString(), QString(),
                            QString()});
        for (const plan::Bar& bar : spread.bars)
            out.rows.push_back({measure_name(measure), unit_of(study, measure), qs(study.factors[bar.factor].title),
                                QString(), QString(), QString(), QString(), scaled(bar.at_low), scaled(bar.at_high),
                                QString::number(bar.share, 'f', 4), QString::number(bar.share_error, 'f', 4)});
    }
    return out;
}

}  // namespace wg::ui
