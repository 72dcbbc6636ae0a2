#pragma once
// Tables of the install sheet.

#include "ui/documents/documents.h"
#include "ui/documents/flow.h"

namespace wg::ui::paper {

/// Every fixing point on the surface: from which edges, how far, what it stands on and what it carries.
/// False where none is worked out.
bool set_out_table(Flow& flow, const PaperInput& input, const Surface& surface);
/// How the points are fixed, and how the table is read.
void set_out_words(Flow& flow, const PaperInput& input);
void cut_list(Flow& flow, const PaperInput& input);
void spot_table(Flow& flow, const PaperInput& input);
/// Parts and tools to load, with boxes to tick.
void load_list(Flow& flow, const PaperInput& input);
/// Expected values with blanks for what was read.
void readings_table(Flow& flow, const PaperInput& input);
/// How long the first heating takes in good and poor weather.
void warm_up_times(Flow& flow, const PaperInput& input);
/// What the client is shown and given, to tick.
void hand_over_list(Flow& flow, const PaperInput& input);

}  // namespace wg::ui::paper
