#include "ui/yield/cost_page.h"

#include <QButtonGroup>
#include <QHBoxLayout>
#include <QLabel>
#include <QToolButton>
#include <QVBoxLayout>
#include <algorithm>
#include <cmath>

#include "ui/common/format.h"
#include "ui/yield/chart_page.h"

namespace wg::ui {
namespace {

std::vector<double> whole(const std::vector<Money>& amounts) {
    std::vector<double> out;
    for (const Money amount : amounts)
        out.push_back(static_cast<double>(amount.minor) / 100.0);
    return out;
}

/// The same year at both ends of the range of electricity, by the economy's own method.
economy::CourseEnds ends_of(const plan::Plan& plan, const CostBasis& basis) {
    economy::CourseEnds ends;
    const plan::Ranged& electricity = plan.figures.electricity_kwh;
    if (!plan.quote || !(electricity.mid > 0.0)) return ends;
    ends.electricity_low = electricity.low / electricity.mid;
    ends.electricity_high = electricity.high / electricity.mid;
    if (!plan.economy.cumulative_low.empty()) {
        ends.cumulative_low = plan.economy.cumulative_low;
        ends.cumulative_high = plan.economy.cumulative_high;
        return ends;
    }
    economy::Input input;
    input.useful_heat_kwh = plan.figures.heat_kwh.mid;
    input.demand = basis.demand;
    input.tariffs = basis.tariffs;
    input.investment = plan.quote->gross;
    input.electricity_kwh = electricity.high;
    ends.cumulative_low = economy::evaluate(input).cumulative;
    input.electricity_kwh = electricity.low;
    ends.cumulative_high = economy::evaluate(input).cumulative;
    return ends;
}

std::vector<QPointF> by_year(const std::vector<double>& values) {
    std::vector<QPointF> points;
    for (std::size_t year = 0; year < values.size(); ++year)
        points.emplace_back(static_cast<double>(year), values[year]);
    return points;
}

}  // namespace

CostPage::CostPage(QWidget* parent) : PicturePage(parent) {
    views_ = new QButtonGroup(this);
    auto* row = new QHBoxLayout;
    row->setSpacing(8);
    int number = 0;
    for (const QString& name : {tr("Set and present heater"), tr("Choices side by side"), tr("Carbon dioxide")}) {
        auto* button = new QToolButton(this);
        button->setText(name);
        button->setCheckable(true);
        views_->addButton(button, number++);
        row->addWidget(button);
    }
    row->addStretch(1);
    column().insertLayout(0, row);
    views_->button(0)->setChecked(true);
    connect(views_, &QButtonGroup::idClicked, this, [this](int view) { show_view(static_cast<View>(view)); });
    view().set_keys([this](int right, int) {
        if (course_.set.size() < 2) return QString();
        cursor_ = std::clamp(cursor_.value_or(right > 0 ? -1 : last_year() + 1) + right, 0, last_year());
        return year_words(*cursor_);
    });
}

void CostPage::show_view(View view) {
    views_->button(static_cast<int>(view))->setChecked(true);
    if (view != View::spent) Q_EMIT others_asked();
    refresh();
}

CostPage::View CostPage::shown() const {
    return static_cast<View>(views_->checkedId());
}

int CostPage::last_year() const {
    return static_cast<int>(course_.set.size()) - 1;
}

void CostPage::set_plan(const std::shared_ptr<const plan::Plan>& plan, const std::optional<CostBasis>& basis,
                        bool carried) {
    plan_ = plan;
    set_carried(carried);
    basis_ = basis;
    ends_ = plan != nullptr && basis ? ends_of(*plan, *basis) : economy::CourseEnds{};
    course_ = plan != nullptr ? economy::course(plan->economy, basis ? basis->tariffs : economy::Tariffs{}, ends_)
                              : economy::Course{};
    refresh();
}

void CostPage::set_others(std::vector<CostChoice> others, bool waiting) {
    others_ = std::move(others);
    waiting_ = waiting;
    refresh();
}

QString CostPage::unit() const {
    if (shown() == View::emissions) return QStringLiteral("kg");
    return plan_ != nullptr ? qs(plan_->currency) : QString();
}

std::vector<CostPage::Column> CostPage::columns() const {
    using Role = Column::Role;
    std::vector<Column> out;
    if (plan_ == nullptr || course_.set.size() < 2) return out;
    const QString label = qs(plan_->choice_label);
    switch (shown()) {
        case View::spent:
            out = {
                {tr("New set: price, electricity, service"), QStringLiteral("set"), whole(course_.set), Role::middle},
                {QString(), QStringLiteral("set_least"), whole(course_.set_low), Role::low},
                {QString(), QStringLiteral("set_most"), whole(course_.set_high), Role::high},
                {tr("Present heater: fuel"), QStringLiteral("present_heater"), whole(course_.present), Role::present}};
            break;
        case View::choices:
            out = {{label, QStringLiteral("saved ") + label, whole(plan_->economy.cumulative), Role::middle},
                   {QString(), QStringLiteral("least"), whole(ends_.cumulative_low), Role::low},
                   {QString(), QStringLiteral("most"), whole(ends_.cumulative_high), Role::high}};
            for (const CostChoice& other : others_) {
                out.push_back({other.label, QStringLiteral("saved ") + other.label,
                               whole(other.plan->economy.cumulative), Role::other});
            }
            break;
        case View::emissions:
            out = {{label, QStringLiteral("set"), course_.co2_set_kg, Role::middle},
                   {QString(), QStringLiteral("set_least"), course_.co2_set_low_kg, Role::low},
                   {QString(), QStringLiteral("set_most"), course_.co2_set_high_kg, Role::high},
                   {tr("Present heater"), QStringLiteral("present_heater"), course_.co2_present_kg, Role::present}};
            for (const CostChoice& other : others_) {
                const economy::Course course = economy::course(other.plan->economy, economy::Tariffs{});
                out.push_back({other.label, other.label, course.co2_set_kg, Role::other});
            }
            break;
    }
    const std::size_t years = course_.set.size();
    out.erase(
        std::remove_if(out.begin(), out.end(), [years](const Column& column) { return column.values.size() != years; }),
        out.end());
    return out;
}

CurvesPicture CostPage::picture(const Theme& theme) const {
    const ChartColours colours = chart_colours(theme.kind);
    CurvesPicture picture;
    picture.x.title = tr("years from buying");
    picture.x_to = std::max(1, last_year());
    for (int year = 0; year <= last_year(); year += last_year() > 12 ? 5 : 1)
        picture.x.marks.push_back({static_cast<double>(year), QString::number(year), false});
    CurvesPanel panel;
    panel.unit = unit();
    CurveBand band{tr("Likely range of the electricity"), colours.air, {}, {}};
    constexpr std::array styles{Qt::DashLine, Qt::DotLine, Qt::DashDotLine, Qt::DashDotDotLine};
    std::size_t others = 0;
    for (const Column& column : columns()) {
        const std::vector<QPointF> points = by_year(column.values);
        switch (column.role) {
            case Column::Role::middle:
                panel.curves.push_back({column.name, colours.electricity, Qt::SolidLine, 3.0, points, false});
                break;
            case Column::Role::present:
                panel.curves.push_back({column.name, colours.water, Qt::DashLine, 2.6, points, false});
                break;
            case Column::Role::other:
                panel.curves.push_back(
                    {column.name, colours.cold, styles[others++ % styles.size()], 2.2, points, false});
                break;
            case Column::Role::low: band.lower = points; break;
            case Column::Role::high: band.upper = points; break;
        }
    }
    if (!band.lower.empty() && !band.upper.empty()) panel.bands.push_back(band);
    fit_panel(panel, true);
    if (course_.even_y > 0.0 && shown() != View::emissions) {
        double at = 0.0;
        if (shown() == View::spent) {
            const auto before = static_cast<std::size_t>(course_.even_y);
            const std::vector<double> set = whole(course_.set);
            const std::size_t after = std::min(before + 1, set.size() - 1);
            at = set[before] + (set[after] - set[before]) * (course_.even_y - static_cast<double>(before));
        }
        panel.marks.push_back(
            {QPointF(course_.even_y, at), tr("paid back after about %1 years").arg(number(course_.even_y))});
    }
    picture.panels = {panel};
    return picture;
}

QString CostPage::year_words(int year) const {
    QStringList parts;
    for (const Column& column : columns()) {
        const QString value = quantity(column.values[static_cast<std::size_t>(year)], unit());
        switch (column.role) {
            case Column::Role::low: parts += tr("range %1").arg(value); break;
            case Column::Role::high: parts.last() += tr(" to %1").arg(value); break;
            default: parts += tr("%1 %2").arg(column.name, value); break;
        }
    }
    return (year == 1 ? tr("After %1 year: %2") : tr("After %1 years: %2"))
        .arg(year)
        .arg(parts.join(QStringLiteral("; ")));
}

QString CostPage::view_name() const {
    switch (shown()) {
        case View::spent: return tr("Spent over the years by the new set and by the present heater, in today's money");
        case View::choices: return tr("Saved less spent against the present heater, in today's money, by choice");
        case View::emissions: return tr("Carbon dioxide over the years");
    }
    return {};
}

QString CostPage::all_words() const {
    const economy::Outcome& economy = plan_->economy;
    const QString currency = qs(plan_->currency);
    const plan::Ranged& cost = plan_->figures.running_cost_minor;
    QString text = view_name() + QStringLiteral(". ");
    if (shown() == View::emissions) {
        text += tr("A year: about %1 with the new set, about %2 with the present heater. After %3 years: about %4 "
                   "against about %5. Counted at today's kilograms a kWh (%6); the set's own making is not counted.")
                    .arg(quantity(economy.co2_kg, unit()), quantity(economy.present_co2_kg, unit()))
                    .arg(last_year())
                    .arg(quantity(course_.co2_set_kg.back(), unit()), quantity(course_.co2_present_kg.back(), unit()),
                         basis_ ? qs(basis_->tariffs.source) : tr("assumed"));
    } else {
        text += tr("Electricity %1 a year; the same water with the present heater costs about %2.")
                    .arg(ranged({cost.low / 100.0, cost.mid / 100.0, cost.high / 100.0}, currency),
                         money(economy.present_cost, currency));
        text += course_.even_y > 0.0 ? tr(" Paid back after about %1").arg(quantity(course_.even_y, tr("years")))
                                     : tr(" Not paid back within %1 years").arg(last_year());
        text += economy.simple_payback_y > 0.0 ? tr("; about %1 when neither prices nor interest count.")
                                                     .arg(quantity(economy.simple_payback_y, tr("years")))
                                               : tr(".");
        const double earliest = economy::even_year(ends_.cumulative_high);
        const double latest = economy::even_year(ends_.cumulative_low);
        if (earliest > 0.0) {
            text += latest > 0.0 ? tr(" Over the likely range of electricity: after %1 to %2.")
                                       .arg(number(earliest), quantity(latest, tr("years")))
                                 : tr(" Over the likely range of electricity: after %1 or not in these years.")
                                       .arg(quantity(earliest, tr("years")));
        }
        if (basis_) {
            text +=
                tr(" Assumed: prices rise %1 a year, discounted at %2, service %3 a year; tariffs: %4.")
                    .arg(percent(basis_->tariffs.yearly_rise, 1), percent(basis_->tariffs.discount_rate, 1),
                         quantity(basis_->tariffs.yearly_service_minor / 100.0, currency), qs(basis_->tariffs.source));
        }
    }
    if (shown() != View::spent && waiting_) text += tr(" Other choices are being planned.");
    return text;
}

void CostPage::refresh() {
    if (plan_ == nullptr || course_.set.size() < 2) {
        show_reason(tr("Cost over the years needs a price and a yearly yield."));
        return;
    }
    view().show_picture(
        [this](QPainter& painter, const QRectF& area, const Theme& theme, double text_units) {
            CurvesPicture painted = picture(theme);
            if (cursor_ && !view().saving()) painted.cursor = *cursor_;
            paint_curves(painter, painted, area, theme, text_units);
        },
        [this](const QRectF& area, QPointF at, double text_units) {
            const auto x = curves_x_at(curves_frames(picture(current_theme()), area, text_units), at);
            if (!x) return QString();
            const int year = std::clamp(static_cast<int>(std::lround(*x)), 0, last_year());
            if (cursor_ != year) view().update();
            cursor_ = year;
            return year_words(year);
        });
    set_words(all_words());
}

QString CostPage::caption() const {
    return plan_ != nullptr ? caption_of(view_name(), *plan_) : QString();
}

FigureTable CostPage::figures() const {
    FigureTable out;
    const std::vector<Column> shown = columns();
    out.header = {QStringLiteral("year")};
    for (const Column& column : shown)
        out.header += column.key + QLatin1Char('_') + unit().toLower();
    for (int year = 0; !shown.empty() && year <= last_year(); ++year) {
        QStringList row{QString::number(year)};
        for (const Column& column : shown)
            row += cell_number(column.values[static_cast<std::size_t>(year)], 2);
        out.rows.push_back(row);
    }
    return out;
}

}  // namespace wg::ui
