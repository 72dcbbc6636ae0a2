#include <gtest/gtest.h>

#include "core/cylinder/store.h"

namespace {

using wg::cylinder::Store;

TEST(Circulation, takes_its_heat_and_no_more_whatever_the_volume) {
    for (const double litres : {0.01, 3.0, 40.0, 62.5, 500.0})
        for (const double height : {0.2, 0.5, 0.9}) {
            Store store({}, 60.0);
            store.shift(90.0, 10.0);
            store.add_heat_above(0.7, 2e6);
            const double before_j = store.energy_j();
            const double lost_j = store.circulate(litres, 1.5e5, height);
            EXPECT_EQ(lost_j, 1.5e5);
            EXPECT_NEAR(before_j - store.energy_j(), lost_j, 1e-3) << litres << ' ' << height;
            double sum_l = 0.0;
            for (std::size_t i = 0; i < store.count(); ++i) {
                sum_l += store.layer_l(i);
                if (i > 0) EXPECT_LE(store.layer_c(i), store.layer_c(i - 1));
            }
            EXPECT_NEAR(sum_l, 250.0, 1e-6);
            EXPECT_LE(store.count(), store.geometry().most_layers);
        }
}

TEST(Circulation, leaves_the_water_below_the_return_alone_while_it_stays_warmer) {
    Store store({}, 60.0);
    store.shift(100.0, 10.0);
    store.circulate(5.0, 5.0 * 4180.0 * 5.0, 0.5);
    EXPECT_NEAR(store.bottom_c(), 10.0, 1e-9);
    EXPECT_NEAR(store.top_c(), 60.0, 1e-9);
}

TEST(Circulation, of_nothing_is_nothing) {
    Store store({}, 50.0);
    EXPECT_EQ(store.circulate(0.0, 100.0, 0.5), 0.0);
    EXPECT_EQ(store.circulate(-3.0, 100.0, 0.5), 0.0);
}

}  // namespace
