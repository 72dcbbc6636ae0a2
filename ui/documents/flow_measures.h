#pragma once
// Gaps and lettering that the blocks of a flow share.

#include "ui/documents/sheet.h"

namespace wg::ui::paper::measures {

inline constexpr double logo_width = 34.0 * mm;
inline constexpr double logo_height = 16.0 * mm;
inline constexpr double gap_small = 2.0 * mm;
inline constexpr double gap_block = 3.2 * mm;
inline constexpr double head_gap = 2.0 * mm;
inline constexpr double mark_height = 7.0 * mm;
inline constexpr double cell_pad = 1.0 * mm;
inline constexpr double row_pad = 0.55 * mm;
inline constexpr double sign_side = 10.0 * mm;
inline constexpr double notice_pad = 1.4 * mm;
inline constexpr double tick_side = 4.0 * mm;

/// Lettering of usual print; a flow letters with these as its sheet has them.
struct Type {
    Style body, small, reason, strong, title, heading, formula, subheading;
    explicit Type(const Sheet& sheet)
        : body(sheet.lettered({})),
          small(sheet.lettered({least_pt, false, false})),
          reason(sheet.lettered({least_pt, false, true})),
          strong(sheet.lettered({body_pt, true, false})),
          title(sheet.lettered({13.0, true, false})),
          heading(sheet.lettered({12.0, true, false})),
          formula(sheet.lettered({11.0, false, false})),
          subheading(sheet.lettered({10.0, true, false})) {}
};

}  // namespace wg::ui::paper::measures
