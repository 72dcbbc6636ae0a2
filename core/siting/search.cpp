// Finds the best places without judging all of them in full: light and run, which cost nothing, give a bound below
// which a place's score cannot fall; fixings and view are worked out for those alone that could still win.
#include <algorithm>
#include <atomic>
#include <cmath>
#include <future>
#include <memory>
#include <mutex>
#include <queue>
#include <set>
#include <thread>

#include "core/siting/judge.h"
#include "core/siting/siting.h"

namespace wg::siting {
namespace {

struct Candidate {
    double score = 0.0;  ///< or its bound
    bool full = false;
    std::size_t seat = 0;
    GridPlace at;
    Measures measures;
};

// True when `a` comes after `b`. A bound goes before a full score of the same size: it may turn out to be equal and to
// come first in the order of places.
bool later(const Candidate& a, const Candidate& b) {
    if (a.score != b.score) return a.score > b.score;
    if (a.full != b.full) return a.full;
    const auto order = [](const Candidate& c) {
        return std::tuple(c.seat, c.at.row, c.at.column, c.at.hand == Hand::right ? 0 : 1);
    };
    return order(a) > order(b);
}

bool complete(const Input& input) {
    return input.site != nullptr && input.year != nullptr && input.catalogue != nullptr && !input.seats.empty() &&
           input.open_light.size() == input.seats.size() && input.yields.size() == input.seats.size() &&
           input.cell_m >= 0.02 && input.cell_m <= 1.0 && input.objective.valid() &&
           std::all_of(input.yields.begin(), input.yields.end(), [](const YieldCurve& y) {
               return y.light_kwh_m2.size() >= 2 && y.electricity_kwh.size() == y.light_kwh_m2.size() &&
                      y.pump_heat_kwh.size() == y.light_kwh_m2.size();
           });
}

// One place's turn to report at a time.
class Reporter {
   public:
    Reporter(const Progress& progress, double whole) : progress_(progress), whole_(whole) {}
    void add(double part) {
        const std::lock_guard<std::mutex> lock(mutex_);
        done_ += part;
        if (!cancelled_ && progress_ && !progress_(std::min(1.0, done_ / whole_))) cancelled_ = true;
    }
    [[nodiscard]] bool cancelled() const noexcept { return cancelled_; }

   private:
    const Progress& progress_;
    std::mutex mutex_;
    double whole_;
    double done_ = 0.0;
    std::atomic<bool> cancelled_ = false;
};

struct SeatFound {
    std::unique_ptr<SeatGround> ground;
    std::vector<Candidate> candidates;
    bool any_allowed = false;
};

SeatFound look_at(const Input& input, std::size_t seat, Reporter& reporter) {
    SeatFound found;
    if (reporter.cancelled()) return found;
    found.ground = std::make_unique<SeatGround>(input, seat);
    reporter.add(0.5);
    std::vector<Hand> hands;
    if (input.collector.right_hand) hands.push_back(Hand::right);
    if (input.collector.left_hand) hands.push_back(Hand::left);
    for (int row = 0; row < found.ground->rows(); ++row) {
        if (reporter.cancelled()) return found;
        for (int column = 0; column < found.ground->columns(); ++column) {
            if (!found.ground->allowed(row, column)) continue;
            found.any_allowed = true;
            for (const Hand hand : hands) {
                const GridPlace at{row, column, hand};
                const std::optional<Measures> measures = found.ground->cheap(at);
                if (measures)
                    found.candidates.push_back({input.objective.score(*measures), false, seat, at, *measures});
            }
        }
    }
    reporter.add(0.5);
    return found;
}

// Seats are taken in turn by two threads; what each finds stands under its own number, so the order does not matter.
std::vector<SeatFound> look_at_all(const Input& input, Reporter& reporter) {
    std::vector<SeatFound> found(input.seats.size());
    std::atomic<std::size_t> next = 0;
    const auto work = [&] {
        for (std::size_t seat = next++; seat < found.size(); seat = next++)
            found[seat] = look_at(input, seat, reporter);
    };
    std::future<void> other = std::async(std::launch::async, work);
    work();
    other.get();
    return found;
}

bool near_one_of(const std::vector<Place>& places, const Input& input, const Placement& placement, double apart_m) {
    return std::any_of(places.begin(), places.end(), [&](const Place& p) {
        return input.seats[p.seat].surface_id == placement.surface_id &&
               std::hypot(p.placement.x_m - placement.x_m, p.placement.y_m - placement.y_m) < apart_m;
    });
}

// Fixings and view of a handful of candidates at once, on two threads.
void judge_batch(const std::vector<SeatFound>& found, const Input& input, std::vector<Candidate>& batch,
                 std::vector<char>& holds) {
    holds.assign(batch.size(), 0);
    const auto work = [&](std::size_t from) {
        for (std::size_t i = from; i < batch.size(); i += 2) {
            Candidate& c = batch[i];
            holds[i] = found[c.seat].ground->complete(c.at, c.measures) ? 1 : 0;
            c.score = input.objective.score(c.measures);
            c.full = true;
        }
    };
    if (batch.size() < 32) {
        work(0);
        work(1);
        return;
    }
    std::future<void> other = std::async(std::launch::async, work, std::size_t{1});
    work(0);
    other.get();
}

// Whether the rules allow it is not asked: it is there.
std::optional<Place> present_place(const Input& input, const std::vector<SeatFound>& found) {
    if (input.moving >= input.choice.placements.size()) return std::nullopt;
    const Placement& now = input.choice.placements[input.moving];
    for (std::size_t seat = 0; seat < found.size(); ++seat) {
        const Seat& s = input.seats[seat];
        if (s.surface_id != now.surface_id || s.turn_deg != now.turn_deg || s.frame_tilt_deg != now.frame_tilt_deg ||
            s.frame_azimuth_deg != now.frame_azimuth_deg || found[seat].ground == nullptr) {
            continue;
        }
        const std::optional<GridPlace> at = found[seat].ground->nearest(now);
        if (!at) return std::nullopt;
        std::optional<Measures> measures = found[seat].ground->cheap(*at);
        if (!measures || !found[seat].ground->complete(*at, *measures)) return std::nullopt;
        return Place{seat, now, *measures, input.objective.score(*measures)};
    }
    return std::nullopt;
}

}  // namespace

Outcome best_places(const Input& input, const Progress& progress) {
    Outcome out;
    if (!complete(input)) return out;
    Reporter reporter(progress, static_cast<double>(input.seats.size()) + 1.0);
    const std::vector<SeatFound> found = look_at_all(input, reporter);
    std::vector<Candidate> heap;
    std::set<std::string> with_place;
    for (std::size_t seat = 0; seat < found.size(); ++seat) {
        heap.insert(heap.end(), found[seat].candidates.begin(), found[seat].candidates.end());
        if (!found[seat].candidates.empty()) with_place.insert(input.seats[seat].surface_id);
    }
    out.looked_at = heap.size();
    std::make_heap(heap.begin(), heap.end(), later);
    const auto pop = [&heap] {
        std::pop_heap(heap.begin(), heap.end(), later);
        Candidate c = heap.back();
        heap.pop_back();
        return c;
    };
    const double apart_m = input.apart_m > 0.0 ? input.apart_m : input.collector.length_m;
    std::vector<Candidate> batch;
    std::vector<char> holds;
    // Small batches first: often the first few win. They grow where fixings or view decide.
    std::size_t batch_size = 16;
    while (!heap.empty() && out.places.size() < static_cast<std::size_t>(std::max(0, input.places))) {
        if (reporter.cancelled()) break;
        if (heap.front().full) {
            const Candidate c = pop();
            Place place{c.seat, found[c.seat].ground->placement(c.at), c.measures, c.score};
            if (!near_one_of(out.places, input, place.placement, apart_m)) {
                out.places.push_back(std::move(place));
                reporter.add(0.0);
            }
            continue;
        }
        batch.clear();
        while (!heap.empty() && !heap.front().full && batch.size() < batch_size) {
            Candidate c = pop();
            // Too near to a place that is settled already: it can't be listed, whatever its fixings.
            if (!near_one_of(out.places, input, found[c.seat].ground->placement(c.at), apart_m)) batch.push_back(c);
        }
        judge_batch(found, input, batch, holds);
        out.judged += batch.size();
        for (std::size_t i = 0; i < batch.size(); ++i) {
            if (holds[i] == 0) continue;
            heap.push_back(batch[i]);
            std::push_heap(heap.begin(), heap.end(), later);
        }
        batch_size = std::min<std::size_t>(1024, batch_size * 2);
        reporter.add(0.0);
    }
    if (reporter.cancelled()) {
        out.places.clear();
        out.cancelled = true;
        return out;
    }
    out.present = present_place(input, found);
    std::set<std::string> told;
    for (std::size_t seat = 0; seat < input.seats.size(); ++seat) {
        const Seat& s = input.seats[seat];
        if (with_place.count(s.surface_id) != 0 || !told.insert(s.surface_id).second) continue;
        const bool allowed = std::any_of(found.begin(), found.end(), [&](const SeatFound& f) {
            return f.any_allowed && input.seats[static_cast<std::size_t>(&f - found.data())].surface_id == s.surface_id;
        });
        out.remarks.push_back(s.surface_label + (allowed ? ": too far from the block for its run or lift"
                                                         : ": no room for the plate with its free strip"));
    }
    reporter.add(1.0);
    return out;
}

}  // namespace wg::siting
