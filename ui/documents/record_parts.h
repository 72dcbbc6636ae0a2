#pragma once
// Parts of the record on paper.

#include <vector>

#include "ui/documents/papers.h"

namespace wg::ui::paper {

/// Verdicts with what they rest on, curves, bands, and tests that were made again.
void record_verdicts(Flow& flow, const SharedInput& input);
/// Every entry in the order of the record; what was corrected is struck through and names what took its place.
void record_entries(Flow& flow, const PaperInput& input);
/// Photographs of the record and of the job, as thumbnails where their bytes are at hand.
void record_photographs(Flow& flow, const PaperInput& input);
void record_signatures(Flow& flow, const PaperInput& input);
/// State of the chain of entries, its head, and how both are checked.
void record_chain(Flow& flow, const PaperInput& input);

/// "3fa907b2 11c0..." in groups of eight.
[[nodiscard]] QString hash_in_groups(const std::string& sha256);
/// Number of the entry in the record from 1; 0: not in it.
[[nodiscard]] std::size_t entry_number(const std::vector<Reading>& record, const std::string& id);

}  // namespace wg::ui::paper
