#include "core/quantity/base64.h"

#include <gtest/gtest.h>

#include <random>

namespace wg {
namespace base64_test {

TEST(Base64, gives_the_examples_of_rfc_4648_section_10) {
    const std::pair<const char*, const char*> examples[] = {{"", ""},
                                                            {"f", "Zg=="},
                                                            {"fo", "Zm8="},
                                                            {"foo", "Zm9v"},
                                                            {"foob", "Zm9vYg=="},
                                                            {"fooba", "Zm9vYmE="},
                                                            {"foobar", "Zm9vYmFy"}};
    for (const auto& [bytes, text] : examples) {
        EXPECT_EQ(to_base64(bytes), text);
        EXPECT_EQ(from_base64(text), bytes);
    }
}

TEST(Base64, comes_back_whatever_the_bytes_and_one_content_has_one_text) {
    std::mt19937 random(3);
    for (int i = 0; i < 300; ++i) {
        std::string bytes(random() % 40, '\0');
        for (char& c : bytes)
            c = static_cast<char>(random() % 256);
        EXPECT_EQ(from_base64(to_base64(bytes)), bytes);
    }
    for (const char* bad : {"Zg", "Zg=", "Zh==", "Zm9=", "Zg==Zg==", "=g==", "Z===", "Zm 9", "Zm9v\n", "Zm-v", "===="})
        EXPECT_FALSE(from_base64(bad)) << bad;
}

}  // namespace base64_test
}  // namespace wg
