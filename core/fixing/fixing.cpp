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

/// Worst forces over all combinations, written into the points; which point and combination are the worst.
void judge(Worked& w) {
    const Use frame = w.ballast.worst();
    const bool counts = w.resistance.known() || w.ballast.holds;
    bool first = true;
    for (std::size_t i = 0; i < w.layout.points.size(); ++i) {
        FixingPoint& p = w.layout.points[i];
        p.resistance_pull_n = w.resistance.pull_n;
        p.resistance_shear_n = w.resistance.shear_n;
        std::size_t under = 0;
        bool seen = false;
        for (std::size_t k = 0; k < w.combined.combinations.size(); ++k) {
            const PointForce& f = w.combined.combinations[k].of_point[i];
            p.pull_n = std::max(p.pull_n, f.pull_n());
            p.push_n = std::max(p.push_n, f.push_n());
            p.shear_n = std::max(p.shear_n, f.along_n);
            const Use used = counts ? use_of(w.resistance, f.pull_n(), f.along_n) : Use{};
            if (seen && used.share <= p.utilisation) continue;
            seen = true;
            p.utilisation = used.share;
            p.held_by = used.by;
            under = k;
        }
        if (w.ballast.holds && frame.share >= p.utilisation) {
            p.utilisation = frame.share;
            p.held_by = frame.by;
        }
        if (!w.combined.combinations.empty()) p.worst_combination = w.combined.combinations[under].name;
        if (first || p.utilisation > w.worst_use) {
            first = false;
            w.worst_use = p.utilisation;
            w.worst_point = i;
            w.worst_combination = under;
        }
    }
}

}  // namespace

Outcome fix(const Input& input) {
    Outcome out;
    Worked w;
    w.layout = lay_points(input);
    w.loads = loads_of(input, w.layout);
    w.combined = combine(input, w.loads, w.layout);
    w.resistance = resistance_of(input.method, input.collector, input.rules);
    w.ballast = check_ballast(input, w.loads, w.layout);
    w.bending = bending_use(input, w.loads, w.layout, combinations_of(w.loads, input.rules));
    w.sag = sag_of(input, w.loads, w.layout);
    judge(w);
    out.worst_utilisation = w.worst_use;
    if (!w.layout.points.empty()) {
        out.worst_point = w.layout.points[w.worst_point].number;
        out.held_by = w.layout.points[w.worst_point].held_by;
    }
    out.wind = w.loads.wind;
    out.zone = w.loads.zone.zone_uplift;
    out.cpe_uplift = w.loads.zone.uplift;
    out.cpe_pressure = w.loads.zone.pressure;
    out.snow_n_m2 = w.loads.snow_n_m2;
    out.snow_slide_n = w.loads.slide.force_n;
    out.bending_use = w.bending;
    out.sag_use = w.sag.use;
    out.findings = check_fixing(input, w);
    out.workings = workings_of(input, w);
    out.points = std::move(w.layout.points);
    return out;
}

Hold hold_of(const Input& input) {
    Hold out;
    const Layout layout = lay_points(input);
    const auto& fits = input.method.coverings;
    const bool ballast = by_ballast(input.method);
    out.stopped = layout.points.size() < 2 ||
                  std::find(fits.begin(), fits.end(), input.surface.covering) == fits.end() ||
                  (ballast && (input.surface.tilt_deg > ballast_tilt_deg || !(input.method.ballast_kg > 0.0)));
    for (const FixingPoint& p : layout.points) {
        out.stopped =
            out.stopped || (layout.rafters_known && !p.on_rafter) || !site::contains(input.surface.outline, p.position);
    }
    if (out.stopped) return out;
    const Resistance resistance = resistance_of(input.method, input.collector, input.rules);
    if (!ballast && !resistance.known()) {
        out.stopped = true;
        return out;
    }
    const Loads loads = loads_of(input, layout);
    const std::vector<Factors> combinations = combinations_of(loads, input.rules);
    const Spread spread = spread_of(input, loads, layout);
    Action action;
    std::vector<PointForce> forces;
    for (const Factors& f : combinations) {
        point_forces(loads, layout, spread, f, action, forces);
        for (const PointForce& p : forces)
            out.worst_utilisation = std::max(out.worst_utilisation, use_of(resistance, p.pull_n(), p.along_n).share);
    }
    if (ballast) {
        const BallastCheck check = check_ballast(input, loads, layout);
        out.worst_utilisation = std::max(out.worst_utilisation, check.worst().share);
        out.stopped = ballast_overloads(input, check);
    }
    out.stopped = out.stopped || out.worst_utilisation > 1.0 || bending_use(input, loads, layout, combinations) > 1.0;
    return out;
}

}  // namespace wg::fixing
