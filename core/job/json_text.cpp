#include "core/job/json_text.h"

#include <algorithm>
#include <optional>

#include <nlohmann/json.hpp>

#include "core/quantity/utf8.h"

namespace wg {
namespace {

using nlohmann::json;

std::string line_and_column(std::string_view text, std::size_t position) {
    const std::string_view before = text.substr(0, std::min(position, text.size()));
    const auto line = std::count(before.begin(), before.end(), '\n') + 1;
    const std::size_t line_start = before.rfind('\n');
    const std::size_t column = line_start == std::string_view::npos ? before.size() : before.size() - line_start - 1;
    return "line " + std::to_string(line) + ", column " + std::to_string(std::max<std::size_t>(column, 1));
}

// The library's reason without its own numbering and position.
std::string reason_of(const std::string& what) {
    std::string_view rest = what;
    for (const std::string_view end : {std::string_view("] "), std::string_view("column ")}) {
        const std::size_t at = rest.find(end);
        if (at < 80) rest.remove_prefix(at + end.size());
    }
    const std::size_t colon = rest.find(": ");
    if (!rest.empty() && rest.front() >= '0' && rest.front() <= '9' && colon != std::string_view::npos) {
        rest.remove_prefix(colon + 2);
    }
    return for_message(rest, 200);
}

// Builds the tree from the parser's events; returns false from an event to stop the parser.
class TreeBuilder : public nlohmann::json_sax<json> {
   public:
    TreeBuilder(std::string_view text, std::string file_name, const JsonLimits& limits)
        : text_(text), file_name_(std::move(file_name)), limits_(limits) {}

    bool null() override { return put(json()) != nullptr; }
    bool boolean(bool value) override { return put(json(value)) != nullptr; }
    bool number_integer(number_integer_t value) override { return put(json(value)) != nullptr; }
    bool number_unsigned(number_unsigned_t value) override { return put(json(value)) != nullptr; }
    bool number_float(number_float_t value, const string_t&) override { return put(json(value)) != nullptr; }
    bool string(string_t& value) override { return put(json(std::move(value))) != nullptr; }
    bool binary(binary_t&) override { return fail("holds bytes where a value belongs", "Write the file again"); }

    bool start_object(std::size_t) override { return enter(json::object()); }
    bool start_array(std::size_t) override { return enter(json::array()); }
    bool end_object() override { return leave(); }
    bool end_array() override { return leave(); }

    bool key(string_t& name) override {
        if (open_.back().value->contains(name)) {
            return fail("the key '" + for_message(name) + "' occurs twice", "Keep one of the two");
        }
        open_.back().key = std::move(name);
        return true;
    }

    bool parse_error(std::size_t position, const std::string&, const json::exception& error) override {
        problem = Problem{join(line_and_column(text_, position)), "is not valid JSON: " + reason_of(error.what()),
                          "The file is damaged or was edited by hand; mend that place or take an earlier copy"};
        return false;
    }

    json root;
    std::optional<Problem> problem;

   private:
    struct Open {
        json* value = nullptr;
        std::string key;  ///< of the member being read, when `value` is an object
    };

    json* put(json&& value) {
        if (++count_ > limits_.max_values) {
            fail("holds more than " + std::to_string(limits_.max_values) + " values", "Split the file");
            return nullptr;
        }
        if (open_.empty()) {
            root = std::move(value);
            return &root;
        }
        json& parent = *open_.back().value;
        if (parent.is_array()) {
            parent.push_back(std::move(value));
            return &parent.back();
        }
        return &(parent[open_.back().key] = std::move(value));
    }

    bool enter(json&& container) {
        if (open_.size() >= limits_.max_depth) {
            return fail("is nested deeper than " + std::to_string(limits_.max_depth) + " levels",
                        "No job is nested so deeply; take an earlier copy of the file");
        }
        json* here = put(std::move(container));
        if (here == nullptr) return false;
        open_.push_back({here, {}});
        return true;
    }

    bool leave() {
        open_.pop_back();
        return true;
    }

    bool fail(const std::string& what, const std::string& remedy) {
        problem = Problem{join(place()), what, remedy};
        return false;
    }

    std::string place() const {
        std::string out;
        for (std::size_t i = 0; i < open_.size() && i < 8; ++i) {
            const Open& open = open_[i];
            if (open.value->is_array()) {
                out += '[' + std::to_string(open.value->empty() ? 0 : open.value->size() - 1) + ']';
            } else if (i + 1 < open_.size()) {
                out += (out.empty() ? "" : ".") + for_message(open.key, 40);
            }
        }
        return out;
    }

    std::string join(const std::string& where) const {
        if (file_name_.empty() || where.empty()) return file_name_ + where;
        return file_name_ + ": " + where;
    }

    std::string_view text_;
    std::string file_name_;
    JsonLimits limits_;
    std::vector<Open> open_;
    std::size_t count_ = 0;
};

}  // namespace

Result<json> parse_json(std::string_view text, const std::string& file_name, const JsonLimits& limits) {
    if (text.size() > limits.max_bytes) {
        return Problem{file_name,
                       "is " + std::to_string(text.size()) + " bytes long; at most " +
                           std::to_string(limits.max_bytes) + " are read",
                       "Check that this is the right file"};
    }
    TreeBuilder builder(text, file_name, limits);
    const bool parsed = json::sax_parse(text.begin(), text.end(), &builder);
    if (builder.problem) return *builder.problem;
    if (!parsed) return Problem{file_name, "is not valid JSON", "Take an earlier copy of the file"};
    return std::move(builder.root);
}

}  // namespace wg
