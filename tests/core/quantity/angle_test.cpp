#include "core/quantity/angle.h"

#include <gtest/gtest.h>

#include <string>

namespace wg {
namespace {

constexpr double rounding_deg = 1e-12;  // a few units in the last place of 360

TEST(Angle, BearingsWrapIntoOneTurn) {
    EXPECT_EQ(wrap_360(0.0), 0.0);
    EXPECT_EQ(wrap_360(360.0), 0.0);
    EXPECT_EQ(wrap_360(-1e-17), 0.0);
    EXPECT_NEAR(wrap_360(-30.0), 330.0, rounding_deg);
    EXPECT_NEAR(wrap_360(725.0), 5.0, rounding_deg);
    EXPECT_EQ(wrap_180(180.0), 180.0);
    EXPECT_EQ(wrap_180(-180.0), 180.0);
    EXPECT_NEAR(wrap_180(350.0), -10.0, rounding_deg);
}

TEST(Angle, SeparationIsAGreatCircleAndExactNearZero) {
    EXPECT_NEAR(angular_separation_deg(90.0, 0.0, 90.0, 90.0), 90.0, 1e-9);
    EXPECT_NEAR(angular_separation_deg(0.0, 10.0, 180.0, 200.0), 180.0, 1e-9);
    EXPECT_NEAR(angular_separation_deg(30.0, 359.0, 30.0, 1.0), angular_separation_deg(30.0, 10.0, 30.0, 12.0), 1e-12);
    EXPECT_NEAR(angular_separation_deg(45.0, 100.0, 45.0 + 1e-9, 100.0), 1e-9, 1e-14);
}

TEST(Angle, CompassPointsHaveTheirBearingInTheMiddle) {
    EXPECT_EQ(std::string(compass_point(0.0)), "N");
    EXPECT_EQ(std::string(compass_point(359.0)), "N");
    EXPECT_EQ(std::string(compass_point(11.0)), "N");
    EXPECT_EQ(std::string(compass_point(12.0)), "NNE");
    EXPECT_EQ(std::string(compass_point(180.0)), "S");
    EXPECT_EQ(std::string(compass_point(-90.0)), "W");
}

}  // namespace
}  // namespace wg
