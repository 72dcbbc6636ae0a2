// Positions at even steps. Within a block of steps the even turn of the earth is a rotation by tabled angles from the
// block's start, and only the slow remainder (the equation of time) is left for a short series: no sine or cosine is
// worked out for a single step. Plain loops over plain arrays without branches, which vectorise on any machine.

#include <algorithm>
#include <array>
#include <cassert>
#include <cmath>
#include <cstddef>

#include "core/sun/ephemeris.h"
#include "core/sun/ephemeris_detail.h"

namespace wg::sun {
namespace {

constexpr std::size_t longest_block = 256;
// The remainder changes by up to 30 s of time a day, 0.0022 rad: under 0.007 rad in three days, where the series below
// end with errors under 1e-14.
constexpr double longest_block_s = 3.0 * 86400.0;

struct Turns {
    std::array<double, longest_block> step, sin, cos;  ///< number of the step, and of its even turn
};

// One block: polynomials, and where it starts.
struct Block {
    const double* offset_turns;
    const double* sin_declination;
    const double* cos_declination;
    double first_t, t_per_step;  ///< time in the cell, 0..1
    double first_offset_turns;
    detail::SinCos first;  ///< hour angle of step 0
    double inverse_distance;
};

struct Ground {
    double sin_latitude, cos_latitude, parallax_x, parallax_y;
};

void towards(const Block& b, const Ground& at, const Turns& turns, std::size_t count, double* __restrict east,
             double* __restrict north, double* __restrict up) {
    std::array<double, 6> o{};
    std::array<double, 6> sd{};
    std::array<double, 6> cd{};
    std::copy_n(b.offset_turns, 6, o.begin());
    std::copy_n(b.sin_declination, 6, sd.begin());
    std::copy_n(b.cos_declination, 6, cd.begin());
    const double x = at.parallax_x * b.inverse_distance;
    const double y = at.parallax_y * b.inverse_distance;
    for (std::size_t i = 0; i < count; ++i) {
        const double t = b.first_t + b.t_per_step * turns.step[i];
        const double rest = 2.0 * pi * (detail::horner_5(o.data(), t) - b.first_offset_turns);
        const double square = rest * rest;
        const double sin_rest = rest * (1.0 + square * (-1.0 / 6.0 + square * (1.0 / 120.0)));
        const double cos_rest = 1.0 + square * (-0.5 + square * (1.0 / 24.0));
        const double even_sin = b.first.sin * turns.cos[i] + b.first.cos * turns.sin[i];
        const double even_cos = b.first.cos * turns.cos[i] - b.first.sin * turns.sin[i];
        const double cos_declination = detail::horner_5(cd.data(), t);
        const double meridian = cos_declination * (even_cos * cos_rest - even_sin * sin_rest) - x;
        const double west = cos_declination * (even_sin * cos_rest + even_cos * sin_rest);
        const double pole = detail::horner_5(sd.data(), t) - y;
        // Parallax and the joined polynomials leave the length within 1e-4 of 1: its inverse root by series to 1e-16.
        const double excess = meridian * meridian + west * west + pole * pole - 1.0;
        const double scale = 1.0 + excess * (-0.5 + excess * (0.375 - excess * 0.3125));
        east[i] = -west * scale;
        north[i] = (pole * at.cos_latitude - meridian * at.sin_latitude) * scale;
        up[i] = (pole * at.sin_latitude + meridian * at.cos_latitude) * scale;
    }
}

// Night is left out a piece at a time: half of a year.
constexpr std::size_t piece = 32;

void refract(double air, std::size_t count, double* __restrict east, double* __restrict north, double* __restrict up) {
    for (std::size_t first = 0; first < count; first += piece) {
        const std::size_t end = std::min(first + piece, count);
        if (std::none_of(up + first, up + end, [](double u) { return u > detail::sin_upper_limb; })) continue;
        for (std::size_t i = first; i < end; ++i) {
            const double level = std::sqrt(east[i] * east[i] + north[i] * north[i]);
            const bool seen = up[i] > detail::sin_upper_limb;
            const detail::Lifted lifted = detail::refracted(level, seen ? up[i] : detail::sin_upper_limb, air);
            const double stretch = seen ? lifted.stretch : 1.0;
            up[i] = seen ? lifted.up : up[i];
            east[i] *= stretch;
            north[i] *= stretch;
        }
    }
}

}  // namespace

void Ephemeris::directions(double first_unix_s, double step_s, const Place& place, std::span<double> east,
                           std::span<double> north, std::span<double> up) const noexcept {
    const std::size_t count = up.size();
    assert(east.size() == count && north.size() == count && step_s > 0.0);
    const double per_block = std::fmin(static_cast<double>(longest_block), std::floor(longest_block_s / step_s));
    const std::size_t block_size = per_block < 1.0 ? 1 : static_cast<std::size_t>(per_block);
    const double step_turns = step_s / 86400.0;
    Turns turns;
    for (std::size_t i = 0; i < block_size; ++i) {
        turns.step[i] = static_cast<double>(i);
        const double turned = step_turns * turns.step[i];
        const detail::SinCos sc = detail::sin_cos_of_turns(turned - std::floor(turned));
        turns.sin[i] = sc.sin;
        turns.cos[i] = sc.cos;
    }
    const Ground ground{place.sin_latitude_, place.cos_latitude_, place.parallax_x_, place.parallax_y_};

    for (std::size_t first = 0; first < count;) {
        const double from_s = first_unix_s + step_s * static_cast<double>(first);
        Block b{};
        const Cell& c = cell(from_s, b.first_t);
        b.t_per_step = step_s / detail::cell_s;
        // To the end of the cell; the last cell goes on for what lies behind it, as single positions do.
        std::size_t size = std::min(block_size, count - first);
        if (&c != &cells_.back() && b.first_t >= 0.0) {
            const double inside = std::ceil((1.0 - b.first_t) / b.t_per_step);
            size = std::min(size, inside < 1.0 ? std::size_t{1} : static_cast<std::size_t>(inside));
        }
        b.offset_turns = c.hour_angle_offset_turns.data();
        b.sin_declination = c.sin_declination.data();
        b.cos_declination = c.cos_declination.data();
        b.first_offset_turns = detail::horner_5(b.offset_turns, b.first_t);
        const double days = (from_s - start_unix_s_) * (1.0 / 86400.0);
        b.first = detail::sin_cos_of_turns(b.first_offset_turns + (days - std::floor(days)) + place.longitude_turns_);
        // Once a block: distance changes by under 1e-3 in three days, of a parallax of 4e-5 rad.
        const double middle_t = b.first_t + 0.5 * b.t_per_step * static_cast<double>(size);
        b.inverse_distance = 1.0 / detail::horner_5(c.distance_au.data(), middle_t);
        towards(b, ground, turns, size, &east[first], &north[first], &up[first]);
        if (place.air_ > 0.0) refract(place.air_, size, &east[first], &north[first], &up[first]);
        first += size;
    }
}

}  // namespace wg::sun
