#pragma once
// How far each stage of a job is, from the job and its plan. No widgets here.

#include <QString>
#include <array>

#include "core/job/job.h"
#include "core/plan/plan.h"
#include "ui/common/mark.h"

namespace wg::ui {

inline constexpr int stage_count = 6;

struct StageMark {
    Mark mark = Mark::empty;  ///< empty, begun, ready or stop
    QString why;              ///< in words, e.g. "no cylinder spot yet"
};

/// In the order of wg::Stage. `plan` may be null.
[[nodiscard]] std::array<StageMark, stage_count> stage_marks(const Job& job, const plan::Plan* plan);

/// "Visit", "Layout", ...
[[nodiscard]] QString stage_title(int stage);

}  // namespace wg::ui
