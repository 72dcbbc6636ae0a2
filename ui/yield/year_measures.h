#pragma once
// What the Year page can show month by month, as a picture, as words for the whole year, and as a table.

#include <QString>

#include "core/plan/plan.h"
#include "ui/drawing/bars_painter.h"

namespace wg::ui {

enum class YearMeasure { sources, electricity, supply, whither, below_wanted, hours, starts, factor };
inline constexpr int year_measures = 8;

[[nodiscard]] QString name_of(YearMeasure measure);
/// Heat to the water for each kWh of electricity, a month; not a number when no electricity was used.
[[nodiscard]] double factor_of(const season::MonthSums& month);

/// One row of figures behind the picture.
struct YearSeries {
    QString name;  ///< as in the legend
    QString key;   ///< as in the figures file, with the unit
    double (*of)(const season::MonthSums&) = nullptr;
    bool line = false;  ///< over the bars, not part of them
};
/// Terms that are nothing all year are left out, the first ones stay.
[[nodiscard]] std::vector<YearSeries> series_of(YearMeasure measure, const season::Year& year);
[[nodiscard]] QString unit_of(YearMeasure measure);
[[nodiscard]] int decimals_of(YearMeasure measure);
[[nodiscard]] BarsPicture year_picture(YearMeasure measure, const season::Year& year, const Theme& theme);
/// The whole year in words.
[[nodiscard]] QString year_words(YearMeasure measure, const plan::Plan& plan);

}  // namespace wg::ui
