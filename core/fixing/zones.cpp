#include "core/fixing/zones.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "core/fixing/fixing.h"
#include "core/fixing/zone_tables.h"
#include "core/quantity/constants.h"
#include "core/site/geometry.h"

namespace wg::fixing {
namespace {

using tables::Coefficient;

/// The plate's bounding rectangle in plan, from the lower left corner of the plane's bounding rectangle, and the
/// plane's.
struct Plan {
    double x0, x1, y0, y1;    ///< plate
    double width_m, depth_m;  ///< plane
    // A zone is reached when the plate lies in it by more than a touch: rounding must not tell left from right.
    [[nodiscard]] bool within_x(double from, double to) const noexcept {
        return x0 < to - site::touch_m && x1 > from + site::touch_m;
    }
    [[nodiscard]] bool within_y(double from, double to) const noexcept {
        return y0 < to - site::touch_m && y1 > from + site::touch_m;
    }
    [[nodiscard]] Plan mirrored_x() const noexcept { return {width_m - x1, width_m - x0, y0, y1, width_m, depth_m}; }
    [[nodiscard]] Plan mirrored_y() const noexcept { return {x0, x1, depth_m - y1, depth_m - y0, width_m, depth_m}; }
    [[nodiscard]] Plan swapped() const noexcept { return {y0, y1, x0, x1, depth_m, width_m}; }
};

Plan plan_of(const Surface& surface, const std::vector<Point2>& plate) {
    const site::Bounds b = site::bounds_of(surface.outline), p = site::bounds_of(plate);
    const double shrink = surface.kind == SurfaceKind::wall ? 1.0 : std::cos(radians(surface.tilt_deg));
    return {p.min_x_m - b.min_x_m,
            p.max_x_m - b.min_x_m,
            (p.min_y_m - b.min_y_m) * shrink,
            (p.max_y_m - b.min_y_m) * shrink,
            b.width_m(),
            b.height_m() * shrink};
}

class Worst {
   public:
    explicit Worst(double area_m2) : area_m2_(area_m2) {}
    void meet(bool reaches, const char* zone, Coefficient c) {
        if (!reaches) return;
        const double up = pressure_by_area(c.suction_1, c.suction_10, area_m2_);
        const double down = pressure_by_area(c.pressure_1, c.pressure_10, area_m2_);
        if (first_ || up < out_.uplift) {
            out_.uplift = std::min(0.0, up);
            out_.zone_uplift = zone;
        }
        if (first_ || down > out_.pressure) {
            out_.pressure = std::max(0.0, down);
            out_.zone_pressure = zone;
        }
        first_ = false;
    }
    [[nodiscard]] ZonePressure result(std::string table) {
        out_.table = std::move(table);
        return out_;
    }

   private:
    double area_m2_;
    bool first_ = true;
    ZonePressure out_;
};

/// Strip along the near edge (y = 0): F at its ends, G between, then what lies behind.
void meet_eaves(Worst& worst, const Plan& p, double e, Coefficient f, Coefficient g) {
    const bool strip = p.within_y(-1e9, e / 10.0);
    worst.meet(strip && (p.within_x(-1e9, e / 4.0) || p.within_x(p.width_m - e / 4.0, 1e9)), "F", f);
    worst.meet(strip && p.within_x(e / 4.0, p.width_m - e / 4.0), "G", g);
}

void duo_pitch(Worst& worst, const Plan& p, double pitch, double h) {
    const double e = std::min(p.width_m, 2.0 * h);
    meet_eaves(worst, p, e, tables::duo_across('F', pitch), tables::duo_across('G', pitch));
    worst.meet(p.within_y(e / 10.0, 1e9), "H", tables::duo_across('H', pitch));
    worst.meet(p.within_y(p.depth_m - e / 10.0, 1e9), "J", tables::duo_across('J', pitch));
    worst.meet(p.within_y(-1e9, p.depth_m - e / 10.0), "I", tables::duo_across('I', pitch));
    const double along_e = std::min(2.0 * p.depth_m, 2.0 * h);
    for (const Plan& side : {p, p.mirrored_x()}) {
        const bool strip = side.within_x(-1e9, along_e / 10.0);
        worst.meet(strip && side.within_y(-1e9, along_e / 4.0), "F", tables::duo_along('F', pitch));
        worst.meet(strip && side.within_y(along_e / 4.0, 1e9), "G", tables::duo_along('G', pitch));
        worst.meet(side.within_x(along_e / 10.0, along_e / 2.0), "H", tables::duo_along('H', pitch));
        worst.meet(side.within_x(along_e / 2.0, 1e9), "I", tables::duo_along('I', pitch));
    }
}

void mono_pitch(Worst& worst, const Plan& p, double pitch, double h) {
    const double e = std::min(p.width_m, 2.0 * h);
    meet_eaves(worst, p, e, tables::duo_across('F', pitch), tables::duo_across('G', pitch));
    worst.meet(p.within_y(e / 10.0, 1e9), "H", tables::duo_across('H', pitch));
    const Plan from_high = p.mirrored_y();
    meet_eaves(worst, from_high, e, tables::mono_high('F', pitch), tables::mono_high('G', pitch));
    worst.meet(from_high.within_y(e / 10.0, 1e9), "H", tables::mono_high('H', pitch));
    const double along_e = std::min(p.depth_m, 2.0 * h);
    for (const Plan& side : {p, p.mirrored_x()}) {
        const bool strip = side.within_x(-1e9, along_e / 10.0);
        worst.meet(strip && side.within_y(side.depth_m - along_e / 4.0, 1e9), "Fup", tables::mono_across('U', pitch));
        worst.meet(strip && side.within_y(-1e9, along_e / 4.0), "Flow", tables::mono_across('L', pitch));
        worst.meet(strip && side.within_y(along_e / 4.0, side.depth_m - along_e / 4.0), "G",
                   tables::mono_across('G', pitch));
        worst.meet(side.within_x(along_e / 10.0, along_e / 2.0), "H", tables::mono_across('H', pitch));
        worst.meet(side.within_x(along_e / 2.0, 1e9), "I", tables::mono_across('I', pitch));
    }
}

/// Every edge may be the near one: no edge of the outline is known to be sheltered.
void hip(Worst& worst, const Surface& surface, const std::vector<Point2>& plate, double pitch, double h) {
    const site::Bounds b = site::bounds_of(surface.outline);
    const double e = std::min(b.width_m(), 2.0 * h);
    const bool strip =
        site::edge_gap_m(surface.outline, plate) < e / 10.0 - site::touch_m || !site::contains(surface.outline, plate);
    for (const char zone : {'F', 'G'}) {
        const std::string name(1, zone);
        worst.meet(strip, name.c_str(), tables::duo_across(zone, pitch));
        worst.meet(strip, name.c_str(), tables::duo_along(zone, pitch));
    }
    worst.meet(strip, "J", tables::duo_across('J', pitch));
    worst.meet(true, "H", tables::duo_across('H', pitch));
    worst.meet(true, "H", tables::duo_along('H', pitch));
}

void flat(Worst& worst, const Plan& p, double h) {
    for (const Plan& side : {p, p.mirrored_y(), p.swapped(), p.swapped().mirrored_y()}) {
        const double e = std::min(side.width_m, 2.0 * h);
        meet_eaves(worst, side, e, tables::flat('F'), tables::flat('G'));
        worst.meet(side.within_y(e / 10.0, e / 2.0), "H", tables::flat('H'));
        worst.meet(side.within_y(e / 2.0, 1e9), "I", tables::flat('I'));
    }
}

void wall(Worst& worst, const Plan& p, double h) {
    const double e = 2.0 * h;
    for (const Plan& side : {p, p.mirrored_x()}) {
        worst.meet(side.within_x(-1e9, e / 5.0), "A", tables::wall('A'));
        worst.meet(side.within_x(e / 5.0, e), "B", tables::wall('B'));
        worst.meet(side.within_x(e, 1e9), "C", tables::wall('C'));
    }
    worst.meet(true, "D", tables::wall('D'));
    worst.meet(true, "E", tables::wall('E'));
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

ZonePressure zone_pressure(const Surface& surface, double height_m, const std::vector<Point2>& plate, double area_m2) {
    Worst worst(area_m2);
    if (surface.kind == SurfaceKind::terrace || surface.kind == SurfaceKind::ground) return worst.result("");
    const Plan p = plan_of(surface, plate);
    if (surface.kind == SurfaceKind::wall || surface.tilt_deg > wall_above_deg) {
        wall(worst, p, height_m);
        return worst.result("EN 1991-1-4 table 7.1, walls");
    }
    if (surface.roof_form == RoofForm::flat || surface.tilt_deg < flat_below_deg) {
        flat(worst, p, height_m);
        return worst.result("EN 1991-1-4 table 7.2, flat roofs, sharp eaves");
    }
    if (surface.roof_form == RoofForm::mono_pitch) {
        mono_pitch(worst, p, surface.tilt_deg, height_m);
        return worst.result("EN 1991-1-4 tables 7.3a and b, mono-pitch roofs");
    }
    if (surface.roof_form == RoofForm::hip) {
        hip(worst, surface, plate, surface.tilt_deg, height_m);
        return worst.result("EN 1991-1-4 tables 7.4a and b, duo-pitch roofs, taken for a hip");
    }
    duo_pitch(worst, p, surface.tilt_deg, height_m);
    return worst.result("EN 1991-1-4 tables 7.4a and b, duo-pitch roofs");
}

}  // namespace wg::fixing
