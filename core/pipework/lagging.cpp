#include "core/pipework/lagging.h"

#include <algorithm>
#include <array>

#include "core/pipework/tube.h"

namespace wg::pipework {
namespace {

// Ends of the range for the heat gain: foams of the trade at 0 deg C, still and moving air (ISO 12241 annex, rounded).
constexpr std::array<Lagging, 2> ends{{{0.033, 6.0}, {0.040, 14.0}}};

struct Ambient {
    double indoor_m, outdoor_m, room_c;
};

double gain_w(double ua_per_m, double tube_c, double outdoor_c, const Ambient& a) noexcept {
    return ua_per_m * (a.indoor_m * (a.room_c - tube_c) + a.outdoor_m * (outdoor_c - tube_c));
}

using TubeTemperature = double (*)(const BlockModel&, const PointLines&) noexcept;

LineLagging line_of(const Lagged& lagged, const BlockModel& block, const std::vector<PointLines>& points,
                    const Air& air, double rating_c, double od_mm, TubeTemperature temperature) {
    LineLagging out;
    double coldest = 1e9, mean = 0.0, weight = 0.0;
    for (const PointLines& p : points) {
        if (!p.known) continue;
        // Where the line is coldest: at the collector's end, which has the evaporating temperature.
        const double c = temperature == &suction_line_c || block.expansion == ExpansionPlace::block
                             ? p.at.evaporating_c
                             : temperature(block, p);
        coldest = std::min(coldest, c);
        mean += p.at.weight * c;
        weight += p.at.weight;
    }
    const bool known = weight > 0.0;
    out.tube_indoor_c = known ? coldest : rating_c;
    out.tube_outdoor_c = known ? mean / weight : rating_c;
    const Lagging foam;
    const auto wall = [&](double tube_c, double air_c, double humidity, bool applies) {
        if (!applies || tube_c >= dew_point_c(air_c, humidity)) return 0.0;
        const double mm = lagging_against_dew_mm(od_mm, tube_c, air_c, humidity, foam);
        if (face_temperature_c(od_mm, mm, tube_c, air_c, foam) < dew_point_c(air_c, humidity)) out.stays_dry = false;
        return mm;
    };
    const bool both = !lagged.passage_known;
    out.indoor_mm = wall(out.tube_indoor_c, air.room_c, air.room_humidity, both || lagged.indoor_m > 0.0);
    out.outdoor_mm = wall(out.tube_outdoor_c, air.outdoor_c, air.outdoor_humidity, both || lagged.outdoor_m > 0.0);
    out.wall_mm = std::max(out.indoor_mm, out.outdoor_mm);
    const double length_m = lagged.indoor_m + lagged.outdoor_m;
    out.ua_w_k = length_m * heat_per_metre_w_mk(od_mm, out.wall_mm, foam);
    const Ambient ambient{lagged.indoor_m, lagged.outdoor_m, air.room_c};
    bool first = true;
    for (const PointLines& p : points) {
        if (!p.known) continue;
        const double tube_c = temperature(block, p);
        out.gain_w += p.at.weight / weight *
                      gain_w(heat_per_metre_w_mk(od_mm, out.wall_mm, foam), tube_c, p.at.outdoor_c, ambient);
        for (const Lagging& end : ends) {
            const double g = gain_w(heat_per_metre_w_mk(od_mm, out.wall_mm, end), tube_c, p.at.outdoor_c, ambient);
            out.gain_low_w = first ? g : std::min(out.gain_low_w, g);
            out.gain_high_w = first ? g : std::max(out.gain_high_w, g);
            first = false;
        }
    }
    return out;
}

}  // namespace

double small_line_c(const BlockModel& block, const PointLines& point) noexcept {
    return block.expansion == ExpansionPlace::block ? 0.5 * (point.at.evaporating_c + point.small_inlet_c)
                                                    : point.liquid_c;
}

double suction_line_c(const BlockModel& block, const PointLines& point) noexcept {
    return point.at.evaporating_c + block.superheat_k;
}

Lagged lag(const std::vector<Leg>& legs, const BlockModel& block, const std::vector<PointLines>& points, const Air& air,
           double rating_c) {
    Lagged out;
    for (const Leg& leg : legs)
        (leg.outdoors ? out.outdoor_m : out.indoor_m) += leg.length_m;
    out.passage_known = out.indoor_m > 0.0;
    out.suction = line_of(out, block, points, air, rating_c, block.suction_od_mm, &suction_line_c);
    if (block.expansion == ExpansionPlace::block ||
        std::any_of(points.begin(), points.end(), [](const PointLines& p) { return p.known; })) {
        out.small = line_of(out, block, points, air, rating_c, block.liquid_od_mm, &small_line_c);
    }
    return out;
}

}  // namespace wg::pipework
