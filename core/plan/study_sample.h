#pragma once
// Draws and rank correlation for the study. Inside core/plan, and for its tests.

#include <cstddef>
#include <cstdint>
#include <string>
#include <vector>

namespace wg::plan::detail {

/// Probabilities in (0, 1) for `members` draws of one factor: Latin hypercube (McKay, Beckman and Conover,
/// Technometrics 21(2), 1979), one in each of `members` equal cells, in random order. Each factor has a source of its
/// own by its key, so that a further factor does not move the others.
[[nodiscard]] std::vector<double> latin_column(std::uint64_t seed, const std::string& key, std::size_t members);

/// Ranks from 1, ties share their mean.
[[nodiscard]] std::vector<double> ranks(const std::vector<double>& values);
/// Spearman's correlation from ranks; 0 when one side does not vary.
[[nodiscard]] double rank_correlation(const std::vector<double>& ranks_a, const std::vector<double>& ranks_b);

/// Standard error of the square of a correlation r over n pairs: r itself has about s = (1 - r^2)/sqrt(n - 1), and the
/// square of a normal variable has the variance 4 r^2 s^2 + 2 s^4.
[[nodiscard]] double squared_correlation_error(double r, std::size_t n);

}  // namespace wg::plan::detail
