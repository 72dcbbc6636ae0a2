#pragma once
// What is to be done next on a job, in words of the desk.

#include <QString>

#include "core/job/next_step.h"

namespace wg::ui {

[[nodiscard]] QString step_name(NextStep step);  ///< "Survey the site"
/// With the day since when it waits: "Answer awaited since 12 May 2027".
[[nodiscard]] QString step_words(const NextStepOfJob& next);

}  // namespace wg::ui
