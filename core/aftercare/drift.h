#pragma once
// Readings of services beside those of the commissioning: has the system moved? Where the model can, each reading is
// seen against what the model gives for the conditions of its own day.

#include <array>
#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "core/aftercare/calendar.h"
#include "core/commissioning/start.h"
#include "core/job/job.h"
#include "core/plan/plan.h"

namespace wg::aftercare {

/// A kind of reading with a figure that is taken at the start and again at services.
struct Measured {
    ReadingKind kind = ReadingKind::remark;
    const char* unit = "";
    int decimals = 1;
    double least = 0.0;  ///< an entry can be meant between these
    double most = 0.0;
    /// Change from the commissioning that is no news by itself: absolute, or as a share when `by_share`. 0: none is
    /// stated. Common practice, no published source.
    double usual_change = 0.0;
    bool by_share = false;
    bool of_the_day = false;  ///< moves with weather and water, so a bare change says little
    bool condition = false;   ///< is weather or water itself
};
/// In the order of a visit.
[[nodiscard]] const std::vector<Measured>& measured_kinds();
/// nullptr: not one of them.
[[nodiscard]] const Measured* measured(ReadingKind kind) noexcept;

struct ModelBand {
    double low = 0.0, mid = 0.0, high = 0.0;
};

/// What the model needs to know of a day; absent: not read.
struct DayConditions {
    std::optional<double> water_c, air_c, light_w_m2, wind_m_s;
    /// Water and outdoor air, without which the model has nothing to say.
    [[nodiscard]] bool enough() const noexcept { return water_c && air_c; }
};
/// Bands by the model for the kinds it knows at the conditions of a day.
struct DayBands {
    std::vector<std::pair<ReadingKind, ModelBand>> bands;
    [[nodiscard]] const ModelBand* of(ReadingKind kind) const noexcept;
};
using ModelAtDay = std::function<DayBands(const DayConditions&)>;
/// The running pump of a plan, by the bands of core/commissioning/start.h. Empty where the plan's block cannot be
/// modelled. The refrigerant must outlive it.
[[nodiscard]] ModelAtDay model_of(const plan::Plan& plan, const refrigerant::Properties& refrigerant);

struct DriftPoint {
    CivilDate on;
    Occasion occasion = Occasion::fitting;
    double read = 0.0;
    std::optional<ModelBand> model;
    std::string by;
};

/// `condition`: of the day itself, which the model takes out.
enum class Drift { single, condition, steady, moved, cannot_tell };
[[nodiscard]] const char* text_of(Drift drift) noexcept;

struct DriftRow {
    ReadingKind kind = ReadingKind::remark;
    std::string unit;
    int decimals = 1;
    std::vector<DriftPoint> points;      ///< oldest first
    std::optional<double> change;        ///< newest less first, as read
    std::optional<double> beyond_model;  ///< of that, what the conditions of the two days do not explain by the model
    Drift drift = Drift::single;
    std::string words;
};

/// A row for each kind that has a reading, in the order of measured_kinds(), the conditions of the day last. Several
/// readings of a kind on one day: the last counts. `model` may be empty.
[[nodiscard]] std::vector<DriftRow> drift(const std::vector<Reading>& record, const ModelAtDay& model);

}  // namespace wg::aftercare
