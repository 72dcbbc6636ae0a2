#pragma once
// Reading JSON from outside, field by field: every wrong, missing or unknown field becomes a Problem that names the
// file, the item and the field, and reading goes on so that all problems show at once.
// For the .cpp files of rooms that read catalogues, price lists and rule sets; no other header includes this one.

#include <array>
#include <nlohmann/json_fwd.hpp>
#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <vector>

#include "core/quantity/geometry.h"
#include "core/quantity/result.h"

namespace wg::fields {

inline constexpr std::size_t max_bytes = 16U << 20U;  ///< no honest catalogue comes near this
inline constexpr int max_depth = 32;

/// Parses `text` into `out`. False with problems when it is not UTF-8 JSON (line and column are given), too long, too
/// deep, names a field twice in one object, or is not an object whose "schema" is `schema`, or
/// one from `oldest` on when that is given.
bool parse(std::string_view text, const std::string& file_name, int schema, nlohmann::json& out,
           std::vector<Problem>& problems, int oldest = 0);

/// One object of the document. Asking for a field marks it as known; `done` reports the rest.
/// After a problem the returned value is a harmless stand-in: callers give up once problems are not empty.
class Reader {
   public:
    /// `where` is the path shown in messages, e.g. `equipment/x.json: blocks[1] "rill-18"`.
    Reader(const nlohmann::json& object, std::string where, std::vector<Problem>& problems);

    [[nodiscard]] bool has(const char* key) const;
    [[nodiscard]] const std::string& where() const noexcept { return where_; }

    [[nodiscard]] std::string text(const char* key, bool may_be_empty = false);
    [[nodiscard]] std::string text_or(const char* key, const char* fallback);
    /// Finite and within [least, most]; the unit is for the message only.
    [[nodiscard]] double number(const char* key, double least, double most, const char* unit);
    [[nodiscard]] double number_or(const char* key, double fallback, double least, double most, const char* unit);
    [[nodiscard]] int whole(const char* key, int least, int most);
    [[nodiscard]] bool flag(const char* key);
    [[nodiscard]] bool flag_or(const char* key, bool fallback);
    [[nodiscard]] Point2 point(const char* key, double limit_m);
    [[nodiscard]] std::vector<Point2> points(const char* key, double limit_m, std::size_t most);
    /// Exactly `count` finite numbers, none beyond `limit` in size; empty after a problem.
    [[nodiscard]] std::vector<double> numbers(const char* key, std::size_t count, double limit);
    /// At most `most` pairs of numbers, none beyond `limit` in size; `meaning` is for the message.
    [[nodiscard]] std::vector<std::array<double, 2>> pairs(const char* key, double limit, std::size_t most,
                                                           const char* meaning);
    [[nodiscard]] std::vector<std::string> texts(const char* key, bool required = true);
    /// A calendar date, YYYY-MM-DD.
    [[nodiscard]] std::string date(const char* key);
    /// One of `keys`; the index of the one found.
    [[nodiscard]] std::size_t one_of(const char* key, const std::vector<std::string>& keys);
    /// The array's items, each with its path; empty when absent (a problem when required) or not an array of objects.
    [[nodiscard]] std::vector<Reader> objects(const char* key, bool required = true);
    [[nodiscard]] std::optional<Reader> object(const char* key, bool required = true);

    /// Adds "[id]" style names to the path once the item's own id is known.
    void name_by(const std::string& id);
    void problem(const char* key, std::string what, std::string remedy);
    /// Of the whole document so far: whether something read between two calls was in order.
    [[nodiscard]] std::size_t problem_count() const noexcept { return problems_->size(); }
    /// A known field that is not read: told of already.
    void skip(const char* key) { known_.insert(key); }
    void done();

   private:
    [[nodiscard]] const nlohmann::json* get(const char* key, bool required);
    [[nodiscard]] std::string at(const char* key) const;

    const nlohmann::json* object_;
    std::string where_;
    std::vector<Problem>* problems_;
    std::set<std::string> known_;
};

/// A figure for messages: up to six significant digits, no trailing zeros.
[[nodiscard]] std::string figure(double value);

}  // namespace wg::fields
