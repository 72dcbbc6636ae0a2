#pragma once
// How many cases a random sweep runs: all of them in a plain build, a tenth under sanitizers, which are that much
// slower. WG_SWEEP multiplies (tests/long.sh).

#include <cstdlib>

namespace wg::sweep {

#if defined(WG_SANITIZED)
inline constexpr int divisor = 10;
#else
inline constexpr int divisor = 1;
#endif

inline int cases(int full) {
    const char* more = std::getenv("WG_SWEEP");
    const int factor = more == nullptr ? 1 : std::atoi(more);
    return full / divisor * (factor > 0 ? factor : 1);
}

}  // namespace wg::sweep
