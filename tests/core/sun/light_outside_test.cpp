#include <gtest/gtest.h>

#include <array>
#include <cmath>

#include "core/quantity/constants.h"
#include "core/sun/clear_sky.h"
#include "core/sun/extraterrestrial.h"

namespace wg::sun {
namespace {

double cooper_declination_deg(int day) {
    return 23.45 * std::sin(radians(360.0 * (284 + day) / 365.0));
}

// Duffie and Beckman, Solar Engineering of Thermal Processes, eq. 1.10.3 (table 1.10.1), with 1367 W/m2 and Cooper's
// declination, daily extraterrestrial on the horizontal in MJ/m2 for the mean days of the months; recalculated, one
// decimal printed.
TEST(Extraterrestrial, DailySumEqualsTheTextbookTable) {
    constexpr std::array<int, 12> days = {17, 47, 75, 105, 135, 162, 198, 228, 258, 288, 318, 344};
    struct Row {
        double latitude;
        std::array<double, 12> mj;
    };
    const std::array<Row, 3> table = {{
        {60.0, {3.4, 8.5, 16.8, 27.5, 36.6, 41.0, 38.9, 31.0, 20.6, 10.9, 4.5, 2.3}},
        {40.0, {15.2, 20.5, 27.4, 34.6, 39.7, 41.8, 40.7, 36.5, 30.0, 22.5, 16.4, 13.8}},
        {-35.0, {43.2, 38.9, 32.5, 24.9, 18.6, 15.8, 17.0, 22.0, 29.2, 36.5, 41.9, 44.2}},
    }};
    for (const Row& row : table) {
        for (std::size_t m = 0; m < 12; ++m) {
            const double normal = 1367.0 * (1.0 + 0.033 * std::cos(radians(360.0 * days[m] / 365.0)));
            EXPECT_NEAR(1e-6 * extraterrestrial_day_j_m2(row.latitude, cooper_declination_deg(days[m]), normal),
                        row.mj[m], 0.06)
                << row.latitude << " month " << m + 1;
        }
    }
}

TEST(Extraterrestrial, PolarDayAndNightAreExact) {
    EXPECT_EQ(extraterrestrial_day_j_m2(80.0, -20.0, 1361.0), 0.0);
    // Sun at one height all day at the pole: 86400 s * sin(declination).
    EXPECT_NEAR(extraterrestrial_day_j_m2(90.0, 20.0, 1361.0), 86400.0 * 1361.0 * std::sin(radians(20.0)), 1.0);
}

TEST(Extraterrestrial, FallsWithTheSquareOfDistance) {
    EXPECT_NEAR(extraterrestrial_normal_w_m2(0.9833), 1361.0 / (0.9833 * 0.9833), 1e-9);
    EXPECT_NEAR(extraterrestrial_normal_w_m2(0.9833) / extraterrestrial_normal_w_m2(1.0167), 1.0691, 1e-4);
}

// Kasten and Young 1989 as evaluated by pvlib 0.9.5 in its published test data for zenith 82.854571, 72.416871 and
// 10.564136 deg: 7.588316, 3.279304, 1.016881; and 37.92 at the horizon (their table).
TEST(AirMass, EqualsPublishedValues) {
    EXPECT_NEAR(relative_air_mass(82.854571), 7.588316, 1e-5);
    EXPECT_NEAR(relative_air_mass(72.416871), 3.279304, 1e-5);
    EXPECT_NEAR(relative_air_mass(10.564136), 1.016881, 1e-5);
    EXPECT_NEAR(relative_air_mass(90.0), 37.92, 0.01);
    EXPECT_EQ(relative_air_mass(95.0), relative_air_mass(90.0));
}

TEST(StandardAtmosphere, EqualsIso2533) {
    // ISO 2533 table (from memory): 89,874.6 Pa at 1000 m, 70,108.5 Pa at 3000 m.
    EXPECT_NEAR(standard_pressure_pa_at(0.0), 101325.0, 1e-9);
    EXPECT_NEAR(standard_pressure_pa_at(1000.0), 89874.6, 10.0);
    EXPECT_NEAR(standard_pressure_pa_at(3000.0), 70108.5, 20.0);
}

// pvlib's published test data for Haurwitz: apparent elevation 5, 10, 30, 50, 90 deg.
TEST(ClearSky, HaurwitzEqualsPublishedValues) {
    constexpr double printed = 1e-3;
    const std::array<std::array<double, 2>, 5> rows = {
        {{5.0, 48.630}, {10.0, 135.742}, {30.0, 487.894}, {50.0, 778.767}, {90.0, 1035.092}}};
    for (const auto& row : rows)
        EXPECT_NEAR(haurwitz_global_w_m2(std::sin(radians(row[0]))), row[1], printed);
    EXPECT_EQ(haurwitz_global_w_m2(0.0), 0.0);
    EXPECT_EQ(haurwitz_global_w_m2(-0.5), 0.0);
}

// pvlib's published test data for Ineichen-Perez: Linke 3, sea level, 1364 W/m2.
TEST(ClearSky, IneichenPerezEqualsPublishedValues) {
    constexpr double printed = 1e-3;
    const ClearSky high = ineichen_perez(10.0, 1.0, 3.0, 0.0, 1364.0);
    EXPECT_NEAR(high.global_w_m2, 1038.159, printed);
    EXPECT_NEAR(high.beam_normal_w_m2, 942.208, printed);
    EXPECT_NEAR(high.diffuse_w_m2, 110.265, printed);
    const ClearSky low = ineichen_perez(46.04676, 1.323555, 3.0, 0.0, 1364.0);
    EXPECT_NEAR(low.global_w_m2, 704.697, printed);
    EXPECT_NEAR(low.beam_normal_w_m2, 888.901, printed);
    EXPECT_NEAR(low.diffuse_w_m2, 87.736, printed);
    EXPECT_EQ(ineichen_perez(90.0, 38.0, 3.0, 0.0, 1364.0).global_w_m2, 0.0);
}

TEST(ClearSkyYear, TurbidityRunsStraightBetweenTheMiddlesOfMonths) {
    const std::array<double, 12> linke = {2.0, 3.0, 4.0, 4.0, 4.0, 4.0, 4.0, 4.0, 4.0, 4.0, 4.0, 6.0};
    EXPECT_NEAR(linke_turbidity_at(linke, 15 * 24 + 11), 2.0, 0.02);  // 16 January noon
    EXPECT_NEAR(linke_turbidity_at(linke, 31 * 24), 2.5, 0.03);       // 1 February 00:00
    EXPECT_NEAR(linke_turbidity_at(linke, 45 * 24), 3.0, 0.001);      // 15 February 00:00
    EXPECT_NEAR(linke_turbidity_at(linke, 0), 4.0, 0.01);             // 1 January: December's 6 and January's 2
    EXPECT_NEAR(linke_turbidity_at(linke, 8759), 4.0, 0.01);
    EXPECT_NEAR(linke_turbidity_at(linke, 24 * 200), 4.0, 1e-12);
}

TEST(ClearSkyYear, PartsMakeTheWholeAndHazeTakesBeamAndAddsDiffuse) {
    const YearSunInput place{47.4, 9.2, 520.0, 1.0, 30.0, weather_sun_year};
    std::array<double, 12> linke{};
    linke.fill(2.5);
    const YearSun sun = year_sun(place);
    const ClearSkyYear clean = clear_sky_year(place, sun, linke).value();
    linke.fill(5.0);
    const ClearSkyYear hazy = clear_sky_year(place, linke).value();
    for (std::size_t i = 0; i < 8760; ++i) {
        const double up = std::fmax(0.0, sun.up[i]);
        ASSERT_NEAR(clean.beam_normal_w_m2[i] * up + clean.diffuse_w_m2[i], clean.global_w_m2[i], 1e-9);
        ASSERT_LE(clean.beam_normal_w_m2[i], sun.extraterrestrial_normal_w_m2[i] * sun.up_share[i]);
        ASSERT_EQ(clean.global_w_m2[i] > 0.0, sun.up[i] > 0.0);
        if (!(sun.up[i] > 0.2)) continue;
        ASSERT_LT(hazy.beam_normal_w_m2[i], clean.beam_normal_w_m2[i]);
        ASSERT_LT(hazy.global_w_m2[i], clean.global_w_m2[i]);
        ASSERT_GT(hazy.diffuse_w_m2[i], clean.diffuse_w_m2[i]);
    }
}

TEST(ClearSkyYear, RefusesWhatCannotBeAndSaysWhich) {
    std::array<double, 12> linke{};
    linke.fill(3.0);
    YearSunInput place;
    EXPECT_TRUE(clear_sky_year(place, linke));
    linke[4] = 0.3;
    linke[9] = std::nan("");
    const auto wrong = clear_sky_year(place, linke);
    ASSERT_FALSE(wrong);
    ASSERT_EQ(wrong.problems().size(), 2u);
    EXPECT_NE(wrong.problems()[0].text().find("month 5"), std::string::npos);
    linke.fill(3.0);
    place.altitude_m = 20000.0;
    EXPECT_FALSE(clear_sky_year(place, linke));
}

}  // namespace
}  // namespace wg::sun
