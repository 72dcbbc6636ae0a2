#include "core/store/number_ranges.h"

#include <QVariant>

#include "core/quantity/utf8.h"
#include "core/store/database.h"
#include "core/store/text.h"

namespace wg::store {
namespace {

constexpr std::size_t longest_pattern = 40;
constexpr std::size_t longest_suffix = 8;
constexpr const char* suffix_setting = "numbers.suffix";
constexpr std::int64_t last_number = 999'999'999;
// More papers of other machines than anybody takes in between two of one's own.
constexpr int most_passed_over = 10'000;

struct Field {
    std::string name;
    int width = 0;
    std::size_t end = 0;  ///< after its brace
};

/// The field that begins at `open`; nothing when it is none.
std::optional<Field> field_at(std::string_view pattern, std::size_t open) {
    const std::size_t close = pattern.find('}', open);
    if (close == std::string_view::npos) return std::nullopt;
    const std::string inside(pattern.substr(open + 1, close - open - 1));
    if (inside == "year" || inside == "seat" || inside == "number") return Field{inside, 0, close + 1};
    if (inside.size() == 8 && inside.rfind("number:", 0) == 0 && inside[7] >= '1' && inside[7] <= '9')
        return Field{"number", inside[7] - '0', close + 1};
    return std::nullopt;
}

std::string padded(std::int64_t number, int width) {
    std::string digits = std::to_string(number);
    const auto wanted = static_cast<std::size_t>(width);
    return digits.size() < wanted ? std::string(wanted - digits.size(), '0') + digits : digits;
}

const char* usual_pattern(NumberKind kind) {
    switch (kind) {
        case NumberKind::quote: return "Q{year}-{number:4}";
        case NumberKind::order: return "O{year}-{number:4}";
        case NumberKind::change_order: return "C{year}-{number:4}";
        case NumberKind::purchase: return "P{year}-{number:4}";
    }
    return "";
}

}  // namespace

const char* key_of(NumberKind kind) noexcept {
    switch (kind) {
        case NumberKind::quote: return "quote";
        case NumberKind::order: return "order";
        case NumberKind::change_order: return "change-order";
        case NumberKind::purchase: return "purchase";
    }
    return "";
}

std::optional<Problem> refuse_pattern(std::string_view pattern) {
    const Problem wrong{"pattern of numbers \"" + for_message(std::string(pattern)) + "\"", "",
                        "Write it as Q{year}-{number:4}"};
    const auto because = [&wrong](const char* what) { return Problem{wrong.where, what, wrong.remedy}; };
    if (pattern.size() > longest_pattern) return because("is longer than 40 characters");
    if (!is_utf8(std::string(pattern))) return because("is no text");
    int years = 0;
    int numbers = 0;
    int seats = 0;
    for (std::size_t i = 0; i < pattern.size();) {
        const char c = pattern[i];
        if (static_cast<unsigned char>(c) < 0x20 || c == 0x7F) return because("holds a control character");
        if (c == '}') return because("has a brace that opens nowhere");
        if (c != '{') {
            ++i;
            continue;
        }
        const std::optional<Field> field = field_at(pattern, i);
        if (!field) return because("has something else in braces than year, seat, number or number:1 to number:9");
        years += field->name == "year" ? 1 : 0;
        numbers += field->name == "number" ? 1 : 0;
        seats += field->name == "seat" ? 1 : 0;
        i = field->end;
    }
    if (numbers != 1) return because("does not have the number once");
    if (years > 1 || seats > 1) return because("has the year or the seat twice");
    return std::nullopt;
}

std::optional<Problem> refuse_suffix(std::string_view suffix) {
    constexpr std::string_view allowed = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789";
    if (suffix.size() <= longest_suffix && suffix.find_first_not_of(allowed) == std::string_view::npos)
        return std::nullopt;
    return Problem{"suffix of this seat \"" + for_message(std::string(suffix)) + "\"",
                   "is longer than 8 characters, or has others than letters and digits", "Write it short, such as B2"};
}

std::string number_text(std::string_view pattern, int year, const std::string& suffix, std::int64_t number) {
    std::string out;
    bool seat_stands = suffix.empty();
    for (std::size_t i = 0; i < pattern.size();) {
        const std::optional<Field> field = pattern[i] == '{' ? field_at(pattern, i) : std::nullopt;
        if (!field) {
            out += pattern[i++];
            continue;
        }
        if (field->name == "year") out += padded(year, 4);
        if (field->name == "number") out += padded(number, field->width);
        if (field->name == "seat") {
            if (!suffix.empty()) out.append("-").append(suffix);
            seat_stands = true;
        }
        i = field->end;
    }
    if (!seat_stands) out.append("-").append(suffix);
    return out;
}

Result<std::string> NumberRanges::pattern(NumberKind kind) const {
    const Result<QVariant> found =
        database_.value("SELECT pattern FROM number_range WHERE kind = ?", {QString::fromLatin1(key_of(kind))});
    if (!found) return found.problems();
    std::string set = found.value().toString().toStdString();
    // A pattern from outside that says nothing would give one number for all.
    return set.empty() || refuse_pattern(set) ? std::string(usual_pattern(kind)) : set;
}

Result<bool> NumberRanges::set_pattern(NumberKind kind, const std::string& pattern) {
    if (auto problem = refuse_pattern(pattern)) return *problem;
    if (auto problem = database_.run("INSERT INTO number_range (kind, pattern) VALUES (?, ?) "
                                     "ON CONFLICT (kind) DO UPDATE SET pattern = excluded.pattern",
                                     {QString::fromLatin1(key_of(kind)), to_qt(pattern)}))
        return *problem;
    return true;
}

Result<std::string> NumberRanges::suffix() const {
    Result<std::string> set = store_.setting(suffix_setting, "");
    if (!set) return set;
    if (auto problem = refuse_suffix(set.value())) return *problem;
    return set;
}

Result<bool> NumberRanges::set_suffix(const std::string& suffix) {
    if (auto problem = refuse_suffix(suffix)) return *problem;
    return store_.set_setting(suffix_setting, suffix);
}

Result<bool> NumberRanges::is_taken(NumberKind kind, const std::string& text) const {
    const QString word = QString::fromLatin1(key_of(kind));
    const Result<QVariant> given =
        database_.value("SELECT 1 FROM number_given WHERE kind = ? AND text = ?", {word, to_qt(text)});
    if (!given) return given.problems();
    if (given.value().isValid()) return true;
    if (kind == NumberKind::purchase) return false;  // told on paper alone
    const Result<QVariant> there =
        kind == NumberKind::quote
            ? database_.value("SELECT 1 FROM quote_issued WHERE number = ?", {to_qt(text)})
            : database_.value("SELECT 1 FROM order_paper WHERE kind = ? AND number = ?", {word, to_qt(text)});
    if (!there) return there.problems();
    return there.value().isValid();
}

Result<NumberRanges::Next> NumberRanges::first_after_those_given(NumberKind kind, int year) const {
    if (year < 1970 || year > 9999)
        return Problem{"number", "is for the year " + std::to_string(year), "Set the clock of this machine"};
    Next out;
    const Result<std::string> pattern_set = pattern(kind);
    if (!pattern_set) return pattern_set.problems();
    const Result<std::string> suffix_set = suffix();
    if (!suffix_set) return suffix_set.problems();
    out.pattern = pattern_set.value();
    out.suffix = suffix_set.value();
    if (out.pattern.find("{year}") != std::string::npos) out.series = std::to_string(year);
    if (!out.suffix.empty()) out.series.append("-").append(out.suffix);
    const Result<QVariant> last = database_.value("SELECT max(number) FROM number_given WHERE kind = ? AND series = ?",
                                                  {QString::fromLatin1(key_of(kind)), to_qt(out.series)});
    if (!last) return last.problems();
    out.number = last.value().toLongLong() + 1;
    out.text = number_text(out.pattern, year, out.suffix, out.number);
    return out;
}

Result<std::string> NumberRanges::next(NumberKind kind, int year) const {
    Result<Next> found = first_after_those_given(kind, year);
    if (!found) return found.problems();
    Next& at = found.value();
    for (int i = 0; i < most_passed_over; ++i) {
        const Result<bool> taken = is_taken(kind, at.text);
        if (!taken) return taken.problems();
        if (!taken.value()) return at.text;
        at.text = number_text(at.pattern, year, at.suffix, ++at.number);
    }
    return Problem{"number", "none is free near " + for_message(at.text), "Change the pattern of numbers"};
}

Result<std::string> NumberRanges::give_for(NumberKind kind, int year, const std::string& given_to, Instant now,
                                           const std::function<std::optional<Problem>(const std::string&)>& use) {
    Transaction transaction(database_);
    if (auto problem = transaction.begin()) return *problem;
    Result<std::string> given = give(kind, year, given_to, now);
    if (!given) return given;
    if (auto problem = use(given.value())) return *problem;
    if (auto problem = transaction.commit()) return *problem;
    return given;
}

Result<std::string> NumberRanges::give(NumberKind kind, int year, const std::string& given_to, Instant now) {
    Result<Next> found = first_after_those_given(kind, year);
    if (!found) return found.problems();
    Next& at = found.value();
    for (int i = 0; i < most_passed_over && at.number <= last_number; ++i) {
        const Result<bool> taken = is_taken(kind, at.text);
        if (!taken) return taken.problems();
        // One number of the series under two patterns may read the same as an older one: told apart by what it was.
        std::string text = at.text;
        if (taken.value())
            text.append(" (").append(at.series).append("/").append(std::to_string(at.number)).append(", not given)");
        if (auto problem = database_.run(
                "INSERT INTO number_given (kind, series, number, text, given_to, given_at) VALUES (?, ?, ?, ?, ?, ?)",
                {QString::fromLatin1(key_of(kind)), to_qt(at.series),
                 QVariant::fromValue(static_cast<qlonglong>(at.number)), to_qt(text),
                 to_qt(taken.value() ? std::string() : given_to), to_qt(iso8601(now))}))
            return *problem;
        if (!taken.value()) return text;
        at.text = number_text(at.pattern, year, at.suffix, ++at.number);
    }
    return Problem{"number", "none is free near " + for_message(at.text), "Change the pattern of numbers"};
}

}  // namespace wg::store
