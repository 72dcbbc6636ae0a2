// A frame that stands on a level surface by its weight alone.
#include <algorithm>
#include <cmath>

#include "core/fixing/loads.h"
#include "core/quantity/constants.h"
#include "core/site/vec.h"

namespace wg::fixing {
namespace {

using site::dot;

constexpr double hopeless = 99.0;  ///< use where nothing is left to hold

double extent_m(const std::vector<FixingPoint>& points, Point2 axis) {
    double low = 1e9, high = -1e9;
    for (const FixingPoint& p : points) {
        low = std::min(low, dot(p.nominal, axis));
        high = std::max(high, dot(p.nominal, axis));
    }
    return points.empty() ? 0.0 : high - low;
}

}  // namespace

bool by_ballast(const FixingMethod& method) noexcept {
    return method.kind == FixingKind::ballast;
}

Use BallastCheck::worst() const noexcept {
    if (tips >= slides && tips >= lifts) return {tips, HeldBy::ballast_tips};
    return slides >= lifts ? Use{slides, HeldBy::ballast_slides} : Use{lifts, HeldBy::ballast_lifts};
}

double BallastCheck::needed_kg() const noexcept {
    return std::max({slides_kg, tips_kg, lifts_kg, 0.0});
}

bool ballast_overloads(const Input& input, const BallastCheck& check) noexcept {
    return by_ballast(input.method) && input.surface.spare_load_kn_m2 &&
           check.load_kn_m2 > *input.surface.spare_load_kn_m2;
}

BallastCheck check_ballast(const Input& input, const Loads& loads, const Layout& layout) {
    BallastCheck b;
    const FixingMethod& method = input.method;
    const double n = static_cast<double>(layout.points.size());
    if (!by_ballast(method) || layout.points.empty()) return b;
    b.holds = method.ballast_kg > 0.0;
    Point2 level{1.0, 0.0};
    if (loads.on_frame && input.placed.outline.size() == 4) {
        const Point2 edge{input.placed.outline[1].x_m - input.placed.outline[0].x_m,
                          input.placed.outline[1].y_m - input.placed.outline[0].y_m};
        const double length = site::norm(edge);
        if (length > 1e-9) level = {edge.x_m / length, edge.y_m / length};
    }
    const Point2 axes[2] = {{-level.y_m, level.x_m}, level};  // front to back, side to side
    b.depth_m = method.frame_depth_m > 0.0 ? method.frame_depth_m : extent_m(layout.points, axes[0]);
    b.width_m = extent_m(layout.points, axes[1]);
    const double arms[2] = {std::max(b.depth_m, 1e-3) / 2.0, std::max(b.width_m, 1e-3) / 2.0};
    const double own_n = loads.weight_n, ballast_n = n * method.ballast_kg * gravity_m_s2;
    const double light = input.rules.gamma_permanent_favourable, q = input.rules.gamma_variable;
    const double holds_n = light * (own_n + ballast_n);
    const double per_kg = light * n * gravity_m_s2;
    const auto share = [](double asked, double held) {
        return asked <= 0.0 ? 0.0 : held > asked / hopeless ? asked / held : hopeless;
    };
    b.slides_kg = b.tips_kg = b.lifts_kg = -1e9;
    for (const WindCase& w : loads.winds) {
        const double up_n = -q * w.action.normal_n, level_n = q * site::norm(w.action.along_n);
        b.lifts = std::max(b.lifts, share(up_n, holds_n));
        b.lifts_kg = std::max(b.lifts_kg, (up_n - light * own_n) / per_kg);
        const double friction = std::max(method.friction, 1e-3);
        const double slides = share(level_n, friction * (holds_n - up_n));
        if (slides > b.slides || b.slides_under == nullptr) {
            b.slides = std::max(b.slides, slides);
            b.slides_under = &w;
        }
        b.slides_kg = std::max(b.slides_kg, (level_n / friction + up_n - light * own_n) / per_kg);
        for (int i = 0; i < 2; ++i) {
            // About the outer feet on either side: what lifts at the plate's middle, and the couple of wind along the
            // surface and off the middle.
            const double turns = up_n * arms[i] + q * std::abs(dot(w.action.couple_nm, axes[i]));
            const double tips = share(turns, holds_n * arms[i]);
            if (tips > b.tips || b.tips_under == nullptr) {
                b.tips = std::max(b.tips, tips);
                b.tips_under = &w;
            }
            b.tips_kg = std::max(b.tips_kg, (turns / arms[i] - light * own_n) / per_kg);
        }
    }
    b.mass_kg = (own_n + ballast_n) / gravity_m_s2;
    double level_side = 0.0;
    if (input.placed.outline.size() == 4) {
        double low = 1e9, high = -1e9;
        for (const Point2 p : input.placed.outline) {
            low = std::min(low, dot(p, axes[1]));
            high = std::max(high, dot(p, axes[1]));
        }
        level_side = high - low;
    }
    b.area_m2 = std::max(0.01, level_side * std::max(b.depth_m, 0.05));
    b.load_kn_m2 = b.mass_kg * gravity_m_s2 * 1e-3 / b.area_m2;
    return b;
}

}  // namespace wg::fixing
