#pragma once
// The advice on sizes in words, as pictures and as tables.

#include <QString>

#include "ui/yield/sizing_page.h"

namespace wg::ui {

[[nodiscard]] SetsPicture sets_of(const plan::SizingAdvice& advice, bool yearly);
[[nodiscard]] FacingPicture facing_of(const plan::FacingYields& yields, bool equator_south);
[[nodiscard]] WarmUpPicture warm_up_of(const plan::MonthsWarmUp& months);

[[nodiscard]] QString point_words(const plan::SizingPoint& point, const plan::SizingAdvice& advice);
[[nodiscard]] QString sets_words(const plan::SizingAdvice& advice);
[[nodiscard]] QString facing_words(const plan::FacingYields& yields);
[[nodiscard]] QString cell_words(const plan::FacingYield& cell);
[[nodiscard]] QString warm_up_words(const plan::MonthsWarmUp& months, const Demand& demand);

[[nodiscard]] FigureTable sets_figures(const plan::SizingAdvice& advice);
[[nodiscard]] FigureTable facing_figures(const plan::FacingYields& yields);
[[nodiscard]] FigureTable warm_up_figures(const plan::MonthsWarmUp& months);

}  // namespace wg::ui
