// How much of the whole grid one shadow covers, from its outline alone.
#include <algorithm>
#include <cmath>

#include "core/site/shadow.h"
#include "core/site/vec.h"

namespace wg::site {
namespace {

/// The grid's rectangle in its own coordinates, from half a cell before the first middle on.
struct Window {
    double width, height;

    /// Area between the left side and a segment that runs up from `a` to `b`, within the window.
    [[nodiscard]] double left_of(Point2 a, Point2 b) const noexcept {
        if (b.y_m <= 0.0 || a.y_m >= height || !(a.y_m < b.y_m)) return 0.0;
        const double slope = (b.x_m - a.x_m) / (b.y_m - a.y_m);
        const double low = std::max(a.y_m, 0.0), high = std::min(b.y_m, height);
        const double x0 = a.x_m + slope * (low - a.y_m), x1 = b.x_m + slope * (high - b.y_m);
        if (std::min(x0, x1) >= width) return width * (high - low);
        if (std::max(x0, x1) <= 0.0) return 0.0;
        const double run = x1 - x0;
        if (std::abs(run) < 1e-6 * width) return std::clamp(0.5 * (x0 + x1), 0.0, width) * (high - low);
        return (integral(x1) - integral(x0)) / run * (high - low);
    }

   private:
    /// Of clamp(x, 0, width).
    [[nodiscard]] double integral(double x) const noexcept {
        const double inside = std::clamp(x, 0.0, width);
        return 0.5 * inside * inside + width * std::max(0.0, x - width);
    }
};

}  // namespace

double Shadow::covered(const SunOnGrid& sun, ShadowScratch& scratch) const {
    std::array<int, 4> box{};
    if (!sun.before() || !may_touch(sun, whole_, box)) return 0.0;
    const bool one_body = !bodies_.empty() && sheets_.empty() && !(crown_ball_.radius_m >= 0.0);
    const bool one_sheet = bodies_.empty() && sheets_.size() == 1 && sheets_.front().convex;
    if (!sharp_ || sun.grazing() || (!one_body && !one_sheet)) return not_known;
    const Window window{static_cast<double>(grid_->columns), static_cast<double>(grid_->rows)};
    const auto at = [&sun](const Corner& c) {
        return Point2{c.x - sun.slant_x * c.off_m + 0.5, c.y - sun.slant_y * c.off_m + 0.5};
    };
    double area = 0.0;
    const auto add = [&](Point2 a, Point2 b) { area += a.y_m < b.y_m ? window.left_of(a, b) : -window.left_of(b, a); };
    if (one_sheet) {
        const std::vector<Corner>& corners = sheets_.front().corners;
        if (corners.size() < 3) return 0.0;
        Point2 last = at(corners.back());
        for (const Corner& c : corners) {
            const Point2 next = at(c);
            add(last, next);
            last = next;
        }
    } else {
        const Body& body = bodies_.front();
        scratch.corners.resize(body.corners.size());
        Point2* corners = scratch.corners.data();
        Point2 least{1e300, 1e300}, most{-1e300, -1e300};
        for (std::size_t i = 0; i < body.corners.size(); ++i) {
            corners[i] = at(body.corners[i]);
            least = {std::min(least.x_m, corners[i].x_m), std::min(least.y_m, corners[i].y_m)};
            most = {std::max(most.x_m, corners[i].x_m), std::max(most.y_m, corners[i].y_m)};
        }
        if (most.x_m <= 0.0 || least.x_m >= window.width || most.y_m <= 0.0 || least.y_m >= window.height) return 0.0;
        scratch.faces_sun.resize(body.normals.size() + 1);
        char* facing = scratch.faces_sun.data() + 1;
        facing[-1] = 0;
        for (std::size_t i = 0; i < body.normals.size(); ++i)
            facing[i] = dot(body.normals[i], sun.dir) > 0.0 ? 1 : 0;
        for (const Body::Edge& e : body.edges) {
            if (facing[e.left] == facing[e.right]) continue;
            add(corners[facing[e.left] != 0 ? e.a : e.b], corners[facing[e.left] != 0 ? e.b : e.a]);
        }
    }
    const double share = std::abs(area) / (window.width * window.height);
    return share < 1e-12 ? 0.0 : std::min(share, 1.0);
}

}  // namespace wg::site
