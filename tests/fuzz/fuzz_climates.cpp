// Entry for a coverage-guided fuzzer (clang++ -fsanitize=fuzzer,address): any bytes as a table of climates.
// Built and driven without one by tests/core/weather/climate_table_test.cpp, which includes this file.

#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <set>
#include <string_view>

#include "core/weather/climate_table.h"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    const std::string_view text(reinterpret_cast<const char*>(data), size);
    const wg::Result<std::vector<wg::weather::Climate>> read = wg::weather::climates_from_csv(text, "fuzz.csv");
    if (!read.ok()) {
        // A refusal says something.
        for (const wg::Problem& problem : read.problems()) {
            if (problem.where.empty() || problem.what.empty() || problem.remedy.empty()) std::abort();
        }
        return 0;
    }
    // What was taken has its own id and figures within their ranges.
    std::set<std::string> ids;
    for (const wg::weather::Climate& climate : read.value()) {
        if (climate.id.empty() || climate.source.empty() || !ids.insert(climate.id).second) std::abort();
        for (const double light : climate.global_kwh_m2_day) {
            if (!(light >= 0.0 && light <= 12.0)) std::abort();
        }
        if (!(climate.latitude_deg >= -90.0 && climate.latitude_deg <= 90.0)) std::abort();
    }
    return 0;
}
