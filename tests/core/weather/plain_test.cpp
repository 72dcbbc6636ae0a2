// Our own plain CSV: every way of writing it that docs/weather-format.md allows, and what it refuses.

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

#include "core/weather/read.h"
#include "core/weather/write_plain.h"
#include "tests/core/weather/plain_files.h"

namespace wg::weather {
namespace plain_test {

constexpr double written = 6e-4;
constexpr double written_air_c = 6e-3;

const std::vector<MadeHour>& hours() {
    static const std::vector<MadeHour> value = made_year(47.4, 9.2, 520.0, 1.0);
    return value;
}

bool has_remark(const Year& year, const std::string& part) {
    return std::any_of(year.remarks.begin(), year.remarks.end(),
                       [&](const std::string& r) { return r.find(part) != std::string::npos; });
}

void expect_rows(const Year& year) {
    ASSERT_EQ(year.global_w_m2.size(), 8760U);
    for (std::size_t i = 0; i < 8760; ++i) {
        ASSERT_NEAR(year.global_w_m2[i], hours()[i].global, written) << i;
        ASSERT_NEAR(year.air_c[i], hours()[i].air_c, written_air_c) << i;
    }
}

Problem refusal(const std::string& text) {
    const Result<Year> year = read_any(text, "some.csv");
    EXPECT_FALSE(year);
    return year ? Problem{} : year.problems().front();
}

TEST(Plain, StampsAtStartMiddleAndEndGiveTheSameYear) {
    for (const char* stamp : {"start", "middle", "end"}) {
        PlainStyle style;
        style.stamp = stamp;
        const Result<Year> year = read_any(plain_text(hours(), style), "made.csv");
        ASSERT_TRUE(year) << text_of(year.problems());
        expect_rows(year.value());
        EXPECT_EQ(year.value().format, "plain CSV");
        EXPECT_EQ(year.value().source, "made for a test");
        EXPECT_EQ(year.value().utc_offset_h, 1.0);
        EXPECT_TRUE(year.value().remarks.empty()) << year.value().remarks.front();
    }
}

TEST(Plain, LeapYearsOf8784RowsLoseTheir29February) {
    std::vector<MadeHour> leap;
    for (const MadeHour& r : hours()) {
        if (r.month == 3 && r.day == 1 && r.hour == 0) {
            for (int h = 0; h < 24; ++h) {
                MadeHour extra = r;
                extra.month = 2;
                extra.day = 29;
                extra.hour = h;
                extra.air_c = 55.0;
                leap.push_back(extra);
            }
        }
        leap.push_back(r);
    }
    ASSERT_EQ(leap.size(), 8784U);
    for (const char* stamp : {"start", "middle", "end"}) {
        PlainStyle style;
        style.stamp = stamp;
        style.year = 2028;
        const Result<Year> year = read_plain(plain_text(leap, style), "leap.csv");
        ASSERT_TRUE(year) << text_of(year.problems());
        expect_rows(year.value());
        EXPECT_TRUE(has_remark(year.value(), "29 February is left out"));
    }
}

TEST(Plain, MonthsOfSeveralYearsMayFollowOneAnother) {
    // As in typical years: February of a common year before March of a leap year, stamped at the end.
    PlainStyle style;
    style.stamp = "end";
    std::string text = plain_header(style);
    for (const MadeHour& r : hours()) {
        style.year = r.month < 3 ? 2011 : 2012;
        std::string row = plain_row(r, style);
        if (r.month == 2 && r.day == 28 && r.hour == 23) row.replace(0, 16, "2012-03-01 00:00");
        text += row;
    }
    const Result<Year> year = read_plain(text, "typical.csv");
    ASSERT_TRUE(year) << text_of(year.problems());
    expect_rows(year.value());
    EXPECT_TRUE(year.value().remarks.empty());
}

TEST(Plain, SemicolonsAndDecimalCommasAreTaken) {
    PlainStyle style;
    style.separator = ';';
    style.decimal_comma = true;
    style.place = "# latitude_deg: 47,4;;;\n\"# longitude_deg: 9,2\"\n# altitude_m: 520\n# utc_offset_h: 1;;\n;;;\n";
    const Result<Year> year = read_plain(plain_text(hours(), style), "comma.csv");
    ASSERT_TRUE(year) << text_of(year.problems());
    expect_rows(year.value());
    EXPECT_EQ(year.value().latitude_deg, 47.4);
    EXPECT_EQ(year.value().longitude_deg, 9.2);
}

TEST(Plain, ColumnsStandInAnyOrderAndUnknownOnesAreNamed) {
    std::string text = "# any words\n# note: more words\n" + PlainStyle{}.place +
                       "# stamp: start\nair_c,rain_mm,pressure_hpa,time,cloud_cover_octas,global_w_m2\n";
    for (const MadeHour& r : hours()) {
        const std::string row = plain_row(r, {});
        text +=
            formatted("%.2f", r.air_c) + ",7,1000," + row.substr(0, 16) + ",6," + formatted("%.3f", r.global) + "\n";
    }
    const Result<Year> year = read_plain(text, "order.csv");
    ASSERT_TRUE(year) << text_of(year.problems());
    expect_rows(year.value());
    EXPECT_EQ(year.value().pressure_pa[100], 100000.0);
    EXPECT_EQ(year.value().sky_cover[100], 0.75);
    EXPECT_EQ(year.value().source, "order.csv");
    EXPECT_TRUE(has_remark(year.value(), "Column 'rain_mm' is not known"));
}

TEST(Plain, TimeGlobalAndAirAreEnoughAndTheRestIsSaid) {
    PlainStyle style;
    style.all_columns = false;
    const Result<Year> result = read_plain(plain_text(hours(), style), "least.csv");
    ASSERT_TRUE(result) << text_of(result.problems());
    const Year& year = result.value();
    expect_rows(year);
    for (const char* part :
         {"Erbs 1982", "No wind in the file: 3.0 m/s", "day's lowest air temperature", "standard atmosphere"}) {
        EXPECT_TRUE(has_remark(year, part)) << part;
    }
    const sun::YearSun sun = sun::year_sun({47.4, 9.2, 520.0, 1.0, 30.0, sun::weather_sun_year});
    for (std::size_t i = 0; i < 8760; ++i) {
        ASSERT_NEAR(year.diffuse_w_m2[i] + year.beam_normal_w_m2[i] * std::fmax(0.0, sun.up[i]), year.global_w_m2[i],
                    1e-6);
        ASSERT_LE(year.dew_point_c[i], year.air_c[i]);
    }
}

TEST(Plain, WritingAndReadingGivesTheSameYearBitForBit) {
    const auto same = [](const Year& a, const Year& b) {
        EXPECT_EQ(a.global_w_m2, b.global_w_m2);
        EXPECT_EQ(a.beam_normal_w_m2, b.beam_normal_w_m2);
        EXPECT_EQ(a.diffuse_w_m2, b.diffuse_w_m2);
        EXPECT_EQ(a.air_c, b.air_c);
        EXPECT_EQ(a.dew_point_c, b.dew_point_c);
        EXPECT_EQ(a.wind_m_s, b.wind_m_s);
        EXPECT_EQ(a.pressure_pa, b.pressure_pa);
        EXPECT_EQ(a.sky_long_wave_w_m2, b.sky_long_wave_w_m2);
        EXPECT_EQ(a.sky_cover, b.sky_cover);
        EXPECT_EQ(a.remarks, b.remarks);
        EXPECT_EQ(a.source, b.source);
        EXPECT_EQ(a.format, b.format);
        EXPECT_EQ(a.invented, b.invented);
        EXPECT_EQ(a.latitude_deg, b.latitude_deg);
        EXPECT_EQ(a.longitude_deg, b.longitude_deg);
        EXPECT_EQ(a.altitude_m, b.altitude_m);
        EXPECT_EQ(a.utc_offset_h, b.utc_offset_h);
        EXPECT_EQ(a.sun_minute, b.sun_minute);
    };
    std::vector<Year> years;
    years.push_back(read_epw(epw_text(hours()), "a").value());
    years.push_back(read_pvgis_tmy(pvgis_text(made_year(47.4, 9.2, 520.0, 0.0, 10.0)), "b").value());
    years.push_back(years.back());
    years.back().invented = true;
    years.back().sky_cover.clear();
    years.back().source = "Ä; b, \"c\" # d: e";
    for (double& air : years.back().air_c)
        air += 1.0 / 3.0;
    for (const Year& year : years) {
        const std::string text = write_plain(year);
        const Result<Year> again = read_any(text, "other name");
        ASSERT_TRUE(again) << text_of(again.problems());
        same(again.value(), year);
        EXPECT_EQ(write_plain(again.value()), text);
    }
}

TEST(Plain, LongAndHostileTextsStayOneLine) {
    Year year = read_epw(epw_text(hours()), "a").value();
    year.source = std::string(700, 'x') + "\n# latitude_deg: 1";
    year.remarks = {"a\nb", "", std::string(166, '\xE2') + "\xE2\x82\xAC,;", std::string(499, 'y') + "\xE2\x82\xAC"};
    const std::string text = write_plain(year);
    const Result<Year> again = read_plain(text, "a");
    ASSERT_TRUE(again) << text_of(again.problems());
    EXPECT_EQ(again.value().remarks.size(), 4U);
    EXPECT_EQ(write_plain(again.value()), text);
}

TEST(Plain, ShortGapsAreBridgedAndSaid) {
    std::string text = plain_text(hours());
    const auto drop = [](const std::string&) { return std::string(); };
    // Three rows at midday in June and two at night.
    const int noon = 7 + 24 * 170 + 12;
    for (int i = 0; i < 3; ++i)
        text = with_line(text, noon, drop);
    for (int i = 0; i < 2; ++i)
        text = with_line(text, 7 + 24 * 20, drop);
    const Result<Year> result = read_plain(text, "gaps.csv");
    ASSERT_TRUE(result) << text_of(result.problems());
    const Year& year = result.value();
    EXPECT_TRUE(has_remark(year, "5 rows are missing and bridged"));
    EXPECT_TRUE(has_remark(year, "clearness of the hours beside them"));
    for (std::size_t i = 24 * 170; i < 24 * 171; ++i)
        EXPECT_NEAR(year.global_w_m2[i], hours()[i].global, 20.0) << i;
    EXPECT_EQ(year.global_w_m2[24 * 171 + 3], read_plain(plain_text(hours()), "").value().global_w_m2[24 * 171 + 3]);
}

TEST(Plain, LongGapsAreRefusedWithTheirLine) {
    std::string text = plain_text(hours());
    for (int i = 0; i < 7; ++i)
        text = with_line(text, 1000, [](const std::string&) { return std::string(); });
    const Problem p = refusal(text);
    EXPECT_EQ(p.where, "some.csv:1000:1");
    EXPECT_NE(p.what.find("7 hours are missing"), std::string::npos) << p.text();
}

TEST(Plain, DoubledAndUnorderedRowsAreRefusedWithTheirLine) {
    const std::string text = plain_text(hours());
    const Problem doubled = refusal(with_line(text, 1000, [](const std::string& row) { return row + row; }));
    EXPECT_EQ(doubled.where, "some.csv:1001:1");
    EXPECT_NE(doubled.what.find("was there already"), std::string::npos) << doubled.text();
    const std::string one = with_line(text, 1000, [](const std::string&) { return std::string(); });
    const std::string moved =
        with_line(one, 1003, [&](const std::string& row) { return row + plain_row(hours()[1000 - 8], {}); });
    const Problem unordered = refusal(moved);
    EXPECT_EQ(unordered.where, "some.csv:1004:1");
    EXPECT_NE(unordered.what.find("out of order"), std::string::npos) << unordered.text();
    EXPECT_NE(unordered.remedy.find("Sort"), std::string::npos);
}

TEST(Plain, WhatIsWrongInTheHeaderIsNamed) {
    const auto without = [](const std::string& key) {
        std::string text = plain_text(hours());
        const std::size_t at = text.find("# " + key);
        return text.erase(at, text.find('\n', at) + 1 - at);
    };
    for (const char* key : {"latitude_deg", "longitude_deg", "altitude_m", "utc_offset_h", "stamp"}) {
        const Problem p = refusal(without(key));
        EXPECT_EQ(p.what, std::string("the header does not give '") + key + "'");
        EXPECT_EQ(p.where, "some.csv:6:1");
    }
    const auto changed = [](const std::string& from, const std::string& to) {
        std::string text = plain_text(hours());
        return text.replace(text.find(from), from.size(), to);
    };
    EXPECT_EQ(refusal(changed("47.4", "north")).where, "some.csv:2:17");
    EXPECT_NE(refusal(changed("47.4", "97.4")).what.find("latitude is 97.4"), std::string::npos);
    EXPECT_NE(refusal(changed("stamp: start", "stamp: begin")).what.find("none of start, middle, end"),
              std::string::npos);
    EXPECT_NE(refusal(changed("# stamp", "# altitude_m: 3\n# stamp")).what.find("given twice"), std::string::npos);
    EXPECT_NE(refusal(changed("air_c", "air_f")).what.find("there is no column 'air_c'"), std::string::npos);
    EXPECT_NE(refusal(changed("wind_m_s", "air_c")).what.find("another column holds already"), std::string::npos);
    EXPECT_NE(refusal("# only words\n").what.find("ends before its column names"), std::string::npos);
}

TEST(Plain, WhatIsWrongInARowIsNamedWithLineAndColumn) {
    const auto row = [](int line, const std::function<std::string(std::string)>& change) {
        return refusal(with_line(plain_text(hours()), line, change));
    };
    const Problem number = row(500, [](const std::string& r) { return with_field(r, 4, "warm"); });
    EXPECT_EQ(number.what, "air_c is 'warm', not a number");
    EXPECT_EQ(number.where.rfind("some.csv:500:", 0), 0U);
    EXPECT_EQ(row(500, [](const std::string& r) { return r.substr(0, 30) + "\n"; }).where, "some.csv:500:1");
    EXPECT_NE(row(9, [](const std::string& r) { return "01.01.2027 02:00" + r.substr(16); }).remedy.find("2027-06-21"),
              std::string::npos);
    EXPECT_NE(
        row(9, [](const std::string& r) { return "2027-01-01 02:10" + r.substr(16); }).what.find("another minute"),
        std::string::npos);
    PlainStyle comma;
    comma.decimal_comma = true;
    EXPECT_NE(refusal(plain_text(hours(), comma)).remedy.find("semicolons"), std::string::npos);
    const std::string text = plain_text(hours());
    EXPECT_NE(refusal(text.substr(0, text.size() / 2)).where, "");
}

}  // namespace plain_test
}  // namespace wg::weather
