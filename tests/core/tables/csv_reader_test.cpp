#include "core/tables/csv_reader.h"

#include <gtest/gtest.h>

#include <random>

#include "core/quantity/utf8.h"
#include "core/tables/csv_writer.h"

namespace wg::tables {
namespace csv_reader_test {

using Rows = std::vector<std::vector<std::string>>;

CsvTable read(std::string_view text) {
    Result<CsvTable> table = read_csv(text, "list.csv");
    EXPECT_TRUE(table) << (table ? std::string() : text_of(table.problems()));
    return table ? table.value() : CsvTable{};
}

std::string refused(std::string_view text, const CsvLimits& limits = {}) {
    const Result<CsvTable> table = read_csv(text, "list.csv", limits);
    return table ? "was read" : text_of(table.problems());
}

// RFC 4180, section 2, rules 1 to 7.
TEST(CsvReader, ReadsTheExamplesOfRfc4180) {
    EXPECT_EQ(read("aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n").rows, (Rows{{"aaa", "bbb", "ccc"}, {"zzz", "yyy", "xxx"}}));
    EXPECT_EQ(read("aaa,bbb,ccc\r\nzzz,yyy,xxx").rows, (Rows{{"aaa", "bbb", "ccc"}, {"zzz", "yyy", "xxx"}}));
    EXPECT_EQ(read("\"aaa\",\"bbb\",\"ccc\"\r\nzzz,yyy,xxx").rows,
              (Rows{{"aaa", "bbb", "ccc"}, {"zzz", "yyy", "xxx"}}));
    const CsvTable broken = read("\"aaa\",\"b\r\nbb\",\"ccc\"\r\nzzz,yyy,xxx");
    EXPECT_EQ(broken.rows, (Rows{{"aaa", "b\r\nbb", "ccc"}, {"zzz", "yyy", "xxx"}}));
    EXPECT_EQ(broken.line_of_row, (std::vector<int>{1, 3}));
    EXPECT_EQ(read("\"aaa\",\"b\"\"bb\",\"ccc\"").rows, (Rows{{"aaa", "b\"bb", "ccc"}}));
}

TEST(CsvReader, FindsTheSeparator) {
    EXPECT_EQ(read("Name;City\nReed, Ada;Ulm\nOrt, Jo;Wels\n").separator, ';');
    EXPECT_EQ(read("Name\tCity\nReed, Ada\tUlm\n").separator, '\t');
    EXPECT_EQ(read("Name,Note\nReed,\"a;b;c\"\n").separator, ',');
    const CsvTable one = read("Name\nReed\n");
    EXPECT_EQ(one.rows, (Rows{{"Name"}, {"Reed"}}));
    EXPECT_NE(one.assumed.back().find("one column"), std::string::npos);
    // Decimal commas in a file of semicolons.
    EXPECT_EQ(read("a;b\n1,5;2,5\n3,5;4,5\n").separator, ';');
}

TEST(CsvReader, KeepsEmptyCellsAndLeavesOutEmptyLines) {
    const CsvTable table = read("a,b,c\n\n,,\nx,,\n\r\n\"\"\n");
    EXPECT_EQ(table.rows, (Rows{{"a", "b", "c"}, {"", "", ""}, {"x", "", ""}, {""}}));
    EXPECT_EQ(table.line_of_row, (std::vector<int>{1, 3, 4, 6}));
}

TEST(CsvReader, ReadsOldLineEnds) {
    EXPECT_EQ(read("a,b\rc,d\r").rows, (Rows{{"a", "b"}, {"c", "d"}}));
}

TEST(CsvReader, TellsTheEncoding) {
    const CsvTable marked = read("\xef\xbb\xbfName,City\nJos\xc3\xa9,Ja\xc3\xa9n\n");
    EXPECT_EQ(marked.rows[0][0], "Name");
    EXPECT_EQ(marked.rows[1][1], "Ja\xc3\xa9n");
    EXPECT_EQ(marked.encoding, "UTF-8");
    // In Windows-1252 0x80 is the euro sign U+20AC, 0xFC is u with diaeresis (Unicode, CP1252.TXT).
    const CsvTable windows = read("Name;Sum\nM\xfcller;5 \x80\n");
    EXPECT_EQ(windows.rows[1][0], "M\xc3\xbcller");
    EXPECT_EQ(windows.rows[1][1], "5 \xe2\x82\xac");
    EXPECT_EQ(windows.encoding, "Windows-1252");
    EXPECT_NE(windows.assumed.front().find("Windows-1252"), std::string::npos);
    EXPECT_NE(refused("a,b\n\x81,c\n").find("neither UTF-8 nor Windows-1252"), std::string::npos);
    EXPECT_NE(refused("\xef\xbb\xbf"
                      "a,\xff\n")
                  .find("says that it is UTF-8"),
              std::string::npos);
}

TEST(CsvReader, RefusesWithTheLine) {
    EXPECT_NE(refused("a,b\nc,\"d\ne,f\n").find("line 2: begins a cell with a quote that is never closed"),
              std::string::npos)
        << refused("a,b\nc,\"d\ne,f\n");
    EXPECT_NE(refused("a,b\nc,\"d\"x\n").find("line 2: has text behind a closed quote"), std::string::npos);
    EXPECT_EQ(read("a,b\nc,\"d\" \n").rows[1][1], "d");
    EXPECT_NE(refused("PK\x03\x04 and more").find("spreadsheet's own file"), std::string::npos);
    EXPECT_NE(refused(std::string_view("a\0b", 3)).find("no text"), std::string::npos);
    EXPECT_NE(refused(" \r\n\r\n").find("is empty"), std::string::npos);
    EXPECT_NE(refused("\xff\xfe"
                      "a")
                  .find("UTF-16"),
              std::string::npos);
}

TEST(CsvReader, KeepsToItsLimits) {
    CsvLimits limits;
    limits.rows = 2;
    EXPECT_NE(refused("a,b\nc,d\ne,f\n", limits).find("line 3"), std::string::npos);
    limits = {};
    limits.columns = 2;
    EXPECT_NE(refused("a,b,c\n", limits).find("more than 2 cells"), std::string::npos);
    limits = {};
    limits.cell_bytes = 3;
    EXPECT_NE(refused("a,bbbb\n", limits).find("too long"), std::string::npos);
    EXPECT_NE(refused("a,\"bbbb\"\n", limits).find("too long"), std::string::npos);
    limits = {};
    limits.bytes = 1U << 20U;
    EXPECT_NE(refused(std::string((1U << 20U) + 1, 'a'), limits).find("longer than 1 MB"), std::string::npos);
    limits = {};
    limits.cells = 4;
    EXPECT_NE(refused("a,b\nc,d\ne,f\n", limits).find("at once"), std::string::npos);
}

TEST(CsvReader, TakesAnyBytes) {
    std::mt19937 random(4180);
    const std::string alphabet = "a,;\t\"\r\n'\xc3\xa9\x80 =";
    for (int i = 0; i < 5000; ++i) {
        std::string text(random() % 40, ' ');
        for (char& c : text)
            c = alphabet[random() % alphabet.size()];
        const Result<CsvTable> table = read_csv(text, "list.csv");
        if (!table) continue;
        ASSERT_EQ(table.value().rows.size(), table.value().line_of_row.size());
        for (const auto& row : table.value().rows) {
            for (const std::string& cell : row)
                ASSERT_TRUE(is_utf8(cell));
        }
    }
}

TEST(CsvWriter, GuardsWhatASpreadsheetWouldRun) {
    EXPECT_EQ(write_csv({{"=1+1", "-5.25", "+34 600", "@x", "-x", "plain"}}), "'=1+1,-5.25,'+34 600,'@x,'-x,plain\r\n");
    EXPECT_EQ(write_csv({{"a,b", "a;b", "say \"yes\"", "two\nlines"}}),
              "\"a,b\",a;b,\"say \"\"yes\"\"\",\"two\nlines\"\r\n");
    EXPECT_EQ(write_csv({{"a;b", "a,b"}}, ';'), "\"a;b\";a,b\r\n");
    EXPECT_EQ(without_guard("'+34 600"), "+34 600");
    EXPECT_EQ(without_guard("'t Hooft"), "'t Hooft");
    EXPECT_EQ(write_csv({{"'=1+1", "''@x", "'t Hooft"}}), "''=1+1,'''@x,'t Hooft\r\n") << "one more to take away";
}

TEST(CsvWriter, WhatIsWrittenIsReadAgain) {
    std::mt19937 random(20);
    const std::string alphabet = "ab,;\"\r\n'-+=@ 1.";
    for (int i = 0; i < 2000; ++i) {
        Rows rows(1 + random() % 4, std::vector<std::string>(2 + random() % 3));
        for (auto& row : rows) {
            row.resize(rows.front().size());
            for (std::string& cell : row) {
                cell.resize(random() % 6);
                for (char& c : cell)
                    c = alphabet[random() % alphabet.size()];
            }
        }
        // A line that anchors the separator: a few cells of separators alone could be parted by either.
        rows.insert(rows.begin(), 60, std::vector<std::string>(rows.front().size(), "x"));
        Result<CsvTable> again = read_csv(write_csv(rows), "list.csv");
        ASSERT_TRUE(again) << text_of(again.problems()) << write_csv(rows);
        for (auto& row : again.value().rows) {
            for (std::string& cell : row)
                cell = std::string(without_guard(cell));
        }
        ASSERT_EQ(again.value().rows, rows);
    }
}

}  // namespace csv_reader_test
}  // namespace wg::tables
