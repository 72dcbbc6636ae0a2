#include "core/services/sizing.h"

#include <gtest/gtest.h>

namespace wg::services {
namespace {

TEST(Water, DensityAgreesWithIapws95) {
    // IAPWS-95 at 101.325 kPa (Wagner and Pruss 2002), evaluated apart from this program.
    constexpr double kell_1975 = 0.012;  // Kell used the temperature scale of 1968 and older data
    const double rows[][2] = {{5, 999.967},  {10, 999.702}, {15, 999.103}, {20, 998.207}, {25, 997.048}, {30, 995.649},
                              {40, 992.216}, {50, 988.035}, {55, 985.693}, {60, 983.196}, {65, 980.551}};
    for (const auto& row : rows)
        EXPECT_NEAR(water_density_kg_m3(row[0]), row[1], kell_1975) << row[0];
}

TEST(Water, ExpansionFromTenDegrees) {
    // From the IAPWS-95 densities: per cent of the cold volume.
    constexpr double percent = 0.005;
    const double rows[][2] = {{40, 0.754}, {55, 1.421}, {60, 1.679}, {65, 1.953}, {70, 2.244}};
    for (const auto& row : rows)
        EXPECT_NEAR(expansion_l(100.0, 10.0, row[0]), row[1], percent) << row[0];
    EXPECT_NEAR(expansion_l(100.0, 4.0, 60.0), 1.707, percent);
    EXPECT_EQ(expansion_l(100.0, 60.0, 10.0), 0.0);
}

TEST(Water, VesselSizes) {
    // V_e (p1 + 1)/(p1 - p0), textbook form (practice; EN 806-2 context).
    constexpr double litres = 0.1;
    EXPECT_NEAR(expansion_l(250.0, 10.0, 60.0), 4.20, 0.02);
    EXPECT_NEAR(vessel_l(expansion_l(250.0, 10.0, 60.0), 3.0, 5.4), 11.2, litres);
    EXPECT_NEAR(vessel_l(expansion_l(200.0, 10.0, 60.0), 3.0, 5.4), 9.0, litres);
    EXPECT_NEAR(vessel_l(expansion_l(150.0, 10.0, 60.0), 2.5, 5.5), 5.5, litres);
    EXPECT_EQ(vessel_size_l(11.2), 12.0);
    EXPECT_EQ(vessel_size_l(9.0), 12.0);
    EXPECT_EQ(vessel_size_l(5.5), 8.0);
    EXPECT_EQ(vessel_size_l(12.0), 12.0);
    EXPECT_EQ(vessel_size_l(101.0), 200.0);
    EXPECT_EQ(vessel_l(4.2, 6.0, 5.4), 0.0);
}

TEST(Room, PropaneCapsOfTheStandard) {
    // IEC 60335-2-40 annex GG, EN 378-1: LFL 0.038 kg/m3 gives 0.152, 0.988 and 4.94 kg.
    const RoomCharge r = room_charge(0.5, 0.038, false, 1.8, 1e6);
    EXPECT_NEAR(r.free_kg, 0.152, 0.001);
    EXPECT_NEAR(r.room_kg, 0.988, 0.001);  // the largest room
    EXPECT_NEAR(r.outside_kg, 4.94, 0.001);
}

TEST(Room, PropaneByAreaAgreesWithTableGG1) {
    // Table GG.1, kg, printed to 0.01 kg; values below m1 (0.152) are printed there and are raised to m1 here.
    constexpr double printed = 0.005;
    const double areas[] = {7, 10, 15, 20, 30, 50}, on_wall[] = {0.20, 0.24, 0.29, 0.34, 0.41, 0.53};
    for (int i = 0; i < 6; ++i)
        EXPECT_NEAR(room_charge(0.5, 0.038, false, 1.8, areas[i]).room_kg, on_wall[i], printed);
    EXPECT_NEAR(room_charge(0.5, 0.038, false, 0.6, 50.0).room_kg, 0.18, printed);
    EXPECT_NEAR(room_charge(0.5, 0.038, false, 0.6, 10.0).room_kg, 0.152, 1e-9);
}

TEST(Room, LeastAreaForACharge) {
    // (m / (2.5 LFL^1.25 h0))^2: 0.2 kg needs 7.0 m2 at 1.8 m and 63.2 m2 at 0.6 m.
    EXPECT_NEAR(room_charge(0.2, 0.038, false, 1.8, 5.0).least_area_m2, 7.0, 0.05);
    EXPECT_NEAR(room_charge(0.2, 0.038, false, 0.6, 5.0).least_area_m2, 63.2, 0.1);
    EXPECT_EQ(room_charge(0.15, 0.038, false, 0.6, 5.0).least_area_m2, 0.0);  // below m1 no room rule
    EXPECT_EQ(room_charge(1.2, 0.0, false, 0.6, 5.0).free_kg, 0.0);
}

TEST(Room, MildlyFlammableIsAllowedMore) {
    EXPECT_GT(room_charge(1.0, 0.289, true, 0.6, 10.0).room_kg, room_charge(1.0, 0.038, false, 0.6, 10.0).room_kg);
    EXPECT_NEAR(room_charge(1.0, 0.289, true, 0.6, 0.1).room_kg, 6.0 * 0.289, 1e-12);
}

TEST(Water, SafetyValveWithinTheCylinder) {
    EXPECT_EQ(safety_valve_bar(8.0), 6.0);
    EXPECT_EQ(safety_valve_bar(6.0), 6.0);
    EXPECT_EQ(safety_valve_bar(5.0), 4.0);
    EXPECT_EQ(safety_valve_bar(2.0), 0.0);
}

}  // namespace
}  // namespace wg::services
