// Heat of water against IAPWS-95; closed forms of cooling and of plug flow.

#include <gtest/gtest.h>

#include <cmath>
#include <random>
#include <vector>

#include "core/cylinder/store.h"
#include "tests/reference/heat_values.h"

namespace {

using namespace wg;
using cylinder::Geometry;
using cylinder::heat_capacity_j_l_k;
using cylinder::Store;

/// J for a litre measured at `cold_c`, rows of 5 K.
double outside_heat_j_l(double cold_c, double warm_c) {
    const auto& rows = outside::heat_values()["water"];
    const auto row = [&](double t) { return rows[static_cast<std::size_t>(std::lround(t / 5.0) - 1)]; };
    EXPECT_EQ(row(cold_c)[0].get<double>(), cold_c);
    return row(cold_c)[1].get<double>() * 1e-3 * (row(warm_c)[3].get<double>() - row(cold_c)[3].get<double>());
}

// One figure, 4180 J/(l K), for all temperatures; litres as they come in cold.
TEST(OutsideWater, heat_to_warm_a_volume_is_that_of_iapws) {
    constexpr double tolerance = 0.003;  // worst 5 to 10 deg C; 0.1 % in the range of use
    for (double cold = 5.0; cold <= 20.0; cold += 5.0)
        for (double warm = cold + 5.0; warm <= 80.0; warm += 5.0) {
            const double ours = heat_capacity_j_l_k * (warm - cold);
            EXPECT_NEAR(ours / outside_heat_j_l(cold, warm), 1.0, warm < 40.0 ? 0.006 : tolerance) << cold << warm;
        }
    for (const double warm : {45.0, 50.0, 55.0, 60.0})
        EXPECT_NEAR(heat_capacity_j_l_k * (warm - 10.0) / outside_heat_j_l(10.0, warm), 1.0, 0.001) << warm;
}

// Hand-book example: 250 l from 10 to 55 deg C is 13.06 kWh (250 x 4.18 x 45 / 3600); with IAPWS-95 13.07.
TEST(OutsideWater, a_cylinder_takes_thirteen_kilowatt_hours) {
    Geometry g;
    g.volume_l = 250.0;
    g.loss_w_k = 0.0;
    Store store(g, 10.0);
    const double heat_j = 250.0 * outside_heat_j_l(10.0, 55.0);
    EXPECT_NEAR(heat_j / 3.6e6, 13.07, 0.01);
    store.add_heat(std::vector<double>{heat_j});
    EXPECT_NEAR(store.mean_c(), 55.0, 0.03);
}

// T = Ta + (T0 - Ta) exp(-UA t / C) for any step, volume and loss, warmer or colder than the room.
TEST(OutsideCooling, one_layer_follows_the_closed_form_to_rounding) {
    std::mt19937 random(4180);
    std::uniform_real_distribution<double> share;
    for (int i = 0; i < 200; ++i) {
        Geometry g;
        g.volume_l = 80.0 + 400.0 * share(random);
        g.loss_w_k = 0.5 + 3.0 * share(random);
        const double start_c = 5.0 + 70.0 * share(random);
        const double room_c = 5.0 + 25.0 * share(random);
        const double step_s = 60.0 + 3540.0 * share(random);
        Store store(g, start_c, 1);
        for (int n = 0; n < 50; ++n)
            store.rest(room_c, step_s);
        const double c = g.volume_l * heat_capacity_j_l_k;
        const double expected = room_c + (start_c - room_c) * std::exp(-g.loss_w_k * 50.0 * step_s / c);
        // The decay of a layer is a polynomial of the step: short of the exponential by its cube.
        EXPECT_NEAR(store.mean_c(), expected, 2e-3) << "case " << i;
    }
}

// Without mixing or loss a draw moves the boundary between hot and cold by just its share of the volume.
TEST(OutsidePlugFlow, draws_of_any_size_move_the_thermocline_by_their_volume) {
    std::mt19937 random(250);
    std::uniform_real_distribution<double> share;
    for (int i = 0; i < 200; ++i) {
        Geometry g;
        g.volume_l = 100.0 + 300.0 * share(random);
        g.loss_w_k = 0.0;
        g.conduction_w_mk = 0.0;
        Store store(g, 60.0);
        double drawn_l = 0.0;
        while (true) {
            const double next_l = 0.001 + 40.0 * share(random) * share(random);
            if (drawn_l + next_l > 0.999 * g.volume_l) break;
            drawn_l += next_l;
            EXPECT_NEAR(store.shift(next_l, 10.0), next_l * 50.0 * heat_capacity_j_l_k, 1e-3);
            const double boundary = drawn_l / g.volume_l;
            ASSERT_NEAR(store.temperature_at(boundary + 1e-6), 60.0, 1e-9) << "case " << i;
            ASSERT_NEAR(store.temperature_at(boundary - 1e-6), 10.0, 1e-9) << "case " << i;
        }
        EXPECT_NEAR(store.energy_j(), heat_capacity_j_l_k * (60.0 * (g.volume_l - drawn_l) + 10.0 * drawn_l), 1.0);
    }
}

}  // namespace
