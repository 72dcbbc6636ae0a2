#include "core/sky/prepared.h"

#include <gtest/gtest.h>

#include <cmath>

#include "core/quantity/angle.h"
#include "core/quantity/constants.h"
#include "core/sun/extraterrestrial.h"
#include "tests/core/sky/year_fixture.h"

namespace wg::sky {
namespace prepared_test {

constexpr double rounding_w_m2 = 1e-8;
constexpr DiffuseModel all_models[] = {DiffuseModel::isotropic, DiffuseModel::hay_davies, DiffuseModel::perez_1990};

SkyState state_of(const PreparedYear& year, std::size_t i) {
    SkyState sky;
    sky.beam_normal_w_m2 = year.beam_normal_w_m2[i];
    sky.diffuse_w_m2 = year.diffuse_w_m2[i];
    sky.global_w_m2 = year.global_w_m2[i];
    sky.extraterrestrial_normal_w_m2 = year.extraterrestrial_normal_w_m2[i];
    sky.sun_zenith_deg = degrees(std::acos(year.sun_up[i]));
    sky.sun_azimuth_deg = wrap_360(degrees(std::atan2(year.sun_east[i], year.sun_north[i])));
    sky.relative_air_mass = sun::relative_air_mass(sky.sun_zenith_deg);
    return sky;
}

TEST(PlaneYear, EqualsPlaneLightHourByHour) {
    const PreparedYear& year = harrowmere_year();
    for (const DiffuseModel model : all_models) {
        for (const auto& [tilt, azimuth] :
             {std::pair{0.0, 0.0}, {35.0, 180.0}, {90.0, 90.0}, {60.0, 330.0}, {120.0, 200.0}}) {
            PlaneInput input;
            input.tilt_deg = tilt;
            input.azimuth_deg = azimuth;
            input.model = model;
            const PlaneYear plane = plane_year(year, input, {});
            double sum = 0.0;
            for (std::size_t i = 0; i < year.sun_up.size(); ++i) {
                const PlaneLight light = plane_light(state_of(year, i), tilt, azimuth, input.albedo, model);
                const double total = plane.beam_w_m2[i] + plane.sky_diffuse_w_m2[i] + plane.ground_w_m2[i];
                ASSERT_NEAR(total, light.total_w_m2(), rounding_w_m2) << name_of(model) << " hour " << i;
                ASSERT_GE(plane.beam_w_m2[i], 0.0);
                ASSERT_GE(plane.sky_diffuse_w_m2[i], 0.0);
                sum += total;
            }
            EXPECT_NEAR(plane.total_kwh_m2, 1e-3 * sum, 1e-6);
            EXPECT_EQ(plane.total_kwh_m2, plane.unshaded_kwh_m2);
        }
    }
}

TEST(PlaneYear, LevelPlaneReceivesTheYearsGlobal) {
    const PreparedYear& year = harrowmere_year();
    double global = 0.0;
    for (const double g : year.global_w_m2)
        global += 1e-3 * g;
    for (const DiffuseModel model : all_models) {
        PlaneInput input;
        input.tilt_deg = 0.0;
        input.model = model;
        // Hay-Davies and Perez floor the sun's height near the horizon, which costs a little circumsolar light there.
        EXPECT_NEAR(plane_year(year, input, {}).total_kwh_m2, global, 0.002 * global) << name_of(model);
    }
    PlaneInput isotropic;
    isotropic.tilt_deg = 0.0;
    isotropic.model = DiffuseModel::isotropic;
    EXPECT_NEAR(plane_year(year, isotropic, {}).total_kwh_m2, global, 1e-6);
}

TEST(PlaneYear, ShadeTakesBeamOnlyAndInProportion) {
    const PreparedYear& year = harrowmere_year();
    PlaneInput input;
    const PlaneYear open = plane_year(year, input, {});
    const PlaneYear half = plane_year(year, input, std::vector<float>(8760, 0.5F));
    const PlaneYear dark = plane_year(year, input, std::vector<float>(8760, 0.0F));
    EXPECT_EQ(half.unshaded_kwh_m2, open.total_kwh_m2);
    EXPECT_NEAR(half.total_kwh_m2, 0.5 * (open.total_kwh_m2 + dark.total_kwh_m2), 1e-6);
    EXPECT_EQ(half.sky_diffuse_w_m2, open.sky_diffuse_w_m2);
    for (const double b : dark.beam_w_m2)
        ASSERT_EQ(b, 0.0);
}

TEST(PlaneYear, SkyViewScalesTheDiffuseOfTheSky) {
    const PreparedYear& year = harrowmere_year();
    PlaneInput input;
    input.model = DiffuseModel::perez_1990;
    const PlaneYear open = plane_year(year, input, {});
    input.sky_view = 0.7;
    const PlaneYear narrow = plane_year(year, input, {});
    for (std::size_t i = 0; i < 8760; i += 7)
        ASSERT_NEAR(narrow.sky_diffuse_w_m2[i], 0.7 * open.sky_diffuse_w_m2[i], 1e-12);
    EXPECT_EQ(narrow.beam_w_m2, open.beam_w_m2);
}

TEST(PlaneYear, RearOfAPlaneIsTheFrontOfThePlaneTurnedRound) {
    const PreparedYear& year = harrowmere_year();
    for (const DiffuseModel model : all_models) {
        PlaneInput front;
        front.tilt_deg = 70.0;
        front.azimuth_deg = 160.0;
        front.model = model;
        front.rear_open = 1.0;
        const PlaneYear plane = plane_year(year, front, {});
        PlaneInput turned;
        turned.tilt_deg = 110.0;
        turned.azimuth_deg = 340.0;
        turned.model = model;
        const PlaneYear rear = plane_year(year, turned, {});
        for (std::size_t i = 0; i < 8760; ++i) {
            ASSERT_NEAR(plane.rear_w_m2[i], rear.beam_w_m2[i] + rear.sky_diffuse_w_m2[i] + rear.ground_w_m2[i],
                        rounding_w_m2);
        }
        front.rear_open = 0.0;
        for (const double r : plane_year(year, front, {}).rear_w_m2)
            ASSERT_EQ(r, 0.0);
    }
}

TEST(PlaneYear, WorksOnAYearPutTogetherByHand) {
    PreparedYear bare = harrowmere_year();
    bare.circumsolar_hay_davies_w_m2.clear();
    bare.isotropic_hay_davies_w_m2.clear();
    bare.circumsolar_perez_w_m2.clear();
    bare.isotropic_perez_w_m2.clear();
    bare.horizon_perez_w_m2.clear();
    EXPECT_EQ(plane_year(bare, {}, {}).total_kwh_m2, plane_year(harrowmere_year(), {}, {}).total_kwh_m2);
}

TEST(PlaneYear, BestTiltFacesTheEquatorInBothHemispheres) {
    weather::Climate climate = harrowmere();
    climate.latitude_deg = -climate.latitude_deg;
    for (std::size_t m = 0; m < 6; ++m) {  // seasons of the other half of the earth
        std::swap(climate.global_kwh_m2_day[m], climate.global_kwh_m2_day[m + 6]);
        std::swap(climate.air_mean_c[m], climate.air_mean_c[m + 6]);
    }
    const PreparedYear south = prepare(weather::synthesise(climate).value());
    PlaneInput to_north;
    to_north.azimuth_deg = 0.0;
    PlaneInput to_south;
    to_south.azimuth_deg = 180.0;
    EXPECT_GT(plane_year(south, to_north, {}).total_kwh_m2, 1.2 * plane_year(south, to_south, {}).total_kwh_m2);
    EXPECT_GT(plane_year(harrowmere_year(), to_south, {}).total_kwh_m2,
              1.2 * plane_year(harrowmere_year(), to_north, {}).total_kwh_m2);
}

TEST(Prepare, DropsBeamWithTheSunDownAndKeepsTheRest) {
    weather::Year year = weather::synthesise(harrowmere()).value();
    year.beam_normal_w_m2[0] = 300.0;  // midnight in January
    year.diffuse_w_m2[0] = 20.0;
    const PreparedYear prepared = prepare(year);
    EXPECT_EQ(prepared.beam_normal_w_m2[0], 0.0);
    EXPECT_EQ(prepared.diffuse_w_m2[0], 20.0);
    EXPECT_LT(prepared.sun_up[0], 0.0);
}

TEST(Prepare, UsesLongWaveOfTheFileWhereItHasIt) {
    weather::Year year = weather::synthesise(harrowmere()).value();
    EXPECT_FALSE(prepare(year).sky_temperature_measured);
    year.sky_long_wave_w_m2.assign(8760, 315.66);  // black body at 0 deg C
    const PreparedYear prepared = prepare(year);
    EXPECT_TRUE(prepared.sky_temperature_measured);
    for (const double t : prepared.sky_temperature_k)
        ASSERT_NEAR(t, 273.15, 0.01);
}

TEST(Prepare, UsesCloudCoverOfTheFileWhereItHasIt) {
    weather::Year year = weather::synthesise(harrowmere()).value();
    year.sky_cover.assign(8760, 0.0);
    const PreparedYear clear = prepare(year);
    year.sky_cover.assign(8760, 1.0);
    const PreparedYear overcast = prepare(year);
    for (std::size_t i = 0; i < 8760; i += 11)
        ASSERT_GT(overcast.sky_temperature_k[i], clear.sky_temperature_k[i] + 3.0);
}

TEST(Prepare, SkyIsColderThanTheAirByAPlausibleAmount) {
    const PreparedYear& year = harrowmere_year();
    double mean_k = 0.0;
    for (std::size_t i = 0; i < 8760; ++i) {
        const double below = kelvin(year.air_c[i]) - year.sky_temperature_k[i];
        ASSERT_GT(below, 0.0);
        ASSERT_LT(below, 32.0);
        mean_k += below / 8760.0;
    }
    EXPECT_GT(mean_k, 5.0);
    EXPECT_LT(mean_k, 16.0);
}

}  // namespace prepared_test
}  // namespace wg::sky
