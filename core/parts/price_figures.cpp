#include "core/parts/price_figures.h"

#include <array>
#include <cstddef>

namespace wg::parts {
namespace price_figures {

constexpr std::size_t longest_figure = 40;
constexpr std::array<std::string_view, 4> spaces = {" ", "\xC2\xA0", "\xE2\x80\xAF", "\xE2\x80\x89"};
constexpr std::array<std::string_view, 2> apostrophes = {"'", "\xE2\x80\x99"};
constexpr std::string_view true_minus = "\xE2\x88\x92";

/// The text with one character a mark: digits, '-', '.', ',', ' ' and '\''; empty: something else is in it.
std::string in_marks(std::string_view text) {
    std::string out;
    while (!text.empty()) {
        std::size_t length = 1;
        char mark = text.front();
        const auto stands_for = [&](std::string_view written, char as) {
            if (!text.starts_with(written)) return;
            mark = as;
            length = written.size();
        };
        for (const std::string_view space : spaces)
            stands_for(space, ' ');
        for (const std::string_view apostrophe : apostrophes)
            stands_for(apostrophe, '\'');
        stands_for(true_minus, '-');
        if (std::string_view("0123456789-., '").find(mark) == std::string_view::npos) return {};
        out += mark;
        text.remove_prefix(length);
    }
    return out;
}

struct Shape {
    bool figure = false;  ///< digits and marks, each mark between digits, but for a minus or a decimal sign in front
    bool negative = false;
    std::string marks;  ///< without the minus
};

Shape shape_of(std::string_view text) {
    Shape out;
    if (text.size() > longest_figure) return out;
    std::string marks = in_marks(without_outer_spaces(text));
    if (!marks.empty() && marks.front() == '-') {
        out.negative = true;
        marks.erase(0, 1);
    }
    const auto digit = [](char c) { return c >= '0' && c <= '9'; };
    if (marks.empty() || !digit(marks.back())) return out;
    if (!digit(marks.front()) && marks.front() != '.' && marks.front() != ',') return out;
    for (std::size_t i = 1; i < marks.size(); ++i) {
        if (marks[i] == '-' || (!digit(marks[i]) && !digit(marks[i - 1]))) return out;
    }
    out.figure = true;
    out.marks = std::move(marks);
    return out;
}

std::size_t times(const std::string& text, char mark) {
    std::size_t out = 0;
    for (const char c : text)
        if (c == mark) ++out;
    return out;
}

/// Which of point and comma parts the decimals, when the figure itself tells; '\0': neither is there, ' ': two ways.
char decimal_mark_of(const std::string& marks) {
    const std::size_t points = times(marks, '.');
    const std::size_t commas = times(marks, ',');
    if (points + commas == 0) return '\0';
    if (points > 0 && commas > 0) return marks.rfind('.') > marks.rfind(',') ? '.' : ',';
    const char mark = points > 0 ? '.' : ',';
    const char other = points > 0 ? ',' : '.';
    if (points + commas > 1) return other;  // it stands between thousands
    const std::size_t at = marks.find(mark);
    // Three digits after one to three that do not begin with a nought may be thousands; after other thousands they are
    // not, since those are marked one way.
    const bool thousands = marks.size() - at == 4 && at >= 1 && at <= 3 && marks.front() != '0';
    return thousands ? ' ' : mark;
}

bool grouped_by_three(std::string_view whole) {
    const std::size_t first = whole.find_first_of("., '");
    if (first == std::string_view::npos) return true;
    if (first == 0 || first > 3) return false;
    const char mark = whole[first];
    for (std::size_t i = first; i < whole.size(); i += 4) {
        if (whole[i] != mark || i + 4 > whole.size()) return false;
        if (whole.substr(i + 1, 3).find_first_not_of("0123456789") != std::string_view::npos) return false;
    }
    return true;
}

}  // namespace price_figures

using namespace price_figures;

std::string_view without_outer_spaces(std::string_view text) {
    for (bool again = true; again;) {
        again = false;
        while (!text.empty() && std::string_view(" \t\r\n").find(text.front()) != std::string_view::npos)
            text.remove_prefix(1);
        while (!text.empty() && std::string_view(" \t\r\n").find(text.back()) != std::string_view::npos)
            text.remove_suffix(1);
        for (const std::string_view space : spaces) {
            if (text.starts_with(space)) {
                text.remove_prefix(space.size());
                again = true;
            }
            if (text.ends_with(space)) {
                text.remove_suffix(space.size());
                again = true;
            }
        }
    }
    return text;
}

bool take_off_currency(std::string_view& text, const std::string& currency) {
    text = without_outer_spaces(text);
    const auto letter = [](char c) { return (c >= 'A' && c <= 'Z') || (c >= 'a' && c <= 'z'); };
    const auto belongs = [&](std::string_view name) {
        if (name == "\xE2\x82\xAC") return currency == "EUR";
        if (name == "\xC2\xA3") return currency == "GBP";
        // Many currencies are dollars or pesos; the sign alone does not tell which.
        if (name == "$")
            return currency.size() == 3 && (currency[2] == 'D' || currency[2] == 'N' || currency[2] == 'P');
        if (name.size() != currency.size()) return false;
        for (std::size_t i = 0; i < name.size(); ++i)
            if ((name[i] & ~0x20) != currency[i]) return false;
        return true;
    };
    for (const std::string_view sign :
         {std::string_view("\xE2\x82\xAC"), std::string_view("\xC2\xA3"), std::string_view("$")}) {
        if (!text.starts_with(sign) && !text.ends_with(sign)) continue;
        if (!belongs(sign)) return false;
        if (text.starts_with(sign)) {
            text.remove_prefix(sign.size());
        } else {
            text.remove_suffix(sign.size());
        }
        text = without_outer_spaces(text);
        return true;
    }
    std::size_t front = 0;
    while (front < text.size() && letter(text[front]))
        ++front;
    std::size_t back = 0;
    while (back < text.size() - front && letter(text[text.size() - 1 - back]))
        ++back;
    // Letters alone are no amount: the reader of figures says so.
    if (front == text.size() || (front == 0 && back == 0) || (front > 0 && back > 0)) return true;
    const std::string_view name = front > 0 ? text.substr(0, front) : text.substr(text.size() - back);
    if (name.size() != 3) return true;
    if (!belongs(name)) return false;
    text = front > 0 ? text.substr(front) : text.substr(0, text.size() - back);
    text = without_outer_spaces(text);
    return true;
}

DecimalSign sign_shown_by(std::string_view text) {
    const Shape shape = shape_of(text);
    if (!shape.figure) return DecimalSign::undecided;
    const char mark = decimal_mark_of(shape.marks);
    if (mark == '.') return DecimalSign::point;
    return mark == ',' ? DecimalSign::comma : DecimalSign::undecided;
}

bool reads_two_ways(std::string_view text) {
    const Shape shape = shape_of(text);
    return shape.figure && decimal_mark_of(shape.marks) == ' ';
}

WrittenFigure read_figure(std::string_view text, DecimalSign sign) {
    const Shape shape = shape_of(text);
    if (!shape.figure) return {{}, "is not a number", "Write digits, with one sign before the decimals"};
    char decimal = decimal_mark_of(shape.marks);
    if (sign == DecimalSign::undecided) {
        if (decimal == ' ')
            return {
                {}, "can be read in two ways: as thousands, or with three decimals", "Choose what marks the decimals"};
    } else {
        decimal = sign == DecimalSign::point ? '.' : ',';
    }
    const std::size_t at = decimal == '\0' ? std::string::npos : shape.marks.find(decimal);
    const std::string whole = shape.marks.substr(0, at);
    const std::string part = at == std::string::npos ? std::string() : shape.marks.substr(at + 1);
    if (part.find_first_not_of("0123456789") != std::string::npos || !grouped_by_three(whole)) {
        if (sign == DecimalSign::undecided)
            return {{}, "is not a number: thousands stand in groups of three", "Correct the figure"};
        return {{},
                sign == DecimalSign::point ? "does not fit a point as decimal sign"
                                           : "does not fit a comma as decimal sign",
                "Choose the other sign, or correct the figure"};
    }
    WrittenFigure out;
    if (shape.negative) out.digits += '-';
    for (const char c : whole)
        if (c >= '0' && c <= '9') out.digits += c;
    if (whole.empty()) out.digits += '0';
    if (!part.empty()) out.digits += '.' + part;
    return out;
}

}  // namespace wg::parts
