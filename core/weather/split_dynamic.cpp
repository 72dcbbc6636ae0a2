#include "core/weather/split_dynamic.h"

#include <array>
#include <cassert>
#include <cmath>
#include <cstddef>

#include "core/quantity/constants.h"
#include "core/weather/diffuse_split.h"
#include "core/weather/dirint_table.h"

namespace wg::weather {
namespace {

// Maxwell's floor for the cosine of zenith in the clearness index: the sun at 3.7 deg.
constexpr double clearness_cos_floor = 0.065;
constexpr double lowest_sun_cos = 0.052335956242943835;  // cos 87 deg: no beam below
constexpr double largest_air_mass = 12.0;                // to which Maxwell's beam was fitted
constexpr double unknown = -1.0;

// Kasten 1966, with which the model was made; differs from Kasten and Young 1989 by under 1 % above 3 deg.
double air_mass_kasten_1966(double cos_zenith, double zenith_deg) noexcept {
    return 1.0 / (cos_zenith + 0.15 * std::pow(93.885 - zenith_deg, -1.253));
}

// Beam over extraterrestrial by clearness index and absolute air mass (Maxwell 1987).
double maxwell_beam_share(double kt, double air_mass) noexcept {
    double a = 0.0;
    double b = 0.0;
    double c = 0.0;
    if (kt <= 0.6) {
        a = 0.512 + kt * (-1.56 + kt * (2.286 - 2.222 * kt));
        b = 0.37 + 0.962 * kt;
        c = -0.28 + kt * (0.932 - 2.048 * kt);
    } else {
        a = -5.743 + kt * (21.77 + kt * (-27.49 + 11.56 * kt));
        b = 41.4 + kt * (-118.5 + kt * (66.05 + 31.9 * kt));
        c = -47.01 + kt * (184.2 + kt * (-222.0 + 73.81 * kt));
    }
    const double m = air_mass;
    const double clear = 0.866 + m * (-0.122 + m * (0.0121 + m * (-0.000653 + m * 1.4e-5)));
    return clear - (a + b * std::exp(c * m));
}

template <std::size_t N>
std::size_t bin_of(double value, const std::array<double, N>& edges) noexcept {
    std::size_t bin = 0;
    while (bin < N && value >= edges[bin])
        ++bin;
    return bin;
}

double coefficient(double clearness, double zenith_deg, double change, double water_cm) noexcept {
    constexpr std::array<double, 5> clearness_edges = {0.24, 0.40, 0.56, 0.70, 0.80};
    constexpr std::array<double, 5> zenith_edges_deg = {25.0, 40.0, 55.0, 70.0, 80.0};
    constexpr std::array<double, 5> change_edges = {0.015, 0.035, 0.07, 0.15, 0.3};
    constexpr std::array<double, 3> water_edges_cm = {1.0, 2.0, 3.0};
    const std::size_t steadiness = change == unknown ? 6 : bin_of(change, change_edges);
    const std::size_t water = water_cm == unknown ? 4 : bin_of(water_cm, water_edges_cm);
    return detail::dirint_table[bin_of(clearness, clearness_edges)][bin_of(zenith_deg, zenith_edges_deg)][steadiness]
                               [water];
}

struct Hour {
    bool light = false;  ///< the sun is up in it
    double zenith_deg = 90.0, air_mass = largest_air_mass;
    double clearness = 0.0;       ///< kt, 0..1
    double clearness_even = 0.0;  ///< kt', freed of its dependence on air mass
};

Hour hour_of(const SplitInput& in, std::size_t i, double share) noexcept {
    Hour h;
    const double cos_zenith = in.cos_zenith[i];
    if (!(cos_zenith > 0.0) || !(share > 0.0)) return h;
    h.light = true;
    h.zenith_deg = degrees(std::acos(std::fmin(1.0, cos_zenith)));
    const double air_mass = air_mass_kasten_1966(cos_zenith, h.zenith_deg) * in.pressure_pa / standard_pressure_pa;
    h.air_mass = std::fmin(largest_air_mass, air_mass);
    const double above = in.extraterrestrial_normal_w_m2[i] * std::fmax(cos_zenith, clearness_cos_floor) * share;
    h.clearness = std::fmin(1.0, std::fmax(0.0, in.global_w_m2[i]) / above);
    h.clearness_even =
        std::fmin(1.0, h.clearness / (1.031 * std::exp(-1.4 / (0.9 + 9.4 / h.air_mass)) + 0.1));  // their eq. 1
    return h;
}

// Mean change of kt' to the neighbours with light (their eq. 2 and 3).
double change_of(const std::vector<Hour>& hours, std::size_t i) noexcept {
    double sum = 0.0;
    int count = 0;
    if (i > 0 && hours[i - 1].light) {
        sum += std::fabs(hours[i].clearness_even - hours[i - 1].clearness_even);
        ++count;
    }
    if (i + 1 < hours.size() && hours[i + 1].light) {
        sum += std::fabs(hours[i].clearness_even - hours[i + 1].clearness_even);
        ++count;
    }
    return count == 0 ? unknown : sum / count;
}

}  // namespace

const char* name_of(SplitModel model) noexcept {
    return model == SplitModel::erbs ? "Erbs 1982" : "DIRINT 1992";
}

SplitSeries split_series(const SplitInput& in, SplitModel model) {
    const std::size_t count = in.global_w_m2.size();
    assert(in.cos_zenith.size() == count && in.extraterrestrial_normal_w_m2.size() == count);
    assert(in.up_share.empty() || in.up_share.size() == count);
    assert(in.dew_point_c.empty() || in.dew_point_c.size() == count);
    const auto share_of = [&in](std::size_t i) { return in.up_share.empty() ? 1.0 : in.up_share[i]; };

    SplitSeries split;
    split.model = model;
    split.beam_normal_w_m2.assign(count, 0.0);
    split.diffuse_w_m2.assign(count, 0.0);
    std::vector<Hour> hours;
    if (model == SplitModel::dirint) {
        hours.reserve(count);
        for (std::size_t i = 0; i < count; ++i)
            hours.push_back(hour_of(in, i, share_of(i)));
    }
    for (std::size_t i = 0; i < count; ++i) {
        const double global = std::fmax(0.0, in.global_w_m2[i]);
        if (model == SplitModel::erbs) {
            const Split hour = split_erbs(global, in.cos_zenith[i], in.extraterrestrial_normal_w_m2[i], share_of(i));
            split.beam_normal_w_m2[i] = hour.beam_normal_w_m2;
            split.diffuse_w_m2[i] = hour.diffuse_w_m2;
            continue;
        }
        split.diffuse_w_m2[i] = global;
        const Hour& h = hours[i];
        if (!h.light || in.cos_zenith[i] < lowest_sun_cos || !(global > 0.0)) continue;
        const double water_cm = in.dew_point_c.empty() ? unknown : std::exp(0.07 * in.dew_point_c[i] - 0.075);
        const double share = std::fmax(0.0, maxwell_beam_share(h.clearness, h.air_mass)) *
                             coefficient(h.clearness_even, h.zenith_deg, change_of(hours, i), water_cm);
        const double beam = std::fmin(share, 1.0) * in.extraterrestrial_normal_w_m2[i] * share_of(i);
        split.beam_normal_w_m2[i] = std::fmin(beam, global / in.cos_zenith[i]);
        split.diffuse_w_m2[i] = std::fmax(0.0, global - split.beam_normal_w_m2[i] * in.cos_zenith[i]);
    }
    return split;
}

}  // namespace wg::weather
