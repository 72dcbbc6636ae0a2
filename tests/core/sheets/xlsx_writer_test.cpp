// What cannot be a spreadsheet is refused, and nothing half is left. Whether others can read what is written:
// tests/reference/xlsx_check.sh.

#include "core/sheets/xlsx_writer.h"

#include <gtest/gtest.h>
#include <unistd.h>

#include <cmath>
#include <filesystem>
#include <fstream>

namespace wg::sheets {
namespace xlsx_writer_test {

class Xlsx : public ::testing::Test {
   protected:
    void SetUp() override {
        folder_ = std::filesystem::temp_directory_path() / ("wg-xlsx-" + std::to_string(::getpid()));
        std::filesystem::create_directory(folder_);
    }
    void TearDown() override { std::filesystem::remove_all(folder_); }
    [[nodiscard]] std::string path() const { return (folder_ / "list.xlsx").string(); }
    [[nodiscard]] std::size_t files() const {
        return static_cast<std::size_t>(std::distance(std::filesystem::directory_iterator(folder_), {}));
    }
    [[nodiscard]] std::string bytes() const {
        std::ifstream in(path(), std::ios::binary);
        return {std::istreambuf_iterator<char>(in), {}};
    }
    [[nodiscard]] std::string why(const Sheet& sheet) const {
        const Result<bool> written = write_xlsx(path(), sheet, {1'813'000'000});
        return written ? "" : text_of(written.problems());
    }
    std::filesystem::path folder_;
};

TEST_F(Xlsx, IsWrittenWholeAndTheSameEachTime) {
    const Sheet sheet{"Jobs", {"Job", "Net"}, {{"2027-0001", 12.5}, {"=1+1", -3.0}}};
    ASSERT_EQ(why(sheet), "");
    const std::string first = bytes();
    EXPECT_EQ(first.substr(0, 4), "PK\x03\x04");
    ASSERT_EQ(why(sheet), "") << "in place of the earlier one";
    EXPECT_EQ(bytes(), first);
    EXPECT_EQ(files(), 1U);
}

TEST_F(Xlsx, RefusesWhatNoSpreadsheetHolds) {
    EXPECT_NE(why({"Jobs", {"Job"}, {{std::string("\xFF")}}}).find("row 2, column 1: is no text"), std::string::npos);
    EXPECT_NE(why({"Jobs", {"Job"}, {{"x", std::nan("")}}}).find("row 2, column 2: is no number"), std::string::npos);
    EXPECT_NE(why({"Jobs", {"Job"}, {{std::string(32'768, 'x')}}}).find("longer than a spreadsheet's cell"),
              std::string::npos);
    EXPECT_EQ(why({"Jobs", {"Job"}, {{std::string(32'767, 'x')}}}), "");
    EXPECT_EQ(why({"Jobs", {"Day"}, {{CivilDate{1900, 1, 1}}, {CivilDate{9999, 12, 31}}, {Instant{-1}}}}), "");
    EXPECT_NE(why({"Jobs", {"Day"}, {{CivilDate{1899, 12, 31}}}}).find("before 1900 or after 9999"), std::string::npos);
    EXPECT_NE(why({"Jobs", {"Day"}, {{Instant{-2'300'000'000}}}}).find("row 2, column 1: is a day before 1900"),
              std::string::npos);
    std::filesystem::remove(path());
    EXPECT_NE(why({"Jobs: all", {"Job"}, {}}).find("name that spreadsheets refuse"), std::string::npos);
    EXPECT_NE(why({"", {"Job"}, {}}).find("name that spreadsheets refuse"), std::string::npos);
    EXPECT_NE(why({"Jobs", std::vector<std::string>(16'385, "x"), {}}).find("too many columns"), std::string::npos);
    EXPECT_EQ(files(), 0U);
}

TEST_F(Xlsx, APlaceThatCannotBeWrittenToIsToldAndNothingIsLeft) {
    const Result<bool> nowhere = write_xlsx((folder_ / "no folder" / "list.xlsx").string(), {"Jobs", {"Job"}, {}}, {0});
    ASSERT_FALSE(nowhere);
    EXPECT_NE(text_of(nowhere.problems()).find("cannot be written"), std::string::npos);
    std::filesystem::create_directory(path());
    EXPECT_NE(why({"Jobs", {"Job"}, {}}).find("cannot be written"), std::string::npos);
    EXPECT_EQ(files(), 1U);
}

}  // namespace xlsx_writer_test
}  // namespace wg::sheets
