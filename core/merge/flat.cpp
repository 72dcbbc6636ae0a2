#include "core/merge/flat.h"

#include <algorithm>
#include <array>
#include <nlohmann/json.hpp>
#include <set>
#include <string_view>

#include "core/job/job_tree.h"
#include "core/merge/path.h"
#include "core/quantity/uuid.h"

namespace wg::merge {
namespace {

using nlohmann::json;

/// Members that are changed as one, by the name of the list or object that they stand in: half of one side's and half
/// of the other's would be a place, a shape or a range that nobody meant, or that no job may have.
struct Group {
    std::string_view holder;
    std::string_view segment;
    std::array<std::string_view, 7> members;
};
constexpr Group groups[] = {
    {"location", "*at", {"latitude_deg", "longitude_deg"}},
    {"buildings", "*footprint", {"edges", "low_edge_id"}},
    {"underlays", "*fit", {"metres_per_pixel", "origin", "scaled", "turn_deg", "turned"}},
    {"surfaces", "*rafters", {"rafters"}},
    {"obstacles", "*shape", {"crown_base_m", "depth_m", "height_m", "kind", "outline", "radius_m", "width_m"}},
    {"spots", "*cable", {"cable"}},
    {"rooms", "*height", {"from_z_m", "to_z_m"}},
    {"placements", "*place", {"surface_id", "x_m", "y_m"}},
    {"marks", "*place", {"at", "tail"}},
};

/// Not fields of the job that travels, but of the copy or of its file.
constexpr std::string_view of_the_copy[] = {"format",     "schema",      "revision",
                                            "changed_at", "base_sha256", "base_revision"};

/// Objects that the file leaves out while nothing in them is told.
constexpr std::string_view left_out_objects[] = {
    "site/hill/",     "site/electrics/",       "site/water/",     "demand/household/", "demand/control/",
    "demand/tariff/", "demand/recirculation/", "demand/hygiene/", "aftercare/",        "offer/"};

/// Lists that mean the same empty and left out. Others, those of newer programs, keep a field that says they are there.
constexpr std::string_view known_lists[] = {
    "buildings", "underlays",   "surfaces",  "obstacles",   "horizon",          "spots",       "rooms",
    "fixtures",  "dead_legs",   "keep_outs", "choices",     "placements",       "route",       "extras",
    "record",    "photographs", "marks",     "run_windows", "set_back_windows", "low_windows", "windows",
    "holidays",  "changes",     "lines",     "instalments"};

bool is_known_list(std::string_view name) noexcept {
    return std::find(std::begin(known_lists), std::end(known_lists), name) != std::end(known_lists);
}

const Group* group_of(std::string_view holder, std::string_view member) noexcept {
    for (const Group& group : groups) {
        if (group.holder != holder || member.empty()) continue;
        if (std::find(group.members.begin(), group.members.end(), member) != group.members.end()) return &group;
    }
    return nullptr;
}

// Every element has an id of its own; an empty list counts as one of elements that has none.
bool is_list_of_elements(const json& list) {
    std::set<std::string_view> ids;
    return std::all_of(list.begin(), list.end(), [&ids](const json& element) {
        if (!element.is_object()) return false;
        const auto id = element.find("id");
        if (id == element.end() || !id->is_string()) return false;
        const std::string_view text = id->get_ref<const std::string&>();
        return is_uuid(text) && ids.insert(text).second;
    });
}

std::string text_of(const json& value) {
    // As dump() writes them, without setting up its writer.
    if (value.is_boolean()) return value.get<bool>() ? "true" : "false";
    if (value.is_number_integer() && !value.is_number_unsigned()) return std::to_string(value.get<std::int64_t>());
    if (value.is_string()) {
        const auto& text = value.get_ref<const std::string&>();
        const bool plain =
            std::all_of(text.begin(), text.end(), [](char c) { return c >= ' ' && c <= '~' && c != '"' && c != '\\'; });
        if (plain) return '"' + text + '"';
    }
    return value.dump(-1, ' ', false, json::error_handler_t::replace);
}

struct Part {
    const json* object = nullptr;
    std::string path;
    std::string holder;  ///< name of the list or member it stands in
    bool is_element = false;
};

void take_list(Flat& flat, std::vector<Part>& waiting, const json& list, const std::string& path,
               const std::string& name) {
    if (!is_known_list(name)) flat.fields[path] = "[]";
    if (list.empty()) return;
    std::vector<std::string>& ids = flat.lists[path];
    ids.reserve(list.size());
    for (const json& element : list) {
        ids.push_back(element["id"].get<std::string>());
        const std::string at = element_path(path, ids.back());
        if (is_entry(at)) {
            flat.fields[at] = text_of(element);
        } else {
            flat.fields[at] = "true";
            waiting.push_back({&element, at, name, true});
        }
    }
}

Flat taken_apart(const json& tree) {
    Flat flat;
    std::vector<Part> waiting = {{&tree, "", "", false}};
    while (!waiting.empty()) {
        const Part part = std::move(waiting.back());
        waiting.pop_back();
        std::map<std::string_view, std::string> together;  // members come sorted: so do those of a group
        for (const auto& item : part.object->items()) {
            const std::string& key = item.key();
            const json& value = item.value();
            if (part.is_element && key == "id") continue;
            if (part.path.empty() &&
                std::find(std::begin(of_the_copy), std::end(of_the_copy), key) != std::end(of_the_copy))
                continue;
            if (const Group* group = group_of(part.holder, key)) {
                std::string& members = together[group->segment];
                members += (members.empty() ? '{' : ',');
                members += '"' + key + "\":" + text_of(value);
                continue;
            }
            const std::string path = member_path(part.path, key);
            if (value.is_object() && !value.empty()) {
                waiting.push_back({&value, path, key, false});
            } else if (value.is_array() && is_list_of_elements(value)) {
                take_list(flat, waiting, value, path, key);
            } else {
                flat.fields[path] = text_of(value);
            }
        }
        for (auto& [segment, members] : together)
            flat.fields[special_path(part.path, segment)] = std::move(members) + '}';
    }
    return flat;
}

/// What the members of the objects left out are when nothing is told: one that is told brings the others into the file,
/// which is no change of theirs.
Flat usual_fields() {
    constexpr const char* told = R"({"told":1})";
    Job job;
    job.id = "00000000-0000-4000-8000-000000000000";
    for (std::string* extra :
         {&job.site.hill.extra_json, &job.site.electrics.extra_json, &job.site.water.extra_json,
          &job.demand.household.extra_json, &job.demand.control.extra_json, &job.demand.tariff.extra_json,
          &job.demand.recirculation.extra_json, &job.demand.hygiene.extra_json, &job.aftercare.extra_json})
        *extra = told;
    Flat flat = taken_apart(job_tree(job));
    for (auto at = flat.fields.begin(); at != flat.fields.end();) {
        const bool kept = std::any_of(std::begin(left_out_objects), std::end(left_out_objects),
                                      [&](std::string_view prefix) { return at->first.rfind(prefix, 0) == 0; });
        at = kept && last_segment(at->first) != "told" ? std::next(at) : flat.fields.erase(at);
    }
    return flat;
}

/// The object that holds the member or element of `path`; null: something else stands where it should be.
json* holder_in(json& root, std::string_view path) {
    json* here = &root;
    std::size_t from = 0;
    for (std::size_t end = path.find('/'); end != std::string_view::npos; end = path.find('/', from)) {
        const std::string_view segment = path.substr(from, end - from);
        const std::string key = segment.front() == '=' ? std::string(segment) : name_of(segment);
        from = end + 1;
        json& child = (*here)[key];
        // An empty list holds its elements by id until they are put in order.
        if (child.is_null() || (child.is_array() && child.empty())) child = json::object();
        if (!child.is_object()) return nullptr;
        here = &child;
    }
    return here;
}

void put_field(json& root, const std::string& path, const std::string& text) {
    json* holder = holder_in(root, path);
    if (holder == nullptr) return;
    const std::string_view segment = last_segment(path);
    if (segment.front() == '=') {
        (*holder)[std::string(segment)] = is_entry(path) ? json::parse(text) : json{{"id", id_of(path)}};
    } else if (segment.front() == '*') {
        const json members = json::parse(text);
        for (const auto& item : members.items())
            (*holder)[item.key()] = item.value();
    } else {
        (*holder)[name_of(segment)] = json::parse(text);
    }
}

}  // namespace

Flat flattened(const Job& job) {
    static const Flat usual = usual_fields();
    Flat flat = taken_apart(job_tree(job));
    for (const auto& [path, value] : usual.fields) {
        const auto found = flat.fields.find(path);
        if (found != flat.fields.end() && found->second == value) flat.fields.erase(found);
    }
    return flat;
}

Result<Job> job_of(const Flat& flat) {
    json root = {{"format", "warmgable-job"}, {"schema", job_schema}};
    for (const auto& [path, value] : flat.fields)
        put_field(root, path, value);
    std::vector<const std::string*> lists;
    lists.reserve(flat.lists.size());
    for (const auto& [path, ids] : flat.lists)
        lists.push_back(&path);
    // Lists within elements before those that hold the elements.
    std::sort(lists.begin(), lists.end(), [](const std::string* a, const std::string* b) {
        return a->size() != b->size() ? a->size() > b->size() : *a < *b;
    });
    for (const std::string* path : lists) {
        json* holder = holder_in(root, *path);
        if (holder == nullptr) continue;
        json& by_id = (*holder)[name_of(last_segment(*path))];
        json ordered = json::array();
        for (const std::string& id : flat.lists.find(*path)->second) {
            const auto element = by_id.is_object() ? by_id.find('=' + id) : by_id.end();
            if (element != by_id.end()) ordered.push_back(std::move(*element));
        }
        by_id = std::move(ordered);
    }
    return job_from_tree(root, "");
}

bool is_group_value(std::string_view path, const std::string& text) {
    const std::string_view segment = last_segment(path);
    const std::string_view parent = parent_of(path);
    const std::string holder = name_of(last_segment(is_element(parent) ? parent_of(parent) : parent));
    const json value = json::parse(text, nullptr, false);
    if (!value.is_object()) return false;
    const auto items = value.items();
    return std::all_of(items.begin(), items.end(), [&](const auto& item) {
        const Group* group = group_of(holder, item.key());
        return group != nullptr && group->segment == segment;
    });
}

}  // namespace wg::merge
