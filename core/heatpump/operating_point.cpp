#include "core/heatpump/operating_point.h"

#include <algorithm>
#include <cmath>

#include "core/heatpump/circuit_search.h"
#include "core/heatpump/compressor.h"
#include "core/quantity/constants.h"

namespace wg::heatpump {

CondenserZone CondenserZone::uniform(double ua, double water, double glide_k) noexcept {
    constexpr std::size_t parts_along_glide = 8;
    CondenserZone zone;
    zone.ua_w_k = ua;
    zone.count = glide_k > 0.0 ? parts_along_glide : 1;
    const double share = 1.0 / static_cast<double>(zone.count);
    for (std::size_t i = 0; i < zone.count; ++i) {
        zone.share[i] = share;
        zone.water_c[i] = water - glide_offset_k(glide_k, static_cast<double>(i) * share, share);
    }
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
        case Off::beyond_data: return "the compressor's data end before this operating point";
    }
    return "";
}

using detail::Apart;
using detail::both_steps;
using detail::BothSteps;
using detail::Circuit;
using detail::collapsed_k;
using detail::most_iterations;
using detail::reopened_k;
using detail::straight_suction_k;
using detail::WithoutMap;

namespace {

constexpr int most_quick = 10;  // steps of bare Newton before the bracketed search takes over

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
    /// Newton on suction and condensing temperature at once. False when it does not settle between the envelope's
    /// ends: then the bracketed search has it.
    template <class Search>
    bool quick(Search& search, double& te, Circuit& circuit, Point& point) const noexcept;
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

template <class Search>
bool OnePlate::quick(Search& search, double& te, Circuit& circuit, Point& point) const noexcept {
    double suction_c = te;
    double tc = search.start_condensing_c();
    for (int i = 0; i < most_quick; ++i) {
        const Apart at = search.apart(suction_c, tc);
        const double residual = residual_w(suction_c, at.circuit, point);
        const double slope = point.plate.slope_w_k;
        const double by_evaporator = slope / refrigerant_w_k_ - 1.0;
        BothSteps step =
            both_steps(residual, slope + by_evaporator * at.evaporator_by_te, by_evaporator * at.evaporator_by_tc, at);
        step = search.held(step, at, suction_c, tc);
        if (!step.found) return false;
        const double next = suction_c + step.te_k;
        if (search.follow(at, step, suction_c, circuit)) {
            const double plate_k = step.te_k + (circuit.evaporator_w - at.circuit.evaporator_w) / refrigerant_w_k_;
            if (plate_.straight(point.plate, point.plate_c, plate_k) || std::abs(residual) < balance_tolerance_w) {
                point.plate.move(plate_k);
                point.plate_c += plate_k;
                te = next;
                return true;
            }
        }
        suction_c = next;
        tc += step.tc_k;
    }
    return false;
}

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
    bool quick(Search& search, double& te, Circuit& circuit, Point& point) noexcept;
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
bool ManyPlates::quick(Search& search, double& te, Circuit& circuit, Point& point) noexcept {
    const auto parts = field_.parts();
    double conductance = 0.0;
    double shared = 0.0;
    for (const FieldPart& part : parts) {
        conductance += part.balance.plate().refrigerant_w_k;
        shared += part.taken_w;
    }
    double suction_c = te;
    double tc = search.start_condensing_c();
    for (int i = 0; i < most_quick; ++i) {
        const Apart at = search.apart(suction_c, tc);
        const double heat_w = at.circuit.evaporator_w;
        const double missing = heat_w - shared;  // what the shares do not add up to is spread over all plates
        double weighted = 0.0;
        double by_boiling = 0.0;
        double by_drop = 0.0;
        double worst = 0.0;
        for (FieldPart& part : parts) {
            const double ua = part.balance.plate().refrigerant_w_k;
            part.taken_w += missing * ua / conductance;
            part.plate_c = suction_c + line_.drop_k + part.drop_k_per_w2 * heat_w * heat_w + part.taken_w / ua;
            part.heat = part.balance.heat(part.plate_c);
            const double miss = part.heat.total_w() - part.taken_w;
            const double keeps = ua / (ua - part.heat.slope_w_k);
            worst += std::abs(miss);
            weighted += keeps * miss;
            by_boiling += keeps * part.heat.slope_w_k;
            by_drop += keeps * part.heat.slope_w_k * 2.0 * part.drop_k_per_w2 * heat_w;
        }
        ++point.evaluations;
        BothSteps step = both_steps(weighted, by_boiling + (by_drop - 1.0) * at.evaporator_by_te,
                                    (by_drop - 1.0) * at.evaporator_by_tc, at);
        step = search.held(step, at, suction_c, tc);
        if (!step.found) return false;
        const double next = suction_c + step.te_k;
        bool straight = search.follow(at, step, suction_c, circuit);
        const bool met = worst < balance_tolerance_w;
        const double grown_w = at.evaporator_by_te * step.te_k + at.evaporator_by_tc * step.tc_k;
        shared = 0.0;
        for (FieldPart& part : parts) {
            const double ua = part.balance.plate().refrigerant_w_k;
            const double boiling_k = step.te_k + 2.0 * part.drop_k_per_w2 * heat_w * grown_w;
            const double more_w = (part.heat.total_w() - part.taken_w + part.heat.slope_w_k * boiling_k) * ua /
                                  (ua - part.heat.slope_w_k);
            const double plate_k = boiling_k + more_w / ua;
            straight = straight && (met || part.balance.straight(part.heat, part.plate_c, plate_k));
            part.taken_w += more_w;
            shared += part.taken_w;
            part.step_k = plate_k;
        }
        if (straight) {
            for (FieldPart& part : parts) {
                if (!(part.taken_w >= 0.0)) return false;
                part.heat.move(part.step_k);
                part.plate_c += part.step_k;
            }
            te = next;
            return true;
        }
        suction_c = next;
        tc += step.tc_k;
    }
    return false;
}

template <class Source, class Plates>
Point solve(const Source& source, const HeatPump& pump, Plates& plates, const CondenserZone& zone, const Line& line,
            const Guess& guess) noexcept {
    const BlockModel& block = pump.block();
    const double bottom = block.evaporating_min_c;
    const double top = block.evaporating_max_c;
    detail::Search<Source> search(source, block, pump.refrigerant(), pump.map().lowest_condensing_c(),
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
    const int iterations = plates.quick(search, te, circuit, point) ? 0 : most_iterations;
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
    if (!covered_by_data(block, te, point.condensing_c)) return off_point(Off::beyond_data, plates.air_c());
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

}  // namespace wg::heatpump
