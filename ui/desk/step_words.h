#pragma once
// What is to be done next on a job, in words of the desk.

#include <QDate>
#include <QString>

#include "core/job/next_step.h"

namespace wg::ui {

[[nodiscard]] QString step_name(NextStep step);  ///< "Survey the site"
/// With how long it waits: "Answer awaited, 12 days"; of a service to come its day: "Service on 3 May 2028".
[[nodiscard]] QString step_words(const NextStepOfJob& next, const QDate& today);
/// The same with the day since when it waits: "Answer awaited since 12 May 2027".
[[nodiscard]] QString step_words_with_day(const NextStepOfJob& next);

}  // namespace wg::ui
