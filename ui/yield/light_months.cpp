#include "ui/yield/light_months.h"

#include <QBarCategoryAxis>
#include <QBarSet>
#include <QPen>
#include <QStackedBarSeries>
#include <QValueAxis>
#include <array>
#include <cmath>
#include <numeric>

#include "ui/common/format.h"
#include "ui/common/shade_words.h"
#include "ui/common/theme.h"
#include "ui/drawing/plot_frame.h"
#include "ui/yield/year_page.h"

namespace wg::ui {
namespace {

struct Part {
    QString name;
    QBrush brush;
    const std::array<double, 12>* months;
};

std::vector<Part> parts_of(const plan::PlacementPlan& placed) {
    const ChartColours colours = chart_colours();
    return {
        {LightMonths::tr("Direct from the sun"), colours.light, &placed.plane_month_beam_kwh_m2},
        {LightMonths::tr("From the sky"), colours.air, &placed.plane_month_diffuse_kwh_m2},
        {LightMonths::tr("Thrown back by ground and walls"), colours.condensation, &placed.plane_month_ground_kwh_m2},
        {LightMonths::tr("Kept off by shade"), QBrush(current_theme().muted, Qt::BDiagPattern),
         &placed.plane_month_shade_loss_kwh_m2}};
}

double year_of(const std::array<double, 12>& months) {
    return std::accumulate(months.begin(), months.end(), 0.0);
}

QString unit() {
    return QStringLiteral("kWh/m²");
}

QString words_for(const plan::Plan& plan, const plan::PlacementPlan& placed) {
    const double shade = year_of(placed.plane_month_shade_loss_kwh_m2);
    QString text = LightMonths::tr(
                       "%1 on %2, tilt %3°, bearing %4. In a year about %5 reach its face: %6 direct, %7 "
                       "from the sky, %8 from ground and walls.")
                       .arg(qs(placed.label), qs(placed.surface_label))
                       .arg(std::lround(placed.placed.tilt_deg))
                       .arg(bearing(placed.placed.azimuth_deg), quantity(placed.plane_kwh_m2, unit()),
                            quantity(year_of(placed.plane_month_beam_kwh_m2), unit()),
                            quantity(year_of(placed.plane_month_diffuse_kwh_m2), unit()),
                            quantity(year_of(placed.plane_month_ground_kwh_m2), unit()));
    if (placed.plane_unshaded_kwh_m2 > 0.0 && shade >= 0.5) {
        text += LightMonths::tr(" Shade keeps off about %1 of direct light, %2 of all light without it.")
                    .arg(quantity(shade, unit()), percent(shade / placed.plane_unshaded_kwh_m2, 1));
    } else {
        text += LightMonths::tr(" No shade to speak of.");
    }
    if (placed.shade.sky_view < 0.995) {
        text += LightMonths::tr(" The plate sees %1 of the sky it would see in the open.")
                    .arg(percent(placed.shade.sky_view));
    }
    const QString causes = shade_causes_words(placed.shade, 3);
    if (!causes.isEmpty()) text += QLatin1Char('\n') + causes;
    text += LightMonths::tr("\nSky model: %1. Weather: %2%3.")
                .arg(QString::fromUtf8(sky::name_of(placed.diffuse_model)), qs(plan.weather_source),
                     plan.weather_invented ? LightMonths::tr(" (invented)") : QString());
    return text;
}

}  // namespace

const plan::PlacementPlan* LightMonths::placement() const {
    if (plan_ == nullptr || index_ >= plan_->placements.size()) return nullptr;
    const plan::PlacementPlan& placed = plan_->placements[index_];
    return placed.plane_unshaded_kwh_m2 > 0.0 ? &placed : nullptr;
}

void LightMonths::show_placement(const std::shared_ptr<const plan::Plan>& plan, std::size_t placement_index) {
    plan_ = plan;
    index_ = placement_index;
    clear_chart();
    const plan::PlacementPlan* placed = placement();
    if (placed == nullptr) {
        set_words(tr("The light on a collector is known with a complete plan only."));
        return;
    }
    auto* bars = new QStackedBarSeries;
    bars->setBarWidth(0.7);
    std::array<double, 12> sums{};
    for (const Part& part : parts_of(*placed)) {
        auto* set = new QBarSet(part.name);
        set->setBrush(part.brush);
        set->setPen(QPen(part.brush.style() == Qt::SolidPattern ? current_theme().panel : current_theme().muted, 1.0));
        for (std::size_t month = 0; month < 12; ++month) {
            *set << (*part.months)[month];
            sums[month] += (*part.months)[month];
        }
        bars->append(set);
    }
    connect(bars, &QStackedBarSeries::hovered, this, [this](bool over, int month, QBarSet* set) {
        if (!over || set == nullptr || month < 0 || month > 11) return;
        Q_EMIT pointed_at(
            QStringLiteral("%1, %2: %3").arg(month_names()[month], set->label(), quantity(set->at(month), unit(), 1)));
    });
    chart().addSeries(bars);
    auto* months = new QBarCategoryAxis;
    months->append(month_names());
    months->setLabelsFont(base_font(10.0));
    months->setLabelsColor(current_theme().text);
    months->setGridLineVisible(false);
    months->setLinePenColor(current_theme().muted);
    auto* light = new QValueAxis;
    dress_axis(*light, tr("kWh/m² a month"));
    const double most = *std::max_element(sums.begin(), sums.end());
    const double step = round_step(most, 6.0);
    light->setRange(0.0, std::max(step, std::ceil(most * 1.02 / step) * step));
    light->setTickType(QValueAxis::TicksDynamic);
    light->setTickInterval(step);
    light->setLabelFormat(QStringLiteral("%.0f"));
    chart().addAxis(months, Qt::AlignBottom);
    chart().addAxis(light, Qt::AlignLeft);
    bars->attachAxis(months);
    bars->attachAxis(light);
    dress_chart();
    set_words(words_for(*plan_, *placed));
}

FigureTable LightMonths::figures() const {
    FigureTable out;
    out.header = {QStringLiteral("month"), QStringLiteral("beam_kwh_m2"), QStringLiteral("diffuse_kwh_m2"),
                  QStringLiteral("ground_kwh_m2"), QStringLiteral("shade_loss_kwh_m2")};
    const plan::PlacementPlan* placed = placement();
    if (placed == nullptr) return out;
    for (std::size_t month = 0; month < 12; ++month) {
        QStringList row{QString::number(month + 1)};
        for (const Part& part : parts_of(*placed))
            row += QString::number((*part.months)[month], 'f', 2);
        out.rows.push_back(row);
    }
    return out;
}

}  // namespace wg::ui
