#include "ui/equipment/item_plot.h"

#include <QCoreApplication>
#include <QLabel>
#include <QVBoxLayout>
#include <algorithm>
#include <cmath>

#include "ui/common/format.h"
#include "ui/drawing/picture_view.h"

namespace wg::ui {
namespace {

constexpr double condensing_of_curves_c[] = {35.0, 45.0, 55.0, 65.0};
constexpr double winds_of_curves_m_s[] = {1.0, 3.0, 6.0};

// Colour, dashes and width each tell the curves apart.
Curve curve_at(std::size_t i, const QString& name, const Theme& theme) {
    const QColor colours[] = {theme.note, theme.ready, theme.accent, theme.text};
    constexpr Qt::PenStyle styles[] = {Qt::SolidLine, Qt::DashLine, Qt::DashDotLine, Qt::DotLine};
    Curve out;
    out.name = name;
    out.colour = colours[i % 4];
    out.style = styles[i % 4];
    out.width = 2.0;
    return out;
}

Axis round_axis(const QString& title, double from, double to) {
    Axis axis;
    axis.title = title;
    const double step = round_step(to - from, 5.0);
    for (double at = std::ceil(from / step - 1e-9) * step; at <= to + 1e-9 * step; at += step) {
        const double clean = std::fabs(at) < 1e-9 * step ? 0.0 : at;
        axis.marks.push_back({clean, number(clean, decimals_for(step)), clean == 0.0});
    }
    return axis;
}

QString plot_tr(const char* text) {
    return QCoreApplication::translate("ItemPlot", text);
}

}  // namespace

CurvesPicture block_picture(const std::vector<heatpump::BlockCurve>& curves, const Theme& theme) {
    CurvesPicture picture;
    CurvesPanel heat;
    CurvesPanel cop;
    heat.unit = plot_tr("Heat, kW");
    cop.unit = plot_tr("COP");
    double from = 1e9;
    double to = -1e9;
    for (std::size_t i = 0; i < curves.size(); ++i) {
        if (curves[i].points.empty()) continue;
        Curve one = curve_at(i, plot_tr("condensing at %1").arg(temperature(curves[i].condensing_c)), theme);
        Curve other = one;
        other.name.clear();
        for (const heatpump::BlockCurvePoint& p : curves[i].points) {
            one.points.emplace_back(p.evaporating_c, p.heat_w / 1000.0);
            other.points.emplace_back(p.evaporating_c, p.cop());
        }
        from = std::min(from, curves[i].points.front().evaporating_c);
        to = std::max(to, curves[i].points.back().evaporating_c);
        heat.curves.push_back(std::move(one));
        cop.curves.push_back(std::move(other));
    }
    if (!(to > from)) to = from + 1.0;
    fit_panel(heat, true);
    fit_panel(cop, true);
    picture.x_from = from;
    picture.x_to = to;
    picture.x = round_axis(plot_tr("Evaporating temperature, °C"), from, to);
    picture.panels = {std::move(heat), std::move(cop)};
    return picture;
}

CurvesPicture collector_picture(const std::vector<heatpump::CollectorCurve>& curves, const Theme& theme) {
    CurvesPicture picture;
    CurvesPanel panel;
    panel.unit = plot_tr("Efficiency");
    for (std::size_t i = 0; i < curves.size(); ++i) {
        Curve one = curve_at(i, plot_tr("wind %1").arg(quantity(curves[i].wind_m_s, QStringLiteral("m/s"))), theme);
        for (const heatpump::CollectorCurvePoint& p : curves[i].points)
            one.points.emplace_back(p.reduced_m2k_w, p.efficiency);
        panel.curves.push_back(std::move(one));
    }
    // Halves rather than whole ones: the curves would fill half of the picture.
    constexpr double half = 0.5;
    double low = 0.0;
    double high = half;
    for (const Curve& curve : panel.curves) {
        for (const QPointF& p : curve.points) {
            low = std::min(low, p.y());
            high = std::max(high, p.y());
        }
    }
    panel.low = std::floor(low / half + 1e-9) * half;
    panel.high = std::ceil(high / half - 1e-9) * half;
    if (!curves.empty() && !curves.front().points.empty()) {
        picture.x_from = curves.front().points.front().reduced_m2k_w;
        picture.x_to = curves.front().points.back().reduced_m2k_w;
    }
    picture.x = round_axis(plot_tr("(Tm - Ta) / G, m² K/W"), picture.x_from, picture.x_to);
    picture.panels = {std::move(panel)};
    return picture;
}

ItemPlot::ItemPlot(QWidget* parent) : QWidget(parent) {
    title_ = new QLabel(this);
    title_->setProperty("role", QStringLiteral("heading"));
    title_->setWordWrap(true);
    view_ = new PictureView(this);
    view_->setMinimumWidth(200);
    words_ = new QLabel(this);
    words_->setProperty("role", QStringLiteral("muted"));
    words_->setWordWrap(true);
    words_->setTextInteractionFlags(Qt::TextSelectableByMouse);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(8, 8, 0, 0);
    column->setSpacing(8);
    column->addWidget(title_);
    column->addWidget(view_, 1);
    column->addWidget(words_);
    show_reason({});
}

bool ItemPlot::has_picture() const {
    return view_->has_picture();
}

QString ItemPlot::words() const {
    return words_->text();
}

void ItemPlot::show_reason(const QString& reason) {
    title_->clear();
    words_->clear();
    view_->show_reason(reason);
}

void ItemPlot::show_item(const Catalogue& catalogue, const plan::Reference& reference) {
    if (!catalogue.blocks.empty()) {
        show_block(catalogue.blocks.front(), reference);
    } else if (!catalogue.collectors.empty()) {
        show_collector(catalogue.collectors.front());
    } else {
        show_reason(tr("Blocks and collectors have curves; the data of this item are figures alone."));
    }
}

void ItemPlot::show_block(const BlockModel& block, const plan::Reference& reference) {
    const auto table = reference.refrigerants.find(block.refrigerant);
    if (table == reference.refrigerants.end()) {
        show_reason(tr("There is no property table for this refrigerant."));
        return;
    }
    const auto curves = heatpump::block_curves(block, *table->second,
                                               {std::begin(condensing_of_curves_c), std::end(condensing_of_curves_c)});
    if (!curves) {
        show_reason(tr("The block cannot run with these data."));
        return;
    }
    QStringList missing;
    bool any = false;
    for (const heatpump::BlockCurve& curve : curves.value()) {
        any = any || !curve.points.empty();
        if (curve.points.empty()) missing << temperature(curve.condensing_c);
    }
    if (!any) {
        show_reason(tr("At 35 to 65 °C condensing the envelope leaves this block no place to run."));
        return;
    }
    title_->setText(tr("Heat to the water and COP, compressor alone"));
    view_->show_picture(
        [shown = curves.value()](QPainter& painter, const QRectF& area, const Theme& theme, double text_units) {
            paint_curves(painter, block_picture(shown, theme), area, theme, text_units);
        },
        {});
    QString words =
        tr("At the block's own superheat and subcooling, without lines and standby; drawn where envelope and "
           "stated range let it run.");
    if (!missing.isEmpty())
        words += QLatin1Char(' ') + tr("Not at %1 condensing.").arg(missing.join(QStringLiteral(", ")));
    words_->setText(words);
}

void ItemPlot::show_collector(const CollectorModel& model) {
    const auto curves =
        heatpump::collector_curves(model, {std::begin(winds_of_curves_m_s), std::end(winds_of_curves_m_s)});
    title_->setText(tr("Efficiency of the dry collector on gross area"));
    view_->show_picture(
        [curves](QPainter& painter, const QRectF& area, const Theme& theme, double text_units) {
            paint_curves(painter, collector_picture(curves, theme), area, theme, text_units);
        },
        {});
    const QString light = quantity(heatpump::curve_light_w_m2, QStringLiteral("W/m²"));
    words_->setText(
        model.iso9806
            ? tr("By the test's own equation in %1 of hemispherical light. Tm: mean fluid, Ta: air.").arg(light)
            : tr("By the plate's heat balance in %1 at right angles, air %2, sky as warm as the air. Tm: "
                 "refrigerant, Ta: air. Above 1 the air gives heat.")
                  .arg(light, temperature(heatpump::curve_air_c)));
}

}  // namespace wg::ui
