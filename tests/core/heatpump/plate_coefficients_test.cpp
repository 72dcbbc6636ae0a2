// The plate by coefficients of ISO 9806:2017 in place of first principles.

#include <gtest/gtest.h>

#include <array>
#include <cmath>
#include <random>
#include <vector>

#include "core/heatpump/plate_field.h"
#include "core/heatpump/standards.h"
#include "tests/core/heatpump/fixture.h"
#include "tests/tools/sweep.h"

namespace {

using namespace wg;
using heatpump::PlateBalance;
using heatpump_test::surroundings;

constexpr double area_m2 = 1.6;

/// Fitted to the plate of CollectorModel's own values, rounded.
Iso9806 kin() {
    Iso9806 c;
    c.zero_loss = 0.75;
    c.a1 = 24.0;
    c.a3 = 3.0;
    c.a4 = 0.79;
    c.a6 = 0.022;
    c.a7 = 0.025;
    return c;
}

CollectorModel tested(const Iso9806& coefficients) {
    CollectorModel model;
    model.iso9806 = coefficients;
    return model;
}

PlateBalance balance_of(const CollectorModel& model, const heatpump::Surroundings& s) {
    return {heatpump::plate_of(model, 1, 35.0, 1.0, false), s};
}

double sky_view() {
    return 0.5 * (1.0 + std::cos(radians(35.0)));
}

/// Air so dry that nothing settles; the sky such that the plane lacks `lacking_w_m2` to black surroundings.
heatpump::Surroundings dry(double light, double air_c, double wind, double lacking_w_m2) {
    heatpump::Surroundings s{light, 0.0, air_c, -60.0, wind, 0.0, standard_pressure_pa};
    s.sky_k = std::pow(std::pow(kelvin(air_c), 4.0) - lacking_w_m2 / (stefan_boltzmann_w_m2k4 * sky_view()), 0.25);
    return s;
}

/// What boiling refrigerant takes up, W/m2 of gross area: the plate stands where its heat passes on.
double taken_at(const PlateBalance& balance, double boiling_c) {
    double low = -80.0;
    double high = 250.0;
    for (int i = 0; i < 200; ++i) {
        const double t = 0.5 * (low + high);
        (balance.heat(t).total_w() > balance.plate().refrigerant_w_k * (t - boiling_c) ? low : high) = t;
    }
    return balance.heat(low).total_w() / balance.plate().gross_area_m2;
}

// ISO 9806:2017, the equation for collectors sensitive to wind and infrared, by hand, coefficients invented: fluid 6 K
// below the air, 1 m/s (u' = -2), 70 W/m2 lacking. 0.75 * 600 = 450; -24 (-6) = 144; -0.02 * 36 = -0.72;
// -3 (-2)(-6) = -36; 0.8 (-70) = -56; -0.02 (-2) 600 = 24; -0.025 (-2)(-70) = -3.5; -2e-7 * 1296 = -0.0002592.
TEST(TestedPlate, gives_by_hand_the_worked_case_of_the_standard_and_its_terms) {
    Iso9806 c;
    c.zero_loss = 0.75;
    c.a1 = 24.0;
    c.a2 = 0.02;
    c.a3 = 3.0;
    c.a4 = 0.8;
    c.a6 = 0.02;
    c.a7 = 0.025;
    c.a8 = 2e-7;
    const PlateBalance balance = balance_of(tested(c), dry(600.0, 10.0, 1.0, 70.0));
    constexpr double q = 450.0 + 144.0 - 0.72 - 36.0 - 56.0 + 24.0 - 3.5 - 0.0002592;
    EXPECT_NEAR(taken_at(balance, 4.0), q, 1e-8);
    const auto heat = balance.heat(4.0 + q / 125.0);
    EXPECT_NEAR(heat.total_w(), q * area_m2, 1e-8);
    EXPECT_NEAR(heat.light_w, (450.0 + 24.0) * area_m2, 1e-9);
    EXPECT_NEAR(heat.long_wave_w, (-56.0 - 3.5) * area_m2, 1e-9);
    EXPECT_NEAR(heat.air_w, (144.0 - 0.72 - 36.0 - 0.0002592) * area_m2, 1e-8);
    EXPECT_EQ(heat.latent_w, 0.0);
}

TEST(TestedPlate, agrees_with_the_standard_to_the_letter_wherever_the_test_reaches) {
    std::mt19937 random(11);
    const auto between = [&](double a, double b) { return std::uniform_real_distribution<double>(a, b)(random); };
    for (int i = 0; i < 400; ++i) {
        Iso9806 c = kin();
        c.a1 = between(20.0, 30.0);
        c.a2 = between(0.0, 0.05);
        c.a3 = between(1.0, 4.0);
        c.a8 = between(0.0, 1.6e-7);
        c.diffuse = between(0.9, 1.05);
        CollectorModel model = tested(c);
        model.face_area_m2 = between(1.3, 1.6);  // coefficients are of gross area, the joint is of face area
        ASSERT_TRUE(faults_of(c, model.face_area_m2 / 1.6).empty()) << faults_of(c, model.face_area_m2 / 1.6)[0].what;
        heatpump::Iso9806Conditions at;
        at.beam_w_m2 = between(0.0, 700.0);
        at.diffuse_w_m2 = between(0.0, 300.0);
        at.incidence_modifier = between(0.8, 1.0);
        at.wind_m_s = between(0.0, 10.0);
        at.fluid_over_air_k = between(-40.0, 60.0);
        at.long_wave_balance_w_m2 = between(-120.0, 0.0);
        auto s = dry(at.beam_w_m2 + at.diffuse_w_m2, 12.0, at.wind_m_s, -at.long_wave_balance_w_m2);
        s.incidence = (at.incidence_modifier * at.beam_w_m2 + c.diffuse * at.diffuse_w_m2) / s.front_w_m2;
        EXPECT_NEAR(taken_at(balance_of(model, s), 12.0 + at.fluid_over_air_k), heatpump::iso9806_output_w_m2(c, at),
                    1e-6)
            << i;
    }
}

// Within the test (0 to 6 m/s) and outside it (10 m/s), where the linear form must depart from the curve.
TEST(TestedPlate, coefficients_fitted_to_a_physical_plate_agree_with_it_over_a_weather_grid) {
    constexpr std::size_t n = 6;
    std::array<std::array<double, n + 1>, n> normal{};
    struct Row {
        heatpump::Surroundings s;
        double over_air_k, heat_w_m2;
    };
    std::vector<Row> rows;
    const CollectorModel physical;
    const auto add = [&](double wind, bool fit) {
        for (const double light : {0.0, 300.0, 600.0, 900.0})
            for (const double air_c : {0.0, 10.0, 20.0})
                for (const double below_k : {2.0, 10.0, 18.0})
                    for (const double x : {-15.0, -8.0, 0.0, 8.0, 15.0}) {
                        const heatpump::Surroundings s{light, 0.0, air_c, -60.0, wind, kelvin(air_c - below_k), 1e5};
                        const double q = taken_at(balance_of(physical, s), air_c + x);
                        rows.push_back({s, x, q});
                        if (!fit) continue;
                        const double lacking = sky_view() * stefan_boltzmann_w_m2k4 *
                                               (std::pow(s.sky_k, 4.0) - std::pow(kelvin(air_c), 4.0));
                        const double u = wind - 3.0;
                        const std::array<double, n + 1> row{light, -x, -u * x, lacking, -u * light, -u * lacking, q};
                        for (std::size_t i = 0; i < n; ++i)
                            for (std::size_t j = 0; j <= n; ++j)
                                normal[i][j] += row[i] * row[j];
                    }
    };
    for (const double wind : {0.0, 1.5, 3.0, 4.5, 6.0})
        add(wind, true);
    for (std::size_t i = 0; i < n; ++i)  // Gauss-Jordan; the normal equations are positive definite
        for (std::size_t k = 0; k < n; ++k) {
            if (k == i) continue;
            const double f = normal[k][i] / normal[i][i];
            for (std::size_t j = 0; j <= n; ++j)
                normal[k][j] -= f * normal[i][j];
        }
    const auto found = [&](std::size_t i) { return normal[i][n] / normal[i][i]; };
    Iso9806 c;
    c.zero_loss = found(0);
    c.a1 = found(1);
    c.a3 = found(2);
    c.a4 = found(3);
    c.a6 = found(4);
    c.a7 = found(5);
    EXPECT_TRUE(faults_of(c, 1.0).empty());
    const auto worst = [&](const Iso9806& with) {
        double apart = 0.0;
        double size = 0.0;
        for (const Row& row : rows) {
            const double q = taken_at(balance_of(tested(with), row.s), row.s.air_c + row.over_air_k);
            apart += (q - row.heat_w_m2) * (q - row.heat_w_m2);
            size += row.heat_w_m2 * row.heat_w_m2;
        }
        return std::sqrt(apart / size);
    };
    EXPECT_LT(worst(c), 0.025);
    EXPECT_LT(worst(kin()), 0.03) << "the rounded ones of this test";
    Iso9806 wrong = c;
    wrong.a1 -= 3.0 * wrong.a3;  // the edition of 2013 at 0 m/s
    EXPECT_GT(worst(wrong), 0.08);
    rows.clear();
    add(10.0, false);
    EXPECT_LT(worst(c), 0.08);
}

TEST(TestedPlate, heat_falls_strictly_with_plate_temperature_in_every_weather_with_and_without_ice) {
    std::mt19937 random(21);
    const auto between = [&](double a, double b) { return std::uniform_real_distribution<double>(a, b)(random); };
    int usable = 0;
    for (int i = 0; i < sweep::cases(1500); ++i) {
        Iso9806 c;
        c.zero_loss = between(0.4, 1.0);
        c.a1 = between(2.0, 60.0);
        c.a2 = i % 2 == 0 ? 0.0 : between(0.0, 0.2);
        c.a3 = between(0.0, 8.0);
        c.a4 = between(0.1, 1.0);
        c.a6 = between(0.0, 0.05);
        c.a7 = between(0.0, 0.05);
        c.a8 = i % 3 == 0 ? 0.0 : between(0.0, 1e-6);
        c.plate_to_fluid_w_m2k = between(30.0, 400.0);
        if (!faults_of(c, 1.0, Iso9806::moved_slack).empty()) continue;
        ++usable;
        PlateBalance balance(heatpump::plate_of(tested(c), 2, between(0.0, 90.0), between(0.0, 1.0), i % 2 == 0),
                             surroundings(between(0.0, 1300.0), between(-25.0, 45.0), between(0.05, 1.0),
                                          between(0.0, 40.0), between(0.0, 40.0)));
        if (i % 3 == 0) balance.set_frost({between(0.0, 3.0), between(0.0, 3.0)}, 600.0);
        double before = balance.heat(-80.0).total_w();
        for (double t = -79.7; t < 250.0; t += 0.9) {
            const auto at = balance.heat(t);
            ASSERT_TRUE(std::isfinite(at.total_w())) << i << ' ' << t;
            ASSERT_LT(at.total_w(), before) << i << ' ' << t;
            ASSERT_LT(at.slope_w_k, 0.0) << i << ' ' << t;
            before = at.total_w();
        }
        const double still = balance.temperature_at(0.0, 10.0);
        ASSERT_NEAR(balance.heat(still).total_w(), 0.0, 1e-3) << i;
    }
    EXPECT_GT(usable, sweep::cases(1500) / 10);
}

TEST(TestedPlate, slope_of_a_dry_plate_is_that_of_its_heat) {
    Iso9806 c = kin();
    c.a2 = 0.05;
    c.a8 = 1e-7;
    for (const double wind : {0.0, 2.0, 7.0, 15.0}) {
        const PlateBalance balance = balance_of(tested(c), dry(500.0, 10.0, wind, 60.0));
        for (const double t : {-45.0, -10.0, 5.0, 30.0, 90.0}) {
            const double measured = (balance.heat(t + 1e-4).total_w() - balance.heat(t - 1e-4).total_w()) / 2e-4;
            EXPECT_NEAR(balance.heat(t).slope_w_k / measured, 1.0, 1e-6) << wind << ' ' << t;
        }
    }
}

// Taken out and put in: U = U_L/(1 + U_L/k) with the test's k, then the same U_L with the joint to the refrigerant
// (Duffie and Beckman, Solar Engineering of Thermal Processes, collector efficiency factor; from memory).
TEST(TestedPlate, another_joint_to_the_refrigerant_takes_the_place_of_that_in_the_test) {
    CollectorModel model = tested(kin());
    const auto s = dry(600.0, 10.0, 3.0, 60.0);
    const double as_tested = taken_at(balance_of(model, s), 2.0);
    const double bare_loss = 24.0 / (1.0 - 24.0 / 125.0);
    for (const double joint : {60.0, 125.0, 400.0}) {
        model.plate_to_refrigerant_w_m2k = joint;
        const double factor = (1.0 / (1.0 + bare_loss / joint)) / (1.0 / (1.0 + bare_loss / 125.0));
        EXPECT_NEAR(taken_at(balance_of(model, s), 2.0), as_tested * factor, 1e-7) << joint;
    }
}

TEST(TestedPlate, condensation_and_frost_come_on_top_of_the_dry_test) {
    const CollectorModel model = tested(kin());
    auto damp = surroundings(0.0, 6.0, 0.9, 2.0, 6.0);
    auto parched = damp;
    parched.dew_point_c = -60.0;
    const PlateBalance wet = balance_of(model, damp);
    const PlateBalance bare = balance_of(model, parched);
    for (const double plate_c : {2.0, -6.0}) {
        const auto at = wet.heat(plate_c);
        EXPECT_GT(at.latent_w, 20.0);
        EXPECT_NEAR(at.total_w() - at.latent_w, bare.heat(plate_c).total_w(), 1e-9);
        // First principles settle as much on a plate of this temperature: the film coefficients are the same.
        EXPECT_NEAR(at.latent_w / balance_of(CollectorModel{}, damp).heat(plate_c).latent_w, 1.0, 1e-9);
    }
    EXPECT_GT(wet.heat(-6.0).frost_rear_kg_s, 0.0);
    // Its heat passes the resistance to the refrigerant with all else: less than itself arrives at the same Te.
    const double more = (taken_at(wet, -6.0) - taken_at(bare, -6.0)) * area_m2;
    EXPECT_GT(more, 0.3 * wet.heat(-6.0).latent_w);
    EXPECT_LT(more, wet.heat(-6.0).latent_w);
}

TEST(TestedPlate, ice_insulates_whitens_and_melts_as_on_any_plate) {
    PlateBalance balance = balance_of(tested(kin()), surroundings(600.0, 2.0, 0.5, 2.0, 5.0));
    const auto bare = balance.heat(-8.0);
    balance.set_frost({1.5, 1.5}, 600.0);
    const auto covered = balance.heat(-8.0);
    EXPECT_LT(covered.light_w, 0.6 * bare.light_w);
    EXPECT_LT(covered.air_w, 0.85 * bare.air_w);
    EXPECT_GT(covered.air_w, 0.4 * bare.air_w);
    EXPECT_NEAR(balance.heat(0.02).melt_w, 2.0 * 100.0 * area_m2 * 0.02, 1e-9);
    balance.set_frost({}, 600.0);
    EXPECT_NEAR(balance.heat(-8.0).total_w(), bare.total_w(), 1e-9);
}

TEST(TestedPlate, wind_beyond_ten_metres_a_second_counts_as_ten_for_the_coefficients) {
    const CollectorModel model = tested(kin());
    const double ten = taken_at(balance_of(model, dry(500.0, 10.0, 10.0, 60.0)), 2.0);
    EXPECT_NEAR(taken_at(balance_of(model, dry(500.0, 10.0, 25.0, 60.0)), 2.0), ten, 1e-9);
    EXPECT_GT(std::abs(taken_at(balance_of(model, dry(500.0, 10.0, 9.0, 60.0)), 2.0) - ten), 0.1);
}

TEST(TestedPlate, two_alike_in_series_without_fall_take_what_two_in_one_plane_take) {
    const CollectorModel model = tested(kin());
    const std::array<heatpump::Mounting, 2> apart{heatpump::Mounting{1, 35.0, 1.0, false},
                                                  heatpump::Mounting{1, 35.0, 1.0, false}};
    const std::array<heatpump::Mounting, 1> one{heatpump::Mounting{2, 35.0, 1.0, false}};
    heatpump::PlateField two(model, apart, Joined::series);
    heatpump::PlateField whole(model, one, Joined::parallel);
    const auto s = surroundings(400.0, 8.0, 0.8, 2.0, 8.0);
    two.set_weather(0, s);
    two.set_weather(1, s);
    whole.set_weather(0, s);
    double slope = 0.0;
    const double a = two.taken_w(-3.0, 1500.0, slope);
    const double b = whole.taken_w(-3.0, 1500.0, slope);
    EXPECT_GT(a, 500.0);
    EXPECT_NEAR(a, b, 1e-5);
}

}  // namespace
