#pragma once
// Global light parted into beam and diffuse for a series of hours: by each hour alone (Erbs), or with regard to the
// hours before and after, which tell a thin even cloud from broken ones (DIRINT).

#include <span>
#include <vector>

namespace wg::weather {

enum class SplitModel {
    erbs,    ///< the default: docs/handbook/sky.md says why
    dirint,  ///< with dynamics
};
/// As results name it: "Erbs 1982", "DIRINT 1992".
[[nodiscard]] const char* name_of(SplitModel model) noexcept;

/// Hours one after the other. Spans of one length; those that may be empty say so.
struct SplitInput {
    std::span<const double> global_w_m2;  ///< mean over the hour, on the horizontal, 0..1500
    std::span<const double> cos_zenith;   ///< of the sun as seen, at the moment that stands for the hour
    std::span<const double> extraterrestrial_normal_w_m2;  ///< 1300..1420
    std::span<const double> up_share;                      ///< share of the hour with the sun up, 0..1; empty: 1
    std::span<const double> dew_point_c;                   ///< DIRINT only; empty: unknown
    double pressure_pa = 101325.0;                         ///< DIRINT only
};

struct SplitSeries {
    SplitModel model = SplitModel::erbs;
    std::vector<double> beam_normal_w_m2;
    std::vector<double> diffuse_w_m2;
};

/// DIRINT: the beam of Maxwell (Solar Energy Research Institute, SERI/TR-215-3087, 1987) times a coefficient by
/// clearness, height of the sun, steadiness of the clearness and precipitable water (Perez, Ineichen, Maxwell, Seals
/// and Zelenka, ASHRAE Transactions 98(1), 1992). Beam is 0 with the sun within 3 deg of the horizon. An hour without a
/// daylight neighbour on one side takes the other one alone; one without any counts as of unknown steadiness.
///
/// Both models: beam from 0 to the extraterrestrial (Erbs: to clean_air_beam_w_m2), beam * cos_zenith not above global,
/// and beam * cos_zenith + diffuse equal to global in every hour (to rounding); with the sun down all light is diffuse.
[[nodiscard]] SplitSeries split_series(const SplitInput& input, SplitModel model = SplitModel::erbs);

}  // namespace wg::weather
