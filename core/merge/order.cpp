// Lists in order: as someone put them, and what came since behind the element that it was put in after.

#include <algorithm>
#include <nlohmann/json.hpp>
#include <set>

#include "core/merge/path.h"
#include "core/merge/shown.h"
#include "core/quantity/time.h"

namespace wg::merge {
namespace {

using nlohmann::json;

struct Member {
    std::string id;
    std::string after;  ///< id of the element before it when it was put in; empty: the first
    std::uint64_t number = 0;
    std::uint32_t seat = 0;
    const std::string* entry = nullptr;  ///< JSON of an entry of the record
};

struct ListState {
    std::vector<Member> members;
    std::vector<std::string> put;  ///< the order that someone gave it
};

std::vector<std::string> texts_of(const std::string& value) {
    const json read = json::parse(value, nullptr, false);
    std::vector<std::string> out;
    if (!read.is_array()) return out;
    out.reserve(read.size());
    for (const json& id : read) {
        if (id.is_string()) out.push_back(id.get<std::string>());
    }
    return out;
}

using Lists = std::map<std::string, ListState, std::less<>>;

Lists lists_of(const Versions& versions) {
    Lists lists;
    for (const auto& [path, values] : versions.fields) {
        if (is_element(path)) {
            Member member;
            member.id = id_of(path);
            const Value& value = standing(path, values);
            if (is_entry(path) && value.json) member.entry = &*value.json;
            lists[std::string(parent_of(path))].members.push_back(std::move(member));
            continue;
        }
        const std::string_view last = last_segment(path);
        if (last == order_segment) {
            const Value& value = standing(path, values);
            if (value.json) lists[std::string(parent_of(path))].put = texts_of(*value.json);
        } else if (last == after_segment) {
            const std::string_view element = parent_of(path);
            std::vector<Member>& members = lists[std::string(parent_of(element))].members;
            const Value& value = standing(path, values);
            // The element's own path comes before all within it.
            const auto member =
                std::find_if(members.rbegin(), members.rend(), [&](const Member& m) { return m.id == id_of(element); });
            if (member == members.rend() || !value.json) continue;
            member->after = plain_text(*value.json);
            member->number = value.number;
            member->seat = value.seat;
        }
    }
    return lists;
}

/// Everything behind what it was put in after, the newest first where several are.
std::vector<std::string> by_anchors(const ListState& list) {
    std::set<std::string_view> put;
    std::set<std::string_view> known;
    for (const Member& member : list.members)
        known.insert(member.id);
    for (const std::string& id : list.put)
        put.insert(id);
    std::map<std::string_view, std::vector<const Member*>> behind;
    for (const Member& member : list.members) {
        if (put.count(member.id) == 0) behind[member.after].push_back(&member);
    }
    for (auto& [anchor, members] : behind) {
        // Taken from the end of a stack: the newest last.
        std::sort(members.begin(), members.end(), [](const Member* a, const Member* b) {
            if (a->number != b->number) return a->number < b->number;
            return a->seat != b->seat ? a->seat < b->seat : a->id > b->id;
        });
    }
    std::vector<std::string> out;
    out.reserve(list.members.size());
    std::set<std::string_view> done;
    std::vector<const Member*> stack;
    const auto follow = [&](std::string_view anchor) {
        const auto next = behind.find(anchor);
        if (next != behind.end()) stack.insert(stack.end(), next->second.begin(), next->second.end());
        while (!stack.empty()) {
            const Member* member = stack.back();
            stack.pop_back();
            if (!done.insert(member->id).second) continue;
            out.push_back(member->id);
            const auto more = behind.find(member->id);
            if (more != behind.end()) stack.insert(stack.end(), more->second.begin(), more->second.end());
        }
    };
    follow("");
    for (const std::string& id : list.put) {
        if (known.count(id) == 0 || !done.insert(id).second) continue;
        out.push_back(id);
        follow(id);
    }
    // Put in after something that never was there: only a damaged file has it.
    for (const Member& member : list.members) {
        if (done.count(member.id) == 0) out.push_back(member.id);
    }
    return out;
}

bool is_straight(const ListState& list) {
    std::set<std::string_view> anchors;
    return list.put.empty() && std::all_of(list.members.begin(), list.members.end(),
                                           [&](const Member& member) { return anchors.insert(member.after).second; });
}

/// The record of copies that were written on apart: by the time of the reading, but never before the entry that stood
/// before it on its machine or that its hash names.
std::vector<std::string> by_time(const ListState& list) {
    struct Entry {
        std::int64_t at = 0;
        std::size_t waits_for = 0;
        std::vector<std::string> followers;
    };
    std::map<std::string, Entry> entries;
    std::map<std::string, std::string> id_of_hash;
    std::map<std::string, std::string> hash_before;
    for (const Member& member : list.members) {
        Entry& entry = entries[member.id];
        if (member.entry == nullptr) continue;
        const json read = json::parse(*member.entry, nullptr, false);
        if (!read.is_object()) continue;
        const auto text = [&](const char* key) {
            const auto found = read.find(key);
            return found != read.end() && found->is_string() ? found->get<std::string>() : std::string();
        };
        const Result<Instant> at = instant_from_iso8601(text("taken_at"));
        entry.at = at ? at.value().unix_s : 0;
        id_of_hash.emplace(text("sha256"), member.id);
        hash_before[member.id] = text("previous_sha256");
    }
    const auto follows = [&](const std::string& id, const std::string& before) {
        const auto earlier = entries.find(before);
        const auto later = entries.find(id);
        if (earlier == entries.end() || later == entries.end() || id == before) return;
        earlier->second.followers.push_back(id);
        ++later->second.waits_for;
    };
    const std::set<std::string_view> put(list.put.begin(), list.put.end());
    for (std::size_t i = 1; i < list.put.size(); ++i)
        follows(list.put[i], list.put[i - 1]);
    for (const Member& member : list.members) {
        if (put.count(member.id) == 0) follows(member.id, member.after);
        const std::string& hash = hash_before[member.id];
        const auto named = id_of_hash.find(hash);
        if (!hash.empty() && named != id_of_hash.end()) follows(member.id, named->second);
    }
    std::set<std::pair<std::int64_t, std::string>> ready;
    for (const auto& [id, entry] : entries) {
        if (entry.waits_for == 0) ready.emplace(entry.at, id);
    }
    std::vector<std::string> out;
    out.reserve(entries.size());
    while (!ready.empty()) {
        const std::string id = ready.begin()->second;
        ready.erase(ready.begin());
        out.push_back(id);
        for (const std::string& follower : entries[id].followers) {
            Entry& next = entries[follower];
            if (--next.waits_for == 0) ready.emplace(next.at, follower);
        }
    }
    // Entries that wait for one another: only a damaged file has them.
    const std::set<std::string> done(out.begin(), out.end());
    for (const auto& [id, entry] : entries) {
        if (done.count(id) == 0) out.push_back(id);
    }
    return out;
}

}  // namespace

std::map<std::string, std::vector<std::string>, std::less<>> orders(const Versions& versions) {
    std::map<std::string, std::vector<std::string>, std::less<>> out;
    for (const auto& [path, list] : lists_of(versions))
        out[path] = path == "record" && !is_straight(list) ? by_time(list) : by_anchors(list);
    return out;
}

}  // namespace wg::merge
