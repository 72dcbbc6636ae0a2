// Entry for a coverage-guided fuzzer (tests/fuzz/run.sh): any bytes as the versions of a job.

#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <string>
#include <string_view>

#include "core/job/codec.h"
#include "core/merge/join.h"
#include "core/merge/versions_codec.h"
#include "core/quantity/utf8.h"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    const std::string_view text(reinterpret_cast<const char*>(data), size);
    const wg::Result<wg::merge::Versions> read = wg::merge::versions_from_json(text, "fuzz.json");
    if (!read.ok()) {
        for (const wg::Problem& problem : read.problems()) {
            if (problem.what.empty() || problem.remedy.empty() || !wg::is_utf8(problem.text())) std::abort();
        }
        return 0;
    }
    // What was taken is a whole job, comes back as it was, and put together with itself is itself.
    const wg::Result<wg::Job> job = wg::merge::job_of(read.value());
    if (!job.ok() || !wg::validate(job.value()).empty()) std::abort();
    const std::string written = wg::merge::versions_to_json(read.value());
    const wg::Result<wg::merge::Versions> again = wg::merge::versions_from_json(written, "again.json");
    if (!again.ok() || !(again.value() == read.value())) std::abort();
    const wg::Result<wg::merge::Versions> twice = wg::merge::joined(read.value(), again.value());
    if (!twice.ok() || !(twice.value() == read.value())) std::abort();
    if (wg::merge::open_fields(read.value()).size() > read.value().fields.size() * 2) std::abort();
    return 0;
}
