#pragma once
// A study in words, as a picture and as a table.

#include <QString>

#include "core/plan/plan.h"
#include "core/plan/study.h"
#include "ui/drawing/tornado_painter.h"
#include "ui/yield/yield_page.h"

namespace wg::ui {

[[nodiscard]] QString measure_name(plan::Measure measure);
[[nodiscard]] QString measure_text(const plan::Study& study, plan::Measure measure, double value);
/// With its unit, "Electricity, kWh", and a value to go with that.
[[nodiscard]] QString measure_title(const plan::Study& study, plan::Measure measure);
[[nodiscard]] QString measure_number(plan::Measure measure, double value);
[[nodiscard]] QString factor_text(const plan::Factor& factor, double value);
[[nodiscard]] TornadoPicture tornado_of(const plan::Study& study, plan::Measure measure);
/// What was varied by how much, what matters most, and the plan's own quick range beside; `plan` may be null.
[[nodiscard]] QString range_words(const plan::Study& study, const plan::Plan* plan);
[[nodiscard]] FigureTable range_figures(const plan::Study& study);

}  // namespace wg::ui
