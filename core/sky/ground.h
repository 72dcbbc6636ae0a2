#pragma once
// What the ground reflects, with and without snow.

#include <array>
#include <vector>

#include "core/quantity/result.h"

namespace wg::sky {

/// Reflectance for sunlight of ground without snow and under snow: Liu and Jordan, Solar Energy 7, 1963, 0.2 and 0.7
/// (from 25 mm of snow on).
inline constexpr double bare_ground_albedo = 0.2;
inline constexpr double snow_albedo = 0.7;
inline constexpr double full_snow_cover_m = 0.025;

struct GroundKind {
    const char* name;
    double albedo;
};
/// Usual grounds, for a list to choose from: rounded from the tables of Oke, Boundary Layer Climates, 1987, and Liu and
/// Jordan 1963 (from memory).
inline constexpr std::array<GroundKind, 9> ground_kinds = {{{"dark soil, wet", 0.08},
                                                            {"asphalt", 0.10},
                                                            {"dry soil, gravel", 0.20},
                                                            {"grass", 0.22},
                                                            {"concrete", 0.25},
                                                            {"light sand, light paving", 0.35},
                                                            {"old snow", 0.55},
                                                            {"snow some days old", 0.70},
                                                            {"fresh snow", 0.85}}};

/// Reflectance in every hour of the year from the share of days with snow on the ground in each month, 0..1 (climate
/// tables give days with snow cover): the mean of both grounds by that share, the same for the whole month. Refuses
/// figures outside 0..1. For PlaneInput::albedo_of_hour.
[[nodiscard]] Result<std::vector<double>> albedo_with_snow_days(double bare_albedo, double albedo_under_snow,
                                                                const std::array<double, 12>& snow_day_share);

/// The same from the hourly depth of snow, m, 0..20: full cover from 25 mm on, a patchy one in proportion below (common
/// practice, no published source). A value per entry of `snow_depth_m`.
[[nodiscard]] Result<std::vector<double>> albedo_with_snow_depth(double bare_albedo, double albedo_under_snow,
                                                                 const std::vector<double>& snow_depth_m);

/// The one reflectance that reflects as much in the year as the hourly ones do: their mean weighted with the global
/// light. Exact for sums over the year (orientation.h), not for single hours. Series of one length. Without light the
/// plain mean.
[[nodiscard]] double mean_albedo(const std::vector<double>& albedo_of_hour, const std::vector<double>& global_w_m2);

}  // namespace wg::sky
