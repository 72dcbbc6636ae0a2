#pragma once
// Random equipment and conditions over the whole of what a catalogue may state and weather may bring.

#include <memory>
#include <random>
#include <vector>

#include "tests/core/heatpump/fixture.h"

namespace wg::heatpump_test {

struct WideSweep {
    explicit WideSweep(unsigned seed) : random(seed) {}
    double between(double a, double b) { return a + (b - a) * std::uniform_real_distribution<double>()(random); }
    bool chance(double share) { return between(0, 1) < share; }

    /// Displacement of gases denser in heat is smaller.
    BlockModel block(Refrigerant kind) {
        BlockModel b;
        b.refrigerant = kind;
        b.displacement_cm3 = between(8, 24) * (kind == Refrigerant::r290 ? 0.7 : 1.0);
        b.speed_rpm = between(2800, 3500);
        b.volumetric_at_unity = between(0.90, 0.98);
        b.volumetric_slope = between(0.03, 0.07);
        b.overall_peak = between(0.45, 0.68);
        b.overall_peak_at = between(2.5, 4.0);
        b.overall_curvature = between(0.1, 0.4);
        b.superheat_k = between(2, 12);
        b.subcooling_k = between(0, 10);
        b.shell_loss = between(0.03, 0.15);
        b.least_lift_k = between(5, 15);
        b.condenser_w_k = between(80, 450);
        return b;
    }
    heatpump::Plate plate() {
        CollectorModel model;
        model.face_area_m2 = between(1.2, 2.0);
        model.absorptance = between(0.5, 0.98);
        model.emittance = between(0.1, 0.95);
        model.rear_exposure = between(0.1, 1.0);
        model.plate_to_refrigerant_w_m2k = between(50, 300);
        const int count = 1 + static_cast<int>(between(0, 4));
        return heatpump::plate_of(model, count, between(0, 90), between(0.3, 1.0), chance(0.3));
    }
    heatpump::Surroundings weather() {
        auto s = surroundings(chance(0.3) ? 0.0 : between(0, 1100), between(-20, 42), between(0.2, 1.0), between(0, 12),
                              between(0, 25));
        s.rear_w_m2 = chance(0.3) ? between(0, 300) : 0.0;
        s.pressure_pa = between(75000, 104000);
        return s;
    }
    heatpump::Frost frost() {
        if (chance(0.7)) return {};
        return {chance(0.2) ? 0.0 : between(0, 3), chance(0.2) ? 0.0 : between(0, 3)};
    }
    heatpump::Line line() { return {chance(0.4) ? 0.0 : between(0, 5), chance(0.4) ? 0.0 : between(0, 1.5)}; }
    /// One temperature, or layers that fall from top to bottom.
    heatpump::CondenserZone water(double ua_w_k) {
        if (chance(0.5)) return heatpump::CondenserZone::uniform(ua_w_k, between(5, 65));
        heatpump::CondenserZone zone;
        zone.ua_w_k = ua_w_k;
        zone.count = 2 + static_cast<std::size_t>(between(0, 8));
        double sum = 0.0;
        double t = between(20, 65);
        for (std::size_t i = 0; i < zone.count; ++i) {
            zone.share[i] = between(0.05, 1.0);
            sum += zone.share[i];
            zone.water_c[i] = t;
            t = std::max(5.0, t - between(0, 10));
        }
        for (std::size_t i = 0; i < zone.count; ++i)
            zone.share[i] /= sum;
        return zone;
    }
    heatpump::Guess guess() { return {between(-25, 25), between(10, 75)}; }

    std::mt19937 random;
};

/// Blocks with each of the four refrigerants in turn. Building one is the slow part: many points on each.
struct Pool {
    Pool(WideSweep& sweep, int count) {
        for (const Refrigerant kind :
             {Refrigerant::r134a, Refrigerant::r290, Refrigerant::r1234yf, Refrigerant::r513a}) {
            fluids.push_back(properties(name_of(kind)));
            for (int i = 0; i < count / 4; ++i)
                pumps.push_back(pump(sweep.block(kind), *fluids.back()));
        }
    }
    [[nodiscard]] const heatpump::HeatPump& at(int i) const {
        return pumps[static_cast<std::size_t>(i) % pumps.size()];
    }
    std::vector<std::shared_ptr<const refrigerant::Properties>> fluids;
    std::vector<heatpump::HeatPump> pumps;
};

}  // namespace wg::heatpump_test
