#include "core/pipework/oil.h"

#include <gtest/gtest.h>

#include <random>

#include "core/pipework/buy.h"
#include "core/pipework/run.h"
#include "tests/tools/sweep.h"

namespace wg::pipework {
namespace oil_test {
namespace {

RoutePoint at(double x, double y, double z, RoutePointKind kind = RoutePointKind::free) {
    return {"p", kind, {x, y, z}, ""};
}

TEST(Oil, traps_stand_at_the_foot_of_a_riser_and_every_so_many_metres) {
    // Down 1 m, level 2 m, up 13 m in two legs with a level metre between them is two risers of 8 and 5 m.
    const auto legs = legs_of({0, 0, 1}, {at(0, 0, 0), at(2, 0, 0), at(2, 0, 8), at(3, 0, 8)}, {3, 0, 13});
    const OilReturn oil = oil_return(legs, 5.0);
    ASSERT_EQ(oil.risers.size(), 2u);
    EXPECT_DOUBLE_EQ(oil.risers[0].height_m, 8.0);
    EXPECT_DOUBLE_EQ(oil.risers[1].height_m, 5.0);
    EXPECT_DOUBLE_EQ(oil.level_m, 3.0);
    ASSERT_EQ(oil.traps.size(), 3u) << "two feet, one at 5 m of 8; a riser of just 5 m needs none at its top";
    EXPECT_TRUE(oil.traps[0].foot);
    EXPECT_FALSE(oil.traps[1].foot);
    EXPECT_DOUBLE_EQ(oil.traps[1].at.z_m, 5.0);
    EXPECT_EQ(oil.traps[1].leg, 2u);
    EXPECT_DOUBLE_EQ(oil.traps[2].at.z_m, 8.0);
    EXPECT_TRUE(oil_return(legs, 0.0).traps.empty()) << "none asked";
}

TEST(Oil, a_riser_goes_on_over_a_bend_that_still_rises) {
    const auto legs = legs_of({0, 0, 0}, {at(0, 0, 4), at(1, 0, 4.5)}, {1, 0, 9});
    const OilReturn oil = oil_return(legs, 4.25);
    ASSERT_EQ(oil.risers.size(), 1u);
    EXPECT_DOUBLE_EQ(oil.risers[0].height_m, 9.0);
    ASSERT_EQ(oil.traps.size(), 3u);
    EXPECT_EQ(oil.traps[1].leg, 1u);
    EXPECT_NEAR(oil.traps[1].at.x_m, 0.5, 1e-12) << "half way up the slanting leg";
    EXPECT_NEAR(oil.traps[2].at.z_m, 8.5, 1e-12);
}

TEST(Oil, falling_and_low_rises_need_nothing) {
    EXPECT_TRUE(oil_return(legs_of({0, 0, 5}, {at(3, 0, 4.9)}, {3, 0, 0}), 3.0).risers.empty());
    EXPECT_TRUE(oil_return(legs_of({0, 0, 0}, {}, {0, 0, 0.3}), 3.0).risers.empty());
    EXPECT_EQ(oil_return(legs_of({0, 0, 0.06}, {}, {3, 0, 0}), 3.0).level_m, 0.0) << "2 cm a metre drain";
    EXPECT_GT(oil_return(legs_of({0, 0, 0.02}, {}, {3, 0, 0}), 3.0).level_m, 2.9);
}

TEST(Legs, in_and_out_by_roof_and_wall_passages) {
    const auto legs = legs_of({0, 0, 5},
                              {at(0, 0, 4, RoutePointKind::roof_passage), at(0, 0, 2, RoutePointKind::floor_passage),
                               at(3, 0, 2, RoutePointKind::wall_passage), at(5, 0, 2, RoutePointKind::wall_passage)},
                              {6, 0, 2});
    ASSERT_EQ(legs.size(), 5u);
    const bool outdoors[] = {true, false, false, true, false};
    for (std::size_t i = 0; i < 5; ++i)
        EXPECT_EQ(legs[i].outdoors, outdoors[i]) << i;
}

TEST(Legs, bends_need_their_tangents) {
    // 3.5 x 12.7 mm = 44.45 mm; a right angle takes as much of each leg, 45 deg tan(22.5 deg) of it.
    const auto legs = legs_of({0, 0, 0}, {at(1, 0, 0), at(1, 1, 0), at(2, 2, 0)}, {3, 3, 0});
    EXPECT_NEAR(bend_room_m(legs, 0, 12.7), 0.04445, 1e-9);
    EXPECT_NEAR(bend_room_m(legs, 1, 12.7), 0.04445 * (1.0 + 0.41421356), 1e-8);
    EXPECT_EQ(bend_room_m(legs, 3, 12.7), 0.0) << "straight on";
}

TEST(Buying, pieces_have_stubs_and_traps_and_make_the_cut_length) {
    const auto legs = legs_of({0, 0, 0}, {at(0, 0, 4)}, {3, 0, 4});
    const LineToBuy line = to_buy(legs, {0}, true);
    ASSERT_EQ(line.pieces_m.size(), 2u);
    EXPECT_NEAR(line.pieces_m[0], 4.0 + 0.15 + 0.40, 1e-12);
    EXPECT_NEAR(line.pieces_m[1], 3.0 + 0.30, 1e-12);
    EXPECT_NEAR(line.cut_m, 7.85, 1e-12);
    EXPECT_NEAR(line.buy_m, 7.85 * 1.05, 1e-12);
    EXPECT_EQ(line.coils_m, std::vector<double>{15.0});
    EXPECT_EQ(line.joints, 0);
    EXPECT_EQ(line.lagging_lengths, 5) << "8.24 m in lengths of 2 m";
    EXPECT_EQ(to_buy(legs, {}, false).lagging_lengths, 0);
    EXPECT_TRUE(to_buy({}, {}, true).pieces_m.empty());
}

TEST(Buying, coils_hold_what_is_needed_with_the_fewest_joints) {
    EXPECT_EQ(coils_for_m(15.000000000000002), std::vector<double>{15.0});
    EXPECT_EQ(coils_for_m(15.1), std::vector<double>{25.0});
    EXPECT_EQ(coils_for_m(28.0), std::vector<double>{30.0});
    EXPECT_EQ(coils_for_m(61.0), (std::vector<double>{50.0, 15.0}));
    EXPECT_TRUE(coils_for_m(0.0).empty());
    EXPECT_TRUE(coils_for_m(1e9).empty()) << "nonsense fills no memory";
    for (double need = 0.5; need < 180.0; need += 0.5) {
        double sum = 0.0;
        for (const double coil : coils_for_m(need))
            sum += coil;
        EXPECT_GE(sum, need - 1e-9);
        EXPECT_LT(coils_for_m(need).size(), need / 50.0 + 1.0 + 1e-9);
    }
}

// Random routes: a detour through one more point makes nothing smaller that has to be bought, charged or overcome.
TEST(Run, a_detour_never_needs_less_of_anything) {
    std::mt19937 random(20);  // NOLINT: the same routes each time
    std::uniform_real_distribution<double> place(-6.0, 6.0);
    const auto any = [&] { return Point3{place(random), place(random), place(random)}; };
    for (int n = 0; n < sweep::cases(300); ++n) {
        Input in;
        in.collector_connection = any();
        in.block_connection = any();
        in.block.oil_trap_every_m = 3.0;
        for (int i = 0; i < 3; ++i)
            in.route.push_back({"p", RoutePointKind::free, any(), ""});
        const pipework::Run before = run_of(in).run;
        in.route.insert(in.route.begin() + 1, {"q", RoutePointKind::free, any(), ""});
        const pipework::Run after = run_of(in).run;
        EXPECT_GE(after.length_m, before.length_m - 1e-12);
        EXPECT_GE(after.total_charge_kg, before.total_charge_kg - 1e-12);
        EXPECT_GE(after.extra_charge_kg, before.extra_charge_kg - 1e-12);
        EXPECT_GE(after.coil_liquid_m, before.coil_liquid_m - 1e-12);
        EXPECT_GE(after.line_ua_w_k, before.line_ua_w_k - 1e-12);
        EXPECT_DOUBLE_EQ(after.lift_m, before.lift_m);
        double pieces = 0.0;
        for (const double piece : after.suction_to_buy.pieces_m)
            pieces += piece;
        EXPECT_NEAR(pieces, after.length_m + 0.45 + 0.40 * static_cast<double>(after.oil.traps.size()), 1e-9);
    }
}

}  // namespace
}  // namespace oil_test
}  // namespace wg::pipework
