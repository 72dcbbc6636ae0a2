// The quote: what the client gets, what it does in a year, what it costs.

#include <algorithm>
#include <set>

#include "core/job/words.h"
#include "core/plan/present_cost.h"
#include "ui/common/format.h"
#include "ui/documents/drawings.h"
#include "ui/documents/filled_words.h"
#include "ui/documents/papers.h"

namespace wg::ui::paper {
namespace {

QString ranged_money(const plan::Ranged& minor, const QString& currency) {
    return ranged({minor.low / 100.0, minor.mid / 100.0, minor.high / 100.0}, currency);
}

QString surfaces_in_words(const plan::Plan& plan) {
    QStringList names;
    for (const plan::PlacementPlan& placement : plan.placements) {
        const QString name = qs(placement.surface_label);
        if (!names.contains(name)) names += name;
    }
    return names.isEmpty() ? say("the surface shown") : names.join(QLatin1Char(' ') + say("and") + QLatin1Char(' '));
}

void offer_in_words(Flow& flow, const PaperInput& input) {
    const plan::Plan& plan = input.plan;
    const auto count = plan.placements.size();
    const Choice* choice = find_choice(input.job, plan.choice_id);
    const CylinderSpot* spot = choice == nullptr ? nullptr : find_spot(input.job.site, choice->spot_id);
    flow.heading(say("What we offer"));
    flow.paragraph(
        say("Hot water from the outdoor air, rain, wind and daylight. A bare metal plate outdoors takes up the "
            "heat, by day and by night; a small heat pump raises it to the temperature of the hot water. The "
            "plate has no glass and no fan and makes no noise. An electric heater in the cylinder steps in "
            "when more is asked for than the heat pump can give."));
    flow.bullet(say("%1 %2 of %3 by %4 on %5.")
                    .arg(count == 1 ? say("One collector") : say("%1 collectors").arg(count), qs(plan.collector.name),
                         length_m(plan.collector.length_m), length_m(plan.collector.width_m), surfaces_in_words(plan)));
    flow.bullet(say("Heat pump %1, %2, joined to the collector by a refrigerant run of about %3.")
                    .arg(qs(plan.block.name), QString::fromLatin1(name_of(plan.block.refrigerant)),
                         quantity(plan.run.length_m, QStringLiteral("m"), 1)));
    flow.bullet(say("Cylinder %1 of %2%3, with electric heater of %4 and thermostatic mixing valve.")
                    .arg(qs(plan.cylinder.name), quantity(plan.cylinder.volume_l, QStringLiteral("l")),
                         spot == nullptr ? QString() : QLatin1Char(' ') + say("in: %1").arg(qs(spot->label)),
                         quantity(plan.cylinder.immersion_w / 1000.0, QStringLiteral("kW"), 1)));
    flow.bullet(say("Fitting, filling, tests, start and instruction as listed under price."));
}

void year_in_figures(Flow& flow, const PaperInput& input) {
    const plan::Plan& plan = input.plan;
    const QString currency = qs(plan.currency);
    flow.heading(say("What to expect in a year"));
    if (!plan.has_yield) {
        flow.paragraph(say("The yearly figures are not worked out for this plan."));
        return;
    }
    Table table;
    table.columns = {{QString(), 76.0}, {QString(), 0.0}};
    const auto row = [&](const QString& what, const QString& value) {
        table.rows.push_back({QStringList{what, value}});
    };
    row(say("Hot water heat used"), ranged(plan.figures.heat_kwh, QStringLiteral("kWh")));
    row(say("Electricity for it"), ranged(plan.figures.electricity_kwh, QStringLiteral("kWh")));
    // The range stands with what the pump delivers; at the tap it is what both figures above come to.
    if (plan.figures.electricity_kwh.mid > 0.0)
        row(say("Heat at the tap for each kWh of electricity"),
            say("about %1")
                .arg(quantity(plan.figures.heat_kwh.mid / plan.figures.electricity_kwh.mid, QStringLiteral("kWh"), 1)));
    row(say("Heat into the cylinder for each kWh of electricity"),
        ranged(plan.figures.seasonal_factor, QStringLiteral("kWh"), 1) + QLatin1Char('\n') +
            say("more than at the tap: the cylinder loses some heat while the water waits"));
    row(say("Electricity cost"), ranged_money(plan.figures.running_cost_minor, currency));
    row(say("The same water with the present heater"), ranged_money(plan::present_cost_minor(plan), currency));
    row(say("Carbon dioxide, new and present"), say("about %1 and %2")
                                                    .arg(quantity(plan.economy.co2_kg, QStringLiteral("kg")),
                                                         quantity(plan.economy.present_co2_kg, QStringLiteral("kg"))));
    if (plan.economy.simple_payback_y > 0.0) {
        row(say("Saving has paid the price back after"),
            say("about %1").arg(quantity(plan.economy.simple_payback_y, say("years"), 0)));
    }
    flow.table(table);
    const Demand& demand = input.job.demand;
    QStringList assumed;
    const QString times =
        demand.scale == 1.0 ? QString() : QLatin1Char(' ') + say("times %1").arg(number(demand.scale, 2));
    assumed += demand.draw_source == DrawSource::cycle
                   ? say("draw-off as cycle %1 of EU 812/2013%2").arg(QString::fromUtf8(text_of(demand.cycle)), times)
                   : say("a household of %1 with %2 of 40 °C a head and day%3")
                         .arg(demand.household.persons)
                         .arg(quantity(demand.household.litres_40_per_person, QStringLiteral("l"), 0), times);
    assumed += say("water stored at %1").arg(temperature(demand.set_point_c));
    assumed += say("cold water at %1 on average").arg(temperature(demand.cold_mean_c));
    assumed += say("present heater: %1, %2")
                   .arg(inside_a_sentence(say_name(text_of(demand.present_fuel))), percent(demand.present_efficiency));
    if (!plan.weather_source.empty()) {
        assumed +=
            say("weather: %1%2")
                .arg(qs(plan.weather_source), plan.weather_invented ? QLatin1Char(' ') + say("(invented)") : QString());
    }
    flow.paragraph(
        say("Assumed: %1. Figures in brackets are the likely range%2. Your use and the weather decide; none of these "
            "figures is a promise.")
            .arg(assumed.join(QStringLiteral("; ")),
                 plan.range_method.empty() ? QString() : QStringLiteral(" (%1)").arg(say_filled(plan.range_method))),
        Style{least_pt, false, false});
}

void picture_of_roof(Flow& flow, const SharedInput& full) {
    // The client sees where the collectors lie; screws are the fitter's business.
    auto plain = std::make_shared<PaperInput>(*full);
    for (plan::PlacementPlan& placement : plain->plan.placements) {
        placement.fixing.points.clear();
        placement.placed.fixing_points.clear();
    }
    plain->plan.collector.fixing_points.clear();
    const SharedInput input = plain;
    std::set<std::string> drawn;
    for (const plan::PlacementPlan& placement : input->plan.placements) {
        if (!drawn.insert(placement.surface_id).second) continue;
        const Surface* surface = find_surface(input->job.site, placement.surface_id);
        if (surface == nullptr) continue;
        draw_surface(flow, input, *surface,
                     SurfacePicture{false, 110.0 * mm, drawn.size() == 1 ? say("Where it goes") : QString()});
    }
}

bool is_equipment(const parts::Line& line, const plan::Plan& plan) {
    return line.item_id == plan.collector.id || line.item_id == plan.block.id || line.item_id == plan.cylinder.id;
}

/// What the client may add, and when the sum falls due.
void beside_the_price(Flow& flow, const quote::Offered& offered, const QString& currency, const Firm& firm) {
    Table options;
    options.whole = true;
    options.columns = {{QString(), 8.0, false, true},
                       {say("You may add: tick what you want"), 0.0},
                       {say("Quantity"), 26.0, true},
                       {say("With tax"), 36.0, true}};
    for (const quote::Option& option : offered.options) {
        if (option.ticked) continue;  // stands among the lines
        options.rows.push_back(
            {QStringList{QString(), say_name(option.line.line.text),
                         amount_words(option.line.line.to_buy, option.line.line.unit), money(option.gross, currency)}});
    }
    if (!options.rows.empty()) flow.table(options);
    Table instalments;
    instalments.whole = true;
    instalments.columns = {{say("To be paid"), 0.0}, {say("Share"), 26.0, true}, {say("With tax"), 36.0, true}};
    for (const quote::InstalmentSum& part : offered.instalments)
        instalments.rows.push_back(
            {QStringList{qs(part.text), percent(part.percent / 100.0, 2), money(part.sum, currency)}});
    if (instalments.rows.empty()) return;
    flow.table(instalments);
    pay_to(flow, firm);
}

void price_table(Flow& flow, const PaperInput& input) {
    const plan::Plan& plan = input.plan;
    flow.heading(say("Price"));
    if (!plan.quote) {
        flow.paragraph(say("There is no price yet: see what stands against it below."));
        return;
    }
    const quote::Quote& quote = *plan.quote;
    const QString currency = qs(quote.currency);
    Money equipment;
    Money material;
    Money labour;
    int material_items = 0;
    WorkSum work;
    Table table;
    table.whole = true;
    table.columns = {{say("What"), 0.0}, {say("Quantity"), 26.0, true}, {say("Net"), 36.0, true}};
    for (const parts::Line& line : quote.lines) {
        if (is_equipment(line, plan)) {
            table.rows.push_back(
                {QStringList{say_name(line.text), amount_words(line.to_buy, line.unit), money(line.net, currency)}});
            equipment += line.net;
        } else if (line.labour) {
            labour += line.net;
            work.add(line.text, line.unit, line.to_buy, line.net);
        } else {
            material += line.net;
            ++material_items;
        }
    }
    const auto total = [&](const QString& what, Money value) {
        table.rows.push_back({QStringList{what, QString(), money(value, currency)}, Row::Kind::total});
    };
    total(say("Equipment"), equipment);
    table.rows.push_back(
        {QStringList{say("Fixings, tube with insulation, water-side and electrical material, each in the parts list"),
                     say("%1 items").arg(material_items), money(material, currency)}});
    total(say("Material"), material);
    work.put_rows(table, currency, true);
    total(say("Labour"), labour);
    const std::size_t before_sums = table.rows.size();
    if (quote.discount.minor != 0) {
        const QString reason = qs(input.job.offer.discount_reason);
        table.rows.push_back({QStringList{say("Discount of %1%2")
                                              .arg(percent(input.job.offer.discount_percent / 100.0, 2),
                                                   reason.isEmpty() ? QString() : QStringLiteral(": ") + reason),
                                          QString(), money(Money{} - quote.discount, currency)}});
    }
    total(say("Net"), quote.net);
    for (const quote::TaxSum& tax : quote.taxes) {
        table.rows.push_back({QStringList{
            say("%1, %2 on %3").arg(say_name(tax.rate.label), percent(tax.rate.rate, 1), money(tax.net, currency)),
            QString(), money(tax.tax, currency)}});
    }
    total(say("Total to pay"), quote.gross);
    if (plan.offered) {
        for (const quote::Subsidy& subsidy : plan.offered->subsidies)
            table.rows.push_back(
                {QStringList{qs(subsidy.text), QString(), money(Money{} - subsidy.granted, currency)}});
        if (!plan.offered->subsidies.empty())
            total(say("Left for you to pay when all is granted"), plan.offered->to_bring);
    }
    table.last_together = table.rows.size() - before_sums;
    flow.table(table);
    if (plan.offered) beside_the_price(flow, *plan.offered, currency, input.firm);
    const bool open =
        std::any_of(quote.lines.begin(), quote.lines.end(), [](const parts::Line& l) { return !l.priced; });
    if (open) {
        flow.caution(Sign::caution, say("Not all items have a price"),
                     say("Some items are not in the price list. They are not in the total."));
    }
    const QDate until = input.printed_on.isValid() ? input.printed_on.addDays(quote.valid_days) : QDate();
    const QString holds =
        until.isValid() ? say("This quote holds for %1 days, until %2.").arg(quote.valid_days).arg(date_words(until))
                        : say("This quote holds for %1 days.").arg(quote.valid_days);
    const QString pay = input.job.offer.terms.empty() && input.job.offer.instalments.empty()
                            ? payment_not_set() + QLatin1Char(' ')
                            : QString();
    flow.paragraph(holds + QLatin1Char(' ') + pay + say("Prices: %1.").arg(qs(plan.price_list_label)));
    for (const QString& part : qs(input.job.offer.terms).split(QLatin1Char('\n'), Qt::SkipEmptyParts))
        flow.paragraph(part);
}

void not_in_it(Flow& flow, const PaperInput& input) {
    const auto& to_be_made = input.plan.services.water.to_be_made;
    if (to_be_made.empty()) return;
    flow.subheading(say("Still to be made at the cylinder's place"));
    for (const std::string& item : to_be_made)
        flow.bullet(say_name(item));
}

}  // namespace

std::vector<Page> lay_out_quote(const SharedInput& input) {
    const Job& job = input->job;
    const plan::Plan& plan = input->plan;
    Flow flow(furniture_of(Paper::quote, *input));
    address_block(flow, *input);
    flow.paragraph(say("Hot water by heat pump and bare plate: %1")
                       .arg(job.title.empty() ? client_address(job.client) : qs(job.title)),
                   Style{12.0, true, false});
    if (plan.stopped()) {
        flow.caution(Sign::stop, say("Not to be issued: has a stop"),
                     say("Something in this plan must be changed first; it is named at the end."));
    }
    letter_words(flow, letter_text(*input, qs(job.offer.covering)),
                 input->takes_place_of.isEmpty()
                     ? QString()
                     : say("This quote takes the place of our quote %1.").arg(input->takes_place_of));
    offer_in_words(flow, *input);
    picture_of_roof(flow, input);
    year_in_figures(flow, *input);
    price_table(flow, *input);
    choices_beside(flow, input);
    not_in_it(flow, *input);
    const std::vector<Finding> of_concern = findings_for_client(plan.findings);
    // What to know and the place to sign stand together where a page has room for both.
    const auto last = [&](Flow& part) {
        if (!of_concern.empty()) {
            part.heading(say("What you should know before you decide"));
            findings_boxes(part, of_concern, Severity::note);
        }
        if (!plan.stopped()) {
            part.sign_off(say("Order"),
                          say("I order the system as described in this quote, job %1, revision %2.")
                              .arg(qs(job.number))
                              .arg(plan.job_revision),
                          {say("Client"), say("For the firm")});
        }
    };
    if (const double height = flow.height_of(last); height <= 0.6 * flow.full_height()) flow.keep(height);
    last(flow);
    return flow.finish();
}

}  // namespace wg::ui::paper
