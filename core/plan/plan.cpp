#include "core/plan/plan.h"

#include <algorithm>
#include <utility>

#include "core/job/codec.h"
#include "core/plan/parts_of_plan.h"

namespace wg::plan {
namespace {

template <class T>
void append(std::vector<T>& to, const std::vector<T>& from) {
    to.insert(to.end(), from.begin(), from.end());
}

/// Two collectors on one surface say the same of it: once is enough, with both named. Stops and cautions stay apart,
/// since each has its own place to be mended at.
void merge_same_notes(std::vector<Finding>& findings) {
    std::vector<Finding> kept;
    for (Finding& finding : findings) {
        const auto same = std::find_if(kept.begin(), kept.end(), [&finding](const Finding& k) {
            return k == finding || (k.severity == Severity::note && finding.severity == Severity::note &&
                                    k.code == finding.code && k.message == finding.message && k.rule == finding.rule);
        });
        if (same == kept.end()) {
            kept.push_back(std::move(finding));
        } else if (*same != finding && !finding.place.empty()) {
            same->place += ", " + finding.place;
        }
    }
    findings = std::move(kept);
}

/// Gathers what the rooms found into the plan's own lists.
void gather(Plan& plan) {
    for (const PlacementPlan& placement : plan.placements) {
        append(plan.findings, placement.fixing.findings);
        append(plan.workings, placement.fixing.workings);
    }
    append(plan.findings, plan.services.findings);
    append(plan.workings, plan.services.workings);
    append(plan.findings, plan.parts.findings);
    append(plan.workings, plan.economy.workings);
    sort_findings(plan.findings);
    merge_same_notes(plan.findings);
}

void identify(const Job& job, const steps::Selection& with, Plan& plan) {
    plan.job_id = job.id;
    plan.job_number = job.number;
    plan.title = job.title;
    plan.job_revision = job.revision;
    plan.content_sha256 = content_sha256(job);
    plan.plan_mark = plan_mark(job);
    plan.choice_id = with.choice->id;
    plan.choice_label = with.choice->label;
    plan.collector = *with.collector;
    plan.block = *with.block;
    plan.cylinder = *with.cylinder;
    plan.fixing_method = *with.method;
    plan.weather_source = with.weather->year.source;
    plan.weather_invented = with.weather->year.invented;
    plan.rule_set_label = with.rules->label;
    plan.price_list_label = with.prices->label;
    plan.currency = with.prices->currency;
    plan.invented = job.invented || with.collector->invented || with.block->invented || with.cylinder->invented ||
                    with.method->invented || with.prices->invented || plan.weather_invented;
}

}  // namespace

Result<Plan> plan(const Job& job, const Reference& reference, const Options& options) {
    Result<steps::Selection> selection = steps::select(job, reference, options);
    if (!selection) return selection.problems();
    const steps::Selection& with = selection.value();

    Plan plan;
    identify(job, with, plan);
    const std::vector<sky::PlaneYear> planes = steps::light(job, with, options, plan);
    steps::engineering(job, with, plan);
    std::optional<season::Input> input;
    if (options.yield && !plan.placements.empty()) {
        input = steps::season_input(job, with, planes, plan.placements, plan.run);
        const std::vector<Problem> problems = steps::yield(job, with, options, *input, plan);
        if (!problems.empty()) return problems;
    }
    steps::money(job, with, options.on, plan);
    steps::checks(job, with, plan);
    steps::aftercare(job, with, input ? &*input : nullptr, plan);
    steps::record_checks(job, plan);
    gather(plan);
    return plan;
}

}  // namespace wg::plan
