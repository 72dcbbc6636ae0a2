#pragma once
// The worst causes of shade as sentences.

#include <QString>
#include <cstddef>

#include "core/site/shade.h"

namespace wg::ui {

/// "Chimney: about 43 kWh/m² a year, most in December from 9:00 to 11:00".
[[nodiscard]] QString shade_cause_words(const site::ShadeCause& cause);

/// The worst `most` causes of at least half a kWh/m2 in one line, worst first; empty when there is none.
[[nodiscard]] QString shade_causes_words(const site::Shade& shade, std::size_t most);

}  // namespace wg::ui
