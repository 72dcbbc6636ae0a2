#pragma once
// The one place where numbers become text for people. Values come in SI; units stand in the result.

#include <QString>
#include <string>

#include "core/plan/plan.h"
#include "core/quantity/money.h"

namespace wg::ui {

[[nodiscard]] inline QString qs(const std::string& text) {
    return QString::fromStdString(text);
}

/// "1 234.5 kWh": fixed decimals; a narrow no-break space (U+202F) between thousands and before the unit, so a figure
/// never breaks over two lines; the true minus sign. NaN and infinity become an em dash, never digits.
[[nodiscard]] QString quantity(double value, const QString& unit, int decimals = 0);
/// Without unit, for table cells.
[[nodiscard]] QString number(double value, int decimals = 0);
[[nodiscard]] QString length_m(double value_m);   ///< "12.40 m"
[[nodiscard]] QString length_mm(double value_m);  ///< "1 240 mm", for set-out on site
[[nodiscard]] QString temperature(double value_c, int decimals = 0);
[[nodiscard]] QString percent(double share, int decimals = 0);
[[nodiscard]] QString bearing(double azimuth_deg);  ///< "172 deg SSE" with the degree sign
[[nodiscard]] QString money(Money amount, const QString& currency);
/// Words of core with the signs of their units: "0.65 kN/m2" and "20 deg C" are plain letters there.
[[nodiscard]] QString with_signs(QString core_words);
[[nodiscard]] inline QString with_signs(const std::string& core_words) {
    return with_signs(qs(core_words));
}
/// "+12" or "−12" with the unit; empty when the rounded figure is zero or not a number: no news is no text.
[[nodiscard]] QString difference(double value, const QString& unit, int decimals = 0);
[[nodiscard]] QString money_difference(Money amount, const QString& currency);
/// "1 job", "12 jobs": `one` and `many` are the words with %1 for the figure.
[[nodiscard]] QString counted(int count, const QString& one, const QString& many);
/// "21 June 2027" of an ISO 8601 date or instant (instants in the machine's zone); the text itself when unreadable.
[[nodiscard]] QString day(const std::string& iso8601_text);
/// "about 1 240 kWh (1 080 to 1 390)"; without the bracket when low and high round to the same figure.
[[nodiscard]] QString ranged(const plan::Ranged& value, const QString& unit, int decimals = 0);

}  // namespace wg::ui
