#include "core/equipment/fields.h"

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <nlohmann/json.hpp>
#include <utility>

#include "core/quantity/time.h"
#include "core/quantity/utf8.h"

namespace wg::fields {
namespace {

using nlohmann::json;

std::string line_and_column(std::string_view text, std::size_t byte) {
    std::size_t line = 1;
    std::size_t column = 1;
    for (std::size_t i = 0; i + 1 < byte && i < text.size(); ++i) {
        if (text[i] == '\n') {
            ++line;
            column = 1;
        } else {
            ++column;
        }
    }
    return "line " + std::to_string(line) + ", column " + std::to_string(column);
}

// Watches depth and repeated fields while the parser runs: both are lost once the tree is built.
struct Watch {
    std::vector<std::set<std::string>> open_objects;
    std::string repeated;
    bool too_deep = false;

    bool operator()(int depth, json::parse_event_t event, const json& parsed) {
        if (depth > max_depth) too_deep = true;
        if (event == json::parse_event_t::object_start) open_objects.emplace_back();
        if (event == json::parse_event_t::object_end && !open_objects.empty()) open_objects.pop_back();
        if (event == json::parse_event_t::key && !open_objects.empty()) {
            const auto key = parsed.get<std::string>();
            if (!open_objects.back().insert(key).second && repeated.empty()) repeated = key;
        }
        return true;
    }
};

// Text from outside, made fit for a message.
std::string in_quotes(const std::string& text) {
    return "'" + for_message(text) + "'";
}

const char* type_word(const json& value) {
    switch (value.type()) {
        case json::value_t::null: return "null";
        case json::value_t::boolean: return "true or false";
        case json::value_t::string: return "a text";
        case json::value_t::array: return "a list";
        case json::value_t::object: return "an object";
        default: return "a number";
    }
}

std::string range_text(double least, double most, const char* unit) {
    const std::string tail = *unit != '\0' ? std::string(" ") + unit : std::string();
    return figure(least) + " to " + figure(most) + tail;
}

}  // namespace

std::string figure(double value) {
    char out[40];
    std::snprintf(out, sizeof out, "%.6g", value);
    return out;
}

bool parse(std::string_view text, const std::string& file_name, int schema, nlohmann::json& out,
           std::vector<Problem>& problems, int oldest) {
    if (text.size() > max_bytes) {
        problems.push_back({file_name, "the file is longer than 16 MiB", "Check that it is the right file"});
        return false;
    }
    Watch watch;
    try {
        out = json::parse(text.begin(), text.end(), std::ref(watch));
    } catch (const json::parse_error& error) {
        problems.push_back({file_name, "not readable as JSON at " + line_and_column(text, error.byte),
                            "Correct the file with a text editor, or take the one that came with the program"});
        return false;
    } catch (const json::exception&) {
        problems.push_back({file_name, "holds a number or text that cannot be read", "Correct the file"});
        return false;
    }
    if (watch.too_deep) {
        problems.push_back({file_name, "is nested deeper than " + std::to_string(max_depth) + " levels",
                            "Check that it is the right file"});
    } else if (!watch.repeated.empty()) {
        problems.push_back({file_name, "the field " + in_quotes(watch.repeated) + " stands twice in one object",
                            "Keep one of the two"});
    } else if (!out.is_object()) {
        problems.push_back({file_name, std::string("holds ") + type_word(out) + " where an object is expected",
                            "Check that it is the right file"});
    } else if (const auto found = out.find("schema"); found == out.end() || !found->is_number_integer()) {
        problems.push_back(
            {file_name + ": schema", "missing or not a whole number", "Write \"schema\": " + std::to_string(schema)});
    } else if (*found > schema || *found < (oldest == 0 ? schema : oldest)) {
        problems.push_back({file_name + ": schema",
                            "is " + found->dump() + ", this program reads " + std::to_string(schema),
                            "Use a program version that knows this schema"});
    }
    return problems.empty();
}

Reader::Reader(const nlohmann::json& object, std::string where, std::vector<Problem>& problems)
    : object_(&object), where_(std::move(where)), problems_(&problems) {}

std::string Reader::at(const char* key) const {
    // A file's own fields follow a colon, an item's fields a point.
    const bool top = where_.find(": ") == std::string::npos;
    return where_ + (top ? ": " : ".") + key;
}

void Reader::problem(const char* key, std::string what, std::string remedy) {
    problems_->push_back({*key != '\0' ? at(key) : where_, std::move(what), std::move(remedy)});
}

bool Reader::has(const char* key) const {
    return object_->contains(key);
}

const nlohmann::json* Reader::get(const char* key, bool required) {
    known_.insert(key);
    const auto found = object_->find(key);
    if (found != object_->end()) return &*found;
    if (required) problem(key, "is missing", "Add the field");
    return nullptr;
}

std::string Reader::text(const char* key, bool may_be_empty) {
    const json* value = get(key, true);
    if (value == nullptr) return {};
    if (!value->is_string()) {
        problem(key, std::string("is ") + type_word(*value) + ", a text is expected", "Write it in quotation marks");
        return {};
    }
    auto out = value->get<std::string>();
    if (out.empty() && !may_be_empty) problem(key, "is empty", "Fill in the field");
    if (out.size() > 2000) problem(key, "is longer than 2000 characters", "Shorten the text");
    for (const char c : out) {
        if (static_cast<unsigned char>(c) < 0x20U && c != '\n') {
            problem(key, "holds a control character", "Remove it");
            break;
        }
    }
    return out;
}

std::string Reader::text_or(const char* key, const char* fallback) {
    if (!has(key)) return fallback;
    return text(key, true);
}

double Reader::number(const char* key, double least, double most, const char* unit) {
    const json* value = get(key, true);
    if (value == nullptr) return least;
    if (!value->is_number()) {
        problem(key, std::string("is ") + type_word(*value) + ", a number is expected",
                "Write a figure within " + range_text(least, most, unit));
        return least;
    }
    const auto out = value->get<double>();
    if (!std::isfinite(out) || out < least || out > most) {
        problem(key, "is " + figure(out) + ", allowed is " + range_text(least, most, unit),
                "Check the figure and its unit");
        return least;
    }
    return out;
}

double Reader::number_or(const char* key, double fallback, double least, double most, const char* unit) {
    if (!has(key)) return fallback;
    return number(key, least, most, unit);
}

int Reader::whole(const char* key, int least, int most) {
    const double out = number(key, least, most, "");
    if (out != std::floor(out)) {
        problem(key, "is " + figure(out) + ", a whole number is expected", "Write it without a fraction");
        return least;
    }
    return static_cast<int>(out);
}

bool Reader::flag(const char* key) {
    const json* value = get(key, true);
    if (value == nullptr) return false;
    if (!value->is_boolean()) {
        problem(key, std::string("is ") + type_word(*value) + ", true or false is expected", "Write true or false");
        return false;
    }
    return value->get<bool>();
}

bool Reader::flag_or(const char* key, bool fallback) {
    if (!has(key)) return fallback;
    return flag(key);
}

Point2 Reader::point(const char* key, double limit_m) {
    const json* value = get(key, true);
    if (value == nullptr) return {};
    if (!value->is_array() || value->size() != 2 || !(*value)[0].is_number() || !(*value)[1].is_number()) {
        problem(key, "is not a point", "Write it as [x, y] in metres");
        return {};
    }
    const Point2 out{(*value)[0].get<double>(), (*value)[1].get<double>()};
    if (!std::isfinite(out.x_m) || !std::isfinite(out.y_m) || std::fabs(out.x_m) > limit_m ||
        std::fabs(out.y_m) > limit_m) {
        problem(key, "lies further than " + figure(limit_m) + " m from the origin", "Check the figures, in metres");
        return {};
    }
    return out;
}

std::vector<Point2> Reader::points(const char* key, double limit_m, std::size_t most) {
    const json* value = get(key, true);
    if (value == nullptr) return {};
    if (!value->is_array() || value->size() > most) {
        problem(key, "is not a list of at most " + std::to_string(most) + " points", "Write it as [[x, y], ...]");
        return {};
    }
    std::vector<Point2> out;
    for (const json& item : *value) {
        const bool shaped = item.is_array() && item.size() == 2 && item[0].is_number() && item[1].is_number();
        const Point2 p = shaped ? Point2{item[0].get<double>(), item[1].get<double>()} : Point2{NAN, NAN};
        // A NaN fails both comparisons.
        if (!(std::fabs(p.x_m) <= limit_m && std::fabs(p.y_m) <= limit_m)) {
            problem(key, "entry " + std::to_string(out.size()) + " is not a point within " + figure(limit_m) + " m",
                    "Write each as [x, y] in metres");
            return {};
        }
        out.push_back(p);
    }
    return out;
}

std::vector<double> Reader::numbers(const char* key, std::size_t count, double limit) {
    const json* value = get(key, true);
    if (value == nullptr) return {};
    std::vector<double> out;
    if (value->is_array() && value->size() == count)
        for (const json& item : *value)
            out.push_back(item.is_number() ? item.get<double>() : NAN);
    // A NaN fails the comparison.
    const bool good =
        out.size() == count && std::all_of(out.begin(), out.end(), [limit](double v) { return std::fabs(v) <= limit; });
    if (good) return out;
    problem(key, "is not a list of " + std::to_string(count) + " numbers, none beyond " + figure(limit),
            "Write it as [1.5, ...], with 0 where the sheet has no coefficient");
    return {};
}

std::vector<std::array<double, 2>> Reader::pairs(const char* key, double limit, std::size_t most, const char* meaning) {
    const json* value = get(key, true);
    if (value == nullptr) return {};
    std::vector<std::array<double, 2>> out;
    if (value->is_array() && value->size() <= most)
        for (const json& item : *value) {
            const bool shaped = item.is_array() && item.size() == 2 && item[0].is_number() && item[1].is_number();
            if (!shaped) break;
            out.push_back({item[0].get<double>(), item[1].get<double>()});
            if (!(std::fabs(out.back()[0]) <= limit && std::fabs(out.back()[1]) <= limit)) break;
        }
    const bool good = value->is_array() && !out.empty() && out.size() == value->size() &&
                      std::fabs(out.back()[0]) <= limit && std::fabs(out.back()[1]) <= limit;
    if (good) return out;
    problem(key, "is not a list of one to " + std::to_string(most) + " pairs within " + figure(limit),
            std::string("Write each as ") + meaning);
    return {};
}

std::vector<std::string> Reader::texts(const char* key, bool required) {
    const json* value = get(key, required);
    if (value == nullptr) return {};
    std::vector<std::string> out;
    if (value->is_array()) {
        for (const json& item : *value) {
            if (item.is_string()) out.push_back(item.get<std::string>());
        }
    }
    if (!value->is_array() || out.size() != value->size()) {
        problem(key, "is not a list of texts", "Write it as [\"...\", ...]");
        return {};
    }
    return out;
}

std::string Reader::date(const char* key) {
    const std::size_t before = problems_->size();
    std::string out = text(key);
    if (problems_->size() == before && !date_from_iso8601(out).ok()) {
        problem(key, in_quotes(out) + " is not a date", "Write it as 2027-06-21");
    }
    return out;
}

std::size_t Reader::one_of(const char* key, const std::vector<std::string>& keys) {
    const std::size_t before = problems_->size();
    const std::string found = text(key);
    if (problems_->size() != before) return 0;
    std::string list;
    for (std::size_t i = 0; i < keys.size(); ++i) {
        if (keys[i] == found) return i;
        list += (i == 0 ? "" : ", ") + keys[i];
    }
    problem(key, in_quotes(found) + " is not known", "Use one of: " + list);
    return 0;
}

std::vector<Reader> Reader::objects(const char* key, bool required) {
    const json* value = get(key, required);
    if (value == nullptr) return {};
    if (!value->is_array()) {
        problem(key, std::string("is ") + type_word(*value) + ", a list is expected", "Write it as [{...}, ...]");
        return {};
    }
    std::vector<Reader> out;
    for (std::size_t i = 0; i < value->size(); ++i) {
        std::string path = at(key) + '[' + std::to_string(i) + ']';
        if (!(*value)[i].is_object()) {
            problems_->push_back(
                {path, std::string("is ") + type_word((*value)[i]) + ", an object is expected", "Write it as {...}"});
            continue;
        }
        out.emplace_back((*value)[i], std::move(path), *problems_);
    }
    return out;
}

std::optional<Reader> Reader::object(const char* key, bool required) {
    const json* value = get(key, required);
    if (value == nullptr) return std::nullopt;
    if (!value->is_object()) {
        problem(key, std::string("is ") + type_word(*value) + ", an object is expected", "Write it as {...}");
        return std::nullopt;
    }
    return Reader(*value, at(key), *problems_);
}

void Reader::name_by(const std::string& id) {
    if (!id.empty()) where_ += " \"" + for_message(id) + '"';
}

void Reader::done() {
    for (const auto& item : object_->items()) {
        if (known_.count(item.key()) == 0) {
            problem("", "has an unknown field " + in_quotes(item.key()), "Check its spelling, or remove it");
        }
    }
}

}  // namespace wg::fields
