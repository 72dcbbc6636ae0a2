#pragma once
// A weather year: 8,760 hours in local standard time, row i covering [i, i + 1) hours since 1 January 00:00.
// 29 February is left out. Readers bring every file to this form, whatever its stamps mean.

#include <array>
#include <string>
#include <vector>

namespace wg::weather {

inline constexpr int hours_in_year = 8760;

struct Year {
    std::string source;  ///< e.g. "TMY3 723170 Greensboro" or "invented climate of ..."
    std::string format;  ///< "EPW", "TMY3", "PVGIS TMY", "synthesis"
    bool invented = false;
    double latitude_deg = 0.0;
    double longitude_deg = 0.0;
    double altitude_m = 0.0;
    double utc_offset_h = 0.0;  ///< of the rows' local standard time
    /// Minutes after the start of the row's hour at which the sun stands for the hour's mean light: 30 for hourly
    /// means; some sources give instantaneous values at another minute.
    double sun_minute = 30.0;
    // Hourly series, each of hours_in_year values; means over the hour unless stated.
    std::vector<double> global_w_m2;         ///< on the horizontal, 0..1500
    std::vector<double> beam_normal_w_m2;    ///< 0..1400
    std::vector<double> diffuse_w_m2;        ///< on the horizontal, 0..1000
    std::vector<double> air_c;               ///< -70..60
    std::vector<double> dew_point_c;         ///< not above air_c
    std::vector<double> wind_m_s;            ///< at 10 m, 0..60
    std::vector<double> pressure_pa;         ///< station pressure
    std::vector<double> sky_long_wave_w_m2;  ///< on the horizontal; empty when the source has none
    std::vector<double> sky_cover;           ///< share of the sky under cloud, 0..1; empty when the source has none
    std::vector<std::string> remarks;        ///< what the reader changed or assumed, e.g. filled gaps
};

}  // namespace wg::weather
