// Numbers as people copy them.

#include "core/equipment/pasted_numbers.h"

#include <gtest/gtest.h>

namespace wg {
namespace pasted_numbers_test {
namespace {

using Numbers = std::vector<double>;

TEST(PastedNumbers, AreReadInTheWritingsOfSheets) {
    EXPECT_EQ(numbers_in("1.5 -2e3\t.25\n4").value(), (Numbers{1.5, -2000.0, 0.25, 4.0}));
    EXPECT_EQ(numbers_in("1,5 2,25;-3,125E-02").value(), (Numbers{1.5, 2.25, -0.03125})) << "decimal commas";
    EXPECT_EQ(numbers_in("1, 2,3").value(), (Numbers{1.0, 2.0, 3.0})) << "a comma that ends a word parts words";
    EXPECT_EQ(numbers_in("1,2,3").value(), (Numbers{1.0, 2.0, 3.0})) << "two in a word part words";
    EXPECT_EQ(numbers_in("1.5,2.5").value(), (Numbers{1.5, 2.5}));
    EXPECT_EQ(numbers_in("\xE2\x88\x92"
                         "7.25\xC2\xA0+8")
                  .value(),
              (Numbers{-7.25, 8.0}));
    EXPECT_TRUE(numbers_in(" \r\n ").value().empty());
    EXPECT_EQ(numbers_in("0,1").value(), Numbers{0.1});
}

TEST(PastedNumbers, WhatIsNoNumberIsNamed) {
    for (const char* text : {"1 2 x", "1e999", "nan", "inf", "--1", "+-1", "1.2.3", "0x10", "1e", "-", "\xFF"})
        EXPECT_FALSE(numbers_in(text).ok()) << text;
    EXPECT_NE(text_of(numbers_in("1 2 4W").problems()).find("'4W'"), std::string::npos);
    std::string many;
    for (int i = 0; i < 1000; ++i)
        many += "1 ";
    EXPECT_EQ(numbers_in(many).value().size(), 1000U);
    EXPECT_FALSE(numbers_in(many + "1").ok());
}

}  // namespace
}  // namespace pasted_numbers_test
}  // namespace wg
