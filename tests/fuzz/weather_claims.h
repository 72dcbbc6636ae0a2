#pragma once
// What must hold whatever bytes a weather file has: a refusal that names file, line and column, or a year within its
// ranges that comes back from its own text bit for bit. Used by the fuzz target and by the mutation test.

#include <cstdio>
#include <cstdlib>
#include <string>
#include <string_view>

#include "core/weather/quality.h"
#include "core/weather/read.h"
#include "core/weather/write_plain.h"

namespace wg::weather::fuzz {

using Reader = Result<Year> (*)(std::string_view, const std::string&);

[[noreturn]] inline void broken(const char* claim, const std::string& detail) {
    std::fprintf(stderr, "claim broken: %s: %s\n", claim, detail.c_str());
    std::abort();
}

inline void check_problem(const Problem& problem) {
    // "fuzz:LINE:COLUMN"
    const std::string& where = problem.where;
    const std::size_t colon = where.find(':', 5);
    const auto positive = [](const std::string& digits) {
        return !digits.empty() && digits.find_first_not_of("0123456789") == std::string::npos && digits[0] != '0';
    };
    if (where.rfind("fuzz:", 0) != 0 || colon == std::string::npos || !positive(where.substr(5, colon - 5)) ||
        !positive(where.substr(colon + 1))) {
        broken("a refusal names line and column", problem.text());
    }
    if (problem.what.empty() || problem.remedy.empty() || problem.text().size() > 700) {
        broken("a refusal says what and what to do, shortly", problem.text());
    }
    for (const char c : problem.text()) {
        const auto byte = static_cast<unsigned char>(c);
        if (byte < 0x20 || byte == 0x7f) broken("a message is printable", problem.text());
    }
}

inline void check_series(const std::vector<double>& series, double low, double high, const char* name) {
    if (series.size() != static_cast<std::size_t>(hours_in_year)) broken("a series has 8760 hours", name);
    for (const double v : series) {
        if (!(v >= low && v <= high))
            broken("values stay within their range", name + std::string(" ") + std::to_string(v));
    }
}

inline void check_year(const Year& year, bool written_and_read) {
    check_series(year.global_w_m2, 0.0, 1500.0, "global");
    check_series(year.beam_normal_w_m2, 0.0, 1420.0, "beam");
    check_series(year.diffuse_w_m2, 0.0, 1000.0, "diffuse");
    check_series(year.air_c, -70.0, 60.0, "air");
    check_series(year.dew_point_c, -150.0, 60.0, "dew point");
    check_series(year.wind_m_s, 0.0, 60.0, "wind");
    check_series(year.pressure_pa, 40000.0, 110000.0, "pressure");
    if (!year.sky_long_wave_w_m2.empty()) check_series(year.sky_long_wave_w_m2, 50.0, 700.0, "long-wave");
    if (!year.sky_cover.empty()) check_series(year.sky_cover, 0.0, 1.0, "cover");
    for (std::size_t i = 0; i < year.air_c.size(); ++i) {
        if (year.dew_point_c[i] > year.air_c[i]) broken("dew point is not above air", std::to_string(i));
    }
    if (!(year.sun_minute >= 0.0 && year.sun_minute <= 60.0))
        broken("minute in the hour", std::to_string(year.sun_minute));
    if (!written_and_read) return;
    const std::string text = write_plain(year);
    const Result<Year> again = read_plain(text, "again");
    if (!again) broken("a year can be read again", text_of(again.problems()));
    if (write_plain(again.value()) != text) broken("a year comes back bit for bit", year.source);
}

/// True when the text was accepted. Writing a year and reading it again costs more than reading it: a fuzzer that
/// counts on many runs may leave it to others.
inline bool check_text(Reader reader, std::string_view text, bool written_and_read = true) {
    const Result<Year> year = reader(text, "fuzz");
    if (year) {
        check_year(year.value(), written_and_read);
        return true;
    }
    if (year.problems().size() > 20) broken("at most twenty problems", std::to_string(year.problems().size()));
    for (const Problem& problem : year.problems())
        check_problem(problem);
    return false;
}

/// A whole file with some of its lines replaced: the first `header` lines come from `patch` as far as it has any, its
/// further lines `N text` replace row N (modulo the rows). So that a few bytes reach code behind 8,760 good rows.
inline std::string patched(const std::string& whole, std::size_t header, std::string_view patch) {
    std::vector<std::string_view> lines;
    for (std::size_t from = 0; from < whole.size();) {
        const std::size_t end = std::min(whole.find('\n', from), whole.size() - 1);
        lines.push_back(std::string_view(whole).substr(from, end + 1 - from));
        from = end + 1;
    }
    std::size_t number = 0;
    std::vector<std::string> kept;  // replaced lines, never moved once taken
    kept.reserve(64);
    while (!patch.empty() && kept.size() < 64) {
        const std::size_t end = patch.find('\n');
        std::string line(patch.substr(0, end));
        patch.remove_prefix(end == std::string_view::npos ? patch.size() : end + 1);
        if (number < header) {
            if (line != "=") {  // as it was
                kept.push_back(line + "\n");
                lines[number] = kept.back();
            }
            ++number;
            continue;
        }
        std::size_t row = 0;
        std::size_t digits = 0;
        while (digits < line.size() && digits < 4 && line[digits] >= '0' && line[digits] <= '9')
            row = 10 * row + static_cast<std::size_t>(line[digits++] - '0');
        if (digits < line.size() && line[digits] == ' ') ++digits;
        line.erase(0, digits);
        // An asterisk keeps the row's stamp: text after it replaces what follows the first comma.
        std::string_view& target = lines[header + row % (lines.size() - header)];
        if (!line.empty() && line[0] == '*')
            line = std::string(target.substr(0, target.find(',') + 1)) + line.substr(1);
        kept.push_back(line.empty() ? "" : line + "\n");
        target = kept.back();
    }
    std::string out;
    out.reserve(whole.size() + 4096);
    for (const std::string_view line : lines)
        out += line;
    return out;
}

}  // namespace wg::weather::fuzz
