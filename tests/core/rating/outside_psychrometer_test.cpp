// Dew point from dry and wet bulb against PsychroLib (ASHRAE Handbook Fundamentals 2017).

#include <gtest/gtest.h>

#include "core/rating/rating.h"
#include "tests/reference/heat_values.h"

namespace {

using namespace wg;

// ASHRAE's wet bulb is that of adiabatic saturation, WMO's psychrometer has a constant of its own: a few tenths of a
// kelvin in dry air. Wet bulbs below 0 deg C are iced there and wet here.
TEST(OutsidePsychrometer, dew_point_from_dry_and_wet_bulb_is_that_of_the_table) {
    int compared = 0;
    for (const auto& row : outside::heat_values()["moist_air"]) {
        const double dry = row[0];
        const double wet = row[4];
        const double dew = row[3];
        if (wet < 0.5 || dew < 0.5) continue;
        const double tolerance_k = 0.06 + 0.03 * (dry - wet);
        EXPECT_NEAR(rating::dew_point_c({dry, wet}, row[1].get<double>()), dew, tolerance_k) << row;
        ++compared;
    }
    EXPECT_GT(compared, 40);
}

}  // namespace
