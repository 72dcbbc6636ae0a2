#include "core/cylinder/mixed_water.h"

#include <gtest/gtest.h>

namespace wg::cylinder {
namespace mixed_water_test {

// By hand: 200 l at 55 with cold of 10 carry 200 * 45 litre-kelvins, of which a litre at 40 takes 30.
TEST(MixedWater, follows_from_the_heat_in_the_store) {
    EXPECT_NEAR(mixed_litres(200.0, 1.0, 55.0, 10.0, 40.0), 300.0, 1e-9);
    EXPECT_NEAR(mixed_litres(200.0, 0.85, 55.0, 10.0, 40.0), 255.0, 1e-9);
    EXPECT_NEAR(mixed_litres(200.0, 1.0, 40.0, 10.0, 40.0), 200.0, 1e-9) << "as hot as the tap: all of it, unmixed";
}

TEST(MixedWater, nothing_comes_of_a_store_colder_than_the_tap) {
    EXPECT_EQ(mixed_litres(200.0, 1.0, 38.0, 10.0, 40.0), 0.0);
    EXPECT_EQ(mixed_litres(200.0, 1.0, 55.0, 40.0, 40.0), 0.0);
    EXPECT_EQ(mixed_litres(0.0, 1.0, 55.0, 10.0, 40.0), 0.0);
}

}  // namespace mixed_water_test
}  // namespace wg::cylinder
