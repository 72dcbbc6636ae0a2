#pragma once
// The circuit's side of an operating point: circuit and condenser in balance at a suction temperature. Internal to
// core/heatpump.

#include <algorithm>
#include <cmath>
#include <cstddef>

#include "core/heatpump/operating_point.h"
#include "core/quantity/constants.h"

namespace wg::heatpump::detail {

// Steps this short are taken along the slopes without evaluating the map again. What curvature leaves of them, below
// 1e-4 W, is an error of the map's kind (it stays far below the map's own), never one of the heat balance: condenser
// heat is always the sum of the others, and the plate is evaluated anew or moved along slopes that meet the circuit's.
inline constexpr double straight_condensing_k = 0.02;
inline constexpr double straight_suction_k = 0.01;
inline constexpr double straight_with_line_k = 0.0003;  // the line's part in the slopes is left out
inline constexpr double collapsed_k = 1e-10;            // a bracket this narrow holds no more than rounding
inline constexpr double reopened_k = 0.5;
inline constexpr int most_iterations = 100;  // bisection alone needs fewer

/// Tables behind the same face as the map, with slopes from differences: exact in value, good enough in slope.
struct WithoutMap {
    const BlockModel* block;
    const refrigerant::Properties* refrigerant;
    [[nodiscard]] CycleSlopes at(double te, double tc) const noexcept {
        constexpr double step = 0.01;
        const double te_step = te + step > block->evaporating_max_c ? -step : step;
        const double tc_step = tc + step > refrigerant->max_c() ? -step : step;
        const auto here = cycle_at(*block, *refrigerant, te, tc);
        const auto warmer = cycle_at(*block, *refrigerant, te + te_step, tc);
        const auto hotter = cycle_at(*block, *refrigerant, te, tc + tc_step);
        return {here.evaporator_w,
                (warmer.evaporator_w - here.evaporator_w) / te_step,
                (hotter.evaporator_w - here.evaporator_w) / tc_step,
                here.work_w,
                (warmer.work_w - here.work_w) / te_step,
                (hotter.work_w - here.work_w) / tc_step};
    }
    [[nodiscard]] double discharge_c(double te, double tc) const noexcept {
        return cycle_at(*block, *refrigerant, te, tc).discharge_c;
    }
    [[nodiscard]] double suction_rate_w_k(double te, double tc) const noexcept {
        return cycle_at(*block, *refrigerant, te, tc).suction_rate_w_k;
    }
};

/// Circuit and condenser in balance at a suction temperature.
struct Circuit {
    double condensing_c = 0.0;
    double evaporator_w = 0.0;
    double evaporator_by_te = 0.0;  ///< with the condensing temperature following
    double work_w = 0.0;
    double condensing_by_te = 0.0;
    double work_by_te = 0.0;
    double line_w = 0.0;
    double gas_warming_k = 0.0;
    double condenser_w = 0.0;
};

/// Circuit and condenser at two temperatures that need not be those of the balance, with slopes.
struct Apart {
    Circuit circuit;  ///< its slopes are left out
    double evaporator_by_te = 0.0, evaporator_by_tc = 0.0, work_by_te = 0.0, work_by_tc = 0.0;
    double miss_w = 0.0;  ///< what the condenser passes on beyond what it is given
    double miss_by_te = 0.0, miss_by_tc = 0.0;
};

/// Newton's step for the balance of plates and that of the condenser at once.
struct BothSteps {
    double te_k = 0.0, tc_k = 0.0;
    bool found = false;
    bool whole = true;  ///< not cut short by an end of envelope or table: leads to the balance
};
[[nodiscard]] inline BothSteps both_steps(double residual_w, double residual_by_te, double residual_by_tc,
                                          const Apart& at) noexcept {
    const double determinant = residual_by_te * at.miss_by_tc - residual_by_tc * at.miss_by_te;
    // The residual falls with the suction temperature, the miss rises with the condensing temperature.
    if (!(determinant < 0.0 && at.miss_by_tc > 0.0)) return {};
    const double by = -1.0 / determinant;
    return {(residual_w * at.miss_by_tc - at.miss_w * residual_by_tc) * by,
            (at.miss_w * residual_by_te - residual_w * at.miss_by_te) * by, true};
}

template <class Source>
class Search {
   public:
    Search(const Source& source, const BlockModel& block, const refrigerant::Properties& refrigerant, double tc_low,
           double tc_high, const CondenserZone& zone, const Line& line, double air_c) noexcept
        : source_(source),
          block_(block),
          refrigerant_(refrigerant),
          tc_low_(tc_low),
          tc_high_(tc_high),
          zone_(zone),
          line_(line),
          air_c_(air_c) {}

    /// Condensing temperature such that the condenser passes on what the circuit gives, never closer to the suction
    /// than the least lift; the search starts at the last one found. Given heat falls with condensing temperature and
    /// the condenser's rises, so there is one root; at the table's end it is held (and the limit check refuses it).
    Circuit circuit(double suction_c) noexcept {
        double low = tc_low_;
        double high = tc_high_;
        double tc = std::clamp(last_tc_ + tc_by_te_ * (suction_c - last_te_), low, high);
        CycleSlopes at{};
        Circuit out;
        double net_slope = 1.0;
        double last_move = high - low;
        double move_before_last = high - low;
        for (int i = 0; i < most_iterations; ++i) {
            at = source_.at(suction_c, tc);
            evaluate(at, suction_c, tc, out);
            double touched = 0.0;
            const double miss = zone_.ua_w_k * passed_k(tc, touched) - out.condenser_w;
            net_slope = zone_.ua_w_k * touched - factor_ * at.evaporator_by_tc - kept_ * at.work_by_tc;
            if (miss < 0.0)
                low = tc;
            else
                high = tc;
            // Far outside the envelope, at the floors of the efficiencies, the circuit may give more heat the hotter it
            // condenses: no slope to follow there.
            double next = net_slope > 0.0 ? tc - miss / net_slope : 0.5 * (low + high);
            if (!(next >= low && next <= high)) next = 0.5 * (low + high);
            // Where the coldest water begins to be touched the slope changes tenfold: bare Newton can go to and fro.
            if (std::abs(next - tc) > 0.5 * move_before_last) next = 0.5 * (low + high);
            const double move = next - tc;
            move_before_last = last_move;
            last_move = std::abs(move);
            if (std::abs(move) < straight_k_ || (tc >= tc_high_ && miss < 0.0)) {
                // So near the root the slopes carry the rest of the way.
                tc += move;
                at.evaporator_w += at.evaporator_by_tc * move;
                at.work_w += at.work_by_tc * move;
                evaluate(at, suction_c, tc, out);
                break;
            }
            tc = next;
        }
        tc_by_te_ = net_slope > 0.0 ? (factor_ * at.evaporator_by_te + kept_ * at.work_by_te) / net_slope : 0.0;
        last_tc_ = tc;
        last_te_ = suction_c;
        double follows = tc_by_te_;
        if (tc < suction_c + block_.least_lift_k) {
            tc = suction_c + block_.least_lift_k;
            at = source_.at(suction_c, tc);
            evaluate(at, suction_c, tc, out);
            follows = 1.0;
        }
        out.condensing_c = tc;
        out.condensing_by_te = follows;
        out.evaporator_by_te = factor_ * (at.evaporator_by_te + at.evaporator_by_tc * follows);
        out.work_by_te = at.work_by_te + at.work_by_tc * follows;
        return out;
    }

    Apart apart(double suction_c, double tc) noexcept {
        Apart out;
        const CycleSlopes at = source_.at(suction_c, tc);
        evaluate(at, suction_c, tc, out.circuit);
        out.circuit.condensing_c = tc;
        double touched = 0.0;
        out.miss_w = zone_.ua_w_k * passed_k(tc, touched) - out.circuit.condenser_w;
        out.evaporator_by_te = factor_ * at.evaporator_by_te;
        out.evaporator_by_tc = factor_ * at.evaporator_by_tc;
        out.work_by_te = at.work_by_te;
        out.work_by_tc = at.work_by_tc;
        out.miss_by_te = -out.evaporator_by_te - kept_ * at.work_by_te;
        out.miss_by_tc = zone_.ua_w_k * touched - out.evaporator_by_tc - kept_ * at.work_by_tc;
        return out;
    }

    /// Takes a step along the slopes; false when it is too long for that or leaves what the search allows.
    [[nodiscard]] bool follow(const Apart& at, const BothSteps& step, double suction_c, Circuit& out) const noexcept {
        const double longest_te_k = line_.ua_w_k > 0.0 ? straight_with_line_k : straight_plate_k;
        if (!(step.whole && std::abs(step.te_k) < longest_te_k && std::abs(step.tc_k) < straight_k_)) return false;
        out = at.circuit;
        out.condensing_c += step.tc_k;
        if (out.condensing_c < suction_c + step.te_k + block_.least_lift_k) return false;
        out.evaporator_w += at.evaporator_by_te * step.te_k + at.evaporator_by_tc * step.tc_k;
        out.work_w += at.work_by_te * step.te_k + at.work_by_tc * step.tc_k;
        out.condenser_w = out.evaporator_w + std::min(0.0, out.line_w) + kept_ * out.work_w;
        return true;
    }
    [[nodiscard]] double start_condensing_c() const noexcept { return std::clamp(last_tc_, tc_low_, tc_high_); }

    /// Keeps a step between the ends of envelope and table. Not found when it can go no further.
    [[nodiscard]] BothSteps held(BothSteps step, const Apart& at, double suction_c, double tc) const noexcept {
        const double next = suction_c + step.te_k;
        if (!(next > block_.evaporating_min_c && next < block_.evaporating_max_c)) {
            step.te_k = std::clamp(next, block_.evaporating_min_c, block_.evaporating_max_c) - suction_c;
            step.tc_k = -(at.miss_w + at.miss_by_te * step.te_k) / at.miss_by_tc;
            step.whole = false;
            if (!(std::abs(step.te_k) > 0.0)) step.found = false;
        }
        const double wanted_c = tc + step.tc_k;
        if (!(wanted_c >= tc_low_ && wanted_c <= tc_high_)) {
            step.whole = false;
            step.tc_k = std::clamp(wanted_c, tc_low_, tc_high_) - tc;
        }
        return step;
    }

    /// The circuit a short step away in suction temperature.
    [[nodiscard]] Circuit shifted(Circuit circuit, double step_k) const noexcept {
        circuit.condensing_c += circuit.condensing_by_te * step_k;
        circuit.evaporator_w += circuit.evaporator_by_te * step_k;
        circuit.work_w += circuit.work_by_te * step_k;
        circuit.condenser_w = circuit.evaporator_w + std::min(0.0, circuit.line_w) + kept_ * circuit.work_w;
        return circuit;
    }

    /// No more steps along the slopes: across a crease (water as warm as the refrigerant) they make the residual jump.
    void tighten() noexcept { straight_k_ = 1e-9; }

    void start_at(double suction_c, double condensing_c) noexcept {
        last_te_ = suction_c;
        last_tc_ = condensing_c;
    }

   private:
    /// Kelvin by which the condenser's surface is warmer than the water, mean over the surface where it is; `touched`
    /// is the share of the surface where it is.
    [[nodiscard]] double passed_k(double tc, double& touched) const noexcept {
        double passed = 0.0;
        for (std::size_t k = 0; k < zone_.count; ++k) {
            const double over_k = tc - zone_.water_c[k];
            passed += zone_.share[k] * std::max(0.0, over_k);
            touched += over_k > 0.0 ? zone_.share[k] : 0.0;
        }
        return passed;
    }

    /// The line warms (or cools) the gas before the compressor. Ideal gas: less mass in the swept volume in the ratio
    /// of absolute temperatures, work unchanged (mass falls as work per kg rises). Warmth picked up on the way is not
    /// counted as useful: it is taken to leave again through the hotter shell.
    void evaluate(const CycleSlopes& at, double suction_c, double tc, Circuit& out) noexcept {
        factor_ = 1.0;
        kept_ = 1.0 - block_.shell_loss;
        out.line_w = 0.0;
        out.gas_warming_k = 0.0;
        if (line_.ua_w_k > 0.0) {
            const double rate = source_.suction_rate_w_k(suction_c, tc);
            const double gas_c = suction_c + block_.superheat_k;
            const double share = 1.0 - std::exp(-line_.ua_w_k / rate);
            out.gas_warming_k = (air_c_ - gas_c) * share;
            factor_ = kelvin(gas_c) / (kelvin(gas_c) + out.gas_warming_k);
            out.line_w = factor_ * rate * out.gas_warming_k;
        }
        out.evaporator_w = factor_ * at.evaporator_w;
        out.work_w = at.work_w;
        out.condenser_w = out.evaporator_w + std::min(0.0, out.line_w) + kept_ * out.work_w;
    }

    const Source& source_;
    const BlockModel& block_;
    const refrigerant::Properties& refrigerant_;
    double tc_low_, tc_high_;
    const CondenserZone& zone_;
    const Line& line_;
    double air_c_;
    double straight_k_ = straight_condensing_k;
    double last_te_ = 0.0;
    double last_tc_ = 40.0;
    double tc_by_te_ = 0.0;
    double factor_ = 1.0;
    double kept_ = 1.0;
};

}  // namespace wg::heatpump::detail
