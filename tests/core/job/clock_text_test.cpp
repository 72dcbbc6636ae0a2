// Hours and days as typed: read, written, refused.

#include "core/job/clock_text.h"

#include <gtest/gtest.h>

namespace wg {
namespace {

TEST(ClockText, ReadsAndWritesBack) {
    const auto read = clock_windows_from_text(" 6-8, 17:30 - 22; weekdays 12\u201313,weekends 9 to 11, 22-6 ");
    ASSERT_TRUE(read);
    ASSERT_EQ(read.value().size(), 5U);
    EXPECT_EQ(read.value()[1].from_h, 17.5);
    EXPECT_FALSE(read.value()[2].weekends);
    EXPECT_FALSE(read.value()[3].weekdays);
    EXPECT_EQ(text_of(read.value()), "6-8, 17:30-22, weekdays 12-13, weekends 9-11, 22-6");
    EXPECT_EQ(clock_windows_from_text(text_of(read.value())).value(), read.value());
    EXPECT_TRUE(clock_windows_from_text("").value().empty());
}

TEST(ClockText, Refuses) {
    for (const char* bad : {"6", "6-", "6-25", "6:60-8", "x", "6-8 9-10", "8-8", "-6-8", "6-8,,", "99999-1", "24:30-1"})
        EXPECT_FALSE(clock_windows_from_text(bad)) << bad;
    std::string many = "1-2";
    for (int i = 0; i < 30; ++i)
        many += ",1-2";
    EXPECT_FALSE(clock_windows_from_text(many));
}

TEST(HolidayText, ReadsAndWritesBack) {
    const auto read = holidays_from_text("24.12-2.1, 15.7. to 28.7.");
    ASSERT_TRUE(read);
    ASSERT_EQ(read.value().size(), 2U);
    EXPECT_EQ(read.value()[0].from_month, 12);
    EXPECT_EQ(read.value()[0].to_day, 2);
    EXPECT_EQ(text_of(read.value()), "24.12-2.1, 15.7-28.7");
    for (const char* bad : {"24.12", "32.1-2.2", "30.2-1.3", "1.13-2.1", "0.1-2.1", "x-y", "1.1-2.1 3.1-4.1"})
        EXPECT_FALSE(holidays_from_text(bad)) << bad;
}

}  // namespace
}  // namespace wg
