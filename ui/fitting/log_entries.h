#pragma once
// Entries of the record from the log of a gauge: what it was, from which moment on, and with what it was read.

#include <QDateTime>
#include <QString>
#include <optional>
#include <vector>

#include "core/commissioning/commissioning.h"
#include "core/commissioning/gauge_log.h"
#include "core/job/job.h"

namespace wg::ui {

struct LogChoice {
    bool evacuation = true;  ///< else a pressure hold
    std::size_t from = 0;    ///< point at which the valve was shut or the hold began
    QDateTime started;       ///< of the first point
    QString who, instrument, calibrated_on, file_name;
    Occasion occasion = Occasion::fitting;
    // Where the log has no temperatures: read by hand.
    std::optional<double> start_c, end_c, indoors_c;
    PlateState plate = PlateState::not_told;
};

/// A log with absolute pressures well below the air's is of an evacuation.
[[nodiscard]] bool looks_like_evacuation(const commissioning::GaugeLog& log);
/// Where the valve was most likely shut: the lowest absolute pressure; of a hold the highest pressure.
[[nodiscard]] std::size_t likely_from(const commissioning::GaugeLog& log, bool evacuation);
/// When the log began, by its own date or by its clock today; invalid when it tells neither.
[[nodiscard]] QDateTime start_of(const commissioning::GaugeLog& log, const QDate& today);
/// The first as level or start, the rest as what followed, at most `most_log_readings` together; empty when fewer than
/// two points are left.
[[nodiscard]] std::vector<Reading> entries_of_log(const commissioning::GaugeLog& log, const LogChoice& choice);
/// What the entries are made from, to be looked at before.
[[nodiscard]] commissioning::Curve curve_of_log(const commissioning::GaugeLog& log, bool evacuation, std::size_t from);

}  // namespace wg::ui
