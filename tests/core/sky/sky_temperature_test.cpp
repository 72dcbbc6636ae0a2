#include "core/sky/sky_temperature.h"

#include <gtest/gtest.h>

#include <array>
#include <cmath>

#include "core/quantity/constants.h"
#include "core/sky/wind.h"
#include "core/sun/clear_sky.h"

namespace wg::sky {
namespace {

constexpr double printed_k = 0.02;
constexpr double sea_level_pa = 100000.0;  // where Martin and Berdahl's pressure term is zero

// Berdahl and Martin 1984 (Duffie and Beckman eq. 3.9.2), evaluated by hand: air C, dew point C, hour, sky K.
TEST(SkyTemperature, ClearSkyEqualsBerdahlAndMartin) {
    const std::array<std::array<double, 4>, 6> rows = {{{20, 10, 0, 276.14},
                                                        {20, 10, 12, 273.83},
                                                        {10, 5, 0, 263.84},
                                                        {0, -3, 0, 250.55},
                                                        {0, -3, 12, 248.21},
                                                        {30, 15, 12, 286.56}}};
    for (const auto& r : rows) {
        EXPECT_NEAR(sky_temperature_k(r[0], clear_sky_emissivity(r[1], r[2], sea_level_pa), 0.0, 1.0), r[3], printed_k);
    }
}

TEST(SkyTemperature, CloudsWarmTheSkyTowardsTheAir) {
    const double clear = clear_sky_emissivity(5.0, 0.0, sea_level_pa);
    double previous = 0.0;
    for (const double cover : {0.0, 0.25, 0.5, 0.75, 1.0}) {
        const double sky = sky_temperature_k(10.0, clear, cover, observed_cloud_weight);
        EXPECT_GT(sky, previous);
        EXPECT_LT(sky, kelvin(10.0));
        previous = sky;
    }
    // Overcast: some 1 to 4 K below the air (Martin and Berdahl 1984 for low cloud).
    EXPECT_GT(previous, kelvin(10.0) - 5.0);
}

TEST(SkyTemperature, ThinMountainAirRadiatesLess) {
    EXPECT_LT(clear_sky_emissivity(0.0, 0.0, 80000.0), clear_sky_emissivity(0.0, 0.0, 100000.0));
}

TEST(CoverFromLight, IsTheShareOfClearLightThatIsLacking) {
    // Sun at one height by day, none by night; light dimmed by a known cover.
    std::vector<double> up(72);
    std::vector<double> global(72);
    const double cover = 0.6;
    for (std::size_t i = 0; i < up.size(); ++i) {
        const bool day = i % 24 >= 8 && i % 24 < 16;
        up[i] = day ? 0.6 : -0.3;
        global[i] = day ? sun::haurwitz_global_w_m2(0.6) * (1.0 - cover) : 0.0;
    }
    for (const double c : cover_from_light(global, up))
        EXPECT_NEAR(c, cover, 1e-9);
}

TEST(CoverFromLight, StaysBetweenNoneAndAllAndFillsTheNight) {
    std::vector<double> up(48, -0.1);
    std::vector<double> global(48, 0.0);
    up[12] = up[36] = 0.5;
    global[12] = 2000.0;  // more than any clear sky
    global[36] = 0.0;     // none at all
    const std::vector<double> cover = cover_from_light(global, up);
    EXPECT_EQ(cover[12], 0.0);
    EXPECT_EQ(cover[36], 1.0);
    EXPECT_NEAR(cover[24], 0.5, 0.01);  // halfway between
    EXPECT_EQ(cover[0], 0.0);
    EXPECT_EQ(cover[47], 1.0);
}

TEST(CoverFromLight, PolarNightCountsAsHalfCovered) {
    const std::vector<double> cover = cover_from_light(std::vector<double>(100, 0.0), std::vector<double>(100, -0.2));
    for (const double c : cover)
        EXPECT_EQ(c, 0.5);
}

// From 10 m to 6 m and 4 m by the two usual laws, evaluated by hand.
TEST(Wind, ProfilesEqualTheirFormulas) {
    constexpr double printed = 1e-3;
    EXPECT_NEAR(wind_factor_power(6.0, 0.14), 0.931, printed);
    EXPECT_NEAR(wind_factor_power(4.0, 0.25), 0.795, printed);
    EXPECT_NEAR(wind_factor_log(6.0, 0.05), 0.904, printed);
    EXPECT_NEAR(wind_factor_log(4.0, 0.05), 0.827, printed);
    EXPECT_NEAR(wind_factor_log(6.0, 0.30), 0.854, printed);
    EXPECT_NEAR(wind_factor_log(4.0, 0.30), 0.739, printed);
    EXPECT_EQ(wind_factor_log(10.0, 0.3), 1.0);
}

TEST(Wind, IsNeverNegativeAndGrowsWithHeight) {
    for (const double z0 : {0.0002, 0.03, 0.3, 1.0, 2.0}) {
        double previous = 0.0;
        for (double z = 0.0; z < 100.0; z += 0.5) {
            const double factor = wind_factor_other_terrain(z, z0);
            ASSERT_GT(factor, 0.0);
            ASSERT_GE(factor, previous);
            previous = factor;
        }
    }
}

TEST(Wind, TownHasLessWindThanTheStationsMeadow) {
    EXPECT_NEAR(wind_factor_other_terrain(10.0, station_roughness_m), 1.0, 1e-12);
    EXPECT_LT(wind_factor_other_terrain(6.0, 1.0), wind_factor_other_terrain(6.0, 0.3));
    EXPECT_LT(wind_factor_other_terrain(6.0, 0.3), wind_factor_other_terrain(6.0, 0.05));
}

}  // namespace
}  // namespace wg::sky
