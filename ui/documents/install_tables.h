#pragma once
// Tables of the install sheet.

#include "ui/documents/documents.h"
#include "ui/documents/flow.h"

namespace wg::ui::paper {

/// Every fixing point on the surface: from which edges, how far, what it stands on and what it carries.
void set_out_table(Flow& flow, const PaperInput& input, const Surface& surface);
void values_table(Flow& flow, const PaperInput& input);
void cut_list(Flow& flow, const PaperInput& input);
void spot_table(Flow& flow, const PaperInput& input);
/// Parts and tools to load, with boxes to tick.
void load_list(Flow& flow, const PaperInput& input);
/// Extra charge, or "none".
[[nodiscard]] QString extra_words(const plan::Plan& plan);
/// Expected values with blanks for what was read.
void readings_table(Flow& flow, const PaperInput& input);
/// What the client is shown and given, to tick.
void hand_over_list(Flow& flow, const PaperInput& input);

}  // namespace wg::ui::paper
