#include "core/job/next_step.h"

namespace wg {
namespace {

// Planned or offered: what matters is the newest quote.
NextStepOfJob step_of_quote(const JobStanding& standing) {
    if (standing.quoted_on.empty())
        return {standing.state == JobState::offered ? NextStep::send_quote : NextStep::plan, standing.reached_on};
    if (standing.answer.empty()) return {NextStep::await_answer, standing.quoted_on};
    if (standing.answer == "accepted") return {NextStep::fit, standing.answered_on};
    if (standing.answer == "declined") return {NextStep::after_refusal, standing.answered_on};
    return {NextStep::send_quote, standing.answered_on};  // withdrawn
}

}  // namespace

WaitsFor waits_for(NextStep step) noexcept {
    switch (step) {
        case NextStep::await_answer: return WaitsFor::client;
        case NextStep::nothing: return WaitsFor::nobody;
        case NextStep::survey:
        case NextStep::plan:
        case NextStep::send_quote:
        case NextStep::after_refusal:
        case NextStep::fit:
        case NextStep::hand_over:
        case NextStep::service: break;
    }
    return WaitsFor::firm;
}

NextStepOfJob next_step(const JobStanding& standing, const std::string& today) {
    switch (standing.state) {
        case JobState::visit: return {NextStep::survey, standing.reached_on};
        case JobState::planning:
        case JobState::offered: return step_of_quote(standing);
        case JobState::accepted:
            return {NextStep::fit, standing.answer == "accepted" ? standing.answered_on : standing.reached_on};
        case JobState::fitted: return {NextStep::hand_over, standing.reached_on};
        case JobState::in_service:
            // ISO dates sort as their texts do.
            if (!standing.service_due_on.empty() && standing.service_due_on <= today)
                return {NextStep::service, standing.service_due_on};
            return {NextStep::nothing, standing.service_due_on};
        case JobState::closed: break;
    }
    return {NextStep::nothing, {}};
}

}  // namespace wg
