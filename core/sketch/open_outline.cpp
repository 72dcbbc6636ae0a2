#include "core/sketch/open_outline.h"

#include "core/quantity/outline.h"

namespace wg::sketch {

std::optional<std::size_t> crossed_edge(const std::vector<Point2>& drawn, const Point2& next) {
    if (drawn.size() < 2) return std::nullopt;
    const Point2& last = drawn.back();
    const std::size_t before = drawn.size() - 2;
    for (std::size_t i = 0; i < before; ++i)
        if (segments_meet(drawn[i], drawn[i + 1], last, next)) return i;
    if (turns_back(drawn[before], last, next)) return before;
    return std::nullopt;
}

}  // namespace wg::sketch
