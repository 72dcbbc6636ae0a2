#pragma once
// A version of something that is kept version by version, and what changed between two of them, as they are shown.

#include <QString>
#include <cstdint>
#include <functional>
#include <string>
#include <vector>

#include "core/quantity/result.h"

namespace wg::ui {

/// One of the list, which has the newest first.
struct KeptVersion {
    std::int64_t version = 0;
    std::string saved_at;  ///< ISO 8601, universal time
    std::string saved_by;
    QString note;
    bool withdrawn = false;
};

struct VersionChange {
    QString where, before, after;
};

/// What changed from one version to a later one.
using ChangesBetween = std::function<Result<std::vector<VersionChange>>(std::int64_t before, std::int64_t after)>;

/// Versions of a book that say why they were saved.
template <class Version>
[[nodiscard]] Result<std::vector<KeptVersion>> kept_versions(const Result<std::vector<Version>>& versions) {
    if (!versions.ok()) return versions.problems();
    std::vector<KeptVersion> out;
    out.reserve(versions.value().size());
    for (const Version& one : versions.value())
        out.push_back({one.version, one.saved_at, one.saved_by, QString::fromStdString(one.note), one.withdrawn});
    return out;
}

}  // namespace wg::ui
