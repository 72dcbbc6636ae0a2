#include "core/fixing/arrange.h"

#include <algorithm>
#include <cmath>
#include <numeric>

#include "core/fixing/layout_place.h"
#include "core/quantity/constants.h"
#include "core/site/vec.h"

namespace wg::fixing {
namespace {

using site::operator+;
using site::operator-;
using site::operator*;

double middle_x(const site::Bounds& b) {
    return 0.5 * (b.min_x_m + b.max_x_m);
}
double middle_y(const site::Bounds& b) {
    return 0.5 * (b.min_y_m + b.max_y_m);
}

}  // namespace

std::vector<Move> aligning_moves(const std::vector<site::Bounds>& plates, Align to) {
    std::vector<Move> moves(plates.size());
    if (plates.empty()) return moves;
    site::Bounds all = plates.front();
    for (const site::Bounds& b : plates) {
        all.min_x_m = std::min(all.min_x_m, b.min_x_m);
        all.max_x_m = std::max(all.max_x_m, b.max_x_m);
        all.min_y_m = std::min(all.min_y_m, b.min_y_m);
        all.max_y_m = std::max(all.max_y_m, b.max_y_m);
    }
    for (std::size_t i = 0; i < plates.size(); ++i) {
        const site::Bounds& b = plates[i];
        switch (to) {
            case Align::left: moves[i].right_m = all.min_x_m - b.min_x_m; break;
            case Align::right: moves[i].right_m = all.max_x_m - b.max_x_m; break;
            case Align::upper: moves[i].up_m = all.max_y_m - b.max_y_m; break;
            case Align::lower: moves[i].up_m = all.min_y_m - b.min_y_m; break;
            case Align::middles_upright: moves[i].right_m = middle_x(all) - middle_x(b); break;
            case Align::middles_level: moves[i].up_m = middle_y(all) - middle_y(b); break;
        }
    }
    return moves;
}

std::optional<std::vector<Move>> distributing_moves(const std::vector<site::Bounds>& plates, Along along) {
    if (plates.size() < 3) return std::nullopt;
    const bool level = along == Along::level;
    const auto low = [&](std::size_t i) { return level ? plates[i].min_x_m : plates[i].min_y_m; };
    const auto high = [&](std::size_t i) { return level ? plates[i].max_x_m : plates[i].max_y_m; };
    std::vector<std::size_t> order(plates.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::stable_sort(order.begin(), order.end(),
                     [&](std::size_t a, std::size_t b) { return low(a) + high(a) < low(b) + high(b); });
    double free_m = low(order.back()) - high(order.front());
    for (std::size_t i = 1; i + 1 < order.size(); ++i)
        free_m -= high(order[i]) - low(order[i]);
    const double gap_m = free_m / static_cast<double>(order.size() - 1);
    if (gap_m < -site::touch_m) return std::nullopt;
    std::vector<Move> moves(plates.size());
    double at = high(order.front()) + gap_m;
    for (std::size_t i = 1; i + 1 < order.size(); ++i) {
        const std::size_t plate = order[i];
        (level ? moves[plate].right_m : moves[plate].up_m) = at - low(plate);
        at += high(plate) - low(plate) + gap_m;
    }
    return moves;
}

Row row_beside(const Site& site, const Choice& choice, const CollectorModel& model, const Placement& first, int count,
               double gap_m) {
    Row out;
    Neighbourhood round = neighbourhood_of(site, choice, model, first);
    if (round.surface == nullptr || count < 1) return out;
    const site::PlacedCollector placed = site::place(*round.surface, site.sketch_up_azimuth_deg, first, model);
    const std::vector<Point2>& plate = placed.outline;
    round.others.push_back({&first, plate});
    // Bearings run clockwise, the plane's angles counter-clockwise.
    const double along = first.frame_tilt_deg ? radians(round.surface->azimuth_deg - placed.azimuth_deg) : 0.0;
    const Point2 level{std::cos(along), std::sin(along)};
    const auto reach = [&](Point2 p) { return site::dot(p, level); };
    const auto [from, to] =
        std::minmax_element(plate.begin(), plate.end(), [&](Point2 a, Point2 b) { return reach(a) < reach(b); });
    const double step = reach(*to) - reach(*from) + gap_m;
    const double strip = std::min(gap_m, model.clearance_m);
    const Point2 middle{first.x_m, first.y_m};
    std::vector<Point2> moved = plate;
    // How many fit one after the other on a side; the first that does not fit ends the row.
    const auto run = [&](double direction, bool with_strip) {
        int fit = 0;
        for (; fit < count; ++fit) {
            for (std::size_t i = 0; i < plate.size(); ++i)
                moved[i] = plate[i] + level * (direction * step * (fit + 1));
            if (!keeps_hard_rules(round, moved) || (with_strip && !keeps_free_strip(round, moved, strip))) break;
        }
        return fit;
    };
    for (const bool with_strip : {true, false}) {
        const int right = run(1.0, with_strip), left = run(-1.0, with_strip);
        out.room_for = std::max(out.room_for, std::min(count, right + left));
        if (right + left < count) continue;
        const int to_right = right >= count ? count : left >= count ? 0 : right;
        for (int i = 1; i <= to_right; ++i)
            out.middles.push_back(middle + level * (step * i));
        for (int i = 1; i <= count - to_right; ++i)
            out.middles.push_back(middle - level * (step * i));
        return out;
    }
    return out;
}

}  // namespace wg::fixing
