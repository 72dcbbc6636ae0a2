#pragma once
// Readings on the day become verdicts.

#include <string>
#include <vector>

#include "core/findings/finding.h"
#include "core/job/job.h"

namespace wg::commissioning {

enum class Verdict { passed, failed, cannot_tell };
[[nodiscard]] const char* word(Verdict verdict) noexcept;  ///< "passed", "failed", "cannot tell"

struct Expected {
    double test_pressure_bar = 25.0;  ///< bar gauge, from plan
    double max_pressure_bar = 25.0;   ///< least PS of plate and lines, bar gauge
    double extra_charge_kg = 0.0;
    double rated_current_a = 6.0;
    double set_point_c = 55.0;
    double volume_outdoors = 0.7;  ///< share of the tested volume that is at outdoor temperature
};

struct Assessment {
    std::string subject;  ///< "Pressure hold", "Evacuation", "Charge", ...
    Verdict verdict = Verdict::cannot_tell;
    std::string words;  ///< what was found, with figures
    std::string next;   ///< what to do now; empty when passed
    std::vector<std::string> reading_ids;
    Working working;
};

/// Corrections replace what they name; the newest pair of each kind counts. Order: as the work goes.
/// Subjects without any reading are left out (see `outstanding`). A reading that cannot be true (absolute pressure not
/// above 0, NaN) is never a pass or a fail.
[[nodiscard]] std::vector<Assessment> assess(const std::vector<Reading>& record, const Expected& expected);

/// Subjects, named as in `Assessment::subject`, for which readings are still missing. A charge is asked for only when
/// one was planned.
[[nodiscard]] std::vector<std::string> outstanding(const std::vector<Reading>& record, const Expected& expected);

/// Ideal-gas pressure at another temperature, bar gauge in and out. Temperatures above absolute zero.
[[nodiscard]] double hold_pressure_bar(double start_bar_gauge, double start_c, double end_c);

/// The same when only a share of the volume (0..1) goes from start_c to end_c and the rest stays at indoors_c:
/// connected volumes keep one pressure and one amount of gas, so p is in proportion to 1 / sum(V/T).
[[nodiscard]] double hold_pressure_bar(double start_bar_gauge, double start_c, double end_c, double outdoors_share,
                                       double indoors_c);

/// Outdated entries removed: the record as it stands after corrections.
[[nodiscard]] std::vector<Reading> standing(const std::vector<Reading>& record);

}  // namespace wg::commissioning
