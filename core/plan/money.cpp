#include "core/plan/parts_of_plan.h"

#include <algorithm>

namespace wg::plan::steps {
namespace {

/// An item that the price list lacks is no concern once the office has priced it or left it out.
void drop_answered(Plan& plan) {
    std::vector<Finding> open;
    std::size_t line = 0;
    for (Finding& finding : plan.parts.findings) {
        if (finding.code == "parts.unpriced") {
            // One for each line without a price, in the order of the lines; texts of two lines may be the same.
            while (line < plan.parts.lines.size() && plan.parts.lines[line].priced)
                ++line;
            if (line < plan.parts.lines.size()) {
                const quote::OfferedLine& offered = plan.offered->lines[line++];  // planned ones come first
                if (offered.line.priced || offered.left_out) continue;
            }
        }
        open.push_back(std::move(finding));
    }
    plan.parts.findings = std::move(open);
}

parts::Circumstances circumstances_of(const Job& job, const Plan& plan) {
    parts::Circumstances at;
    for (const PlacementPlan& placement : plan.placements) {
        if (const Surface* surface = find_surface(job.site, placement.surface_id))
            at.coverings.push_back(surface->covering);
        at.height_m = std::max(at.height_m.value_or(placement.placed.highest_m), placement.placed.highest_m);
    }
    at.access = job.offer.access;
    at.storeys = job.offer.storeys;
    at.distance_km = job.offer.distance_km;
    at.trips = job.offer.trips;
    return at;
}

}  // namespace

void money(const Job& job, const Selection& with, const std::string& on, Plan& plan) {
    parts::Input input;
    input.choice = *with.choice;
    if (plan.run_suggested) {  // its passages are bought like those of a drawn one
        for (const pipework::Leg& leg : plan.run.legs)
            if (leg.ends_at != RoutePointKind::free) input.choice.route.push_back({"", leg.ends_at, leg.to, ""});
    }
    input.collector = *with.collector;
    input.block = *with.block;
    input.cylinder = *with.cylinder;
    input.method = *with.method;
    input.run = plan.run;
    for (const PlacementPlan& placement : plan.placements) {
        input.fixing_points += static_cast<int>(placement.fixing.points.size());
    }
    input.services = plan.services;
    input.prices = *with.prices;
    input.circumstances = circumstances_of(job, plan);
    plan.parts = parts::list_parts(input);

    const Result<quote::Offered> priced =
        quote::offered(plan.parts.lines, job.offer, with.choice->id, with.prices->currency,
                       quote::tax_rules_on(with.rules->tax, *with.prices, on));
    if (priced) {
        plan.offered = priced.value();
        plan.quote = priced.value().quote;
        plan.figures.price_net = priced.value().quote.net;
        plan.figures.price_gross = priced.value().quote.gross;
        drop_answered(plan);
        const std::vector<Finding>& against = priced.value().findings;
        plan.findings.insert(plan.findings.end(), against.begin(), against.end());
    } else {
        for (const Problem& problem : priced.problems()) {
            plan.findings.push_back({"quote.cannot-be-priced", Severity::stop, Stage::offer, "", with.prices->label,
                                     problem.text(), problem.remedy,
                                     "Every line of a quote has a price and a tax class", with.rules->label});
        }
    }

    if (!plan.has_yield) return;
    economy::Input economy;
    economy.electricity_kwh = plan.season.total.electricity_kwh();
    economy.useful_heat_kwh = plan.season.total.drawn_kwh;
    economy.low_tariff_kwh = plan.season.total.low_tariff_kwh;
    economy.surplus_kwh = plan.season.total.surplus_kwh;
    economy.electricity_low_kwh = plan.figures.electricity_kwh.low;
    economy.electricity_high_kwh = plan.figures.electricity_kwh.high;
    economy.demand = job.demand;
    economy.tariffs = with.prices->tariffs;
    // What is granted need not be earned back.
    economy.investment = plan.offered ? plan.offered->to_bring : plan.figures.price_gross;
    plan.economy = economy::evaluate(economy);
    const double minor_kwh = economy::mean_price_minor_kwh(economy);
    const Ranged& electricity = plan.figures.electricity_kwh;
    plan.figures.running_cost_minor = {electricity.low * minor_kwh, electricity.mid * minor_kwh,
                                       electricity.high * minor_kwh};
}

}  // namespace wg::plan::steps
