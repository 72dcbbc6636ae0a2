#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

#include "core/season/schedule.h"
#include "tests/core/season/fixture.h"

namespace control_test {

using namespace wg;
using season::Input;
using season::MonthSums;
using season::Options;
using season::Year;

constexpr double step_closure = 1e-6;

Input house() {
    Input input = season_test::equipment(2, 18.0);
    season_test::add_weather(input);
    input.demand.cycle = TappingCycle::l;
    input.first_weekday = 4;
    return input;
}

Options quick(double step_s = 900.0) {
    Options options;
    options.step_s = step_s;
    options.keep_hours = false;
    return options;
}

Year year_of(const Input& input, const Options& options = quick()) {
    const auto result = season::run(input, options);
    EXPECT_TRUE(result.ok()) << (result.ok() ? "" : text_of(result.problems()));
    return result.ok() ? result.value() : Year{};
}

Input everything() {
    Input input = house();
    Demand& d = input.demand;
    d.draw_source = DrawSource::household;
    d.holidays = {{7, 10, 7, 20, ""}, {12, 24, 1, 2, ""}};
    d.control.run_windows = {{10.0, 17.0, true, true, ""}, {22.0, 3.0, true, false, ""}};
    d.control.set_back_windows = {{0.0, 5.0, true, true, ""}};
    d.control.surplus.raise_k = 5.0;
    d.control.holiday_rule = HolidayRule::frost_safe;
    d.control.hygiene_before_return = true;
    d.tariff.low_windows = {{21.0, 6.0, true, true, ""}, {0.0, 24.0, false, true, ""}};
    d.recirculation = {true, 80.0, {{6.0, 8.2, true, true, ""}, {18.0, 21.0, true, true, ""}}, ""};
    d.hygiene.rule = HygieneRule::weekly;
    for (const double light : input.groups[0].front_w_m2)
        input.surplus_w.push_back(std::max(0.0, 4.0 * light - 300.0));
    return input;
}

TEST(WithEverythingOn, balances_close_in_each_step_and_the_year_repeats_to_the_bit) {
    const Input input = everything();
    for (const double step_s : {300.0, 600.0, 900.0}) {
        const Year year = year_of(input, quick(step_s));
        EXPECT_LT(year.worst_step_closure, step_closure) << step_s;
        EXPECT_LT(year.closure_water, step_closure) << step_s;
        EXPECT_LT(year.closure_circuit, step_closure) << step_s;
        const MonthSums& t = year.total;
        EXPECT_GT(t.recirculation_kwh, 50.0);
        EXPECT_GT(t.hygiene_kwh, 10.0);
        EXPECT_GT(t.surplus_kwh, 50.0);
        EXPECT_GT(t.low_tariff_kwh, 10.0);
        EXPECT_GT(t.pump_waits_h, 100.0);
        EXPECT_LE(t.surplus_kwh + t.low_tariff_kwh, t.electricity_kwh());
        EXPECT_LE(t.hygiene_kwh, t.compressor_kwh + t.immersion_kwh);
        EXPECT_NEAR(t.drawn_kwh + t.shortfall_kwh, t.wanted_kwh, 1e-6);
    }
    const Year a = year_of(input);
    const Year b = year_of(input);
    EXPECT_EQ(a.total.compressor_kwh, b.total.compressor_kwh);
    EXPECT_EQ(a.total.short_litres, b.total.short_litres);
}

TEST(WithEverythingOn, steps_of_five_and_fifteen_minutes_agree) {
    const Input input = everything();
    const Year five = year_of(input, quick(300.0));
    const Year fifteen = year_of(input, quick(900.0));
    EXPECT_NEAR(fifteen.total.electricity_kwh() / five.total.electricity_kwh(), 1.0, 0.03);
    EXPECT_NEAR(fifteen.total.recirculation_kwh / five.total.recirculation_kwh, 1.0, 0.02);
    EXPECT_NEAR(fifteen.total.wanted_kwh / five.total.wanted_kwh, 1.0, 1e-9);
}

TEST(NothingAsked, a_tariff_alone_changes_no_heat) {
    const Year plain = year_of(house());
    Input with = house();
    with.demand.tariff.low_windows = {{22.0, 6.0, true, true, ""}};
    const Year told = year_of(with);
    // Without orders hours that only cool pass in one step, with orders in short ones.
    EXPECT_NEAR(plain.total.compressor_kwh / told.total.compressor_kwh, 1.0, 1e-4);
    EXPECT_EQ(plain.total.drawn_kwh, told.total.drawn_kwh);
    EXPECT_EQ(plain.total.low_tariff_kwh, 0.0);
    EXPECT_GT(told.total.low_tariff_kwh, 0.1 * told.total.electricity_kwh());
    EXPECT_LT(told.total.low_tariff_kwh, 0.9 * told.total.electricity_kwh());
}

TEST(RunWindows, the_pump_starts_only_inside_unless_water_falls_below_always) {
    Input input = house();
    input.demand.cycle = TappingCycle::m;  // never draws the cylinder down to 'always below'
    input.demand.control.run_windows = {{11.0, 16.0, true, true, ""}};
    input.demand.control.always_below_c = 10.0;
    Options options = quick();
    options.keep_hours = true;
    const Year year = year_of(input, options);
    double outside = 0.0;
    double all = 0.0;
    for (std::size_t h = 0; h < 8760; ++h) {
        const bool open = h % 24 >= 11 && h % 24 < 16;
        all += year.hours->condenser_w[h];
        // The least run of a start in the last minute and the hour after it.
        if (!open && h % 24 != 16) outside += std::max(0.0f, year.hours->condenser_w[h]);
    }
    EXPECT_LT(outside, 1e-6 * all);
    EXPECT_GT(year.total.pump_waits_h, 500.0);
    // A household that does draw it down: with 'always below' the pump helps outside the windows, too.
    input.demand.cycle = TappingCycle::xl;
    const Year left = year_of(input);
    input.demand.control.always_below_c = 45.0;
    const Year guarded = year_of(input);
    EXPECT_GT(left.total.immersion_kwh, 0.0);
    EXPECT_LT(guarded.total.immersion_kwh, left.total.immersion_kwh);
}

TEST(Surplus, the_signal_raises_the_share_of_own_electricity_and_the_store_temperature) {
    Input input = house();
    for (const double light : input.groups[0].front_w_m2)
        input.surplus_w.push_back(std::max(0.0, 5.0 * light - 300.0));
    input.demand.control.surplus.raise_k = 0.0;
    const Year plain = year_of(input);
    // Without orders hours that only cool pass in one step.
    EXPECT_NEAR(plain.total.compressor_kwh / year_of(house()).total.compressor_kwh, 1.0, 1e-4);
    input.demand.control.surplus.raise_k = 6.0;
    const Year raised = year_of(input);
    EXPECT_GT(raised.total.surplus_kwh, 1.05 * plain.total.surplus_kwh);
    EXPECT_GT(raised.total.standing_loss_kwh, plain.total.standing_loss_kwh);
    EXPECT_LT(raised.seasonal_factor, 1.02 * plain.seasonal_factor);
}

TEST(SetBack, saves_standing_loss) {
    Input input = house();
    const Year plain = year_of(input);
    input.demand.control.set_back_windows = {{22.0, 5.0, true, true, ""}};
    input.demand.control.set_back_k = 8.0;
    const Year back = year_of(input);
    EXPECT_LT(back.total.standing_loss_kwh, plain.total.standing_loss_kwh);
}

TEST(Holidays, nothing_is_drawn_and_off_uses_standby_alone) {
    Input input = house();
    input.demand.holidays = {{7, 1, 7, 31, ""}};
    const Year usual = year_of(input);
    EXPECT_EQ(usual.months[6].drawn_kwh, 0.0);
    EXPECT_GT(usual.months[6].compressor_kwh, 1.0) << "kept warm";
    input.demand.control.holiday_rule = HolidayRule::off;
    const Year off = year_of(input);
    // The set is on again from noon of the last day.
    EXPECT_LT(off.months[6].compressor_kwh, 0.5 * usual.months[6].compressor_kwh);
    EXPECT_LT(off.total.electricity_kwh(), usual.total.electricity_kwh());
    EXPECT_EQ(off.hygiene_runs, 0);
    input.demand.control.hygiene_before_return = true;
    EXPECT_EQ(year_of(input).hygiene_runs, 1);
    EXPECT_EQ(off.total.short_litres, 0.0) << "warm when they are back";
}

TEST(Holidays, frost_safe_keeps_a_freezing_room_from_freezing_the_store_and_off_does_not_heat) {
    Input input = house();
    input.room_c = -10.0;
    input.demand.holidays = {{1, 10, 2, 28, ""}};
    input.demand.control.holiday_rule = HolidayRule::frost_safe;
    Options options = quick();
    options.keep_hours = true;
    const Year safe = year_of(input, options);
    input.demand.control.holiday_rule = HolidayRule::off;
    const Year off = year_of(input, options);
    const auto lowest = [](const Year& year) {
        return *std::min_element(year.hours->top_c.begin() + 24 * 15, year.hours->top_c.begin() + 24 * 58);
    };
    EXPECT_GT(lowest(safe), 4.0f);
    EXPECT_LT(lowest(off), 4.0f);
}

TEST(BackUp, never_leaves_the_household_short_when_the_pump_cannot_run) {
    Input input = house();
    for (auto* series : {&input.air_c, &input.dew_point_c, &input.sky_k})
        for (double& value : *series)
            value -= 25.0;
    const Year helped = year_of(input);
    input.demand.control.back_up = BackUpRule::never;
    const Year alone = year_of(input);
    EXPECT_GT(helped.total.immersion_kwh, 100.0);
    EXPECT_EQ(alone.total.immersion_kwh, 0.0);
    EXPECT_GT(alone.total.short_litres, helped.total.short_litres);
    EXPECT_LT(alone.coldest_draw_c, helped.coldest_draw_c + 1e-9);
    EXPECT_GT(alone.total.short_h, 24.0);
}

TEST(HygieneProgramme, runs_when_asked_and_costs_electricity) {
    Input input = house();
    const Year plain = year_of(input);
    EXPECT_EQ(plain.hygiene_runs, 0);
    EXPECT_EQ(plain.total.hygiene_kwh, 0.0);
    EXPECT_NE(plain.models.find("no hygiene programme"), std::string::npos);
    input.demand.hygiene.rule = HygieneRule::weekly;
    const Year weekly = year_of(input);
    EXPECT_EQ(weekly.hygiene_runs, 52);
    EXPECT_EQ(weekly.models.find("no hygiene programme"), std::string::npos);
    EXPECT_GT(weekly.total.electricity_kwh(), plain.total.electricity_kwh());
    input.demand.hygiene.rule = HygieneRule::daily;
    const Year daily = year_of(input);
    EXPECT_EQ(daily.hygiene_runs, 365);
    EXPECT_GT(daily.total.hygiene_kwh, 3.0 * weekly.total.hygiene_kwh);
}

// The heater sits at 0.6 of the height: what is below stays as the pump left it.
TEST(HygieneProgramme, the_immersion_heater_alone_reaches_the_upper_part_only) {
    Input input = house();
    input.demand.hygiene.rule = HygieneRule::weekly;
    input.demand.hygiene.target_c = 65.0;
    input.demand.hygiene.source = HygieneSource::immersion;
    const Year year = year_of(input);
    EXPECT_EQ(year.hygiene_upper_only, year.hygiene_runs);
    // A heater near the bottom reaches all.
    input.cylinder.immersion_height = 0.05;
    const Year low = year_of(input);
    EXPECT_EQ(low.hygiene_upper_only + low.hygiene_missed, 0);
    // None at all: the target is held nowhere.
    input.cylinder.immersion_w = 0.0;
    const Year none = year_of(input);
    EXPECT_EQ(none.hygiene_missed, none.hygiene_runs);
}

TEST(HygieneProgramme, pump_first_needs_less_immersion_heat_than_the_heater_alone) {
    Input input = house();
    input.cylinder.immersion_height = 0.05;
    input.demand.hygiene.rule = HygieneRule::daily;
    input.demand.hygiene.source = HygieneSource::immersion;
    const Year alone = year_of(input);
    input.demand.hygiene.source = HygieneSource::pump_then_immersion;
    const Year first = year_of(input);
    EXPECT_LT(first.total.immersion_kwh, 0.7 * alone.total.immersion_kwh);
    EXPECT_LT(first.total.electricity_kwh(), alone.total.electricity_kwh());
    // Draws of the morning end some runs of cold nights, in which the pump works longest.
    EXPECT_LT(first.hygiene_missed, 0.05 * first.hygiene_runs);
}

TEST(Loop, loses_what_it_states_and_costs_more_electricity) {
    Input input = house();
    const Year plain = year_of(input);
    input.demand.recirculation = {true, 60.0, {}, ""};
    const Year always = year_of(input);
    // 60 W at 35 K over the room; the top stays 25 to 40 K over it.
    EXPECT_GT(always.total.recirculation_kwh, 8.76 * 60.0 * 0.6);
    EXPECT_LT(always.total.recirculation_kwh, 8.76 * 60.0 * 1.2);
    EXPECT_GT(always.total.electricity_kwh(), plain.total.electricity_kwh() + 80.0);
    EXPECT_LT(always.useful_factor, plain.useful_factor);
    input.demand.recirculation.windows = {{6.0, 9.0, true, true, ""}};
    const Year some = year_of(input);
    EXPECT_NEAR(some.total.recirculation_kwh / always.total.recirculation_kwh, 3.0 / 24.0, 0.02);
}

TEST(Comfort, hours_hold_what_the_months_sum) {
    Input input = house();
    input.cylinder.volume_l = 90.0;
    input.cylinder.immersion_w = 0.0;
    input.demand.draw_source = DrawSource::household;
    input.demand.household.persons = 6;
    Options options = quick();
    options.keep_hours = true;
    const Year year = year_of(input, options);
    const auto& h = *year.hours;
    double litres = 0.0;
    double wanted_kwh = 0.0;
    for (std::size_t i = 0; i < 8760; ++i) {
        litres += static_cast<double>(h.short_litres[i]);
        wanted_kwh += static_cast<double>(h.wanted_w[i]) / 1000.0;
    }
    EXPECT_GT(year.total.short_litres, 100.0);
    EXPECT_NEAR(litres / year.total.short_litres, 1.0, 1e-4);
    EXPECT_NEAR(wanted_kwh / year.total.wanted_kwh, 1.0, 1e-4);
    EXPECT_GT(year.total.short_h, 10.0);
    EXPECT_LT(year.coldest_draw_c, 38.0);
    EXPECT_GT(h.short_litres[static_cast<std::size_t>(year.coldest_draw_hour)], 0.0f);
    for (const auto* series : {&h.immersion_w, &h.frost_kg_m2, &h.set_point_c})
        EXPECT_EQ(series->size(), 8760u);
}

TEST(DemandProblems, name_the_field) {
    const auto refused = [](auto change, const std::string& where) {
        Input input = house();
        change(input);
        const auto result = season::run(input, quick());
        ASSERT_FALSE(result.ok()) << where;
        EXPECT_NE(text_of(result.problems()).find(where), std::string::npos) << text_of(result.problems());
    };
    refused([](Input& i) { i.first_weekday = 7; }, "weekday of 1 January");
    refused([](Input& i) { i.surplus_w.assign(10, 0.0); }, "surplus_w");
    refused([](Input& i) { i.surplus_w.assign(8760, std::nan("")); }, "surplus_w");
    refused([](Input& i) { i.demand.hygiene.target_c = std::nan(""); }, "hygiene.target_c");
    refused([](Input& i) { i.demand.control.run_windows = {{-1.0, 5.0, true, true, ""}}; }, "run_windows[0].from_h");
    refused([](Input& i) { i.demand.holidays = {{13, 1, 1, 1, ""}}; }, "holidays[0].from_month");
    refused(
        [](Input& i) {
            i.demand.draw_source = DrawSource::household;
            i.demand.household.persons = 0;
        },
        "household.persons");
}

}  // namespace control_test
