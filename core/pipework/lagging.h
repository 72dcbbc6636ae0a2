#pragma once
// Lagging of both lines: thickness against dew indoors and out, and what heat comes through it.

#include <vector>

#include "core/pipework/legs.h"
#include "core/pipework/lines.h"

namespace wg::pipework {

/// Air round the lines for the question of dew. Both humidities and the outdoor air are assumed.
struct Air {
    double room_c = 25.0;
    double room_humidity = 0.75;
    double outdoor_c = 25.0;  ///< a damp summer's day: the worst at which a plate still evaporates near 0 deg C
    double outdoor_humidity = 0.75;
};

struct LineLagging {
    double indoor_mm = 0.0;  ///< thinnest usual wall without dew on its face
    double outdoor_mm = 0.0;
    double wall_mm = 0.0;         ///< to buy: the thicker of those that the run has; 0: needs none
    bool stays_dry = true;        ///< false: the thickest usual wall does not do it
    double tube_indoor_c = 0.0;   ///< coldest that the tube gets, for indoor_mm
    double tube_outdoor_c = 0.0;  ///< in the middle of the year, for outdoor_mm
    double ua_w_k = 0.0;
    // Heat gained (negative: lost) by the whole line: mean over the points; least and most of the points with
    // conductivity and surface coefficient at the ends of their usual range.
    double gain_w = 0.0, gain_low_w = 0.0, gain_high_w = 0.0;
};

struct Lagged {
    double indoor_m = 0.0, outdoor_m = 0.0;
    bool passage_known = true;  ///< false: no roof or wall passage is drawn, both airs are taken for the whole run
    LineLagging small, suction;
};

/// Temperature of each line at a point: small line between device and collector, suction line with its superheat.
[[nodiscard]] double small_line_c(const BlockModel& block, const PointLines& point) noexcept;
[[nodiscard]] double suction_line_c(const BlockModel& block, const PointLines& point) noexcept;

/// `points` may hold unknown ones; `rating_c` stands in when all are.
[[nodiscard]] Lagged lag(const std::vector<Leg>& legs, const BlockModel& block, const std::vector<PointLines>& points,
                         const Air& air, double rating_c);

}  // namespace wg::pipework
