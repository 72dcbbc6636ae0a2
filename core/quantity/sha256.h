#pragma once
// SHA-256 (FIPS 180-4, "Secure Hash Standard", 2015, sections 5 and 6.2), for telling copies apart and for
// finding damage. Not meant for secrets.

#include <array>
#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>

namespace wg {

/// Takes bytes in any number of pieces. `finish` may be called once.
class Sha256 {
   public:
    void add(std::string_view bytes) noexcept;
    [[nodiscard]] std::array<std::uint8_t, 32> finish() noexcept;

   private:
    void take_block(const std::uint8_t* block) noexcept;

    std::array<std::uint32_t, 8> state_ = {0x6a09e667U, 0xbb67ae85U, 0x3c6ef372U, 0xa54ff53aU,
                                           0x510e527fU, 0x9b05688cU, 0x1f83d9abU, 0x5be0cd19U};
    std::array<std::uint8_t, 64> pending_ = {};
    std::size_t pending_size_ = 0;
    std::uint64_t byte_count_ = 0;
};

/// The hash of the bytes as 64 lower-case hex digits.
[[nodiscard]] std::string sha256_hex(std::string_view bytes);

/// True for exactly 64 lower-case hex digits.
[[nodiscard]] bool is_sha256_hex(std::string_view text) noexcept;

}  // namespace wg
