// What the verdicts rest on against values from outside: tests/reference/commissioning_values.py and printed examples.

#include <gtest/gtest.h>

#include <cmath>
#include <fstream>
#include <nlohmann/json.hpp>

#include "core/commissioning/commissioning.h"
#include "core/commissioning/gauge_log.h"
#include "core/commissioning/hold.h"
#include "core/commissioning/nitrogen.h"
#include "core/commissioning/vacuum_curve.h"

namespace wg::commissioning {
namespace outside_values_test {

const nlohmann::json& outside() {
    static const nlohmann::json values =
        nlohmann::json::parse(std::ifstream(std::string(WG_TESTS_DIR) + "/reference/commissioning_values.json"));
    return values;
}

TEST(OutsideValues, nitrogen_is_that_of_span_and_others_over_the_stated_range) {
    const nlohmann::json& grid = outside()["nitrogen_compressibility"];
    int states = 0;
    for (std::size_t p = 0; p < grid["pressure_pa"].size(); ++p)
        for (std::size_t t = 0; t < grid["temperature_c"].size(); ++t) {
            const double pa = grid["pressure_pa"][p], c = grid["temperature_c"][t];
            if (c < 250.0 - 273.15 || c > 340.0 - 273.15) continue;
            EXPECT_NEAR(nitrogen_compressibility(pa, c), grid["z"][p][t].get<double>(), 7e-5) << pa << ' ' << c;
            ++states;
        }
    EXPECT_GT(states, 300);
}

// Pressure adds to the viscosity what the leak's formula leaves out: below 4 %, far below what flow through a scratch
// is known to.
TEST(OutsideValues, viscosity_of_nitrogen) {
    for (const nlohmann::json& row : outside()["nitrogen_viscosity"]) {
        const double c = row[0], thin = row[1], dense = row[2];
        EXPECT_NEAR(nitrogen_viscosity_pa_s(c), thin, (c < 0.0 || c > 40.0 ? 0.008 : 0.003) * thin) << c;
        EXPECT_NEAR(nitrogen_viscosity_pa_s(c), dense, 0.04 * dense) << c;
    }
}

// WMO states 0.6 % of the Magnus form over -45..60 deg C (Guide No. 8, annex 4.B); ice: IAPWS R14-08.
TEST(OutsideValues, vapour_pressure_of_water_and_ice) {
    for (const nlohmann::json& row : outside()["vapour"]["over_water"]) {
        const double pa = row[1];
        EXPECT_NEAR(water_vapour_pa(row[0]), pa, 0.006 * pa) << row[0];
    }
    for (const nlohmann::json& row : outside()["vapour"]["over_ice"]) {
        const double pa = row[1];
        EXPECT_NEAR(water_vapour_pa(row[0]), pa, 0.006 * pa) << row[0];
    }
}

// College Physics (OpenStax, 2012), example 13.6, from memory: a tyre of 7.00e5 Pa absolute at 18.0 deg C has 7.41e5 at
// 35.0. And 658 kPa gauge at 20 deg C in air of 101.3 kPa has 761.66 kPa gauge at 60 (a published exercise; it takes
// 273 for 273.15).
TEST(OutsideValues, ideal_gas_by_printed_examples) {
    EXPECT_NEAR(hold_pressure_bar(7.0 - 1.01325, 18.0, 35.0) + 1.01325, 7.41, 0.005);
    EXPECT_NEAR(hold_pressure_bar(6.58, 20.0, 60.0), 7.6166, 0.003);
    HoldTest t;
    t.air_pressure_bar = 1.013;
    t.start = {6.58, 20.0, 20.0, false};
    t.end = {7.6, 60.0, 60.0, false};
    t.hours = 1.0;
    EXPECT_NEAR(judge(t).ideal_gas_bar, 7.6166, 0.003);
}

TEST(OutsideValues, what_a_leak_of_nitrogen_is_in_refrigerant) {
    const nlohmann::json& leak = outside()["leak"];
    // Vacuum Technology Know How (Pfeiffer Vacuum), 7.1.2: 10 g of R134a in ten years are 7.1e-7 Pa m3/s, its volume
    // taken at 0 deg C. At 20 deg C that is 7.6e-7 for 1 g a year.
    const double one_gram_pa_m3_s = 7.1e-7 * 293.15 / 273.15;
    EXPECT_NEAR(1e-3 / leak["kg_per_pa_m3"].get<double>() / (365.25 * 86400.0), one_gram_pa_m3_s, 0.01e-6);
    // The same flow of nitrogen, driven by R134a's own pressure, through a laminar path (EN 1779: times the ratio of
    // viscosities) is that many grams.
    const double saturation_bar = leak["saturation_pa"].get<double>() * 1e-5;
    const double ratio = leak["nitrogen_viscosity"].get<double>() / leak["vapour_viscosity"].get<double>();
    EXPECT_NEAR(leak_g_year(one_gram_pa_m3_s, saturation_bar, 1.01325, 20.0), ratio, 0.02 * ratio);
    // By hand: 1e-4 mbar l/s = 1e-5 Pa m3/s of nitrogen at 26.01 bar absolute; times 17.57/11.62 = 1.512 and
    // (5.717^2 - 1.013^2)/(26.01^2 - 1.013^2) = 31.66/675.5 = 0.04687: 7.087e-7 Pa m3/s, times 4.186e-5 kg/(Pa m3) and
    // 3.156e7 s: 0.936 g a year.
    EXPECT_NEAR(leak_g_year(1e-5, 26.01325, 1.01325, 20.0), 0.936, 0.01);
    // Titan Versa C manual (LACO), 10.1.4.2: viscous flow of 0.001 at 10 atm upstream against 1 is 0.004 at 20.
    EXPECT_NEAR(leak_g_year(1.0, 10.0, 1.0, 20.0) / leak_g_year(1.0, 20.0, 1.0, 20.0), 4.0, 0.05);
    EXPECT_EQ(leak_g_year(1e-5, 1.0, 1.01325, 20.0), 0.0) << "nothing drives it";
}

// A vessel of 4 l that loses 1 bar in 30 days leaks 1.5e-4 Pa m3/s (Vacuum Technology Know How, 7.1.2).
TEST(OutsideValues, a_loss_over_time_and_volume_is_a_flow) {
    HoldTest t;
    t.volume_l = 4.0;
    t.hours = 30.0 * 24.0;
    t.start = {20.0, 20.0, 20.0, false};
    t.end = {19.0, 20.0, 20.0, false};
    const HoldResult r = judge(t);
    EXPECT_EQ(r.verdict, HoldVerdict::leak);
    EXPECT_NEAR(r.leak_g_year, leak_g_year(1.5e-4, 19.5 + 1.01325, 1.01325, 20.0), 0.04 * r.leak_g_year);
}

TEST(OutsideValues, units_of_pressure_by_their_definitions) {
    const nlohmann::json& units = outside()["units"];
    const auto absolute_of = [](const std::string& unit) {
        const auto log = gauge_log_from_csv("time (s);P (" + unit + ")\n0;1\n1;1\n", "log.csv");
        return log.ok() ? log.value().points[0].absolute_pa.value_or(0.0) : 0.0;
    };
    const auto near = [&](const std::string& unit, double pa) {
        EXPECT_NEAR(absolute_of(unit), pa, 3e-7 * pa) << unit;
    };
    near("Torr", units["torr"]);
    near("mmHg", units["mm_hg"]);
    near("micron", units["micron"]);
    near("psia", units["psi"]);
    near("bar abs", units["bar"]);
    near("mbar", 1e-3 * units["bar"].get<double>());
    const auto celsius_of = [](const std::string& figure) {
        const auto log = gauge_log_from_csv("time (s);P (Pa);T (F)\n0;1;" + figure + "\n1;1;0\n", "log.csv");
        return log.ok() ? log.value().points[0].c.value_or(0.0) : 0.0;
    };
    EXPECT_NEAR(celsius_of("212"), units["fahrenheit_212"].get<double>(), 1e-9);
    EXPECT_NEAR(celsius_of("-40"), units["fahrenheit_minus_40"].get<double>(), 1e-9);
}

}  // namespace outside_values_test
}  // namespace wg::commissioning
