#include "ui/window/stage_marks.h"

#include <QCoreApplication>
#include <algorithm>

namespace wg::ui {
namespace {

QString words(const char* text) {
    return QCoreApplication::translate("StageMark", text);
}

StageMark visit_mark(const Job& job) {
    const bool anything = !job.client.name.empty() || !job.site.surfaces.empty() || !job.site.spots.empty();
    QStringList missing;
    if (job.client.name.empty()) missing.append(words("the client's name"));
    if (job.survey.visited_on.empty()) missing.append(words("the day of the visit"));
    if (job.site.surfaces.empty()) missing.append(words("a roof, wall, terrace or ground"));
    if (job.site.spots.empty()) missing.append(words("a spot for the cylinder"));
    if (missing.isEmpty()) return {Mark::ready, words("surveyed")};
    return {anything ? Mark::begun : Mark::empty, words("missing: %1").arg(missing.join(QStringLiteral(", ")))};
}

StageMark layout_mark(const Job& job, const plan::Plan* plan) {
    if (job.choices.empty()) return {Mark::empty, words("no choice yet")};
    const bool placed = std::any_of(job.choices.begin(), job.choices.end(),
                                    [](const Choice& choice) { return !choice.placements.empty(); });
    if (!placed) return {Mark::begun, words("no collector placed yet")};
    return {plan != nullptr ? Mark::ready : Mark::begun, plan != nullptr ? words("placed") : words("not planned yet")};
}

StageMark yield_mark(const plan::Plan* plan) {
    // A quick plan right after an edit carries the earlier year along: the mark must not flicker meanwhile.
    const bool has_year = plan != nullptr && (plan->has_yield || plan->figures.heat_kwh.mid > 0.0);
    return has_year ? StageMark{Mark::ready, words("calculated")}
                    : StageMark{Mark::empty, words("no year calculated yet")};
}

StageMark offer_mark(const Job& job, const plan::Plan* plan) {
    if (job.state >= JobState::offered) return {Mark::ready, words("quoted")};
    if (plan != nullptr && plan->quote) return {Mark::begun, words("priced, not issued")};
    return {Mark::empty, words("no price yet")};
}

StageMark fitting_mark(const Job& job, const plan::Plan* plan) {
    if (job.record.empty()) return {Mark::empty, words("no readings yet")};
    if (plan == nullptr || plan->assessments.empty()) return {Mark::begun, words("readings begun")};
    const auto count = [&](commissioning::Verdict verdict) {
        return std::count_if(plan->assessments.begin(), plan->assessments.end(),
                             [verdict](const commissioning::Assessment& a) { return a.verdict == verdict; });
    };
    if (count(commissioning::Verdict::failed) > 0) return {Mark::stop, words("a reading failed")};
    if (count(commissioning::Verdict::cannot_tell) > 0) return {Mark::begun, words("readings incomplete")};
    return {Mark::ready, words("all readings passed")};
}

StageMark aftercare_mark(const Job& job) {
    if (job.state >= JobState::in_service) return {Mark::ready, words("in service")};
    if (job.state == JobState::fitted) return {Mark::begun, words("fitted, not handed over")};
    return {Mark::empty, words("not fitted yet")};
}

}  // namespace

std::array<StageMark, stage_count> stage_marks(const Job& job, const plan::Plan* plan) {
    std::array<StageMark, stage_count> marks = {visit_mark(job),       layout_mark(job, plan),  yield_mark(plan),
                                                offer_mark(job, plan), fitting_mark(job, plan), aftercare_mark(job)};
    if (plan == nullptr) return marks;
    std::array<int, stage_count> stops{};
    for (const Finding& finding : plan->findings) {
        if (finding.severity == Severity::stop) ++stops[static_cast<std::size_t>(finding.stage)];
    }
    for (std::size_t i = 0; i < marks.size(); ++i) {
        if (stops[i] == 0) continue;
        marks[i] = {Mark::stop, stops[i] == 1 ? words("has a stop") : words("has %1 stops").arg(stops[i])};
    }
    return marks;
}

QString stage_title(int stage) {
    switch (static_cast<Stage>(stage)) {
        case Stage::visit: return words("Visit");
        case Stage::layout: return words("Layout");
        case Stage::yield: return words("Yield");
        case Stage::offer: return words("Offer");
        case Stage::fitting: return words("Fitting");
        case Stage::aftercare: return words("Aftercare");
    }
    return {};
}

}  // namespace wg::ui
