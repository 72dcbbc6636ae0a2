#include "core/fixing/fixing.h"

#include <algorithm>
#include <cmath>
#include <optional>

#include "core/fixing/loads.h"
#include "core/quantity/constants.h"
#include "core/quantity/text.h"
#include "core/site/vec.h"

namespace wg::fixing {

Layout lay_points(const Input& input) {
    Layout out;
    const CollectorModel& model = input.collector;
    out.plate.length_m = model.length_m;
    out.plate.width_m = model.width_m;
    const std::vector<double> rafters =
        input.method.needs_rafters ? site::rafter_lines(input.surface) : std::vector<double>{};
    out.rafters_known = !rafters.empty();
    const bool on_frame = input.placement.frame_tilt_deg.has_value();
    const double turn = radians(input.placement.turn_deg);
    const double turn_cos = std::cos(turn), turn_sin = std::sin(turn);
    const std::size_t n = std::min(model.fixing_points.size(), input.placed.fixing_points.size());
    for (std::size_t i = 0; i < n; ++i) {
        FixingPoint p;
        p.number = input.first_number + static_cast<int>(i);
        p.placement_id = input.placement.id;
        p.nominal = p.position = input.placed.fixing_points[i];
        Point2 own = model.fixing_points[i];
        if (input.placement.hand == Hand::left) own.x_m = model.length_m - own.x_m;
        out.plate.nominal.push_back(own);
        std::optional<double> nearest, usable;
        Point2 moved = own;
        for (const double line : rafters) {
            const double offset = line - p.nominal.x_m;
            if (!nearest || std::abs(offset) < std::abs(*nearest)) nearest = offset;
            if (std::abs(offset) > snap_reach_m) continue;
            // The rail ends with the plate: a point cannot follow a rafter beyond it. Feet of a frame can.
            const Point2 shift = on_frame ? Point2{} : site::turned({offset, 0.0}, turn_cos, -turn_sin);
            const Point2 at{own.x_m + shift.x_m, own.y_m + shift.y_m};
            const bool within = at.x_m >= -site::touch_m && at.x_m <= model.length_m + site::touch_m &&
                                at.y_m >= -site::touch_m && at.y_m <= model.width_m + site::touch_m;
            if (within && (!usable || std::abs(offset) < std::abs(*usable))) {
                usable = offset;
                moved = at;
            }
        }
        if (usable) {
            p.on_rafter = true;
            p.position.x_m += *usable;
            own = moved;
        }
        p.rafter_offset_m = usable ? *usable : nearest.value_or(0.0);
        out.plate.points.push_back(own);
        const std::vector<site::EdgeOffset> edges = site::nearest_two_edges(input.surface.outline, p.position);
        if (!edges.empty()) p.edge_a = edges[0];
        if (edges.size() > 1) p.edge_b = edges[1];
        out.points.push_back(std::move(p));
    }
    out.shares = even_load_shares(out.plate);
    return out;
}

namespace {

/// Worst forces over all combinations, written into the points.
struct Worst {
    double utilisation = 0.0;
    int point = 0;
};
Worst judge(Layout& layout, const Combined& combined, const Resistance& resistance) {
    Worst worst;
    for (std::size_t i = 0; i < layout.points.size(); ++i) {
        FixingPoint& p = layout.points[i];
        p.resistance_pull_n = resistance.pull_n;
        p.resistance_shear_n = resistance.shear_n;
        for (const Combination& c : combined.combinations) {
            const PointForce& f = c.of_point[i];
            const double pull = std::max(0.0, f.extra_n - f.normal_n), push = std::max(0.0, f.extra_n + f.normal_n);
            p.pull_n = std::max(p.pull_n, pull);
            p.push_n = std::max(p.push_n, push);
            p.shear_n = std::max(p.shear_n, f.along_n);
            const double used = utilisation(resistance, pull, f.along_n);
            if (p.worst_combination.empty() || used > p.utilisation) {
                p.utilisation = used;
                p.worst_combination = c.name;
            }
        }
        if (worst.point == 0 || p.utilisation > worst.utilisation) {
            worst.utilisation = p.utilisation;
            worst.point = p.number;
        }
    }
    return worst;
}

}  // namespace

Outcome fix(const Input& input) {
    Outcome out;
    const Loads loads = loads_of(input);
    Layout layout = lay_points(input);
    const Combined combined = combine(input, loads, layout);
    const Resistance resistance = resistance_of(input.method, input.rules);
    const Worst worst = judge(layout, combined, resistance);
    out.worst_utilisation = worst.utilisation;
    out.worst_point = worst.point;
    out.wind = loads.wind;
    out.zone = loads.zone.zone_uplift;
    out.cpe_uplift = loads.zone.uplift;
    out.cpe_pressure = loads.zone.pressure;
    out.snow_n_m2 = loads.snow_n_m2;
    out.findings = check_fixing(input, loads, layout, combined, resistance);
    out.workings = workings_of(input, loads, layout, resistance);
    out.points = std::move(layout.points);
    return out;
}

Hold hold_of(const Input& input) {
    Hold out;
    Layout layout = lay_points(input);
    const auto& fits = input.method.coverings;
    out.stopped = layout.points.size() < 2 || std::find(fits.begin(), fits.end(), input.surface.covering) == fits.end();
    for (const FixingPoint& p : layout.points) {
        out.stopped =
            out.stopped || (layout.rafters_known && !p.on_rafter) || !site::contains(input.surface.outline, p.position);
    }
    if (out.stopped) return out;
    const Resistance resistance = resistance_of(input.method, input.rules);
    out.stopped = !(resistance.pull_n > 0.0) || !(resistance.shear_n > 0.0);
    out.worst_utilisation = judge(layout, combine(input, loads_of(input), layout), resistance).utilisation;
    out.stopped = out.stopped || out.worst_utilisation > 1.0;
    return out;
}

}  // namespace wg::fixing
