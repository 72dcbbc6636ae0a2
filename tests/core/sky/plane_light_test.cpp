// The three diffuse models at published states of the sky.

#include <gtest/gtest.h>

#include <array>
#include <cmath>
#include <random>

#include "core/quantity/constants.h"
#include "core/sky/perez.h"
#include "core/sky/plane.h"

namespace wg::sky {
namespace plane_light_test {

constexpr double printed_w_m2 = 1e-3;  // the published figures carry three or four decimals
constexpr double perez_w_m2 = 0.01;    // four-digit coefficients times a few hundred watts, air mass given to 1e-6
constexpr double rounding_w_m2 = 1e-9;

// Three states, plane of 40 deg facing 180 (azimuth from north). Public test data of pvlib 0.9.5
// (tests/test_irradiance.py): A and B seen there, C recalculated from the published formulas.
const SkyState state_a{316.19491, 40.46150, 79.7386, 1321.16558, 82.854571, 66.714103, 7.588316};
const SkyState state_b{646.22886, 62.03376, 257.2075, 1321.16558, 72.416871, 287.041041, 3.279304};
const SkyState state_c{939.95470, 118.45832, 1042.4803, 1321.16558, 10.564136, 144.765677, 1.016881};

PlaneLight on_plane(const SkyState& sky, DiffuseModel model) {
    return plane_light(sky, 40.0, 180.0, 0.25, model);
}

TEST(PlaneLight, IsotropicEqualsPublishedValues) {
    EXPECT_NEAR(on_plane(state_a, DiffuseModel::isotropic).sky_diffuse_w_m2(), 35.7284, printed_w_m2);
    EXPECT_NEAR(on_plane(state_b, DiffuseModel::isotropic).sky_diffuse_w_m2(), 54.7772, printed_w_m2);
    EXPECT_NEAR(on_plane(state_c, DiffuseModel::isotropic).sky_diffuse_w_m2(), 104.6013, printed_w_m2);
}

TEST(PlaneLight, HayDaviesEqualsPublishedValuesPartByPart) {
    const PlaneLight a = on_plane(state_a, DiffuseModel::hay_davies);
    EXPECT_NEAR(a.isotropic_w_m2, 27.1775, printed_w_m2);
    EXPECT_EQ(a.circumsolar_w_m2, 0.0);
    const PlaneLight b = on_plane(state_b, DiffuseModel::hay_davies);
    EXPECT_NEAR(b.isotropic_w_m2, 27.9837, printed_w_m2);
    EXPECT_NEAR(b.circumsolar_w_m2, 5.2071, printed_w_m2);
    const PlaneLight c = on_plane(state_c, DiffuseModel::hay_davies);
    EXPECT_NEAR(c.isotropic_w_m2, 30.1818, printed_w_m2);
    EXPECT_NEAR(c.circumsolar_w_m2, 72.8130, printed_w_m2);
}

TEST(PlaneLight, PerezEqualsPublishedValuesPartByPart) {
    const PlaneLight a = on_plane(state_a, DiffuseModel::perez_1990);
    EXPECT_NEAR(a.isotropic_w_m2, 26.8414, perez_w_m2);
    EXPECT_EQ(a.circumsolar_w_m2, 0.0);
    EXPECT_NEAR(a.horizon_w_m2, 4.6221, perez_w_m2);
    EXPECT_NEAR(a.sky_diffuse_w_m2(), 31.4605, perez_w_m2);
    const PlaneLight b = on_plane(state_b, DiffuseModel::perez_1990);
    EXPECT_NEAR(b.isotropic_w_m2, 31.7270, perez_w_m2);
    EXPECT_NEAR(b.circumsolar_w_m2, 4.4797, perez_w_m2);
    EXPECT_NEAR(b.horizon_w_m2, 9.2532, perez_w_m2);
    const PlaneLight c = on_plane(state_c, DiffuseModel::perez_1990);
    EXPECT_NEAR(c.isotropic_w_m2, 41.622, perez_w_m2);
    EXPECT_NEAR(c.circumsolar_w_m2, 61.620, perez_w_m2);
    EXPECT_NEAR(c.horizon_w_m2, 5.843, perez_w_m2);
}

// Formula, evaluated from the published table of coefficients.
TEST(PlaneLight, AnotherStateInAnotherBin) {
    const SkyState sky{500.0, 200.0, 521.4, 1380.0, 50.0, 200.0, 1.553};
    const PerezBrightness b = perez_brightness(500.0, 200.0, 1380.0, 50.0, 1.553);
    EXPECT_EQ(b.bin, 5);
    EXPECT_NEAR(b.f1, 0.46887, 1e-4);
    EXPECT_NEAR(b.f2, 0.12289, 1e-4);
    const PlaneLight perez = plane_light(sky, 30.0, 180.0, 0.2, DiffuseModel::perez_1990);
    EXPECT_NEAR(perez.isotropic_w_m2, 99.111, perez_w_m2);
    EXPECT_NEAR(perez.circumsolar_w_m2, 133.718, perez_w_m2);
    EXPECT_NEAR(perez.horizon_w_m2, 12.289, perez_w_m2);
    const PlaneLight hay = plane_light(sky, 30.0, 180.0, 0.2, DiffuseModel::hay_davies);
    EXPECT_NEAR(hay.isotropic_w_m2, 118.993, perez_w_m2);
    EXPECT_NEAR(hay.circumsolar_w_m2, 103.331, perez_w_m2);
}

TEST(PerezBrightness, EqualsPublishedCoefficientsOfTheThreeStates) {
    const auto of = [](const SkyState& s) {
        return perez_brightness(s.beam_normal_w_m2, s.diffuse_w_m2, s.extraterrestrial_normal_w_m2, s.sun_zenith_deg,
                                s.relative_air_mass);
    };
    EXPECT_EQ(of(state_a).bin, 6);
    EXPECT_NEAR(of(state_a).f1, 0.24874, 1e-4);
    EXPECT_NEAR(of(state_a).f2, 0.17772, 1e-4);
    EXPECT_EQ(of(state_c).bin, 8);
    EXPECT_NEAR(of(state_c).f1, 0.60209, 1e-4);
    EXPECT_NEAR(of(state_c).f2, 0.07673, 1e-4);
}

// Liu and Jordan's ground term, public test data of pvlib: albedo 0.25, 900 W/m2, 40 deg.
TEST(PlaneLight, GroundEqualsPublishedValue) {
    SkyState sky;
    sky.global_w_m2 = 900.0;
    EXPECT_NEAR(plane_light(sky, 40.0, 180.0, 0.25, DiffuseModel::isotropic).ground_w_m2, 26.3200, 1e-4);
}

TEST(PlaneLight, LevelPlaneReceivesTheGlobal) {
    for (const DiffuseModel model : {DiffuseModel::isotropic, DiffuseModel::hay_davies, DiffuseModel::perez_1990}) {
        for (const SkyState& state : {state_a, state_b, state_c}) {
            const double global = state.diffuse_w_m2 + state.beam_normal_w_m2 * std::cos(radians(state.sun_zenith_deg));
            // Perez floors the cosine at 85 deg zenith; all three states are higher.
            EXPECT_NEAR(plane_light(state, 0.0, 123.0, 0.2, model).total_w_m2(), global, rounding_w_m2)
                << name_of(model);
        }
    }
}

TEST(PlaneLight, PlaneTurnedAwayGetsNeitherBeamNorCircumsolar) {
    for (const DiffuseModel model : {DiffuseModel::isotropic, DiffuseModel::hay_davies, DiffuseModel::perez_1990}) {
        const PlaneLight light = plane_light(state_b, 90.0, state_b.sun_azimuth_deg - 180.0, 0.2, model);
        EXPECT_EQ(light.beam_w_m2, 0.0);
        EXPECT_EQ(light.circumsolar_w_m2, 0.0);
        EXPECT_GT(light.total_w_m2(), 0.0);
    }
}

TEST(PlaneLight, SunBelowTheHorizonGivesNoBeamWhateverTheFileSays) {
    SkyState sky = state_a;
    sky.sun_zenith_deg = 91.0;
    for (const DiffuseModel model : {DiffuseModel::isotropic, DiffuseModel::hay_davies, DiffuseModel::perez_1990}) {
        const PlaneLight light = plane_light(sky, 90.0, sky.sun_azimuth_deg, 0.2, model);
        EXPECT_EQ(light.beam_w_m2, 0.0);
        EXPECT_EQ(light.circumsolar_w_m2, 0.0);
        EXPECT_NEAR(light.isotropic_w_m2, 0.5 * sky.diffuse_w_m2, rounding_w_m2);
    }
}

TEST(PlaneLight, IsNeverNegativeAndFiniteOverRandomSkies) {
    std::mt19937_64 random(7);
    std::uniform_real_distribution<double> unit(0.0, 1.0);
    for (int i = 0; i < 20000; ++i) {
        SkyState sky;
        sky.beam_normal_w_m2 = 1100.0 * unit(random);
        sky.diffuse_w_m2 = i % 7 == 0 ? 0.0 : 500.0 * unit(random);
        sky.sun_zenith_deg = 120.0 * unit(random);
        sky.sun_azimuth_deg = 360.0 * unit(random);
        sky.relative_air_mass = 1.0 + 36.0 * unit(random);
        sky.global_w_m2 =
            sky.diffuse_w_m2 + sky.beam_normal_w_m2 * std::fmax(0.0, std::cos(radians(sky.sun_zenith_deg)));
        const double tilt = 180.0 * unit(random);
        const double azimuth = 360.0 * unit(random);
        for (const DiffuseModel model : {DiffuseModel::isotropic, DiffuseModel::hay_davies, DiffuseModel::perez_1990}) {
            const PlaneLight light = plane_light(sky, tilt, azimuth, 0.2, model);
            ASSERT_TRUE(std::isfinite(light.total_w_m2()));
            ASSERT_GE(light.sky_diffuse_w_m2(), 0.0);
            ASSERT_GE(light.beam_w_m2, 0.0);
            ASSERT_GE(light.ground_w_m2, 0.0);
        }
    }
}

// Duffie and Beckman, Solar Engineering of Thermal Processes, Ex. 1.6.1: 43 N, 13 February, 10:30 solar time, plane of
// 45 deg turned 15 deg west of south; declination -14; 35 deg printed, 35.18 exact.
TEST(CosIncidence, EqualsTheTextbookExample) {
    const double latitude = radians(43.0);
    const double declination = radians(-14.0);
    const double hour = radians(-22.5);
    const double sin_elevation =
        std::sin(latitude) * std::sin(declination) + std::cos(latitude) * std::cos(declination) * std::cos(hour);
    const double zenith = std::acos(sin_elevation);
    const double azimuth_from_south = -std::acos((sin_elevation * std::sin(latitude) - std::sin(declination)) /
                                                 (std::sin(zenith) * std::cos(latitude)));
    const double c = cos_incidence(45.0, 195.0, degrees(zenith), 180.0 + degrees(azimuth_from_south));
    EXPECT_NEAR(degrees(std::acos(c)), 35.18, 0.02);
}

TEST(CosIncidence, TurningEverythingByTheSameAzimuthChangesNothing) {
    const double c = cos_incidence(37.0, 150.0, 55.0, 210.0);
    for (const double turn : {30.0, 180.0, 333.0})
        EXPECT_NEAR(cos_incidence(37.0, 150.0 + turn, 55.0, 210.0 + turn), c, 1e-12);
    EXPECT_NEAR(cos_incidence(55.0, 210.0, 55.0, 210.0), 1.0, 1e-12);
}

}  // namespace plane_light_test
}  // namespace wg::sky
