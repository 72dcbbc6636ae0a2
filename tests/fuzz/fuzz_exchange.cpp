// Entry for a coverage-guided fuzzer (clang++ -fsanitize=fuzzer,address -lzip): any bytes as an exchange file.
// Built and driven without one by tests/core/exchange/parcel_test.cpp, which includes this file.

#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <string_view>

#include "core/exchange/parcel.h"
#include "core/job/codec.h"
#include "core/quantity/utf8.h"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    const std::string_view bytes(reinterpret_cast<const char*>(data), size);
    const wg::Result<wg::exchange::Parcel> read = wg::exchange::unpack(bytes, "fuzz.warmgable");
    if (!read.ok()) {
        for (const wg::Problem& problem : read.problems()) {
            if (problem.where.empty() || problem.what.empty() || problem.remedy.empty()) std::abort();
            if (!wg::is_utf8(problem.text())) std::abort();
        }
        return 0;
    }
    // What was taken is a job like any other, and can be sent on.
    if (!wg::validate(read.value().job).empty()) std::abort();
    const wg::Result<std::string> again = wg::exchange::pack(read.value());
    if (!again.ok()) std::abort();
    const wg::Result<wg::exchange::Parcel> back = wg::exchange::unpack(again.value(), "fuzz.warmgable");
    if (!back.ok() || back.value().job.id != read.value().job.id) std::abort();
    return 0;
}
