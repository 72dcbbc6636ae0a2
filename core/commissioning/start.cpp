#include "core/commissioning/start.h"

#include <algorithm>
#include <cmath>

#include "core/quantity/constants.h"

namespace wg::commissioning {
namespace {

// Half widths of what the model can tell, assumed: within the errors of a clamp meter, a strap-on probe and the data.
constexpr double saturation_k = 3.0, suction_gas_k = 4.0, discharge_k = 8.0, current_share = 0.12;
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
    std::array<double, start_quantities> half{};  ///< half width of the model's band
};

Simulated simulate(const heatpump::HeatPump& pump, const StartConditions& c, double light_w_m2, const Disturbance& d) {
    const heatpump::HeatPump* used = &pump;
    std::optional<heatpump::HeatPump> changed;
    if (d.superheat_k != 0.0) {
        BlockModel block = pump.block();
        block.superheat_k = std::clamp(block.superheat_k + d.superheat_k, 1.0, 20.0);
        auto made = heatpump::HeatPump::make(block, pump.refrigerant());
        if (!made) return {};
        used = &changed.emplace(made.value());
    }
    heatpump::Plate plate = c.plate;
    plate.refrigerant_w_k *= d.plate_contact;
    heatpump::Surroundings around = c.surroundings;
    around.front_w_m2 = light_w_m2 * d.light;
    around.rear_w_m2 *= d.light;
    heatpump::PlateBalance balance(plate, around);
    heatpump::Frost frost = c.frost;
    frost.front_kg_m2 += d.frost_kg_m2;
    frost.rear_kg_m2 += d.frost_kg_m2;
    balance.set_frost(frost, 600.0);
    heatpump::Line line = c.line;
    line.drop_k += d.suction_drop_k;
    const BlockModel& block = used->block();
    const auto zone =
        heatpump::CondenserZone::uniform(block.condenser_w_k * d.condenser, c.water_c, block.condenser_glide_k);
    const heatpump::Point p = used->point(balance, zone, line, {c.surroundings.air_c - 8.0, c.water_c + 8.0});
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
    s.half = {suction_gas_k, 0.5 * (gauge(p.suction_c + saturation_k) - gauge(p.suction_c - saturation_k)), discharge_k,
              0.5 * (gauge(p.condensing_c + saturation_k) - gauge(p.condensing_c - saturation_k)),
              current_share * s.value[4]};
    return s;
}

std::array<std::optional<double>, start_quantities> as_list(const StartReadings& r) {
    return {r.suction_gas_c, r.suction_bar, r.discharge_c, r.discharge_bar, r.current_a};
}

double misfit_of(const Simulated& s, const std::array<std::optional<double>, start_quantities>& read) {
    double squares = 0.0;
    int count = 0;
    for (std::size_t i = 0; i < start_quantities; ++i) {
        if (!read[i]) continue;
        const double off = (*read[i] - s.value[i]) / s.half[i];
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
    for (std::size_t i = 0; i < start_quantities; ++i) {
        StartBand& band = out.bands[i];
        band.mid = middle.value[i];
        band.low = middle.value[i] - middle.half[i];
        band.high = middle.value[i] + middle.half[i];
        for (const Simulated* s : {&bright, &dim}) {
            if (!s->running) continue;
            band.low = std::min(band.low, s->value[i] - s->half[i]);
            band.high = std::max(band.high, s->value[i] + s->half[i]);
        }
        if (read[i] && std::isfinite(*read[i])) band.read = read[i];
    }
    if (!any) return out;
    if (readings.current_a && *readings.current_a < idle_share * pump.block().max_current_a) {
        out.verdict = StartVerdict::not_running;
        return out;
    }
    out.misfit = misfit_of(middle, read);
    const bool outside =
        std::any_of(out.bands.begin(), out.bands.end(), [](const StartBand& band) { return band.outside(); });
    out.verdict = outside ? StartVerdict::outside : StartVerdict::as_expected;
    if (!outside) return out;

    // Where the light is not known the sound set has the best of three guesses; so have the faults.
    for (const Simulated* s : {&bright, &dim})
        if (s->running) out.misfit = std::min(out.misfit, misfit_of(*s, read));
    for (const Fault fault : {Fault::low_charge, Fault::air_in_circuit, Fault::suction_restricted, Fault::plate_shaded,
                              Fault::plate_iced, Fault::condenser_scaled, Fault::wrong_hand}) {
        Suspect best;
        best.fault = fault;
        best.misfit = HUGE_VAL;
        for (int step = 1; step <= 8; ++step) {
            const double degree = step / 8.0;
            for (const double w_m2 : {light, 0.5 * (light + least), least}) {
                const Simulated s = simulate(pump, c, w_m2, of_fault(fault, degree));
                if (!s.running) continue;
                const double misfit = misfit_of(s, read);
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
