// The service sheet: what is due at a system, in working order, with the values of its start beside blanks for today.

#include <algorithm>
#include <cmath>
#include <map>

#include "core/aftercare/service.h"
#include "core/commissioning/commissioning.h"
#include "ui/common/format.h"
#include "ui/documents/entry_words.h"
#include "ui/documents/papers.h"
#include "ui/documents/service_texts.h"

namespace wg::ui::paper {
namespace {

QString every_words(int months) {
    if (months == 12) return QStringLiteral("every year");
    if (months > 0 && months % 12 == 0) return QStringLiteral("every %1 years").arg(months / 12);
    return QStringLiteral("every %1 months").arg(months);
}

std::map<QString, QString> service_figures(const Job& job, const plan::Plan& p) {
    const auto& w = p.services.water;
    const Hygiene& hygiene = job.demand.hygiene;
    QString leak_why;
    if (p.duty.leak_check_months > 0) {
        leak_why = p.duty.by_mass ? QStringLiteral("the charge is %1, from %2 on")
                                        .arg(quantity(p.duty.kg, QStringLiteral("kg"), 2),
                                             quantity(p.duty.first_from, QStringLiteral("kg")))
                                  : QStringLiteral("the charge is %1 of CO2e, from %2 on")
                                        .arg(quantity(p.duty.t_co2e, QStringLiteral("t"), 2),
                                             quantity(p.duty.first_from, QStringLiteral("t")));
    }
    return {{QStringLiteral("refrigerant"), QString::fromLatin1(name_of(p.block.refrigerant))},
            {QStringLiteral("safety_class"), safety_class(p.block.refrigerant)},
            {QStringLiteral("total_charge"), quantity(p.run.total_charge_kg, QStringLiteral("kg"), 3)},
            {QStringLiteral("torque"), quantity(p.fixing_method.torque_nm, QStringLiteral("N m"))},
            {QStringLiteral("fixing"), qs(p.fixing_method.label)},
            {QStringLiteral("rcd"), quantity(p.services.electrical.residual_current_ma, QStringLiteral("mA"))},
            {QStringLiteral("precharge"), quantity(w.vessel_precharge_bar, QStringLiteral("bar gauge"), 1)},
            {QStringLiteral("safety_valve"), quantity(w.safety_valve_bar, QStringLiteral("bar"), 1)},
            {QStringLiteral("anode"), qs(p.cylinder.anode)},
            {QStringLiteral("hygiene"), temperature(hygiene.target_c)},
            {QStringLiteral("set_point"), temperature(p.expected.set_point_c)},
            {QStringLiteral("leak_months"), QString::number(p.duty.leak_check_months)},
            {QStringLiteral("leak_why"), leak_why},
            {QStringLiteral("leak_source"), qs(p.duty.source)}};
}

QString in_braces(const char16_t* text, const std::map<QString, QString>& figures) {
    QString out = QString::fromUtf16(text);
    for (const auto& [name, value] : figures)
        out.replace(QLatin1Char('{') + name + QLatin1Char('}'), value);
    return out;
}

/// Newest entry of a kind that stands, of fitting and repair.
const Reading* at_the_start(const std::vector<Reading>& standing, ReadingKind kind) {
    const Reading* found = nullptr;
    for (const Reading& entry : standing)
        if (entry.kind == kind && entry.occasion != Occasion::service) found = &entry;
    return found;
}

void service_overview(Flow& flow, const PaperInput& input) {
    const Job& job = input.job;
    const plan::Plan& plan = input.plan;
    const Choice* choice = find_choice(job, plan.choice_id);
    const CylinderSpot* spot = choice == nullptr ? nullptr : find_spot(job.site, choice->spot_id);
    QStringList where;
    for (const plan::PlacementPlan& placed : plan.placements)
        where += QStringLiteral("%1 on %2").arg(qs(placed.label), qs(placed.surface_label));
    QStringList serials;
    for (const Reading& entry : commissioning::standing(job.record))
        if (entry.kind == ReadingKind::serial_number)
            serials += QStringLiteral("%1 %2").arg(qs(entry.subject), qs(entry.note)).trimmed();
    flow.heading(QStringLiteral("The system"));
    flow.pairs({{QStringLiteral("Client"), qs(job.client.name)},
                {QStringLiteral("Address, telephone"),
                 client_address(job.client) +
                     (job.client.phone.empty() ? QString() : QStringLiteral(", ") + qs(job.client.phone))},
                {QStringLiteral("Access"), qs(job.survey.access)},
                {QStringLiteral("Collector"), QStringLiteral("%1 × %2; %3")
                                                  .arg(plan.placements.size())
                                                  .arg(qs(plan.collector.name), where.join(QStringLiteral(", ")))},
                {QStringLiteral("Heat pump"), qs(plan.block.name)},
                {QStringLiteral("Cylinder"),
                 QStringLiteral("%1, %2%3")
                     .arg(qs(plan.cylinder.name), quantity(plan.cylinder.volume_l, QStringLiteral("l")),
                          spot == nullptr ? QString() : QStringLiteral(", in: ") + qs(spot->label))},
                {QStringLiteral("Serial numbers"), serials.join(QStringLiteral("; "))},
                {QStringLiteral("Refrigerant"),
                 QStringLiteral("%1 (%2), %3 as planned, %4 of CO2e")
                     .arg(QString::fromLatin1(name_of(plan.block.refrigerant)), safety_class(plan.block.refrigerant),
                          quantity(plan.run.total_charge_kg, QStringLiteral("kg"), 3),
                          carbon_words(plan.run.total_charge_t_co2e))},
                {QStringLiteral("Breaker"),
                 QStringLiteral("%1 %2").arg(qs(plan.services.electrical.breaker_curve),
                                             quantity(plan.services.electrical.breaker_a, QStringLiteral("A")))},
                {QStringLiteral("What the client reports"), QString()}},
               false);
}

void service_hazards(Flow& flow, const PaperInput& input) {
    flow.heading(QStringLiteral("Hazards"));
    std::vector<Flow::Notice> notices;
    for (const Flow::Notice& notice : warnings_for(input.job, input.plan)) {
        // Nitrogen is used only after a repair, by the install sheet.
        if (notice.sign != Sign::pressure) notices.push_back(notice);
    }
    flow.cautions(notices);
    flow.paragraph(QStringLiteral("Local codes and licensed practice decide over anything on this sheet."));
}

void what_is_due(Flow& flow, const PaperInput& input) {
    flow.heading(QStringLiteral("What is due, and why"));
    if (input.plan.service.empty()) {
        flow.paragraph(QStringLiteral("The rule set names no service for this system."));
        return;
    }
    Table table;
    table.columns = {{QStringLiteral("Due"), 28.0},
                     {QStringLiteral("Service"), 0.0},
                     {QStringLiteral("How often, last done"), 34.0},
                     {QStringLiteral("Why, and by what source"), 54.0},
                     {QStringLiteral("Done"), 12.0, false, true}};
    const auto dates = aftercare::service_dates(input.plan.service, input.job.record, civil(input.printed_on));
    for (const aftercare::ServiceDate& date : dates) {
        const plan::ServiceDue& due = date.service;
        QString when = date.due_on ? date_words(qdate(*date.due_on)) : QStringLiteral("not started yet");
        if (date.state == aftercare::ServiceState::overdue) when += QStringLiteral("\n\u25a0 overdue");
        const QString last = date.last_done_on ? date_words(qdate(*date.last_done_on)) : QStringLiteral("never noted");
        table.rows.push_back(
            {QStringList{when, qs(due.text), every_words(due.every_months) + QLatin1Char('\n') + last,
                         QStringLiteral("%1\nSource: %2").arg(qs(due.why), qs(due.source)), QString()}});
    }
    flow.table(table);
    if (input.plan.duty.leak_check_months > 0 && !input.plan.duty.records.empty()) {
        flow.subheading(QStringLiteral("What the register has to hold"));
        for (const std::string& line : input.plan.duty.records)
            flow.bullet(qs(line));
    }
}

void parts_to_bring(Flow& flow, const PaperInput& input) {
    const ServiceFacts facts = service_facts(input.job, input.plan);
    const auto figures = service_figures(input.job, input.plan);
    flow.heading(QStringLiteral("To bring"));
    Table table;
    table.columns = {{QString(), 7.0, false, true}, {QString(), 0.0}};
    for (const ServicePart& part : service_parts())
        if (part.applies(facts)) table.rows.push_back({QStringList{QString(), in_braces(part.text, figures)}});
    flow.table(table);
}

void values_then_and_now(Flow& flow, const PaperInput& input) {
    struct Line {
        ReadingKind kind;
        const char16_t* what;
        const char16_t* unit;
    };
    const Line lines[] = {{ReadingKind::electricity_meter, u"Electricity meter", u"kWh"},
                          {ReadingKind::heat_meter, u"Heat meter", u"kWh"},
                          {ReadingKind::water_meter, u"Hot water meter", u"m³"},
                          {ReadingKind::outdoor_temperature, u"Outdoor air", u"°C"},
                          {ReadingKind::irradiance, u"Light on the plate", u"W/m²"},
                          {ReadingKind::water_temperature, u"Water in the cylinder", u"°C"},
                          {ReadingKind::suction_temperature, u"Suction tube at the block", u"°C"},
                          {ReadingKind::discharge_temperature, u"Discharge tube", u"°C"},
                          {ReadingKind::suction_pressure, u"Suction pressure, only if connected", u"bar gauge"},
                          {ReadingKind::discharge_pressure, u"Discharge pressure, only if connected", u"bar gauge"},
                          {ReadingKind::superheat, u"Superheat", u"K"},
                          {ReadingKind::supply_current, u"Current, heater off", u"A"},
                          {ReadingKind::supply_voltage, u"Voltage", u"V"},
                          {ReadingKind::insulation_resistance, u"Insulation resistance", u"MΩ"},
                          {ReadingKind::residual_current_trip, u"Residual current device, trip time", u"ms"},
                          {ReadingKind::cold_pressure, u"Cold pressure, no tap open", u"bar gauge"},
                          {ReadingKind::tap_temperature, u"Mixed water at the nearest tap", u"°C"}};
    const std::vector<Reading> standing = commissioning::standing(input.job.record);
    flow.heading(QStringLiteral("Values: at the start, and today"));
    Table table;
    table.least_row_mm = 8.0;
    table.grid = true;
    table.columns = {{QStringLiteral("What"), 0.0},
                     {QStringLiteral("At the start"), 52.0},
                     {QStringLiteral("On"), 32.0},
                     {QStringLiteral("Today"), 40.0}};
    for (const Line& line : lines) {
        const Reading* then = at_the_start(standing, line.kind);
        table.rows.push_back(
            {QStringList{QStringLiteral("%1, %2").arg(QString::fromUtf16(line.what), QString::fromUtf16(line.unit)),
                         then == nullptr ? QStringLiteral("not read") : entry_value(*then),
                         then == nullptr ? QString() : date_words(entry_day(*then)), QString()}});
    }
    flow.table(table);
}

void expected_this_month(Flow& flow, const PaperInput& input) {
    const int month = input.printed_on.isValid() ? input.printed_on.month() : 0;
    const auto& all = input.plan.forecasts;
    const auto found = std::find_if(all.begin(), all.end(), [&](const auto& one) { return one.month == month; });
    if (found == all.end() || found->bands.empty()) {
        flow.paragraph(
            QStringLiteral("No bands are worked out for this month: compare with the start, in like weather."));
        return;
    }
    flow.subheading(QStringLiteral("What the running pump should show in %1").arg(QLocale::c().monthName(month)));
    Table table;
    table.least_row_mm = 8.0;
    table.grid = true;
    table.whole = true;
    table.columns = {{QStringLiteral("By the model, on a usual day"), 0.0},
                     {QStringLiteral("Expected"), 52.0, true},
                     {QStringLiteral("Most likely"), 34.0, true},
                     {QStringLiteral("Today"), 40.0}};
    for (const commissioning::Band& band : found->bands) {
        const QString unit = with_signs(' ' + band.unit).trimmed();
        table.rows.push_back({QStringList{
            with_signs(band.label),
            QStringLiteral("%1 to %2").arg(number(band.low, band.decimals), quantity(band.high, unit, band.decimals)),
            quantity(band.mid, unit, band.decimals), QString()}});
    }
    flow.table(table);
    flow.paragraph(
        QStringLiteral("Reckoned for %1 outdoors, %2 on the plate, wind of %3 and water from %4 to %5. In other "
                       "weather read the expected values from the program.")
            .arg(temperature(found->air_c, 1), quantity(found->light_w_m2, QStringLiteral("W/m²")),
                 quantity(found->wind_m_s, QStringLiteral("m/s"), 1), temperature(found->water_from_c),
                 temperature(found->water_to_c)),
        Style{least_pt, false, false});
}

void service_work(Flow& flow, const PaperInput& input) {
    flow.heading(QStringLiteral("The work in order"));
    flow.keep(32.0 * mm);  // the first step with it
    flow.paragraph(QStringLiteral("Tick what is done; strike out what was not and write why."));
    std::vector<Flow::Work> work;
    for (const Step& step : service_steps(input.job, input.plan))
        work.push_back({step.number, step.text, step.why});
    flow.work(work);
}

}  // namespace

ServiceFacts service_facts(const Job& job, const plan::Plan& plan) {
    ServiceFacts f;
    f.place = facts_of(job, plan);
    const QString anode = qs(plan.cylinder.anode);
    const auto names = [&](const char* word) { return anode.contains(QLatin1String(word), Qt::CaseInsensitive); };
    f.powered_anode = names("current") || names("powered");
    f.sacrificial_anode = !anode.isEmpty() && !f.powered_anode;
    f.torque_told = plan.fixing_method.torque_nm > 0.0;
    f.ballast = plan.fixing_method.kind == FixingKind::ballast;
    f.passage = plan.run.passages > 0;
    f.reducing_valve = plan.services.water.reducing_valve || job.site.water.reducing_valve;
    f.mixing_valve = plan.services.water.mixing_valve;
    f.recirculation = f.place.recirculation || job.demand.recirculation.present;
    f.hygiene = job.demand.hygiene.rule != HygieneRule::none;
    f.leak_duty = plan.duty.leak_check_months > 0;
    const Control& control = job.demand.control;
    f.clock = !control.run_windows.empty() || control.low_tariff_only || !control.set_back_windows.empty();
    return f;
}

std::vector<Step> service_steps(const Job& job, const plan::Plan& plan) {
    const ServiceFacts facts = service_facts(job, plan);
    const auto figures = service_figures(job, plan);
    std::vector<Step> steps;
    int number = 0;
    for (const ServiceText& line : service_texts()) {
        if (!line.applies(facts)) continue;
        Step step;
        step.kind = line.kind;
        if (line.kind == Step::Kind::work) step.number = ++number;
        step.text = in_braces(line.text, figures);
        step.why = in_braces(line.why, figures);
        steps.push_back(std::move(step));
    }
    return steps;
}

std::vector<Page> lay_out_service_sheet(const SharedInput& input) {
    Flow flow(furniture_of(Paper::service_sheet, *input));
    service_overview(flow, *input);
    service_hazards(flow, *input);
    what_is_due(flow, *input);
    parts_to_bring(flow, *input);
    service_work(flow, *input);
    values_then_and_now(flow, *input);
    expected_this_month(flow, *input);
    flow.subheading(QStringLiteral("Found, and still to do"));
    Table blank;
    blank.least_row_mm = 9.0;
    blank.whole = true;
    blank.columns = {{QString(), 0.0}};
    blank.rows = std::vector<Row>(4);
    flow.table(blank);
    flow.sign_off(
        QStringLiteral("Service done"),
        QStringLiteral("Next service in the month of: ____________________   Readings entered in the record: yes / no"),
        {QStringLiteral("Service"), QStringLiteral("Leak check"), QStringLiteral("Client")});
    return flow.finish();
}

}  // namespace wg::ui::paper
