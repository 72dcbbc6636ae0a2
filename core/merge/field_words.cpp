#include "core/merge/field_words.h"

#include <algorithm>
#include <nlohmann/json.hpp>

#include "core/merge/path.h"
#include "core/merge/shown.h"
#include "core/quantity/utf8.h"
#include "core/quantity/uuid.h"

namespace wg::merge {
namespace {

using nlohmann::json;

struct Named {
    std::string_view key;
    std::string_view words;
};

/// Ends of members' names and the unit they tell, the longer before those they end with.
constexpr Named units[] = {
    {"_kn_m2", "kN/m2"},   {"_minor_kwh", "minor units a kWh"},
    {"_mmol_l", "mmol/l"}, {"_g_year", "g a year"},
    {"_m_s", "m/s"},       {"_mohm", "MOhm"},
    {"_ohm", "ohm"},       {"_deg", "deg"},
    {"_m2", "m2"},         {"_mm", "mm"},
    {"_kg", "kg"},         {"_kw", "kW"},
    {"_min", "min"},       {"_bar", "bar"},
    {"_pa", "Pa"},         {"_ms", "ms"},
    {"_ma", "mA"},         {"_hz", "Hz"},
    {"_m", "m"},           {"_c", "deg C"},
    {"_k", "K"},           {"_w", "W"},
    {"_h", "h"},           {"_a", "A"},
    {"_v", "V"},
};

/// One element of a list, or a group.
constexpr Named nouns[] = {
    {"surfaces", "surface"},
    {"keep_outs", "keep-out"},
    {"obstacles", "obstacle"},
    {"spots", "cylinder spot"},
    {"buildings", "building"},
    {"underlays", "picture under the sketch"},
    {"rooms", "room"},
    {"fixtures", "fixture"},
    {"dead_legs", "pipe to a tap"},
    {"choices", "choice"},
    {"placements", "collector"},
    {"route", "bend of the run"},
    {"extras", "extra"},
    {"record", "entry of the record"},
    {"photographs", "photograph"},
    {"marks", "mark"},
    {"*at", "latitude and longitude"},
    {"*footprint", "footprint"},
    {"*fit", "scale, turn and place"},
    {"*shape", "kind and measures"},
    {"*rafters", "rafters"},
    {"*cable", "cable"},
    {"*height", "floor and ceiling"},
    {"*place", "place"},
    {"*order", "order"},
};

std::string_view noun_of(std::string_view key) noexcept {
    const auto found = std::find_if(std::begin(nouns), std::end(nouns), [&](const Named& n) { return n.key == key; });
    return found == std::end(nouns) ? std::string_view() : found->words;
}

const Named* unit_of(std::string_view key) noexcept {
    const auto found = std::find_if(std::begin(units), std::end(units), [&](const Named& unit) {
        return key.size() > unit.key.size() && key.substr(key.size() - unit.key.size()) == unit.key;
    });
    return found == std::end(units) ? nullptr : &*found;
}

std::string name_words(std::string_view key) {
    if (const Named* unit = unit_of(key)) key.remove_suffix(unit->key.size());
    if (key.size() > 3 && key.substr(key.size() - 3) == "_id") key.remove_suffix(3);
    std::string out = for_message(key);
    std::replace(out.begin(), out.end(), '_', ' ');
    return out;
}

std::string text_at(const Versions& versions, const std::string& path) {
    const auto found = versions.fields.find(path);
    if (found == versions.fields.end()) return {};
    const Value& value = standing(path, found->second);
    return value.json ? plain_text(*value.json) : std::string();
}

std::string label_of_element(const Versions& versions, const std::string& element) {
    if (is_entry(element)) {
        const auto found = versions.fields.find(element);
        if (found == versions.fields.end()) return {};
        const Value& value = standing(element, found->second);
        const json entry = value.json ? json::parse(*value.json, nullptr, false) : json();
        if (!entry.is_object()) return {};
        std::string kind = entry.value("kind", json("")).is_string() ? entry.value("kind", "") : "";
        std::replace(kind.begin(), kind.end(), '_', ' ');
        const json at = entry.value("taken_at", json(""));
        return kind + " of " + (at.is_string() ? at.get<std::string>() : std::string());
    }
    for (const char* key : {"label", "caption", "file_name", "price_item", "text"}) {
        std::string label = text_at(versions, member_path(element, key));
        if (!label.empty()) return label;
    }
    return {};
}

std::string number_words(const json& number) {
    std::string out = number.dump();
    if (out.size() > 2 && out.compare(out.size() - 2, 2, ".0") == 0) out.resize(out.size() - 2);
    return out;
}

std::string named_words(const Versions& versions, const std::string& id) {
    for (const char* list : {"site/surfaces", "site/spots", "choices", "photographs"}) {
        const std::string element = element_path(list, id);
        if (versions.fields.count(element) == 0) continue;
        const std::string label = label_of_element(versions, element);
        return label.empty() ? std::string(noun_of(last_segment(list))) : '"' + for_message(label, 40) + '"';
    }
    return id;
}

std::string single_words(const Versions& versions, const std::string& key, const json& value) {
    const Named* unit = unit_of(key);
    const std::string with = unit != nullptr ? ' ' + std::string(unit->words) : std::string();
    if (value.is_boolean()) return value.get<bool>() ? "yes" : "no";
    if (value.is_number()) return number_words(value) + with;
    if (value.is_string()) {
        const auto& text = value.get_ref<const std::string&>();
        if (text.empty()) return "nothing";
        return is_uuid(text) ? named_words(versions, text) : '"' + for_message(text) + '"';
    }
    if (value.is_array()) {
        if (value.empty()) return "none";
        const bool point =
            value.size() <= 3 && std::all_of(value.begin(), value.end(), [](const json& v) { return v.is_number(); });
        if (!point) return std::to_string(value.size()) + (value.front().is_array() ? " points" : " entries");
        std::string out;
        for (const json& number : value)
            out += (out.empty() ? "(" : ", ") + number_words(number);
        return out + ") m";
    }
    return value.is_object() ? std::to_string(value.size()) + " members" : std::string("nothing");
}

}  // namespace

std::string where_words(const Versions& versions, std::string_view path) {
    std::string out;
    std::string list;
    std::size_t from = 0;
    while (from <= path.size()) {
        const std::size_t end = std::min(path.find('/', from), path.size());
        const std::string_view segment = path.substr(from, end - from);
        std::string words;
        if (!segment.empty() && segment.front() == '=') {
            const std::string label = label_of_element(versions, std::string(path.substr(0, end)));
            const std::string_view noun = noun_of(list);
            words = noun.empty() ? name_words(list) : std::string(noun);
            if (!label.empty())
                words +=
                    is_entry(path.substr(0, end)) ? ", " + for_message(label) : " \"" + for_message(label, 40) + '"';
        } else if (!segment.empty() && segment.front() == '*') {
            words = noun_of(segment);
        } else {
            list = name_of(segment);
            // A list is told by its element; the site goes without saying.
            const bool followed = end < path.size() && path[end + 1] == '=';
            if (!followed && !(list == "site" && end < path.size())) words = name_words(list);
        }
        if (!words.empty()) out += (out.empty() ? "" : ", ") + words;
        from = end + 1;
    }
    return out;
}

std::string value_words(const Versions& versions, std::string_view path, const std::optional<std::string>& text) {
    if (!text) return is_element(path) ? "removed" : "left out";
    if (is_element(path) && !is_entry(path)) return "there";
    const json value = json::parse(*text, nullptr, false);
    if (is_entry(path)) {
        std::string out;
        for (const char* key : {"value", "second_value", "note"}) {
            if (!value.is_object() || !value.contains(key)) continue;
            out += (out.empty() ? "" : ", ") + single_words(versions, key, value[key]);
        }
        return out;
    }
    const std::string key = name_of(last_segment(path));
    if (!value.is_object() || value.empty()) return single_words(versions, key, value);
    // A group: what it holds, or what its one object holds.
    const json& members = value.size() == 1 && value.front().is_object() ? value.front() : value;
    std::string out;
    for (const auto& item : members.items())
        out +=
            (out.empty() ? "" : ", ") + name_words(item.key()) + ' ' + single_words(versions, item.key(), item.value());
    return for_message(out, 240);
}

std::string order_words(const Versions& versions, std::string_view list, const std::vector<std::string>& ids) {
    std::string out;
    for (const std::string& id : ids) {
        const std::string label = label_of_element(versions, element_path(list, id));
        out += (out.empty() ? "" : "; ") + (label.empty() ? id.substr(0, 8) : for_message(label, 40));
    }
    return out;
}

}  // namespace wg::merge
