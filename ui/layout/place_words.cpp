#include "ui/layout/place_words.h"

#include <QObject>
#include <QStringList>
#include <algorithm>

#include "ui/common/format.h"
#include "ui/comparison/choice_rows.h"
#include "ui/layout/edge_offsets.h"

namespace wg::ui {
namespace {

QString tr_place(const char* text) {
    return QObject::tr(text);
}

QString kwh_words(double value) {
    return tr_place("about %1 electricity").arg(quantity(value, QStringLiteral("kWh")));
}

QString price_words(const plan::Plan& plan, const plan::Plan* present) {
    if (!plan.quote) return tr_place("no price");
    if (present == nullptr || !present->quote) return {};
    const QString change = money_difference(plan.figures.price_gross - present->figures.price_gross, qs(plan.currency));
    return change.isEmpty() ? tr_place("price as now") : tr_place("price %1 against now").arg(change);
}

QStringList planned_lines(const FoundPlace& found) {
    const plan::Plan& plan = *found.plan;
    QStringList lines;
    if (plan.has_yield) {
        lines += kwh_words(plan.figures.electricity_kwh.mid);
        const plan::Ranged& range = plan.figures.electricity_kwh;
        if (range.low < range.high)
            lines += tr_place("(%1 to %2)").arg(number(range.low), quantity(range.high, QStringLiteral("kWh")));
    } else {
        lines += tr_place("a stop keeps the year from being worked out");
    }
    lines += tr_place("charge %1").arg(quantity(plan.figures.charge_kg, QStringLiteral("kg"), 2));
    if (const fixing::FixingPoint* worst = worst_point(plan)) {
        lines += tr_place("worst fixing %1 used:").arg(percent(plan.figures.worst_utilisation));
        lines += tr_place("pull %1, shear %2")
                     .arg(quantity(worst->pull_n, QStringLiteral("N")), quantity(worst->shear_n, QStringLiteral("N")));
    }
    return lines;
}

QStringList estimated_lines(const siting::Measures& m) {
    return {kwh_words(m.electricity_kwh), tr_place("charge: working"),
            tr_place("worst fixing %1 used").arg(percent(m.utilisation))};
}

}  // namespace

QString seen_words(double seen, const Site& site) {
    return site.street_azimuth_deg ? tr_place("seen from %1 of the street's side").arg(percent(seen))
                                   : tr_place("seen from %1 all round").arg(percent(seen));
}

QString measures_words(const siting::Measures& m, const Site& site) {
    return tr_place("about %1 electricity, run %2, fixings %3 used, %4")
        .arg(quantity(m.electricity_kwh, QStringLiteral("kWh")), length_m(m.run_m), percent(m.utilisation),
             seen_words(m.seen, site));
}

QString place_words(const FoundPlace& found) {
    const siting::Place& place = *found.place;
    const Surface* on = find_surface(*found.site, place.placement.surface_id);
    QStringList lines;
    lines += QStringLiteral("%1  %2").arg(found.number).arg(on != nullptr ? qs(on->label) : QString());
    if (on != nullptr && found.model != nullptr) {
        const EdgeOffsets offsets = edge_offsets(*on, place.placement, *found.model, found.site->sketch_up_azimuth_deg);
        lines += tr_place("%1 from left, %2 up")
                     .arg(length_m(offsets.left_m.value_or(0.0)), length_m(offsets.low_m.value_or(0.0)));
    }
    const QString hand = place.placement.hand == Hand::left ? tr_place("left") : tr_place("right");
    lines += found.plan != nullptr ? tr_place("connections %1, run %2").arg(hand, length_m(found.plan->figures.run_m))
                                   : tr_place("connections %1, run about %2").arg(hand, length_m(place.measures.run_m));
    lines += found.plan != nullptr ? planned_lines(found) : estimated_lines(place.measures);
    lines += seen_words(place.measures.seen, *found.site);
    lines += found.plan != nullptr ? price_words(*found.plan, found.present)
             : found.planning      ? tr_place("price: working")
                                   : tr_place("not planned");
    lines.removeAll(QString());
    return lines.join(QLatin1Char('\n'));
}

QString place_details(const FoundPlace& found) {
    const siting::Measures& m = found.place->measures;
    QString words = tr_place("Light on the plate about %1 a year, %2 of the sun that an open plate would get.")
                        .arg(quantity(m.light_kwh_m2, QStringLiteral("kWh/m\u00b2")), percent(m.beam_share));
    if (found.plan == nullptr) return words + QLatin1Char('\n') + tr_place("Estimate of the search; the plan follows.");
    for (const Finding& finding : found.plan->findings) {
        if (finding.severity != Severity::stop) continue;
        words += QLatin1Char('\n') + tr_place("Stop: %1.").arg(qs(finding.message));
    }
    return words;
}

}  // namespace wg::ui
