#pragma once
// An edit that is tried against the job's own rules first, so that a bad value never gets into the job.

#include <QString>
#include <functional>

#include "core/job/job.h"

namespace wg::ui {

/// Applies `change` to a copy and validates it. Returns what is newly wrong with it, in words; empty: nothing, and
/// the verb may be called. Faults that the job had before do not block other fields.
[[nodiscard]] QString refusal(const Job& job, const std::function<void(Job&)>& change);

}  // namespace wg::ui
