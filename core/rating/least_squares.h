#pragma once
// Least squares in the unit cube, for a handful of variables and functions that may have small jumps.

#include <functional>
#include <vector>

namespace wg::rating {

/// Residuals at a point of the cube; always the same number, all finite.
using Residuals = std::function<std::vector<double>(const std::vector<double>&)>;

struct Minimum {
    std::vector<double> x;
    std::vector<double> residuals;
    double cost = 0.0;  ///< sum of squares
    int evaluations = 0;
};

/// Levenberg-Marquardt (Marquardt 1963) projected on the cube's faces, with central differences of 2 %, then 0.4 % of
/// the cube; then a compass search (Hooke and Jeeves' exploratory moves, Kolda, Lewis and Torczon 2003) which needs no
/// slopes and so does not mind jumps. Deterministic. `start` is clamped into the cube.
[[nodiscard]] Minimum least_squares(const Residuals& residuals, std::vector<double> start, int most_evaluations);

}  // namespace wg::rating
