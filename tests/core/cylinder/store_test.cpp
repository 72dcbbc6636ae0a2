#include "core/cylinder/store.h"

#include <gtest/gtest.h>

#include <cmath>
#include <random>
#include <vector>

#include "core/cylinder/tapping.h"

namespace {

using namespace wg;
using cylinder::Geometry;
using cylinder::heat_capacity_j_l_k;
using cylinder::Store;

constexpr double rounding = 1e-9;

Geometry geometry(double volume_l = 250.0, double loss_w_k = 0.0, double conduction = 0.0) {
    Geometry g;
    g.volume_l = volume_l;
    g.height_m = 1.7;
    g.loss_w_k = loss_w_k;
    g.conduction_w_mk = conduction;
    return g;
}

double total_l(const Store& store) {
    double sum = 0.0;
    for (std::size_t i = 0; i < store.count(); ++i)
        sum += store.layer_l(i);
    return sum;
}

TEST(PlugFlow, half_the_volume_leaves_the_outlet_unchanged_and_the_lower_half_cold) {
    Store store(geometry(), 60.0);
    const double heat = store.shift(125.0, 10.0);
    EXPECT_NEAR(heat, 125.0 * 50.0 * heat_capacity_j_l_k, rounding * heat);
    EXPECT_NEAR(store.top_c(), 60.0, rounding);
    EXPECT_NEAR(store.bottom_c(), 10.0, rounding);
    EXPECT_NEAR(store.temperature_at(0.51), 60.0, rounding);
    EXPECT_NEAR(store.temperature_at(0.49), 10.0, rounding);
    EXPECT_NEAR(store.mean_c(), 35.0, rounding);
}

TEST(PlugFlow, many_small_draws_equal_one_large_one_while_layers_suffice) {
    Store once(geometry(), 55.0);
    Store often(geometry(), 55.0);
    const double heat_once = once.shift(100.0, 12.0);
    double heat_often = 0.0;
    for (int i = 0; i < 40; ++i)
        heat_often += often.shift(2.5, 12.0);
    EXPECT_NEAR(heat_often / heat_once, 1.0, rounding);
    EXPECT_EQ(once.count(), often.count());
    EXPECT_NEAR(once.temperature_at(0.39), often.temperature_at(0.39), rounding);
}

TEST(PlugFlow, more_than_the_whole_volume_gives_what_was_stored_and_no_more) {
    Store store(geometry(), 50.0);
    EXPECT_NEAR(store.shift(1000.0, 10.0), 250.0 * 40.0 * heat_capacity_j_l_k, 1e-3);
    EXPECT_NEAR(store.top_c(), 10.0, rounding);
    EXPECT_NEAR(total_l(store), 250.0, rounding);
}

// One mixed volume: the share of (T - Tcold) left after n volumes is exp(-n). N mixed nodes in series after one volume:
// exp(-N) sum N^k/k!, k < N (closed forms).
TEST(FixedGrid, reproduces_mixed_nodes_in_series) {
    constexpr double tolerance = 1e-3;
    const auto outlet_after = [](std::size_t nodes, double volumes) {
        Geometry g = geometry(100.0);
        g.most_layers = 40;
        Store store(g, 1.0, nodes);
        const int pieces = 20000;
        for (int i = 0; i < pieces; ++i) {
            store.shift(100.0 * volumes / pieces, 0.0);
            store.flatten(nodes);
        }
        return store.top_c();
    };
    EXPECT_NEAR(outlet_after(1, 0.5), 0.6065, tolerance);
    EXPECT_NEAR(outlet_after(1, 1.0), 0.3679, tolerance);
    EXPECT_NEAR(outlet_after(1, 2.0), 0.1353, tolerance);
    EXPECT_NEAR(outlet_after(5, 1.0), 0.4405, tolerance);
    EXPECT_NEAR(outlet_after(10, 1.0), 0.4579, tolerance);
    EXPECT_NEAR(outlet_after(20, 1.0), 0.4703, tolerance);
}

// Ta + (T0 - Ta) exp(-UA t / C), 4180 J/(l K).
TEST(StandingLoss, lumped_cooling_follows_the_closed_form) {
    struct Case {
        double volume_l, loss_w_k, start_c, room_c, hours, end_c;
    };
    constexpr double tolerance_k = 0.02;
    for (const Case& c : {Case{250, 1.8, 60, 20, 24, 54.47}, Case{200, 1.5, 55, 20, 12, 52.39}})
        for (const double step_s : {60.0, 600.0, 3600.0}) {
            Store store(geometry(c.volume_l, c.loss_w_k, 1.6), c.start_c, 1);
            double lost = 0.0;
            const double before = store.energy_j();
            for (double t = 0.0; t < c.hours * 3600.0 - 1.0; t += step_s)
                lost += store.rest(c.room_c, step_s);
            EXPECT_NEAR(store.mean_c(), c.end_c, tolerance_k);
            EXPECT_NEAR(lost, before - store.energy_j(), 1e-6 * before);
        }
}

TEST(StandingLoss, stratified_layers_lose_about_the_same_and_the_top_stays_warmest) {
    Store lumped(geometry(250.0, 1.8, 1.6), 60.0, 1);
    Store layered(geometry(250.0, 1.8, 1.6), 60.0, 10);
    for (int i = 0; i < 144; ++i) {
        lumped.rest(20.0, 600.0);
        layered.rest(20.0, 600.0);
    }
    EXPECT_NEAR(layered.mean_c(), lumped.mean_c(), 0.05);
    EXPECT_GE(layered.top_c(), layered.bottom_c());
}

// EN 12897 and EN 15332 test: 65 deg C store, 20 deg C room: 1.5 kWh/24 h is 62.5 W, 1.389 W/K (from memory).
TEST(StandingLoss, conductance_follows_from_the_declared_loss) {
    CylinderModel model;
    model.standing_loss_kwh_24h = 1.5;
    EXPECT_NEAR(cylinder::geometry_of(model, 10).loss_w_k, 1.389, 5e-4);
    model.standing_loss_kwh_24h = 1.8;
    EXPECT_NEAR(cylinder::geometry_of(model, 10).loss_w_k, 1.667, 5e-4);
}

TEST(Buoyancy, inversion_mixes_to_the_mean_and_keeps_energy) {
    Store store(geometry(), 20.0, 2);
    const double before = store.energy_j();
    const std::vector<double> heat{0.0, 40.0 * 125.0 * heat_capacity_j_l_k};
    store.add_heat(heat);
    EXPECT_NEAR(store.top_c(), 40.0, rounding);
    EXPECT_NEAR(store.bottom_c(), 40.0, rounding);
    EXPECT_NEAR(store.energy_j(), before + heat[1], rounding * before);
}

TEST(Buoyancy, mixing_stops_below_water_that_is_warmer_still) {
    Store store(geometry(), 60.0);
    store.shift(150.0, 10.0);
    std::vector<double> heat(store.count(), 0.0);
    heat.back() = 20.0 * 150.0 * heat_capacity_j_l_k;
    store.add_heat(heat);
    EXPECT_NEAR(store.top_c(), 60.0, rounding);
    EXPECT_NEAR(store.bottom_c(), 30.0, rounding);
}

TEST(Immersion, heats_what_is_above_it_and_nothing_below) {
    Store store(geometry(), 20.0);
    store.add_heat_above(0.6, 10.0 * 100.0 * heat_capacity_j_l_k);
    EXPECT_NEAR(store.temperature_at(0.61), 30.0, 1e-6);
    EXPECT_NEAR(store.temperature_at(0.59), 20.0, 1e-6);
    Store half(geometry(), 55.0);
    half.shift(200.0, 10.0);  // 50 l hot on top of 200 l cold
    half.add_heat_above(0.6, 9.0 * 50.0 * heat_capacity_j_l_k);
    EXPECT_NEAR(half.top_c(), 55.0, 1e-6);  // the cold water above the heater warms first
    EXPECT_NEAR(half.temperature_at(0.65), 19.0, 1e-6);
}

TEST(MixingValve, takes_just_the_hot_share_that_gives_the_wanted_energy) {
    Store store(geometry(), 60.0);
    const double wanted_j = 30.0 * 30.0 * heat_capacity_j_l_k;  // 30 l at 40 over 10 deg C
    const auto drawn = store.draw(wanted_j, 40.0, 10.0);
    EXPECT_NEAR(drawn.useful_j, wanted_j, rounding * wanted_j);
    EXPECT_NEAR(drawn.hot_l, 30.0 * 30.0 / 50.0, 1e-9);
    EXPECT_EQ(drawn.shortfall_j, 0.0);
}

TEST(MixingValve, water_colder_than_wanted_is_a_shortfall_of_the_missing_heat) {
    Store store(geometry(), 35.0);
    const double wanted_j = 30.0 * 30.0 * heat_capacity_j_l_k;
    const auto drawn = store.draw(wanted_j, 40.0, 10.0);
    EXPECT_NEAR(drawn.hot_l, 30.0, 1e-9);
    EXPECT_NEAR(drawn.useful_j, 30.0 * 25.0 * heat_capacity_j_l_k, 1e-3);
    EXPECT_NEAR(drawn.useful_j + drawn.shortfall_j, wanted_j, 1e-3);
}

TEST(MixingValve, a_draw_that_empties_the_cylinder_ends_cold) {
    Store store(geometry(100.0), 50.0);
    const double wanted_j = 200.0 * 30.0 * heat_capacity_j_l_k;  // 200 l at 40
    const auto drawn = store.draw(wanted_j, 40.0, 10.0);
    EXPECT_NEAR(drawn.useful_j, 100.0 * 40.0 * heat_capacity_j_l_k, 1e-3);
    EXPECT_NEAR(drawn.useful_j + drawn.shortfall_j, wanted_j, 1e-3);
    EXPECT_NEAR(store.top_c(), 10.0, rounding);
}

TEST(AnySequence, keeps_volume_and_order) {
    constexpr unsigned seed = 812;
    std::mt19937 random(seed);
    std::uniform_real_distribution<double> share(0.0, 1.0);
    Store store(geometry(250.0, 1.8, 1.6), 50.0, 10);
    std::vector<double> shares(Store::capacity);
    for (int i = 0; i < 20000; ++i) {
        const double cold = 5.0 + 10.0 * share(random);
        switch (random() % 4) {
            case 0: store.draw(4e6 * share(random), 40.0, cold); break;
            case 1: {
                store.band_shares(0.0, 0.6, shares);
                double sum = 0.0;
                for (std::size_t k = 0; k < store.count(); ++k) {
                    sum += shares[k];
                    shares[k] *= 2e6;
                }
                EXPECT_NEAR(sum, 1.0, rounding);
                store.add_heat(shares);
                break;
            }
            case 2: store.add_heat_above(0.6, 5e5); break;
            default: store.rest(18.0, 600.0); break;
        }
        ASSERT_NEAR(total_l(store), 250.0, 1e-6) << "seed " << seed << " step " << i;
        for (std::size_t k = 1; k < store.count(); ++k)
            ASSERT_LE(store.layer_c(k), store.layer_c(k - 1));
        ASSERT_LE(store.count(), 10u);
        if (store.mean_c() > 80.0) store.shift(200.0, 10.0);
    }
}

TEST(AnySequence, every_operation_balances_against_the_stored_energy) {
    constexpr unsigned seed = 16147;
    std::mt19937 random(seed);
    std::uniform_real_distribution<double> share(0.0, 1.0);
    Store store(geometry(200.0, 1.5, 1.6), 50.0, 10);
    for (int i = 0; i < 20000; ++i) {
        const double before = store.energy_j();
        const double cold = 5.0 + 10.0 * share(random);
        double change = 0.0;
        switch (random() % 3) {
            case 0: change = -store.draw(3e6 * share(random), 40.0, cold).useful_j; break;
            case 1:
                change = 8e5 * share(random);
                store.add_heat_above(0.5, change);
                break;
            default: change = -store.rest(18.0, 600.0); break;
        }
        // Taking v litres at T and adding v at cold changes the store by just the heat over cold.
        ASSERT_NEAR(store.energy_j() - before, change, 1e-8 * before) << "seed " << seed << " step " << i;
        if (store.mean_c() > 80.0) store.shift(150.0, 10.0);
    }
}

TEST(Slices, resampling_keeps_the_mean) {
    Store store(geometry(), 60.0);
    store.shift(60.0, 10.0);
    store.shift(33.0, 14.0);
    std::array<double, 10> slices{};
    store.resample(slices);
    double sum = 0.0;
    for (const double s : slices)
        sum += s / 10.0;
    EXPECT_NEAR(sum, store.mean_c(), rounding);
    EXPECT_NEAR(slices[0], 60.0, rounding);
    EXPECT_NEAR(slices[9], (60.0 * 10.0 + 33.0 * 14.0) / 93.0, rounding);  // warmer inflow mixes with the colder
}

// Reference energies of EU 812/2013, Annex VII table 3.
TEST(TappingCycles, add_up_to_the_reference_energy) {
    struct Case {
        TappingCycle cycle;
        double kwh;
        std::size_t count;
    };
    for (const Case& c :
         {Case{TappingCycle::s, 2.100, 11}, Case{TappingCycle::m, 5.845, 23}, Case{TappingCycle::l, 11.655, 24},
          Case{TappingCycle::xl, 19.07, 30}, Case{TappingCycle::xxl, 24.53, 30}}) {
        const auto day = cylinder::tapping_day(c.cycle);
        ASSERT_EQ(day.count, c.count);
        double sum = 0.0;
        int before = -1;
        for (std::size_t i = 0; i < day.count; ++i) {
            sum += day.draws[i].useful_kwh;
            EXPECT_GT(day.draws[i].minute_of_day, before);
            before = day.draws[i].minute_of_day;
        }
        EXPECT_NEAR(sum, c.kwh, 1e-9);
        EXPECT_EQ(day.reference_kwh, c.kwh);
        EXPECT_LT(before, 24 * 60);
    }
}

}  // namespace
