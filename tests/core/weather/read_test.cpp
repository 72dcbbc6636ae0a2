// Readers on well-formed files: the same year in three formats.

#include "core/weather/read.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

#include "core/weather/humidity.h"
#include "tests/core/weather/made_files.h"

namespace wg::weather {
namespace read_test {

constexpr double written = 6e-4;  // light is written with three decimals
constexpr double written_air_c = 6e-3;

const std::vector<MadeHour>& hours() {
    static const std::vector<MadeHour> value = made_year(47.4, 9.2, 520.0, 1.0);
    return value;
}

bool has_remark(const Year& year, const std::string& part) {
    return std::any_of(year.remarks.begin(), year.remarks.end(),
                       [&](const std::string& r) { return r.find(part) != std::string::npos; });
}

void expect_equal(const Year& year, const std::vector<MadeHour>& expected) {
    ASSERT_EQ(year.global_w_m2.size(), 8760u);
    for (std::size_t i = 0; i < 8760; ++i) {
        ASSERT_NEAR(year.global_w_m2[i], expected[i].global, written) << i;
        ASSERT_NEAR(year.beam_normal_w_m2[i], expected[i].beam, written);
        ASSERT_NEAR(year.diffuse_w_m2[i], expected[i].diffuse, written);
        ASSERT_NEAR(year.air_c[i], expected[i].air_c, written_air_c);
        ASSERT_NEAR(year.wind_m_s[i], 3.0, 1e-9);
        ASSERT_NEAR(year.pressure_pa[i], 100000.0, 1e-6);
        ASSERT_LE(year.dew_point_c[i], year.air_c[i]);
    }
}

TEST(ReadEpw, HourOneIsTheFirstHourOfTheYear) {
    const Result<Year> year = read_epw(epw_text(hours()), "made.epw");
    ASSERT_TRUE(year) << text_of(year.problems());
    expect_equal(year.value(), hours());
    EXPECT_EQ(year.value().format, "EPW");
    EXPECT_EQ(year.value().latitude_deg, 47.4);
    EXPECT_EQ(year.value().longitude_deg, 9.2);
    EXPECT_EQ(year.value().altitude_m, 520.0);
    EXPECT_EQ(year.value().utc_offset_h, 1.0);
    EXPECT_EQ(year.value().sun_minute, 30.0);
    EXPECT_EQ(year.value().sky_long_wave_w_m2.size(), 8760u);
    EXPECT_EQ(year.value().sky_cover.front(), 0.4);
    EXPECT_TRUE(year.value().remarks.empty()) << year.value().remarks.front();
}

TEST(ReadTmy3, StampIsTheEndOfTheHour) {
    const Result<Year> year = read_tmy3(tmy3_text(hours()), "made.csv");
    ASSERT_TRUE(year) << text_of(year.problems());
    expect_equal(year.value(), hours());
    EXPECT_EQ(year.value().format, "TMY3");
    EXPECT_EQ(year.value().altitude_m, 520.0);
    EXPECT_TRUE(year.value().sky_long_wave_w_m2.empty());
    EXPECT_EQ(year.value().sky_cover.front(), 0.4);
    EXPECT_NE(year.value().source.find("MADE, UP"), std::string::npos) << year.value().source;
}

TEST(ReadTmy3, MidnightMayBeWrittenAsTheNextDay) {
    std::string text = tmy3_header();
    for (const MadeHour& r : hours()) {
        std::string row = tmy3_row(r);
        if (r.hour == 23) {
            const CivilDate next = civil_from_days(days_from_civil({2001, r.month, r.day}) + 1);
            char stamp[40];
            std::snprintf(stamp, sizeof stamp, "%02d/%02d/%04d,00:00", next.month, next.day, next.year);
            row.replace(0, 16, stamp);
        }
        text += row;
    }
    const Result<Year> year = read_tmy3(text, "made.csv");
    ASSERT_TRUE(year) << text_of(year.problems());
    expect_equal(year.value(), hours());
}

TEST(ReadPvgis, RowsMoveFromUniversalToLocalStandardTime) {
    // The same moments as UTC rows: hour 0 UTC is hour 1 of UTC+1.
    std::vector<MadeHour> utc = made_year(47.4, 9.2, 520.0, 0.0, 10.0);
    const Result<Year> year = read_pvgis_tmy(pvgis_text(utc), "made.csv");
    ASSERT_TRUE(year) << text_of(year.problems());
    EXPECT_EQ(year.value().utc_offset_h, 1.0);
    for (std::size_t i = 1; i < 8760; ++i)
        ASSERT_NEAR(year.value().global_w_m2[i], utc[i - 1].global, written);
    EXPECT_NEAR(year.value().air_c[0], utc[8759].air_c, written_air_c);
    EXPECT_TRUE(has_remark(year.value(), "Moved from UTC"));
    EXPECT_EQ(year.value().sky_long_wave_w_m2.size(), 8760u);
    EXPECT_NEAR(year.value().dew_point_c[100], dew_point_c(year.value().air_c[100], 0.7), 1e-9);
}

TEST(ReadPvgis, WestOfGreenwichRowsMoveTheOtherWayByTheSameDay) {
    std::vector<MadeHour> utc = made_year(47.4, -75.0, 520.0, 0.0, 10.0);
    std::string text = pvgis_text(utc);
    text.replace(text.find("9.200"), 5, "-75.0");
    const Result<Year> year = read_pvgis_tmy(text, "made.csv");
    ASSERT_TRUE(year) << text_of(year.problems());
    EXPECT_EQ(year.value().utc_offset_h, -5.0);
    for (std::size_t i = 0; i + 5 < 8760; ++i)
        ASSERT_NEAR(year.value().air_c[i], utc[i + 5].air_c, written_air_c);
}

TEST(ReadPvgis, MinuteOfTheLightComesFromTheHeaderWhereItHasOne) {
    std::vector<MadeHour> utc = made_year(47.4, 9.2, 520.0, 0.0, 11.0);
    const Result<Year> year = read_pvgis_tmy(pvgis_text(utc, "Irradiance Time Offset (h): 0.18333\r\n"), "made.csv");
    ASSERT_TRUE(year) << text_of(year.problems());
    EXPECT_NEAR(year.value().sun_minute, 11.0, 0.01);
    EXPECT_FALSE(has_remark(year.value(), "is used"));
}

TEST(ReadPvgis, NegativeOffsetPutsTheLightIntoTheHourBefore) {
    std::vector<MadeHour> utc = made_year(47.4, 9.2, 520.0, 0.0, 30.0);
    const Result<Year> year = read_pvgis_tmy(pvgis_text(utc, "Irradiance Time Offset (h): -0.1\r\n"), "made.csv");
    ASSERT_TRUE(year) << text_of(year.problems());
    EXPECT_NEAR(year.value().sun_minute, 54.0, 1e-9);
    // One hour east, one hour back: local row i is UTC row i.
    for (std::size_t i = 0; i < 8760; i += 100)
        ASSERT_NEAR(year.value().air_c[i], utc[i].air_c, written_air_c);
}

TEST(ReadPvgis, MinuteOfTheLightIsFoundFromTheLightWhereTheHeaderIsSilent) {
    for (const double minute : {10.0, 22.0, 48.0}) {
        std::vector<MadeHour> utc = made_year(47.4, 9.2, 520.0, 0.0, minute);
        const Result<Year> year = read_pvgis_tmy(pvgis_text(utc), "made.csv");
        ASSERT_TRUE(year) << text_of(year.problems());
        EXPECT_NEAR(year.value().sun_minute, minute, 1.0);
        EXPECT_TRUE(has_remark(year.value(), "only fit together"));
    }
}

TEST(ReadEpw, LightThatContradictsTheStampsMovesTheRowsAndSaysSo) {
    // Rows written an hour early, light at minute 10: as converters do that take UTC rows for local ones.
    std::vector<MadeHour> made = made_year(47.4, 9.2, 520.0, 0.0, 10.0);
    const Result<Year> year = read_epw(epw_text(made), "made.epw");
    ASSERT_TRUE(year) << text_of(year.problems());
    EXPECT_NEAR(year.value().sun_minute, 10.0, 1.0);
    EXPECT_TRUE(has_remark(year.value(), "All rows moved 1 hour later"));
    for (std::size_t i = 1; i < 8760; i += 100)
        ASSERT_NEAR(year.value().global_w_m2[i], made[i - 1].global, written);
}

TEST(ReadAny, KnowsTheFormatsByTheirContent) {
    EXPECT_EQ(read_any(epw_text(hours()), "a").value().format, "EPW");
    EXPECT_EQ(read_any(tmy3_text(hours()), "a").value().format, "TMY3");
    EXPECT_EQ(read_any(pvgis_text(made_year(47.4, 9.2, 520.0, 0.0, 10.0)), "a").value().format, "PVGIS TMY");
}

TEST(ReadAny, TakesByteOrderMarkAndEitherLineEnd) {
    const std::string lf = epw_text(hours());
    std::string crlf = "\xEF\xBB\xBF";
    for (const char c : lf) {
        if (c == '\n') crlf += '\r';
        crlf += c;
    }
    const Result<Year> year = read_any(crlf, "a");
    ASSERT_TRUE(year) << text_of(year.problems());
    EXPECT_EQ(year.value().global_w_m2, read_any(lf, "a").value().global_w_m2);
}

TEST(Read, TwentyNinthOfFebruaryIsLeftOutAndSaid) {
    std::string text = epw_header();
    for (const MadeHour& r : hours()) {
        if (r.month == 3 && r.day == 1 && r.hour == 0) {
            for (int h = 0; h < 24; ++h) {
                MadeHour leap = r;
                leap.month = 2;
                leap.day = 29;
                leap.hour = h;
                text += epw_row(leap);
            }
        }
        text += epw_row(r);
    }
    const Result<Year> year = read_epw(text, "leap.epw");
    ASSERT_TRUE(year) << text_of(year.problems());
    expect_equal(year.value(), hours());
    EXPECT_TRUE(has_remark(year.value(), "29 February"));
}

TEST(Read, ShortGapsAreFilledByAStraightLineAndSaid) {
    std::string text = epw_text(hours());
    for (int line = 8 + 101; line <= 8 + 103; ++line) {
        text = with_line(text, line, [](const std::string& row) { return with_field(row, 6, "99.9"); });
    }
    const Result<Year> year = read_epw(text, "gap.epw");
    ASSERT_TRUE(year) << text_of(year.problems());
    const double before = hours()[99].air_c;
    const double after = hours()[103].air_c;
    EXPECT_NEAR(year.value().air_c[101], 0.5 * (before + after), 0.01);
    EXPECT_TRUE(has_remark(year.value(), "3 missing hours"));
}

TEST(Read, MissingBeamAndDiffuseAreSplitFromGlobal) {
    std::vector<MadeHour> made = hours();
    for (MadeHour& r : made)
        r.beam = r.diffuse = 9999.0;
    const Result<Year> year = read_epw(epw_text(made), "global.epw");
    ASSERT_TRUE(year) << text_of(year.problems());
    EXPECT_TRUE(has_remark(year.value(), "Erbs"));
    const sun::YearSun sun = sun::year_sun({47.4, 9.2, 520.0, 1.0, 30.0, sun::weather_sun_year});
    for (std::size_t i = 0; i < 8760; ++i) {
        const double closed =
            year.value().diffuse_w_m2[i] + year.value().beam_normal_w_m2[i] * std::fmax(0.0, sun.up[i]);
        ASSERT_NEAR(closed, year.value().global_w_m2[i], 1e-6) << i;
        ASSERT_GE(year.value().diffuse_w_m2[i], 0.0);
    }
}

TEST(Read, OneMissingPartOfTheLightComesFromTheOtherTwo) {
    const sun::YearSun sun = sun::year_sun({47.4, 9.2, 520.0, 1.0, 30.0, sun::weather_sun_year});
    for (const int lacking : {0, 1, 2}) {
        std::vector<MadeHour> made = hours();
        for (MadeHour& r : made)
            (lacking == 0 ? r.global : lacking == 1 ? r.beam : r.diffuse) = 9999.0;
        const Result<Year> year = read_epw(epw_text(made), "part.epw");
        ASSERT_TRUE(year) << text_of(year.problems());
        for (std::size_t i = 0; i < 8760; ++i) {
            ASSERT_NEAR(year.value().global_w_m2[i], hours()[i].global, 0.01);
            ASSERT_NEAR(year.value().diffuse_w_m2[i], hours()[i].diffuse, 0.01);
            // On the horizontal: at the horizon itself the written decimals divided by next to nothing mean nothing.
            const double lost = (year.value().beam_normal_w_m2[i] - hours()[i].beam) * std::fmax(0.0, sun.up[i]);
            ASSERT_NEAR(lost, 0.0, 0.01) << i;
        }
    }
}

TEST(Read, MissingPressureComesFromTheHeight) {
    std::vector<MadeHour> made = hours();
    for (MadeHour& r : made)
        r.pressure_pa = 999999.0;
    const Result<Year> year = read_epw(epw_text(made), "p.epw");
    ASSERT_TRUE(year) << text_of(year.problems());
    EXPECT_NEAR(year.value().pressure_pa[4000], 95230.0, 100.0);  // ISO 2533 at 520 m
    EXPECT_TRUE(has_remark(year.value(), "standard atmosphere"));
}

TEST(Read, DewPointAboveAirIsLoweredAndSaid) {
    std::vector<MadeHour> made = hours();
    made[500].dew_c = made[500].air_c + 1.5;
    const Result<Year> year = read_epw(epw_text(made), "d.epw");
    ASSERT_TRUE(year) << text_of(year.problems());
    EXPECT_EQ(year.value().dew_point_c[500], year.value().air_c[500]);
    EXPECT_TRUE(has_remark(year.value(), "1 hour (by up to 1.5 K)"));
}

TEST(Read, SmallNegativeLightIsSetToZeroAndSaid) {
    std::vector<MadeHour> made = hours();
    made[0].global = -2.0;
    const Result<Year> year = read_epw(epw_text(made), "n.epw");
    ASSERT_TRUE(year) << text_of(year.problems());
    EXPECT_EQ(year.value().global_w_m2[0], 0.0);
    EXPECT_TRUE(has_remark(year.value(), "slightly below 0"));
}

TEST(Read, SouthernHemisphereNeedsNothingSpecial) {
    std::vector<MadeHour> made = made_year(-35.0, 149.0, 600.0, 10.0);
    std::string text = epw_text(made);
    text.replace(text.find("47.400,9.200,1.0,520.0"), 22, "-35.000,149.000,10.0,600.0");
    const Result<Year> year = read_epw(text, "south.epw");
    ASSERT_TRUE(year) << text_of(year.problems());
    EXPECT_EQ(year.value().latitude_deg, -35.0);
    EXPECT_TRUE(year.value().remarks.empty());
}

}  // namespace read_test
}  // namespace wg::weather
