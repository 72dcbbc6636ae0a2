#include "core/merge/open.h"

#include <algorithm>
#include <nlohmann/json.hpp>
#include <unordered_set>

#include "core/merge/edit.h"
#include "core/merge/field_words.h"
#include "core/merge/path.h"
#include "core/merge/shown.h"
#include "core/quantity/utf8.h"

namespace wg::merge {
namespace {

using nlohmann::json;

/// Values of a field that differ, each by its newest edit, the one that stands first. An empty list says no more than
/// one left out.
std::vector<const Value*> different(std::string_view path, const std::vector<Value>& values) {
    std::vector<const Value*> sorted;
    sorted.reserve(values.size());
    for (const Value& value : values)
        sorted.push_back(&value);
    std::sort(sorted.begin(), sorted.end(), [](const Value* a, const Value* b) {
        return a->number != b->number ? a->number > b->number : a->seat > b->seat;
    });
    const Value& first = standing(path, values);
    const auto at = std::find(sorted.begin(), sorted.end(), &first);
    std::rotate(sorted.begin(), at, at + 1);
    const auto nothing = [](const Value& v) { return !v.json || *v.json == "[]"; };
    std::vector<const Value*> out;
    for (const Value* value : sorted) {
        const bool known = std::any_of(out.begin(), out.end(), [&](const Value* other) {
            return value->json == other->json || (nothing(*value) && nothing(*other));
        });
        if (!known) out.push_back(value);
    }
    return out;
}

std::vector<std::string> ids_in(const std::string& text) {
    const json read = json::parse(text, nullptr, false);
    std::vector<std::string> out;
    out.reserve(read.size());
    for (const json& id : read) {
        if (id.is_string()) out.push_back(id.get<std::string>());
    }
    return out;
}

/// The ids of an order that are there and stand in every one of them.
std::vector<std::vector<std::string>> common(const Shown& now, std::string_view list,
                                             const std::vector<const Value*>& values) {
    std::map<std::string, std::size_t> count;
    std::vector<std::vector<std::string>> out;
    out.reserve(values.size());
    for (const Value* value : values) {
        out.push_back(ids_in(value->json.value_or("[]")));
        for (const std::string& id : out.back())
            ++count[id];
    }
    for (std::vector<std::string>& ids : out) {
        const auto gone = [&](const std::string& id) {
            return count[id] != values.size() || now.flat.fields.count(element_path(list, id)) == 0;
        };
        ids.erase(std::remove_if(ids.begin(), ids.end(), gone), ids.end());
    }
    return out;
}

class Finder {
   public:
    Finder(const Versions& versions, const Shown& now) : versions_(versions), now_(now) {}

    std::vector<Open> all() {
        auto at = versions_.fields.begin();
        while (at != versions_.fields.end()) {
            if (now_.hidden.count(at->first) != 0) {
                at = past(versions_, at->first);
                continue;
            }
            look(at->first, at->second);
            ++at;
        }
        for (const Repair& repair : now_.repairs)
            add_repair(repair);
        std::stable_sort(out_.begin(), out_.end(), [](const Open& a, const Open& b) { return a.path < b.path; });
        return std::move(out_);
    }

   private:
    Side side(const Value& value, std::string words) const {
        const Seat& seat = versions_.seats[value.seat].seat;
        return {std::move(words), !value.json.has_value(), seat.id, seat.name, value.at, value.number};
    }

    void look(const std::string& path, const std::vector<Value>& values) {
        const std::string_view last = last_segment(path);
        if (values.size() < 2 || last == after_segment) return;
        const std::vector<const Value*> sides = different(path, values);
        if (sides.size() < 2) return;
        if (last == order_segment) return look_at_order(path, sides);
        Open open;
        open.path = path;
        open.kind = is_entry(path)     ? OpenKind::entry_altered
                    : is_element(path) ? OpenKind::removed_changed
                                       : OpenKind::field;
        open.where = where_words(versions_, path);
        for (const Value* value : sides) {
            std::string words = value_words(versions_, path, value->json);
            if (open.kind == OpenKind::removed_changed && value->json) words = "changed";
            if (open.kind == OpenKind::entry_altered && !value->json) words = "missing";
            open.sides.push_back(side(*value, std::move(words)));
        }
        out_.push_back(std::move(open));
    }

    void look_at_order(const std::string& path, const std::vector<const Value*>& sides) {
        const std::string list(parent_of(path));
        // The record puts itself in order.
        if (list == "record") return;
        const auto orders_told = common(now_, list, sides);
        Open open;
        open.kind = OpenKind::order;
        open.path = path;
        std::vector<const std::vector<std::string>*> told;
        for (std::size_t i = 0; i < sides.size(); ++i) {
            const bool known =
                std::any_of(told.begin(), told.end(), [&](const auto* o) { return *o == orders_told[i]; });
            if (known) continue;
            told.push_back(&orders_told[i]);
            open.sides.push_back(side(*sides[i], order_words(versions_, list, orders_told[i])));
        }
        if (open.sides.size() < 2) return;
        open.where = where_words(versions_, list) + ", order";
        out_.push_back(std::move(open));
    }

    void add_repair(const Repair& repair) {
        const auto found = versions_.fields.find(repair.path);
        const Value& value = standing(repair.path, found->second);
        if (repair.names.empty()) {
            Open open;
            open.kind = OpenKind::link_lost;
            open.path = repair.path;
            open.where = where_words(versions_, repair.path);
            open.sides = {side(value, "the building's edge is gone: drawn free")};
            out_.push_back(std::move(open));
            return;
        }
        const std::string by = where_words(versions_, repair.names);
        const auto same = std::find_if(out_.begin(), out_.end(), [&](const Open& open) {
            return open.kind == OpenKind::removed_named && open.path == repair.path;
        });
        if (same != out_.end()) {
            same->names += "; " + by;
            return;
        }
        Open open;
        open.kind = OpenKind::removed_named;
        open.path = repair.path;
        open.where = where_words(versions_, repair.path);
        open.names = by;
        const auto namer = versions_.fields.find(repair.names);
        open.sides = {side(standing(repair.names, namer->second), "named"), side(value, "removed")};
        out_.push_back(std::move(open));
    }

    const Versions& versions_;
    const Shown& now_;
    std::vector<Open> out_;
};

std::string upper_first(std::string text) {
    if (!text.empty() && text[0] >= 'a' && text[0] <= 'z') text[0] = static_cast<char>(text[0] - 'a' + 'A');
    return text;
}

std::string by_whom(const Side& side) {
    if (side.seat_name.empty()) return " (as it was)";
    return " (" + for_message(side.seat_name, 80) + (side.at.unix_s != 0 ? ", " + iso8601(side.at) : "") + ')';
}

/// The value that stands behind a side of what is open.
const Value* value_of_side(const Versions& versions, const Open& open, std::size_t side) {
    const auto found = versions.fields.find(open.path);
    if (found == versions.fields.end()) return nullptr;
    const Side& wanted = open.sides[side];
    for (const Value& value : found->second) {
        if (value.number == wanted.number && versions.seats[value.seat].seat.id == wanted.seat_id) return &value;
    }
    return nullptr;
}

}  // namespace

std::vector<Open> open_fields(const Versions& versions) {
    return open_fields(versions, shown(versions));
}

std::vector<Open> open_fields(const Versions& versions, const Shown& now) {
    return Finder(versions, now).all();
}

std::string text_of(const Open& open) {
    std::string out = upper_first(open.where);
    const char* separator = ": ";
    for (const Side& side : open.sides) {
        out += separator + side.words + by_whom(side);
        separator = " or ";
    }
    if (!open.names.empty()) out += "; stays because of " + open.names;
    return out;
}

Result<Versions> choose(const Versions& versions, const std::string& path, std::size_t side, const Seat& seat,
                        Instant at) {
    if (std::vector<Problem> refused = seat_problems(seat); !refused.empty()) return refused;
    const std::vector<Open> all = open_fields(versions);
    const auto open = std::find_if(all.begin(), all.end(), [&](const Open& o) { return o.path == path; });
    if (open == all.end()) return Problem{path, "is not open any more", "Look at the list again"};
    if (side >= open->sides.size()) return Problem{open->where, "has no such side", "Choose one of those shown"};
    const bool gone = open->sides[side].gone;
    Edit edit(versions, seat, at);
    if (open->kind == OpenKind::link_lost) {
        edit.replace(path, std::nullopt);
        return std::move(edit).take();
    }
    if (open->kind == OpenKind::entry_altered && gone) {
        return Problem{open->where, "cannot be removed: the record only grows",
                       "Keep the entry; a new one may correct it"};
    }
    if (is_element(path) && !is_entry(path)) {
        if (gone && open->kind == OpenKind::removed_named)
            return Problem{open->where, "is named by " + open->names, "Change or remove that first"};
        edit.replace(path, gone ? std::nullopt : std::optional<std::string>("true"));
    } else {
        const Value* value = value_of_side(versions, *open, side);
        if (value == nullptr) return Problem{open->where, "has no such side", "Look at the list again"};
        edit.replace(path, value->json);
    }
    Versions after = std::move(edit).take();
    if (const Result<Job> job = job_of(after); !job) return job.problems();
    return after;
}

}  // namespace wg::merge
