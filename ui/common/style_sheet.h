#pragma once
// The program's own look as a Qt style sheet, made from a theme's colours.

#include <QString>

#include "ui/common/theme.h"

namespace wg::ui {

/// Smallest height of anything that is clicked or tapped, in pixels.
inline constexpr int touch_height = 36;

[[nodiscard]] QString style_sheet(const Theme& theme);

}  // namespace wg::ui
