#include "core/pipework/lines.h"

#include <gtest/gtest.h>

#include <cmath>
#include <fstream>
#include <memory>
#include <sstream>
#include <string>

#include "core/pipework/tube.h"
#include "core/pipework/viscosity.h"
#include "core/quantity/constants.h"
#include "tests/reference/fluids_values.h"

namespace wg::pipework {
namespace lines_test {
namespace {

using outside::fluids_values;

const std::pair<const char*, Refrigerant> with_viscosity[] = {
    {"R134a", Refrigerant::r134a}, {"R290", Refrigerant::r290}, {"R1234yf", Refrigerant::r1234yf}};

std::shared_ptr<const refrigerant::Properties> tables(const std::string& name) {
    std::ifstream file(std::string(WG_RESOURCES_DIR) + "/refrigerants/" + name + ".json");
    std::stringstream text;
    text << file.rdbuf();
    auto result = refrigerant::Properties::from_json(text.str(), name);
    EXPECT_TRUE(result.ok()) << name;
    return result.ok() ? result.value() : nullptr;
}

TEST(Viscosity, of_liquid_is_that_of_coolprop) {
    for (const auto& [name, kind] : with_viscosity) {
        ASSERT_GE(fluids_values()["liquid"][name].size(), 20u);
        for (const auto& row : fluids_values()["liquid"][name])
            EXPECT_NEAR(liquid_viscosity_pa_s(kind, row[0]) / row[1].get<double>(), 1.0, 0.003) << name << row;
    }
}

TEST(Viscosity, of_vapour_is_that_of_coolprop_with_its_superheat) {
    for (const auto& [name, kind] : with_viscosity)
        for (const auto& row : fluids_values()["vapour"][name])
            EXPECT_NEAR(vapour_viscosity_pa_s(kind, row[0], row[1]) / row[2].get<double>(), 1.0, 0.003) << name << row;
}

// No reference equation for R513A: between its parts, nearer to the greater.
TEST(Viscosity, of_r513a_lies_between_its_parts) {
    for (const double t : {-30.0, 0.0, 30.0}) {
        const auto between = [t](auto of) {
            const double a = of(Refrigerant::r134a, t), b = of(Refrigerant::r1234yf, t), m = of(Refrigerant::r513a, t);
            EXPECT_LT(std::min(a, b), m);
            EXPECT_GT(std::max(a, b), m);
            EXPECT_LT(std::abs(m - b), std::abs(m - a)) << "56 % of it by mass";
        };
        between([](Refrigerant r, double c) { return liquid_viscosity_pa_s(r, c); });
        between([](Refrigerant r, double c) { return vapour_viscosity_pa_s(r, c, 5.0); });
    }
}

// The rooms of the heat pump have densities from tables of their own: the lines' friction needs them.
TEST(Density, of_both_phases_is_that_of_coolprop) {
    for (const auto& [name, kind] : with_viscosity) {
        const auto r = tables(name);
        ASSERT_NE(r, nullptr);
        for (const auto& row : fluids_values()["liquid"][name]) {
            if (!r->in_saturation_range(row[0])) continue;
            EXPECT_NEAR(r->saturation(row[0]).liquid_density_kg_m3 / row[2].get<double>(), 1.0, 1e-3) << name << row;
        }
        for (const auto& row : fluids_values()["vapour"][name]) {
            if (!r->in_vapour_range(row[0], row[1])) continue;
            EXPECT_NEAR(r->vapour(row[0], row[1]).density_kg_m3 / row[3].get<double>(), 1.0, 2e-3) << name << row;
        }
    }
}

TEST(TwoPhase, is_the_worked_example_of_another_implementation) {
    // fluids 1.3.1, documentation of Muller_Steinhagen_Heck: 793.447 Pa/m; it takes friction by Colebrook.
    const auto& row = fluids_values()["two_phase"]["air_water"][0];
    EXPECT_NEAR(row[8].get<double>(), 793.4465, 1e-3);
    const double bore = row[6], flow = row[0];
    const Phases phases{row[2], row[3], row[4], row[5]};
    EXPECT_NEAR(two_phase_pa_m(flow / (0.25 * pi * bore * bore), row[1], phases, bore, row[7]) / 793.4465, 1.0, 0.01);
}

TEST(TwoPhase, is_that_of_another_implementation_for_refrigerants) {
    // Churchill's factor for Colebrook's: 4 % at the edge of turbulence, and it blends where the other one steps.
    int compared = 0;
    for (const auto& [name, kind] : with_viscosity)
        for (const auto& row : fluids_values()["two_phase"][name]) {
            const double bore = row[6], flow = row[0];
            const Phases phases{row[2], row[3], row[4], row[5]};
            const double g = flow / (0.25 * pi * bore * bore);
            if (g * bore / phases.liquid_viscosity_pa_s < 5e3) continue;
            EXPECT_NEAR(two_phase_pa_m(g, row[1], phases, bore, row[7]) / row[8].get<double>(), 1.0, 0.025)
                << name << row;
            ++compared;
        }
    EXPECT_GT(compared, 60);
}

TEST(TwoPhase, ends_are_liquid_and_vapour_alone) {
    const Phases phases{1295.0, 14.4, 267e-6, 10.7e-6};
    EXPECT_DOUBLE_EQ(two_phase_pa_m(300.0, 0.0, phases, 0.006, 0.0),
                     single_phase_pa_m(300.0, 1295.0, 267e-6, 0.006, 0.0));
    EXPECT_DOUBLE_EQ(two_phase_pa_m(300.0, 1.0, phases, 0.006, 0.0),
                     single_phase_pa_m(300.0, 14.4, 10.7e-6, 0.006, 0.0));
    EXPECT_DOUBLE_EQ(homogeneous_density_kg_m3(0.0, phases), 1295.0);
    EXPECT_DOUBLE_EQ(homogeneous_density_kg_m3(1.0, phases), 14.4);
}

TEST(SinglePhase, is_that_of_another_implementation) {
    int turbulent = 0;
    for (const auto& [name, kind] : with_viscosity)
        for (const auto& row : fluids_values()["single_phase"][name]) {
            const double bore = row[3], flow = row[0];
            const double g = flow / (0.25 * pi * bore * bore);
            const double loss = single_phase_pa_m(g, row[1], row[2], bore, copper_roughness_m);
            EXPECT_NEAR(loss / row[4].get<double>(), 1.0, 1e-6) << name << row;
            if (row[5].get<double>() <= 0.0) continue;
            EXPECT_NEAR(loss / row[5].get<double>(), 1.0, 0.03) << "Colebrook " << name << row;
            ++turbulent;
        }
    EXPECT_GT(turbulent, 30);
    EXPECT_EQ(single_phase_pa_m(0.0, 10.0, 1e-5, 0.01, 0.0), 0.0);
}

struct Set {
    std::shared_ptr<const refrigerant::Properties> r = tables("R134a");
    BlockModel block;
    Path path{10.0, 10.0, 0.0};
    OperatingPoint at{0.0, 45.0, 1500.0, 7.0, 1.0};
    Set() {
        block.liquid_od_mm = 9.52;
        block.suction_od_mm = 12.70;
    }
    [[nodiscard]] PointLines now() const { return lines_at(block, *r, path, at); }
};

TEST(Lines, quality_and_flow_follow_from_the_heat_balance) {
    const Set set;
    const PointLines p = set.now();
    ASSERT_TRUE(p.known);
    const auto gas = set.r->vapour(0.0, set.block.superheat_k);
    EXPECT_NEAR(p.flow_kg_s * (gas.enthalpy_j_kg - set.r->liquid_enthalpy_j_kg(42.0)), 1500.0, 1e-6);
    // With no length the device's outlet is at the plate's pressure: enthalpy of liquid at 42 deg C between the two at
    // 0.
    Set bare = set;
    bare.path = {};
    const auto s = set.r->saturation(0.0);
    EXPECT_NEAR(bare.now().quality,
                (set.r->liquid_enthalpy_j_kg(42.0) - s.liquid_enthalpy_j_kg) /
                    (s.vapour_enthalpy_j_kg - s.liquid_enthalpy_j_kg),
                1e-12);
    EXPECT_EQ(bare.now().small.friction_pa, 0.0);
    EXPECT_EQ(bare.now().device_share, 1.0);
}

// One step of the march against the correlation by hand: for a short line the state hardly changes.
TEST(Lines, short_two_phase_line_loses_by_the_correlation) {
    Set set;
    set.path = {0.1, 0.1, 0.0};
    const PointLines p = set.now();
    const auto s = set.r->saturation(0.0);
    const Phases phases{s.liquid_density_kg_m3, s.vapour_density_kg_m3, liquid_viscosity_pa_s(Refrigerant::r134a, 0.0),
                        vapour_viscosity_pa_s(Refrigerant::r134a, 0.0, 0.0)};
    const double per_m = two_phase_pa_m(p.small.mass_velocity_kg_m2s, p.quality, phases, 7.92e-3, copper_roughness_m);
    EXPECT_NEAR(p.small.friction_pa / (0.1 * per_m), 1.0, 0.01);
}

TEST(Lines, long_two_phase_line_is_warmer_at_the_device_and_loses_less_a_metre) {
    Set set;
    set.path = {1.0, 1.0, 0.0};
    const double short_pa_m = set.now().small.friction_pa;
    set.path = {20.0, 20.0, 0.0};
    const PointLines p = set.now();
    EXPECT_LT(p.small.friction_pa / 20.0, short_pa_m) << "denser vapour and less of it towards the device";
    EXPECT_GT(p.small_inlet_c, 0.0);
    EXPECT_NEAR(set.r->saturation_pressure_pa(p.small_inlet_c) - set.r->saturation_pressure_pa(0.0),
                p.small.friction_pa, 0.02 * p.small.friction_pa)
        << "temperature at the device goes with the pressure there";
    EXPECT_LT(p.device_share, 1.0);
}

TEST(Lines, columns_have_the_sign_of_the_flow) {
    for (const ExpansionPlace place : {ExpansionPlace::block, ExpansionPlace::collector}) {
        Set set;
        set.block.expansion = place;
        set.path.lift_m = 5.0;
        const PointLines above = set.now();
        set.path.lift_m = -5.0;
        const PointLines below = set.now();
        EXPECT_GT(above.small.head_pa, 0.0) << "rises to a collector above";
        EXPECT_LT(below.small.head_pa, 0.0);
        EXPECT_LT(above.suction.head_pa, 0.0) << "vapour falls to the block";
        EXPECT_NEAR(below.suction.head_pa, above.suction_density_kg_m3 * gravity_m_s2 * 5.0, 1e-9);
        EXPECT_GT(below.suction.drop_k, above.suction.drop_k);
    }
}

TEST(Lines, liquid_that_loses_more_than_its_subcooling_boils) {
    Set set;
    set.block.expansion = ExpansionPlace::collector;
    set.block.subcooling_k = 3.0;
    set.at.condensing_c = 43.0;
    set.path = {0.0, 0.0, 7.2};
    const double over = set.r->saturation_pressure_pa(43.0) - set.r->saturation_pressure_pa(40.0);
    EXPECT_NEAR(set.now().over_boiling_pa, over, 1e-6);
    EXPECT_GT(set.now().left_over_boiling_pa, 0.0) << "7.2 m weigh 81 kPa, 3 K are worth 84 kPa";
    set.path.lift_m = 7.6;
    EXPECT_LT(set.now().left_over_boiling_pa, 0.0);
}

TEST(Lines, expansion_decides_what_the_small_line_costs) {
    Set set;
    const PointLines cold = set.now();
    set.block.expansion = ExpansionPlace::collector;
    const PointLines liquid = set.now();
    EXPECT_GT(cold.small.friction_pa, 5.0 * liquid.small.friction_pa) << "vapour takes the room";
    EXPECT_EQ(cold.suction.friction_pa, liquid.suction.friction_pa);
    EXPECT_EQ(cold.flow_kg_s, liquid.flow_kg_s);
}

TEST(Lines, more_heat_length_and_thinner_tube_lose_more) {
    for (const ExpansionPlace place : {ExpansionPlace::block, ExpansionPlace::collector}) {
        Set set;
        set.block.expansion = place;
        double small = 0.0, suction = 0.0;
        for (double w = 300.0; w < 2600.0; w += 100.0) {
            set.at.evaporator_w = w;
            const PointLines p = set.now();
            EXPECT_GT(p.small.friction_pa, small);
            EXPECT_GT(p.suction.friction_pa, suction);
            small = p.small.friction_pa;
            suction = p.suction.friction_pa;
        }
        set.block.liquid_od_mm = 6.35;
        EXPECT_GT(set.now().small.friction_pa, small);
    }
}

TEST(Lines, outside_the_tables_nothing_is_known) {
    Set set;
    for (const OperatingPoint& at :
         {OperatingPoint{-60.0, 45.0, 1500.0}, OperatingPoint{0.0, 95.0, 1500.0}, OperatingPoint{0.0, 45.0, 0.0},
          OperatingPoint{45.0, 40.0, 1500.0}, OperatingPoint{0.0, 45.0, std::nan("")}}) {
        set.at = at;
        EXPECT_FALSE(set.now().known) << at.evaporating_c << ' ' << at.condensing_c << ' ' << at.evaporator_w;
    }
    set.at = {0.0, 45.0, 1500.0};
    set.block.liquid_od_mm = 1.0;
    EXPECT_FALSE(set.now().known) << "no bore";
}

TEST(Lines, mean_goes_by_weight_and_leaves_out_what_is_not_known) {
    Set set;
    std::vector<PointLines> points{set.now()};
    set.at.evaporator_w = 750.0;
    set.at.weight = 3.0;
    points.push_back(set.now());
    points.push_back({});
    const LinesMean mean = mean_of(points);
    EXPECT_EQ(mean.points, 2);
    EXPECT_NEAR(mean.suction_friction_pa, 0.25 * points[0].suction.friction_pa + 0.75 * points[1].suction.friction_pa,
                1e-9);
    EXPECT_EQ(mean.worst_suction_drop_k, points[0].suction.drop_k);
    EXPECT_EQ(mean_of({}).points, 0);
    EXPECT_EQ(mean_of({PointLines{}}).suction_drop_k, 0.0);
}

}  // namespace
}  // namespace lines_test
}  // namespace wg::pipework
