#include "core/sun/ephemeris.h"

#include <cassert>
#include <cmath>
#include <cstddef>

#include "core/quantity/angle.h"
#include "core/quantity/constants.h"
#include "core/sun/ephemeris_detail.h"
#include "core/sun/geocentric.h"

namespace wg::sun {
namespace {

using detail::cell_s;
constexpr double flattening_term = 0.99664719;  // as in geocentric.cpp
constexpr double earth_radius_m = 6378140.0;
constexpr double parallax_at_1_au_rad = 8.794 / 3600.0 * (pi / 180.0);

using Six = std::array<double, 6>;

// Polynomial through the values at -2, -1, 0, 1, 2, 3: Newton's divided differences, multiplied out.
Six through(const Six& values) {
    constexpr Six nodes = {-2.0, -1.0, 0.0, 1.0, 2.0, 3.0};
    Six newton = values;
    for (std::size_t order = 1; order < 6; ++order) {
        for (std::size_t i = 5; i >= order; --i)
            newton[i] = (newton[i] - newton[i - 1]) / static_cast<double>(order);
    }
    Six power{};
    for (std::size_t k = 6; k-- > 0;) {  // power := power * (t - nodes[k]) + newton[k]
        for (std::size_t i = 5; i > 0; --i)
            power[i] = power[i - 1] - nodes[k] * power[i];
        power[0] = newton[k] - nodes[k] * power[0];
    }
    return power;
}

double at(const Six& c, double t) noexcept {
    return detail::horner_5(c.data(), t);
}

}  // namespace

Place::Place(const Observer& observer) noexcept {
    const double latitude = radians(observer.latitude_deg);
    const double u = std::atan(flattening_term * std::tan(latitude));
    sin_latitude_ = std::sin(latitude);
    cos_latitude_ = std::cos(latitude);
    longitude_turns_ = observer.longitude_deg / 360.0;
    const double sin_parallax = std::sin(parallax_at_1_au_rad);
    parallax_x_ = sin_parallax * (std::cos(u) + observer.altitude_m / earth_radius_m * cos_latitude_);
    parallax_y_ = sin_parallax * (flattening_term * std::sin(u) + observer.altitude_m / earth_radius_m * sin_latitude_);
    air_ = (observer.pressure_pa / 101000.0) * (283.0 / (273.0 + observer.temperature_c));
}

Ephemeris::Ephemeris(Instant from, Instant to, double delta_t_s) {
    assert(from <= to);
    start_unix_s_ = static_cast<double>(from.unix_s);
    const double span_s = static_cast<double>(to.unix_s - from.unix_s);
    const auto count = static_cast<std::size_t>(std::floor(span_s / cell_s)) + 1;
    std::vector<double> offset_turns, sin_declination, cos_declination, distance_au;
    double previous_deg = 0.0;
    for (std::size_t i = 0; i < count + 5; ++i) {  // two nodes before the first cell, three after its start
        const double since_start_s = (static_cast<double>(i) - 2.0) * cell_s;
        const Geocentric g = geocentric(days_since_j2000(from, since_start_s), delta_t_s);
        // Nodes are whole days apart, so the even turn of 360 deg a day drops out at each of them.
        const double raw_deg = g.apparent_sidereal_deg - g.right_ascension_deg;
        previous_deg = i == 0 ? raw_deg : previous_deg + wrap_180(raw_deg - previous_deg);
        offset_turns.push_back(previous_deg / 360.0);
        sin_declination.push_back(std::sin(radians(g.declination_deg)));
        cos_declination.push_back(std::cos(radians(g.declination_deg)));
        distance_au.push_back(g.distance_au);
    }
    const auto six = [](const std::vector<double>& v, std::size_t i) {
        return through({v[i], v[i + 1], v[i + 2], v[i + 3], v[i + 4], v[i + 5]});
    };
    cells_.reserve(count);
    for (std::size_t i = 0; i < count; ++i) {
        cells_.push_back({six(offset_turns, i), six(sin_declination, i), six(cos_declination, i), six(distance_au, i)});
    }
}

const Ephemeris::Cell& Ephemeris::cell(double unix_s, double& t) const noexcept {
    const double position = (unix_s - start_unix_s_) * (1.0 / cell_s);
    const double index = std::fmin(std::fmax(std::floor(position), 0.0), static_cast<double>(cells_.size() - 1));
    t = position - index;
    return cells_[static_cast<std::size_t>(index)];
}

Direction Ephemeris::direction(double unix_s, const Place& place) const noexcept {
    double t = 0.0;
    const Cell& c = cell(unix_s, t);
    const double days = (unix_s - start_unix_s_) * (1.0 / 86400.0);
    const detail::SinCos hour_angle =
        detail::sin_cos_of_turns(at(c.hour_angle_offset_turns, t) + (days - std::floor(days)) + place.longitude_turns_);
    const double cos_declination = at(c.cos_declination, t);
    Direction d;
    d.distance_au = at(c.distance_au, t);

    // Parallax as a shift of the observer from the earth's centre, in axes towards meridian, west and pole; equal to
    // equations 36-40 of the report.
    const double inverse_distance = 1.0 / d.distance_au;
    const double meridian = cos_declination * hour_angle.cos - place.parallax_x_ * inverse_distance;
    const double west = cos_declination * hour_angle.sin;
    const double pole = at(c.sin_declination, t) - place.parallax_y_ * inverse_distance;
    const double inverse_length = 1.0 / std::sqrt(meridian * meridian + west * west + pole * pole);
    d.east = -west * inverse_length;
    d.north = (pole * place.cos_latitude_ - meridian * place.sin_latitude_) * inverse_length;
    d.up = (pole * place.sin_latitude_ + meridian * place.cos_latitude_) * inverse_length;
    if (d.up > detail::sin_upper_limb && place.air_ > 0.0) {
        const detail::Lifted seen = detail::refracted(std::sqrt(d.east * d.east + d.north * d.north), d.up, place.air_);
        d.up = seen.up;
        d.east *= seen.stretch;
        d.north *= seen.stretch;
    }
    return d;
}

double Ephemeris::declination_deg(double unix_s) const noexcept {
    double t = 0.0;
    const Cell& c = cell(unix_s, t);
    return degrees(std::asin(at(c.sin_declination, t)));
}

double Ephemeris::distance_au(double unix_s) const noexcept {
    double t = 0.0;
    const Cell& c = cell(unix_s, t);
    return at(c.distance_au, t);
}

double Ephemeris::greenwich_hour_angle_deg(double unix_s) const noexcept {
    double t = 0.0;
    const Cell& c = cell(unix_s, t);
    return wrap_360(360.0 * (at(c.hour_angle_offset_turns, t) + (unix_s - start_unix_s_) / 86400.0));
}

}  // namespace wg::sun
