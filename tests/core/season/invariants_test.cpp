// What must hold of a year whatever its equipment: step and layer independence, monotony, the same bits again.

#include <gtest/gtest.h>

#include <cmath>
#include <cstring>
#include <future>

#include "core/season/season.h"
#include "tests/core/season/fixture.h"

namespace invariants_test {

using namespace wg;
using season::Input;
using season::Options;
using season::Year;

Input temperate(int plates) {
    Input input = season_test::equipment(plates, plates == 1 ? 16.0 : 18.0);
    season_test::add_weather(input);
    input.demand.cycle = TappingCycle::l;
    return input;
}

Year year_of(const Input& input, Options options = {}) {
    const auto result = season::run(input, options);
    EXPECT_TRUE(result.ok()) << (result.ok() ? "" : text_of(result.problems()));
    return result.ok() ? result.value() : Year{};
}

Options quick() {
    Options options;
    options.keep_hours = false;
    return options;
}

TEST(Invariants, electricity_of_a_year_does_not_hang_on_the_step) {
    constexpr double tolerance = 0.01;
    for (const int plates : {1, 2}) {
        const Input input = temperate(plates);
        Options options = quick();
        const double ten = year_of(input, options).total.electricity_kwh();
        options.step_s = 300.0;
        const double five = year_of(input, options).total.electricity_kwh();
        options.step_s = 60.0;
        const double one = year_of(input, options).total.electricity_kwh();
        EXPECT_NEAR(five / ten, 1.0, tolerance) << plates;
        EXPECT_NEAR(ten / one, 1.0, tolerance) << plates;
        RecordProperty("halving_permille_" + std::to_string(plates), std::to_string(1000.0 * (five / ten - 1.0)));
        RecordProperty("minute_permille_" + std::to_string(plates), std::to_string(1000.0 * (ten / one - 1.0)));
    }
}

// Layers move freely, so their number mixes less than nodes of a fixed grid do; docs/handbook/season.md has the
// figures.
TEST(Invariants, electricity_of_a_year_changes_by_less_than_two_percent_with_twice_the_layers) {
    constexpr double tolerance = 0.02;
    for (const int plates : {1, 2}) {
        const Input input = temperate(plates);
        Options options = quick();
        const double ten = year_of(input, options).total.electricity_kwh();
        options.nodes = 20;
        const double twenty = year_of(input, options).total.electricity_kwh();
        options.nodes = 40;
        const double forty = year_of(input, options).total.electricity_kwh();
        EXPECT_NEAR(twenty / ten, 1.0, tolerance) << plates;
        EXPECT_NEAR(forty / twenty, 1.0, tolerance) << plates;
        RecordProperty("twenty_permille_" + std::to_string(plates), std::to_string(1000.0 * (twenty / ten - 1.0)));
        RecordProperty("forty_permille_" + std::to_string(plates), std::to_string(1000.0 * (forty / twenty - 1.0)));
    }
}

TEST(Invariants, better_insulation_never_raises_loss_or_electricity) {
    Input input = temperate(2);
    double loss = 1e9;
    double electricity = 1e9;
    for (const double kwh_24h : {3.0, 2.4, 1.9, 1.4, 1.0, 0.6}) {
        input.cylinder.standing_loss_kwh_24h = kwh_24h;
        const Year year = year_of(input, quick());
        EXPECT_LT(year.total.standing_loss_kwh, loss) << kwh_24h;
        EXPECT_LT(year.total.electricity_kwh(), electricity) << kwh_24h;
        loss = year.total.standing_loss_kwh;
        electricity = year.total.electricity_kwh();
    }
}

// Five kelvins each time; the pump alone heats.
TEST(Invariants, hotter_set_point_never_raises_the_factor_with_any_refrigerant) {
    for (const Refrigerant kind : {Refrigerant::r290, Refrigerant::r1234yf, Refrigerant::r513a}) {
        const auto fluid = season_test::properties(name_of(kind));
        Input input = temperate(2);
        input.block.refrigerant = kind;
        if (kind == Refrigerant::r290) input.block.displacement_cm3 = 12.0;
        input.refrigerant = fluid.get();
        input.cylinder.immersion_w = 0.0;
        double factor = 1e9;
        for (const double set_point_c : {45.0, 50.0, 55.0, 60.0}) {
            input.demand.set_point_c = set_point_c;
            const Year year = year_of(input, quick());
            EXPECT_EQ(year.total.immersion_kwh, 0.0);
            EXPECT_LT(year.seasonal_factor, factor) << name_of(kind) << " " << set_point_c;
            factor = year.seasonal_factor;
        }
    }
}

// Drop and heat of a line grow with its length. The pump alone heats: where a small plate sits at the edge of the
// envelope a longer line takes capacity, the plate frosts and rests less, and the immersion heater (a factor of 1) has
// less to do.
TEST(Invariants, longer_lines_never_raise_the_factor) {
    for (const int plates : {1, 2}) {
        Input input = temperate(plates);
        input.cylinder.immersion_w = 0.0;
        double factor = 1e9;
        for (const double metres : {0.0, 3.0, 6.0, 12.0, 20.0, 30.0}) {
            input.line_ua_w_k = 0.25 * metres;
            input.suction_drop_k = 0.06 * metres;
            const double longer = year_of(input, quick()).seasonal_factor;
            EXPECT_LT(longer, factor) << metres;
            factor = longer;
        }
    }
}

TEST(Invariants, first_law_closes_in_every_month_with_every_refrigerant) {
    constexpr double step_closure = 1e-6;
    constexpr double month_closure = 1e-3;
    for (const Refrigerant kind : {Refrigerant::r134a, Refrigerant::r290, Refrigerant::r1234yf, Refrigerant::r513a}) {
        const auto fluid = season_test::properties(name_of(kind));
        Input input = temperate(1);
        input.block.refrigerant = kind;
        input.refrigerant = fluid.get();
        input.line_ua_w_k = 2.0;
        const Year year = year_of(input, quick());
        EXPECT_LT(year.worst_step_closure, step_closure) << name_of(kind);
        for (const auto& m : year.months) {
            const double circuit = m.light_kwh + m.air_kwh + m.long_wave_kwh + m.latent_kwh + m.line_kwh +
                                   m.compressor_kwh + m.defrost_kwh - m.shell_loss_kwh - m.condenser_kwh;
            const double water =
                m.condenser_kwh + m.immersion_kwh - m.drawn_kwh - m.standing_loss_kwh - m.store_change_kwh;
            EXPECT_LT(std::abs(circuit), month_closure * m.condenser_kwh) << name_of(kind);
            EXPECT_LT(std::abs(water), month_closure * m.condenser_kwh) << name_of(kind);
        }
    }
}

/// Bit patterns of everything a year tells.
bool same_bits(const Year& a, const Year& b) {
    const auto equal = [](double x, double y) { return std::memcmp(&x, &y, sizeof x) == 0; };
    const auto& h = *a.hours;
    const auto& g = *b.hours;
    return equal(a.seasonal_factor, b.seasonal_factor) && equal(a.useful_factor, b.useful_factor) &&
           equal(a.total.electricity_kwh(), b.total.electricity_kwh()) &&
           equal(a.total.condenser_kwh, b.total.condenser_kwh) && equal(a.lowest_top_c, b.lowest_top_c) &&
           equal(a.worst_step_closure, b.worst_step_closure) && h.condenser_w == g.condenser_w &&
           h.electric_w == g.electric_w && h.plate_c == g.plate_c && h.top_c == g.top_c && h.node_c == g.node_c;
}

TEST(Invariants, one_thread_and_two_give_the_same_bits) {
    const Input one = temperate(1);
    const Input two = temperate(2);
    const Year one_alone = year_of(one);
    const Year two_alone = year_of(two);
    auto beside = std::async(std::launch::async, [&] { return season::run(one).value(); });
    const Year two_together = season::run(two).value();
    const Year one_together = beside.get();
    EXPECT_TRUE(same_bits(one_alone, one_together));
    EXPECT_TRUE(same_bits(two_alone, two_together));
    EXPECT_FALSE(same_bits(one_alone, two_alone));
}

}  // namespace invariants_test
