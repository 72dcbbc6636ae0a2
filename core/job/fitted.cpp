#include "core/job/fitted.h"

#include <algorithm>

#include "core/job/after_corrections.h"
#include "core/quantity/time.h"

namespace wg {
namespace {

// "collector 2" is a collector.
bool is_of(const std::string& part, const std::string& kind) {
    return part == kind ||
           (part.size() > kind.size() && part.compare(0, kind.size(), kind) == 0 && part[kind.size()] == ' ');
}

struct MainPart {
    const char* kind;
    const std::string& item_id;
};

}  // namespace

std::vector<FittedPart> fitted_parts(const Job& job) {
    const Choice* chosen = chosen_choice(job);
    const Choice choice = chosen != nullptr ? *chosen : Choice{};
    const MainPart main_parts[] = {
        {"collector", choice.collector_model}, {"block", choice.block_model}, {"cylinder", choice.cylinder_model}};
    std::vector<FittedPart> out;
    for (const Reading& entry : after_corrections(job.record)) {
        if (entry.kind != ReadingKind::serial_number || entry.note.empty()) continue;
        FittedPart part{entry.id, entry.subject, {}, entry.note, entry.taken_at.substr(0, 10), {}};
        if (!date_from_iso8601(part.fitted_on)) part.fitted_on.clear();
        for (const MainPart& one : main_parts) {
            if (is_of(part.part, one.kind)) part.item_id = one.item_id;
        }
        const auto before = std::find_if(out.rbegin(), out.rend(), [&part](const FittedPart& one) {
            return !part.part.empty() && one.part == part.part;
        });
        if (before != out.rend()) {
            if (before->serial == part.serial) continue;
            before->replaced_on = part.fitted_on;
        }
        out.push_back(std::move(part));
    }
    const bool stands = job.state == JobState::fitted || job.state == JobState::in_service ||
                        (job.state == JobState::closed && !job.record.empty());
    if (!stands) return out;
    for (const MainPart& one : main_parts) {
        const bool named =
            std::any_of(out.begin(), out.end(), [&one](const FittedPart& part) { return is_of(part.part, one.kind); });
        if (!named && !one.item_id.empty()) out.push_back({{}, one.kind, one.item_id, {}, {}, {}});
    }
    return out;
}

}  // namespace wg
