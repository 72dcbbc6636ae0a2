#pragma once
// Arithmetic on points taken as vectors. Free functions, so that survey data stays plain values.

#include <cmath>

#include "core/quantity/geometry.h"

namespace wg::site {

[[nodiscard]] constexpr Point2 operator+(Point2 a, Point2 b) noexcept {
    return {a.x_m + b.x_m, a.y_m + b.y_m};
}
[[nodiscard]] constexpr Point2 operator-(Point2 a, Point2 b) noexcept {
    return {a.x_m - b.x_m, a.y_m - b.y_m};
}
[[nodiscard]] constexpr Point2 operator*(Point2 a, double k) noexcept {
    return {a.x_m * k, a.y_m * k};
}
[[nodiscard]] constexpr double dot(Point2 a, Point2 b) noexcept {
    return a.x_m * b.x_m + a.y_m * b.y_m;
}
[[nodiscard]] constexpr double cross(Point2 a, Point2 b) noexcept {
    return a.x_m * b.y_m - a.y_m * b.x_m;
}
[[nodiscard]] inline double norm(Point2 a) noexcept {
    return std::sqrt(dot(a, a));
}

[[nodiscard]] constexpr Point3 operator+(Point3 a, Point3 b) noexcept {
    return {a.x_m + b.x_m, a.y_m + b.y_m, a.z_m + b.z_m};
}
[[nodiscard]] constexpr Point3 operator-(Point3 a, Point3 b) noexcept {
    return {a.x_m - b.x_m, a.y_m - b.y_m, a.z_m - b.z_m};
}
[[nodiscard]] constexpr Point3 operator*(Point3 a, double k) noexcept {
    return {a.x_m * k, a.y_m * k, a.z_m * k};
}
[[nodiscard]] constexpr double dot(Point3 a, Point3 b) noexcept {
    return a.x_m * b.x_m + a.y_m * b.y_m + a.z_m * b.z_m;
}
[[nodiscard]] constexpr Point3 cross(Point3 a, Point3 b) noexcept {
    return {a.y_m * b.z_m - a.z_m * b.y_m, a.z_m * b.x_m - a.x_m * b.z_m, a.x_m * b.y_m - a.y_m * b.x_m};
}
[[nodiscard]] inline double norm(Point3 a) noexcept {
    return std::sqrt(dot(a, a));
}

/// `p` turned counter-clockwise about the origin.
[[nodiscard]] inline Point2 turned(Point2 p, double cosine, double sine) noexcept {
    return {p.x_m * cosine - p.y_m * sine, p.x_m * sine + p.y_m * cosine};
}

}  // namespace wg::site
