#include "core/plan/lean_months.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "core/plan/plan.h"
#include "tests/tools/load_reference.h"

namespace wg::plan {
namespace lean_months_test {

constexpr site::Months october_to_march = {true,  true,  true,  false, false, false,
                                           false, false, false, true,  true,  true};

/// Ten kWh a day drawn; the pump gives `kw[m]` while it runs.
season::Year year_of(const std::array<double, 12>& kw) {
    season::Year year;
    constexpr std::array<double, 12> days = {31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};
    for (std::size_t m = 0; m < 12; ++m) {
        year.months[m].drawn_kwh = 10.0 * days[m];
        year.months[m].condenser_kwh = 11.0 * days[m];
        year.months[m].running_h = year.months[m].condenser_kwh / kw[m];
    }
    return year;
}

TEST(LeanMonths, AreTheSixWithTheLeastPowerAgainstTheDraw) {
    const LeanMonths lean = lean_months(nullptr, 47.0);
    EXPECT_FALSE(lean.from_year);
    // A foggy March and a mild October.
    const season::Year year = year_of({1.0, 1.1, 1.05, 1.3, 1.6, 1.8, 1.9, 1.85, 1.5, 1.45, 1.2, 1.0});
    const LeanMonths found = lean_months(&year, 47.0);
    EXPECT_TRUE(found.from_year);
    const site::Months expected = {true, true, true, true, false, false, false, false, false, false, true, true};
    EXPECT_EQ(found.months, expected);
}

TEST(LeanMonths, AMonthOfHolidaysIsNeverLean) {
    season::Year year = year_of({1, 1, 1, 2, 2, 2, 2, 2, 2, 1, 1, 1});
    year.months[0] = {};
    const LeanMonths found = lean_months(&year, 47.0);
    EXPECT_FALSE(found.months[0]);
    EXPECT_TRUE(found.months[11]);
    year.months[1].running_h = 0.0;  // drawn, and the pump stood: nothing to spare at all
    year.months[1].condenser_kwh = 0.0;
    EXPECT_TRUE(lean_months(&year, 47.0).months[1]);
}

TEST(LeanMonths, WithoutAYearTheyAreTheColdHalfOfTheCalendar) {
    EXPECT_EQ(lean_months(nullptr, 47.0).months, october_to_march);
    site::Months south = october_to_march;
    for (bool& month : south)
        month = !month;
    EXPECT_EQ(lean_months(nullptr, -33.0).months, south);
    const season::Year nothing_drawn;
    EXPECT_FALSE(lean_months(&nothing_drawn, 47.0).from_year);
}

TEST(LeanMonths, OfTheDemonstrationHoldTheDarkMonths) {
    const auto planned = plan(test::demo_job(), test::reference());
    ASSERT_TRUE(planned.ok());
    const LeanMonths lean = lean_months(&planned.value().season, 47.0);
    EXPECT_TRUE(lean.from_year);
    EXPECT_TRUE(lean.months[11] && lean.months[0] && lean.months[1]);
    EXPECT_FALSE(lean.months[5] || lean.months[6] || lean.months[7]);
    EXPECT_EQ(std::count(lean.months.begin(), lean.months.end(), true), lean_month_count);
}

}  // namespace lean_months_test
}  // namespace wg::plan
