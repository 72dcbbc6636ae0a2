#pragma once
// Conditions of a run or a heating where the record does not tell them, and bands by the model.

#include <array>
#include <optional>
#include <string>
#include <vector>

#include "core/commissioning/commissioning.h"
#include "core/commissioning/model.h"
#include "core/commissioning/start.h"
#include "core/season/warm_up.h"

namespace wg::commissioning {

/// Air, wind at the plate; humidity of 65 % and a sky 10 K below the air are assumed; dark.
[[nodiscard]] heatpump::Surroundings surroundings_of(double air_c, double wind_m_s);

/// Hour of the model's day, local standard time 0..24, and month of a stamp; nullopt: it cannot be read.
struct MonthAndHour {
    int month = 1;
    double hour = 0.0;
};
[[nodiscard]] std::optional<MonthAndHour> month_and_hour(const Model& model, const std::string& stamp);

/// Brightest light on the plate in the plan's weather year in that month, within an hour of the clock; nullopt: no
/// weather, or the stamp cannot be read.
[[nodiscard]] std::optional<double> brightest_w_m2(const Model& model, const std::string& stamp);

/// Mean light on the plate from `from` to `to` on each day of a month of the plan's weather year: the tenth darkest in
/// a hundred, the middle, the tenth brightest.
struct LightRange {
    double low = 0.0, mid = 0.0, high = 0.0;
};
[[nodiscard]] std::optional<LightRange> light_range(const Model& model, const MonthAndHour& from, double hours);

/// Bands in the order and words that people read them.
[[nodiscard]] std::vector<Band> start_bands(const std::array<StartBand, start_quantities>& bands);

/// How long a heating takes, the middle with what the model can be wrong by: light as given, plate to refrigerant
/// 20 %, compressor 5 %, condenser 15 % (assumed, as for a year's range), air 1 K. 0 hours: not reached.
struct HeatingHours {
    double low = 0.0, mid = 0.0, high = 0.0;
    std::string why_not;  ///< with mid 0
};
/// The plan's set as it is, and at the ends of what the model can be wrong by: made once, asked for many days.
class HeatingSets {
   public:
    /// Of the input's equipment; its hourly series are not read. Its refrigerant must outlive the sets.
    [[nodiscard]] static Result<HeatingSets> make(const season::Input& input);
    [[nodiscard]] HeatingHours hours(double from_c, double to_c, const season::WarmUpConditions& at,
                                     const LightRange& light) const;

   private:
    struct Set {
        season::Input input;
        heatpump::HeatPump pump;
    };
    HeatingSets() = default;
    std::vector<Set> sets_;  ///< as it is, better, poorer
};

}  // namespace wg::commissioning
