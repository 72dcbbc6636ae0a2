#include "ui/common/ledger_lines.h"

#include <QCoreApplication>
#include <cmath>

#include "ui/common/format.h"

namespace wg::ui {
namespace {

QString words(const char* text) {
    return QCoreApplication::translate("Ledger", text);
}

constexpr QChar em_dash(0x2014);

/// The first of the keys that the plan has a working for.
QString working_key(const plan::Plan* plan, std::initializer_list<const char*> keys) {
    if (plan == nullptr) return {};
    for (const char* key : keys) {
        for (const Working& working : plan->workings) {
            if (working.key == key) return qs(working.key);
        }
    }
    return {};
}

QString span(const plan::Ranged& value, double divisor, const QString& unit, int decimals) {
    if (!std::isfinite(value.low) || !std::isfinite(value.high)) return {};
    const QString low = number(value.low / divisor, decimals);
    const QString high = quantity(value.high / divisor, unit, decimals);
    return low == number(value.high / divisor, decimals) ? QString() : words("%1 to %2").arg(low, high);
}

struct YearFigure {
    const char* title;
    plan::Ranged plan::Figures::*member;
    QString unit;
    double divisor;
    int decimals;
};

LedgerLine year_line(const YearFigure& figure, const plan::Plan* plan, const plan::Plan* earlier, bool carried) {
    LedgerLine line;
    line.title = words(figure.title);
    line.value = em_dash;
    if (plan == nullptr || (!plan->has_yield && !carried)) return line;
    const plan::Ranged& value = plan->figures.*figure.member;
    line.value = words("about %1").arg(quantity(value.mid / figure.divisor, figure.unit, figure.decimals));
    line.range = span(value, figure.divisor, figure.unit, figure.decimals);
    line.carried = carried;
    if (earlier != nullptr && earlier->has_yield && !carried) {
        const double before = (earlier->figures.*figure.member).mid;
        // Of the rounded figures, so that what is shown adds up.
        const double unit_step = std::pow(10.0, figure.decimals);
        const auto rounded = [&](double v) { return std::round(v / figure.divisor * unit_step) / unit_step; };
        line.change = difference(rounded(value.mid) - rounded(before), figure.unit, figure.decimals);
    }
    return line;
}

LedgerLine run_line(const plan::Plan* plan, const plan::Plan* earlier) {
    LedgerLine line;
    line.title = words("Run and charge");
    line.value = em_dash;
    line.working_key = working_key(plan, {"run.charge", "run.length"});
    if (plan == nullptr || plan->figures.run_m <= 0.0) return line;
    const auto run_text = [](const plan::Plan& p) { return quantity(p.figures.run_m, QStringLiteral("m"), 1); };
    line.value = run_text(*plan) + QStringLiteral(", ") + quantity(plan->figures.charge_kg, QStringLiteral("kg"), 2);
    if (plan->run.bends > 0) line.range = words("%n bends").replace(QLatin1String("%n"), number(plan->run.bends));
    if (earlier != nullptr) {
        line.change = difference(plan->figures.run_m - earlier->figures.run_m, QStringLiteral("m"), 1);
    }
    return line;
}

LedgerLine fixing_line(const plan::Plan* plan, const plan::Plan* earlier) {
    LedgerLine line;
    line.title = words("Worst fixing");
    line.value = em_dash;
    line.working_key = working_key(plan, {"fixing.worst"});
    if (plan == nullptr || plan->figures.worst_point <= 0) return line;
    line.value = words("%1 used").arg(percent(plan->figures.worst_utilisation));
    line.range = words("point %1").arg(plan->figures.worst_point);
    if (earlier != nullptr) {
        const double change = std::round(plan->figures.worst_utilisation * 100.0) -
                              std::round(earlier->figures.worst_utilisation * 100.0);
        line.change = difference(change, QStringLiteral("%"));
    }
    return line;
}

LedgerLine price_line(const plan::Plan* plan, const plan::Plan* earlier) {
    LedgerLine line;
    line.title = words("Price with tax");
    line.value = em_dash;
    if (plan == nullptr || !plan->quote) return line;
    line.working_key = QStringLiteral("quote.price");
    line.value = money(plan->figures.price_gross, qs(plan->currency));
    line.range = words("net %1").arg(money(plan->figures.price_net, qs(plan->currency)));
    if (earlier != nullptr && earlier->quote) {
        line.change = money_difference(plan->figures.price_gross - earlier->figures.price_gross, qs(plan->currency));
    }
    return line;
}

}  // namespace

std::vector<LedgerLine> ledger_lines(const plan::Plan* plan, const plan::Plan* earlier, bool carried) {
    const QString kwh = QStringLiteral("kWh");
    const QString currency = plan != nullptr ? qs(plan->currency) : QString();
    std::vector<LedgerLine> lines = {
        year_line({QT_TRANSLATE_NOOP("Ledger", "Annual heat"), &plan::Figures::heat_kwh, kwh, 1.0, 0}, plan, earlier,
                  carried),
        year_line({QT_TRANSLATE_NOOP("Ledger", "Electricity a year"), &plan::Figures::electricity_kwh, kwh, 1.0, 0},
                  plan, earlier, carried),
        year_line({QT_TRANSLATE_NOOP("Ledger", "Seasonal factor"), &plan::Figures::seasonal_factor, QString(), 1.0, 2},
                  plan, earlier, carried),
        year_line({QT_TRANSLATE_NOOP("Ledger", "Cost a year"), &plan::Figures::running_cost_minor, currency, 100.0, 0},
                  plan, earlier, carried),
    };
    lines[0].working_key = working_key(plan, {"yield.heat"});
    lines[1].working_key = working_key(plan, {"yield.electricity"});
    lines[2].working_key = working_key(plan, {"yield.factor"});
    lines[3].working_key = working_key(plan, {"economy.running-cost"});
    lines.push_back(run_line(plan, earlier));
    lines.push_back(fixing_line(plan, earlier));
    lines.push_back(price_line(plan, earlier));
    return lines;
}

}  // namespace wg::ui
