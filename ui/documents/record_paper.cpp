// The record: what was fitted, read, found and signed, for client and firm. Nothing that was entered is left out.

#include <algorithm>
#include <map>

#include "core/commissioning/commissioning.h"
#include "core/job/codec.h"
#include "ui/common/format.h"
#include "ui/documents/entry_words.h"
#include "ui/documents/install_steps.h"
#include "ui/documents/record_parts.h"

namespace wg::ui::paper {
namespace {

QString fitted_between(const std::vector<Reading>& record) {
    QDate first, last;
    for (const Reading& entry : record) {
        const QDate day = entry_day(entry);
        if (entry.occasion != Occasion::fitting || !day.isValid()) continue;
        if (!first.isValid() || day < first) first = day;
        if (!last.isValid() || day > last) last = day;
    }
    if (!first.isValid()) return QStringLiteral("no entry yet");
    return first == last ? date_words(first) : QStringLiteral("%1 to %2").arg(date_words(first), date_words(last));
}

QString people_of(const std::vector<Reading>& record) {
    QStringList names;
    for (const Reading& entry : record) {
        const QString name = qs(entry.taken_by).trimmed();
        if (!name.isEmpty() && !names.contains(name)) names += name;
    }
    return names.isEmpty() ? QStringLiteral("nobody named yet") : names.join(QStringLiteral(", "));
}

QString lying_where(const PaperInput& input) {
    QStringList lines;
    for (const plan::PlacementPlan& placed : input.plan.placements) {
        const QString label = qs(placed.label.empty() ? placed.surface_label : placed.label);
        lines += QStringLiteral("%1 on %2, tilt %3°, looks to %4")
                     .arg(label, qs(placed.surface_label), number(placed.placed.tilt_deg),
                          bearing(placed.placed.azimuth_deg));
    }
    return lines.isEmpty() ? QStringLiteral("no collector is placed") : lines.join(QStringLiteral("; "));
}

/// What was weighed in less what was taken out or lost, by the entries that stand.
struct ChargeByRecord {
    double added_kg = 0.0;
    double out_kg = 0.0;
    int entries = 0;
};

ChargeByRecord charge_by_record(const std::vector<Reading>& record) {
    ChargeByRecord sum;
    for (const Reading& entry : commissioning::standing(record)) {
        if (entry.kind == ReadingKind::charge_added) {
            sum.added_kg += entry.value;
            ++sum.entries;
        } else if (entry.kind == ReadingKind::refrigerant_recovered || entry.kind == ReadingKind::refrigerant_lost) {
            sum.out_kg += entry.value;
            ++sum.entries;
        }
    }
    return sum;
}

void what_was_fitted(Flow& flow, const PaperInput& input) {
    const Job& job = input.job;
    const plan::Plan& plan = input.plan;
    flow.heading(QStringLiteral("What was fitted"));
    const Choice* choice = find_choice(job, plan.choice_id);
    const CylinderSpot* spot = choice == nullptr ? nullptr : find_spot(job.site, choice->spot_id);
    std::vector<std::pair<QString, QString>> lines = {
        {QStringLiteral("Client"), qs(job.client.name)},
        {QStringLiteral("Address"), client_address(job.client)},
        {QStringLiteral("Fitted on"), fitted_between(job.record)},
        {QStringLiteral("Entries by"), people_of(job.record)},
        {QStringLiteral("Collector"),
         QStringLiteral("%1 × %2").arg(plan.placements.size()).arg(qs(plan.collector.name))},
        {QStringLiteral("Where"), lying_where(input)},
        {QStringLiteral("Heat pump"), qs(plan.block.name)},
        {QStringLiteral("Cylinder"),
         QStringLiteral("%1, %2%3")
             .arg(qs(plan.cylinder.name), quantity(plan.cylinder.volume_l, QStringLiteral("l")),
                  spot == nullptr ? QString() : QStringLiteral(", in: ") + qs(spot->label))},
        {QStringLiteral("Fixing"), qs(plan.fixing_method.label)}};
    int serials = 0;
    for (const Reading& entry : commissioning::standing(job.record)) {
        if (entry.kind != ReadingKind::serial_number) continue;
        ++serials;
        const QString of = entry.subject.empty() ? QStringLiteral("part not named") : qs(entry.subject);
        lines.push_back({QStringLiteral("Serial number, %1").arg(of), entry_value(entry)});
    }
    // Left open to be written in: a record without them does not tell one machine from another.
    if (serials == 0) lines.push_back({QStringLiteral("Serial numbers"), QString()});
    const double planned_kg = plan.run.total_charge_kg;
    const ChargeByRecord charge = charge_by_record(job.record);
    const double now_kg = plan.block.charge_kg + charge.added_kg - charge.out_kg;
    lines.push_back({QStringLiteral("Refrigerant"),
                     QStringLiteral("%1 (%2)").arg(QString::fromLatin1(name_of(plan.block.refrigerant)),
                                                   safety_class(plan.block.refrigerant))});
    QString words =
        QStringLiteral("%1 from the factory, %2 weighed in, %3 taken out or lost: %4 in the system")
            .arg(quantity(plan.block.charge_kg, QStringLiteral("kg"), 3),
                 quantity(charge.added_kg, QStringLiteral("kg"), 3), quantity(charge.out_kg, QStringLiteral("kg"), 3),
                 quantity(now_kg, QStringLiteral("kg"), 3));
    if (charge.entries == 0) words += QStringLiteral("; no weighing is entered");
    lines.push_back({QStringLiteral("Charge by the record"), words});
    lines.push_back({QStringLiteral("Charge as planned"), quantity(planned_kg, QStringLiteral("kg"), 3)});
    if (planned_kg > 0.0) {
        lines.push_back({QStringLiteral("As carbon dioxide"),
                         QStringLiteral("%1 by the record, %2 as planned (CO2e)")
                             .arg(carbon_words(plan.run.total_charge_t_co2e * now_kg / planned_kg),
                                  carbon_words(plan.run.total_charge_t_co2e))});
    }
    flow.pairs(lines, false);
}

struct MadeFor {
    std::int64_t revision = 0;
    std::string mark;
    std::size_t entries = 0;
    std::size_t first = 0;  ///< number of the first such entry
};

/// Plans that the entries were made for, in the order in which they first appear.
std::vector<MadeFor> plans_of(const std::vector<Reading>& record) {
    std::vector<MadeFor> plans;
    for (std::size_t i = 0; i < record.size(); ++i) {
        const auto same = std::find_if(plans.begin(), plans.end(), [&](const MadeFor& one) {
            return one.revision == record[i].plan_revision && one.mark == record[i].plan_mark;
        });
        if (same != plans.end()) {
            ++same->entries;
        } else {
            plans.push_back({record[i].plan_revision, record[i].plan_mark, 1, i + 1});
        }
    }
    return plans;
}

QString revision_words(std::int64_t revision) {
    return revision == 0 ? QStringLiteral("not told") : QString::number(revision);
}

void plan_of_the_entries(Flow& flow, const PaperInput& input) {
    const std::string now = input.plan.plan_mark.empty() ? plan_mark(input.job) : input.plan.plan_mark;
    flow.heading(QStringLiteral("The plan it was built from"));
    Table table;
    table.whole = true;
    table.columns = {{QStringLiteral("Plan"), 0.0},
                     {QStringLiteral("Revision"), 24.0, true},
                     {QStringLiteral("Mark"), 34.0},
                     {QStringLiteral("Entries"), 20.0, true},
                     {QStringLiteral("First entry"), 24.0, true}};
    const std::vector<MadeFor> plans = plans_of(input.job.record);
    bool differs = false;
    bool untold = false;
    for (const MadeFor& one : plans) {
        untold = untold || one.mark.empty();
        differs = differs || (!one.mark.empty() && one.mark != now);
        table.rows.push_back({QStringList{QStringLiteral("when entries were made"), revision_words(one.revision),
                                          one.mark.empty() ? QStringLiteral("not told") : qs(one.mark),
                                          QString::number(one.entries), QStringLiteral("no. %1").arg(one.first)}});
    }
    table.rows.push_back({QStringList{QStringLiteral("now, as printed"), QString::number(input.plan.job_revision),
                                      qs(now), QString(), QString()},
                          Row::Kind::total});
    flow.table(table);
    if (differs) {
        flow.caution(
            Sign::caution, QStringLiteral("The plan was changed after entries were made"),
            QStringLiteral("Entries were made for plans with another mark than the plan has now (%1). What was "
                           "built may differ from what is planned now: compare with the print of that mark.")
                .arg(qs(now)));
    } else if (untold) {
        flow.paragraph(
            QStringLiteral("Some entries do not tell the plan they were made for: they come from an older "
                           "program."));
    } else if (!plans.empty()) {
        flow.paragraph(QStringLiteral("All entries were made for the plan as it stands."));
    }
    if (input.plan.stopped()) {
        flow.caution(Sign::stop, QStringLiteral("The plan as it stands has a stop"),
                     QStringLiteral("What was read stands all the same; what stops the plan is named here."));
        findings_boxes(flow, input.plan.findings, Severity::stop);
    }
}

}  // namespace

std::vector<Page> lay_out_record(const SharedInput& input) {
    Flow flow(furniture_of(Paper::record, *input));
    what_was_fitted(flow, *input);
    plan_of_the_entries(flow, *input);
    record_verdicts(flow, input);
    record_entries(flow, *input);
    record_photographs(flow, *input);
    record_chain(flow, *input);
    record_signatures(flow, *input);
    return flow.finish();
}

}  // namespace wg::ui::paper
