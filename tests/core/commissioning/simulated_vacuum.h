#pragma once
// Rises after valve-off whose truth is known: water that boils off until it is gone or saturates at the coldest part,
// gas that diffuses out of oil and hoses, air through a leak, and a gauge that errs within its limits.

#include "core/commissioning/vacuum_curve.h"
#include "simulated.h"

namespace wg::simulated {

enum class VacuumTruth { sound, leak, moisture, outgassing, leak_and_moisture };

struct Rise {
    commissioning::VacuumTest told;
    VacuumTruth truth = VacuumTruth::sound;
    double leak_pa_min = 0.0;
    double water_g = 0.0;
    double outgassing_pa = 0.0;  ///< in the end
};

/// Over water and ice between the values of IAPWS in tests/reference.
inline double saturation_pa(double c) {
    using Rows = std::vector<std::pair<double, double>>;
    const auto rows = [](const char* over) {
        Rows out;
        for (const nlohmann::json& row : outside()["vapour"][over])
            out.emplace_back(row[0], std::log(row[1].get<double>()));
        return out;
    };
    static const Rows water = rows("over_water"), ice = rows("over_ice");
    const Rows& t = c >= 0.01 ? water : ice;
    std::size_t i = 0;
    while (i + 2 < t.size() && t[i + 1].first < c)
        ++i;
    const double part = (c - t[i].first) / (t[i + 1].first - t[i].first);
    return std::exp(t[i].second + part * (t[i + 1].second - t[i].second));
}

inline Rise rise(std::uint64_t seed) {
    Draw draw(seed);
    Rise out;
    commissioning::VacuumTest& told = out.told;
    const double kind = draw.unit();
    out.truth = kind < 0.4    ? VacuumTruth::sound
                : kind < 0.6  ? VacuumTruth::leak
                : kind < 0.8  ? VacuumTruth::moisture
                : kind < 0.88 ? VacuumTruth::outgassing
                              : VacuumTruth::leak_and_moisture;
    const bool leaks = out.truth == VacuumTruth::leak || out.truth == VacuumTruth::leak_and_moisture;
    const bool wet = out.truth == VacuumTruth::moisture || out.truth == VacuumTruth::leak_and_moisture;
    told.volume_l = draw.between(0.8, 6.0);
    const double volume_m3 = told.volume_l * 1e-3;
    double cold_c = draw.between(3.0, 32.0);
    const double drift_k_min = draw.normal(1.5) / 60.0;
    out.leak_pa_min = leaks ? draw.log_between(0.5, 200.0) : draw.chance(0.5) ? draw.between(0.0, 0.2) : 0.0;
    out.water_g = wet                ? draw.log_between(0.005, 20.0)
                  : draw.chance(0.5) ? draw.between(0.0, 0.0004) * told.volume_l
                                     : 0.0;
    out.outgassing_pa =
        out.truth == VacuumTruth::outgassing ? draw.log_between(100.0, 1500.0) : draw.log_between(3.0, 70.0);
    const double settle_min = draw.log_between(2.0, 15.0);  // of evaporation: heat has to come through the wall
    const double diffusion_min = draw.log_between(2.0, 25.0);

    // Pumped down for a while: a wet circuit hangs above the pump's own level.
    double dry_pa = draw.between(12.0, 70.0);
    double water_pa = wet ? draw.between(0.02, 0.12) * saturation_pa(cold_c) : 0.0;
    double left_g = out.water_g, outgassed_pa = 0.0, minutes = 0.0;

    const double wait_min = draw.log_between(10.0, 120.0);
    const int readings = static_cast<int>(draw.between(4.0, 40.0));
    told.coldest_c = cold_c;
    const double share_off = draw.between(-0.8, 0.8) * told.gauge_share,
                 pa_off = draw.between(-0.8, 0.8) * told.gauge_pa;
    const bool each = draw.chance(0.3);  // every reading off on its own, as far as the gauge's limits go
    const auto read = [&] {
        const double pa = dry_pa + water_pa + outgassed_pa;
        const double share =
            each ? draw.between(-1, 1) * told.gauge_share : share_off + draw.between(-0.2, 0.2) * told.gauge_share;
        const double more =
            each ? draw.between(-1, 1) * told.gauge_pa : pa_off + draw.between(-0.2, 0.2) * told.gauge_pa;
        told.rise.push_back({minutes, std::max(0.1, std::round((pa * (1 + share) + more) * 10.0) / 10.0)});
    };
    read();
    constexpr double gram_pa_m3 = 8.314462618 / 18.015;  // per K: p V = m R T / M
    constexpr double step_min = 0.1;
    for (int i = 1; i < readings; ++i) {
        const double until = wait_min * i / (readings - 1);
        while (minutes < until) {
            minutes += step_min;
            cold_c += drift_k_min * step_min;
            told.coldest_c = std::min(told.coldest_c, cold_c);
            dry_pa += out.leak_pa_min * step_min;
            outgassed_pa = out.outgassing_pa * (1.0 - std::exp(-std::sqrt(minutes / diffusion_min)));
            const double per_gram = gram_pa_m3 * (cold_c + 273.15) / volume_m3;  // Pa
            double more_pa = (saturation_pa(cold_c) - water_pa) * step_min / settle_min;
            more_pa = std::clamp(more_pa, -water_pa, left_g * per_gram);
            water_pa += more_pa;
            left_g -= more_pa / per_gram;
        }
        read();
    }
    told.coldest_c += draw.between(-1.0, 1.0);
    return out;
}

}  // namespace wg::simulated
