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

/// The plate's bounding rectangle in plan, from the lower left corner of the plane's bounding rectangle.
ZoneRect rect_of(const Surface& surface, const std::vector<Point2>& plate) {
    const site::Bounds b = site::bounds_of(surface.outline), p = site::bounds_of(plate);
    const double shrink = plan_shrink(surface);
    return {p.min_x_m - b.min_x_m, p.max_x_m - b.min_x_m, (p.min_y_m - b.min_y_m) * shrink,
            (p.max_y_m - b.min_y_m) * shrink};
}

/// Reached when the plate lies in it by more than a touch: rounding must not tell left from right.
bool reaches(const ZoneRect& plate, const ZoneRect& zone) noexcept {
    return plate.x0 < zone.x1 - site::touch_m && plate.x1 > zone.x0 + site::touch_m &&
           plate.y0 < zone.y1 - site::touch_m && plate.y1 > zone.y0 + site::touch_m;
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

void duo_pitch(Zones& z, double pitch, double h) {
    z.side(WindOn::lower);
    const double e = std::min(z.width_m(), 2.0 * h), depth = z.depth_m();
    z.add_eaves(e, tables::duo_across('F', pitch), tables::duo_across('G', pitch));
    z.add("H", -far_m, far_m, e / 10.0, far_m, tables::duo_across('H', pitch));
    z.side(WindOn::upper);  // over the ridge: this plane is the lee one, its ridge the near edge
    z.add("J", -far_m, far_m, -far_m, e / 10.0, tables::duo_across('J', pitch));
    z.add("I", -far_m, far_m, e / 10.0, far_m, tables::duo_across('I', pitch));
    const double along_e = std::min(2.0 * depth, 2.0 * h);
    for (const WindOn from : {WindOn::left, WindOn::right}) {
        z.side(from);  // x runs up the slope now
        z.add("F", -far_m, along_e / 4.0, -far_m, along_e / 10.0, tables::duo_along('F', pitch));
        z.add("G", along_e / 4.0, far_m, -far_m, along_e / 10.0, tables::duo_along('G', pitch));
        z.add("H", -far_m, far_m, along_e / 10.0, along_e / 2.0, tables::duo_along('H', pitch));
        z.add("I", -far_m, far_m, along_e / 2.0, far_m, tables::duo_along('I', pitch));
    }
}

void mono_pitch(Zones& z, double pitch, double h) {
    z.side(WindOn::lower);
    const double e = std::min(z.width_m(), 2.0 * h), depth = z.depth_m();
    z.add_eaves(e, tables::duo_across('F', pitch), tables::duo_across('G', pitch));
    z.add("H", -far_m, far_m, e / 10.0, far_m, tables::duo_across('H', pitch));
    z.side(WindOn::upper);
    z.add_eaves(e, tables::mono_high('F', pitch), tables::mono_high('G', pitch));
    z.add("H", -far_m, far_m, e / 10.0, far_m, tables::mono_high('H', pitch));
    const double along_e = std::min(depth, 2.0 * h);
    for (const WindOn from : {WindOn::left, WindOn::right}) {
        z.side(from);
        z.add("Fup", depth - along_e / 4.0, far_m, -far_m, along_e / 10.0, tables::mono_across('U', pitch));
        z.add("Flow", -far_m, along_e / 4.0, -far_m, along_e / 10.0, tables::mono_across('L', pitch));
        z.add("G", along_e / 4.0, depth - along_e / 4.0, -far_m, along_e / 10.0, tables::mono_across('G', pitch));
        z.add("H", -far_m, far_m, along_e / 10.0, along_e / 2.0, tables::mono_across('H', pitch));
        z.add("I", -far_m, far_m, along_e / 2.0, far_m, tables::mono_across('I', pitch));
    }
}

/// What an edge strip of a hip roof and the middle get: every edge may be the near one, none is known to be sheltered.
std::vector<ZoneBand> hip_bands(double pitch, bool strip) {
    std::vector<ZoneBand> out;
    const ZoneRect all{-far_m, far_m, -far_m, far_m};
    if (strip) {
        for (const char* zone : {"F", "G"}) {
            out.push_back({zone, WindOn::any, all, tables::duo_across(*zone, pitch)});
            out.push_back({zone, WindOn::any, all, tables::duo_along(*zone, pitch)});
        }
        out.push_back({"J", WindOn::any, all, tables::duo_across('J', pitch)});
    }
    out.push_back({"H", WindOn::any, all, tables::duo_across('H', pitch)});
    out.push_back({"H", WindOn::any, all, tables::duo_along('H', pitch)});
    return out;
}

void flat(Zones& z, double h) {
    for (const WindOn from : {WindOn::lower, WindOn::upper, WindOn::left, WindOn::right}) {
        z.side(from);
        const double e = std::min(z.width_m(), 2.0 * h);
        z.add_eaves(e, tables::flat('F'), tables::flat('G'));
        z.add("H", -far_m, far_m, e / 10.0, e / 2.0, tables::flat('H'));
        z.add("I", -far_m, far_m, e / 2.0, far_m, tables::flat('I'));
    }
}

void wall(Zones& z, double h) {
    const double e = 2.0 * h;
    for (const WindOn from : {WindOn::left, WindOn::right}) {
        z.side(from);
        z.add("A", -far_m, far_m, -far_m, e / 5.0, tables::wall('A'));
        z.add("B", -far_m, far_m, e / 5.0, e, tables::wall('B'));
        z.add("C", -far_m, far_m, e, far_m, tables::wall('C'));
    }
    z.side(WindOn::any);
    z.add("D", -far_m, far_m, -far_m, far_m, tables::wall('D'));
    z.add("E", -far_m, far_m, -far_m, far_m, tables::wall('E'));
}

ZonePressure worst_of(const std::vector<ZoneBand>& bands, const ZoneRect& plate, double area_m2) {
    Worst worst(area_m2);
    for (const ZoneBand& band : bands)
        worst.meet(reaches(plate, band.rect), band.zone, band.coefficient);
    return worst.result("");
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
        case ZoneKind::wall: return "EN 1991-1-4 table 7.1, walls";
        case ZoneKind::flat: return "EN 1991-1-4 table 7.2, flat roofs, sharp eaves";
        case ZoneKind::mono_pitch: return "EN 1991-1-4 tables 7.3a and b, mono-pitch roofs";
        case ZoneKind::hip: return "EN 1991-1-4 tables 7.4a and b, duo-pitch roofs, taken for a hip";
        case ZoneKind::duo_pitch: return "EN 1991-1-4 tables 7.4a and b, duo-pitch roofs";
    }
    return "";
}

std::vector<ZoneBand> zone_bands(const Surface& surface, double height_m) {
    const site::Bounds b = site::bounds_of(surface.outline);
    Zones zones(b.width_m(), b.height_m() * plan_shrink(surface));
    switch (zone_kind(surface)) {
        case ZoneKind::none:
        case ZoneKind::hip: break;
        case ZoneKind::wall: wall(zones, height_m); break;
        case ZoneKind::flat: flat(zones, height_m); break;
        case ZoneKind::mono_pitch: mono_pitch(zones, surface.tilt_deg, height_m); break;
        case ZoneKind::duo_pitch: duo_pitch(zones, surface.tilt_deg, height_m); break;
    }
    return std::move(zones.out);
}

double hip_strip_m(const Surface& surface, double height_m) {
    return std::min(site::bounds_of(surface.outline).width_m(), 2.0 * height_m) / 10.0;
}

ZonePressure hip_pressure(double pitch_deg, bool strip, double area_m2) {
    return worst_of(hip_bands(pitch_deg, strip), {0.0, 1.0, 0.0, 1.0}, area_m2);
}

ZonePressure pressure_in(const std::vector<ZoneBand>& bands, const ZoneRect& plan, double area_m2) {
    return worst_of(bands, plan, area_m2);
}

ZonePressure zone_pressure(const Surface& surface, double height_m, const std::vector<Point2>& plate, double area_m2) {
    const ZoneKind kind = zone_kind(surface);
    ZonePressure out;
    if (kind == ZoneKind::hip) {
        const bool strip = site::edge_gap_m(surface.outline, plate) < hip_strip_m(surface, height_m) - site::touch_m ||
                           !site::contains(surface.outline, plate);
        out = hip_pressure(surface.tilt_deg, strip, area_m2);
    } else {
        out = worst_of(zone_bands(surface, height_m), rect_of(surface, plate), area_m2);
    }
    out.table = zone_table(kind);
    return out;
}

}  // namespace wg::fixing
