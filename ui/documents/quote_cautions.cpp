// Which findings a client reads on a quote.

#include <algorithm>
#include <iterator>
#include <string_view>

#include "ui/documents/papers.h"

namespace wg::ui::paper {
namespace {

// Health, the house itself, and what the figures of the quote rest on. Codes as core gives them.
constexpr std::string_view of_concern[] = {
    "water.legionella",
    "water.single-wall-condenser",
    "water.lime",
    "water.low-pressure-at-tap",
    "hygiene.not-reached",
    "hygiene.upper-part-only",
    "holidays.no-hygiene-run",
    "room.",
    "spot.floor-load-assumed",
    "comfort.shortfall",
    "heater.large-share",
    "collector.shaded",
    "pump.beyond-data",
    "weather.far",
    "weather.other-height",
};
/// A note, and yet nobody should learn of it by hand. What to set the valve to is the fitter's business.
constexpr std::string_view scald = "water.scald";

bool concerns_client(const Finding& finding) {
    // Frozen before the code was kept: as it was told then.
    if (finding.code.empty()) return finding.stage != Stage::fitting;
    return std::any_of(std::begin(of_concern), std::end(of_concern), [&finding](std::string_view code) {
        // A code that ends in a point stands for all that begin with it.
        return code.back() == '.' ? finding.code.rfind(code, 0) == 0 : finding.code == code;
    });
}

}  // namespace

std::vector<Finding> findings_for_client(const std::vector<Finding>& findings) {
    std::vector<Finding> out;
    for (const Finding& finding : findings) {
        if (finding.severity == Severity::stop || (finding.severity == Severity::caution && concerns_client(finding))) {
            out.push_back(finding);
        } else if (finding.code == scald) {
            out.push_back(finding);
            out.back().remedy.clear();
        }
    }
    return out;
}

}  // namespace wg::ui::paper
