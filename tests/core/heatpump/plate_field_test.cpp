// Plates that differ, on one circuit.

#include "core/heatpump/plate_field.h"

#include <gtest/gtest.h>

#include <random>

#include "tests/core/heatpump/fixture.h"

namespace plate_field_test {

using namespace wg;
using namespace wg::heatpump;

struct Pair {
    Surroundings first, second;
    double water_c;
};

std::vector<Pair> pairs(int count) {
    std::mt19937 random(7);
    const auto within = [&](double low, double high) {
        return std::uniform_real_distribution<double>(low, high)(random);
    };
    std::vector<Pair> out;
    for (int i = 0; i < count; ++i) {
        Pair pair;
        pair.first = heatpump_test::surroundings(within(0, 1000), within(-20, 38), within(0.3, 1.0), within(0, 8),
                                                 within(0, 20));
        pair.second = pair.first;
        pair.second.front_w_m2 = within(0, 1000);
        pair.second.wind_m_s = within(0, 8);
        pair.water_c = within(8, 58);
        out.push_back(pair);
    }
    return out;
}

class Field : public ::testing::Test {
   protected:
    PlateField of(std::vector<Mounting> groups, const Pair& pair, Joined joined = Joined::parallel) const {
        PlateField field(plate_, groups, joined);
        field.set_weather(0, pair.first);
        if (groups.size() > 1) field.set_weather(1, pair.second);
        return field;
    }
    std::shared_ptr<const refrigerant::Properties> fluid_ = heatpump_test::properties("R134a");
    HeatPump pump_ = heatpump_test::pump(BlockModel{}, *fluid_);
    CollectorModel plate_;
    Mounting one_{1, 35.0, 1.0, false}, two_{2, 35.0, 1.0, false};
};

TEST_F(Field, alike_plates_in_two_groups_are_one_group_of_two) {
    int ran = 0;
    for (Pair pair : pairs(2000)) {
        pair.second = pair.first;
        PlateField together = of({two_}, pair);
        PlateField apart = of({one_, one_}, pair);
        const auto zone = CondenserZone::uniform(220.0, pair.water_c);
        const Point a = pump_.point(together, zone, {}, {});
        const Point b = pump_.point(apart, zone, {}, {});
        ASSERT_EQ(a.off, b.off);
        ASSERT_EQ(a.pressure_limited, b.pressure_limited);
        if (!a.running()) continue;
        ++ran;
        // Points at the envelope's upper end are found by another search: equal within its tolerance.
        EXPECT_NEAR(b.condenser_w / a.condenser_w, 1.0, a.pressure_limited ? 1e-6 : 1e-8);
        EXPECT_NEAR(b.plate_c, a.plate_c, 1e-4);
    }
    EXPECT_GT(ran, 1500);
}

TEST_F(Field, heat_balances_and_never_rises_with_boiling_temperature) {
    plate_.channel_drop_k = 1.5;
    for (const Pair& pair : pairs(1000))
        for (const Joined joined : {Joined::parallel, Joined::series}) {
            PlateField field = of({one_, one_}, pair, joined);
            const Point point = pump_.point(field, CondenserZone::uniform(220.0, pair.water_c), {}, {});
            if (!point.running()) continue;
            EXPECT_NEAR(point.plate.total_w(), point.evaporator_w, 2e-6 * point.evaporator_w);
            double before_w = 1e9;
            for (double te = -25.0; te <= 25.0; te += 2.5) {
                double slope = 0.0;
                const double taken_w = field.taken_w(te, point.evaporator_w, slope);
                ASSERT_TRUE(std::isfinite(taken_w));
                if (taken_w > 0.0) {
                    EXPECT_LT(taken_w, before_w);
                    EXPECT_LT(slope, 0.0);
                }
                before_w = taken_w;
            }
        }
}

TEST_F(Field, series_with_a_fall_of_pressure_gives_less_and_the_first_plate_boils_warmer) {
    Pair day{heatpump_test::surroundings(400.0, 12.0, 0.7, 2.0, 10.0), {}, 35.0};
    day.second = day.first;
    const auto zone = CondenserZone::uniform(220.0, day.water_c);
    PlateField level = of({two_}, day, Joined::series);
    const double without_w = pump_.point(level, zone, {}, {}).condenser_w;
    plate_.channel_drop_k = 2.0;
    PlateField falling = of({two_}, day, Joined::series);
    ASSERT_EQ(falling.parts().size(), 2u);
    EXPECT_LT(pump_.point(falling, zone, {}, {}).condenser_w, without_w);
    EXPECT_GT(falling.parts()[0].plate_c, falling.parts()[1].plate_c);
    EXPECT_LT(falling.parts()[0].taken_w, falling.parts()[1].taken_w);
}

TEST_F(Field, a_plate_colder_than_its_refrigerant_takes_up_nothing) {
    Pair pair{heatpump_test::surroundings(900.0, 20.0, 0.4, 0.2, 10.0),
              heatpump_test::surroundings(0.0, -10.0, 0.8, 6.0, 15.0), 30.0};
    PlateField field = of({one_, one_}, pair);
    double slope = 0.0;
    EXPECT_GT(field.taken_w(5.0, 800.0, slope), 0.0);
    EXPECT_EQ(field.parts()[1].taken_w, 0.0);
    EXPECT_NEAR(field.parts()[1].heat.total_w(), 0.0, 1e-3);
    EXPECT_LT(field.parts()[1].plate_c, 5.0);
}

TEST_F(Field, each_plate_has_its_own_frost) {
    const Pair pair{heatpump_test::surroundings(0.0, 1.0, 0.95, 2.0, 5.0),
                    heatpump_test::surroundings(900.0, 1.0, 0.95, 2.0, 5.0), 40.0};
    PlateField field = of({one_, one_}, pair);
    ASSERT_TRUE(pump_.point(field, CondenserZone::uniform(220.0, 40.0), {}, {}).running());
    field.grow_frost(3600.0);
    const double shaded = field.parts()[0].frost.front_kg_m2;
    EXPECT_GT(shaded, 0.0);
    EXPECT_GT(shaded, field.parts()[1].frost.front_kg_m2);
    EXPECT_EQ(field.worst_frost().front_kg_m2, shaded);
    const double lying = field.lying_kg();
    EXPECT_NEAR(field.melt(0.25 * lying), 0.25 * lying, 1e-12);
    EXPECT_NEAR(field.melt(1e3), 0.75 * lying, 1e-12);
    EXPECT_FALSE(field.frost_lies());
}

}  // namespace plate_field_test
