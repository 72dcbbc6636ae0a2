// Tables from outside: what is read, and what is refused at which line and column.

#include "core/weather/climate_table.h"

#include <gtest/gtest.h>

// The fuzzer knows one name; another test here includes another entry.
#define LLVMFuzzerTestOneInput fuzz_climates_one_input  // NOLINT
#include "../../fuzz/fuzz_climates.cpp"  // NOLINT(bugprone-suspicious-include): one entry for fuzzer and test
#include "climate_fixture.h"

namespace wg::weather {
namespace {

std::string months(const std::string& name) {
    std::string out;
    for (int month = 1; month <= 12; ++month)
        out += "," + name + "_" + std::to_string(month);
    return out;
}
std::string twelve(const std::string& value) {
    std::string out;
    for (int month = 1; month <= 12; ++month)
        out += "," + value;
    return out;
}

const std::string head = "id,label,source,latitude_deg,longitude_deg,altitude_m,utc_offset_h";
const std::string valley = "valley,Valley,handbook of the land,46.5,9,700,1";

std::string small_table() {
    return head + months("global") + months("air") + "\n" + valley + twelve("3") + twelve("8") + "\n";
}

std::string first_where(const std::string& text) {
    const Result<std::vector<Climate>> result = climates_from_csv(text, "t.csv");
    return result ? "read" : result.problems().front().where;
}

std::string replaced(std::string text, const std::string& from, const std::string& to) {
    const std::size_t at = text.find(from);
    return at == std::string::npos ? "nothing replaced" : text.replace(at, from.size(), to);
}

TEST(ClimateTable, HandbookTableWithLightAndAirIsEnough) {
    const Result<std::vector<Climate>> table = climates_from_csv(small_table(), "t.csv");
    ASSERT_TRUE(table) << text_of(table.problems());
    ASSERT_EQ(table.value().size(), 1U);
    const Climate& c = table.value().front();
    EXPECT_EQ(c.id, "valley");
    EXPECT_EQ(c.source, "handbook of the land; assumed: daily swing, humidity, wind");
    EXPECT_EQ(c.global_kwh_m2_day[11], 3.0);
    EXPECT_EQ(c.wind_m_s[0], assumed_climate::wind_m_s);
    EXPECT_EQ(c.seed, seed_of_id("valley"));
    EXPECT_FALSE(c.global_variation.has_value());
}

TEST(ClimateTable, OrderOfColumnsCommentsAndLineEndsDoNotMatter) {
    const std::string text =
        "\xEF\xBB\xBF# a remark\r\n\r\nsource,country,id,label,utc_offset_h,altitude_m,longitude_deg,"
        "latitude_deg" +
        months("air") + months("global") + months("global_variation") + months("air_spread") +
        "\r\n\"hand, book\",CH,v,V,1,700,9,46.5" + twelve("8") + twelve("3") + twelve("0.1") + twelve("1.5") + "\r\n";
    const Result<std::vector<Climate>> table = climates_from_csv(text, "t.csv");
    ASSERT_TRUE(table) << text_of(table.problems());
    const Climate& c = table.value().front();
    EXPECT_EQ(c.source.rfind("hand, book; assumed", 0), 0U);
    EXPECT_EQ(c.country, "CH");
    EXPECT_EQ(c.latitude_deg, 46.5);
    EXPECT_EQ(c.air_mean_c[4], 8.0);
    EXPECT_EQ((*c.global_variation)[3], 0.1);
    EXPECT_EQ((*c.air_spread_k)[3], 1.5);
}

TEST(ClimateTable, SeedsAreFixedForEver) {
    // FNV-1a 64 of the empty text and of "a": published test vectors.
    EXPECT_EQ(seed_of_id(""), 0xcbf29ce484222325ULL);
    EXPECT_EQ(seed_of_id("a"), 0xaf63dc4c8601ec8cULL);
}

TEST(ClimateTable, EveryRefusalNamesLineAndColumn) {
    const std::string good = small_table();
    EXPECT_EQ(first_where(good), "read");
    EXPECT_EQ(first_where(replaced(good, "altitude_m", "height")), "t.csv:1:44");
    EXPECT_EQ(first_where(replaced(good, "altitude_m", "latitude_deg")), "t.csv:1:44");
    EXPECT_EQ(first_where(replaced(good, ",air_7", "")), "t.csv:1:1");
    EXPECT_EQ(first_where(replaced(good, ",46.5,", ",91,")), "t.csv:2:36");
    EXPECT_EQ(first_where(replaced(good, ",46.5,", ",46.5N,")), "t.csv:2:36");
    EXPECT_EQ(first_where(replaced(good, ",46.5,", ",nan,")), "t.csv:2:36");
    EXPECT_EQ(first_where(replaced(good, ",46.5,", ",,")), "t.csv:2:36");
    EXPECT_EQ(first_where(replaced(good, ",46.5,", ",1e999,")), "t.csv:2:36");
    EXPECT_EQ(first_where(replaced(good, "valley,V", "Valley,V")), "t.csv:2:1");
    EXPECT_EQ(first_where(replaced(good, ",Valley,", ",,")), "t.csv:2:8");
    EXPECT_EQ(first_where(replaced(good, ",Valley,", ",Val\x01ley,")), "t.csv:2:11");
    EXPECT_EQ(first_where(replaced(good, ",Valley,", ",Val\xFFley,")), "t.csv:2:11");
    EXPECT_EQ(first_where(replaced(good, "handbook of", "hand,book of")), "t.csv:2:96");
    EXPECT_EQ(first_where(good + valley + twelve("3") + twelve("8") + "\n"), "t.csv:3:1");
    EXPECT_EQ(first_where(replaced(good, "id,label", "id;label")), "t.csv:1:1");
    EXPECT_EQ(first_where("id;label;source\n"), "t.csv:1:3");
    EXPECT_EQ(first_where(""), "t.csv:1:1");
    EXPECT_EQ(first_where("# only a remark\n"), "t.csv:1:1");
    EXPECT_EQ(first_where(head + months("global") + months("air") + "\n"), "t.csv:1:1");
    EXPECT_EQ(first_where(std::string(20000, ',')), "t.csv:1:16384");
    EXPECT_EQ(first_where(std::string(std::size_t{5} << 20U, '\n')), "t.csv:1:1");
}

TEST(ClimateTable, ManyProblemsStopAtTwenty) {
    std::string text = head + months("global") + months("air") + "\n";
    for (int i = 0; i < 100; ++i)
        text += "p" + std::to_string(i) + ",P,s,95,9,700,1" + twelve("3") + twelve("99") + "\n";
    const Result<std::vector<Climate>> table = climates_from_csv(text, "t.csv");
    ASSERT_FALSE(table);
    EXPECT_EQ(table.problems().size(), 20U);
}

TEST(ClimateTable, MoreThanFiveThousandPlacesAreRefused) {
    std::string text = head + months("global") + months("air") + "\n";
    for (int i = 0; i < 5001; ++i)
        text += "p" + std::to_string(i) + ",P,s,45,9,700,1" + twelve("3") + twelve("9") + "\n";
    EXPECT_EQ(first_where(text), "t.csv:5002:1");
}

// Any byte of the built-in table changed, cut out or doubled: read or refused, never worse.
TEST(ClimateTable, DamagedTablesAreReadOrRefused) {
    const auto take = [](const std::string& text) {
        (void)LLVMFuzzerTestOneInput(reinterpret_cast<const std::uint8_t*>(text.data()), text.size());
    };
    const std::string good = resource_text("climates/places.csv").substr(0, 6000);
    for (std::size_t i = 0; i < good.size(); i += 7) {
        for (const char c : {'\0', ',', '"', '\n', '\xFF', '9', '-'}) {
            std::string bad = good;
            bad[i] = c;
            take(bad);
        }
        take(good.substr(0, i));
    }
}

}  // namespace
}  // namespace wg::weather
