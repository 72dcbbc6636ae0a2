#pragma once
// A fresh job with what can be known without asking.

#include <string>

#include "core/job/job.h"
#include "core/plan/reference.h"
#include "core/quantity/time.h"

namespace wg::ui {

/// Takes the first climate of the reference, `rule_set` (empty: the first one), the price list for new jobs, and the
/// climate's place as the first guess of the location. No surfaces, no choices.
[[nodiscard]] Job new_job(const plan::Reference& reference, const std::string& number, Instant now,
                          const std::string& rule_set = {});

}  // namespace wg::ui
