#include <optional>

#include "core/quantity/utf8.h"
#include "core/weather/plain_header.h"
#include "core/weather/read.h"
#include "core/weather/text_lines.h"

namespace wg::weather {
namespace {

enum class YearFormat { epw, pvgis, tmy3, plain, unknown };

YearFormat format_of(const std::optional<detail::Line>& first, const std::optional<detail::Line>& second) {
    using namespace detail;
    if (first && starts_with(first->text, "LOCATION,")) return YearFormat::epw;
    if (first && starts_with(first->text, "Latitude")) return YearFormat::pvgis;
    if (second && starts_with(second->text, "Date (MM/DD/YYYY)")) return YearFormat::tmy3;
    return first && looks_plain(first->text) ? YearFormat::plain : YearFormat::unknown;
}

}  // namespace

bool begins_as_year(std::string_view text) {
    detail::Lines lines(text.substr(0, text.find('\0')));
    const std::optional<detail::Line> first = lines.next();
    return format_of(first, lines.next()) != YearFormat::unknown;
}

Result<Year> read_any(std::string_view text, const std::string& file_name) {
    using namespace detail;
    Problems problems(file_name);
    if (!plausible_text(text, problems)) return problems.take();
    Lines lines(text);
    const std::optional<Line> first = lines.next();
    const std::optional<Line> second = lines.next();
    switch (format_of(first, second)) {
        case YearFormat::epw: return read_epw(text, file_name);
        case YearFormat::pvgis: return read_pvgis_tmy(text, file_name);
        case YearFormat::tmy3: return read_tmy3(text, file_name);
        case YearFormat::plain: return read_plain(text, file_name);
        case YearFormat::unknown: break;
    }
    problems.add(1, 1,
                 "the file begins with '" + for_message(first ? first->text : text, 40) +
                     "', which is no weather file known here",
                 "Choose an EPW file, a TMY3 CSV file, a PVGIS typical year as CSV, or our plain CSV");
    return problems.take();
}

}  // namespace wg::weather
