// Writes the sheet that tests/reference/xlsx_check.py reads with another library: xlsx_sample FILE.

#include <cstdio>

#include "core/sheets/xlsx_writer.h"

int main(int argc, char** argv) {
    if (argc != 2) return 2;
    wg::sheets::Sheet sheet{"Jobs", {"Job", "Client", "Net"}, {}};
    sheet.rows = {{"2027-0001", "=HYPERLINK(\"http://invented.example\")", 1234.56},
                  {"-12", "Jos\xC3\xA9 M\xC3\xBCller \xE2\x82\xAC \xF0\x9F\x8F\xA0", -0.125},
                  {"00017", "two\nlines <&> \"quoted\"", 0.0},
                  {"", " kept blanks ", 1e15},
                  {wg::CivilDate{2027, 6, 21}, wg::Instant{1'813'000'000}, wg::Instant{-1}}};
    for (int i = 0; i < 2000; ++i)
        sheet.rows.push_back({std::to_string(i), "row", static_cast<double>(i)});
    const auto written = wg::sheets::write_xlsx(argv[1], sheet, {1'813'000'000});
    if (!written) std::fprintf(stderr, "%s\n", wg::text_of(written.problems()).c_str());
    return written ? 0 : 1;
}
