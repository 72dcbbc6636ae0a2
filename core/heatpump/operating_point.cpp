#include "core/heatpump/operating_point.h"

#include <algorithm>
#include <cmath>

#include "core/quantity/constants.h"

namespace wg::heatpump {

CondenserZone CondenserZone::uniform(double ua, double water) noexcept {
    CondenserZone zone;
    zone.ua_w_k = ua;
    zone.count = 1;
    zone.share[0] = 1.0;
    zone.water_c[0] = water;
    return zone;
}

double CondenserZone::heat_w(double condensing_c) const noexcept {
    double sum = 0.0;
    for (std::size_t i = 0; i < count; ++i)
        sum += share[i] * std::max(0.0, condensing_c - water_c[i]);
    return ua_w_k * sum;
}

const char* reason_text(Off off) noexcept {
    switch (off) {
        case Off::none: return "running";
        case Off::too_cold: return "evaporating temperature below the envelope";
        case Off::condensing: return "condensing temperature above the envelope";
        case Off::pressure_ratio: return "pressure ratio above the envelope";
        case Off::discharge: return "discharge temperature above the envelope";
    }
    return "";
}

namespace {

// Steps this short are taken along the slopes without evaluating the map again. What curvature leaves of them, below
// 1e-4 W, is an error of the map's kind (it stays far below the map's own), never one of the heat balance: condenser
// heat is always the sum of the others, and the plate is always evaluated anew.
constexpr double straight_condensing_k = 0.02;
constexpr double straight_suction_k = 0.01;
constexpr double collapsed_k = 1e-10;  // a bracket this narrow holds no more than rounding
constexpr double reopened_k = 0.5;
constexpr int most_iterations = 100;  // bisection alone needs fewer

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
            double passed = 0.0;
            double touched = 0.0;
            for (std::size_t k = 0; k < zone_.count; ++k) {
                if (tc <= zone_.water_c[k]) continue;
                passed += zone_.share[k] * (tc - zone_.water_c[k]);
                touched += zone_.share[k];
            }
            const double miss = zone_.ua_w_k * passed - out.condenser_w;
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

Point off_point(Off reason, double air_c) noexcept {
    Point point;
    point.off = reason;
    point.plate_c = air_c;
    return point;
}

/// Plates that act as one: its temperature follows from the heat that the circuit takes.
class OnePlate {
   public:
    OnePlate(const PlateBalance& plate, const Line& line) noexcept
        : plate_(plate), line_(line), refrigerant_w_k_(plate.plate().refrigerant_w_k) {}
    [[nodiscard]] double air_c() const noexcept { return plate_.air_c(); }
    /// Plate heat less evaporator heat.
    double residual_w(double te, const Circuit& circuit, Point& point) const noexcept {
        point.plate_c = te + line_.drop_k + circuit.evaporator_w / refrigerant_w_k_;
        point.plate = plate_.heat(point.plate_c);
        ++point.evaluations;
        return point.plate.total_w() - circuit.evaporator_w;
    }
    [[nodiscard]] double slope_w_k(const Circuit& circuit, const Point& point) const noexcept {
        return point.plate.slope_w_k * (1.0 + circuit.evaporator_by_te / refrigerant_w_k_) - circuit.evaporator_by_te;
    }
    template <class Search>
    static bool quick(Search&, const BlockModel&, double&, Circuit&, Point&) noexcept {
        return false;
    }
    void hold_back(double, const Circuit& circuit, Point& point) const noexcept {
        point.plate_c = plate_.temperature_at(circuit.evaporator_w, point.plate_c);
        point.plate = plate_.heat(point.plate_c);
    }
    static void finish(Point&) noexcept {}

   private:
    const PlateBalance& plate_;
    const Line& line_;
    double refrigerant_w_k_;
};

/// Plates that differ: each finds its own temperature at the boiling temperature it meets.
class ManyPlates {
   public:
    ManyPlates(PlateField& field, const Line& line) noexcept : field_(field), line_(line) {}
    [[nodiscard]] double air_c() const noexcept { return field_.air_c(); }
    double residual_w(double te, const Circuit& circuit, Point& point) noexcept {
        ++point.evaluations;
        const double residual =
            field_.taken_w(te + line_.drop_k, circuit.evaporator_w, taken_slope_) - circuit.evaporator_w;
        return residual;
    }
    /// Falls of pressure that grow with the flow make the slope steeper; left out here, Newton's steps are only longer.
    [[nodiscard]] double slope_w_k(const Circuit& circuit, const Point&) const noexcept {
        return taken_slope_ - circuit.evaporator_by_te;
    }
    /// Newton on suction temperature and all shares at once: one evaluation of each plate a step instead of a search
    /// in every plate. False when it does not settle between the envelope's ends, all plates taking up heat: then the
    /// bracketed search has it. Alike plates take the very steps of one plate of their area.
    template <class Search>
    bool quick(Search& search, const BlockModel& block, double& te, Circuit& circuit, Point& point) noexcept;
    void hold_back(double te, const Circuit& circuit, Point&) noexcept {
        field_.hold_back(te + line_.drop_k, circuit.evaporator_w);
    }
    void finish(Point& point) const noexcept {
        point.plate = field_.heat();
        point.plate_c = field_.mean_plate_c();
    }

   private:
    PlateField& field_;
    const Line& line_;
    double taken_slope_ = 0.0;
};

template <class Search>
bool ManyPlates::quick(Search& search, const BlockModel& block, double& te, Circuit& circuit, Point& point) noexcept {
    constexpr int most_steps = 12;
    const auto parts = field_.parts();
    double conductance = 0.0;
    double shared = 0.0;
    for (const FieldPart& part : parts) {
        conductance += part.balance.plate().refrigerant_w_k;
        shared += part.taken_w;
    }
    Circuit evaluated;
    double evaluated_te = -1e9;
    for (int step = 0; step < most_steps; ++step) {
        circuit = std::abs(te - evaluated_te) < straight_suction_k
                      ? search.shifted(evaluated, te - evaluated_te)
                      : (evaluated_te = te, evaluated = search.circuit(te));
        const double heat_w = circuit.evaporator_w;
        const double missing = heat_w - shared;  // what the shares do not add up to is spread over all plates
        double weighted = 0.0;
        double flexible = 0.0;
        double sum = 0.0;
        double worst = 0.0;
        for (FieldPart& part : parts) {
            const double ua = part.balance.plate().refrigerant_w_k;
            part.taken_w += missing * ua / conductance;
            part.plate_c = te + line_.drop_k + part.drop_k_per_w2 * heat_w * heat_w + part.taken_w / ua;
            part.heat = part.balance.heat(part.plate_c);
            const double miss = part.heat.total_w() - part.taken_w;
            const double keeps = 1.0 / (1.0 - part.heat.slope_w_k / ua);
            sum += miss;
            worst = std::max(worst, std::abs(miss));
            weighted += keeps * miss;
            flexible +=
                keeps * part.heat.slope_w_k * (1.0 + 2.0 * part.drop_k_per_w2 * heat_w * circuit.evaporator_by_te);
        }
        ++point.evaluations;
        if (std::abs(sum) < balance_tolerance_w && worst < balance_tolerance_w) {
            for (const FieldPart& part : parts)
                if (!(part.taken_w >= 0.0)) return false;
            return true;
        }
        const double slope = circuit.evaporator_by_te - flexible;
        if (!(slope > 0.0)) return false;
        const double wanted = te + weighted / slope;
        const double next = std::clamp(wanted, block.evaporating_min_c, block.evaporating_max_c);
        if (next == te || !(std::abs(wanted) < 1e3)) return false;
        shared = 0.0;
        for (FieldPart& part : parts) {
            const double ua = part.balance.plate().refrigerant_w_k;
            const double keeps = 1.0 / (1.0 - part.heat.slope_w_k / ua);
            const double boiling = (next - te) * (1.0 + 2.0 * part.drop_k_per_w2 * heat_w * circuit.evaporator_by_te);
            part.taken_w += keeps * (part.heat.total_w() - part.taken_w + part.heat.slope_w_k * boiling);
            shared += part.taken_w;
        }
        te = next;
    }
    return false;
}

template <class Source, class Plates>
Point solve(const Source& source, const HeatPump& pump, Plates& plates, const CondenserZone& zone, const Line& line,
            const Guess& guess) noexcept {
    const BlockModel& block = pump.block();
    const double bottom = block.evaporating_min_c;
    const double top = block.evaporating_max_c;
    Search<Source> search(source, block, pump.refrigerant(), pump.map().lowest_condensing_c(),
                          pump.map().highest_condensing_c(), zone, line, plates.air_c());
    search.start_at(guess.suction_c, guess.condensing_c);

    // The residual, plate heat less evaporator heat, falls strictly with the suction temperature: Newton between
    // shrinking ends. An end that has not been tried yet is tried as soon as a step points past it.
    Point point;
    double low = bottom;
    double high = top;
    bool low_tried = false;
    bool high_tried = false;
    double last_step = high - low;
    double step_before_last = high - low;
    double te = std::clamp(guess.suction_c, bottom, top);
    Circuit circuit;
    Circuit evaluated;  // the last one from the map, and where
    double evaluated_te = -1e9;
    double straight_k = straight_suction_k;
    const int iterations = plates.quick(search, block, te, circuit, point) ? 0 : most_iterations;
    for (int i = 0; i < iterations; ++i) {
        circuit = std::abs(te - evaluated_te) < straight_k ? search.shifted(evaluated, te - evaluated_te)
                                                           : (evaluated_te = te, evaluated = search.circuit(te));
        const double residual = plates.residual_w(te, circuit, point);
        if (std::abs(residual) < balance_tolerance_w) break;
        if (residual > 0.0) {
            if (te >= top) {
                point.pressure_limited = true;
                break;
            }
            low = te;
            low_tried = true;
        } else {
            if (te <= bottom) return off_point(Off::too_cold, plates.air_c());
            high = te;
            high_tried = true;
        }
        if (high - low < collapsed_k) {
            // The root lies in a jump between two straight steps, past an end that one of them has set: once more
            // around here, without them.
            if (straight_k == 0.0) break;
            straight_k = 0.0;
            search.tighten();
            low = std::max(bottom, te - reopened_k);
            high = std::min(top, te + reopened_k);
            low_tried = high_tried = false;
            last_step = step_before_last = high - low;
            continue;
        }
        const double slope = plates.slope_w_k(circuit, point);
        double next = slope < 0.0 ? te - residual / slope : 0.5 * (low + high);
        if (next >= high)
            next = high_tried ? 0.5 * (low + high) : high;
        else if (next <= low)
            next = low_tried ? 0.5 * (low + high) : low;
        else if (low_tried && high_tried && std::abs(next - te) > 0.5 * step_before_last)
            next = 0.5 * (low + high);  // creases (dew, frost, melt) can make bare Newton go to and fro
        step_before_last = last_step;
        last_step = std::abs(next - te);
        te = next;
    }
    if (point.pressure_limited) plates.hold_back(te, circuit, point);
    plates.finish(point);

    point.suction_c = te;
    point.evaporating_c = te + line.drop_k;
    point.condensing_c = circuit.condensing_c;
    if (point.condensing_c > block.condensing_max_c) return off_point(Off::condensing, plates.air_c());
    point.pressure_ratio =
        pump.refrigerant().saturation_pressure_pa(point.condensing_c) / pump.refrigerant().saturation_pressure_pa(te);
    if (point.pressure_ratio > block.pressure_ratio_max) return off_point(Off::pressure_ratio, plates.air_c());
    const double gas_c = te + block.superheat_k;
    point.discharge_c = source.discharge_c(te, point.condensing_c);
    point.discharge_c += circuit.gas_warming_k * kelvin(point.discharge_c) / kelvin(gas_c);
    if (point.discharge_c > block.discharge_max_c) return off_point(Off::discharge, plates.air_c());
    point.evaporator_w = circuit.evaporator_w;
    point.line_w = circuit.line_w;
    point.work_w = circuit.work_w;
    point.shell_loss_w = block.shell_loss * circuit.work_w + std::max(0.0, circuit.line_w);
    point.condenser_w = circuit.condenser_w;
    return point;
}

}  // namespace

Result<HeatPump> HeatPump::make(const BlockModel& block, const refrigerant::Properties& refrigerant) {
    auto problems = problems_of(block, refrigerant);
    if (!problems.empty()) return problems;
    return HeatPump(block, refrigerant);
}

Point HeatPump::point(const PlateBalance& plate, const CondenserZone& zone, const Line& line,
                      const Guess& guess) const noexcept {
    OnePlate one(plate, line);
    return solve(map_, *this, one, zone, line, guess);
}

Point HeatPump::point(PlateField& field, const CondenserZone& zone, const Line& line,
                      const Guess& guess) const noexcept {
    if (!field.plain()) {
        ManyPlates many(field, line);
        return solve(map_, *this, many, zone, line, guess);
    }
    FieldPart& part = field.parts()[0];
    const Point found = point(part.balance, zone, line, guess);
    part.heat = found.plate;
    part.plate_c = found.plate_c;
    part.taken_w = found.evaporator_w;
    return found;
}

Point HeatPump::point_without_map(const PlateBalance& plate, const CondenserZone& zone, const Line& line,
                                  const Guess& guess) const noexcept {
    OnePlate one(plate, line);
    return solve(WithoutMap{&block_, refrigerant_}, *this, one, zone, line, guess);
}

PerformanceMap performance_map(const HeatPump& pump, const std::vector<double>& evaporating_c,
                               const std::vector<double>& water_c) {
    PerformanceMap out{evaporating_c, water_c, {}};
    out.points.reserve(evaporating_c.size() * water_c.size());
    const BlockModel& block = pump.block();
    const refrigerant::Properties& refrigerant = pump.refrigerant();
    const Line no_line;
    for (const double te : evaporating_c)
        for (const double water : water_c) {
            MapPoint at;
            if (te < block.evaporating_min_c || te > block.evaporating_max_c) {
                at.off = Off::too_cold;
                out.points.push_back(at);
                continue;
            }
            const CondenserZone zone = CondenserZone::uniform(block.condenser_w_k, water);
            Search<CycleMap> search(pump.map(), block, refrigerant, pump.map().lowest_condensing_c(),
                                    pump.map().highest_condensing_c(), zone, no_line, te);
            search.start_at(te, water + 10.0);
            const Circuit circuit = search.circuit(te);
            at.condensing_c = circuit.condensing_c;
            const double ratio =
                refrigerant.saturation_pressure_pa(at.condensing_c) / refrigerant.saturation_pressure_pa(te);
            if (at.condensing_c > block.condensing_max_c)
                at.off = Off::condensing;
            else if (ratio > block.pressure_ratio_max)
                at.off = Off::pressure_ratio;
            else if (pump.map().discharge_c(te, at.condensing_c) > block.discharge_max_c)
                at.off = Off::discharge;
            if (at.off == Off::none) {
                at.evaporator_w = circuit.evaporator_w;
                at.work_w = circuit.work_w;
                at.condenser_w = circuit.condenser_w;
            }
            out.points.push_back(at);
        }
    return out;
}

}  // namespace wg::heatpump
