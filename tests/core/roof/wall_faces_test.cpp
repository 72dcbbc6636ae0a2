#include <gtest/gtest.h>

#include <algorithm>

#include "core/roof/linked.h"

namespace wg::roof {
namespace {

TEST(WallFaces, AreTheBearingsOfTheWallsWhicheverWayRoundTheHouseWasDrawn) {
    Building house;
    for (const Point2 corner : {Point2{0, 0}, Point2{10, 0}, Point2{10, 6}, Point2{0, 6}})
        house.edges.push_back({"", corner, false, {}});
    // Up is north: the edge along the bottom looks south.
    EXPECT_NEAR(wall_faces_deg(house, 0, 0.0), 180.0, 1e-9);
    EXPECT_NEAR(wall_faces_deg(house, 1, 0.0), 90.0, 1e-9);
    EXPECT_NEAR(wall_faces_deg(house, 3, 30.0), 300.0, 1e-9);
    std::reverse(house.edges.begin(), house.edges.end());
    // From (0, 6) to (10, 6): the wall in the north.
    EXPECT_NEAR(std::fmod(wall_faces_deg(house, 0, 0.0), 360.0), 0.0, 1e-9);
    EXPECT_NEAR(wall_faces_deg(house, 2, 0.0), 180.0, 1e-9);
}

}  // namespace
}  // namespace wg::roof
