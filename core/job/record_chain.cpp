#include "core/job/record_chain.h"

#include <algorithm>
#include <set>

#include "core/job/codec.h"

namespace wg {

Reading chained(Reading entry, const std::vector<Reading>& record) {
    entry.previous_sha256 = record.empty() ? std::string() : record.back().sha256;
    entry.sha256 = reading_sha256(entry);
    return entry;
}

ChainReport check_chain(const std::vector<Reading>& record) {
    ChainReport report;
    std::set<std::string> seen;
    const auto broken = [&](std::size_t index, const char* what) {
        report.breaks.push_back({index, record[index].id, what});
    };
    for (std::size_t i = 0; i < record.size(); ++i) {
        const Reading& entry = record[i];
        if (entry.sha256.empty()) {
            if (report.chained > 0) {
                broken(i, "stands after chained entries and has no hash: it was put in, or its hash was taken out");
            } else {
                ++report.older;
            }
            continue;
        }
        if (reading_sha256(entry) != entry.sha256) {
            broken(i, "is not what was entered: its content and its hash do not belong together");
        }
        if (!entry.previous_sha256.empty() && seen.count(entry.previous_sha256) == 0) {
            broken(i, report.chained == 0 ? "names an entry before it that is gone"
                                          : "names an entry before it that is gone or was altered");
        }
        report.ends.erase(std::remove(report.ends.begin(), report.ends.end(), entry.previous_sha256),
                          report.ends.end());
        report.ends.push_back(entry.sha256);
        ++report.chained;
        seen.insert(entry.sha256);
        report.head = entry.sha256;
    }
    return report;
}

}  // namespace wg
