// Tables and rules from outside, typed in: independent of the script that makes the tables.

#include <gtest/gtest.h>

#include <cmath>
#include <fstream>
#include <random>
#include <sstream>

#include "core/quantity/constants.h"
#include "core/refrigerant/properties.h"

namespace published_test {

using namespace wg;
using refrigerant::Properties;

std::string table_text(const std::string& name) {
    std::ifstream in(std::string(WG_RESOURCES_DIR) + "/refrigerants/" + name + ".json");
    std::ostringstream out;
    out << in.rdbuf();
    return out.str();
}

std::shared_ptr<const Properties> load(const std::string& name) {
    auto result = Properties::from_json(table_text(name), name + ".json");
    return result.ok() ? result.value() : nullptr;
}

struct Row {
    double t_c, p_kpa, rho_liquid, rho_vapour, h_liquid, h_vapour, latent;
};

// Printed values are rounded to four or five figures.
constexpr double printed_tolerance = 1e-3;

void expect_rows(const Properties& fluid, const std::vector<Row>& rows) {
    for (const Row& row : rows) {
        const auto s = fluid.saturation(row.t_c);
        EXPECT_NEAR(s.pressure_pa / 1e3 / row.p_kpa, 1.0, printed_tolerance) << row.t_c;
        EXPECT_NEAR(s.liquid_density_kg_m3 / row.rho_liquid, 1.0, printed_tolerance) << row.t_c;
        EXPECT_NEAR(s.vapour_density_kg_m3 / row.rho_vapour, 1.0, printed_tolerance) << row.t_c;
        EXPECT_NEAR((s.vapour_enthalpy_j_kg - s.liquid_enthalpy_j_kg) / 1e3 / row.latent, 1.0, printed_tolerance);
        if (row.h_liquid > 0.0) {
            EXPECT_NEAR(s.liquid_enthalpy_j_kg / 1e3 / row.h_liquid, 1.0, printed_tolerance) << row.t_c;
            EXPECT_NEAR(s.vapour_enthalpy_j_kg / 1e3 / row.h_vapour, 1.0, printed_tolerance) << row.t_c;
        }
    }
}

// Tillner-Roth and Baehr 1994, phase equilibrium solved apart; agrees with the ASHRAE Handbook table (from memory).
TEST(PublishedSaturation, r134a_agrees_with_the_equation_of_state) {
    const auto fluid = load("R134a");
    ASSERT_NE(fluid, nullptr);
    expect_rows(*fluid, {{-20, 132.73, 1358.3, 6.7845, 173.64, 386.55, 212.92},
                         {-10, 200.60, 1327.1, 10.041, 186.70, 392.66, 205.97},
                         {0, 292.80, 1294.8, 14.428, 200.00, 398.60, 198.60},
                         {10, 414.61, 1261.0, 20.226, 213.58, 404.32, 190.74},
                         {20, 571.71, 1225.3, 27.780, 227.47, 409.75, 182.28},
                         {30, 770.20, 1187.5, 37.535, 241.72, 414.82, 173.10},
                         {40, 1016.59, 1146.7, 50.085, 256.41, 419.43, 163.02},
                         {60, 1681.78, 1052.9, 87.379, 287.50, 426.63, 139.12}});
}

// Lemmon, McLinden and Wagner 2009.
TEST(PublishedSaturation, r290_agrees_with_the_equation_of_state) {
    const auto fluid = load("R290");
    ASSERT_NE(fluid, nullptr);
    expect_rows(*fluid, {{-20, 244.52, 554.45, 5.5046, 151.36, 552.13, 400.77},
                         {-10, 345.28, 541.80, 7.6321, 175.35, 563.65, 388.30},
                         {0, 474.46, 528.59, 10.351, 200.00, 574.87, 374.87},
                         {10, 636.60, 514.73, 13.783, 225.40, 585.67, 360.28},
                         {20, 836.46, 500.06, 18.082, 251.64, 595.95, 344.31},
                         {30, 1079.00, 484.39, 23.451, 278.83, 605.54, 326.70},
                         {40, 1369.42, 467.46, 30.165, 307.15, 614.21, 307.07},
                         {60, 2116.75, 427.97, 49.493, 368.14, 627.36, 259.23}});
}

// Lemmon and Akasaka 2022.
TEST(PublishedSaturation, r1234yf_agrees_with_the_equation_of_state) {
    const auto fluid = load("R1234yf");
    ASSERT_NE(fluid, nullptr);
    expect_rows(*fluid, {{-20, 150.86, 1236.3, 8.6982, 0, 0, 175.59},
                         {0, 315.88, 1176.1, 17.634, 0, 0, 163.48},
                         {20, 591.84, 1109.7, 32.770, 0, 0, 149.42},
                         {40, 1018.47, 1033.6, 57.674, 0, 0, 132.44},
                         {60, 1641.83, 940.55, 99.553, 0, 0, 110.62}});
}

// dp/dT = latent / (T dv): pressure, densities and enthalpies of one table must belong together.
TEST(PublishedSaturation, clausius_clapeyron_holds_along_every_table) {
    constexpr double tolerance = 2e-3;  // difference quotient over 0.2 K; the blend's glide adds to R513A
    for (const char* name : {"R134a", "R290", "R1234yf", "R513A"}) {
        const auto fluid = load(name);
        ASSERT_NE(fluid, nullptr);
        const double slack = std::string(name) == "R513A" ? 6e-3 : tolerance;
        for (double t = -38.0; t <= 78.0; t += 4.0) {
            const auto s = fluid->saturation(t);
            const double slope =
                (fluid->saturation_pressure_pa(t + 0.1) - fluid->saturation_pressure_pa(t - 0.1)) / 0.2;
            const double latent = s.vapour_enthalpy_j_kg - s.liquid_enthalpy_j_kg;
            const double expansion = 1.0 / s.vapour_density_kg_m3 - 1.0 / s.liquid_density_kg_m3;
            EXPECT_NEAR(slope * kelvin(t) * expansion / latent, 1.0, slack) << name << " at " << t;
        }
    }
    const auto r134a = load("R134a");
    EXPECT_NEAR((r134a->saturation_pressure_pa(0.1) - r134a->saturation_pressure_pa(-0.1)) / 200.0, 10.609, 0.011);
    EXPECT_NEAR((r134a->saturation_pressure_pa(20.1) - r134a->saturation_pressure_pa(19.9)) / 200.0, 17.674, 0.018);
}

struct Ideal {
    const char* name;
    double te, tc, ratio, work_kj_kg, cop;
};

// Isentropic cycle, superheat 5 K, subcooling 3 K, from the published equations of state.
TEST(PublishedCycle, ideal_cycles_agree) {
    constexpr double tolerance = 2e-3;
    for (const Ideal& c : {Ideal{"R134a", 0, 55, 5.094, 34.84, 4.685}, Ideal{"R134a", 10, 50, 3.179, 24.67, 6.758},
                           Ideal{"R134a", -10, 60, 8.384, 45.63, 3.506}, Ideal{"R290", 0, 55, 4.020, 66.92, 4.599},
                           Ideal{"R1234yf", 0, 55, 4.637, 27.85, 4.414}}) {
        const auto fluid = load(c.name);
        ASSERT_NE(fluid, nullptr);
        const auto suction = fluid->vapour(c.te, 5.0);
        const auto outlet = fluid->isentropic_outlet(suction.entropy_j_kgk, c.tc);
        ASSERT_TRUE(outlet.in_range);
        const double work = outlet.enthalpy_j_kg - suction.enthalpy_j_kg;
        const double heat = outlet.enthalpy_j_kg - fluid->liquid_enthalpy_j_kg(c.tc - 3.0);
        EXPECT_NEAR(fluid->saturation_pressure_pa(c.tc) / fluid->saturation_pressure_pa(c.te) / c.ratio, 1.0,
                    tolerance);
        EXPECT_NEAR(work / 1e3 / c.work_kj_kg, 1.0, tolerance) << c.name << c.te;
        EXPECT_NEAR(heat / work / c.cop, 1.0, tolerance) << c.name << c.te;
    }
    const auto r134a = load("R134a");
    const auto suction = r134a->vapour(0.0, 5.0);
    EXPECT_NEAR(suction.density_kg_m3, 14.066, 0.014);
    EXPECT_NEAR(r134a->isentropic_outlet(suction.entropy_j_kgk, 55.0).temperature_c, 65.2, 0.1);
}

// Critical points of the same equations; GWP100 of Regulation (EU) 2024/573, Annexes I, II and VI; LFL of R290
// from EN 378-1 and IEC 60335-2-40 annex GG; classes of ISO 817 (from memory).
TEST(PublishedData, critical_points_and_safety_data_agree) {
    struct Data {
        const char* name;
        double critical_k, critical_mpa, gwp;
        const char* safety;
        double lfl;
    };
    for (const Data& d :
         {Data{"R134a", 374.21, 4.0593, 1430.0, "A1", 0.0}, Data{"R290", 369.89, 4.2512, 0.02, "A3", 0.038},
          Data{"R1234yf", 367.85, 3.3844, 0.501, "A2L", 0.289}}) {
        const auto fluid = load(d.name);
        ASSERT_NE(fluid, nullptr);
        EXPECT_NEAR(kelvin(fluid->critical_c()), d.critical_k, 0.01);
        EXPECT_NEAR(fluid->critical_pressure_pa() / 1e6, d.critical_mpa, 0.0002);
        EXPECT_EQ(fluid->gwp100(), d.gwp);
        EXPECT_EQ(fluid->safety_class(), d.safety);
        EXPECT_EQ(fluid->lower_flammability_kg_m3(), d.lfl);
        EXPECT_NE(fluid->source().find("CoolProp"), std::string::npos);
        EXPECT_EQ(fluid->name(), d.name);
        EXPECT_EQ(fluid->min_c(), -40.0);
        EXPECT_EQ(fluid->max_c(), 80.0);
    }
    // 56 % R1234yf and 44 % R134a by mass.
    EXPECT_NEAR(load("R513A")->gwp100(), 0.56 * 0.501 + 0.44 * 1430.0, 0.06);
}

TEST(Interpolation, is_smooth_and_monotone_between_the_nodes) {
    for (const char* name : {"R134a", "R290", "R1234yf", "R513A"}) {
        const auto fluid = load(name);
        ASSERT_NE(fluid, nullptr);
        double before = 0.0;
        for (double t = -40.0; t <= 80.0; t += 0.0625) {
            const double p = fluid->saturation_pressure_pa(t);
            EXPECT_GT(p, before);
            before = p;
        }
        for (double t = -30.0; t <= 75.0; t += 15.0) {
            auto last = fluid->vapour(t, 0.0);
            for (double superheat = 0.25; t + superheat <= 140.0; superheat += 0.25) {
                const auto v = fluid->vapour(t, superheat);
                EXPECT_LT(v.density_kg_m3, last.density_kg_m3);
                EXPECT_GT(v.enthalpy_j_kg, last.enthalpy_j_kg);
                EXPECT_GT(v.entropy_j_kgk, last.entropy_j_kgk);
                last = v;
            }
        }
        // Saturated vapour is the vapour table's edge.
        for (double t = -39.5; t < 80.0; t += 7.3)
            EXPECT_NEAR(fluid->vapour(t, 0.0).density_kg_m3 / fluid->saturation(t).vapour_density_kg_m3, 1.0, 2e-5);
    }
}

TEST(Interpolation, outlets_past_the_table_say_so_and_stay_finite) {
    const auto fluid = load("R134a");
    const double hot = fluid->vapour(40.0, 100.0).entropy_j_kgk;
    EXPECT_TRUE(fluid->isentropic_outlet(hot, 40.0).in_range);
    const auto past = fluid->isentropic_outlet(hot + 50.0, 40.0);
    EXPECT_FALSE(past.in_range);
    EXPECT_GT(past.temperature_c, 140.0);
    EXPECT_LT(past.temperature_c, 180.0);
    const auto beyond = fluid->vapour_at_enthalpy(fluid->vapour(40.0, 100.0).enthalpy_j_kg + 1e4, 40.0);
    EXPECT_FALSE(beyond.in_range);
    EXPECT_NEAR(beyond.temperature_c, 149.0, 1.5);  // 10 kJ/kg at about 1.1 kJ/(kg K)
    EXPECT_FALSE(fluid->in_saturation_range(80.1));
    EXPECT_FALSE(fluid->in_vapour_range(40.0, 100.1));
    EXPECT_FALSE(fluid->in_vapour_range(40.0, -0.1));
}

TEST(Interpolation, two_phase_outlet_follows_the_lever_rule) {
    const auto fluid = load("R1234yf");
    const auto dry = fluid->vapour(50.0, 0.0);
    const auto wet = fluid->isentropic_outlet(dry.entropy_j_kgk - 20.0, 50.0);
    EXPECT_TRUE(wet.in_range);
    EXPECT_EQ(wet.temperature_c, 50.0);
    EXPECT_NEAR(wet.enthalpy_j_kg, dry.enthalpy_j_kg - 20.0 * kelvin(50.0), 1e-6);
}

TEST(Interpolation, pressure_runs_on_to_the_critical_point) {
    for (const char* name : {"R134a", "R290", "R1234yf", "R513A"}) {
        const auto fluid = load(name);
        EXPECT_NEAR(fluid->pressure_up_to_critical_pa(80.0), fluid->saturation_pressure_pa(80.0), 1e-6);
        EXPECT_NEAR(fluid->pressure_up_to_critical_pa(fluid->critical_c() - 1e-9) / fluid->critical_pressure_pa(), 1.0,
                    1e-6);
        EXPECT_GT(fluid->pressure_up_to_critical_pa(85.0), fluid->pressure_up_to_critical_pa(81.0));
    }
    // R134a at 90 deg C: 3.2442 MPa (Tillner-Roth and Baehr, ASHRAE Handbook table, from memory).
    EXPECT_NEAR(load("R134a")->pressure_up_to_critical_pa(90.0) / 1e6, 3.2442, 0.016);
}

TEST(HostileFile, every_damage_gives_a_problem_with_a_place) {
    const std::string good = table_text("R290");
    const auto problems = [](const std::string& text) {
        const auto result = Properties::from_json(text, "R290.json");
        return result.ok() ? std::string() : text_of(result.problems());
    };
    EXPECT_EQ(problems(good), "");
    EXPECT_NE(problems("").find("line 1"), std::string::npos);
    EXPECT_NE(problems("{}").find("schema"), std::string::npos);
    EXPECT_NE(problems("[1, 2]").find("name"), std::string::npos);
    const auto replaced = [&](const std::string& from, const std::string& to) {
        std::string text = good;
        const auto at = text.find(from);
        EXPECT_NE(at, std::string::npos) << from;
        text.replace(at, from.size(), to);
        return problems(text);
    };
    EXPECT_NE(replaced("\"schema\":1", "\"schema\":9").find("schema"), std::string::npos);
    EXPECT_NE(replaced("\"gwp100\":0.02", "\"gwp100\":-5").find("gwp100"), std::string::npos);
    EXPECT_NE(replaced("\"columns\":33", "\"columns\":32").find("vapour"), std::string::npos);
    EXPECT_NE(replaced("\"columns\":33", "\"columns\":1e30").find("columns"), std::string::npos);
    EXPECT_NE(replaced("\"pressure_pa\":[", "\"pressure_pa\":[null,").find("pressure_pa"), std::string::npos);
    EXPECT_NE(replaced("\"pressure_pa\":[", "\"pressure_pa\":[9e9,").size(), 0u);
    EXPECT_NE(replaced("\"entropy_j_kgk\":[[", "\"entropy_j_kgk\":[[1e99,").find("entropy"), std::string::npos);
    std::mt19937 random(20240573);
    for (int i = 0; i < 200; ++i) {
        // Cut anywhere: never valid, never a crash.
        const std::string cut = good.substr(0, random() % (good.size() - 2));
        EXPECT_NE(problems(cut), "");
    }
}

}  // namespace published_test
