#include "core/merge/versions.h"

#include <algorithm>
#include <nlohmann/json.hpp>
#include <unordered_set>

#include "core/job/codec.h"
#include "core/merge/edit.h"
#include "core/merge/path.h"
#include "core/merge/shown.h"
#include "core/merge/versions_codec.h"
#include "core/quantity/sha256.h"
#include "core/quantity/utf8.h"

namespace wg::merge {
namespace {

constexpr std::string_view record_name = "record";

/// A seat that stands for content, not for a machine: the same content, the same seat.
Seat seat_of_content(const char* kind, const std::string& content, const std::string& name) {
    return {std::string(kind) + '-' + sha256_hex(content).substr(0, 40), name};
}

Instant instant_or_none(const std::string& text) {
    const Result<Instant> read = instant_from_iso8601(text);
    return read ? read.value() : Instant{};
}

std::string json_text(const std::string& text) {
    return nlohmann::json(text).dump();
}

/// Only the outermost of what went: an element that is gone keeps all that is within it.
bool holder_gone(std::string_view path, const Flat& after) {
    for (std::string_view element = holder_of(path); !element.empty(); element = holder_of(element)) {
        if (after.fields.count(element) == 0) return true;
    }
    return false;
}

/// Elements that come back though the versions say they are gone.
Elements coming_back(const Versions& versions, const Shown& now, const Flat& after) {
    Elements out;
    for (const auto& [path, value] : after.fields) {
        if (!is_element(path) || now.flat.fields.count(path) != 0) continue;
        const auto known = versions.fields.find(path);
        if (known != versions.fields.end() && !standing(path, known->second).json) out.insert(path);
    }
    return out;
}

void write_fields(Edit& edit, const Flat& before, const Flat& after, const Elements& back) {
    for (const std::string& path : back)
        edit.replace(path, "true");
    for (const auto& [path, value] : after.fields) {
        const auto old = before.fields.find(path);
        if (old != before.fields.end() && (old->second == value || is_entry(path))) continue;
        edit.replace(path, value);
    }
    for (const auto& [path, value] : before.fields) {
        if (after.fields.count(path) == 0 && !is_entry(path) && !holder_gone(path, after))
            edit.replace(path, std::nullopt);
    }
}

/// What a copy says of entries that were there before: beside them, never in their place.
void write_entries_beside(Edit& edit, const Versions& versions, const Flat& after) {
    for (const auto& [path, values] : versions.fields) {
        if (!is_entry(path)) continue;
        const auto now = after.fields.find(path);
        const std::optional<std::string> said =
            now == after.fields.end() ? std::nullopt : std::optional<std::string>(now->second);
        const bool known = std::any_of(values.begin(), values.end(), [&](const Value& v) { return v.json == said; });
        if (!known) edit.put_beside(path, said);
    }
}

void write_anchors(Edit& edit, const Versions& before, const Flat& after) {
    for (const auto& [list, ids] : after.lists) {
        std::string previous;
        for (const std::string& id : ids) {
            const std::string path = element_path(list, id);
            if (before.fields.count(path) == 0) edit.replace(special_path(path, after_segment), json_text(previous));
            previous = id;
        }
    }
}

std::vector<std::string> only(const std::vector<std::string>& ids, const std::vector<std::string>& of) {
    const std::unordered_set<std::string_view> wanted(of.begin(), of.end());
    std::vector<std::string> out;
    out.reserve(ids.size());
    std::copy_if(ids.begin(), ids.end(), std::back_inserter(out),
                 [&](const std::string& id) { return wanted.count(id) != 0; });
    return out;
}

/// The wanted order with those that are gone behind what stood before them.
std::string with_the_gone(const std::vector<std::string>& all, const std::vector<std::string>& wanted) {
    std::map<std::string, std::vector<std::string>> behind;
    const std::unordered_set<std::string_view> there(wanted.begin(), wanted.end());
    std::string last;
    for (const std::string& id : all) {
        if (there.count(id) != 0) {
            last = id;
        } else {
            behind[last].push_back(id);
        }
    }
    nlohmann::json out = nlohmann::json::array();
    const auto put = [&](const std::string& id) {
        const auto found = behind.find(id);
        if (found == behind.end()) return;
        for (const std::string& gone : found->second)
            out.push_back(gone);
    };
    put("");
    for (const std::string& id : wanted) {
        out.push_back(id);
        put(id);
    }
    return out.dump();
}

void write_orders(Edit& edit, const Flat& after, bool record_as_it_is) {
    const auto now = orders(edit.versions());
    for (const auto& [list, wanted] : after.lists) {
        if (list == record_name && record_as_it_is) continue;
        const auto all = now.find(list);
        if (all == now.end() || only(all->second, wanted) == wanted) continue;
        edit.replace(special_path(list, order_segment), with_the_gone(all->second, wanted));
    }
}

std::vector<Problem> record_problems(const Shown& now, const Flat& after) {
    std::vector<Problem> out;
    const char* remedy = "Bring the entry back as it was; enter what is right as a new entry that corrects it";
    for (const auto& [path, value] : now.flat.fields) {
        if (!is_entry(path)) continue;
        const auto kept = after.fields.find(path);
        if (kept == after.fields.end()) {
            out.push_back({"record", "the entry " + id_of(path) + " is gone", remedy});
        } else if (kept->second != value) {
            out.push_back({"record", "the entry " + id_of(path) + " was altered", remedy});
        }
    }
    const auto before = now.flat.lists.find(record_name);
    const auto then = after.lists.find(record_name);
    if (out.empty() && before != now.flat.lists.end() && then != after.lists.end() &&
        only(then->second, before->second) != before->second) {
        out.push_back({"record", "its entries stand in another order", "Bring back the order; new entries come last"});
    }
    return out;
}

/// An element that was there only because something named it, and is there still though nothing does any more: whoever
/// edited left it. Its removal stays open.
void confirm_what_stays(Edit& edit, const Flat& after) {
    const Shown now = shown(edit.versions());
    for (const auto& [path, value] : after.fields) {
        if (is_element(path) && now.flat.fields.count(path) == 0) edit.confirm(path);
    }
}

enum class From { program, copy };

Result<Versions> taken_up(const Versions& versions, const Job& after, const Seat& seat, Instant at, From from) {
    if (after.id != versions.job_id) {
        return Problem{"id", "these are versions of another job, " + for_message(versions.job_id),
                       "Choose the versions that belong to the job"};
    }
    const Flat wanted = flattened(after);
    Shown now = shown(versions);
    if (from == From::program) {
        if (std::vector<Problem> refused = record_problems(now, wanted); !refused.empty()) return refused;
    }
    const Elements back = coming_back(versions, now, wanted);
    if (!back.empty()) now = shown(versions, back);
    Edit edit(versions, seat, at);
    write_fields(edit, now.flat, wanted, back);
    if (from == From::copy) write_entries_beside(edit, versions, wanted);
    write_anchors(edit, versions, wanted);
    if (!now.repairs.empty()) confirm_what_stays(edit, wanted);
    write_orders(edit, wanted, from == From::copy);
    if (edit.empty()) return versions;
    return std::move(edit).take();
}

}  // namespace

Versions begin(const Job& job) {
    Versions none;
    none.job_id = job.id;
    const Seat seat = seat_of_content("begin", content_sha256(job), "");
    Edit edit(none, seat, instant_or_none(job.created_at));
    const Flat all = flattened(job);
    write_fields(edit, {}, all, {});
    write_anchors(edit, none, all);
    write_orders(edit, all, false);
    return std::move(edit).take();
}

Result<Versions> edited(const Versions& versions, const Job& after, const Seat& seat, Instant at) {
    if (std::vector<Problem> refused = seat_problems(seat); !refused.empty()) return refused;
    if (std::vector<Problem> refused = validate(after); !refused.empty()) return refused;
    return taken_up(versions, after, seat, at, From::program);
}

Result<Versions> of_copy(const Versions& versions, const Job& copy, const std::string& name) {
    if (std::vector<Problem> refused = validate(copy); !refused.empty()) return refused;
    // The same edits of other versions are other edits.
    const Seat seat = seat_of_content("copy", versions_to_json(versions) + content_sha256(copy), name);
    if (std::vector<Problem> refused = seat_problems(seat); !refused.empty()) return refused;
    return taken_up(versions, copy, seat, instant_or_none(copy.changed_at), From::copy);
}

}  // namespace wg::merge
