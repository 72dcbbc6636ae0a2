#include "core/sketch/typed.h"

#include <cmath>
#include <string>

#include "core/quantity/constants.h"

namespace wg::sketch {
namespace {

constexpr double foot_m = 0.3048;
constexpr double inch_m = 0.0254;

std::string_view trimmed(std::string_view text) {
    while (!text.empty() && (text.front() == ' ' || text.front() == '\t'))
        text.remove_prefix(1);
    while (!text.empty() && (text.back() == ' ' || text.back() == '\t'))
        text.remove_suffix(1);
    return text;
}

/// Takes a number from the front: digits with one point or comma. Nothing when there is none.
std::optional<double> take_number(std::string_view& text) {
    text = trimmed(text);
    double value = 0.0;
    double scale = 0.0;
    std::size_t digits = 0;
    std::size_t i = 0;
    for (; i < text.size() && digits < 16; ++i) {
        const char c = text[i];
        if (c >= '0' && c <= '9') {
            ++digits;
            if (scale > 0.0) {
                value += scale * (c - '0');
                scale /= 10.0;
            } else {
                value = 10.0 * value + (c - '0');
            }
        } else if ((c == '.' || c == ',') && scale == 0.0) {
            scale = 0.1;
        } else {
            break;
        }
    }
    if (digits == 0) return std::nullopt;
    text.remove_prefix(i);
    text = trimmed(text);
    return value;
}

bool take(std::string_view& text, std::string_view word) {
    if (text.substr(0, word.size()) != word) return false;
    text.remove_prefix(word.size());
    text = trimmed(text);
    return true;
}

Problem not_a(const char* what, std::string_view typed, const char* example) {
    const std::string shown(typed.substr(0, 40));
    return {what, "'" + shown + "' is not understood", std::string("Type it like ") + example};
}

}  // namespace

Result<double> length_m(std::string_view typed) {
    std::string_view text = trimmed(typed);
    const auto fail = [&] { return not_a("length", typed, "3.25, 325 cm, 3250 mm or 10 ft 8 in"); };
    const auto number = take_number(text);
    if (!number) return fail();
    double value = *number;
    if (take(text, "mm"))
        value *= 1e-3;
    else if (take(text, "cm"))
        value *= 1e-2;
    else if (take(text, "ft") || take(text, "'")) {
        value *= foot_m;
        if (!text.empty()) {
            const auto inches = take_number(text);
            if (!inches || !(take(text, "in") || take(text, "\""))) return fail();
            value += *inches * inch_m;
        }
    } else if (take(text, "in") || take(text, "\""))
        value *= inch_m;
    else
        take(text, "m");
    if (!text.empty()) return fail();
    if (!(value >= 0.001 && value <= 1000.0))
        return Problem{"length", "a length of " + std::to_string(value) + " m lies outside 0.001 to 1000 m",
                       "Check number and unit"};
    return value;
}

Result<double> angle_deg(std::string_view typed) {
    std::string_view text = trimmed(typed);
    const auto fail = [&] { return not_a("angle", typed, "35, 35.5 deg, 7:12 or 70 %"); };
    const auto number = take_number(text);
    if (!number) return fail();
    double value = *number;
    if (take(text, ":")) {
        const auto run = take_number(text);
        if (!run || !(*run > 0.0)) return fail();
        value = degrees(std::atan2(value, *run));
    } else if (take(text, "%")) {
        value = degrees(std::atan2(value, 100.0));
    } else {
        (void)(take(text, "deg") || take(text, "\u00b0"));
    }
    if (!text.empty()) return fail();
    if (!(value <= 360.0)) return Problem{"angle", "an angle of more than 360 deg", "Type 0 to 360"};
    return value;
}

Result<Step> step(std::string_view typed) {
    Step out;
    const std::size_t cut = typed.find_first_of("@<");
    const auto length = length_m(typed.substr(0, cut));
    if (!length) return length.problems();
    out.length_m = length.value();
    if (cut == std::string_view::npos) return out;
    std::string_view rest = trimmed(typed.substr(cut + 1));
    const bool clockwise = take(rest, "-");
    const auto angle = angle_deg(rest);
    if (!angle) return angle.problems();
    out.turn_deg = clockwise ? -angle.value() : angle.value();
    return out;
}

Point2 end_of(const Point2& from, double heading_deg, double length_m) noexcept {
    const double heading = radians(heading_deg);
    return {from.x_m + length_m * std::cos(heading), from.y_m + length_m * std::sin(heading)};
}

}  // namespace wg::sketch
