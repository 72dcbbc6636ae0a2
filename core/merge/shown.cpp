#include "core/merge/shown.h"

#include <algorithm>
#include <nlohmann/json.hpp>
#include <optional>

#include "core/merge/path.h"

namespace wg::merge {
namespace {

using nlohmann::json;

std::string text_in(const std::string& value, const char* key) {
    if (key == nullptr) return plain_text(value);
    const json read = json::parse(value, nullptr, false);
    if (!read.is_object()) return {};
    const auto found = read.find(key);
    return found != read.end() && found->is_string() ? found->get<std::string>() : std::string();
}

/// A field of an element of that list.
bool in_list(std::string_view path, std::string_view list) noexcept {
    const std::string_view element = parent_of(path);
    return is_element(element) && parent_of(element) == list;
}

bool in_placements(std::string_view path) noexcept {
    const std::string_view list = parent_of(parent_of(path));
    const std::string_view choice = parent_of(list);
    return last_segment(list) == "placements" && is_element(choice) && parent_of(choice) == "choices";
}

/// The element that a field names; empty: none.
std::string named_by(std::string_view path, const std::string& value) {
    std::string list;
    std::string id;
    const std::string_view last = last_segment(path);
    if (last == "*place" && in_placements(path)) {
        list = "site/surfaces";
        id = text_in(value, "surface_id");
    } else if (last == "spot_id" && in_list(path, "choices")) {
        list = "site/spots";
        id = text_in(value, nullptr);
    } else if (path == "chosen_choice_id" ||
               (last == "choice_id" && (in_list(path, "offer/changes") || in_list(path, "offer/lines")))) {
        list = "choices";
        id = text_in(value, nullptr);
    } else if (last == "photograph_id" && in_list(path, "site/underlays")) {
        list = "photographs";
        id = text_in(value, nullptr);
    }
    return id.empty() ? std::string() : element_path(list, id);
}

bool is_edge_link(std::string_view path) noexcept {
    return last_segment(path) == "footprint_edge_id" &&
           (in_list(path, "site/surfaces") || in_list(path, "site/obstacles"));
}

Shown as_versioned(const Versions& versions, const Elements& staying) {
    Shown out;
    auto at = versions.fields.begin();
    while (at != versions.fields.end()) {
        const std::string& path = at->first;
        const std::string_view last = last_segment(path);
        const Value& value = standing(path, at->second);
        if (is_element(path) && !value.json && staying.count(path) == 0) {
            out.hidden.insert(path);
            at = past(versions, path);
            continue;
        }
        if (last != order_segment && last != after_segment) {
            if (value.json) {
                out.flat.fields.emplace_hint(out.flat.fields.end(), path, *value.json);
            } else if (is_element(path)) {
                out.flat.fields.emplace_hint(out.flat.fields.end(), path, "true");
            }
        }
        ++at;
    }
    return out;
}

/// Elements that are gone though something names them. What was never there cannot stay: reading the job refuses it.
Elements named_though_gone(const Shown& now) {
    Elements out;
    for (const auto& [path, value] : now.flat.fields) {
        std::string named = named_by(path, value);
        if (!named.empty() && now.hidden.count(named) != 0) out.insert(std::move(named));
    }
    return out;
}

std::vector<Repair> repairs_of(const Shown& now, const Elements& repaired) {
    std::vector<Repair> out;
    if (repaired.empty()) return out;
    for (const auto& [path, value] : now.flat.fields) {
        std::string named = named_by(path, value);
        if (repaired.count(named) != 0) out.push_back({std::move(named), path});
    }
    return out;
}

void leave_out_lost_links(Shown& now) {
    std::set<std::string> edges;
    std::vector<std::string> links;
    for (const auto& [path, value] : now.flat.fields) {
        if (is_edge_link(path)) links.push_back(path);
        if (last_segment(path) != "*footprint") continue;
        const json read = json::parse(value, nullptr, false);
        const auto list = read.is_object() ? read.find("edges") : read.end();
        if (list == read.end() || !list->is_array()) continue;
        for (const json& edge : *list)
            edges.insert(text_in(edge.dump(), "id"));
    }
    for (std::string& link : links) {
        const auto found = now.flat.fields.find(link);
        if (edges.count(text_in(found->second, nullptr)) != 0) continue;
        now.flat.fields.erase(found);
        now.repairs.push_back({std::move(link), {}});
    }
}

}  // namespace

std::string plain_text(const std::string& value) {
    const bool text = value.size() >= 2 && value.front() == '"';
    if (text && value.find('\\') == std::string::npos) return value.substr(1, value.size() - 2);
    const json read = json::parse(value, nullptr, false);
    return read.is_string() ? read.get<std::string>() : std::string();
}

std::map<std::string, std::vector<Value>, std::less<>>::const_iterator past(const Versions& versions,
                                                                            std::string_view element) {
    // '0' follows '/': every path within the element lies before.
    return versions.fields.lower_bound(std::string(element) + '0');
}

const Value& standing(std::string_view path, const std::vector<Value>& values) noexcept {
    if (values.size() == 1) return values.front();
    const auto earlier = [](const Value& a, const Value& b) {
        return a.number != b.number ? a.number < b.number : a.seat < b.seat;
    };
    if (is_entry(path)) return *std::min_element(values.begin(), values.end(), earlier);
    const bool element = is_element(path);
    const auto weaker = [&](const Value& a, const Value& b) {
        if (element && a.json.has_value() != b.json.has_value()) return b.json.has_value();
        return earlier(a, b);
    };
    return *std::max_element(values.begin(), values.end(), weaker);
}

Shown shown(const Versions& versions, Elements staying) {
    Shown now = as_versioned(versions, staying);
    // What stays may name others that are gone.
    Elements repaired;
    for (Elements more = named_though_gone(now); !more.empty(); more = named_though_gone(now)) {
        staying.insert(more.begin(), more.end());
        repaired.merge(more);
        now = as_versioned(versions, staying);
    }
    now.repairs = repairs_of(now, repaired);
    leave_out_lost_links(now);
    std::sort(now.repairs.begin(), now.repairs.end(),
              [](const Repair& a, const Repair& b) { return a.path != b.path ? a.path < b.path : a.names < b.names; });
    for (auto& [list, ids] : orders(versions)) {
        std::vector<std::string> there;
        there.reserve(ids.size());
        for (std::string& id : ids) {
            if (now.flat.fields.count(element_path(list, id)) != 0) there.push_back(std::move(id));
        }
        if (!there.empty()) now.flat.lists.emplace_hint(now.flat.lists.end(), list, std::move(there));
    }
    return now;
}

Result<Job> job_of(const Versions& versions) {
    return job_of(shown(versions).flat);
}

}  // namespace wg::merge
