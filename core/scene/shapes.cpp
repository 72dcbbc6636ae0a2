#include "core/scene/shapes.h"

#include <algorithm>
#include <cmath>

#include "core/quantity/constants.h"
#include "core/site/vec.h"

namespace wg::scene {

using site::operator+, site::operator-, site::operator*;
using site::cross, site::norm;

namespace {

constexpr int crown_bands = 10;

void bound(Caster& caster) {
    Point3 low = caster.points.front(), high = low;
    for (const Point3 p : caster.points) {
        low = {std::min(low.x_m, p.x_m), std::min(low.y_m, p.y_m), std::min(low.z_m, p.z_m)};
        high = {std::max(high.x_m, p.x_m), std::max(high.y_m, p.y_m), std::max(high.z_m, p.z_m)};
    }
    caster.middle = (low + high) * 0.5;
    for (const Point3 p : caster.points)
        caster.radius_m = std::max(caster.radius_m, norm(p - caster.middle));
}

}  // namespace

std::vector<Point3> ring(Point2 middle, double radius_m, double z_m) {
    std::vector<Point3> out;
    for (int i = 0; i < round_corners; ++i) {
        const double angle = 2.0 * pi * i / round_corners;
        out.push_back({middle.x_m + radius_m * std::cos(angle), middle.y_m + radius_m * std::sin(angle), z_m});
    }
    return out;
}

Body upright_body(Point2 middle, double radius_m, double low_m, double high_m, int thing) {
    Body body;
    body.thing = thing;
    const std::vector<Point3> foot = ring(middle, radius_m, low_m), top = ring(middle, radius_m, high_m);
    for (std::size_t i = 0; i < foot.size(); ++i) {
        const std::size_t k = (i + 1) % foot.size();
        body.skin.push_back({foot[i], foot[k], top[k], top[i]});
    }
    body.skin.push_back(top);
    return body;
}

Body crown_body(Point3 middle, double radius_m, double half_height_m, int thing) {
    Body body;
    body.thing = thing;
    body.middle = middle;
    body.radius_m = radius_m;
    body.half_height_m = half_height_m;
    const auto at = [&](int band, int i) {
        const double up = pi * (static_cast<double>(band) / crown_bands - 0.5), round = 2.0 * pi * i / round_corners;
        return middle + Point3{radius_m * std::cos(up) * std::cos(round), radius_m * std::cos(up) * std::sin(round),
                               half_height_m * std::sin(up)};
    };
    for (int band = 0; band < crown_bands; ++band) {
        for (int i = 0; i < round_corners; ++i)
            body.skin.push_back({at(band, i), at(band, i + 1), at(band + 1, i + 1), at(band + 1, i)});
    }
    return body;
}

Caster sheet_caster(std::vector<Point3> corners, int thing) {
    Caster caster;
    caster.points = std::move(corners);
    caster.thing = thing;
    bound(caster);
    return caster;
}

Caster column_caster(const std::vector<Point2>& outline, double low_m, double high_m, int thing) {
    Caster caster;
    caster.thing = thing;
    const int n = static_cast<int>(outline.size());
    for (const Point2 p : outline)
        caster.points.push_back({p.x_m, p.y_m, low_m});
    for (const Point2 p : outline)
        caster.points.push_back({p.x_m, p.y_m, high_m});
    for (int i = 0; i < n; ++i) {
        caster.edges.emplace_back(i, (i + 1) % n);
        caster.edges.emplace_back(n + i, n + (i + 1) % n);
        caster.edges.emplace_back(i, n + i);
    }
    bound(caster);
    return caster;
}

Caster upright_caster(Point2 middle, double radius_m, double low_m, double high_m, int thing) {
    std::vector<Point2> outline;
    for (const Point3 p : ring(middle, radius_m, low_m))
        outline.push_back({p.x_m, p.y_m});
    return column_caster(outline, low_m, high_m, thing);
}

Caster crown_caster(Point3 middle, double radius_m, double half_height_m, int thing) {
    Caster caster;
    caster.thing = thing;
    caster.crown_radius_m = radius_m;
    caster.crown_half_height_m = half_height_m;
    caster.points = {middle - Point3{radius_m, 0, 0}, middle + Point3{radius_m, 0, 0},
                     middle - Point3{0, 0, half_height_m}, middle + Point3{0, 0, half_height_m}};
    bound(caster);
    return caster;
}

void add_column(std::vector<Polygon>& into, const std::vector<Point2>& outline, const std::vector<char>& drawn,
                double low_m, double high_m, int thing) {
    Polygon top;
    top.thing = thing;
    top.normal = {0, 0, 1};
    top.drawn = drawn;
    for (std::size_t i = 0; i < outline.size(); ++i) {
        const Point2 a = outline[i], b = outline[(i + 1) % outline.size()];
        top.corners.push_back({a.x_m, a.y_m, high_m});
        const Point2 along = b - a;
        const double length = norm(along);
        if (drawn[i] == 0 || !(length > 0.0)) continue;
        Polygon side;
        side.thing = thing;
        side.corners = {{a.x_m, a.y_m, low_m}, {b.x_m, b.y_m, low_m}, {b.x_m, b.y_m, high_m}, {a.x_m, a.y_m, high_m}};
        side.normal = {along.y_m / length, -along.x_m / length, 0.0};
        side.drawn.assign(4, 1);
        into.push_back(std::move(side));
    }
    into.push_back(std::move(top));
}

}  // namespace wg::scene
