// The bands of figures 7.5 to 7.9 on one plane.
#include <algorithm>
#include <cmath>

#include "core/fixing/zones.h"
#include "core/site/geometry.h"

namespace wg::fixing {
namespace {

using tables::Coefficient;

constexpr double far_m = 1e9;  ///< a zone without an end on that side runs on beyond the plane

/// Collects zones as the standard draws them for wind on one side of the plane, turned to the side they are for.
class Zones {
   public:
    Zones(double width_m, double depth_m) : width_m_(width_m), depth_m_(depth_m) { out.reserve(24); }

    /// The side that the wind comes from is y = 0 of what is added next.
    void side(WindOn from) { from_ = from; }
    /// Width of the plane along that side, and its depth away from it.
    [[nodiscard]] double width_m() const noexcept { return across() ? width_m_ : depth_m_; }
    [[nodiscard]] double depth_m() const noexcept { return across() ? depth_m_ : width_m_; }

    void add(const char* zone, double x0, double x1, double y0, double y1, Coefficient c) {
        ZoneRect r{x0, x1, y0, y1};
        switch (from_) {
            case WindOn::any:
            case WindOn::lower: break;
            case WindOn::upper: r = {x0, x1, depth_m_ - y1, depth_m_ - y0}; break;
            case WindOn::left: r = {y0, y1, x0, x1}; break;
            case WindOn::right: r = {width_m_ - y1, width_m_ - y0, x0, x1}; break;
        }
        out.push_back({zone, from_, r, c});
    }
    /// Strip along the side: F at its ends, G between.
    void add_eaves(double e, Coefficient f, Coefficient g) {
        add("F", -far_m, e / 4.0, -far_m, e / 10.0, f);
        add("F", width_m() - e / 4.0, far_m, -far_m, e / 10.0, f);
        add("G", e / 4.0, width_m() - e / 4.0, -far_m, e / 10.0, g);
    }

    std::vector<ZoneBand> out;

   private:
    [[nodiscard]] bool across() const noexcept { return from_ != WindOn::left && from_ != WindOn::right; }
    double width_m_, depth_m_;
    WindOn from_ = WindOn::any;
};

void duo_pitch(Zones& z, double pitch, ZoneWidths widths) {
    z.side(WindOn::lower);
    const double e = widths.across_m;
    z.add_eaves(e, tables::duo_across('F', pitch), tables::duo_across('G', pitch));
    z.add("H", -far_m, far_m, e / 10.0, far_m, tables::duo_across('H', pitch));
    z.side(WindOn::upper);  // over the ridge: this plane is the lee one, its ridge the near edge
    z.add("J", -far_m, far_m, -far_m, e / 10.0, tables::duo_across('J', pitch));
    z.add("I", -far_m, far_m, e / 10.0, far_m, tables::duo_across('I', pitch));
    const double along_e = widths.along_m;
    for (const WindOn from : {WindOn::left, WindOn::right}) {
        z.side(from);  // x runs up the slope now
        z.add("F", -far_m, along_e / 4.0, -far_m, along_e / 10.0, tables::duo_along('F', pitch));
        z.add("G", along_e / 4.0, far_m, -far_m, along_e / 10.0, tables::duo_along('G', pitch));
        z.add("H", -far_m, far_m, along_e / 10.0, along_e / 2.0, tables::duo_along('H', pitch));
        z.add("I", -far_m, far_m, along_e / 2.0, far_m, tables::duo_along('I', pitch));
    }
}

void mono_pitch(Zones& z, double pitch, ZoneWidths widths) {
    z.side(WindOn::lower);
    const double e = widths.across_m, depth = z.depth_m();
    z.add_eaves(e, tables::duo_across('F', pitch), tables::duo_across('G', pitch));
    z.add("H", -far_m, far_m, e / 10.0, far_m, tables::duo_across('H', pitch));
    z.side(WindOn::upper);
    z.add_eaves(e, tables::mono_high('F', pitch), tables::mono_high('G', pitch));
    z.add("H", -far_m, far_m, e / 10.0, far_m, tables::mono_high('H', pitch));
    const double along_e = widths.along_m;
    for (const WindOn from : {WindOn::left, WindOn::right}) {
        z.side(from);
        z.add("Fup", depth - along_e / 4.0, far_m, -far_m, along_e / 10.0, tables::mono_across('U', pitch));
        z.add("Flow", -far_m, along_e / 4.0, -far_m, along_e / 10.0, tables::mono_across('L', pitch));
        z.add("G", along_e / 4.0, depth - along_e / 4.0, -far_m, along_e / 10.0, tables::mono_across('G', pitch));
        z.add("H", -far_m, far_m, along_e / 10.0, along_e / 2.0, tables::mono_across('H', pitch));
        z.add("I", -far_m, far_m, along_e / 2.0, far_m, tables::mono_across('I', pitch));
    }
}

/// Figure 7.9 on one plane of a hip roof, along its real eaves, hips and ridge. A verge counts as a hip; a valley,
/// which the figure does not know, has no strip.
void hip(Zones& z, const Surface& surface, ZoneWidths widths) {
    const double pitch = surface.tilt_deg, shrink = plan_shrink(surface);
    const site::Bounds b = site::bounds_of(surface.outline);
    const double turn = site::signed_area_m2(surface.outline) < 0.0 ? -1.0 : 1.0;
    const double e = widths.across_m, strip = e / 10.0, side_strip = widths.along_m / 10.0;
    const double width = b.width_m(), depth = b.height_m() * shrink;
    const auto in_plan = [&](Point2 p) { return Point2{p.x_m - b.min_x_m, (p.y_m - b.min_y_m) * shrink}; };
    const auto open = [](double at, double end, double to) { return std::abs(at - end) < 1e-6 ? to : at; };
    z.side(WindOn::any);
    const auto all = [&](const char* zone, WindOn on, double x0, double x1, double y0, double y1) {
        z.out.push_back({zone, on, {x0, x1, y0, y1}, tables::hip(*zone, pitch)});
    };
    all("H", WindOn::lower, -far_m, far_m, strip, far_m);
    all("I", WindOn::upper, -far_m, far_m, -far_m, far_m);
    all("M", WindOn::left, -far_m, widths.along_m / 2.0, -far_m, far_m);
    all("N", WindOn::left, widths.along_m / 2.0, far_m, -far_m, far_m);
    all("M", WindOn::right, width - widths.along_m / 2.0, far_m, -far_m, far_m);
    all("N", WindOn::right, -far_m, width - widths.along_m / 2.0, -far_m, far_m);
    const std::size_t n = surface.outline.size();
    for (std::size_t i = 0; i < n; ++i) {
        const Point2 p = in_plan(surface.outline[i]), q = in_plan(surface.outline[(i + 1) % n]);
        const double length = std::hypot(q.x_m - p.x_m, q.y_m - p.y_m);
        if (length < site::touch_m) continue;
        const double nx = turn * (q.y_m - p.y_m) / length, ny = -turn * (q.x_m - p.x_m) / length;  // outward
        const double x0 = std::min(p.x_m, q.x_m), x1 = std::max(p.x_m, q.x_m);
        const double y0 = std::min(p.y_m, q.y_m), y1 = std::max(p.y_m, q.y_m);
        constexpr double level = 0.985;  // within 10 deg
        if (ny < -level) {
            const double from = open(x0, 0.0, -far_m), to = open(x1, width, far_m), low = open(y0, 0.0, -far_m);
            all("F", WindOn::lower, from, x0 + e / 4.0, low, y1 + strip);
            all("F", WindOn::lower, x1 - e / 4.0, to, low, y1 + strip);
            all("G", WindOn::lower, x0 + e / 4.0, x1 - e / 4.0, low, y1 + strip);
        } else if (ny > level) {
            all("K", WindOn::upper, x0 - strip, x1 + strip, y0 - strip, open(y1, depth, far_m));
        } else if (ny > -0.1) {
            const auto along = [&](const char* zone, WindOn on, double wide) {
                ZoneBand band{zone,
                              on,
                              {-far_m, far_m, open(y0 - wide, -wide, -far_m), open(y1 + wide, depth + wide, far_m)},
                              tables::hip(*zone, pitch),
                              true,
                              {-nx, -ny, wide - nx * p.x_m - ny * p.y_m}};
                z.out.push_back(band);
            };
            along("J", WindOn::upper, strip);
            along("L", nx < 0.0 ? WindOn::left : WindOn::right, side_strip);
        }
    }
}

void flat(Zones& z, const Body& body) {
    const double h = body.height_m, parapet = h > 0.0 ? body.parapet_m / h : 0.0;
    for (const WindOn from : {WindOn::lower, WindOn::upper, WindOn::left, WindOn::right}) {
        z.side(from);
        const double e = std::min(z.width_m(), 2.0 * h);
        z.add_eaves(e, tables::flat('F', parapet), tables::flat('G', parapet));
        z.add("H", -far_m, far_m, e / 10.0, e / 2.0, tables::flat('H', parapet));
        z.add("I", -far_m, far_m, e / 2.0, far_m, tables::flat('I', parapet));
    }
}

void wall(Zones& z, const Body& body, double e) {
    const double over_depth = body.across_m > 0.0 ? body.height_m / body.across_m : 1.0;
    for (const WindOn from : {WindOn::left, WindOn::right}) {
        z.side(from);
        z.add("A", -far_m, far_m, -far_m, e / 5.0, tables::wall('A'));
        z.add("B", -far_m, far_m, e / 5.0, e, tables::wall('B'));
        z.add("C", -far_m, far_m, e, far_m, tables::wall('C'));
    }
    z.side(WindOn::any);
    z.add("D", -far_m, far_m, -far_m, far_m, tables::wall('D', over_depth));
    z.add("E", -far_m, far_m, -far_m, far_m, tables::wall('E', over_depth));
}

}  // namespace

ZoneWidths zone_widths(const Surface& surface, const Body& body) {
    const site::Bounds b = site::bounds_of(surface.outline);
    const double width = std::max(b.width_m(), body.along_m), depth = b.height_m() * plan_shrink(surface);
    const double reach = 2.0 * body.height_m;
    const auto along = [&](double own) {
        return std::min(body.across_m > 0.0 ? std::max(body.across_m, depth) : own, reach);
    };
    switch (zone_kind(surface)) {
        case ZoneKind::none: break;
        case ZoneKind::wall: {
            const double e = body.across_m > 0.0 ? std::min(body.across_m, reach) : reach;
            return {e, e};
        }
        case ZoneKind::flat: return {std::min(b.width_m(), reach), std::min(depth, reach)};
        case ZoneKind::mono_pitch: return {std::min(width, reach), along(depth)};
        case ZoneKind::hip: {
            // Wind on the hip ends: a plane without a ridge does not tell how long the building is.
            const bool ridge =
                b.max_y_m - b.min_y_m > 0.0 && std::count_if(surface.outline.begin(), surface.outline.end(),
                                                             [&](Point2 p) { return p.y_m > b.max_y_m - 1e-3; }) > 1;
            return {std::min(width, reach), along(ridge ? 2.0 * depth : reach)};
        }
        case ZoneKind::duo_pitch: return {std::min(width, reach), along(2.0 * depth)};
    }
    return {};
}

std::vector<ZoneBand> zone_bands(const Surface& surface, const Body& body) {
    const site::Bounds b = site::bounds_of(surface.outline);
    Zones zones(b.width_m(), b.height_m() * plan_shrink(surface));
    const ZoneWidths widths = zone_widths(surface, body);
    switch (zone_kind(surface)) {
        case ZoneKind::none: break;
        case ZoneKind::hip: hip(zones, surface, widths); break;
        case ZoneKind::wall: wall(zones, body, widths.across_m); break;
        case ZoneKind::flat: flat(zones, body); break;
        case ZoneKind::mono_pitch: mono_pitch(zones, surface.tilt_deg, widths); break;
        case ZoneKind::duo_pitch: duo_pitch(zones, surface.tilt_deg, widths); break;
    }
    return std::move(zones.out);
}

}  // namespace wg::fixing
