#include "core/commissioning/attempts.h"

#include <algorithm>

namespace wg::commissioning {
namespace {

/// An entry that no verdict rests on, as long as it corrects none.
bool changes_nothing(const Reading& entry) {
    switch (entry.kind) {
        case ReadingKind::remark:
        case ReadingKind::serial_number:
        case ReadingKind::signature:
        case ReadingKind::photograph:
        case ReadingKind::hold_point:
        case ReadingKind::service_done: return entry.corrects_id.empty();
        default: return false;
    }
}

bool goes_on(const Attempt& before, const Assessment& now) {
    return before.subject == now.subject && !before.reading_ids.empty() && !now.reading_ids.empty() &&
           before.reading_ids.front() == now.reading_ids.front() &&
           (before.verdict == now.verdict || before.verdict == Verdict::cannot_tell);
}

}  // namespace

std::vector<Attempt> attempts(const std::vector<Reading>& record, const Expected& expected) {
    std::vector<Attempt> all;
    std::vector<Reading> until;
    for (std::size_t i = 0; i < record.size(); ++i) {
        until.push_back(record[i]);
        if (changes_nothing(record[i])) continue;
        for (const Assessment& now : assess(until, expected)) {
            const auto newest =
                std::find_if(all.rbegin(), all.rend(), [&](const Attempt& one) { return one.subject == now.subject; });
            if (newest != all.rend() && newest->reading_ids == now.reading_ids && newest->verdict == now.verdict &&
                newest->words == now.words) {
                continue;
            }
            if (newest != all.rend() && goes_on(*newest, now)) {
                *newest = {now.subject, now.verdict, now.words, now.reading_ids, i};
            } else {
                all.push_back({now.subject, now.verdict, now.words, now.reading_ids, i});
            }
        }
    }
    return all;
}

}  // namespace wg::commissioning
