#include "core/plan/sizing_place.h"

#include <cmath>
#include <limits>
#include <optional>
#include <set>
#include <string>

#include "core/fixing/layout_place.h"
#include "core/site/geometry.h"

namespace wg::plan::detail {
namespace {

constexpr double step_m = 0.1;
constexpr double most_cells = 40000.0;  ///< larger surfaces are searched more coarsely

/// Nearest free place to `like` on its surface; a little dearer up and down than sideways, so that rows come about.
std::optional<Placement> place_beside(const Site& site, const Choice& choice, const CollectorModel& model,
                                      const Placement& like, const Point2& near_to) {
    Placement candidate = like;
    const fixing::Neighbourhood round = fixing::neighbourhood_of(site, choice, model, candidate);
    if (round.surface == nullptr || round.surface->outline.size() < 3) return std::nullopt;
    candidate.x_m = candidate.y_m = 0.0;
    const std::vector<Point2> shape = site::place(*round.surface, site.sketch_up_azimuth_deg, candidate, model).outline;
    const site::Bounds box = site::bounds_of(round.surface->outline);
    const double step = std::max(step_m, std::sqrt(box.width_m() * box.height_m() / most_cells));
    double best = std::numeric_limits<double>::infinity();
    std::optional<Placement> found;
    for (double y = box.min_y_m; y <= box.max_y_m; y += step) {
        for (double x = box.min_x_m; x <= box.max_x_m; x += step) {
            const double dx = x - near_to.x_m, dy = y - near_to.y_m;
            const double distance = dx * dx + 1.5 * dy * dy;
            if (distance >= best) continue;
            std::vector<Point2> outline = shape;
            for (Point2& corner : outline)
                corner = {corner.x_m + x, corner.y_m + y};
            if (!fixing::keeps_hard_rules(round, outline) ||
                !fixing::keeps_free_strip(round, outline, model.clearance_m))
                continue;
            best = distance;
            found = candidate;
            found->x_m = std::round(x * 1000.0) / 1000.0;
            found->y_m = std::round(y * 1000.0) / 1000.0;
        }
    }
    return found;
}

}  // namespace

Placed placed_collectors(const Site& site, const Choice& choice, const CollectorModel& model, int count) {
    Placed out;
    Choice growing = choice;
    const auto wanted = static_cast<std::size_t>(count);
    if (growing.placements.size() > wanted) growing.placements.resize(wanted);
    while (growing.placements.size() < wanted) {
        const Placement last = growing.placements.back();
        std::optional<Placement> found;
        if (out.without_place == 0) {
            std::set<std::string> tried;
            for (auto at = growing.placements.rbegin(); at != growing.placements.rend() && !found; ++at) {
                if (!tried.insert(at->surface_id).second) continue;
                Placement like = *at;
                like.id = "new";  // so that the one it is like counts among its neighbours
                found = place_beside(site, growing, model, like, {at->x_m, at->y_m});
            }
        }
        Placement next = found.value_or(last);
        if (!found) ++out.without_place;
        next.id = "further-" + std::to_string(growing.placements.size() + 1);
        next.label = "Collector " + std::to_string(growing.placements.size() + 1);
        growing.placements.push_back(std::move(next));
    }
    out.placements = std::move(growing.placements);
    return out;
}

}  // namespace wg::plan::detail
