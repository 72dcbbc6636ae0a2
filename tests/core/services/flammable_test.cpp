#include <gtest/gtest.h>

#include "core/services/sizing.h"
#include "tests/core/services/a_good_spot.h"

namespace wg::services {
namespace flammable_test {

using test::expect;
using test::find;
using test::good;
using test::load;

TEST(Flammable, LeastAreaAgreesWithAHeatPumpMakersTable) {
    // A heat pump maker's manual, table by IEC 60335-2-40:2018 GG2: R32 (LFL 0.307 kg/m3), h_0 0.6 m.
    const double rows[][2] = {{1.86, 29.44}, {1.90, 30.72}, {2.00, 34.04}, {2.10, 37.53}, {2.30, 45.02}};
    for (const auto& row : rows)
        EXPECT_NEAR(room_charge(row[0], 0.307, true, 0.6, 5.0).least_area_m2, row[1], 0.02) << row[0];
}

TEST(Flammable, ChargeByAreaAgreesWithThatTable) {
    const double rows[][2] = {{29, 1.846}, {30, 1.877}, {35, 2.028}, {40, 2.168}, {45, 2.299}};
    for (const auto& row : rows)
        EXPECT_NEAR(room_charge(3.0, 0.307, true, 0.6, row[0]).room_kg, row[1], 0.0015) << row[0];
}

TEST(Flammable, OpeningByHand) {
    // (m - m_max)/(104 LFL) (A/(g m_max))^0.5 M/(M - 29), formula as printed in a maker's manual. R290: 0.36 kg, 6 m2,
    // m_max 0.152: 0.0526 x 2.006 x 2.921 = 0.308 m2. R32: 2.4 kg, 20 m2, m_max 1.842: 0.0175 x 1.052 x 2.261.
    EXPECT_NEAR(opening_m2(0.36, 0.152, 0.038, 44.1, 6.0), 0.308, 0.001);
    EXPECT_NEAR(opening_m2(2.4, 1.842, 0.307, 52.0, 20.0), 0.0416, 0.0002);
    EXPECT_EQ(opening_m2(0.15, 0.152, 0.038, 44.1, 6.0), 0.0);
    EXPECT_EQ(opening_m2(0.36, 0.152, 0.038, 28.0, 6.0), 0.0);
}

TEST(Flammable, MoreChargeNeverAsksForLessRoomOrOpening) {
    for (const double height : {0.6, 1.0, 1.8}) {
        double area = 0.0, opening = 0.0;
        for (double kg = 0.01; kg < 1.0; kg += 0.01) {
            const RoomCharge r = room_charge(kg, 0.038, false, height, 6.0);
            const double now = opening_m2(kg, r.room_kg, 0.038, 44.1, 6.0);
            EXPECT_GE(r.least_area_m2, area);
            EXPECT_GE(now, opening);
            EXPECT_LE(room_charge(kg, 0.038, false, height + 0.5, 6.0).least_area_m2, r.least_area_m2);
            area = r.least_area_m2;
            opening = now;
        }
    }
}

TEST(Flammable, ARoomTooSmallNamesOpeningsAreaAndAnEnclosure) {
    const auto r290 = load("R290");
    ASSERT_NE(r290, nullptr);
    Input in = good();
    in.refrigerant = r290.get();
    in.block.refrigerant = Refrigerant::r290;
    in.total_charge_kg = 0.36;
    const Outcome o = provide(in);
    ASSERT_NE(find(o, "room.charge"), nullptr);
    EXPECT_EQ(find(o, "room.charge")->severity, Severity::stop);
    EXPECT_NE(find(o, "room.charge")->remedy.find("3090 cm2"), std::string::npos) << find(o, "room.charge")->remedy;
    EXPECT_NEAR(o.room.opening_m2, 0.308, 0.001);
    EXPECT_NEAR(o.room.volume_m3, 6.0 * 2.3, 1e-9);
    EXPECT_NEAR(o.room.share_of_limit, 0.36 / (13.8 * 0.038), 1e-9);
    in.block.ventilated_enclosure = true;
    expect(in, "room.charge-enclosure", Severity::caution);
    EXPECT_EQ(find(provide(in), "room.charge"), nullptr);
    in.total_charge_kg = 5.0;  // no enclosure helps above 130 LFL here
    expect(in, "room.charge-too-large", Severity::stop);
}

TEST(Flammable, MildlyFlammableHasSixTimesTheLimitFree) {
    const auto r1234yf = load("R1234yf");
    ASSERT_NE(r1234yf, nullptr);
    Input in = good();
    in.refrigerant = r1234yf.get();
    in.block.refrigerant = Refrigerant::r1234yf;
    in.total_charge_kg = 1.2;  // below 6 x 0.289
    const Outcome o = provide(in);
    EXPECT_EQ(find(o, "room.charge"), nullptr);
    EXPECT_EQ(o.room.least_area_m2, 0.0);
    EXPECT_EQ(o.room.opening_m2, 0.0);
    EXPECT_NEAR(o.room.allowed_kg, 6.0 * 0.289, 1e-9);
}

}  // namespace flammable_test
}  // namespace wg::services
