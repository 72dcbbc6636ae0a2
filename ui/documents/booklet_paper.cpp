// The hand-over booklet: what the client keeps in the drawer beside the cylinder.

#include <QLocale>

#include "core/aftercare/service.h"
#include "core/job/record_chain.h"
#include "ui/common/format.h"
#include "ui/documents/booklet_parts.h"
#include "ui/documents/entry_words.h"
#include "ui/documents/install_steps.h"
#include "ui/documents/record_parts.h"

namespace wg::ui::paper {
namespace {

QString hour_words(double hour) {
    const int minutes = static_cast<int>(hour * 60.0 + 0.5);
    return QStringLiteral("%1:%2").arg(minutes / 60).arg(minutes % 60, 2, 10, QLatin1Char('0'));
}

QString windows_in_words(const std::vector<ClockWindow>& windows) {
    QStringList parts;
    for (const ClockWindow& window : windows) {
        if (window.from_h == window.to_h) continue;
        QString text = QStringLiteral("%1 to %2").arg(hour_words(window.from_h), hour_words(window.to_h));
        if (window.weekdays && !window.weekends) text += QStringLiteral(" on weekdays");
        if (!window.weekdays && window.weekends) text += QStringLiteral(" at weekends");
        parts += text;
    }
    return parts.join(QStringLiteral(", "));
}

void your_system(Flow& flow, const PaperInput& input) {
    const plan::Plan& plan = input.plan;
    const Choice* choice = find_choice(input.job, plan.choice_id);
    const CylinderSpot* spot = choice == nullptr ? nullptr : find_spot(input.job.site, choice->spot_id);
    QStringList where;
    for (const plan::PlacementPlan& placed : plan.placements) {
        const QString name = qs(placed.surface_label);
        if (!where.contains(name)) where += name;
    }
    flow.heading(QStringLiteral("Your hot water system"), booklet_heading_pt);
    flow.paragraph(
        QStringLiteral(
            "A metal plate outdoors takes up warmth from the air, the rain and the daylight, by day and by "
            "night. A small heat pump lifts that warmth into the water of your cylinder. When you ask for more "
            "than it can give, an electric heater in the cylinder helps."),
        booklet_text);
    const auto count = plan.placements.size();
    booklet_pairs(
        flow, {{QStringLiteral("Plate outdoors"), QStringLiteral("%1 %2 on: %3")
                                                      .arg(count == 1 ? QStringLiteral("one") : QString::number(count))
                                                      .arg(qs(plan.collector.name), where.join(QStringLiteral(", ")))},
               {QStringLiteral("Heat pump"), qs(plan.block.name)},
               {QStringLiteral("Cylinder"),
                QStringLiteral("%1, %2%3")
                    .arg(qs(plan.cylinder.name), quantity(plan.cylinder.volume_l, QStringLiteral("litres")),
                         spot == nullptr ? QString() : QStringLiteral(", in: ") + qs(spot->label))}});
}

void how_to_use(Flow& flow, const PaperInput& input) {
    const Demand& demand = input.job.demand;
    flow.heading(QStringLiteral("How to use it"), booklet_heading_pt);
    const auto say_bullet = [&](const QString& text) { flow.bullet(text, booklet_text); };
    say_bullet(
        QStringLiteral("Leave it switched on, summer and winter. It heats by itself when the water gets cooler."));
    say_bullet(QStringLiteral("The water is kept at about %1. Hotter water costs more electricity and scalds sooner.")
                   .arg(temperature(demand.set_point_c)));
    QString windows = windows_in_words(demand.control.run_windows);
    if (demand.control.low_tariff_only && !demand.tariff.low_windows.empty()) {
        const QString low = windows_in_words(demand.tariff.low_windows);
        say_bullet(QStringLiteral("It heats mostly while electricity is cheap: %1. In between it starts only when the "
                                  "water falls below %2.")
                       .arg(low, temperature(demand.control.always_below_c)));
    }
    if (!windows.isEmpty()) {
        say_bullet(QStringLiteral("It heats mostly at these times: %1. In between it starts only when the water falls "
                                  "below %2.")
                       .arg(windows, temperature(demand.control.always_below_c)));
    }
    if (demand.control.surplus.peak_kw > 0.0 && demand.control.surplus.raise_k > 0.0)
        say_bullet(QStringLiteral("When your own photovoltaics have electricity to spare, it heats a little hotter."));
    if (demand.recirculation.present)
        say_bullet(
            QStringLiteral("A small pump keeps hot water near the taps. It costs electricity and heat while it "
                           "runs: have its times set to your day."));
    say_bullet(
        QStringLiteral("Guests? Below stands how many showers a full cylinder gives, and how long it takes to be hot "
                       "again."));
    say_bullet(
        QStringLiteral("Your fitter shows you the control, the switch at the board and the cock that shuts the "
                       "cold water off. Write here where they are:"));
    Table blank;
    blank.whole = true;
    blank.size_pt = booklet_pt;
    blank.least_row_mm = 9.0;
    blank.columns = {{QString(), 62.0}, {QString(), 0.0}};
    blank.rows = {{QStringList{QStringLiteral("Control"), QString()}},
                  {QStringList{QStringLiteral("Switch at the board"), QString()}},
                  {QStringList{QStringLiteral("Cold water cock"), QString()}}};
    flow.table(blank);
}

QString how_often(int months) {
    if (months == 12) return QStringLiteral("every year");
    if (months > 0 && months % 12 == 0) return QStringLiteral("every %1 years").arg(months / 12);
    return QStringLiteral("every %1 months").arg(months);
}

/// What a service is, for people who do not know its parts; the rule's own words where there are none.
QString in_plain_words(const plan::ServiceDue& service) {
    const QString id = qs(service.id);
    if (id == QStringLiteral("yearly-look"))
        return QStringLiteral("Plate, fixings, pipes and heat pump are looked over and cleaned");
    if (id == QStringLiteral("anode"))
        return QStringLiteral("The rod that keeps the cylinder from rusting is checked and changed when worn");
    if (id == QStringLiteral("leak-check"))
        return QStringLiteral("A certified person looks for leaks and enters it in the register");
    if (id == QStringLiteral("flammable-room"))
        return QStringLiteral("The room is checked: aired, and nothing in it that can light a fire");
    if (id == QStringLiteral("safety-valve")) return QStringLiteral("Safety valve and expansion vessel are tried");
    if (id == QStringLiteral("mixing-valve"))
        return QStringLiteral("The valve that mixes the water for the taps is tried and cleaned");
    if (id == QStringLiteral("strainer")) return QStringLiteral("The sieve in the cold water inlet is rinsed");
    return qs(service.text);
}

void warranty_and_service(Flow& flow, const PaperInput& input) {
    const AftercareTerms& terms = input.job.aftercare;
    const CivilDate today = civil(input.printed_on);
    flow.heading(QStringLiteral("Warranty and service"), booklet_heading_pt);
    QString given = QStringLiteral("as agreed in writing");
    if (terms.warranty_months) {
        const QString months = quantity(*terms.warranty_months, QStringLiteral("months"));
        const auto warranty = aftercare::warranty(input.job, today);
        given = warranty ? QStringLiteral("%1, until %2").arg(months, date_words(qdate(warranty->ends_on)))
                         : QStringLiteral("%1 from the hand-over").arg(months);
    }
    if (!terms.warranty_words.empty()) given += QStringLiteral(". ") + qs(terms.warranty_words);
    QString contract = QStringLiteral("none agreed: ask us in time");
    if (terms.service_contract) contract = QStringLiteral("agreed");
    if (terms.service_contract && !terms.contract_words.empty()) contract = qs(terms.contract_words);
    booklet_pairs(flow, {{QStringLiteral("Warranty"), given}, {QStringLiteral("Service contract"), contract}});
    if (input.plan.service.empty()) return;
    std::vector<std::pair<QString, QString>> due;
    for (const auto& date : aftercare::service_dates(input.plan.service, input.job.record, today)) {
        QString when = how_often(date.service.every_months);
        if (date.due_on)
            when += QStringLiteral(", next in %1")
                        .arg(QLocale::c().toString(qdate(*date.due_on), QStringLiteral("MMMM yyyy")));
        due.push_back({when, in_plain_words(date.service)});
    }
    booklet_pairs(flow, due, QStringLiteral("When"), QStringLiteral("What is done, by us or another trained firm"));
}

void whom_to_call(Flow& flow, const PaperInput& input) {
    const Firm& firm = input.firm;
    flow.heading(QStringLiteral("Whom to call"), booklet_heading_pt);
    const QString address = firm.street.isEmpty() || firm.town.isEmpty()
                                ? firm.street + firm.town
                                : firm.street + QStringLiteral(", ") + firm.town;
    booklet_pairs(flow, {{QStringLiteral("Firm"), firm.name},
                         {QStringLiteral("Telephone"), firm.phone},
                         {QStringLiteral("Mail"), firm.email},
                         {QStringLiteral("Address"), address},
                         {QStringLiteral("Say when you call"),
                          QStringLiteral("job %1, %2").arg(qs(input.job.number), qs(input.plan.block.name))}});
    flow.paragraph(QStringLiteral("Fire, or somebody is hurt: first the emergency number of your country, then us."),
                   booklet_text);
}

void papers_handed_over(Flow& flow, const PaperInput& input) {
    flow.heading(QStringLiteral("Papers you get"), booklet_heading_pt);
    Table table;
    table.whole = true;
    table.size_pt = booklet_pt;
    table.columns = {{QString(), 8.0, false, true}, {QString(), 0.0}};
    const ChainReport chain = check_chain(input.job.record);
    QStringList papers = {
        QStringLiteral("This booklet"), QStringLiteral("The record of what was fitted, measured and signed"),
        QStringLiteral("The instructions of the makers of heat pump, cylinder and plate"),
        QStringLiteral("The certificate of the electrician"), QStringLiteral("The quote and the bill")};
    if (input.plan.duty.leak_check_months > 0) papers += QStringLiteral("The register of the refrigerant");
    for (const QString& paper : papers)
        table.rows.push_back({QStringList{QString(), paper}});
    flow.table(table);
    if (!chain.head.empty()) {
        flow.paragraph(QStringLiteral("The record of that day ends with: %1. Keep it signed: it shows if anything was "
                                      "changed later.")
                           .arg(hash_in_groups(chain.head)),
                       Style{10.0, false, false});
    }
}

}  // namespace

void booklet_pairs(Flow& flow, const std::vector<std::pair<QString, QString>>& lines, const QString& left,
                   const QString& right) {
    Table table;
    table.size_pt = booklet_pt;
    table.columns = {{left, 60.0}, {right, 0.0}};
    for (const auto& [what, answer] : lines)
        table.rows.push_back({QStringList{what, answer}});
    flow.table(table);
}

std::vector<Page> lay_out_booklet(const SharedInput& input) {
    Flow flow(furniture_of(Paper::booklet, *input));
    your_system(flow, *input);
    how_to_use(flow, *input);
    booklet_hot_water(flow, *input);
    booklet_health(flow, *input);
    booklet_watch(flow);
    booklet_never(flow, *input);
    booklet_bills(flow, input);
    warranty_and_service(flow, *input);
    whom_to_call(flow, *input);
    papers_handed_over(flow, *input);
    flow.sign_off(QStringLiteral("Handed over"),
                  QStringLiteral("I was shown how to use the system, what to watch and whom to call, and was given the "
                                 "papers ticked above."),
                  {QStringLiteral("Client"), QStringLiteral("For the firm")});
    return flow.finish();
}

}  // namespace wg::ui::paper
