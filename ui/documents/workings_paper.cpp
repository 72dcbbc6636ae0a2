// The appendix: how every figure of the plan was reached, for whoever has to check it.

#include <algorithm>

#include "ui/common/format.h"
#include "ui/common/working_groups.h"
#include "ui/documents/flow_measures.h"
#include "ui/documents/papers.h"

namespace wg::ui::paper {
namespace {

constexpr double reading_pt = 10.0;
const Style reading{reading_pt, false, false};

QStringList formula_parts(const Working& working) {
    // Parts of a formula stand one below the other.
    return qs(working.formula).split(QStringLiteral("; "), Qt::SkipEmptyParts);
}

void working_block(Flow& flow, const NamedWorking& one, const QString& group_title) {
    const Working& working = one.working;
    QString title = qs(working.title);
    if (!one.place.isEmpty() && !group_title.endsWith(QLatin1String(": ") + one.place))
        title += QStringLiteral(", ") + one.place;
    Table table;
    table.size_pt = reading_pt;
    table.whole = true;
    table.columns = {{QString(), 0.0}, {QString(), 86.0, true}};
    for (const auto& [name, value] : working.inputs)
        table.rows.push_back({QStringList{qs(name), qs(value)}});
    table.rows.push_back({QStringList{QStringLiteral("Result"), qs(working.result)}, Row::Kind::total});
    QString source = working.assumed ? QStringLiteral(
                                           "Assumed: at least one input is an assumption, not a "
                                           "measurement. ")
                                     : QString();
    if (!working.source.empty()) source += QStringLiteral("Source: ") + qs(working.source);
    const QStringList parts = formula_parts(working);
    flow.subheading(title);
    flow.keep_with(table, parts, source, reading);
    flow.formula(parts);
    flow.table(table);
    flow.paragraph(source, reading);
}

void points_table(Flow& flow, const WorkingGroup& group, const PaperInput& input) {
    Table table;
    table.size_pt = reading_pt;
    table.whole = true;
    table.columns = {{QStringLiteral("Point"), 14.0, true}, {QStringLiteral("Pull, N"), 20.0, true},
                     {QStringLiteral("of, N"), 18.0, true}, {QStringLiteral("Shear, N"), 22.0, true},
                     {QStringLiteral("of, N"), 18.0, true}, {QStringLiteral("Used"), 18.0, true},
                     {QStringLiteral("Governed by"), 0.0}};
    for (const NamedWorking& one : group.workings) {
        if (one.point == 0) continue;
        for (const plan::PlacementPlan& placed : input.plan.placements) {
            if (placed.placement_id != one.placement_id) continue;
            for (const fixing::FixingPoint& p : placed.fixing.points) {
                if (p.number != one.point) continue;
                table.rows.push_back({QStringList{
                    QString::number(p.number), number(p.pull_n), number(p.resistance_pull_n), number(p.shear_n),
                    number(p.resistance_shear_n), percent(p.utilisation), qs(p.worst_combination)}});
            }
        }
    }
    if (table.rows.empty()) return;
    flow.subheading(QStringLiteral("Every point"));
    flow.table(table);
}

void front(Flow& flow, const PaperInput& input) {
    const plan::Plan& plan = input.plan;
    flow.heading(QStringLiteral("What this is"));
    flow.pairs({{QStringLiteral("Job"), qs(input.job.number)},
                {QStringLiteral("Revision"), QString::number(plan.job_revision)},
                {QStringLiteral("Client"), qs(input.job.client.name)},
                {QStringLiteral("Choice"), qs(plan.choice_label)},
                {QStringLiteral("Plan of"), date_words(input.printed_on)},
                {QStringLiteral("Job changed at"), qs(input.job.changed_at)},
                {QStringLiteral("Rule set"), qs(plan.rule_set_label)},
                {QStringLiteral("Price list"), qs(plan.price_list_label)},
                {QStringLiteral("Weather"), qs(plan.weather_source)},
                {QStringLiteral("Content"), qs(plan.content_sha256.substr(0, 12))}});
}

void contents(Flow& flow, const std::vector<WorkingGroup>& groups, const std::vector<int>& pages) {
    flow.heading(QStringLiteral("Contents"));
    Table table;
    table.size_pt = reading_pt;
    table.columns = {{QStringLiteral("Subject"), 0.0},
                     {QStringLiteral("Workings"), 24.0, true},
                     {QStringLiteral("with an assumed input"), 44.0, true},
                     {QStringLiteral("Page"), 18.0, true}};
    for (std::size_t i = 0; i < groups.size(); ++i) {
        const auto& all = groups[i].workings;
        const auto of_plan = [](const NamedWorking& one) { return one.point == 0; };
        const auto assumed = std::count_if(
            all.begin(), all.end(), [&](const NamedWorking& one) { return of_plan(one) && one.working.assumed; });
        table.rows.push_back(
            {QStringList{groups[i].title, QString::number(std::count_if(all.begin(), all.end(), of_plan)),
                         QString::number(assumed), pages[i] > 0 ? QString::number(pages[i]) : QString()}});
    }
    flow.table(table);
}

std::vector<Page> lay_out_with(const SharedInput& input, const std::vector<WorkingGroup>& groups,
                               const std::vector<int>& pages) {
    Furniture furniture = furniture_of(Paper::workings, *input);
    furniture.headline = workings_headline();
    Flow flow(furniture);
    front(flow, *input);
    if (groups.empty()) {
        flow.paragraph(QStringLiteral("This plan has no working yet."), reading);
        return flow.finish();
    }
    contents(flow, groups, pages);
    for (const WorkingGroup& group : groups) {
        flow.heading(group.title);
        for (const NamedWorking& one : group.workings)
            if (one.point == 0) working_block(flow, one, group.title);
        if (group.subject == WorkingSubject::fixing) points_table(flow, group, *input);
    }
    return flow.finish();
}

}  // namespace

QString workings_headline() {
    return QStringLiteral("Planning aid: local codes and licensed practice decide. Not a certificate.");
}

std::vector<Page> lay_out_workings(const SharedInput& input) {
    const std::vector<WorkingGroup> groups = grouped_workings(input->plan);
    // Once to learn the pages, once more with them in the contents, which has a row for each group either way.
    std::vector<int> pages(groups.size(), 0);
    const std::vector<Page> first = lay_out_with(input, groups, pages);
    std::size_t from = 0;
    for (std::size_t i = 0; i < groups.size(); ++i) {
        for (std::size_t p = from; p < first.size(); ++p) {
            // On the page of the contents the title stands there too: the heading is the last of its name.
            const auto times = first[p].text.count(groups[i].title);
            const bool in_contents = first[p].text.contains(QStringLiteral("Contents"));
            if (times > (in_contents ? 1 : 0)) {
                pages[i] = static_cast<int>(p) + 1;
                from = p;
                break;
            }
        }
    }
    return lay_out_with(input, groups, pages);
}

}  // namespace wg::ui::paper
