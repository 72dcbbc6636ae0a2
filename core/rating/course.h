#pragma once
// One set in the chamber as the test goes on. For rating.cpp and fit.cpp.

#include <string>
#include <vector>

#include "core/cylinder/tapping.h"
#include "core/rating/rating.h"
#include "core/season/schedule.h"
#include "core/season/simulation.h"

namespace wg::rating {

[[nodiscard]] season::Input input_of(const Item& item, const Chamber& chamber, const Test& test);
[[nodiscard]] heatpump::Surroundings surroundings_of(const Chamber& chamber) noexcept;
/// Everything wrong with item, chamber and test at once.
[[nodiscard]] std::vector<Problem> problems_of(const Item& item, const Chamber& chamber, const Test& test);

/// rate() and steady_point() of valid input with a pump that was built already: it must be that of `item`.
[[nodiscard]] Rating rate_with(const heatpump::HeatPump& pump, const Item& item, const Chamber& chamber,
                               const Test& test);
[[nodiscard]] SteadyPoint steady_with(const heatpump::HeatPump& pump, const Item& item, const Chamber& chamber,
                                      double water_c);

/// A part of the test that ends when the thermostat stops the pump.
struct Stretch {
    bool stopped = false;
    std::string why_not;
    double duration_s = 0.0;
    double electricity_j = 0.0;
    season::Ledger sum;
};

class Course {
   public:
    /// `pump` must outlive this. Water evenly cold.
    Course(const Item& item, const Chamber& chamber, const Test& test, const heatpump::HeatPump& pump);

    /// Calls for heat and goes on until the thermostat stops the pump; into `curve` unless it is null.
    [[nodiscard]] Stretch until_stop(std::vector<CurvePoint>* curve = nullptr);
    /// Lets the water cool until the pump has run and stopped again.
    [[nodiscard]] Stretch until_next_stop();
    /// One day of the draw-off cycle. Counts the peaks that the cylinder's top could not give.
    season::Ledger draw_off_day(int* peaks_missed);

    [[nodiscard]] const cylinder::Store& store() const noexcept { return simulation_.store(); }
    [[nodiscard]] double closure() const noexcept;

   private:
    [[nodiscard]] Stretch until(double longest_s, std::vector<CurvePoint>* curve);
    void note(const season::Ledger& ledger, double step_s, std::vector<CurvePoint>& curve) const;
    season::Ledger step(double step_s, const double* draws_j, int count);

    double step_s_, cold_c_, standby_w_;
    cylinder::TappingDay day_;
    season::Schedule schedule_;
    season::Simulation simulation_;
    double carried_s_ = 0.0;  ///< of the last step, after the stop: belongs to what follows
    double carried_j_ = 0.0;
    season::Ledger all_;
};

}  // namespace wg::rating
