#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <queue>

#include "core/pipework/suggest_parts.h"
#include "core/site/vec.h"

namespace wg::pipework::suggesting {
namespace {

using site::operator+;
using site::operator-;
using site::operator*;

constexpr double look_every_m = 0.15;  // along a leg, for what it must keep out of
constexpr double under_ceiling_m = 0.15;
constexpr double floor_thick_m = 0.30;  // a ceiling hangs so far under the floor over it
constexpr double same_line_m = 0.02;
constexpr double least_step_m = 0.15;   // between two bends
constexpr std::size_t most_lines = 40;  // of one direction; a plan with more closed rooms is searched by the first

struct Lines {
    std::vector<double> at;
    void add(double value) {
        if (at.size() < most_lines) at.push_back(value);
    }
    void settle() {
        std::sort(at.begin(), at.end());
        at.erase(std::unique(at.begin(), at.end(), [](double a, double b) { return std::abs(a - b) < 1e-9; }),
                 at.end());
    }
    [[nodiscard]] std::size_t index_of(double value) const {
        return static_cast<std::size_t>(std::lower_bound(at.begin(), at.end(), value - 1e-9) - at.begin());
    }
};

class RoomGrid {
   public:
    RoomGrid(const House& house, Point3 from, Point3 to, double ceiling_m) : house_(house), to_(to) {
        for (const Point3 p : {from, to}) {
            u_.add(u_of(p));
            v_.add(v_of(p));
            z_.add(p.z_m);
        }
        hang_at(ceiling_m - under_ceiling_m, from, to);
        for (const double floor : house.floors_m)
            hang_at(floor - floor_thick_m, from, to);
        for (const House::Closed& closed : house.closed) {
            double u_low = 1e9, u_high = -1e9, v_low = 1e9, v_high = -1e9;
            for (const Point2 p : closed.outline) {
                const Point3 q{p.x_m, p.y_m, 0.0};
                u_low = std::min(u_low, u_of(q));
                u_high = std::max(u_high, u_of(q));
                v_low = std::min(v_low, v_of(q));
                v_high = std::max(v_high, v_of(q));
            }
            u_.add(u_low - clear_of_m);
            u_.add(u_high + clear_of_m);
            v_.add(v_low - clear_of_m);
            v_.add(v_high + clear_of_m);
            z_.add(closed.from_z_m - clear_of_m);
            z_.add(closed.to_z_m + clear_of_m);
        }
        const double lowest = std::min(from.z_m, to.z_m);  // nothing is dug
        z_.at.erase(std::remove_if(z_.at.begin(), z_.at.end(), [lowest](double z) { return z < lowest - 1e-9; }),
                    z_.at.end());
        u_.settle();
        v_.settle();
        z_.settle();
    }

    std::optional<Indoors> search(Point3 from, Point3 arriving) {
        const std::size_t nodes = u_.at.size() * v_.at.size() * z_.at.size();
        const std::size_t start = node(u_.index_of(u_of(from)), v_.index_of(v_of(from)), z_.index_of(from.z_m));
        const std::size_t goal = node(u_.index_of(u_of(to_)), v_.index_of(v_of(to_)), z_.index_of(to_.z_m));
        std::vector<double> best(nodes * directions, std::numeric_limits<double>::infinity());
        std::vector<std::size_t> before(nodes * directions, none);
        clear_.assign(nodes * 3, unknown);
        using Entry = std::pair<double, std::size_t>;
        std::priority_queue<Entry, std::vector<Entry>, std::greater<>> open;
        const std::size_t first = start * directions + direction_of(arriving);
        best[first] = 0.0;
        open.push({estimate(start), first});
        while (!open.empty()) {
            const auto [cost_to_goal, state] = open.top();
            open.pop();
            const std::size_t here = state / directions;
            const double cost = best[state];
            if (cost_to_goal > cost + estimate(here) + 1e-9) continue;
            if (here == goal) return {{cost, way(state, before, from)}};
            for (std::size_t d = 0; d < directions; ++d) {
                std::size_t next = none;
                const double step = step_cost(here, d, next);
                if (next == none) continue;
                const std::size_t coming = state % directions;
                if (d == (coming ^ 1U)) continue;  // back on itself
                const double there = cost + step + (d == coming ? 0.0 : bend_costs_m);
                const std::size_t at = next * directions + d;
                if (there >= best[at] - 1e-12) continue;
                best[at] = there;
                before[at] = state;
                open.push({there + estimate(next), at});
            }
        }
        return std::nullopt;
    }

   private:
    static constexpr std::size_t directions = 6;  // u+, u-, v+, v-, up, down
    static constexpr std::size_t none = std::numeric_limits<std::size_t>::max();
    static constexpr char unknown = 0, open_leg = 1, shut_leg = 2;

    /// A height for level legs; one of the ends' own when it is so near that the step between had no room for bends.
    void hang_at(double z, Point3 from, Point3 to) {
        for (const double end : {from.z_m, to.z_m})
            if (std::abs(end - z) < least_step_m) {
                ceilings_.push_back(end);
                return;
            }
        ceilings_.push_back(z);
        z_.add(z);
    }

    [[nodiscard]] double u_of(Point3 p) const { return p.x_m * house_.u.x_m + p.y_m * house_.u.y_m; }
    [[nodiscard]] double v_of(Point3 p) const { return p.x_m * house_.v.x_m + p.y_m * house_.v.y_m; }
    [[nodiscard]] std::size_t node(std::size_t iu, std::size_t iv, std::size_t iz) const {
        return (iz * v_.at.size() + iv) * u_.at.size() + iu;
    }
    [[nodiscard]] std::array<std::size_t, 3> place(std::size_t n) const {
        return {n % u_.at.size(), n / u_.at.size() % v_.at.size(), n / u_.at.size() / v_.at.size()};
    }
    [[nodiscard]] Point3 point(std::size_t n) const {
        const auto [iu, iv, iz] = place(n);
        const double u = u_.at[iu], v = v_.at[iv];
        return {u * house_.u.x_m + v * house_.v.x_m, u * house_.u.y_m + v * house_.v.y_m, z_.at[iz]};
    }
    [[nodiscard]] double estimate(std::size_t n) const {
        const Point3 p = point(n);
        return std::abs(u_of(p) - u_of(to_)) + std::abs(v_of(p) - v_of(to_)) + std::abs(p.z_m - to_.z_m);
    }
    [[nodiscard]] std::size_t direction_of(Point3 way) const {
        const std::array<double, 3> along{u_of(way), v_of(way), way.z_m};
        std::size_t axis = 0;
        for (std::size_t i = 1; i < 3; ++i)
            if (std::abs(along[i]) > std::abs(along[axis]) + 1e-9) axis = i;
        return 2 * axis + (along[axis] < 0.0 ? 1U : 0U);
    }

    double step_cost(std::size_t here, std::size_t d, std::size_t& next) {
        auto at = place(here);
        const std::size_t axis = d / 2;
        const std::array<std::size_t, 3> sizes{u_.at.size(), v_.at.size(), z_.at.size()};
        const bool back = (d & 1U) != 0;
        if (back ? at[axis] == 0 : at[axis] + 1 >= sizes[axis]) return 0.0;
        at[axis] = back ? at[axis] - 1 : at[axis] + 1;
        const std::size_t other = node(at[0], at[1], at[2]);
        char& clear = clear_[std::min(here, other) * 3 + axis];
        if (clear == unknown) clear = is_clear(point(here), point(other)) ? open_leg : shut_leg;
        if (clear == shut_leg) return 0.0;
        next = other;
        const Point3 a = point(here), b = point(other);
        const double length = apart_m(a, b);
        if (axis == 2)
            return length * (back ? 1.0 : rising_costs) + floor_passage_costs_m * floors_between(a.z_m, b.z_m);
        const bool hung = std::any_of(ceilings_.begin(), ceilings_.end(),
                                      [&a](double z) { return std::abs(z - a.z_m) < same_line_m; });
        return length * (hung ? 1.0 : through_room_costs);
    }
    [[nodiscard]] double floors_between(double a, double b) const {
        return static_cast<double>(std::count_if(house_.floors_m.begin(), house_.floors_m.end(), [&](double floor) {
            return floor > std::min(a, b) && floor <= std::max(a, b);
        }));
    }
    [[nodiscard]] bool is_clear(Point3 a, Point3 b) const {
        const int parts = std::max(1, static_cast<int>(std::ceil(apart_m(a, b) / look_every_m)));
        for (int i = 0; i <= parts; ++i) {
            const Point3 p = a + (b - a) * (static_cast<double>(i) / parts);
            if (house_.is_closed(p)) return false;
            if (!house_.plan.empty() && !house_.covers({p.x_m, p.y_m})) return false;
            if (p.z_m > house_.under_roof_m({p.x_m, p.y_m}) - clear_of_m) return false;
        }
        return true;
    }
    [[nodiscard]] std::vector<Point3> way(std::size_t state, const std::vector<std::size_t>& before,
                                          Point3 from) const {
        std::vector<Point3> out;
        for (std::size_t s = state; s != none; s = before[s])
            out.push_back(point(s / directions));
        std::reverse(out.begin(), out.end());
        out.front() = from;
        out.back() = to_;
        return out;
    }

    const House& house_;
    Point3 to_;
    Lines u_, v_, z_;
    std::vector<double> ceilings_;
    std::vector<char> clear_;
};

}  // namespace

std::optional<Indoors> indoors(const House& house, Point3 from, Point3 arriving, Point3 to, double ceiling_m) {
    if (house.is_closed(from)) return std::nullopt;
    return RoomGrid(house, from, to, ceiling_m).search(from, arriving);
}

}  // namespace wg::pipework::suggesting
