#pragma once
// Bearings and angular distances. Azimuths run clockwise from true north, 0 <= azimuth < 360.

namespace wg {

/// The same bearing in [0, 360). Finite input only.
[[nodiscard]] double wrap_360(double angle_deg) noexcept;

/// The same angle in (-180, 180].
[[nodiscard]] double wrap_180(double angle_deg) noexcept;

/// Great-circle angle between two directions given by zenith and azimuth, in degrees; stable for tiny angles.
[[nodiscard]] double angular_separation_deg(double zenith_a_deg, double azimuth_a_deg, double zenith_b_deg,
                                            double azimuth_b_deg) noexcept;

/// Compass point of a bearing: "N", "NNE", ... sixteen points.
[[nodiscard]] const char* compass_point(double azimuth_deg) noexcept;

}  // namespace wg
