#include "core/quantity/uuid.h"

#include <gtest/gtest.h>

#include <random>
#include <set>

namespace wg {
namespace {

TEST(Uuid, TakesOnlyLowerCaseHexInFiveGroups) {
    EXPECT_TRUE(is_uuid("6f2a1c3e-0b4d-4e5f-8a9b-0123456789ab"));
    EXPECT_FALSE(is_uuid(""));
    EXPECT_FALSE(is_uuid("6F2A1C3E-0B4D-4E5F-8A9B-0123456789AB"));
    EXPECT_FALSE(is_uuid("6f2a1c3e-0b4d-4e5f-8a9b-0123456789a"));
    EXPECT_FALSE(is_uuid("6f2a1c3e-0b4d-4e5f-8a9b-0123456789abc"));
    EXPECT_FALSE(is_uuid("6f2a1c3e00b4d-4e5f-8a9b-0123456789ab"));
    EXPECT_FALSE(is_uuid("6f2a1c3e-0b4d-4e5f-8a9b-0123456789-b"));
    EXPECT_FALSE(is_uuid("{f2a1c3e-0b4d-4e5f-8a9b-0123456789a}"));
}

TEST(Uuid, CarriesVersion4AndTheVariantOfRfc9562WhateverTheBits) {
    for (const std::uint64_t bits : {std::uint64_t{0}, ~std::uint64_t{0}, std::uint64_t{0x0123456789abcdef}}) {
        const std::string uuid = uuid_v4([bits] { return bits; });
        EXPECT_TRUE(is_uuid(uuid)) << uuid;
        EXPECT_EQ(uuid[14], '4');
        EXPECT_NE(std::string("89ab").find(uuid[19]), std::string::npos);
    }
    EXPECT_EQ(uuid_v4([] { return std::uint64_t{0x0123456789abcdef}; }), "01234567-89ab-4def-8123-456789abcdef");
}

TEST(Uuid, ThousandsFromOneGeneratorDiffer) {
    std::mt19937_64 random(20270621);
    std::set<std::string> seen;
    for (int i = 0; i < 5000; ++i)
        seen.insert(uuid_v4([&random] { return random(); }));
    EXPECT_EQ(seen.size(), 5000U);
}

}  // namespace
}  // namespace wg
