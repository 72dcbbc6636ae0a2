#include "core/findings/finding.h"

#include <algorithm>
#include <tuple>

namespace wg {

const char* word(Severity severity) noexcept {
    switch (severity) {
        case Severity::stop: return "stop";
        case Severity::caution: return "caution";
        case Severity::note: return "note";
    }
    return "note";
}

const char* word(Stage stage) noexcept {
    switch (stage) {
        case Stage::visit: return "Visit";
        case Stage::layout: return "Layout";
        case Stage::yield: return "Yield";
        case Stage::offer: return "Offer";
        case Stage::fitting: return "Fitting";
        case Stage::aftercare: return "Aftercare";
    }
    return "Visit";
}

void sort_findings(std::vector<Finding>& findings) {
    std::stable_sort(findings.begin(), findings.end(), [](const Finding& a, const Finding& b) {
        const auto key = [](const Finding& f) {
            return std::make_tuple(-static_cast<int>(f.severity), static_cast<int>(f.stage), std::cref(f.code),
                                   std::cref(f.place_id));
        };
        return key(a) < key(b);
    });
}

bool has_stop(const std::vector<Finding>& findings) noexcept {
    return std::any_of(findings.begin(), findings.end(), [](const Finding& f) { return f.severity == Severity::stop; });
}

}  // namespace wg
