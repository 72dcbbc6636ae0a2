#include "core/quantity/time.h"

#include <gtest/gtest.h>

namespace wg {
namespace {

TEST(Time, DaysCountFrom1970AndBack) {
    EXPECT_EQ(days_from_civil({1970, 1, 1}), 0);
    EXPECT_EQ(days_from_civil({1969, 12, 31}), -1);
    // POSIX time of 2000-03-01T00:00Z is 951868800 s (11017 days).
    EXPECT_EQ(days_from_civil({2000, 3, 1}), 11017);
    for (std::int64_t day = -150000; day <= 150000; day += 37) {
        EXPECT_EQ(days_from_civil(civil_from_days(day)), day);
    }
}

TEST(Time, LeapYearsFollowTheGregorianRule) {
    EXPECT_TRUE(is_leap_year(2024));
    EXPECT_TRUE(is_leap_year(2000));
    EXPECT_FALSE(is_leap_year(1900));
    EXPECT_FALSE(is_leap_year(2027));
    EXPECT_EQ(days_in_month(2024, 2), 29);
    EXPECT_EQ(days_in_month(2027, 2), 28);
    EXPECT_EQ(day_of_year({2024, 12, 31}), 366);
    EXPECT_EQ(day_of_year({2027, 3, 1}), 60);
}

TEST(Time, OffsetsNameTheSameInstant) {
    const std::int64_t noon = instant_from_iso8601("2027-06-21T12:30:00Z").value().unix_s;
    for (const char* text : {"2027-06-21T14:30:00+02:00", "2027-06-21 05:30-07:00", "2027-06-21T14:30:00.999+0200",
                             "2027-06-21T14:30+02", "2027-06-21T18:15:00+05:45"}) {
        const Result<Instant> read = instant_from_iso8601(text);
        ASSERT_TRUE(read.ok()) << text;
        EXPECT_EQ(read.value().unix_s, noon) << text;
    }
}

TEST(Time, TextsWithoutOffsetOrWithImpossiblePartsAreRefused) {
    for (const char* text : {"", "2027-06-21", "2027-06-21T12:30:00", "2027-06-31T12:30:00Z", "2027-02-29T12:30:00Z",
                             "2027-13-01T12:30:00Z", "2027-06-21T24:00:00Z", "2027-06-21T12:60:00Z",
                             "2027-06-21T12:30:60Z", "2027-06-21T12:30:00+15:00", "2027-06-21T12:30:00Z ",
                             " 2027-06-21T12:30:00Z", "2027-6-21T12:30:00Z", "+2027-06-21T12:30:00Z"}) {
        EXPECT_FALSE(instant_from_iso8601(text).ok()) << text;
    }
}

TEST(Time, WritingAndReadingAnInstantGivesItBack) {
    for (const std::int64_t s : {std::int64_t{0}, std::int64_t{-1}, std::int64_t{1813580999}, std::int64_t{-86401}}) {
        EXPECT_EQ(instant_from_iso8601(iso8601(Instant{s})).value().unix_s, s);
    }
    EXPECT_EQ(iso8601(Instant{0}), "1970-01-01T00:00:00Z");
    EXPECT_EQ(iso8601(CivilDate{2027, 6, 1}), "2027-06-01");
    EXPECT_EQ(date_from_iso8601("2027-06-01").value(), (CivilDate{2027, 6, 1}));
    EXPECT_FALSE(date_from_iso8601("2027-06-01T").ok());
}

TEST(Time, MonthsOfAYearOf8760Hours) {
    EXPECT_EQ(month_of_hour(0), 1);
    EXPECT_EQ(month_of_hour(8759), 12);
    EXPECT_EQ(first_hour_of_month(13), 8760);
    for (int month = 1; month <= 12; ++month) {
        EXPECT_EQ(month_of_hour(first_hour_of_month(month)), month);
        EXPECT_EQ(month_of_hour(first_hour_of_month(month + 1) - 1), month);
    }
}

}  // namespace
}  // namespace wg
