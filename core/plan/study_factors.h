#pragma once
// What a study varies: distribution, limits, ground and where each factor goes in. Inside core/plan.

#include <functional>
#include <vector>

#include "core/economy/economy.h"
#include "core/plan/study.h"
#include "core/season/season.h"

namespace wg::plan::detail {

/// What a year of operation and its cost are worked out from; factors change a copy.
struct Member {
    season::Input input;
    economy::Tariffs tariffs;
};

enum class Shape {
    normal,      ///< `step` is added at the ninetieth percentile
    log_normal,  ///< multiplied by `step` at the ninetieth percentile, divided at the tenth
};

struct FactorRule {
    Factor factor;
    Shape shape = Shape::normal;
    double step = 0.0;
    double least = 0.0, most = 0.0;  ///< what the year of operation takes
    std::function<void(Member&, double value)> apply;
    /// At a probability in (0, 1), within the limits.
    [[nodiscard]] double value(double probability) const;
    [[nodiscard]] bool limited(double probability) const;
};

/// So many times the water drawn: the one place that knows what a household's draw-off hangs on.
void scale_draw(Demand& demand, double by) noexcept;

/// All but the weather year. `sky_measured`: the year's file has the sky's long-wave.
[[nodiscard]] std::vector<FactorRule> factor_rules(const Member& nominal, bool sky_measured);

}  // namespace wg::plan::detail
