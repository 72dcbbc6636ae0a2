// Profiles as beams on their points; closed forms of statics tables.
#include <gtest/gtest.h>

#include <cmath>
#include <numeric>
#include <random>

#include "core/fixing/loads.h"
#include "tests/core/fixing/fixture.h"

namespace wg::fixing {
namespace bending_test {

constexpr double exact = 1e-9;
constexpr double sampled = 1e-3;  // of the deflection: forty places a span

TEST(Bend, OneSpan) {
    // w L^2 / 8 and 5 w L^4 / 384 E I.
    const RailBend b = bend_of({0, 3}, 0, 3);
    EXPECT_NEAR(b.moment_nm, 9.0 / 8.0, exact);
    EXPECT_NEAR(b.moment_at_m, 1.5, exact);
    EXPECT_FALSE(b.over_support);
    EXPECT_NEAR(b.sag_m, 5.0 * 81.0 / 384.0, exact);
    EXPECT_NEAR(b.span_m, 3.0, exact);
}

TEST(Bend, TwoEqualSpans) {
    // w L^2 / 8 over the middle support, w L^4 / 185 E I.
    const RailBend b = bend_of({0, 1, 2}, 0, 2);
    EXPECT_NEAR(b.moment_nm, 0.125, exact);
    EXPECT_TRUE(b.over_support);
    EXPECT_NEAR(b.moment_at_m, 1.0, exact);
    EXPECT_NEAR(b.sag_m * 184.6, 1.0, 2.0 * sampled);
}

TEST(Bend, ThreeEqualSpans) {
    // 0.1 w L^2 over the inner supports, 0.00688 w L^4 / E I in the outer spans.
    const RailBend b = bend_of({0, 1, 2, 3}, 0, 3);
    EXPECT_NEAR(b.moment_nm, 0.1, exact);
    EXPECT_NEAR(b.sag_m / 0.00688, 1.0, 2.0 * sampled);
}

TEST(Bend, UnequalSpans) {
    // Three-moment equation: w (L1^3 + L2^3) / 8 (L1 + L2) = 9/24 over the support.
    EXPECT_NEAR(bend_of({0, 1, 3}, 0, 3).moment_nm, 0.375, exact);
}

TEST(Bend, EqualOverhangs) {
    // Overhang a, span L: w a^2 / 2 over the supports, w (L^2/8 - a^2/2) between; least when a = 0.354 L.
    EXPECT_NEAR(bend_of({0.5, 2.5}, 0, 3).moment_nm, 0.5 - 0.125, exact);
    EXPECT_NEAR(bend_of({1.0, 2.0}, 0, 3).moment_nm, 0.5, exact);
    EXPECT_TRUE(bend_of({1.0, 2.0}, 0, 3).over_support);
    // Tip of an overhang a beside a span L, both sides: w a^4/8 - a (w L^3/24 - w a^2 L/4), here a = L = 1: 1/8 + 1/4 -
    // 1/24 = 1/3.
    const RailBend b = bend_of({1.0, 2.0}, 0, 3);
    EXPECT_TRUE(b.cantilever);
    EXPECT_NEAR(b.sag_m, 1.0 / 3.0, exact);
    EXPECT_NEAR(b.span_m, 2.0, exact);
}

TEST(Bend, OnePointAloneIsACantileverToBothSides) {
    EXPECT_NEAR(bend_of({1.0}, 0, 2).moment_nm, 0.5, exact);
    EXPECT_EQ(bend_of({}, 0, 2).moment_nm, 0.0);
}

PointedPlate plate(std::vector<Point2> points, double length, double width) {
    return {length, width, points, points};
}

TEST(PartLoads, AnEvenLoadInPartsIsTheEvenLoad) {
    const PointedPlate p = plate({{0.3, 0.1}, {1.0, 0.1}, {1.7, 0.1}, {0.4, 0.7}, {1.9, 0.7}}, 2.0, 0.8);
    const Shares s = even_load_shares(p);
    std::vector<double> load;
    double area = 0.0;
    for (const PlatePart& part : s.parts) {
        load.push_back(part.area_m2());
        area += part.area_m2();
    }
    EXPECT_NEAR(area, 1.6, exact);
    const auto r = part_load_reactions(p, s, load);
    for (std::size_t i = 0; i < r.size(); ++i)
        EXPECT_NEAR(r[i], 1.6 * s.of_point[i], exact);
}

TEST(PartLoads, OneSpanOfTwoLoaded) {
    // Statics tables, two equal spans with the load on the first: 7/16, 10/16 and -1/16 of w L. Parts end half-way
    // between points, so the first span is the first part and half of the middle's: loads 1, 1 and 0 on parts of 1/2,
    // 1 and 1/2 m leave the second half-span loaded too; superpose.
    const PointedPlate p = plate({{0, 0.5}, {1, 0.5}, {2, 0.5}}, 2.0, 1.0);
    const Shares s = even_load_shares(p);
    const auto first = part_load_reactions(p, s, {0.5, 0.0, 0.0});
    const auto middle = part_load_reactions(p, s, {0.0, 1.0, 0.0});
    const auto last = part_load_reactions(p, s, {0.0, 0.0, 0.5});
    for (std::size_t i = 0; i < 3; ++i)
        EXPECT_NEAR(first[i], last[2 - i], exact);
    EXPECT_NEAR(first[0] + middle[0] + last[0], 0.375, exact);
    EXPECT_NEAR(first[1] + middle[1] + last[1], 1.25, exact);
    // Load on the first half of the first span of a two-span beam: far support lifts by M/L, M = 7/128 ...
    // (three-moment: w (L^2 x^2/2 - x^4/4)/L at x = 1/2 is 7/64, over 4).
    EXPECT_NEAR(first[2], -7.0 / 256.0, exact);
}

TEST(PartLoads, ReactionsBalanceForceAndMoment) {
    constexpr unsigned seed = 41;
    SCOPED_TRACE(seed);
    std::mt19937 random(seed);
    std::uniform_real_distribution<double> any(0.0, 1.0);
    for (int round = 0; round < 200; ++round) {
        std::vector<Point2> points;
        for (const double y : {0.15, 0.6}) {
            for (int i = 0; i < 2 + round % 4; ++i)
                points.push_back({0.1 + 2.2 * any(random), y + 0.04 * any(random)});
        }
        const PointedPlate p = plate(points, 2.4, 0.8);
        const Shares s = even_load_shares(p);
        std::vector<double> load;
        double sum = 0.0, mx = 0.0, my = 0.0, size = 0.0;
        for (const PlatePart& part : s.parts) {
            load.push_back(200.0 * any(random) - 60.0);
            if (!(part.area_m2() > 0.0)) load.back() = 0.0;
            sum += load.back();
            mx += load.back() * 0.5 * (part.low.x_m + part.high.x_m);
            my += load.back() * 0.5 * (part.low.y_m + part.high.y_m);
        }
        const auto r = part_load_reactions(p, s, load);
        // A rail stands at the mean of its points across.
        std::vector<double> across(s.of_rail.size(), 0.0), count(s.of_rail.size(), 0.0);
        for (std::size_t i = 0; i < r.size(); ++i) {
            across[s.parts[i].rail] += s.along_x ? points[i].y_m : points[i].x_m;
            count[s.parts[i].rail] += 1.0;
        }
        for (std::size_t i = 0; i < r.size(); ++i) {
            const double rail = across[s.parts[i].rail] / count[s.parts[i].rail];
            sum -= r[i];
            mx -= r[i] * (s.along_x ? points[i].x_m : rail);
            my -= r[i] * (s.along_x ? rail : points[i].y_m);
            size += std::abs(r[i]);
        }
        EXPECT_NEAR(sum, 0.0, 1e-9 * size);
        EXPECT_NEAR(mx, 0.0, 2e-3 * size);  // supports within a millimetre share
        EXPECT_NEAR(my, 0.0, 2e-3 * size);
    }
}

TEST(Profiles, BendingByHand) {
    // Plate 2 x 0.8 m, points 0.3 m from the ends: 1.4 m span, moment L^2/8 - a^2/2 = 0.2 for 1 N/m. Snow alone, level:
    // s_k 1, mu 0.8: 800 N/m2 x 0.4 m x 1.5 = 480 N/m and 1.35 G: 10 kg over two rails of 2 m.
    Input in = plain_input();
    in.surface.tilt_deg = 0.0;
    in.surface.roof_form = RoofForm::flat;
    in.site.basic_wind_m_s = 1.0;
    in.site.ground_snow_kn_m2 = 1.0;
    in.refrigerant_kg = 0.0;
    in.collector.profile_moment_nm = 200.0;
    const Outcome o = fixed_up(in);
    const double q = 480.0 + 1.35 * 10.0 * 9.80665 / 4.0;
    EXPECT_NEAR(o.bending_use, q * 0.2 / 200.0, 2e-3);
    in.collector.profile_stiffness_nm2 = 3000.0;
    // The span sags by 5 L^4/384 - a^2 L^2/16 = 0.0390 of L 1.4 m; its ends turn and lift the overhangs of a 0.3 m by
    // a (L^3/24 - a^2 L/4) - a^4/8 = 0.0238 of 2 a: more of what is allowed. q = 320 + 24.5 N/m, span over 200.
    const double load = 320.0 + 10.0 * 9.80665 / 4.0;
    const double lift = load / 3000.0 * (0.3 * (2.744 / 24.0 - 0.09 * 1.4 / 4.0) - 0.0081 / 8.0);
    EXPECT_NEAR(fixed_up(in).sag_use, lift / (0.6 / 200.0), 2e-3);
}

TEST(Profiles, OverloadedOnesStopAndHoldAgrees) {
    Input in = plain_input();
    in.collector.profile_moment_nm = 1.0;
    in.collector.profile_stiffness_nm2 = 10.0;
    in.placed = site::place(in.surface, 0.0, in.placement, in.collector);
    const Outcome o = fix(in);
    ASSERT_NE(find_code(o.findings, "fixing.profile-overloaded"), nullptr);
    EXPECT_NE(find_code(o.findings, "fixing.sag"), nullptr);
    EXPECT_TRUE(hold_of(in).stopped);
}

}  // namespace bending_test
}  // namespace wg::fixing
