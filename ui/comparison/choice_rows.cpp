#include "ui/comparison/choice_rows.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>

#include "ui/common/format.h"

namespace wg::ui {
namespace {

enum class Better { neither, less, more };

struct Entry {
    QString figure;
    QString small;
    std::optional<double> value;  ///< as shown, to its last digit
    QString unit;
    int decimals = 0;
};

using Tell = Entry (*)(const ComparedChoice&, const plan::Plan&);

struct Row {
    const char* what;
    Better better;
    Tell tell;
    bool of_the_year = false;  ///< known only with a year of operation
};

constexpr QChar em_dash(0x2014);

QString tr_row(const char* text) {
    return QCoreApplication::translate("Comparison", text);
}

double as_shown(double value, int decimals) {
    const double steps = std::pow(10.0, decimals);
    return std::round(value * steps) / steps;
}

QString about(const QString& figure) {
    return tr_row("about %1").arg(figure);
}

/// `divisor`: of the plan's figure to the one shown.
Entry ranged_entry(const plan::Ranged& value, const QString& unit, int decimals, double divisor = 1.0) {
    Entry entry;
    entry.figure = about(quantity(value.mid / divisor, unit, decimals));
    const QString low = number(value.low / divisor, decimals), high = number(value.high / divisor, decimals);
    if (low != high) entry.small = tr_row("%1 to %2").arg(low, quantity(value.high / divisor, unit, decimals));
    entry.value = as_shown(value.mid / divisor, decimals);
    entry.unit = unit;
    entry.decimals = decimals;
    return entry;
}

Entry measured(double value, const QString& unit, int decimals, const QString& small = {}) {
    return {quantity(value, unit, decimals), small, as_shown(value, decimals), unit, decimals};
}

Entry shares(double share, int decimals, const QString& small = {}) {
    return {percent(share, decimals), small, as_shown(100.0 * share, decimals), QStringLiteral("%"), decimals};
}

Entry collectors(const ComparedChoice& choice, const plan::Plan& p) {
    Entry entry;
    entry.figure = QStringLiteral("%1 × %2").arg(p.placements.size()).arg(qs(p.collector.name));
    if (choice.choice != nullptr && p.placements.size() > 1)
        entry.small = choice.choice->joined == Joined::series ? tr_row("in series") : tr_row("in parallel");
    return entry;
}

Entry where(const ComparedChoice& choice, const plan::Plan& p) {
    QStringList surfaces, places;
    for (const plan::PlacementPlan& one : p.placements) {
        const QString facing = tr_row("%1, tilt %2°, faces %3")
                                   .arg(qs(one.surface_label))
                                   .arg(one.placed.tilt_deg, 0, 'f', 0)
                                   .arg(bearing(one.placed.azimuth_deg));
        if (!surfaces.contains(facing)) surfaces += facing;
        if (choice.choice == nullptr) continue;
        for (const Placement& placement : choice.choice->placements) {
            if (placement.id == one.placement_id)
                places += tr_row("%1 right, %2 up").arg(length_m(placement.x_m), length_m(placement.y_m));
        }
    }
    return {surfaces.join(QStringLiteral("; ")), places.join(QStringLiteral("; ")), {}, {}, 0};
}

Entry spot(const ComparedChoice& choice, const plan::Plan& p) {
    Entry entry;
    const CylinderSpot* at =
        choice.site != nullptr && choice.choice != nullptr ? find_spot(*choice.site, choice.choice->spot_id) : nullptr;
    entry.figure = at != nullptr ? qs(at->label) : QString(em_dash);
    entry.small = tr_row("%1 wide, %2 high, %3 filled")
                      .arg(length_m(p.cylinder.diameter_m), length_m(p.cylinder.height_m),
                           quantity(p.services.filled_mass_kg, QStringLiteral("kg")));
    return entry;
}

Entry cylinder(const ComparedChoice&, const plan::Plan& p) {
    return {
        qs(p.cylinder.name) + QStringLiteral(", ") + quantity(p.cylinder.volume_l, QStringLiteral("l")), {}, {}, {}, 0};
}

Entry shortfall(const ComparedChoice&, const plan::Plan& p) {
    Entry entry = measured(p.season.total.shortfall_kwh, QStringLiteral("kWh"), 0,
                           tr_row("%1 draws").arg(number(p.season.shortfall_draws)));
    entry.figure = about(entry.figure);
    return entry;
}

Entry coldest(const ComparedChoice&, const plan::Plan& p) {
    return {
        about(temperature(p.season.lowest_top_c, 0)), {}, as_shown(p.season.lowest_top_c, 0), QStringLiteral("K"), 0};
}

Entry warm_up(const ComparedChoice&, const plan::Plan& p) {
    if (!p.warm_up_fair) return {QString(em_dash), {}, {}, {}, 0};
    if (!p.warm_up_fair->reached) return {tr_row("not reached"), {}, {}, {}, 0};
    Entry entry = measured(p.warm_up_fair->hours, QStringLiteral("h"), 1);
    entry.figure = about(entry.figure);
    return entry;
}

Entry shade(const ComparedChoice&, const plan::Plan& p) {
    double open = 0.0, shaded = 0.0;
    for (const plan::PlacementPlan& placement : p.placements) {
        open += placement.plane_unshaded_kwh_m2;
        shaded += placement.plane_kwh_m2;
    }
    if (!(open > 0.0)) return {QString(em_dash), {}, {}, {}, 0};
    Entry entry = shares(1.0 - shaded / open, 1);
    entry.figure = about(entry.figure);
    return entry;
}

Entry charge(const ComparedChoice&, const plan::Plan& p) {
    return measured(p.run.total_charge_kg, QStringLiteral("kg"), 2, QString::fromLatin1(name_of(p.block.refrigerant)));
}

Entry fixings(const ComparedChoice&, const plan::Plan& p) {
    const fixing::FixingPoint* worst = worst_point(p);
    if (worst == nullptr) return {QString(em_dash), {}, {}, {}, 0};
    return shares(p.figures.worst_utilisation, 0,
                  tr_row("point %1, pull %2, shear %3")
                      .arg(number(worst->number), quantity(worst->pull_n, QStringLiteral("N")),
                           quantity(worst->shear_n, QStringLiteral("N"))));
}

Entry against(const ComparedChoice&, const plan::Plan& p) {
    const auto count = [&p](Severity severity) {
        return std::count_if(p.findings.begin(), p.findings.end(),
                             [severity](const Finding& f) { return f.severity == severity; });
    };
    const auto stops = count(Severity::stop), cautions = count(Severity::caution);
    const auto counted = [](std::ptrdiff_t n, const QString& one, const QString& more) {
        return number(static_cast<double>(n)) + QLatin1Char(' ') + (n == 1 ? one : more);
    };
    // A stop weighs more than any number of cautions. No unit: no difference is written of it.
    Entry entry;
    entry.figure = counted(stops, tr_row("stop"), tr_row("stops")) + QStringLiteral(", ") +
                   counted(cautions, tr_row("caution"), tr_row("cautions"));
    entry.value = 1000.0 * static_cast<double>(stops) + static_cast<double>(cautions);
    return entry;
}

Entry price(const ComparedChoice&, const plan::Plan& p) {
    if (!p.quote) return {QString(em_dash), {}, {}, {}, 0};
    const QString currency = qs(p.currency);
    return {money(p.quote->gross, currency), tr_row("net %1").arg(money(p.figures.price_net, currency)),
            static_cast<double>(p.quote->gross.minor) / 100.0, currency, 2};
}

Entry payback(const ComparedChoice&, const plan::Plan& p) {
    if (p.economy.cumulative.empty()) return {QString(em_dash), {}, {}, {}, 0};
    const int years = static_cast<int>(p.economy.cumulative.size()) - 1;
    if (!(p.economy.simple_payback_y > 0.0))
        return {tr_row("not within %1").arg(quantity(years, QStringLiteral("years"))), {}, {}, {}, 0};
    Entry entry = measured(p.economy.simple_payback_y, QStringLiteral("years"), 1);
    entry.figure = about(entry.figure);
    return entry;
}

QString kwh() {
    return QStringLiteral("kWh");
}

const std::vector<Row>& rows() {
    static const std::vector<Row> table = {
        {QT_TRANSLATE_NOOP("Comparison", "Collectors"), Better::neither, collectors},
        {QT_TRANSLATE_NOOP("Comparison", "They lie on"), Better::neither, where},
        {QT_TRANSLATE_NOOP("Comparison", "Fixing method"), Better::neither,
         [](const ComparedChoice&, const plan::Plan& p) {
             return Entry{qs(p.fixing_method.label), {}, {}, {}, 0};
         }},
        {QT_TRANSLATE_NOOP("Comparison", "Heat pump"), Better::neither,
         [](const ComparedChoice&, const plan::Plan& p) {
             return Entry{qs(p.block.name), {}, {}, {}, 0};
         }},
        {QT_TRANSLATE_NOOP("Comparison", "Cylinder"), Better::neither, cylinder},
        {QT_TRANSLATE_NOOP("Comparison", "It stands at"), Better::neither, spot},
        {QT_TRANSLATE_NOOP("Comparison", "Price with tax"), Better::less, price},
        {QT_TRANSLATE_NOOP("Comparison", "Paid back in"), Better::less, payback, true},
        {QT_TRANSLATE_NOOP("Comparison", "Annual heat"), Better::more,
         [](const ComparedChoice&, const plan::Plan& p) { return ranged_entry(p.figures.heat_kwh, kwh(), 0); }, true},
        {QT_TRANSLATE_NOOP("Comparison", "Electricity a year"), Better::less,
         [](const ComparedChoice&, const plan::Plan& p) { return ranged_entry(p.figures.electricity_kwh, kwh(), 0); },
         true},
        {QT_TRANSLATE_NOOP("Comparison", "Seasonal factor"), Better::more,
         [](const ComparedChoice&, const plan::Plan& p) {
             return ranged_entry(p.figures.seasonal_factor, QString(), 2);
         },
         true},
        {QT_TRANSLATE_NOOP("Comparison", "Cost a year"), Better::less,
         [](const ComparedChoice&, const plan::Plan& p) {
             return ranged_entry(p.figures.running_cost_minor, qs(p.currency), 0, 100.0);
         },
         true},
        {QT_TRANSLATE_NOOP("Comparison", "Heat not met"), Better::less, shortfall, true},
        {QT_TRANSLATE_NOOP("Comparison", "Coldest hot water"), Better::more, coldest, true},
        {QT_TRANSLATE_NOOP("Comparison", "Warm-up, fair light"), Better::less, warm_up, true},
        {QT_TRANSLATE_NOOP("Comparison", "Light lost to shade"), Better::less, shade, true},
        {QT_TRANSLATE_NOOP("Comparison", "Run, one way"), Better::less,
         [](const ComparedChoice&, const plan::Plan& p) {
             return measured(p.run.length_m, QStringLiteral("m"), 1, tr_row("%1 bends").arg(number(p.run.bends)));
         }},
        {QT_TRANSLATE_NOOP("Comparison", "Refrigerant"), Better::less, charge},
        {QT_TRANSLATE_NOOP("Comparison", "Worst fixing point"), Better::less, fixings},
        {QT_TRANSLATE_NOOP("Comparison", "Stands against it"), Better::less, against},
    };
    return table;
}

ComparedCell cell_of(const ComparedChoice& choice, const Row& row, std::optional<double>& value, Entry& entry) {
    ComparedCell cell;
    if (choice.plan == nullptr) {
        const bool working = choice.problem.isEmpty();
        cell.state = working ? ComparedCell::State::working : ComparedCell::State::none;
        cell.figure = working ? tr_row("working") : QString(em_dash);
        return cell;
    }
    if (row.of_the_year && !choice.plan->has_yield) {
        cell.figure = em_dash;
        return cell;
    }
    entry = row.tell(choice, *choice.plan);
    cell.state = ComparedCell::State::known;
    cell.figure = entry.figure;
    cell.range = entry.small;
    value = entry.value;
    return cell;
}

void mark_best(ComparedRow& row, const std::vector<std::optional<double>>& values, Better better) {
    if (better == Better::neither) return;
    std::optional<double> best, worst;
    for (const auto& value : values) {
        if (!value) continue;
        const double cost = better == Better::less ? *value : -*value;
        if (!best || cost < *best) best = cost;
        if (!worst || cost > *worst) worst = cost;
    }
    // Where all are the same none is best.
    if (!best || !(*worst > *best)) return;
    for (std::size_t i = 0; i < values.size(); ++i)
        row.cells[i].best = values[i] && (better == Better::less ? *values[i] : -*values[i]) == *best;
}

}  // namespace

QString ComparedCell::words() const {
    QString text = figure;
    if (!range.isEmpty()) text += QStringLiteral(" (") + range + QStringLiteral(")");
    if (best) text += tr_row(", best");
    return text;
}

const fixing::FixingPoint* worst_point(const plan::Plan& p) {
    for (const plan::PlacementPlan& placement : p.placements) {
        for (const fixing::FixingPoint& point : placement.fixing.points) {
            if (point.number == p.figures.worst_point) return &point;
        }
    }
    return nullptr;
}

std::vector<ComparedRow> compare(const std::vector<ComparedChoice>& choices, std::size_t basis) {
    std::vector<ComparedRow> out;
    for (const Row& row : rows()) {
        ComparedRow told;
        told.what = tr_row(row.what);
        std::vector<std::optional<double>> values(choices.size());
        std::vector<Entry> entries(choices.size());
        for (std::size_t i = 0; i < choices.size(); ++i)
            told.cells.push_back(cell_of(choices[i], row, values[i], entries[i]));
        mark_best(told, values, row.better);
        for (std::size_t i = 0; i < choices.size() && basis < choices.size(); ++i) {
            ComparedCell& cell = told.cells[i];
            const ComparedCell& from = told.cells[basis];
            if (i == basis || cell.state != ComparedCell::State::known || from.state != ComparedCell::State::known)
                continue;
            // Small print of a figure may differ where the figure does not; of words it is part of what is compared.
            cell.differs = cell.figure != from.figure || (!values[i] && cell.range != from.range);
            told.differs = told.differs || cell.differs;
            if (values[i] && values[basis] && row.tell != against)
                cell.change = difference(*values[i] - *values[basis], entries[i].unit, entries[i].decimals);
        }
        out.push_back(std::move(told));
    }
    return out;
}

FigureTable table_of(const std::vector<ComparedRow>& rows, const QStringList& labels) {
    FigureTable out;
    out.header = QStringList{QStringLiteral("what")} + labels;
    for (const ComparedRow& row : rows) {
        QStringList line{row.what};
        for (const ComparedCell& cell : row.cells)
            line += cell.words();
        out.rows.push_back(line);
    }
    return out;
}

}  // namespace wg::ui
