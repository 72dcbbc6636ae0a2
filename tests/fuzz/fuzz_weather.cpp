// Entry for a coverage-guided fuzzer: any bytes as a weather file. tests/fuzz/run.sh builds one program a reader with
//   clang++ -fsanitize=fuzzer,address,undefined -DWG_FUZZ_READER=read_epw (read_tmy3, read_pvgis_tmy, read_plain,
//   read_any)
// Bytes that begin with '@' are a patch on a whole file of the reader's format (weather_claims.h), others the file
// itself.

#include <cstddef>
#include <cstdint>

#include "tests/core/weather/plain_files.h"
#include "tests/fuzz/weather_claims.h"

#ifndef WG_FUZZ_READER
#define WG_FUZZ_READER read_any
#endif

namespace wg::weather::fuzz {

struct Base {
    std::string text;
    std::size_t header_lines;
};

inline const Base& base_of(Reader reader) {
    if (reader == read_epw) {
        static const Base epw = {epw_text(made_year(47.4, 9.2, 520.0, 1.0)), 8};
        return epw;
    }
    if (reader == read_tmy3) {
        static const Base tmy3 = {tmy3_text(made_year(47.4, 9.2, 520.0, 1.0)), 2};
        return tmy3;
    }
    if (reader == read_pvgis_tmy) {
        static const Base pvgis = {pvgis_text(made_year(47.4, 9.2, 520.0, 0.0, 10.0)), 7};
        return pvgis;
    }
    static const Base plain = {plain_text(made_year(47.4, 9.2, 520.0, 1.0)), 7};
    return plain;
}

inline bool check_bytes(Reader reader, std::string_view bytes, bool written_and_read = true) {
    if (bytes.empty() || bytes.front() != '@') return check_text(reader, bytes, written_and_read);
    const Base& base = base_of(reader);
    return check_text(reader, patched(base.text, base.header_lines, bytes.substr(1)), written_and_read);
}

}  // namespace wg::weather::fuzz

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    const std::string_view bytes(reinterpret_cast<const char*>(data), size);
    // By the bytes, so that a find repeats itself: one accepted file in sixteen is written and read again.
    const bool written_and_read = size % 16 == 0;
    wg::weather::fuzz::check_bytes(wg::weather::WG_FUZZ_READER, bytes, written_and_read);
    return 0;
}
