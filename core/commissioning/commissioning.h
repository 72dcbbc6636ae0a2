#pragma once
// Readings on the day become verdicts.

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "core/findings/finding.h"
#include "core/job/job.h"

namespace wg::commissioning {

struct Model;  // model.h

enum class Verdict { passed, failed, cannot_tell };
[[nodiscard]] const char* word(Verdict verdict) noexcept;  ///< "passed", "failed", "cannot tell"

/// What readings are held against. Filled from plan and job; every limit of the job's own goes before the program's.
struct Expected {
    double test_pressure_bar = 25.0;  ///< bar gauge, from plan
    double max_pressure_bar = 25.0;   ///< least PS of plate and lines, bar gauge
    double extra_charge_kg = 0.0;
    double rated_current_a = 6.0;
    double set_point_c = 55.0;
    double volume_outdoors = 0.7;       ///< share of the tested volume that is at outdoor temperature
    double tested_volume_l = 2.0;       ///< plates and lines
    double air_pressure_bar = 1.01325;  ///< at the site's height
    double standstill_bar = 0.0;        ///< highest pressure with the pump off, bar gauge; 0: not known
    double factory_charge_kg = 0.0;
    AcceptanceLimits limits;  ///< as the job names them
    EarthingSystem earthing = EarthingSystem::unknown;
    double safety_valve_bar = 0.0;    ///< 0: not known
    double reducing_valve_bar = 0.0;  ///< set pressure; 0: none planned
    double hygiene_target_c = 0.0;    ///< 0: no hygiene run planned
    double hygiene_every_days = 0.0;  ///< the same
    double supply_v = 0.0;            ///< between the conductors of the block's circuit; 0: not known
    double most_loop_ohm = 0.0;       ///< fault loop in a TN system, read cold, by the plan's breaker; 0: not known
    bool condenser_immersed = true;   ///< else wrapped around the wall
    std::int64_t plan_revision = 0;   ///< of the job now
    std::string plan_mark;            ///< of the job now; empty: not told
};

/// A picture of readings over time.
struct Curve {
    struct Point {
        double x = 0.0;
        double y = 0.0;
    };
    std::string x_label, x_unit;  ///< "since valve-off", "min"
    std::string y_label, y_unit;
    std::vector<Point> read;
    std::vector<Point> fitted;  ///< dense enough to be drawn as a line; may be empty
    std::string fitted_label;
    std::vector<Point> low, high;  ///< of a band; may be empty
    std::optional<double> limit;   ///< drawn as a level line
    std::string limit_label;
};

/// What a reading should be by the model, and what it was.
struct Band {
    std::string label, unit;
    int decimals = 1;
    double low = 0.0, mid = 0.0, high = 0.0;
    std::optional<double> read;
    [[nodiscard]] bool outside() const noexcept { return read && (*read < low || *read > high); }
};

struct Assessment {
    std::string subject;  ///< "Pressure hold", "Evacuation", "Charge", ...
    Verdict verdict = Verdict::cannot_tell;
    std::string words;  ///< what was found, with figures
    std::string next;   ///< what to do now; empty when passed
    std::vector<std::string> reading_ids;
    Working working;
    std::optional<Curve> curve;
    std::vector<Band> bands;
    std::vector<std::string> causes;  ///< likely ones in words, best first
};

/// What the running system should show by the model on a usual day of a month, and how long the first heating takes:
/// for the install sheet, when the day is not known yet.
struct MonthForecast {
    int month = 1;            ///< 1..12
    double air_c = 0.0;       ///< mean of the hours of daylight
    double light_w_m2 = 0.0;  ///< on the plate, mean of the same
    double wind_m_s = 0.0;
    double water_from_c = 10.0, water_to_c = 55.0;
    std::vector<Band> bands;                                    ///< of the running pump, no reading in them
    double hours_low = 0.0, hours_mid = 0.0, hours_high = 0.0;  ///< from cold to set-point; 0: not reached
};

/// Verdicts on the installation. Corrections replace what they name; of those readings the ones of Occasion::fitting
/// and Occasion::repair count, and the newest pair of each kind. Order: as the work goes. Subjects without any reading
/// are left out (see `outstanding`). A reading that cannot be true (absolute pressure not above 0, NaN) is never a pass
/// or a fail. Without a model the running pump and the first heating are judged by what must hold for any set.
[[nodiscard]] std::vector<Assessment> assess(const std::vector<Reading>& record, const Expected& expected,
                                             const Model* model = nullptr);

/// Verdicts on the newest service visit: readings of Occasion::service of the newest day that has any. Only what the
/// circuit holds is summed over the whole record. Empty: there was no service with readings.
[[nodiscard]] std::vector<Assessment> assess_service(const std::vector<Reading>& record, const Expected& expected,
                                                     const Model* model = nullptr);

/// What is still missing on the installation, in order of the work and named as in `Assessment::subject`. A charge is
/// asked for only when one was planned; a hold point only when it was held and not released since ("Hold point: ...").
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
