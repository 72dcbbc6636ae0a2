#include "core/equipment/compressor_data.h"

#include <algorithm>
#include <cstddef>

namespace wg {
namespace {

// Limits of a sheet are whole degrees, and the last step of the search for an operating point may be this far off.
constexpr double rounding_k = 0.02;

}  // namespace

CompressorData::Span CompressorData::evaporating() const noexcept {
    if (range.empty()) return {evaporating_min_c, evaporating_max_c};
    Span span{range.front().evaporating_c, range.front().evaporating_c};
    for (const CompressorState& corner : range) {
        span.least_c = std::min(span.least_c, corner.evaporating_c);
        span.most_c = std::max(span.most_c, corner.evaporating_c);
    }
    return span;
}

CompressorData::Span CompressorData::condensing_at(double evaporating_c) const noexcept {
    if (range.empty()) return {condensing_min_c, condensing_max_c};
    const Span allowed = evaporating();
    const double te = std::clamp(evaporating_c, allowed.least_c, allowed.most_c);
    Span span{condensing_max_c, condensing_min_c};
    for (std::size_t i = 0; i < range.size(); ++i) {
        const CompressorState& a = range[i];
        const CompressorState& b = range[(i + 1) % range.size()];
        if (te < std::min(a.evaporating_c, b.evaporating_c) || te > std::max(a.evaporating_c, b.evaporating_c))
            continue;
        const double across = b.evaporating_c - a.evaporating_c;
        if (across == 0.0) {
            span.least_c = std::min({span.least_c, a.condensing_c, b.condensing_c});
            span.most_c = std::max({span.most_c, a.condensing_c, b.condensing_c});
            continue;
        }
        const double tc = a.condensing_c + (te - a.evaporating_c) / across * (b.condensing_c - a.condensing_c);
        span.least_c = std::min(span.least_c, tc);
        span.most_c = std::max(span.most_c, tc);
    }
    return span;
}

bool CompressorData::covers(double evaporating_c, double condensing_c) const noexcept {
    const Span te = evaporating();
    if (!(evaporating_c >= te.least_c - rounding_k && evaporating_c <= te.most_c + rounding_k)) return false;
    const Span tc = condensing_at(evaporating_c);
    return condensing_c >= tc.least_c - rounding_k && condensing_c <= tc.most_c + rounding_k;
}

}  // namespace wg
