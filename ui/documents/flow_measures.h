#pragma once
// Gaps and lettering that the blocks of a flow share.

#include "ui/documents/sheet.h"

namespace wg::ui::paper::measures {

inline constexpr double gap_small = 2.0 * mm;
inline constexpr double gap_block = 4.0 * mm;
inline constexpr double head_gap = 3.0 * mm;
inline constexpr double mark_height = 7.0 * mm;
inline constexpr double cell_pad = 1.0 * mm;
inline constexpr double row_pad = 1.2 * mm;
inline constexpr double sign_side = 11.0 * mm;
inline constexpr double notice_pad = 1.6 * mm;
inline constexpr double tick_side = 4.0 * mm;
inline const Style body{};
inline const Style small{least_pt, false, false};
inline const Style strong{body_pt, true, false};
inline const Style title_style{13.0, true, false};
inline const Style heading_style{12.0, true, false};
inline const Style formula_style{11.0, false, false};
inline const Style subheading_style{10.0, true, false};

}  // namespace wg::ui::paper::measures
