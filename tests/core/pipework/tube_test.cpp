#include "core/pipework/tube.h"

#include <gtest/gtest.h>

namespace wg::pipework {
namespace {

TEST(Friction, Churchill1977AgreesWithItsFormulaWorkedByHand) {
    // Churchill 1977 evaluated apart from this program (formula from memory), printed to four decimals.
    constexpr double printed = 1e-4;
    const double smooth = 0.0;
    EXPECT_NEAR(friction_churchill1977(1e3, smooth), 0.0640, printed);  // 64 / Re
    EXPECT_NEAR(friction_churchill1977(5e3, smooth), 0.0379, printed);
    EXPECT_NEAR(friction_churchill1977(1e4, smooth), 0.0310, printed);
    EXPECT_NEAR(friction_churchill1977(1e5, smooth), 0.0179, printed);
    EXPECT_NEAR(friction_churchill1977(1e6, smooth), 0.0116, printed);
    EXPECT_NEAR(friction_churchill1977(5e3, 0.001), 0.0391, printed);
    EXPECT_NEAR(friction_churchill1977(1e4, 0.001), 0.0327, printed);
    EXPECT_NEAR(friction_churchill1977(1e5, 0.001), 0.0223, printed);
    EXPECT_NEAR(friction_churchill1977(1e6, 0.001), 0.0200, printed);
}

TEST(Friction, ChurchillStaysNearColebrook) {
    // Colebrook at a relative roughness of 0.001 for Re 5e3 to 1e6: 0.0385 0.0324 0.0222 0.0199 (public test data).
    constexpr double churchill_error = 0.02;  // Churchill's own statement of agreement in turbulent flow
    EXPECT_NEAR(friction_churchill1977(5e3, 0.001) / 0.0385, 1.0, churchill_error);
    EXPECT_NEAR(friction_churchill1977(1e4, 0.001) / 0.0324, 1.0, churchill_error);
    EXPECT_NEAR(friction_churchill1977(1e5, 0.001) / 0.0222, 1.0, churchill_error);
    EXPECT_NEAR(friction_churchill1977(1e6, 0.001) / 0.0199, 1.0, churchill_error);
}

TEST(Tube, BoresFollowTheTubeStandard) {
    // EN 12735-1 sizes, from memory: 6.35, 9.52 and 12.70 x 0.8, 15.88 x 1.0, metric x 1.0.
    EXPECT_NEAR(tube_bore_mm(6.35), 4.75, 1e-9);
    EXPECT_NEAR(tube_bore_mm(9.52), 7.92, 1e-9);
    EXPECT_NEAR(tube_bore_mm(9.53), 7.93, 1e-9);
    EXPECT_NEAR(tube_bore_mm(12.70), 11.10, 1e-9);
    EXPECT_NEAR(tube_bore_mm(15.88), 13.88, 1e-9);
    EXPECT_NEAR(tube_bore_mm(12.0), 10.0, 1e-9);
    EXPECT_EQ(tube_bore_mm(1.5), 0.0);
}

TEST(Riser, LeastMassVelocityOfOilReturn) {
    // Jacobs et al. 1976 (from memory), bore 11.1 mm, oil 930 kg/m3: R134a vapour at 0 deg C 27.4, R290 23.3 kg/(m2 s).
    EXPECT_NEAR(riser_mass_velocity_kg_m2s(14.428, 0.0111), 27.4, 0.27);
    EXPECT_NEAR(riser_mass_velocity_kg_m2s(10.351, 0.0111), 23.3, 0.23);
}

TEST(Lagging, DewPointOfDampRoomAir) {
    // Psychrometric tables (ASHRAE Handbook Fundamentals): 20 deg C at 50 % 9.3 deg C; 25 deg C at 75 % 20.3 deg C.
    EXPECT_NEAR(dew_point_c(20.0, 0.5), 9.3, 0.1);
    EXPECT_NEAR(dew_point_c(25.0, 0.75), 20.3, 0.1);
    EXPECT_NEAR(dew_point_c(12.0, 1.0), 12.0, 1e-9);
}

TEST(Lagging, ThickerKeepsTheFaceWarmerAndLosesLess) {
    const Lagging foam;
    double face = -100.0, heat = 1e9;
    for (const double wall : {6.0, 9.0, 13.0, 19.0, 25.0, 32.0}) {
        const double f = face_temperature_c(12.7, wall, 0.0, 25.0, foam), h = heat_per_metre_w_mk(12.7, wall, foam);
        EXPECT_GT(f, face);
        EXPECT_LT(h, heat);
        EXPECT_LT(f, 25.0);
        face = f;
        heat = h;
    }
}

TEST(Lagging, HeatThroughTheFoamIsHeatFromTheAir) {
    // Both sides of the face: conduction 2 pi k (t_face - t_tube) / ln(De/Di) equals h pi De (t_air - t_face).
    const Lagging foam;
    const double face = face_temperature_c(10.0, 10.0, 0.0, 20.0, foam);
    const double conducted = 2.0 * 3.14159265358979 * 0.036 * face / 1.09861228866811;  // ln 3
    const double from_air = 9.0 * 3.14159265358979 * 0.030 * (20.0 - face);
    EXPECT_NEAR(conducted, from_air, 1e-9);
    EXPECT_NEAR(heat_per_metre_w_mk(10.0, 10.0, foam) * 20.0, conducted, 1e-9);
}

TEST(Lagging, TheChosenWallIsTheThinnestWithoutDew) {
    const Lagging foam;
    for (const double tube : {-10.0, 0.0, 10.0, 18.0}) {
        const double wall = lagging_against_dew_mm(12.7, tube, 25.0, 0.75, foam);
        EXPECT_GE(face_temperature_c(12.7, wall, tube, 25.0, foam), dew_point_c(25.0, 0.75));
    }
    EXPECT_LE(lagging_against_dew_mm(12.7, 10.0, 25.0, 0.75, foam),
              lagging_against_dew_mm(12.7, -10.0, 25.0, 0.75, foam));
    EXPECT_EQ(lagging_against_dew_mm(12.7, -10.0, 25.0, 0.99, foam), 32.0);
}

}  // namespace
}  // namespace wg::pipework
