#include "core/fixing/arrange.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <random>

#include "core/fixing/tight_spots.h"
#include "tests/core/fixing/fixture.h"
#include "tests/tools/sweep.h"

namespace wg::fixing {
namespace arrange_test {

using site::Bounds;

std::vector<Bounds> moved(std::vector<Bounds> plates, const std::vector<Move>& moves) {
    for (std::size_t i = 0; i < plates.size(); ++i) {
        plates[i].min_x_m += moves[i].right_m;
        plates[i].max_x_m += moves[i].right_m;
        plates[i].min_y_m += moves[i].up_m;
        plates[i].max_y_m += moves[i].up_m;
    }
    return plates;
}

std::vector<Bounds> some_plates(std::mt19937& random) {
    std::uniform_real_distribution<double> at(0.0, 12.0), size(0.5, 2.2);
    std::vector<Bounds> plates(2 + random() % 5);
    for (Bounds& b : plates) {
        b.min_x_m = at(random);
        b.min_y_m = at(random);
        b.max_x_m = b.min_x_m + size(random);
        b.max_y_m = b.min_y_m + size(random);
    }
    return plates;
}

TEST(Aligning, ByHand) {
    const std::vector<Bounds> plates{{1.0, 1.0, 3.0, 1.8}, {2.0, 2.0, 2.8, 4.0}};
    EXPECT_NEAR(aligning_moves(plates, Align::left)[1].right_m, -1.0, 1e-12);
    EXPECT_NEAR(aligning_moves(plates, Align::right)[1].right_m, 0.2, 1e-12);
    EXPECT_NEAR(aligning_moves(plates, Align::lower)[1].up_m, -1.0, 1e-12);
    EXPECT_NEAR(aligning_moves(plates, Align::upper)[0].up_m, 2.2, 1e-12);
    // All from 1.0 to 3.0: middle 2.0; the second's is 2.4.
    EXPECT_NEAR(aligning_moves(plates, Align::middles_upright)[1].right_m, -0.4, 1e-12);
    EXPECT_NEAR(aligning_moves(plates, Align::middles_level)[0].up_m, 2.5 - 1.4, 1e-12);
    EXPECT_TRUE(aligning_moves({}, Align::left).empty());
}

TEST(Aligning, BringsAllOntoOneLineAndTheSecondTimeMovesNothing) {
    std::mt19937 random(5);
    for (int i = 0; i < sweep::cases(400); ++i) {
        const std::vector<Bounds> before = some_plates(random);
        for (const Align to :
             {Align::left, Align::right, Align::upper, Align::lower, Align::middles_upright, Align::middles_level}) {
            const std::vector<Bounds> after = moved(before, aligning_moves(before, to));
            const auto line = [&](const Bounds& b) {
                switch (to) {
                    case Align::left: return b.min_x_m;
                    case Align::right: return b.max_x_m;
                    case Align::upper: return b.max_y_m;
                    case Align::lower: return b.min_y_m;
                    case Align::middles_upright: return 0.5 * (b.min_x_m + b.max_x_m);
                    case Align::middles_level: break;
                }
                return 0.5 * (b.min_y_m + b.max_y_m);
            };
            for (const Bounds& b : after)
                EXPECT_NEAR(line(b), line(after.front()), 1e-9);
            for (const Move& m : aligning_moves(after, to))
                EXPECT_NEAR(std::hypot(m.right_m, m.up_m), 0.0, 1e-9);
        }
    }
}

TEST(Distributing, ByHand) {
    // 0..1, 1.2..2.2, 6..8: between the outer two 5 m, of which the inner takes 1: gaps of 2 m.
    const std::vector<Bounds> plates{{0, 0, 1, 1}, {1.2, 3, 2.2, 4}, {6, 0, 8, 1}};
    const auto moves = distributing_moves(plates, Along::level);
    ASSERT_TRUE(moves);
    EXPECT_NEAR((*moves)[1].right_m, 1.8, 1e-12);
    EXPECT_EQ((*moves)[1].up_m, 0.0);
    EXPECT_EQ((*moves)[0].right_m, 0.0);
    EXPECT_EQ((*moves)[2].right_m, 0.0);
    EXPECT_FALSE(distributing_moves({plates[0], plates[2]}, Along::level));
    EXPECT_FALSE(distributing_moves({{0, 0, 2, 1}, {1, 2, 3, 3}, {3.5, 4, 5, 5}}, Along::level)) << "1.5 m for 2 m";
}

TEST(Distributing, GapsAreEqualTheOuterTwoStayAndTheSecondTimeMovesNothing) {
    std::mt19937 random(6);
    int spread = 0;
    for (int i = 0; i < sweep::cases(600); ++i) {
        const std::vector<Bounds> before = some_plates(random);
        for (const Along along : {Along::level, Along::slope}) {
            const auto moves = distributing_moves(before, along);
            if (!moves) continue;
            ++spread;
            const std::vector<Bounds> after = moved(before, *moves);
            std::vector<std::pair<double, double>> ends;
            for (const Bounds& b : after) {
                ends.push_back(along == Along::level ? std::pair{b.min_x_m, b.max_x_m}
                                                     : std::pair{b.min_y_m, b.max_y_m});
            }
            std::sort(ends.begin(), ends.end(),
                      [](const auto& a, const auto& b) { return a.first + a.second < b.first + b.second; });
            for (std::size_t n = 2; n < ends.size(); ++n) {
                EXPECT_NEAR(ends[n].first - ends[n - 1].second, ends[1].first - ends[0].second, 0.0005);
            }
            int unmoved = 0;
            for (const Move& m : *moves)
                unmoved += m.right_m == 0.0 && m.up_m == 0.0 ? 1 : 0;
            EXPECT_GE(unmoved, 2);
            const auto again = distributing_moves(after, along);
            ASSERT_TRUE(again);
            for (const Move& m : *again)
                EXPECT_NEAR(std::hypot(m.right_m, m.up_m), 0.0, 1e-9);
        }
    }
    EXPECT_GT(spread, 20);
}

/// Roof of 10 x 6 m, plate of 2 x 0.8 m, strip of 0.3 m.
struct Rows : testing::Test {
    Site site;
    Choice choice;
    CollectorModel model = plain_collector();
    Rows() {
        site.surfaces = {plain_roof()};
        choice.placements = {plain_input().placement};
        first().x_m = 1.3;
    }
    [[nodiscard]] Placement& first() { return choice.placements[0]; }
    [[nodiscard]] Row row(int count, double gap) { return row_beside(site, choice, model, first(), count, gap); }
};

TEST_F(Rows, GoToTheRightFirst) {
    const Row r = row(2, 0.3);
    ASSERT_EQ(r.middles.size(), 2u);
    EXPECT_NEAR(r.middles[0].x_m, 3.6, 1e-9);
    EXPECT_NEAR(r.middles[1].x_m, 5.9, 1e-9);
    EXPECT_EQ(r.middles[1].y_m, first().y_m);
    first().x_m = 8.7;
    ASSERT_EQ(row(2, 0.3).middles.size(), 2u);
    EXPECT_NEAR(row(2, 0.3).middles[1].x_m, 4.1, 1e-9);
    first().x_m = 5.0;  // one on each side
    ASSERT_EQ(row(2, 0.3).middles.size(), 2u);
    EXPECT_NEAR(row(2, 0.3).middles[0].x_m, 7.3, 1e-9);
    EXPECT_NEAR(row(2, 0.3).middles[1].x_m, 2.7, 1e-9);
}

TEST_F(Rows, AreRefusedWhenTheyDoNotFitAndSayHowManyWould) {
    const Row r = row(4, 0.3);  // 5 x 2.0 + 4 x 0.3 = 11.2 m on 10 m
    EXPECT_TRUE(r.middles.empty());
    EXPECT_EQ(r.room_for, 3);
    KeepOut vent;
    vent.outline = {{5.0, 2.9}, {5.2, 2.9}, {5.2, 3.1}, {5.0, 3.1}};
    vent.clearance_m = 0.1;
    site.surfaces[0].keep_outs = {vent};
    EXPECT_EQ(row(2, 0.3).room_for, 1);
    EXPECT_EQ(row(1, 0.3).middles.size(), 1u);
    EXPECT_TRUE(row(0, 0.3).middles.empty());
}

TEST_F(Rows, PlacesThatLeaveTheStripGoFirst) {
    first().x_m = 7.3;  // to the right one would reach 0.2 m beyond the strip; to the left there is room
    site.surfaces[0].outline = {{0, 0}, {10.7, 0}, {10.7, 6}, {0, 6}};
    ASSERT_EQ(row(1, 0.3).middles.size(), 1u);
    EXPECT_NEAR(row(1, 0.3).middles[0].x_m, 5.0, 1e-9);
}

TEST_F(Rows, FollowTheFrameWhereItStandsAskew) {
    site.surfaces[0].kind = SurfaceKind::terrace;
    site.surfaces[0].tilt_deg = 0.0;
    first().x_m = 3.0;
    first().y_m = 2.0;
    first().frame_tilt_deg = 45.0;
    first().frame_azimuth_deg = 150.0;  // 30 deg counter-clockwise of the terrace's 180
    const Row r = row(1, 0.4);
    ASSERT_EQ(r.middles.size(), 1u);
    EXPECT_NEAR(r.middles[0].x_m, 3.0 + 2.4 * std::cos(std::acos(-1.0) / 6.0), 1e-9);
    EXPECT_NEAR(r.middles[0].y_m, 2.0 + 2.4 * 0.5, 1e-9);
    Placement more = first();
    more.id = "p2";
    more.x_m = r.middles[0].x_m;
    more.y_m = r.middles[0].y_m;
    const auto outline = [&](const Placement& p) { return site::place(site.surfaces[0], 0.0, p, model).outline; };
    EXPECT_NEAR(site::gap_m(outline(first()), outline(more)), 0.4, 1e-9);
}

TEST_F(Rows, WhatIsPutBreaksNoHardRule) {
    KeepOut vent;
    vent.outline = {{6.0, 2.0}, {6.4, 2.0}, {6.4, 2.4}, {6.0, 2.4}};
    vent.clearance_m = 0.15;
    site.surfaces[0].keep_outs = {vent};
    std::mt19937 random(9);
    std::uniform_real_distribution<double> x(1.0, 9.0), y(0.4, 5.6), gap(0.0, 0.6);
    int put = 0;
    for (int i = 0; i < sweep::cases(200); ++i) {
        choice.placements.resize(1);
        first().x_m = x(random);
        first().y_m = y(random);
        if (!tight_spots(site, choice, model, first()).empty()) continue;
        const double asked = gap(random);
        const Row r = row(1 + static_cast<int>(random() % 3), asked);
        for (const Point2 at : r.middles) {
            Placement more = first();
            more.id = "more" + std::to_string(choice.placements.size());
            more.x_m = at.x_m;
            choice.placements.push_back(more);
            ++put;
        }
        for (const Placement& one : choice.placements) {
            for (const TightSpot& s : tight_spots(site, choice, model, one))
                EXPECT_EQ(s.severity, Severity::caution) << s.text;
        }
    }
    EXPECT_GT(put, 10);
}

}  // namespace arrange_test
}  // namespace wg::fixing
