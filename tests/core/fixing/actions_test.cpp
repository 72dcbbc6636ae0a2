#include <gtest/gtest.h>

#include <cmath>

#include "core/fixing/fixing.h"
#include "core/fixing/screws.h"

namespace wg::fixing {
namespace {

constexpr double printed = 5e-4;  // rows with four figures, relative
constexpr double standard_rho = 1.25;

TEST(Wind, PeakPressureAgreesWithEn1991) {
    // EN 1991-1-4:2005 4.2-4.5, formula and table 4.1 as published; rows worked apart from this program.
    PeakPressure p = peak_pressure(26.0, Terrain::farmland_ii, 10.0, standard_rho);
    EXPECT_NEAR(p.cr / 1.0067, 1.0, printed);
    EXPECT_NEAR(p.intensity / 0.1887, 1.0, printed);
    EXPECT_NEAR(p.qb_pa, 422.5, 1e-9);
    EXPECT_NEAR(p.ce / 2.352, 1.0, printed);
    EXPECT_NEAR(p.qp_pa / 993.8, 1.0, printed);
    EXPECT_NEAR(peak_pressure(26.0, Terrain::sea_0, 10.0, standard_rho).qp_pa / 1261.0, 1.0, printed);
    EXPECT_NEAR(peak_pressure(26.0, Terrain::open_i, 10.0, standard_rho).qp_pa / 1170.0, 1.0, printed);
    EXPECT_NEAR(peak_pressure(26.0, Terrain::suburb_iii, 10.0, standard_rho).qp_pa / 722.0, 1.0, printed);
    EXPECT_NEAR(peak_pressure(26.0, Terrain::farmland_ii, 5.0, standard_rho).qp_pa / 815.0, 1.0, printed);
    EXPECT_NEAR(peak_pressure(25.0, Terrain::suburb_iii, 8.0, standard_rho).qp_pa / 612.0, 1.0, 1e-3);
    EXPECT_NEAR(peak_pressure(30.0, Terrain::sea_0, 5.0, standard_rho).qp_pa / 1465.0, 1.0, printed);
    EXPECT_NEAR(peak_pressure(23.5, Terrain::farmland_ii, 7.0, standard_rho).qp_pa / 735.0, 1.0, printed);
}

TEST(Wind, PublishedWorkedExamples) {
    // Terrain IV, 9 m (takes 10 m), 26 m/s: c_r 0.54, I_v 0.434, c_e 1.18, q_p 0.497 kN/m2.
    PeakPressure p = peak_pressure(26.0, Terrain::town_iv, 9.0, standard_rho);
    EXPECT_EQ(p.z_used_m, 10.0);
    EXPECT_NEAR(p.cr, 0.54, 0.005);
    EXPECT_NEAR(p.intensity, 0.434, 0.0005);
    EXPECT_NEAR(p.ce, 1.18, 0.005);
    EXPECT_NEAR(p.qp_pa, 497.0, 0.5);
    // Terrain I, 3.5 m, 27 m/s: 0.989 kN/m2.
    EXPECT_NEAR(peak_pressure(27.0, Terrain::open_i, 3.5, standard_rho).qp_pa, 989.0, 0.5);
}

TEST(Wind, BelowTheLeastHeightThePressureStays) {
    EXPECT_NEAR(peak_pressure(26.0, Terrain::farmland_ii, 1.0, standard_rho).qp_pa, 601.0, 0.5);
    EXPECT_EQ(peak_pressure(26.0, Terrain::farmland_ii, 1.0, standard_rho).qp_pa,
              peak_pressure(26.0, Terrain::farmland_ii, 2.0, standard_rho).qp_pa);
}

TEST(Wind, PressureByLoadedArea) {
    // EN 1991-1-4 7.2.1: c1 - (c1 - c10) log10 A.
    EXPECT_NEAR(pressure_by_area(-2.0, -0.9, 1.6), -1.775, 1e-3);
    EXPECT_NEAR(pressure_by_area(-1.5, -0.5, 1.6), -1.296, 1e-3);
    EXPECT_NEAR(pressure_by_area(-1.5, -0.5, 3.2), -0.995, 1e-3);
    EXPECT_NEAR(pressure_by_area(-2.5, -1.7, 1.6), -2.337, 1e-3);
    EXPECT_NEAR(pressure_by_area(-2.5, -1.7, 3.2), -2.096, 1e-3);
    EXPECT_EQ(pressure_by_area(-2.5, -1.7, 0.4), -2.5);
    EXPECT_EQ(pressure_by_area(-2.5, -1.7, 25.0), -1.7);
}

TEST(Snow, ShapeByPitch) {
    // EN 1991-1-3 table 5.2 (from memory; 0.8 to 30 deg as published).
    const double expected[][2] = {{0, 0.8},  {15, 0.8},   {30, 0.8}, {40, 0.533},
                                  {45, 0.4}, {50, 0.267}, {60, 0.0}, {90, 0.0}};
    for (const auto& row : expected)
        EXPECT_NEAR(snow_shape_mu1(row[0]), row[1], 5e-4) << row[0];
}

TEST(Screw, WithdrawalInTimberOf350) {
    // EN 1995-1-1:2004+A1 8.7.2 (formula from memory), 90 deg to the grain, 350 kg/m3, N.
    constexpr double rounded = 0.005;
    EXPECT_NEAR(screw_withdrawal_n(6.0, 60.0, 350.0) / 4130.0, 1.0, rounded);
    EXPECT_NEAR(screw_withdrawal_n(6.0, 40.0, 350.0) / 2870.0, 1.0, rounded);
    EXPECT_NEAR(screw_withdrawal_n(8.0, 60.0, 350.0) / 6360.0, 1.0, rounded);
    EXPECT_NEAR(screw_withdrawal_n(10.0, 100.0, 350.0) / 11250.0, 1.0, rounded);
    EXPECT_NEAR(screws_together(2) * screw_withdrawal_n(8.0, 60.0, 350.0) / 11860.0, 1.0, rounded);
    EXPECT_NEAR(0.9 / 1.3 * screw_withdrawal_n(6.0, 60.0, 350.0) / 2860.0, 1.0, rounded);
    EXPECT_EQ(screw_withdrawal_n(0.0, 60.0, 350.0), 0.0);
    EXPECT_EQ(screw_withdrawal_n(6.0, -1.0, 350.0), 0.0);
}

TEST(Screw, ShearGrowsWithSizeAndNeverBeyondBearing) {
    double before = 0.0;
    for (const double d : {6.0, 8.0, 10.0, 12.0}) {
        const double shear = screw_shear_n(d, 60.0, 350.0), thick = 1.1 * 0.7 * d;
        EXPECT_GT(shear, before);
        EXPECT_LE(shear, 0.4 * 0.082 * 350.0 * std::pow(thick, -0.3) * 60.0 * thick + 1e-9);
        before = shear;
    }
    // 6 mm by hand: d_ef 4.62, f_h 18.134, M_y 8022 Nmm: 1.15 (2 M f d)^0.5 = 1333 N.
    EXPECT_NEAR(screw_shear_n(6.0, 60.0, 350.0), 1333.0, 2.0);
    EXPECT_EQ(screw_shear_n(6.0, 0.0, 350.0), 0.0);
}

}  // namespace
}  // namespace wg::fixing
