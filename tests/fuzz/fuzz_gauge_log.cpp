// Entry for a coverage-guided fuzzer (clang++ -fsanitize=fuzzer,address): any bytes as the log of a gauge.
// Built and driven without one by tests/core/commissioning/gauge_log_test.cpp, which includes this file.

#include <cmath>
#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <string_view>

#include "core/commissioning/gauge_log.h"
#include "core/quantity/utf8.h"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    namespace wc = wg::commissioning;
    const std::string_view text(reinterpret_cast<const char*>(data), size);
    const wg::Result<wc::GaugeLog> read = wc::gauge_log_from_csv(text, "fuzz.csv");
    if (!read.ok()) {
        // A refusal says something, and in characters that a window can show.
        for (const wg::Problem& problem : read.problems()) {
            if (problem.where.empty() || problem.what.empty() || problem.remedy.empty()) std::abort();
            if (!wg::is_utf8(problem.text())) std::abort();
        }
        return 0;
    }
    // What was taken rises in time and lies within the ranges told; thinned it keeps both ends and makes nothing up.
    const wc::GaugeLog& log = read.value();
    if (log.points.size() < 2 || log.points.front().seconds != 0.0) std::abort();
    for (std::size_t i = 0; i < log.points.size(); ++i) {
        const wc::GaugePoint& p = log.points[i];
        if (i > 0 && !(p.seconds > log.points[i - 1].seconds)) std::abort();
        if (!p.absolute_pa && !p.gauge_bar) std::abort();
        if (p.absolute_pa && !(*p.absolute_pa > 0.0 && *p.absolute_pa <= 2e7)) std::abort();
        if (p.gauge_bar && !(*p.gauge_bar >= -1.2 && *p.gauge_bar <= 100.0)) std::abort();
        if (p.c && !(*p.c >= -100.0 && *p.c <= 250.0)) std::abort();
    }
    for (const std::string& note : log.notes)
        if (!wg::is_utf8(note)) std::abort();
    const std::vector<wc::GaugePoint> few = wc::thinned(log.points);
    if (few.size() > wc::most_log_readings || few.size() < 2) std::abort();
    if (few.back().seconds != log.points.back().seconds) std::abort();
    std::size_t at = 0;
    for (const wc::GaugePoint& p : few) {
        while (at < log.points.size() && log.points[at].seconds != p.seconds)
            ++at;
        if (at == log.points.size() || log.points[at].absolute_pa != p.absolute_pa) std::abort();
    }
    return 0;
}
