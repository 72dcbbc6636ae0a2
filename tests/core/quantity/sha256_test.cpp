#include "core/quantity/sha256.h"

#include <gtest/gtest.h>

namespace wg {
namespace {

// Messages and digests of the examples that NIST publishes with FIPS 180-4 ("SHA-256 examples", csrc.nist.gov).
TEST(Sha256, GivesThePublishedDigests) {
    EXPECT_EQ(sha256_hex("abc"), "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
    EXPECT_EQ(sha256_hex("abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq"),
              "248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1");
    EXPECT_EQ(sha256_hex(std::string(1000000, 'a')),
              "cdc76e5c9914fb9281a1c7e284d73e67f1809a48a497200e046d39ccc7112cd0");
    // NIST cryptographic algorithm validation programme, SHA256ShortMsg, length 0.
    EXPECT_EQ(sha256_hex(""), "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855");
}

TEST(Sha256, DoesNotDependOnHowTheBytesArriveAtAnyLength) {
    // Lengths around the block of 64 bytes and the 56 bytes after which padding needs a block of its own.
    for (std::size_t length = 0; length <= 200; ++length) {
        std::string bytes;
        for (std::size_t i = 0; i < length; ++i)
            bytes += static_cast<char>(i * 37 % 251);
        Sha256 pieces;
        std::size_t at = 0;
        for (std::size_t size = 1; at < bytes.size(); ++size) {
            pieces.add(std::string_view(bytes).substr(at, size));
            at += size;
        }
        Sha256 whole;
        whole.add(bytes);
        EXPECT_EQ(pieces.finish(), whole.finish()) << length;
    }
}

TEST(Sha256, TellsAHexDigestFromOtherText) {
    EXPECT_TRUE(is_sha256_hex(sha256_hex("x")));
    EXPECT_FALSE(is_sha256_hex(""));
    EXPECT_FALSE(is_sha256_hex(std::string(63, 'a')));
    EXPECT_FALSE(is_sha256_hex(std::string(65, 'a')));
    EXPECT_FALSE(is_sha256_hex(std::string(64, 'A')));
    EXPECT_FALSE(is_sha256_hex(std::string(64, 'g')));
}

}  // namespace
}  // namespace wg
