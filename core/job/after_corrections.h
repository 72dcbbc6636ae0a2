#pragma once
// Append-only lists as they stand: a correction takes the place of what it names.

#include <algorithm>
#include <vector>

namespace wg {

/// `Entry` has `id` and `corrects_id`. A correction names an entry that was there before it and keeps its place, so
/// that pairs stay pairs; one that names anything else stands for itself, so that no circle of corrections makes
/// entries vanish. Of several corrections of one entry the last in the list counts.
template <class Entry>
[[nodiscard]] std::vector<Entry> after_corrections(const std::vector<Entry>& entries) {
    std::vector<Entry> out;
    out.reserve(entries.size());
    for (const Entry& entry : entries) {
        const auto named =
            entry.corrects_id.empty()
                ? out.end()
                : std::find_if(out.begin(), out.end(), [&](const Entry& e) { return e.id == entry.corrects_id; });
        if (named == out.end()) {
            out.push_back(entry);
        } else {
            *named = entry;
        }
    }
    return out;
}

}  // namespace wg
