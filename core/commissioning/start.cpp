#include "core/commissioning/start.h"

#include <algorithm>
#include <cmath>
#include <utility>

#include "core/quantity/constants.h"

namespace wg::commissioning {
namespace {

// What a sound set differs by from what the model is told: standard deviations, assumed; within what data sheets of
// plates and blocks, a technician's thermometer and a hand-held wind meter leave open.
constexpr double contact_share = 0.17, condenser_share = 0.13, drop_share = 0.2, light_share = 0.06, wind_share = 0.22;
constexpr double air_k = 0.6, dew_k = 1.3, sky_k = 3.0, water_k = 0.9;
constexpr double superheat_k = 1.5, efficiency_share = 0.04, displacement_share = 0.025, supply_share = 0.03;
// The instruments: strap-on probes (on hot gas they read low by a share of what they are over the room), gauges of
// class 1.6 and clamp meters.
constexpr double probe_k = 0.9, hot_probe_share = 0.02, suction_gauge_bar = 0.06, discharge_gauge_bar = 0.15;
constexpr double clamp_share = 0.02, clamp_a = 0.05;
// Five readings, each two-sided, together outside in less than one sound set of fifty: 0.02/5 (Bonferroni).
constexpr double band_deviations = 2.88;
constexpr double idle_share = 0.15;  // of the rated current: the compressor stands

/// What a fault of some degree makes of the set; neutral as it is made here.
struct Disturbance {
    double light = 1.0;            ///< share left
    double plate_contact = 1.0;    ///< share of plate to refrigerant
    double condenser = 1.0;        ///< share of its conductance
    double suction_drop_k = 0.0;   ///< more
    double superheat_k = 0.0;      ///< more, or less
    double frost_kg_m2 = 0.0;      ///< more on each face
    double foreign_gas_bar = 0.0;  ///< partial pressure in the condenser
    double discharge_k = 0.0;      ///< hotter than by the map, or cooler
    // Surroundings and line that are not quite as told.
    double wind = 1.0, drop = 1.0, air_k = 0.0, dew_k = 0.0, sky_k = 0.0, water_k = 0.0;
};

// Sizes at degree 1, assumed: large enough that a technician would call it the fault and not the weather.
Disturbance of_fault(Fault fault, double degree) {
    Disturbance d;
    switch (fault) {
        case Fault::low_charge:
            d.plate_contact = 1.0 - 0.85 * degree;
            d.superheat_k = 15.0 * degree;
            break;
        case Fault::air_in_circuit:
            d.condenser = 1.0 - 0.5 * degree;
            d.foreign_gas_bar = 4.0 * degree;
            break;
        case Fault::suction_restricted: d.suction_drop_k = 18.0 * degree; break;
        case Fault::plate_shaded: d.light = 1.0 - degree; break;
        case Fault::plate_iced: d.frost_kg_m2 = 6.0 * degree; break;
        case Fault::condenser_scaled: d.condenser = 1.0 - 0.8 * degree; break;
        case Fault::wrong_hand:
            d.plate_contact = 1.0 - 0.5 * degree;
            d.superheat_k = -10.0 * degree;
            d.discharge_k = -15.0 * degree;  // liquid boils off in the compressor
            break;
    }
    return d;
}

struct Simulated {
    bool running = false;
    heatpump::Off off = heatpump::Off::none;
    std::array<double, start_quantities> value{};
};

/// The pump with the disturbance's superheat: made anew, map and all, where it has one; nullopt when that cannot be.
std::optional<heatpump::HeatPump> with_superheat(const heatpump::HeatPump& pump, const Disturbance& d) {
    if (d.superheat_k == 0.0) return pump;
    BlockModel block = pump.block();
    block.superheat_k = std::clamp(block.superheat_k + d.superheat_k, 1.0, 20.0);
    auto made = heatpump::HeatPump::make(block, pump.refrigerant());
    return made ? std::optional(std::move(made).value()) : std::nullopt;
}

/// `pump` has the disturbance's superheat already.
Simulated simulate(const heatpump::HeatPump& pump, const StartConditions& c, double light_w_m2, const Disturbance& d) {
    heatpump::Plate plate = c.plate;
    plate.refrigerant_w_k *= d.plate_contact;
    heatpump::Surroundings around = c.surroundings;
    around.front_w_m2 = light_w_m2 * d.light;
    around.rear_w_m2 *= d.light;
    around.wind_m_s *= d.wind;
    around.air_c += d.air_k;
    around.dew_point_c += d.dew_k;
    around.sky_k += d.sky_k;
    heatpump::PlateBalance balance(plate, around);
    heatpump::Frost frost = c.frost;
    frost.front_kg_m2 += d.frost_kg_m2;
    frost.rear_kg_m2 += d.frost_kg_m2;
    balance.set_frost(frost, 600.0);
    heatpump::Line line = c.line;
    line.drop_k = line.drop_k * d.drop + d.suction_drop_k;
    const BlockModel& block = pump.block();
    const auto zone = heatpump::CondenserZone::uniform(block.condenser_w_k * d.condenser, c.water_c + d.water_k,
                                                       block.condenser_glide_k);
    const heatpump::Point p = pump.point(balance, zone, line, {c.surroundings.air_c - 8.0, c.water_c + 8.0});
    Simulated s;
    s.off = p.off;
    s.running = p.running();
    if (!s.running) return s;

    const refrigerant::Properties& r = pump.refrigerant();
    const auto gauge = [&](double sat_c) { return r.pressure_up_to_critical_pa(sat_c) * 1e-5 - c.air_pressure_bar; };
    const double volts = block.supply_v * block.power_factor * (block.supply_phases == 3 ? std::sqrt(3.0) : 1.0);
    const double head_bar = gauge(p.condensing_c) + d.foreign_gas_bar;
    // Compressing to the foreign gas's pressure too costs work in proportion to the logarithm of the ratio.
    const double low_bar = gauge(p.suction_c) + c.air_pressure_bar;
    const double harder = std::log((head_bar + c.air_pressure_bar) / low_bar) /
                          std::log((head_bar - d.foreign_gas_bar + c.air_pressure_bar) / low_bar);
    s.value = {p.suction_c + block.superheat_k, gauge(p.suction_c),
               p.suction_c + (p.discharge_c - p.suction_c) * harder + d.discharge_k, head_bar,
               p.work_w * harder / volts};
    return s;
}

std::array<std::optional<double>, start_quantities> as_list(const StartReadings& r) {
    return {r.suction_gas_c, r.suction_bar, r.discharge_c, r.discharge_bar, r.current_a};
}

using Halves = std::array<double, start_quantities>;

/// Half widths of the bands about a sound set: what each uncertainty moves, root of squares.
Halves half_widths(const heatpump::HeatPump& pump, const StartConditions& c, double light_w_m2,
                   const Simulated& sound) {
    Halves squares{};
    const auto add = [&](double Disturbance::*which, double by) {
        for (const double way : {by, -by}) {  // the other way where this one leads out of the envelope
            Disturbance d;
            d.*which += way;
            const Simulated moved = simulate(pump, c, light_w_m2, d);
            if (!moved.running) continue;
            for (std::size_t i = 0; i < start_quantities; ++i)
                squares[i] += (moved.value[i] - sound.value[i]) * (moved.value[i] - sound.value[i]);
            return;
        }
    };
    add(&Disturbance::plate_contact, -contact_share);
    add(&Disturbance::condenser, -condenser_share);
    add(&Disturbance::drop, drop_share);
    add(&Disturbance::light, light_share);
    add(&Disturbance::wind, -wind_share);
    add(&Disturbance::air_k, air_k);
    add(&Disturbance::dew_k, dew_k);
    add(&Disturbance::sky_k, sky_k);
    add(&Disturbance::water_k, water_k);
    const auto also = [&](StartQuantity q, double deviation) {
        squares[static_cast<std::size_t>(q)] += deviation * deviation;
    };
    const double lift_k = sound.value[2] - sound.value[0], hot_k = std::max(0.0, sound.value[2] - 20.0);
    also(StartQuantity::suction_gas, superheat_k);
    also(StartQuantity::discharge, superheat_k);
    also(StartQuantity::discharge, efficiency_share * lift_k);
    for (const double share : {efficiency_share, displacement_share, supply_share, clamp_share})
        also(StartQuantity::current, share * sound.value[4]);
    also(StartQuantity::suction_gas, probe_k);
    also(StartQuantity::discharge, probe_k);
    also(StartQuantity::discharge, hot_probe_share * hot_k);
    also(StartQuantity::suction_pressure, suction_gauge_bar);
    also(StartQuantity::discharge_pressure, discharge_gauge_bar);
    also(StartQuantity::current, clamp_a);
    Halves halves{};
    for (std::size_t i = 0; i < start_quantities; ++i)
        halves[i] = band_deviations * std::sqrt(squares[i]);
    return halves;
}

double misfit_of(const Simulated& s, const std::array<std::optional<double>, start_quantities>& read,
                 const Halves& halves) {
    double squares = 0.0;
    int count = 0;
    for (std::size_t i = 0; i < start_quantities; ++i) {
        if (!read[i]) continue;
        const double off = (*read[i] - s.value[i]) / halves[i];
        squares += off * off;
        ++count;
    }
    return count > 0 ? std::sqrt(squares / count) : 0.0;
}

}  // namespace

const char* text_of(StartQuantity quantity) noexcept {
    switch (quantity) {
        case StartQuantity::suction_gas: return "suction gas";
        case StartQuantity::suction_pressure: return "suction pressure";
        case StartQuantity::discharge: return "discharge gas";
        case StartQuantity::discharge_pressure: return "discharge pressure";
        case StartQuantity::current: return "supply current";
    }
    return "";
}

const char* text_of(Fault fault) noexcept {
    switch (fault) {
        case Fault::low_charge: return "too little refrigerant";
        case Fault::air_in_circuit: return "air or nitrogen in the circuit";
        case Fault::suction_restricted: return "suction line or valve not free";
        case Fault::plate_shaded: return "plate in shade";
        case Fault::plate_iced: return "plate under ice";
        case Fault::condenser_scaled: return "condenser passes little heat";
        case Fault::wrong_hand: return "plate hung the wrong way round";
    }
    return "";
}

const char* remedy_of(Fault fault) noexcept {
    switch (fault) {
        case Fault::low_charge: return "Weigh the charge; look for a leak before adding any";
        case Fault::air_in_circuit: return "Recover the charge, evacuate to the level asked for, charge anew by weight";
        case Fault::suction_restricted: return "Open both service valves fully; look for a kink or a crushed flare";
        case Fault::plate_shaded: return "See what stands before the plate; read again in light";
        case Fault::plate_iced: return "Let the ice thaw, never chip it; read again";
        case Fault::condenser_scaled: return "Check that the cylinder is full and vented; then look for scale";
        case Fault::wrong_hand: return "Check that connections are at the lower end, on the side the model is made for";
    }
    return "";
}

StartResult judge(const heatpump::HeatPump& pump, const StartConditions& c, const StartReadings& readings) {
    StartResult out;
    const auto read = as_list(readings);
    const bool any = std::any_of(read.begin(), read.end(), [](const auto& v) { return v && std::isfinite(*v); });
    const double light = c.surroundings.front_w_m2;
    const double least = c.light_known ? light : 0.0;
    const Simulated bright = simulate(pump, c, light, {}), dim = simulate(pump, c, least, {});
    const Simulated middle = c.light_known ? bright : simulate(pump, c, 0.5 * light, {});
    if (!middle.running) {
        out.verdict = StartVerdict::cannot_run;
        out.why_not = heatpump::reason_text(middle.off);
        return out;
    }
    const double middle_light = c.light_known ? light : 0.5 * light;
    const Halves halves = half_widths(pump, c, middle_light, middle);
    for (std::size_t i = 0; i < start_quantities; ++i) {
        StartBand& band = out.bands[i];
        band.mid = middle.value[i];
        band.low = middle.value[i] - halves[i];
        band.high = middle.value[i] + halves[i];
    }
    for (const auto& [s, w_m2] : {std::pair{&bright, light}, std::pair{&dim, least}}) {
        if (c.light_known || !s->running) continue;
        const Halves there = half_widths(pump, c, w_m2, *s);
        for (std::size_t i = 0; i < start_quantities; ++i) {
            out.bands[i].low = std::min(out.bands[i].low, s->value[i] - there[i]);
            out.bands[i].high = std::max(out.bands[i].high, s->value[i] + there[i]);
        }
    }
    for (std::size_t i = 0; i < start_quantities; ++i)
        if (read[i] && std::isfinite(*read[i])) out.bands[i].read = read[i];
    if (!any) return out;
    if (readings.current_a && *readings.current_a < idle_share * pump.block().max_current_a) {
        out.verdict = StartVerdict::not_running;
        return out;
    }
    out.misfit = misfit_of(middle, read, halves);
    const bool outside =
        std::any_of(out.bands.begin(), out.bands.end(), [](const StartBand& band) { return band.outside(); });
    out.verdict = outside ? StartVerdict::outside : StartVerdict::as_expected;
    if (!outside) return out;

    // Where the light is not known the sound set has the best of three guesses; so have the faults.
    for (const Simulated* s : {&bright, &dim})
        if (s->running) out.misfit = std::min(out.misfit, misfit_of(*s, read, halves));
    for (const Fault fault : {Fault::low_charge, Fault::air_in_circuit, Fault::suction_restricted, Fault::plate_shaded,
                              Fault::plate_iced, Fault::condenser_scaled, Fault::wrong_hand}) {
        Suspect best;
        best.fault = fault;
        best.misfit = HUGE_VAL;
        for (int step = 1; step <= 8; ++step) {
            const double degree = step / 8.0;
            const Disturbance disturbance = of_fault(fault, degree);
            const std::optional<heatpump::HeatPump> disturbed = with_superheat(pump, disturbance);
            if (!disturbed) continue;
            for (const double w_m2 : {light, 0.5 * (light + least), least}) {
                const Simulated s = simulate(*disturbed, c, w_m2, disturbance);
                if (!s.running) continue;
                const double misfit = misfit_of(s, read, halves);
                if (misfit < best.misfit) best = {fault, degree, misfit};
                if (c.light_known) break;
            }
        }
        if (best.misfit < 0.7 * out.misfit) out.suspects.push_back(best);
    }
    std::stable_sort(out.suspects.begin(), out.suspects.end(),
                     [](const Suspect& a, const Suspect& b) { return a.misfit < b.misfit; });
    return out;
}

}  // namespace wg::commissioning
