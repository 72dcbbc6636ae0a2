#pragma once
// Pressure holds whose truth is known: a volume partly outdoors under nitrogen through hours of weather, with a leak or
// without, read by instruments that err within their limits.

#include "core/commissioning/hold.h"
#include "simulated.h"

namespace wg::simulated {

struct Hold {
    commissioning::HoldTest told;  ///< as the technician enters it
    double leak_g_year = 0.0;      ///< in truth
};

/// What a laminar path lets pass, by the values of CoolProp: of nitrogen, Pa m3/s, for g of R134a a year.
class LeakPath {
   public:
    LeakPath(double g_year, double air_pa) : air_pa_(air_pa) {
        const nlohmann::json& v = outside()["leak"];
        const double pa_m3_s = g_year * 1e-3 / (365.25 * 86400.0) / v["kg_per_pa_m3"].get<double>();
        const double p = v["saturation_pa"];
        conductance_ = pa_m3_s * v["vapour_viscosity"].get<double>() / (p * p - air_pa * air_pa);
        viscosity_ = v["nitrogen_viscosity"];
    }
    [[nodiscard]] double pa_m3_s(double pa) const {
        return conductance_ * std::max(0.0, pa * pa - air_pa_ * air_pa_) / viscosity_;
    }

   private:
    double air_pa_, conductance_ = 0.0, viscosity_ = 1.0;
};

inline Hold hold(std::uint64_t seed, const Nitrogen& gas) {
    constexpr double gas_constant = 8.314462618;
    Draw draw(seed);
    Hold out;
    commissioning::HoldTest& told = out.told;
    const double volume_m3 = draw.between(0.8e-3, 6e-3), share = draw.between(0.3, 0.95);
    const double height_m = draw.chance(0.5) ? draw.between(0.0, 600.0) : draw.between(0.0, 2000.0);
    const double usual_air_pa = 101325.0 * std::pow(1.0 - 2.25577e-5 * height_m, 5.25588);  // ISO 2533
    double air_pa = usual_air_pa + draw.normal(900.0);
    const double tendency_pa_h = draw.normal(25.0);
    told.hours = draw.log_between(0.5, 48.0);
    told.volume_l = volume_m3 * 1e3 * draw.between(0.9, 1.1);
    told.air_pressure_bar = usual_air_pa * 1e-5;
    told.instruments.gauge_bar = draw.one_of({0.02, 0.05, 0.1, 0.1, 0.25});
    told.instruments.thermometer_k = draw.one_of({0.5, 1.0, 1.0, 2.0});
    told.instruments.share = 0.1;
    told.outdoors_share = std::clamp(share + draw.between(-0.1, 0.1), 0.0, 1.0);
    told.leak_limit_g_year = draw.one_of({20.0, 50.0, 100.0, 200.0});
    if (!draw.chance(0.4)) out.leak_g_year = draw.log_between(2.0, 50000.0);

    Weather weather(draw);
    double indoors_c = draw.between(8.0, 24.0);
    const double indoors_drift = draw.normal(0.25);
    const Instrument gauge(draw, told.instruments.gauge_bar), probe_out(draw, told.instruments.thermometer_k),
        probe_in(draw, told.instruments.thermometer_k);
    const double uneven = draw.between(0.0, 0.15);  // of the plate's excess that gas in the outdoor line lacks
    const LeakPath path(out.leak_g_year, usual_air_pa);

    const auto gas_c = [&] { return weather.plate_c() - uneven * (weather.plate_c() - weather.air_c()); };
    const auto per_pa = [&](double pa) {
        const auto part = [&](double of, double c) { return of / (gas.z(pa, c) * gas_constant * (c + 273.15)); };
        return volume_m3 * (part(share, gas_c()) + part(1.0 - share, indoors_c));
    };
    double pa = 0.0, moles = 0.0;
    const auto reading = [&] {
        commissioning::HoldReading r;
        r.gauge_bar = gauge.read(draw, (pa - air_pa) * 1e-5);
        if (!draw.chance(0.02)) r.plate_c = probe_out.read(draw, weather.plate_c());
        if (!draw.chance(0.02)) r.indoors_c = probe_in.read(draw, indoors_c);
        r.plate_in_sun = weather.light_w_m2() > 150.0 && !draw.chance(0.03);
        return r;
    };
    // Most technicians take their readings out of the sun: they wait with the start and with the end.
    const bool waits = draw.chance(0.85);
    for (int i = 0; waits && i < 300 && weather.light_w_m2() > 120.0; ++i)
        weather.step(5.0);
    pa = draw.between(10e5, 42e5) + air_pa;
    moles = pa * per_pa(pa);
    told.start = reading();
    const int steps = std::max(30, static_cast<int>(told.hours * 12.0));
    const double minutes = told.hours * 60.0 / steps;
    for (int i = 0; i < steps || (waits && i < steps + 300 && weather.light_w_m2() > 120.0); ++i) {
        told.hours += i < steps ? 0.0 : minutes / 60.0;
        weather.step(minutes);
        indoors_c += indoors_drift * minutes / 60.0 + draw.normal(0.3 * std::sqrt(minutes / 60.0)) -
                     (indoors_c - 16.0) * minutes / 60.0 / 24.0;
        air_pa += tendency_pa_h * minutes / 60.0 + draw.normal(90.0 * std::sqrt(minutes / 60.0)) -
                  (air_pa - usual_air_pa) * minutes / 60.0 / 48.0;
        const double gas_k = share * (gas_c() + 273.15) + (1.0 - share) * (indoors_c + 273.15);
        moles -= std::min(0.5 * moles, path.pa_m3_s(pa) / (gas_constant * gas_k) * minutes * 60.0);
        for (int turn = 0; turn < 8; ++turn)
            pa = moles / per_pa(pa);
    }
    told.end = reading();
    return out;
}

}  // namespace wg::simulated
