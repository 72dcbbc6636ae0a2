#include "core/quantity/utf8.h"
#include "core/weather/plain_header.h"
#include "core/weather/read.h"
#include "core/weather/text_lines.h"

namespace wg::weather {

Result<Year> read_any(std::string_view text, const std::string& file_name) {
    using namespace detail;
    Problems problems(file_name);
    if (!plausible_text(text, problems)) return problems.take();
    Lines lines(text);
    const std::optional<Line> first = lines.next();
    const std::optional<Line> second = lines.next();
    if (first && starts_with(first->text, "LOCATION,")) return read_epw(text, file_name);
    if (first && starts_with(first->text, "Latitude")) return read_pvgis_tmy(text, file_name);
    if (second && starts_with(second->text, "Date (MM/DD/YYYY)")) return read_tmy3(text, file_name);
    if (first && looks_plain(first->text)) return read_plain(text, file_name);
    problems.add(1, 1,
                 "the file begins with '" + for_message(first ? first->text : text, 40) +
                     "', which is no weather file known here",
                 "Choose an EPW file, a TMY3 CSV file, a PVGIS typical year as CSV, or our plain CSV");
    return problems.take();
}

}  // namespace wg::weather
