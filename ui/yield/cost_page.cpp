#include "ui/yield/cost_page.h"

#include <QAreaSeries>
#include <QLineSeries>
#include <QPen>
#include <QValueAxis>
#include <algorithm>
#include <cmath>

#include "ui/common/format.h"
#include "ui/common/theme.h"

namespace wg::ui {
namespace {

double whole(Money amount) {
    return static_cast<double>(amount.minor) / 100.0;
}

}  // namespace

void CostPage::set_plan(const std::shared_ptr<const plan::Plan>& plan, const std::optional<CostBasis>& basis) {
    plan_ = plan;
    low_.clear();
    high_.clear();
    clear_chart();
    if (plan == nullptr) return;
    const economy::Outcome& economy = plan->economy;
    if (economy.cumulative.size() < 2) {
        set_words(tr("Cost over the years needs a price and a yearly yield."));
        return;
    }
    if (basis && plan->quote) {
        economy::Input input;
        input.useful_heat_kwh = plan->figures.heat_kwh.mid;
        input.demand = basis->demand;
        input.tariffs = basis->tariffs;
        input.investment = plan->quote->gross;
        input.electricity_kwh = plan->figures.electricity_kwh.high;
        low_ = economy::evaluate(input).cumulative;
        input.electricity_kwh = plan->figures.electricity_kwh.low;
        high_ = economy::evaluate(input).cumulative;
    }
    const auto curve = [](const std::vector<Money>& values) {
        auto* series = new QLineSeries;
        for (std::size_t year = 0; year < values.size(); ++year)
            series->append(static_cast<double>(year), whole(values[year]));
        return series;
    };
    const ChartColours colours = chart_colours();
    double low = whole(*std::min_element(economy.cumulative.begin(), economy.cumulative.end()));
    double high = std::max(0.0, whole(*std::max_element(economy.cumulative.begin(), economy.cumulative.end())));
    if (!low_.empty()) {
        QColor tint = colours.air;
        tint.setAlpha(70);
        QLineSeries* upper = curve(high_);
        QLineSeries* lower = curve(low_);
        auto* band = new QAreaSeries(upper, lower);
        upper->setParent(band);
        lower->setParent(band);
        band->setName(tr("Likely range"));
        band->setBrush(tint);
        band->setPen(QPen(colours.air, 1.0, Qt::DashLine));
        chart().addSeries(band);
        low = std::min(low, whole(*std::min_element(low_.begin(), low_.end())));
        high = std::max(high, whole(*std::max_element(high_.begin(), high_.end())));
    }
    QLineSeries* middle = curve(economy.cumulative);
    middle->setName(tr("Saved less spent, in today's money"));
    chart().addSeries(middle);
    middle->setPen(QPen(colours.electricity, 2.5));
    auto* even = new QLineSeries;
    even->setName(tr("Even"));
    even->append(0.0, 0.0);
    even->append(static_cast<double>(economy.cumulative.size() - 1), 0.0);
    chart().addSeries(even);
    even->setPen(QPen(current_theme().text, 1.0));

    auto* years = new QValueAxis;
    dress_axis(*years, tr("years"));
    years->setRange(0.0, static_cast<double>(economy.cumulative.size() - 1));
    years->setTickType(QValueAxis::TicksDynamic);
    years->setTickInterval(economy.cumulative.size() > 12 ? 5.0 : 1.0);
    years->setLabelFormat(QStringLiteral("%.0f"));
    auto* sums = new QValueAxis;
    dress_axis(*sums, qs(plan->currency));
    const double span = std::max(1.0, high - low);
    const double step = std::pow(10.0, std::floor(std::log10(span))) /
                        (span / std::pow(10.0, std::floor(std::log10(span))) < 4.0 ? 2.0 : 1.0);
    sums->setRange(std::floor(low / step) * step, std::ceil(high / step) * step);
    sums->setTickType(QValueAxis::TicksDynamic);
    sums->setTickInterval(step);
    sums->setLabelFormat(QStringLiteral("%.0f"));
    chart().addAxis(years, Qt::AlignBottom);
    chart().addAxis(sums, Qt::AlignLeft);
    for (QAbstractSeries* series : chart().series()) {
        series->attachAxis(years);
        series->attachAxis(sums);
    }
    connect(middle, &QLineSeries::hovered, this, [this, currency = qs(plan->currency)](const QPointF& at, bool over) {
        if (over) Q_EMIT pointed_at(tr("Year %1: about %2").arg(number(at.x()), quantity(at.y(), currency)));
    });
    dress_chart();
    const QString currency = qs(plan->currency);
    const plan::Ranged& cost = plan->figures.running_cost_minor;
    QString text = tr("Electricity %1 a year; the same water with the present heater costs about %2.")
                       .arg(ranged({cost.low / 100.0, cost.mid / 100.0, cost.high / 100.0}, currency),
                            money(economy.present_cost, currency));
    text += economy.simple_payback_y > 0.0 ? tr(" The price is saved back after about %1.")
                                                 .arg(quantity(economy.simple_payback_y, QStringLiteral("years")))
                                           : tr(" The price is not saved back within the years looked at.");
    text += tr(" Carbon dioxide about %1 a year instead of about %2.")
                .arg(quantity(economy.co2_kg, QStringLiteral("kg")),
                     quantity(economy.present_co2_kg, QStringLiteral("kg")));
    if (basis) {
        text += tr(" Assumed: prices rise %1 a year, discounted at %2, service %3 a year; tariffs: %4.")
                    .arg(percent(basis->tariffs.yearly_rise, 1), percent(basis->tariffs.discount_rate, 1),
                         quantity(basis->tariffs.yearly_service_minor / 100.0, currency), qs(basis->tariffs.source));
    }
    set_words(text);
}

FigureTable CostPage::figures() const {
    FigureTable out;
    const QString unit = plan_ == nullptr ? QString() : QStringLiteral("_") + qs(plan_->currency);
    out.header = {QStringLiteral("year"), QStringLiteral("cumulative") + unit, QStringLiteral("low") + unit,
                  QStringLiteral("high") + unit};
    if (plan_ == nullptr) return out;
    for (std::size_t year = 0; year < plan_->economy.cumulative.size(); ++year) {
        QStringList row{QString::number(year), QString::number(whole(plan_->economy.cumulative[year]), 'f', 2)};
        row += year < low_.size() ? QString::number(whole(low_[year]), 'f', 2) : QString();
        row += year < high_.size() ? QString::number(whole(high_[year]), 'f', 2) : QString();
        out.rows.push_back(row);
    }
    return out;
}

}  // namespace wg::ui
