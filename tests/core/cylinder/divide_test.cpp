#include <gtest/gtest.h>

#include <vector>

#include "core/cylinder/store.h"

namespace {

using wg::cylinder::Store;

TEST(Division, cuts_mixed_water_into_slices_that_hold_the_same_heat) {
    Store store({}, 40.0);
    store.shift(30.0, 10.0);
    const double before_j = store.energy_j();
    const std::size_t before = store.count();
    store.divide(0.6, 4);
    EXPECT_EQ(store.count(), before + 3);
    EXPECT_NEAR(store.energy_j(), before_j, 1e-6 * before_j);
    EXPECT_DOUBLE_EQ(store.top_c(), 40.0);
    EXPECT_DOUBLE_EQ(store.bottom_c(), 10.0);
    store.divide(0.6, 4);
    EXPECT_EQ(store.count(), before + 3) << "the boundaries are there already";
}

TEST(Division, lets_slices_take_different_heat) {
    Store store({}, 20.0);
    store.divide(0.6, 4);
    ASSERT_EQ(store.count(), 4U);
    store.add_heat(std::vector<double>{4e6, 3e6, 2e6, 1e6});
    EXPECT_GT(store.top_c(), store.bottom_c() + 1.0);
    EXPECT_NEAR(store.energy_j(), 250.0 * 4180.0 * 20.0 + 1e7, 1.0);
}

}  // namespace
