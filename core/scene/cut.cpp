#include "core/scene/cut.h"

#include <algorithm>
#include <limits>

#include "core/site/vec.h"

namespace wg::scene {
namespace {

using site::operator+, site::operator-, site::operator*;

/// `edges` may be empty. Of a cut edge both parts stay what it was; the new edge is not drawn.
void cut_outline(const std::vector<Point3>& corners, const std::vector<char>& edges, const Plane& plane, double sign,
                 std::vector<Point3>& out, std::vector<char>& out_edges) {
    const std::size_t n = corners.size();
    for (std::size_t i = 0; i < n; ++i) {
        const std::size_t k = (i + 1) % n;
        const double at_i = sign * plane.height_m(corners[i]), at_k = sign * plane.height_m(corners[k]);
        const char edge = edges.empty() ? char{0} : edges[i];
        const bool crosses = (at_i > on_plane_m && at_k < -on_plane_m) || (at_i < -on_plane_m && at_k > on_plane_m);
        if (at_i >= -on_plane_m) {
            out.push_back(corners[i]);
            // Leaving through this corner: what follows is the cut.
            const bool leaves = at_i <= on_plane_m && at_k < -on_plane_m;
            out_edges.push_back(leaves ? char{0} : edge);
        }
        if (!crosses) continue;
        out.push_back(corners[i] + (corners[k] - corners[i]) * (at_i / (at_i - at_k)));
        out_edges.push_back(at_i > 0.0 ? char{0} : edge);
    }
}

}  // namespace

Stand stand(const Fragment& fragment, const Plane& plane) noexcept {
    Stand s{std::numeric_limits<double>::infinity(), -std::numeric_limits<double>::infinity()};
    const auto take = [&](Point3 p) {
        const double height = plane.height_m(p);
        s.low_m = std::min(s.low_m, height);
        s.high_m = std::max(s.high_m, height);
    };
    for (const Point3 p : fragment.corners)
        take(p);
    for (const std::vector<Point3>& part : fragment.skin) {
        for (const Point3 p : part)
            take(p);
    }
    return s;
}

Fragment part_of(const Fragment& fragment, const Plane& plane, bool before) {
    const double sign = before ? 1.0 : -1.0;
    Fragment out;
    out.shape = fragment.shape;
    out.normal = fragment.normal;
    out.thing = fragment.thing;
    out.layer = fragment.layer;
    out.two_sided = fragment.two_sided;
    out.whole = false;
    std::vector<char> none;
    switch (fragment.shape) {
        case Fragment::Shape::polygon:
            cut_outline(fragment.corners, fragment.drawn, plane, sign, out.corners, out.drawn);
            break;
        case Fragment::Shape::body:
            for (const std::vector<Point3>& part : fragment.skin) {
                std::vector<Point3> left;
                cut_outline(part, {}, plane, sign, left, none);
                if (!left.empty()) out.skin.push_back(std::move(left));
            }
            break;
        case Fragment::Shape::line: {
            out.corners = fragment.corners;
            const double a = sign * plane.height_m(out.corners[0]), b = sign * plane.height_m(out.corners[1]);
            const Point3 through = out.corners[0] + (out.corners[1] - out.corners[0]) * (a / (a - b));
            out.corners[a < 0.0 ? 0 : 1] = through;
            break;
        }
    }
    return out;
}

}  // namespace wg::scene
