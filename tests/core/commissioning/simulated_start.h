#pragma once
// Running pumps whose truth is known: the heat-pump model with other figures than those told (compressor, condenser,
// plate, superheat, mains), in other surroundings than those measured, read by instruments that err; sound or with one
// fault, which is put into the circuit here and not by the simulator of start.cpp.

#include <optional>

#include "core/commissioning/start.h"
#include "simulated.h"
#include "tests/core/heatpump/fixture.h"

namespace wg::simulated {

struct Started {
    commissioning::StartConditions told;
    commissioning::StartReadings read;
    std::optional<commissioning::Fault> fault;
    double degree = 0.0;      ///< 0..1 of the sizes below
    double light_w_m2 = 0.0;  ///< in truth, where there is no shade
    bool all_read = true;
};

namespace started {

using commissioning::Fault;

struct Truth {
    BlockModel block;
    heatpump::Plate plate;
    heatpump::Surroundings around;
    heatpump::Line line;
    heatpump::Frost frost;
    double water_c = 15.0, volts = 230.0, foreign_bar = 0.0, carried_over_k = 0.0;
};

inline void put(Truth& t, Fault fault, double d) {
    switch (fault) {
        case Fault::low_charge:  // part of the plate runs dry, the rest of the gas heats up there; no liquid before the
                                 // valve
            t.plate.refrigerant_w_k *= 1.0 - 0.8 * d;
            t.block.superheat_k = std::min(20.0, t.block.superheat_k + 14.0 * d);
            t.block.subcooling_k = std::max(0.0, t.block.subcooling_k - 3.0 * d);
            break;
        case Fault::air_in_circuit:
            t.foreign_bar = 4.0 * d;
            t.block.condenser_w_k *= 1.0 - 0.4 * d;
            break;
        case Fault::suction_restricted: t.line.drop_k += 18.0 * d; break;
        case Fault::plate_shaded:
            t.around.front_w_m2 *= 1.0 - d;
            t.around.rear_w_m2 *= 1.0 - d;
            break;
        case Fault::plate_iced:
            t.frost.front_kg_m2 += 8.0 * d;
            t.frost.rear_kg_m2 += 8.0 * d;
            break;
        case Fault::condenser_scaled: t.block.condenser_w_k *= 1.0 - 0.8 * d; break;
        case Fault::wrong_hand:
            t.plate.refrigerant_w_k *= 1.0 - 0.5 * d;
            t.block.superheat_k = std::max(1.0, t.block.superheat_k - 4.0 * d);
            t.carried_over_k = 15.0 * d;
            break;
    }
}

/// The true set's readings before the instruments; nullopt when it does not run.
inline std::optional<std::array<double, 5>> run(const Truth& t, const refrigerant::Properties& fluid, double air_bar) {
    auto made = heatpump::HeatPump::make(t.block, fluid);
    if (!made) return std::nullopt;
    const heatpump::HeatPump& pump = made.value();
    heatpump::PlateBalance balance(t.plate, t.around);
    balance.set_frost(t.frost, 600.0);
    const auto at = [&](double hotter_k) {
        const auto zone = heatpump::CondenserZone::uniform(t.block.condenser_w_k, t.water_c + hotter_k);
        return pump.point(balance, zone, t.line, {t.around.air_c - 8.0, t.water_c + hotter_k + 8.0});
    };
    heatpump::Point p = at(0.0);
    if (!p.running()) return std::nullopt;
    if (t.foreign_bar > 0.0) {
        // The compressor works against both gases: as against a condenser hotter by as much.
        const double head = fluid.saturation_pressure_pa(p.condensing_c) + t.foreign_bar * 1e5;
        double low = 0.0, high = 40.0;
        for (int i = 0; i < 20; ++i) {
            const double middle = 0.5 * (low + high);
            p = at(middle);
            if (!p.running() || fluid.saturation_pressure_pa(p.condensing_c) > head)
                high = middle;
            else
                low = middle;
        }
        p = at(low);
        if (!p.running()) return std::nullopt;
    }
    const auto gauge = [&](double c) { return fluid.saturation_pressure_pa(c) * 1e-5 - air_bar; };
    return std::array<double, 5>{p.suction_c + t.block.superheat_k - 0.2 * t.carried_over_k, gauge(p.suction_c),
                                 p.discharge_c - t.carried_over_k, gauge(p.condensing_c),
                                 p.work_w / (t.volts * t.block.power_factor)};
}

}  // namespace started

/// Nullopt when the true set does not run in these conditions.
inline std::optional<Started> start(std::uint64_t seed, const refrigerant::Properties& fluid) {
    using commissioning::Fault;
    Draw draw(seed);
    Started out;
    const bool faulty = draw.chance(0.5);
    if (faulty) {
        out.fault = static_cast<Fault>(static_cast<int>(draw.unit() * 7.0));
        out.degree = draw.between(0.1, 1.0);
    }
    // What is told: the plan's plate and block, the surroundings as measured.
    const double area = draw.between(1.5, 3.8), air_c = draw.between(-4.0, 32.0), humidity = draw.between(0.35, 0.95);
    commissioning::StartConditions& told = out.told;
    told.plate.area_m2 = area;
    told.plate.refrigerant_w_k = 120.0 * area;
    told.plate.tilt_deg = draw.between(0.0, 90.0);
    told.plate.rear_exposure = draw.between(0.3, 0.9);
    told.line = {draw.between(0.5, 3.0), draw.between(0.3, 2.5)};
    told.water_c = draw.between(10.0, 50.0);
    told.light_known = draw.chance(0.7);
    out.light_w_m2 = draw.chance(0.2) ? 0.0 : draw.between(0.0, 900.0);
    told.surroundings = heatpump_test::surroundings(out.light_w_m2, air_c, humidity, draw.log_between(0.4, 6.0),
                                                    draw.between(2.0, 20.0));

    // What is: none of it quite as told. Deviations of a series from its data sheet and of a day from what is measured;
    // common practice, no published source.
    started::Truth t;
    t.block.displacement_cm3 *= 1.0 + draw.normal(0.02);
    t.block.overall_peak *= 1.0 + draw.normal(0.035);
    t.block.volumetric_at_unity *= 1.0 + draw.normal(0.01);
    t.block.condenser_w_k *= draw.log_between(0.8, 1.25);
    t.block.superheat_k = std::clamp(t.block.superheat_k + draw.normal(1.3), 2.0, 9.0);
    t.block.subcooling_k = std::max(0.0, t.block.subcooling_k + draw.normal(1.3));
    t.block.shell_loss = std::max(0.0, t.block.shell_loss + draw.between(-0.03, 0.03));
    t.plate = told.plate;
    t.plate.refrigerant_w_k *= draw.log_between(0.75, 1.33);
    t.plate.absorptance += draw.between(-0.03, 0.03);
    t.plate.rear_exposure = std::clamp(t.plate.rear_exposure + draw.normal(0.1), 0.1, 1.0);
    t.line = {told.line.ua_w_k * draw.log_between(0.6, 1.6), told.line.drop_k * draw.log_between(0.7, 1.4)};
    t.around = told.surroundings;
    t.around.front_w_m2 *= 1.0 + draw.normal(0.05);
    t.around.air_c += draw.normal(0.5);
    t.around.dew_point_c = std::min(t.around.air_c - 0.2, t.around.dew_point_c + draw.normal(1.2));
    t.around.wind_m_s = std::max(0.2, t.around.wind_m_s * draw.log_between(0.7, 1.4));
    t.around.sky_k += draw.normal(3.0);
    t.water_c = told.water_c + draw.normal(0.8);
    t.volts = 230.0 * (1.0 + draw.normal(0.025));
    t.block.power_factor *= 1.0 + draw.normal(0.015);
    if (out.fault) started::put(t, *out.fault, out.degree);
    const auto truth = started::run(t, fluid, told.air_pressure_bar);
    if (!truth) return std::nullopt;

    const auto& v = *truth;
    out.read.suction_gas_c = v[0] + draw.normal(0.7);
    out.read.suction_bar = v[1] + draw.between(-0.1, 0.1);
    out.read.discharge_c = v[2] - draw.between(0.0, 0.04) * (v[2] - 20.0) + draw.normal(1.0);  // a strap-on reads low
    out.read.discharge_bar = v[3] + draw.between(-0.25, 0.25);
    out.read.current_a = v[4] * (1.0 + draw.normal(0.015)) + draw.normal(0.04);
    if (draw.chance(0.3)) {  // no gauges on a block that is closed from the works
        out.all_read = false;
        out.read.suction_bar.reset();
        out.read.discharge_bar.reset();
    }
    // Where the light is not known, the brightest that it may be is named.
    if (!told.light_known)
        told.surroundings.front_w_m2 = std::max(told.surroundings.front_w_m2, draw.between(500.0, 950.0));
    return out;
}

}  // namespace wg::simulated
