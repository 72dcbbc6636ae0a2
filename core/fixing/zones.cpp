#include "core/fixing/zones.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "core/fixing/fixing.h"
#include "core/quantity/constants.h"
#include "core/site/geometry.h"

namespace wg::fixing {
namespace {

using tables::Coefficient;

/// Convex outline in plan, cut by one half plane after the other (Sutherland and Hodgman 1974).
struct CutPlate {
    std::array<Point2, 12> corners;
    std::size_t count = 0;

    /// Keeps where x times a, plus y times b, is no more than `to`.
    void cut(double a, double b, double to) {
        std::array<Point2, 12> kept;
        std::size_t n = 0;
        for (std::size_t i = 0; i < count; ++i) {
            const Point2 p = corners[i], q = corners[i + 1 < count ? i + 1 : 0];
            const double dp = to - a * p.x_m - b * p.y_m, dq = to - a * q.x_m - b * q.y_m;
            if (dp >= 0.0 && n < kept.size()) kept[n++] = p;
            if ((dp >= 0.0) != (dq >= 0.0) && n < kept.size()) {
                const double t = dp / (dp - dq);
                kept[n++] = {p.x_m + (q.x_m - p.x_m) * t, p.y_m + (q.y_m - p.y_m) * t};
            }
        }
        corners = kept;
        count = n;
    }
};

/// Reached when the plate lies in it by more than a touch: rounding must not tell left from right.
bool reaches(const PlanPlate& plate, const ZoneBand& band) {
    const ZoneRect& r = band.rect;
    if (!(plate.min_x < r.x1 - site::touch_m && plate.max_x > r.x0 + site::touch_m &&
          plate.min_y < r.y1 - site::touch_m && plate.max_y > r.y0 + site::touch_m))
        return false;
    if (plate.upright && !band.slants) return true;
    CutPlate left;
    for (const Point2 c : plate.corners)
        left.corners[left.count++] = c;
    left.cut(1.0, 0.0, r.x1 - site::touch_m);
    left.cut(-1.0, 0.0, -r.x0 - site::touch_m);
    left.cut(0.0, 1.0, r.y1 - site::touch_m);
    left.cut(0.0, -1.0, -r.y0 - site::touch_m);
    if (band.slants) left.cut(band.slant.x, band.slant.y, band.slant.to_m - site::touch_m);
    return left.count > 0;
}

bool at_edge(const char* zone) noexcept {
    return *zone == 'F' || *zone == 'G' || *zone == 'J' || *zone == 'K' || *zone == 'L' || *zone == 'A';
}

class Worst {
   public:
    explicit Worst(double area_m2) : area_m2_(area_m2) {}
    void meet(const char* zone, Coefficient c) {
        const double up = pressure_by_area(c.suction_1, c.suction_10, area_m2_);
        const double down = pressure_by_area(c.pressure_1, c.pressure_10, area_m2_);
        out.edge = out.edge || at_edge(zone);
        if (first_ || up < out.uplift) {
            out.uplift = std::min(0.0, up);
            out.zone_uplift = zone;
            out.uplift_from = c;
        }
        if (first_ || down > out.pressure) {
            out.pressure = std::max(0.0, down);
            out.zone_pressure = zone;
            out.pressure_from = c;
        }
        first_ = false;
    }
    ZoneForce out;

   private:
    double area_m2_;
    bool first_ = true;
};

ZonePressure in_words(const ZoneForce& f) {
    return {f.zone_uplift, f.zone_pressure, f.uplift, f.pressure, ""};
}

constexpr double flat_below_deg = 5.0;
constexpr double wall_above_deg = 75.0;

}  // namespace

double building_height_m(const Surface& surface, double sketch_up_azimuth_deg) {
    if (surface.ridge_height_m > 0.0) return surface.ridge_height_m;
    const site::Frame frame = site::frame_of(surface, sketch_up_azimuth_deg);
    double highest = surface.origin.z_m;
    for (const Point2 p : surface.outline)
        highest = std::max(highest, site::to_space(frame, p).z_m);
    return highest;
}

Body body_of(const Site& site, const Surface& surface) {
    Body body(building_height_m(surface, site.sketch_up_azimuth_deg));
    const Building* building = building_of_edge(site, surface.footprint_edge_id);
    if (building == nullptr || building->edges.size() < 3) return body;
    if (zone_kind(surface) == ZoneKind::flat) body.parapet_m = std::max(0.0, building->parapet_m);
    const Point3 right = site::frame_of(surface, site.sketch_up_azimuth_deg).right;
    double low_x = 1e9, high_x = -1e9, low_y = 1e9, high_y = -1e9;
    for (const FootprintEdge& edge : building->edges) {
        const double x = edge.from.x_m * right.x_m + edge.from.y_m * right.y_m;
        const double y = edge.from.y_m * right.x_m - edge.from.x_m * right.y_m;
        low_x = std::min(low_x, x);
        high_x = std::max(high_x, x);
        low_y = std::min(low_y, y);
        high_y = std::max(high_y, y);
    }
    body.along_m = high_x - low_x;
    body.across_m = high_y - low_y;
    return body;
}

double plan_shrink(const Surface& surface) {
    return surface.kind == SurfaceKind::wall ? 1.0 : std::cos(radians(surface.tilt_deg));
}

ZoneKind zone_kind(const Surface& surface) {
    if (surface.kind == SurfaceKind::terrace || surface.kind == SurfaceKind::ground) return ZoneKind::none;
    if (surface.kind == SurfaceKind::wall || surface.tilt_deg > wall_above_deg) return ZoneKind::wall;
    if (surface.roof_form == RoofForm::flat || surface.tilt_deg < flat_below_deg) return ZoneKind::flat;
    if (surface.roof_form == RoofForm::mono_pitch) return ZoneKind::mono_pitch;
    return surface.roof_form == RoofForm::hip ? ZoneKind::hip : ZoneKind::duo_pitch;
}

std::string zone_table(ZoneKind kind) {
    switch (kind) {
        case ZoneKind::none: break;
        case ZoneKind::wall: return "EN 1991-1-4 table 7.1, walls; from memory";
        case ZoneKind::flat: return "EN 1991-1-4 table 7.2, flat roofs";
        case ZoneKind::mono_pitch: return "EN 1991-1-4 tables 7.3a and b, mono-pitch roofs; from memory";
        case ZoneKind::hip: return "EN 1991-1-4 table 7.5, hip roofs; from memory";
        case ZoneKind::duo_pitch: return "EN 1991-1-4 tables 7.4a and b, duo-pitch roofs";
    }
    return "";
}

PlanPlate plan_plate(const Surface& surface, const std::array<Point2, 4>& in_plane) {
    const site::Bounds b = site::bounds_of(surface.outline);
    const double shrink = plan_shrink(surface);
    PlanPlate out;
    out.min_x = out.min_y = 1e9;
    out.max_x = out.max_y = -1e9;
    for (std::size_t i = 0; i < 4; ++i) {
        const Point2 p{in_plane[i].x_m - b.min_x_m, (in_plane[i].y_m - b.min_y_m) * shrink};
        out.corners[i] = p;
        out.min_x = std::min(out.min_x, p.x_m);
        out.max_x = std::max(out.max_x, p.x_m);
        out.min_y = std::min(out.min_y, p.y_m);
        out.max_y = std::max(out.max_y, p.y_m);
    }
    for (std::size_t i = 0; i < 4; ++i) {
        const Point2 p = out.corners[i], q = out.corners[(i + 1) % 4];
        out.upright = out.upright && std::min(std::abs(q.x_m - p.x_m), std::abs(q.y_m - p.y_m)) < site::touch_m;
    }
    return out;
}

ZoneForce force_in(const std::vector<ZoneBand>& bands, const PlanPlate& plate, double area_m2) {
    Worst worst(area_m2);
    for (const ZoneBand& band : bands) {
        if (reaches(plate, band)) worst.meet(band.zone, band.coefficient);
    }
    return worst.out;
}

ZonePressure pressure_in(const std::vector<ZoneBand>& bands, const ZoneRect& r, double area_m2) {
    const PlanPlate plate{{Point2{r.x0, r.y0}, {r.x1, r.y0}, {r.x1, r.y1}, {r.x0, r.y1}}, r.x0, r.x1, r.y0, r.y1, true};
    return in_words(force_in(bands, plate, area_m2));
}

ZonePressure zone_pressure(const Surface& surface, const Body& body, const std::vector<Point2>& plate, double area_m2) {
    std::array<Point2, 4> corners;
    if (plate.size() == 4) {
        std::copy(plate.begin(), plate.end(), corners.begin());
    } else {
        const site::Bounds b = site::bounds_of(plate);
        corners = {
            Point2{b.min_x_m, b.min_y_m}, {b.max_x_m, b.min_y_m}, {b.max_x_m, b.max_y_m}, {b.min_x_m, b.max_y_m}};
    }
    ZonePressure out = in_words(force_in(zone_bands(surface, body), plan_plate(surface, corners), area_m2));
    out.table = zone_table(zone_kind(surface));
    return out;
}

}  // namespace wg::fixing
