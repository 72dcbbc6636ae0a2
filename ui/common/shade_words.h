#pragma once
// The worst causes of shade as sentences.

#include <QString>
#include <cstddef>

#include "core/site/shade_period.h"

namespace wg::ui {

/// `period`: in place of "a year".
/// "Chimney: about 43 kWh/m² a year, most in December from 9:00 to 11:00".
[[nodiscard]] QString shade_cause_words(const site::ShadeCause& cause, const QString& period = {});

/// The worst `most` causes of at least half a kWh/m2 in one line, worst first; empty when there is none.
[[nodiscard]] QString shade_causes_words(const site::Shade& shade, std::size_t most, const QString& period = {});

/// "October to March"; "January, March and June" where the months do not follow on each other.
[[nodiscard]] QString months_words(const site::Months& months);

}  // namespace wg::ui
