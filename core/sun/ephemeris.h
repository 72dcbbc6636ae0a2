#pragma once
// Many sun positions for the price of a few: the full series at nodes four days apart, polynomials of degree five
// through six of them for the slow quantities (declination, Greenwich hour angle less the even turn of the earth,
// distance), and the hour angle, parallax and refraction of every single moment worked out for itself.

#include <array>
#include <cstddef>
#include <span>
#include <vector>

#include "core/quantity/time.h"
#include "core/sun/position.h"

namespace wg::sun {

/// Direction to the centre of the sun's disc as seen (with refraction): east, north, up; length 1.
struct Direction {
    double east = 0.0;
    double north = 0.0;
    double up = 1.0;
    double distance_au = 1.0;
};

/// Fixed facts of a place, worked out once for many positions.
class Place {
   public:
    explicit Place(const Observer& observer) noexcept;

   private:
    friend class Ephemeris;
    double sin_latitude_, cos_latitude_;
    double longitude_turns_;
    double parallax_x_, parallax_y_;  ///< distance from the earth's axis and equator plane, times sin(8.794")
    double air_;                      ///< pressure and temperature factor of refraction
};

/// Within 1e-4 deg of the full series anywhere between `from` and `to` (measured: about 1e-5 deg).
class Ephemeris {
   public:
    /// Covers `from`..`to`. `from` must not be after `to`; one delta-T for the whole span.
    Ephemeris(Instant from, Instant to, double delta_t_s);

    /// `unix_s` inside the span; outside it the nearest polynomial is extended and accuracy is lost.
    [[nodiscard]] Direction direction(double unix_s, const Place& place) const noexcept;
    /// The same for the moments first_unix_s + i * step_s, i from 0, as structure of arrays and several times faster:
    /// within 1e-6 deg of `direction`. The three spans have one length, which says how many; `step_s` over 0. Meant for
    /// steps of up to some hours; longer ones cost as much as single calls.
    void directions(double first_unix_s, double step_s, const Place& place, std::span<double> east,
                    std::span<double> north, std::span<double> up) const noexcept;
    [[nodiscard]] double declination_deg(double unix_s) const noexcept;
    [[nodiscard]] double distance_au(double unix_s) const noexcept;
    /// Greenwich apparent hour angle, degrees 0..360, westward.
    [[nodiscard]] double greenwich_hour_angle_deg(double unix_s) const noexcept;

   private:
    /// Polynomials in the time since the cell's start, 0..1: coefficients from the constant up.
    struct Cell {
        std::array<double, 6> hour_angle_offset_turns;  ///< hour angle less one turn a day since the start
        std::array<double, 6> sin_declination, cos_declination;
        std::array<double, 6> distance_au;
    };
    [[nodiscard]] const Cell& cell(double unix_s, double& t) const noexcept;

    double start_unix_s_ = 0.0;
    std::vector<Cell> cells_;
};

}  // namespace wg::sun
