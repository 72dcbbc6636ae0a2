#pragma once
// A seeded source of numbers that gives the same sequence everywhere; the standard library's distributions do not.

#include <array>
#include <cstdint>

namespace wg::weather {

/// xoshiro256** of Blackman and Vigna (2018, public domain), seeded by splitmix64 as its authors advise.
class Random {
   public:
    explicit Random(std::uint64_t seed) noexcept;
    [[nodiscard]] std::uint64_t next() noexcept;
    /// Uniform in (0, 1), never 0 or 1: the middle of one of 2^52 equal cells.
    [[nodiscard]] double uniform() noexcept;
    /// Standard normal by the inverse of its distribution, one draw of `next` each.
    [[nodiscard]] double normal() noexcept;

   private:
    std::array<std::uint64_t, 4> state_{};
};

/// Inverse of the standard normal distribution: Wichura, algorithm AS 241 (PPND16), Applied Statistics 37, 1988; about
/// 1e-16 relative. `p` in (0, 1).
[[nodiscard]] double normal_quantile(double p) noexcept;
[[nodiscard]] double normal_probability(double z) noexcept;

/// First-order autoregressive series of unit variance: x' = phi x + sqrt(1 - phi^2) e.
class Persistent {
   public:
    Persistent(double phi, Random& random) noexcept;
    [[nodiscard]] double next() noexcept;

   private:
    double phi_;
    double fresh_;
    double x_;
    Random& random_;
};

}  // namespace wg::weather
