#include "core/site/horizon_text.h"

#include <algorithm>
#include <charconv>
#include <cmath>
#include <cstdio>
#include <limits>

#include "core/quantity/angle.h"

namespace wg::site {
namespace {

constexpr std::size_t most_points = 720;  ///< every half degree
constexpr double same_bearing_deg = 0.05;

std::string_view trimmed(std::string_view text) {
    const auto blank = [](char c) { return c == ' ' || c == '\t' || c == '\r'; };
    while (!text.empty() && blank(text.front()))
        text.remove_prefix(1);
    while (!text.empty() && blank(text.back()))
        text.remove_suffix(1);
    return text;
}

std::vector<std::string> fields_of(std::string_view line) {
    // The strongest separator there is: a comma may be the decimal sign.
    const char* separators = line.find(';') != std::string_view::npos    ? ";"
                             : line.find('\t') != std::string_view::npos ? "\t"
                             : line.find(' ') != std::string_view::npos  ? " "
                                                                         : ",";
    std::vector<std::string> out;
    while (!line.empty()) {
        const std::size_t end = line.find(separators[0]);
        std::string field(trimmed(line.substr(0, end)));
        // "170, 12": the comma goes with the blank.
        if (separators[0] == ' ' && !field.empty() && field.back() == ',') field.pop_back();
        if (separators[0] != ',') std::replace(field.begin(), field.end(), ',', '.');
        // A degree sign after the number, in UTF-8.
        if (field.size() > 2 && field.substr(field.size() - 2) == "\xC2\xB0") field.resize(field.size() - 2);
        if (!field.empty()) out.push_back(std::move(field));
        if (end == std::string_view::npos) break;
        line.remove_prefix(end + 1);
    }
    return out;
}

/// False and NaN: not a finite number.
bool number_in(const std::string& field, double& value) {
    value = std::numeric_limits<double>::quiet_NaN();
    const char* end = field.data() + field.size();
    const char* begin = field.data() + (field.front() == '+' ? 1 : 0);
    double read = 0.0;
    const auto [stop, error] = std::from_chars(begin, end, read);
    if (error != std::errc() || stop != end || !std::isfinite(read)) return false;
    value = read;
    return true;
}

Problem in_line(std::size_t line, std::string what, std::string remedy) {
    return {"horizon, line " + std::to_string(line), std::move(what), std::move(remedy)};
}

}  // namespace

Result<std::vector<HorizonPoint>> horizon_from_text(std::string_view text, double declination_deg) {
    if (text.substr(0, 3) == "\xEF\xBB\xBF") text.remove_prefix(3);
    std::vector<HorizonPoint> points;
    std::vector<Problem> problems;
    std::size_t number = 0;
    bool first = true;
    while (!text.empty() && problems.size() < 20) {
        const std::size_t end = text.find('\n');
        const std::string_view line = trimmed(text.substr(0, end));
        text.remove_prefix(end == std::string_view::npos ? text.size() : end + 1);
        ++number;
        if (line.empty() || line.front() == '#') continue;
        const auto fields = fields_of(line);
        double bearing_deg = 0.0;
        double elevation_deg = 0.0;
        const bool has_bearing = !fields.empty() && number_in(fields[0], bearing_deg);
        const bool has_elevation = fields.size() >= 2 && number_in(fields[1], elevation_deg);
        const bool heading = first && !has_bearing && !has_elevation;
        first = false;
        if (heading) continue;
        if (!has_bearing || !has_elevation || fields.size() > 2) {
            problems.push_back(in_line(number, "is not a bearing and an elevation", "Write it as 170;12.5"));
        } else if (bearing_deg < 0.0 || bearing_deg > 360.0) {
            problems.push_back(in_line(number, "the bearing lies outside 0 to 360 degrees", "Read it again"));
        } else if (elevation_deg < 0.0 || elevation_deg > 80.0) {
            problems.push_back(in_line(number, "the elevation lies outside 0 to 80 degrees", "Read it again"));
        } else if (points.size() >= most_points) {
            problems.push_back(in_line(number, "is one more than a horizon may have", "Leave out every other line"));
            break;
        } else {
            points.push_back({wrap_360(bearing_deg + declination_deg), elevation_deg, {}});
        }
    }
    if (!problems.empty()) return problems;
    if (points.empty())
        return Problem{"horizon", "there is no line with a bearing and an elevation", "Write it as 170;12.5"};
    std::sort(points.begin(), points.end(),
              [](const HorizonPoint& a, const HorizonPoint& b) { return a.azimuth_deg < b.azimuth_deg; });
    for (std::size_t i = 0; i + 1 < points.size(); ++i)
        if (points[i + 1].azimuth_deg - points[i].azimuth_deg < same_bearing_deg)
            return Problem{
                "horizon",
                "has the bearing " +
                    std::to_string(static_cast<int>(std::lround(wrap_360(points[i].azimuth_deg - declination_deg)))) +
                    " twice",
                "Keep one of the two readings"};
    return points;
}

std::string horizon_to_text(const std::vector<HorizonPoint>& horizon, double declination_deg) {
    std::string out;
    for (const HorizonPoint& point : horizon) {
        char line[64];
        std::snprintf(line, sizeof line, "%.1f;%.1f\n", wrap_360(point.azimuth_deg - declination_deg),
                      point.elevation_deg);
        out += line;
    }
    return out;
}

}  // namespace wg::site
