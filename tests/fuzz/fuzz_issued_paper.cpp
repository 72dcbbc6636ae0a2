// Entry for a coverage-guided fuzzer: any bytes as the snapshot that is frozen with an issued quote, as an exchange
// file may bring it. Built and driven without one by tests/core/plan/issued_paper_test.cpp, which includes this file.

#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <string_view>

#include "core/job/codec.h"
#include "core/plan/issued_paper.h"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    const std::string text(reinterpret_cast<const char*>(data), size);
    const auto read = wg::plan::issued_paper(text, "fuzz");
    if (!read.ok()) {
        for (const wg::Problem& problem : read.problems()) {
            if (problem.what.empty() || problem.remedy.empty()) std::abort();
        }
        return 0;
    }
    if (!read.value()) return 0;  // an older program's
    // What was accepted is valid, and is the same when it is frozen again.
    if (!wg::validate(read.value()->job).empty()) std::abort();
    const std::string frozen = wg::plan::snapshot_with_paper(text, *read.value());
    const auto again = wg::plan::issued_paper(frozen, "again");
    if (!again.ok() || !again.value()) std::abort();
    if (wg::plan::snapshot_with_paper(frozen, *again.value()) != frozen) std::abort();
    return 0;
}
