#include "core/merge/join.h"

#include <algorithm>
#include <set>

#include "core/job/codec.h"
#include "core/merge/field_words.h"
#include "core/merge/path.h"
#include "core/merge/shown.h"
#include "core/quantity/utf8.h"

namespace wg::merge {
namespace {

/// Machines of both, and where each side's stand among them.
struct Seats {
    std::vector<SeenSeat> all;
    std::vector<std::uint32_t> of_mine;
    std::vector<std::uint32_t> of_theirs;
    std::vector<std::uint64_t> mine_saw;  ///< by place among all
    std::vector<std::uint64_t> theirs_saw;
};

Seats seats_of(const Versions& mine, const Versions& theirs) {
    Seats out;
    out.all.reserve(mine.seats.size() + theirs.seats.size());
    out.of_mine.reserve(mine.seats.size());
    out.of_theirs.reserve(theirs.seats.size());
    std::size_t i = 0;
    std::size_t k = 0;
    while (i < mine.seats.size() || k < theirs.seats.size()) {
        const bool has_mine =
            i < mine.seats.size() && (k >= theirs.seats.size() || mine.seats[i].seat.id <= theirs.seats[k].seat.id);
        const bool has_theirs =
            k < theirs.seats.size() && (i >= mine.seats.size() || theirs.seats[k].seat.id <= mine.seats[i].seat.id);
        const auto place = static_cast<std::uint32_t>(out.all.size());
        SeenSeat both = has_mine ? mine.seats[i] : theirs.seats[k];
        if (has_mine && has_theirs) {
            const SeenSeat& other = theirs.seats[k];
            // The name it had at its newest edit.
            const bool newer = other.seen != both.seen ? other.seen > both.seen : other.seat.name > both.seat.name;
            if (newer) both = other;
        }
        out.mine_saw.push_back(has_mine ? mine.seats[i].seen : 0);
        out.theirs_saw.push_back(has_theirs ? theirs.seats[k].seen : 0);
        if (has_mine) {
            out.of_mine.push_back(place);
            ++i;
        }
        if (has_theirs) {
            out.of_theirs.push_back(place);
            ++k;
        }
        out.all.push_back(std::move(both));
    }
    return out;
}

bool same_edit(const Value& a, const Value& b) noexcept {
    return a.seat == b.seat && a.number == b.number;
}

/// Two edits under one dot: what a seat id used twice leads to.
std::optional<Problem> twice(const Seats& seats, const Value& a, const Value& b) {
    if (!same_edit(a, b) || (a.json == b.json && a.at == b.at)) return std::nullopt;
    const Seat& seat = seats.all[a.seat].seat;
    return Problem{"\"" + for_message(seat.name) + "\"",
                   "made two different edits under one number: its data were copied or put back from a backup, and "
                   "edited on without a new id",
                   "Give the machine a new id; put this copy together as one without versions"};
}

/// What stays: what both have, and what the other has not seen. Both sorted by dot.
std::optional<Problem> join_values(const Seats& seats, const std::vector<Value>& mine, const std::vector<Value>& theirs,
                                   std::vector<Value>& out) {
    const auto is_in = [](const Value& value, const std::vector<Value>& other) {
        return std::any_of(other.begin(), other.end(), [&](const Value& v) { return same_edit(v, value); });
    };
    out.reserve(mine.size() + theirs.size());
    for (const Value& value : mine) {
        for (const Value& other : theirs) {
            if (std::optional<Problem> clash = twice(seats, value, other)) return clash;
        }
        if (is_in(value, theirs) || value.number > seats.theirs_saw[value.seat]) out.push_back(value);
    }
    for (const Value& value : theirs) {
        if (!is_in(value, mine) && value.number > seats.mine_saw[value.seat]) out.push_back(value);
    }
    std::sort(out.begin(), out.end(),
              [](const Value& a, const Value& b) { return a.seat != b.seat ? a.seat < b.seat : a.number < b.number; });
    return std::nullopt;
}

std::vector<Value> placed(const std::vector<Value>& values, const std::vector<std::uint32_t>& places) {
    std::vector<Value> out = values;
    for (Value& value : out)
        value.seat = places[value.seat];
    return out;
}

/// A copy with what its job says besides its versions taken up.
struct Copy {
    const Versions* versions = nullptr;
    std::optional<Versions> taken_up;  ///< holds them where the job said more
    Shown shown;
};

std::vector<Problem> take_copy(const Job& job, const Versions& versions, Copy& out) {
    const Flat said = flattened(job);
    out.versions = &versions;
    out.shown = shown(versions);
    const Flat& now = out.shown.flat;
    if (said.fields == now.fields && job.id == versions.job_id) {
        const bool in_order = std::all_of(said.lists.begin(), said.lists.end(), [&](const auto& list) {
            const auto found = now.lists.find(list.first);
            return list.second.empty() || (found != now.lists.end() && found->second == list.second);
        });
        if (in_order) return {};
    }
    Result<Versions> taken_up = of_copy(versions, job, "a copy");
    if (!taken_up) return taken_up.problems();
    out.taken_up = std::move(taken_up.value());
    out.versions = &*out.taken_up;
    out.shown = shown(*out.versions);
    return {};
}

class Differences {
   public:
    Differences(const Copy& mine, const Copy& after)
        : mine_(*mine.versions), versions_(*after.versions), before_(mine.shown), now_(after.shown) {}

    std::vector<Change> all() {
        for (const auto& [path, value] : now_.flat.fields) {
            const auto old = before_.flat.fields.find(path);
            if (old == before_.flat.fields.end()) {
                if (!within(path, added_)) add(is_element(path) ? Change::Kind::added : Change::Kind::changed, path);
                if (is_element(path)) added_ = path;
            } else if (old->second != value) {
                add(Change::Kind::changed, path);
            }
        }
        for (const auto& [path, value] : before_.flat.fields) {
            if (now_.flat.fields.count(path) != 0 || within(path, removed_)) continue;
            add(is_element(path) ? Change::Kind::removed : Change::Kind::changed, path);
            if (is_element(path)) removed_ = path;
        }
        for (const auto& [list, ids] : now_.flat.lists)
            look_at_order(list, ids);
        std::sort(out_.begin(), out_.end(), [](const Change& a, const Change& b) { return a.path < b.path; });
        return std::move(out_);
    }

   private:
    static bool within(const std::string& path, const std::string& element) {
        return !element.empty() && is_within(path, element);
    }

    std::optional<std::string> value_in(const Flat& flat, const std::string& path) const {
        const auto found = flat.fields.find(path);
        return found == flat.fields.end() ? std::nullopt : std::optional<std::string>(found->second);
    }

    void add(Change::Kind kind, const std::string& path) {
        // The place of a list says nothing to people; its elements do.
        const std::optional<std::string> before = value_in(before_.flat, path);
        const std::optional<std::string> after = value_in(now_.flat, path);
        if (before.value_or("[]") == "[]" && after.value_or("[]") == "[]") return;
        Change change{kind,
                      path,
                      where_words(versions_, path),
                      value_words(mine_, path, before),
                      value_words(versions_, path, after),
                      {},
                      {},
                      {}};
        if (kind == Change::Kind::added) change.before.clear();
        sign(change, path);
        out_.push_back(std::move(change));
    }

    void look_at_order(const std::string& list, const std::vector<std::string>& ids) {
        const auto old = before_.flat.lists.find(list);
        if (old == before_.flat.lists.end() || list == "record") return;
        const auto common = [](const std::vector<std::string>& of, const std::vector<std::string>& other) {
            const std::set<std::string> there(other.begin(), other.end());
            std::vector<std::string> out;
            out.reserve(of.size());
            std::copy_if(of.begin(), of.end(), std::back_inserter(out),
                         [&](const std::string& id) { return there.count(id) != 0; });
            return out;
        };
        const std::vector<std::string> before = common(old->second, ids);
        const std::vector<std::string> after = common(ids, old->second);
        if (before == after) return;
        const std::string path = special_path(list, order_segment);
        Change change{Change::Kind::changed,
                      path,
                      where_words(versions_, list) + ", order",
                      order_words(mine_, list, before),
                      order_words(versions_, list, after),
                      {},
                      {},
                      {}};
        sign(change, path);
        out_.push_back(std::move(change));
    }

    void sign(Change& change, const std::string& path) const {
        const auto found = versions_.fields.find(path);
        if (found == versions_.fields.end()) return;
        const Value& value = standing(path, found->second);
        change.seat_id = versions_.seats[value.seat].seat.id;
        change.seat_name = versions_.seats[value.seat].seat.name;
        change.at = value.at;
    }

    const Versions& mine_;
    const Versions& versions_;
    const Shown& before_;
    const Shown& now_;
    std::string added_;
    std::string removed_;
    std::vector<Change> out_;
};

/// The building's own fields; what is made from them is another matter.
bool building_differs(const Versions& a, const Versions& b, const std::string& building) {
    const auto from_a = a.fields.lower_bound(building + '/');
    const auto from_b = b.fields.lower_bound(building + '/');
    const auto of = [](const Versions& v, auto from, auto end) {
        std::vector<std::pair<std::string, std::string>> out;
        for (auto at = from; at != end && at != v.fields.end(); ++at) {
            if (last_segment(at->first) == after_segment || last_segment(at->first) == "label") continue;
            out.emplace_back(at->first, standing(at->first, at->second).json.value_or(""));
        }
        return out;
    };
    return of(a, from_a, past(a, building)) != of(b, from_b, past(b, building));
}

std::vector<std::string> buildings_of_both(const Job& job, const Versions& after, const Versions& mine,
                                           const Versions& theirs) {
    std::vector<std::string> out;
    for (const Building& building : job.site.buildings) {
        const std::string path = element_path("site/buildings", building.id);
        if (building_differs(after, mine, path) && building_differs(after, theirs, path)) out.push_back(building.id);
    }
    return out;
}

}  // namespace

Result<Versions> joined(const Versions& mine, const Versions& theirs) {
    if (mine.job_id != theirs.job_id) {
        return Problem{
            "id", "these are copies of two jobs: " + for_message(mine.job_id) + " and " + for_message(theirs.job_id),
            "Keep both"};
    }
    const Seats seats = seats_of(mine, theirs);
    Versions out;
    out.job_id = mine.job_id;
    out.seats = seats.all;
    const std::vector<Value> none;
    auto a = mine.fields.begin();
    auto b = theirs.fields.begin();
    while (a != mine.fields.end() || b != theirs.fields.end()) {
        const bool has_mine = a != mine.fields.end() && (b == theirs.fields.end() || a->first <= b->first);
        const bool has_theirs = b != theirs.fields.end() && (a == mine.fields.end() || b->first <= a->first);
        const std::string& path = has_mine ? a->first : b->first;
        std::vector<Value> values;
        std::optional<Problem> clash = join_values(seats, has_mine ? placed(a->second, seats.of_mine) : none,
                                                   has_theirs ? placed(b->second, seats.of_theirs) : none, values);
        if (clash) return *clash;
        if (!values.empty()) out.fields.emplace_hint(out.fields.end(), path, std::move(values));
        if (has_mine) ++a;
        if (has_theirs) ++b;
    }
    return out;
}

Result<Merged> join(const Job& mine, const Versions& my_versions, const Job& theirs, const Versions& their_versions) {
    Copy my_copy;
    if (std::vector<Problem> refused = take_copy(mine, my_versions, my_copy); !refused.empty()) return refused;
    Copy their_copy;
    if (std::vector<Problem> refused = take_copy(theirs, their_versions, their_copy); !refused.empty()) return refused;
    Result<Versions> versions = joined(*my_copy.versions, *their_copy.versions);
    if (!versions) return versions.problems();
    const Copy both{&versions.value(), std::nullopt, shown(versions.value())};
    Result<Job> job = job_of(both.shown.flat);
    if (!job) return job.problems();
    Merged out;
    out.job = std::move(job.value());
    out.job.revision = std::max(mine.revision, theirs.revision);
    out.job.changed_at = mine.changed_at;
    out.job.base_sha256 = mine.base_sha256;
    out.job.base_revision = mine.base_revision;
    out.taken = Differences(my_copy, both).all();
    out.open = open_fields(*both.versions, both.shown);
    out.buildings_to_remake = buildings_of_both(out.job, *both.versions, *my_copy.versions, *their_copy.versions);
    out.versions = std::move(versions.value());
    return out;
}

Result<Merged> join_from_base(const Job& base, const Job& mine, const std::string& my_name, const Job& theirs,
                              const std::string& their_name) {
    const Versions start = begin(base);
    const Result<Versions> my_versions = of_copy(start, mine, my_name);
    if (!my_versions) return my_versions.problems();
    const Result<Versions> their_versions = of_copy(start, theirs, their_name);
    if (!their_versions) return their_versions.problems();
    return join(mine, my_versions.value(), theirs, their_versions.value());
}

}  // namespace wg::merge
