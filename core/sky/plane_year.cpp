#include <array>
#include <cassert>
#include <cmath>
#include <cstddef>

#include "core/quantity/constants.h"
#include "core/sky/prepared.h"

namespace wg::sky {
namespace {

// One diffuse model of a year, as the loops want it: three weights an hour.
struct HourLight {
    const double* circumsolar = nullptr;  ///< null: none
    const double* isotropic = nullptr;
    const double* horizon = nullptr;  ///< null: none
};

HourLight hour_light(const PreparedYear& year, DiffuseModel model) {
    switch (model) {
        case DiffuseModel::isotropic: return {nullptr, year.diffuse_w_m2.data(), nullptr};
        case DiffuseModel::hay_davies:
            return {year.circumsolar_hay_davies_w_m2.data(), year.isotropic_hay_davies_w_m2.data(), nullptr};
        case DiffuseModel::perez_1990:
            return {year.circumsolar_perez_w_m2.data(), year.isotropic_perez_w_m2.data(),
                    year.horizon_perez_w_m2.data()};
    }
    return {};
}

bool is_derived(const PreparedYear& year) {
    const std::size_t n = year.sun_up.size();
    return year.circumsolar_hay_davies_w_m2.size() == n && year.isotropic_hay_davies_w_m2.size() == n &&
           year.circumsolar_perez_w_m2.size() == n && year.isotropic_perez_w_m2.size() == n &&
           year.horizon_perez_w_m2.size() == n;
}

struct Normal {
    double east, north, up;
};

Normal normal_of(double tilt_deg, double azimuth_deg) {
    const double tilt = radians(tilt_deg);
    const double azimuth = radians(azimuth_deg);
    return {std::sin(tilt) * std::sin(azimuth), std::sin(tilt) * std::cos(azimuth), std::cos(tilt)};
}

// Beam with circumsolar (`direct`) and the rest of the sky (`sky`, times `sky_view`) on a plane for every hour. Plain
// loops over plain arrays without branches: each vectorises.
void front(const PreparedYear& year, const HourLight& light, const Normal& n, double sky_view,
           double* __restrict direct, double* __restrict sky) {
    const std::size_t count = year.sun_up.size();
    const double* east = year.sun_east.data();
    const double* north = year.sun_north.data();
    const double* up = year.sun_up.data();
    const double* beam = year.beam_normal_w_m2.data();
    const double* isotropic = light.isotropic;
    const double view = 0.5 * (1.0 + n.up);
    if (light.circumsolar == nullptr) {
        for (std::size_t i = 0; i < count; ++i) {
            const double c = n.east * east[i] + n.north * north[i] + n.up * up[i];
            const double from_sun = beam[i];  // loaded in any case, or the loop would not vectorise
            direct[i] = (c > 0.0 ? c : 0.0) * (up[i] > 0.0 ? from_sun : 0.0);
            sky[i] = isotropic[i] * view * sky_view;
        }
        return;
    }
    const double* circumsolar = light.circumsolar;
    if (light.horizon == nullptr) {
        for (std::size_t i = 0; i < count; ++i) {
            const double c = n.east * east[i] + n.north * north[i] + n.up * up[i];
            const double from_sun = beam[i] + circumsolar[i];
            direct[i] = (c > 0.0 ? c : 0.0) * (up[i] > 0.0 ? from_sun : 0.0);
            sky[i] = isotropic[i] * view * sky_view;
        }
        return;
    }
    const double* horizon = light.horizon;
    const double sin_tilt = std::sqrt(std::fmax(0.0, 1.0 - n.up * n.up));
    for (std::size_t i = 0; i < count; ++i) {
        const double c = n.east * east[i] + n.north * north[i] + n.up * up[i];
        const double facing = c > 0.0 ? c : 0.0;
        const double around_sun = facing * circumsolar[i];
        const double rest = isotropic[i] * view + horizon[i] * sin_tilt;
        // A negative horizon term first eats the rest of the sky, then the circumsolar light, never the beam: the sum
        // equals the model's, and shade on the beam cannot turn the total negative.
        const double short_of = rest < 0.0 ? rest : 0.0;
        const double kept = around_sun + short_of;
        const double from_sun = beam[i];
        direct[i] = facing * (up[i] > 0.0 ? from_sun : 0.0) + (kept > 0.0 ? kept : 0.0);
        sky[i] = (rest < 0.0 ? 0.0 : rest) * sky_view;
    }
}

// Order of summation fixed in eight lanes, so that the sum is the same whatever vector width the compiler picks.
double sum(const std::vector<double>& values) {
    std::array<double, 8> lanes{};
    std::size_t i = 0;
    for (; i + 8 <= values.size(); i += 8) {
        for (std::size_t k = 0; k < 8; ++k)
            lanes[k] += values[i + k];
    }
    double total = ((lanes[0] + lanes[1]) + (lanes[2] + lanes[3])) + ((lanes[4] + lanes[5]) + (lanes[6] + lanes[7]));
    for (; i < values.size(); ++i)
        total += values[i];
    return total;
}

}  // namespace

void plane_year(const PreparedYear& year, const PlaneInput& input, const std::vector<float>& beam_share,
                PlaneYear& plane) {
    if (!is_derived(year)) {
        PreparedYear complete = year;
        derive(complete);
        plane_year(complete, input, beam_share, plane);
        return;
    }
    const std::size_t count = year.sun_up.size();
    assert(beam_share.empty() || beam_share.size() == count);
    assert(input.albedo_of_hour.empty() || input.albedo_of_hour.size() == count);

    plane.beam_w_m2.resize(count);
    plane.sky_diffuse_w_m2.resize(count);
    plane.ground_w_m2.resize(count);
    plane.rear_w_m2.assign(count, 0.0);

    const HourLight light = hour_light(year, input.model);
    const Normal n = normal_of(input.tilt_deg, input.azimuth_deg);
    const double* global = year.global_w_m2.data();

    const double* albedo = input.albedo_of_hour.empty() ? nullptr : input.albedo_of_hour.data();
    // Light from the ground on a face that sees it with the share `view`, and from what stands on it.
    const auto ground = [&](double view, double things, double* __restrict out) {
        if (albedo == nullptr) {
            const double share = input.albedo * view + things;
            for (std::size_t i = 0; i < count; ++i)
                out[i] = share * global[i];
            return;
        }
        for (std::size_t i = 0; i < count; ++i)
            out[i] = (view * albedo[i] + things) * global[i];
    };

    if (input.rear_open > 0.0) {
        std::vector<double>& direct = plane.beam_w_m2;  // scratch until the front is worked out
        std::vector<double>& below = plane.ground_w_m2;
        front(year, light, {-n.east, -n.north, -n.up}, 1.0, direct.data(), plane.rear_w_m2.data());
        ground(0.5 * (1.0 + n.up), 0.0, below.data());
        for (std::size_t i = 0; i < count; ++i)
            plane.rear_w_m2[i] = input.rear_open * (plane.rear_w_m2[i] + direct[i] + below[i]);
    }

    front(year, light, n, input.sky_view, plane.beam_w_m2.data(), plane.sky_diffuse_w_m2.data());
    ground(0.5 * (1.0 - n.up) * input.ground_view, input.from_things, plane.ground_w_m2.data());
    const double under_open_sky = sum(plane.sky_diffuse_w_m2) + sum(plane.ground_w_m2);
    plane.unshaded_kwh_m2 = 1e-3 * (sum(plane.beam_w_m2) + under_open_sky);
    plane.total_kwh_m2 = plane.unshaded_kwh_m2;
    if (!beam_share.empty()) {
        for (std::size_t i = 0; i < count; ++i)
            plane.beam_w_m2[i] *= static_cast<double>(beam_share[i]);
        plane.total_kwh_m2 = 1e-3 * (sum(plane.beam_w_m2) + under_open_sky);
    }
}

PlaneYear plane_year(const PreparedYear& year, const PlaneInput& input, const std::vector<float>& beam_share) {
    PlaneYear plane;
    plane_year(year, input, beam_share, plane);
    return plane;
}

}  // namespace wg::sky
