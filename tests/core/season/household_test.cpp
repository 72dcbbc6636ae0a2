#include "core/season/household.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <set>

#include "core/season/schedule.h"

namespace household_test {

using namespace wg;
using season::Calendar;
using season::DrawKind;
using season::HouseholdDay;

constexpr double rounding = 1e-9;

std::vector<HouseholdDay> year_of(const Household& household, const std::vector<HolidayPeriod>& holidays = {}) {
    return season::household_year(household, Calendar(holidays, 4), 20);
}

double litres(const HouseholdDay& day) {
    double sum = 0.0;
    for (const auto& draw : day)
        sum += draw.litres_40;
    return sum;
}

double mean_litres(const std::vector<HouseholdDay>& year, const Calendar& calendar, bool weekend) {
    double sum = 0.0;
    int days = 0;
    for (int day = 0; day < 365; ++day) {
        if (calendar.weekend(day) != weekend || calendar.holiday(day)) continue;
        sum += litres(year[static_cast<std::size_t>(day)]);
        ++days;
    }
    return sum / days;
}

TEST(HouseholdYear, mean_of_the_days_at_home_and_ratio_of_weekends_are_what_was_asked) {
    for (const int persons : {1, 4, 12})
        for (const DayRhythm rhythm : {DayRhythm::even, DayRhythm::morning, DayRhythm::evening})
            for (const bool holidays : {false, true}) {
                Household household;
                household.persons = persons;
                household.rhythm = rhythm;
                household.weekend_factor = 1.3;
                const std::vector<HolidayPeriod> away =
                    holidays ? std::vector<HolidayPeriod>{{12, 20, 1, 5, ""}} : std::vector<HolidayPeriod>{};
                const Calendar calendar(away, 4);
                const auto year = season::household_year(household, calendar, 20);
                double all = 0.0;
                int home = 0;
                for (int day = 0; day < 365; ++day) {
                    if (calendar.holiday(day)) {
                        EXPECT_TRUE(year[static_cast<std::size_t>(day)].empty());
                    } else {
                        ++home;
                    }
                    all += litres(year[static_cast<std::size_t>(day)]);
                }
                EXPECT_EQ(home, holidays ? 365 - 17 : 365);
                EXPECT_NEAR(all / home / (persons * 35.0), 1.0, rounding);
                EXPECT_NEAR(mean_litres(year, calendar, true) / mean_litres(year, calendar, false), 1.3, rounding);
            }
}

TEST(HouseholdYear, days_differ_and_the_seed_decides) {
    const auto year = year_of({});
    const auto again = year_of({});
    Household other;
    other.seed_number = 2;
    const auto others = year_of(other);
    std::set<double> different;
    int same_as_other = 0;
    for (std::size_t day = 0; day < 365; ++day) {
        ASSERT_EQ(year[day].size(), again[day].size());
        for (std::size_t i = 0; i < year[day].size(); ++i)
            ASSERT_EQ(year[day][i].litres_40, again[day][i].litres_40);
        different.insert(litres(year[day]));
        if (year[day].size() == others[day].size()) ++same_as_other;
    }
    EXPECT_GT(different.size(), 360u);
    EXPECT_LT(same_as_other, 60);
}

// The generator and the arithmetic are the same everywhere: figures as this program first made them.
TEST(HouseholdYear, is_the_same_on_every_machine) {
    const auto year = year_of({});
    ASSERT_FALSE(year[0].empty());
    std::size_t draws = 0;
    double minutes = 0.0;
    for (const auto& day : year) {
        draws += day.size();
        for (const auto& draw : day)
            minutes += draw.minute_of_day;
    }
    EXPECT_EQ(draws, 11186u);
    EXPECT_EQ(static_cast<long>(minutes), 9506026L);
}

// Jordan and Vajen (2001), IEA SHC Task 26 (from memory): of 200 l a day small draws take 14 %, medium 36 %, showers
// 40 %, baths 10 %. Baths come oftener at weekends here.
TEST(HouseholdYear, kinds_have_their_published_shares) {
    Household household;
    household.persons = 5;
    household.litres_40_per_person = 40.0;
    household.weekend_factor = 1.0;
    std::array<double, 4> share{};
    for (const auto& day : year_of(household))
        for (const auto& draw : day)
            share[static_cast<std::size_t>(draw.kind)] += draw.litres_40 / (365.0 * 200.0);
    EXPECT_NEAR(share[static_cast<std::size_t>(DrawKind::small)], 0.14, 0.02);
    EXPECT_NEAR(share[static_cast<std::size_t>(DrawKind::dishes)], 0.36, 0.03);
    EXPECT_NEAR(share[static_cast<std::size_t>(DrawKind::shower)], 0.40, 0.04);
    EXPECT_NEAR(share[static_cast<std::size_t>(DrawKind::bath)], 0.12, 0.04);
}

TEST(HouseholdYear, nobody_draws_while_away_and_rhythm_moves_the_draws) {
    Household away;
    away.away_on_weekdays = true;
    const Calendar calendar({}, 4);
    const auto year = year_of(away);
    for (int day = 0; day < 365; ++day) {
        if (calendar.weekend(day)) continue;
        for (const auto& draw : year[static_cast<std::size_t>(day)])
            ASSERT_TRUE(draw.minute_of_day < 510 || draw.minute_of_day >= 990) << draw.minute_of_day;
    }
    const auto before_noon = [](DayRhythm rhythm) {
        Household household;
        household.rhythm = rhythm;
        double early = 0.0;
        for (const auto& day : year_of(household))
            for (const auto& draw : day)
                if (draw.minute_of_day < 720) early += draw.litres_40;
        return early / (365.0 * 140.0);
    };
    EXPECT_GT(before_noon(DayRhythm::morning), before_noon(DayRhythm::even) + 0.1);
    EXPECT_LT(before_noon(DayRhythm::evening), before_noon(DayRhythm::even) - 0.1);
}

TEST(HouseholdSchedule, keeps_energy_under_any_step_and_stays_short) {
    Demand demand;
    demand.draw_source = DrawSource::household;
    demand.household.persons = 6;
    std::array<double, 365> cold{};
    cold.fill(10.0);
    double first = 0.0;
    for (const double step_s : {60.0, 300.0, 600.0, 900.0}) {
        const season::DaySchedules days(demand, 4, step_s, cold);
        double joule = 0.0;
        std::size_t slots = 0;
        for (int day = 0; day < 365; ++day) {
            const auto& schedule = days.of(day);
            double length_s = 0.0;
            int draws = 0;
            for (const auto& slot : schedule.slots) {
                length_s += slot.length_s;
                draws += slot.draw_count;
                ASSERT_GT(slot.length_s, 0.0);
            }
            ASSERT_NEAR(length_s, 86400.0, 1e-6);
            ASSERT_EQ(static_cast<std::size_t>(draws), schedule.draws_j.size()) << "no draw is lost";
            for (const double j : schedule.draws_j)
                joule += j;
            slots += schedule.slots.size();
        }
        if (first == 0.0) first = 365.0 * 6.0 * 35.0 * 4180.0 * 30.0;
        EXPECT_NEAR(joule / first, 1.0, 1e-9) << step_s;
        EXPECT_LE(static_cast<double>(slots) / 365.0, 2.0 * 86400.0 / step_s) << step_s;
    }
}

TEST(CalendarOfTheYear, knows_weekdays_holidays_and_windows) {
    const Calendar calendar({{12, 24, 1, 2, ""}}, 4);  // 2027 begins on a Friday
    EXPECT_FALSE(calendar.weekend(0));
    EXPECT_TRUE(calendar.weekend(1));
    EXPECT_TRUE(calendar.weekend(2));
    EXPECT_EQ(calendar.weekday(3), 0);
    EXPECT_TRUE(calendar.holiday(0));
    EXPECT_TRUE(calendar.holiday(1));
    EXPECT_FALSE(calendar.holiday(2));
    EXPECT_TRUE(calendar.last_of_holiday(1));
    EXPECT_TRUE(calendar.holiday(357));
    EXPECT_FALSE(calendar.holiday(356));
    EXPECT_EQ(season::day_of_year(2, 31), 58) << "the last of February";

    const std::vector<ClockWindow> night{{22.0, 6.0, true, false, ""}};
    EXPECT_TRUE(calendar.in(night, 0, 23.0 * 3600.0)) << "Friday night";
    EXPECT_TRUE(calendar.in(night, 1, 5.0 * 3600.0)) << "goes on into Saturday";
    EXPECT_FALSE(calendar.in(night, 1, 23.0 * 3600.0)) << "Saturday night";
    EXPECT_FALSE(calendar.in(night, 3, 5.0 * 3600.0)) << "Monday morning after a Sunday";
    EXPECT_FALSE(calendar.in({{7.0, 7.0, true, true, ""}}, 3, 7.0 * 3600.0)) << "equal: never";
    const std::vector<ClockWindow> two{{6.0, 7.0, true, true, ""}, {6.5, 7.25, true, true, ""}};
    EXPECT_NEAR(calendar.share_in(two, 3, 5.0 * 3600.0, 4.0 * 3600.0), 1.25 / 4.0, 1e-12) << "overlap counts once";
}

}  // namespace household_test
