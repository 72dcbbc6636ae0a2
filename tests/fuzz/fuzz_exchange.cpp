// Entry for a coverage-guided fuzzer (tests/fuzz/run.sh): any bytes as an exchange file. Bytes that begin with '@' are
// its entries, each after a line of '@' and its name: they are packed with an honest list of contents first, so that
// what is changed reaches the readers behind the sums.
// Built and driven without one by tests/core/exchange/parcel_test.cpp, which includes this file.

#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <string>
#include <string_view>
#include <vector>

#include "core/exchange/contents.h"
#include "core/exchange/parcel.h"
#include "core/job/codec.h"
#include "core/quantity/utf8.h"

namespace wg::exchange::fuzz {

/// The archive of the entries that a text of '@' sections tells; nothing when it cannot be packed.
inline std::string archive_of_sections(std::string_view text) {
    std::vector<Entry> entries;
    while (!text.empty() && text.front() == '@' && entries.size() < 64) {
        const std::size_t line = text.find('\n');
        Entry entry{std::string(text.substr(1, line == std::string_view::npos ? line : line - 1)), {}};
        text.remove_prefix(line == std::string_view::npos ? text.size() : line + 1);
        const std::size_t end = text.find("\n@");
        if (!is_utf8(entry.name)) break;  // no program writes such a list
        entry.bytes = std::string(text.substr(0, end));
        text.remove_prefix(end == std::string_view::npos ? text.size() : end + 1);
        entries.push_back(std::move(entry));
    }
    Parcel parcel;
    parcel.made_at = "2027-06-21T12:00:00Z";
    parcel.made_by = "Warmgable 0.1";
    parcel.seat_id = "00000000-0000-4000-8000-00000000005e";
    parcel.seat_name = "Tablet";
    entries.insert(entries.begin(), Entry{contents_name, contents_json(parcel, entries)});
    const Result<std::string> archive = archive_of(entries);
    return archive ? archive.value() : std::string();
}

}  // namespace wg::exchange::fuzz

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    std::string_view bytes(reinterpret_cast<const char*>(data), size);
    std::string packed;
    if (!bytes.empty() && bytes.front() == '@') {
        packed = wg::exchange::fuzz::archive_of_sections(bytes);
        bytes = packed;
    }
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
