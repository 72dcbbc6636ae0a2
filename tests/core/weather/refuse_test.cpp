// Readers on damaged files: each refusal says where, what and what to do; nothing crashes.

#include <gtest/gtest.h>

#include <random>

#include "core/weather/read.h"
#include "tests/core/weather/made_files.h"

namespace wg::weather {
namespace refuse_test {

const std::string& epw() {
    static const std::string text = epw_text(made_year(47.4, 9.2, 520.0, 1.0));
    return text;
}
const std::string& tmy3() {
    static const std::string text = tmy3_text(made_year(47.4, 9.2, 520.0, 1.0));
    return text;
}
const std::string& pvgis() {
    static const std::string text = pvgis_text(made_year(47.4, 9.2, 520.0, 0.0, 10.0));
    return text;
}

// The first problem, after checking that there is one and that it is complete.
Problem refusal(const std::string& text) {
    const Result<Year> year = read_any(text, "some.file");
    EXPECT_FALSE(year);
    if (year) return {};
    for (const Problem& p : year.problems()) {
        EXPECT_EQ(p.where.rfind("some.file", 0), 0u) << p.text();
        EXPECT_FALSE(p.what.empty());
        EXPECT_FALSE(p.remedy.empty());
        EXPECT_LT(p.text().size(), 600u);
    }
    EXPECT_LE(year.problems().size(), 20u);
    return year.problems().front();
}

TEST(Refuse, EmptyAndMeaninglessTexts) {
    EXPECT_EQ(refusal("").where, "some.file:1:1");
    EXPECT_NE(refusal("").what.find("empty"), std::string::npos);
    for (const char* text : {"\n", "\xEF\xBB\xBF", "hello", "{\"a\": 1}", "LOCATION,", "Latitude",
                             "a\nDate (MM/DD/YYYY)\n", ",,,,,,\n,,,,\n", "\"\"\"\"\"\n\"\n"}) {
        refusal(text);
    }
    refusal(std::string(100, '\0'));
}

TEST(Refuse, ValueThatIsNoNumberByLineColumnAndName) {
    const std::string text = with_line(epw(), 1000, [](const std::string& row) { return with_field(row, 6, "12x"); });
    const Problem p = refusal(text);
    // Fields before it: 2001,2,11,8,60,?9, are 18 characters.
    EXPECT_EQ(p.where, "some.file:1000:19");
    EXPECT_EQ(p.what, "dry bulb temperature is '12x', not a number");
}

TEST(Refuse, NotANumberInfinityAndHexAreNoValues) {
    for (const char* value : {"nan", "NaN", "inf", "-inf", "1e999", "0x10", "1,5", "1.5.2", "--1", "1e", "\x01"}) {
        const std::string text =
            with_line(tmy3(), 5000, [&](const std::string& row) { return with_field(row, 6, value); });
        const Problem p = refusal(text);
        EXPECT_EQ(p.where.rfind("some.file:5000:", 0), 0u) << value << ": " << p.text();
    }
}

TEST(Refuse, AbsurdValuesByTheirRange) {
    const auto with_value = [](std::size_t field, const char* value) {
        return with_line(epw(), 4400, [&](const std::string& row) { return with_field(row, field, value); });
    };
    EXPECT_NE(refusal(with_value(6, "75")).what.find("outside -70 to 60 deg C"), std::string::npos);
    EXPECT_NE(refusal(with_value(13, "1600")).what.find("outside -5 to 1500 W/m2"), std::string::npos);
    EXPECT_NE(refusal(with_value(13, "-20")).what.find("global horizontal"), std::string::npos);
    EXPECT_NE(refusal(with_value(14, "1450")).what.find("direct normal"), std::string::npos);
    EXPECT_NE(refusal(with_value(21, "75")).what.find("wind speed"), std::string::npos);
    EXPECT_NE(refusal(with_value(9, "1013")).what.find("station pressure"), std::string::npos);
    EXPECT_NE(refusal(with_value(8, "130")).what.find("relative humidity"), std::string::npos);
}

TEST(Refuse, TruncatedFilesSayHowFarTheyGot) {
    const std::size_t last_row = epw().rfind('\n', epw().size() - 2) + 1;
    const Problem p = refusal(epw().substr(0, last_row));
    EXPECT_EQ(p.what, "the file ends after 8759 of 8760 hours");
    EXPECT_EQ(p.where, "some.file:8767:1");
    for (const std::string* text : {&epw(), &tmy3(), &pvgis()}) {
        for (std::size_t k = 1; k < 40; ++k)
            refusal(text->substr(0, text->size() * k / 41));
    }
}

TEST(Refuse, MissingDoubledAndSwappedRows) {
    for (const std::string* text : {&epw(), &tmy3(), &pvgis()}) {
        const Problem missing = refusal(with_line(*text, 2000, [](const std::string&) { return std::string(); }));
        EXPECT_EQ(missing.where.rfind("some.file:2000:", 0), 0u) << missing.text();
        EXPECT_NE(missing.what.find("expected"), std::string::npos);
        const Problem doubled = refusal(with_line(*text, 2000, [](const std::string& row) { return row + row; }));
        EXPECT_EQ(doubled.where.rfind("some.file:2001:", 0), 0u) << doubled.text();
    }
    const std::string more = epw() + epw_row({});
    EXPECT_NE(refusal(more).what.find("no further row after 8760 hours"), std::string::npos);
}

TEST(Refuse, MissingColumnsByName) {
    std::string text = tmy3();
    text.replace(text.find("Dry-bulb (C)"), 12, "Dry-bulb (F)");
    EXPECT_EQ(refusal(text).what, "there is no column 'Dry-bulb (C)'");
    EXPECT_EQ(refusal(text).where, "some.file:2:1");
    std::string other = pvgis();
    other.replace(other.find("WS10m"), 5, "wind");
    EXPECT_EQ(refusal(other).what, "there is no column 'WS10m'");
    const std::string short_row =
        with_line(epw(), 100, [](const std::string& row) { return row.substr(0, 40) + "\n"; });
    EXPECT_NE(refusal(short_row).what.find("at least 22 are needed"), std::string::npos);
}

TEST(Refuse, LongGapsByTheirFirstLine) {
    std::string text = epw();
    for (int line = 3000; line < 3007; ++line) {
        text = with_line(text, line, [](const std::string& row) { return with_field(row, 21, "999"); });
    }
    const Problem p = refusal(text);
    EXPECT_EQ(p.where, "some.file:3000:1");
    EXPECT_EQ(p.what, "wind speed is missing for 7 hours in a row");
}

TEST(Refuse, LightMissingForFourHoursByDay) {
    std::string text = epw();
    // Line 8 + 24 * 180 + 13: noon at the end of June.
    for (int line = 8 + 24 * 180 + 11; line <= 8 + 24 * 180 + 14; ++line) {
        text = with_line(text, line,
                         [](const std::string& row) { return with_field(with_field(row, 13, "9999"), 14, "9999"); });
    }
    const Problem p = refusal(text);
    EXPECT_NE(p.what.find("global light is missing"), std::string::npos);
    EXPECT_EQ(p.where, "some.file:4339:1");
}

TEST(Refuse, PlacesThatCannotBe) {
    const auto at = [](const std::string& place) {
        return refusal(epw_header(place) + epw().substr(epw_header().size()));
    };
    EXPECT_NE(at("A,-,X,made,0,97.4,9.2,1.0,520").what.find("latitude"), std::string::npos);
    EXPECT_NE(at("A,-,X,made,0,47.4,209.2,1.0,520").what.find("longitude"), std::string::npos);
    EXPECT_NE(at("A,-,X,made,0,47.4,9.2,15.0,520").what.find("time zone"), std::string::npos);
    EXPECT_NE(at("A,-,X,made,0,47.4,9.2,1.0,52000").what.find("altitude"), std::string::npos);
    EXPECT_NE(at("A,-,X,made,0,north,9.2,1.0,520").what.find("not a number"), std::string::npos);
    EXPECT_NE(at("A,-,X,made,0,47.4,120.0,-5.0,520").what.find("contradict"), std::string::npos);
    EXPECT_NE(at("A,-,X").what.find("fields instead of 10"), std::string::npos);
}

TEST(Refuse, SubhourlyFiles) {
    std::string text = epw();
    text.replace(text.find("DATA PERIODS,1,1"), 16, "DATA PERIODS,1,4");
    EXPECT_NE(refusal(text).what.find("one record an hour"), std::string::npos);
}

TEST(Refuse, HugeLinesAndHugeFiles) {
    EXPECT_NE(refusal("LOCATION," + std::string(20000, 'x')).what.find("longer than"), std::string::npos);
    EXPECT_NE(refusal("LOCATION,\n" + std::string((64u << 20) + 10, '\n')).what.find("64 MB"), std::string::npos);
}

TEST(Refuse, MessagesStayPrintableWhateverTheFileHolds) {
    const std::string text =
        with_line(epw(), 700, [](const std::string& row) { return with_field(row, 6, "\x1b[31m\xff\xfe"); });
    for (const char c : refusal(text).text())
        EXPECT_GE(static_cast<unsigned char>(c), 0x20);
}

TEST(Refuse, TooManyProblemsAreCutShort) {
    std::vector<MadeHour> made = made_year(47.4, 9.2, 520.0, 1.0);
    for (MadeHour& r : made)
        r.air_c = 80.0;
    const Result<Year> year = read_epw(epw_text(made), "some.file");
    ASSERT_FALSE(year);
    EXPECT_EQ(year.problems().size(), 20u);
    EXPECT_NE(year.problems().back().what.find("too many problems"), std::string::npos);
}

// Flipped bits either leave a year within its ranges or are refused with a place; there is no third way.
TEST(Refuse, BitFlipsNeverCrashAndNeverGiveValuesOutOfRange) {
    std::mt19937_64 random(42);
    int refused = 0;
    for (int round = 0; round < 90; ++round) {
        std::string text = round % 3 == 0 ? epw() : round % 3 == 1 ? tmy3() : pvgis();
        const int flips = 1 + static_cast<int>(random() % 30);
        for (int k = 0; k < flips; ++k) {
            const std::size_t at = round % 2 == 0 ? random() % 2000 : random() % text.size();
            text[at] = static_cast<char>(static_cast<unsigned char>(text[at]) ^ (1u << (random() % 8)));
        }
        const Result<Year> year = read_any(text, "some.file");
        if (!year) {
            ++refused;
            for (const Problem& p : year.problems())
                ASSERT_FALSE(p.where.empty() || p.what.empty() || p.remedy.empty());
            continue;
        }
        const Year& y = year.value();
        for (std::size_t i = 0; i < 8760; ++i) {
            ASSERT_TRUE(y.global_w_m2[i] >= 0.0 && y.global_w_m2[i] <= 1500.0);
            ASSERT_TRUE(y.beam_normal_w_m2[i] >= 0.0 && y.beam_normal_w_m2[i] <= 1420.0);
            ASSERT_TRUE(y.diffuse_w_m2[i] >= 0.0 && y.diffuse_w_m2[i] <= 1000.0);
            ASSERT_TRUE(y.air_c[i] >= -70.0 && y.air_c[i] <= 60.0);
            ASSERT_TRUE(y.dew_point_c[i] <= y.air_c[i]);
            ASSERT_TRUE(y.wind_m_s[i] >= 0.0 && y.wind_m_s[i] <= 60.0);
            ASSERT_TRUE(y.pressure_pa[i] >= 50000.0 && y.pressure_pa[i] <= 110000.0);
        }
    }
    EXPECT_GT(refused, 30);
}

}  // namespace refuse_test
}  // namespace wg::weather
