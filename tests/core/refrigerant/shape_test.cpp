// Reach and shape of the tables: ends, monotony, continuous slopes, and what lies outside.

#include <gtest/gtest.h>

#include <array>
#include <cmath>
#include <fstream>
#include <sstream>

#include "core/refrigerant/properties.h"
#include "tests/reference/heat_values.h"

namespace shape_test {

using namespace wg;
using refrigerant::Properties;

std::shared_ptr<const Properties> load(const std::string& name) {
    std::ifstream in(std::string(WG_RESOURCES_DIR) + "/refrigerants/" + name + ".json");
    std::ostringstream text;
    text << in.rdbuf();
    return Properties::from_json(text.str(), name + ".json").value();
}

class Shape : public testing::TestWithParam<const char*> {
   protected:
    Shape() : fluid_(load(GetParam())) {}
    std::array<double, 5> saturation(double t) const {
        const auto s = fluid_->saturation(t);
        return {s.pressure_pa, s.vapour_density_kg_m3, s.liquid_enthalpy_j_kg, s.liquid_density_kg_m3,
                s.vapour_enthalpy_j_kg};
    }
    std::array<double, 3> vapour(double t, double superheat) const {
        const auto v = fluid_->vapour(t, superheat);
        return {v.density_kg_m3, v.enthalpy_j_kg, v.entropy_j_kgk};
    }
    std::shared_ptr<const Properties> fluid_;
};

TEST_P(Shape, covers_what_the_program_needs_and_tells_where_it_ends) {
    EXPECT_LE(fluid_->min_c(), -40.0);
    EXPECT_GE(fluid_->max_c(), 80.0);
    EXPECT_GE(fluid_->vapour_max_c(), 140.0);
    for (const double t : {-40.0, 80.0})
        EXPECT_TRUE(fluid_->in_saturation_range(t));
    for (const double t : {-40.001, 80.001, std::nan("")})
        EXPECT_FALSE(fluid_->in_saturation_range(t));
    EXPECT_TRUE(fluid_->in_vapour_range(-40.0, 180.0));
    EXPECT_TRUE(fluid_->in_vapour_range(80.0, 60.0));
    EXPECT_FALSE(fluid_->in_vapour_range(-40.0, 180.001));
    EXPECT_FALSE(fluid_->in_vapour_range(80.001, 1.0));
    EXPECT_FALSE(fluid_->in_vapour_range(20.0, -0.001));
    EXPECT_FALSE(fluid_->in_vapour_range(20.0, std::nan("")));
}

#ifndef NDEBUG
// The fast forms are for callers that have checked; in a build with assertions (dev, asan) the mistake ends the
// program.
TEST(OutsideTheTable, asking_is_an_error_and_no_silent_clamp) {
    GTEST_FLAG_SET(death_test_style, "threadsafe");
    const auto fluid = load("R134a");
    EXPECT_DEATH((void)fluid->saturation(-41.0), "in_saturation_range");
    EXPECT_DEATH((void)fluid->saturation_pressure_pa(81.0), "in_saturation_range");
    EXPECT_DEATH((void)fluid->liquid_enthalpy_j_kg(81.0), "in_saturation_range");
    EXPECT_DEATH((void)fluid->vapour(20.0, 121.0), "in_vapour_range");
    EXPECT_DEATH((void)fluid->isentropic_outlet(1800.0, 81.0), "in_saturation_range");
}
#endif

TEST_P(Shape, saturation_curves_rise_or_fall_all_the_way) {
    constexpr double step_k = 0.01;
    auto before = saturation(-40.0);
    for (int i = 1; i <= 12000; ++i) {
        const auto here = saturation(-40.0 + i * step_k);
        for (std::size_t k = 0; k < 3; ++k)
            ASSERT_GT(here[k], before[k]) << i << " curve " << k;
        ASSERT_LT(here[3], before[3]) << i;
        before = here;
    }
}

TEST_P(Shape, vapour_rises_with_superheat_and_density_with_pressure) {
    for (double t = -40.0; t <= 80.0; t += 0.7) {
        auto before = vapour(t, 0.0);
        for (double superheat = 0.05; t + superheat <= 140.0; superheat += 0.05 + superheat * 0.02) {
            const auto here = vapour(t, superheat);
            ASSERT_LT(here[0], before[0]) << t << " +" << superheat;
            ASSERT_GT(here[1], before[1]) << t << " +" << superheat;
            ASSERT_GT(here[2], before[2]) << t << " +" << superheat;
            before = here;
        }
        if (t + 0.7 <= 80.0) {
            EXPECT_GT(vapour(t + 0.7, 10.0)[0], vapour(t, 10.0)[0]) << t;
        }
    }
}

/// Difference of the slopes left and right of a place, over the slope. Linear extrapolation of one-sided quotients
/// takes curvature out.
template <class Value>
double kink(Value value, double step) {
    const double left = 2.0 * (value(0.0) - value(-step)) / step - (value(0.0) - value(-2.0 * step)) / (2.0 * step);
    const double right = 2.0 * (value(step) - value(0.0)) / step - (value(2.0 * step) - value(0.0)) / (2.0 * step);
    return std::abs(right - left) / std::max(std::abs(left), std::abs(right));
}

// A straight-line table would kink by the curvature of a cell: 2 to 4 % in pressure.
TEST_P(Shape, slopes_are_continuous_at_every_node) {
    constexpr double step_k = 1e-3;
    constexpr double tolerance = 1e-4;
    for (double t = -39.0; t <= 79.0; t += 1.0)
        for (std::size_t k = 0; k < 5; ++k) {
            if (k == 4 && t > 60.0) continue;  // vapour enthalpy passes its maximum: slope near zero
            EXPECT_LT(kink([&](double d) { return saturation(t + d)[k]; }, step_k), tolerance) << t << " curve " << k;
        }
    const double columns = 32.0;
    for (double t = -38.0; t <= 78.0; t += 4.0)
        for (int column = 1; column < 32; column += 3) {
            const double share = column / columns;
            const double superheat = (140.0 - t) * share * share;
            for (std::size_t k = 0; k < 3; ++k) {
                EXPECT_LT(kink([&](double d) { return vapour(t, superheat + d)[k]; }, 2e-3), 1e-3)
                    << t << " +" << superheat << " field " << k;
                if (k == 0) {
                    EXPECT_LT(kink([&](double d) { return vapour(t + d, superheat)[k]; }, 2e-3), 1e-3)
                        << t << " +" << superheat << " field " << k;
                }
            }
        }
}

// CoolProp's other entrance (PropsSI), every 10 K with both ends; 0.1 % is asked for. Pure fluids: the blend is held to
// CoolProp's mixture model in properties_test.cpp.
TEST(OutsideRefrigerant, boiling_and_condensing_rows_agree_from_end_to_end) {
    constexpr double tolerance = 1e-3;
    for (const char* name : {"R134a", "R290", "R1234yf"}) {
        const auto fluid = load(name);
        const auto& rows = outside::heat_values()["refrigerants"][name];
        ASSERT_EQ(rows.size(), 13u);
        for (const auto& row : rows) {
            const double t = row[0];
            const auto s = fluid->saturation(t);
            const double latent = s.vapour_enthalpy_j_kg - s.liquid_enthalpy_j_kg;
            EXPECT_NEAR(s.pressure_pa / row[1].get<double>(), 1.0, tolerance) << name << row;
            EXPECT_NEAR(s.liquid_density_kg_m3 / row[2].get<double>(), 1.0, tolerance) << name << row;
            EXPECT_NEAR(s.vapour_density_kg_m3 / row[3].get<double>(), 1.0, tolerance) << name << row;
            EXPECT_NEAR(latent / row[4].get<double>(), 1.0, tolerance) << name << row;
            EXPECT_NEAR(fluid->vapour(t, 5.0).density_kg_m3 / row[5].get<double>(), 1.0, tolerance) << name << row;
            const double heat = fluid->vapour(t, 5.5).enthalpy_j_kg - fluid->vapour(t, 4.5).enthalpy_j_kg;
            EXPECT_NEAR(heat / row[6].get<double>(), 1.0, 5.0 * tolerance) << name << row;  // a slope of the table
        }
    }
}

INSTANTIATE_TEST_SUITE_P(, Shape, testing::Values("R134a", "R290", "R1234yf", "R513A"),
                         [](const auto& i) { return i.param; });

}  // namespace shape_test
