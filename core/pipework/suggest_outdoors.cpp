#include <algorithm>
#include <cmath>
#include <limits>
#include <queue>

#include "core/pipework/suggest_parts.h"
#include "core/quantity/constants.h"
#include "core/site/vec.h"

namespace wg::pipework::suggesting {
namespace {

using site::operator+;
using site::operator-;
using site::operator*;

constexpr double hop_m = 1.2;          // from the edge of one plane to that of the next: over the eaves to the wall
constexpr double along_edge_m = 0.35;  // nearer than this to its edge a pipe runs along it
constexpr double look_m = 0.20;
constexpr double wall_search_m = 0.25;
constexpr double near_house_m = 8.0;  // from a terrace straight to the wall
constexpr double clipped_m = 0.05;    // of the pipe over its plane
constexpr double within = 1e-7;

constexpr std::size_t nowhere = std::numeric_limits<std::size_t>::max();

/// A plane with a grid of lines on which a pipe may run: through its corners, the collectors, the block, and round what
/// stands in the way.
struct Panel {
    const Surface* surface = nullptr;
    site::Frame frame;
    double off_m = clipped_m;
    std::vector<site::Bounds> shut;
    std::vector<double> x, y;
    std::size_t first = 0;  ///< of its nodes among all
    [[nodiscard]] std::size_t size() const { return x.size() * y.size(); }
};

struct Node {
    std::size_t panel = 0;
    Point2 at;
    Point3 in_space;
    double edge_m = 0.0;
    bool usable = false;
};

site::Bounds wider(site::Bounds b, double by_m) {
    return {b.min_x_m - by_m, b.min_y_m - by_m, b.max_x_m + by_m, b.max_y_m + by_m};
}
bool holds(const site::Bounds& b, Point2 p) {
    return p.x_m > b.min_x_m + within && p.x_m < b.max_x_m - within && p.y_m > b.min_y_m + within &&
           p.y_m < b.max_y_m - within;
}
bool crosses(const site::Bounds& b, Point2 p, Point2 q) {  // the two lie on one line of the grid
    return std::max(p.x_m, q.x_m) > b.min_x_m + within && std::min(p.x_m, q.x_m) < b.max_x_m - within &&
           std::max(p.y_m, q.y_m) > b.min_y_m + within && std::min(p.y_m, q.y_m) < b.max_y_m - within;
}

/// Where an obstacle meets the plane; nothing when it stays clear of it.
std::optional<site::Bounds> on_plane(const Obstacle& o, const site::Frame& frame) {
    const std::vector<Point2> plan = plan_of(o, 0.0);
    if (plan.empty()) return std::nullopt;
    std::vector<Point2> met;
    double nearest = 1e9, farthest = -1e9;
    for (const Point2 p : plan) {
        const Point3 foot{p.x_m, p.y_m, o.base.z_m}, top{p.x_m, p.y_m, o.base.z_m + o.height_m};
        const double a = site::dot(foot - frame.origin, frame.normal), b = site::dot(top - frame.origin, frame.normal);
        nearest = std::min({nearest, a, b});
        farthest = std::max({farthest, a, b});
        if (frame.normal.z_m > 0.17) {  // where the upright edge goes through
            const double share = std::abs(b - a) > within ? std::clamp(-a / (b - a), 0.0, 1.0) : 0.0;
            met.push_back(site::to_plane(frame, foot + (top - foot) * share));
        } else {
            met.push_back(site::to_plane(frame, foot));
            met.push_back(site::to_plane(frame, top));
        }
    }
    if (nearest > clear_of_m || farthest < -clear_of_m) return std::nullopt;
    return wider(site::bounds_of(met), clear_of_m);
}

class Outdoors {
   public:
    Outdoors(const SuggestInput& input, const House& house) : input_(input), house_(house) {
        for (const Surface& s : input.site->surfaces)
            if (s.outline.size() >= 3) add_panel(s);
        lay_nodes();
        join_panels();
    }

    std::vector<Entrance> search() {
        std::vector<Entrance> out;
        if (start_ == nowhere) return out;
        open_.assign(nodes_.size() * 2, 0);
        best_.assign(nodes_.size() * ways, std::numeric_limits<double>::infinity());
        before_.assign(best_.size(), nowhere);
        using Entry = std::pair<double, std::size_t>;
        std::priority_queue<Entry, std::vector<Entry>, std::greater<>> open;
        const auto reach = [&](std::size_t node, std::size_t way, double cost, std::size_t from) {
            const std::size_t state = node * ways + way;
            if (cost >= best_[state] - 1e-12) return;
            best_[state] = cost;
            before_[state] = from;
            open.push({cost, state});
        };
        reach(start_, any_way, 0.0, nowhere);
        while (!open.empty()) {
            const auto [cost, state] = open.top();
            open.pop();
            if (cost > best_[state] + 1e-12) continue;
            const std::size_t here = state / ways, coming = state % ways;
            for (std::size_t way = 0; way < 4; ++way) {
                if (coming < 4 && way == (coming ^ 1U)) continue;
                const std::size_t next = neighbour(here, way);
                if (next == nowhere || !is_open(here, next)) continue;
                const double bend = coming == way || coming == any_way ? 0.0 : bend_costs_m;
                reach(next, way, cost + bend + run_cost(nodes_[here], nodes_[next]), state);
            }
            for (const std::size_t other : hops_[here]) {
                const double length = apart_m(nodes_[here].in_space, nodes_[other].in_space);
                reach(other, hopped, cost + (coming == hopped ? 0.0 : bend_costs_m) + length, state);
            }
        }
        collect(out);
        std::stable_sort(out.begin(), out.end(), [](const Entrance& a, const Entrance& b) { return a.cost < b.cost; });
        return out;
    }

   private:
    static constexpr std::size_t ways = 6;  // right, left, up, down in the plane, hopped to the next, just begun
    static constexpr std::size_t hopped = 4, any_way = 5;

    void add_panel(const Surface& s) {
        Panel panel;
        panel.surface = &s;
        panel.frame = site::frame_of(s, input_.site->sketch_up_azimuth_deg);
        const bool starts = s.id == input_.from_surface;
        const double over_m = site::dot(input_.from - panel.frame.origin, panel.frame.normal);
        if (starts && over_m > 0.0 && over_m <= 0.35) panel.off_m = std::max(clipped_m, over_m);
        for (const Occupied& o : input_.collectors)
            if (o.surface_id == s.id) panel.shut.push_back(wider(site::bounds_of(o.outline), clear_of_m));
        for (const KeepOut& k : s.keep_outs)
            if (k.outline.size() >= 3)
                panel.shut.push_back(wider(site::bounds_of(k.outline), k.clearance_m + clear_of_m));
        for (const Obstacle& o : input_.site->obstacles)
            if (const auto met = on_plane(o, panel.frame)) panel.shut.push_back(*met);
        for (const Point2 corner : s.outline)
            for (const double by : {-clear_of_m, clear_of_m}) {
                panel.x.push_back(corner.x_m + by);
                panel.y.push_back(corner.y_m + by);
            }
        for (const site::Bounds& b : panel.shut) {
            for (const double x : {b.min_x_m, b.max_x_m})
                panel.x.push_back(x);
            for (const double y : {b.min_y_m, b.max_y_m})
                panel.y.push_back(y);
        }
        for (const Point3 key : {input_.from, input_.to}) {
            const Point2 p = site::to_plane(panel.frame, key);
            panel.x.push_back(p.x_m);
            panel.y.push_back(p.y_m);
        }
        for (auto* lines : {&panel.x, &panel.y}) {
            std::sort(lines->begin(), lines->end());
            lines->erase(std::unique(lines->begin(), lines->end(), [](double a, double b) { return b - a < 1e-6; }),
                         lines->end());
        }
        panels_.push_back(std::move(panel));
    }

    void lay_nodes() {
        for (std::size_t i = 0; i < panels_.size(); ++i) {
            Panel& panel = panels_[i];
            panel.first = nodes_.size();
            const Point2 start = site::to_plane(panel.frame, input_.from);
            for (const double y : panel.y)
                for (const double x : panel.x) {
                    Node n{i, {x, y}, site::to_space(panel.frame, {x, y}, panel.off_m), 0.0, false};
                    n.edge_m = site::edge_distance_m(panel.surface->outline, n.at);
                    const bool begins = panel.surface->id == input_.from_surface && std::abs(x - start.x_m) < 1e-5 &&
                                        std::abs(y - start.y_m) < 1e-5;
                    n.usable = site::contains(panel.surface->outline, n.at) && (begins || n.edge_m > clear_of_m - 1e-6);
                    // Ground or terrace drawn through under the house is no open air.
                    const bool level =
                        panel.surface->kind == SurfaceKind::terrace || panel.surface->kind == SurfaceKind::ground;
                    if (level && n.in_space.z_m < input_.to.z_m + 1.0 &&
                        house_.covers({n.in_space.x_m, n.in_space.y_m}))
                        n.usable = false;
                    if (begins && n.usable) start_ = nodes_.size();
                    nodes_.push_back(n);
                }
        }
    }

    /// Each node at the edge of a plane with the nearest one at the edge of every other plane.
    void join_panels() {
        hops_.resize(nodes_.size());
        std::vector<std::vector<std::size_t>> rim(panels_.size());
        for (std::size_t n = 0; n < nodes_.size(); ++n)
            if (nodes_[n].usable && nodes_[n].edge_m < clear_of_m + 0.02 && !is_shut(n))
                rim[nodes_[n].panel].push_back(n);
        for (std::size_t a = 0; a < panels_.size(); ++a)
            for (std::size_t b = 0; b < panels_.size(); ++b) {
                if (a == b) continue;
                for (const std::size_t from : rim[a]) {
                    std::size_t nearest = nowhere;
                    double least = hop_m;
                    for (const std::size_t to : rim[b]) {
                        const double d = apart_m(nodes_[from].in_space, nodes_[to].in_space);
                        if (d < least - 1e-9) {
                            least = d;
                            nearest = to;
                        }
                    }
                    if (nearest == nowhere) continue;
                    hops_[from].push_back(nearest);
                    hops_[nearest].push_back(from);
                }
            }
    }

    [[nodiscard]] bool is_shut(std::size_t n) const {
        const Panel& panel = panels_[nodes_[n].panel];
        return std::any_of(panel.shut.begin(), panel.shut.end(),
                           [&](const site::Bounds& b) { return holds(b, nodes_[n].at); });
    }

    [[nodiscard]] std::size_t neighbour(std::size_t n, std::size_t way) const {
        const Panel& panel = panels_[nodes_[n].panel];
        const std::size_t i = (n - panel.first) % panel.x.size(), j = (n - panel.first) / panel.x.size();
        switch (way) {
            case 0: return i + 1 < panel.x.size() ? n + 1 : nowhere;
            case 1: return i > 0 ? n - 1 : nowhere;
            case 2: return j + 1 < panel.y.size() ? n + panel.x.size() : nowhere;
            default: return j > 0 ? n - panel.x.size() : nowhere;
        }
    }

    /// Tubes leave from under their own plates: on the lines through the start those do not stand in the way.
    [[nodiscard]] bool may_pass(std::size_t a, std::size_t b) const {
        const Node& p = nodes_[a];
        const Node& q = nodes_[b];
        if (!q.usable) return false;
        const Panel& panel = panels_[p.panel];
        const Point2 start = nodes_[start_].at;
        const bool from_start = nodes_[start_].panel == p.panel &&
                                ((std::abs(p.at.x_m - start.x_m) < 1e-5 && std::abs(q.at.x_m - start.x_m) < 1e-5) ||
                                 (std::abs(p.at.y_m - start.y_m) < 1e-5 && std::abs(q.at.y_m - start.y_m) < 1e-5));
        for (const site::Bounds& b2 : panel.shut)
            if (crosses(b2, p.at, q.at) && !(from_start && holds(b2, start))) return false;
        const double length = site::norm(q.at - p.at);
        const int parts = std::max(1, static_cast<int>(std::ceil(length / look_m)));
        for (int i = 1; i < parts; ++i)
            if (!site::contains(panel.surface->outline, p.at + (q.at - p.at) * (static_cast<double>(i) / parts)))
                return false;
        return true;
    }

    [[nodiscard]] static double run_cost(const Node& a, const Node& b) {
        const double length = site::norm(b.at - a.at);
        const double rise = b.in_space.z_m - a.in_space.z_m;
        const bool along = a.edge_m < along_edge_m && b.edge_m < along_edge_m;
        return length * (along ? 1.0 : open_face_costs) + std::max(0.0, rise) * (rising_costs - 1.0);
    }

    void collect(std::vector<Entrance>& out) const {
        for (std::size_t n = 0; n < nodes_.size(); ++n) {
            std::size_t state = n * ways;
            for (std::size_t way = 1; way < ways; ++way)
                if (best_[n * ways + way] < best_[state]) state = n * ways + way;
            if (!std::isfinite(best_[state]) || is_shut(n)) continue;
            const Surface& s = *panels_[nodes_[n].panel].surface;
            const bool over_house =  // a roof, or a terrace on the house
                s.kind == SurfaceKind::roof ||
                (s.kind != SurfaceKind::wall && house_.covers({nodes_[n].in_space.x_m, nodes_[n].in_space.y_m}));
            if (over_house) {
                add(out, n, state, RoutePointKind::roof_passage, {0.0, 0.0, -1.0}, 0.0);
            } else if (s.kind == SurfaceKind::wall) {
                add(out, n, state, RoutePointKind::wall_passage, panels_[nodes_[n].panel].frame.normal * -1.0, 0.0);
            } else {
                to_the_wall(out, n, state);
            }
        }
    }

    void add(std::vector<Entrance>& out, std::size_t n, std::size_t state, RoutePointKind kind, Point3 inward,
             double level_m) const {
        Entrance e;
        e.kind = kind;
        e.inward = inward;
        e.at = nodes_[n].in_space + inward * level_m;
        const Point3 behind = e.at + inward * behind_m;
        if (!house_.plan.empty() && !house_.covers({behind.x_m, behind.y_m})) return;
        e.cost = best_[state] + level_m +
                 (kind == RoutePointKind::roof_passage ? roof_passage_costs_m : wall_passage_costs_m);
        for (std::size_t s = state; s != nowhere; s = before_[s])
            e.way.push_back(nodes_[s / ways].in_space);
        std::reverse(e.way.begin(), e.way.end());
        if (level_m > 0.0) e.way.push_back(e.at);
        out.push_back(std::move(e));
    }

    /// From a level plane by the house straight to its wall, which may not be drawn.
    void to_the_wall(std::vector<Entrance>& out, std::size_t n, std::size_t state) const {
        if (house_.plan.empty()) return;
        for (const Point2 d : {house_.u, house_.u * -1.0, house_.v, house_.v * -1.0}) {
            const Point3 way{d.x_m, d.y_m, 0.0};
            const auto covered = [&](double level_m) {
                const Point3 p = nodes_[n].in_space + way * level_m;
                return house_.covers({p.x_m, p.y_m});
            };
            double free_m = 0.0, in_m = 0.0;
            while (in_m < near_house_m && !covered(in_m)) {
                free_m = in_m;
                in_m += wall_search_m;
            }
            if (in_m >= near_house_m) continue;
            while (in_m - free_m > 0.005) {
                const double middle = 0.5 * (free_m + in_m);
                (covered(middle) ? in_m : free_m) = middle;
            }
            if (is_free(n, way, in_m)) add(out, n, state, RoutePointKind::wall_passage, way, in_m + house_.wall_in_m);
        }
    }

    /// Nothing of the plane's own stands on the straight way to the wall.
    [[nodiscard]] bool is_free(std::size_t n, Point3 way, double level_m) const {
        const Panel& panel = panels_[nodes_[n].panel];
        for (double at_m = 0.0; at_m < level_m; at_m += look_m) {
            const Point2 p = site::to_plane(panel.frame, nodes_[n].in_space + way * at_m);
            for (const site::Bounds& b : panel.shut)
                if (holds(b, p)) return false;
        }
        return true;
    }

    /// May it pass, asked once for each leg of the grid.
    [[nodiscard]] bool is_open(std::size_t a, std::size_t b) {
        const std::size_t leg = 2 * std::min(a, b) + (std::max(a, b) - std::min(a, b) == 1 ? 0 : 1);
        if (open_[leg] == 0) open_[leg] = may_pass(a, b) && nodes_[a].usable ? 1 : 2;
        return open_[leg] == 1;
    }

    const SuggestInput& input_;
    const House& house_;
    std::vector<Panel> panels_;
    std::vector<Node> nodes_;
    std::vector<std::vector<std::size_t>> hops_;
    std::vector<char> open_;  ///< 0: not asked yet, 1, 2: shut; legs to the right and up of each node
    std::vector<double> best_;
    std::vector<std::size_t> before_;
    std::size_t start_ = nowhere;
};

}  // namespace

std::vector<Entrance> entrances(const SuggestInput& input, const House& house) {
    return Outdoors(input, house).search();
}

}  // namespace wg::pipework::suggesting
