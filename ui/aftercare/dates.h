#pragma once
// Dates of core as Qt's and as people read them.

#include <QDate>
#include <QString>
#include <optional>

#include "core/quantity/time.h"

namespace wg::ui {

[[nodiscard]] QDate qdate(CivilDate date);
[[nodiscard]] CivilDate civil(const QDate& date);
[[nodiscard]] CivilDate today_civil();
/// "4 Nov 2027"; an em dash without a date.
[[nodiscard]] QString date_words(const std::optional<CivilDate>& date);

}  // namespace wg::ui
