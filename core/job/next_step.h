#pragma once
// Who has to act next on a job, what is to be done, and since when it waits: from its state, its newest quote and the
// service that falls due first.

#include <optional>
#include <string>

#include "core/job/job.h"

namespace wg {

enum class NextStep {
    survey,         ///< the site has to be visited and measured
    plan,           ///< plan, then quote
    send_quote,     ///< offered, yet no quote stands
    await_answer,   ///< the client has a quote without an answer
    after_refusal,  ///< the client declined: a new quote, or close the job
    fit,            ///< the client accepted
    hand_over,      ///< fitted: readings, signatures
    service,        ///< a service is due
    nothing,        ///< until a day, or for good
};

/// Every step but `await_answer` and `nothing` is the firm's.
enum class WaitsFor { firm, client, nobody };
[[nodiscard]] WaitsFor waits_for(NextStep step) noexcept;

/// What a list knows of a job without reading it whole.
struct JobStanding {
    JobState state = JobState::visit;
    std::string reached_on;      ///< ISO 8601 date on which the job came into its state
    std::string quoted_on;       ///< of the newest quote; empty: none was issued
    std::string answer;          ///< the last to the newest quote: "accepted", "declined", "withdrawn"; empty: none
    std::string answered_on;     ///< its day
    std::string service_due_on;  ///< of the service that falls due first; empty: none
};

struct NextStepOfJob {
    NextStep step = NextStep::nothing;
    std::string since;  ///< ISO 8601 date since when it waits; of `nothing`: until when, empty for good
    friend bool operator==(const NextStepOfJob&, const NextStepOfJob&) = default;
};

/// `today`: ISO 8601 date. A survey, a plan and a hand-over wait since the job came into its state, an answer since the
/// quote was issued, fitting since the acceptance was given (since the state was reached where none was entered), a
/// service since its day.
[[nodiscard]] NextStepOfJob next_step(const JobStanding& standing, const std::string& today);

}  // namespace wg
