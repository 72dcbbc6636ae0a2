// Entry for a coverage-guided fuzzer (clang++ -fsanitize=fuzzer,address): any bytes as a job file.
// Built and driven without one by tests/core/job/mutation_test.cpp, which includes this file.

#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <string_view>

#include "core/job/codec.h"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    const std::string_view text(reinterpret_cast<const char*>(data), size);
    const wg::Result<wg::Job> read = wg::job_from_json(text, "fuzz.json");
    if (!read.ok()) {
        // A refusal says something.
        for (const wg::Problem& problem : read.problems()) {
            if (problem.what.empty() || problem.remedy.empty()) std::abort();
        }
        return 0;
    }
    // What was accepted is valid, and survives being written and read again.
    if (!wg::validate(read.value()).empty()) std::abort();
    const wg::Result<wg::Job> again = wg::job_from_json(wg::job_to_json(read.value()), "again.json");
    if (!again.ok() || !(again.value() == read.value())) std::abort();
    return 0;
}
