#pragma once
// Readers of public weather-year formats. The text is treated as hostile; refusals name line and column.

#include <string>
#include <string_view>

#include "core/quantity/result.h"
#include "core/weather/year.h"

namespace wg::weather {

/// EnergyPlus weather file (EPW; U.S. DOE Auxiliary Programs, "Weather Data Format"): hour 1 covers 00:00-01:00.
[[nodiscard]] Result<Year> read_epw(std::string_view text, const std::string& file_name);
/// TMY3 CSV (Wilcox and Marion, NREL/TP-581-43156, 2008): stamp is the end of the hour, local standard time.
[[nodiscard]] Result<Year> read_tmy3(std::string_view text, const std::string& file_name);
/// PVGIS TMY CSV (JRC): UTC stamps `yyyymmdd:HHMM`; the header gives latitude, longitude and elevation. Rows are moved
/// to local standard time of the nearest whole hour of longitude, and the sun's minute is kept with them.
[[nodiscard]] Result<Year> read_pvgis_tmy(std::string_view text, const std::string& file_name);
/// Our own plain CSV (docs/weather-format.md): `# key: value` lines, named columns, one row an hour. Written by
/// `write_plain` (write_plain.h), by a spreadsheet or by hand.
[[nodiscard]] Result<Year> read_plain(std::string_view text, const std::string& file_name);
/// Whether `read_any` would know the format: by how the file begins, whatever comes after.
[[nodiscard]] bool begins_as_year(std::string_view text);
/// Recognises the format by content, not by the file's name.
[[nodiscard]] Result<Year> read_any(std::string_view text, const std::string& file_name);

}  // namespace wg::weather
