#include "core/sky/prepared.h"

#include <cassert>
#include <cmath>

#include "core/quantity/constants.h"
#include "core/sky/perez.h"
#include "core/sky/sky_temperature.h"
#include "core/sun/extraterrestrial.h"
#include "core/sun/year.h"

namespace wg::sky {
namespace {

void add_sky_temperature(PreparedYear& prepared, const weather::Year& year) {
    const std::size_t n = prepared.air_c.size();
    prepared.sky_temperature_k.resize(n);
    prepared.sky_temperature_measured = year.sky_long_wave_w_m2.size() == n;
    if (prepared.sky_temperature_measured) {
        for (std::size_t i = 0; i < n; ++i) {
            prepared.sky_temperature_k[i] = std::sqrt(std::sqrt(year.sky_long_wave_w_m2[i] / stefan_boltzmann_w_m2k4));
        }
        return;
    }
    const bool observed = year.sky_cover.size() == n;
    const std::vector<double> cover =
        observed ? year.sky_cover : cover_from_light(prepared.global_w_m2, prepared.sun_up);
    const double cloud_weight = observed ? observed_cloud_weight : light_cloud_weight;
    for (std::size_t i = 0; i < n; ++i) {
        const double hour_of_day = static_cast<double>(i % 24) + 0.5;
        const double emissivity = clear_sky_emissivity(prepared.dew_point_c[i], hour_of_day, prepared.pressure_pa[i]);
        prepared.sky_temperature_k[i] = sky_temperature_k(prepared.air_c[i], emissivity, cover[i], cloud_weight);
    }
}

}  // namespace

void derive(PreparedYear& year) {
    const std::size_t n = year.sun_up.size();
    for (std::vector<double>* series :
         {&year.circumsolar_hay_davies_w_m2, &year.isotropic_hay_davies_w_m2, &year.circumsolar_perez_w_m2,
          &year.isotropic_perez_w_m2, &year.horizon_perez_w_m2}) {
        series->assign(n, 0.0);
    }
    for (std::size_t i = 0; i < n; ++i) {
        const double diffuse = year.diffuse_w_m2[i];
        const double up = year.sun_up[i];
        const double beam = up > 0.0 ? year.beam_normal_w_m2[i] : 0.0;
        const double anisotropy = std::fmin(1.0, beam / year.extraterrestrial_normal_w_m2[i]);
        year.circumsolar_hay_davies_w_m2[i] = diffuse * anisotropy / std::fmax(up, hay_davies_cos_floor);
        year.isotropic_hay_davies_w_m2[i] = diffuse * (1.0 - anisotropy);

        year.isotropic_perez_w_m2[i] = diffuse;
        if (!(diffuse > 0.0) || !(up > 0.0)) continue;
        const double zenith_deg = degrees(std::acos(std::fmin(1.0, up)));
        const PerezBrightness b = perez_brightness(beam, diffuse, year.extraterrestrial_normal_w_m2[i], zenith_deg,
                                                   sun::relative_air_mass(zenith_deg));
        year.circumsolar_perez_w_m2[i] = diffuse * b.f1 / std::fmax(up, perez_cos_floor);
        year.isotropic_perez_w_m2[i] = diffuse * (1.0 - b.f1);
        year.horizon_perez_w_m2[i] = diffuse * b.f2;
    }
}

PreparedYear prepare(const weather::Year& year) {
    constexpr auto n = static_cast<std::size_t>(weather::hours_in_year);
    assert(year.global_w_m2.size() == n && year.beam_normal_w_m2.size() == n && year.diffuse_w_m2.size() == n);
    assert(year.air_c.size() == n && year.dew_point_c.size() == n && year.wind_m_s.size() == n);
    assert(year.pressure_pa.size() == n);

    sun::YearSun sun = sun::year_sun({year.latitude_deg, year.longitude_deg, year.altitude_m, year.utc_offset_h,
                                      year.sun_minute, sun::weather_sun_year});
    PreparedYear prepared;
    prepared.latitude_deg = year.latitude_deg;
    prepared.longitude_deg = year.longitude_deg;
    prepared.sun_east = std::move(sun.east);
    prepared.sun_north = std::move(sun.north);
    prepared.sun_up = std::move(sun.up);
    prepared.extraterrestrial_normal_w_m2 = std::move(sun.extraterrestrial_normal_w_m2);
    prepared.beam_normal_w_m2 = year.beam_normal_w_m2;
    for (std::size_t i = 0; i < n; ++i) {
        if (!(prepared.sun_up[i] > 0.0)) prepared.beam_normal_w_m2[i] = 0.0;
    }
    prepared.diffuse_w_m2 = year.diffuse_w_m2;
    prepared.global_w_m2 = year.global_w_m2;
    prepared.air_c = year.air_c;
    prepared.dew_point_c = year.dew_point_c;
    prepared.wind_10m_m_s = year.wind_m_s;
    prepared.pressure_pa = year.pressure_pa;
    add_sky_temperature(prepared, year);
    derive(prepared);
    return prepared;
}

}  // namespace wg::sky
