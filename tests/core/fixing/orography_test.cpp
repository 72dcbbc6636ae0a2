#include "core/fixing/orography.h"

#include <gtest/gtest.h>

#include <cmath>
#include <string>

#include "core/fixing/fixing.h"
#include "tests/core/fixing/fixture.h"

namespace wg::fixing {
namespace orography_test {

constexpr double figures = 1e-3;

Hill hill(double height, double up, double down, double x) {
    Hill h;
    h.kind = HillKind::hill;
    h.height_m = height;
    h.upwind_length_m = up;
    h.downwind_length_m = down;
    h.crest_distance_m = x;
    return h;
}

// EN 1991-1-4:2005 annex A.3, equations as published; rows worked apart from this program.
TEST(Orography, OnTheCrestOfAHill) {
    // H 40 m, L_u 200 m: Phi 0.2, L_e 200 m; z 10 m: z/L_e 0.05, s = 0.9212, c_o = 1 + 2 x 0.9212 x 0.2.
    const Orography o = orography_of(hill(40, 200, 300, 0), 10.0);
    EXPECT_NEAR(o.slope, 0.2, 1e-12);
    EXPECT_NEAR(o.effective_length_m, 200.0, 1e-12);
    EXPECT_NEAR(o.location, 0.9212, figures);
    EXPECT_NEAR(o.factor, 1.3685, figures);
    EXPECT_STREQ(o.outside, "");
}

TEST(Orography, BeforeAndBehindTheCrest) {
    EXPECT_NEAR(orography_of(hill(40, 200, 300, -100), 10.0).factor, 1.1008, figures);  // s = 0.2519
    EXPECT_NEAR(orography_of(hill(40, 200, 300, 150), 10.0).factor, 1.1564, figures);   // s = 0.3911
}

TEST(Orography, SteepHillsCountNoMoreThanASlopeOfThreeTenths) {
    // H 60 m, L_u 100 m: Phi 0.6, L_e = 60 / 0.3 = 200 m; z 10 m: c_o = 1 + 0.6 x 0.9212.
    const Orography o = orography_of(hill(60, 100, 100, 0), 10.0);
    EXPECT_NEAR(o.effective_length_m, 200.0, 1e-9);
    EXPECT_NEAR(o.factor, 1.5527, figures);
}

TEST(Orography, BehindACliff) {
    Hill cliff = hill(60, 100, 0, 100);
    cliff.kind = HillKind::cliff;
    // X/L_e 0.5, z/L_e 0.1: (A.7) gives s = 0.5101.
    EXPECT_NEAR(orography_of(cliff, 20.0).location, 0.5101, figures);
    // At the edge the value is the crest's, and nothing jumps a tenth of L_e behind it.
    cliff.crest_distance_m = 0.0;
    const double edge = orography_of(cliff, 20.0).location;
    cliff.crest_distance_m = 1e-6;
    EXPECT_NEAR(orography_of(cliff, 20.0).location, edge, 1e-6);
    cliff.crest_distance_m = 20.0 - 1e-7;
    const double before = orography_of(cliff, 20.0).location;
    cliff.crest_distance_m = 20.0 + 1e-7;
    EXPECT_NEAR(orography_of(cliff, 20.0).location, before, 1e-6);
}

TEST(Orography, OutsideItsReachItIsOneAndSaysWhy) {
    EXPECT_EQ(orography_of(Hill{}, 10.0).factor, 1.0);
    const auto outside = [](const Hill& h, double z) {
        const Orography o = orography_of(h, z);
        EXPECT_EQ(o.factor, 1.0);
        return std::string(o.outside);
    };
    EXPECT_NE(outside(hill(5, 200, 200, 0), 10.0).find("0.05"), std::string::npos);
    EXPECT_NE(outside(hill(40, 200, 300, -301), 10.0).find("1.5 L_u"), std::string::npos);
    EXPECT_NE(outside(hill(40, 200, 300, 601), 10.0).find("2 L_d"), std::string::npos);
    EXPECT_NE(outside(hill(4, 20, 20, 0), 41.0).find("2 L_e"), std::string::npos);
    Hill cliff = hill(60, 100, 0, 701);
    cliff.kind = HillKind::cliff;
    EXPECT_NE(outside(cliff, 10.0).find("3.5 L_e"), std::string::npos);
}

TEST(Orography, NeverSlowsTheWindAndFallsWithHeight) {
    for (double x = -300; x <= 600; x += 20) {
        double before = 10.0;
        for (double z = 2; z <= 150; z += 4) {
            const double c = orography_of(hill(50, 200, 300, x), z).factor;
            EXPECT_GE(c, 1.0);
            EXPECT_LE(c, 1.0 + 0.6 * 1.0124);
            if (x <= 0.0) EXPECT_LE(c, before + 1e-9) << x << ' ' << z;
            before = c;
        }
    }
}

// (4.3), (4.7), (4.8): v_m = c_r c_o v_b, I_v = 1 / (c_o ln z/z0). Terrain II, 10 m, 26 m/s, c_o 1.2: c_r 1.0067, I_v
// 0.1573, v_m 31.41 m/s, q_p = (1 + 1.1008) x 616.6 = 1295 Pa.
TEST(Orography, RaisesThePressureAndLowersTheTurbulence) {
    const PeakPressure p = peak_pressure(26.0, Terrain::farmland_ii, 10.0, 1.25, 1.2);
    EXPECT_NEAR(p.intensity, 0.1573, 1e-4);
    EXPECT_NEAR(p.qp_pa, 1295.0, 2.0);
}

TEST(Orography, AHillUnderTheHouseReachesThePoints) {
    Input in = plain_input();
    in.site.ground_snow_kn_m2 = 0.0;
    const double level = fixed_up(in).worst_utilisation;
    in.site.hill = hill(40, 200, 300, 0);
    const Outcome o = fixed_up(in);
    EXPECT_GT(o.worst_utilisation, level);
    EXPECT_GT(o.wind.co, 1.3);
    EXPECT_TRUE(
        std::any_of(o.workings.begin(), o.workings.end(), [](const Working& w) { return w.key == "fixing.hill"; }));
    in.site.hill.crest_distance_m = 5000.0;
    const Outcome far = fixed_up(in);
    EXPECT_NEAR(far.worst_utilisation, level, 1e-12);
    EXPECT_NE(find_code(far.findings, "fixing.hill-outside"), nullptr);
}

// c_alt = 1 + 0.001 A: at 500 m the wind is half as fast again, q_p 2.25 times.
TEST(Altitude, RaisesTheWindOfASeaLevelMap) {
    Input in = plain_input();
    const double sea = fixed_up(in).wind.qp_pa;
    in.rules.wind_altitude_per_m = 0.001;
    EXPECT_NEAR(fixed_up(in).wind.qp_pa, sea, 1e-9);
    in.site.location.altitude_m = 500.0;
    EXPECT_NEAR(fixed_up(in).wind.qp_pa / sea, 2.25, 1e-9);
    in.site.location.altitude_m = -50.0;
    EXPECT_NEAR(fixed_up(in).wind.qp_pa, sea, 1e-9);
}

}  // namespace orography_test
}  // namespace wg::fixing
