#include "core/sky/ground.h"

#include <gtest/gtest.h>

#include <cmath>

#include "core/sky/orientation.h"
#include "core/sky/sky_temperature.h"
#include "tests/core/sky/year_fixture.h"

namespace wg::sky {
namespace {

constexpr std::array<double, 12> snowy = {0.9, 0.8, 0.5, 0.1, 0, 0, 0, 0, 0, 0, 0.2, 0.7};

TEST(SnowDays, MixTheGroundsByTheMonthsShare) {
    const std::vector<double> albedo = albedo_with_snow_days(0.2, 0.7, snowy).value();
    ASSERT_EQ(albedo.size(), 8760u);
    EXPECT_NEAR(albedo[0], 0.2 + 0.5 * 0.9, 1e-12);
    EXPECT_NEAR(albedo[24 * 31], 0.2 + 0.5 * 0.8, 1e-12);  // 1 February 00:00
    EXPECT_NEAR(albedo[24 * 31 - 1], 0.2 + 0.5 * 0.9, 1e-12);
    EXPECT_EQ(albedo[24 * 180], 0.2);
    EXPECT_NEAR(albedo[8759], 0.2 + 0.5 * 0.7, 1e-12);
}

TEST(SnowDays, RefuseWhatCannotBeAndSayWhich) {
    std::array<double, 12> days = snowy;
    days[2] = 15.0;  // days in place of a share
    const auto wrong = albedo_with_snow_days(0.2, 1.7, days);
    ASSERT_FALSE(wrong);
    ASSERT_EQ(wrong.problems().size(), 2u);
    EXPECT_NE(wrong.problems()[1].text().find("month 3"), std::string::npos);
    EXPECT_FALSE(albedo_with_snow_days(std::nan(""), 0.7, snowy));
}

TEST(SnowDepth, CoversFullyFrom25MillimetresOn) {
    const std::vector<double> albedo = albedo_with_snow_depth(0.2, 0.7, {0.0, 0.0125, 0.025, 0.4}).value();
    EXPECT_EQ(albedo[0], 0.2);
    EXPECT_NEAR(albedo[1], 0.45, 1e-12);
    EXPECT_NEAR(albedo[2], 0.7, 1e-12);
    EXPECT_NEAR(albedo[3], 0.7, 1e-12);
    EXPECT_FALSE(albedo_with_snow_depth(0.2, 0.7, {0.1, -0.1}));
    EXPECT_FALSE(albedo_with_snow_depth(0.2, 0.7, {25.0}));  // centimetres
}

TEST(AlbedoOfHour, EqualsTheConstantWhereItIsOneAndAddsToGroundLightOnly) {
    const PreparedYear& year = harrowmere_year();
    PlaneInput input;
    input.tilt_deg = 60.0;
    input.rear_open = 1.0;
    input.albedo = 0.37;
    const PlaneYear constant = plane_year(year, input, {});
    PlaneInput hourly = input;
    hourly.albedo = 0.0;
    hourly.albedo_of_hour.assign(8760, 0.37);
    const PlaneYear same = plane_year(year, hourly, {});
    EXPECT_NEAR(same.total_kwh_m2, constant.total_kwh_m2, 1e-9);
    hourly.albedo_of_hour = albedo_with_snow_days(0.2, 0.7, snowy).value();
    const PlaneYear snow = plane_year(year, hourly, {});
    for (std::size_t i = 0; i < 8760; ++i) {
        ASSERT_NEAR(same.ground_w_m2[i], constant.ground_w_m2[i], 1e-9);
        ASSERT_NEAR(same.rear_w_m2[i], constant.rear_w_m2[i], 1e-9);
        ASSERT_EQ(snow.beam_w_m2[i], constant.beam_w_m2[i]);
        ASSERT_EQ(snow.sky_diffuse_w_m2[i], constant.sky_diffuse_w_m2[i]);
        ASSERT_NEAR(snow.ground_w_m2[i], hourly.albedo_of_hour[i] * 0.25 * year.global_w_m2[i], 1e-9);
    }
}

TEST(MeanAlbedo, GivesTheSameYearOnEveryOrientation) {
    const PreparedYear& year = harrowmere_year();
    PlaneInput input;
    input.albedo_of_hour = albedo_with_snow_days(0.2, 0.7, snowy).value();
    const double mean = mean_albedo(input.albedo_of_hour, year.global_w_m2);
    EXPECT_GT(mean, 0.2);
    EXPECT_LT(mean, 0.45);
    const DaylightYear day = daylight(year, input.model);
    for (const double tilt : {0.0, 35.0, 90.0}) {
        input.tilt_deg = tilt;
        EXPECT_NEAR(orientation_kwh_m2(day, tilt, input.azimuth_deg, mean), plane_year(year, input, {}).unshaded_kwh_m2,
                    1e-9 * 1000.0);
    }
}

// Stefan and Boltzmann by hand: plate and ground at 283.15 K, sky at 263.15 K. 5.670374e-8 * 283.15^4 = 364.49,
// * 263.15^4 = 271.91 W/m2.
TEST(NetLongWave, EqualsTheSumByHand) {
    EXPECT_NEAR(net_long_wave_w_m2(283.15, 0.9, 0.0, 263.15, 283.15), 0.9 * (271.91 - 364.49), 0.02);
    EXPECT_NEAR(net_long_wave_w_m2(283.15, 0.9, 90.0, 263.15, 283.15), 0.5 * 0.9 * (271.91 - 364.49), 0.02);
    EXPECT_NEAR(net_long_wave_w_m2(283.15, 0.9, 180.0, 263.15, 283.15), 0.0, 1e-9);  // sees the ground alone
    EXPECT_NEAR(net_long_wave_w_m2(283.15, 0.9, 0.0, 263.15, 283.15, 0.5), 0.45 * (271.91 - 364.49), 0.02);
    EXPECT_GT(net_long_wave_w_m2(250.0, 0.9, 0.0, 263.15, 283.15), 0.0);  // a plate colder than the sky gains
}

}  // namespace
}  // namespace wg::sky
