#include "core/quantity/iban.h"

#include <gtest/gtest.h>

namespace wg {
namespace iban_test {

// The examples that the registrar of ISO 13616 publishes for the United Kingdom, Germany, Spain and France.
constexpr const char* examples[] = {"GB29NWBK60161331926819", "DE89370400440532013000", "ES9121000418450200051332",
                                    "FR1420041010050500013M02606"};

TEST(Iban, the_published_examples_are_right) {
    for (const char* one : examples)
        EXPECT_TRUE(is_iban(one)) << one;
    EXPECT_EQ(iban_in_groups(examples[1]), "DE89 3704 0044 0532 0130 00");
    EXPECT_EQ(bare_bank_number(" de89 3704 0044 0532 0130 00 "), examples[1]);
}

bool is_number(char c) {
    return c >= '0' && c <= '9';
}

// 97 is a prime larger than what one digit, one letter or an exchange of two of a kind can be wrong by.
TEST(Iban, any_wrong_digit_or_letter_and_any_two_neighbours_exchanged_are_found) {
    for (const std::string good : examples) {
        for (std::size_t i = 0; i < good.size(); ++i) {
            for (const char c : std::string("0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ")) {
                std::string wrong = good;
                wrong[i] = c;
                if (wrong != good && is_number(c) == is_number(good[i])) EXPECT_FALSE(is_iban(wrong)) << wrong;
            }
            if (i + 1 == good.size() || good[i] == good[i + 1] || is_number(good[i]) != is_number(good[i + 1]))
                continue;
            std::string exchanged = good;
            std::swap(exchanged[i], exchanged[i + 1]);
            EXPECT_FALSE(is_iban(exchanged)) << exchanged;
        }
        EXPECT_FALSE(is_iban(good.substr(0, good.size() - 1)));
        EXPECT_FALSE(is_iban(good + '0'));
    }
    for (const char* none :
         {"", "DE", "DE89", "de89370400440532013000", "DE89 3704 0044 0532 0130 00", "DE8937040044053201300\xC3\x9F"})
        EXPECT_FALSE(is_iban(none)) << none;
}

TEST(Iban, a_bank_is_named_by_eight_or_eleven) {
    for (const char* right : {"COBADEFF", "COBADEFFXXX", "DEUTDEDBBER"})
        EXPECT_TRUE(is_bic(right)) << right;
    for (const char* wrong : {"", "COBADEF", "COBADEFFXX", "COBA12FF", "cobadeff", "COBA DEFF"})
        EXPECT_FALSE(is_bic(wrong)) << wrong;
}

}  // namespace iban_test
}  // namespace wg
