#include "core/quantity/utf8.h"

#include <gtest/gtest.h>

namespace wg {
namespace {

// Unicode 15, table 3-7: well-formed UTF-8 byte sequences, first and last of every row.
TEST(Utf8, TakesTheFirstAndLastOfEveryWellFormedRow) {
    for (const char* text : {"\x7F", "\xC2\x80", "\xDF\xBF", "\xE0\xA0\x80", "\xEC\xBF\xBF", "\xED\x80\x80",
                             "\xED\x9F\xBF", "\xEE\x80\x80", "\xEF\xBF\xBF", "\xF0\x90\x80\x80", "\xF4\x8F\xBF\xBF"}) {
        EXPECT_TRUE(is_utf8(text));
    }
    EXPECT_TRUE(is_utf8(""));
    EXPECT_TRUE(is_utf8(std::string(1, '\0')));
}

TEST(Utf8, RefusesOverlongFormsSurrogatesCutAndStrayBytes) {
    for (const char* text :
         {"\x80", "\xBF", "\xC0\x80", "\xC1\xBF", "\xC2", "\xE0\x80\x80", "\xE0\x9F\xBF", "\xE2\x82", "\xED\xA0\x80",
          "\xED\xBF\xBF", "\xF0\x8F\xBF\xBF", "\xF4\x90\x80\x80", "\xF5\x80\x80\x80", "\xF0\x9F\x8F", "\xFF"}) {
        EXPECT_FALSE(is_utf8(text));
        EXPECT_EQ(valid_utf8_prefix(std::string("ab") + text), 2U);
    }
}

TEST(Utf8, MessagesStayOnOneLineAndAreCutBetweenCharacters) {
    EXPECT_EQ(for_message("roof"), "roof");
    EXPECT_EQ(for_message("a\nb\tc\x7F\xFF"), "a?b?c??");
    EXPECT_EQ(for_message("abcdef", 6), "abcdef");
    EXPECT_EQ(for_message("abcdefg", 6), "abcdef...");
    EXPECT_EQ(for_message("aaaaa\xC3\xA4", 6), "aaaaa...");
}

}  // namespace
}  // namespace wg
