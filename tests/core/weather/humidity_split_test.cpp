#include <gtest/gtest.h>

#include <array>
#include <cmath>

#include "core/quantity/constants.h"
#include "core/weather/diffuse_split.h"
#include "core/weather/humidity.h"

namespace wg::weather {
namespace {

// Erbs, Klein and Duffie, Solar Energy 28, 1982, evaluated by hand.
TEST(Erbs, DiffuseShareEqualsThePublishedCurve) {
    constexpr double printed = 1e-3;
    const std::array<double, 9> share = {0.991, 0.982, 0.9486, 0.840, 0.6591, 0.4395, 0.244, 0.1653, 0.165};
    for (std::size_t k = 0; k < share.size(); ++k) {
        EXPECT_NEAR(diffuse_share_erbs(0.1 * static_cast<double>(k + 1)), share[k], printed);
    }
    EXPECT_EQ(diffuse_share_erbs(-0.1), 1.0);
    EXPECT_EQ(diffuse_share_erbs(1.4), 0.165);
}

// Public test data of pvlib for Erbs: 2019-01-01 global 50 at zenith 85, 2019-01-01 and 06-20 global 1000 at zenith 10;
// DNI, DHI, clearness. Its extraterrestrial (Spencer) differs by a few tenths of a per cent from any other: 0.5 W/m2.
TEST(Erbs, SplitEqualsPublishedValues) {
    constexpr double other_extraterrestrial = 0.5;
    const double january = 1366.1 * 1.03511;  // Spencer 1971 on 1 January
    const double june = 1366.1 * 0.96735;     // on 20 June
    const Split low = split_erbs(50.0, std::cos(radians(85.0)), january);
    EXPECT_NEAR(low.beam_normal_w_m2, 96.72, other_extraterrestrial);
    EXPECT_NEAR(low.diffuse_w_m2, 41.57, other_extraterrestrial);
    EXPECT_NEAR(low.clearness, 0.4057, 1e-3);
    const Split winter = split_erbs(1000.0, std::cos(radians(10.0)), january);
    EXPECT_NEAR(winter.beam_normal_w_m2, 794.2, other_extraterrestrial);
    EXPECT_NEAR(winter.diffuse_w_m2, 217.9, other_extraterrestrial);
    const Split summer = split_erbs(1000.0, std::cos(radians(10.0)), june);
    EXPECT_NEAR(summer.beam_normal_w_m2, 842.0, other_extraterrestrial);
    EXPECT_NEAR(summer.diffuse_w_m2, 170.8, other_extraterrestrial);
}

TEST(Erbs, PartsAlwaysMakeTheWholeAndBeamStaysPossible) {
    for (double elevation_deg = -3.0; elevation_deg < 90.0; elevation_deg += 0.25) {
        for (double global = 0.0; global < 1400.0; global += 50.0) {
            const double up = std::sin(radians(elevation_deg));
            const Split s = split_erbs(global, up, 1361.0);
            EXPECT_NEAR(s.diffuse_w_m2 + s.beam_normal_w_m2 * std::fmax(0.0, up), global, 1e-9);
            EXPECT_GE(s.beam_normal_w_m2, 0.0);
            EXPECT_LE(s.beam_normal_w_m2, 0.71 * 1361.0);  // 0.7^(m^0.678), m from 0.9995
            EXPECT_GE(s.diffuse_w_m2, 0.0);
            EXPECT_TRUE(up > 0.0 || s.beam_normal_w_m2 == 0.0);
        }
    }
}

// WMO Guide to Instruments, No. 8, annex 4.B, Magnus over water, evaluated by hand.
TEST(Humidity, SaturationPressureEqualsMagnus) {
    const std::array<std::array<double, 2>, 7> rows = {
        {{-10, 287.0}, {-5, 422.2}, {0, 611.2}, {10, 1226.0}, {20, 2332.6}, {30, 4233.7}, {40, 7367.5}}};
    for (const auto& r : rows)
        EXPECT_NEAR(saturation_pressure_pa(r[0]), r[1], 0.1);
}

TEST(Humidity, DewPointEqualsThePublishedPairs) {
    const std::array<std::array<double, 3>, 6> rows = {
        {{20, 0.5, 9.26}, {20, 0.7, 14.36}, {10, 0.8, 6.71}, {25, 0.6, 16.69}, {30, 0.4, 14.93}, {5, 0.9, 3.50}}};
    for (const auto& r : rows)
        EXPECT_NEAR(dew_point_c(r[0], r[1]), r[2], 0.02);
}

TEST(Humidity, DewPointAndRelativeHumidityAreInverse) {
    for (double air = -30.0; air <= 45.0; air += 5.0) {
        for (double humidity = 0.05; humidity <= 1.0; humidity += 0.05) {
            EXPECT_NEAR(relative_humidity(air, dew_point_c(air, humidity)), humidity, 1e-12);
            EXPECT_LE(dew_point_c(air, humidity), air + 1e-9);
        }
    }
}

}  // namespace
}  // namespace wg::weather
