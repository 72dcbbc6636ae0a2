#include "core/job/codec.h"

#include <algorithm>
#include <cstring>
#include <nlohmann/json.hpp>

#include "core/job/checker.h"
#include "core/job/fields.h"
#include "core/job/job_tree.h"
#include "core/job/json_text.h"
#include "core/job/upgrade.h"
#include "core/job/words.h"
#include "core/quantity/sha256.h"
#include "core/quantity/utf8.h"

namespace wg {
namespace {

using nlohmann::json;
using namespace job_fields;

constexpr const char* format_name = "warmgable-job";

const char* kind_of(const json& value) {
    switch (value.type()) {
        case json::value_t::null: return "nothing (null)";
        case json::value_t::object: return "an object";
        case json::value_t::array: return "a list";
        case json::value_t::string: return "text";
        case json::value_t::boolean: return "true or false";
        case json::value_t::number_integer:
        case json::value_t::number_unsigned: return "a whole number";
        case json::value_t::number_float: return "a number with decimals";
        default: return "something else";
    }
}

// Io that fills a job from a JSON object.
class Reader {
   public:
    template <class T>
    using Ref = T&;

    Reader(ProblemList& problems, const Path& path, const json& object)
        : problems_(problems), path_(path), object_(object) {}

    void text(const char* key, std::string& value, Presence presence = may_be_empty,
              std::size_t max_bytes = max_text_bytes) {
        const Path path = at(key);
        if (!take_text(path, value, presence)) return;
        if (presence == needed && value.empty()) problems_.add(path, "is empty", "Enter it");
        check_text(problems_, path, value, max_bytes);
    }
    void uuid(const char* key, std::string& value, Presence presence) {
        if (take_text(at(key), value, presence)) check_uuid(problems_, at(key), value, presence);
    }
    void sha256(const char* key, std::string& value, Presence presence) {
        if (take_text(at(key), value, presence)) check_sha256(problems_, at(key), value, presence);
    }
    void instant(const char* key, std::string& value, Presence presence) {
        if (take_text(at(key), value, presence)) check_instant(problems_, at(key), value, presence);
    }
    void date(const char* key, std::string& value) {
        if (take_text(at(key), value, may_be_empty)) check_date(problems_, at(key), value);
    }
    void boolean(const char* key, bool& value) {
        const json* found = take(at(key), may_be_empty);
        if (found == nullptr) return;
        if (!found->is_boolean()) return wrong_type(at(key), *found, "true or false");
        value = found->get<bool>();
    }
    void number(const char* key, double& value, Range range, Presence presence = may_be_empty) {
        const json* found = take(at(key), presence);
        // What stands for a value left out may not fit the others: a crown that begins over the top of a low tree.
        if (found == nullptr) return presence == needed ? void() : check_number(problems_, at(key), value, range);
        if (!found->is_number()) return wrong_type(at(key), *found, "a number");
        value = found->get<double>();
        check_number(problems_, at(key), value, range);
    }
    void optional_number(const char* key, std::optional<double>& value, Range range) {
        double number_read = 0.0;
        if (!object_.contains(key)) {
            known_.push_back(key);
            return;
        }
        number(key, number_read, range);
        value = number_read;
    }
    template <class I>
    void integer(const char* key, I& value, std::int64_t low, std::int64_t high) {
        const json* found = take(at(key), may_be_empty);
        if (found == nullptr) return check_integer(problems_, at(key), std::int64_t{value}, low, high);
        if (!found->is_number_integer()) return wrong_type(at(key), *found, "a whole number");
        // Beyond the signed range means beyond every range here.
        const bool huge = found->is_number_unsigned() && found->get<std::uint64_t>() > (~std::uint64_t{0} >> 1U);
        const std::int64_t read = huge ? high + 1 : found->get<std::int64_t>();
        check_integer(problems_, at(key), read, low, high);
        if (read >= low && read <= high) value = static_cast<I>(read);
    }
    void optional_integer(const char* key, std::optional<std::int64_t>& value, std::int64_t low, std::int64_t high) {
        std::int64_t read = 0;
        if (!object_.contains(key)) {
            known_.push_back(key);
            return;
        }
        integer(key, read, low, high);
        value = read;
    }
    template <class E>
    void word(const char* key, E& value, Presence presence = may_be_empty) {
        std::string read;
        if (!take_text(at(key), read, presence)) return;
        if (const std::optional<E> known = from_key<E>(read)) {
            value = *known;
            return;
        }
        std::string all;
        for (const Word<E>& w : words<E>())
            all += (all.empty() ? "" : ", ") + std::string(w.key);
        problems_.add(at(key), "is '" + for_message(read) + "'", "It has to be one of: " + all);
    }
    template <class E>
    void word_unless(const char* key, E& value, E) {
        word(key, value);
    }
    void point(const char* key, Point3& value, Presence presence = may_be_empty) {
        const json* found = take(at(key), presence);
        if (found == nullptr) return;
        double read[3] = {};
        if (!take_coordinates(at(key), *found, read, 3)) return;
        value = {read[0], read[1], read[2]};
        check_coordinates(problems_, at(key), read, 3);
    }
    void point(const char* key, Point2& value, Presence presence = may_be_empty) {
        const json* found = take(at(key), presence);
        if (found == nullptr) return;
        double read[2] = {};
        if (!take_coordinates(at(key), *found, read, 2)) return;
        value = {read[0], read[1]};
        check_coordinates(problems_, at(key), read, 2);
    }
    void optional_point(const char* key, std::optional<Point2>& value) {
        Point2 read;
        point(key, read);
        if (object_.contains(key)) value = read;
    }
    void text_if_any(const char* key, std::string& value) { text(key, value); }
    void true_if_set(const char* key, bool& value) { boolean(key, value); }
    void uuid_if_any(const char* key, std::string& value) { uuid(key, value, may_be_empty); }
    void date_if_any(const char* key, std::string& value) { date(key, value); }
    void sha256_if_any(const char* key, std::string& value) { sha256(key, value, may_be_empty); }
    template <class I>
    void integer_unless(const char* key, I& value, std::int64_t low, std::int64_t high, std::int64_t) {
        integer(key, value, low, high);
    }
    void number_unless(const char* key, double& value, Range range, double) { number(key, value, range); }
    void outline(const char* key, std::vector<Point2>& value, Presence presence) {
        const Path path = at(key);
        const json* found = take(path, presence);
        if (found == nullptr || !usable_list(path, *found, max_corners)) return;
        bool whole = true;
        for (std::size_t i = 0; i < found->size() && !problems_.full(); ++i) {
            double read[2] = {};
            whole = take_coordinates({&path, nullptr, i, nullptr}, (*found)[i], read, 2) && whole;
            value.push_back({read[0], read[1]});
        }
        if (whole) check_outline(problems_, path, value, presence);
    }
    template <class T>
    void object(const char* key, T& value) {
        const Path path = at(key);
        const json* found = take(path, may_be_empty);
        if (found != nullptr) read_object(path, *found, value);
    }
    template <class T>
    void list(const char* key, std::vector<T>& values, std::size_t max_length = max_list) {
        const Path path = at(key);
        const json* found = take(path, may_be_empty);
        if (found == nullptr || !usable_list(path, *found, max_length)) return;
        values.resize(found->size());
        for (std::size_t i = 0; i < values.size() && !problems_.full(); ++i) {
            read_object({&path, nullptr, i, label_of(values[i])}, (*found)[i], values[i]);
        }
    }
    template <class E>
    void word_if_other(const char* key, E& value) {
        word(key, value);
    }
    template <class T>
    void object_if_other(const char* key, T& value) {
        object(key, value);
    }
    template <class T>
    void list_if_any(const char* key, std::vector<T>& values, std::size_t max_length) {
        list(key, values, max_length);
    }
    void extra(std::string& extra_json) {
        json rest = json::object();
        for (const auto& item : object_.items()) {
            const std::string& key = item.key();
            const bool known = std::any_of(known_.begin(), known_.end(), [&key](const char* k) { return key == k; });
            if (!known) rest[key] = item.value();
        }
        if (!rest.empty()) extra_json = rest.dump();
    }

    void skip(const char* key) { known_.push_back(key); }

   private:
    Path at(const char* key) const { return {&path_, key, 0, nullptr}; }

    const json* take(const Path& path, Presence presence) {
        known_.push_back(path.key);
        const auto found = object_.find(path.key);
        if (found != object_.end()) return &*found;
        if (presence == needed) problems_.add(path, "is missing", "Add it; docs/job-format.md lists the fields");
        return nullptr;
    }
    bool take_text(const Path& path, std::string& value, Presence presence) {
        const json* found = take(path, presence);
        if (found == nullptr) return false;
        if (!found->is_string()) {
            wrong_type(path, *found, "text");
            return false;
        }
        value = found->get<std::string>();
        return true;
    }
    bool take_coordinates(const Path& path, const json& found, double* values, std::size_t count) {
        const std::string wanted = count == 2 ? "a list of two numbers [x, y]" : "a list of three numbers [x, y, z]";
        const bool fits = found.is_array() && found.size() == count &&
                          std::all_of(found.begin(), found.end(), [](const json& v) { return v.is_number(); });
        if (!fits) {
            wrong_type(path, found, wanted.c_str());
            return false;
        }
        for (std::size_t i = 0; i < count; ++i)
            values[i] = found[i].get<double>();
        return true;
    }
    bool usable_list(const Path& path, const json& found, std::size_t max_length) {
        if (!found.is_array()) {
            wrong_type(path, found, "a list");
            return false;
        }
        check_length(problems_, path, found.size(), max_length);
        return found.size() <= max_length;
    }
    template <class T>
    void read_object(const Path& path, const json& found, T& value) {
        if (!found.is_object()) return wrong_type(path, found, "an object");
        Reader child(problems_, path, found);
        describe(child, value);
    }
    void wrong_type(const Path& path, const json& found, const char* wanted) {
        problems_.add(path, std::string("is ") + kind_of(found), std::string("It has to be ") + wanted);
    }

    ProblemList& problems_;
    const Path& path_;
    const json& object_;
    std::vector<const char*> known_;
};

// Io that writes a job into a JSON object.
class Writer {
   public:
    template <class T>
    using Ref = const T&;

    void text(const char* key, const std::string& value, Presence = may_be_empty, std::size_t = 0) {
        out_[key] = value;
    }
    void uuid(const char* key, const std::string& value, Presence) { out_[key] = value; }
    void sha256(const char* key, const std::string& value, Presence) { out_[key] = value; }
    void instant(const char* key, const std::string& value, Presence) { out_[key] = value; }
    void date(const char* key, const std::string& value) { out_[key] = value; }
    void boolean(const char* key, bool value) { out_[key] = value; }
    void number(const char* key, double value, Range, Presence = may_be_empty) { out_[key] = value; }
    void optional_number(const char* key, const std::optional<double>& value, Range) {
        if (value) {
            out_[key] = *value;
        } else {
            left_out_.push_back(key);
        }
    }
    template <class I>
    void integer(const char* key, I value, std::int64_t, std::int64_t) {
        out_[key] = static_cast<std::int64_t>(value);
    }
    void optional_integer(const char* key, const std::optional<std::int64_t>& value, std::int64_t, std::int64_t) {
        if (value) {
            out_[key] = *value;
        } else {
            left_out_.push_back(key);
        }
    }
    template <class E>
    void word(const char* key, E value, Presence = may_be_empty) {
        out_[key] = key_of(value);
    }
    /// Left out while it is the usual one: files written before the field was known keep their content hash.
    template <class E>
    void word_unless(const char* key, E value, E usual) {
        if (value == usual)
            left_out_.push_back(key);
        else
            word(key, value);
    }
    void point(const char* key, const Point3& value, Presence = may_be_empty) {
        out_[key] = json::array({value.x_m, value.y_m, value.z_m});
    }
    void point(const char* key, const Point2& value, Presence = may_be_empty) {
        out_[key] = json::array({value.x_m, value.y_m});
    }
    void optional_point(const char* key, const std::optional<Point2>& value) {
        if (!value) return left_out_.push_back(key);
        point(key, *value);
    }
    void text_if_any(const char* key, const std::string& value) {
        if (value.empty()) return left_out_.push_back(key);
        text(key, value);
    }
    void uuid_if_any(const char* key, const std::string& value) { text_if_any(key, value); }
    void date_if_any(const char* key, const std::string& value) { text_if_any(key, value); }
    void sha256_if_any(const char* key, const std::string& value) { text_if_any(key, value); }
    template <class I>
    void integer_unless(const char* key, I value, std::int64_t low, std::int64_t high, std::int64_t usual) {
        if (static_cast<std::int64_t>(value) == usual) return left_out_.push_back(key);
        integer(key, value, low, high);
    }
    void true_if_set(const char* key, bool value) {
        if (!value) return left_out_.push_back(key);
        boolean(key, value);
    }
    void number_unless(const char* key, double value, Range range, double usual) {
        if (value == usual) return left_out_.push_back(key);
        number(key, value, range);
    }
    void outline(const char* key, const std::vector<Point2>& value, Presence) {
        json corners = json::array();
        for (const Point2 p : value)
            corners.push_back(json::array({p.x_m, p.y_m}));
        out_[key] = std::move(corners);
    }
    template <class T>
    void object(const char* key, const T& value) {
        out_[key] = written(value);
    }
    template <class T>
    void list(const char* key, const std::vector<T>& values, std::size_t = 0) {
        json elements = json::array();
        for (const T& value : values)
            elements.push_back(written(value));
        out_[key] = std::move(elements);
    }
    template <class E>
    void word_if_other(const char* key, E value) {
        if (value == E{}) return left_out_.push_back(key);
        word(key, value);
    }
    template <class T>
    void object_if_other(const char* key, const T& value) {
        if (value == T{}) return left_out_.push_back(key);
        object(key, value);
    }
    template <class T>
    void list_if_any(const char* key, const std::vector<T>& values, std::size_t) {
        if (values.empty()) return left_out_.push_back(key);
        list(key, values);
    }
    void extra(const std::string& extra_json) {
        if (extra_json.empty()) return;
        // What is not a JSON object, and what this program knows better, is left out; `validate` reports both.
        const Result<json> read = parse_json(extra_json, "");
        if (!read || !read.value().is_object()) return;
        for (const auto& item : read.value().items()) {
            const std::string& key = item.key();
            const bool known = out_.contains(key) || std::any_of(left_out_.begin(), left_out_.end(),
                                                                 [&key](const char* k) { return key == k; });
            if (!known) out_[key] = item.value();
        }
    }

    template <class T>
    static json written(const T& value) {
        Writer writer;
        describe(writer, value);
        return std::move(writer.out_);
    }

   private:
    json out_ = json::object();
    std::vector<const char*> left_out_;
};

std::string dumped(const json& tree, int indent) {
    return tree.dump(indent, ' ', false, json::error_handler_t::replace);
}

}  // namespace

Result<Job> job_from_json(std::string_view text, const std::string& file_name) {
    Result<json> parsed = parse_json(text, file_name);
    if (!parsed) return parsed.problems();
    return job_from_tree(parsed.value(), file_name);
}

json job_tree(const Job& job) {
    json tree = Writer::written(job);
    tree["format"] = format_name;
    tree["schema"] = job_schema;
    return tree;
}

Result<Job> job_from_tree(json& tree, const std::string& file_name) {
    if (std::optional<Problem> refused = upgrade_job_tree(tree, file_name, job_upgraders(), job_schema)) {
        return *refused;
    }
    ProblemList problems(file_name);
    Job job;
    const Path root;
    Reader reader(problems, root, tree);
    reader.skip("format");
    reader.skip("schema");
    describe(reader, job);
    check_references(problems, job);
    if (!problems.problems().empty()) return std::move(problems.problems());
    return job;
}

std::string job_to_json(const Job& job) {
    return dumped(job_tree(job), 2) + '\n';
}

std::string content_sha256(const Job& job) {
    json tree = job_tree(job);
    for (const char* key : {"revision", "changed_at", "base_sha256", "base_revision"})
        tree.erase(key);
    return sha256_hex(dumped(tree, -1));
}

std::string reading_sha256(const Reading& entry) {
    json tree = Writer::written(entry);
    tree.erase("sha256");
    return sha256_hex(dumped(tree, -1));
}

std::string plan_mark(const Job& job) {
    json tree = job_tree(job);
    // What comes after the plan, and what is only kept beside it.
    for (const char* key : {"revision", "created_at", "changed_at", "base_sha256", "base_revision", "state", "record",
                            "photographs", "notes", "aftercare", "offer"})
        tree.erase(key);
    for (json& choice : tree["choices"])
        choice.erase("on_offer");
    std::string digits = sha256_hex(dumped(tree, -1)).substr(0, 8);
    for (char& c : digits) {
        if (c >= 'a' && c <= 'f') c = static_cast<char>(c - 'a' + 'A');
    }
    return digits.substr(0, 4) + '-' + digits.substr(4);
}

}  // namespace wg
