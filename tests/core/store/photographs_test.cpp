// Photographs kept by hash.

#include <gtest/gtest.h>

#include "core/quantity/sha256.h"
#include "tests/core/store/store_fixture.h"

namespace wg::store::test {
namespace {

std::string jpeg(std::size_t size, char fill) {
    std::string bytes(size, fill);
    bytes.replace(0, 3, "\xFF\xD8\xFF");
    bytes[size / 2] = '\0';
    return bytes;
}

TEST_P(EachStore, APhotographComesBackByteForByteAndIsKeptOnce) {
    const std::string bytes = jpeg(300000, 'x');
    std::string hash;
    {
        const auto store = open();
        const auto added = store->add_photograph(bytes, at(1));
        ASSERT_TRUE(added.ok()) << text_of(added.problems());
        hash = added.value();
        EXPECT_EQ(hash, sha256_hex(bytes));
        EXPECT_EQ(store->add_photograph(bytes, at(2)).value(), hash);
    }
    const auto store = open();
    EXPECT_TRUE(store->has_photograph(hash).value());
    const auto back = store->photograph(hash);
    ASSERT_TRUE(back.ok()) << text_of(back.problems());
    EXPECT_EQ(back.value(), bytes);
    EXPECT_EQ(store->check().value(), "ok");
    EXPECT_EQ(sql(path(), "UPDATE photograph SET content = " + bytes_literal("00")),
              "a stored photograph is never changed");
}

TEST_P(EachStore, WhatIsNoPhotographIsRefusedInWords) {
    const auto store = open();
    for (const auto& [bytes, words] : {std::pair<std::string, const char*>{"", "empty"},
                                       {"GIF89a", "neither JPEG"},
                                       {"\xFF\xD8", "neither JPEG"},
                                       {jpeg(max_photograph_bytes + 1, 'x'), "larger"}}) {
        const auto refused = store->add_photograph(bytes, at(1));
        ASSERT_FALSE(refused.ok()) << words;
        EXPECT_NE(text_of(refused.problems()).find(words), std::string::npos) << text_of(refused.problems());
    }
    const auto unknown = store->photograph(std::string(64, 'a'));
    ASSERT_FALSE(unknown.ok());
    EXPECT_FALSE(store->has_photograph(std::string(64, 'a')).value());
}

TEST_P(EachStore, ADamagedPhotographIsFoundAndNotGivenOut) {
    std::string hash;
    {
        const auto store = open();
        hash = store->add_photograph(jpeg(1000, 'y'), at(1)).value();
    }
    EXPECT_EQ(sql(path(), dialect_ == Dialect::sqlite ? "DROP TRIGGER photograph_no_update"
                                                      : "DROP TRIGGER photograph_no_update ON photograph"),
              "");
    EXPECT_EQ(sql(path(), "UPDATE photograph SET content = " + bytes_literal("FFD8FF00")), "");
    const auto store = open();
    EXPECT_FALSE(store->photograph(hash).ok());
    EXPECT_NE(store->check().value().find("photograph"), std::string::npos);
}

}  // namespace
}  // namespace wg::store::test
