#pragma once
// The log of a data-logging gauge, as comma-separated text: pressures over time, thinned to what a record can carry.

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/quantity/result.h"

namespace wg::commissioning {

struct GaugePoint {
    double seconds = 0.0;               ///< since the first point
    std::optional<double> absolute_pa;  ///< above 0; of the column that is absolute
    std::optional<double> gauge_bar;    ///< of the column that is over the air
    std::optional<double> c;            ///< of the first column of temperatures
};

struct GaugeLog {
    std::vector<GaugePoint> points;  ///< two at least, times rising; each with a pressure
    /// Of the first point, as the log tells it: "2026-11-28T19:20:34" with the log's offset (Z, +01:00) if it has one;
    /// empty when the log has clock times without a date, or seconds from its start.
    std::string started_at;
    std::optional<double> started_s_of_day;  ///< clock at the first point; absent when the log tells no clock
    bool has_absolute = false, has_gauge = false, has_temperature = false;
    std::vector<std::string> notes;  ///< what was left aside, in words: columns, lines without a reading
};

inline constexpr std::size_t most_log_readings = 60;  ///< each becomes an entry of the record

/// Reads a log: columns parted by comma, semicolon or tab, named with their units in the line of names or the line
/// below it, in any order; lines before the names are passed over. docs/handbook/commissioning.md has the words that
/// are known. Pa, hPa, mbar, micron, Torr and mmHg are absolute and bar and psi are over the air where the name does
/// not say otherwise ("bar abs", "mbar gauge"); kPa has to say. At most 8 MB and 200,000 lines. Problems name line and
/// column; nothing is taken from a text that has any. The points are all of the log: see `thinned`.
[[nodiscard]] Result<GaugeLog> gauge_log_from_csv(std::string_view text, const std::string& file_name);

/// First and last point and those that keep the curve: a third evenly over the time, the rest where a straight line
/// between those kept is farthest off (absolute pressures by their logarithm, so that a rise after hours of pumping
/// keeps its shape). Points are never made up. `most` below 2 counts as 2.
[[nodiscard]] std::vector<GaugePoint> thinned(const std::vector<GaugePoint>& points,
                                              std::size_t most = most_log_readings);

}  // namespace wg::commissioning
