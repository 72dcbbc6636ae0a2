#include "core/roof/front.h"

#include <algorithm>
#include <cmath>

#include "core/quantity/constants.h"

namespace wg::roof {
namespace {

constexpr double no_length_m = 1e-7;  // what rounding leaves of a length that is none
constexpr double no_height_m = 1e-9;  // events closer than this happen together
constexpr double parallel = 1e-9;     // sine between directions that count as one
constexpr double no_area_m2 = 1e-5;   // a loop that encloses less has closed
constexpr double no_speed = 1e-12;

double dot(const Point2& a, const Point2& b) {
    return a.x_m * b.x_m + a.y_m * b.y_m;
}
double cross(const Point2& a, const Point2& b) {
    return a.x_m * b.y_m - a.y_m * b.x_m;
}
Point2 minus(const Point2& a, const Point2& b) {
    return {a.x_m - b.x_m, a.y_m - b.y_m};
}
double distance_m(const Point2& a, const Point2& b) {
    return std::hypot(a.x_m - b.x_m, a.y_m - b.y_m);
}
std::size_t before(std::size_t i, std::size_t count) {
    return (i + count - 1) % count;
}
std::size_t after(std::size_t i, std::size_t count) {
    return (i + 1) % count;
}

}  // namespace

Front::Front(const std::vector<Point2>& footprint, const std::vector<EdgePitch>& pitches) : sides_(footprint.size()) {
    const std::size_t count = footprint.size();
    Loop loop;
    for (std::size_t i = 0; i < count; ++i) {
        const Point2& a = footprint[i];
        const Point2& b = footprint[after(i, count)];
        const double length_m = distance_m(a, b);
        Line line;
        line.along = {(b.x_m - a.x_m) / length_m, (b.y_m - a.y_m) / length_m};
        line.normal = {-line.along.y_m, line.along.x_m};
        line.offset = dot(line.normal, a);
        line.speed = pitches[i] ? 1.0 / std::tan(radians(*pitches[i])) : 0.0;
        lines_.push_back(line);
        loop.push_back({i, {a, 0.0}, {}});
    }
    loops_.push_back(std::move(loop));
}

bool Front::rise() {
    Loop& whole = loops_.front();
    for (std::size_t i = 0; i < whole.size(); ++i) {
        if (!restart(whole, i, whole[i].born)) return false;
    }
    const std::size_t most_events = 20 * lines_.size() * lines_.size() + 100;
    for (std::size_t events = 0; events < most_events && !loops_.empty(); ++events) {
        const std::optional<Event> event = next_event();
        if (!event) return false;
        height_m_ = std::max(height_m_, event->height_m);
        if (!apply(*event)) return false;
    }
    return loops_.empty();
}

Point2 Front::at(const Corner& corner, double height_m) const {
    const double rise_m = height_m - corner.born.height_m;
    return {corner.born.plan.x_m + corner.velocity.x_m * rise_m, corner.born.plan.y_m + corner.velocity.y_m * rise_m};
}

/// A corner moves with the crossing of its two lines. Lines in one direction have none: such a corner goes straight in,
/// when both move alike.
bool Front::start(const Loop& loop, std::size_t corner, RoofPoint born, Corner& out) const {
    const Line& a = lines_[loop[before(corner, loop.size())].edge];
    const Line& b = lines_[loop[corner].edge];
    out.born = born;
    const double turn = cross(a.normal, b.normal);
    if (std::abs(turn) < parallel) {
        if (dot(a.normal, b.normal) < 0.0 || std::abs(a.speed - b.speed) > parallel) return false;
        out.velocity = {a.normal.x_m * a.speed, a.normal.y_m * a.speed};
        return true;
    }
    out.velocity = {(a.speed * b.normal.y_m - b.speed * a.normal.y_m) / turn,
                    (a.normal.x_m * b.speed - b.normal.x_m * a.speed) / turn};
    return true;
}

bool Front::restart(Loop& loop, std::size_t corner, const RoofPoint& born) {
    return start(loop, corner, born, loop[corner]);
}

bool Front::meets_along(std::size_t edge_a, std::size_t edge_b, double height_m) const {
    const Line& a = lines_[edge_a];
    const Line& b = lines_[edge_b];
    if (std::abs(cross(a.normal, b.normal)) > parallel || dot(a.normal, b.normal) > 0.0) return false;
    const double gap_m = a.offset + a.speed * height_m + b.offset + b.speed * height_m;
    return std::abs(gap_m) < 10.0 * no_length_m;
}

std::optional<Front::Event> Front::next_event() const {
    std::optional<Event> best;
    const auto offer = [&best](const Event& event) {
        // An edge that vanishes goes before a corner that runs into something: it often is the same place.
        const double lead_m = event.splits ? no_height_m : 0.0;
        if (!best || event.height_m < best->height_m - lead_m) best = event;
    };
    for (std::size_t l = 0; l < loops_.size(); ++l) {
        const Loop& loop = loops_[l];
        const std::size_t count = loop.size();
        for (std::size_t i = 0; i < count; ++i) {
            const Corner& from = loop[i];
            const Corner& to = loop[after(i, count)];
            const Point2& along = lines_[from.edge].along;
            const double length_m = dot(along, minus(at(to, height_m_), at(from, height_m_)));
            const double growth = dot(along, minus(to.velocity, from.velocity));
            if (growth < -no_speed)
                offer({height_m_ + std::max(0.0, length_m / -growth), l, i, 0, false});
            else if (length_m < no_length_m && growth < no_speed)
                offer({height_m_, l, i, 0, false});
        }
        for (std::size_t i = 0; i < count; ++i) {
            const std::size_t i_before = before(i, count);
            if (cross(lines_[loop[i_before].edge].along, lines_[loop[i].edge].along) > -parallel) continue;
            const Point2 here = at(loop[i], height_m_);
            for (std::size_t k = 0; k < count; ++k) {
                if (k == i || k == i_before) continue;
                const Line& line = lines_[loop[k].edge];
                const double ahead_m = dot(line.normal, here) - line.offset - line.speed * height_m_;
                const double closing = line.speed - dot(line.normal, loop[i].velocity);
                if (closing < no_speed || ahead_m < -no_length_m) continue;
                const double height_m = height_m_ + std::max(0.0, ahead_m) / closing;
                const Point2 hit = at(loop[i], height_m);
                const double from_m = dot(line.along, at(loop[k], height_m));
                const double to_m = dot(line.along, at(loop[after(k, count)], height_m));
                const double place_m = dot(line.along, hit);
                if (place_m < from_m - no_length_m || place_m > to_m + no_length_m) continue;
                offer({height_m, l, i, k, true});
            }
        }
    }
    return best;
}

bool Front::apply(const Event& event) {
    if (event.splits) return split(event);
    return shrink(event.loop, event.corner);
}

void Front::add(std::size_t edge, const RoofPoint& from, const RoofPoint& to) {
    if (std::hypot(distance_m(from.plan, to.plan), from.height_m - to.height_m) < 10.0 * no_length_m) return;
    sides_[edge].push_back({from, to});
}

/// The way a corner has gone is a hip or a valley: a side of both faces that meet there.
void Front::end_corner(const Loop& loop, std::size_t corner, double height_m) {
    const RoofPoint end{at(loop[corner], height_m), height_m};
    add(loop[before(corner, loop.size())].edge, loop[corner].born, end);
    add(loop[corner].edge, loop[corner].born, end);
}

/// What is left of a loop without area is a ridge (or a point): its edges are the last sides of their faces.
void Front::finish(const Loop& loop) {
    for (std::size_t i = 0; i < loop.size(); ++i) {
        if (loop.size() > 1) end_corner(loop, i, height_m_);
        const Corner& next = loop[after(i, loop.size())];
        add(loop[i].edge, {at(loop[i], height_m_), height_m_}, {at(next, height_m_), height_m_});
    }
}

double Front::area_m2(const Loop& loop, double height_m) const {
    double sum = 0.0;
    for (std::size_t i = 0; i < loop.size(); ++i)
        sum += cross(at(loop[i], height_m), at(loop[after(i, loop.size())], height_m));
    return 0.5 * sum;
}

bool Front::shrink(std::size_t loop_index, std::size_t corner) {
    Loop& loop = loops_[loop_index];
    const std::size_t next = after(corner, loop.size());
    const Point2 a = at(loop[corner], height_m_);
    const Point2 b = at(loop[next], height_m_);
    const RoofPoint born{{0.5 * (a.x_m + b.x_m), 0.5 * (a.y_m + b.y_m)}, height_m_};
    end_corner(loop, corner, height_m_);
    end_corner(loop, next, height_m_);
    loop[next].born = born;
    loop[next].velocity = {};
    loop.erase(loop.begin() + static_cast<std::ptrdiff_t>(corner));
    return close_ridges(loop_index);
}

bool Front::split(const Event& event) {
    const Loop loop = loops_[event.loop];
    const std::size_t count = loop.size();
    const RoofPoint born{at(loop[event.corner], height_m_), height_m_};
    end_corner(loop, event.corner, height_m_);
    // From the corner on to the edge that was hit, which now ends there; and from that place on back to the corner.
    Loop first;
    for (std::size_t i = event.corner; i != event.hit; i = after(i, count))
        first.push_back(loop[i]);
    first.push_back(loop[event.hit]);
    first.front().born = born;
    first.front().velocity = {};
    Loop second;
    second.push_back({loop[event.hit].edge, born, {}});
    for (std::size_t i = after(event.hit, count); i != event.corner; i = after(i, count))
        second.push_back(loop[i]);
    loops_[event.loop] = std::move(first);
    loops_.push_back(std::move(second));
    // The later one first: closing may take a loop off the list.
    const std::size_t last = loops_.size() - 1;
    return close_ridges(last) && close_ridges(event.loop);
}

/// Gives new corners of a loop (those born now, standing still) their way. Where their two edges lie on one another,
/// the shorter becomes ridge and the corner moves to its far end at once.
bool Front::close_ridges(std::size_t loop_index) {
    Loop& loop = loops_[loop_index];
    for (;;) {
        if (loop.size() < 3 || std::abs(area_m2(loop, height_m_)) < no_area_m2 * 1e-3) {
            if (std::abs(area_m2(loop, height_m_)) > no_area_m2) return false;
            finish(loop);
            loops_.erase(loops_.begin() + static_cast<std::ptrdiff_t>(loop_index));
            return true;
        }
        std::size_t corner = loop.size();
        for (std::size_t i = 0; i < loop.size(); ++i) {
            const bool fresh = loop[i].born.height_m == height_m_ && loop[i].velocity == Point2{};
            if (fresh) corner = i;
        }
        if (corner == loop.size()) return true;
        const std::size_t a = before(corner, loop.size());
        if (!meets_along(loop[a].edge, loop[corner].edge, height_m_)) {
            if (!restart(loop, corner, loop[corner].born)) return false;
            // Between two gables, or a gable and what stands still with it, a corner rests for good.
            if (loop[corner].velocity == Point2{}) return false;
            continue;
        }
        const std::size_t b = after(corner, loop.size());
        const RoofPoint here = loop[corner].born;
        const RoofPoint far_a{at(loop[a], height_m_), height_m_};
        const RoofPoint far_b{at(loop[b], height_m_), height_m_};
        const double length_a_m = distance_m(here.plan, far_a.plan);
        const double length_b_m = distance_m(here.plan, far_b.plan);
        const bool a_goes = length_a_m <= length_b_m + no_length_m;
        const bool b_goes = length_b_m <= length_a_m + no_length_m;
        const RoofPoint& end = a_goes ? far_a : far_b;
        add(loop[a].edge, here, end);
        add(loop[corner].edge, here, end);
        if (a_goes) end_corner(loop, a, height_m_);
        if (b_goes) end_corner(loop, b, height_m_);
        std::vector<std::size_t> gone;
        if (a_goes) {
            loop[corner].born = end;
            gone.push_back(a);
        }
        if (b_goes) {
            loop[b].born = end;
            loop[b].velocity = {};
            gone.push_back(corner);
        }
        std::sort(gone.rbegin(), gone.rend());
        for (const std::size_t i : gone)
            loop.erase(loop.begin() + static_cast<std::ptrdiff_t>(i));
    }
}

}  // namespace wg::roof
