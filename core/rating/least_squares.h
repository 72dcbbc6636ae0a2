#pragma once
// Least squares in the unit cube, for a handful of variables and functions that may have small jumps.

#include <functional>
#include <vector>

namespace wg::rating {

/// Residuals at a point of the cube; always the same number, all finite. Called from several threads at once.
using Residuals = std::function<std::vector<double>(const std::vector<double>&)>;

struct Minimum {
    std::vector<double> x;
    std::vector<double> residuals;
    double cost = 0.0;  ///< sum of squares
    int evaluations = 0;
    bool stopped = false;  ///< before the end, as asked; the rest is the best so far
};

/// Told from the calling thread, before every evaluation, what was found so far; false stops.
using GoOn = std::function<bool(const Minimum&)>;

/// Levenberg-Marquardt (Marquardt 1963) projected on the cube's faces, with central differences of 2 %, then 0.4 % of
/// the cube; then a compass search (Hooke and Jeeves' exploratory moves, Kolda, Lewis and Torczon 2003) which needs no
/// slopes and so does not mind jumps. Deterministic, however many cores take part. `start` is clamped into the cube.
[[nodiscard]] Minimum least_squares(const Residuals& residuals, std::vector<double> start, int most_evaluations,
                                    const GoOn& go_on = {});

}  // namespace wg::rating
