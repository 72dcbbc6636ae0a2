// What stamps mean, proved by the sun: on a cloudless day the light balances about solar noon. Noon comes from the
// equation of time of the full position algorithm, apart from the readers and from the year's sun.

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

#include "core/sun/position.h"
#include "core/weather/quality.h"
#include "core/weather/read.h"
#include "tests/core/weather/plain_files.h"

namespace wg::weather {
namespace {

// Hourly sums tell the middle of a day to about two minutes.
constexpr double symmetry_min = 3.0;

struct Spot {
    double latitude, longitude, utc_offset;
};
// Half-hour and three-quarter-hour zones, both hemispheres, both sides of Greenwich (tz database, from memory).
const Spot spots[] = {{28.6, 77.2, 5.5},      {27.7, 85.3, 5.75}, {47.6, -52.7, -3.5},  {-23.7, 133.9, 9.5},
                      {-44.0, -176.5, 12.75}, {51.5, 0.0, 0.0},   {-33.4, -70.7, -4.0}, {60.2, 24.9, 2.0}};

std::vector<MadeHour> cloudless(const Spot& spot, double utc_offset, double minute = 30.0) {
    std::vector<MadeHour> hours = made_year(spot.latitude, spot.longitude, 100.0, utc_offset, minute);
    const sun::YearSun sun =
        sun::year_sun({spot.latitude, spot.longitude, 100.0, utc_offset, minute, sun::weather_sun_year});
    for (std::size_t i = 0; i < hours.size(); ++i) {
        MadeHour& h = hours[i];
        const double up = std::fmax(0.0, sun.up[i]);
        h.global = 0.75 * up * sun.extraterrestrial_normal_w_m2[i] * sun.up_share[i];
        h.diffuse = 0.15 * h.global;
        h.beam = up > 0.0 ? (h.global - h.diffuse) / up : 0.0;
    }
    return hours;
}

// Minutes by which the light of a day lies after solar noon.
double late_min(const Year& year, int day) {
    double light = 0.0;
    double moment_h = 0.0;
    for (int h = 24 * day; h < 24 * day + 24; ++h) {
        const double global = year.global_w_m2[static_cast<std::size_t>(h)];
        light += global;
        moment_h += global * (h - 24 * day + year.sun_minute / 60.0);
    }
    const double start = sun::year_start_unix_s(sun::weather_sun_year, year.utc_offset_h);
    const sun::Position noon = sun::position(Instant{static_cast<std::int64_t>(start) + 86400 * day + 43200}, 0.0,
                                             {year.latitude_deg, year.longitude_deg}, 70.0);
    const double noon_h = 12.0 + year.utc_offset_h - year.longitude_deg / 15.0 - noon.equation_of_time_min / 60.0;
    return 60.0 *
           std::remainder(moment_h / light - noon_h, 24.0);  // the date line lies between some clocks and their sun
}

void expect_balance(const Result<Year>& year, double late = 0.0, double within_min = symmetry_min) {
    ASSERT_TRUE(year) << text_of(year.problems());
    for (int day = 5; day < 365; day += 20) {
        EXPECT_NEAR(late_min(year.value(), day), late, within_min)
            << "day " << day << " at UTC" << year.value().utc_offset_h;
    }
}

// The same, and the quality report agrees.
void expect_symmetry(const Result<Year>& year, double late = 0.0, double within_min = symmetry_min) {
    ASSERT_NO_FATAL_FAILURE(expect_balance(year, late, within_min));
    // The shift is what the stamps need: later where the light stands too early.
    EXPECT_NEAR(assess(year.value()).best_shift_min, -late, symmetry_min);
}

std::string place(const Spot& s) {
    return "# latitude_deg: " + formatted("%.3f", s.latitude) + "\n# longitude_deg: " + formatted("%.3f", s.longitude) +
           "\n# altitude_m: 100\n# utc_offset_h: " + formatted("%.2f", s.utc_offset) + "\n";
}

TEST(Stamp, PlainRowsBalanceAboutNoonInEveryZone) {
    for (const Spot& spot : spots) {
        const std::vector<MadeHour> hours = cloudless(spot, spot.utc_offset);
        for (const char* stamp : {"start", "middle", "end"}) {
            PlainStyle style;
            style.place = place(spot);
            style.stamp = stamp;
            style.all_columns = spot.latitude > 0.0;  // with and without light that closes
            const Result<Year> year = read_plain(plain_text(hours, style), "clear.csv");
            style.stamp == "end" ? expect_symmetry(year) : expect_balance(year);
            EXPECT_EQ(year.value().utc_offset_h, spot.utc_offset);
        }
    }
}

TEST(Stamp, PlainRowsReadWithTheWrongStampAreHalfAnHourOff) {
    // Global only: nothing in the file contradicts the header, so that the reader must take it at its word.
    PlainStyle style;
    style.place = place(spots[0]);
    style.all_columns = false;
    style.stamp = "start";
    std::string text = plain_text(cloudless(spots[0], spots[0].utc_offset), style);
    text.replace(text.find("stamp: start"), 12, "stamp: middle");
    // A stamp of 00:00 for the middle makes the row reach from 23:30 to 00:30.
    expect_symmetry(read_plain(text, "wrong.csv"), -30.0);
}

TEST(Stamp, PlainRowsOffTheFullHourKeepTheirClock) {
    // Hours of universal time written by a clock of UTC+5:30 or UTC+5:45, and rows that stand for :15 to :15.
    for (const int minute : {30, 45, 15}) {
        const Spot& spot = spots[1];
        PlainStyle style;
        style.place = place(spot);
        style.minute = minute;
        const Result<Year> year =
            read_plain(plain_text(cloudless(spot, spot.utc_offset - minute / 60.0), style), "off.csv");
        expect_symmetry(year);
        EXPECT_NEAR(year.value().utc_offset_h, 5.75 - minute / 60.0, 1e-12);
    }
}

TEST(Stamp, PlainStampsInTheMiddleMayStandAtTheFullHour) {
    // 00:00 for 23:30 to 00:30.
    const Spot& spot = spots[5];
    PlainStyle style;
    style.place = place(spot);
    style.stamp = "middle";
    style.minute = -30;
    const Result<Year> year = read_plain(plain_text(cloudless(spot, spot.utc_offset + 0.5), style), "centred.csv");
    expect_symmetry(year);
    EXPECT_EQ(year.value().utc_offset_h, 0.5);
}

TEST(Stamp, EpwAndTmy3RowsBalanceAboutNoonInEveryZone) {
    for (const Spot& spot : spots) {
        const std::vector<MadeHour> hours = cloudless(spot, spot.utc_offset);
        const std::string latitude = formatted("%.3f", spot.latitude);
        const std::string longitude = formatted("%.3f", spot.longitude);
        const std::string offset = formatted("%.2f", spot.utc_offset);
        std::string epw = epw_header("Made Up,-,XXX,made,0," + latitude + "," + longitude + "," + offset + ",100");
        std::string tmy3 = tmy3_header("0,MADE,XX," + offset + "," + latitude + "," + longitude + ",100");
        for (const MadeHour& r : hours) {
            epw += epw_row(r);
            tmy3 += tmy3_row(r);
        }
        for (const Result<Year>& year : {read_epw(epw, "clear.epw"), read_tmy3(tmy3, "clear.csv")}) {
            expect_balance(year);
            EXPECT_EQ(year.value().utc_offset_h, spot.utc_offset);
        }
    }
}

TEST(Stamp, UniversalTimeOfPvgisBalancesAboutNoonEverywhere) {
    for (const Spot& spot : spots) {
        std::string text = pvgis_text(cloudless(spot, 0.0, 10.0));
        text.replace(text.find("47.400"), 6, formatted("%.3f", spot.latitude));
        text.replace(text.find("9.200"), 5, formatted("%.3f", spot.longitude));
        const Result<Year> year = read_pvgis_tmy(text, "clear.csv");
        // Readings of one moment an hour tell the middle of a short winter day less well than hourly means.
        expect_symmetry(year, 0.0, 5.0);
        EXPECT_NEAR(year.value().sun_minute, 10.0, 1.0);
        EXPECT_EQ(year.value().utc_offset_h, std::round(spot.longitude / 15.0));
    }
}

// ------------------------------------------------------------------------------------ daylight saving time

// The rows as a clock shows them that goes forward at `forward` and back at `back` (hours of the year, standard time):
// one hour is missing, another doubled.
std::vector<MadeHour> with_changing_clocks(std::vector<MadeHour> hours, int forward, int back) {
    for (int h = 0; h < 8760; ++h) {
        const bool summer = forward < back ? h >= forward && h < back : h >= forward || h < back;
        const int shown = summer ? (h + 1) % 8760 : h;
        MadeHour& row = hours[static_cast<std::size_t>(h)];
        row.month = month_of_hour(shown);
        row.day = (shown - first_hour_of_month(row.month)) / 24 + 1;
        row.hour = shown % 24;
    }
    return hours;
}

TEST(DaylightSaving, IsToldInEveryFormatThatHasLocalTime) {
    const int end_of_march = first_hour_of_month(3) + 24 * 27 + 2;
    const int end_of_october = first_hour_of_month(10) + 24 * 30 + 1;
    const std::vector<MadeHour> rows =
        with_changing_clocks(made_year(47.4, 9.2, 520.0, 1.0), end_of_march, end_of_october);
    for (const std::string& text : {epw_text(rows), tmy3_text(rows), plain_text(rows)}) {
        const Result<Year> year = read_any(text, "clock");
        ASSERT_FALSE(year);
        const Problem& p = year.problems().front();
        EXPECT_NE(p.what.find("looks like daylight saving time"), std::string::npos) << p.text();
        EXPECT_NE(p.what.find("one is doubled at line 7"), std::string::npos) << p.text();
        EXPECT_NE(p.remedy.find("standard time"), std::string::npos);
        EXPECT_EQ(p.where.rfind("clock:20", 0), 0U) << p.where;
    }
}

TEST(DaylightSaving, IsToldOnTheSouthernHemisphereWhereTheDoubledHourComesFirst) {
    const int early_april = first_hour_of_month(4) + 24 * 3 + 2;
    const int early_october = first_hour_of_month(10) + 24 * 2 + 2;
    std::vector<MadeHour> rows = with_changing_clocks(made_year(-35.0, 149.0, 600.0, 10.0), early_october, early_april);
    // Such a year begins at one o'clock and ends with the next year's first hour: as files do, keep the calendar whole.
    std::rotate(rows.begin(), rows.end() - 1, rows.end());
    PlainStyle style;
    style.place = "# latitude_deg: -35\n# longitude_deg: 149\n# altitude_m: 600\n# utc_offset_h: 10\n";
    for (const std::string& text : {epw_text(rows), plain_text(rows, style)}) {
        const Result<Year> year = read_any(text, "clock");
        ASSERT_FALSE(year);
        EXPECT_NE(year.problems().front().what.find("looks like daylight saving time"), std::string::npos)
            << year.problems().front().text();
    }
}

TEST(DaylightSaving, OtherDisorderIsNotTakenForIt) {
    const std::vector<MadeHour> rows = made_year(47.4, 9.2, 520.0, 1.0);
    // One hour missing and one doubled, but by day.
    std::vector<MadeHour> by_day = with_changing_clocks(rows, 3000 - 3000 % 24 + 14, 6000 - 6000 % 24 + 14);
    for (const std::string& text : {epw_text(by_day), plain_text(by_day)}) {
        const Result<Year> year = read_any(text, "clock");
        ASSERT_FALSE(year);
        EXPECT_EQ(year.problems().front().what.find("daylight saving"), std::string::npos);
    }
}

TEST(DaylightSaving, AMissingHourInSpringAloneIsOnlyASuspicion) {
    std::vector<MadeHour> rows = made_year(47.4, 9.2, 520.0, 1.0);
    rows.erase(rows.begin() + first_hour_of_month(3) + 24 * 27 + 2);
    const Result<Year> plain = read_any(plain_text(rows), "clock");
    ASSERT_TRUE(plain) << text_of(plain.problems());
    EXPECT_NE(plain.value().remarks.front().find("may be daylight saving time"), std::string::npos);
    const Result<Year> epw = read_any(epw_text(rows), "clock");
    ASSERT_FALSE(epw);
    EXPECT_NE(epw.problems().front().what.find("may be daylight saving time"), std::string::npos);
}

}  // namespace
}  // namespace wg::weather
