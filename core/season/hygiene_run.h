#pragma once
// One run of the hygiene programme: how long the target has been held, where, and when it ends.

namespace wg::season {

class HygieneRun {
   public:
    enum class End { none, whole, upper_only, missed };
    static constexpr double longest_s = 8.0 * 3600.0;
    static constexpr double pump_alone_s = 4.0 * 3600.0;  ///< after that the heater helps even if the pump could go on
    static constexpr double whole_from = 0.1;             ///< height over the cold inlet from which water has to be hot

    void begin() noexcept { *this = HygieneRun(true); }
    [[nodiscard]] bool active() const noexcept { return active_; }
    [[nodiscard]] bool pump_spent() const noexcept { return pump_spent_ || elapsed_s_ >= pump_alone_s; }
    void pump_stopped() noexcept { pump_spent_ = true; }

    /// `lower_can_warm`: a source that reaches the water below the immersion heater is still at work.
    End advance(double step_s, bool whole_hot, bool upper_hot, double hold_s, bool lower_can_warm) noexcept {
        elapsed_s_ += step_s;
        whole_s_ = whole_hot ? whole_s_ + step_s : 0.0;
        upper_s_ = upper_hot ? upper_s_ + step_s : 0.0;
        upper_held_ = upper_held_ || upper_s_ >= hold_s;
        if (whole_s_ >= hold_s) return ended(End::whole);
        // Nothing will make the lower water hotter: holding the upper part longer helps nobody.
        if (upper_held_ && !whole_hot && !lower_can_warm) return ended(End::upper_only);
        if (elapsed_s_ < longest_s) return End::none;
        return ended(upper_held_ ? End::upper_only : End::missed);
    }

    HygieneRun() = default;

   private:
    explicit HygieneRun(bool active) : active_(active) {}
    End ended(End end) noexcept {
        active_ = false;
        return end;
    }
    bool active_ = false;
    bool pump_spent_ = false;
    bool upper_held_ = false;
    double elapsed_s_ = 0.0, whole_s_ = 0.0, upper_s_ = 0.0;
};

}  // namespace wg::season
