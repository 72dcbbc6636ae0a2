#pragma once
// What clock, tariff, photovoltaics, holidays and hygiene programme ask of the set in a step: docs/handbook/season.md.

#include <vector>

#include "core/season/calendar.h"
#include "core/season/season.h"

namespace wg::season {

struct Orders {
    double set_point_c = 55.0;
    double start_below_c = 49.0;
    double usual_start_c = 49.0;   ///< without clock, set-back and holidays
    double back_up_below_c = 0.0;  ///< the immersion heater helps below this at its sensor
    bool back_up_when_blocked = true;
    bool hygiene_begins = false;
    double recirculation_share = 0.0;  ///< of the step in which the loop runs
    double low_tariff_share = 0.0;
    double surplus_w = 0.0;
};

/// Priority, first wins: holidays, hygiene run, surplus signal, run windows with 'always below', set-back.
class OrderBook {
   public:
    explicit OrderBook(const Input& input);  ///< `input` must outlive this
    /// Nothing is ordered all year: the set keeps its set-point.
    [[nodiscard]] bool idle() const noexcept { return idle_; }
    [[nodiscard]] Orders at(int day, double begin_s, double length_s) const noexcept;

   private:
    [[nodiscard]] bool away(int day, double begin_s) const noexcept;
    void order_heat(int day, double begin_s, Orders& orders) const noexcept;
    [[nodiscard]] bool hygiene_begins(int day, double begin_s, double length_s) const noexcept;

    const Input* input_;
    Calendar calendar_;
    bool idle_;
};

}  // namespace wg::season
