#pragma once
// Parts of the survey sheet about the house beside its shape: load, supplies, taps, rooms. What is known is printed,
// what is not leaves a line or a cell to write in.

#include "core/job/job.h"
#include "ui/documents/flow.h"

namespace wg::ui::paper {

/// "hill or ridge, 20 m high, ..."; "level ground".
[[nodiscard]] QString hill_words(const Hill& hill);
void loads_table(Flow& flow, const Site& site);
void electrics_block(Flow& flow, const Electrics& electrics);
void water_block(Flow& flow, const WaterSupply& water);
void rooms_table(Flow& flow, const Site& site);
/// What can hurt during a survey, once.
[[nodiscard]] std::vector<Flow::Notice> survey_warnings();

}  // namespace wg::ui::paper
